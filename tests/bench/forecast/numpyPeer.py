"""numpyPeer.py PLAN.json ITERATIONS: the same question in plain numpy, vectorised over iterations.

Finish and cost percentiles and each task's criticality of a plan made by makePlan.mjs without calendar and people: every
day works, links from finish to start without lags. Prints one JSON line with its own seconds, reading left out.
"""
import json
import sys
import time

import numpy as np

with open(sys.argv[1]) as file:
    plan = json.load(file)
iterations = int(sys.argv[2])
begun = time.perf_counter()
random = np.random.default_rng(1)


def pert(estimate):
    low, likely, high = estimate
    width = high - low
    return low + width * random.beta(1 + 4 * (likely - low) / width, 1 + 4 * (high - likely) / width, iterations)


place = {task["id"]: j for j, task in enumerate(plan["tasks"])}
duration = [pert(task["duration"]) for task in plan["tasks"]]
cost = np.zeros(iterations)
for risk in plan["risks"]:
    occurs = random.random(iterations) < risk["probability"]
    for impact in risk["impacts"]:
        delay = pert(impact["delay"])
        for task in impact["tasks"]:
            duration[place[task]] = duration[place[task]] + occurs * delay
        cost += occurs * pert(impact["cost"])

finish = []
followers = [[] for _ in duration]
for j, task in enumerate(plan["tasks"]):
    start = np.zeros(iterations)
    for before in task.get("after", []):
        np.maximum(start, finish[place[before]], out=start)
        followers[place[before]].append(j)
    finish.append(start + duration[j])
    cost += pert(task["cost"]) + task["costPerDay"] * duration[j]

end = np.maximum.reduce(finish)
latest = [None] * len(duration)
critical = np.zeros(len(duration))
for j in reversed(range(len(duration))):
    limit = end
    for k in followers[j]:
        limit = np.minimum(limit, latest[k] - duration[k])
    latest[j] = limit
    critical[j] = np.mean(limit - finish[j] < 1e-9)

levels = [0.05, 0.1, 0.2, 0.5, 0.8, 0.9, 0.95]
print(
    json.dumps(
        {
            "seconds": time.perf_counter() - begun,
            "finish": np.quantile(end, levels).round(2).tolist(),
            "cost": np.quantile(cost, levels).round(0).tolist(),
            "critical": critical.round(3).tolist(),
        }
    )
)
