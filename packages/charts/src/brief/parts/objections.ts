import type { Brief, BriefObjection } from "@leeway/core";
import { first, named, sentence, strong, text } from "../sheet/build.ts";
import type { Line, Room, Section } from "../sheet/types.ts";

/** Open objections first, each with who raised it; then those that somebody took upon themselves, then those answered. */
export function objectionsSection({ objections }: Brief, room: Room): Section {
  const { open } = objections;
  const accepted = objections.settled.filter(({ state }) => state === "accepted");
  const settled = [...accepted, ...objections.settled.filter((one) => !accepted.includes(one))];
  if (open.length + settled.length === 0)
    return { key: "objections", title: "Objections", blocks: [text("No objection is recorded.")] };
  const left = Math.max(0, room.objections - open.length);
  const rest = settled.length > left ? settled.length - left : 0;
  return {
    key: "objections",
    title: `Objections: ${open.length === 0 ? "none" : open.length} open${settled.length === 0 ? "" : `, ${settled.length} settled`}`,
    blocks: [
      {
        kind: "list",
        items: [
          ...first(open, room.objections, (one) => objectionLine(one, room), "more open"),
          ...settled.slice(0, left).map((one) => objectionLine(one, room)),
          ...(rest > 0 ? [[`and ${rest} more, answered or accepted`]] : []),
        ],
      },
    ],
  };
}

/** "Bo Reed: It is too dear. Accepted by Cy Marsh: It pays. Evidence: The ledger of 2026." */
export function objectionLine(
  { who, text: said, answer, evidence, state, acceptedBy }: BriefObjection,
  room: Pick<Room, "name" | "text">,
): Line {
  const name = who === undefined ? "Somebody" : named(who.name, room.name);
  const words = said === undefined ? "no words are recorded." : sentence(said, room.text);
  const told = answer === undefined ? undefined : sentence(answer, room.text);
  const accepted =
    acceptedBy === undefined
      ? "Accepted; nobody is named"
      : `Accepted by ${named(acceptedBy.name, room.name)}`;
  const standing =
    state === "open"
      ? told === undefined
        ? "Open, no answer yet."
        : `Open. Answer so far: ${told}`
      : state === "accepted"
        ? told === undefined
          ? `${accepted}.`
          : `${accepted}: ${told}`
        : told === undefined
          ? "Answered; no words are recorded."
          : `Answered: ${told}`;
  const shown = evidence === undefined ? "" : ` Evidence: ${sentence(evidence, room.text)}`;
  return [strong(`${name}: `), `${words} `, `${standing}${shown}`];
}
