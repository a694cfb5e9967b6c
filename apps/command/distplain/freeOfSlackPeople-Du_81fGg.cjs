// ../../packages/core/src/explain/responses/mostAtOnce.ts
/**
* The greatest weight of items no two of which are ordered: the most that can be under way at once.
*
* By the weighted form of Dilworth's theorem (R. P. Dilworth 1950, Annals of Mathematics 51, 161-166; recalled) it is the
* whole weight less the most that can be handed on along the order, each item handing on and taking over at most
* its weight: a maximum flow, found by shortest augmenting paths (Edmonds & Karp 1972, J. ACM 19, 248-264; recalled).
*
* @param weights  Above 0, length m.
* @param before   Whether item i is ordered before item j; transitive.
*
* Cost: O(m^2) a path, about m paths where weights are alike.
*/
function mostAtOnce(weights, before) {
	const m = weights.length;
	const gives = Float64Array.from(weights);
	const takes = Float64Array.from(weights);
	const flow = Array.from({ length: m }, () => new Float64Array(m));
	const order = Array.from({ length: m }, (_, i) => Array.from({ length: m }, (_, j) => j).filter((j) => i !== j && before(i, j)));
	let moved = 0;
	for (;;) {
		const path = shortestPath(gives, takes, flow, order);
		if (path === void 0) break;
		moved += path;
	}
	return weights.reduce((sum, weight) => sum + weight, 0) - moved;
}
/** Moves as much as the shortest path allows and answers how much; undefined when there is no path. */
function shortestPath(gives, takes, flow, order) {
	const m = gives.length;
	const least = 1e-12;
	const from = new Int32Array(2 * m).fill(-1);
	const queue = [];
	for (let i = 0; i < m; i++) {
		if (gives[i] <= least) continue;
		from[i] = -2;
		queue.push(i);
	}
	for (let at = 0; at < queue.length; at++) {
		const node = queue[at];
		if (node >= m) {
			const j = node - m;
			if (takes[j] > least) return augment(gives, takes, flow, from, j);
			for (let i = 0; i < m; i++) {
				if (from[i] !== -1 || flow[i][j] <= least) continue;
				from[i] = node;
				queue.push(i);
			}
		} else for (const j of order[node]) {
			if (from[m + j] !== -1) continue;
			from[m + j] = node;
			queue.push(m + j);
		}
	}
}
function augment(gives, takes, flow, from, end) {
	const m = gives.length;
	const path = [];
	let amount = takes[end];
	let taker = end;
	for (;;) {
		const giver = from[m + taker];
		path.push([
			giver,
			taker,
			1
		]);
		const back = from[giver];
		if (back === -2) {
			amount = Math.min(amount, gives[giver]);
			gives[giver] = gives[giver] - amount;
			break;
		}
		taker = back - m;
		path.push([
			giver,
			taker,
			-1
		]);
		amount = Math.min(amount, flow[giver][taker]);
	}
	takes[end] = takes[end] - amount;
	for (const [i, j, sign] of path) {
		const row = flow[i];
		row[j] = row[j] + sign * amount;
	}
	return amount;
}
// ../../packages/core/src/explain/responses/freeOfSlackPeople.ts
/** Tasks of one person above which no proof is tried. */
var mostTasks = 120;
/**
* The same model without the holdings that can never make anybody wait, whatever is drawn: they move nothing, and
* without them less has to be placed again. In many plans none is left.
*
* A task's holding of a person is such when the tasks of that person that can be under way together with it ask,
* with it, for no more than the capacity present on the worst day. Two tasks cannot be under way at once when one
* follows the other over links from finish to start with lags that are never negative; a started task is not moved by
* its links, so they order nothing.
*/
function freeOfSlackPeople(model) {
	if (!model.limitedPeople) return model;
	const before = closure(model);
	const binding = model.people.map((person, p) => bindingTasks(model, person, p, before));
	const tasks = model.tasks.map((task, j) => {
		const holds = task.holds.filter(({ person }) => binding[person]?.has(j) === true);
		return holds.length === task.holds.length ? task : {
			...task,
			holds
		};
	});
	return {
		...model,
		tasks,
		limitedPeople: tasks.some((task) => task.holds.length > 0)
	};
}
/** Tasks whose holding of a person can make somebody wait. */
function bindingTasks(model, person, p, before) {
	const held = model.tasks.flatMap((task, j) => {
		const hold = task.progress?.finished === true ? void 0 : task.holds.find((one) => one.person === p);
		return hold === void 0 ? [] : [{
			j,
			share: hold.share
		}];
	});
	if (held.length > mostTasks) return new Set(held.map(({ j }) => j));
	const ahead = (a, b) => before[b][a] === 1;
	const most = (tasks) => mostAtOnce(tasks.map(({ share }) => share), (a, b) => ahead(tasks[a].j, tasks[b].j));
	const gone = person.partial.reduce((worst, span) => Math.max(worst, span.gone), 0);
	const room = person.capacity - gone + 1e-10;
	if (most(held) <= room) return /* @__PURE__ */ new Set();
	const binding = held.filter(({ j, share }) => {
		const beside = held.filter((other) => other.j !== j && !ahead(j, other.j) && !ahead(other.j, j));
		return share + most(beside) > room;
	});
	return new Set(binding.map(({ j }) => j));
}
/** By task: 1 for the tasks that have always finished before it starts. */
function closure({ tasks, order }) {
	const before = tasks.map(() => new Uint8Array(tasks.length));
	for (const j of order) {
		const task = tasks[j];
		if (task.progress !== void 0) continue;
		const row = before[j];
		for (const link of task.links) {
			if (link.kind !== "finish-to-start" || link.lag.slot >= 0 || link.lag.value < 0) continue;
			row[link.from] = 1;
			const further = before[link.from];
			for (let i = 0; i < row.length; i++) if (further[i] === 1) row[i] = 1;
		}
	}
	return before;
}
Object.defineProperty(exports, "freeOfSlackPeople", {
	enumerable: true,
	get: function() {
		return freeOfSlackPeople;
	}
});
