/** A plan that speaks of no money: no cost, no rate, no budget. Invented. */
export const plainPlan = `format: 1
title: Garden wall
start: 2027-02-01
commitment: { confidence: 0.8, finishBy: 2027-02-24, holder: ann }
iterations: 2048
people:
  - { id: ann, name: Ann Quill }
  - { id: bo, name: Bo Marsh }
phases:
  - { name: Ground, responsible: bo, accountable: ann }
tasks:
  - { id: dig, name: Dig the trench, phase: Ground, duration: [3, 4, 8], people: bo }
  - { id: pour, name: Pour the footing, phase: Ground, duration: [2, 3, 6], people: bo, after: dig }
  - { id: stone, name: Lay the stones, duration: [5, 7, 12], people: [ann, bo], after: pour }
risks:
  - id: rain
    name: A week of rain
    probability: 0.3
    impacts: { tasks: pour, delay: [2, 4, 8] }
    responses:
      - { id: tarp, action: Put up a cover, probability: 0.1 }
assumptions:
  - { id: sand, statement: Sand is at hand, chanceWrong: 0.2, impacts: { tasks: stone, delay: [1, 2, 4] } }
`;
