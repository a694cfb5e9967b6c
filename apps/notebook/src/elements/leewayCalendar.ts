import { formatDate } from "@leeway/charts";
import type { Forecast, Plan } from "@leeway/core";
import { html, nothing } from "lit";
import { dayKinds, dayWords, type Whose, weekdayNames } from "../plan/dayKinds.ts";
import { dayOf, isoOf, monthOf, monthsLater, weekdayOf } from "../plan/days.ts";
import { reasonEdits, spanOf } from "../plan/daysOff.ts";
import { daysPath, entryOf, fixedWords, markDays, markWorkdays } from "../plan/markDays.ts";
import { listAt } from "../plan/removeTask.ts";
import type { Pending } from "../store/state.ts";
import { field } from "./field.ts";
import { PageElement } from "./pageElement.ts";
import { RowTools } from "./rowTools.ts";

const short = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;
/** A plan's dates lie in these years. */
const [earliest, latest] = [dayOf("1900-01-01"), dayOf("2999-12-31")];

/**
 * A month of days to click: which ones hold work, which do not and why, for a calendar of the plan or for one person.
 *
 * Source: the grid of the date picker dialog in the WAI-ARIA Authoring Practices (arrows, Home and End within the week,
 * Page Up and Down by months, with Shift by years), with Shift and an arrow for a range as in other grids. Recalled.
 */
export class LeewayCalendar extends PageElement {
  static override properties = {
    plan: { attribute: false },
    stated: { attribute: false },
    forecast: { attribute: false },
    pending: { attribute: false },
    readonly: { type: Boolean },
    told: { state: true },
    whose: { state: true },
    day: { state: true },
    anchor: { state: true },
  };
  plan: Plan | undefined;
  stated: unknown;
  forecast: Forecast | undefined;
  pending: ReadonlyMap<string, Pending> = new Map();
  readonly = false;
  /** What was done last, in words. */
  told = "";
  /** `calendar NAME` or `person ID`; empty: the plan's own calendar. */
  whose = "";
  /** The day that has the focus in the grid; undefined until somebody looks: the plan's start. */
  day: number | undefined;
  /** Where a range begins, while one is marked. */
  anchor: number | undefined;
  /** What was last made of a day, for a range that goes on from it. */
  #last: { day: number; off: boolean } | undefined;
  #tools = new RowTools(this, { move: () => undefined, remove: () => ({ refused: "" }), name: () => "" });

  get #whose(): Whose {
    const [, kind, name = ""] = /^(calendar|person) (.*)$/.exec(this.whose) ?? [];
    if (kind === "person" && this.plan?.people.some(({ id }) => id === name)) return { person: name };
    if (kind === "calendar" && this.plan?.calendars.has(name)) return { calendar: name };
    return { calendar: this.plan?.calendar ?? "weekdays" };
  }

  get #at(): number {
    return this.day ?? dayOf(this.plan?.statusDate ?? this.plan?.start ?? "2027-01-01");
  }

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const whose = this.#whose;
    const { first } = monthOf(this.#at);
    return html`<div class="calendar">
      <label class="calendar-whose">Whose days
        <select @change=${this.#choose}>
          ${this.#choices(plan).map(
            ([value, words]) =>
              html`<option value=${value} .selected=${value === keyOf(whose)}>${words}</option>`,
          )}
        </select></label>
      <div class="calendar-head">
        <button type="button" @click=${() => this.#turn(-1)}><span aria-hidden="true">‹</span><span class="unseen">Month before</span></button>
        <h3 id="calendar-month" aria-live="polite">${monthName(first)}</h3>
        <button type="button" @click=${() => this.#turn(1)}><span aria-hidden="true">›</span><span class="unseen">Month after</span></button>
      </div>
      ${this.#grid(plan, whose)}
      <p class="calendar-day" id="calendar-day">${this.#words(plan, whose)}</p>
      <p class="note" id="calendar-keys">Click a day, or press Enter on it, to make it a day off or a working day again. With Shift a range: click its other end, or go there with the arrows and press Enter.</p>
      ${"calendar" in whose ? this.#workdays(plan, whose.calendar) : nothing}
      ${this.#reasons(plan, whose)}
      <p class="rows-told" role="status">${this.told}</p>
    </div>`;
  }

  #choices(plan: Plan): [string, string][] {
    const own: [string, string] = [`calendar ${plan.calendar}`, `The plan: ${plan.calendar}`];
    const others = [...plan.calendars.keys()].filter(
      (name) => name !== plan.calendar && daysPath(plan, { calendar: name }) !== undefined,
    );
    return [
      own,
      ...others.map((name): [string, string] => [`calendar ${name}`, `Calendar: ${name}`]),
      ...plan.people.map(({ id, name }): [string, string] => [`person ${id}`, name]),
    ];
  }

  #grid(plan: Plan, whose: Whose) {
    const { first, length } = monthOf(this.#at);
    const kind = dayKinds(plan, whose);
    const lead = weekdayOf(first);
    const weeks = Array.from(
      { length: Math.ceil((lead + length) / 7) },
      (_, week) => first - lead + 7 * week,
    );
    const [from, to] = this.#range;
    const start = dayOf(plan.start);
    const committed = this.forecast === undefined ? undefined : dayOf(this.forecast.committed.date);
    return html`<table role="grid" aria-labelledby="calendar-month" aria-describedby="calendar-keys" aria-readonly=${this.readonly ? "true" : "false"}
      @keydown=${this.#keys}>
      <thead><tr>${weekdayNames.map((name) => html`<th scope="col" abbr=${name}>${name.slice(0, 3)}</th>`)}</tr></thead>
      <tbody>${weeks.map(
        (monday) =>
          html`<tr>${weekdayNames.map((_, k) => {
            const day = monday + k;
            if (day < first || day >= first + length) return html`<td role="gridcell"></td>`;
            const is = kind(day);
            const mark =
              day === start ? ", the plan starts" : day === committed ? ", the date committed to" : "";
            const inRange = this.anchor !== undefined && day >= from && day <= to;
            return html`<td role="gridcell" aria-selected=${inRange ? "true" : nothing}><button type="button" class="day ${is.kind} ${mark === "" ? "" : "marked"}"
            data-day=${day} tabindex=${day === this.#at ? 0 : -1} aria-pressed=${is.kind === "work" || is.kind === "part" ? "false" : "true"}
            aria-label="${formatDate(isoOf(day), "long")}, ${dayWords(is, whose)}${mark}"
            @click=${(event: MouseEvent) => this.#click(day, event.shiftKey)} @focus=${() => this.#focused(day)}>${day - first + 1}</button></td>`;
          })}</tr>`,
      )}</tbody>
    </table>`;
  }

  /** What the day in focus is and why; of a range, how long it is. */
  #words(plan: Plan, whose: Whose) {
    const [from, to] = this.#range;
    if (this.anchor !== undefined && from !== to) {
      const days = to - from + 1;
      return `${formatDate(isoOf(from), "weekday")} to ${formatDate(isoOf(to), "weekday")}, ${days} days. Enter marks them.`;
    }
    const is = dayKinds(plan, whose)(this.#at);
    return `${formatDate(isoOf(this.#at), "long")}: ${dayWords(is, whose)}.`;
  }

  #workdays(plan: Plan, name: string) {
    const works = new Set<string>(plan.calendars.get(name)?.workdays);
    return html`<fieldset class="calendar-week"><legend>Days of the week that hold work</legend>
      ${short.map(
        (day, k) =>
          html`<label><input type="checkbox" .checked=${works.has(day)} ?disabled=${this.readonly} @change=${() => {
            const next = short.filter((one) => (one === day ? !works.has(day) : works.has(one)));
            this.#tools.act(() => this.#plan((now) => markWorkdays(now, this.stated, name, next)));
            this.requestUpdate();
          }}/> ${weekdayNames[k]?.slice(0, 3)}</label>`,
      )}</fieldset>`;
  }

  /** The reasons of what is off in this month. */
  #reasons(plan: Plan, whose: Whose) {
    const path = daysPath(plan, whose);
    const { first, length } = monthOf(this.#at);
    const key = "person" in whose ? "why" : "name";
    const here = (path === undefined ? [] : listAt(this.stated, path)).flatMap((entry, at) => {
      const span = spanOf(entry);
      return span === undefined || span.to < first || span.from >= first + length
        ? []
        : [{ entry, at, span }];
    });
    if (path === undefined || here.length === 0) return nothing;
    return html`<ul class="calendar-reasons">${here.map(({ entry, at, span }) => {
      const dates =
        span.from === span.to
          ? formatDate(isoOf(span.from), "weekday")
          : `${formatDate(isoOf(span.from), "weekday")} to ${formatDate(isoOf(span.to), "weekday")}`;
      const reason: unknown =
        typeof entry === "object" && entry !== null ? Reflect.get(entry, key) : undefined;
      return html`<li><span>${dates}</span>${field({
        label: `${dates}: why`,
        committed: typeof reason === "string" ? reason : "",
        readonly: this.readonly,
        commit: (text) =>
          this.#tools.act(() => ({
            edits: reasonEdits(this.stated, path, at, key, text),
            told: "The reason is kept.",
          })),
        drop: () => {},
      })}</li>`;
    })}</ul>`;
  }

  #choose = (event: Event): void => {
    if (!(event.target instanceof HTMLSelectElement)) return;
    this.whose = event.target.value;
    this.anchor = undefined;
    this.#last = undefined;
    this.told = "";
  };

  #turn(months: number): void {
    this.#go(monthsLater(this.#at, months), false);
  }

  get #range(): [number, number] {
    const anchor = this.anchor ?? this.#at;
    return anchor <= this.#at ? [anchor, this.#at] : [this.#at, anchor];
  }

  #go(day: number, focus: boolean): void {
    this.day = Math.max(earliest, Math.min(latest, day));
    if (!focus) return;
    void this.updateComplete.then(() => this.querySelector<HTMLElement>(`[data-day="${this.day}"]`)?.focus());
  }

  #focused(day: number): void {
    if (this.day !== day) this.day = day;
  }

  #click(day: number, shift: boolean): void {
    const { plan } = this;
    if (plan === undefined || this.readonly) return;
    if (shift && this.#last !== undefined) {
      const { day: from, off } = this.#last;
      this.#mark(Math.min(from, day), Math.max(from, day), off);
      return;
    }
    const [from, to] = this.anchor === undefined ? [day, day] : this.#range;
    const inRange = day >= from && day <= to && from !== to;
    const off = entryOf(plan, this.stated, this.#whose, day) < 0;
    this.anchor = undefined;
    if (inRange) this.#mark(from, to, off);
    else {
      this.#last = { day, off };
      this.#mark(day, day, off);
    }
  }

  #mark(from: number, to: number, off: boolean): void {
    const whose = this.#whose;
    this.#tools.act(() =>
      this.#plan((plan) => {
        const is = dayKinds(plan, whose)(from);
        const fixed = from === to && off && (is.kind === "rest" || is.kind === "holiday");
        if (fixed)
          return {
            refused: `${formatDate(isoOf(from), "weekday")} stays as it is: ${fixedWords(is, whose)}`,
          };
        return markDays(plan, this.stated, whose, { from, to }, off);
      }),
    );
  }

  #plan<T>(make: (plan: Plan) => T): T | undefined {
    return this.plan === undefined ? undefined : make(this.plan);
  }

  #keys = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const at = this.#at;
    if (event.key === "Escape" && this.anchor !== undefined) {
      this.anchor = undefined;
      event.preventDefault();
      return;
    }
    const step = stepFor(event, at);
    if (step === undefined) return;
    event.preventDefault();
    const arrow = event.key.startsWith("Arrow") || event.key === "Home" || event.key === "End";
    this.anchor = event.shiftKey && arrow ? (this.anchor ?? at) : undefined;
    this.#go(step, true);
  };
}

function stepFor({ key, shiftKey }: KeyboardEvent, at: number): number | undefined {
  const months = shiftKey ? 12 : 1;
  switch (key) {
    case "ArrowLeft":
      return at - 1;
    case "ArrowRight":
      return at + 1;
    case "ArrowUp":
      return at - 7;
    case "ArrowDown":
      return at + 7;
    case "Home":
      return at - weekdayOf(at);
    case "End":
      return at + 6 - weekdayOf(at);
    case "PageUp":
      return monthsLater(at, -months);
    case "PageDown":
      return monthsLater(at, months);
    default:
      return undefined;
  }
}

function keyOf(whose: Whose): string {
  return "person" in whose ? `person ${whose.person}` : `calendar ${whose.calendar}`;
}

/** "April 2027" */
function monthName(day: number): string {
  return formatDate(isoOf(day), "long").replace(/^\S+ \d+ /, "");
}

customElements.define("leeway-calendar", LeewayCalendar);
