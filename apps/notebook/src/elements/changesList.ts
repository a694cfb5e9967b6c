import type { Change, Plan } from "@leeway/core";
import { today } from "../handing/today.ts";
import { findWho } from "../plan/findWho.ts";
import { dateText, optionalDate } from "./entryFields.ts";
import { type ListSpec, whoChoices } from "./listsElement.ts";

/** What changed since it was agreed, why, and who agreed to that. */
export function changesList(plan: Plan): ListSpec<Change> {
  return {
    path: "changes",
    one: "change",
    title: "Log of changes: what changed since it was agreed, and why",
    empty: "Nothing logged yet. Once somebody has approved it, every change needs a reason and a name.",
    items: plan.changes,
    name: ({ what }) => what ?? "",
    columns: [
      {
        key: "date",
        heading: "On",
        kind: "date",
        committed: ({ date }) => dateText(date),
        read: optionalDate,
      },
      { key: "what", heading: "What changed", size: "main", committed: ({ what }) => what ?? "" },
      { key: "why", heading: "Why", size: "main", committed: ({ why }) => why ?? "" },
      { key: "who", heading: "Decided by", committed: ({ who }) => who ?? "", choices: whoChoices(plan) },
      {
        key: "approvedBy",
        heading: "Agreed to by",
        committed: ({ approvedBy }) => approvedBy ?? "",
        choices: whoChoices(plan),
      },
    ],
    asks: [
      { key: "what", label: "What changed" },
      { key: "why", label: "Why" },
      { key: "who", label: "Decided by", suggest: "who" },
      { key: "approvedBy", label: "Agreed to by", suggest: "who" },
    ],
    make: ({ what = "", why = "", who = "", approvedBy = "" }) => {
      if (what.trim() === "") return { cell: "what", words: "Say what changed." };
      if (why.trim() === "") return { cell: "why", words: "A change needs a reason." };
      const named: Record<string, string> = {};
      for (const [key, text] of [
        ["who", who],
        ["approvedBy", approvedBy],
      ] as const) {
        const found = findWho(text, [...plan.stakeholders, ...plan.people]);
        if ("words" in found) return { cell: key, words: found.words };
        if (found.ids.length > 1) return { cell: key, words: "Name one of them." };
        const [id] = found.ids;
        if (id !== undefined) named[key] = id;
      }
      return { item: { date: today(), what: what.trim(), why: why.trim(), ...named } };
    },
  };
}
