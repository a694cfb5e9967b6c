import type { Objection, Plan } from "@leeway/core";
import { today } from "../handing/today.ts";
import { findWho } from "../plan/findWho.ts";
import { type ListSpec, needed, type Reading, whoChoices } from "./listsElement.ts";

/** A state as it is chosen: answered, and by changing the plan. */
const changedIt = "answered changed";

/** What was objected, what was answered, and who accepts that it stands. */
export function objectionsList(plan: Plan): ListSpec<Objection> {
  const everybody = [...plan.stakeholders, ...plan.people];
  const states: (readonly [string, string])[] = [
    ["open", "open"],
    ["answered", "answered"],
    [changedIt, "answered: the plan was changed"],
    ...everybody.map(({ id, name }) => [`accepted ${id}`, `accepted by ${name}`] as const),
  ];
  const choicesOf = (one: Objection): (readonly [string, string])[] =>
    one.state === "accepted" && one.acceptedBy === undefined ? [...states, ["accepted", "accepted"]] : states;
  return {
    path: "objections",
    one: "objection",
    title: "Objections",
    empty: "None yet. Note what somebody holds against the plan, before they decide and in their words.",
    items: plan.objections,
    name: ({ text, id }) => text ?? id,
    columns: [
      {
        key: "text",
        heading: "What is objected",
        committed: ({ text }) => text ?? "",
        read: needed("Say what is objected, or remove the row."),
      },
      {
        key: "who",
        heading: "By",
        committed: ({ who }) => who ?? "",
        choices: whoChoices(plan),
      },
      {
        key: "answer",
        heading: "Answer",
        size: "main",
        committed: ({ answer }) => answer ?? "",
        read: (text, path, { state }) => answered(text, path, state),
      },
      { key: "evidence", heading: "What supports it", committed: ({ evidence }) => evidence ?? "" },
      {
        key: "state",
        heading: "State",
        size: "wide",
        committed: ({ state, acceptedBy, changedPlan }) =>
          state === "accepted" && acceptedBy !== undefined
            ? `accepted ${acceptedBy}`
            : state === "answered" && changedPlan
              ? changedIt
              : state,
        choicesOf,
        read: (text, path, { answer }) => stateOf(text, path, answer),
      },
    ],
    asks: [
      { key: "text", label: "What is objected" },
      { key: "who", label: "By", suggest: "who" },
    ],
    make: ({ text = "", who = "" }, id) => {
      if (text.trim() === "") return { cell: "text", words: "Say what is objected, in their words." };
      const found = findWho(who, everybody);
      if ("words" in found) return { cell: "who", words: found.words };
      if (found.ids.length > 1) return { cell: "who", words: "An objection is one person's." };
      const [by] = found.ids;
      const said = { date: today(), text: text.trim(), state: "open" };
      return { item: { id: id(text), ...(by === undefined ? {} : { who: by }), ...said } };
    },
  };
}

/** An open objection with an answer is answered; one whose answer goes is open again. */
function answered(text: string, path: string, state: Objection["state"]): Reading {
  const answer = text.trim();
  const base = path.replace(/\.answer$/, "");
  const next =
    answer === "" ? (state === "answered" ? "open" : state) : state === "open" ? "answered" : state;
  return {
    edits: [
      { path, value: answer === "" ? undefined : answer },
      ...(next === state ? [] : [{ path: `${base}.state`, value: next }]),
    ],
  };
}

/** Accepted as it stands: by somebody, by name. */
function stateOf(text: string, path: string, answer: string | undefined): Reading {
  const changed = text === changedIt;
  const [state = "open", by] = changed ? ["answered"] : text.split(" ");
  if (state === "answered" && (answer ?? "").trim() === "")
    return { words: "There is no answer yet: write it under “Answer”." };
  return {
    edits: [
      { path, value: state },
      { path: path.replace(/\.state$/, ".acceptedBy"), value: by },
      // What an objection changed stays changed, whatever becomes of it later.
      ...(state === "answered"
        ? [{ path: path.replace(/\.state$/, ".changedPlan"), value: changed ? true : undefined }]
        : []),
    ],
  };
}
