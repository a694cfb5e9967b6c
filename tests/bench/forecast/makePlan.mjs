/**
 * A seeded plan of layered tasks, for timing: each task follows up to three of the thirty before it, has a three-point
 * duration and cost and a daily cost; one task in ten is hit by a risk of days and money.
 *
 * @param tasks      How many.
 * @param calendar   Weekdays and two holidays instead of every day.
 * @param people     Tasks are done one at a time by one of this many people; 0: nobody.
 */
export function makePlan({ tasks: count, calendar = false, people = 0, seed = 20270301 }) {
  const random = mulberry(seed);
  const between = (low, high) => low + random() * (high - low);
  const whole = (low, high) => Math.floor(between(low, high + 1));
  const tasks = Array.from({ length: count }, (_, i) => {
    const likely = whole(2, 30);
    const after = new Set();
    if (i > 0) for (let k = whole(1, 3); k > 0; k--) after.add(`t${whole(Math.max(0, i - 30), i - 1)}`);
    return {
      id: `t${i}`,
      name: `Task ${i}`,
      duration: [
        Math.max(1, Math.round(likely * between(0.6, 0.95))),
        likely,
        Math.round(likely * between(1.1, 2.5)) + 1,
      ],
      cost: [500, whole(600, 2000), whole(2100, 6000)],
      costPerDay: whole(50, 400),
      ...(after.size > 0 ? { after: [...after] } : {}),
      ...(people > 0 ? { people: [`p${i % people}`] } : {}),
    };
  });
  const risks = Array.from({ length: Math.max(1, Math.floor(count / 10)) }, (_, k) => ({
    id: `r${k}`,
    name: `Risk ${k}`,
    probability: Math.round(between(5, 60)) / 100,
    impacts: [{ tasks: [`t${whole(0, count - 1)}`], delay: [2, 5, 20], cost: [100, 500, 3000] }],
  }));
  return {
    format: 1,
    title: `${count} tasks`,
    start: "2027-03-01",
    calendars: {
      bench: calendar
        ? { holidays: ["2027-03-26", "2027-03-29"] }
        : { workdays: ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] },
    },
    calendar: "bench",
    ...(people > 0
      ? { people: Array.from({ length: people }, (_, p) => ({ id: `p${p}`, name: `Person ${p}` })) }
      : {}),
    respectCapacity: people > 0,
    tasks,
    risks,
  };
}

/** A small published generator (mulberry32, Tommy Ettinger, public domain): the same plan everywhere. */
function mulberry(seed) {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
