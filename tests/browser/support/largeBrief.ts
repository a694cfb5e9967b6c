import type { Brief, BriefAnswers } from "@leeway/core";
import { briefed, fullPlan, planOf } from "../../contract/brief/plans.ts";

/** Everything a brief can hold, in great number and at great length. */
export function largeBrief(): { brief: Brief; answers: BriefAnswers } {
  const { brief, answers } = briefed(planOf(fullPlan), 200);
  const long = (what: string) =>
    `${what} that goes on and on, since whoever wrote it had much to say and no one to stop them. `.repeat(6);
  const many = <T>(one: T | undefined, change: (one: T, i: number) => T): T[] =>
    one === undefined ? [] : Array.from({ length: 40 }, (_, i) => change(one, i));
  const response = brief.responses.worthBuying[0];
  const { decision, recommendation, scope, drivers, commitment } = brief;
  return {
    answers,
    brief: {
      ...brief,
      plan: { ...brief.plan, title: long("A title"), note: long("A note") },
      decision: { ...decision, ask: long("A request") },
      recommendation: {
        ...recommendation,
        recommend: long("A recommendation"),
        doNothing: { ...recommendation.doNothing, text: long("Nothing") },
        alternatives: many(recommendation.alternatives[0], () => ({
          name: long("An alternative"),
          text: long("A text"),
        })),
      },
      commitment: { ...commitment, releaseRule: long("A rule") },
      scope: {
        in: many(scope.in[0], (one, i) => ({ ...one, id: `in${i}`, name: long("An item") })),
        optional: many(scope.optional[0], (one) => ({ ...one, name: long("An item"), lost: long("A loss") })),
        out: many("x" as string, () => long("Something out")),
        constraints: [],
      },
      drivers: { ...drivers, rows: drivers.rows.map((row) => ({ ...row, name: long("A cause") })) },
      responses: {
        ...brief.responses,
        adopted: many(response, (one) => ({ ...one, action: long("An action"), adopted: true })),
        worthBuying: many(response, (one) => ({ ...one, action: long("An action") })),
      },
      assumptions: many(brief.assumptions[0], (one) => ({
        ...one,
        statement: long("A statement"),
        signpost: long("A signpost"),
      })),
      objections: {
        open: many(brief.objections.open[0], (one) => ({ ...one, text: long("An objection") })),
        settled: many(brief.objections.settled[0], (one) => ({ ...one, answer: long("An answer") })),
      },
      triggers: many(brief.triggers.at(-1), (one) => one),
      outcome: {
        approvers: many(brief.outcome.approvers[1], (one) => ({
          ...one,
          name: long("A name"),
          conditions: long("A condition"),
        })),
      },
    },
  };
}
