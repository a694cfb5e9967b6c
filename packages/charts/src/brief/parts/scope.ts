import type { Brief } from "@leeway/core";
import { inLine, sentence, strong, text } from "../sheet/build.ts";
import type { Block, Room, Section } from "../sheet/types.ts";

/** What is delivered, what can be left out and what is then lost, and what is not delivered. */
export function scopeSection(brief: Brief, room: Room): Section {
  const { in: inside, optional, out } = brief.scope;
  const names = (list: readonly { name: string }[]) => list.map(({ name }) => name);
  const [one] = optional;
  const lost = one?.lost === undefined ? "" : ` Lost then: ${sentence(one.lost, room.text)}`;
  const blocks: Block[] =
    inside.length + optional.length + out.length === 0
      ? [text("The plan states no scope, neither in nor out.")]
      : [
          text(
            strong("In: "),
            inside.length === 0 ? "nothing is stated." : inLine(names(inside), room.scope, room.name),
          ),
          ...(one === undefined
            ? []
            : [
                text(
                  strong("Can be left out: "),
                  optional.length === 1
                    ? `${sentence(one.name, room.name)}${lost}`
                    : inLine(names(optional), room.scope, room.name),
                ),
              ]),
          text(strong("Out: "), out.length === 0 ? "nothing is stated." : inLine(out, room.scope, room.name)),
        ];
  return { key: "scope", title: "Scope", blocks };
}
