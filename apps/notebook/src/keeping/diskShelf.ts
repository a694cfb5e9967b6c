import type { KeptPlan, Saved, Shelf } from "./shelf.ts";

/** Ms between looks at the file on disk. */
const lookEvery = 1500;

/** The plan on disk, behind the server that `leeway open` runs; versions stay in the browser. */
export interface DiskShelf extends Shelf {
  /** Calls back when another program has written the file. */
  watch(heard: (theirs: KeptPlan) => void): void;
}

/**
 * @param name      Of the file.
 * @param versions  Where versions are kept.
 */
export function diskShelf(name: string, versions: () => Promise<Shelf>): DiskShelf {
  const id = `file:${name}`;
  /** Tags by revision: a revision is a reading or a saving of the file. */
  const tags = new Map<number, string>();
  let latest = 0;
  const next = (tag: string): number => {
    if (tags.get(latest) === tag) return latest;
    latest++;
    tags.set(latest, tag);
    return latest;
  };
  const planOf = async (answer: Response): Promise<KeptPlan> => {
    const text = await answer.text();
    return { id, name, text, revision: next(answer.headers.get("ETag") ?? ""), at: Date.now() };
  };
  async function read(): Promise<KeptPlan> {
    const answer = await fetch("plan", { cache: "no-store" });
    if (!answer.ok) throw new Error((await answer.text()).trim());
    return planOf(answer);
  }
  async function save(plan: KeptPlan): Promise<Saved> {
    let answer: Response;
    try {
      answer = await fetch("plan", {
        method: "PUT",
        headers: {
          "Content-Type": "text/plain; charset=utf-8",
          "If-Match": tags.get(plan.revision) ?? '"0"',
        },
        body: plan.text,
        // Small enough, it is sent even while the page goes away.
        keepalive: plan.text.length < 20_000,
      });
    } catch {
      throw new Error(
        `${name} could not be saved: \`leeway open\` no longer runs. Start it again, or use "Save as".`,
      );
    }
    if (answer.status === 412) return { kind: "moved-on", theirs: await planOf(answer) };
    if (!answer.ok) throw new Error(`${name} could not be saved: ${(await answer.text()).trim()}`);
    return { kind: "saved", revision: next(answer.headers.get("ETag") ?? "") };
  }
  return {
    latest: read,
    plan: read,
    save,
    versions: async (plan) => (await versions()).versions(plan),
    addVersion: async (version) => (await versions()).addVersion(version),
    pin: async (key, pin) => (await versions()).pin(key, pin),
    thin: async (plan, left) => (await versions()).thin(plan, left),
    watch(heard) {
      const look = async (): Promise<void> => {
        try {
          const answer = await fetch("plan", { method: "HEAD", cache: "no-store" });
          await answer.text(); // a body left unread is an aborted request
          const { headers } = answer;
          if (headers.get("ETag") !== tags.get(latest)) heard(await read());
        } catch {
          // The next save says that nobody serves the file any more.
        }
        setTimeout(() => void look(), lookEvery);
      };
      setTimeout(() => void look(), lookEvery);
    },
  };
}
