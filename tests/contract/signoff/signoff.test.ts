import { describe, expect, it } from "vitest";
import {
  acceptObjection,
  addToPlan,
  answerObjection,
  approvalsState,
  logChange,
  logObjection,
  meetConditions,
  type Plan,
  readPlan,
  reopenObjection,
  type Signature,
  setInPlan,
  signPlan,
} from "../../../packages/core/src/index.ts";

// What a sign-off has to keep, from the trade: an approval is of one version of the plan; a changed plan needs a reason
// and somebody who agreed (GAO-16-89G, best practice 10, digest read); objections are answered or accepted by name
// (common practice, no source). The documents are hand-made.
const text = `format: 1
title: Shed roof
start: 2027-02-01
commitment: { budget: 5000, reserve: 900 }
# who decides
stakeholders:
  - { id: chair, name: The chair, approvesUpTo: 10000, delegate: deputy } # until May
  - { id: clerk, name: The clerk, approvesUpTo: 4000 }
  - { id: deputy, name: The deputy }
  - { id: guest, name: A guest }
approvals:
  - { who: chair, note: looks at the date }
  - who: clerk
tasks:
  - { id: strip, name: Strip, duration: [2, 3, 6], cost: 4500 }
risks:
  - { id: rain, name: Rain, probability: 0.3, impacts: { tasks: strip, delay: 2 } }
`;

function planOf(of: string): Plan {
  const { plan, problems } = readPlan(of);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}
const by = (change: Partial<Signature>): Signature => ({
  who: "chair",
  decision: "approve",
  accepts: [],
  date: "2027-01-20",
  sum: 4800,
  ...change,
});
function signed(of: string, change: Partial<Signature> = {}): string {
  const result = signPlan(of, planOf(of), by(change));
  if (result.text === undefined) throw new Error(JSON.stringify(result));
  return result.text;
}
const codes = (of: string, change: Partial<Signature>): string[] =>
  signPlan(of, planOf(of), by(change)).refusals.map(({ code }) => code);
const stateOf = (of: string, who: string) =>
  approvalsState(planOf(of), 4800).approvers.find((one) => one.who === who);

describe("signPlan", () => {
  it("writes the decision into the signer's own entry, bound to the hash, and leaves every other line alone", () => {
    const after = signed(text);
    const entry = planOf(after).approvals.find(({ who }) => who === "chair");
    expect(entry).toEqual({
      who: "chair",
      decision: "approve",
      date: "2027-01-20",
      note: "looks at the date",
      plan: planOf(text).approvalSha256,
    });
    const gone = text.split("\n").filter((line) => !after.includes(line));
    expect(gone).toEqual(["  - { who: chair, note: looks at the date }"]);
    expect(after).toContain("# until May");
  });

  it("covers the plan it was put under, and goes on covering it while only the talk about it changes", () => {
    let after = signed(text);
    expect(stateOf(after, "chair")?.state).toBe("covers");
    const plan = planOf(after);
    after = logObjection(after, plan, { who: "guest", text: "Too loud", date: "2027-01-21" }).text ?? "";
    after =
      logChange(after, planOf(after), {
        ...{ who: "chair", what: "None", why: "Test", date: "2027-01-21" },
        approvedBy: "chair",
      }).text ?? "";
    after = setInPlan(after, ["statusDate"], "2027-02-02").text;
    after = setInPlan(after, ["tasks", "strip", "started"], "2027-02-01").text;
    after = setInPlan(after, ["risks", "rain", "status"], "closed").text;
    expect(stateOf(after, "chair")?.state).toBe("covers");
    expect(planOf(after).sha256).not.toBe(plan.sha256);
  });

  it.each([
    ["an estimate", ["tasks", "strip", "duration"], [2, 3, 7]],
    ["a probability", ["risks", "rain", "probability"], 0.4],
    ["the budget", ["commitment", "budget"], 5001],
    ["the seed", ["seed"], "other"],
    ["a note of a task", ["tasks", "strip", "note"], "by hand"],
  ])("no longer covers a plan in which %s changed", (_, path, value) => {
    const after = setInPlan(signed(text), path as string[], value).text;
    expect(stateOf(after, "chair")?.state).toBe("stale");
    expect(approvalsState(planOf(after), 4800).overall).toBe("outdated");
  });

  it("signed again, binds to the plan as it is then, in the same entry", () => {
    const changed = setInPlan(signed(text), ["commitment", "budget"], 5200).text;
    const again = signed(changed, { date: "2027-02-01" });
    expect(planOf(again).approvals).toHaveLength(2);
    expect(stateOf(again, "chair")).toMatchObject({ state: "covers", date: "2027-02-01" });
  });

  it("writes a single entry that is no list, and makes a list where there is none", () => {
    const single = text.replace(/approvals:\n.*\n.*\n/, "approvals: { who: chair }\n");
    expect(stateOf(signed(single), "chair")?.state).toBe("covers");
    const none = text.replace(/approvals:\n.*\n.*\n/, "");
    expect(stateOf(signed(none), "chair")?.state).toBe("covers");
    const json = JSON.stringify({
      format: 1,
      title: "x",
      start: "2027-02-01",
      tasks: { id: "a", name: "A", duration: 1 },
      stakeholders: [{ id: "chair", name: "C", approvesUpTo: 1e6 }],
    });
    expect(JSON.parse(signed(json)).approvals[0].who).toBe("chair");
  });

  it.each([
    ["somebody nobody knows", { who: "nobody" }, ["unknown-person"]],
    ["somebody who approves nothing", { who: "guest" }, ["not-an-approver"]],
    ["a sum above the limit", { who: "clerk" }, ["above-limit"]],
    ["a stand-in who is no delegate", { by: "guest" }, ["not-an-approver"]],
    ["a condition that is not said", { decision: "approve-subject-to", conditions: " " }, ["no-conditions"]],
    ["an objection nobody raised", { accepts: ["none"] }, ["unknown-objection"]],
    [
      "several things at once",
      { who: "clerk", by: "guest", decision: "approve-subject-to" },
      ["not-an-approver", "no-conditions", "above-limit"],
    ],
  ] as [string, Partial<Signature>, string[]][])("refuses %s", (_, change, wanted) => {
    expect(codes(text, change)).toEqual(wanted);
    expect(signPlan(text, planOf(text), by(change)).text).toBeUndefined();
  });

  it("lets half a unit of money pass, since a limit is a round sum", () => {
    expect(codes(text, { who: "clerk", sum: 4000.4 })).toEqual([]);
    expect(codes(text, { who: "clerk", sum: 4000.6 })).toEqual(["above-limit"]);
  });

  it("lets the delegate sign, in the approver's entry and by name", () => {
    const after = signed(text, { by: "deputy" });
    expect(stateOf(after, "chair")).toMatchObject({ state: "covers", by: "deputy" });
  });

  it("holds the delegate to a limit of their own", () => {
    const limited = text.replace("name: The deputy }", "name: The deputy, approvesUpTo: 4000 }");
    expect(codes(limited, { by: "deputy" })).toEqual(["above-limit"]);
    expect(codes(limited, { by: "deputy", sum: 3900 })).toEqual([]);
    expect(codes(limited, { by: "deputy", decision: "rework" })).toEqual([]);
  });

  it("sends a plan back without looking at limits or objections", () => {
    const objected =
      logObjection(text, planOf(text), { who: "guest", text: "Too loud", date: "2027-01-12" }).text ?? "";
    expect(codes(objected, { who: "clerk", decision: "rework" })).toEqual([]);
    expect(approvalsState(planOf(signed(objected, { decision: "rework" }))).overall).toBe("rework");
  });

  it("does not sign before the day of the decision that is there", () => {
    expect(codes(signed(text), { date: "2027-01-19" })).toEqual(["date-before"]);
  });
});

describe("open objections", () => {
  const objected =
    logObjection(text, planOf(text), { who: "guest", text: "Too loud for us", date: "2027-01-12" }).text ??
    "";

  it("stand in the way until they are answered, or accepted by name", () => {
    expect(codes(objected, {})).toEqual(["open-objection"]);
    const answered = answerObjection(objected, planOf(objected), {
      id: "too-loud-for",
      answer: "Mornings only",
      changedPlan: true,
    });
    expect(codes(answered.text ?? "", {})).toEqual([]);
    const after = signed(objected, { accepts: ["too-loud-for"] });
    expect(planOf(after).objections[0]).toMatchObject({ state: "accepted", acceptedBy: "chair" });
    expect(stateOf(after, "chair")?.state).toBe("covers");
  });

  it("get an id nobody has", () => {
    const second = logObjection(objected, planOf(objected), {
      who: "clerk",
      text: "Too loud for us as well",
      date: "2027-01-13",
    });
    expect(second.id).toBe("too-loud-for-2");
    expect(planOf(second.text ?? "").objections).toHaveLength(2);
    const strange = logObjection(text, planOf(text), { who: "guest", text: "鼠 …", date: "2027-01-13" });
    expect(strange.id).toBe("objection");
    expect(planOf(strange.text ?? "").objections[0]?.text).toBe("鼠 …");
  });

  it("are opened again, and refuse what was done already", () => {
    const id = "too-loud-for";
    const plan = planOf(objected);
    expect(reopenObjection(objected, plan, { id, who: "guest" }).refusals[0]?.code).toBe("objection-state");
    const accepted = acceptObjection(objected, plan, { id, who: "chair" }).text ?? "";
    expect(acceptObjection(accepted, planOf(accepted), { id, who: "clerk" }).refusals[0]?.rule).toContain(
      "The chair",
    );
    const open = reopenObjection(accepted, planOf(accepted), { id, who: "guest" }).text ?? "";
    expect(codes(open, {})).toEqual(["open-objection"]);
    expect(planOf(open).objections[0]).toMatchObject({ state: "open", reopenedBy: "guest" });
    expect(
      answerObjection(objected, plan, { id: "none", answer: "x", changedPlan: false }).refusals[0]?.code,
    ).toBe("unknown-objection");
    expect(
      logObjection(text, planOf(text), { who: "guest", text: " ", date: "2027-01-12" }).refusals[0]?.code,
    ).toBe("empty-text");
  });

  it("that were accepted stand by a name: they are not answered over it, and only a party opens them again", () => {
    const id = "too-loud-for";
    const accepted = acceptObjection(objected, planOf(objected), { id, who: "chair" }).text ?? "";
    const over = answerObjection(accepted, planOf(accepted), { id, answer: "Hush", changedPlan: false });
    expect(over.refusals).toMatchObject([{ code: "objection-state" }]);
    expect(over.refusals[0]?.rule).toContain("The chair");
    const may = (who: string) =>
      reopenObjection(accepted, planOf(accepted), { id, who }).refusals.map(({ code }) => code);
    // Raised by the guest, accepted by the chair; the clerk is asked to approve; the deputy is none of these.
    expect(["guest", "chair", "clerk", "deputy", "nobody"].map(may)).toEqual([
      [],
      [],
      [],
      ["not-a-party"],
      ["unknown-person"],
    ]);
    const answered = answerObjection(objected, planOf(objected), { id, answer: "a", changedPlan: false });
    const better = answerObjection(answered.text ?? "", planOf(answered.text ?? ""), {
      ...{ id, answer: "b", changedPlan: false },
    });
    expect(planOf(better.text ?? "").objections[0]?.answer).toBe("b");
  });
});

describe("conditions of an approval", () => {
  const conditional = { decision: "approve-subject-to", conditions: "A scaffold is found" } as const;
  const until = signed(text, { ...conditional, conditionsBy: "2027-02-10" });
  const chairOn = (of: string, today?: string) => {
    const found = approvalsState(planOf(of), 4800, today);
    const chair = found.approvers.find(({ who }) => who === "chair");
    return [found.overall, chair?.lapsed];
  };
  const whole = signed(until, { who: "clerk", sum: 3000 });

  it("lapse the day after theirs, unless they were met; both are said by the plan and bind nothing anew", () => {
    expect(chairOn(whole)).toEqual(["on-conditions", false]);
    expect(chairOn(whole, "2027-02-10")).toEqual(["on-conditions", false]);
    expect(chairOn(whole, "2027-02-11")).toEqual(["lapsed", true]);
    const met = meetConditions(whole, planOf(whole), { who: "chair", date: "2027-02-09" }).text ?? "";
    expect(chairOn(met, "2027-02-11")).toEqual(["approved", false]);
    expect(stateOf(met, "chair")).toMatchObject({ state: "covers", conditionsMet: "2027-02-09" });
  });

  it("lapse by the status date too", () => {
    const later = setInPlan(whole, ["statusDate"], "2027-02-11").text;
    expect(chairOn(later, "2027-01-01")).toEqual(["lapsed", true]);
  });

  it.each([
    ["somebody else's word", { who: "chair", by: "clerk", date: "2027-02-09" }, "not-an-approver"],
    ["nobody's condition", { who: "clerk", date: "2027-02-09" }, "no-condition-open"],
    ["a day before they were set", { who: "chair", date: "2027-01-02" }, "date-before"],
  ])("are not met by %s", (_, said, code) => {
    expect(meetConditions(whole, planOf(whole), said).refusals.map((each) => each.code)).toEqual([code]);
  });

  it("have a day that lies ahead, and only with conditions", () => {
    expect(codes(text, { ...conditional, conditionsBy: "2027-01-19" })).toEqual(["date-before"]);
    expect(codes(text, { conditionsBy: "2027-02-19" })).toEqual(["no-conditions"]);
  });

  it("go when the same approver decides without them", () => {
    const plain = signed(until, { date: "2027-02-01" });
    expect(planOf(plain).approvals.find(({ who }) => who === "chair")).not.toHaveProperty("conditionsBy");
    expect(planOf(plain).approvals.find(({ who }) => who === "chair")).not.toHaveProperty("conditions");
  });
});

describe("approvalsState", () => {
  const state = (of: string, sum?: number) => approvalsState(planOf(of), sum);

  it("waits for those asked, takes the budget where no sum is given, and keeps the reserve apart", () => {
    expect(state(text)).toMatchObject({ overall: "waiting", sum: 5000, reserve: 900, open: [] });
    expect(stateOf(text, "clerk")).toMatchObject({ state: "pending", aboveLimit: true });
  });

  it("is approved when all have signed the plan as it is, on conditions when one has", () => {
    const chair = signed(text);
    expect(state(chair).overall).toBe("waiting");
    const both = signed(chair, { who: "clerk", sum: 3000 });
    expect(state(both)).toMatchObject({
      overall: "approved",
      lastSigned: "2027-01-20",
      unexplained: undefined,
    });
    const on = signed(both, { decision: "approve-subject-to", conditions: "Ask again in May" });
    expect(state(on).overall).toBe("on-conditions");
  });

  it("names the one with the least limit that suffices when nobody asked may approve the sum", () => {
    const one = text.replace(/approvals:\n.*\n.*\n/, "approvals: [{ who: clerk }]\n");
    expect(state(one, 4800).approvers.map(({ who, state: is }) => [who, is])).toEqual([
      ["clerk", "pending"],
      ["chair", "missing"],
    ]);
    expect(state(one, 3000).approvers).toHaveLength(1);
  });

  it("names all of those who may, where there are several: one of them will do", () => {
    const two = text
      .replace(/approvals:\n.*\n.*\n/, "approvals: [{ who: clerk }]\n")
      .replace("name: A guest }", "name: A guest, approvesUpTo: 6000 }");
    expect(state(two, 4800).approvers.map(({ who, state: is }) => [who, is])).toEqual([
      ["clerk", "pending"],
      ["guest", "missing"],
      ["chair", "missing"],
    ]);
    expect(state(two, 7000).approvers.map(({ who }) => who)).toEqual(["clerk", "chair"]);
  });

  it("asks for a reason and an approver once the plan differs from what was signed", () => {
    let after = setInPlan(signed(text), ["commitment", "budget"], 5100).text;
    expect(state(after).unexplained).toBe("no-entry");
    const said = { who: "clerk", what: "More money", why: "Slate", date: "2027-01-25" };
    const logged = (more: object) => addToPlan(after, ["changes"], { ...said, ...more }).text;
    expect(state(logged({ date: "2027-01-02", approvedBy: "chair" })).unexplained).toBe("no-entry");
    expect(state(logged({})).unexplained).toBe("no-approver");
    after = logChange(after, planOf(after), { ...said, approvedBy: "chair" }).text ?? "";
    expect(state(after).unexplained).toBeUndefined();
  });

  it("says when nobody is asked", () => {
    const none = text.replace(/approvals:\n.*\n.*\n/, "").replaceAll(/, approvesUpTo: \d+/g, "");
    expect(state(none)).toMatchObject({ overall: "not-asked", approvers: [] });
  });
});

describe("logChange", () => {
  it("refuses an entry without words or by nobody, all at once", () => {
    const { refusals } = logChange(text, planOf(text), { who: "x", what: "", why: " ", date: "2027-01-02" });
    expect(refusals.map(({ code }) => code)).toEqual([
      "unknown-person",
      "no-approver",
      "empty-text",
      "empty-text",
    ]);
  });

  it("needs an approver, or the delegate of one, to have agreed; where none is named, anybody of the plan", () => {
    const said = { who: "clerk", what: "More money", why: "Slate", date: "2027-01-25" };
    const by = (approvedBy: string, of = text) =>
      logChange(of, planOf(of), { ...said, approvedBy }).refusals.map(({ code }) => code);
    expect(["chair", "deputy", "guest", "nobody"].map((who) => by(who))).toEqual([
      [],
      [],
      ["not-an-approver"],
      ["unknown-person"],
    ]);
    const none = text.replace(/approvals:\n.*\n.*\n/, "").replaceAll(/, approvesUpTo: \d+/g, "");
    expect(by("guest", none)).toEqual([]);
  });
});
