import { object } from "./object.ts";
import { choice, text } from "./scalars.ts";
import { required } from "./type.ts";

/** The sections of a report about a plan, in reading order: what a free text may stand below. */
export const PAGE_SECTIONS = [
  "answer",
  "futures",
  "drivers",
  "contingency",
  "purpose",
  "people",
  "calendar",
  "work",
  "register",
  "responses",
  "commitment",
  "level",
  "money",
  "reach",
  "one-future",
  "sign-off",
  "changes",
  "hand-over",
] as const;

/** Free text between the sections; changes no number, and is part of what is signed. */
export const pageText = object("page-text", "a text", {
  after: required(choice(...PAGE_SECTIONS), "the section it stands below.", ["below", "section", "under"]),
  text: required(text("text in Markdown"), "what it says, in Markdown.", ["markdown", "body", "content"]),
});
