/** A plan that answers at once: two phases, four tasks, three names, a risk with a response. Invented. */
export const smallPlan = `format: 1
title: Boat shed
start: 2027-02-01
commitment: { confidence: 0.8, finishBy: 2027-03-31, budget: 9000, reserve: 1500, holder: ann, funds: [{ from: 2027-02-01, amount: 9000 }] }
iterations: 2048
people:
  - { id: ann, name: Ann Quill, rate: 200 }
  - { id: bo, name: Bo Marsh, rate: 150 }
stakeholders:
  - { id: harbour, name: Harbour office } # decides
phases:
  - { name: Ground, responsible: bo, accountable: ann }
  - { name: Roof, responsible: bo, accountable: ann }
tasks:
  - { id: dig, name: Dig the trench, phase: Ground, duration: [3, 4, 8], people: bo }
  - { id: pour, name: Pour the floor, phase: Ground, duration: [2, 3, 6], people: bo, cost: [1500, 1800, 2600], after: dig }
  - { id: frame, name: Raise the frame, phase: Roof, duration: [5, 7, 12], people: [ann, bo], after: pour }
  - { id: tiles, name: Lay the tiles, phase: Roof, duration: [4, 5, 9], people: ann, after: frame }
risks:
  - id: rain
    name: A week of rain
    probability: 0.3
    impacts: { tasks: pour, delay: [2, 4, 8] } # only the floor
    responses:
      - { id: tarp, action: Rent a cover, cost: 300, probability: 0.1 }
`;
