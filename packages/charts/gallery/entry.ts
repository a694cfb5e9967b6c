export { readPlan } from "@leeway/core";
export { figureSvg } from "../src/index.ts";
export { figuresOf } from "./figures.ts";
export { galleryPage } from "./galleryPage.ts";
