/**
 * The plan, as the rest of the program sees it: read, checked, defaults filled in. What it is made of is in `types/`.
 *
 * A `Plan` in hand is a correct plan. Every estimate is one of three objects, every list is a list, every
 * task carries its effective calendar and every reference points at something that exists. Only `readPlan`
 * and the edits of `plan/` make one; nothing inside checks it again.
 *
 * Dates stay ISO 8601 calendar dates (`2027-02-01`); they become day numbers in `compile`.
 * Money is a plain number in the plan's currency.
 */

import type { PAGE_SECTIONS } from "./definition/pageText.ts";
import type { CalendarDefinition, Person, Stakeholder } from "./types/people.ts";
import type { Benefit, Purpose } from "./types/purpose.ts";
import type { Assumption, Risk } from "./types/register.ts";
import type {
  AcceptedFinding,
  Approval,
  Change,
  Commitment,
  DecisionAsked,
  Objection,
  ReturnTrigger,
} from "./types/signOff.ts";
import type { Correlation, Interval, Phase, Task } from "./types/tasks.ts";
import type { Estimate, Id, IsoDate, Noted } from "./types/values.ts";

export type * from "./types/people.ts";
export type * from "./types/purpose.ts";
export type * from "./types/register.ts";
export type * from "./types/signOff.ts";
export type * from "./types/tasks.ts";
export type * from "./types/values.ts";

/** Money for every working day of a span. */
export interface Overhead extends Noted {
  id: Id;
  name: string;
  perDay: Estimate;
  from?: Id;
  to?: Id;
}

/** Free text in Markdown below a section of the page; changes no number. */
export interface PageText extends Noted {
  after: PageSection;
  text: string;
}

/** A section of the page that free text may stand below. */
export type PageSection = (typeof PAGE_SECTIONS)[number];

/** A correct plan: every reference resolves, every default is filled in. Made by `readPlan` and `planFromData` only. */
export interface Plan extends Noted {
  format: 1;
  title: string;
  currency: string;
  start: IsoDate;
  statusDate?: IsoDate;
  seed: string;
  iterations: number;
  commitment: Commitment;
  decision?: DecisionAsked;
  lateness?: { after?: IsoDate; perWeek?: Estimate; once?: Estimate };
  /** Every calendar by name, `weekdays` and `every-day` included. */
  calendars: Map<string, CalendarDefinition>;
  /** Name of the plan's own calendar. */
  calendar: string;
  purpose: Purpose;
  benefits: Benefit[];
  appraisal?: { years: number; discountRate: number };
  people: Person[];
  respectCapacity: boolean;
  stakeholders: Stakeholder[];
  phases: Phase[];
  tasks: Task[];
  intervals: Interval[];
  assumptions: Assumption[];
  risks: Risk[];
  correlations: Correlation[];
  overheads: Overhead[];
  approvals: Approval[];
  objections: Objection[];
  changes: Change[];
  returnTriggers: ReturnTrigger[];
  texts: PageText[];
  acceptedFindings: AcceptedFinding[];
  /** SHA-256 of the document (plan-format "The plan's hash"), hex. */
  sha256: string;
  /** The same with progress left out too: what an approval is bound to. */
  approvalSha256: string;
}
