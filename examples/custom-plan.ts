import { forecast, planFromData } from "@leeway/core";

const stages = ["foundation", "frame", "roof"];
const tasks = stages.map((id, k) => ({ id, name: id, duration: [8, 10, 16], after: stages.slice(k - 1, k) }));
const { plan } = planFromData({ format: 1, title: "Boat shed", start: "2027-05-03", tasks });
const answer = plan && forecast(plan, { iterations: 2000, seed: "shed" }).forecast;
if (answer === undefined) throw new Error("The plan has problems.");

for (const { p, date } of answer.finish.percentiles.filter(({ p }) => p === 0.5 || p === 0.8)) {
  console.log(`${Math.round(p * 100)} % of futures finish by ${date}`);
}

// Prints
// 50 % of futures finish by 2027-06-15
// 80 % of futures finish by 2027-06-18
