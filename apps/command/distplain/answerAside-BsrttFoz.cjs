const require_rolldown_runtime = require("./rolldown-runtime-C-fzZZTt.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_contingencyLeft = require("./contingencyLeft-o-pRVmRh.cjs");
const require_tornado = require("./tornado-Cjcc5Wok.cjs");
const require_variants = require("./variants-BloK5_oj.cjs");
const require_stampOf = require("./stampOf-B221aSYW.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
const require_weeks = require("./weeks-hpDeoyv6.cjs");
const require_standings = require("./standings-y-hwZo6x.cjs");
const require_dates = require("./dates-Dup8morK.cjs");
const require_program = require("./program.cjs");
let node_worker_threads = require("node:worker_threads");
// ../../packages/core/src/brief/assumptionBars.ts
/**
* What each open assumption alone does to the committed date and sum: holding, and wrong. These are the bars of the
* forecast's tornado, of assumptions only; those that move nothing are left out.
*
* Problems are values. Cost: two re-runs for each assumption, each only of what it reaches.
*/
function assumptionBars(plan, options = {}) {
	const ids = new Set(plan.assumptions.map(({ id }) => id));
	const find = ({ model, draw }) => {
		const { bars, ends } = require_tornado.tornadoItems(model, ids);
		if (bars.length === 0) return {
			bars,
			problems: []
		};
		const select = require_engine.rankSelector(draw.iterations);
		const rank = require_engine.rankOf(options.confidence ?? model.confidence, draw.iterations);
		const settings = [{}, ...ends.map((end) => end.settings)];
		const levels = require_variants.runVariants(draw, settings.map((own) => ({
			model,
			settings: own
		})), ({ finish, cost }) => {
			const [day = 0] = select(finish, [rank]);
			const [money = 0] = select(cost, [rank]);
			return {
				workingDays: require_engine.workAt(model.planCalendar, day),
				money
			};
		}, options.onProgress);
		const committed = levels[0] ?? {
			workingDays: 0,
			money: 0
		};
		ends.forEach(({ bar, side }, i) => {
			const at = levels[i + 1] ?? committed;
			const effect = {
				workingDays: at.workingDays - committed.workingDays,
				money: at.money - committed.money
			};
			if (bars[bar] !== void 0) bars[bar][side] = effect;
		});
		return {
			bars: require_tornado.sortedBars(bars.map((bar, at) => ({
				at,
				bar
			}))),
			problems: []
		};
	};
	return require_contingencyLeft.explaining(plan, options, find);
}
// ../../packages/core/src/explain/joint/correlation.ts
/** Pearson's correlation of two rows; 0 when one of them does not vary. Two passes, sums in order. */
function correlation(xs, ys) {
	const n = xs.length;
	let x = 0;
	let y = 0;
	for (let k = 0; k < n; k++) {
		x += xs[k];
		y += ys[k];
	}
	x /= n;
	y /= n;
	let xx = 0;
	let yy = 0;
	let xy = 0;
	for (let k = 0; k < n; k++) {
		const dx = xs[k] - x;
		const dy = ys[k] - y;
		xx += dx * dx;
		yy += dy * dy;
		xy += dx * dy;
	}
	const certain = (squares, mean) => squares <= n * (1e-12 * Math.max(1, Math.abs(mean))) ** 2;
	if (certain(xx, x) || certain(yy, y)) return 0;
	return Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
}
// ../../packages/core/src/explain/joint/densityGrid.ts
var columns = 40;
var rows = 28;
/**
* Counts of iterations on a grid of at most 40 by 28 cells with round edges. `days` are whole day numbers: a cell
* holds `edge <= day < next edge`, and likewise for costs. Cost: n steps.
*/
function densityGrid(days, costs) {
	const dayEdges = edges(days, columns, dayStep);
	const costEdges = edges(costs, rows, moneyStep);
	const across = dayEdges.length - 1;
	const up = costEdges.length - 1;
	const counts = Array.from({ length: up }, () => new Array(across).fill(0));
	const stepDay = dayEdges[1] - dayEdges[0];
	const stepCost = costEdges[1] - costEdges[0];
	for (let k = 0; k < days.length; k++) {
		const column = Math.floor((days[k] - dayEdges[0]) / stepDay);
		const row = Math.floor((costs[k] - costEdges[0]) / stepCost);
		const line = counts[Math.min(up - 1, Math.max(0, row))];
		const at = Math.min(across - 1, Math.max(0, column));
		line[at] = line[at] + 1;
	}
	return {
		days: dayEdges,
		costs: costEdges,
		counts
	};
}
function edges(values, most, stepOf) {
	let low = Number.POSITIVE_INFINITY;
	let high = Number.NEGATIVE_INFINITY;
	for (let k = 0; k < values.length; k++) {
		const value = values[k];
		if (value < low) low = value;
		if (value > high) high = value;
	}
	const step = stepOf((high - low) / (most - 1));
	const from = Math.floor(low / step);
	const to = Math.floor(high / step) + 1;
	return Array.from({ length: to - from + 1 }, (_, k) => (from + k) * step);
}
/** Whole days: 1, 2, then whole weeks. */
function dayStep(least) {
	if (least <= 1) return 1;
	if (least <= 2) return 2;
	return 7 * Math.ceil(least / 7);
}
/** 1, 2 or 5 times a power of ten. */
function moneyStep(least) {
	if (!(least > 0)) return 1;
	const power = 10 ** Math.floor(Math.log10(least));
	const digit = least / power;
	return power * (digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10);
}
// ../../packages/core/src/explain/joint/equalLevel.ts
/**
* The smallest level at which the day and the sum of that level, each the percentile of its own row, are kept
* together by at least `count` iterations; levels go in steps of 1 / n.
*
* An iteration keeps both at rank r when neither its day nor its cost comes later than r in its row in ascending
* order (equal values count as the first of them), so the rank asked for is the count-th smallest of the larger of
* the two places. Cost: three sorts of n.
*/
function equalLevel(days, costs, count) {
	const n = days.length;
	const sortedDays = Float64Array.from(days).sort();
	const sortedCosts = Float64Array.from(costs).sort();
	const places = new Float64Array(n);
	for (let k = 0; k < n; k++) {
		const place = Math.max(firstPlace(sortedDays, days[k]), firstPlace(sortedCosts, costs[k]));
		places[k] = place;
	}
	const rank = places.sort()[Math.min(n, Math.max(1, count)) - 1];
	return {
		level: rank / n,
		day: sortedDays[rank - 1],
		cost: sortedCosts[rank - 1]
	};
}
/** The 1-based place of the first value that is not smaller than x. */
function firstPlace(sorted, x) {
	let low = 0;
	let high = sorted.length - 1;
	while (low < high) {
		const middle = low + high >> 1;
		if (sorted[middle] < x) low = middle + 1;
		else high = middle;
	}
	return low + 1;
}
// ../../packages/core/src/explain/joint/equalPairs.ts
/**
* Every pair of a day and a sum that at least `count` iterations keep together, and of which neither can be made
* smaller alone: ascending by day, descending by cost. Both are values of the rows. Empty when `count` > n.
*
* Exact: the iterations are taken in by day, and the sum that goes with a day is the count-th smallest cost so far,
* which a heap of the `count` smallest keeps at its top. Cost: O(n log n).
*/
function equalPairs(days, costs, count) {
	const n = days.length;
	if (count < 1 || count > n) return [];
	const order = Uint32Array.from({ length: n }, (_, k) => k).sort((a, b) => days[a] - days[b]);
	const heap = new Float64Array(count);
	const pairs = [];
	let size = 0;
	for (let k = 0; k < n;) {
		const day = days[order[k]];
		for (; k < n && days[order[k]] === day; k++) {
			const cost = costs[order[k]];
			if (size < count) rise(heap, size++, cost);
			else if (cost < heap[0]) sink(heap, cost);
		}
		if (size < count) continue;
		const cost = heap[0];
		const last = pairs[pairs.length - 1];
		if (last === void 0 || cost < last.cost) pairs.push({
			day,
			cost
		});
	}
	return pairs;
}
/** Puts a value into a heap whose largest is at the top, at place `at`. */
function rise(heap, at, value) {
	let hole = at;
	while (hole > 0) {
		const parent = hole - 1 >> 1;
		if (heap[parent] >= value) break;
		heap[hole] = heap[parent];
		hole = parent;
	}
	heap[hole] = value;
}
/** Replaces the largest value of a full heap. */
function sink(heap, value) {
	const size = heap.length;
	let hole = 0;
	for (;;) {
		let child = 2 * hole + 1;
		if (child >= size) break;
		if (child + 1 < size && heap[child + 1] > heap[child]) child += 1;
		if (heap[child] <= value) break;
		heap[hole] = heap[child];
		hole = child;
	}
	heap[hole] = value;
}
// ../../packages/core/src/explain/joint/jointChance.ts
/**
* Counts the iterations with `days[k] <= day`, with `costs[k] <= cost`, and with both, as shares. Cost: n steps.
*
* Source: NASA Cost Estimating Handbook 4.0, appendix J (digest read): the joint confidence level is the share of
* the points in the lower left quadrant of the scatter plot.
*/
function jointChance(days, costs, day, cost) {
	const n = days.length;
	let timely = 0;
	let paid = 0;
	let both = 0;
	for (let k = 0; k < n; k++) {
		const inTime = days[k] <= day;
		const inSum = costs[k] <= cost;
		if (inTime) timely++;
		if (inSum) paid++;
		if (inTime && inSum) both++;
	}
	return {
		finish: timely / n,
		cost: paid / n,
		both: both / n
	};
}
// ../../packages/core/src/explain/joint/jointConfidence.ts
/**
* Date and money together, read off the iterations: the chance of both, the pairs that share one chance, and the
* equal level that gives it. Dates are whole days: a date is kept by whoever finishes within it.
*
* @param options.confidence  The level committed to; default the plan's.
* @param options.joint  The chance of both that is wanted; default the level committed to.
*
* Cost: a few sorts of n. `equal.level` goes in steps of 1 / n.
*/
function jointConfidence(model, trials, options = {}) {
	const { iterations: n, finishDay, cost } = trials;
	const confidence = options.confidence ?? model.confidence;
	const joint = options.joint ?? confidence;
	const pair = (day, sum, slack = 0) => {
		const kept = jointChance(finishDay, cost, day, sum + slack);
		return {
			date: require_engine.isoDate(model.startDay + day),
			day: day + 1,
			cost: sum,
			finishLevel: kept.finish,
			costLevel: kept.cost,
			both: kept.both
		};
	};
	const rank = require_engine.rankOf(confidence, n) - 1;
	const committed = pair(finishDay.slice().sort()[rank], cost.slice().sort()[rank]);
	const { finishByDay, budget } = model;
	const asked = finishByDay === void 0 || budget === void 0 ? void 0 : pair(finishByDay, budget, require_engine.tolerance * Math.max(1, Math.abs(budget)));
	const wanted = require_engine.rankOf(joint, n);
	const equal = equalLevel(finishDay, cost, wanted);
	return {
		stamp: require_stampOf.stampOf(model, trials),
		atCommitted: committed.both,
		committed,
		...asked === void 0 ? {} : { asked },
		equal: {
			joint,
			level: equal.level,
			date: require_engine.isoDate(model.startDay + equal.day),
			day: equal.day + 1,
			cost: equal.cost,
			both: jointChance(finishDay, cost, equal.day, equal.cost).both
		},
		frontier: {
			joint,
			pairs: equalPairs(finishDay, cost, wanted).map((each) => pair(each.day, each.cost))
		},
		density: densityGrid(finishDay, cost),
		correlation: correlation(trials.finish, cost)
	};
}
// ../../packages/core/src/explain/confidence/latenessLeft.ts
/**
* Expected cost of finishing after the end of a day: the mean of weeks late times `perWeek`, plus `once` where late
* at all, over iterations `from` to `to` (plan format, "Money", with `after` at that day). `end`: the end of the day,
* days since start.
*/
function latenessLeft(finish, rates, end, from = 0, to = finish.length) {
	const { perWeek, once } = rates;
	let sum = 0;
	for (let k = from; k < to; k++) {
		const late = finish[k] - end;
		if (late > 1e-9) sum += late / 7 * perWeek[k] + once[k];
	}
	return sum / (to - from);
}
// ../../packages/core/src/explain/confidence/confidenceSteps.ts
/**
* The levels side by side, ascending: date and sum with their limits, what each step up from the level before buys
* in days and holds in money, what is left to go wrong beyond it, and, when lateness is priced, what of its expected
* cost the step avoids.
*
* A step's cost is the extra money held and nothing else: time has no price here but the lateness it avoids. The
* standard error of a step's net comes from the blocks of 1,024 iterations, which are independent runs.
*
* @param levels  Above 0 and below 1, ascending, no two equal.
*
* Cost: sorts of n, and 3 n steps a level.
*/
function confidenceSteps(model, rows, levels, rates) {
	const n = rows.finish.length;
	const finishes = rows.finish.slice().sort();
	const days = rows.finishDay.slice().sort();
	const costs = rows.cost.slice().sort();
	const errors = rates === void 0 ? void 0 : netErrors(rows, levels, rates);
	const dateAt = (rank) => require_engine.isoDate(model.startDay + days[rank - 1]);
	const steps = [];
	levels.forEach((p, l) => {
		const rank = require_engine.rankOf(p, n);
		const limits = require_engine.limitRanks(p, n);
		const day = finishes[rank - 1];
		const lastDay = days[rank - 1];
		const cost = costs[rank - 1];
		const left = rates === void 0 ? void 0 : latenessLeft(rows.finish, rates, lastDay + 1);
		const workingDays = require_engine.workAt(model.planCalendar, day);
		const before = steps[l - 1];
		const bought = before === void 0 ? void 0 : {
			workingDays: workingDays - before.workingDays,
			money: cost - before.cost
		};
		const avoided = left === void 0 || before?.latenessLeft === void 0 ? void 0 : before.latenessLeft - left;
		const netError = errors?.[l];
		steps.push({
			p,
			date: dateAt(rank),
			day,
			workingDays,
			cost,
			lowDate: dateAt(limits.low),
			highDate: dateAt(limits.high),
			costLow: costs[limits.low - 1],
			costHigh: costs[limits.high - 1],
			...bought === void 0 ? {} : { bought },
			late: lateBeyond(rows, lastDay),
			over: overBeyond(costs, cost),
			...left === void 0 ? {} : { latenessLeft: left },
			...avoided === void 0 || bought === void 0 ? {} : {
				avoided,
				...netError === void 0 ? {} : { netError },
				worthIt: avoided > bought.money
			}
		});
	});
	return steps;
}
function lateBeyond({ finish, finishDay }, day) {
	let count = 0;
	let sum = 0;
	for (let k = 0; k < finish.length; k++) {
		if (finishDay[k] <= day) continue;
		count++;
		sum += finish[k] - (day + 1);
	}
	return {
		chance: count / finish.length,
		days: count === 0 ? 0 : sum / count
	};
}
function overBeyond(sorted, cost) {
	let count = 0;
	let sum = 0;
	for (let k = sorted.length - 1; k >= 0 && sorted[k] > cost; k--) {
		count++;
		sum += sorted[k] - cost;
	}
	return {
		chance: count / sorted.length,
		money: count === 0 ? 0 : sum / count
	};
}
/**
* Standard error of avoided less held, by level (the step into it; none for the first): the spread of the same figure
* over whole blocks, divided by the root of their number. undefined with fewer than two whole blocks.
*/
function netErrors(rows, levels, rates) {
	const blocks = Math.floor(rows.finish.length / require_engine.blockSize);
	if (blocks < 2) return [];
	const nets = levels.map(() => new Float64Array(blocks));
	for (let b = 0; b < blocks; b++) {
		const [from, to] = [b * require_engine.blockSize, (b + 1) * require_engine.blockSize];
		const days = rows.finishDay.slice(from, to).sort();
		const costs = rows.cost.slice(from, to).sort();
		let total = 0;
		levels.forEach((p, l) => {
			const rank = require_engine.rankOf(p, require_engine.blockSize) - 1;
			const outlay = latenessLeft(rows.finish, rates, days[rank] + 1, from, to) + costs[rank];
			nets[l][b] = total - outlay;
			total = outlay;
		});
	}
	return nets.map((net, l) => l === 0 ? void 0 : standardError(net));
}
function standardError(values) {
	const n = values.length;
	let mean = 0;
	for (const value of values) mean += value / n;
	let squares = 0;
	for (const value of values) squares += (value - mean) ** 2;
	return Math.sqrt(squares / (n - 1) / n);
}
// ../../packages/core/src/explain/confidence/latenessRates.ts
/**
* The draws of `lateness.perWeek` and `lateness.once`, the very ones the simulation prices lateness with; undefined
* when the plan says neither. Only these two estimates are drawn: every draw is addressed, so leaving out the others
* changes nothing.
*/
function latenessRates(model, draw) {
	const { lateness } = model;
	const stated = model.plan.lateness;
	if (lateness === void 0 || (stated?.perWeek ?? stated?.once) === void 0) return void 0;
	const n = draw.iterations;
	const amounts = [lateness.perWeek, lateness.once];
	const rows = amounts.map(({ value }) => new Float64Array(n).fill(value));
	const drawn = amounts.flatMap((amount, row) => amount.slot < 0 ? [] : [{
		amount,
		row
	}]);
	if (drawn.length > 0) {
		const only = {
			...model,
			tasks: [],
			order: /* @__PURE__ */ new Int32Array(0),
			register: [],
			groups: [],
			correlated: void 0,
			slots: drawn.map(({ amount }) => slotOf(model, amount))
		};
		const source = require_engine.draws(only, draw.seed, draw.design);
		const size = Math.min(n, require_engine.blockSize);
		const block = require_engine.newBlock(only, size, require_engine.kernelFor(only, size));
		for (let first = 0, b = 0; first < n; first += require_engine.blockSize, b++) {
			block.n = Math.min(require_engine.blockSize, n - first);
			source.fill(b, block);
			drawn.forEach(({ row }, s) => {
				const values = block.draws[s];
				rows[row].set(values.subarray(0, block.n), first);
			});
		}
	}
	return {
		perWeek: rows[0],
		once: rows[1]
	};
}
function slotOf(model, amount) {
	return model.slots[amount.slot];
}
// ../../packages/core/src/explain/confidence/whereToStop.ts
/**
* The level of least sum held and lateness left together, the lower one when two are equal: from there no step, and
* no run of steps, avoids more than it costs. undefined when lateness is not priced.
*
* `clear`: the step into it and the step out of it each differ from nought by more than twice their standard error.
*/
function whereToStop(steps) {
	let best = -1;
	let least = Number.POSITIVE_INFINITY;
	for (const [l, { cost, latenessLeft }] of steps.entries()) {
		if (latenessLeft === void 0) return void 0;
		if (cost + latenessLeft >= least) continue;
		least = cost + latenessLeft;
		best = l;
	}
	const chosen = steps[best];
	if (chosen === void 0) return void 0;
	const next = steps[best + 1];
	const clear = [best > 0 ? chosen : void 0, next].every((step) => step === void 0 || isClear(step));
	return {
		p: chosen.p,
		...next?.bought === void 0 || next.avoided === void 0 ? {} : { next: {
			p: next.p,
			costs: next.bought.money,
			avoids: next.avoided
		} },
		clear
	};
}
function isClear({ bought, avoided, netError }) {
	if (bought === void 0 || avoided === void 0 || netError === void 0) return false;
	return Math.abs(avoided - bought.money) > 2 * netError;
}
// ../../packages/core/src/explain/confidence/whyConfidence.ts
/** Levels that are set side by side, with the one committed to. */
var usualLevels = [
	.5,
	.6,
	.65,
	.7,
	.75,
	.8,
	.85,
	.9,
	.95
];
var notPriced = "The plan does not say what finishing late costs, so it cannot say which step is worth its money. Add `lateness: { perWeek: ..., once: ... }`: what each week late costs the organisation, and being late at all.";
/**
* Why this confidence: the levels side by side with what each step buys, holds and avoids, where the next step costs
* more than it avoids, and the chances of date and money together. The draws are the forecast's, so its percentiles
* are these.
*
* Problems are values. Cost: one run of the model without criticality, and sorts of n.
*/
function whyConfidence(plan, options = {}) {
	const explain = ({ model, asWritten, draw }) => {
		const confidence = options.confidence ?? model.confidence;
		const [answer] = require_variants.runVariants(draw, [{ model }], (rows) => {
			const rates = latenessRates(model, draw);
			const steps = confidenceSteps(model, rows, [.../* @__PURE__ */ new Set([...usualLevels, confidence])].sort((a, b) => a - b), rates);
			return {
				stamp: require_stampOf.stampOf(model, draw),
				plan: {
					title: plan.title,
					currency: plan.currency,
					start: plan.start
				},
				confidence,
				asWritten: require_standings.standingAsWritten(model, asWritten),
				committed: require_standings.standingAt(model, rows, confidence),
				steps,
				...judged(steps, rates),
				joint: jointConfidence(model, {
					...draw,
					...rows
				}, {
					confidence,
					joint: options.joint ?? confidence
				})
			};
		}, options.onProgress);
		return {
			...answer === void 0 ? {} : { confidence: answer },
			problems: []
		};
	};
	return require_contingencyLeft.explaining(plan, options, explain, { change: priced });
}
/** Prices may be given without a date to be late after: here every date is one in turn, so any will do. */
function priced(plan) {
	if (plan.lateness === void 0 || (plan.lateness.after ?? plan.commitment.finishBy) !== void 0) return plan;
	return {
		...plan,
		lateness: {
			...plan.lateness,
			after: plan.start
		}
	};
}
function judged(steps, rates) {
	if (rates === void 0) return { missing: notPriced };
	const stop = whereToStop(steps);
	const mean = (row) => row.reduce((sum, value) => sum + value, 0) / row.length;
	return {
		lateness: {
			perWeek: mean(rates.perWeek),
			once: mean(rates.once)
		},
		...stop === void 0 ? {} : { stop }
	};
}
// ../../packages/core/src/budget/appraise/returnRate.ts
var lowest = -.99;
var highest = 100;
/**
* The rate at which a falling function of the rate is nought, between -99 % and 10,000 % a year; undefined where it does
* not change sign between them. Bisection after the sign is bracketed: to 1e-12, 50 calls or so, and no surprises.
*/
function rateWhereNought(value) {
	let low = 0;
	let high = .1;
	if (value(low) < 0) {
		high = 0;
		low = lowest;
		if (value(low) < 0) return void 0;
	} else while (value(high) > 0) {
		if (high >= highest) return void 0;
		low = high;
		high = Math.min(highest, high * 4);
	}
	while (high - low > 1e-12 * Math.max(1, Math.abs(high))) {
		const middle = (low + high) / 2;
		if (middle <= low || middle >= high) break;
		if (value(middle) >= 0) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}
// ../../packages/core/src/budget/appraise/delayCost.ts
/** What the plan prices lateness with, and what it is expected to come to; undefined where it prices none. */
function delayCost(model, trials, draw) {
	const rates = latenessRates(model, draw);
	const costs = trials.lateness;
	if (rates === void 0 || costs === void 0 || model.lateness === void 0) return void 0;
	const n = draw.iterations;
	const end = model.lateness.afterDay + 1;
	let late = 0;
	let weeks = 0;
	for (let k = 0; k < n; k++) {
		const over = trials.finish[k] - end;
		if (over <= 1e-9) continue;
		late++;
		weeks += over / 7;
	}
	return {
		after: require_engine.isoDate(model.startDay + model.lateness.afterDay),
		perWeek: meanOf$1(rates.perWeek),
		once: meanOf$1(rates.once),
		chanceLate: late / n,
		weeksLate: weeks / n,
		expected: meanOf$1(costs)
	};
}
function meanOf$1(row) {
	let sum = 0;
	for (const value of row) sum += value;
	return sum / row.length;
}
// ../../packages/core/src/explain/paths/eachBlock.ts
/**
* Draws and places every block of a run in turn, in rows that are used again, and hands it over: `first` is its first
* iteration. The moments are those of `simulate` with the same draw, to the bit.
*
* @param planned  As-written starts.
* @param only     This block alone.
* @param more     Bytes that a visitor takes in the block's kernel besides a block.
*
* Throws BeyondCalendarError.
*/
function eachBlock(model, draw, planned, visit, only, more = 0) {
	const n = draw.iterations;
	const source = require_engine.draws(model, draw.seed, draw.design);
	const size = Math.min(n, require_engine.blockSize);
	const block = require_engine.newBlock(model, size, require_engine.kernelFor(model, size, 2, more));
	const blocks = Math.ceil(n / require_engine.blockSize);
	for (let b = only ?? 0; b < (only === void 0 ? blocks : only + 1); b++) {
		const first = b * require_engine.blockSize;
		block.n = Math.min(require_engine.blockSize, n - first);
		source.fill(b, block);
		require_engine.realise(model, block);
		const beyond = require_engine.place(model, block, planned, model.limitedPeople ? require_engine.newCapacity(model) : void 0);
		if (beyond >= 0) throw new require_stage.BeyondCalendarError(require_engine.beyondCalendar(model, beyond));
		visit(block, first);
	}
}
// ../../packages/core/src/budget/appraise/returnRates.ts
var month = 365.25 / 12;
/**
* In each iteration of a block, the yearly rate at which the net value would be nought: benefits as the plan format
* times them (`appraise`), discounted at that rate, are worth the total cost, which counts at the start. Minus infinity
* where the benefits never make up for the cost at any rate above -99 %, infinity where there is nothing to make up for.
*
* Only with benefits that are never negative is there one such rate; otherwise NaN.
*/
function returnRates(model, block, first, into) {
	const { appraisal } = model.plan;
	if (appraisal === void 0) return;
	const horizon = appraisal.years * 365.25;
	const streams = model.benefits.filter(({ worth }) => worth !== 0).map((benefit) => streamOf(benefit, block, horizon));
	for (let k = 0; k < block.n; k++) into[first + k] = rateOf(streams, k, block.cost[k]);
}
function streamOf(benefit, block, horizon) {
	const { n } = block;
	const begins = require_engine.beginsOf(benefit, block);
	const worth = new Float64Array(n);
	const last = new Int32Array(n);
	require_engine.fillAmount(benefit.amount, block, worth);
	const end = Math.min(horizon, benefit.untilDay) + require_engine.tolerance;
	const most = Math.floor(Math.min(benefit.lasts, horizon / month) + require_engine.tolerance);
	for (let k = 0; k < n; k++) {
		const b = begins[k];
		worth[k] = worth[k] * benefit.worth;
		last[k] = b > end ? 0 : benefit.once ? 1 : Math.min(most, Math.floor((end - b) / month));
	}
	return {
		once: benefit.once,
		ramp: benefit.ramp,
		begins,
		worth,
		last
	};
}
function rateOf(streams, k, cost) {
	if (streams.some(({ worth }) => worth[k] < 0)) return NaN;
	if (cost <= 0) return Number.POSITIVE_INFINITY;
	return rateWhereNought((rate) => benefitsAt(streams, k, rate) - cost) ?? Number.NEGATIVE_INFINITY;
}
function benefitsAt(streams, k, rate) {
	const monthly = require_engine.power(1 + rate, -1 / 12);
	let sum = 0;
	for (const { once, ramp, begins, worth, last } of streams) {
		const payments = last[k];
		if (payments === 0) continue;
		let series = 0;
		if (once) series = 1;
		else for (let i = payments; i >= 1; i--) series = (series + (ramp > 0 && i < ramp ? i / ramp : 1)) * monthly;
		sum += worth[k] * require_engine.power(1 + rate, -begins[k] / 365.25) * series;
	}
	return sum;
}
// ../../packages/core/src/budget/appraise/worthOf.ts
/**
* Benefit against cost, beyond the net value and payback of the forecast: the ratio of benefits to cost, the rate of
* return, and doing nothing. Also what a week's delay of every benefit loses.
*
* Cost: one run of the model, and some fifty sums of the monthly payments an iteration for the rate.
*/
function worthOf(model, asWritten, draw, appraisal) {
	const n = draw.iterations;
	const now = {
		net: new Float64Array(n),
		payback: new Float64Array(n)
	};
	const later = {
		net: new Float64Array(n),
		payback: new Float64Array(n)
	};
	const rates = new Float64Array(n);
	const cost = new Float64Array(n);
	const spent = new Float64Array(n);
	const sums = new Float64Array(model.benefits.length);
	eachBlock(model, draw, asWritten.starts, (block, first) => {
		require_engine.markFinish(model, block);
		require_engine.addMoney(model, block, require_engine.newMoneySums(model));
		cost.set(block.cost.subarray(0, block.n), first);
		require_engine.appraise(model, block, first, now, sums);
		require_engine.appraise(model, aWeekLater(model, block), first, later, sums);
		returnRates(model, block, first, rates);
		addSpent(model, block, first, spent);
	});
	const ratio = new Float64Array(n);
	let lost = 0;
	let better = 0;
	let net = 0;
	let sunk = 0;
	for (let k = 0; k < n; k++) {
		const c = cost[k];
		const worth = now.net[k];
		const gone = spent[k];
		ratio[k] = c > 0 ? (worth + c) / c : NaN;
		lost += worth - later.net[k];
		if (worth + gone > 0) better++;
		net += worth;
		sunk += gone;
	}
	const above = ratio.reduce((count, value) => count + (value > 1 ? 1 : 0), 0);
	const defined = ratio.reduce((count, value) => count + (Number.isNaN(value) ? 0 : 1), 0);
	const text = model.plan.decision?.doNothing;
	return {
		worth: {
			appraisal,
			benefitCost: {
				...spreadOf$1(ratio),
				chanceAboveOne: defined === 0 ? 0 : above / defined
			},
			returnRate: spreadOf$1(rates),
			doNothing: {
				spent: sunk / n,
				goingOn: (net + sunk) / n,
				chanceBetter: better / n,
				...text === void 0 ? {} : { text }
			}
		},
		benefitsPerWeek: lost / n
	};
}
/** Percentiles over the numbers of a row, infinities ranked and not told; NaN left out. */
function spreadOf$1(row) {
	const known = row.filter((value) => !Number.isNaN(value)).sort();
	const finite = known.reduce((count, value) => count + (Number.isFinite(value) ? 1 : 0), 0);
	const at = (p) => known[require_engine.rankOf(p, known.length) - 1] ?? NaN;
	const [p10, p50, p90] = [
		at(.1),
		at(.5),
		at(.9)
	];
	return {
		chance: finite / row.length,
		...Number.isFinite(p10) ? { p10 } : {},
		...Number.isFinite(p50) ? { p50 } : {},
		...Number.isFinite(p90) ? { p90 } : {}
	};
}
/** The block with everything benefits begin at a week later; what it costs is the same. */
function aWeekLater(model, block) {
	const shift = (row) => row.map((t) => t + 7);
	const finish = [...block.finish];
	for (const j of new Set(model.benefits.map(({ starts }) => starts))) if (j >= 0) finish[j] = shift(finish[j]);
	return {
		...block,
		finish,
		planFinish: shift(block.planFinish)
	};
}
/** What finished tasks cost, and what started ones have spent. */
function addSpent(model, block, first, into) {
	const { scratch: part, n } = block;
	model.tasks.forEach((task, j) => {
		const { progress } = task;
		if (progress === void 0) return;
		if (progress.finished) {
			if (require_engine.taskCost(task, j, block, part)) for (let k = 0; k < n; k++) into[first + k] = into[first + k] + part[k];
		} else if (progress.spent !== void 0) for (let k = 0; k < n; k++) into[first + k] = into[first + k] + progress.spent;
	});
}
// ../../packages/core/src/budget/components/kinds.ts
var componentKinds = [
	"spent",
	"task-cost",
	"task-per-day",
	"people",
	"risks",
	"responses",
	"overheads"
];
var nothing = require_engine.constant(0);
/** The model with no money in it but that of one kind. Draws and moments are the model's. */
function modelOfKind(model, kind) {
	return {
		...model,
		tasks: model.tasks.map((task) => taskOfKind(task, kind)),
		register: kind === "risks" ? model.register : model.register.map((entry) => ({
			...entry,
			impacts: entry.impacts.map((impact) => ({
				...impact,
				cost: void 0
			}))
		})),
		responses: kind === "responses" ? model.responses : [],
		overheads: kind === "overheads" ? model.overheads : []
	};
}
function taskOfKind(task, kind) {
	const { progress } = task;
	return {
		...task,
		cost: kind === "task-cost" ? task.cost : nothing,
		costPerDay: kind === "task-per-day" ? task.costPerDay : nothing,
		peoplePerDay: kind === "people" ? task.peoplePerDay : 0,
		progress: progress?.spent === void 0 || kind === "spent" ? progress : {
			...progress,
			spent: 0
		}
	};
}
// ../../packages/core/src/budget/components/componentRows.ts
/**
* Takes the cost of every iteration apart, by kind and by phase, on the forecast's draws.
*
* Money of a phase: that of its tasks; what a risk costs goes in equal parts to the phases of the tasks it names, once
* for each task. Responses, overheads and risks that name no task are of no phase.
*
* @param visit  Sees each block when it is placed and priced: `first` is its first iteration.
*
* Throws BeyondCalendarError. Cost: one run of the model, and a pass over the tasks for each kind.
*/
function componentRows(model, asWritten, draw, visit) {
	const n = draw.iterations;
	const phaseNames = [.../* @__PURE__ */ new Set([
		...model.plan.phases.map(({ name }) => name),
		...phasesOf$1(model),
		""
	])];
	const total = new Float64Array(n);
	const kinds = new Map(componentKinds.map((kind) => [kind, new Float64Array(n)]));
	const phases = new Map(phaseNames.map((name) => [name, new Float64Array(n)]));
	const means = new Map(phaseNames.map((name) => [name, /* @__PURE__ */ new Map()]));
	const byKind = componentKinds.map((kind) => ({
		kind,
		tasks: modelOfKind(model, kind).tasks
	}));
	eachBlock(model, draw, asWritten.starts, (block, first) => {
		const { n: size, scratch: part } = block;
		const book = (kind, phase) => {
			const row = kinds.get(kind);
			const ofPhase = phases.get(phase);
			let sum = 0;
			for (let k = 0; k < size; k++) {
				const amount = part[k];
				row[first + k] = row[first + k] + amount;
				ofPhase[first + k] = ofPhase[first + k] + amount;
				sum += amount;
			}
			const ofMeans = means.get(phase);
			ofMeans.set(kind, (ofMeans.get(kind) ?? 0) + sum / n);
		};
		require_engine.markFinish(model, block);
		require_engine.addMoney(model, block, require_engine.newMoneySums(model));
		total.set(block.cost.subarray(0, size), first);
		for (const { kind, tasks } of byKind) for (let j = 0; j < tasks.length; j++) if (require_engine.taskCost(tasks[j], j, block, part)) book(kind, tasks[j]?.phase ?? "");
		bookRegister(model, block, (phase) => book("risks", phase));
		for (const { cost } of model.responses) {
			require_engine.fillAmount(cost, block, part);
			book("responses", "");
		}
		const running = {
			...modelOfKind(model, "overheads"),
			tasks: []
		};
		if (model.overheads.length > 0) {
			require_engine.addMoney(running, block, require_engine.newMoneySums(running));
			part.set(block.cost.subarray(0, size));
			book("overheads", "");
			block.cost.set(total.subarray(first, first + size));
		}
		visit?.(block, first);
	});
	for (const [kind, row] of kinds) if (row.every((sum) => sum === 0)) kinds.delete(kind);
	for (const [name, row] of phases) if (row.every((sum) => sum === 0)) phases.delete(name);
	return {
		total,
		kinds,
		phases,
		means
	};
}
/** What risks and assumptions cost, impact by impact and phase by phase, into the block's scratch row. */
function bookRegister(model, block, book) {
	const { n, scratch: part, scratch2: draws } = block;
	model.register.forEach((entry, e) => {
		const occurs = block.occurs[e];
		for (const { cost, tasks } of entry.impacts) {
			if (cost === void 0) continue;
			const shares = /* @__PURE__ */ new Map();
			for (const j of tasks) {
				const phase = model.tasks[j]?.phase ?? "";
				shares.set(phase, (shares.get(phase) ?? 0) + 1 / tasks.length);
			}
			if (tasks.length === 0) shares.set("", 1);
			require_engine.fillAmount(cost, block, draws);
			for (const [phase, share] of shares) {
				for (let k = 0; k < n; k++) part[k] = occurs[k] === 1 ? share * entry.scale * draws[k] : 0;
				book(phase);
			}
		}
	});
}
function phasesOf$1({ tasks }) {
	return tasks.flatMap(({ phase }) => phase === void 0 ? [] : [phase]);
}
// ../../packages/core/src/budget/components/splitAt.ts
/** So much of the iterations on either side of a percentile is its neighbourhood; at least `fewest`. */
var beside = .05;
var fewest = 25;
/**
* Splits the percentile of a total into its parts so that they add up to it: each part is what it is on average in the
* futures in which the total is about the percentile.
*
* Percentiles of parts do not add up to the percentile of their sum (GAO-20-195G, ch. 12); expectations given the sum
* do, and they are the percentile's own derivatives by the size of each part (Tasche, "Risk contributions and
* performance measurement", 1999; recalled). They are read off the iterations within 5 % of rank on either side by a
* line fitted to each part against the total, at the percentile (local linear regression: Fan & Gijbels 1996; recalled).
* The lines of parts that sum to x sum to x itself, so nothing is left over but rounding, put on the largest.
*
* @param total  Length n; the parts, rows of n, add up to it in every iteration.
*
* Cost: one sort of n.
*/
function splitAt(total, parts, p) {
	const n = total.length;
	const order = Uint32Array.from({ length: n }, (_, k) => k).sort((a, b) => total[a] - total[b] || a - b);
	const rank = require_engine.rankOf(p, n) - 1;
	const wide = Math.max(fewest, Math.round(beside * n));
	const near = order.subarray(Math.max(0, rank - wide), Math.min(n, rank + wide + 1));
	const at = total[order[rank]];
	const middle = meanOver(total, near);
	let squares = 0;
	for (const k of near) squares += (total[k] - middle) ** 2;
	const found = parts.map((row) => {
		const mean = meanOver(row, near);
		let cross = 0;
		for (const k of near) cross += (total[k] - middle) * (row[k] - mean);
		const slope = squares > 0 ? cross / squares : 0;
		let rest = 0;
		for (const k of near) rest += (row[k] - mean - slope * (total[k] - middle)) ** 2;
		return {
			part: mean + slope * (at - middle),
			error: Math.sqrt(rest) / near.length
		};
	});
	return {
		at,
		parts: addingUpTo(at, found.map(({ part }) => part)),
		errors: found.map(({ error }) => error)
	};
}
/** The parts with what is missing to the whole put on the largest. */
function addingUpTo(whole, parts) {
	let largest = 0;
	for (let i = 1; i < parts.length; i++) if (Math.abs(parts[i]) > Math.abs(parts[largest])) largest = i;
	const others = parts.reduce((sum, part, i) => i === largest ? sum : sum + part, 0);
	return parts.map((part, i) => i === largest ? whole - others : part);
}
function meanOver(row, which) {
	let sum = 0;
	for (const k of which) sum += row[k];
	return sum / which.length;
}
// ../../packages/core/src/budget/components/monthMoney.ts
/** Rows held at once, in bytes: kinds that do not fit are computed in a further run. */
var heldBytes = 64e6;
/**
* Money by month: what is spent in each at P50 and P80, in all and by kind, and what by its end; the months' parts of the
* committed sum add up to it. Money falls due as `simulate` has it.
*
* @param shown  How many of the months; later ones hold nothing.
*
* Cost: a run of the model for each 64 MB of rows (8 bytes an iteration, month and kind).
*/
function monthMoney(model, asWritten, draw, confidence, { months, shown, kinds }) {
	const n = draw.iterations;
	const select = require_engine.rankSelector(n);
	const list = ["total", ...kinds];
	const atOnce = Math.max(1, Math.floor(heldBytes / (8 * n * months.names.length)));
	const result = months.names.slice(0, shown).map((month) => ({
		month,
		spent: {
			mean: 0,
			p50: 0,
			p80: 0,
			split: 0
		},
		byEnd: {
			p50: 0,
			p80: 0,
			committed: 0
		},
		components: []
	}));
	for (let from = 0; from < list.length; from += atOnce) {
		const some = list.slice(from, from + atOnce).map((kind) => ({
			kind,
			model: kind === "total" ? model : modelOfKind(model, kind),
			rows: months.names.map(() => new Float64Array(n))
		}));
		let ledger;
		const size = Math.min(n, require_engine.blockSize);
		eachBlock(model, draw, asWritten.starts, (block, first) => {
			ledger ??= require_engine.newLedger(block.kernel.arena, months, size);
			require_engine.markFinish(model, block);
			for (const one of some) require_engine.phaseMoney(one.model, block, ledger, first, one.rows);
		}, void 0, require_engine.bytesOfLedger(months, size));
		for (const { kind, rows } of some) {
			if (kind === "total") result.forEach((month, m) => {
				const [p50, p80, committed] = select(rows[m], [
					.5,
					.8,
					confidence
				].map((p) => require_engine.rankOf(p, n)));
				month.byEnd = {
					p50,
					p80,
					committed
				};
			});
			for (let m = rows.length - 1; m > 0; m--) {
				const row = rows[m];
				const before = rows[m - 1];
				for (let k = 0; k < n; k++) row[k] = row[k] - before[k];
			}
			result.forEach((month, m) => {
				const spread = spreadOf(rows[m], select);
				if (kind === "total") month.spent = {
					...spread,
					split: 0
				};
				else if (spread.mean !== 0 || spread.p80 !== 0) month.components.push({
					kind,
					...spread
				});
			});
			if (kind === "total") splitMonths(result, rows, confidence);
		}
	}
	return result;
}
/** Mean, P50 and P80 of a row. */
function spreadOf(row, select) {
	const n = row.length;
	const [p50, p80] = select(row, [require_engine.rankOf(.5, n), require_engine.rankOf(.8, n)]);
	return {
		mean: require_engine.meanAndSd(row).mean,
		p50,
		p80
	};
}
function splitMonths(result, rows, p) {
	const n = rows[0].length;
	const total = new Float64Array(n);
	for (const row of rows) for (let k = 0; k < n; k++) total[k] = total[k] + row[k];
	const { parts } = splitAt(total, rows.slice(0, result.length), p);
	result.forEach((month, m) => {
		month.spent.split = parts[m];
	});
}
// ../../packages/core/src/budget/fundsCure.ts
/**
* What would make the money released cover every month at the level committed to: more of it, or the same earlier.
*
* Money is compared at the ends of months: what is released by the last day of a month has to cover what the level has
* spent by then. When within the month it is needed the plan does not say.
*/
function fundsCure(plan, months, committed) {
	const funds = [...plan.commitment.funds].sort((a, b) => a.from < b.from ? -1 : a.from > b.from ? 1 : 0);
	const first = months.find(({ short = 0 }) => short > 0);
	const most = months.reduce((largest, { short = 0 }) => Math.max(largest, short), 0);
	const all = funds.reduce((sum, { amount }) => sum + amount, 0);
	const earlier = [];
	let before = 0;
	for (const { from, amount } of funds) {
		const needed = months.find(({ byEnd }) => byEnd.committed > before + require_engine.tolerance * Math.max(1, before));
		before += amount;
		if (needed === void 0) break;
		const neededBy = lastDayOf(needed.month);
		const days = require_engine.dayNumber(from) - require_engine.dayNumber(neededBy);
		if (days > 0) earlier.push({
			from,
			amount,
			neededBy,
			days
		});
	}
	return {
		covered: first === void 0,
		...first === void 0 ? {} : {
			firstShort: {
				month: first.month,
				chanceCovered: first.chanceCovered ?? 0,
				short: first.short ?? 0
			},
			more: {
				amount: most,
				by: lastDayOf(first.month)
			}
		},
		earlier,
		lacking: Math.max(0, committed - all)
	};
}
/** The last day of a month such as `2027-03`. */
function lastDayOf(month) {
	const [year = 0, number = 1] = month.split("-").map(Number);
	const next = number === 12 ? [year + 1, 1] : [year, number + 1];
	return require_engine.isoDate(require_engine.dayNumber(`${String(next[0]).padStart(4, "0")}-${String(next[1]).padStart(2, "0")}-01`) - 1);
}
// ../../packages/core/src/budget/budget.ts
/**
* The money of a plan in one answer: what it is for, by phase and by month, against what is released; contingency and
* reserve apart, and what is left of the one; benefit against cost; what delay costs. See `Budget`.
*
* Every figure is of the forecast's own draws. Problems are values. Cost: about five runs of the model.
*/
function budget(given, options = {}) {
	const { plan, problems: unfit } = require_contingencyLeft.asOf(given, options.today);
	const answer = (subject) => {
		const { model, asWritten, draw } = subject;
		const { onProgress } = options;
		const confidence = options.confidence ?? model.confidence;
		const run = require_engine.simulate(model, {
			...draw,
			months: true,
			...onProgress === void 0 ? {} : { onProgress }
		});
		if (run.trials === void 0) return { problems: run.problems };
		const { trials } = run;
		const summary = require_engine.summariseWorth(model, trials, confidence);
		let perDay = 0;
		const rows = componentRows(model, asWritten, draw, (block) => {
			for (const overhead of model.overheads) {
				if (overhead.to >= 0 && overhead.to !== model.finishOf) continue;
				require_engine.fillAmount(overhead.perDay, block, block.scratch);
				for (let k = 0; k < block.n; k++) perDay += block.scratch[k] / draw.iterations;
			}
		});
		const total = totalOf(rows.total, confidence);
		const components = componentsOf(subject, rows, confidence);
		const months = monthsOf(subject, confidence, summary.months ?? [], trials.months, [...rows.kinds.keys()]);
		const worth = summary.appraisal === void 0 ? void 0 : worthOf(model, asWritten, draw, summary.appraisal);
		const lateness = delayCost(model, trials, draw);
		const { commitment, statusDate } = plan;
		const holder = require_contingencyLeft.someoneOf(plan)(commitment.holder);
		const { onProgress: _, today: _t, ...asked } = options;
		const { left, problems } = require_contingencyLeft.contingencyLeft(plan, asked);
		if (problems.length > 0) return { problems };
		const workdays = plan.calendars.get(plan.calendar)?.workdays.length ?? 5;
		return {
			budget: {
				stamp: require_stampOf.stampOf(model, draw),
				plan: {
					title: plan.title,
					currency: plan.currency,
					start: plan.start
				},
				confidence,
				...statusDate === void 0 ? {} : { statusDate },
				total: {
					...total,
					asWritten: asWritten.cost
				},
				components,
				addedUp: {
					p50: components.reduce((sum, { p50 }) => sum + p50, 0),
					p80: components.reduce((sum, { p80 }) => sum + p80, 0)
				},
				phases: phasesOf(rows, confidence),
				months,
				...commitment.funds.length > 0 ? { funds: fundsCure(plan, months, total.committed) } : {},
				contingency: {
					money: total.committed - asWritten.cost,
					...holder === void 0 ? {} : { holder },
					...commitment.releaseRule === void 0 ? {} : { releaseRule: commitment.releaseRule }
				},
				...commitment.reserve === void 0 ? {} : { reserve: commitment.reserve },
				...left?.money?.agreedFrom === "plan" ? { asked: {
					budget: left.money.agreed,
					chance: left.money.chance
				} } : {},
				...worth === void 0 ? {} : { worth: worth.worth },
				delay: {
					...lateness === void 0 ? {} : { lateness },
					overheadsPerWeek: perDay * workdays,
					...worth === void 0 ? {} : { benefitsPerWeek: worth.benefitsPerWeek }
				},
				...left?.money === void 0 && left?.days === void 0 ? {} : { left }
			},
			problems: []
		};
	};
	return require_contingencyLeft.explaining(plan, options, answer, { unfit });
}
function totalOf(row, confidence) {
	const n = row.length;
	const select = require_engine.rankSelector(n);
	const limits = require_engine.limitRanks(confidence, n);
	const [committed, low, high] = select(row, [
		require_engine.rankOf(confidence, n),
		limits.low,
		limits.high
	]);
	return {
		...spreadOf(row, select),
		sd: require_engine.meanAndSd(row).sd,
		committed,
		low,
		high
	};
}
function componentsOf({ model, asWritten }, rows, confidence) {
	const kinds = [...rows.kinds];
	const { parts, errors } = splitAt(rows.total, kinds.map(([, row]) => row), confidence);
	const select = require_engine.rankSelector(rows.total.length);
	return kinds.map(([kind, row], i) => ({
		kind,
		...spreadOf(row, select),
		asWritten: costAsWritten(modelOfKind(model, kind), asWritten),
		split: parts[i],
		error: errors[i]
	}));
}
function costAsWritten(model, { block }) {
	const own = {
		...block,
		cost: block.cost.slice()
	};
	require_engine.addMoney(model, own, require_engine.newMoneySums(model));
	return own.cost[0];
}
function phasesOf({ total, phases, means }, confidence) {
	const list = [...phases];
	const { parts, errors } = splitAt(total, list.map(([, row]) => row), confidence);
	const select = require_engine.rankSelector(total.length);
	return list.map(([phase, row], i) => ({
		...phase === "" ? {} : { phase },
		...spreadOf(row, select),
		split: parts[i],
		error: errors[i],
		components: [...means.get(phase) ?? []].flatMap(([kind, mean]) => mean === 0 ? [] : [{
			kind,
			mean
		}])
	}));
}
function monthsOf({ model, asWritten, draw }, confidence, released, phased, kinds) {
	if (phased === void 0) return [];
	const shown = released.length;
	return monthMoney(model, asWritten, draw, confidence, {
		months: phased.months,
		shown,
		kinds
	}).map((month, m) => {
		const funds = released[m];
		if (funds?.released === void 0 || funds.chanceCovered === void 0) return month;
		const over = month.byEnd.committed - funds.released;
		const short = over > 1e-9 * Math.max(1, Math.abs(funds.released)) ? over : 0;
		return {
			...month,
			released: funds.released,
			chanceCovered: funds.chanceCovered,
			short
		};
	});
}
// ../../packages/core/src/explain/assumptions/testAssumptions.ts
/**
* Runs the plan with each assumption false, everything else as it is, on the draws of the plan as it stands: what moves,
* in days and in money, and what becomes of the chances asked for. Where assumptions or risks exclude each other, the
* others of its group do not occur.
*
* Problems are values. Cost: two re-runs for each assumption, each only of what it reaches.
*
* Source  Dewar et al., Assumption-Based Planning, RAND MR-114 (read in an abstract): assumptions are load-bearing by
*         what their failure does to the plan.
*/
function testAssumptions(plan, options = {}) {
	const asked = options.only;
	const wanted = plan.assumptions.filter(({ id, status }) => status !== "closed" && (asked === void 0 || asked.includes(id)));
	const test = ({ model, draw }) => {
		const confidence = options.confidence ?? model.confidence;
		const at = new Map(model.register.map((entry, e) => [entry.id, {
			entry,
			e
		}]));
		const open = wanted.filter(({ id }) => at.get(id)?.entry.fact === void 0);
		const settings = [{}, ...open.flatMap(({ id }) => {
			const e = at.get(id)?.e ?? -1;
			return [{ entries: /* @__PURE__ */ new Map([[e, 0]]) }, { entries: falseAlone(model, e) }];
		})];
		const read = (outcome) => ({
			standing: require_standings.standingAt(model, outcome, confidence),
			chance: chanceAsked(model, outcome)
		});
		const runs = require_variants.runVariants(draw, settings.map((own) => ({
			model,
			settings: own
		})), read, options.onProgress);
		const [base] = runs;
		if (base === void 0) throw new Error("one variant, one outcome");
		const { finishBy, budget } = plan.commitment;
		const assumptions = wanted.map((one) => {
			const k = open.indexOf(one);
			const [holds, fails] = k < 0 ? [] : [runs[1 + 2 * k], runs[2 + 2 * k]];
			return {
				...said(plan, one),
				...holds === void 0 || fails === void 0 ? {} : { ifFalse: {
					standing: fails.standing,
					moved: between(base.standing, fails.standing),
					againstHolding: between(holds.standing, fails.standing),
					chance: fails.chance
				} }
			};
		});
		const { title, currency, start } = plan;
		return {
			tested: {
				plan: {
					title,
					currency,
					start
				},
				stamp: require_stampOf.stampOf(model, draw),
				confidence,
				base: base.standing,
				asked: {
					...finishBy === void 0 ? {} : { finishBy },
					...budget === void 0 ? {} : { budget }
				},
				chance: base.chance,
				assumptions: assumptions.sort((a, b) => reach(b) - reach(a) || money(b) - money(a) || (a.id < b.id ? -1 : 1))
			},
			problems: []
		};
	};
	return require_contingencyLeft.explaining(plan, options, test, { unfit: strangers(plan, asked) });
}
/** The entry occurs, and what shares its group does not. */
function falseAlone(model, e) {
	const { group } = model.register[e];
	const entries = /* @__PURE__ */ new Map([[e, 1]]);
	if (group < 0) return entries;
	model.register.forEach((other, o) => {
		if (o !== e && other.group === group) entries.set(o, 0);
	});
	return entries;
}
function said(plan, one) {
	const { id, name, probability, signpost, reviewBy, tripped, status, impacts } = one;
	const owner = require_contingencyLeft.someoneOf(plan)(one.owner);
	return {
		id,
		statement: name,
		chanceWrong: probability,
		...owner === void 0 ? {} : { owner },
		...signpost === void 0 ? {} : { signpost },
		...reviewBy === void 0 ? {} : { reviewBy },
		...tripped === void 0 ? {} : { tripped },
		...impacts.length === 0 ? { noImpact: true } : {},
		...status === "occurred" ? { occurred: true } : {}
	};
}
function between(from, to) {
	return {
		workingDays: to.workingDays - from.workingDays,
		money: to.cost - from.cost
	};
}
function chanceAsked({ finishByDay, budget }, { finishDay, cost }) {
	const sum = budget === void 0 ? Number.POSITIVE_INFINITY : budget + require_engine.tolerance * Math.max(1, Math.abs(budget));
	const kept = jointChance(finishDay, cost, finishByDay ?? Number.POSITIVE_INFINITY, sum);
	return {
		...finishByDay === void 0 ? {} : { finishBy: kept.finish },
		...budget === void 0 ? {} : { budget: kept.cost },
		...finishByDay === void 0 || budget === void 0 ? {} : { both: kept.both }
	};
}
function reach({ ifFalse }) {
	return Math.abs(ifFalse?.moved.workingDays ?? 0);
}
function money({ ifFalse }) {
	return Math.abs(ifFalse?.moved.money ?? 0);
}
/** Ids asked for that are no assumption that could still prove wrong. */
function strangers(plan, asked) {
	const open = plan.assumptions.filter(({ status }) => status === "open").map(({ id }) => id);
	return (asked ?? []).filter((id) => !open.includes(id)).map((id) => {
		const known = plan.assumptions.find((one) => one.id === id);
		const risk = plan.risks.some((one) => one.id === id);
		const near = require_program.nearest$1(id, open);
		const rule = known !== void 0 ? `It is ${known.status} already: there is nothing to suppose.` : risk ? "That is a risk; what it does alone is told by `forecast --tornado`." : "The plan has no assumption of that id.";
		const list = open.length === 0 ? "The plan has none that is open." : `Open are: ${open.sort().join(", ")}.`;
		return {
			code: "unknown-id",
			severity: "error",
			path: "--if-false",
			received: `\`${id}\``,
			rule,
			remedy: known === void 0 && !risk && near !== void 0 ? `Did you mean ${near}?` : list
		};
	});
}
// ../../packages/core/src/explain/paths/aloneStart.ts
var start = /* @__PURE__ */ new Float64Array(1);
var finish = /* @__PURE__ */ new Float64Array(1);
/**
* The earliest start of a task on which nothing bears but one bound: a moment before which it may not start, or
* (`toFinish`) not finish. A bound before the plan's start asks for nothing: its own negative moment is answered.
*
* @param d        Realised duration, working days.
* @param skipped  The task is not needed: a plain point.
*/
function aloneStart(task, d, skipped, moment, toFinish) {
	if (moment < 0) return moment;
	if (skipped || d <= 1e-9) return task.kind === "milestone-start" && !skipped ? require_engine.nextWork(task.calendar, moment) : moment;
	const { calendar, unbroken } = task;
	const w = require_engine.workAt(calendar, moment) - (toFinish ? d : 0);
	if (w < -1e-9) return w;
	const at = require_engine.startMoment(calendar, w < 0 ? 0 : w);
	if (unbroken === void 0) return at;
	start[0] = at;
	finish[0] = require_engine.finishMoment(calendar, w + d);
	require_engine.keepWhole(calendar, unbroken, start, finish, 0, d);
	return start[0];
}
// ../../packages/core/src/explain/paths/peopleBounds.ts
/**
* For whom task j, which could have started at `free`, waited in iteration k: the ends (of tasks placed before it, or
* of partial absences) from which it starts where it starts, and just before which the person's capacity would not
* have held it too.
*/
function peopleBounds(placed, j, k, free) {
	const { model, block, sharers, position } = placed;
	const task = model.tasks[j];
	const start = block.start[j][k];
	const d = block.duration[j][k];
	const bounds = [];
	for (const hold of task.holds) {
		const person = model.people[hold.person];
		const ends = (moment) => moment > free + 1e-9 && moment <= start + 1e-9 && aloneStart(task, d, false, moment, false) >= start - 1e-9 && loadBefore(placed, j, hold, moment, k) + hold.share > person.capacity + 1e-9;
		for (const other of sharers[hold.person] ?? []) {
			if (other.position >= position[j]) break;
			const moment = block.finish[other.task][k];
			if (moment - block.start[other.task][k] <= 1e-9 || !ends(moment)) continue;
			bounds.push({
				kind: "person",
				at: hold.person,
				from: other.task,
				moment,
				wait: 0,
				start
			});
		}
		if (hold.along) continue;
		for (const { to } of person.partial) if (ends(to)) bounds.push({
			kind: "away",
			at: hold.person,
			from: -1,
			moment: to,
			wait: 0,
			start
		});
	}
	return bounds;
}
/** What the person holds, or lacks, just before a moment: of the tasks placed before j. */
function loadBefore({ model, block, sharers, position }, j, hold, moment, k) {
	const holdsAt = (from, to) => from < moment - 1e-9 && to >= moment - 1e-9;
	let load = 0;
	for (const other of sharers[hold.person] ?? []) {
		if (other.position >= position[j]) break;
		const from = block.start[other.task][k];
		const to = block.finish[other.task][k];
		if (to - from > 1e-9 && holdsAt(from, to)) load += other.share;
	}
	if (hold.along) return load;
	for (const { from, to, gone } of model.people[hold.person]?.partial ?? []) if (holdsAt(from, to)) load += gone;
	return load;
}
// ../../packages/core/src/explain/paths/boundsOf.ts
/**
* What keeps task j from starting earlier in iteration k: links in their order, dates, and people where they made it
* wait. The latest of their starts is the task's start: the ones that bind. A started or finished task has one bound.
*
* The rule of placement itself (plan format, "Placement"), bound by bound; where it asks who held a person, the rows
* of the block answer.
*/
function boundsOf(placed, j, k) {
	const { model, block, planned } = placed;
	const task = model.tasks[j];
	const start = block.start[j][k];
	if (task.progress !== void 0) return [{
		kind: "recorded",
		at: -1,
		from: -1,
		moment: start,
		wait: 0,
		start
	}];
	const d = block.duration[j][k];
	const skipped = block.needed[j]?.[k] === 0;
	const wait = skipped ? 0 : block.wait[j]?.[k] ?? 0;
	const bounds = [];
	const add = (kind, at, from, moment, held, toFinish = false) => {
		const late = held > 1e-9 && moment >= 0 ? require_engine.addWork(task.ownCalendar, moment, held) : moment;
		const alone = aloneStart(task, d, skipped, late, toFinish);
		bounds.push({
			kind,
			at,
			from,
			moment,
			wait: held > 1e-9 ? held : 0,
			start: alone
		});
	};
	task.links.forEach((link, l) => {
		const fromFinish = link.kind === "finish-to-start" || link.kind === "finish-to-finish";
		const toFinish = link.kind === "finish-to-finish" || link.kind === "start-to-finish";
		const from = fromFinish ? block.finish[link.from] : block.start[link.from];
		const moment = require_engine.addWork(link.lagCalendar, from[k], lagOf(placed, link, k));
		add("link", l, link.from, moment, wait, toFinish);
	});
	if (!skipped && task.notBefore > 0) add("not-before", -1, -1, task.notBefore, wait);
	if (!skipped && task.holdToPlan && planned !== void 0) add("held-to-plan", -1, -1, planned[j], 0);
	if (model.statusDay !== void 0 && model.statusDay >= 0) add("status-date", -1, -1, model.statusDay + 1, 0);
	add("plan-start", -1, -1, 0, wait);
	if (model.limitedPeople && !skipped && d > 1e-9 && task.holds.length > 0) {
		const free = bounds.reduce((latest, bound) => Math.max(latest, bound.start), 0);
		if (free < start - 1e-9) bounds.push(...peopleBounds(placed, j, k, free));
	}
	return bounds;
}
/** Working days of a link's lag in iteration k. */
function lagOf({ block }, link, k) {
	return (link.lag.slot < 0 ? link.lag.value : block.draws[link.lag.slot][k]) * link.lagScale;
}
// ../../packages/core/src/explain/paths/boundJson.ts
/** A bound of task j in iteration k with its names, dates and slack. `binds`: its start is the task's. */
function boundJson(placed, j, k, bound) {
	const { model, block } = placed;
	const task = model.tasks[j];
	const start = block.start[j][k];
	const from = model.tasks[bound.from];
	const link = bound.kind === "link" ? task.links[bound.at] : void 0;
	const person = bound.kind === "person" || bound.kind === "away" ? model.people[bound.at] : void 0;
	const lag = link === void 0 ? 0 : lagOf(placed, link, k);
	const binds = bound.start >= start - require_engine.tolerance;
	const before = bound.start < 0 ? bound.start : require_engine.workAt(task.calendar, bound.start);
	const point = block.duration[j][k] <= require_engine.tolerance;
	const needed = block.needed[j]?.[k] !== 0;
	const day = Math.max(0, require_engine.startDay(task, Math.max(0, bound.start), point, needed));
	return {
		kind: bound.kind,
		...from === void 0 ? {} : { task: named$1(from) },
		...link === void 0 ? {} : { link: link.kind },
		...Math.abs(lag) > 1e-9 ? { lag } : {},
		...person === void 0 ? {} : { person: named$1(person) },
		...bound.wait > 1e-9 ? { wait: bound.wait } : {},
		day: bound.moment,
		start: bound.start,
		startDate: require_engine.isoDate(model.startDay + day),
		slack: binds ? 0 : Math.max(0, require_engine.workAt(task.calendar, start) - before),
		binds
	};
}
function named$1({ id, name }) {
	return {
		id,
		name
	};
}
// ../../packages/core/src/explain/paths/driverOf.ts
var dates = [
	"not-before",
	"held-to-plan",
	"status-date",
	"recorded",
	"plan-start"
];
/**
* The bounds that hold task j where it starts in iteration k, the one its driving path follows first: of several that
* ask for the same start, those of critical tasks before others, links before people before dates, then in the order
* of the links' and people's ids.
*/
function bindingBounds(placed, j, k, bounds = boundsOf(placed, j, k)) {
	const { model, block } = placed;
	const start = block.start[j][k];
	const rank = (bound) => {
		if (bound.from < 0) return bound.kind === "away" ? 4 : 5 + dates.indexOf(bound.kind);
		return (!(model.tasks[bound.from]?.progress?.finished === true) && block.pushed[bound.from]?.[k] === 1 ? 0 : 2) + (bound.kind === "link" ? 0 : 1);
	};
	const latest = bounds.reduce((most, bound) => Math.max(most, bound.start), 0);
	return bounds.filter((bound) => bound.start >= Math.min(start, latest) - require_engine.tolerance).map((bound) => ({
		bound,
		rank: rank(bound)
	})).sort((a, b) => a.rank - b.rank || a.bound.at - b.bound.at || a.bound.from - b.bound.from).map(({ bound }) => bound);
}
// ../../packages/core/src/explain/paths/drivingPath.ts
/**
* The chain that holds the start of task j in iteration k, j first: back over what bound each start, to a date, a
* recorded start or finish, or the plan's start. Each step goes to a task placed earlier, so it ends.
*/
function chainTo(placed, j, k) {
	const steps = [];
	for (let task = j; task >= 0;) {
		const by = bindingBounds(placed, task, k)[0];
		steps.push({
			task,
			by
		});
		task = by.from;
	}
	return steps;
}
/**
* The task that set the finish in iteration k: of those that stand at it, needed ones, the last in the order of
* placement, which no other of them follows.
*/
function finishingTask({ model, block }, k) {
	if (model.finishOf >= 0) return model.finishOf;
	const finish = block.planFinish[k];
	let last = -1;
	for (let o = model.order.length - 1; o >= 0; o--) {
		const j = model.order[o];
		const task = model.tasks[j];
		if (block.needed[j]?.[k] === 0) continue;
		if (block.finish[j][k] < finish - 1e-9) continue;
		if (task.progress?.finished !== true) return j;
		if (last < 0) last = j;
	}
	return last;
}
// ../../packages/core/src/explain/paths/pathCounts.ts
/**
* Counts the driving path of every iteration of a placed and marked block. Tasks that are finished, or not needed in
* an iteration, are no part of its path; two paths over the same tasks are two when they hang together differently (by
* a link, by a person). Cost: the bounds of each task on a path, about 0.1 microseconds each.
*/
function countPaths(placed, counts) {
	for (let k = 0; k < placed.block.n; k++) {
		const text = textOf(pathOf(placed, k));
		counts.set(text, (counts.get(text) ?? 0) + 1);
	}
}
/** The driving path of iteration k, first task first; empty when nothing is needed or left to do. */
function pathOf(placed, k) {
	const last = finishingTask(placed, k);
	return last < 0 ? {
		tasks: [],
		ways: []
	} : pathTo(placed, last, k);
}
/**
* The chain that holds the start of task j in iteration k, first task first, without those that are finished or not
* needed; `always`: j itself is in it whatever it is.
*/
function pathTo(placed, j, k, always = false) {
	const { model, block } = placed;
	const tasks = [];
	const ways = [];
	for (const { task, by } of chainTo(placed, j, k)) {
		const kept = always && task === j;
		if (!kept && model.tasks[task]?.progress?.finished === true) continue;
		const person = by.kind === "person" || by.kind === "away" ? by.at : -1;
		if (!kept && block.needed[task]?.[k] === 0) {
			const after = ways.at(-1);
			if (after !== void 0 && by.from < 0) after.kind = by.kind;
			continue;
		}
		tasks.push(task);
		ways.push({
			kind: by.kind,
			person
		});
	}
	return {
		tasks: tasks.reverse(),
		ways: ways.reverse()
	};
}
/** A path as text, for counting: `12,5:person:3` is task 12, then task 5, which waits for person 3. */
function textOf({ tasks, ways }) {
	return tasks.map((task, at) => {
		const way = ways[at];
		return way === void 0 || way.kind === "link" ? String(task) : `${task}:${way.kind}:${way.person}`;
	}).join();
}
function pathFrom(text) {
	const parts = text === "" ? [] : text.split(",").map((part) => part.split(":"));
	return {
		tasks: parts.map(([task]) => Number(task)),
		ways: parts.map(([, kind, person]) => ({
			kind: kind ?? "link",
			person: Number(person ?? -1)
		}))
	};
}
/** The most frequent paths, most frequent first; of equals the one whose text comes first. */
function mostFrequent(counts, most) {
	return [...counts].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : a > b ? 1 : 0)).slice(0, most).map(([text, count]) => ({
		...pathFrom(text),
		count
	}));
}
// ../../packages/core/src/explain/paths/wayJson.ts
/** A way with the name of the person in it. */
function wayJson(model, way) {
	if (way === void 0) return { kind: "plan-start" };
	const person = model.people[way.person];
	return {
		kind: way.kind,
		...person === void 0 ? {} : { person: named$1(person) }
	};
}
// ../../packages/core/src/explain/future/costLines.ts
/**
* The cost of iteration k line by line, in the order in which the total is added up (tasks, register, responses,
* overheads), so that the lines add up to it to the last bit. Lines of nought are left out: they add nothing.
*/
function costLines(model, block, k) {
	const drawnOf = ({ slot, value }) => slot < 0 ? value : block.draws[slot][k];
	const lines = [];
	const add = (kind, { id, name }, money) => {
		if (money !== 0) lines.push({
			kind,
			id,
			name,
			money
		});
	};
	model.tasks.forEach((task, j) => {
		if (require_engine.taskCost(task, j, block, block.scratch)) add("task", task, block.scratch[k]);
	});
	model.register.forEach((entry, e) => {
		if (block.occurs[e]?.[k] !== 1) return;
		for (const { cost } of entry.impacts) if (cost !== void 0) add(entry.kind, entry, entry.scale * drawnOf(cost));
	});
	for (const response of model.responses) add("response", response, drawnOf(response.cost));
	for (const overhead of model.overheads) {
		const from = overhead.from < 0 ? void 0 : block.start[overhead.from][k];
		const to = (overhead.to < 0 ? block.planFinish : block.finish[overhead.to])[k];
		const before = from === void 0 ? 0 : require_engine.workAt(model.planCalendar, from);
		const days = require_engine.workAt(model.planCalendar, to) - before;
		add("overhead", overhead, days > 0 ? drawnOf(overhead.perDay) * days : 0);
	}
	return lines;
}
// ../../packages/core/src/explain/future/levelOf.ts
var u = /* @__PURE__ */ new Float64Array(1);
var out = /* @__PURE__ */ new Float64Array(1);
/**
* The chance that an estimate comes to at most `value`: of a range, the greatest probability whose tabulated quantile,
* the one draws are made with, is at most that. `value` in the estimate's unit. 1 for a certain one.
*
* Cost: 60 looks into the table.
*/
function levelOf(estimate, value) {
	if (estimate.kind === "fixed") return 1;
	if (estimate.kind === "outcomes") {
		const { values, upTo } = require_engine.outcomeTable(estimate);
		const at = values.findLastIndex((each) => each <= value);
		return at < 0 ? 0 : Math.min(1, upTo[at] - 1e-9);
	}
	const table = require_engine.quantileTable(estimate);
	const quantile = (p) => {
		u[0] = p;
		require_engine.fillFromTable(table, u, out, 1);
		return out[0];
	};
	if (quantile(1) <= value) return 1;
	let low = 0;
	let high = 1;
	for (let round = 0; round < 60; round++) {
		const middle = (low + high) / 2;
		if (quantile(middle) <= value) low = middle;
		else high = middle;
	}
	return low;
}
// ../../packages/core/src/explain/future/drawsOf.ts
/** Every estimate of the model as iteration k of the block drew it, tasks first, in the order of the model. */
function drawsOf(model, block, k) {
	const draws = [];
	const add = (amount, use) => {
		if (amount === void 0 || amount.slot < 0) return;
		const slot = model.slots[amount.slot];
		const value = block.draws[amount.slot][k];
		const time = use.unit === "days" && slot.estimate.unit === "weeks";
		draws.push({
			of: use.of,
			what: use.what,
			...use.on === void 0 ? {} : { on: use.on },
			value,
			unit: time ? "weeks" : use.unit,
			asWritten: slot.asWritten,
			level: levelOf(slot.estimate, value),
			counts: use.counts
		});
	};
	model.tasks.forEach((task, j) => {
		addTask(model, task, block.needed[j]?.[k] !== 0, add);
	});
	addRegister(model, block, k, add);
	for (const response of model.responses) add(response.cost, {
		of: named$1(response),
		what: "cost",
		unit: "money",
		counts: true
	});
	for (const overhead of model.overheads) add(overhead.perDay, {
		of: named$1(overhead),
		what: "perDay",
		unit: "money",
		counts: true
	});
	const late = {
		id: "lateness",
		name: "Lateness"
	};
	add(model.lateness?.perWeek, {
		of: late,
		what: "perWeek",
		unit: "money",
		counts: true
	});
	add(model.lateness?.once, {
		of: late,
		what: "once",
		unit: "money",
		counts: true
	});
	for (const benefit of model.benefits) {
		const { amount } = model.plan.benefits.find(({ id }) => id === benefit.id) ?? {};
		const unit = amount === void 0 ? "quantity" : "money";
		add(benefit.amount, {
			of: named$1(benefit),
			what: amount === void 0 ? "quantity" : "amount",
			unit,
			counts: true
		});
	}
	return draws;
}
function addTask(model, task, needed, add) {
	const of = named$1(task);
	const { progress } = task;
	const slot = model.slots[task.duration.slot];
	const remains = progress?.remaining !== void 0;
	add(task.duration, {
		of,
		what: slot?.purpose ?? "duration",
		unit: "days",
		counts: needed && !remains
	});
	add(progress?.remaining, {
		of,
		what: "remaining",
		unit: "days",
		counts: true
	});
	for (const link of task.links) {
		const from = model.tasks[link.from];
		add(link.lag, {
			of,
			what: "lag",
			unit: "days",
			counts: progress === void 0,
			...from === void 0 ? {} : { on: [named$1(from)] }
		});
	}
	const paid = needed && !(progress?.finished === true && progress.spent !== void 0);
	add(task.cost, {
		of,
		what: "cost",
		unit: "money",
		counts: paid
	});
	add(task.costPerDay, {
		of,
		what: "costPerDay",
		unit: "money",
		counts: paid
	});
}
function addRegister(model, block, k, add) {
	model.register.forEach((entry, e) => {
		const counts = block.occurs[e]?.[k] === 1;
		const of = named$1(entry);
		for (const impact of entry.impacts) {
			const on = impact.tasks.flatMap((j) => model.tasks[j] ?? []).map(named$1);
			const use = {
				of,
				counts,
				...on.length === 0 ? {} : { on }
			};
			add(impact.delay, {
				...use,
				what: "delay",
				unit: "days"
			});
			add(impact.factor, {
				...use,
				what: "factor",
				unit: "times"
			});
			add(impact.wait, {
				...use,
				what: "wait",
				unit: "days"
			});
			add(impact.cost, {
				...use,
				what: "cost",
				unit: "money"
			});
		}
	});
}
// ../../packages/core/src/explain/future/eventsOf.ts
/**
* The register in iteration k: what occurred, and what it did to tasks that are needed and not finished. A factor's days
* are the sampled duration times (factor - 1), factors one after the other in the order of the register, as for drivers.
*/
function eventsOf(model, block, k) {
	const drawnOf = ({ slot, value }) => slot < 0 ? value : block.draws[slot][k];
	const did = model.register.map(() => ({
		days: 0,
		waited: 0
	}));
	model.tasks.forEach((task, j) => {
		if (block.needed[j]?.[k] === 0 || task.progress?.finished === true) return;
		let sampled = sampledOf(task, drawnOf);
		for (const at of task.impacts) {
			const entry = model.register[at.entry];
			if (block.occurs[at.entry]?.[k] !== 1) continue;
			const into = did[at.entry];
			const impact = entry.impacts[at.impact];
			into.days += daysOf(impact.delay, at, drawnOf);
			into.waited += impact.wait === void 0 ? 0 : at.waitScale * drawnOf(impact.wait);
			if (impact.factor === void 0) continue;
			const more = sampled * entry.scale * (drawnOf(impact.factor) - 1);
			into.days += more;
			sampled += more;
		}
	});
	return model.register.map((entry, e) => {
		const occurred = block.occurs[e]?.[k] === 1;
		let money = 0;
		if (occurred) for (const { cost } of entry.impacts) money += cost === void 0 ? 0 : entry.scale * drawnOf(cost);
		return {
			id: entry.id,
			name: entry.name,
			kind: entry.kind,
			chance: entry.fact ?? Math.max(0, Math.min(1, entry.hi - entry.lo)),
			occurred,
			...did[e],
			money
		};
	});
}
function daysOf(delay, at, drawnOf) {
	return delay === void 0 ? 0 : at.delayScale * drawnOf(delay);
}
/** The task's duration, or what remains of it, before any impact: working days. */
function sampledOf(task, drawnOf) {
	const { progress } = task;
	if (progress?.remaining !== void 0) return drawnOf(progress.remaining) * progress.remainingScale;
	return drawnOf(task.duration) * task.durationScale;
}
// ../../packages/core/src/explain/future/replay.ts
/** Tells iteration k of a placed block, step by step. Marks it and adds its money up, as a simulation does. */
function replay(model, asWritten, block, k) {
	require_engine.markMoving(model, block, model.limitedPeople);
	require_engine.addMoney(model, block, require_engine.newMoneySums(model));
	const total = block.cost[k];
	const day = block.planFinish[k];
	const placed = require_weeks.placedOf(model, block, asWritten.starts);
	const path = pathOf(placed, k);
	const late = new Float64Array(block.n);
	if (model.lateness !== void 0) require_engine.lateCost(model, block, 0, late);
	const lines = costLines(model, block, k);
	return {
		plan: {
			title: model.plan.title,
			currency: model.plan.currency,
			start: model.plan.start
		},
		asWritten: require_standings.standingAsWritten(model, asWritten),
		finish: {
			date: require_engine.isoDate(model.startDay + block.planFinishDay[k]),
			day,
			workingDays: require_engine.workAt(model.planCalendar, day)
		},
		cost: {
			total,
			lines
		},
		...model.lateness === void 0 ? {} : { lateness: late[k] },
		events: eventsOf(model, block, k),
		draws: drawsOf(model, block, k),
		tasks: tasksOf(placed, asWritten, k, lines),
		path: path.tasks.map((j, at) => ({
			task: named$1(model.tasks[j] ?? {
				id: "",
				name: ""
			}),
			way: wayJson(model, path.ways[at])
		}))
	};
}
function tasksOf(placed, asWritten, k, lines) {
	const { model, block } = placed;
	const late = model.tasks.map(() => new Float64Array(block.n));
	require_weeks.fillLateRows(placed, late);
	const dateOf = (day) => require_engine.isoDate(model.startDay + Math.max(0, day));
	const written = asWritten.block;
	return model.tasks.map((task, j) => {
		const start = block.start[j]?.[k];
		const finish = block.finish[j]?.[k];
		const duration = block.duration[j]?.[k];
		const needed = block.needed[j]?.[k] !== 0;
		const point = duration <= require_engine.tolerance;
		const finished = task.progress?.finished === true;
		const slack = require_weeks.slackOf(placed, j, k, late[j]);
		const planned = written.finish[j]?.[0];
		const plannedLength = written.duration[j]?.[0];
		const plannedDay = require_engine.finishDay(task, planned, plannedLength <= require_engine.tolerance);
		return {
			id: task.id,
			name: task.name,
			milestone: task.kind !== "task",
			needed,
			start,
			finish,
			startDate: dateOf(require_engine.startDay(task, start, point, needed)),
			finishDate: dateOf(require_engine.finishDay(task, finish, point, needed)),
			duration,
			asWritten: {
				duration: plannedLength,
				finish: planned,
				finishDate: dateOf(plannedDay)
			},
			critical: needed && !finished && block.pushed[j]?.[k] === 1,
			...slack === Number.POSITIVE_INFINITY ? {} : { slack },
			cost: lines.find(({ kind, id }) => kind === "task" && id === task.id)?.money ?? 0,
			heldBy: bindingBounds(placed, j, k).map((bound) => boundJson(placed, j, k, bound))
		};
	}).sort((a, b) => a.start - b.start || a.finish - b.finish || (a.id < b.id ? -1 : 1));
}
// ../../packages/core/src/explain/future/future.ts
/**
* One future of a run replayed: what was drawn, what occurred, when each task ran and what held its start, the chain
* that set the finish, and the cost line by line. Its figures are the run's own, to the bit: with the same seed, design
* and iterations, `finish` and `cost` are those of iteration `iteration - 1` of `simulate`.
*
* Problems are values. Cost: one run of the model without marking, for where the future stands among the others, and
* one block.
*/
function future(plan, which, options = {}) {
	const explain = ({ model, asWritten, draw }) => {
		const [chosen] = require_variants.runVariants(draw, [{ model }], ({ finish, cost }) => {
			const at = "at" in which ? indexAt(finish, which.at) : which.iteration - 1;
			return {
				at,
				finish: shareUpTo(finish, at),
				cost: shareUpTo(cost, at)
			};
		}, options.onProgress);
		if (chosen === void 0) return { problems: [] };
		const b = Math.floor(chosen.at / require_engine.blockSize);
		let told;
		eachBlock(model, draw, asWritten.starts, (block, first) => {
			told = replay(model, asWritten, block, chosen.at - first);
		}, b);
		if (told === void 0) return { problems: [] };
		const { plan: title, finish, cost, ...rest } = told;
		return {
			future: {
				stamp: require_stampOf.stampOf(model, draw),
				plan: title,
				iteration: chosen.at + 1,
				..."at" in which ? { at: which.at } : {},
				finish: {
					...finish,
					level: chosen.finish
				},
				cost: {
					total: cost.total,
					level: chosen.cost,
					lines: cost.lines
				},
				...rest
			},
			problems: []
		};
	};
	return require_contingencyLeft.explaining(plan, options, explain, { unfit: problemsOf(which, require_contingencyLeft.drawOf(plan, options).iterations) });
}
/** The first iteration that ends where percentile p of them does. */
function indexAt(finish, p) {
	const value = finish.slice().sort()[require_engine.rankOf(p, finish.length) - 1];
	return finish.indexOf(value);
}
function shareUpTo(row, at) {
	const limit = row[at];
	let count = 0;
	for (const value of row) if (value <= limit) count++;
	return count / row.length;
}
function problemsOf(which, iterations) {
	if ("at" in which) {
		if (which.at > 0 && which.at < 1) return [];
		return [problem("at", which.at, "A level is above 0 and below 1.", "Ask for e.g. 0.8.")];
	}
	if (Number.isInteger(which.iteration) && which.iteration >= 1 && which.iteration <= iterations) return [];
	return [problem("iteration", which.iteration, `The run has ${iterations} futures, counted from 1.`, `Ask for one from 1 to ${iterations}, or for more iterations.`)];
}
function problem(path, received, rule, remedy) {
	return {
		code: "no-such-future",
		severity: "error",
		path,
		received: String(received),
		rule,
		remedy
	};
}
// ../../packages/core/src/explain/paths/daysAtStake.ts
/**
* By task asked for: the working days by which the finish at a level would come earlier if the task never took longer
* than `asWritten` (working days, by task of the model), everything else on the same draws. Negative where people, once
* a task is shorter, meet a different task first.
*
* Cost: one run without marking, and for each task the placing of all that can move with it; 8 n bytes a task.
*/
function daysAtStake(model, draw, planned, tasks, asWritten, confidence, onBlock) {
	const touches = require_stage.touchesOf(model);
	const none = /* @__PURE__ */ new Set();
	const again = tasks.map((j) => require_stage.reachOf(model, touches, {
		slots: none,
		entries: none,
		needed: /* @__PURE__ */ new Set([j]),
		people: false
	}, model.limitedPeople).placed);
	const before = new Float64Array(draw.iterations);
	const after = tasks.map(() => new Float64Array(draw.iterations));
	let work;
	eachBlock(model, draw, planned, (block, first) => {
		work ??= require_engine.newBlock(model, block.n, block.kernel);
		const { n } = block;
		require_engine.markFinish(model, block);
		before.set(block.planFinish.subarray(0, n), first);
		tasks.forEach((j, at) => {
			const held = copyFor(block, work, again[at]);
			const duration = work.scratch;
			const most = asWritten[j];
			const drawn = block.duration[j];
			for (let k = 0; k < n; k++) duration[k] = Math.min(drawn[k], most);
			held.duration = [...block.duration];
			held.duration[j] = duration;
			const capacity = model.limitedPeople ? require_engine.newCapacity(model) : void 0;
			const beyond = require_engine.place(model, held, planned, capacity, again[at]);
			if (beyond >= 0) throw new require_stage.BeyondCalendarError(require_engine.beyondCalendar(model, beyond));
			require_engine.markFinish(model, held);
			after[at].set(held.planFinish.subarray(0, n), first);
		});
		onBlock(n);
	});
	const rank = require_engine.rankOf(confidence, draw.iterations) - 1;
	const level = (row) => require_engine.workAt(model.planCalendar, row.sort()[rank]);
	const now = level(before);
	return after.map((row) => now - level(row));
}
/** The block with rows of its own for the tasks to be placed again, and for what is read off them. */
function copyFor(block, work, again) {
	const own = (j) => again[j] === 1;
	return {
		...block,
		start: block.start.map((row, j) => own(j) ? work.start[j] : row),
		finish: block.finish.map((row, j) => own(j) ? work.finish[j] : row),
		moves: work.moves,
		pushed: work.pushed,
		planFinish: work.planFinish,
		planFinishDay: work.planFinishDay
	};
}
// ../../packages/core/src/explain/paths/indexSums.ts
function newIndexSums(tasks) {
	const none = () => ({
		mean: 0,
		squares: 0,
		products: 0,
		critical: 0,
		weighed: 0,
		bounded: 0,
		slack: 0
	});
	return {
		n: 0,
		mean: 0,
		squares: 0,
		tasks: Array.from({ length: tasks }, none)
	};
}
/**
* Adds a placed and marked block. Means and central moments of the block, two passes, joined with those so far
* (Chan, Golub & LeVeque 1983, The American Statistician 37, 242-247; recalled), so that no digits are lost.
*
* @param late  The rows of `fillLateRows`.
*/
function addToIndexSums(sums, placed, late) {
	const { model, block } = placed;
	const { n } = block;
	const total = Float64Array.from({ length: n }, (_, k) => require_engine.workAt(model.planCalendar, block.planFinish[k]));
	const meanTotal = meanOf(total, n);
	const weight = sums.n * n / (sums.n + n);
	const apart = meanTotal - sums.mean;
	let squaresOfTotal = 0;
	for (let k = 0; k < n; k++) squaresOfTotal += (total[k] - meanTotal) ** 2;
	model.tasks.forEach((task, j) => {
		const into = sums.tasks[j];
		const duration = block.duration[j];
		const pushed = block.pushed[j];
		const needed = block.needed[j];
		const row = late[j];
		const mean = meanOf(duration, n);
		let squares = 0;
		let products = 0;
		for (let k = 0; k < n; k++) {
			const d = duration[k];
			squares += (d - mean) * (d - mean);
			products += (d - mean) * (total[k] - meanTotal);
			if (needed !== void 0 && needed[k] === 0) continue;
			if (pushed[k] === 1 && task.progress?.finished !== true) into.critical++;
			const slack = require_weeks.slackOf(placed, j, k, row);
			if (slack === Number.POSITIVE_INFINITY) continue;
			into.bounded++;
			into.slack += slack;
			if (d > 0) into.weighed += d / (d + slack) * total[k];
		}
		into.squares += squares + (mean - into.mean) ** 2 * weight;
		into.products += products + (mean - into.mean) * apart * weight;
		into.mean += (mean - into.mean) * n / (sums.n + n);
	});
	sums.squares += squaresOfTotal + apart * apart * weight;
	sums.mean += apart * n / (sums.n + n);
	sums.n += n;
}
function meanOf(row, n) {
	let sum = 0;
	for (let k = 0; k < n; k++) sum += row[k];
	return sum / n;
}
// ../../packages/core/src/explain/paths/indicesOf.ts
/**
* Criticality index; significance index, E[d / (d + slack) * T / E[T]] (Williams 1992, J. Operational Research Society
* 43, 353-357; recalled); cruciality, |correlation of d and T|; schedule sensitivity, criticality * sd(d) / sd(T)
* (Vanhoucke 2010, Measuring Time; definitions read in part). d: the task's realised duration, 0 where it is not
* needed; T: the plan's, working days of its calendar. A task without duration has significance 0; what divides by a
* spread of 0 is 0.
*/
function indicesOf(sums, task) {
	const { n } = sums;
	const criticality = task.critical / n;
	const certain = !(task.squares > 1e-18 * n) || !(sums.squares > 1e-18 * n);
	const ratio = certain ? 0 : Math.sqrt(task.squares / sums.squares);
	const correlation = certain ? 0 : task.products / Math.sqrt(task.squares * sums.squares);
	return {
		criticality,
		significance: sums.mean > 0 ? task.weighed / n / sums.mean : 0,
		cruciality: Math.min(1, Math.abs(correlation)),
		scheduleSensitivity: criticality * ratio,
		slack: task.bounded === 0 ? void 0 : task.slack / task.bounded
	};
}
// ../../packages/core/src/explain/paths/drivingPaths.ts
/** Paths listed. */
var shownPaths = 5;
/** Tasks whose days at stake are computed at most, those with the greatest schedule sensitivity. */
var stakeTasks = 12;
/** How often they must be critical. */
var stakeShare = .01;
/**
* Which chains of tasks set the finish, how often, and how much each task has to do with it: the five most frequent
* paths, the trade's indices of every unfinished task, and the days at stake on the twelve of the greatest schedule
* sensitivity (critical in at least one future of a hundred). The draws are the forecast's, and so is the criticality.
*
* Problems are values. Cost: about twice the time of `simulate`, plus a re-run of what can move with each of the twelve;
* memory 8 bytes * n for each of them and a text for each different path.
*/
function drivingPaths(plan, options = {}) {
	return require_contingencyLeft.explaining(plan, options, ({ model, asWritten, draw }) => ({
		paths: pathsOf(model, asWritten, draw, options),
		problems: []
	}));
}
function pathsOf(model, asWritten, draw, options) {
	const n = draw.iterations;
	let done = 0;
	const progress = (iterations) => {
		done += iterations;
		options.onProgress?.(done, 2 * n);
	};
	const confidence = options.confidence ?? model.confidence;
	const counts = /* @__PURE__ */ new Map();
	const sums = newIndexSums(model.tasks.length);
	const finish = new Float64Array(n);
	const finishDay = new Int32Array(n);
	let late;
	eachBlock(model, draw, asWritten.starts, (block, first) => {
		require_engine.markMoving(model, block, model.limitedPeople);
		const placed = require_weeks.placedOf(model, block, asWritten.starts);
		late ??= model.tasks.map(() => new Float64Array(block.n));
		require_weeks.fillLateRows(placed, late);
		countPaths(placed, counts);
		addToIndexSums(sums, placed, late);
		finish.set(block.planFinish.subarray(0, block.n), first);
		finishDay.set(block.planFinishDay.subarray(0, block.n), first);
		progress(block.n);
	});
	const tasks = indexed(model, sums);
	const at = new Map(model.tasks.map((task, j) => [task.id, j]));
	const near = tasks.filter((task) => task.criticality >= stakeShare && task.scheduleSensitivity > 0).sort((a, b) => b.scheduleSensitivity - a.scheduleSensitivity || (a.id < b.id ? -1 : 1)).slice(0, stakeTasks);
	const stakes = daysAtStake(model, draw, asWritten.starts, near.map(({ id }) => at.get(id)), asWritten.block.duration.map((row) => row[0]), confidence, progress);
	near.forEach((task, i) => {
		task.daysAtStake = stakes[i];
	});
	const rank = require_engine.rankOf(confidence, n) - 1;
	const day = finish.sort()[rank];
	return {
		stamp: require_stampOf.stampOf(model, draw),
		plan: {
			title: model.plan.title,
			currency: model.plan.currency,
			start: model.plan.start
		},
		confidence,
		committed: {
			date: require_engine.isoDate(model.startDay + finishDay.sort()[rank]),
			day,
			workingDays: require_engine.workAt(model.planCalendar, day)
		},
		paths: mostFrequent(counts, shownPaths).map((path) => named(model, path, n)),
		different: counts.size,
		tasks
	};
}
/** Unfinished tasks with their indices, most often critical first, then by id. */
function indexed(model, sums) {
	return model.tasks.flatMap((task, j) => {
		if (task.progress?.finished === true) return [];
		const { slack, ...indices } = indicesOf(sums, sums.tasks[j]);
		return [{
			id: task.id,
			name: task.name,
			...indices,
			...slack === void 0 ? {} : { slack }
		}];
	}).sort((a, b) => b.criticality - a.criticality || (a.id < b.id ? -1 : 1));
}
function named(model, { tasks, ways, count }, n) {
	return {
		tasks: tasks.map((j) => model.tasks[j]?.id ?? ""),
		names: tasks.map((j) => model.tasks[j]?.name ?? ""),
		ways: ways.map((way) => wayJson(model, way)),
		share: count / n
	};
}
// ../../packages/core/src/explain/people/absentProblems.ts
/** What is wrong with a wanted absence, all of it; places are named as options of the command. */
function absentProblems(plan, absent) {
	if (absent === void 0) return [];
	const problems = [];
	const say = (path, received, rule, remedy) => problems.push({
		code: "absence",
		severity: "error",
		path,
		received,
		rule,
		remedy
	});
	const ids = plan.people.map(({ id }) => id).sort();
	if ("person" in absent && !ids.includes(absent.person)) {
		const near = require_program.nearest$1(absent.person, ids);
		const remedy = ids.length === 0 ? "This plan names no people." : near === void 0 ? `Name one of: ${ids.join(", ")}.` : `Did you mean ${near}?`;
		say("--lose", `\`${absent.person}\``, "There is nobody of that id in the plan.", remedy);
	}
	if (!(absent.days >= 1 && absent.days <= 366 && Number.isInteger(absent.days))) say("--days", String(absent.days), "It must be a whole number of working days from 1 to 366.", "Write e.g. 10.");
	const part = absent.part ?? 1;
	if (!(part > 0 && part <= 1)) say("--part", String(part), "It must be above 0 and at most 1.", "Write 1 for all of the capacity.");
	if (absent.from !== void 0 && !require_dates.isCalendarDate(absent.from)) say("--from", absent.from, "That is not a date.", "Write it as 2027-03-01.");
	else if (absent.from !== void 0) {
		const start = require_engine.dayNumber(plan.start);
		const first = plan.statusDate === void 0 ? start : Math.max(start, require_engine.dayNumber(plan.statusDate) + 1);
		const reason = plan.statusDate === void 0 ? `the plan starts on ${plan.start}` : `${plan.statusDate} is past`;
		if (require_engine.dayNumber(absent.from) < first) say("--from", absent.from, `It must not lie before the plan: ${reason}.`, "Give a later date.");
		if (require_engine.dayNumber(absent.from) > start + 36e3) say("--from", absent.from, "No plan reaches that far.", "Give an earlier date.");
	}
	return problems;
}
// ../../packages/core/src/explain/people/whenMostNeeded.ts
/**
* The day from which on a person is needed most for a number of days present: where the share held by tasks that
* cannot go on without them, averaged over the futures and summed over those days, is greatest; the first of equals. A
* person who only goes along is taken where most goes along; one who is not asked for, at `earliest`.
*
* @param own  The person's calendar, full absences left out.
*
* Cost: two steps a task and future, and one a day.
*/
function whenMostNeeded(assignments, rows, own, earliest, days) {
	const open = assignments.filter(({ task }) => task.progress?.finished !== true);
	const firm = open.filter(({ along }) => !along);
	const held = heldByDay(firm.length > 0 ? firm : open, rows);
	const present = [];
	for (let day = earliest; day < held.length + 7 * days && day + 1 < own.cum.length; day++) if (require_weeks.works(own, day)) present.push(day);
	let best = earliest;
	let most = 0;
	let sum = 0;
	present.forEach((day, i) => {
		sum += held[day] ?? 0;
		const first = i - days + 1;
		if (first > 0) sum -= held[present[first - 1]] ?? 0;
		if (first < 0 || sum <= most + 1e-9 * Math.max(1, most)) return;
		most = sum;
		best = present[first];
	});
	return best;
}
/** Sum over the futures of the share held on each day since the start. */
function heldByDay(assignments, rows) {
	let last = 0;
	for (const { at } of assignments) for (const finish of rows.finish[at] ?? []) last = Math.max(last, finish);
	const change = new Float64Array(Math.ceil(last) + 2);
	for (const { at, share } of assignments) {
		const starts = rows.start[at];
		const finishes = rows.finish[at];
		for (let k = 0; k < starts.length; k++) {
			const from = Math.floor(starts[k] + require_engine.tolerance);
			const to = Math.ceil(finishes[k] - require_engine.tolerance);
			if (to <= from) continue;
			change[from] = change[from] + share;
			change[to] = change[to] - share;
		}
	}
	let held = 0;
	return change.map((step) => {
		held += step;
		return held;
	});
}
// ../../packages/core/src/explain/people/losePerson.ts
/** Rows of a run, read at the committed level. */
function baseOf(model, rows, confidence) {
	return {
		standing: require_standings.standingAt(model, rows, confidence),
		kept: keptBy(model, rows)
	};
}
/**
* What it does to the committed level when a person is away: the plan with that absence added, on the same draws.
* People who go `along` do not hold a task up: it goes on without them.
*
* @param rows  Moments of the person's tasks in the futures: without a date, the absence falls where they are needed most.
*
* The person has to be in the plan. Throws BeyondCalendarError when a task then runs past what calendars cover.
* Cost: one compilation and one run of the model.
*/
function losePerson(model, asWritten, before, draw, confidence, absent, rows) {
	const { plan } = model;
	const at = model.people.findIndex(({ id }) => id === absent.person);
	const person = model.people[at];
	const tasks = require_weeks.assignmentsOf(model)[at] ?? [];
	const spans = tasks.filter(({ task }) => task.progress?.finished !== true).map(({ at: j, task, along }) => ({
		id: task.id,
		along,
		start: asWritten.block.start[j]?.[0] ?? 0,
		finish: asWritten.block.finish[j]?.[0] ?? 0
	})).filter(({ start, finish }) => finish - start > require_engine.tolerance);
	const own = ownCalendar(plan, absent.person);
	const earliest = model.statusDay === void 0 ? 0 : model.statusDay + 1;
	const from = absent.from === void 0 ? whenMostNeeded(tasks, rows, own, earliest, absent.days) : require_engine.dayNumber(absent.from) - model.startDay;
	const days = daysAway(own, from, absent.days);
	const [first = from, last = first] = [days[0], days[days.length - 1]];
	const part = absent.part ?? 1;
	const away = {
		from: require_engine.isoDate(model.startDay + first),
		to: require_engine.isoDate(model.startDay + last),
		share: part
	};
	const without = require_engine.compile({
		...plan,
		people: plan.people.map((each) => each.id === absent.person ? {
			...each,
			away: [...each.away, away]
		} : each)
	});
	const { beyond } = require_engine.planAsWritten(without);
	if (beyond >= 0) throw new require_stage.BeyondCalendarError(require_engine.beyondCalendar(without, beyond));
	const [after] = require_variants.runVariants(draw, [{ model: without }], (outcome) => baseOf(model, outcome, confidence));
	if (after === void 0) throw new Error("one variant, one outcome");
	const meets = spans.filter(({ start, finish }) => start < last + 1 - 1e-9 && finish > first + 1e-9);
	const { finishBy, budget } = {
		finishBy: model.finishByDay,
		budget: model.budget
	};
	return {
		person: {
			id: person.id,
			name: person.name
		},
		days: days.length,
		from: away.from,
		to: away.to,
		part,
		before: before.standing,
		after: after.standing,
		effect: {
			workingDays: after.standing.workingDays - before.standing.workingDays,
			money: after.standing.cost - before.standing.cost
		},
		chance: {
			...finishBy === void 0 ? {} : { finishBy: [before.kept.finish, after.kept.finish] },
			...budget === void 0 ? {} : { budget: [before.kept.cost, after.kept.cost] },
			...finishBy === void 0 || budget === void 0 ? {} : { both: [before.kept.both, after.kept.both] }
		},
		stopped: meets.filter(({ along }) => !along).map(({ id }) => id),
		goOn: meets.filter(({ along }) => along).map(({ id }) => id)
	};
}
/** The calendar of a person, full absences left out. */
function ownCalendar(plan, id) {
	const calendar = plan.people.find((person) => person.id === id)?.calendar ?? plan.calendar;
	return require_engine.compileCalendars(plan).shared(calendar, [id]);
}
/** The first `count` days from `from` on that the calendar works; fewer where it ends. */
function daysAway(own, from, count) {
	const days = [];
	for (let day = from; days.length < count && day + 1 < own.cum.length; day++) if (require_weeks.works(own, day)) days.push(day);
	return days;
}
function keptBy(model, { finishDay, cost }) {
	const { finishByDay = Number.POSITIVE_INFINITY, budget } = model;
	return jointChance(finishDay, cost, finishByDay, budget === void 0 ? Number.POSITIVE_INFINITY : budget + require_engine.tolerance * Math.max(1, Math.abs(budget)));
}
// ../../packages/core/src/explain/people/overload.ts
/**
* The first moment in [s, f) at which `hold` asks for more than its person has left, and when something held there
* ends; undefined where it fits from s to f. Capacity is what `simulate` limits: a partial absence takes its part,
* except from those who go along.
*/
function overloadAt(model, block, hold, held, k, s, f) {
	const person = model.people[hold.person];
	const inside = [];
	for (const { task, share } of held) {
		const from = block.start[task][k];
		const to = block.finish[task][k];
		if (from < f - 1e-9 && to > s + 1e-9 && to - from > 1e-9) inside.push({
			from,
			to,
			share,
			behind: task
		});
	}
	if (!hold.along) {
		for (const { from, to, gone } of person.partial) if (from < f - 1e-9 && to > s + 1e-9) inside.push({
			from,
			to,
			share: gone,
			behind: -1
		});
	}
	const room = person.capacity - hold.share + require_engine.tolerance;
	const moments = [s, ...inside.map(({ from }) => from).filter((from) => from > s)].sort((a, b) => a - b);
	for (const x of moments) {
		let sum = 0;
		let first;
		for (const each of inside) {
			if (each.from > x + 1e-9 || each.to <= x + 1e-9) continue;
			sum += each.share;
			if (first === void 0 || each.to < first.to) first = each;
		}
		if (sum > room && first !== void 0) return {
			end: first.to,
			behind: first.behind
		};
	}
}
// ../../packages/core/src/explain/people/waits.ts
/**
* Finds every wait for a person in a block whose tasks have been placed with people limited. A task's start is what
* its links and dates allow, the others standing where they stand, moved on over one overload after the other to where
* it was placed; each move is a wait for the task whose end made room. So the waits of a task add up to what it lost,
* in working days of the plan's calendar.
*
* A wait is not the same as days at the finish: a task off the driving path may wait at no cost.
*
* @param spare  A row for a start and one for a finish, in the block's kernel.
*
* Returns nothing. Cost: one placing of each task with people, and for each wait the tasks its person holds.
*/
function findWaits(model, block, hold, spare, onWait) {
	const held = model.people.map(() => []);
	for (const j of model.order) {
		const task = model.tasks[j];
		if (task.progress === void 0 && task.holds.length > 0) {
			const [start, finish] = spare;
			const alone = {
				...block,
				start: [...block.start],
				finish: [...block.finish]
			};
			alone.start[j] = start;
			alone.finish[j] = finish;
			const only = new Uint8Array(model.tasks.length);
			only[j] = 1;
			require_engine.place(model, alone, hold, void 0, only);
			const placed = block.start[j];
			const duration = block.duration[j];
			for (let k = 0; k < block.n; k++) {
				if (placed[k] - start[k] <= 1e-9) continue;
				follow(model, block, j, held, k, [start, finish], duration[k], onWait);
			}
		}
		if (task.progress?.finished === true) continue;
		for (const { person, share } of task.holds) held[person]?.push({
			task: j,
			share
		});
	}
}
/** Moves one task in one iteration from where it could start to where everybody is free. */
function follow(model, block, j, held, k, [start, finish], d, onWait) {
	const task = model.tasks[j];
	const { calendar } = task;
	const placed = block.start[j][k];
	for (let h = 0; h < task.holds.length;) {
		const hold = task.holds[h];
		const s = start[k];
		const found = overloadAt(model, block, hold, held[hold.person] ?? [], k, s, finish[k]);
		if (found === void 0) {
			h += 1;
			continue;
		}
		const next = Math.min(placed, require_engine.nextWork(calendar, found.end));
		if (next - s <= 1e-9) break;
		start[k] = next;
		finish[k] = require_engine.finishMoment(calendar, require_engine.workAt(calendar, next) + d);
		if (task.unbroken !== void 0) require_engine.keepWhole(calendar, task.unbroken, start, finish, k, d);
		const lost = require_engine.workAt(model.planCalendar, start[k]) - require_engine.workAt(model.planCalendar, s);
		onWait(j, hold.person, found.behind, k, lost);
		h = 0;
	}
}
// ../../packages/core/src/explain/people/peopleRun.ts
/**
* Places the tasks of every iteration and keeps the moments of those in `keep`; with limited people also tells of every
* wait, `k` counting over all iterations.
*
* Returns the rows, or the task that runs past what calendars cover. Memory: 16 bytes * n per task kept.
*/
function peopleRun(model, draw, asWritten, keep, onWait, onProgress) {
	const n = draw.iterations;
	const size = Math.min(n, require_engine.blockSize);
	const kernel = require_engine.kernelFor(model, size, 2);
	const block = require_engine.newBlock(model, size, kernel);
	const spare = kernel.arena.rows(2, size);
	const source = require_engine.draws(model, draw.seed, draw.design);
	const row = (j) => keep.has(j) ? new Float64Array(n) : void 0;
	const rows = {
		start: model.tasks.map((_, j) => row(j)),
		finish: model.tasks.map((_, j) => row(j))
	};
	for (let first = 0, b = 0; first < n; first += require_engine.blockSize, b++) {
		block.n = Math.min(require_engine.blockSize, n - first);
		source.fill(b, block);
		require_engine.realise(model, block);
		const capacity = model.limitedPeople ? require_engine.newCapacity(model) : void 0;
		const beyond = require_engine.place(model, block, asWritten.starts, capacity);
		if (beyond >= 0) return { problem: require_engine.beyondCalendar(model, beyond) };
		for (const j of keep) {
			rows.start[j]?.set(block.start[j].subarray(0, block.n), first);
			rows.finish[j]?.set(block.finish[j].subarray(0, block.n), first);
		}
		if (model.limitedPeople) findWaits(model, block, asWritten.starts, spare, (task, person, behind, k, days) => onWait(task, person, behind, first + k, days));
		onProgress?.(first + block.n, n);
	}
	return { rows };
}
// ../../packages/core/src/explain/people/workByWeek.ts
/**
* Adds a task's person-days to a table of weeks by iterations: `table[(w - from) * n + k]` for the weeks from `from` up
* to `to` (not included). A week gets the share times what the task's calendar works in it between start and finish,
* so the weeks of an iteration add up to share times duration. Cost: a few steps a week the task lies in.
*/
function addWork(table, n, { calendar, share, start, finish }, weeks, from, to) {
	const ends = Float64Array.from({ length: to - from }, (_, w) => require_engine.workAt(calendar, Math.max(0, weeks.begins(from + w + 1))));
	const before = require_engine.workAt(calendar, Math.max(0, weeks.begins(from)));
	for (let k = 0; k < n; k++) {
		const s = start[k];
		const f = finish[k];
		if (f - s <= 1e-9) continue;
		const first = Math.max(from, weeks.of(s));
		const last = Math.min(to - 1, weeks.of(f));
		const whole = require_engine.workAt(calendar, f);
		let done = Math.max(require_engine.workAt(calendar, s), before);
		for (let w = first; w <= last; w++) {
			const until = Math.min(whole, ends[w - from]);
			if (until <= done) continue;
			const at = (w - from) * n + k;
			table[at] = table[at] + share * (until - done);
			done = until;
		}
	}
}
// ../../packages/core/src/explain/people/personLoads.ts
/** Rows of a week by iterations kept at once. */
var tableBytes = 32e6;
/**
* The load of each person by week: in the plan as written, in the same plan with nobody waiting for people, and over
* the futures.
*
* @param free  The plan as written with people without limits.
* @param count  Weeks from the one that holds the start.
*
* Cost: a few steps for each week a task lies in, task by task over the iterations; then a selection a week.
*/
function personLoads(model, assignments, asWritten, free, rows, iterations, weeks, count) {
	const calendars = require_engine.compileCalendars(model.plan);
	const people = new Map(model.plan.people.map((person) => [person.id, person]));
	const select = require_engine.rankSelector(iterations);
	const atOnce = Math.max(1, Math.floor(tableBytes / (8 * iterations)));
	const table = new Float64Array(Math.min(count, atOnce) * iterations);
	return model.people.map((person, p) => {
		const tasks = assignments[p] ?? [];
		const source = people.get(person.id);
		const own = calendars.shared(source.calendar, [person.id]);
		const written = loadIn(asWritten, person, own, tasks, weeks, count);
		const unlimited = loadIn(free, person, own, tasks, weeks, count);
		return {
			id: person.id,
			name: person.name,
			...source.role === void 0 ? {} : { role: source.role },
			capacity: person.capacity,
			tasks: tasks.map(({ task }) => task.id),
			asked: written.asked,
			present: require_weeks.presentByWeek(person, own, weeks, count),
			over: written.over,
			away: written.away,
			unlimited: {
				asked: unlimited.asked,
				over: unlimited.over
			},
			...overFutures(tasks, rows, iterations, weeks, count, table, select)
		};
	});
}
function loadIn(plan, person, own, tasks, weeks, count) {
	const asked = new Float64Array(count);
	const spans = [];
	for (const { at, task, share } of tasks) {
		const start = plan.block.start[at];
		const finish = plan.block.finish[at];
		addWork(asked, 1, {
			calendar: task.calendar,
			share,
			start,
			finish
		}, weeks, 0, count);
		spans.push({
			start: start[0],
			finish: finish[0],
			calendar: task.calendar,
			share
		});
	}
	const { over, away } = require_weeks.loadBeyond(person, own, spans, weeks, count);
	return {
		asked: [...asked],
		over: [...over],
		away: [...away]
	};
}
function overFutures(tasks, rows, n, weeks, count, table, select) {
	const mean = [];
	const p80 = [];
	const atOnce = table.length / n;
	for (let from = 0; from < count; from += atOnce) {
		const to = Math.min(count, from + atOnce);
		table.fill(0);
		for (const { at, task, share } of tasks) {
			const start = rows.start[at];
			const finish = rows.finish[at];
			addWork(table, n, {
				calendar: task.calendar,
				share,
				start,
				finish
			}, weeks, from, to);
		}
		for (let w = 0; w < to - from; w++) {
			const loads = table.subarray(w * n, (w + 1) * n);
			let sum = 0;
			for (let k = 0; k < n; k++) sum += loads[k];
			mean.push(sum / n);
			p80.push(loadAtRank(loads, require_engine.rankOf(.8, n), select));
		}
	}
	return {
		mean,
		p80
	};
}
/**
* The load at a rank. Most weeks ask for nothing or for whole days of everything in nearly all futures: those are
* counted, which is many times faster than selecting among values that are all alike.
*/
function loadAtRank(loads, rank, select) {
	let most = 0;
	let none = 0;
	for (const load of loads) {
		if (load === 0) none++;
		if (load > most) most = load;
	}
	if (none >= rank) return 0;
	let less = 0;
	for (const load of loads) if (load < most - 1e-9) less++;
	return less < rank ? most : select(loads, [rank])[0];
}
// ../../packages/core/src/explain/people/waitList.ts
/** Adds up waits by task, person and the task in the way. */
function waitList(model) {
	const all = /* @__PURE__ */ new Map();
	const tallyOf = (task, person, behind) => {
		const key = (task * model.people.length + person) * (model.tasks.length + 1) + behind + 1;
		const known = all.get(key);
		if (known !== void 0) return known;
		const made = {
			task,
			person,
			behind,
			asWritten: 0,
			sum: 0,
			futures: 0,
			last: -1
		};
		all.set(key, made);
		return made;
	};
	const named = ({ id, name }) => ({
		id,
		name
	});
	return {
		asWritten(task, person, behind, _k, days) {
			tallyOf(task, person, behind).asWritten += days;
		},
		inFuture(task, person, behind, k, days) {
			const tally = tallyOf(task, person, behind);
			tally.sum += days;
			if (tally.last === k) return;
			tally.last = k;
			tally.futures += 1;
		},
		list: (iterations) => [...all.values()].sort((a, b) => b.sum - a.sum || b.asWritten - a.asWritten || a.task - b.task || a.person - b.person || a.behind - b.behind).map((tally) => {
			const behind = model.tasks[tally.behind];
			return {
				task: named(model.tasks[tally.task]),
				person: named(model.people[tally.person]),
				...behind === void 0 ? {} : { behind: named(behind) },
				asWritten: tally.asWritten,
				mean: tally.sum / iterations,
				share: tally.futures / iterations
			};
		})
	};
}
// ../../packages/core/src/explain/people/peopleLoad.ts
/**
* Load against capacity, week by week and person by person; who waits for whom; what limited people cost; and, on
* request, what it does when somebody is away. All on the forecast's draws.
*
* Problems are values; somebody without whom a task could never be done is told of as a warning by `loseEach`, and
* left out of its list. Cost: three runs of the model without criticality, another for each person lost; memory 16 bytes * n per
* task that names people.
*/
function peopleLoad(plan, options = {}) {
	const unfit = [...absentProblems(plan, options.lose), ...absentProblems(plan, options.loseEach)];
	const explain = ({ model, asWritten, draw }) => loadOf(model, asWritten, draw, options.confidence ?? model.confidence, options);
	return require_contingencyLeft.explaining(plan, options, explain, { unfit });
}
function loadOf(model, asWritten, draw, confidence, { lose, loseEach, onProgress }) {
	const { plan } = model;
	const assignments = require_weeks.assignmentsOf(model);
	const keep = new Set(assignments.flat().map(({ at }) => at));
	const waits = waitList(model);
	if (model.limitedPeople) waitsAsWritten(model, asWritten, waits.asWritten);
	const run = peopleRun(model, draw, asWritten, keep, waits.inFuture, onProgress);
	if ("problem" in run) return { problems: [run.problem] };
	const weeks = require_weeks.weeksFrom(model.startDay);
	const free = model.limitedPeople ? require_engine.planAsWritten({
		...model,
		limitedPeople: false
	}) : asWritten;
	const count = weeks.of(latest([asWritten, free], run.rows, keep)) + 1;
	const limits = limitsOf(model, draw, confidence);
	const problems = [];
	const lost = lossesOf({
		model,
		asWritten,
		draw,
		confidence,
		rows: run.rows
	}, lose, loseEach, problems);
	return {
		people: {
			stamp: require_stampOf.stampOf(model, draw),
			plan: {
				title: plan.title,
				currency: plan.currency,
				start: plan.start
			},
			respectCapacity: plan.respectCapacity,
			weeks: Array.from({ length: count }, (_, w) => weeks.monday(w)),
			people: personLoads(model, assignments, asWritten, free, run.rows, draw.iterations, weeks, count),
			waits: waits.list(draw.iterations),
			...limits === void 0 ? {} : { limits },
			...lost
		},
		problems
	};
}
function lossesOf({ model, asWritten, draw, confidence, rows }, lose, each, problems) {
	if (lose === void 0 && each === void 0) return {};
	const [base] = require_variants.runVariants(draw, [{ model }], (outcome) => baseOf(model, outcome, confidence));
	if (base === void 0) return {};
	const lossOf = (absent) => losePerson(model, asWritten, base, draw, confidence, absent, rows);
	const losses = model.people.flatMap(({ id }) => {
		if (each === void 0) return [];
		try {
			return [lossOf({
				...each,
				person: id
			})];
		} catch (error) {
			if (!(error instanceof require_stage.BeyondCalendarError)) throw error;
			problems.push({
				...error.problem,
				severity: "warning",
				received: `without \`${id}\``
			});
			return [];
		}
	});
	return {
		...lose === void 0 ? {} : { loss: lossOf(lose) },
		...each === void 0 ? {} : { losses: losses.sort(worstFirst) }
	};
}
function worstFirst(a, b) {
	return b.effect.workingDays - a.effect.workingDays || b.effect.money - a.effect.money || (a.person.id < b.person.id ? -1 : 1);
}
/** The waits of the plan as written, which its one iteration holds. */
function waitsAsWritten(model, { block }, onWait) {
	findWaits(model, block, void 0, [/* @__PURE__ */ new Float64Array(1), /* @__PURE__ */ new Float64Array(1)], onWait);
}
/** The last moment anybody is asked for, in the plan as written or any future. */
function latest(plans, rows, keep) {
	let most = 0;
	for (const j of keep) {
		for (const { block } of plans) most = Math.max(most, block.finish[j]?.[0] ?? 0);
		for (const finish of rows.finish[j] ?? []) if (finish > most) most = finish;
	}
	return most;
}
/**
* The committed level with people limited and without. A plan that does not respect capacity is limited for the
* comparison; undefined when a task then asks for more than there is of a person.
*/
function limitsOf(model, draw, confidence) {
	const { plan } = model;
	const capacities = new Map(plan.people.map(({ id, capacity }) => [id, capacity]));
	const tooMuch = plan.tasks.some((task) => task.people.some(({ id, share }) => share > (capacities.get(id) ?? 0) + 1e-9));
	if (!plan.respectCapacity && tooMuch) return void 0;
	const limited = plan.respectCapacity ? model : require_engine.compile({
		...plan,
		respectCapacity: true
	});
	const [kept, free] = require_variants.runVariants(draw, [{ model: limited }, {
		model: limited,
		settings: { people: false }
	}], (rows) => require_standings.standingAt(model, rows, confidence));
	if (kept === void 0 || free === void 0) return void 0;
	return {
		confidence,
		with: kept,
		without: free,
		effect: {
			workingDays: kept.workingDays - free.workingDays,
			money: kept.cost - free.cost
		}
	};
}
// ../../packages/core/src/explain/why/busyUntil.ts
/**
* Until when somebody task j names had no room for it, of the tasks placed before it: the last such end up to its
* start in iteration k. Where it made the task wait, that is what the task waited for. Tasks it follows anyhow, by a
* link from finish to start, are left to their links. Undefined: had room all along.
*
* @param h  Which of the task's holds.
*/
function busyUntil(placed, j, h, k) {
	const { model, block, sharers, position } = placed;
	const task = model.tasks[j];
	const hold = task.holds[h];
	const person = model.people[hold.person];
	const start = block.start[j][k];
	const d = block.duration[j][k];
	let found;
	const ends = (moment, from) => {
		if (moment > start + 1e-9 || moment <= (found?.moment ?? 0) + 1e-9) return;
		if (loadBefore(placed, j, hold, moment, k) + hold.share <= person.capacity + 1e-9) return;
		found = {
			kind: from < 0 ? "away" : "person",
			at: hold.person,
			from,
			moment,
			wait: 0,
			start: aloneStart(task, d, false, moment, false)
		};
	};
	for (const other of sharers[hold.person] ?? []) {
		if (other.position >= position[j]) break;
		const from = block.start[other.task][k];
		const to = block.finish[other.task][k];
		if (to - from > 1e-9 && !follows(task, other.task)) ends(to, other.task);
	}
	if (!hold.along) for (const { to } of person.partial) ends(to, -1);
	return found;
}
function follows(task, other) {
	return task.links.some(({ from, kind, lag }) => from === other && kind === "finish-to-start" && lag.slot < 0 && lag.value >= 0);
}
// ../../packages/core/src/explain/why/whyBounds.ts
/**
* Every bound on the start of task j in iteration k: links and dates, and for each limited person it names until when
* they had no room for it.
*/
function whyBounds(placed, j, k) {
	const { model, block } = placed;
	const task = model.tasks[j];
	const bounds = boundsOf(placed, j, k).filter(({ kind }) => kind !== "person" && kind !== "away");
	const d = block.duration[j][k];
	if (!model.limitedPeople || task.progress !== void 0 || d <= 1e-9) return bounds;
	task.holds.forEach((_, h) => {
		const busy = busyUntil(placed, j, h, k);
		if (busy !== void 0) bounds.push(busy);
	});
	return bounds;
}
/** What makes a bound the same one in every iteration: the link, the person, or the kind of date. */
function boundKey({ kind, at }) {
	return kind === "link" ? `link${at}` : kind === "person" || kind === "away" ? `person${at}` : kind;
}
// ../../packages/core/src/explain/why/boundShares.ts
/** Counts, over the iterations of a placed block, which bounds of task j set its start; ties count on each. */
function countBounds(placed, j, counts) {
	const { block } = placed;
	const starts = block.start[j];
	for (let k = 0; k < block.n; k++) for (const bound of whyBounds(placed, j, k)) {
		if (bound.start < starts[k] - 1e-9) continue;
		const key = boundKey(bound);
		let known = counts.get(key);
		if (known === void 0) {
			known = {
				count: 0,
				bound,
				behind: /* @__PURE__ */ new Map()
			};
			counts.set(key, known);
		}
		known.count++;
		if (bound.kind !== "person") continue;
		known.behind.set(bound.from, (known.behind.get(bound.from) ?? 0) + 1);
	}
}
// ../../packages/core/src/explain/why/why.ts
/**
* What holds the start of a task: in the plan as written, bound by bound (links with their lags, dates, people and what
* held them), which of them binds and by how many working days the others do not; and over the futures how often each
* of them did.
*
* Problems are values: an unknown id says which it may have meant. Cost: about one `simulate`.
*/
function why(plan, task, options = {}) {
	const unfit = plan.tasks.some(({ id }) => id === task) ? [] : [unknownTask(plan, task)];
	const explain = ({ model, asWritten, draw }) => {
		return {
			why: whyOf(model, asWritten, draw, model.tasks.findIndex(({ id }) => id === task), options.onProgress),
			problems: []
		};
	};
	return require_contingencyLeft.explaining(plan, options, explain, { unfit });
}
function unknownTask(plan, id) {
	const ids = plan.tasks.map((task) => task.id);
	const known = (wanted) => plan.tasks.find(wanted);
	const nearId = require_program.nearest$1(id, ids);
	const nearName = require_program.nearest$1(id, plan.tasks.map(({ name }) => name));
	const task = known((each) => each.id === nearId) ?? known((each) => each.name === nearName);
	const list = ids.slice(0, 6).join(", ");
	return {
		code: "unknown-task",
		severity: "error",
		path: "tasks",
		received: id,
		rule: "The plan has no task of that id.",
		remedy: task === void 0 ? `Its tasks: ${list}${ids.length > 6 ? ` and ${ids.length - 6} more` : ""}.` : `Did you mean ${task.id} (${task.name})?`
	};
}
function whyOf(model, asWritten, draw, j, onProgress) {
	const n = draw.iterations;
	const task = model.tasks[j];
	const counts = /* @__PURE__ */ new Map();
	const starts = new Float64Array(n);
	let points = 0;
	let critical = 0;
	eachBlock(model, draw, asWritten.starts, (block, first) => {
		require_engine.markMoving(model, block, model.limitedPeople);
		countBounds(require_weeks.placedOf(model, block, asWritten.starts), j, counts);
		starts.set(block.start[j].subarray(0, block.n), first);
		for (let k = 0; k < block.n; k++) {
			if (block.duration[j][k] <= 1e-9) points++;
			if (block.needed[j]?.[k] === 0 || task.progress?.finished === true) continue;
			if (block.pushed[j]?.[k] === 1) critical++;
		}
		onProgress?.(first + block.n, n);
	});
	starts.sort();
	const dateAt = (p) => {
		const day = require_engine.startDay(task, starts[require_engine.rankOf(p, n) - 1], points === n);
		return require_engine.isoDate(model.startDay + Math.max(0, day));
	};
	const written = require_weeks.placedOf(model, asWritten.block, void 0);
	const bounds = whyBounds(written, j, 0);
	const chain = pathTo(written, j, 0, true);
	return {
		stamp: require_stampOf.stampOf(model, draw),
		plan: {
			title: model.plan.title,
			currency: model.plan.currency,
			start: model.plan.start
		},
		task: named$1(task),
		asWritten: writtenOf(written, j),
		awayBefore: awayBefore(written, j, bounds),
		bounds: boundRows(written, j, bounds, counts, n),
		chain: chain.tasks.map((each, at) => ({
			task: named$1(model.tasks[each] ?? task),
			way: wayJson(model, chain.ways[at])
		})),
		futures: {
			startDates: {
				p10: dateAt(.1),
				p50: dateAt(.5),
				p90: dateAt(.9)
			},
			criticality: critical / n
		}
	};
}
function writtenOf(written, j) {
	const { model, block } = written;
	const task = model.tasks[j];
	const late = model.tasks.map(() => /* @__PURE__ */ new Float64Array(1));
	require_weeks.fillLateRows(written, late);
	const start = block.start[j]?.[0];
	const finish = block.finish[j]?.[0];
	const duration = block.duration[j]?.[0];
	const needed = block.needed[j]?.[0] !== 0;
	const point = duration <= require_engine.tolerance;
	const dateOf = (day) => require_engine.isoDate(model.startDay + Math.max(0, day));
	const slack = require_weeks.slackOf(written, j, 0, late[j]);
	const { progress } = task;
	return {
		state: progress === void 0 ? "ahead" : progress.finished ? "finished" : "started",
		needed,
		start,
		startDate: dateOf(require_engine.startDay(task, start, point)),
		finish,
		finishDate: dateOf(require_engine.finishDay(task, finish, point)),
		duration,
		critical: needed && task.progress?.finished !== true && block.pushed[j]?.[0] === 1,
		...slack === Number.POSITIVE_INFINITY ? {} : { slack }
	};
}
/** The bounds of the plan as written with their shares; then those that set the start in some future only. */
function boundRows(written, j, bounds, counts, n) {
	const { model } = written;
	const here = new Set(bounds.map(boundKey));
	const elsewhere = [...counts].flatMap(([key, { bound }]) => {
		if (here.has(key)) return [];
		return [bound.kind === "held-to-plan" ? bound : {
			...bound,
			from: -1,
			moment: 0,
			start: 0,
			wait: 0
		}];
	});
	return [...bounds, ...elsewhere].map((bound) => {
		const counted = counts.get(boundKey(bound));
		const behind = [...counted?.behind ?? []].sort(([a, x], [b, y]) => y - x || a - b).map(([task, count]) => ({
			task: named$1(model.tasks[task]),
			share: count / n
		}));
		return {
			...boundJson(written, j, 0, bound),
			...bound.kind === "held-to-plan" ? { binds: false } : {},
			share: (counted?.count ?? 0) / n,
			...behind.length === 0 ? {} : { behind }
		};
	}).sort((a, b) => a.slack - b.slack || b.share - a.share);
}
/** Working days on which its calendar works, its people do not, between what binds and its start. */
function awayBefore({ model, block }, j, bounds) {
	const task = model.tasks[j];
	const start = block.start[j]?.[0];
	if (task.progress !== void 0 || block.duration[j]?.[0] <= 1e-9) return 0;
	let least = Number.POSITIVE_INFINITY;
	for (const bound of bounds) {
		if (bound.start < start - 1e-9) continue;
		const kind = bound.kind === "link" ? task.links[bound.at]?.kind : void 0;
		if (kind === "finish-to-finish" || kind === "start-to-finish") return 0;
		const held = bound.wait > 0 ? require_engine.addWork(task.ownCalendar, bound.moment, bound.wait) : bound.moment;
		const own = require_engine.nextWork(task.ownCalendar, held);
		least = Math.min(least, require_engine.workAt(task.ownCalendar, start) - require_engine.workAt(task.ownCalendar, own));
	}
	return Number.isFinite(least) ? Math.max(0, least) : 0;
}
// src/compute/answers.ts
var ways = {
	confidence: whyConfidence,
	assumptions: assumptionBars,
	tested: testAssumptions,
	money: budget,
	people: peopleLoad,
	paths: drivingPaths,
	future: (plan, { which, ...options }) => future(plan, which, options),
	why: (plan, { task, ...options }) => why(plan, task, options)
};
/** Answers a question here and now. */
function answer(question, onProgress) {
	return ways[question.kind](question.plan, {
		...question.options,
		onProgress
	});
}
// src/compute/answerAside.ts
var answerAside_exports = /* @__PURE__ */ require_rolldown_runtime.__exportAll({ answerInThread: () => answerInThread });
/** Tasks times futures from which on a thread pays: below, the answer is there before anybody could stop it. */
var LARGE = 3e6;
/** The built command is its own thread's program. */
var program = new URL("./leeway.mjs", require("url").pathToFileURL(__filename).href);
/**
* Answers a question; a large one on a thread of its own, so that a signal is heard meanwhile. The figures are the same
* either way. Where no thread can be had, here.
*/
function answerAside(question, onProgress) {
	const { plan, options } = question;
	if (Math.max(1, plan.tasks.length) * (options.iterations ?? plan.iterations) < LARGE) return Promise.resolve(answer(question, onProgress));
	return new Promise((resolve, reject) => {
		const thread = new node_worker_threads.Worker(program, { workerData: question });
		let heard = false;
		thread.on("message", (said) => {
			heard = true;
			if (said.kind === "progress") onProgress(said.done, said.total);
			else resolve(said.answer);
		});
		thread.on("error", (error) => {
			if (heard) reject(error);
			else resolve(answer(question, onProgress));
		});
	});
}
/** What the thread does: it answers the question it was started with. */
function answerInThread() {
	const question = node_worker_threads.workerData;
	const post = (said) => node_worker_threads.parentPort?.postMessage(said);
	post({
		kind: "progress",
		done: 0,
		total: 1
	});
	post({
		kind: "answer",
		answer: answer(question, (done, total) => post({
			kind: "progress",
			done,
			total
		}))
	});
}
Object.defineProperty(exports, "answerAside", {
	enumerable: true,
	get: function() {
		return answerAside;
	}
});
Object.defineProperty(exports, "answerAside_exports", {
	enumerable: true,
	get: function() {
		return answerAside_exports;
	}
});
