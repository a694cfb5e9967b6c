type Rng = () => number;

/** A plan that follows a program, with all that a program can do. */
export function documentOf(rng: Rng): Record<string, unknown> {
  const whole = (low: number, high: number) => low + Math.floor(rng() * (high - low + 1));
  const chance = (p: number) => rng() < p;
  const range = (low: number, high: number) => {
    const likely = whole(low, high);
    const shape = ["pert", "triangular", "uniform"][whole(0, 2)] as string;
    return { low, ...(shape === "uniform" ? {} : { likely }), high: high + 1, shape };
  };
  const amount = (low: number, high: number) =>
    chance(0.3)
      ? whole(low, high)
      : chance(0.2)
        ? {
            outcomes: [
              [0.25, low + 1],
              [0.75, high],
            ].map(([p, value]) => ({ value, chance: p })),
          }
        : range(low, high);
  const count = whole(1, 24);
  const ids = Array.from({ length: count }, (_, i) => `t${i}`);
  const weekdays = chance(0.6);
  const tasks = ids.map((id, i) => ({
    id,
    name: id,
    duration: chance(0.2) ? whole(1, 9) : range(whole(1, 4), whole(5, 30)),
    ...(chance(0.7) ? { cost: chance(0.5) ? whole(1, 900) : range(100, 900) } : {}),
    ...(chance(0.7) ? { costPerDay: chance(0.7) ? whole(10, 90) : range(10, 90) } : {}),
    ...(i > 0 && chance(0.9)
      ? { after: [...new Set(Array.from({ length: whole(1, 6) }, () => ids[whole(0, i - 1)] as string))] }
      : {}),
    ...(chance(0.15) ? { notBefore: "2027-04-10" } : {}),
    ...(chance(0.1) ? { holdToPlan: true } : {}),
    ...(chance(0.2) ? { target: "2027-06-01" } : {}),
  }));
  const entries = Array.from({ length: whole(0, 6) }, (_, k) => ({
    id: `r${k}`,
    name: `r${k}`,
    probability: Math.round(rng() * 90) / 100,
    ...(chance(0.1) ? { status: "occurred" } : {}),
    impacts: Array.from({ length: whole(1, 2) }, () => ({
      tasks: [...new Set([ids[whole(0, count - 1)], ids[whole(0, count - 1)]])],
      ...(chance(0.8) ? { delay: chance(0.3) ? whole(1, 5) : range(0, 9) } : {}),
      ...(chance(0.2) ? { factor: chance(0.5) ? 1.5 : { low: 1, likely: 1.2, high: 2 } } : {}),
      ...(chance(0.6) ? { cost: chance(0.3) ? whole(1, 50) : range(5, 50) } : { cost: 3 }),
    })),
  }));
  return {
    format: 1,
    title: "program",
    start: "2027-03-01",
    calendars: {
      c: weekdays
        ? { workdays: ["mon", "tue", "wed", "thu", "fri"], holidays: ["2027-03-26"] }
        : { workdays: ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] },
    },
    calendar: "c",
    respectCapacity: false,
    tasks,
    risks: entries,
    ...(chance(0.3) ? { overheads: [{ id: "o", name: "o", perDay: amount(1, 9) }] } : {}),
    ...(chance(0.3) ? { statusDate: "2027-03-10" } : {}),
  };
}
