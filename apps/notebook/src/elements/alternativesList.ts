import type { Plan } from "@leeway/core";
import { type ListSpec, needed } from "./listsElement.ts";

type Alternative = NonNullable<Plan["decision"]>["alternatives"][number];

/** What else was looked at before this was put forward. */
export function alternativesList({ decision }: Plan): ListSpec<Alternative> {
  return {
    path: "decision.alternatives",
    one: "alternative",
    title: "What else was looked at",
    empty: "Nothing yet: those who decide ask what the other ways were.",
    items: decision?.alternatives ?? [],
    name: ({ name }) => name,
    columns: [
      {
        key: "name",
        heading: "Alternative",
        size: "main",
        committed: ({ name }) => name,
        read: needed("An alternative needs a name."),
      },
      { key: "text", heading: "What it would mean", committed: ({ text }) => text ?? "" },
    ],
    asks: [
      { key: "name", label: "Alternative" },
      { key: "text", label: "What it would mean" },
    ],
    make: ({ name = "", text = "" }) =>
      name.trim() === ""
        ? { cell: "name", words: "Name it in a few words." }
        : { item: { name: name.trim(), ...(text.trim() === "" ? {} : { text: text.trim() }) } },
  };
}
