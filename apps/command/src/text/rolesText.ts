import type { RoleFault, RoleMatrix } from "@leeway/core";
import { type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { rolesTables } from "./rolesTable.ts";

/** Who does what and answers for it, the rows that break the rule, and how much stands on whom. */
export function rolesText(asGiven: RoleMatrix, page: Page): string {
  const matrix = plainTexts(asGiven);
  const { rows, people, faults, load, plan } = matrix;
  const broken = new Set(faults.filter(({ code }) => code !== "no-responsible").map(({ row }) => row)).size;
  const noun = rows[0]?.kind === "phase" ? "phases" : "tasks";
  const head =
    rows.length === 0
      ? `The plan has no ${noun === "tasks" ? "tasks" : "phases"} to show.`
      : broken === 0
        ? `Each of ${rows.length} ${noun} has exactly one who answers for it.`
        : `${broken} of ${rows.length} ${noun} do not have exactly one who answers for them.`;
  const lines = [page.strong(plan.title), "", ...wrap(head, page.width)];
  if (people.length > 0) {
    lines.push("", ...rolesTables(matrix, page.width), "");
    const legend = people.map(({ name }, k) => `${k + 1} ${name}`).join(" · ");
    lines.push(...wrap(legend, page.width), "");
    lines.push(...wrap("R does it, A answers for it, C is asked before, I is told after.", page.width));
  }
  if (faults.length > 0) {
    lines.push("", page.strong("Rows that break the rule of one A"));
    for (const fault of faults) {
      const said = wrap(sentence(fault), page.width - 4);
      lines.push(...said.map((line, k) => `${k === 0 ? "  " : "    "}${line}`));
    }
  }
  if (load.length > 0) {
    lines.push("", page.strong("What stands on whom"));
    const right = (heading: string) => ({ heading, align: "right" as const });
    const columns = [
      { heading: "", align: "left" as const },
      right("A"),
      right("of all A"),
      right("R"),
      right("C"),
      right("I"),
    ];
    const cells = load.map(({ name, accountable, part, responsible, consulted, informed }) => [
      name,
      String(accountable),
      `${Math.round(part * 100)} %`,
      String(responsible),
      String(consulted),
      String(informed),
    ]);
    lines.push(...table(columns, cells, page.width));
  }
  lines.push("", ...wrap(`One A a row is common practice. Plan ${plan.sha256.slice(0, 12)}.`, page.width));
  return `${lines.join("\n")}\n`;
}

function sentence({ code, name, who }: RoleFault): string {
  if (code === "no-accountable") return `${name}: nobody is accountable; name one.`;
  if (code === "no-responsible") return `${name}: nobody is responsible; name who does it.`;
  return `${name}: ${who.length} are accountable (${who.map((each) => each.name).join(", ")}); keep one.`;
}
