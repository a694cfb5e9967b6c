// Who wrote a task or an estimate down is kept apart from who said it. The documents are hand-made.
import { addOpinion, enteredIn } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mustRead } from "../plan/plans.ts";

const text = `format: 1
title: Shed # of the club
start: 2027-02-01
people: [{ id: lena, name: Lena }, { id: omar, name: Omar }]
tasks:
  - { id: dig, name: Dig, duration: [2, 3, 6], estimatedBy: lena } # by hand
  - { id: pour, name: Pour, duration: 2, enteredBy: lena }
`;

describe("enteredIn(text, tasks, who)", () => {
  it("says who entered what, beside those who did before, and changes no hash and no other line", () => {
    const after = enteredIn(text, ["dig", "pour", "none"], "omar").text;
    const [dig, pour] = mustRead(after).tasks;
    expect([dig?.enteredBy, pour?.enteredBy, dig?.estimatedBy]).toEqual([
      ["omar"],
      ["lena", "omar"],
      ["lena"],
    ]);
    expect(mustRead(after).sha256).toBe(mustRead(text).sha256);
    expect(after).toContain("# by hand");
    expect(enteredIn(after, ["dig", "pour"], "omar").text).toBe(after);
  });

  it("is kept of an opinion that somebody else wrote down", () => {
    const [dig] = mustRead(text).tasks;
    if (dig?.duration === undefined) throw new Error("no task");
    const opinion = { by: "lena", of: "duration", estimate: dig.duration, enteredBy: ["omar"] } as const;
    const after = mustRead(addOpinion(text, dig, { ...opinion, enteredBy: ["omar"] }).text);
    expect(after.tasks[0]?.opinions).toMatchObject([{ by: "lena", enteredBy: ["omar"] }]);
  });
});
