// The verbs sign, approvals, object and change on files of their own. What must hold: the version is kept before the
// plan is written, nothing is half-written, and a plan that somebody else changed meanwhile is left alone.
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readPlan } from "@leeway/core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { parseCall } from "../../../apps/command/src/call/parseCall.ts";
import { planFile } from "../../../apps/command/src/history/planFile.ts";
import { writeEntry } from "../../../apps/command/src/signing/writeEntry.ts";
import { approvalsVerb } from "../../../apps/command/src/verbs/approvals.ts";
import { changeVerb } from "../../../apps/command/src/verbs/change.ts";
import { objectVerb } from "../../../apps/command/src/verbs/object.ts";
import { signVerb } from "../../../apps/command/src/verbs/sign.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

const PLAN = `format: 1
title: Shed roof # of the rowing club
start: 2027-02-01
iterations: 64
commitment: { confidence: 0.7, budget: 9000 }
stakeholders:
  - { id: chair, name: The chair, approvesUpTo: 20000 } # until May
  - { id: clerk, name: The clerk, approvesUpTo: 100 }
approvals:
  - who: chair
tasks:
  - { id: strip, name: Strip the old roof, duration: [2, 3, 6], cost: 4500 }
`;
function scratch() {
  const folder = temporaryFolder();
  const plan = join(folder, "shed.plan.yaml");
  writeFileSync(plan, PLAN);
  return { folder, plan, versions: join(folder, "shed.versions"), text: () => readFileSync(plan, "utf8") };
}

let out = "";
let err = "";
beforeEach(() => {
  out = "";
  err = "";
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    err += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
});
const verbs = { sign: signVerb, approvals: approvalsVerb, object: objectVerb, change: changeVerb };
async function leeway(verb: keyof typeof verbs, ...words: string[]): Promise<number> {
  out = "";
  err = "";
  const parsed = parseCall([verb, ...words]);
  if (parsed.kind !== "call") throw new Error(JSON.stringify(parsed));
  return verbs[verb](parsed.call);
}
const sign = (plan: string, ...more: string[]) =>
  leeway("sign", plan, "--as", "chair", "--today", "2027-01-20", ...more);

describe("sign PLAN", () => {
  it("keeps the version as it was signed, and signing again changes nothing", async () => {
    const { plan, versions, text } = scratch();
    expect(await sign(plan)).toBe(0);
    const hash = readPlan(PLAN).plan?.sha256.slice(0, 12);
    expect(readdirSync(versions)).toEqual([`${hash}.plan.yaml`]);
    expect(readFileSync(join(versions, `${hash}.plan.yaml`), "utf8")).toBe(PLAN);
    const once = text();
    expect(once).toContain("# of the rowing club");
    expect(once).toContain("# until May");
    expect(await sign(plan)).toBe(0);
    expect(text()).toBe(once);
    expect(readdirSync(versions)).toHaveLength(1);
  });

  it("writes nothing on --dry-run, above a limit, or of standard input", async () => {
    const { plan, versions, text } = scratch();
    expect(await sign(plan, "--dry-run")).toBe(0);
    expect(await leeway("sign", plan, "--as", "clerk")).toBe(2);
    expect(err).toContain("may approve up to EUR 100");
    expect(await sign("-")).toBe(2);
    expect(err).toContain("standard input");
    expect(text()).toBe(PLAN);
    expect(existsSync(versions)).toBe(false);
  });

  it("leaves the plan alone where the version cannot be kept", async () => {
    const { plan, versions, text } = scratch();
    writeFileSync(versions, "a file where the folder should be");
    expect(await sign(plan)).toBe(2);
    expect(err).toContain("Nothing was written");
    expect(text()).toBe(PLAN);
  });

  it("leaves the plan alone when somebody changed it since it was read", async () => {
    const { folder, plan, text } = scratch();
    const file = await planFile(plan, "sign");
    if (file === undefined) throw new Error("not read");
    writeFileSync(plan, `${PLAN}# mine\n`);
    expect(await writeEntry(file, "signed")).toBe(false);
    expect(err).toContain("changed it meanwhile");
    expect(text()).toBe(`${PLAN}# mine\n`);
    expect(readdirSync(folder)).toEqual(["shed.plan.yaml"]);
  });

  it("leaves the plan alone when what comes first fails as on a full disk", async () => {
    const { folder, plan, text } = scratch();
    const file = await planFile(plan, "sign");
    if (file === undefined) throw new Error("not read");
    const full = Object.assign(new Error("ENOSPC: no space left on device"), {
      code: "ENOSPC",
      syscall: "write",
    });
    const written = await writeEntry(file, "signed", () => {
      throw full;
    });
    expect(written).toBe(false);
    expect(err).toContain("disk is full");
    expect(text()).toBe(PLAN);
    expect(readdirSync(folder)).toEqual(["shed.plan.yaml"]);
  });
});

describe("an error that the check finds", () => {
  // 2027-02-02 is before the three days of the plan as written are over: finish-by-before-plan.
  const early = PLAN.replace("budget: 9000", "budget: 9000, finishBy: 2027-02-02");

  it("stands in the way of approvals until it is accepted by name, or signed despite it", async () => {
    const { plan, text } = scratch();
    writeFileSync(plan, early);
    expect(await leeway("approvals", plan)).toBe(0);
    expect(out.replace(/\s+/g, " ")).toContain("What stands in the way - An error that the check finds");
    expect(await leeway("approvals", plan, "--json")).toBe(0);
    expect(JSON.parse(out).errors).toMatchObject([{ code: "finish-by-before-plan", severity: "error" }]);
    expect(await sign(plan)).toBe(2);
    expect(err).toContain("finish-by-before-plan");
    expect(err).toContain("--despite-errors");
    expect(text()).toBe(early);
    expect(await sign(plan, "--despite-errors")).toBe(0);
    expect(out.replace(/\s+/g, " ")).toContain("Despite an error that the check finds");
    expect(readPlan(text()).plan?.approvals).toMatchObject([{ who: "chair", decision: "approve" }]);
  });

  it("keeps nobody from sending the plan back, and counts no more once accepted", async () => {
    const { plan } = scratch();
    writeFileSync(plan, early);
    expect(await sign(plan, "--decision", "rework")).toBe(0);
    const accepted =
      "acceptedFindings: [{ finding: finish-by-before-plan, who: chair, date: 2027-01-19, why: Only to see }]\n";
    writeFileSync(plan, `${early}${accepted}`);
    expect(await leeway("approvals", plan, "--json")).toBe(0);
    expect(JSON.parse(out).errors).toEqual([]);
    expect(await sign(plan)).toBe(0);
  });
});

describe("approvals PLAN", () => {
  it("finds the signed version beside the plan and gives moves that add up to the difference", async () => {
    const { plan, text } = scratch();
    await sign(plan);
    writeFileSync(plan, text().replace("cost: 4500", "cost: 5000"));
    expect(await leeway("approvals", plan, "--json")).toBe(0);
    const { overall, moved, unexplained } = JSON.parse(out);
    expect(overall).toBe("outdated");
    expect(unexplained).toBe("no-entry");
    // The cost is certain, so that the whole difference is known by hand.
    expect(moved.difference.money).toBeCloseTo(500, 6);
    const sum = moved.moves.reduce((all: number, { money }: { money: number }) => all + money, 0);
    expect(sum).toBeCloseTo(500, 6);
  });

  it("asks for the signed version where it is not found, and takes it by --signed", async () => {
    const { folder, plan, versions, text } = scratch();
    await sign(plan);
    rmSync(versions, { recursive: true });
    writeFileSync(plan, text().replace("cost: 4500", "cost: 5000"));
    expect(await leeway("approvals", plan)).toBe(0);
    expect(out).toContain("--signed");
    const old = join(folder, "old.yaml");
    writeFileSync(old, PLAN);
    expect(await leeway("approvals", plan, "--signed", old, "--json")).toBe(0);
    expect(JSON.parse(out).moved.difference.money).toBeCloseTo(500, 6);
  });
});

describe("object and change", () => {
  it("block a signature until the objection is accepted by name; a change is logged with its approver", async () => {
    const { plan, text } = scratch();
    expect(await leeway("object", plan, "--as", "clerk", "--text", "Too dear")).toBe(0);
    expect(await sign(plan)).toBe(2);
    expect(err).toContain("too-dear");
    expect(await sign(plan, "--accept", "too-dear")).toBe(0);
    expect(readPlan(text()).plan?.objections).toMatchObject([
      { id: "too-dear", state: "accepted", acceptedBy: "chair" },
    ]);
    const said = ["--what", "Felt chosen", "--why", "It lasts", "--as", "clerk", "--approved-by", "chair"];
    expect(await leeway("change", plan, ...said)).toBe(0);
    expect(readPlan(text()).plan?.changes).toMatchObject([{ who: "clerk", approvedBy: "chair" }]);
    expect(text()).toContain("# until May");
  });

  it("are refused where a change names nobody who agreed, and where nobody says who opens it again", async () => {
    const { plan, text } = scratch();
    expect(await leeway("change", plan, "--what", "Felt", "--why", "It lasts", "--as", "clerk")).toBe(2);
    expect(err).toContain("--approved-by");
    await leeway("object", plan, "--as", "clerk", "--text", "Too dear");
    await leeway("object", plan, "--accept", "too-dear", "--as", "chair");
    const before = text();
    expect(await leeway("object", plan, "--reopen", "too-dear")).toBe(2);
    expect(await leeway("object", plan, "--answer", "too-dear", "--text", "It is not")).toBe(2);
    expect(err).toContain("accepted as it stands by The chair");
    expect(text()).toBe(before);
    expect(await leeway("object", plan, "--reopen", "too-dear", "--as", "clerk")).toBe(0);
  });
});

describe("a plan that changed after it was approved", () => {
  it("is signed again only once the change is logged with a reason and who agreed", async () => {
    const { plan, text } = scratch();
    await sign(plan);
    writeFileSync(plan, text().replace("cost: 4500", "cost: 4600"));
    expect(await sign(plan)).toBe(2);
    expect(err).toContain("its change log has no entry since");
    const said = ["--what", "Felt", "--why", "It lasts", "--as", "clerk", "--approved-by", "chair"];
    expect(await leeway("change", plan, ...said, "--today", "2027-01-21")).toBe(0);
    expect(await leeway("sign", plan, "--as", "chair", "--today", "2027-01-21")).toBe(0);
  });
});

describe("a responsibility matrix", () => {
  // One who answers for each row: common practice, no source.
  it.each([
    ["with two who answer for a task", "[chair, clerk]", "all answer for"],
    [
      "with a row that has nobody, among others that have",
      "chair }\n  - { id: paint, name: Paint, duration: 1",
      "Nobody answers for Paint",
    ],
  ])("%s is not approved", async (_, accountable, says) => {
    const { plan } = scratch();
    writeFileSync(plan, PLAN.replace("cost: 4500", `cost: 4500, accountable: ${accountable}`));
    expect(await sign(plan)).toBe(2);
    expect(err).toContain(says);
    expect(await sign(plan, "--decision", "rework")).toBe(0);
  });
});

describe("conditions", () => {
  it("are seen by approvals once their day has passed, and said to be met without signing anew", async () => {
    const { plan, text } = scratch();
    const on = ["--decision", "approve-subject-to", "--conditions", "A scaffold is found"];
    expect(await sign(plan, ...on, "--conditions-by", "2027-02-10")).toBe(0);
    expect(out).toContain("to be met by Wed 10 Feb 2027");
    await leeway("approvals", plan, "--today", "2027-02-10");
    expect(out).toContain("on conditions");
    await leeway("approvals", plan, "--today", "2027-02-11");
    expect(out.replace(/\s+/g, " ")).toContain("the condition of The chair was to be met has passed");
    const met = ["--conditions-met", "--today", "2027-02-09"];
    expect(await leeway("sign", plan, "--as", "chair", ...met, "--accept", "x")).toBe(2);
    expect(await leeway("sign", plan, "--as", "chair", ...met)).toBe(0);
    expect(readPlan(text()).plan?.approvals).toMatchObject([{ conditionsMet: "2027-02-09" }]);
    await leeway("approvals", plan, "--today", "2027-02-11");
    expect(out).toContain("Approved by all");
  });
});
