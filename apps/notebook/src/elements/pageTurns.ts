import { createTurns, type Turns } from "./turns.ts";

/** A page in the background gets no frames; its turns come after this long instead, in ms. */
const withoutFrames = 250;

/** How long work out of sight waits for an idle moment, in ms. */
const idleAtLatest = 400;

const { port1, port2 } = new MessageChannel();
const afterwards: (() => void)[] = [];
port1.onmessage = () => afterwards.shift()?.();

/** Runs a task once the next frame is on the screen: what it does is not part of that frame. */
export function afterFrame(task: () => void): void {
  let ran = false;
  const run = (): void => {
    if (ran) return;
    ran = true;
    clearTimeout(late);
    afterwards.push(task);
    port2.postMessage(0);
  };
  const late = setTimeout(run, withoutFrames);
  requestAnimationFrame(run);
}

function whenIdle(task: () => void): void {
  if (typeof requestIdleCallback === "function") requestIdleCallback(() => task(), { timeout: idleAtLatest });
  else setTimeout(task, 50);
}

const near = new WeakSet<Element>();
const seen = new WeakSet<Element>();
const sight = new IntersectionObserver(
  (entries) => {
    for (const { target, isIntersecting } of entries) {
      if (isIntersecting) near.add(target);
      else near.delete(target);
    }
  },
  { rootMargin: "20% 0px" },
);

/** The page's turns. `data-drawing` on the root element says that some wait. */
const turns: Turns = createTurns({
  afterFrame,
  whenIdle,
  isNear: (element) => near.has(element),
  busy: (waiting) => document.documentElement.toggleAttribute("data-drawing", waiting),
});

export const pageTurns: Turns = {
  ...turns,
  take(key, work) {
    if (!seen.has(key)) {
      seen.add(key);
      sight.observe(key);
    }
    turns.take(key, work);
  },
};
