import type { Outlook, Responses, ResponseWorth } from "@leeway/core";
import { longName, markup, rightToLeft } from "./hardExplanations.ts";
import { samplePlan, sampleStamp } from "./sampleExplanation.ts";

const response = (
  id: string,
  action: string,
  entry: string,
  adopted: boolean,
  cost: number,
  days: number,
  netWorth: number,
): ResponseWorth => {
  const effect = {
    workingDays: -days,
    money: -netWorth,
    finishBy: days / 100,
    latenessAvoided: days * 900,
    netWorth,
    netWorthError: Math.abs(netWorth) / 20,
  };
  return {
    id,
    action,
    entry: { id: `${id}-entry`, name: entry },
    adopted,
    cost,
    alone: { ...effect, workingDays: -days * 1.2, netWorth: netWorth * 1.1 },
    given: effect,
  };
};

/** Invented responses. */
export const sampleResponseList: ResponseWorth[] = [
  response("meeting", "Pre-application meeting", "Permit office asks for changes", true, 2000, 4.1, 9800),
  response(
    "survey",
    "Survey of the quay wall before tender",
    "Quay wall needs pinning",
    false,
    3200,
    3.4,
    6100,
  ),
  response(
    "stock",
    "Second supplier keeps a heat pump in stock",
    "Heat pump arrives late",
    false,
    4000,
    1.3,
    250,
  ),
  response("crane", "Crane booked for two extra weeks", "Storm", false, 9000, 0.4, -7100),
  response("check", "Papers checked before filing", "Grant comes late", true, 1000, 0, -1000),
  response("hands", "Day off for volunteers", "Volunteers tire", false, 500, -0.6, -2400),
];

const outlook: Outlook = {
  date: "2027-11-02",
  day: 274.6,
  workingDays: 196,
  cost: 655_400,
  chance: { finishBy: 0.24, budget: 0.6, both: 0.2 },
  mean: { day: 262, cost: 631_000, lateness: 21_000 },
};

/** What each response of the sample plan buys. */
export function sampleResponses(responses: ResponseWorth[] = sampleResponseList): Responses {
  return {
    stamp: sampleStamp,
    plan: samplePlan,
    confidence: 0.8,
    asked: { finishBy: "2027-10-01", budget: 640_000 },
    none: outlook,
    stands: outlook,
    responses,
    notes: [],
  };
}

/** Responses at the edges of what a plan can give, by name. */
export function hardResponses(): Record<string, Responses> {
  const [first] = sampleResponseList;
  const one = first === undefined ? [] : [first];
  const renamed = (name: string) =>
    sampleResponses(
      sampleResponseList.map((each) => ({ ...each, action: name, entry: { ...each.entry, name } })),
    );
  const unpriced = sampleResponseList.map((each) => {
    const { latenessAvoided: _a, finishBy: _b, ...given } = each.given;
    return { ...each, given, alone: given };
  });
  return {
    "no responses": sampleResponses([]),
    "one response": sampleResponses(one),
    "one response, not worth it": sampleResponses(
      one.map((each) => ({ ...each, given: { ...each.given, netWorth: -400, workingDays: 0 } })),
    ),
    "none worth it": sampleResponses(sampleResponseList.slice(3)),
    "all alike": sampleResponses(["a", "b", "c"].flatMap((id) => one.map((each) => ({ ...each, id })))),
    "nothing asked, lateness not priced": { ...sampleResponses(unpriced), asked: {} },
    "forty responses": sampleResponses(
      Array.from({ length: 40 }, (_, k) =>
        response(`r${k}`, `Response ${k + 1}`, "Storm", k % 3 === 0, 100 * k, k / 4, 9000 - 700 * k),
      ),
    ),
    "a billion": sampleResponses(
      sampleResponseList.map((each) => ({
        ...each,
        cost: each.cost * 1e6,
        given: {
          ...each.given,
          netWorth: each.given.netWorth * 1e6,
          workingDays: each.given.workingDays * 50,
        },
      })),
    ),
    "very long names": renamed(longName),
    "right to left": renamed(rightToLeft),
    "markup for names": renamed(markup),
  };
}
