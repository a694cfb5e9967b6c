import type { Check, CheckContext, Found, PlacedTask } from "../context.ts";
import { linksOf, successorsOf } from "../network/links.ts";
import { openEnds } from "../network/openEnds.ts";
import { redundantLinks } from "../network/redundantLinks.ts";
import { thresholds } from "../thresholds.ts";
import { daysText, percentText } from "../words.ts";

/** How tasks hang together: open ends, free ends, leads, lags, the kinds of links, links too many. */
export const checkLinks: Check = (context) => {
  const names = new Map(context.plan.tasks.map(({ id, name }) => [id, `“${name}”`]));
  const named = (id: string) => names.get(id) ?? id;
  const ends = openEnds(context);
  const open = (code: "open-start" | "open-end", says: string) => (each: PlacedTask) => ({
    code,
    path: each.path,
    ids: [each.task.id],
    says: `${each.task.name} ${says}.`,
  });
  return [
    ...ends.starts.map(open("open-start", "waits for nothing")),
    ...ends.ends.map(open("open-end", "is awaited by nothing")),
    ...dangling(context),
    ...lagsFound(context, named),
    ...mixFound(context),
    ...redundantLinks(context.plan).map(
      ({ redundant, over }): Found => ({
        code: "redundant-link",
        path: redundant.path,
        ids: [redundant.task.id, redundant.link.task],
        says: `${redundant.task.name} waits for ${named(redundant.link.task)} already by way of ${named(over)}.`,
      }),
    ),
  ];
};

/** A start that no link holds although others hold the finish; a finish that holds nothing although the start does. */
function dangling({ plan, work }: CheckContext): Found[] {
  const successors = successorsOf(plan);
  return work.flatMap(({ task, path }): Found[] => {
    const after = successors.get(task.id) ?? [];
    const startFree = task.after.length > 0 && task.after.every(({ link }) => link.endsWith("to-finish"));
    const finishFree = after.length > 0 && after.every(({ link }) => link.link.startsWith("start-to"));
    const at = { code: "dangling" as const, path, ids: [task.id] };
    return [
      ...(startFree && task.started === undefined
        ? [{ ...at, says: `No link holds the start of ${task.name}, only its finish.` }]
        : []),
      ...(finishFree
        ? [{ ...at, says: `Nothing waits for the finish of ${task.name}, only for its start.` }]
        : []),
    ];
  });
}

function lagsFound({ plan }: CheckContext, named: (id: string) => string): Found[] {
  return linksOf(plan).flatMap(({ link, task, path, lag }): Found[] => {
    const open = task.started === undefined && task.finished === undefined;
    if (lag === 0 || !open) return [];
    const ids = [task.id, link.task];
    const amount =
      link.lag.unit === "weeks" ? `${Math.abs(lag)} weeks` : daysText(Math.abs(lag)).replace("working ", "");
    if (lag < 0) {
      return [{ code: "lead", path, ids, says: `${task.name} overlaps ${named(link.task)} by ${amount}.` }];
    }
    if (task.note !== undefined) return [];
    return [{ code: "lag", path, ids, says: `${task.name} comes ${amount} after ${named(link.task)}.` }];
  });
}

function mixFound({ plan }: CheckContext): Found[] {
  const links = linksOf(plan);
  const plain = links.filter(({ link }) => link.link === "finish-to-start").length;
  if (links.length === 0 || plain / links.length >= thresholds.finishToStart) return [];
  const says = `${plain} of ${links.length} links (${percentText(plain / links.length)}) run from a finish to a start.`;
  return [{ code: "link-mix", path: "tasks", ids: [], says }];
}
