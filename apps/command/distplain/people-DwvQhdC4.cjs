const require_program = require("./program.cjs");
const require_engineOptions = require("./engineOptions-D6ubV8YL.cjs");
const require_optionValues = require("./optionValues-BOBzU9u0.cjs");
const require_answerAside = require("./answerAside-BsrttFoz.cjs");
const require_confidenceHead = require("./confidenceHead-DN5O3oWy.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_scenarioLines = require("./scenarioLines-Cu-P9jSF.cjs");
const require_answerVerb = require("./answerVerb-D9zTf4rM.cjs");
// src/text/peopleAnswer.ts
/** A difference of sums: two significant digits, with the currency. */
function roughMoney({ plan }, value, signed = false) {
	return require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), plan.currency, signed);
}
/** What limited people cost at the committed level. */
function limitsSentence(load) {
	const { limits, respectCapacity } = load;
	if (load.people.length === 0) return "The plan names no people, so nobody is waited for.";
	if (limits === void 0) return "The plan does not respect capacity, and some task asks for more of a person than there is.";
	const level = require_formatPercent.formatPercent(limits.confidence);
	const [kept, free] = [require_formatDate.formatDate(limits.with.date, "long"), require_formatDate.formatDate(limits.without.date, "long")];
	const { workingDays, money } = limits.effect;
	const apart = [...Math.abs(workingDays) < .05 ? [] : [`${require_formatDays.formatDays(Math.abs(workingDays))} ${workingDays > 0 ? "later" : "earlier"}`], ...Math.abs(money) < .5 ? [] : [`${roughMoney(load, Math.abs(money))} ${money > 0 ? "dearer" : "cheaper"}`]];
	const said = apart.length === 0 ? `Limited people cost nothing at ${level}: ${kept} either way.` : `With limited people the commitment at ${level} is ${apart.join(" and ")}: ${kept}, without limits ${free}.`;
	return respectCapacity ? said : `The plan does not respect capacity: its dates are those without limits. Were it to: ${said}`;
}
/** What happens to the commitment when somebody is away. */
function lossSentences(load) {
	const { loss } = load;
	if (loss === void 0) return [];
	const { before, after, effect, days } = loss;
	const part = loss.part === 1 ? "" : `${require_formatPercent.formatPercent(loss.part)} of `;
	const span = loss.from === loss.to ? `on ${require_formatDate.formatDate(loss.from, "weekday")}` : `from ${require_formatDate.formatDate(loss.from, "weekday")} to ${require_formatDate.formatDate(loss.to, "weekday")}`;
	const who = `Without ${part}${loss.person.name} for ${require_formatDays.formatDays(days)}, ${span}`;
	const level = require_formatPercent.formatPercent(load.limits?.confidence ?? NaN);
	const at = load.limits === void 0 ? "the committed level" : level;
	const money = Math.abs(effect.money) < .5 ? "" : `, ${roughMoney(load, effect.money, true)}`;
	return [
		Math.abs(effect.workingDays) < .05 ? `${who}, the finish at ${at} stays ${require_formatDate.formatDate(before.date, "long")}${money}.` : `${who}, the finish at ${at} moves from ${require_formatDate.formatDate(before.date, "long")} to ${require_formatDate.formatDate(after.date, "long")}: ${require_formatDays.formatDays(effect.workingDays, "working day", true)}${money}.`,
		...chanceSentence(loss),
		...touchedSentence(loss)
	];
}
function chanceSentence({ chance }) {
	const said = (pair, what) => pair === void 0 ? [] : [`${what} from ${require_formatPercent.formatPercent(pair[0])} to ${require_formatPercent.formatPercent(pair[1])}`];
	const parts = [
		...said(chance.finishBy, "the date asked for"),
		...said(chance.budget, "the budget"),
		...said(chance.both, "both")
	];
	return parts.length === 0 ? [] : [`Chances change for ${parts.join(", for ")}.`];
}
function touchedSentence({ stopped, goOn, person }) {
	const waits = stopped.length === 0 ? "" : `Stops, as the plan is written: ${stopped.join(", ")}.`;
	const without = goOn.length === 0 ? "" : `Goes on without ${person.name}: ${goOn.join(", ")}.`;
	if (stopped.length + goOn.length === 0) return ["Nothing is asked of them then, as the plan is written."];
	return [waits, without].filter((text) => text !== "");
}
// src/text/peopleLosses.ts
/** Everybody lost in turn, the worst first: whom the commitment hangs on. */
function lossLines(load, width) {
	const { losses, plan } = load;
	const [worst] = losses ?? [];
	if (losses === void 0 || worst === void 0) return [];
	const asks = worst.chance.finishBy !== void 0;
	const columns = [
		{
			heading: "without",
			align: "left"
		},
		{
			heading: "from",
			align: "left"
		},
		{
			heading: "to",
			align: "left"
		},
		{
			heading: "days",
			align: "right"
		},
		{
			heading: plan.currency,
			align: "right"
		},
		...asks ? [{
			heading: "date asked",
			align: "right"
		}] : []
	];
	const rows = losses.map(({ person, from, to, effect, chance }) => [
		person.name,
		require_formatDate.formatDate(from, "weekday-no-year"),
		require_formatDate.formatDate(to, "weekday-no-year"),
		require_columnDays.columnDays(effect.workingDays, true),
		Math.abs(effect.money) < .5 ? "0" : require_groupDigits.groupDigits(require_roundSignificant.roundSignificant(effect.money, 2)),
		...asks ? [require_formatPercent.formatPercent(chance.finishBy?.[1] ?? 0)] : []
	]);
	const was = asks ? `; the date asked for stands at ${require_formatPercent.formatPercent(worst.chance.finishBy?.[0] ?? 0)} now` : "";
	return [...require_program.wrap(`Each away in turn for ${require_formatDays.formatDays(Math.max(...losses.map(({ days }) => days)))}: what the commitment moves by${was}`, width), ...require_program.table(columns, rows, width)];
}
// src/text/peopleWaits.ts
var SHOWN = 8;
/** Waits below this many days read as nought. */
var LEAST = .05;
/** Who waits for whom, the longest wait first. */
function waitLines(load, width) {
	if (load.people.length === 0 || !load.respectCapacity) return [];
	if (load.waits.length === 0) return ["Nobody waits for anybody: no task is held up by a person, in any future."];
	const columns = [
		{
			heading: "waits",
			align: "left"
		},
		{
			heading: "for",
			align: "left"
		},
		{
			heading: "behind",
			align: "left"
		},
		{
			heading: "written",
			align: "right"
		},
		{
			heading: "mean",
			align: "right"
		},
		{
			heading: "in",
			align: "right"
		}
	];
	const room = Math.max(10, Math.floor((width - 40) / 2.4));
	const long = load.waits.filter(({ asWritten, mean }) => Math.max(asWritten, mean) >= LEAST);
	const rows = (long.length === 0 ? load.waits : long).slice(0, SHOWN).map(({ task, person, behind, asWritten, mean, share }) => [
		task.name,
		require_program.cut(person.name, Math.max(10, room - 3)),
		require_program.cut(behind?.name ?? "a part-time absence", room),
		require_columnDays.columnDays(asWritten),
		require_columnDays.columnDays(mean),
		require_formatPercent.formatPercent(share)
	]);
	const rest = load.waits.length - rows.length;
	return [
		...require_program.wrap("Who waits for whom: working days lost, in the plan as written and on average over the futures", width),
		...require_program.table(columns, rows, width),
		...rest > 0 ? [`  and ${rest} more, shorter than these`] : [],
		...require_program.wrap("A task that is not on the driving path may wait without moving the finish.", width)
	];
}
// src/text/peopleWeeks.ts
var EIGHTHS = "▁▂▃▄▅▆▇█";
var MONTHS = [
	"Jan",
	"Feb",
	"Mar",
	"Apr",
	"May",
	"Jun",
	"Jul",
	"Aug",
	"Sep",
	"Oct",
	"Nov",
	"Dec"
];
/** How many weeks there are up to the last in which a row holds anything. */
function weeksUsed(rows) {
	return Math.max(0, ...rows.map((row) => row.findLastIndex((days) => days > .005) + 1));
}
/** One letter a week: how full the capacity present is; "×" beyond it or while away. */
function sign(asked, present, beyond) {
	if (asked < .005) return "·";
	if (beyond > .005 || asked > present + .005) return "×";
	return EIGHTHS[Math.min(7, Math.max(0, Math.ceil(asked / present * 8 - 1e-6) - 1))] ?? "×";
}
/** Month names above the first week that begins in each, where they fit. */
function months(weeks) {
	let line = "";
	weeks.forEach((monday, w) => {
		const before = weeks[w - 1];
		if ((before === void 0 || before.slice(5, 7) !== monday.slice(5, 7)) && line.length <= w) line = line.padEnd(w) + (MONTHS[Number(monday.slice(5, 7)) - 1] ?? "");
	});
	return line;
}
/** Load of everybody as one letter a week, in the plan as written. */
function weekStrips(load, width) {
	const shown = weeksUsed(load.people.map(({ asked }) => asked));
	if (shown === 0) return [];
	const longest = Math.max(...load.people.map(({ name }) => [...name].length));
	const names = Math.min(24, longest, Math.max(10, width - shown - 4));
	const room = Math.max(10, width - names - 4);
	const lines = [];
	for (let from = 0; from < shown; from += room) {
		const to = Math.min(shown, from + room);
		lines.push(`  ${" ".repeat(names)}  ${months(load.weeks.slice(from, to))}`.trimEnd());
		for (const person of load.people) {
			const strip = load.weeks.slice(from, to).map((_, k) => signAt(person, from + k)).join("");
			const name = require_program.cut(person.name, names);
			lines.push(`  ${name}${" ".repeat(names - [...name].length)}  ${strip}`);
		}
	}
	return [...require_program.wrap("Load by week, plan as written: how full the capacity present is; × more than that, or asked for while away", width), ...lines];
}
function signAt({ asked, present, over, away }, w) {
	return sign(asked[w] ?? 0, present[w] ?? 0, (over[w] ?? 0) + (away[w] ?? 0));
}
var sum = (values) => values.reduce((total, value) => total + value, 0);
/** Everybody in figures: what is asked in all, the busiest week, and how often it is too much. */
function personLines(load, width) {
	if (load.people.length === 0) return [];
	const tooMuch = load.people.some(({ over }) => sum(over) > .005);
	const missed = load.people.some(({ away }) => sum(away) > .005);
	const columns = [
		{
			heading: "person-days",
			align: "left"
		},
		{
			heading: "in all",
			align: "right"
		},
		{
			heading: "busiest week",
			align: "left"
		},
		{
			heading: "8 in 10",
			align: "right"
		},
		...tooMuch ? [{
			heading: "weeks over",
			align: "right"
		}] : [],
		...missed ? [{
			heading: "while away",
			align: "right"
		}] : []
	];
	const rows = load.people.map(({ name, asked, present, over, away, p80 }) => {
		const busiest = asked.indexOf(Math.max(...asked));
		const most = asked[busiest] ?? 0;
		return [
			name,
			require_columnDays.columnDays(sum(asked)),
			most > 0 ? `${require_columnDays.columnDays(most)} of ${require_columnDays.columnDays(present[busiest] ?? 0)}, ${require_formatDate.formatDate(load.weeks[busiest] ?? "", "shortest")}` : "",
			require_columnDays.columnDays(Math.max(0, ...p80)),
			...tooMuch ? [String(over.filter((days) => days > .005).length)] : [],
			...missed ? [require_columnDays.columnDays(sum(away))] : []
		];
	});
	return [
		...require_program.wrap("Load in the plan as written; 8 in 10: what its fullest week stays within that often, over the futures" + (missed ? "; while away: somebody stands in, or the task goes on without" : ""), width),
		...require_program.table(columns, rows, width),
		...unlimitedLines(load, width)
	];
}
/** Where work would pile up if nobody waited: it says who is short. */
function unlimitedLines(load, width) {
	if (!load.respectCapacity) return [];
	const piled = load.people.map(({ name, unlimited }) => ({
		name,
		days: sum(unlimited.over)
	})).filter(({ days }) => days > .005).sort((a, b) => b.days - a.days);
	if (piled.length === 0) return [];
	const named = piled.slice(0, 4).map(({ name, days }) => `${name} ${require_columnDays.columnDays(days)}`);
	return require_program.wrap(`If nobody waited, person-days beyond capacity, as written: ${named.join(", ")}.`, width);
}
/** One person week by week, in figures. */
function personWeeks(load, person, width) {
	const columns = [
		{
			heading: "week of",
			align: "left"
		},
		{
			heading: "asked",
			align: "right"
		},
		{
			heading: "present",
			align: "right"
		},
		{
			heading: "over",
			align: "right"
		},
		{
			heading: "while away",
			align: "right"
		},
		{
			heading: "mean",
			align: "right"
		},
		{
			heading: "8 in 10",
			align: "right"
		}
	];
	const rows = load.weeks.slice(0, weeksUsed([person.asked, person.p80])).map((monday, w) => [require_formatDate.formatDate(monday, "short"), ...[
		person.asked,
		person.present,
		person.over,
		person.away,
		person.mean,
		person.p80
	].map((row) => require_columnDays.columnDays(row[w] ?? 0))]);
	const tasks = person.tasks.length === 0 ? "nothing" : person.tasks.join(", ");
	return [...require_program.wrap(`${person.name}, person-days by week; named in ${tasks}`, width), ...require_program.table(columns, rows, width)];
}
// src/text/peopleText.ts
/**
* Load against capacity as a person reads it: what limited people cost, who is missed when away, who waits for whom,
* then the load. Every figure is the library's own.
*
* @param wanted  Id of a person to be shown week by week.
* @returns text ending with a newline
*/
function peopleText(given, page, planName, scenario = {}, wanted) {
	const load = require_program.plainTexts(given);
	const { width, strong } = page;
	const person = load.people.find(({ id }) => id === wanted);
	const loss = lossSentences(load);
	const [first] = load.people;
	return `${[
		[require_confidenceHead.explanationHead(load.plan.title, load.stamp, page)],
		require_scenarioLines.scenarioLines(scenario, width),
		[...loss.flatMap((sentence, k) => require_program.wrap(sentence, width).map(k === 0 ? strong : String)), ...require_program.wrap(limitsSentence(load), width).map(loss.length === 0 ? strong : String)],
		lossLines(load, width),
		waitLines(load, width),
		personLines(load, width),
		person === void 0 ? weekStrips(load, width) : personWeeks(load, person, width),
		first === void 0 ? [] : [
			"What to look at next",
			`  leeway people ${planName} --person ${first.id}`,
			`  leeway people ${planName} --lose-each --days 10`
		],
		require_program.wrap(require_confidenceHead.explanationStamp(load.stamp), width)
	].filter((lines) => lines.length > 0).map((lines) => lines.join("\n")).join("\n\n")}\n`;
}
// src/verbs/people.ts
var LONGEST_ABSENCE = 366;
/** Who is away for how long, when the call says so. */
function readLoss(values) {
	const person = values.text("lose");
	const days = values.count("days", LONGEST_ABSENCE);
	const from = values.text("from");
	const part = values.chance("part");
	const problems = [];
	const each = values.has("lose-each");
	if (person === void 0 && !each) for (const name of [
		"days",
		"from",
		"part"
	].filter((each) => values.has(each))) problems.push(require_program.callProblem("option-alone", `--${name}`, "It belongs to --lose or --lose-each.", "Say who: --lose ID."));
	else if (!values.has("days")) problems.push(require_program.callProblem("option-missing", each ? "--lose-each" : "--lose", "It needs --days.", "Write e.g. --days 10."));
	const absence = days === void 0 ? void 0 : {
		days,
		...from === void 0 ? {} : { from },
		...part === void 0 ? {} : { part }
	};
	return {
		problems,
		loss: {
			...person === void 0 || absence === void 0 ? {} : { lose: {
				person,
				...absence
			} },
			...!each || absence === void 0 ? {} : { loseEach: absence }
		}
	};
}
/** Whether a person asked for by id is in the plan. */
function strangerProblem(plan, id) {
	const ids = plan.people.map((person) => person.id).sort();
	if (id === void 0 || ids.includes(id)) return [];
	const near = require_program.nearest$1(id, ids);
	const known = ids.length === 0 ? "This plan names no people." : `Name one of: ${ids.join(", ")}.`;
	const remedy = near === void 0 ? known : `Did you mean ${near}?`;
	return [require_program.callProblem("unknown-id", `--person ${id}`, "There is nobody of that id in the plan.", remedy)];
}
/** Load against capacity, who waits for whom, and what it does when somebody is away. */
function peopleVerb(call) {
	const values = new require_optionValues.OptionValues(call.options);
	const wanted = values.text("person");
	const { loss, problems: wrong } = readLoss(values);
	const options = {
		...require_engineOptions.engineOptions(values),
		...loss
	};
	return require_answerVerb.answerVerb(call, values, {
		options,
		problems: wrong,
		rowsAsTasks: (plan) => plan.tasks.length + 8,
		unfit: (plan) => strangerProblem(plan, wanted),
		async ask(plan, onProgress) {
			const found = await require_answerAside.answerAside({
				kind: "people",
				plan,
				options
			}, onProgress);
			return {
				answer: found.people,
				problems: found.problems
			};
		},
		text: (answer, page, plan) => peopleText(answer, page, plan, options, wanted),
		draw: require_answerVerb.drawing("people", values)
	});
}
exports.peopleVerb = peopleVerb;
