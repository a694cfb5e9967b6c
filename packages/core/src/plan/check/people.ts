import type { PersonDraft, PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";
import { TOLERANCE } from "./tolerance.ts";

/** No share above the capacity there is (with `respectCapacity`), and absences that end after they begin. */
export function checkPeople(plan: PlanDraft, reading: Reading): void {
  const people = new Map<string, PersonDraft>();
  for (const person of plan.people ?? []) {
    if (person.id !== undefined) people.set(person.id, person);
    for (const absence of person.away ?? []) {
      if (absence.from === undefined || absence.to === undefined || absence.from <= absence.to) continue;
      const rule = `It ends on ${absence.to}, before it begins on ${absence.from}.`;
      reading.report(reading.placeOf(absence, "to"), "dates-reversed", rule, "Exchange `from` and `to`.");
    }
  }
  if (plan.respectCapacity === false) return;

  const reported = new Set<string>();
  for (const task of plan.tasks ?? []) {
    for (const member of task.people ?? []) {
      const person = member.id === undefined ? undefined : people.get(member.id);
      if (person === undefined || member.id === undefined) continue;
      const capacity = person.capacity ?? 1;
      const share = member.share ?? person.share ?? 1;
      if (share <= capacity + TOLERANCE) continue;
      const name = person.name ?? member.id;
      const rule = `\`share\` ${share} of ${name} is more than ${possessive(name)} capacity ${capacity}.`;
      if (member.share !== undefined) {
        reading.report(
          reading.placeOf(member, "share"),
          "share-above-capacity",
          rule,
          `Write at most ${capacity}.`,
        );
      } else if (!reported.has(member.id)) {
        // A bare id takes the person's own share: said once, where it can be put right for every task.
        reported.add(member.id);
        const remedy = `Give ${name} \`share: ${capacity}\` in \`people\`, or a \`share\` in the task.`;
        reading.report(reading.placeOf(member), "share-above-capacity", rule, remedy);
      }
    }
  }
}

function possessive(name: string): string {
  return name.endsWith("s") ? `${name}'` : `${name}'s`;
}
