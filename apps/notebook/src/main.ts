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
import "./elements/all.ts";
import examplePlan from "../../../examples/quillmarsh-clinic.plan.yaml?raw";
import { LeewayPage } from "./elements/leewayPage.ts";
import { createStore } from "./store/store.ts";
import { createReader } from "./worker/reader.ts";
import { createRunner } from "./worker/runner.ts";
import { startForecastWorker, startPlanWorker, startTornadoWorker } from "./worker/startWorkers.ts";

/** Ms that the forecast worker has to leave a run: a slice of a large plan may be long. */
const patience = 1000;

const page = document.querySelector("leeway-page");
if (page instanceof LeewayPage) {
  page.store = createStore(examplePlan, createReader(startPlanWorker()), (kind, reply) =>
    kind === "forecast"
      ? createRunner(startForecastWorker, reply, patience)
      : createRunner(startTornadoWorker, reply),
  );
}

// A copy of the page's own files, so that it opens and computes without a network next time.
if (import.meta.env.PROD && "serviceWorker" in navigator) {
  navigator.serviceWorker.register(new URL("./offline.js", document.baseURI)).catch(() => {
    // Not a secure context, or storage refused: the page works as it is, with a network.
  });
}
