// What acceptances do. Source: the plan format, `acceptedFindings`.
import { planFindings } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { type Edits, edited, planOf, TODAY } from "./cleanPlan.ts";

const lead = {
  "tasks.wire.after": { task: "frame", lag: -1 },
  "tasks.roof.after": { task: "frame", lag: -1 },
};
const accepted = (more: object): Edits => ({
  acceptedFindings: { finding: "lead", who: "omar", date: "2027-01-10", why: "Both know when.", ...more },
});
const found = (edits: Edits) => planFindings(planOf(edited(edits)), { today: TODAY });

describe("acceptedFindings", () => {
  it("keeps the finding and says who, when and why; changes nothing else", () => {
    const plain = found(lead);
    const marked = found({ ...lead, ...accepted({ ids: ["wire", "frame"] }) });
    expect(marked.map(({ accepted: _, ...rest }) => rest)).toEqual(plain);
    expect(marked.filter((each) => each.accepted !== undefined)).toMatchObject([
      {
        code: "lead",
        ids: ["wire", "frame"],
        accepted: { who: "omar", date: "2027-01-10", why: "Both know when." },
      },
    ]);
  });

  it("without ids takes every finding of the code", () => {
    const marked = found({ ...lead, ...accepted({}) });
    expect(marked.filter((each) => each.accepted !== undefined).map(({ ids }) => ids[0])).toEqual([
      "roof",
      "wire",
    ]);
  });

  it("says which ids no longer match, and takes ids of what has gone from the plan", () => {
    const marked = found({ ...lead, ...accepted({ ids: ["wire", "frame", "gone"] }) });
    expect(marked.filter(({ code }) => code === "acceptance-unused")).toMatchObject([
      { severity: "note", path: "acceptedFindings[0]", ids: [], message: expect.stringContaining("gone") },
    ]);
  });

  it("does not take a finding about more than it names", () => {
    const marked = found({ ...lead, ...accepted({ ids: "wire" }) });
    expect(marked.some((each) => each.accepted !== undefined)).toBe(false);
    expect(marked.some(({ code }) => code === "acceptance-unused")).toBe(true);
  });

  it("names the code that was meant", () => {
    const marked = found(accepted({ finding: "leads" }));
    expect(marked).toMatchObject([{ code: "acceptance-unused", advice: expect.stringContaining("`lead`") }]);
  });

  it("is left out of the plan's hashes", () => {
    const [plain, marked] = [planOf(edited(lead)), planOf(edited({ ...lead, ...accepted({}) }))];
    expect([marked.sha256, marked.approvalSha256]).toEqual([plain.sha256, plain.approvalSha256]);
  });
});
