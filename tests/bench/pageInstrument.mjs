/**
 * Put into the page before its own scripts: `window.bench` times answers and long tasks. It watches what is on
 * the page, frame by frame, and reads which plan an answer belongs to off the answer element's state.
 */
export function instrument() {
  let long = [];
  const loops = [];
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) long.push({ from: entry.startTime, ms: entry.duration });
  }).observe({ type: "longtask", buffered: true });

  /** The stage of the answer on the page and its plan; undefined while there is none or it is an older plan's. */
  const shown = () => {
    const element = document.querySelector("leeway-answer");
    const answer = element?.state?.answer;
    if (!answer || element.isUpdatePending || element.querySelector(".answer") === null) return undefined;
    return answer.plan === element.state.current ? answer : undefined;
  };

  /** Calls back after the frame whose content is `shown`. */
  let watching;
  let seen = {};
  let still = 0;
  const afterFrame = (work) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => work(performance.now());
    port2.postMessage(0);
  };
  const frame = () => {
    // The example's answer, which a first visit finds in the page as it was built.
    if (still === 0 && document.querySelector(".opening .sentence") !== null) {
      still = Number.NaN;
      afterFrame((time) => {
        still = time;
      });
    }
    const now = shown();
    if (watching !== undefined && now !== undefined && now.plan !== watching.before) {
      const { stage } = now;
      const mine = watching;
      if (mine[stage] === undefined) {
        mine[stage] = 0;
        afterFrame((time) => {
          mine[stage] = time;
          performance.mark(`bench ${stage}`);
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

  const begun = (time) => {
    watching.from = time;
    performance.mark("bench edit");
  };
  addEventListener(
    "keydown",
    (event) => {
      if (event.key === "Enter" && watching !== undefined && watching.from === undefined)
        begun(event.timeStamp);
    },
    { capture: true },
  );

  window.bench = {
    /** Times of the load, in ms since navigation. */
    load: () => ({
      still,
      first: seen.first,
      full: seen.full,
      paint: performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
      long: long.map((one) => one.ms),
    }),
    begin() {
      long = [];
    },
    long: () =>
      long
        .filter((one) => !loops.some(({ from, to }) => one.from < to && from < one.from + one.ms))
        .map((one) => one.ms),
    arm() {
      watching = { before: document.querySelector("leeway-answer").state.current, from: undefined };
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
    /** Ms of a fixed piece of arithmetic, about 40 on a free core; not counted as a long task of the page. */
    loop() {
      const from = performance.now();
      let x = 1;
      for (let k = 0; k < 40_000_000; k++) x = (Math.imul(x, 1664525) + 1013904223) | 0;
      const to = performance.now();
      loops.push({ from, to });
      return to - from + (x === 0 ? 1 : 0);
    },
  };
}
