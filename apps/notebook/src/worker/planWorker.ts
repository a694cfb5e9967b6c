import { readPlan } from "@leeway/core";
import { parse } from "yaml";
import { applyEdits } from "../plan/applyEdits.ts";
import type { PlanRead, PlanReply, PlanRequest } from "./planMessages.ts";

const post = (reply: PlanReply): void => self.postMessage(reply);

self.addEventListener("message", (event: MessageEvent<PlanRequest>) => {
  const { id, text, edits } = event.data;
  try {
    post({ id, read: read(text, edits) });
  } catch (error) {
    post({ id, failed: error instanceof Error ? error.message : String(error) });
  }
});

function read(text: string, edits: PlanRequest["edits"]): PlanRead {
  const edited = applyEdits(text, edits);
  if (edited.problems.length > 0) return { text, problems: edited.problems, stated: plainData(text) };
  const { plan, problems } = readPlan(edited.text);
  const stated = plainData(edited.text);
  return { text: edited.text, problems, stated, ...(plan === undefined ? {} : { plan }) };
}

function plainData(text: string): unknown {
  try {
    return parse(text);
  } catch {
    return undefined; // the problems say why
  }
}
