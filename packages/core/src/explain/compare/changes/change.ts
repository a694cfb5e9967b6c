import type { MoveKind } from "../../types.ts";

/**
 * A change between two plans that can move a number, in words, with the places it changes.
 *
 * A _place_ names a spot of the plan that holds either the old plan's value or the new one's: `task:dig/work`,
 * `response:leak/spare-pump`. A hybrid of the two plans is a choice of one of the two for every place.
 */
export interface Change {
  places: string[];
  kind: MoveKind;
  /** Items it is about, by id in the new plan. */
  ids: string[];
  /** What the sentence is about: "Permit decided". */
  subject: string;
  /** What is said of it: "P90 from 45 to 60 working days". */
  text: string;
  /** The text goes on after the subject without a colon: "now also waits for Inspection". */
  clause?: boolean;
}

/** The change as a sentence. */
export function sentenceOf({ subject, text, clause }: Change): string {
  return `${subject}${clause === true ? " " : ": "}${text}`;
}
