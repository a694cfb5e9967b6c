import type { Edit } from "../plan/edit.ts";
import type { Pending } from "../store/state.ts";

/** What elements tell the page. State goes in by properties; nothing else comes out. */
export interface PageEvents {
  /** An entry that can be read: put these edits into the plan. */
  "plan-edit": {
    field: string;
    cells: Pending["cells"];
    edits: readonly Edit[];
    /** Entries of the same act that cannot be read: they wait at their fields once the edits are made. */
    waits?: ReadonlyMap<string, Pending>;
  };
  /** An entry that is still being typed, and would be these edits now. */
  "plan-foresee": { edits: readonly Edit[] };
  /** An entry that cannot be read. */
  "plan-refuse": { field: string; pending: Pending };
  /** The reader gave up an entry that waits. */
  "plan-drop": { field: string };
  /** Another level is looked at, not committed to: 0.85. */
  "level-try": { confidence: number };
  /** The level looked at becomes the one committed to. */
  "level-keep": undefined;
  "level-drop": undefined;
  "plan-text": { text: string };
  "plan-undo": undefined;
  "plan-redo": undefined;
  "run-stop": undefined;
  "run-resume": undefined;
  "tornado-stop": undefined;
  "tornado-start": undefined;
  /** The reader goes to what the last change moved. */
  "changes-last": undefined;
}

/** Sends one of the page's events up from an element. */
export function send<K extends keyof PageEvents>(from: EventTarget, name: K, detail: PageEvents[K]): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}

/** Listens for one of the page's events. */
export function listen<K extends keyof PageEvents>(
  on: EventTarget,
  name: K,
  handler: (detail: PageEvents[K]) => void,
): void {
  on.addEventListener(name, (event) => {
    if (event instanceof CustomEvent) handler(event.detail);
  });
}
