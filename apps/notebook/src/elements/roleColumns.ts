import type { Id, Plan } from "@leeway/core";
import { findWho } from "../plan/findWho.ts";
import type { Column, Reading } from "./listsElement.ts";

interface Roles {
  responsible: Id[];
  accountable: Id[];
  consulted: Id[];
  informed: Id[];
}

const headings: Record<keyof Roles, string> = {
  responsible: "Does it",
  accountable: "Answers for it",
  consulted: "Is asked before",
  informed: "Is told after",
};

/**
 * Who does something, answers for it, is asked and is told: names in cells. Exactly one answers for it, and a cell that
 * says otherwise is told so.
 *
 * @param falls  What an emptied cell falls back to, in words; undefined: nothing, and one has to answer for it.
 */
export function roleColumns<T extends Roles>(
  plan: Plan,
  name: (item: T) => string,
  falls?: (item: T) => boolean,
): Column<T>[] {
  const who = [...plan.people, ...plan.stakeholders];
  const names = new Map(who.map((one) => [one.id, one.name]));
  return (["responsible", "accountable", "consulted", "informed"] as const).map(
    (key): Column<T> => ({
      key,
      heading: headings[key],
      committed: (item) => item[key].map((id) => names.get(id) ?? id).join("; "),
      suggest: { of: "who" },
      read: (text, _path, item): Reading => {
        const found = findWho(text, who);
        if ("words" in found) return found;
        const { ids } = found;
        if (key === "accountable" && ids.length > 1) {
          const both = ids.map((id) => `“${names.get(id)}”`).join(" and ");
          return {
            words: `Exactly one answers for “${name(item)}”: ${both} are ${ids.length}. Write the one who does.`,
          };
        }
        if (key === "accountable" && ids.length === 0 && falls?.(item) !== true)
          return { words: `Exactly one answers for “${name(item)}”. Write who that is.` };
        return { value: ids.length === 0 ? undefined : ids.length === 1 ? ids[0] : ids };
      },
    }),
  );
}
