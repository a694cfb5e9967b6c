import "@fontsource-variable/source-serif-4/opsz.css";
import "@fontsource-variable/source-sans-3/wght.css";
import "./styles/tokens.css";
import "./styles/page.css";
import "./styles/answer.css";
import "./styles/fields.css";
import "./styles/tables.css";
import "./styles/figures.css";
import "./styles/narrow.css";
import "./styles/print.css";
import { stated, text } from "virtual:opening-plan";
import { createStore } from "./store/store.ts";
import { createReader } from "./worker/reader.ts";
import { createRunner } from "./worker/runner.ts";
import { startForecastWorker, startPlanWorker, startTornadoWorker } from "./worker/startWorkers.ts";

/** Ms that the forecast worker has to leave a run: a slice of a large plan may be long. */
const patience = 1000;

// The workers begin with the answer while the page itself is still loading.
const store = createStore(
  text,
  createReader(startPlanWorker()),
  (kind, reply) =>
    kind === "forecast"
      ? createRunner(startForecastWorker, reply, patience)
      : createRunner(startTornadoWorker, reply),
  stated,
);

const { LeewayPage } = await import("./elements/all.ts");
const page = document.querySelector("leeway-page");
if (page instanceof LeewayPage) page.store = store;

// A copy of the page's own files, so that it opens and computes without a network next time. It can wait: the page
// itself goes first.
if (import.meta.env.PROD && "serviceWorker" in navigator) {
  setTimeout(() => {
    navigator.serviceWorker.register(new URL("./offline.js", document.baseURI)).catch(() => {
      // Not a secure context, or storage refused: the page works as it is, with a network.
    });
  }, 3000);
}
