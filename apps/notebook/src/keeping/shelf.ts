import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { storageName } from "./storageName.ts";

/** A plan as this browser keeps it. */
export interface KeptPlan {
  id: string;
  /** File name, or a name made from the title. */
  name: string;
  text: string;
  /** Grows with every save; whoever saves names the one it builds on. */
  revision: number;
  /** Ms since 1970. */
  at: number;
  /** The file it was opened from, where the browser lets a page keep one. */
  handle?: FileSystemFileHandle;
}

/** A plan as it once stood. */
export interface KeptVersion {
  key?: number;
  plan: string;
  at: number;
  text: string;
  /** Why it was kept, for the reader: "saved to clinic.plan.yaml", "as opened", `begunHere`. */
  why: string;
  /** The name a reader pinned it under; a pinned version is never dropped. */
  pin?: string;
}

interface Shelves extends DBSchema {
  plans: { key: string; value: KeptPlan; indexes: { at: number } };
  versions: { key: number; value: KeptVersion; indexes: { plan: string } };
}

export type Saved = { kind: "saved"; revision: number } | { kind: "moved-on"; theirs: KeptPlan };

/** Where plans are kept in this browser. Every promise may fail with the browser's own error, as when storage is full. */
export interface Shelf {
  latest(): Promise<KeptPlan | undefined>;
  plan(id: string): Promise<KeptPlan | undefined>;
  /** Saves only on top of the revision it builds on: what another tab saved meanwhile is told and left alone. */
  save(plan: KeptPlan): Promise<Saved>;
  versions(plan: string): Promise<KeptVersion[]>;
  addVersion(version: KeptVersion): Promise<number>;
  pin(key: number, name: string | undefined): Promise<void>;
  /** Drops the oldest versions that are not pinned, down to `left` of them. Returns how many went. */
  thin(plan: string, left: number): Promise<number>;
  /** Calls back when what was kept is gone while the page is open: the reader, or the browser for want of room, deleted it. */
  onLost?(heard: () => void): void;
}

/** The storage is opened when there is something to look for or to keep, and again after it was closed on us. */
export async function openShelf(): Promise<Shelf> {
  const lost: (() => void)[] = [];
  let opened: Promise<IDBPDatabase<Shelves>> | undefined;
  const forget = (): void => {
    opened = undefined;
  };
  const open = (): Promise<IDBPDatabase<Shelves>> => {
    opened ??= openDB<Shelves>(storageName, 1, {
      upgrade(fresh) {
        fresh.createObjectStore("plans", { keyPath: "id" }).createIndex("at", "at");
        fresh
          .createObjectStore("versions", { keyPath: "key", autoIncrement: true })
          .createIndex("plan", "plan");
      },
      // Somebody deletes it, or another tab wants a newer layout: let them.
      blocking: (_current, blocked, event) => {
        if (event.target instanceof IDBDatabase) event.target.close();
        forget();
        if (blocked === null) for (const heard of lost) heard();
      },
      // The browser closed it: storage was cleared.
      terminated: () => {
        forget();
        for (const heard of lost) heard();
      },
    }).catch((error: unknown) => {
      forget(); // what is refused now may be allowed later
      throw error;
    });
    return opened;
  };
  return {
    onLost: (heard) => lost.push(heard),
    async latest() {
      const db = await open();
      const cursor = await db.transaction("plans").store.index("at").openCursor(null, "prev");
      return cursor?.value;
    },
    plan: async (id) => (await open()).get("plans", id),
    async save(plan) {
      const change = (await open()).transaction("plans", "readwrite");
      const kept = await change.store.get(plan.id);
      if (kept !== undefined && kept.revision !== plan.revision && kept.text !== plan.text) {
        await change.done;
        return { kind: "moved-on", theirs: kept };
      }
      const revision = Math.max(plan.revision, kept?.revision ?? 0) + 1;
      await change.store.put({ ...plan, revision });
      await change.done;
      return { kind: "saved", revision };
    },
    async versions(plan) {
      const all = await (await open()).getAllFromIndex("versions", "plan", plan);
      return all.sort((a, b) => b.at - a.at || (b.key ?? 0) - (a.key ?? 0));
    },
    addVersion: async (version) => (await open()).add("versions", version),
    async pin(key, name) {
      const change = (await open()).transaction("versions", "readwrite");
      const version = await change.store.get(key);
      if (version !== undefined) {
        const { pin: _was, ...rest } = version;
        await change.store.put(name === undefined ? rest : { ...rest, pin: name });
      }
      await change.done;
    },
    async thin(plan, left) {
      const change = (await open()).transaction("versions", "readwrite");
      const all = (await change.store.index("plan").getAll(plan)).filter(({ pin }) => pin === undefined);
      const going = all.sort((a, b) => a.at - b.at).slice(0, Math.max(0, all.length - left));
      for (const { key } of going) if (key !== undefined) await change.store.delete(key);
      await change.done;
      return going.length;
    },
  };
}
