import type { Plan } from "../plan/types.ts";
import { isAbove, limitOf, personOf } from "./approvalsState.ts";
import type { Signature } from "./signatureEntry.ts";
import type { Refusal } from "./types.ts";

/**
 * Why a decision cannot be recorded; empty: it can. To send a plan back needs no limit, and neither open objections nor
 * findings stand in its way. Pure: the same rules wherever it is recorded.
 */
export function signatureRefusals(
  plan: Plan,
  { who, by, decision, conditions, conditionsBy, accepts, sum, date, errors = [] }: Signature,
): Refusal[] {
  const found: Refusal[] = [];
  const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
  for (const id of [who, ...(by === undefined ? [] : [by])]) {
    if (known.includes(id)) continue;
    const remedy =
      known.length === 0 ? "Add them to `stakeholders`." : `Name one of: ${[...known].sort().join(", ")}.`;
    found.push({
      code: "unknown-person",
      received: id,
      rule: "There is nobody of that id in the plan.",
      remedy,
    });
  }
  if (found.length > 0) return found;
  const { name, delegate } = personOf(plan, who);
  const limit = limitOf(plan, who);
  const isAsked = plan.approvals.some((approval) => approval.who === who);
  if (!isAsked && limit === undefined) {
    const rule = `${name} approves nothing in this plan: no entry of \`approvals\` asks them and they have no \`approvesUpTo\`.`;
    found.push({
      code: "not-an-approver",
      received: who,
      rule,
      remedy: "Add an entry to `approvals`, or name another.",
    });
  }
  if (by !== undefined && by !== who && by !== delegate) {
    const rule = `${personOf(plan, by).name} does not sign in place of ${name}.`;
    const remedy =
      delegate === undefined
        ? "Name a `delegate` of theirs in the plan."
        : `Their delegate is ${personOf(plan, delegate).name} (${delegate}).`;
    found.push({ code: "not-an-approver", received: by, rule, remedy });
  }
  if (decision === "approve-subject-to" && (conditions ?? "").trim() === "") {
    const rule = "To approve subject to conditions, they must be said.";
    found.push({ code: "no-conditions", received: decision, rule, remedy: "Add the conditions." });
  }
  if (conditionsBy !== undefined && decision !== "approve-subject-to") {
    const rule = "Only an approval subject to conditions has a day by which they are met.";
    const remedy = "Leave the day out, or approve subject to conditions.";
    found.push({ code: "no-conditions", received: conditionsBy, rule, remedy });
  }
  if (conditionsBy !== undefined && conditionsBy < date) {
    const rule = `The conditions would have lapsed before they are said, on ${date}.`;
    found.push({ code: "date-before", received: conditionsBy, rule, remedy: "Name a later day." });
  }
  const ids = plan.objections.map(({ id }) => id);
  for (const id of accepts) {
    if (ids.includes(id)) continue;
    const remedy = ids.length === 0 ? "The plan has none." : `Name one of: ${ids.join(", ")}.`;
    found.push({
      code: "unknown-objection",
      received: id,
      rule: "There is no objection of that id.",
      remedy,
    });
  }
  if (decision !== "rework") {
    const money = (value: number) => `${plan.currency} ${Math.round(value).toLocaleString("en-GB")}`;
    // A percentile is no surer than three digits, whatever it is of: no more of them are said.
    const asks = (above: number) => {
      const rounded = Number((sum ?? 0).toPrecision(3));
      return rounded > above ? money(rounded) : "a little more";
    };
    if (isAbove(sum, limit)) {
      const rule = `${name} may approve up to ${money(limit ?? 0)}; this plan asks for ${asks(limit ?? 0)}.`;
      const remedy = "Ask somebody with a higher limit, or change the plan or the limit.";
      found.push({ code: "above-limit", received: who, rule, remedy });
    }
    // Who stands in decides no more than they might themselves.
    const own = by === undefined || by === who ? undefined : limitOf(plan, by);
    if (by !== undefined && isAbove(sum, own)) {
      const rule = `${personOf(plan, by).name}, who signs in their place, may approve up to ${money(own ?? 0)}; this plan asks for ${asks(own ?? 0)}.`;
      const remedy = `Ask ${name}, or change the plan or the limit.`;
      found.push({ code: "above-limit", received: by, rule, remedy });
    }
    for (const { id, text, state } of plan.objections) {
      if (state !== "open" || accepts.includes(id)) continue;
      const rule = `The objection "${text ?? id}" is open.`;
      found.push({ code: "open-objection", received: id, rule, remedy: "Answer it, or accept it by name." });
    }
    for (const { code, message, advice } of errors) {
      const rule = `The check finds an error. ${message}`;
      found.push({ code: "error-found", received: code, rule, remedy: advice });
    }
  }
  const before = plan.approvals.find((approval) => approval.who === who)?.date;
  if (before !== undefined && before > date) {
    const rule = `${name} has decided on ${before} already, which is later than ${date}.`;
    found.push({ code: "date-before", received: date, rule, remedy: "Name a later day." });
  }
  return found;
}
