/** Names of the places a hybrid chooses for, by what they belong to. */
export const places = {
  /** Whether the task is there at all, with all that belongs to it. */
  task: (id: string) => `task:${id}`,
  /** Duration or effort, milestone or not. */
  work: (id: string) => `task:${id}/work`,
  /** `cost` and `costPerDay`. */
  taskMoney: (id: string) => `task:${id}/money`,
  /** Links, `notBefore`, `holdToPlan`, `priority`. */
  logic: (id: string) => `task:${id}/logic`,
  taskCalendar: (id: string) => `task:${id}/calendar`,
  team: (id: string) => `task:${id}/people`,
  /** `chance` and `onlyIf`. */
  need: (id: string) => `task:${id}/need`,
  /** `started`, `finished`, `remaining`, `spent`. */
  progress: (id: string) => `task:${id}/progress`,
  taskPhase: (id: string) => `task:${id}/phase`,
  /** All work of somebody whom only one of the plans has. */
  joins: (person: string) => `joins:${person}`,
  /** A person's usual share, where tasks take it. */
  usualShare: (person: string) => `person:${person}/share`,
  rate: (person: string) => `person:${person}/rate`,
  /** Capacity, calendar and absences. */
  availability: (person: string) => `person:${person}/time`,
  calendar: (name: string) => `calendar:${name}`,
  phaseCalendar: (name: string) => `phase:${name}/calendar`,
  entry: (id: string) => `entry:${id}`,
  /** Chance, status, group, `expires`, `onlyIf`. */
  odds: (id: string) => `entry:${id}/odds`,
  impacts: (id: string) => `entry:${id}/impacts`,
  response: (entry: string, id: string) => `response:${entry}/${id}`,
  overhead: (id: string) => `overhead:${id}`,
  overheadTerms: (id: string) => `overhead:${id}/terms`,
  planCalendar: "plan/calendar",
  start: "plan/start",
  statusDate: "plan/statusDate",
  capacityRule: "plan/respectCapacity",
  finishOf: "plan/finishOf",
  correlations: "plan/correlations",
} as const;
