import { stated, text } from "virtual:opening-plan";
import { createAsker } from "./asking/asker.ts";
import { afterFrame } from "./elements/pageTurns.ts";
import { boundName } from "./keeping/boundName.ts";
import { diskShelf } from "./keeping/diskShelf.ts";
import { createKeeper, recall } from "./keeping/keeper.ts";
import { readFile } from "./keeping/planFile.ts";
import type { Shelf } from "./keeping/shelf.ts";
import { isCurrent } from "./store/state.ts";
import { createStore } from "./store/store.ts";
import { createReader } from "./worker/reader.ts";
import { createRunner } from "./worker/runner.ts";
import {
  startAskWorker,
  startForecastWorker,
  startPlanWorker,
  startTornadoWorker,
} from "./worker/startWorkers.ts";

/** Ms that a worker that listens has to leave a run: a slice of a large plan may be long. */
const patience = 1000;

let shelf: Promise<Shelf> | undefined;
/** The browser's storage, loaded when there is something to look for or to keep: a first visit answers first. */
const openShelf = (): Promise<Shelf> => {
  shelf ??= import("./keeping/shelf.ts").then((module) => module.openShelf());
  return shelf;
};
const bound = boundName();
const disk = bound === undefined ? undefined : diskShelf(bound, openShelf);
const kept = disk === undefined ? await recall(openShelf) : await disk.latest();

/** A first visit, and the answer that was computed when the page was built. */
const known =
  kept === undefined && disk === undefined ? (await import("virtual:opening-answer")).default : undefined;

const reader = createReader(startPlanWorker());

// The workers begin with the answer while the page itself is still loading.
const store = createStore(
  kept?.text ?? text,
  // Once the answer is on the screen: the text would take a processor from it.
  { ...reader, hurry: () => afterFrame(reader.hurry) },
  (kind, reply) =>
    kind === "forecast"
      ? createRunner(startForecastWorker, reply, patience)
      : createRunner(startTornadoWorker, reply, patience, false),
  kept === undefined ? stated : undefined,
  known,
);
const keeper =
  disk === undefined
    ? createKeeper(store, openShelf, kept)
    : createKeeper(store, async () => disk, kept, Date.now, disk.watch);
const asker = createAsker(startAskWorker);
// Questions wait until the answer itself, and the re-runs behind it, are there.
store.subscribe(() => {
  const { state } = store;
  const { tornado, answer, plan } = state;
  const rests =
    answer?.stage === "full" &&
    isCurrent(state) &&
    !state.computing &&
    !state.reading &&
    (tornado.plan === state.current || tornado.stopped);
  const whole = rests && plan?.sha256 === state.current;
  asker.plan(whole ? plan : undefined, whole ? answer.forecast : undefined);
});

const { keepHalfTyped, LeewayPage } = await import("./elements/all.ts");
// Nothing here waits for the document, which may still be on its way.
if (document.readyState === "loading")
  await new Promise((resolve) => addEventListener("DOMContentLoaded", resolve, { once: true }));
const page = document.querySelector("leeway-page");
if (page instanceof LeewayPage) {
  page.keeper = keeper;
  page.asker = asker;
  page.opening = kept?.text ?? text;
  page.store = store;
  keeper.subscribe(keepHalfTyped({ page, plan: () => keeper.plan, refuse: store.refuse }));
}

// What was typed last is kept even when the page goes away.
addEventListener("visibilitychange", () => {
  if (document.visibilityState === "hidden") void keeper.flush();
});
addEventListener("pagehide", () => void keeper.flush());

// A plan dropped anywhere on the page is opened.
addEventListener("dragover", (event) => {
  if (event.dataTransfer?.types.includes("Files")) event.preventDefault();
});
addEventListener("drop", (event) => {
  const [file] = event.dataTransfer?.files ?? [];
  if (file === undefined) return;
  event.preventDefault();
  void keeper.drop(() => readFile(file));
});

// A copy of the page's own files, so that it opens and computes without a network next time. It can wait: the page
// itself goes first, and so does a reader who types; taking files in compiles them, which would be felt.
if (import.meta.env.PROD && bound === undefined && "serviceWorker" in navigator) {
  const typing = ["keydown", "pointerdown"];
  const quietFor = 5000;
  const later = (): void => {
    clearTimeout(due);
    due = setTimeout(register, quietFor);
  };
  const register = (): void => {
    for (const type of typing) removeEventListener(type, later, true);
    navigator.serviceWorker.register(new URL("./offline.js", document.baseURI)).catch(() => {
      // Not a secure context, or storage refused: the page works as it is, with a network.
    });
  };
  let due = setTimeout(register, quietFor);
  for (const type of typing) addEventListener(type, later, true);
}
