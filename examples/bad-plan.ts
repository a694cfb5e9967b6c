import { describeProblem, readPlan } from "@leeway/core";

const text = `format: 1
title: Shed
start: 2027-05-03
tasks:
  - { id: base, name: Base, duration: [9, 5, 12] }
  - { id: frame, name: Frame, duration: 4, after: bse }
  - { id: roof, name: Roof, durration: 3 }
risks:
  - { id: rain, name: Rain, probability: 30% }
`;
for (const problem of readPlan(text).problems) console.log(describeProblem(problem));

// Prints
// 5:39 tasks[0].duration: `[9, 5, 12]`: likely 5 is below low 9; low <= likely <= high. Raise likely to at least 9, or correct the other.
// 6:51 tasks[1].after: `bse`: No task has this id. Did you mean `base`?
// 7:5 tasks[2]: `roof`: A task needs `duration` or `effort`. Add `duration: [low, likely, high]` in working days, or `milestone: true`.
// 7:29 tasks[2].durration: `durration`: A task has no key `durration`. Did you mean `duration`? Elapsed working days; exactly one of `duration` and `effort`.
// 9:42 risks[0].probability: `30%`: A chance from 0 to 1 belongs here. Write 0.3.
