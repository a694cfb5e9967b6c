import { beside, loadProgram } from "./start/loadProgram.ts";

loadProgram(beside(import.meta.url, "./thread.cjs"));
