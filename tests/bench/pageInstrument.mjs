/**
 * Put into the page before its own scripts: `window.bench` times answers and long tasks. It watches what is on
 * the page, frame by frame, and reads which plan text an answer belongs to off the answer element's state.
 */
export function instrument() {
  let long = [];
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) long.push({ from: entry.startTime, ms: entry.duration });
  }).observe({ type: "longtask", buffered: true });

  /** The stage of the answer on the page and its text; undefined while there is none or it is an older plan's. */
  const shown = () => {
    const element = document.querySelector("leeway-answer");
    const state = element?.state;
    if (!state?.answer || element.isUpdatePending || element.querySelector(".answer") === null)
      return undefined;
    return state.answer.text === state.text ? { stage: state.answer.stage, text: state.text } : undefined;
  };

  /** Calls back after the frame whose content is `shown`. */
  let watching;
  let seen = {};
  const afterFrame = (work) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => work(performance.now());
    port2.postMessage(0);
  };
  const frame = () => {
    const now = shown();
    if (watching !== undefined && now !== undefined && now.text !== watching.before) {
      const { stage } = now;
      const mine = watching;
      if (mine[stage] === undefined) {
        mine[stage] = 0;
        afterFrame((time) => {
          mine[stage] = time;
          if (stage === "full") {
            if (!mine.first) mine.first = time;
            mine.done?.();
          }
        });
      }
    }
    requestAnimationFrame(frame);
  };
  requestAnimationFrame(frame);
  watching = { before: undefined, from: 0 };
  seen = watching;

  addEventListener(
    "keydown",
    (event) => {
      if (event.key === "Enter" && watching !== undefined && watching.from === undefined)
        watching.from = event.timeStamp;
    },
    { capture: true },
  );

  window.bench = {
    /** Times of the load, in ms since navigation. */
    load: () => ({
      first: seen.first,
      full: seen.full,
      paint: performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
      long: long.map((one) => one.ms),
    }),
    begin() {
      long = [];
    },
    long: () => long.map((one) => one.ms),
    arm() {
      watching = { before: document.querySelector("leeway-answer").state.text, from: undefined };
    },
    async answered() {
      const mine = watching;
      if (!mine.full)
        await new Promise((done, failed) => {
          mine.done = done;
          setTimeout(() => failed(new Error("No answer within 30 s.")), 30_000);
        });
      return { first: mine.first - mine.from, full: mine.full - mine.from };
    },
    /** Ms of a fixed piece of arithmetic. */
    loop() {
      const from = performance.now();
      let x = 1;
      for (let k = 0; k < 5_000_000; k++) x = (Math.imul(x, 1664525) + 1013904223) | 0;
      return performance.now() - from + (x === 0 ? 1 : 0);
    },
  };
}
