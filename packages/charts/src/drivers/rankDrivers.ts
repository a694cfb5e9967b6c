import type { Driver } from "@leeway/core";

/**
 * The `most` largest drivers: picked by their share of all days or of all money, whichever is more (signs
 * aside), then put in order of days, of money, of id. Those that add nothing are left out.
 */
export function rankDrivers(drivers: readonly Driver[], most: number): Driver[] {
  const days = drivers.reduce((sum, each) => sum + Math.abs(each.days), 0);
  const money = drivers.reduce((sum, each) => sum + Math.abs(each.money), 0);
  const size = (each: Driver) =>
    Math.max(days > 0 ? Math.abs(each.days) / days : 0, money > 0 ? Math.abs(each.money) / money : 0);
  const byId = (a: Driver, b: Driver) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
  return drivers
    .filter((each) => size(each) > 0)
    .sort((a, b) => size(b) - size(a) || byId(a, b))
    .slice(0, most)
    .sort((a, b) => b.days - a.days || b.money - a.money || byId(a, b));
}
