import { listOf } from "./list.ts";
import { looseReference, reference } from "./names.ts";
import { type Key, optional } from "./type.ts";

const WHO = ["person", "stakeholder"] as const;
/** The id of a person or a stakeholder. */
export const who = () => reference(WHO);

const people = (about: string, mistakenFor: string[] = []): Key<string[]> =>
  optional(listOf(reference(WHO)), about, { mistakenFor });

/** Who does what: shared by tasks and phases. */
export const ROLES = {
  responsible: people("Ids of those who do it; by default its first person.", ["owner", "lead", "assignee"]),
  accountable: people("Ids of those who answer for it.", ["approver"]),
  consulted: people("Ids of those who are asked before."),
  informed: people("Ids of those who are told after."),
};

/** Who wrote something down, told apart from who said it. */
export const enteredBy = (about: string): Key<string[]> =>
  optional(listOf(looseReference(WHO)), about, {
    mistakenFor: ["contributedBy", "contributor", "writtenBy"],
  });

export const estimatedBy = (): Key<string[]> =>
  optional(listOf(looseReference(WHO)), "Who said so: ids of people or stakeholders.", {
    mistakenFor: ["estimator", "estimated-by"],
  });
