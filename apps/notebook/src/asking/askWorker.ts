import {
  brief,
  budget,
  compare,
  explain,
  future,
  type Problem,
  planFindings,
  reach,
  readPlan,
  responses,
  whyConfidence,
} from "@leeway/core";
import type { AskReply, AskRequest, Kind, Question, Questions } from "./questions.ts";
import { tellFindings } from "./tellFindings.ts";

/** At most this many progress messages a second. */
const perSecond = 10;

type Tell = (done: number, total: number) => void;
interface Answered {
  answer: Questions[Kind]["answer"] | undefined;
  problems: Problem[];
}

const post = (reply: AskReply): void => self.postMessage(reply);

// Each question is one long call: whoever wants to leave it ends the worker.
self.addEventListener("message", (event: MessageEvent<AskRequest>) => {
  const { run, plan, forecast, question } = event.data;
  let told = performance.now();
  try {
    const answered = answer({ plan, forecast }, question, (done, total) => {
      const now = performance.now();
      if (now - told < 1000 / perSecond) return;
      told = now;
      post({ kind: "progress", run, done, total });
    });
    post({ kind: "answer", run, ...answered });
  } catch (error) {
    post({ kind: "failed", run, words: error instanceof Error ? error.message : String(error) });
  }
});

function answer(
  { plan, forecast }: Pick<AskRequest, "plan" | "forecast">,
  question: Question,
  onProgress: Tell,
): Answered {
  switch (question.kind) {
    case "explain": {
      const { explanation, problems } = explain(plan, { onProgress });
      return { answer: explanation, problems };
    }
    case "responses": {
      const { responses: found, problems } = responses(plan, { onProgress });
      return { answer: found, problems };
    }
    case "reach": {
      const { kind: _kind, ...asked } = question;
      const { reach: found, problems } = reach(plan, { ...asked, onProgress });
      return { answer: found, problems };
    }
    case "compare": {
      const { plan: old, problems: unread } = readPlan(question.old);
      if (old === undefined) return { answer: undefined, problems: unread };
      const { comparison, problems } = compare(old, plan, { onProgress });
      return { answer: comparison, problems };
    }
    case "findings":
      return {
        answer: tellFindings(
          plan,
          planFindings(plan, {
            today: question.today,
            ...(forecast === undefined ? {} : { forecast }),
          }),
        ),
        problems: [],
      };
    case "future": {
      const { kind: _kind, ...which } = question;
      const { future: found, problems } = future(plan, which, { onProgress });
      return { answer: found, problems };
    }
    case "confidence": {
      const { confidence, problems } = whyConfidence(plan, { onProgress });
      return { answer: confidence, problems };
    }
    case "budget": {
      const { budget: found, problems } = budget(plan, { onProgress });
      return { answer: found, problems };
    }
    case "brief": {
      const { brief: written, answers, problems } = brief(plan, { today: question.today, onProgress });
      if (written === undefined || answers === undefined) return { answer: undefined, problems };
      return { answer: { brief: written, answers }, problems };
    }
  }
}
