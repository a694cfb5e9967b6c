const require_readPlan = require("./readPlan-Q8K_Z5bx.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
const require_versionsBeside = require("./versionsBeside-U7WaOrrE.cjs");
const require_unwritable = require("./unwritable-BJ47CraP.cjs");
let node_fs = require("node:fs");
// ../../packages/core/src/live/history/entryOf.ts
/** What a history keeps of a forecast; `left` where contingency left is known. */
function historyFacts(plan, forecast, left, { date, ...change }) {
	const { committed, asked, chance, asWritten } = forecast;
	const finishAt = (p) => {
		const { date: day, workingDays } = percentile(forecast.finish.percentiles, p);
		return {
			date: day,
			workingDays
		};
	};
	const costAt = (p) => percentile(forecast.cost.percentiles, p).value;
	const { money, days } = left ?? {};
	return {
		history: 1,
		date,
		...plan.statusDate === void 0 ? {} : { statusDate: plan.statusDate },
		start: plan.start,
		sha256: plan.sha256,
		approvalSha256: plan.approvalSha256,
		seed: forecast.seed,
		iterations: forecast.iterations,
		design: forecast.design,
		version: forecast.version,
		confidence: committed.confidence,
		currency: plan.currency,
		asWritten: {
			date: asWritten.finish,
			workingDays: asWritten.workingDays,
			cost: asWritten.cost
		},
		finish: {
			p10: finishAt(.1),
			p50: finishAt(.5),
			p80: finishAt(.8),
			p90: finishAt(.9),
			committed: {
				date: committed.date,
				workingDays: committed.workingDays,
				lowDate: committed.lowDate,
				highDate: committed.highDate
			}
		},
		cost: {
			p10: costAt(.1),
			p50: costAt(.5),
			p80: costAt(.8),
			p90: costAt(.9),
			committed: committed.cost,
			low: committed.costLow,
			high: committed.costHigh
		},
		asked: {
			...asked.finishBy === void 0 ? {} : { finishBy: asked.finishBy },
			...asked.budget === void 0 ? {} : { budget: asked.budget }
		},
		chance: { ...chance },
		...money === void 0 && days === void 0 ? {} : { left: {
			...money === void 0 ? {} : { money: {
				left: money.left,
				exposure: money.exposure
			} },
			...days === void 0 ? {} : { days: {
				left: days.left,
				exposure: days.exposure
			} }
		} },
		approvals: plan.approvals.flatMap(({ who, decision, date: on, plan: hash }) => hash !== void 0 && hash !== "" && plan.approvalSha256.startsWith(hash) ? [{
			who,
			decision,
			...on === void 0 ? {} : { date: on }
		}] : []),
		change
	};
}
function percentile(percentiles, p) {
	return percentiles.find((each) => each.p === p);
}
// ../../packages/core/src/live/history/linked.ts
/** SHA-256, in hex, of the RFC 8785 JSON of a line of a history, its own `hash` left out. */
function hashOfLine(line) {
	const { hash: _, ...rest } = line;
	const text = require_readPlan.canonicalize(rest);
	if (text === void 0) throw new Error("not a JSON value");
	return require_readPlan.bytesToHex(require_readPlan.sha256(require_readPlan.utf8ToBytes(text)));
}
/**
* Links what is to be written to the line before it.
*
* @param last  The last entry of the history; absent for the first.
*/
function linked(facts, last) {
	const line = {
		...facts,
		previous: last?.hash ?? null
	};
	return {
		...line,
		hash: hashOfLine(line)
	};
}
/** A line of the file, its line break included. One line: JSON escapes line breaks within texts. */
function lineOf(entry) {
	return `${JSON.stringify(entry)}\n`;
}
// ../../packages/core/src/live/history/isEntry.ts
var text = (value) => typeof value === "string";
var number = (value) => typeof value === "number" && Number.isFinite(value);
var date = (value) => typeof value === "string" && /^\d{4}-\d{2}-\d{2}$/.test(value);
var maybe = (rule) => (value) => value === void 0 || rule(value);
var list = (rule) => (value) => Array.isArray(value) && value.every(rule);
function object(keys) {
	return (value) => {
		if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
		const found = new Map(Object.entries(value));
		return Object.entries(keys).every(([key, rule]) => rule(found.get(key)));
	};
}
var finish = {
	date,
	workingDays: number
};
var part = maybe(object({
	left: number,
	exposure: number
}));
var line = object({
	history: (value) => value === 1,
	date,
	statusDate: maybe(date),
	start: date,
	sha256: text,
	approvalSha256: text,
	seed: text,
	iterations: number,
	design: (value) => value === "latin-hypercube" || value === "plain",
	version: text,
	confidence: number,
	currency: text,
	asWritten: object({
		...finish,
		cost: number
	}),
	finish: object({
		p10: object(finish),
		p50: object(finish),
		p80: object(finish),
		p90: object(finish),
		committed: object({
			...finish,
			lowDate: date,
			highDate: date
		})
	}),
	cost: object({
		p10: number,
		p50: number,
		p80: number,
		p90: number,
		committed: number,
		low: number,
		high: number
	}),
	asked: object({
		finishBy: maybe(date),
		budget: maybe(number)
	}),
	chance: object({
		finishBy: maybe(number),
		budget: maybe(number),
		both: maybe(number)
	}),
	left: maybe(object({
		money: part,
		days: part
	})),
	approvals: list(object({
		who: text,
		decision: text,
		date: maybe(date)
	})),
	change: object({
		what: text,
		who: maybe(text),
		why: maybe(text)
	}),
	previous: (value) => value === null || typeof value === "string",
	hash: text
});
/** Whether a JSON value is a line of a history; keys it does not know are let pass, and count in the hash. */
function isEntry(value) {
	return line(value);
}
// ../../packages/core/src/live/history/readHistory.ts
/**
* Reads a history, one JSON object a line (line feeds; carriage returns before them are let pass), and follows its
* links. Nothing is thrown and no complete line is lost: what does not read or does not hold together is a break with
* its line, and what stands behind the last line break is the torn beginning of a line.
*
* What links can show: a line that was changed, taken out, put in or moved. What they cannot: that lines at the end are
* missing, or that somebody wrote the whole file anew. Whoever needs that keeps the last `hash` elsewhere.
*/
function readHistory(text) {
	const history = {
		entries: [],
		lines: [],
		breaks: [],
		open: false
	};
	const rows = text.replace(/^\uFEFF/, "").split("\n");
	rows.forEach((row, index) => {
		const line = index + 1;
		const last = index === rows.length - 1;
		if (row.trim() === "") return;
		const entry = entryIn(row);
		if (entry === void 0) {
			if (last) history.torn = {
				line,
				text: row
			};
			else history.breaks.push({
				line,
				what: "unreadable"
			});
			return;
		}
		if (last) history.open = true;
		history.breaks.push(...breaksAt(entry, line, history.entries.at(-1), history.entries.length === 0));
		history.entries.push(entry);
		history.lines.push(line);
	});
	return history;
}
function breaksAt(entry, line, before, first) {
	const breaks = [];
	if (!isWhole(entry)) breaks.push({
		line,
		what: "changed"
	});
	if (entry.previous !== (first ? null : before?.hash)) breaks.push({
		line,
		what: "not-linked"
	});
	return breaks;
}
function entryIn(row) {
	try {
		const value = JSON.parse(row);
		return isEntry(value) ? value : void 0;
	} catch {
		return;
	}
}
/** A line with a number beyond doubles, or nested without end, has no RFC 8785 JSON: nothing of ours wrote it. */
function isWhole(entry) {
	try {
		return hashOfLine(entry) === entry.hash;
	} catch {
		return false;
	}
}
// src/history/keptHistory.ts
/**
* Reads a history file. Bytes that are no UTF-8 (a line torn within a letter) are read as such signs and never make a
* complete line unreadable. Throws the file system's error for a file that is there and cannot be read.
*/
function keptHistory(path) {
	let bytes;
	try {
		bytes = (0, node_fs.readFileSync)(path);
	} catch (error) {
		if (error instanceof Error && "code" in error && error.code === "ENOENT") return {
			...readHistory(""),
			text: ""
		};
		throw error;
	}
	const text = new TextDecoder().decode(bytes);
	return {
		...readHistory(text),
		text
	};
}
// src/history/append.ts
/**
* Adds forecasts to the history of a plan, each linked to the line before it.
*
* Two processes take turns (a lock), and each reads the file anew before it writes, so that no link is lost. A line goes
* out in one write and is forced to the disk; when even that is cut short, the next reading tells of a torn line. Such a
* line is moved to a file of its own before anything is added behind it.
*/
function appendToHistory({ history, torn }, facts) {
	return require_unwritable.withLock(history, () => {
		const kept = keptHistory(history);
		if (kept.torn !== void 0) {
			(0, node_fs.appendFileSync)(torn, `${kept.torn.text}\n`);
			require_writeWhole.writeWhole(history, kept.text.slice(0, kept.text.length - kept.torn.text.length), true);
		}
		const entries = [];
		let last = kept.entries.at(-1);
		for (const each of facts(last)) {
			last = linked(each, last);
			entries.push(last);
		}
		append(history, (kept.open ? "\n" : "") + entries.map(lineOf).join(""));
		return {
			entries,
			...kept.torn === void 0 ? {} : { tornLine: kept.torn.line }
		};
	});
}
function append(path, text) {
	if (text === "") return;
	const file = (0, node_fs.openSync)(path, "a");
	const { size } = (0, node_fs.fstatSync)(file);
	try {
		const bytes = Buffer.from(text, "utf8");
		for (let at = 0; at < bytes.length;) at += (0, node_fs.writeSync)(file, bytes, at);
		(0, node_fs.fsyncSync)(file);
	} catch (error) {
		(0, node_fs.ftruncateSync)(file, size);
		throw error;
	} finally {
		(0, node_fs.closeSync)(file);
	}
}
// src/history/tornNote.ts
/** That the history ended within a line, and where that piece is now. */
function tornNote(plan, line) {
	const { history, torn } = require_versionsBeside.besidePlan(plan);
	return `${history}:${line}: this line was never finished (the program was stopped while it wrote). The piece is kept in ${torn}.`;
}
// src/text/mostOf.ts
var SHOWN = 2;
/** The moves that matter most, in a sentence; the two largest, none where nothing moved. */
function mostOf({ moves, plan }) {
	const felt = moves.filter(({ workingDays, money }) => Math.abs(workingDays) >= .05 || require_movedSentences.roundMove(money) !== 0);
	const told = felt.slice(0, SHOWN).map(({ what, workingDays, money }) => {
		const sum = require_movedSentences.roundMove(money);
		const parts = [...Math.abs(workingDays) >= .05 ? [`${require_columnDays.columnDays(workingDays, true)} working days`] : [], ...sum === 0 ? [] : [require_formatMoney.formatMoney(sum, plan.currency, true)]];
		return `${what.replace(/\.$/, "")} (${parts.join(", ")})`;
	});
	if (told.length === 0) return [];
	return [felt.length <= SHOWN ? `What moved it: ${told.join("; ")}.` : `Most of it: ${told.join("; ")}.`];
}
Object.defineProperty(exports, "appendToHistory", {
	enumerable: true,
	get: function() {
		return appendToHistory;
	}
});
Object.defineProperty(exports, "historyFacts", {
	enumerable: true,
	get: function() {
		return historyFacts;
	}
});
Object.defineProperty(exports, "keptHistory", {
	enumerable: true,
	get: function() {
		return keptHistory;
	}
});
Object.defineProperty(exports, "mostOf", {
	enumerable: true,
	get: function() {
		return mostOf;
	}
});
Object.defineProperty(exports, "tornNote", {
	enumerable: true,
	get: function() {
		return tornNote;
	}
});
