import type { PreBrief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatDays } from "../../words/formatDays.ts";
import { plainName } from "../../words/plainName.ts";
import { chanceWords, rough, supported, who } from "../says.ts";
import { sentence, strong } from "../sheet/build.ts";
import type { Line } from "../sheet/types.ts";
import { stopWords } from "./level.ts";

type Reply = (pre: PreBrief) => string;

const withMoney = ({ brief }: PreBrief, days: number, money: number): string =>
  `${formatDays(days)}${brief.spends ? ` and ${rough(brief, money)}` : ""}`;

const padding: Reply = ({ brief }) => {
  const { contingency, asWritten, holder } = brief.commitment;
  const causes = brief.drivers.rows
    .slice(0, 3)
    .map(({ name }) => `“${plainName(name, 50)}”`)
    .join(", ");
  const held = holder === undefined ? "in one place" : `in one place, by ${who(holder, 60)}`;
  return `The tasks stand at their written values and end on ${formatDate(asWritten.finish, "short")}. The ${formatDays(contingency.workingDays)} are held apart, ${held}, and split over causes that add up to them${causes === "" ? "" : `: ${causes} and others`}.`;
};

const past: Reply = (pre) => {
  const step = pre.figures.walk.find(({ kind }) => kind === "register");
  if (step === undefined) return "The plan lists no risk and no assumption, so no event is counted at all.";
  return `Events listed in the register add ${withMoney(pre, step.workingDays, step.money)} on average, each with its own chance. Any one of them can be left out and the forecast run again.`;
};

const oneDate: Reply = ({ brief }) => {
  const { committed, asWritten } = brief.commitment;
  return `${formatDate(committed.date, "weekday")} is that date. Said without its chance, ${formatDate(asWritten.finish, "short")} would be one too, and it holds ${chanceWords(asWritten.finishChance)}.`;
};

const spent: Reply = ({ brief, figures }) => {
  const half = figures.steps.find(({ p }) => p === 0.5);
  const { holder, releaseRule } = brief.commitment;
  const keeper =
    holder === undefined
      ? "No holder is stated: name one before you sign."
      : `${plainName(holder.name, 60)} holds it, not the tasks.`;
  const rule =
    releaseRule === undefined ? "No release rule is stated." : `Release: ${sentence(releaseRule, 160)}`;
  const mean =
    half === undefined
      ? ""
      : ` Half of the futures need no more than ${formatDate(half.date, "short")}${brief.spends ? ` and ${supported(brief, half.cost)}` : ""}.`;
  return `${keeper} ${rule}${mean}`;
};

const fear: Reply = (pre) => {
  const { uncertain, withBasis } = pre.figures.estimates;
  const spread = pre.figures.walk.find(({ kind }) => kind === "spread");
  const path =
    spread === undefined
      ? ""
      : ` The ranges along the driving path come to ${formatDays(spread.workingDays)} on average.`;
  return `${withBasis} of ${uncertain} uncertain estimates say why whoever made them would know; ask about the others.${path}`;
};

const consulted: Reply = ({ figures }) => {
  const { responsible, accountable, consulted: asked, informed } = figures.own;
  if (responsible + accountable + asked + informed === 0)
    return "True as the plan stands: it names you in no task. Say which ones touch you.";
  return `The plan names you as responsible for ${responsible}, accountable for ${accountable}, consulted on ${asked} and informed of ${informed} tasks.`;
};

/** Objections that are made to nearly every such plan, each with the answer this one has. Common practice, no source. */
const usual: readonly (readonly [string, Reply])[] = [
  ["It is padding in disguise.", padding],
  ["The level is arbitrary.", ({ brief, figures }) => stopWords({ brief, figures })],
  ["Last time's problems will not happen again.", past],
  ["Just give me one date.", oneDate],
  ["The team will spend it because it is there.", spent],
  ["The spread is only the team's fear.", fear],
  ["My area was not consulted.", consulted],
];

/** The usual objections with computed answers. */
export function expectedLines(pre: PreBrief): Line[] {
  return usual.map(([said, reply]) => [strong(`“${said}” `), reply(pre)]);
}
