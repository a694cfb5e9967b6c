// The first script, and a small one: the workers load and warm up while the page itself is still on its way.
import "./trusted.ts";
import "./styles/all.ts";
import { startFirst } from "./worker/startWorkers.ts";

startFirst();
void import("./main.ts");
