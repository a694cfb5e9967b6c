import { r as loadProgram, t as beside } from "./loadProgram-B5wgumI1.mjs";
// src/worker.ts
loadProgram(beside(import.meta.url, "./thread.cjs"));
export {};
