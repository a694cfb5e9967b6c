import type { Brief } from "@leeway/core";
import { formatDate } from "../words/formatDate.ts";
import { plainName } from "../words/plainName.ts";
import { assumptionsSection } from "./parts/assumptions.ts";
import { backSection } from "./parts/back.ts";
import { commitmentSection } from "./parts/commitment.ts";
import { decisionSection } from "./parts/decision.ts";
import { driversSection } from "./parts/drivers.ts";
import { objectionsSection } from "./parts/objections.ts";
import { outcomeSection } from "./parts/outcome.ts";
import { recommendationSection } from "./parts/recommendation.ts";
import { responsesSection } from "./parts/responses.ts";
import { runSection } from "./parts/run.ts";
import { scopeSection } from "./parts/scope.ts";
import { worthSection } from "./parts/worth.ts";
import { named } from "./sheet/build.ts";
import { roomy } from "./sheet/rooms.ts";
import type { Room, Sheet } from "./sheet/types.ts";

/**
 * The brief in words, section by section, the decision first. Every figure is the brief's own.
 *
 * @param room  How much may be said; the decision, the commitment, the caution and the run are always whole.
 */
export function briefSheet(brief: Brief, room: Room = roomy): Sheet {
  const note = brief.plan.note === undefined ? "" : ` · ${named(brief.plan.note, room.text)}`;
  return {
    title: plainName(brief.plan.title, 120),
    head: `Brief for decision · ${formatDate(brief.today, "short")}${note}`,
    sections: [
      decisionSection(brief, room),
      recommendationSection(brief, room),
      commitmentSection(brief, room),
      worthSection(brief),
      scopeSection(brief, room),
      driversSection(brief, room),
      responsesSection(brief, room),
      assumptionsSection(brief, room),
      objectionsSection(brief, room),
      backSection(brief, room),
      outcomeSection(brief, room),
      runSection(brief),
    ],
  };
}
