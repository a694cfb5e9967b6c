const require_engine = require("./engine-Bbth-FEh.cjs");
const require_mostOf = require("./mostOf-Dwp9Kj_n.cjs");
const require_dateOption = require("./dateOption-CTPhD3LS.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_chartsWritten = require("./chartsWritten-SZDOadPC.cjs");
const require_computeComparison = require("./computeComparison-BgSru7LC.cjs");
const require_program = require("./program.cjs");
const require_versionsBeside = require("./versionsBeside-U7WaOrrE.cjs");
const require_triggerLines = require("./triggerLines-CMy4-aAs.cjs");
const require_planFile = require("./planFile-D3tgs9yU.cjs");
const require_unwritable = require("./unwritable-BJ47CraP.cjs");
const require_driftSentences = require("./driftSentences-C5XfISyo.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_nextLines = require("./nextLines-DUyxm6e8.cjs");
const require_shellWord = require("./shellWord-BxS1qYiD.cjs");
// ../../packages/core/src/live/history/drift.ts
/**
* How the commitment drifted over the lines of a history: each against the one before, and the last against the first.
* Days are calendar days, which no change of a calendar can move; sums differ only where the currency is the same.
* Absent without a line.
*/
function driftOf(entries) {
	const [first] = entries;
	const last = entries.at(-1);
	if (first === void 0 || last === void 0) return void 0;
	const points = entries.map((entry, i) => {
		const before = entries[i - 1];
		return {
			asOf: asOf(entry),
			entry,
			...before === void 0 ? {} : {
				moved: between(before, entry),
				terms: otherTerms(before, entry)
			}
		};
	});
	let latest = "";
	for (const point of points) {
		if (point.asOf < latest) point.asOf = latest;
		latest = point.asOf;
	}
	const largest = points.reduce((most, point) => Math.abs(point.moved?.days ?? 0) > Math.abs(most?.moved?.days ?? 0) ? point : most, void 0);
	return {
		points,
		moved: between(first, last),
		...largest === void 0 ? {} : { largest }
	};
}
/** The day a forecast speaks from: its status date; before there is any, the day it was written, at most the start. */
function asOf({ statusDate, date, start }) {
	return statusDate ?? (date < start ? date : start);
}
function between(from, to) {
	return {
		days: require_engine.dayNumber(to.finish.committed.date) - require_engine.dayNumber(from.finish.committed.date),
		...from.currency === to.currency ? { money: to.cost.committed - from.cost.committed } : {}
	};
}
/** What else is not the same, so that the two are not quite alike. */
function otherTerms(from, to) {
	return [
		...from.confidence === to.confidence ? [] : ["confidence"],
		...from.currency === to.currency ? [] : ["currency"],
		...from.seed === to.seed && from.iterations === to.iterations && from.design === to.design ? [] : ["draws"],
		...from.version === to.version ? [] : ["version"],
		...from.asked.finishBy === to.asked.finishBy && from.asked.budget === to.asked.budget ? [] : ["asked"],
		...from.approvalSha256 === to.approvalSha256 ? [] : ["plan"]
	];
}
// src/text/historyText.ts
/** How date and sum drifted, in words and as a table; whether the lines hold together; which triggers trip. */
function historyText(answer, page, planWord) {
	const { width, strong } = page;
	const { file, kept, standing } = answer;
	const drift = answer.drift === void 0 ? void 0 : require_program.plainTexts(answer.drift);
	const triggers = require_program.plainTexts(standing.triggers);
	const { history } = require_versionsBeside.besidePlan(file.path);
	const count = kept.entries.length;
	const head = `${require_groupDigits.groupDigits(count)} ${count === 1 ? "forecast" : "forecasts"} kept`;
	const title = require_program.cut(require_program.plainName(file.plan.title), width - head.length - 2);
	const largest = drift && require_driftSentences.largestSentence(drift);
	const last = kept.entries.at(-1);
	const explained = [`leeway history ${planWord} --explain`, "what moved from each to the next"];
	return `${[
		[strong(title) + " ".repeat(Math.max(2, width - [...title].length - head.length)) + head],
		drift === void 0 ? require_program.wrap(`No forecast was kept yet: \`leeway history ${planWord} --add\` keeps the present one.`, width) : [...require_program.wrap(require_driftSentences.driftSentence(drift), width).map(strong), ...largest === void 0 ? [] : require_program.wrap(largest, width)],
		drift === void 0 ? [] : driftTable(drift, width),
		drift === void 0 ? [] : changeLines(drift, width),
		answer.steps === void 0 ? [] : stepLines(require_program.plainTexts(answer.steps), width),
		last !== void 0 && last.sha256 !== file.plan.sha256 ? require_program.wrap(`The plan is not the one last kept: \`leeway history ${planWord} --add --why "..."\` keeps its forecast.`, width) : [],
		count + kept.breaks.length === 0 && kept.torn === void 0 ? [] : chainLines(kept, history, width),
		triggers.triggers.length === 0 ? [] : require_triggerLines.triggerLines(triggers, page),
		require_nextLines.nextLines([...answer.steps === void 0 && count > 1 ? [explained] : [], [`leeway forecast ${planWord}`, "the forecast of today"]], width)
	].filter((block) => block.length > 0).map((block) => block.join("\n")).join("\n\n")}\n`;
}
function driftTable({ points }, width) {
	const sums = points.some((point) => require_driftSentences.keptSum(point) !== void 0);
	const dated = points.some(({ entry }) => entry.chance.finishBy !== void 0);
	const currency = points.at(-1)?.entry.currency ?? "";
	const sumOf = (point) => (require_driftSentences.keptSum(point) ?? "").replace(`${currency} `, "");
	const columns = [
		{
			heading: "as of",
			align: "left"
		},
		{
			heading: "committed",
			align: "right"
		},
		{
			heading: "days",
			align: "right"
		},
		{
			heading: "P10",
			align: "right"
		},
		{
			heading: "P90",
			align: "right"
		},
		...sums ? [{
			heading: currency,
			align: "right"
		}] : [],
		...dated ? [{
			heading: "chance",
			align: "right"
		}] : []
	];
	const rows = points.map((point) => {
		const { finish, chance } = point.entry;
		const moved = point.moved?.days;
		return [
			require_formatDate.formatDate(point.asOf, "short"),
			require_formatDate.formatDate(finish.committed.date, "short"),
			moved === void 0 ? "" : moved > 0 ? `+${moved}` : moved < 0 ? `−${-moved}` : "0",
			require_formatDate.formatDate(finish.p10.date, "short"),
			require_formatDate.formatDate(finish.p90.date, "short"),
			...sums ? [sumOf(point)] : [],
			...dated ? [chance.finishBy === void 0 ? "" : require_formatPercent.formatPercent(chance.finishBy)] : []
		];
	});
	return [...require_program.wrap(`Committed date${sums ? " and sum" : ""}; calendar days since the line before${dated ? "; chance of the date asked for" : ""}`, width), ...require_program.table(columns, rows, width)];
}
/** Why each forecast was kept, who signed it, and what makes it less than alike to the one before. */
function changeLines({ points }, width) {
	return ["Why they were kept", ...points.flatMap((point) => {
		const { change, approvals } = point.entry;
		const parts = [
			change.what,
			...change.why === void 0 ? [] : [change.why],
			...change.who === void 0 ? [] : [`recorded by ${change.who}`],
			...approvals.map(({ who, decision }) => `${who}: ${decision.replaceAll("-", " ")}`),
			...require_driftSentences.termsWords(point) === void 0 ? [] : [`not only progress: ${require_driftSentences.termsWords(point)}`]
		];
		return hanging(`${require_formatDate.formatDate(point.asOf, "short")}  ${parts.join("; ")}`, width);
	})];
}
function hanging(text, width) {
	const [first = "", ...rest] = require_program.wrap(text, width - 4);
	return [`  ${first}`, ...rest.map((line) => `    ${line}`)];
}
function stepLines(steps, width) {
	if (steps.length === 0) return ["Nothing moved: every forecast kept is of the same plan."];
	return ["What moved from each to the next, with the later one's seed and futures", ...steps.flatMap(({ from, to, comparison }) => {
		const when = require_formatDate.formatDate(to.statusDate ?? to.date, "short");
		if (comparison === void 0) return hanging(`${when}  One of the two versions, ${`${from.sha256.slice(0, 12)} or ${to.sha256.slice(0, 12)}`}, was not kept: nothing can be said.`, width);
		return hanging(`${when}  ${[require_movedSentences.movedSentence(comparison), ...require_mostOf.mostOf(comparison)].join(" ")}`, width);
	})];
}
/** Whether every line follows from the one before it, and where not. */
function chainLines({ entries, breaks, torn }, history, width) {
	const said = breaks.map((each) => breakWords(each, history));
	if (torn !== void 0) said.push(`${history}:${torn.line}: this line was never finished. The next forecast kept moves the piece aside; nothing else is lost.`);
	const hash = entries.at(-1)?.hash ?? "";
	const holds = breaks.length === 0 ? [`The history holds together: each of ${entries.length === 1 ? "1 line" : `${entries.length} lines`} is linked to the one before. Last link ${hash.slice(0, 16)}; noted elsewhere, it also shows that none is missing at the end.`] : ["The history does not hold together:"];
	return [...entries.length === 0 ? [] : holds, ...said].flatMap((text) => require_program.wrap(text, width));
}
function breakWords({ line, what }, history) {
	const at = `${history}:${line}:`;
	if (what === "unreadable") return `${at} this is no line of a history.`;
	if (what === "changed") return `${at} this line was changed after it was written.`;
	return `${at} this line does not follow from the one before: a line was taken out, put in or moved.`;
}
// src/verbs/history.ts
/** How the commitment drifted over the forecasts kept beside a plan; with `--add` keeps the present one first. */
async function historyVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const charts = values.text("charts");
	const who = values.text("as");
	const why = values.text("why");
	const workers = values.count("workers", 64);
	const today = require_dateOption.dateOption(values, "today", require_dateOption.todayOf(/* @__PURE__ */ new Date()));
	if (values.problems.length + today.problems.length > 0) {
		require_program.printProblems([...values.problems, ...today.problems]);
		return require_program.exitCodes.invalid;
	}
	const file = await require_planFile.planFile(call.subject ?? "-", "history");
	if (file === void 0) return require_program.exitCodes.invalid;
	const strangers = require_planFile.whoProblems(file.plan, who);
	if (strangers.length > 0) {
		require_program.printProblems(strangers);
		return require_program.exitCodes.invalid;
	}
	const { path, text, plan } = file;
	const signed = require_versionsBeside.signedVersion(path, plan);
	const { standing, problems } = await require_triggerLines.computeStanding({
		text,
		plan,
		options: {},
		workers,
		signed,
		today: today.value
	});
	await require_program.hearStops();
	if (problems.length > 0) require_program.printProblems(problems, path);
	if (standing === void 0) return require_program.exitCodes.invalid;
	if (values.has("add")) {
		if (!await add(file, standing, {
			date: today.value,
			what: plan.statusDate === void 0 ? "forecast kept" : `forecast kept, status ${plan.statusDate}`,
			...who === void 0 ? {} : { who },
			...why === void 0 ? {} : { why }
		})) return require_program.exitCodes.invalid;
	}
	let kept;
	try {
		kept = require_mostOf.keptHistory(require_versionsBeside.besidePlan(path).history);
	} catch (error) {
		require_program.printProblems([require_unwritable.unwritable(require_versionsBeside.besidePlan(path).history, error)]);
		return require_program.exitCodes.invalid;
	}
	const steps = values.has("explain") ? await stepsOf(file, kept, workers) : void 0;
	const drift = driftOf(kept.entries);
	if (drift !== void 0 && charts !== void 0 && !await require_chartsWritten.chartsWritten("history", drift, charts)) return require_program.exitCodes.invalid;
	if (values.has("json")) {
		const { entries, breaks, torn } = kept;
		require_program.printJson({
			plan: {
				title: plan.title,
				sha256: plan.sha256,
				approvalSha256: plan.approvalSha256
			},
			entries,
			chain: {
				holds: breaks.length === 0 && torn === void 0,
				breaks,
				...torn === void 0 ? {} : { torn }
			},
			...drift === void 0 ? {} : { moved: drift.moved },
			...steps === void 0 ? {} : { steps: steps.map(stepJson) },
			triggers: standing.triggers.triggers
		});
	} else {
		const page = require_program.pageOf(process.env, process.stdout);
		require_program.printAnswer(historyText({
			file,
			kept,
			drift,
			steps,
			standing
		}, page, require_shellWord.shellWord(path)));
	}
	const amiss = kept.breaks.length > 0 || standing.triggers.triggers.some(({ state }) => state === "tripped");
	return values.has("fail") && amiss ? require_program.exitCodes.found : require_program.exitCodes.done;
}
async function add({ path, text, plan }, standing, occasion) {
	const beside = require_versionsBeside.besidePlan(path);
	try {
		require_versionsBeside.keepPlan(path, text);
		const facts = require_mostOf.historyFacts(plan, standing.forecast, standing.left, occasion);
		const { tornLine } = await require_mostOf.appendToHistory(beside, () => [facts]);
		if (tornLine !== void 0) require_program.printNote(require_mostOf.tornNote(path, tornLine));
		return true;
	} catch (error) {
		require_program.printProblems([require_unwritable.unwritable(beside.history, error)]);
		return false;
	}
}
/** What moved from each kept forecast to the next, as far as their versions are at hand. */
async function stepsOf(file, { entries }, workers) {
	const versions = /* @__PURE__ */ new Map([[file.plan.sha256, file.plan]]);
	const versionOf = (sha256) => {
		if (!versions.has(sha256)) versions.set(sha256, require_versionsBeside.findKept(file.path, sha256));
		return versions.get(sha256);
	};
	const steps = [];
	for (const [i, entry] of entries.entries()) {
		const before = entries[i - 1];
		if (before === void 0 || before.sha256 === entry.sha256) continue;
		const [oldPlan, newPlan] = [versionOf(before.sha256), versionOf(entry.sha256)];
		let comparison;
		if (oldPlan !== void 0 && newPlan !== void 0) {
			const job = {
				oldPlan,
				newPlan,
				options: {},
				...workers === void 0 ? {} : { workers }
			};
			comparison = (await require_computeComparison.computeComparison(job)).comparison;
		}
		steps.push({
			from: before,
			to: entry,
			...comparison === void 0 ? {} : { comparison }
		});
	}
	return steps;
}
function stepJson({ from, to, comparison }) {
	return {
		from: from.sha256,
		to: to.sha256,
		...comparison === void 0 ? {} : {
			difference: comparison.difference,
			moves: comparison.moves,
			stamp: comparison.stamp
		}
	};
}
exports.historyVerb = historyVerb;
