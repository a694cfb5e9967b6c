import type { PlanDraft } from "../definition/draft.ts";
import { oneOf } from "../definition/names.ts";
import { GIVEN_CALENDARS } from "../definition/people.ts";
import type { IdKind, Reading } from "../definition/reading.ts";

/** Every id and every label that is named exists, and is of the right kind. */
export function checkReferences(plan: PlanDraft, reading: Reading): void {
  const byKind = new Map<string, string[]>();
  for (const [id, { kind }] of reading.ids) {
    const list = byKind.get(kind);
    if (list === undefined) byKind.set(kind, [id]);
    else list.push(id);
  }

  const lists = new Map<string, string[]>();
  const knownOf = (kinds: readonly IdKind[]): string[] => {
    const key = kinds.join();
    const list = lists.get(key) ?? kinds.flatMap((kind) => byKind.get(kind) ?? []);
    lists.set(key, list);
    return list;
  };

  for (const { kinds, id, place, lenient } of reading.references) {
    const found = reading.ids.get(id);
    if (found !== undefined && kinds.includes(found.kind)) continue;
    const wanted = oneOf(kinds);
    const extra = lenient ? { severity: "warning" as const } : {};
    if (found !== undefined) {
      const rule = `\`${id}\` is ${oneOf([found.kind])}; ${wanted} belongs here.`;
      reading.report(place, "wrong-kind", rule, `Name ${wanted}.`, extra);
      continue;
    }
    const known = knownOf(kinds);
    const meant = reading.suggest(id, known);
    const remedy =
      meant !== undefined
        ? `Did you mean \`${meant}\`?`
        : known.length === 0
          ? `The plan has none yet: add it, or leave this out.`
          : `Known: ${known.slice(0, 6).join(", ")}${known.length > 6 ? ", ..." : ""}.`;
    reading.report(place, "unknown-id", `No ${kinds.join(" or ")} has this id.`, remedy, extra);
  }

  const phases = new Set(plan.phases === undefined ? (plan.tasks ?? []).map((task) => task.phase) : []);
  for (const { kind, label, place } of reading.labelReferences) {
    const defined = reading.labels[kind];
    if (defined.has(label)) continue;
    if (kind === "calendar" && GIVEN_CALENDARS.some((given) => given === label)) continue;
    // Without a list of phases, the tasks themselves say which there are.
    if (kind === "phase" && phases.has(label)) continue;
    const known =
      kind === "calendar" ? [...GIVEN_CALENDARS, ...defined.keys()] : [...defined.keys(), ...phases];
    const names = known.filter((name) => name !== undefined);
    const meant = reading.suggest(label, names);
    const remedy =
      meant !== undefined
        ? `Did you mean \`${meant}\`?`
        : `Add it to \`${kind}s\`, or name one of: ${names.slice(0, 6).join(", ")}.`;
    reading.report(place, `unknown-${kind}`, `No ${kind} has this name.`, remedy);
  }
}
