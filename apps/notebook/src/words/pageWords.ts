/** A piece of a sentence: its words, a key of the document as it is written there, or a way to a place of the page. */
export interface Piece {
  text: string;
  /** It stands so in the text of the plan. */
  code?: true;
  /** Id of the place it leads to. */
  to?: string;
}

/** What the page calls a field of the document; what it has no field for is not here. */
const fields: Readonly<Record<string, string>> = {
  after: "Waits for",
  responsible: "Does it",
  accountable: "Answers for it",
  consulted: "Is asked before",
  owner: "Owner",
  measure: "Measured by",
  target: "Target",
  by: "By",
  "purpose.problem": "What is wrong today",
  "purpose.goals": "Goals",
  "purpose.scope.in": "In scope",
  "purpose.scope.out": "Out of scope",
  quality: "Quality",
  measured: "Measured",
  benefits: "Benefits",
  starts: "Begins with",
  finishBy: "Date asked for",
  budget: "Money available",
  confidence: "Level committed to",
  finishOf: "Whose finish",
  signpost: "Signpost",
  reviewBy: "Review by",
  expires: "Can happen until",
  impacts: "Effect",
  status: "State",
  due: "By when",
  cost: "Costs",
  approvesUpTo: "Approves up to",
  approvals: "Who decides",
  delegate: "Signs in their place",
  "decision.by": "To be decided by",
  changes: "Log of changes",
  people: "Who works on it",
  estimatedBy: "Estimated by",
  basis: "Why they would know",
  notBefore: "Not before",
  statusDate: "Whole plan as of",
  started: "Started",
  finished: "Finished",
  remaining: "What remains",
  spent: "Spent so far",
  share: "Share of their time",
  along: "Their absences do not hold it up",
  priority: "Priority",
  link: "Kind of link",
  lag: "Working days later",
  unbroken: "Not across a day off of",
  holdToPlan: "Never before its start in the plan as written",
  onlyIf: "Needed only if",
  scope: "Delivers",
  detail: "How firm it is",
  atLeast: "At least",
  atMost: "At most",
  intervals: "Spans to watch",
  correlations: "Estimates that move together",
  coefficient: "How closely",
  cause: "Cause",
  currency: "Currency",
  "purpose.constraints": "What cannot be changed",
  years: "Years counted",
  discountRate: "Discount rate",
  goal: "Goal it serves",
  baseline: "How it is today",
  ramp: "Months until it is there in full",
  lasts: "Months it lasts",
  until: "Last day it counts",
  unit: "Unit",
  worth: "Worth of one",
  note: "Note",
  "commitment.holder": "Contingency held by",
  "commitment.funds": "When money is released",
  "actual.days": "Working days it took",
  "actual.cost": "What it cost",
  why: "Why",
  approvedBy: "Agreed to by",
};

/** What the page calls a key of the document; undefined where it has no field for it. */
export function fieldName(key: string): string | undefined {
  return Object.hasOwn(fields, key) ? fields[key] : undefined;
}

/** What is done on the page otherwise than by a call of the command or in the text; `{id|title}` leads there, and a key after `=` stands as it is. */
const turns: readonly (readonly [from: string | RegExp, to: string])[] = [
  ["Ask `leeway reach` what it would take", "See {reach|What it would take}"],
  ["Ask `leeway responses` what each buys", "See under {responses|Responses} what each buys"],
  [
    "Ask `leeway confidence` what each level costs, choose, and write `commitment.confidence`",
    "See under {level|Why this level} what each level costs, choose, and write it into `confidence`",
  ],
  [
    "ask `leeway people PLAN --lose ID --days 10` what an absence does",
    "see what ten days under “Away” would do",
  ],
  [": `leeway why PLAN TASK` names what holds each start", ""],
  [
    /Log it: `leeway change [^`]*`/,
    "Log it under {sign-off|Sign-off}, in `changes`: what, why, and who agreed",
  ],
  [/, record --days \S+=0\b/, ", write `actual: { days: 0 }`"],
  [/Record what it cost: --cost \S+=MONEY;/, "Write what it cost in `actual.cost`;"],
  ["list it in `risks` and `assumptions`", "list it in the {register|Register}"],
  ["Write `purpose`:", "Write down, under {purpose|Purpose},"],
  [
    "Write `commitment` with `finishBy`, `budget` and the `confidence` to commit at",
    "Fill in what you know under {commitment|Commitment}: `finishBy`, `budget` and `confidence`",
  ],
  ["`amount` or `quantity`", "what it is worth"],
  ["mark it `detail: outline`", "choose an outline, under the task's Details in `detail`,"],
  ["write `actual: { days: 0 }`", "write 0 into `actual.days`"],
  ["Record that it has happened", "Record under its Details that it has happened"],
  ["or say in `note` who pays", "or let it stand and say who pays"],
  [
    "Set `respectCapacity: true` so that the tasks wait",
    "Tick, under {people|People}, that a task waits until its people are free",
  ],
  ["Write `conditionsMet` once they were met", "Record there that the conditions are met, once they are"],
  ["Add `why`", "Say `why`"],
  ["Give `commitment: { budget: ... }`", "Fill in `budget`"],
  ["Give `commitment: { finishBy: ... }`", "Fill in `finishBy`"],
  ["The plan has no `statusDate`:", "Nothing says up to which day progress is recorded, `statusDate`:"],
  ["Set `status: occurred` or `closed`", "Choose another `status`"],
  ["Set its `status`: `occurred` or `closed`", "Choose another `status`"],
  ["Give a `rate`", "Give the cost of a day of theirs"],
  ["Name who does it in `people`", "Name who does it under the task's Details, in `people`"],
  [
    "Add `appraisal` with the years to count and your organisation's own discount rate",
    "Fill in `years` and, with your organisation's own, `discountRate`",
  ],
  ["Set `statusDate` and record", "Under the Details of a task fill in `statusDate`, and record"],
  ["and write `remaining`", "and write it under the task's Details, in `remaining`"],
  [
    "Write in `basis` what was measured, asked or compared",
    "Say what was measured, asked or compared: by “Ask somebody for their estimate” below, or under the task's Details, in `basis`",
  ],
  [
    "Write in `estimatedBy` who said so",
    "Say who said so: by “Ask somebody for their estimate” below, or under the task's Details, in `estimatedBy`",
  ],
];

/** What is to be done, in the page's names for its fields; where the page has none, it says that the text of the plan does. */
export function pageWords(text: string): Piece[] {
  let said = text;
  for (const [from, to] of turns) said = said.replace(from, to);
  const pieces: Piece[] = [];
  let told = false;
  for (const [at, part] of said.split("`").entries()) {
    const field = fields[part.replace(/^commitment\.(?=finishBy$|budget$|confidence$)/, "")];
    if (at % 2 === 0) pieces.push(...withWays(part));
    else if (field !== undefined) pieces.push({ text: `“${field}”` });
    else {
      pieces.push({ text: part.replace(/^=/, ""), code: true });
      if (!told) pieces.push(...withWays(" (in the {text|plan text})"));
      told = true;
    }
  }
  return pieces;
}

function withWays(words: string): Piece[] {
  const parts = words.split(/\{([a-z-]+)\|([^}]+)\}/);
  return parts.flatMap((part, at): Piece[] => {
    if (at % 3 === 1 || part === "") return [];
    const to = at % 3 === 2 ? parts[at - 1] : undefined;
    return [to === undefined ? { text: part } : { text: part, to }];
  });
}
