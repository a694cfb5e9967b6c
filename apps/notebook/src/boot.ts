// The first script, and a small one: the workers load and warm up while the page itself is still on its way.
import "./trusted.ts";
import "./styles/all.ts";
import { showOpening } from "./beginning/showOpening.ts";
import { startFirst } from "./worker/startWorkers.ts";

const opening = showOpening();
startFirst();
void opening.then(() => import("./main.ts"));
