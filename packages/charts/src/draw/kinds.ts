import type { Driver, TornadoBar } from "@leeway/core";
import type { Palette } from "../palette.ts";
import type { Attributes } from "./make.ts";

type Kind = Driver["kind"] | TornadoBar["kind"];

/** The kind of an item in a word; a task needs none. */
export function kindWord(kind: Kind): string {
  switch (kind) {
    case "task":
      return "";
    case "task-cost":
      return "cost";
    case "risk":
      return "risk";
    case "assumption":
      return "assumption";
    case "lag":
      return "wait";
    case "overhead":
      return "running cost";
    case "response":
      return "response";
  }
}

/** Events of the register are plum; ranges of estimates are a tint of the ink with an edge. */
export function kindFill(kind: Kind, colours: Palette): Attributes {
  return kind === "risk" || kind === "assumption" || kind === "response"
    ? { fill: colours.register, stroke: colours.register, "stroke-width": 1 }
    : { fill: colours.rangeCore, stroke: colours.rangeEdge, "stroke-width": 1 };
}
