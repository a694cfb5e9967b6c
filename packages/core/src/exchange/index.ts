export * from "./csv/index.ts";
