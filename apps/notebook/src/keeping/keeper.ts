import type { Store } from "../store/store.ts";
import { begunHere } from "./begunHere.ts";
import { nothingKept } from "./nothingKept.ts";
import { download, nameFrom, type OpenedFile, pickFile, writeFile } from "./planFile.ts";
import type { KeptPlan, KeptVersion, Shelf } from "./shelf.ts";
import { unkeptWords } from "./troubleWords.ts";

/** How safe the plan is right now. */
export type Safety =
  /** Nothing was changed since the page opened on the example. */
  | { kind: "example" }
  | { kind: "kept"; at: number }
  | { kind: "keeping" }
  /** Changed, and not kept: why, and what to do. */
  | { kind: "unkept"; words: string }
  /** Another tab saved this plan after both had opened it. */
  | { kind: "moved-on"; theirs: KeptPlan };

export interface KeeperState {
  readonly name: string;
  /** Where the plan is kept: in words after "Kept". */
  readonly place: string;
  readonly safety: Safety;
  /** The text differs from the file it was opened from or saved to; undefined while there is no file. */
  readonly fileDiffers: boolean | undefined;
  /** Newest first. */
  readonly versions: readonly KeptVersion[];
  /** The last thing worth telling: a file was opened, a save failed. */
  readonly told: string | undefined;
  /** What was told is that a file could not be written: the plan is offered as a download. */
  readonly offered: boolean;
}

/** Keeps the plan in this browser while it is edited, and moves it from and to files. */
export interface Keeper {
  readonly state: KeeperState;
  /** Which plan it is, from one visit to the next; empty while nothing was changed. */
  readonly plan: string;
  subscribe(listener: () => void): () => void;
  /** Saves what is not saved yet, at once. */
  flush(): Promise<void>;
  open(): Promise<void>;
  /**
   * Takes a file that was dropped on the page; where it cannot be read, the reason is told.
   *
   * @param made  What is told once it is there, of a plan that was made here and not opened.
   */
  drop(read: () => Promise<OpenedFile>, made?: string): Promise<void>;
  save(as: boolean): Promise<void>;
  /** Hands the plan to the reader's downloads, whatever else is refused. */
  download(): Promise<void>;
  /** Keeps the plan as it stands under a name. */
  pin(name: string): Promise<void>;
  unpin(key: number): Promise<void>;
  /** The plan becomes what this version says; as every edit, it can be undone. */
  restore(version: KeptVersion): void;
  /** After another tab moved on: its plan, or this one (the other stays as a version). */
  settle(take: "theirs" | "mine"): Promise<void>;
}

/** Ms between two keepings: an edit after a rest is kept at once, and none waits longer, however fast they come. */
const every = 250;
/** Ms after which what could not be kept is tried again. */
const againEvery = 5000;
/** Ms after which the plan as it stood is worth a version of its own. */
const versionEvery = 5 * 60_000;
const versionsLeft = 60;

/**
 * @param kept   What the page opened on, if this browser had kept it.
 * @param shelf  Opened when there is something to keep: the first visit does not wait for it.
 * @param watch  Given where the plan is a file on disk: tells what another program wrote to it.
 */
export function createKeeper(
  store: Store,
  openShelf: () => Promise<Shelf>,
  kept: KeptPlan | undefined,
  now: () => number = Date.now,
  watch?: (heard: (theirs: KeptPlan) => void) => void,
): Keeper {
  const listeners = new Set<() => void>();
  let shelf: Promise<Shelf> | undefined;
  const shelves = (): Promise<Shelf> => {
    shelf ??= openShelf().then((on) => {
      on.onLost?.(lost);
      return on;
    });
    return shelf;
  };
  const news =
    watch !== undefined || typeof BroadcastChannel === "undefined"
      ? undefined
      : new BroadcastChannel("leeway");

  let id = kept?.id ?? crypto.randomUUID();
  let revision = kept?.revision ?? 0;
  let handle = kept?.handle;
  let keptText = kept?.text ?? store.state.text;
  let fileText: string | undefined;
  let lastVersion = 0;
  /** A text on its way into the store: until it is there, what the store holds is not ours to keep. */
  let awaited: string | undefined;
  let state: KeeperState = {
    name: kept?.name ?? "",
    place: watch === undefined ? "Kept in this browser" : "Saved to the file",
    safety: kept === undefined ? { kind: "example" } : { kind: "kept", at: kept.at },
    fileDiffers: undefined,
    versions: [],
    told: undefined,
    offered: false,
  };
  const set = (change: Partial<KeeperState>): void => {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  };
  const name = (): string => (state.name === "" ? nameFrom(store.state.plan?.title) : state.name);

  let timer: ReturnType<typeof setTimeout> | undefined;
  /** When the plan was last kept, or was tried to be. */
  let began = 0;
  let saving: Promise<void> = Promise.resolve();

  function setText(text: string): void {
    awaited = text;
    store.setText(text);
  }

  function soon(): void {
    const { text } = store.state;
    if (awaited === text) awaited = undefined;
    if (awaited !== undefined) return;
    if (fileText !== undefined && (fileText !== text) !== state.fileDiffers)
      set({ fileDiffers: fileText !== text });
    if (text === keptText || state.safety.kind === "moved-on") return;
    if (state.safety.kind !== "keeping") set({ safety: { kind: "keeping" } });
    clearTimeout(timer);
    // A clock that is put back must not make it wait.
    timer = setTimeout(() => void flush(), Math.min(every, Math.max(0, began + every - now())));
  }

  function flush(): Promise<void> {
    clearTimeout(timer);
    saving = saving.then(keep);
    return saving;
  }

  async function keep(): Promise<void> {
    const { text } = store.state;
    if (awaited !== undefined || text === keptText || state.safety.kind === "moved-on") return;
    began = now();
    try {
      const on = await shelves();
      const at = now();
      const before = keptText;
      const plan = { id, name: name(), text, revision, at, ...(handle === undefined ? {} : { handle }) };
      const saved = await room(on, () => on.save(plan));
      if (saved.kind === "moved-on") {
        set({ safety: saved });
        return;
      }
      revision = saved.revision;
      keptText = text;
      news?.postMessage({ id, revision });
      set({ safety: { kind: "kept", at }, name: plan.name });
      if (before !== "" && now() - lastVersion > versionEvery) await keepVersion(on, before);
    } catch (error) {
      set({ safety: { kind: "unkept", words: unkeptWords(error) } });
      timer = setTimeout(() => void flush(), againEvery);
    }
    if (store.state.text !== keptText && state.safety.kind === "kept") soon();
  }

  /** The plan as it stood before a change. What was typed goes first: it is kept already. */
  async function keepVersion(on: Shelf, text: string): Promise<void> {
    try {
      await room(on, () => on.addVersion({ plan: id, at: now(), text, why: "before a change" }));
      lastVersion = now();
      await on.thin(id, versionsLeft);
      set({ versions: await on.versions(id) });
    } catch {
      // The plan itself is kept; the version is tried again with the next change.
    }
  }

  /** What was kept is gone; the page still has the plan, and keeps it anew. */
  function lost(): void {
    if (revision === 0) return;
    keptText = "";
    lastVersion = 0;
    set({
      versions: [],
      told: "What this browser had kept was deleted. The plan on this page is whole and is kept anew; its earlier versions are gone.",
    });
    soon();
  }

  /** Does it; when there is no room left, once more without the oldest versions. */
  async function room<T>(on: Shelf, work: () => Promise<T>): Promise<T> {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof DOMException && error.name === "QuotaExceededError")) throw error;
      if ((await on.thin(id, 0)) === 0) throw error;
      return work();
    }
  }

  /** Another tab saved: what was not touched here follows it. */
  async function hear(told: { id: string; revision: number }): Promise<void> {
    if (told.id !== id || told.revision <= revision) return;
    await saving;
    const theirs = await (await shelves()).plan(id);
    if (theirs !== undefined)
      follow(theirs, "This plan was changed in another tab; this is how it stands there.");
  }

  function follow(theirs: KeptPlan, told: string): void {
    if (theirs.revision <= revision || theirs.text === keptText) return;
    if (store.state.text !== keptText) set({ safety: { kind: "moved-on", theirs } });
    else adopt(theirs, told);
  }

  function adopt(theirs: KeptPlan, told: string): void {
    revision = theirs.revision;
    keptText = theirs.text;
    setText(theirs.text);
    set({ safety: { kind: "kept", at: theirs.at }, name: theirs.name, told });
  }

  /** The page goes over to another plan. */
  async function begin(file: OpenedFile, why = "as opened"): Promise<void> {
    if (watch !== undefined)
      throw new Error(`This page is bound to ${state.name}. Run \`leeway open\` on the other file.`);
    await flush();
    id = crypto.randomUUID();
    revision = 0;
    lastVersion = now();
    handle = file.handle;
    fileText = file.text;
    keptText = "";
    set({ name: file.name, fileDiffers: false, versions: [], safety: { kind: "keeping" } });
    setText(file.text);
    try {
      const on = await shelves();
      await room(on, () => on.addVersion({ plan: id, at: now(), text: file.text, why }));
      set({ versions: await on.versions(id) });
    } catch {
      // Keeping the plan itself says what is wrong.
    }
  }

  /** @param offers  Where it fails, the plan is offered as a download. */
  async function told(work: () => Promise<string | undefined>, offers = false): Promise<void> {
    try {
      set({ told: await work(), offered: false });
    } catch (error) {
      set({ told: error instanceof Error ? error.message : String(error), offered: offers });
    }
  }

  /** A file has the text now. `to`: its name; undefined: it went to the downloads. */
  async function saved(text: string, to: string | undefined): Promise<string> {
    fileText = text;
    set({ name: to ?? name(), fileDiffers: store.state.text !== text });
    try {
      const on = await shelves();
      await room(on, () => on.addVersion({ plan: id, at: now(), text, why: `saved to ${to ?? name()}` }));
      set({ versions: await on.versions(id) });
    } catch {
      // The file has it; keeping the plan in the browser says itself what is wrong.
    }
    return to === undefined ? `${name()} was handed to your downloads.` : `Saved to ${to}.`;
  }

  store.subscribe(soon);
  watch?.((theirs) => {
    void saving.then(() => follow(theirs, "Another program changed the file; this is how it stands now."));
  });
  if (watch === undefined) news?.addEventListener("message", (event) => void hear(event.data));
  if (kept !== undefined)
    shelves()
      .then((on) => on.versions(id))
      .then(
        (versions) => {
          lastVersion = versions[0]?.at ?? 0;
          set({ versions });
        },
        () => {}, // the next save tells
      );

  return {
    get state() {
      return state;
    },
    get plan() {
      return state.safety.kind === "example" ? "" : id;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    flush,
    open: () =>
      told(async () => {
        const file = await pickFile();
        if (file === undefined) return state.told;
        await begin(file);
        return `Opened ${file.name}.`;
      }),
    drop: (read, made) =>
      told(async () => {
        const file = await read();
        await begin(file, made === undefined ? undefined : begunHere);
        return made ?? `Opened ${file.name}.`;
      }),
    save: (as) =>
      told(async () => {
        await atRest(store);
        await flush();
        const { text } = store.state;
        const written = await writeFile(text, name(), as ? undefined : handle);
        if (written === "not saved") return state.told;
        if (written !== undefined) handle = written;
        return saved(text, written?.name);
      }, true),
    download: () =>
      told(async () => {
        await atRest(store);
        download(store.state.text, name());
        return saved(store.state.text, undefined);
      }),
    pin: (pin) =>
      told(async () => {
        await flush();
        const on = await shelves();
        const { text } = store.state;
        await room(on, () => on.addVersion({ plan: id, at: now(), text, why: "pinned", pin }));
        set({ versions: await on.versions(id) });
        return `Pinned as "${pin}".`;
      }),
    unpin: (key) =>
      told(async () => {
        const on = await shelves();
        await on.pin(key, undefined);
        set({ versions: await on.versions(id) });
        return undefined;
      }),
    restore: (version) => store.setText(version.text),
    settle: (take) =>
      told(async () => {
        const { safety } = state;
        if (safety.kind !== "moved-on") return state.told;
        const { theirs } = safety;
        const on = await shelves();
        const lost = take === "theirs" ? store.state.text : theirs.text;
        const why = take === "theirs" ? "of this tab, set aside" : "of another tab, set aside";
        await room(on, () => on.addVersion({ plan: id, at: now(), text: lost, why }));
        set({ versions: await on.versions(id) });
        if (take === "theirs") adopt(theirs, "");
        else {
          revision = theirs.revision;
          set({ safety: { kind: "keeping" } });
          await flush();
        }
        return "The other one is kept among the versions below.";
      }),
  };
}

/** Waits for edits that are on their way into the text. */
function atRest(store: Store): Promise<void> {
  return new Promise((resolve) => {
    const end = store.subscribe(look);
    function look(): void {
      if (store.state.reading) return;
      end();
      resolve();
    }
    look();
  });
}

/**
 * The plan this browser kept last, if there is one. Whether there is, is asked of the storage itself, which a killed
 * browser leaves whole: a mark elsewhere would be written later, and lost. It is not opened on a first visit.
 */
export async function recall(openShelf: () => Promise<Shelf>): Promise<KeptPlan | undefined> {
  try {
    if (await nothingKept()) return undefined;
    return await (await openShelf()).latest();
  } catch {
    return undefined;
  }
}
