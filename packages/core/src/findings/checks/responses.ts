import type { Check, CheckContext, Found } from "../context.ts";
import { entriesOf, type PlacedEntry } from "../network/entries.ts";
import { joined } from "../words.ts";
import { isOpportunity } from "./register.ts";

/** What is done about risks and assumptions: whether it was thought of, decided, complete and in time. */
export const checkResponses: Check = (context) =>
  entriesOf(context.plan).flatMap((each) => [...decisionFound(each), ...responsesFound(context, each)]);

function decisionFound({ entry, path }: PlacedEntry): Found[] {
  const { status, responses, impacts, probability, note, onlyIf } = entry;
  if (status !== "open" || probability === 0 || impacts.length === 0 || note !== undefined) return [];
  const at = { path, ids: [entry.id] };
  if (responses.length === 0) {
    // What exists only because of a response is looked at there; a chance to gain needs no defence.
    if (entry.kind === "assumption" || onlyIf !== undefined || isOpportunity(entry)) return [];
    return [{ ...at, code: "no-response", says: `No response to "${entry.name}" is written down.` }];
  }
  if (responses.some(({ adopted, note }) => adopted || note !== undefined)) return [];
  const says = `None of the ${responses.length === 1 ? "responses" : `${responses.length} responses`} to "${entry.name}" is adopted.`;
  return [{ ...at, code: "response-undecided", says }];
}

function responsesFound({ now }: CheckContext, { entry, path }: PlacedEntry): Found[] {
  if (entry.status === "closed") return [];
  return entry.responses.flatMap((response, r): Found[] => {
    const at = { path: `${path}.responses[${r}]`, ids: [response.id] };
    const missing = response.adopted
      ? [
          ...(response.owner === undefined ? ["owner"] : []),
          ...(response.due === undefined ? ["day"] : []),
          ...(response.cost === undefined ? ["cost"] : []),
        ]
      : [];
    const late = response.due !== undefined && now !== undefined && response.due < now;
    return [
      ...(missing.length > 0
        ? [
            {
              ...at,
              code: "response-incomplete" as const,
              says: `"${response.action}" is adopted and has no ${joined(missing, "or")}.`,
            },
          ]
        : []),
      ...(late
        ? [
            {
              ...at,
              code: "response-overdue" as const,
              says: `"${response.action}" was due on ${response.due}${response.adopted ? "" : " and is not adopted"}.`,
            },
          ]
        : []),
    ];
  });
}
