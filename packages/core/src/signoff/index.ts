export { approvalsState } from "./approvalsState.ts";
export { errorsInTheWay } from "./errorsInTheWay.ts";
export { hasLapsed } from "./hasLapsed.ts";
export { logChange } from "./logChange.ts";
export { meetConditions } from "./meetConditions.ts";
export {
  acceptObjection,
  answerObjection,
  type Logged,
  logObjection,
  reopenObjection,
} from "./objections.ts";
export { type Signature, signatureEntry } from "./signatureEntry.ts";
export { signatureRefusals } from "./signatureRefusals.ts";
export { signedHere } from "./signedHere.ts";
export { type Signed, signPlan } from "./signPlan.ts";
export type * from "./types.ts";
