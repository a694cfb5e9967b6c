import { type Place, pathText } from "../source/place.ts";
import type { IdKind, LabelKind, Reading } from "./reading.ts";
import { text } from "./scalars.ts";
import type { Type } from "./type.ts";

export const ID_PATTERN = /^[a-z][a-z0-9-]*$/;

function readId(place: Place, reading: Reading): string | undefined {
  const value = place.node.kind === "scalar" ? place.node.value : undefined;
  if (typeof value !== "string") {
    reading.report(place, "wrong-type", "An id belongs here.", "Write one like `site-survey`.");
    return undefined;
  }
  if (ID_PATTERN.test(value)) return value;
  if (/^[a-z][a-z0-9-]*(?:\s*[,;]\s*[a-z][a-z0-9-]*)+$/.test(value)) {
    const list = value.split(/\s*[,;]\s*/).join(", ");
    reading.report(place, "bad-format", "Several ids are a list, between brackets.", `Write [${list}].`);
    return undefined;
  }
  const made = value
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^[^a-z]+|-+$/g, "");
  const remedy = made === "" ? "Write one like `site-survey`." : `Write ${made.slice(0, 60)}.`;
  reading.report(place, "bad-format", "An id is small letters, digits and hyphens, a letter first.", remedy);
  return undefined;
}

const ID_SCHEMA = { type: "string", pattern: ID_PATTERN.source };

/** An id. With a kind it defines that thing, and is unique in the document. */
export function id(kind: IdKind | undefined): Type<string> {
  return {
    what: "an id like `site-survey`",
    read(place, reading) {
      const name = readId(place, reading);
      if (name === undefined || kind === undefined) return name;
      const other = reading.ids.get(name);
      if (other === undefined) reading.ids.set(name, { kind, place: place.parent ?? place });
      else {
        const rule = `${pathText(other.place)} has this id already; ids are unique in the document.`;
        reading.report(place, "repeated-id", rule, "Give one of the two another id.");
      }
      return name;
    },
    schema: () => ({ ...ID_SCHEMA }),
  };
}

/** The id of something of one of these kinds. */
export function reference(kinds: readonly IdKind[]): Type<string> {
  return {
    what: `the id of ${oneOf(kinds)}`,
    read(place, reading) {
      const name = readId(place, reading);
      if (name !== undefined) reading.references.push({ kinds, id: name, place, lenient: false });
      return name;
    },
    schema: () => ({ ...ID_SCHEMA }),
  };
}

/** As `reference`, but other words are only worth a warning. */
export function looseReference(kinds: readonly IdKind[]): Type<string> {
  const type = text(`the id of ${oneOf(kinds)}`);
  return {
    ...type,
    read(place, reading) {
      const name = type.read(place, reading);
      if (name !== undefined) reading.references.push({ kinds, id: name, place, lenient: true });
      return name;
    },
  };
}

/** `a person or a stakeholder`. */
export function oneOf(kinds: readonly IdKind[]): string {
  return kinds.map((kind) => `${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind}`).join(" or ");
}

/** The label of a phase or a calendar. */
export function label(kind: LabelKind, role: "defines" | "refers"): Type<string> {
  const type = text(`the name of a ${kind}`);
  return {
    ...type,
    read(place, reading) {
      const name = type.read(place, reading);
      if (name === undefined) return undefined;
      if (role === "refers") reading.labelReferences.push({ kind, label: name, place });
      else if (!reading.labels[kind].has(name)) reading.labels[kind].set(name, place);
      else {
        reading.report(place, "repeated-name", `Another ${kind} has this name.`, "Give each its own name.");
      }
      return name;
    },
  };
}

export const COST_PREFIX = "cost:";

/** A task id for its duration draw, `cost:TASK` for its cost draw. */
export function drawName(): Type<string> {
  return {
    what: "a task's id, or `cost:` and a task's id",
    read(place, reading) {
      const { node } = place;
      const value = node.kind === "scalar" ? node.value : undefined;
      if (typeof value !== "string" || !value.startsWith(COST_PREFIX))
        return reference(["task"]).read(place, reading);
      const task = value.slice(COST_PREFIX.length);
      const part: Place = { ...place, node: { kind: "scalar", value: task, at: node.at, end: node.end } };
      return reference(["task"]).read(part, reading) === undefined ? undefined : value;
    },
    schema: () => ({ type: "string", pattern: "^(cost:)?[a-z][a-z0-9-]*$" }),
  };
}
