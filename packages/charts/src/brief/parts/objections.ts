import type { Brief, BriefObjection } from "@leeway/core";
import { first, named, sentence, strong, text } from "../sheet/build.ts";
import type { Line, Room, Section } from "../sheet/types.ts";

/** Open objections first, each with who raised it; then those that were answered or accepted. */
export function objectionsSection({ objections }: Brief, room: Room): Section {
  const { open, settled } = objections;
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

export function objectionLine(
  { who, text: said, answer, state }: BriefObjection,
  room: Pick<Room, "name" | "text">,
): Line {
  const name = who === undefined ? "Somebody" : named(who.name, room.name);
  const words = said === undefined ? "no words are recorded." : sentence(said, room.text);
  const standing =
    state === "open"
      ? answer === undefined
        ? "Open, no answer yet."
        : `Open. Answer so far: ${sentence(answer, room.text)}`
      : state === "accepted"
        ? "Accepted by name."
        : answer === undefined
          ? "Answered; no words are recorded."
          : `Answered: ${sentence(answer, room.text)}`;
  return [strong(`${name}: `), `${words} `, standing];
}
