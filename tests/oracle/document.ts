/**
 * The part of a plan document, format 1, that takes part in time and money, as a person writes it. What the
 * random plans are made of and the reference cases are written in.
 */

export interface EstimateKeys {
  shape?: "pert" | "triangular" | "uniform" | "normal" | "lognormal";
  bounds?: "extremes" | "p10-p90" | "p5-p95";
  unit?: "days" | "weeks";
}
export type EstimateDocument =
  | number
  | [number, number, number]
  | ({ low: number; likely?: number; high: number } & EstimateKeys)
  | { outcomes: { value: number; chance: number }[]; unit?: "days" | "weeks" };

type OneOrMore<T> = T | T[];

export interface LinkDocument {
  task: string;
  link?: "finish-to-start" | "start-to-start" | "finish-to-finish" | "start-to-finish";
  lag?: EstimateDocument | { days: EstimateDocument; calendar: string };
}
export type TaskPersonDocument = string | { id: string; share?: number; along?: true };
export interface TaskDocument {
  id: string;
  name: string;
  phase?: string;
  duration?: EstimateDocument;
  effort?: EstimateDocument;
  milestone?: true | "start";
  after?: OneOrMore<string | LinkDocument>;
  notBefore?: string;
  holdToPlan?: true;
  calendar?: string;
  unbroken?: string;
  people?: OneOrMore<TaskPersonDocument>;
  cost?: EstimateDocument;
  costPerDay?: EstimateDocument;
  priority?: number;
  chance?: number;
  onlyIf?: string;
  started?: string;
  finished?: string;
  remaining?: EstimateDocument;
  spent?: number;
}
export type DateDocument = string | { from: string; to: string; share?: number };
export interface PersonDocument {
  id: string;
  name: string;
  rate?: number;
  share?: number;
  capacity?: number;
  calendar?: string;
  away?: OneOrMore<DateDocument>;
}
export interface ImpactDocument {
  tasks?: OneOrMore<string>;
  phase?: string;
  delay?: EstimateDocument;
  factor?: EstimateDocument;
  wait?: EstimateDocument;
  cost?: EstimateDocument;
}
export interface ResponseDocument {
  id: string;
  action: string;
  cost?: EstimateDocument;
  adopted?: boolean;
  probability?: number;
  scale?: number;
}
interface EntryDocument {
  id: string;
  impacts?: OneOrMore<ImpactDocument>;
  responses?: OneOrMore<ResponseDocument>;
  group?: string;
  status?: "open" | "occurred" | "closed";
  expires?: string;
  onlyIf?: string;
}
export interface RiskDocument extends EntryDocument {
  name: string;
  probability: number;
}
export interface AssumptionDocument extends EntryDocument {
  statement: string;
  chanceWrong: number;
}
export interface CalendarDocument {
  like?: string;
  workdays?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun")[];
  holidays?: OneOrMore<DateDocument>;
}
export interface PlanDocument {
  format: 1;
  title: string;
  start: string;
  statusDate?: string;
  seed?: string;
  iterations?: number;
  commitment?: { finishOf?: string };
  estimates?: { shape?: "pert" | "triangular"; bounds?: "extremes" | "p10-p90" | "p5-p95" };
  calendars?: Record<string, CalendarDocument>;
  calendar?: string;
  people?: OneOrMore<PersonDocument>;
  respectCapacity?: boolean;
  phases?: OneOrMore<{ name: string; calendar?: string }>;
  tasks: OneOrMore<TaskDocument>;
  assumptions?: OneOrMore<AssumptionDocument>;
  risks?: OneOrMore<RiskDocument>;
  overheads?: OneOrMore<{ id: string; name: string; perDay?: EstimateDocument; from?: string; to?: string }>;
}
