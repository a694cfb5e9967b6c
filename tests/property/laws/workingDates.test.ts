import { describe, expect, it } from "vitest";
import { dayNumber } from "../../oracle/dates.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { calendarDays, taskDays } from "../../oracle/workdays.ts";
import { forecastOf, planOfDocument, runOf } from "./runPlan.ts";

/**
 * A task starts and finishes on days on which it works: its own calendar's, its people's, full absences excluded
 * (days by the reference implementation, tests/oracle/workdays.ts). Random plans from printed seeds, exact.
 */
const seeds = Array.from({ length: 60 }, (_, k) => 900 + k);

describe("the dates of work", () => {
  it("are working days of the task in every iteration", () => {
    const wrong: string[] = [];
    let checked = 0;
    for (const seed of seeds) {
      const document = randomPlanDocument(seededRng(seed), { progress: false });
      const run = runOf(document, { iterations: 120 });
      if (run === undefined) continue;
      const plan = planOfDocument(document);
      run.model.tasks.forEach(({ id }, j) => {
        const task = plan.tasks.find((t) => t.id === id);
        if (task === undefined || task.milestone) return;
        const works = taskDays(plan, task);
        run.trials.starts[j]?.forEach((start, k) => {
          const finish = run.trials.finishes[j]?.[k] ?? Number.NaN;
          if (finish <= start + 1e-9) return; // a point stands wherever its bounds are
          checked++;
          const days = [Math.floor(start + 1e-9), Math.ceil(finish - 1e-9) - 1];
          if (!days.every(works)) wrong.push(`seed ${seed} ${id} #${k}: [${start}, ${finish}]`);
        });
      });
    }
    expect(wrong.slice(0, 6)).toEqual([]);
    expect(checked).toBeGreaterThan(20_000);
  });

  it("are working days where the forecast prints them, for tasks that always take time", () => {
    const wrong: string[] = [];
    let checked = 0;
    for (const seed of seeds) {
      const options = { chance: false, milestones: false, progress: false, register: false };
      const document = randomPlanDocument(seededRng(seed), options);
      const plan = planOfDocument(document);
      if (runOf(document, { iterations: 1 }) === undefined) continue;
      for (const task of forecastOf(document, { iterations: 120 }).tasks) {
        const source = plan.tasks.find((t) => t.id === task.id);
        const estimate = source?.duration ?? source?.effort;
        if (source === undefined || estimate === undefined) continue;
        const least =
          estimate.kind === "fixed" ? estimate.value : estimate.kind === "range" ? estimate.low : 0;
        if (least <= 0 || (estimate.kind === "range" && estimate.bounds !== "extremes")) continue;
        const works = taskDays(plan, source);
        const { startDates, finishDates, asWritten } = task;
        for (const date of [
          ...Object.values(startDates),
          ...Object.values(finishDates),
          asWritten.startDate,
        ]) {
          checked++;
          if (!works(dayNumber(plan.start, date))) wrong.push(`seed ${seed} ${task.id}: ${date}`);
        }
        if (!works(dayNumber(plan.start, asWritten.finishDate))) wrong.push(`seed ${seed}: as written`);
      }
    }
    expect(wrong.slice(0, 6)).toEqual([]);
    expect(checked).toBeGreaterThan(1000);
  });

  it("of the plan are working days of the calendar of the task that defines it, not of another", () => {
    const plan = {
      format: 1,
      title: "Sunday work",
      start: "2027-02-01",
      calendars: { sundays: { workdays: ["sun"] } },
      tasks: [
        { id: "week", name: "Week", duration: [2, 3, 5] },
        { id: "sunday", name: "Sunday", duration: [1, 2, 4], calendar: "sundays", after: "week" },
      ],
    };
    const { finish } = forecastOf(plan, { iterations: 400 });
    const sundays = calendarDays(planOfDocument(plan), "sundays");
    for (const { date } of finish.percentiles) expect(sundays(dayNumber(plan.start, date)), date).toBe(true);
    // From one Sunday to four: the percentiles do differ.
    expect(new Set(finish.percentiles.map(({ date }) => date)).size).toBeGreaterThan(1);
  });
});
