import type { DueList } from "../../communicate/types.ts";
import type { Forecast } from "../../forecast/types.ts";
import type { CalendarEvent } from "../calendar/writeCalendar.ts";
import type { Import } from "../merge/types.ts";
import type { DrawnOf, PlanNamed } from "./parts.ts";

/** What a table changes in the plan. `written` false: nothing changes, or it was only shown. */
export interface ImportAnswer extends Pick<Import, "changes" | "unchanged"> {
  written: boolean;
}

/** A row of a table by its headings; a cell that is empty is left out. Numbers are as the plan writes them. */
export type TableRow = Record<string, string | number>;

/** What `export --format json` writes: a table of the plan, its forecast, or days in a calendar. */
export type ExportAnswer =
  | { plan: PlanNamed; tasks: TableRow[] }
  | { plan: PlanNamed; estimates: TableRow[] }
  | { plan: PlanNamed; register: TableRow[] }
  | { plan: PlanNamed; people: TableRow[] }
  | Forecast
  | (DrawnOf & { events: CalendarEvent[] })
  | (DrawnOf & DueList);
