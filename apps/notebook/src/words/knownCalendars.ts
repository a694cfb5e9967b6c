import type { Forecast, Plan } from "@leeway/core";

/** As many plans as an hour of quick work brings. */
const most = 200;

/**
 * Which calendar a plan counted its working days on, by the plan's hash: a forecast does not hold it, and two figures of
 * working days can be told apart only where both were counted on the same one.
 */
export class KnownCalendars {
  #of = new Map<string, string>();

  note({ sha256, calendar, calendars }: Plan): void {
    if (this.#of.has(sha256)) return;
    this.#of.set(sha256, JSON.stringify(calendars.get(calendar) ?? calendar));
    for (const oldest of this.#of.keys()) {
      if (this.#of.size <= most) break;
      this.#of.delete(oldest);
    }
  }

  same(one: Forecast, other: Forecast): boolean {
    const calendar = this.#of.get(one.plan.sha256);
    return calendar !== undefined && calendar === this.#of.get(other.plan.sha256);
  }
}
