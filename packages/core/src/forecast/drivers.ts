import type { AsWritten } from "../simulate/asWritten.ts";
import type { Model } from "../simulate/model.ts";
import type { Trials } from "../simulate/trials.ts";
import type { Driver } from "./types.ts";

/**
 * What each item added, on average over the iterations: working days to tasks critical in an iteration (draw
 * less as-written value; impacts where they occurred) and money to the total. Largest effect on time first,
 * then on money, then by id. Items that add nothing at all are left out.
 */
export function summariseDrivers(model: Model, trials: Trials, asWritten: AsWritten): Driver[] {
  const n = trials.iterations;
  const { sums } = trials;
  const drivers: Driver[] = [];
  const add = (driver: Driver) => {
    if (Math.abs(driver.days) > 1e-9 || Math.abs(driver.money) > 1e-6) drivers.push(driver);
  };
  let at = 0;
  model.tasks.forEach((task, j) => {
    let lags = 0;
    for (let l = 0; l < task.links.length; l++) lags += sums.lagDays[at++] as number;
    add({
      id: task.id,
      name: task.name,
      kind: "task",
      days: (sums.ownDays[j] as number) / n,
      money: (sums.ownMoney[j] as number) / n,
    });
    if (lags !== 0)
      add({ id: task.id, name: `Lags before ${task.name}`, kind: "lag", days: lags / n, money: 0 });
  });
  model.register.forEach((entry, e) => {
    add({
      id: entry.id,
      name: entry.name,
      kind: entry.kind,
      days: (sums.entryDays[e] as number) / n,
      money: (sums.entryMoney[e] as number) / n,
    });
  });
  model.responses.forEach((response, r) => {
    const money = (sums.responses[r] as number) / n - (asWritten.money.responses[r] as number);
    add({ id: response.id, name: response.name, kind: "response", days: 0, money });
  });
  model.overheads.forEach((overhead, o) => {
    const money = (sums.overheads[o] as number) / n - (asWritten.money.overheads[o] as number);
    add({ id: overhead.id, name: overhead.name, kind: "overhead", days: 0, money });
  });
  return drivers.sort(
    (a, b) =>
      Math.abs(b.days) - Math.abs(a.days) || Math.abs(b.money) - Math.abs(a.money) || (a.id < b.id ? -1 : 1),
  );
}
