const require_scenarios = require("./scenarios-C-RVibDE.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_stampOf = require("./stampOf-B221aSYW.cjs");
const require_drawOf = require("./drawOf-BStyrWxm.cjs");
const require_stage = require("./stage-kNi0qcSu.cjs");
const require_node = require("./node-6FCbc_om.cjs");
// ../../packages/core/src/explain/responses/objective.ts
/** What counts of a gauge, the most important first; in each, less is better. */
function scoreOf(gauge, objective) {
	switch (objective) {
		case "date": return [gauge.day, require_scenarios.meanBurden(gauge)];
		case "chance": return [-gauge.onTime, require_scenarios.meanBurden(gauge)];
		case "worth": return [require_scenarios.meanBurden(gauge), gauge.day];
	}
}
/**
* A figure that falls with every little improvement, to find a way by: percentiles and chances stand still on
* plateaus where two parallel paths have to be helped together.
*/
function slopeOf(gauge, objective) {
	return objective === "worth" ? require_scenarios.meanBurden(gauge) : gauge.meanDay;
}
/** Whether score a is better than b: in the first figure in which they differ by more than rounding. */
function isBetter(a, b) {
	for (let k = 0; k < a.length; k++) {
		const [x, y] = [a[k], b[k]];
		if (Math.abs(x - y) > 1e-9 * Math.max(1, Math.abs(x), Math.abs(y))) return x < y;
	}
	return false;
}
// ../../packages/core/src/explain/responses/sets.ts
/** The set of one switch. */
function only(i) {
	return 1n << BigInt(i);
}
function has(set, i) {
	return (set >> BigInt(i) & 1n) === 1n;
}
/** Which of these switches are in the set. */
function membersOf(set, among) {
	return among.filter((i) => has(set, i));
}
/** What the switches of the set cost together, added up in their order. */
function costOf(set, costs) {
	return costs.reduce((sum, cost, i) => has(set, i) ? sum + cost : sum, 0);
}
/** Whether a cost is within a sum; equal within the tolerance of money. */
function within(cost, sum) {
	return cost <= sum + 1e-9 * Math.max(1, Math.abs(sum));
}
/**
* Every subset of these switches that costs at most `sum`, the empty one first; undefined when there are more than
* `most`. Costs are not negative, so what is too dear stays too dear with more in it.
*/
function affordableSubsets(among, costs, sum, most) {
	let sets = [0n];
	for (const i of among) {
		const more = sets.map((set) => set | only(i)).filter((set) => within(costOf(set, costs), sum));
		sets = [...sets, ...more];
		if (sets.length > most) return void 0;
	}
	return sets;
}
// ../../packages/core/src/explain/responses/greedyExchange.ts
/** Rounds of exchange after which it is left at that. */
var mostRounds = 20;
/**
* Sets worth judging, where not every set can be tried: up from nothing, each time what gains most for its money;
* down from everything affordable one by one, each time giving up what gains least for its money; the better of the
* two with members added, left out and exchanged one for one as long as that helps; and every single switch.
*
* Going down finds what going up cannot: responses that only help together, on paths that meet.
*
* Cost: about (free switches)^2 sets.
*/
function* greedyExchange(question) {
	const { free } = question;
	const up = yield* upFromNothing$1(question);
	const down = yield* downFromAll(question);
	const exchanged = yield* exchange(question, better(question, down, up) ? down : up);
	return [
		0n,
		...free.map(only),
		up,
		down,
		exchanged
	];
}
function better({ gauges, stands, objective }, a, b) {
	return isBetter(scoreOf(gauges.of(stands | a), objective), scoreOf(gauges.of(stands | b), objective));
}
function* upFromNothing$1({ gauges, stands, free, costs, sum, objective }) {
	let set = 0n;
	for (;;) {
		const left = free.filter((i) => !has(set, i) && within(costOf(set | only(i), costs), sum));
		yield* gauges.need([set, ...left.map((i) => set | only(i))].map((one) => stands | one));
		const here = slopeOf(gauges.of(stands | set), objective);
		let best = -1;
		let most = 0;
		for (const i of left) {
			const rate = (here - slopeOf(gauges.of(stands | set | only(i)), objective)) / price(costs[i]);
			if (rate > most + 1e-12) [best, most] = [i, rate];
		}
		if (best < 0) return set;
		set |= only(best);
	}
}
function* downFromAll({ gauges, stands, free, costs, sum, objective }) {
	let set = free.reduce((all, i) => all | only(i), 0n);
	for (;;) {
		const members = free.filter((i) => has(set, i));
		yield* gauges.need([set, ...members.map((i) => set & ~only(i))].map((one) => stands | one));
		const here = slopeOf(gauges.of(stands | set), objective);
		let worst = -1;
		let least = Number.POSITIVE_INFINITY;
		for (const i of members) {
			const rate = (slopeOf(gauges.of(stands | set & ~only(i)), objective) - here) / price(costs[i]);
			if (rate < least) [worst, least] = [i, rate];
		}
		if (worst < 0 || within(costOf(set, costs), sum) && least > 0) return set;
		set &= ~only(worst);
	}
}
function* exchange(question, from) {
	const { gauges, stands, free, costs, sum } = question;
	let set = from;
	for (let round = 0; round < mostRounds; round++) {
		const inside = free.filter((i) => has(set, i));
		const outside = free.filter((i) => !has(set, i));
		const moves = [
			...outside.map((i) => set | only(i)),
			...inside.map((i) => set & ~only(i)),
			...inside.flatMap((i) => outside.map((o) => set & ~only(i) | only(o)))
		].filter((one) => within(costOf(one, costs), sum));
		yield* gauges.need(moves.map((one) => stands | one));
		let best = set;
		for (const one of moves) if (better(question, one, best)) best = one;
		if (best === set) return set;
		set = best;
	}
	return set;
}
/** What costs nothing comes before all that costs something. */
function price(cost) {
	return Math.max(cost ?? 0, 1e-6);
}
// ../../packages/core/src/explain/responses/bestSet.ts
/** Above this many sets not all are tried. */
var mostSets = 4096;
/** Iterations on which a way is looked for where not every set can be tried; what is found is judged on all. */
var fewIterations$1 = 1024;
var words = {
	date: "the earliest committed date",
	chance: "the best chance of the asked date",
	worth: "the most net worth"
};
/**
* Which free switches to turn on, at most `sum` of them in money, so that the objective is best; among equals that of
* most net worth, then the cheaper, then the smaller. All affordable sets are tried when there are at most 4,096
* (twelve switches make no more); otherwise `greedyExchange`, which is a search and not a proof. Its finds are
* compared, on all iterations, with every single affordable switch, so it is never worse than one of those.
*/
function* bestSet({ stands }, { sum, objective, free, costs }, gauges) {
	const payable = free.filter((i) => within(costs[i], sum));
	const every = affordableSubsets(payable, costs, sum, mostSets);
	const coarse = require_scenarios.newGauges(Math.min(gauges.n, fewIterations$1));
	const sets = every ?? (yield* greedyExchange({
		gauges: coarse,
		stands,
		free: payable,
		costs,
		sum,
		objective
	}));
	yield* gauges.need(sets.map((set) => stands | set), .9);
	let best = 0n;
	for (const set of sets) if (isBetter(rank(set), rank(best))) best = set;
	const tried = every === void 0 ? coarse.tried : sets.length;
	return {
		added: best,
		cost: costOf(best, costs),
		how: methodOf$1(every !== void 0, tried, objective)
	};
	function rank(set) {
		return [
			...scoreOf(gauges.of(stands | set), objective),
			costOf(set, costs),
			membersOf(set, payable).length
		];
	}
}
function methodOf$1(every, tried, objective) {
	const aim = `for ${words[objective]}`;
	return every ? {
		kind: "every-set",
		tried,
		text: `Every set of responses that the sum affords was tried ${aim}: ${tried} of them.`
	} : {
		kind: "greedy-exchange",
		tried,
		text: `Too many sets to try all ${aim}: responses were added by what they buy for their money, taken from all by what they buy least, then exchanged while it helped: ${tried} sets on the first ${fewIterations$1} futures, the best judged on all. A better set may exist.`
	};
}
/** Members without which, one at a time, the committed date stays the same and net worth does not fall. */
function* idleMembers({ stands }, added, free, gauges) {
	const members = membersOf(added, free);
	const without = (i) => stands | added & ~only(i);
	yield* gauges.need(members.map(without));
	const whole = gauges.of(stands | added);
	return members.filter((i) => {
		const less = gauges.of(without(i));
		return less.dateDay === whole.dateDay && !isBetter(scoreOf(whole, "worth").slice(0, 1), scoreOf(less, "worth").slice(0, 1));
	});
}
// ../../packages/core/src/explain/responses/effectOf.ts
/** What it changes to go from one set of decisions to another: with less without. */
function effectOf(without, set, targets, n) {
	const dated = targets.finishByDay !== void 0;
	const priced = targets.budget !== void 0;
	return {
		workingDays: set.workingDays - without.workingDays,
		money: set.cost - without.cost,
		...dated ? { finishBy: (set.onTime - without.onTime) / n } : {},
		...priced ? { budget: (set.inBudget - without.inBudget) / n } : {},
		...dated && priced ? { both: (set.both - without.both) / n } : {},
		...set.meanLateness === void 0 || without.meanLateness === void 0 ? {} : { latenessAvoided: without.meanLateness - set.meanLateness },
		netWorth: require_scenarios.meanBurden(without) - require_scenarios.meanBurden(set),
		netWorthError: errorOfDifference(without.burdens, set.burdens)
	};
}
/**
* Standard error of the difference of two means on the same draws, by batch means (Law, Simulation Modeling and
* Analysis, ch. 9, from memory): the spread of the differences of batches, over the root of their number. Batches of a
* Latin hypercube are less regular than the whole, so it is rather too large than too small.
*/
function errorOfDifference(a, b) {
	const count = a.length;
	if (count < 2) return 0;
	const differences = a.map((value, i) => value - b[i]);
	const mean = differences.reduce((sum, value) => sum + value, 0) / count;
	const squares = differences.reduce((sum, value) => sum + (value - mean) ** 2, 0);
	return Math.sqrt(squares / (count - 1) / count);
}
// ../../packages/core/src/explain/responses/responses.ts
/**
* What each response buys: the change of the committed date and sum, of the chances asked about, of lateness and of
* the mean cost; alone, and given what is adopted. With `sum`, the best set of responses for that much money.
*
* Everything runs on the forecast's own draws, so that differences are differences of the plans and not noise.
*
* Problems are values. Cost: two runs per response, each only of what it reaches; for the best set see `bestSet`.
*/
function responses(plan, options = {}) {
	const { decision, problems } = responsesDecision(plan, options);
	if (decision === void 0) return { problems };
	try {
		return {
			responses: require_scenarios.answered(decision.work, decision, options.onProgress),
			problems
		};
	} catch (error) {
		if (error instanceof require_stage.BeyondCalendarError) return { problems: [error.problem] };
		throw error;
	}
}
/** The question of `responses`, for whoever shares out its runs. */
function responsesDecision(source, options) {
	const { plan, problems: unknown } = require_applyScenario.applyScenario(source, options);
	const problems = [
		...require_drawOf.runProblems(options),
		...ownProblems(plan, options),
		...unknown
	];
	if (problems.length > 0) return { problems };
	const { list: all, notes } = require_scenarios.responseSwitches(plan);
	const left = new Set(options.without ?? []);
	const list = all.filter((one) => !left.has(one.id) && !(one.kind === "response" && left.has(one.entry.id)));
	const scenarios = require_scenarios.scenariosOf(plan, list);
	const standing = scenarios.model(scenarios.stands);
	const asWritten = require_engine.planAsWritten(standing);
	if (asWritten.beyond >= 0) return { problems: [require_engine.beyondCalendar(standing, asWritten.beyond)] };
	const { finishByDay, budget } = standing;
	const targets = {
		confidence: options.confidence ?? standing.confidence,
		...finishByDay === void 0 ? {} : { finishByDay },
		...budget === void 0 ? {} : { budget }
	};
	const gauging = {
		scenarios,
		draw: require_drawOf.drawOf(plan, options),
		targets
	};
	return {
		decision: {
			...gauging,
			plan,
			work: work$1(plan, gauging, standing, options, notes)
		},
		problems: []
	};
}
function* work$1(plan, gauging, standing, options, notes) {
	const { scenarios, draw, targets } = gauging;
	const { stands, switches } = scenarios;
	const { finishBy, budget } = plan.commitment;
	const gauges = require_scenarios.newGauges(draw.iterations);
	yield* gauges.need([
		0n,
		stands,
		...switches.flatMap((_, i) => [only(i), stands ^ only(i)])
	], options.sum === void 0 ? 1 : .2);
	const effect = (without, set) => effectOf(gauges.of(without), gauges.of(set), targets, gauges.n);
	const found = switches.map((one, i) => {
		const { response, entry } = one;
		return {
			id: one.id,
			action: one.name,
			entry: {
				id: entry.id,
				name: entry.name
			},
			adopted: response.adopted,
			cost: one.cost,
			alone: effect(0n, only(i)),
			given: effect(stands & ~only(i), stands | only(i))
		};
	});
	found.sort((a, b) => b.given.netWorth - a.given.netWorth || (a.id < b.id ? -1 : 1));
	const outlook = (set) => require_scenarios.outlookOf(gauges.of(set), standing, targets, gauges.n);
	const best = yield* bestOf(gauging, options, gauges);
	return {
		stamp: require_stampOf.stampOf(standing, draw),
		plan: {
			title: plan.title,
			currency: plan.currency,
			start: plan.start
		},
		confidence: targets.confidence,
		asked: {
			...finishBy === void 0 ? {} : { finishBy },
			...budget === void 0 ? {} : { budget }
		},
		none: outlook(0n),
		stands: outlook(stands),
		responses: found,
		...best === void 0 ? {} : { best },
		notes
	};
}
function* bestOf({ scenarios, targets }, { sum, objective = "date" }, gauges) {
	if (sum === void 0) return void 0;
	const { stands, switches, drawn } = scenarios;
	const free = switches.map((_, i) => i).filter((i) => !has(stands, i));
	const { added, cost, how } = yield* bestSet(scenarios, {
		sum,
		objective,
		free,
		costs: switches.map(({ cost }) => cost)
	}, gauges);
	const idle = yield* idleMembers(scenarios, added, free, gauges);
	const ids = (members) => members.map((i) => switches[i].id);
	return {
		sum,
		objective,
		ids: ids(free.filter((i) => has(added, i))),
		idle: ids(idle),
		cost,
		outlook: require_scenarios.outlookOf(gauges.of(stands | added), drawn, targets, gauges.n),
		effect: effectOf(gauges.of(stands), gauges.of(stands | added), targets, gauges.n),
		how
	};
}
var objectives = [
	"date",
	"chance",
	"worth"
];
function ownProblems(plan, { sum, objective }) {
	const problems = [];
	const report = (path, received, rule, remedy) => problems.push({
		code: "option-value",
		severity: "error",
		path,
		received: String(received),
		rule,
		remedy
	});
	if (sum !== void 0 && !(Number.isFinite(sum) && sum >= 0)) report("--sum", sum, "It must be money, 0 or more.", "Write a plain number, e.g. 10000.");
	if (objective === void 0) return problems;
	if (!objectives.includes(objective)) report("--aim", objective, "There is no such objective.", `Write one of: ${objectives.join(", ")}.`);
	else if (objective === "chance" && plan.commitment.finishBy === void 0) report("--aim", objective, "The plan asks for no date, so there is no chance of it.", "Add `finishBy` to the plan's `commitment`, or choose date or worth.");
	return problems;
}
// ../../packages/core/src/explain/reach/question.ts
/** Iterations that meet what is asked. */
function hitsOf(gauge, { finishByDay, budget }) {
	if (budget === void 0) return gauge.onTime;
	return finishByDay === void 0 ? gauge.inBudget : gauge.both;
}
/** Whether what is asked holds at the confidence: as a percentile would say, at its rank. */
function isReached(question, added) {
	const { gauges, targets } = question;
	return hitsIn(question, added) >= require_engine.rankOf(targets.confidence, gauges.n);
}
function hitsIn({ gauges, scenarios, targets }, added) {
	return hitsOf(gauges.of(scenarios.stands | added), targets);
}
/** How much scope a set drops, what it costs, how many steps it has. */
function burdenOf({ scenarios, costs, free }, added) {
	let [dropped, steps] = [0, 0];
	for (const i of free) {
		if (!has(added, i)) continue;
		steps++;
		if (scenarios.switches[i]?.kind === "scope") dropped++;
	}
	return [
		dropped,
		costOf(added, costs),
		steps
	];
}
// ../../packages/core/src/explain/reach/everySet.ts
/**
* Tries every combination. A way is preferred that drops less scope, then costs less, then has the better chance, then
* fewer steps; beside it stands the one that costs least whatever scope it drops, where that is another. Nothing is
* assumed of how options work together.
*/
function* everySet(question) {
	const { gauges, scenarios, free } = question;
	let sets = [0n];
	for (const i of free) sets = [...sets, ...sets.map((set) => set | only(i))];
	yield* gauges.need(sets.map((set) => scenarios.stands | set), .95);
	return pick(question, sets);
}
/** The preferred of these sets, however they were come by. */
function pick(question, sets) {
	let [way, cheap, best] = [
		void 0,
		void 0,
		void 0
	];
	const hits = (set) => -hitsIn(question, set);
	const preferred = (set) => {
		const [dropped, cost, steps] = burdenOf(question, set);
		return [
			dropped,
			cost,
			hits(set),
			steps
		];
	};
	const cheapest = (set) => {
		const [dropped, cost, steps] = burdenOf(question, set);
		return [
			cost,
			dropped,
			hits(set),
			steps
		];
	};
	const closest = (set) => [hits(set), ...burdenOf(question, set)];
	for (const set of sets) {
		if (best === void 0 || isBetter(closest(set), closest(best))) best = set;
		if (!isReached(question, set)) continue;
		if (way === void 0 || isBetter(preferred(set), preferred(way))) way = set;
		if (cheap === void 0 || isBetter(cheapest(set), cheapest(cheap))) cheap = set;
	}
	return {
		ways: [way, cheap].filter((set) => set !== void 0).filter((set, k, list) => list.indexOf(set) === k).filter((set, k) => k === 0 || isBetter([burdenOf(question, set)[1]], [burdenOf(question, way)[1]])),
		best: best ?? 0n
	};
}
/** Members of a set in the order in which each adds the most chance to those before it; among equals the cheaper. */
function* inOrderOfGain(question, set) {
	const { gauges, scenarios, free, costs } = question;
	const order = [];
	let taken = 0n;
	const left = membersOf(set, free);
	while (left.length > 0) {
		const next = left.map((i) => taken | only(i));
		yield* gauges.need(next.map((one) => scenarios.stands | one));
		let at = 0;
		for (let k = 1; k < left.length; k++) {
			const score = (of) => [-hitsIn(question, next[of]), costs[left[of]]];
			if (isBetter(score(k), score(at))) at = k;
		}
		const [i] = left.splice(at, 1);
		taken |= only(i);
		order.push(i);
	}
	return order;
}
/** A set without the members it does not need: the dearest that can go, goes first. */
function* withoutSuperfluous(question, set) {
	const { gauges, scenarios, free } = question;
	let needed = set;
	for (;;) {
		const less = membersOf(needed, free).map((i) => needed & ~only(i));
		yield* gauges.need(less.map((one) => scenarios.stands | one));
		const { ways } = pick(question, less.filter((one) => isReached(question, one)));
		const [next] = ways;
		if (next === void 0) return needed;
		needed = next;
	}
}
// ../../packages/core/src/explain/reach/greedySets.ts
/**
* Combinations worth judging, where there are too many to try them all: without dropping scope, then with it.
*
* Up from nothing, each time what buys the most chance for its money on the first futures (where nothing buys any:
* what lowers the mean), until all futures say that it is reached; and all options together. What reaches it is
* relieved of every step it does not need, the dearest first. A search, not a proof: a cheaper way may exist.
*
* @param few  The same question on fewer iterations.
*
* Cost: about (options)^2 sets, half of them on few iterations.
*/
function* greedySets(question, few) {
	const { free, scenarios, gauges } = question;
	const { stands } = scenarios;
	const paid = free.filter((i) => scenarios.switches[i]?.kind !== "scope");
	const rounds = paid.length === free.length ? [free] : [paid, free];
	const sets = [0n];
	for (const among of rounds) {
		const all = among.reduce((set, i) => set | only(i), 0n);
		const up = yield* upFromNothing(question, few, among);
		sets.push(...up, all);
		yield* gauges.need(sets.map((set) => stands | set));
		for (const set of [up.at(-1) ?? 0n, all]) if (isReached(question, set)) sets.push(yield* withoutSuperfluous(question, set));
	}
	yield* gauges.need(sets.map((set) => stands | set));
	return pick(question, sets);
}
/** The sets on the way, the last one reaching it if any does. */
function* upFromNothing(question, few, among) {
	const { scenarios, costs, gauges } = question;
	const way = [];
	let set = 0n;
	for (;;) {
		yield* gauges.need([scenarios.stands | set], .01);
		if (isReached(question, set)) break;
		const left = among.filter((i) => !has(set, i));
		yield* few.gauges.need([set, ...left.map((i) => set | only(i))].map((one) => scenarios.stands | one));
		const rate = (value) => {
			const here = value(set);
			let [best, most] = [-1, 0];
			for (const i of left) {
				const gain = (value(set | only(i)) - here) / Math.max(costs[i], 1e-6);
				if (gain > most + 1e-12) [best, most] = [i, gain];
			}
			return best;
		};
		let next = rate((added) => hitsIn(few, added));
		if (next < 0) next = rate((added) => -slope(few, added));
		if (next < 0) break;
		set |= only(next);
		way.push(set);
	}
	return way;
}
/** A mean that falls with every little improvement of what is asked. */
function slope({ gauges, scenarios, targets }, added) {
	const gauge = gauges.of(scenarios.stands | added);
	return targets.finishByDay === void 0 ? require_scenarios.meanBurden(gauge) : gauge.meanDay;
}
// ../../packages/core/src/explain/reach/targetOf.ts
/** The date and the sum asked for; when neither is, those of the plan's commitment. */
function targetOf(plan, { finishBy, sum }) {
	const problems = [];
	const report = (path, received, rule, remedy) => problems.push({
		code: "option-value",
		severity: "error",
		path,
		received: String(received),
		rule,
		remedy
	});
	if (finishBy !== void 0 && !isDate(finishBy)) report("--by", finishBy, "It must be a date of the years 1900 to 2999.", "Write e.g. 2027-10-01.");
	if (sum !== void 0 && !Number.isFinite(sum)) report("--sum", sum, "It must be money.", "Write a plain number, e.g. 640000.");
	if (finishBy !== void 0 || sum !== void 0) return {
		...finishBy === void 0 ? {} : { finishBy },
		...sum === void 0 ? {} : { sum },
		problems
	};
	const { commitment } = plan;
	if (commitment.finishBy === void 0 && commitment.budget === void 0) problems.push({
		code: "nothing-asked",
		severity: "error",
		path: "commitment",
		received: "",
		rule: "The plan asks for no date and no sum, so there is nothing to reach.",
		remedy: "Add `finishBy` or `budget` to its `commitment`, or ask with --by DATE or --sum MONEY."
	});
	return {
		...commitment.finishBy === void 0 ? {} : { finishBy: commitment.finishBy },
		...commitment.budget === void 0 ? {} : { sum: commitment.budget },
		problems
	};
}
/** An ISO calendar date that exists: written back from its number it is the same. */
function isDate(text) {
	return /^(19|2\d)\d{2}-\d{2}-\d{2}$/.test(text) && require_engine.isoDate(require_engine.dayNumber(text)) === text;
}
// ../../packages/core/src/explain/reach/wayOf.ts
/** Above this many steps their order is found on fewer iterations; what each adds is told on all. */
var mostOrdered = 12;
/**
* A set as steps, each with what it adds to those before it: the one that adds most first.
*
* @param few  The same question on fewer iterations.
*/
function* wayOf(question, few, set) {
	const { gauges, scenarios, targets, costs } = question;
	const { stands, switches, drawn } = scenarios;
	let taken = 0n;
	const order = yield* inOrderOfGain(membersOf(set, question.free).length > mostOrdered ? few : question, set);
	let before = stands;
	yield* gauges.need(order.map((i) => {
		before |= only(i);
		return before;
	}));
	return {
		steps: order.map((i) => {
			const before = taken;
			taken |= only(i);
			const [was, is] = [gauges.of(stands | before), gauges.of(stands | taken)];
			return {
				...describe(switches[i]),
				chance: hitsIn(question, taken) / gauges.n,
				bought: (hitsIn(question, taken) - hitsIn(question, before)) / gauges.n,
				effect: {
					workingDays: is.workingDays - was.workingDays,
					money: is.cost - was.cost
				}
			};
		}),
		cost: costOf(set, costs),
		chance: hitsIn(question, set) / gauges.n,
		outlook: require_scenarios.outlookOf(gauges.of(stands | set), drawn, targets, gauges.n)
	};
}
function describe(one) {
	const { kind, id, name, cost } = one;
	switch (one.kind) {
		case "response": return {
			kind,
			id,
			name,
			entry: {
				id: one.entry.id,
				name: one.entry.name
			},
			cost
		};
		case "scope": return {
			kind,
			id,
			name,
			...one.item.lost === void 0 ? {} : { lost: one.item.lost },
			cost
		};
		case "capacity": {
			const { capacity = 0, from } = one.person.couldAdd ?? {};
			return {
				kind,
				id,
				name,
				capacity,
				...from === void 0 ? {} : { from },
				cost
			};
		}
	}
}
// ../../packages/core/src/explain/reach/reach.ts
/** Up to so many options every combination is tried: 4,096 of them. */
var mostOptions = 12;
/** Iterations on which a way is looked for where there are more. */
var fewIterations = 1024;
/**
* What it would take to make a date, a sum or both at a confidence: responses not adopted yet, optional scope that
* may be dropped, capacity that people `couldAdd`. Each step with the chance it adds, in order; or that nothing does,
* and how close the best combination comes.
*
* A chance told here is the one `forecast` tells of the plan with these steps taken (`with`, `without`), to the bit.
*
* Problems are values. Cost: one run for each combination, each only of what it reaches; beyond twelve options see
* `greedySets`.
*/
function reach(plan, options = {}) {
	const { decision, problems } = reachDecision(plan, options);
	if (decision === void 0) return { problems };
	try {
		return {
			reach: require_scenarios.answered(decision.work, decision, options.onProgress),
			problems
		};
	} catch (error) {
		if (error instanceof require_stage.BeyondCalendarError) return { problems: [error.problem] };
		throw error;
	}
}
/** The question of `reach`, for whoever shares out its runs. */
function reachDecision(source, options) {
	const { plan, problems: unknown } = require_applyScenario.applyScenario(source, options);
	const target = targetOf(plan, options);
	const problems = [
		...require_drawOf.runProblems(options),
		...target.problems,
		...unknown
	];
	if (problems.length > 0) return { problems };
	const { list, notes } = require_scenarios.everySwitch(plan);
	const scenarios = require_scenarios.scenariosOf(plan, list);
	const standing = scenarios.model(scenarios.stands);
	const asWritten = require_engine.planAsWritten(standing);
	if (asWritten.beyond >= 0) return { problems: [require_engine.beyondCalendar(standing, asWritten.beyond)] };
	const { finishBy, sum } = target;
	const targets = {
		confidence: options.confidence ?? standing.confidence,
		...finishBy === void 0 ? {} : { finishByDay: require_engine.dayNumber(finishBy) - standing.startDay },
		...sum === void 0 ? {} : { budget: sum }
	};
	const gauging = {
		scenarios,
		draw: require_drawOf.drawOf(plan, options),
		targets
	};
	return {
		decision: {
			...gauging,
			plan,
			work: work(plan, gauging, target, notes)
		},
		problems: []
	};
}
function* work(plan, { scenarios, draw, targets }, { finishBy, sum }, notes) {
	const { stands, switches, drawn } = scenarios;
	const free = switches.map((_, i) => i).filter((i) => !has(stands, i));
	const ask = (iterations) => ({
		scenarios,
		gauges: require_scenarios.newGauges(iterations),
		targets,
		free,
		costs: switches.map(({ cost }) => cost)
	});
	const question = ask(draw.iterations);
	const few = ask(Math.min(draw.iterations, fewIterations));
	const count = (kind) => free.filter((i) => switches[i]?.kind === kind).length;
	yield* question.gauges.need([stands], .02);
	const already = isReached(question, 0n);
	const found = already ? {
		ways: [],
		best: 0n
	} : free.length <= mostOptions ? yield* everySet(question) : yield* greedySets(question, few);
	const answer = already ? "already" : found.ways.length > 0 ? "ways" : "nothing";
	const ways = [];
	for (const set of found.ways) ways.push(yield* wayOf(question, few, set));
	const best = answer === "nothing" ? { best: yield* wayOf(question, few, found.best) } : {};
	return {
		stamp: require_stampOf.stampOf(drawn, draw),
		plan: {
			title: plan.title,
			currency: plan.currency,
			start: plan.start
		},
		asked: {
			...finishBy === void 0 ? {} : { finishBy },
			...sum === void 0 ? {} : { sum },
			confidence: targets.confidence
		},
		stands: require_scenarios.outlookOf(question.gauges.of(stands), drawn, targets, draw.iterations),
		chance: hitsIn(question, 0n) / draw.iterations,
		options: {
			responses: count("response"),
			scope: count("scope"),
			capacity: count("capacity")
		},
		answer,
		ways,
		...best,
		how: methodOf(already, free.length, question.gauges.tried + few.gauges.tried),
		notes
	};
}
function methodOf(already, options, tried) {
	if (already) return {
		kind: "every-set",
		tried,
		text: "The plan as it stands was run: nothing more is needed."
	};
	if (options <= mostOptions) return {
		kind: "every-set",
		tried,
		text: options < 2 ? options === 1 ? "The one option was tried." : "There was nothing to try." : `Every combination of the ${options} options was tried, ${tried} in all; nothing was assumed of how they work together.`
	};
	return {
		kind: "greedy-exchange",
		tried,
		text: `With ${options} options not every combination was tried, but ${tried}: steps were added by the chance they buy for their money on the first ${fewIterations} futures, and all taken together; then each that is not needed was left out, the dearest first. A cheaper way may exist.`
	};
}
// ../../packages/parallel/src/decideInParallel.ts
/** How many simulations' work a question is, roughly: so many sets, each a part of a run. */
var questionFactor = 60;
/** Sets in a part at least: a part begins with draws of its own. */
var leastSets = 16;
/** `responses(plan, options)` on several threads: the same answer, to the bit, however many there are. */
async function responsesInParallel(plan, options = {}) {
	const { decision, problems } = responsesDecision(plan, options);
	if (decision === void 0) return { problems };
	const found = await decide(decision, options);
	return found === void 0 ? responses(plan, options) : {
		responses: found,
		problems
	};
}
/** `reach(plan, options)` on several threads: the same answer, to the bit, however many there are. */
async function reachInParallel(plan, options = {}) {
	const { decision, problems } = reachDecision(plan, options);
	if (decision === void 0) return { problems };
	const found = await decide(decision, options);
	return found === void 0 ? reach(plan, options) : {
		reach: found,
		problems
	};
}
/** The answer; undefined where the caller's own thread has to find it. */
async function decide(decision, options) {
	const { pool, signal } = options;
	signal?.throwIfAborted();
	const { plan, draw } = decision;
	const { seed, design, iterations } = draw;
	const work = questionFactor * require_node.workOf(plan, iterations);
	const threads = require_node.threadsFor(work, Number.POSITIVE_INFINITY, options);
	if (pool === void 0 || threads === 0) return void 0;
	const run = {
		seed,
		design,
		...signal === void 0 ? {} : { signal }
	};
	try {
		return await require_node.withCrew({
			pool,
			threads,
			plan,
			options: run
		}, (crew) => decideOn(crew, decision, options));
	} catch (error) {
		if (error instanceof Error && error.name === "BeyondCalendarError") return void 0;
		throw error;
	}
}
async function decideOn(crew, decision, { onProgress }) {
	const progress = require_scenarios.progressOfAsks(onProgress);
	let step = decision.work.next();
	while (step.done !== true) {
		const tell = progress(step.value);
		const gauges = await gaugesOn(crew, decision, step.value, tell) ?? require_scenarios.gaugeSets(decision, step.value, tell);
		step = decision.work.next(gauges);
	}
	onProgress?.(1e3, 1e3);
	return step.value;
}
/** Gauges of one ask, in its order; undefined when no thread could be had. */
async function gaugesOn(crew, { scenarios, draw, targets }, { sets, iterations }, tell) {
	const about = require_scenarios.switchNames(scenarios);
	const order = require_scenarios.inNearOrder(scenarios, sets);
	const size = Math.max(leastSets, Math.ceil(sets.length / crew.length));
	const firsts = Array.from({ length: Math.ceil(sets.length / size) }, (_, part) => part * size);
	const progress = require_node.progressOf(sets.length * iterations, tell);
	const gauges = new Array(sets.length);
	return await require_node.shareOut(crew, firsts, async (helper, first) => {
		const places = order.slice(first, first + size);
		const part = places.map((place) => sets[place]);
		const request = {
			kind: "gauge",
			about,
			draw,
			targets,
			sets: part,
			iterations
		};
		const answer = await helper.ask(request, [], (done) => progress.during(helper, done));
		if (answer.kind !== "gauges") throw new Error(`Asked for gauges, got "${answer.kind}".`);
		answer.gauges.forEach((gauge, i) => {
			gauges[places[i]] = gauge;
		});
		progress.after(helper, part.length * iterations);
	}) ? gauges : void 0;
}
Object.defineProperty(exports, "reachInParallel", {
	enumerable: true,
	get: function() {
		return reachInParallel;
	}
});
Object.defineProperty(exports, "responsesInParallel", {
	enumerable: true,
	get: function() {
		return responsesInParallel;
	}
});
