import { oneLine } from "../plan/oneLine.ts";
import type { Problem } from "../plan/problem.ts";
import type { Plan } from "../plan/types.ts";
import type { Count } from "../units.ts";
import type { ForecastOptions } from "./forecast.ts";
import type { Forecast } from "./types.ts";

/** A forecast that was saved as JSON, as far as it has to be understood to be run again. */
export interface SavedForecast {
  version: string;
  /** What it was run with: with these options the same plan gives the same figures. */
  options: ForecastOptions;
  /** Everything that was saved. */
  answer: Record<string, unknown>;
}

/** A figure (or a name, or a date) that is not the same when a forecast is run again. */
export interface FigureDiffers {
  /** Where it stands in the JSON, e.g. `finish.percentiles[3].day`. */
  path: string;
  /** What was saved and what came now, as JSON; absent where there is nothing. */
  saved?: string;
  now?: string;
}

/** What came of comparing a saved forecast with the same run made anew. */
export interface Verified {
  /** How many values of the two were compared. */
  compared: Count;
  /** In the order of the JSON. */
  differences: FigureDiffers[];
}

type JsonMap = Record<string, unknown>;
const isMap = (value: unknown): value is JsonMap =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Reads a forecast that was saved (`forecast --json`) for running it again on a plan. Nothing is thrown.
 *
 * @param plan  The plan that it is said to be of: another one, by its hash, is a problem.
 */
export function savedForecast(text: string, plan: Plan): { saved?: SavedForecast; problems: Problem[] } {
  const problems: Problem[] = [];
  const report = (path: string, received: string, rule: string, remedy: string, code = "not-a-forecast") =>
    problems.push({ code, severity: "error", path, received: oneLine(received), rule, remedy });
  const again = "Save it again with `leeway forecast PLAN --json`.";
  let answer: unknown;
  try {
    answer = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    report("forecast", "", "It is no JSON.", again);
    return { problems };
  }
  if (!isMap(answer)) {
    report("forecast", "", "A saved forecast is one JSON object.", again);
    return { problems };
  }
  const ofPlan = isMap(answer.plan) ? answer.plan.sha256 : undefined;
  if (typeof ofPlan !== "string" || !/^[0-9a-f]{64}$/.test(ofPlan)) {
    report("plan.sha256", "", "It does not say of which plan it is.", again);
  } else if (ofPlan !== plan.sha256) {
    const rule = `It is of another plan: of the one whose hash begins ${ofPlan.slice(0, 12)}; this one's begins ${plan.sha256.slice(0, 12)}.`;
    const remedy = "Name the plan it was made from; versions that were kept stand in NAME.versions.";
    report("plan.sha256", "", rule, remedy, "another-plan");
  }
  const { seed, iterations, design, version } = answer;
  if (typeof seed !== "string") report("seed", shown(seed), "It does not say its seed.", again);
  const counted = typeof iterations === "number" && Number.isInteger(iterations);
  if (!counted || iterations < 1 || iterations > 10_000_000) {
    report("iterations", shown(iterations), "It does not say how many futures were drawn.", again);
  }
  if (design !== "latin-hypercube" && design !== "plain") {
    report("design", shown(design), "It does not say how they were drawn.", again);
  }
  if (typeof version !== "string") report("version", shown(version), "It does not say what made it.", again);
  const level = isMap(answer.committed) ? answer.committed.confidence : undefined;
  if (typeof level !== "number" || !(level > 0 && level < 1)) {
    report("committed.confidence", shown(level), "It does not say the level committed to.", again);
  }
  const scenario = isMap(answer.scenario) ? answer.scenario : {};
  const ids = (key: "with" | "without") => {
    const value = scenario[key];
    if (value === undefined) return {};
    if (Array.isArray(value) && value.every((each) => typeof each === "string")) return { [key]: value };
    report(`scenario.${key}`, shown(value), "A list of ids belongs here.", again);
    return {};
  };
  const options: ForecastOptions = {
    ...ids("with"),
    ...ids("without"),
    ...(typeof seed === "string" && { seed }),
    ...(typeof iterations === "number" && { iterations }),
    ...((design === "plain" || design === "latin-hypercube") && { design }),
    ...(typeof level === "number" && level !== plan.commitment.confidence && { confidence: level }),
    ...(answer.tornado === undefined ? {} : { tornado: true }),
  };
  return problems.length > 0 || typeof version !== "string"
    ? { problems }
    : { saved: { version, options, answer }, problems };
}

/**
 * Holds a saved forecast against the one run again, value by value, to the last bit. What made it (`version`) and what
 * was switched (`scenario`) are not figures.
 */
export function verifyForecast(saved: SavedForecast, now: Forecast): Verified {
  const differences: FigureDiffers[] = [];
  let compared = 0;
  const compare = (path: string, old: unknown, fresh: unknown): void => {
    if (Array.isArray(old) && Array.isArray(fresh)) {
      const length = Math.max(old.length, fresh.length);
      for (let index = 0; index < length; index++) compare(`${path}[${index}]`, old[index], fresh[index]);
    } else if (isMap(old) && isMap(fresh)) {
      for (const key of new Set([...Object.keys(fresh), ...Object.keys(old)])) {
        if (path === "" && (key === "version" || key === "scenario")) continue;
        const has = (map: JsonMap) => (Object.hasOwn(map, key) ? map[key] : undefined);
        compare(path === "" ? key : `${path}.${key}`, has(old), has(fresh));
      }
    } else {
      compared++;
      // JSON has one zero.
      if (old !== fresh) differences.push({ path, ...as("saved", old), ...as("now", fresh) });
    }
  };
  compare("", saved.answer, JSON.parse(JSON.stringify(now)));
  return { compared, differences };
}

function as(key: "saved" | "now", value: unknown): Pick<FigureDiffers, "saved" | "now"> {
  return value === undefined ? {} : { [key]: shown(value) };
}

/** A value on one short line; of lists and objects only what they are. */
function shown(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (isMap(value)) return "an object";
  return value === undefined ? "" : JSON.stringify(value).slice(0, 80);
}
