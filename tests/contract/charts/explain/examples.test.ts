import { readFileSync } from "node:fs";
import { sharesDays, sharesMoney, walkDays, walkMoney } from "@leeway/charts";
import { explain, readPlan } from "@leeway/core";
import { afterAll, describe, expect, it, vi } from "vitest";
import { figuresOf } from "../../../../packages/charts/gallery/figures.ts";
import { galleryPage } from "../../../../packages/charts/gallery/galleryPage.ts";
import { newDocument } from "../newDocument.ts";
import { expectReadable } from "../readable.ts";

// The charts on what the library itself answers for the example plans, not on samples; few iterations, as only the
// drawing is looked at.

const document = newDocument();
const warn = vi.spyOn(console, "warn");
const error = vi.spyOn(console, "error");
afterAll(() => {
  expect(warn).not.toHaveBeenCalled();
  expect(error).not.toHaveBeenCalled();
});

const read = (name: string) => {
  const { plan } = readPlan(
    readFileSync(new URL(`../../../../examples/${name}.plan.yaml`, import.meta.url), "utf8"),
  );
  if (plan === undefined) throw new Error(`examples/${name}.plan.yaml has problems`);
  return plan;
};
const run = { iterations: 256 };

describe.each(["minimal", "quillmarsh-clinic", "ostrel-ferry-ticketing"])(
  "charts of examples/%s.plan.yaml",
  (name) => {
    const plan = read(name);
    const shown = figuresOf(plan, run);

    it.each(shown.map(({ call, draw }) => [call, draw] as const))("%s is readable", (_, draw) =>
      expectReadable(draw, document),
    );

    // Read back from the picture: figures shown in a column add up to the sum beneath them, but for rounding.
    it("shares and steps, as shown, add up to the contingency shown", () => {
      const { explanation } = explain(plan, run);
      if (explanation === undefined) throw new Error("the example can be explained");
      for (const chart of [sharesDays, sharesMoney, walkDays, walkMoney]) {
        const { rows } = chart(explanation, { document }).table;
        const column = chart === sharesDays || chart === sharesMoney ? 2 : 1;
        const value = (row: string[] | undefined) =>
          Number((row?.[column] ?? "").replaceAll(",", "").replace("−", "-").replace("+", ""));
        const parts = rows.slice(0, -1).map(value);
        const places = rows.map((row) => (row[column] ?? "").split(".")[1]?.length ?? 0);
        const amounts = parts.concat(value(rows.at(-1))).map(Math.abs);
        const largest = Math.max(...amounts);
        // The last digit of a column has one place: a tenth of a day, or the third digit of the largest sum.
        const step =
          chart === sharesMoney || chart === walkMoney
            ? 10 ** Math.max(-2, Math.floor(Math.log10(largest)) - 2)
            : 10 ** -Math.max(...places);
        const sum = parts.reduce((total, part) => total + part, 0);
        expect(Math.abs(sum - value(rows.at(-1)))).toBeLessThanOrEqual(
          ((parts.length + 1) * step) / 2 + 1e-9,
        );
      }
    });
  },
);

describe("galleryPage(plans)", () => {
  const plan = read("minimal");
  const shown = figuresOf(plan, run);
  const page = galleryPage([{ title: plan.title, file: "minimal.plan.yaml", shown }], document);

  it("holds every chart twice, with its table once, and no script or link", () => {
    const body = newDocument();
    body.body.innerHTML = page.slice(page.indexOf("<body>") + 6, page.indexOf("</body>"));
    expect(body.querySelectorAll("figure > svg")).toHaveLength(2 * shown.length);
    expect(body.querySelectorAll("details table")).toHaveLength(shown.length);
    expect(page).not.toMatch(/<script|<link|<img|href=|src=|url\(/i);
  });
  it("names each chart by the call that draws it", () => {
    for (const { call } of shown) expect(page).toContain(`<code>${call}</code>`);
  });
});
