import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { PlanData } from "../../../packages/core/src/models/index.ts";

/** One instance of the library: jobs 1 ... n, the first and last of no length. */
export interface Instance {
  name: string;
  durations: number[];
  /** By job (index 0 is job 1): the jobs before it, counted from 1. */
  before: number[][];
  /** Length of the network with resources ignored, as published. */
  mpmTime: number;
  /** By job: units of each resource; and what there is of each. Only in the library's own files. */
  requests?: number[][];
  capacities?: number[];
}

/**
 * Folder with instances of PSPLIB (Kolisch & Sprecher 1997), named by LEEWAY_PSPLIB; undefined where there is
 * none. The data set is not part of this project. Read are its own `.sm` files and JSON files of these two
 * forms: `{ inputs: { durations: { job: d }, predecessors: { job: [job] } }, expected: { published_MPM_time }
 * }` and `{ inputs: { instances: { name: { durations: [d], successors: { job: [job] }, published_MPM_time } }
 * } }`.
 */
export const folder = existing(process.env.LEEWAY_PSPLIB);

function existing(path: string | undefined): string | undefined {
  return path !== undefined && path !== "" && existsSync(path) ? path : undefined;
}

export function readInstances(path: string): Instance[] {
  return readdirSync(path)
    .sort()
    .flatMap((file) => {
      const text = () => readFileSync(join(path, file), "utf8");
      if (file.endsWith(".sm")) return [readSm(file, text())];
      return file.endsWith(".json") ? readJson(file, JSON.parse(text())) : [];
    });
}

/** The library's own format: sections under headings, numbers in columns. */
function readSm(name: string, text: string): Instance {
  const rows = (heading: RegExp) => {
    const lines = text.split(/\r?\n/);
    const from = lines.findIndex((line) => heading.test(line));
    const found: number[][] = [];
    for (const line of lines.slice(from + 1)) {
      if (line.startsWith("*")) break;
      const numbers = line.trim().split(/\s+/).map(Number);
      if (line.trim() !== "" && numbers.every(Number.isFinite)) found.push(numbers);
    }
    return found;
  };
  const relations = rows(/^PRECEDENCE RELATIONS/);
  const requests = rows(/^REQUESTS\/DURATIONS/);
  const before: number[][] = requests.map(() => []);
  for (const [job, , , ...successors] of relations) {
    for (const successor of successors) before[successor - 1]?.push(job as number);
  }
  return {
    name,
    durations: requests.map((row) => row[2] as number),
    before,
    mpmTime: rows(/^PROJECT INFORMATION/)[0]?.[5] ?? Number.NaN,
    requests: requests.map((row) => row.slice(3)),
    capacities: rows(/^RESOURCEAVAILABILITIES/)[0] ?? [],
  };
}

interface OneNetwork {
  inputs: { durations: Record<string, number>; predecessors: Record<string, string[]> };
  expected: { published_MPM_time: number };
}
interface ManyNetworks {
  inputs: {
    instances: Record<
      string,
      { durations: number[]; successors: Record<string, number[]>; published_MPM_time: number }
    >;
  };
}

function readJson(file: string, data: OneNetwork | ManyNetworks): Instance[] {
  if ("instances" in data.inputs) {
    return Object.entries(data.inputs.instances).map(([name, instance]) => {
      const before: number[][] = instance.durations.map(() => []);
      for (const [job, successors] of Object.entries(instance.successors)) {
        for (const successor of successors) before[successor - 1]?.push(Number(job));
      }
      return { name, durations: instance.durations, before, mpmTime: instance.published_MPM_time };
    });
  }
  const { durations, predecessors } = data.inputs;
  const jobs = Object.keys(durations).sort((a, b) => Number(a) - Number(b));
  const { expected } = data as OneNetwork;
  return [
    {
      name: file,
      durations: jobs.map((job) => durations[job] as number),
      before: jobs.map((job) => (predecessors[job] ?? []).map(Number)),
      mpmTime: expected.published_MPM_time,
    },
  ];
}

/** The plan of an instance; with `shares`, units asked for by job and resource, its resources are people. */
export function instanceDocument(
  instance: Instance,
  people?: { shares: number[][]; capacities: number[] },
): PlanData {
  const asks = (job: number) =>
    (people?.shares[job] ?? []).flatMap((share, r) => (share > 0 ? [{ id: `crew-${r + 1}`, share }] : []));
  return {
    format: 1,
    title: instance.name,
    start: "2027-03-01",
    calendar: "every-day",
    ...(people === undefined
      ? {}
      : {
          people: people.capacities.map((capacity, r) => ({
            id: `crew-${r + 1}`,
            name: `Crew ${r + 1}`,
            capacity,
          })),
        }),
    tasks: instance.durations.map((duration, job) => ({
      id: `job-${job + 1}`,
      name: `Job ${job + 1}`,
      duration,
      after: (instance.before[job] ?? []).map((other) => `job-${other}`),
      ...(people === undefined || duration === 0 ? {} : { people: asks(job) }),
    })),
  };
}
