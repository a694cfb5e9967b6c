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
