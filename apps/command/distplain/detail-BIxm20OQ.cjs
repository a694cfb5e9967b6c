const require_version = require("./version-BsDMLdbb.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_memoryProblem = require("./memoryProblem-C0LIEMdK.cjs");
const require_givenPlan = require("./givenPlan-cOgxztA_.cjs");
const require_program = require("./program.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_amountWords = require("./amountWords-BwWNBKDo.cjs");
const require_inset = require("./inset-B86AXTnS.cjs");
// ../../packages/core/src/estimating/wave/subPlan.ts
/**
* A plan of some of a plan's tasks alone: links to others, dates, progress, the register and standing costs left out, so
* that what remains is the spread of the estimates themselves. Draws stay those of the plan.
*
* @param together  Correlates every pair of durations (efforts) with this coefficient in place of the plan's own.
*/
function subPlan(plan, tasks, together) {
	const ids = new Set(tasks.map(({ id }) => id));
	const { lateness: _lateness, appraisal: _appraisal, statusDate: _statusDate, ...rest } = plan;
	return {
		...rest,
		commitment: {
			confidence: plan.commitment.confidence,
			funds: []
		},
		benefits: [],
		tasks: tasks.map((task) => bare(task, ids)),
		intervals: [],
		assumptions: [],
		risks: [],
		correlations: together === void 0 ? within(plan.correlations, ids) : allPairs(tasks, together),
		overheads: []
	};
}
function bare(task, ids) {
	const { notBefore: _notBefore, started: _started, finished: _finished, remaining: _remaining, spent: _spent, target: _target, onlyIf: _onlyIf, ...rest } = task;
	return {
		...rest,
		holdToPlan: false,
		after: task.after.filter((link) => ids.has(link.task))
	};
}
function within(correlations, ids) {
	return correlations.flatMap((each) => {
		const between = each.between.filter((name) => ids.has(name.replace(/^cost:/, "")));
		return between.length > 1 ? [{
			...each,
			between
		}] : [];
	});
}
function allPairs(tasks, coefficient) {
	const between = tasks.filter(({ duration, effort }) => (duration ?? effort)?.kind === "range").map(({ id }) => id);
	return between.length > 1 ? [{
		between,
		coefficient
	}] : [];
}
// ../../packages/core/src/estimating/wave/waveCompare.ts
/** Coefficient at which the detail moves nearly as one: what splitting a task cannot have taken away. */
var togetherCoefficient = .9;
/**
* Rolling wave: outline tasks of an old plan that detail has replaced, the range of the outline beside that of its
* detail. Detail names its outline by `detailOf`, or by `was` where the old task was an outline. Each side runs alone
* from the plan's start with its own people and calendars, the register set aside (see `subPlan`), so that ranges are
* compared and not positions in two plans.
*
* Splitting a task into parts that vary on their own narrows the sum by arithmetic alone and not by knowledge; `together`
* shows the detail without that (common practice, no source).
*/
function waveCompare(oldPlan, newPlan, options = {}) {
	const result = {
		waves: [],
		gone: [],
		still: [],
		problems: []
	};
	const asked = {
		seed: newPlan.seed,
		iterations: newPlan.iterations,
		...options
	};
	for (const outline of oldPlan.tasks) {
		const detail = newPlan.tasks.filter((task) => detailOf(task, outline));
		const { id, name } = outline;
		if (detail.length === 0) {
			if (outline.detail !== "outline") continue;
			(newPlan.tasks.some((task) => task.id === id) ? result.still : result.gone).push({
				id,
				name
			});
			continue;
		}
		const run = (plan) => rangeOf(plan, asked, result.problems);
		const before = run(subPlan(oldPlan, [outline]));
		const after = run(subPlan(newPlan, detail));
		const own = subPlan(newPlan, detail, togetherCoefficient);
		const together = own.correlations.length > 0 ? run(own) : void 0;
		if (before === void 0 || after === void 0) continue;
		const width = ({ workingDays }) => workingDays.p90 - workingDays.p10;
		const wave = {
			outline: {
				id,
				name
			},
			detail: detail.map((task) => ({
				id: task.id,
				name: task.name
			})),
			before,
			after,
			...together && { together },
			...width(before) > 0 && { widthRatio: width(after) / width(before) },
			correlated: subPlan(newPlan, detail).correlations.some(({ coefficient }) => coefficient > 0),
			reasons: reasonsFor(outline, detail, oldPlan, newPlan)
		};
		result.waves.push(wave);
	}
	return result;
}
function detailOf(task, outline) {
	if (task.detailOf !== void 0) return task.detailOf === outline.id;
	return outline.detail === "outline" && task.was === outline.id;
}
function rangeOf(plan, options, problems) {
	const { forecast: found, problems: wrong } = require_engine.forecast(plan, options);
	problems.push(...wrong);
	return found === void 0 ? void 0 : readOff(found);
}
function readOff({ finish, cost }) {
	const days = (p) => finish.percentiles.find((row) => row.p === p)?.workingDays ?? NaN;
	const money = (p) => cost.percentiles.find((row) => row.p === p)?.value ?? NaN;
	return {
		workingDays: {
			p10: days(.1),
			p50: days(.5),
			p90: days(.9)
		},
		money: {
			p10: money(.1),
			p50: money(.5),
			p90: money(.9)
		}
	};
}
/** Changes that are new and name the outline or its detail as whole words, by id or by name. */
function reasonsFor(outline, detail, oldPlan, newPlan) {
	const known = new Set(oldPlan.changes.map((change) => JSON.stringify(change)));
	const words = [outline, ...detail].flatMap(({ id, name }) => [id, name]).map(asWords).filter((each) => each.length > 4);
	return newPlan.changes.filter((change) => {
		if (known.has(JSON.stringify(change))) return false;
		const text = asWords(`${change.what ?? ""} ${change.why ?? ""}`);
		return words.some((each) => text.includes(each));
	});
}
/** Small letters and digits, one space between words and at both ends; a hyphen joins. */
function asWords(text) {
	return ` ${text.toLowerCase().replace(/[^\p{L}\p{N}-]+/gu, " ").trim()} `;
}
// src/text/detailText.ts
/** Outline tasks beside the detail that replaced them. */
function detailText(given, about, page) {
	const { waves, gone, still } = require_program.plainTexts(given);
	const { width, strong } = page;
	const names = (tasks) => tasks.map(({ name, id }) => `${name} (${id})`).join(", ");
	return `${[
		[strong(require_program.plainTexts(about.title)), ...require_program.wrap(summary(waves.length, still.length, gone.length), width)],
		...waves.map((wave) => waveLines(wave, about.currency, page)),
		[...still.length === 0 ? [] : require_program.wrap(`Outline still: ${names(still)}.`, width, "  "), ...gone.length === 0 ? [] : require_program.wrap(`Gone without detail: ${names(gone)}. Give its detail \`detailOf\`, or say why it is gone.`, width, "  ")],
		waves.length === 0 ? [] : require_program.wrap("Each side runs alone from the plan's start, with its people and calendars and without the register: ranges are compared, not positions in the plan. What it does to the commitment: leeway compare.", width),
		require_program.wrap(about.stamp, width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
function summary(waves, still, gone) {
	if (waves === 0 && still + gone === 0) return "The old plan has no outline task, and no task of the new one details one.";
	return `${waves === 1 ? "One outline task has" : `${waves === 0 ? "No" : waves} outline tasks have`} become detail; ${still} ${still === 1 ? "is" : "are"} outline still.`;
}
function waveLines(wave, currency, { width, strong }) {
	const { outline, detail, before, after, together, reasons } = wave;
	const money = [before, after].some(({ money: { p10, p90 } }) => p10 !== 0 || p90 !== 0);
	const row = (name, { workingDays, money: sum }) => [
		name,
		...[
			workingDays.p10,
			workingDays.p50,
			workingDays.p90
		].map(require_amountWords.amount),
		...money ? [`${require_amountWords.amount(sum.p10)} to ${require_amountWords.amount(sum.p90)}`] : []
	];
	return [
		...require_program.wrap(`${outline.name} (${outline.id}): ${finding(wave)}`, width).map((line, k) => k === 0 ? strong(line) : line),
		...require_program.table([
			{
				heading: "working days",
				align: "left"
			},
			{
				heading: "1 in 10 below",
				align: "right"
			},
			{
				heading: "middle",
				align: "right"
			},
			{
				heading: "1 in 10 above",
				align: "right"
			},
			...money ? [{
				heading: `${currency}, 8 in 10`,
				align: "right"
			}] : []
		], [
			row("as outline", before),
			row(`as detail, ${detail.length} ${detail.length === 1 ? "task" : "tasks"}`, after),
			...together === void 0 ? [] : [row("... moving together", together)]
		], width),
		...require_inset.inset(`Detail: ${detail.map(({ name }) => name).join(", ")}.`, width),
		...splitNote(wave, width),
		...reasons.length === 0 ? require_inset.inset("No reason is logged: add one to the plan's `changes`, naming the task.", width) : reasons.flatMap(({ date, who, what, why }) => require_inset.inset([
			date === void 0 ? "" : `${require_formatDate.formatDate(date, "short")}:`,
			what === void 0 ? "" : `${what.replace(/\.$/, "")}.`,
			why === void 0 ? "" : `Why: ${why}`,
			who === void 0 ? "" : `(${who})`
		].filter((part) => part !== "").join(" "), width))
	];
}
function finding({ before, after, widthRatio }) {
	const moved = after.workingDays.p50 - before.workingDays.p50;
	const middle = Math.abs(moved) < .05 ? "the middle stays" : `the middle is ${require_formatDays.formatDays(Math.abs(moved))} ${moved > 0 ? "longer" : "shorter"}`;
	if (widthRatio === void 0) return `${middle}; it had no range as an outline.`;
	const change = Math.abs(widthRatio - 1);
	return `${change < .01 ? "the range is as wide" : `the range is ${require_formatPercent.formatPercent(change)} ${widthRatio > 1 ? "wider" : "narrower"}`}, ${middle}.`;
}
function splitNote({ widthRatio, correlated, together }, width) {
	if (widthRatio === void 0 || widthRatio >= 1 || correlated || together === void 0) return [];
	return require_inset.inset(`The parts vary on their own here, which narrows a sum without anybody knowing more. Where they share a cause, say so in \`correlations\`; at ${togetherCoefficient} for each pair it would be as in the last row.`, width);
}
// src/verbs/detail.ts
var ROWS_AS_TASKS = 8;
/** Outline tasks of an old plan beside the detail that replaced them in a new one. */
async function detailVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const options = require_engineOptions.engineOptions(values);
	if (values.problems.length > 0) {
		require_program.printProblems(values.problems);
		return require_program.exitCodes.invalid;
	}
	const older = await require_givenPlan.givenPlan(call.subject ?? "-");
	const newer = await require_givenPlan.givenPlan(call.second ?? "-");
	if (older === void 0 || newer === void 0) return require_program.exitCodes.invalid;
	const stamp = stampOf(newer.plan, options);
	const tooLarge = require_memoryProblem.memoryProblem(ROWS_AS_TASKS + newer.plan.tasks.length, stamp.iterations);
	const comparison = tooLarge === void 0 ? waveCompare(older.plan, newer.plan, options) : void 0;
	await require_program.hearStops();
	const problems = [...tooLarge === void 0 ? [] : [tooLarge], ...comparison?.problems ?? []];
	if (problems.length > 0) require_program.printProblems(problems, newer.name);
	if (comparison === void 0 || problems.some(({ severity }) => severity === "error")) return require_program.exitCodes.invalid;
	if (values.has("json")) {
		const { problems: _problems, ...told } = comparison;
		require_program.printJson({
			plan: {
				title: newer.plan.title,
				sha256: newer.plan.sha256
			},
			stamp,
			...told
		});
	} else {
		const { title, currency } = newer.plan;
		const about = {
			title,
			currency,
			stamp: require_confidenceHead.explanationStamp(stamp)
		};
		require_program.printAnswer(detailText(comparison, about, require_program.pageOf(process.env, process.stdout)));
	}
	return require_program.exitCodes.done;
}
function stampOf(plan, options) {
	return {
		seed: options.seed ?? plan.seed,
		iterations: options.iterations ?? plan.iterations,
		version: require_version.version,
		design: options.design ?? "latin-hypercube",
		sha256: plan.sha256
	};
}
exports.detailVerb = detailVerb;
