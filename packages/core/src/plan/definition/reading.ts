import { oneLine } from "../oneLine.ts";
import type { Problem } from "../problem.ts";
import { lineColumn } from "../source/lineColumn.ts";
import type { Fault, SourceTree } from "../source/node.ts";
import { childPlace, type Place, pathText } from "../source/place.ts";
import type { EstimateDraft, Measure } from "./estimate.ts";
import { nearest } from "./nearest.ts";

/** What an id names. */
export type IdKind =
  | "task"
  | "person"
  | "stakeholder"
  | "risk"
  | "assumption"
  | "response"
  | "overhead"
  | "benefit"
  | "goal"
  | "quality bar"
  | "scope item"
  | "interval"
  | "objection"
  | "return trigger";
/** What a label names: labels are unique among their like only. */
export type LabelKind = "phase" | "calendar";

export interface Reference {
  kinds: readonly IdKind[];
  id: string;
  place: Place;
  /** An unknown name is worth a warning only. */
  lenient: boolean;
}
export interface LabelReference {
  kind: LabelKind;
  label: string;
  place: Place;
}

/** Problems that come from the form of the document alone: what its JSON Schema refuses too. */
export const STRUCTURAL_CODES: ReadonlySet<string> = new Set([
  "unknown-key",
  "missing-key",
  "wrong-type",
  "bad-format",
  "out-of-range",
  "not-a-choice",
  "too-few",
  "too-many",
]);

/** Names are compared for suggestions at most this often, so that hostile input costs no more than its size. */
const COMPARISONS = 30_000;

/** One reading of one document: what was found, and what was wrong. */
export class Reading {
  readonly problems: Problem[] = [];
  readonly ids = new Map<string, { kind: IdKind; place: Place }>();
  readonly references: Reference[] = [];
  readonly labels: Record<LabelKind, Map<string, Place>> = { phase: new Map(), calendar: new Map() };
  readonly labelReferences: LabelReference[] = [];
  readonly estimates: { draft: EstimateDraft; measure: Measure; place: Place }[] = [];
  private readonly places = new Map<object, Place>();
  private readonly text: string | undefined;
  private readonly locate: (at: number) => { line: number; column: number };
  private comparisons = COMPARISONS;

  constructor(tree: SourceTree) {
    this.text = tree.text;
    let found: ReturnType<typeof lineColumn> | undefined;
    this.locate = (at) => {
      found ??= lineColumn(tree.text ?? "");
      return found(at);
    };
  }

  /** Remembers where a draft object stands. */
  settle<T extends object>(draft: T, place: Place): T {
    this.places.set(draft, place);
    return draft;
  }

  /** Where a draft stands, or one of its keys. */
  placeOf(draft: object, key?: string): Place {
    const place = this.places.get(draft);
    if (place === undefined) throw new Error("a draft without a place"); // every object type settles what it reads
    return key === undefined ? place : childPlace(place, key);
  }

  /** A value as it stands in the text. */
  source(place: Place): string {
    const { node } = place;
    if (this.text !== undefined && node.at >= 0) return this.text.slice(node.at, node.end);
    if (node.kind === "list") return "[...]";
    if (node.kind === "map") return "{...}";
    return typeof node.value === "number" ? String(node.value) : JSON.stringify(node.value);
  }

  report(
    place: Place,
    code: string,
    rule: string,
    remedy: string,
    extra: { received?: string; severity?: "warning"; at?: number } = {},
  ): void {
    const at = extra.at ?? place.node.at;
    const problem: Problem = {
      code,
      severity: extra.severity ?? "error",
      path: pathText(place),
      ...(this.text !== undefined && at >= 0 ? this.locate(at) : {}),
      received: shorten(extra.received ?? this.source(place)),
      rule,
      remedy,
    };
    this.problems.push(problem);
  }

  /** Whether a problem stands before an offset. */
  isBefore(problem: Problem, at: number): boolean {
    const { line, column } = this.locate(at);
    return problem.line !== undefined && (problem.line - line || (problem.column ?? 0) - column) < 0;
  }

  reportFault(fault: Fault): void {
    this.problems.push({
      code: fault.code,
      severity: fault.severity ?? "error",
      path: fault.path ?? "",
      ...(this.text !== undefined && fault.at >= 0 ? this.locate(fault.at) : {}),
      received: shorten(fault.received),
      rule: fault.rule,
      remedy: fault.remedy,
    });
  }

  /** The nearest of `known` to `name`, while the budget for comparisons lasts. */
  suggest(name: string, known: Iterable<string>): string | undefined {
    const candidates: string[] = [];
    for (const item of known) {
      if (this.comparisons-- <= 0) break;
      candidates.push(item);
    }
    return nearest(name, candidates);
  }
}

/** One line of at most 60 characters. */
function shorten(text: string): string {
  const cut = oneLine(text);
  return cut === "" ? "" : `\`${cut}\``;
}
