const require_shapes = require("./shapes-8oDnecao.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_latestOpinions = require("./latestOpinions-DD3Y0PkZ.cjs");
const require_restate = require("./restate-BC4llzlF.cjs");
const require_editPlan = require("./editPlan-DSSwX--u.cjs");
const require_changedLines = require("./changedLines-MyzZE-y6.cjs");
const require_program = require("./program.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_chartsWritten = require("./chartsWritten-SZDOadPC.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_writeBack = require("./writeBack-BzNdebk3.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_amountWords = require("./amountWords-BwWNBKDo.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// ../../packages/core/src/estimating/pool/mixtureQuantile.ts
/** P(value <= x) of any estimate. */
function estimateChance(estimate, x) {
	if (estimate.kind === "fixed") return x >= estimate.value ? 1 : 0;
	if (estimate.kind === "range") return require_engine.lawOf(estimate).cdf(x);
	return estimate.outcomes.reduce((sum, { value, chance }) => x >= value ? sum + chance : sum, 0);
}
/**
* The value not exceeded with probability p when one of the estimates holds, each with the same chance: the quantile of
* averaged probabilities (a linear pool). All in one unit, at least one.
*
* Error  within 1e-9 of the distance of the outermost quantiles at p, by bisection.
*/
function mixtureQuantile(estimates, p) {
	const at = estimates.map((estimate) => require_engine.estimateQuantile(estimate, p));
	let low = Math.min(...at);
	let high = Math.max(...at);
	const laws = estimates.map((estimate) => estimate.kind === "range" ? require_engine.lawOf(estimate).cdf : (x) => estimateChance(estimate, x));
	const chance = (x) => laws.reduce((sum, cdf) => sum + cdf(x), 0) / laws.length;
	if (chance(low) >= p) return low;
	for (let step = 0; step < 60 && high > low; step++) {
		const middle = low + (high - low) / 2;
		if (middle <= low || middle >= high) break;
		if (chance(middle) < p) low = middle;
		else high = middle;
	}
	return high;
}
// ../../packages/core/src/estimating/pool/disagreement.ts
/**
* How far apart the voices are. Which figures tell it is common practice, no source. "Far out" compares with every other
* range on its own: an average of the others would be moved by whoever is out.
*/
function disagreementOf(voices, estimates, pooled) {
	const likelies = voices.map(({ likely }) => likely);
	const likelyLow = Math.min(...likelies);
	const likelyHigh = Math.max(...likelies);
	const range = pooled.high - pooled.low;
	const low = Math.max(...voices.map((voice) => voice.low));
	const high = Math.min(...voices.map((voice) => voice.high));
	const apart = pairsApart(voices);
	const farOut = voices.length < 3 ? [] : outsiders(voices);
	const alike = farOut.length === 0 && likelyLow >= low && likelyHigh <= high;
	const average = (p) => estimates.reduce((sum, estimate) => sum + require_engine.estimateQuantile(estimate, p), 0) / estimates.length;
	return {
		level: voices.length === 1 ? "one" : apart.length > 0 ? "apart" : alike ? "agree" : "differ",
		likelyLow,
		likelyHigh,
		spread: range > 0 ? (likelyHigh - likelyLow) / range : 0,
		...low <= high && { common: {
			low,
			high
		} },
		apart,
		farOut,
		either: {
			low: mixtureQuantile(estimates, .1),
			high: mixtureQuantile(estimates, .9)
		},
		pooled: {
			low: average(.1),
			high: average(.9)
		}
	};
}
function pairsApart(voices) {
	return voices.flatMap((first) => voices.filter((second) => first.high < second.low).map((second) => [first.by, second.by]));
}
function outsiders(voices) {
	return voices.flatMap(({ by, likely }) => {
		const others = voices.filter((voice) => voice.by !== by);
		if (others.some(({ low, high }) => low <= likely && likely <= high)) return [];
		const low = Math.min(...others.map((voice) => voice.low));
		const high = Math.max(...others.map((voice) => voice.high));
		return [{
			by,
			side: likely < low ? "low" : likely > high ? "high" : "between",
			others: {
				low,
				high
			}
		}];
	});
}
// ../../packages/core/src/estimating/pool/poolOpinions.ts
/**
* Opinions of one estimate as one: the average of their values at the same chance, everybody weighing the same.
*
* Low, likely and high are the averages of the lows, likelies and highs. With bounds that are percentiles this is the
* average of quantiles at those two levels; at all other levels it is too when the curves are of one location-scale
* family, x = a + b z: the average of a_i + b_i z(p) is (mean a) + (mean b) z(p), so locations and scales are averaged
* and the shape stays. For pert curves of different skewness the fitted curve differs a little: `curveGap` says how much.
* Averaging chances instead widens the range by the disagreement itself; `disagreement.either` shows that.
* Source: Lichtendahl, Grushka-Cockayne & Winkler (2013), "Is It Better to Average Probabilities or Quantiles?",
* Management Science 59(7), 1594-1611, doi 10.1287/mnsc.1120.1667 (abstract read: same mean as the average of chances,
* lower variance; the algebra above is ours).
*
* @returns Undefined where nobody has said anything of it.
*/
function poolOpinions(opinions, options = {}) {
	const { of = "duration", daysPerWeek = 5 } = options;
	const latest = require_latestOpinions.latestOpinions(opinions, of);
	if (latest.length === 0) return void 0;
	const terms = require_restate.commonTerms(latest);
	const { shape, bounds, unit } = terms;
	const estimates = latest.map(({ estimate }) => require_restate.inUnit(estimate, unit, daysPerWeek));
	const voices = latest.map((opinion, index) => {
		const { by, date, basis, dissent } = opinion;
		return {
			by,
			...date !== void 0 && { date },
			...require_restate.threePoints(estimates[index] ?? opinion.estimate, bounds),
			...basis !== void 0 && { basis },
			...dissent !== void 0 && { dissent }
		};
	});
	const mean = (key) => voices.reduce((sum, voice) => sum + voice[key], 0) / voices.length;
	const low = mean("low");
	const high = mean("high");
	const likely = Math.min(high, Math.max(low, mean("likely")));
	const estimate = pooledEstimate({
		low,
		likely,
		high
	}, terms);
	return {
		of,
		unit,
		shape,
		bounds,
		estimate,
		low,
		likely,
		high,
		voices,
		restated: terms.restated,
		curveGap: curveGap(estimate, estimates),
		disagreement: disagreementOf(voices, estimates, {
			low,
			high
		})
	};
}
function pooledEstimate({ low, likely, high }, { shape, bounds, unit }) {
	if (low === high) return {
		kind: "fixed",
		value: low,
		unit
	};
	return {
		kind: "range",
		low,
		...require_shapes.shapeRules[shape].takesLikely && { likely },
		high,
		shape,
		bounds,
		unit
	};
}
/** See `Pooling.curveGap`. */
function curveGap(pooled, estimates) {
	if (pooled.kind !== "range") return 0;
	let gap = 0;
	for (let step = 1; step < 20; step++) {
		const p = step / 20;
		const average = estimates.reduce((sum, estimate) => sum + require_engine.estimateQuantile(estimate, p), 0) / estimates.length;
		gap = Math.max(gap, Math.abs(require_engine.estimateQuantile(pooled, p) - average));
	}
	return gap / (pooled.high - pooled.low);
}
// ../../packages/core/src/plan/edit/writeEstimate.ts
/**
* The shortest form of an estimate in a document: `7`, `[5, 7, 14]`, `{ low, high, shape, ... }`.
*
* @param defaults  The plan's `estimates`, which fill in what is not written.
*/
function writeEstimate(estimate, defaults = {}) {
	const unit = estimate.unit === "weeks" ? { unit: estimate.unit } : {};
	if (estimate.kind === "fixed") {
		const { value } = estimate;
		return estimate.unit === "weeks" ? {
			low: value,
			likely: value,
			high: value,
			...unit
		} : value;
	}
	if (estimate.kind === "outcomes") return {
		outcomes: estimate.outcomes,
		...unit
	};
	const { low, likely, high } = estimate;
	const shape = estimate.shape === (defaults.shape ?? "pert") ? {} : { shape: estimate.shape };
	const bounds = estimate.bounds === (defaults.bounds ?? "extremes") ? {} : { bounds: estimate.bounds };
	const extra = {
		...shape,
		...bounds,
		...unit
	};
	if (likely !== void 0 && Object.keys(extra).length === 0) return [
		low,
		likely,
		high
	];
	return {
		low,
		...likely !== void 0 && { likely },
		high,
		...extra
	};
}
// ../../packages/core/src/estimating/pool/settle.ts
/** Significant digits that are written of an average; nobody means more. */
var DIGITS = 4;
/**
* The text of a plan with a pooled estimate settled: the task's estimate, whom it is from, and a basis that names them
* and says how it was made. Averages are rounded to four significant digits. The opinions stay where they are.
*
* @param nameOf  The name of a person by id.
*/
function settlePooling(text, task, pooling, nameOf) {
	const estimate = rounded(pooling.estimate);
	const by = pooling.voices.map((voice) => voice.by);
	const basis = basisOf(pooling, nameOf);
	const written = writeEstimate(estimate, require_changedLines.estimateDefaults(text));
	const edits = [[pooling.of, written]];
	if (pooling.of !== "cost" || task.duration === void 0) edits.push(["estimatedBy", by]);
	edits.push(["basis", pooling.of === "cost" && task.basis !== void 0 ? `${task.basis} Cost: ${basis}` : basis]);
	let edit = {
		text,
		problems: []
	};
	for (const [key, value] of edits) {
		edit = require_editPlan.setInPlan(edit.text, [
			"tasks",
			task.id,
			key
		], value);
		if (edit.problems.length > 0) return {
			text,
			problems: edit.problems,
			estimate,
			basis
		};
	}
	return {
		...edit,
		estimate,
		basis
	};
}
function basisOf({ voices }, nameOf) {
	const said = voices.map(({ by, date, basis }) => {
		const on = date === void 0 ? "" : `, ${date}`;
		return `${nameOf(by)}${on}${basis === void 0 ? "" : `: ${basis.replace(/[.\s]+$/, "")}`}`;
	});
	const [only] = said;
	if (said.length === 1 && only !== void 0) return `As said by ${only}.`;
	return `Average of ${said.length} opinions (quantiles, equal weights). ${said.join("; ")}.`;
}
function rounded(estimate) {
	const round = (value) => Number(value.toPrecision(DIGITS));
	if (estimate.kind === "fixed") return {
		...estimate,
		value: round(estimate.value)
	};
	if (estimate.kind === "outcomes") return estimate;
	const { low, likely, high } = estimate;
	return {
		...estimate,
		low: round(low),
		high: round(high),
		...likely !== void 0 && { likely: round(likely) }
	};
}
// src/text/poolText.ts
var BOUNDS = {
	extremes: ["least", "most"],
	"p10-p90": ["1 in 10 below", "1 in 10 above"],
	"p5-p95": ["1 in 20 below", "1 in 20 above"]
};
/** What people said, task by task, what it makes together and how far apart they are. */
function poolText(title, pooled, page, about) {
	const { width, strong } = page;
	if (pooled.length === 0) return `${[
		strong(title),
		"",
		...require_program.wrap(`No task has opinions yet. Ask with leeway interview ${about.file} TASK --by PERSON.`, width)
	].join("\n")}\n`;
	const apart = pooled.filter(({ pooling }) => pooling.disagreement.level === "apart").length;
	const head = [strong(title), ...require_program.wrap(`${pooled.length === 1 ? "One estimate has" : `${pooled.length} estimates have`} opinions${apartWords(apart, pooled.length)}`, width)];
	const blocks = pooled.map((each) => poolingLines(each, page, about));
	const how = require_program.wrap("Pooled: the average of what people say at the same chance, everybody weighing the same. Nothing is settled by this.", width);
	const task = pooled.length === 1 ? pooled[0]?.task.id : "TASK";
	const next = require_nextLines.nextLines([[`leeway interview ${about.file} ${task} --by PERSON`, "ask somebody else, or again"], [`leeway pool ${about.file} ${task} --write`, "settle the estimate with it, naming the people"]], width);
	return `${[
		head,
		...blocks,
		how,
		next
	].map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
function apartWords(apart, of) {
	if (apart === 0) return ".";
	return `, ${of === 1 ? "and people are" : `and on ${apart === of ? "all" : apart} of them people are`} apart: talk before pooling.`;
}
function poolingLines(given, { width, strong }, { name }) {
	const { task, pooling, unitWords } = given;
	const [low, high] = BOUNDS[pooling.bounds];
	const rows = pooling.voices.map((voice) => [
		require_program.plainTexts(name(voice.by)),
		require_amountWords.amount(voice.low),
		require_amountWords.amount(voice.likely),
		require_amountWords.amount(voice.high),
		voice.date === void 0 ? "" : require_formatDate.formatDate(voice.date, "short")
	]);
	const settled = settledRow(task, pooling);
	const several = pooling.voices.length > 1;
	return [
		strong(require_program.plainTexts(`${task.name} (${task.id}), ${pooling.of} in ${unitWords}`)),
		...require_program.table([
			{
				heading: "",
				align: "left"
			},
			{
				heading: low,
				align: "right"
			},
			{
				heading: "likely",
				align: "right"
			},
			{
				heading: high,
				align: "right"
			},
			{
				heading: "said",
				align: "left"
			}
		], [
			...rows,
			...several ? [[
				"Pooled",
				require_amountWords.amount(pooling.low),
				require_amountWords.amount(pooling.likely),
				require_amountWords.amount(pooling.high),
				""
			]] : [],
			...settled
		], width),
		...several ? disagreementSentences(given, name).flatMap((text) => require_inset.inset(text, width)) : [],
		...pooling.voices.flatMap(({ by, basis, dissent }) => [...basis === void 0 ? [] : require_inset.inset(require_program.plainTexts(`${name(by)} knows from: ${basis}`), width), ...dissent === void 0 ? [] : require_inset.inset(require_program.plainTexts(`${name(by)} does not agree: ${dissent}`), width)])
	];
}
/** What the plan counts now, in the bounds of the table. */
function settledRow(task, { of, bounds, unit }) {
	const estimate = task[of];
	if (estimate === void 0) return [];
	if (estimate.unit !== unit && of !== "cost") return [[
		"In the plan",
		"",
		`in ${estimate.unit}`,
		"",
		""
	]];
	const p = {
		extremes: 0,
		"p10-p90": .1,
		"p5-p95": .05
	}[bounds];
	const likely = "likely" in estimate && estimate.likely !== void 0 ? estimate.likely : require_engine.estimateQuantile(estimate, .5);
	return [[
		"In the plan",
		...[
			require_engine.estimateQuantile(estimate, p),
			likely,
			require_engine.estimateQuantile(estimate, 1 - p)
		].map(require_amountWords.amount),
		""
	]];
}
/** How far apart people are, in words and figures. */
function disagreementSentences({ pooling, unitWords }, name) {
	const { disagreement, voices, restated, curveGap } = pooling;
	const { level, likelyLow, likelyHigh, apart, farOut, common, either, pooled } = disagreement;
	const who = (id) => require_program.plainTexts(name(id));
	const spread = likelyLow === likelyHigh ? `All ${voices.length} give the same likely value.` : `Likely values go from ${require_amountWords.amount(likelyLow)} to ${require_amountWords.amountIn(likelyHigh, unitWords)}.`;
	const pairs = apart.map(([lower, higher]) => `${who(lower)} and ${who(higher)}`);
	const apartText = pairs.length === 0 ? "" : ` The ranges of ${pairs.slice(0, 3).join(", of ")}${pairs.length > 3 ? " and others" : ""} have no value in common: they may not be speaking of the same work. Find out before pooling.`;
	const out = farOut.map(({ by, side, others }) => ` ${who(by)} is ${side === "between" ? "in nobody else's range" : `far ${side === "low" ? "below" : "above"} all others, who span ${require_amountWords.amount(others.low)} to ${require_amountWords.amount(others.high)}`}.`);
	const shared = common === void 0 || level === "one" ? "" : ` ${voices.length === 2 ? "Both" : "All"} hold ${require_amountWords.amount(common.low)} to ${require_amountWords.amount(common.high)} possible.`;
	return [
		`${level === "agree" ? "They agree. " : ""}${spread}${shared}${apartText}${out.join("")}`,
		`If one of them is right and nobody knows who, eight times in ten it is ${require_amountWords.amount(either.low)} to ${require_amountWords.amountIn(either.high, unitWords)}; pooled it is ${require_amountWords.amount(pooled.low)} to ${require_amountWords.amount(pooled.high)}.`,
		...restated ? ["Not all were stated in the same way; they are compared as one-in-ten values, in days where it is time."] : [],
		...curveGap > .02 ? [`Their curves lean differently: the pooled curve is off the average by up to ${require_formatPercent.formatPercent(curveGap)} of its range.`] : []
	];
}
// src/verbs/pool.ts
/** Opinions side by side, pooled; with `--write` one task's estimate is settled by them. */
async function poolVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const of = values.oneOf("of", [
		"duration",
		"effort",
		"cost"
	]);
	const write = values.has("write");
	const charts = values.text("charts");
	const problems = [...values.problems, ...write ? require_writeBack.outputClash(call, values) : []];
	if (write && call.second === void 0) problems.push(require_program.callProblem("missing-word", "--write", "One estimate is settled at a time, by somebody who has looked at it.", "Write `leeway pool PLAN TASK --write`."));
	if (problems.length > 0) return refuse(problems);
	const given = await require_givenPlan.givenPlan(call.subject ?? "-");
	if (given === void 0) return require_program.exitCodes.invalid;
	const { plan, name } = given;
	const asked = call.second === void 0 ? void 0 : require_givenPlan.taskOf(plan, call.second);
	if (asked !== void 0 && require_givenPlan.isProblem(asked)) return refuse([asked], name);
	const pooled = (asked === void 0 ? plan.tasks : [asked]).flatMap((task) => poolingsOf(given, task, of));
	if (pooled.length === 0 && asked !== void 0) return refuse([require_program.callProblem("no-opinions", asked.id, "Nobody has said anything about it yet.", "Ask with `leeway interview`.")], name);
	const page = require_program.pageOf(process.env, process.stdout);
	if (!write) {
		const drawn = {
			pooled,
			name: require_givenPlan.nameIn(plan)
		};
		if (!await require_chartsWritten.chartsWritten("pool", drawn, charts)) return require_program.exitCodes.invalid;
		if (values.has("json")) require_program.printJson({
			plan: {
				title: plan.title,
				sha256: plan.sha256
			},
			tasks: pooled.map(json)
		});
		else require_program.printAnswer(poolText(plan.title, pooled, page, {
			name: require_givenPlan.nameIn(plan),
			file: require_shellWord.shellWord(name)
		}));
		return require_program.exitCodes.done;
	}
	const [first, second] = pooled;
	if (first === void 0 || second !== void 0) {
		const rule = `There are opinions on its ${pooled.map(({ pooling }) => pooling.of).join(" and ")}; one is settled at a time.`;
		return refuse([require_program.callProblem("which-estimate", "--write", rule, "Add --of duration or --of cost.")]);
	}
	return settle(given, first, values);
}
async function settle(given, { task, pooling }, values) {
	const nameOf = require_givenPlan.nameIn(given.plan);
	const edit = settlePooling(given.text, task, pooling, nameOf);
	if (edit.problems.length > 0) return refuse(edit.problems, given.name);
	const dry = values.has("dry-run");
	if (!dry && !await require_writeBack.writeBack(given, edit.text)) return require_program.exitCodes.invalid;
	const told = {
		task: task.id,
		...json({
			task,
			pooling,
			unitWords: ""
		}),
		written: !dry,
		basis: edit.basis
	};
	if (values.has("json")) {
		require_program.printJson(told);
		return require_program.exitCodes.done;
	}
	const lines = [
		...require_changedLines.changedLines(given.text, edit.text),
		"",
		dry ? "Nothing is written." : `${require_writeBack.writtenTo(given.name)}. What it does: leeway forecast ${require_shellWord.shellWord(given.name)}`,
		""
	].join("\n");
	if (given.name === "standard input" && !dry) require_program.printNote(lines);
	else require_program.printAnswer(lines);
	return require_program.exitCodes.done;
}
function poolingsOf({ plan }, task, only) {
	const daysPerWeek = plan.calendars.get(task.calendar)?.workdays.length ?? 5;
	return [
		"duration",
		"effort",
		"cost"
	].flatMap((of) => {
		if (only !== void 0 && of !== only || task[of] === void 0) return [];
		const pooling = poolOpinions(task.opinions ?? [], {
			of,
			daysPerWeek
		});
		if (pooling === void 0) return [];
		const time = of === "duration" ? "working days" : "person-days";
		return [{
			task,
			pooling,
			unitWords: of === "cost" ? plan.currency : pooling.unit === "weeks" ? time.replace(/(working )?days/, "weeks") : time
		}];
	});
}
function json({ task, pooling }) {
	return {
		id: task.id,
		name: task.name,
		...pooling
	};
}
function refuse(problems, name) {
	require_program.printProblems(problems, name);
	return require_program.exitCodes.invalid;
}
exports.poolVerb = poolVerb;
