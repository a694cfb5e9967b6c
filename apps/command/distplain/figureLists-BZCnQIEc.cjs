require("./rolldown-runtime-C-fzZZTt.cjs");
const require_fonts = require("./fonts-G8mucTyq.cjs");
const require_palette = require("./palette-CMcc1XZm.cjs");
const require_formatDays = require("./formatDays-DEMDjUk-.cjs");
const require_formatMoney = require("./formatMoney-P4KPWBD6.cjs");
const require_formatPercent = require("./formatPercent-ycW0QeRd.cjs");
const require_roundSignificant = require("./roundSignificant-xRE9_RKs.cjs");
const require_arrangeDots = require("./arrangeDots-DxEiM50T.cjs");
const require_columnDays = require("./columnDays-CLrgtuc2.cjs");
const require_formatDate = require("./formatDate-DUbS-JA_.cjs");
const require_roundToLimits = require("./roundToLimits-D1BVCCO9.cjs");
const require_groupDigits = require("./groupDigits-CJi_h5_w.cjs");
const require_fundsFinding = require("./fundsFinding-BxGIYfJN.cjs");
const require_formatChance = require("./formatChance-DsebNIGf.cjs");
const require_driftSentences = require("./driftSentences-C5XfISyo.cjs");
const require_movedSentences = require("./movedSentences-B_ja7nbd.cjs");
const require_program = require("./program.cjs");
const require_heldText = require("./heldText-aTdl5C1y.cjs");
// ../../packages/charts/src/draw/itemLabel.ts
/**
* The name of a row and, quietly, a word on what it is. In a column: on up to two lines, the word at
* the end of the second. `inline`: all on one line, its foot at `y`.
*/
function itemLabel(document, name, said, at, colours) {
	const group = require_fonts.make(document, "g");
	let word = said;
	const line = (text, x, y, quiet) => group.append(require_fonts.make(document, "text", {
		x,
		y,
		"font-size": quiet ? 12 : 13,
		fill: quiet ? colours.inkQuiet : colours.ink
	}, text));
	const most = at.width * .6;
	if (at.inline) {
		word = require_fonts.fitText(word, most, 12);
		const wordWidth = word === "" ? 0 : require_palette.textWidth(word, 12) + 8;
		const shown = require_fonts.fitText(name, at.width - wordWidth, 13);
		line(shown, at.x, at.y, false);
		if (word !== "") line(word, at.x + require_palette.textWidth(shown, 13) + 8, at.y, true);
		return group;
	}
	const [first, ...more] = require_fonts.wrapText(name, at.width, 13, 2);
	const second = more.join(" ");
	word = require_fonts.fitText(word, second === "" ? at.width : most, 12);
	const middle = at.y + 4.5;
	const two = second !== "" || word !== "";
	line(first ?? "", at.x, two ? middle - 7.5 : middle, false);
	const shown = word === "" || second === "" ? second : require_fonts.fitText(second, at.width - require_palette.textWidth(word, 12) - 8, 13);
	if (shown !== "") line(shown, at.x, middle + 7.5, false);
	if (word !== "") line(word, at.x + (shown === "" ? 0 : require_palette.textWidth(shown, 13) + 8), middle + 7.5, true);
	return group;
}
// ../../packages/charts/src/draw/levels.ts
/** Line of a level: its colour and dash differ, and so does the shape of `levelShape`. */
function levelLine(level, colours) {
	switch (level) {
		case "committed": return {
			stroke: colours.committed,
			"stroke-width": 2
		};
		case "asWritten": return {
			stroke: colours.asWritten,
			"stroke-width": 1.75,
			"stroke-dasharray": "7 4"
		};
		case "asked": return {
			stroke: colours.ink,
			"stroke-width": 2,
			"stroke-dasharray": "0.1 4.5",
			"stroke-linecap": "round"
		};
		case "half": return {
			stroke: colours.inkQuiet,
			"stroke-width": 1
		};
	}
}
/** Colour of the words that name a level. */
function levelColour(level, colours) {
	if (level === "committed") return colours.committed;
	if (level === "asWritten") return colours.asWritten;
	return level === "asked" ? colours.ink : colours.inkQuiet;
}
/**
* Shape of a level, centred on (x, y): a full disc for what is committed to, a diamond for the plan as
* written, a peg pointing up at what was asked for, a ring for the half.
*/
function levelShape(document, level, x, y, colours) {
	switch (level) {
		case "committed": return require_fonts.make(document, "circle", {
			cx: x,
			cy: y,
			r: 5,
			fill: colours.committed,
			stroke: colours.paper,
			"stroke-width": 1.5
		});
		case "asWritten": return require_fonts.make(document, "rect", {
			x: x - 4.2,
			y: y - 4.2,
			width: 8.4,
			height: 8.4,
			transform: `rotate(45 ${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100})`,
			fill: colours.asWritten,
			stroke: colours.paper,
			"stroke-width": 1.5
		});
		case "asked": return require_fonts.make(document, "path", {
			d: `M${Math.round(x * 100) / 100},${Math.round((y + 1) * 100) / 100}l5.5,9h-11z`,
			fill: colours.paper,
			stroke: colours.ink,
			"stroke-width": 1.75,
			"stroke-linejoin": "round"
		});
		case "half": return require_fonts.make(document, "circle", {
			cx: x,
			cy: y,
			r: 3.75,
			fill: colours.paper,
			stroke: colours.inkQuiet,
			"stroke-width": 1.5
		});
	}
}
// ../../packages/charts/src/draw/openSvg.ts
/** Widths outside of these are drawn at the nearer one; the page scales the picture. */
function drawingWidth(width = 720) {
	return Number.isFinite(width) ? Math.max(320, Math.min(1600, Math.round(width))) : 720;
}
/**
* An empty drawing: label type, ink, left to right whatever the page around it does. No style sheet, no
* class, no id: nothing in it depends on the page, and a page may hold any number of them.
*/
function openSvg(document, width, height, colours) {
	return require_fonts.make(document, "svg", {
		width,
		height,
		viewBox: `0 0 ${require_fonts.px(width)} ${require_fonts.px(height)}`,
		"font-family": require_fonts.sans,
		"font-size": 12,
		"font-variant-numeric": "tabular-nums",
		fill: colours.ink,
		direction: "ltr"
	});
}
// ../../packages/charts/src/confidence/drawSteps.ts
var rowHeight = 30;
var barHeight$2 = 11;
var between$1 = 28;
/** Panels of bars over the same rows: side by side where there is room, else one under the other. */
function drawSteps(rows, panels, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const abreast = width >= 660;
	const nameWidth = rows.reduce((most, { name, word }) => Math.max(most, require_palette.textWidth(name, 13), require_palette.textWidth(word, 12)), 40);
	const head = 26;
	const panelHeight = head + rows.length * rowHeight + 24;
	const left = nameWidth + 16;
	const room = width - 2 - left;
	const columns = abreast ? panels.length : 1;
	const panelWidth = (room - between$1 * (columns - 1)) / columns;
	const svg = openSvg(document, width, (abreast ? panelHeight : panelHeight * panels.length + 12 * (panels.length - 1)) + 2, colours);
	panels.forEach((panel, k) => {
		const x = left + (abreast ? k * (panelWidth + between$1) : 0);
		const y = abreast ? 0 : k * (panelHeight + 12);
		if (k === 0 || !abreast) rows.forEach(({ name, word }, row) => {
			const place = {
				x: 2,
				y: y + head + (row + .5) * rowHeight,
				width: nameWidth,
				inline: false
			};
			svg.append(itemLabel(document, name, word, place, colours));
		});
		svg.append(...drawPanel(document, rows, panel, x, y, panelWidth, colours));
	});
	return svg;
	function drawPanel(document, rows, panel, left, top, width, colours) {
		const bars = require_fonts.make(document, "g");
		const texts = require_fonts.make(document, "g");
		const figureWidth = panel.values.reduce((most, { text }) => Math.max(most, require_palette.textWidth(text, 13, true)), 0);
		const right = left + width - figureWidth - 14;
		const [from, to] = span$1(panel);
		const scale = (value) => to > from ? left + 6 + (value - from) / (to - from) * (right - left - 12) : (left + right) / 2;
		const zero = scale(panel.base);
		const first = top + head;
		const last = first + rows.length * rowHeight;
		texts.append(require_fonts.make(document, "text", {
			x: left,
			y: top + 14,
			fill: colours.inkQuiet
		}, panel.heading));
		const line = panel.written === void 0 ? { stroke: colours.ink } : levelLine("asWritten", colours);
		bars.append(require_fonts.make(document, "line", {
			x1: zero,
			x2: zero,
			y1: first,
			y2: last,
			...line
		}));
		if (panel.written !== void 0) {
			const wide = require_palette.textWidth(panel.written, 12);
			const at = Math.max(left, Math.min(left + width - wide, zero - wide / 2));
			texts.append(require_fonts.make(document, "text", {
				x: at,
				y: last + 14,
				fill: colours.asWritten
			}, panel.written));
		}
		panel.values.forEach(({ at, low, high, text }, k) => {
			const committed = rows[k]?.committed === true;
			const y = first + (k + .5) * rowHeight;
			const x = scale(at);
			const paint = committed ? {
				fill: colours.committed,
				stroke: colours.committed
			} : {
				fill: colours.rangeCore,
				stroke: colours.rangeEdge
			};
			const box = {
				x: Math.min(zero, x),
				y: y - barHeight$2 / 2,
				width: Math.abs(x - zero),
				height: barHeight$2
			};
			bars.append(require_fonts.make(document, "rect", {
				...box,
				...paint
			}));
			if (low !== void 0 && high !== void 0 && high > low) {
				const [a, b] = [require_fonts.px(scale(low)), require_fonts.px(scale(high))];
				const d = `M${a},${require_fonts.px(y)}H${b}M${a},${require_fonts.px(y - 3)}V${require_fonts.px(y + 3)}M${b},${require_fonts.px(y - 3)}V${require_fonts.px(y + 3)}`;
				for (const [stroke, wide] of [[colours.paper, 3.5], [colours.ink, 1.25]]) bars.append(require_fonts.make(document, "path", {
					d,
					fill: "none",
					stroke,
					"stroke-width": wide
				}));
			}
			if (committed) bars.append(levelShape(document, "committed", x, y, colours));
			const type = committed ? {
				fill: colours.committed,
				"font-weight": 600
			} : {};
			const place = {
				x: left + width,
				y: y + 4.5,
				"text-anchor": "end",
				"font-size": 13
			};
			texts.append(require_fonts.make(document, "text", {
				...place,
				...type
			}, text));
		});
		return [bars, texts];
	}
}
function span$1({ base, values }) {
	let [from, to] = [base, base];
	for (const { at, low, high } of values) {
		from = Math.min(from, at, low ?? at);
		to = Math.max(to, at, high ?? at);
	}
	return [from, to];
}
// ../../packages/charts/src/confidence/stepsFinding.ts
/**
* What the levels say, in one sentence: where the next step holds more than it avoids, as far as sampling lets
* it be told; and where lateness has no price, what the next step takes.
*/
function stepsFinding({ steps, stop, confidence, plan }) {
	const money = (value) => require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), plan.currency);
	const level = require_formatPercent.formatPercent(confidence);
	if (stop === void 0) {
		const next = steps[steps.findIndex((step) => step.p === confidence) + 1] ?? steps[steps.length - 1];
		if (next === void 0) return "No level of confidence has been tried";
		if (next.bought === void 0) return `${level} is the only level that was tried`;
		const before = steps[steps.indexOf(next) - 1];
		const step = `The step from ${require_formatPercent.formatPercent(before?.p ?? confidence)} to ${require_formatPercent.formatPercent(next.p)}`;
		if (next.bought.workingDays === 0 && next.bought.money === 0) return `${step} takes no day and no money`;
		return `${step} takes ${require_formatDays.formatDays(next.bought.workingDays)} and ${money(next.bought.money)}`;
	}
	const best = require_formatPercent.formatPercent(stop.p);
	if (!stop.clear) return `Stopping near ${best} is worth most, as far as ${level} and its neighbours can be told apart`;
	const { next } = stop;
	if (next === void 0) return `Even the step to ${best} avoids more lateness than it holds in money`;
	const beyond = `the step to ${require_formatPercent.formatPercent(next.p)} holds ${money(next.costs)} more and avoids ${money(next.avoids)} of lateness`;
	if (stop.p === confidence) return `Steps pay up to ${best}: ${beyond}`;
	return stop.p < confidence ? `Beyond ${best} a step costs more than it avoids, and the plan commits to ${level}: ${beyond}` : `Going on from ${level} to ${best} avoids more lateness than it holds; ${beyond}`;
}
// ../../packages/charts/src/draw/emptyDrawing.ts
/** A drawing that says in a sentence why there is nothing to draw. */
function emptyDrawing(sentence, options) {
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const lines = require_fonts.wrapText(sentence, width - 4, 14);
	const svg = openSvg(options.document, width, 24 + lines.length * 20, colours);
	lines.forEach((line, k) => {
		const at = {
			x: 2,
			y: 28 + k * 20,
			"font-size": 14,
			fill: colours.inkQuiet
		};
		svg.append(require_fonts.make(options.document, "text", at, line));
	});
	return svg;
}
// ../../packages/charts/src/confidenceSteps.ts
/**
* Why this confidence: for every level the date and the sum that hold it, as bars from the plan as written, and
* what lateness is still to be expected beyond, where the plan prices it. The level committed to is marked.
*
* Reads `steps`, `stop`, `asWritten`, `confidence`, `plan`.
*/
function confidenceSteps(answer, options) {
	const { steps, asWritten, confidence, plan, stop } = answer;
	const priced = steps.some((step) => step.latenessLeft !== void 0);
	const sum = roundedSums(steps);
	const money = (value) => require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), "");
	const signed = (value) => require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), "", true);
	const day = (iso) => (require_arrangeDots.isoToMs(iso) - require_arrangeDots.isoToMs(plan.start)) / require_arrangeDots.dayMs + 1;
	const panels = [{
		heading: "Finish by",
		base: asWritten.day,
		written: `as written ${require_formatDate.formatDate(asWritten.date)}`,
		values: steps.map((step) => ({
			at: step.day,
			...step.lowDate === step.highDate ? {} : {
				low: Math.min(step.day, day(step.lowDate)),
				high: Math.max(step.day, day(step.highDate))
			},
			text: require_formatDate.formatDate(step.date)
		}))
	}, {
		heading: `Costs at most, ${plan.currency}`,
		base: asWritten.cost,
		written: `as written ${sum(asWritten.cost)}`,
		values: steps.map((step) => ({
			at: step.cost,
			low: step.costLow,
			high: step.costHigh,
			text: sum(step.cost)
		}))
	}];
	if (priced) panels.push({
		heading: `Lateness left, ${plan.currency}`,
		base: 0,
		values: steps.map(({ latenessLeft = 0 }) => ({
			at: latenessLeft,
			text: money(latenessLeft)
		}))
	});
	const title = stepsFinding(answer);
	const rows = steps.map((step) => ({
		name: require_formatPercent.formatPercent(step.p),
		word: [step.p === confidence ? "committed" : "", step.p === stop?.p ? "pays up to here" : ""].filter((word) => word !== "").join(", "),
		committed: step.p === confidence
	}));
	const columns = [
		{
			name: "Level",
			align: "start"
		},
		{
			name: "Finish by",
			align: "end"
		},
		{
			name: "Limits",
			align: "end"
		},
		{
			name: "Costs at most",
			unit: plan.currency,
			align: "end"
		},
		{
			name: "The step takes",
			unit: "working days",
			align: "end"
		},
		{
			name: "The step takes",
			unit: plan.currency,
			align: "end"
		},
		...priced ? [
			{
				name: "It avoids in lateness",
				unit: plan.currency,
				align: "end"
			},
			{
				name: "Lateness left",
				unit: plan.currency,
				align: "end"
			},
			{
				name: "Worth it",
				align: "start"
			}
		] : []
	];
	return {
		title,
		subtitle: `What each level of confidence takes, from the plan as written on${priced ? ", and the lateness still to be expected beyond its date" : ""}; whiskers: 95 % sampling limits`,
		summary: summary$2(answer, sum, priced),
		table: {
			columns,
			rows: steps.map((step) => [
				require_formatPercent.formatPercent(step.p),
				require_formatDate.formatDate(step.date, "weekday"),
				step.lowDate === step.highDate ? require_formatDate.formatDate(step.lowDate) : `${require_formatDate.formatDate(step.lowDate)} to ${require_formatDate.formatDate(step.highDate)}`,
				sum(step.cost),
				step.bought === void 0 ? "" : require_columnDays.columnDays(step.bought.workingDays, true),
				step.bought === void 0 ? "" : signed(step.bought.money),
				...priced ? [
					step.avoided === void 0 ? "" : money(step.avoided),
					step.latenessLeft === void 0 ? "" : money(step.latenessLeft),
					step.worthIt === void 0 ? "" : step.worthIt ? "yes" : "no"
				] : []
			])
		},
		svg: steps.length === 0 ? emptyDrawing("No level was tried.", options) : drawSteps(rows, panels, options)
	};
}
/** All sums end on the same place: the coarsest that the limits of any step ask for. */
function roundedSums(steps) {
	let place = 0;
	for (const { cost, costLow, costHigh } of steps) place = Math.max(place, require_roundToLimits.limitStep(cost, costLow, costHigh));
	return (value) => require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, place), "");
}
function summary$2({ steps, plan, confidence, missing }, sum, priced) {
	const [first, last] = [steps[0], steps[steps.length - 1]];
	if (first === void 0 || last === void 0) return "No level of confidence has been tried.";
	const say = (step) => `${require_formatPercent.formatPercent(step.p)} takes ${require_formatDate.formatDate(step.date)} and ${plan.currency} ${sum(step.cost)}`;
	const own = steps.find((step) => step.p === confidence);
	const said = [.../* @__PURE__ */ new Set([
		first,
		own ?? first,
		last
	])].map(say).join("; ");
	const left = own?.latenessLeft === void 0 ? "" : ` Beyond the committed date, lateness of ${require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(own.latenessLeft, 2), plan.currency)} is still to be expected.`;
	return `Bars for ${steps.length === 1 ? "one level" : `${steps.length} levels`} of confidence: ${said}.${left}${priced ? "" : ` ${missing ?? "The plan does not price lateness."}`}`;
}
// ../../packages/charts/src/axes/calendarAxis.ts
/**
* Ticks down from `y` and, to the right of each, what begins there; beneath, the year where it changes. Room
* for a peg is left between the line and the words. Labels that would run into the one before are left out.
*/
function calendarAxis(document, ticks, x, y, left, right, colours) {
	const axis = require_fonts.make(document, "g", { fill: colours.inkQuiet });
	axis.append(require_fonts.make(document, "line", {
		x1: left,
		x2: right,
		y1: y,
		y2: y,
		stroke: colours.ink
	}));
	let free = Number.NEGATIVE_INFINITY;
	let freeBelow = Number.NEGATIVE_INFINITY;
	for (const tick of ticks) {
		const at = x(tick.day);
		axis.append(require_fonts.make(document, "line", {
			x1: at,
			x2: at,
			y1: y,
			y2: y + 6,
			stroke: colours.ink
		}));
		const begins = at + 4;
		const wide = require_palette.textWidth(tick.label, 12);
		if (tick.label === "" || begins < free || begins + wide > right + 14) continue;
		free = begins + wide + 6;
		axis.append(require_fonts.make(document, "text", {
			x: begins,
			y: y + 27
		}, tick.label));
		if (tick.below === "" || begins < freeBelow || begins + require_palette.textWidth(tick.below, 12) > right + 14) continue;
		freeBelow = begins + require_palette.textWidth(tick.below, 12) + 6;
		axis.append(require_fonts.make(document, "text", {
			x: begins,
			y: y + 43
		}, tick.below));
	}
	return axis;
}
// ../../packages/charts/src/axes/roundTicks.ts
/** Nought and every round step (1, 2 or 5 times a power of ten) from `from` to `to`: at most `most` or so. */
function roundTicks(from, to, most) {
	const span = to - from;
	if (!(span > 0) || !Number.isFinite(span)) return Number.isFinite(from) ? [from] : [];
	const rough = span / Math.max(1, most);
	const power = 10 ** Math.floor(Math.log10(rough));
	const step = ([
		1,
		2,
		5,
		10
	].find((each) => each * power >= rough * .999) ?? 10) * power;
	const ticks = [];
	const first = Math.ceil(from / step - 1e-9);
	const last = Math.floor(to / step + 1e-9);
	for (let k = first; k <= last && ticks.length < 100; k++) ticks.push(k * step);
	return ticks;
}
/** The unit sums are written in on an axis: the currency, in millions or billions where sums are long. */
function moneyUnit(largest, currency) {
	const size = Math.abs(largest);
	if (size >= 1e10) return {
		divisor: 1e9,
		name: `${currency} billion`
	};
	if (size >= 1e7) return {
		divisor: 1e6,
		name: `${currency} million`
	};
	return {
		divisor: 1,
		name: currency
	};
}
/** Tick labels with just the decimals the step needs. */
function tickLabels(ticks, divisor = 1) {
	const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0)) / divisor;
	const decimals = step > 0 ? Math.max(0, Math.min(10, -Math.floor(Math.log10(step) + 1e-9))) : 0;
	return ticks.map((tick) => require_groupDigits.groupDigits(tick / divisor, decimals));
}
// ../../packages/charts/src/labels/placeAlong.ts
/**
* Moves labels along one axis until none overlap, as little as possible.
*
* Order is kept (ties by place in the list). Where labels want the same room they form a block, and the block
* goes to the mean of what its members want: the least-squares answer, found by pooling adjacent violators
* (Barlow, Bartholomew, Bremner & Brunk 1972, Statistical Inference under Order Restrictions; recalled).
*
* @param gap  Least room between two labels, px.
* @returns The centre of each label, in the order given; or undefined when they do not all fit in `min` to `max`.
*
* Cost  n log n.
*/
function placeAlong(wishes, min, max, gap = 4) {
	const room = wishes.reduce((sum, w) => sum + w.size, 0) + gap * Math.max(0, wishes.length - 1);
	if (room > max - min + 1e-9) return void 0;
	const order = wishes.map((wish, index) => ({
		wish,
		index
	})).sort((a, b) => a.wish.at - b.wish.at || a.index - b.index);
	const packed = [];
	let edge = min;
	for (const { wish } of order) {
		packed.push(edge + wish.size / 2);
		edge += wish.size + gap;
	}
	const blocks = [];
	order.forEach(({ wish }, k) => {
		blocks.push({
			sum: wish.at - (packed[k] ?? 0),
			count: 1
		});
		for (;;) {
			const last = blocks[blocks.length - 1];
			const before = blocks[blocks.length - 2];
			if (last === void 0 || before === void 0) break;
			if (before.sum / before.count <= last.sum / last.count) break;
			blocks.splice(-2, 2, {
				sum: before.sum + last.sum,
				count: before.count + last.count
			});
		}
	});
	const spare = Math.max(0, max - min - room);
	const centres = new Array(wishes.length).fill(0);
	let k = 0;
	for (const block of blocks) {
		const shift = Math.max(0, Math.min(spare, block.sum / block.count));
		for (let member = 0; member < block.count; member++, k++) {
			const item = order[k];
			if (item !== void 0) centres[item.index] = (packed[k] ?? 0) + shift;
		}
	}
	return centres;
}
// ../../packages/charts/src/contingencyLeft/drawLeft.ts
/** Exposure ahead as a falling staircase against what is left, a level line. */
function drawLeft(view, options) {
	const { document } = options;
	const { steps, left: kept } = view;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const values = [...steps.map(({ value }) => value), ...kept === void 0 ? [] : [kept]];
	const low = Math.min(0, ...values);
	const high = Math.max(low + 1e-9, ...values);
	const unit = view.money ? moneyUnit(high, view.unit) : {
		divisor: 1,
		name: view.unit
	};
	const plotHeight = width < 520 ? 180 : 240;
	const ticks = roundTicks(low, high, Math.floor(plotHeight / 44));
	const labels = tickLabels(ticks, unit.divisor);
	const left = 12 + labels.reduce((widest, label) => Math.max(widest, require_palette.textWidth(label, 12)), 0);
	const first = steps[0] ?? {
		day: 0,
		value: 0
	};
	const last = steps.at(-1) ?? first;
	const names = [{
		name: "May be needed",
		value: first.value,
		text: view.say(first.value),
		fill: colours.inkQuiet
	}, ...kept === void 0 ? [] : [{
		name: "Left",
		value: kept,
		text: view.say(kept),
		fill: colours.committed
	}]];
	const side = names.reduce((widest, { name, text }) => Math.max(widest, require_palette.textWidth(name, 12, true), require_palette.textWidth(text, 12)), 0);
	const right = width - 16 - side;
	const span = Math.max(1, last.day - first.day);
	const x = (day) => left + (day - first.day) / span * (right - left);
	const top = 34;
	const bottom = top + plotHeight;
	const y = (value) => bottom - (value - low) / (high - low) * plotHeight;
	const svg = openSvg(document, width, bottom + 50, colours);
	const line = steps.flatMap(({ day, value }, i) => {
		const next = steps[i + 1];
		return next === void 0 ? [[day, value]] : [[day, value], [next.day, value]];
	}).map(([day, value]) => `${require_fonts.px(x(day))},${require_fonts.px(y(value))}`).join("L");
	const area = require_fonts.make(document, "g");
	area.append(require_fonts.make(document, "path", {
		d: `M${require_fonts.px(x(first.day))},${require_fonts.px(y(0))}L${line}L${require_fonts.px(x(last.day))},${require_fonts.px(y(0))}Z`,
		fill: colours.rangeCore
	}), require_fonts.make(document, "path", {
		d: `M${line}`,
		fill: "none",
		stroke: colours.rangeEdge,
		"stroke-width": 1.5
	}));
	const axes = require_fonts.make(document, "g", { fill: colours.inkQuiet });
	axes.append(require_fonts.make(document, "text", {
		x: 2,
		y: 18
	}, unit.name));
	axes.append(require_fonts.make(document, "line", {
		x1: left,
		x2: left,
		y1: top,
		y2: bottom,
		stroke: colours.ink
	}));
	if (low < 0) axes.append(require_fonts.make(document, "line", {
		x1: left,
		x2: right,
		y1: y(0),
		y2: y(0),
		stroke: colours.ink
	}));
	ticks.forEach((tick, k) => {
		axes.append(require_fonts.make(document, "line", {
			x1: left - 5,
			x2: left,
			y1: y(tick),
			y2: y(tick),
			stroke: colours.ink
		}));
		if (y(tick) > 30) axes.append(require_fonts.make(document, "text", {
			x: left - 8,
			y: y(tick) + 4,
			"text-anchor": "end"
		}, labels[k] ?? ""));
	});
	const words = require_fonts.make(document, "g");
	if (kept !== void 0) words.append(require_fonts.make(document, "line", {
		x1: left,
		x2: right,
		y1: y(kept),
		y2: y(kept),
		stroke: colours.committed,
		"stroke-width": 2
	}));
	const wishes = names.map(({ value }) => ({
		at: y(value),
		size: 28
	}));
	const rows = placeAlong(wishes, 20, bottom + 14, 2) ?? wishes.map(({ at }) => at);
	names.forEach(({ name, text, fill }, k) => {
		const row = rows[k] ?? 0;
		words.append(require_fonts.make(document, "text", {
			x: right + 8,
			y: row - 2,
			"font-weight": 600,
			fill
		}, name), require_fonts.make(document, "text", {
			x: right + 8,
			y: row + 12
		}, text));
	});
	const months = require_arrangeDots.calendarTicks(view.start, first.day, last.day, Math.floor((right - left) / 52));
	svg.append(area, axes, words, calendarAxis(document, months, x, bottom, left, right, colours));
	return svg;
}
// ../../packages/charts/src/contingencyLeft/leftFigure.ts
/** Contingency left against the exposure ahead, in one measure. */
function leftFigure(answer, measure, options) {
	const { plan, ahead, confidence } = answer;
	const { cover, amount, say, column, unit } = measure;
	const title = require_fundsFinding.leftFinding(answer, measure);
	const steps = ahead.map(({ date, exposure }) => ({
		day: (require_arrangeDots.isoToMs(date) - require_arrangeDots.isoToMs(plan.start)) / require_arrangeDots.dayMs + 1,
		value: amount(exposure)
	}));
	const some = steps.some(({ value }) => Math.abs(value) > 1e-9);
	return {
		title,
		subtitle: `What may be needed beyond the plan as written in ${require_formatPercent.formatPercent(confidence)} of futures, after each month, if until then all goes as written${cover === void 0 ? "" : "; line: contingency left today"}. In ${unit}`,
		summary: `A staircase that falls from ${say(steps[0]?.value ?? 0)} to nothing as work ends and windows of risks close${cover === void 0 ? "" : `, against ${say(cover.left)} left`}. ${title}.`,
		table: {
			columns: [
				{
					name: "After",
					align: "start"
				},
				{
					name: "May be needed",
					unit,
					align: "end"
				},
				{
					name: "Settled since the line before",
					align: "start"
				}
			],
			rows: ahead.map((point, i) => [
				require_formatDate.formatDate(point.date),
				column(amount(point.exposure)),
				i === 0 ? "as things stand" : settledWords(point)
			])
		},
		svg: steps.length < 2 || !some ? emptyDrawing("Nothing uncertain remains.", options) : drawLeft({
			start: plan.start,
			unit,
			money: measure.what === "sum",
			steps,
			...cover === void 0 ? {} : { left: cover.left },
			say: (value) => measure.what === "sum" ? column(value) : say(value)
		}, options)
	};
}
function settledWords({ settles }) {
	const { work, register } = settles;
	const parts = [...register.length === 0 ? [] : [register.join(", ")], ...work.length === 0 ? [] : [work.length === 1 ? "1 task or rate" : `${work.length} tasks and rates`]];
	return parts.length === 0 ? "nothing" : parts.join("; ");
}
// ../../packages/charts/src/contingencyLeftDays.ts
/** ... in working days. Reads `days`, `ahead`, `confidence`, `plan`. */
function contingencyLeftDays(answer, options) {
	return leftFigure(answer, require_fundsFinding.leftDays(answer), options);
}
// ../../packages/charts/src/contingencyLeftMoney.ts
/** Contingency left against what may still be needed, month by month, in money. Reads `money`, `ahead`, `confidence`, `plan`. */
function contingencyLeftMoney(answer, options) {
	return leftFigure(answer, require_fundsFinding.leftMoney(answer), options);
}
// ../../node_modules/.pnpm/d3-array@3.2.5/node_modules/d3-array/dist/d3-array.mjs
function ascending$1(a, b) {
	return a == null || b == null ? NaN : a < b ? -1 : a > b ? 1 : a >= b ? 0 : NaN;
}
function descending(a, b) {
	return a == null || b == null ? NaN : b < a ? -1 : b > a ? 1 : b >= a ? 0 : NaN;
}
function bisector(f) {
	let compare1, compare2, delta;
	if (f.length !== 2) {
		compare1 = ascending$1;
		compare2 = (d, x) => ascending$1(f(d), x);
		delta = (d, x) => f(d) - x;
	} else {
		compare1 = f === ascending$1 || f === descending ? f : zero$1;
		compare2 = f;
		delta = f;
	}
	function left(a, x, lo = 0, hi = a.length) {
		if (lo < hi) {
			if (compare1(x, x) !== 0) return hi;
			do {
				const mid = lo + hi >>> 1;
				if (compare2(a[mid], x) < 0) lo = mid + 1;
				else hi = mid;
			} while (lo < hi);
		}
		return lo;
	}
	function right(a, x, lo = 0, hi = a.length) {
		if (lo < hi) {
			if (compare1(x, x) !== 0) return hi;
			do {
				const mid = lo + hi >>> 1;
				if (compare2(a[mid], x) <= 0) lo = mid + 1;
				else hi = mid;
			} while (lo < hi);
		}
		return lo;
	}
	function center(a, x, lo = 0, hi = a.length) {
		const i = left(a, x, lo, hi - 1);
		return i > lo && delta(a[i - 1], x) > -delta(a[i], x) ? i - 1 : i;
	}
	return {
		left,
		center,
		right
	};
}
function zero$1() {
	return 0;
}
function number$5(x) {
	return x === null ? NaN : +x;
}
function* numbers(values, valueof) {
	if (valueof === void 0) {
		for (let value of values) if (value != null && (value = +value) >= value) yield value;
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null && (value = +value) >= value) yield value;
	}
}
var ascendingBisect = bisector(ascending$1);
var bisectRight = ascendingBisect.right;
ascendingBisect.left;
bisector(number$5).center;
function count$1(values, valueof) {
	let count = 0;
	if (valueof === void 0) {
		for (let value of values) if (value != null && (value = +value) >= value) ++count;
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null && (value = +value) >= value) ++count;
	}
	return count;
}
function length$1(array) {
	return array.length | 0;
}
function empty$1(length) {
	return !(length > 0);
}
function arrayify$1(values) {
	return typeof values !== "object" || "length" in values ? values : Array.from(values);
}
function reducer(reduce) {
	return (values) => reduce(...values);
}
function cross$1(...values) {
	const reduce = typeof values[values.length - 1] === "function" && reducer(values.pop());
	values = values.map(arrayify$1);
	const lengths = values.map(length$1);
	const j = values.length - 1;
	const index = new Array(j + 1).fill(0);
	const product = [];
	if (j < 0 || lengths.some(empty$1)) return product;
	while (true) {
		product.push(index.map((j, i) => values[i][j]));
		let i = j;
		while (++index[i] === lengths[i]) {
			if (i === 0) return reduce ? product.map(reduce) : product;
			index[i--] = 0;
		}
	}
}
function cumsum(values, valueof) {
	var sum = 0, index = 0;
	return Float64Array.from(values, valueof === void 0 ? (v) => sum += +v || 0 : (v) => sum += +valueof(v, index++, values) || 0);
}
function variance(values, valueof) {
	let count = 0;
	let delta;
	let mean = 0;
	let sum = 0;
	if (valueof === void 0) {
		for (let value of values) if (value != null && (value = +value) >= value) {
			delta = value - mean;
			mean += delta / ++count;
			sum += delta * (value - mean);
		}
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null && (value = +value) >= value) {
			delta = value - mean;
			mean += delta / ++count;
			sum += delta * (value - mean);
		}
	}
	if (count > 1) return sum / (count - 1);
}
function deviation(values, valueof) {
	const v = variance(values, valueof);
	return v ? Math.sqrt(v) : v;
}
function extent$1(values, valueof) {
	let min;
	let max;
	if (valueof === void 0) {
		for (const value of values) if (value != null) {
			if (min === void 0) {
				if (value >= value) min = max = value;
			} else {
				if (min > value) min = value;
				if (max < value) max = value;
			}
		}
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null) {
			if (min === void 0) {
				if (value >= value) min = max = value;
			} else {
				if (min > value) min = value;
				if (max < value) max = value;
			}
		}
	}
	return [min, max];
}
var Adder = class {
	constructor() {
		this._partials = /* @__PURE__ */ new Float64Array(32);
		this._n = 0;
	}
	add(x) {
		const p = this._partials;
		let i = 0;
		for (let j = 0; j < this._n && j < 32; j++) {
			const y = p[j], hi = x + y, lo = Math.abs(x) < Math.abs(y) ? x - (hi - y) : y - (hi - x);
			if (lo) p[i++] = lo;
			x = hi;
		}
		p[i] = x;
		this._n = i + 1;
		return this;
	}
	valueOf() {
		const p = this._partials;
		let n = this._n, x, y, lo, hi = 0;
		if (n > 0) {
			hi = p[--n];
			while (n > 0) {
				x = hi;
				y = p[--n];
				hi = x + y;
				lo = y - (hi - x);
				if (lo) break;
			}
			if (n > 0 && (lo < 0 && p[n - 1] < 0 || lo > 0 && p[n - 1] > 0)) {
				y = lo * 2;
				x = hi + y;
				if (y == x - hi) hi = x;
			}
		}
		return hi;
	}
};
var InternMap = class extends Map {
	constructor(entries, key = keyof$1) {
		super();
		Object.defineProperties(this, {
			_intern: { value: /* @__PURE__ */ new Map() },
			_key: { value: key }
		});
		if (entries != null) for (const [key, value] of entries) this.set(key, value);
	}
	get(key) {
		return super.get(intern_get(this, key));
	}
	has(key) {
		return super.has(intern_get(this, key));
	}
	set(key, value) {
		return super.set(intern_set(this, key), value);
	}
	delete(key) {
		return super.delete(intern_delete(this, key));
	}
};
var InternSet = class extends Set {
	constructor(values, key = keyof$1) {
		super();
		Object.defineProperties(this, {
			_intern: { value: /* @__PURE__ */ new Map() },
			_key: { value: key }
		});
		if (values != null) for (const value of values) this.add(value);
	}
	has(value) {
		return super.has(intern_get(this, value));
	}
	add(value) {
		return super.add(intern_set(this, value));
	}
	delete(value) {
		return super.delete(intern_delete(this, value));
	}
};
function intern_get({ _intern, _key }, value) {
	const key = _key(value);
	return _intern.has(key) ? _intern.get(key) : value;
}
function intern_set({ _intern, _key }, value) {
	const key = _key(value);
	if (_intern.has(key)) return _intern.get(key);
	_intern.set(key, value);
	return value;
}
function intern_delete({ _intern, _key }, value) {
	const key = _key(value);
	if (_intern.has(key)) {
		value = _intern.get(key);
		_intern.delete(key);
	}
	return value;
}
function keyof$1(value) {
	return value !== null && typeof value === "object" ? value.valueOf() : value;
}
function identity$6(x) {
	return x;
}
function group(values, ...keys) {
	return nest(values, identity$6, identity$6, keys);
}
function rollup(values, reduce, ...keys) {
	return nest(values, identity$6, reduce, keys);
}
function rollups(values, reduce, ...keys) {
	return nest(values, Array.from, reduce, keys);
}
function nest(values, map, reduce, keys) {
	return (function regroup(values, i) {
		if (i >= keys.length) return reduce(values);
		const groups = new InternMap();
		const keyof = keys[i++];
		let index = -1;
		for (const value of values) {
			const key = keyof(value, ++index, values);
			const group = groups.get(key);
			if (group) group.push(value);
			else groups.set(key, [value]);
		}
		for (const [key, values] of groups) groups.set(key, regroup(values, i));
		return map(groups);
	})(values, 0);
}
function permute(source, keys) {
	return Array.from(keys, (key) => source[key]);
}
function sort$1(values, ...F) {
	if (typeof values[Symbol.iterator] !== "function") throw new TypeError("values is not iterable");
	values = Array.from(values);
	let [f] = F;
	if (f && f.length !== 2 || F.length > 1) {
		const index = Uint32Array.from(values, (d, i) => i);
		if (F.length > 1) {
			F = F.map((f) => values.map(f));
			index.sort((i, j) => {
				for (const f of F) {
					const c = ascendingDefined$1(f[i], f[j]);
					if (c) return c;
				}
			});
		} else {
			f = values.map(f);
			index.sort((i, j) => ascendingDefined$1(f[i], f[j]));
		}
		return permute(values, index);
	}
	return values.sort(compareDefined(f));
}
function compareDefined(compare = ascending$1) {
	if (compare === ascending$1) return ascendingDefined$1;
	if (typeof compare !== "function") throw new TypeError("compare is not a function");
	return (a, b) => {
		const x = compare(a, b);
		if (x || x === 0) return x;
		return (compare(b, b) === 0) - (compare(a, a) === 0);
	};
}
function ascendingDefined$1(a, b) {
	return (a == null || !(a >= a)) - (b == null || !(b >= b)) || (a < b ? -1 : a > b ? 1 : 0);
}
function groupSort(values, reduce, key) {
	return (reduce.length !== 2 ? sort$1(rollup(values, reduce, key), (([ak, av], [bk, bv]) => ascending$1(av, bv) || ascending$1(ak, bk))) : sort$1(group(values, key), (([ak, av], [bk, bv]) => reduce(av, bv) || ascending$1(ak, bk)))).map(([key]) => key);
}
Array.prototype.slice;
var e10 = Math.sqrt(50);
var e5 = Math.sqrt(10);
var e2 = Math.sqrt(2);
function tickSpec(start, stop, count) {
	const step = (stop - start) / Math.max(0, count), power = Math.floor(Math.log10(step)), error = step / Math.pow(10, power), factor = error >= e10 ? 10 : error >= e5 ? 5 : error >= e2 ? 2 : 1;
	let i1, i2, inc;
	if (power < 0) {
		inc = Math.pow(10, -power) / factor;
		i1 = Math.round(start * inc);
		i2 = Math.round(stop * inc);
		if (i1 / inc < start) ++i1;
		if (i2 / inc > stop) --i2;
		inc = -inc;
	} else {
		inc = Math.pow(10, power) * factor;
		i1 = Math.round(start / inc);
		i2 = Math.round(stop / inc);
		if (i1 * inc < start) ++i1;
		if (i2 * inc > stop) --i2;
	}
	if (i2 < i1 && .5 <= count && count < 2) return tickSpec(start, stop, count * 2);
	return [
		i1,
		i2,
		inc
	];
}
function ticks(start, stop, count) {
	stop = +stop, start = +start, count = +count;
	if (!(count > 0)) return [];
	if (start === stop) return [start];
	const reverse = stop < start, [i1, i2, inc] = reverse ? tickSpec(stop, start, count) : tickSpec(start, stop, count);
	if (!(i2 >= i1)) return [];
	const n = i2 - i1 + 1, ticks = new Array(n);
	if (reverse) {
		if (inc < 0) for (let i = 0; i < n; ++i) ticks[i] = (i2 - i) / -inc;
		else for (let i = 0; i < n; ++i) ticks[i] = (i2 - i) * inc;
	} else if (inc < 0) for (let i = 0; i < n; ++i) ticks[i] = (i1 + i) / -inc;
	else for (let i = 0; i < n; ++i) ticks[i] = (i1 + i) * inc;
	return ticks;
}
function tickIncrement(start, stop, count) {
	stop = +stop, start = +start, count = +count;
	return tickSpec(start, stop, count)[2];
}
function tickStep(start, stop, count) {
	stop = +stop, start = +start, count = +count;
	const reverse = stop < start, inc = reverse ? tickIncrement(stop, start, count) : tickIncrement(start, stop, count);
	return (reverse ? -1 : 1) * (inc < 0 ? 1 / -inc : inc);
}
function thresholdSturges(values) {
	return Math.max(1, Math.ceil(Math.log(count$1(values)) / Math.LN2) + 1);
}
function max(values, valueof) {
	let max;
	if (valueof === void 0) {
		for (const value of values) if (value != null && (max < value || max === void 0 && value >= value)) max = value;
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null && (max < value || max === void 0 && value >= value)) max = value;
	}
	return max;
}
function maxIndex(values, valueof) {
	let max;
	let maxIndex = -1;
	let index = -1;
	if (valueof === void 0) for (const value of values) {
		++index;
		if (value != null && (max < value || max === void 0 && value >= value)) max = value, maxIndex = index;
	}
	else for (let value of values) if ((value = valueof(value, ++index, values)) != null && (max < value || max === void 0 && value >= value)) max = value, maxIndex = index;
	return maxIndex;
}
function min$1(values, valueof) {
	let min;
	if (valueof === void 0) {
		for (const value of values) if (value != null && (min > value || min === void 0 && value >= value)) min = value;
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null && (min > value || min === void 0 && value >= value)) min = value;
	}
	return min;
}
function minIndex(values, valueof) {
	let min;
	let minIndex = -1;
	let index = -1;
	if (valueof === void 0) for (const value of values) {
		++index;
		if (value != null && (min > value || min === void 0 && value >= value)) min = value, minIndex = index;
	}
	else for (let value of values) if ((value = valueof(value, ++index, values)) != null && (min > value || min === void 0 && value >= value)) min = value, minIndex = index;
	return minIndex;
}
function quickselect(array, k, left = 0, right = Infinity, compare) {
	k = Math.floor(k);
	left = Math.floor(Math.max(0, left));
	right = Math.floor(Math.min(array.length - 1, right));
	if (!(left <= k && k <= right)) return array;
	compare = compare === void 0 ? ascendingDefined$1 : compareDefined(compare);
	while (right > left) {
		if (right - left > 600) {
			const n = right - left + 1;
			const m = k - left + 1;
			const z = Math.log(n);
			const s = .5 * Math.exp(2 * z / 3);
			const sd = .5 * Math.sqrt(z * s * (n - s) / n) * (m - n / 2 < 0 ? -1 : 1);
			const newLeft = Math.max(left, Math.floor(k - m * s / n + sd));
			const newRight = Math.min(right, Math.floor(k + (n - m) * s / n + sd));
			quickselect(array, k, newLeft, newRight, compare);
		}
		const t = array[k];
		let i = left;
		let j = right;
		swap(array, left, k);
		if (compare(array[right], t) > 0) swap(array, left, right);
		while (i < j) {
			swap(array, i, j), ++i, --j;
			while (compare(array[i], t) < 0) ++i;
			while (compare(array[j], t) > 0) --j;
		}
		if (compare(array[left], t) === 0) swap(array, left, j);
		else ++j, swap(array, j, right);
		if (j <= k) left = j + 1;
		if (k <= j) right = j - 1;
	}
	return array;
}
function swap(array, i, j) {
	const t = array[i];
	array[i] = array[j];
	array[j] = t;
}
function greatest(values, compare = ascending$1) {
	let max;
	let defined = false;
	if (compare.length === 1) {
		let maxValue;
		for (const element of values) {
			const value = compare(element);
			if (defined ? ascending$1(value, maxValue) > 0 : ascending$1(value, value) === 0) {
				max = element;
				maxValue = value;
				defined = true;
			}
		}
	} else for (const value of values) if (defined ? compare(value, max) > 0 : compare(value, value) === 0) {
		max = value;
		defined = true;
	}
	return max;
}
function quantile$1(values, p, valueof) {
	values = Float64Array.from(numbers(values, valueof));
	if (!(n = values.length) || isNaN(p = +p)) return;
	if (p <= 0 || n < 2) return min$1(values);
	if (p >= 1) return max(values);
	var n, i = (n - 1) * p, i0 = Math.floor(i), value0 = max(quickselect(values, i0).subarray(0, i0 + 1));
	return value0 + (min$1(values.subarray(i0 + 1)) - value0) * (i - i0);
}
function quantileSorted(values, p, valueof = number$5) {
	if (!(n = values.length) || isNaN(p = +p)) return;
	if (p <= 0 || n < 2) return +valueof(values[0], 0, values);
	if (p >= 1) return +valueof(values[n - 1], n - 1, values);
	var n, i = (n - 1) * p, i0 = Math.floor(i), value0 = +valueof(values[i0], i0, values);
	return value0 + (+valueof(values[i0 + 1], i0 + 1, values) - value0) * (i - i0);
}
function thresholdFreedmanDiaconis(values, min, max) {
	const c = count$1(values), d = quantile$1(values, .75) - quantile$1(values, .25);
	return c && d ? Math.ceil((max - min) / (2 * d * Math.pow(c, -1 / 3))) : 1;
}
function thresholdScott(values, min, max) {
	const c = count$1(values), d = deviation(values);
	return c && d ? Math.ceil((max - min) * Math.cbrt(c) / (3.49 * d)) : 1;
}
function mean(values, valueof) {
	let count = 0;
	let sum = 0;
	if (valueof === void 0) {
		for (let value of values) if (value != null && (value = +value) >= value) ++count, sum += value;
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null && (value = +value) >= value) ++count, sum += value;
	}
	if (count) return sum / count;
}
function median(values, valueof) {
	return quantile$1(values, .5, valueof);
}
function* flatten(arrays) {
	for (const array of arrays) yield* array;
}
function merge(arrays) {
	return Array.from(flatten(arrays));
}
function mode(values, valueof) {
	const counts = new InternMap();
	if (valueof === void 0) {
		for (let value of values) if (value != null && value >= value) counts.set(value, (counts.get(value) || 0) + 1);
	} else {
		let index = -1;
		for (let value of values) if ((value = valueof(value, ++index, values)) != null && value >= value) counts.set(value, (counts.get(value) || 0) + 1);
	}
	let modeValue;
	let modeCount = 0;
	for (const [value, count] of counts) if (count > modeCount) {
		modeCount = count;
		modeValue = value;
	}
	return modeValue;
}
function pairs(values, pairof = pair) {
	const pairs = [];
	let previous;
	let first = false;
	for (const value of values) {
		if (first) pairs.push(pairof(previous, value));
		previous = value;
		first = true;
	}
	return pairs;
}
function pair(a, b) {
	return [a, b];
}
function range$2(start, stop, step) {
	start = +start, stop = +stop, step = (n = arguments.length) < 2 ? (stop = start, start = 0, 1) : n < 3 ? 1 : +step;
	var i = -1, n = Math.max(0, Math.ceil((stop - start) / step)) | 0, range = new Array(n);
	while (++i < n) range[i] = start + i * step;
	return range;
}
function sum$1(values, valueof) {
	let sum = 0;
	if (valueof === void 0) {
		for (let value of values) if (value = +value) sum += value;
	} else {
		let index = -1;
		for (let value of values) if (value = +valueof(value, ++index, values)) sum += value;
	}
	return sum;
}
function reverse(values) {
	if (typeof values[Symbol.iterator] !== "function") throw new TypeError("values is not iterable");
	return Array.from(values).reverse();
}
// ../../node_modules/.pnpm/d3-axis@3.0.1/node_modules/d3-axis/dist/d3-axis.mjs
function identity$5(x) {
	return x;
}
var top = 1;
var right = 2;
var bottom = 3;
var left = 4;
var epsilon$3 = 1e-6;
function translateX(x) {
	return "translate(" + x + ",0)";
}
function translateY(y) {
	return "translate(0," + y + ")";
}
function number$4(scale) {
	return (d) => +scale(d);
}
function center(scale, offset) {
	offset = Math.max(0, scale.bandwidth() - offset * 2) / 2;
	if (scale.round()) offset = Math.round(offset);
	return (d) => +scale(d) + offset;
}
function entering() {
	return !this.__axis;
}
function axis(orient, scale) {
	var tickArguments = [], tickValues = null, tickFormat = null, tickSizeInner = 6, tickSizeOuter = 6, tickPadding = 3, offset = typeof window !== "undefined" && window.devicePixelRatio > 1 ? 0 : .5, k = orient === top || orient === left ? -1 : 1, x = orient === left || orient === right ? "x" : "y", transform = orient === top || orient === bottom ? translateX : translateY;
	function axis(context) {
		var values = tickValues == null ? scale.ticks ? scale.ticks.apply(scale, tickArguments) : scale.domain() : tickValues, format = tickFormat == null ? scale.tickFormat ? scale.tickFormat.apply(scale, tickArguments) : identity$5 : tickFormat, spacing = Math.max(tickSizeInner, 0) + tickPadding, range = scale.range(), range0 = +range[0] + offset, range1 = +range[range.length - 1] + offset, position = (scale.bandwidth ? center : number$4)(scale.copy(), offset), selection = context.selection ? context.selection() : context, path = selection.selectAll(".domain").data([null]), tick = selection.selectAll(".tick").data(values, scale).order(), tickExit = tick.exit(), tickEnter = tick.enter().append("g").attr("class", "tick"), line = tick.select("line"), text = tick.select("text");
		path = path.merge(path.enter().insert("path", ".tick").attr("class", "domain").attr("stroke", "currentColor"));
		tick = tick.merge(tickEnter);
		line = line.merge(tickEnter.append("line").attr("stroke", "currentColor").attr(x + "2", k * tickSizeInner));
		text = text.merge(tickEnter.append("text").attr("fill", "currentColor").attr(x, k * spacing).attr("dy", orient === top ? "0em" : orient === bottom ? "0.71em" : "0.32em"));
		if (context !== selection) {
			path = path.transition(context);
			tick = tick.transition(context);
			line = line.transition(context);
			text = text.transition(context);
			tickExit = tickExit.transition(context).attr("opacity", epsilon$3).attr("transform", function(d) {
				return isFinite(d = position(d)) ? transform(d + offset) : this.getAttribute("transform");
			});
			tickEnter.attr("opacity", epsilon$3).attr("transform", function(d) {
				var p = this.parentNode.__axis;
				return transform((p && isFinite(p = p(d)) ? p : position(d)) + offset);
			});
		}
		tickExit.remove();
		path.attr("d", orient === left || orient === right ? tickSizeOuter ? "M" + k * tickSizeOuter + "," + range0 + "H" + offset + "V" + range1 + "H" + k * tickSizeOuter : "M" + offset + "," + range0 + "V" + range1 : tickSizeOuter ? "M" + range0 + "," + k * tickSizeOuter + "V" + offset + "H" + range1 + "V" + k * tickSizeOuter : "M" + range0 + "," + offset + "H" + range1);
		tick.attr("opacity", 1).attr("transform", function(d) {
			return transform(position(d) + offset);
		});
		line.attr(x + "2", k * tickSizeInner);
		text.attr(x, k * spacing).text(format);
		selection.filter(entering).attr("fill", "none").attr("font-size", 10).attr("font-family", "sans-serif").attr("text-anchor", orient === right ? "start" : orient === left ? "end" : "middle");
		selection.each(function() {
			this.__axis = position;
		});
	}
	axis.scale = function(_) {
		return arguments.length ? (scale = _, axis) : scale;
	};
	axis.ticks = function() {
		return tickArguments = Array.from(arguments), axis;
	};
	axis.tickArguments = function(_) {
		return arguments.length ? (tickArguments = _ == null ? [] : Array.from(_), axis) : tickArguments.slice();
	};
	axis.tickValues = function(_) {
		return arguments.length ? (tickValues = _ == null ? null : Array.from(_), axis) : tickValues && tickValues.slice();
	};
	axis.tickFormat = function(_) {
		return arguments.length ? (tickFormat = _, axis) : tickFormat;
	};
	axis.tickSize = function(_) {
		return arguments.length ? (tickSizeInner = tickSizeOuter = +_, axis) : tickSizeInner;
	};
	axis.tickSizeInner = function(_) {
		return arguments.length ? (tickSizeInner = +_, axis) : tickSizeInner;
	};
	axis.tickSizeOuter = function(_) {
		return arguments.length ? (tickSizeOuter = +_, axis) : tickSizeOuter;
	};
	axis.tickPadding = function(_) {
		return arguments.length ? (tickPadding = +_, axis) : tickPadding;
	};
	axis.offset = function(_) {
		return arguments.length ? (offset = +_, axis) : offset;
	};
	return axis;
}
function axisBottom(scale) {
	return axis(bottom, scale);
}
// ../../node_modules/.pnpm/d3-selection@3.0.1/node_modules/d3-selection/dist/d3-selection.mjs
var xhtml = "http://www.w3.org/1999/xhtml";
var namespaces = {
	svg: "http://www.w3.org/2000/svg",
	xhtml,
	xlink: "http://www.w3.org/1999/xlink",
	xml: "http://www.w3.org/XML/1998/namespace",
	xmlns: "http://www.w3.org/2000/xmlns/"
};
function namespace(name) {
	var prefix = name += "", i = prefix.indexOf(":");
	if (i >= 0 && (prefix = name.slice(0, i)) !== "xmlns") name = name.slice(i + 1);
	return namespaces.hasOwnProperty(prefix) ? {
		space: namespaces[prefix],
		local: name
	} : name;
}
function creatorInherit(name) {
	return function() {
		var document = this.ownerDocument, uri = this.namespaceURI;
		return uri === xhtml && document.documentElement.namespaceURI === xhtml ? document.createElement(name) : document.createElementNS(uri, name);
	};
}
function creatorFixed(fullname) {
	return function() {
		return this.ownerDocument.createElementNS(fullname.space, fullname.local);
	};
}
function creator(name) {
	var fullname = namespace(name);
	return (fullname.local ? creatorFixed : creatorInherit)(fullname);
}
function none$1() {}
function selector(selector) {
	return selector == null ? none$1 : function() {
		return this.querySelector(selector);
	};
}
function selection_select(select) {
	if (typeof select !== "function") select = selector(select);
	for (var groups = this._groups, m = groups.length, subgroups = new Array(m), j = 0; j < m; ++j) for (var group = groups[j], n = group.length, subgroup = subgroups[j] = new Array(n), node, subnode, i = 0; i < n; ++i) if ((node = group[i]) && (subnode = select.call(node, node.__data__, i, group))) {
		if ("__data__" in node) subnode.__data__ = node.__data__;
		subgroup[i] = subnode;
	}
	return new Selection(subgroups, this._parents);
}
function array$1(x) {
	return x == null ? [] : Array.isArray(x) ? x : Array.from(x);
}
function empty() {
	return [];
}
function selectorAll(selector) {
	return selector == null ? empty : function() {
		return this.querySelectorAll(selector);
	};
}
function arrayAll(select) {
	return function() {
		return array$1(select.apply(this, arguments));
	};
}
function selection_selectAll(select) {
	if (typeof select === "function") select = arrayAll(select);
	else select = selectorAll(select);
	for (var groups = this._groups, m = groups.length, subgroups = [], parents = [], j = 0; j < m; ++j) for (var group = groups[j], n = group.length, node, i = 0; i < n; ++i) if (node = group[i]) {
		subgroups.push(select.call(node, node.__data__, i, group));
		parents.push(node);
	}
	return new Selection(subgroups, parents);
}
function matcher(selector) {
	return function() {
		return this.matches(selector);
	};
}
function childMatcher(selector) {
	return function(node) {
		return node.matches(selector);
	};
}
var find = Array.prototype.find;
function childFind(match) {
	return function() {
		return find.call(this.children, match);
	};
}
function childFirst() {
	return this.firstElementChild;
}
function selection_selectChild(match) {
	return this.select(match == null ? childFirst : childFind(typeof match === "function" ? match : childMatcher(match)));
}
var filter = Array.prototype.filter;
function children() {
	return Array.from(this.children);
}
function childrenFilter(match) {
	return function() {
		return filter.call(this.children, match);
	};
}
function selection_selectChildren(match) {
	return this.selectAll(match == null ? children : childrenFilter(typeof match === "function" ? match : childMatcher(match)));
}
function selection_filter(match) {
	if (typeof match !== "function") match = matcher(match);
	for (var groups = this._groups, m = groups.length, subgroups = new Array(m), j = 0; j < m; ++j) for (var group = groups[j], n = group.length, subgroup = subgroups[j] = [], node, i = 0; i < n; ++i) if ((node = group[i]) && match.call(node, node.__data__, i, group)) subgroup.push(node);
	return new Selection(subgroups, this._parents);
}
function sparse(update) {
	return new Array(update.length);
}
function selection_enter() {
	return new Selection(this._enter || this._groups.map(sparse), this._parents);
}
function EnterNode(parent, datum) {
	this.ownerDocument = parent.ownerDocument;
	this.namespaceURI = parent.namespaceURI;
	this._next = null;
	this._parent = parent;
	this.__data__ = datum;
}
EnterNode.prototype = {
	constructor: EnterNode,
	appendChild: function(child) {
		return this._parent.insertBefore(child, this._next);
	},
	insertBefore: function(child, next) {
		return this._parent.insertBefore(child, next);
	},
	querySelector: function(selector) {
		return this._parent.querySelector(selector);
	},
	querySelectorAll: function(selector) {
		return this._parent.querySelectorAll(selector);
	}
};
function constant$3(x) {
	return function() {
		return x;
	};
}
function bindIndex(parent, group, enter, update, exit, data) {
	var i = 0, node, groupLength = group.length, dataLength = data.length;
	for (; i < dataLength; ++i) if (node = group[i]) {
		node.__data__ = data[i];
		update[i] = node;
	} else enter[i] = new EnterNode(parent, data[i]);
	for (; i < groupLength; ++i) if (node = group[i]) exit[i] = node;
}
function bindKey(parent, group, enter, update, exit, data, key) {
	var i, node, nodeByKeyValue = /* @__PURE__ */ new Map(), groupLength = group.length, dataLength = data.length, keyValues = new Array(groupLength), keyValue;
	for (i = 0; i < groupLength; ++i) if (node = group[i]) {
		keyValues[i] = keyValue = key.call(node, node.__data__, i, group) + "";
		if (nodeByKeyValue.has(keyValue)) exit[i] = node;
		else nodeByKeyValue.set(keyValue, node);
	}
	for (i = 0; i < dataLength; ++i) {
		keyValue = key.call(parent, data[i], i, data) + "";
		if (node = nodeByKeyValue.get(keyValue)) {
			update[i] = node;
			node.__data__ = data[i];
			nodeByKeyValue.delete(keyValue);
		} else enter[i] = new EnterNode(parent, data[i]);
	}
	for (i = 0; i < groupLength; ++i) if ((node = group[i]) && nodeByKeyValue.get(keyValues[i]) === node) exit[i] = node;
}
function datum(node) {
	return node.__data__;
}
function selection_data(value, key) {
	if (!arguments.length) return Array.from(this, datum);
	var bind = key ? bindKey : bindIndex, parents = this._parents, groups = this._groups;
	if (typeof value !== "function") value = constant$3(value);
	for (var m = groups.length, update = new Array(m), enter = new Array(m), exit = new Array(m), j = 0; j < m; ++j) {
		var parent = parents[j], group = groups[j], groupLength = group.length, data = arraylike(value.call(parent, parent && parent.__data__, j, parents)), dataLength = data.length, enterGroup = enter[j] = new Array(dataLength), updateGroup = update[j] = new Array(dataLength);
		bind(parent, group, enterGroup, updateGroup, exit[j] = new Array(groupLength), data, key);
		for (var i0 = 0, i1 = 0, previous, next; i0 < dataLength; ++i0) if (previous = enterGroup[i0]) {
			if (i0 >= i1) i1 = i0 + 1;
			while (!(next = updateGroup[i1]) && ++i1 < dataLength);
			previous._next = next || null;
		}
	}
	update = new Selection(update, parents);
	update._enter = enter;
	update._exit = exit;
	return update;
}
function arraylike(data) {
	return typeof data === "object" && "length" in data ? data : Array.from(data);
}
function selection_exit() {
	return new Selection(this._exit || this._groups.map(sparse), this._parents);
}
function selection_join(onenter, onupdate, onexit) {
	var enter = this.enter(), update = this, exit = this.exit();
	if (typeof onenter === "function") {
		enter = onenter(enter);
		if (enter) enter = enter.selection();
	} else enter = enter.append(onenter + "");
	if (onupdate != null) {
		update = onupdate(update);
		if (update) update = update.selection();
	}
	if (onexit == null) exit.remove();
	else onexit(exit);
	return enter && update ? enter.merge(update).order() : update;
}
function selection_merge(context) {
	var selection = context.selection ? context.selection() : context;
	for (var groups0 = this._groups, groups1 = selection._groups, m0 = groups0.length, m1 = groups1.length, m = Math.min(m0, m1), merges = new Array(m0), j = 0; j < m; ++j) for (var group0 = groups0[j], group1 = groups1[j], n = group0.length, merge = merges[j] = new Array(n), node, i = 0; i < n; ++i) if (node = group0[i] || group1[i]) merge[i] = node;
	for (; j < m0; ++j) merges[j] = groups0[j];
	return new Selection(merges, this._parents);
}
function selection_order() {
	for (var groups = this._groups, j = -1, m = groups.length; ++j < m;) for (var group = groups[j], i = group.length - 1, next = group[i], node; --i >= 0;) if (node = group[i]) {
		if (next && node.compareDocumentPosition(next) ^ 4) next.parentNode.insertBefore(node, next);
		next = node;
	}
	return this;
}
function selection_sort(compare) {
	if (!compare) compare = ascending;
	function compareNode(a, b) {
		return a && b ? compare(a.__data__, b.__data__) : !a - !b;
	}
	for (var groups = this._groups, m = groups.length, sortgroups = new Array(m), j = 0; j < m; ++j) {
		for (var group = groups[j], n = group.length, sortgroup = sortgroups[j] = new Array(n), node, i = 0; i < n; ++i) if (node = group[i]) sortgroup[i] = node;
		sortgroup.sort(compareNode);
	}
	return new Selection(sortgroups, this._parents).order();
}
function ascending(a, b) {
	return a < b ? -1 : a > b ? 1 : a >= b ? 0 : NaN;
}
function selection_call() {
	var callback = arguments[0];
	arguments[0] = this;
	callback.apply(null, arguments);
	return this;
}
function selection_nodes() {
	return Array.from(this);
}
function selection_node() {
	for (var groups = this._groups, j = 0, m = groups.length; j < m; ++j) for (var group = groups[j], i = 0, n = group.length; i < n; ++i) {
		var node = group[i];
		if (node) return node;
	}
	return null;
}
function selection_size() {
	let size = 0;
	for (const node of this) ++size;
	return size;
}
function selection_empty() {
	return !this.node();
}
function selection_each(callback) {
	for (var groups = this._groups, j = 0, m = groups.length; j < m; ++j) for (var group = groups[j], i = 0, n = group.length, node; i < n; ++i) if (node = group[i]) callback.call(node, node.__data__, i, group);
	return this;
}
function attrRemove(name) {
	return function() {
		this.removeAttribute(name);
	};
}
function attrRemoveNS(fullname) {
	return function() {
		this.removeAttributeNS(fullname.space, fullname.local);
	};
}
function attrConstant(name, value) {
	return function() {
		this.setAttribute(name, value);
	};
}
function attrConstantNS(fullname, value) {
	return function() {
		this.setAttributeNS(fullname.space, fullname.local, value);
	};
}
function attrFunction(name, value) {
	return function() {
		var v = value.apply(this, arguments);
		if (v == null) this.removeAttribute(name);
		else this.setAttribute(name, v);
	};
}
function attrFunctionNS(fullname, value) {
	return function() {
		var v = value.apply(this, arguments);
		if (v == null) this.removeAttributeNS(fullname.space, fullname.local);
		else this.setAttributeNS(fullname.space, fullname.local, v);
	};
}
function selection_attr(name, value) {
	var fullname = namespace(name);
	if (arguments.length < 2) {
		var node = this.node();
		return fullname.local ? node.getAttributeNS(fullname.space, fullname.local) : node.getAttribute(fullname);
	}
	return this.each((value == null ? fullname.local ? attrRemoveNS : attrRemove : typeof value === "function" ? fullname.local ? attrFunctionNS : attrFunction : fullname.local ? attrConstantNS : attrConstant)(fullname, value));
}
function defaultView(node) {
	return node.ownerDocument && node.ownerDocument.defaultView || node.document && node || node.defaultView;
}
function styleRemove(name) {
	return function() {
		this.style.removeProperty(name);
	};
}
function styleConstant(name, value, priority) {
	return function() {
		this.style.setProperty(name, value, priority);
	};
}
function styleFunction(name, value, priority) {
	return function() {
		var v = value.apply(this, arguments);
		if (v == null) this.style.removeProperty(name);
		else this.style.setProperty(name, v, priority);
	};
}
function selection_style(name, value, priority) {
	return arguments.length > 1 ? this.each((value == null ? styleRemove : typeof value === "function" ? styleFunction : styleConstant)(name, value, priority == null ? "" : priority)) : styleValue(this.node(), name);
}
function styleValue(node, name) {
	return node.style.getPropertyValue(name) || defaultView(node).getComputedStyle(node, null).getPropertyValue(name);
}
function propertyRemove(name) {
	return function() {
		delete this[name];
	};
}
function propertyConstant(name, value) {
	return function() {
		this[name] = value;
	};
}
function propertyFunction(name, value) {
	return function() {
		var v = value.apply(this, arguments);
		if (v == null) delete this[name];
		else this[name] = v;
	};
}
function selection_property(name, value) {
	return arguments.length > 1 ? this.each((value == null ? propertyRemove : typeof value === "function" ? propertyFunction : propertyConstant)(name, value)) : this.node()[name];
}
function classArray(string) {
	return string.trim().split(/^|\s+/);
}
function classList(node) {
	return node.classList || new ClassList(node);
}
function ClassList(node) {
	this._node = node;
	this._names = classArray(node.getAttribute("class") || "");
}
ClassList.prototype = {
	add: function(name) {
		if (this._names.indexOf(name) < 0) {
			this._names.push(name);
			this._node.setAttribute("class", this._names.join(" "));
		}
	},
	remove: function(name) {
		var i = this._names.indexOf(name);
		if (i >= 0) {
			this._names.splice(i, 1);
			this._node.setAttribute("class", this._names.join(" "));
		}
	},
	contains: function(name) {
		return this._names.indexOf(name) >= 0;
	}
};
function classedAdd(node, names) {
	var list = classList(node), i = -1, n = names.length;
	while (++i < n) list.add(names[i]);
}
function classedRemove(node, names) {
	var list = classList(node), i = -1, n = names.length;
	while (++i < n) list.remove(names[i]);
}
function classedTrue(names) {
	return function() {
		classedAdd(this, names);
	};
}
function classedFalse(names) {
	return function() {
		classedRemove(this, names);
	};
}
function classedFunction(names, value) {
	return function() {
		(value.apply(this, arguments) ? classedAdd : classedRemove)(this, names);
	};
}
function selection_classed(name, value) {
	var names = classArray(name + "");
	if (arguments.length < 2) {
		var list = classList(this.node()), i = -1, n = names.length;
		while (++i < n) if (!list.contains(names[i])) return false;
		return true;
	}
	return this.each((typeof value === "function" ? classedFunction : value ? classedTrue : classedFalse)(names, value));
}
function textRemove() {
	this.textContent = "";
}
function textConstant(value) {
	return function() {
		this.textContent = value;
	};
}
function textFunction(value) {
	return function() {
		var v = value.apply(this, arguments);
		this.textContent = v == null ? "" : v;
	};
}
function selection_text(value) {
	return arguments.length ? this.each(value == null ? textRemove : (typeof value === "function" ? textFunction : textConstant)(value)) : this.node().textContent;
}
function htmlRemove() {
	this.innerHTML = "";
}
function htmlConstant(value) {
	return function() {
		this.innerHTML = value;
	};
}
function htmlFunction(value) {
	return function() {
		var v = value.apply(this, arguments);
		this.innerHTML = v == null ? "" : v;
	};
}
function selection_html(value) {
	return arguments.length ? this.each(value == null ? htmlRemove : (typeof value === "function" ? htmlFunction : htmlConstant)(value)) : this.node().innerHTML;
}
function raise() {
	if (this.nextSibling) this.parentNode.appendChild(this);
}
function selection_raise() {
	return this.each(raise);
}
function lower() {
	if (this.previousSibling) this.parentNode.insertBefore(this, this.parentNode.firstChild);
}
function selection_lower() {
	return this.each(lower);
}
function selection_append(name) {
	var create = typeof name === "function" ? name : creator(name);
	return this.select(function() {
		return this.appendChild(create.apply(this, arguments));
	});
}
function constantNull() {
	return null;
}
function selection_insert(name, before) {
	var create = typeof name === "function" ? name : creator(name), select = before == null ? constantNull : typeof before === "function" ? before : selector(before);
	return this.select(function() {
		return this.insertBefore(create.apply(this, arguments), select.apply(this, arguments) || null);
	});
}
function remove() {
	var parent = this.parentNode;
	if (parent) parent.removeChild(this);
}
function selection_remove() {
	return this.each(remove);
}
function selection_cloneShallow() {
	var clone = this.cloneNode(false), parent = this.parentNode;
	return parent ? parent.insertBefore(clone, this.nextSibling) : clone;
}
function selection_cloneDeep() {
	var clone = this.cloneNode(true), parent = this.parentNode;
	return parent ? parent.insertBefore(clone, this.nextSibling) : clone;
}
function selection_clone(deep) {
	return this.select(deep ? selection_cloneDeep : selection_cloneShallow);
}
function selection_datum(value) {
	return arguments.length ? this.property("__data__", value) : this.node().__data__;
}
function contextListener(listener) {
	return function(event) {
		listener.call(this, event, this.__data__);
	};
}
function parseTypenames(typenames) {
	return typenames.trim().split(/^|\s+/).map(function(t) {
		var name = "", i = t.indexOf(".");
		if (i >= 0) name = t.slice(i + 1), t = t.slice(0, i);
		return {
			type: t,
			name
		};
	});
}
function onRemove(typename) {
	return function() {
		var on = this.__on;
		if (!on) return;
		for (var j = 0, i = -1, m = on.length, o; j < m; ++j) if (o = on[j], (!typename.type || o.type === typename.type) && o.name === typename.name) this.removeEventListener(o.type, o.listener, o.options);
		else on[++i] = o;
		if (++i) on.length = i;
		else delete this.__on;
	};
}
function onAdd(typename, value, options) {
	return function() {
		var on = this.__on, o, listener = contextListener(value);
		if (on) {
			for (var j = 0, m = on.length; j < m; ++j) if ((o = on[j]).type === typename.type && o.name === typename.name) {
				this.removeEventListener(o.type, o.listener, o.options);
				this.addEventListener(o.type, o.listener = listener, o.options = options);
				o.value = value;
				return;
			}
		}
		this.addEventListener(typename.type, listener, options);
		o = {
			type: typename.type,
			name: typename.name,
			value,
			listener,
			options
		};
		if (!on) this.__on = [o];
		else on.push(o);
	};
}
function selection_on(typename, value, options) {
	var typenames = parseTypenames(typename + ""), i, n = typenames.length, t;
	if (arguments.length < 2) {
		var on = this.node().__on;
		if (on) {
			for (var j = 0, m = on.length, o; j < m; ++j) for (i = 0, o = on[j]; i < n; ++i) if ((t = typenames[i]).type === o.type && t.name === o.name) return o.value;
		}
		return;
	}
	on = value ? onAdd : onRemove;
	for (i = 0; i < n; ++i) this.each(on(typenames[i], value, options));
	return this;
}
function dispatchEvent(node, type, params) {
	var window = defaultView(node), event = window.CustomEvent;
	if (typeof event === "function") event = new event(type, params);
	else {
		event = window.document.createEvent("Event");
		if (params) event.initEvent(type, params.bubbles, params.cancelable), event.detail = params.detail;
		else event.initEvent(type, false, false);
	}
	node.dispatchEvent(event);
}
function dispatchConstant(type, params) {
	return function() {
		return dispatchEvent(this, type, params);
	};
}
function dispatchFunction(type, params) {
	return function() {
		return dispatchEvent(this, type, params.apply(this, arguments));
	};
}
function selection_dispatch(type, params) {
	return this.each((typeof params === "function" ? dispatchFunction : dispatchConstant)(type, params));
}
function* selection_iterator() {
	for (var groups = this._groups, j = 0, m = groups.length; j < m; ++j) for (var group = groups[j], i = 0, n = group.length, node; i < n; ++i) if (node = group[i]) yield node;
}
var root = [null];
function Selection(groups, parents) {
	this._groups = groups;
	this._parents = parents;
}
function selection() {
	return new Selection([[document.documentElement]], root);
}
function selection_selection() {
	return this;
}
Selection.prototype = selection.prototype = {
	constructor: Selection,
	select: selection_select,
	selectAll: selection_selectAll,
	selectChild: selection_selectChild,
	selectChildren: selection_selectChildren,
	filter: selection_filter,
	data: selection_data,
	enter: selection_enter,
	exit: selection_exit,
	join: selection_join,
	merge: selection_merge,
	selection: selection_selection,
	order: selection_order,
	sort: selection_sort,
	call: selection_call,
	nodes: selection_nodes,
	node: selection_node,
	size: selection_size,
	empty: selection_empty,
	each: selection_each,
	attr: selection_attr,
	style: selection_style,
	property: selection_property,
	classed: selection_classed,
	text: selection_text,
	html: selection_html,
	raise: selection_raise,
	lower: selection_lower,
	append: selection_append,
	insert: selection_insert,
	remove: selection_remove,
	clone: selection_clone,
	datum: selection_datum,
	on: selection_on,
	dispatch: selection_dispatch,
	[Symbol.iterator]: selection_iterator
};
function select(selector) {
	return typeof selector === "string" ? new Selection([[document.querySelector(selector)]], [document.documentElement]) : new Selection([[selector]], root);
}
var nextId = 0;
function local() {
	return new Local();
}
function Local() {
	this._ = "@" + (++nextId).toString(36);
}
Local.prototype = local.prototype = {
	constructor: Local,
	get: function(node) {
		var id = this._;
		while (!(id in node)) if (!(node = node.parentNode)) return;
		return node[id];
	},
	set: function(node, value) {
		return node[this._] = value;
	},
	remove: function(node) {
		return this._ in node && delete node[this._];
	},
	toString: function() {
		return this._;
	}
};
function sourceEvent(event) {
	let sourceEvent;
	while (sourceEvent = event.sourceEvent) event = sourceEvent;
	return event;
}
function pointer$1(event, node) {
	event = sourceEvent(event);
	if (node === void 0) node = event.currentTarget;
	if (node) {
		var svg = node.ownerSVGElement || node;
		if (svg.createSVGPoint) {
			var point = svg.createSVGPoint();
			point.x = event.clientX, point.y = event.clientY;
			point = point.matrixTransform(node.getScreenCTM().inverse());
			return [point.x, point.y];
		}
		if (node.getBoundingClientRect) {
			var rect = node.getBoundingClientRect();
			return [event.clientX - rect.left - node.clientLeft, event.clientY - rect.top - node.clientTop];
		}
	}
	return [event.pageX, event.pageY];
}
// ../../node_modules/.pnpm/d3-color@3.1.1/node_modules/d3-color/dist/d3-color.mjs
function define(constructor, factory, prototype) {
	constructor.prototype = factory.prototype = prototype;
	prototype.constructor = constructor;
}
function extend(parent, definition) {
	var prototype = Object.create(parent.prototype);
	for (var key in definition) prototype[key] = definition[key];
	return prototype;
}
function Color() {}
var darker = .7;
var brighter = 1 / darker;
var reI = "\\s*([+-]?\\d+)\\s*";
var reN = "\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)\\s*";
var reP = "\\s*([+-]?(?:\\d*\\.)?\\d+(?:[eE][+-]?\\d+)?)%\\s*";
var reHex = /^#([0-9a-f]{3,8})$/;
var reRgbInteger = new RegExp(`^rgb\\(${reI},${reI},${reI}\\)$`);
var reRgbPercent = new RegExp(`^rgb\\(${reP},${reP},${reP}\\)$`);
var reRgbaInteger = new RegExp(`^rgba\\(${reI},${reI},${reI},${reN}\\)$`);
var reRgbaPercent = new RegExp(`^rgba\\(${reP},${reP},${reP},${reN}\\)$`);
var reHslPercent = new RegExp(`^hsl\\(${reN},${reP},${reP}\\)$`);
var reHslaPercent = new RegExp(`^hsla\\(${reN},${reP},${reP},${reN}\\)$`);
var named$1 = {
	aliceblue: 15792383,
	antiquewhite: 16444375,
	aqua: 65535,
	aquamarine: 8388564,
	azure: 15794175,
	beige: 16119260,
	bisque: 16770244,
	black: 0,
	blanchedalmond: 16772045,
	blue: 255,
	blueviolet: 9055202,
	brown: 10824234,
	burlywood: 14596231,
	cadetblue: 6266528,
	chartreuse: 8388352,
	chocolate: 13789470,
	coral: 16744272,
	cornflowerblue: 6591981,
	cornsilk: 16775388,
	crimson: 14423100,
	cyan: 65535,
	darkblue: 139,
	darkcyan: 35723,
	darkgoldenrod: 12092939,
	darkgray: 11119017,
	darkgreen: 25600,
	darkgrey: 11119017,
	darkkhaki: 12433259,
	darkmagenta: 9109643,
	darkolivegreen: 5597999,
	darkorange: 16747520,
	darkorchid: 10040012,
	darkred: 9109504,
	darksalmon: 15308410,
	darkseagreen: 9419919,
	darkslateblue: 4734347,
	darkslategray: 3100495,
	darkslategrey: 3100495,
	darkturquoise: 52945,
	darkviolet: 9699539,
	deeppink: 16716947,
	deepskyblue: 49151,
	dimgray: 6908265,
	dimgrey: 6908265,
	dodgerblue: 2003199,
	firebrick: 11674146,
	floralwhite: 16775920,
	forestgreen: 2263842,
	fuchsia: 16711935,
	gainsboro: 14474460,
	ghostwhite: 16316671,
	gold: 16766720,
	goldenrod: 14329120,
	gray: 8421504,
	green: 32768,
	greenyellow: 11403055,
	grey: 8421504,
	honeydew: 15794160,
	hotpink: 16738740,
	indianred: 13458524,
	indigo: 4915330,
	ivory: 16777200,
	khaki: 15787660,
	lavender: 15132410,
	lavenderblush: 16773365,
	lawngreen: 8190976,
	lemonchiffon: 16775885,
	lightblue: 11393254,
	lightcoral: 15761536,
	lightcyan: 14745599,
	lightgoldenrodyellow: 16448210,
	lightgray: 13882323,
	lightgreen: 9498256,
	lightgrey: 13882323,
	lightpink: 16758465,
	lightsalmon: 16752762,
	lightseagreen: 2142890,
	lightskyblue: 8900346,
	lightslategray: 7833753,
	lightslategrey: 7833753,
	lightsteelblue: 11584734,
	lightyellow: 16777184,
	lime: 65280,
	limegreen: 3329330,
	linen: 16445670,
	magenta: 16711935,
	maroon: 8388608,
	mediumaquamarine: 6737322,
	mediumblue: 205,
	mediumorchid: 12211667,
	mediumpurple: 9662683,
	mediumseagreen: 3978097,
	mediumslateblue: 8087790,
	mediumspringgreen: 64154,
	mediumturquoise: 4772300,
	mediumvioletred: 13047173,
	midnightblue: 1644912,
	mintcream: 16121850,
	mistyrose: 16770273,
	moccasin: 16770229,
	navajowhite: 16768685,
	navy: 128,
	oldlace: 16643558,
	olive: 8421376,
	olivedrab: 7048739,
	orange: 16753920,
	orangered: 16729344,
	orchid: 14315734,
	palegoldenrod: 15657130,
	palegreen: 10025880,
	paleturquoise: 11529966,
	palevioletred: 14381203,
	papayawhip: 16773077,
	peachpuff: 16767673,
	peru: 13468991,
	pink: 16761035,
	plum: 14524637,
	powderblue: 11591910,
	purple: 8388736,
	rebeccapurple: 6697881,
	red: 16711680,
	rosybrown: 12357519,
	royalblue: 4286945,
	saddlebrown: 9127187,
	salmon: 16416882,
	sandybrown: 16032864,
	seagreen: 3050327,
	seashell: 16774638,
	sienna: 10506797,
	silver: 12632256,
	skyblue: 8900331,
	slateblue: 6970061,
	slategray: 7372944,
	slategrey: 7372944,
	snow: 16775930,
	springgreen: 65407,
	steelblue: 4620980,
	tan: 13808780,
	teal: 32896,
	thistle: 14204888,
	tomato: 16737095,
	turquoise: 4251856,
	violet: 15631086,
	wheat: 16113331,
	white: 16777215,
	whitesmoke: 16119285,
	yellow: 16776960,
	yellowgreen: 10145074
};
define(Color, color$1, {
	copy(channels) {
		return Object.assign(new this.constructor(), this, channels);
	},
	displayable() {
		return this.rgb().displayable();
	},
	hex: color_formatHex,
	formatHex: color_formatHex,
	formatHex8: color_formatHex8,
	formatHsl: color_formatHsl,
	formatRgb: color_formatRgb,
	toString: color_formatRgb
});
function color_formatHex() {
	return this.rgb().formatHex();
}
function color_formatHex8() {
	return this.rgb().formatHex8();
}
function color_formatHsl() {
	return hslConvert(this).formatHsl();
}
function color_formatRgb() {
	return this.rgb().formatRgb();
}
function color$1(format) {
	var m, l;
	format = (format + "").trim().toLowerCase();
	return (m = reHex.exec(format)) ? (l = m[1].length, m = parseInt(m[1], 16), l === 6 ? rgbn(m) : l === 3 ? new Rgb(m >> 8 & 15 | m >> 4 & 240, m >> 4 & 15 | m & 240, (m & 15) << 4 | m & 15, 1) : l === 8 ? rgba(m >> 24 & 255, m >> 16 & 255, m >> 8 & 255, (m & 255) / 255) : l === 4 ? rgba(m >> 12 & 15 | m >> 8 & 240, m >> 8 & 15 | m >> 4 & 240, m >> 4 & 15 | m & 240, ((m & 15) << 4 | m & 15) / 255) : null) : (m = reRgbInteger.exec(format)) ? new Rgb(m[1], m[2], m[3], 1) : (m = reRgbPercent.exec(format)) ? new Rgb(m[1] * 255 / 100, m[2] * 255 / 100, m[3] * 255 / 100, 1) : (m = reRgbaInteger.exec(format)) ? rgba(m[1], m[2], m[3], m[4]) : (m = reRgbaPercent.exec(format)) ? rgba(m[1] * 255 / 100, m[2] * 255 / 100, m[3] * 255 / 100, m[4]) : (m = reHslPercent.exec(format)) ? hsla(m[1], m[2] / 100, m[3] / 100, 1) : (m = reHslaPercent.exec(format)) ? hsla(m[1], m[2] / 100, m[3] / 100, m[4]) : named$1.hasOwnProperty(format) ? rgbn(named$1[format]) : format === "transparent" ? new Rgb(NaN, NaN, NaN, 0) : null;
}
function rgbn(n) {
	return new Rgb(n >> 16 & 255, n >> 8 & 255, n & 255, 1);
}
function rgba(r, g, b, a) {
	if (a <= 0) r = g = b = NaN;
	return new Rgb(r, g, b, a);
}
function rgbConvert(o) {
	if (!(o instanceof Color)) o = color$1(o);
	if (!o) return new Rgb();
	o = o.rgb();
	return new Rgb(o.r, o.g, o.b, o.opacity);
}
function rgb$1(r, g, b, opacity) {
	return arguments.length === 1 ? rgbConvert(r) : new Rgb(r, g, b, opacity == null ? 1 : opacity);
}
function Rgb(r, g, b, opacity) {
	this.r = +r;
	this.g = +g;
	this.b = +b;
	this.opacity = +opacity;
}
define(Rgb, rgb$1, extend(Color, {
	brighter(k) {
		k = k == null ? brighter : Math.pow(brighter, k);
		return new Rgb(this.r * k, this.g * k, this.b * k, this.opacity);
	},
	darker(k) {
		k = k == null ? darker : Math.pow(darker, k);
		return new Rgb(this.r * k, this.g * k, this.b * k, this.opacity);
	},
	rgb() {
		return this;
	},
	clamp() {
		return new Rgb(clampi(this.r), clampi(this.g), clampi(this.b), clampa(this.opacity));
	},
	displayable() {
		return -.5 <= this.r && this.r < 255.5 && -.5 <= this.g && this.g < 255.5 && -.5 <= this.b && this.b < 255.5 && 0 <= this.opacity && this.opacity <= 1;
	},
	hex: rgb_formatHex,
	formatHex: rgb_formatHex,
	formatHex8: rgb_formatHex8,
	formatRgb: rgb_formatRgb,
	toString: rgb_formatRgb
}));
function rgb_formatHex() {
	return `#${hex(this.r)}${hex(this.g)}${hex(this.b)}`;
}
function rgb_formatHex8() {
	return `#${hex(this.r)}${hex(this.g)}${hex(this.b)}${hex((isNaN(this.opacity) ? 1 : this.opacity) * 255)}`;
}
function rgb_formatRgb() {
	const a = clampa(this.opacity);
	return `${a === 1 ? "rgb(" : "rgba("}${clampi(this.r)}, ${clampi(this.g)}, ${clampi(this.b)}${a === 1 ? ")" : `, ${a})`}`;
}
function clampa(opacity) {
	return isNaN(opacity) ? 1 : Math.max(0, Math.min(1, opacity));
}
function clampi(value) {
	return Math.max(0, Math.min(255, Math.round(value) || 0));
}
function hex(value) {
	value = clampi(value);
	return (value < 16 ? "0" : "") + value.toString(16);
}
function hsla(h, s, l, a) {
	if (a <= 0) h = s = l = NaN;
	else if (l <= 0 || l >= 1) h = s = NaN;
	else if (s <= 0) h = NaN;
	return new Hsl(h, s, l, a);
}
function hslConvert(o) {
	if (o instanceof Hsl) return new Hsl(o.h, o.s, o.l, o.opacity);
	if (!(o instanceof Color)) o = color$1(o);
	if (!o) return new Hsl();
	if (o instanceof Hsl) return o;
	o = o.rgb();
	var r = o.r / 255, g = o.g / 255, b = o.b / 255, min = Math.min(r, g, b), max = Math.max(r, g, b), h = NaN, s = max - min, l = (max + min) / 2;
	if (s) {
		if (r === max) h = (g - b) / s + (g < b) * 6;
		else if (g === max) h = (b - r) / s + 2;
		else h = (r - g) / s + 4;
		s /= l < .5 ? max + min : 2 - max - min;
		h *= 60;
	} else s = l > 0 && l < 1 ? 0 : h;
	return new Hsl(h, s, l, o.opacity);
}
function hsl$1(h, s, l, opacity) {
	return arguments.length === 1 ? hslConvert(h) : new Hsl(h, s, l, opacity == null ? 1 : opacity);
}
function Hsl(h, s, l, opacity) {
	this.h = +h;
	this.s = +s;
	this.l = +l;
	this.opacity = +opacity;
}
define(Hsl, hsl$1, extend(Color, {
	brighter(k) {
		k = k == null ? brighter : Math.pow(brighter, k);
		return new Hsl(this.h, this.s, this.l * k, this.opacity);
	},
	darker(k) {
		k = k == null ? darker : Math.pow(darker, k);
		return new Hsl(this.h, this.s, this.l * k, this.opacity);
	},
	rgb() {
		var h = this.h % 360 + (this.h < 0) * 360, s = isNaN(h) || isNaN(this.s) ? 0 : this.s, l = this.l, m2 = l + (l < .5 ? l : 1 - l) * s, m1 = 2 * l - m2;
		return new Rgb(hsl2rgb(h >= 240 ? h - 240 : h + 120, m1, m2), hsl2rgb(h, m1, m2), hsl2rgb(h < 120 ? h + 240 : h - 120, m1, m2), this.opacity);
	},
	clamp() {
		return new Hsl(clamph(this.h), clampt(this.s), clampt(this.l), clampa(this.opacity));
	},
	displayable() {
		return (0 <= this.s && this.s <= 1 || isNaN(this.s)) && 0 <= this.l && this.l <= 1 && 0 <= this.opacity && this.opacity <= 1;
	},
	formatHsl() {
		const a = clampa(this.opacity);
		return `${a === 1 ? "hsl(" : "hsla("}${clamph(this.h)}, ${clampt(this.s) * 100}%, ${clampt(this.l) * 100}%${a === 1 ? ")" : `, ${a})`}`;
	}
}));
function clamph(value) {
	value = (value || 0) % 360;
	return value < 0 ? value + 360 : value;
}
function clampt(value) {
	return Math.max(0, Math.min(1, value || 0));
}
function hsl2rgb(h, m1, m2) {
	return (h < 60 ? m1 + (m2 - m1) * h / 60 : h < 180 ? m2 : h < 240 ? m1 + (m2 - m1) * (240 - h) / 60 : m1) * 255;
}
var radians$2 = Math.PI / 180;
var degrees$2 = 180 / Math.PI;
var K = 18;
var Xn = .96422;
var Yn = 1;
var Zn = .82521;
var t0$1 = 4 / 29;
var t1$1 = 6 / 29;
var t2 = 3 * t1$1 * t1$1;
var t3 = t1$1 * t1$1 * t1$1;
function labConvert(o) {
	if (o instanceof Lab) return new Lab(o.l, o.a, o.b, o.opacity);
	if (o instanceof Hcl) return hcl2lab(o);
	if (!(o instanceof Rgb)) o = rgbConvert(o);
	var r = rgb2lrgb(o.r), g = rgb2lrgb(o.g), b = rgb2lrgb(o.b), y = xyz2lab((.2225045 * r + .7168786 * g + .0606169 * b) / Yn), x, z;
	if (r === g && g === b) x = z = y;
	else {
		x = xyz2lab((.4360747 * r + .3850649 * g + .1430804 * b) / Xn);
		z = xyz2lab((.0139322 * r + .0971045 * g + .7141733 * b) / Zn);
	}
	return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z), o.opacity);
}
function lab$1(l, a, b, opacity) {
	return arguments.length === 1 ? labConvert(l) : new Lab(l, a, b, opacity == null ? 1 : opacity);
}
function Lab(l, a, b, opacity) {
	this.l = +l;
	this.a = +a;
	this.b = +b;
	this.opacity = +opacity;
}
define(Lab, lab$1, extend(Color, {
	brighter(k) {
		return new Lab(this.l + K * (k == null ? 1 : k), this.a, this.b, this.opacity);
	},
	darker(k) {
		return new Lab(this.l - K * (k == null ? 1 : k), this.a, this.b, this.opacity);
	},
	rgb() {
		var y = (this.l + 16) / 116, x = isNaN(this.a) ? y : y + this.a / 500, z = isNaN(this.b) ? y : y - this.b / 200;
		x = Xn * lab2xyz(x);
		y = Yn * lab2xyz(y);
		z = Zn * lab2xyz(z);
		return new Rgb(lrgb2rgb(3.1338561 * x - 1.6168667 * y - .4906146 * z), lrgb2rgb(-.9787684 * x + 1.9161415 * y + .033454 * z), lrgb2rgb(.0719453 * x - .2289914 * y + 1.4052427 * z), this.opacity);
	}
}));
function xyz2lab(t) {
	return t > t3 ? Math.pow(t, 1 / 3) : t / t2 + t0$1;
}
function lab2xyz(t) {
	return t > t1$1 ? t * t * t : t2 * (t - t0$1);
}
function lrgb2rgb(x) {
	return 255 * (x <= .0031308 ? 12.92 * x : 1.055 * Math.pow(x, 1 / 2.4) - .055);
}
function rgb2lrgb(x) {
	return (x /= 255) <= .04045 ? x / 12.92 : Math.pow((x + .055) / 1.055, 2.4);
}
function hclConvert(o) {
	if (o instanceof Hcl) return new Hcl(o.h, o.c, o.l, o.opacity);
	if (!(o instanceof Lab)) o = labConvert(o);
	if (o.a === 0 && o.b === 0) return new Hcl(NaN, 0 < o.l && o.l < 100 ? 0 : NaN, o.l, o.opacity);
	var h = Math.atan2(o.b, o.a) * degrees$2;
	return new Hcl(h < 0 ? h + 360 : h, Math.sqrt(o.a * o.a + o.b * o.b), o.l, o.opacity);
}
function hcl$1(h, c, l, opacity) {
	return arguments.length === 1 ? hclConvert(h) : new Hcl(h, c, l, opacity == null ? 1 : opacity);
}
function Hcl(h, c, l, opacity) {
	this.h = +h;
	this.c = +c;
	this.l = +l;
	this.opacity = +opacity;
}
function hcl2lab(o) {
	if (isNaN(o.h)) return new Lab(o.l, 0, 0, o.opacity);
	var h = o.h * radians$2;
	return new Lab(o.l, Math.cos(h) * o.c, Math.sin(h) * o.c, o.opacity);
}
define(Hcl, hcl$1, extend(Color, {
	brighter(k) {
		return new Hcl(this.h, this.c, this.l + K * (k == null ? 1 : k), this.opacity);
	},
	darker(k) {
		return new Hcl(this.h, this.c, this.l - K * (k == null ? 1 : k), this.opacity);
	},
	rgb() {
		return hcl2lab(this).rgb();
	}
}));
var A = -.14861;
var B = 1.78277;
var C = -.29227;
var D = -.90649;
var E = 1.97294;
var ED = E * D;
var EB = E * B;
var BC_DA = B * C - D * A;
function cubehelixConvert(o) {
	if (o instanceof Cubehelix) return new Cubehelix(o.h, o.s, o.l, o.opacity);
	if (!(o instanceof Rgb)) o = rgbConvert(o);
	var r = o.r / 255, g = o.g / 255, b = o.b / 255, l = (BC_DA * b + ED * r - EB * g) / (BC_DA + ED - EB), bl = b - l, k = (E * (g - l) - C * bl) / D, s = Math.sqrt(k * k + bl * bl) / (E * l * (1 - l)), h = s ? Math.atan2(k, bl) * degrees$2 - 120 : NaN;
	return new Cubehelix(h < 0 ? h + 360 : h, s, l, o.opacity);
}
function cubehelix$1(h, s, l, opacity) {
	return arguments.length === 1 ? cubehelixConvert(h) : new Cubehelix(h, s, l, opacity == null ? 1 : opacity);
}
function Cubehelix(h, s, l, opacity) {
	this.h = +h;
	this.s = +s;
	this.l = +l;
	this.opacity = +opacity;
}
define(Cubehelix, cubehelix$1, extend(Color, {
	brighter(k) {
		k = k == null ? brighter : Math.pow(brighter, k);
		return new Cubehelix(this.h, this.s, this.l * k, this.opacity);
	},
	darker(k) {
		k = k == null ? darker : Math.pow(darker, k);
		return new Cubehelix(this.h, this.s, this.l * k, this.opacity);
	},
	rgb() {
		var h = isNaN(this.h) ? 0 : (this.h + 120) * radians$2, l = +this.l, a = isNaN(this.s) ? 0 : this.s * l * (1 - l), cosh = Math.cos(h), sinh = Math.sin(h);
		return new Rgb(255 * (l + a * (A * cosh + B * sinh)), 255 * (l + a * (C * cosh + D * sinh)), 255 * (l + a * (E * cosh)), this.opacity);
	}
}));
// ../../node_modules/.pnpm/d3-interpolate@3.0.2/node_modules/d3-interpolate/dist/d3-interpolate.mjs
function basis$2(t1, v0, v1, v2, v3) {
	var t2 = t1 * t1, t3 = t2 * t1;
	return ((1 - 3 * t1 + 3 * t2 - t3) * v0 + (4 - 6 * t2 + 3 * t3) * v1 + (1 + 3 * t1 + 3 * t2 - 3 * t3) * v2 + t3 * v3) / 6;
}
function basis$1(values) {
	var n = values.length - 1;
	return function(t) {
		var i = t <= 0 ? t = 0 : t >= 1 ? (t = 1, n - 1) : Math.floor(t * n), v1 = values[i], v2 = values[i + 1], v0 = i > 0 ? values[i - 1] : 2 * v1 - v2, v3 = i < n - 1 ? values[i + 2] : 2 * v2 - v1;
		return basis$2((t - i / n) * n, v0, v1, v2, v3);
	};
}
var constant$2 = (x) => () => x;
function linear$1(a, d) {
	return function(t) {
		return a + t * d;
	};
}
function exponential(a, b, y) {
	return a = Math.pow(a, y), b = Math.pow(b, y) - a, y = 1 / y, function(t) {
		return Math.pow(a + t * b, y);
	};
}
function hue$1(a, b) {
	var d = b - a;
	return d ? linear$1(a, d > 180 || d < -180 ? d - 360 * Math.round(d / 360) : d) : constant$2(isNaN(a) ? b : a);
}
function gamma(y) {
	return (y = +y) === 1 ? nogamma : function(a, b) {
		return b - a ? exponential(a, b, y) : constant$2(isNaN(a) ? b : a);
	};
}
function nogamma(a, b) {
	var d = b - a;
	return d ? linear$1(a, d) : constant$2(isNaN(a) ? b : a);
}
var rgb = (function rgbGamma(y) {
	var color = gamma(y);
	function rgb(start, end) {
		var r = color((start = rgb$1(start)).r, (end = rgb$1(end)).r), g = color(start.g, end.g), b = color(start.b, end.b), opacity = nogamma(start.opacity, end.opacity);
		return function(t) {
			start.r = r(t);
			start.g = g(t);
			start.b = b(t);
			start.opacity = opacity(t);
			return start + "";
		};
	}
	rgb.gamma = rgbGamma;
	return rgb;
})(1);
function rgbSpline(spline) {
	return function(colors) {
		var n = colors.length, r = new Array(n), g = new Array(n), b = new Array(n), i = 0, color;
		for (; i < n; ++i) {
			color = rgb$1(colors[i]);
			r[i] = color.r || 0;
			g[i] = color.g || 0;
			b[i] = color.b || 0;
		}
		r = spline(r);
		g = spline(g);
		b = spline(b);
		color.opacity = 1;
		return function(t) {
			color.r = r(t);
			color.g = g(t);
			color.b = b(t);
			return color + "";
		};
	};
}
var rgbBasis = rgbSpline(basis$1);
function numberArray(a, b) {
	if (!b) b = [];
	var n = a ? Math.min(b.length, a.length) : 0, c = b.slice(), i;
	return function(t) {
		for (i = 0; i < n; ++i) c[i] = a[i] * (1 - t) + b[i] * t;
		return c;
	};
}
function isNumberArray$1(x) {
	return ArrayBuffer.isView(x) && !(x instanceof DataView);
}
function genericArray(a, b) {
	var nb = b ? b.length : 0, na = a ? Math.min(nb, a.length) : 0, x = new Array(na), c = new Array(nb), i = 0;
	for (; i < na; ++i) x[i] = value(a[i], b[i]);
	for (; i < nb; ++i) c[i] = b[i];
	return function(t) {
		for (i = 0; i < na; ++i) c[i] = x[i](t);
		return c;
	};
}
function date$1(a, b) {
	var d = /* @__PURE__ */ new Date();
	return a = +a, b = +b, function(t) {
		return d.setTime(a * (1 - t) + b * t), d;
	};
}
function number$3(a, b) {
	return a = +a, b = +b, function(t) {
		return a * (1 - t) + b * t;
	};
}
function object(a, b) {
	var i = {}, c = {}, k;
	if (a === null || typeof a !== "object") a = {};
	if (b === null || typeof b !== "object") b = {};
	for (k in b) if (k in a) i[k] = value(a[k], b[k]);
	else c[k] = b[k];
	return function(t) {
		for (k in i) c[k] = i[k](t);
		return c;
	};
}
var reA = /[-+]?(?:\d+\.?\d*|\.?\d+)(?:[eE][-+]?\d+)?/g;
var reB = new RegExp(reA.source, "g");
function zero(b) {
	return function() {
		return b;
	};
}
function one$1(b) {
	return function(t) {
		return b(t) + "";
	};
}
function string$1(a, b) {
	var bi = reA.lastIndex = reB.lastIndex = 0, am, bm, bs, i = -1, s = [], q = [];
	a = a + "", b = b + "";
	while ((am = reA.exec(a)) && (bm = reB.exec(b))) {
		if ((bs = bm.index) > bi) {
			bs = b.slice(bi, bs);
			if (s[i]) s[i] += bs;
			else s[++i] = bs;
		}
		if ((am = am[0]) === (bm = bm[0])) {
			if (s[i]) s[i] += bm;
			else s[++i] = bm;
		} else {
			s[++i] = null;
			q.push({
				i,
				x: number$3(am, bm)
			});
		}
		bi = reB.lastIndex;
	}
	if (bi < b.length) {
		bs = b.slice(bi);
		if (s[i]) s[i] += bs;
		else s[++i] = bs;
	}
	return s.length < 2 ? q[0] ? one$1(q[0].x) : zero(b) : (b = q.length, function(t) {
		for (var i = 0, o; i < b; ++i) s[(o = q[i]).i] = o.x(t);
		return s.join("");
	});
}
function value(a, b) {
	var t = typeof b, c;
	return b == null || t === "boolean" ? constant$2(b) : (t === "number" ? number$3 : t === "string" ? (c = color$1(b)) ? (b = c, rgb) : string$1 : b instanceof color$1 ? rgb : b instanceof Date ? date$1 : isNumberArray$1(b) ? numberArray : Array.isArray(b) ? genericArray : typeof b.valueOf !== "function" && typeof b.toString !== "function" || isNaN(b) ? object : number$3)(a, b);
}
function round(a, b) {
	return a = +a, b = +b, function(t) {
		return Math.round(a * (1 - t) + b * t);
	};
}
var epsilon2$1 = 1e-12;
function cosh(x) {
	return ((x = Math.exp(x)) + 1 / x) / 2;
}
function sinh(x) {
	return ((x = Math.exp(x)) - 1 / x) / 2;
}
function tanh(x) {
	return ((x = Math.exp(2 * x)) - 1) / (x + 1);
}
(function zoomRho(rho, rho2, rho4) {
	function zoom(p0, p1) {
		var ux0 = p0[0], uy0 = p0[1], w0 = p0[2], ux1 = p1[0], uy1 = p1[1], w1 = p1[2], dx = ux1 - ux0, dy = uy1 - uy0, d2 = dx * dx + dy * dy, i, S;
		if (d2 < epsilon2$1) {
			S = Math.log(w1 / w0) / rho;
			i = function(t) {
				return [
					ux0 + t * dx,
					uy0 + t * dy,
					w0 * Math.exp(rho * t * S)
				];
			};
		} else {
			var d1 = Math.sqrt(d2), b0 = (w1 * w1 - w0 * w0 + rho4 * d2) / (2 * w0 * rho2 * d1), b1 = (w1 * w1 - w0 * w0 - rho4 * d2) / (2 * w1 * rho2 * d1), r0 = Math.log(Math.sqrt(b0 * b0 + 1) - b0);
			S = (Math.log(Math.sqrt(b1 * b1 + 1) - b1) - r0) / rho;
			i = function(t) {
				var s = t * S, coshr0 = cosh(r0), u = w0 / (rho2 * d1) * (coshr0 * tanh(rho * s + r0) - sinh(r0));
				return [
					ux0 + u * dx,
					uy0 + u * dy,
					w0 * coshr0 / cosh(rho * s + r0)
				];
			};
		}
		i.duration = Math.abs(S) * 1e3 * rho / Math.SQRT2;
		return i;
	}
	zoom.rho = function(_) {
		var _1 = Math.max(.001, +_), _2 = _1 * _1;
		return zoomRho(_1, _2, _2 * _2);
	};
	return zoom;
})(Math.SQRT2, 2, 4);
function hsl(hue) {
	return function(start, end) {
		var h = hue((start = hsl$1(start)).h, (end = hsl$1(end)).h), s = nogamma(start.s, end.s), l = nogamma(start.l, end.l), opacity = nogamma(start.opacity, end.opacity);
		return function(t) {
			start.h = h(t);
			start.s = s(t);
			start.l = l(t);
			start.opacity = opacity(t);
			return start + "";
		};
	};
}
var hsl_default = hsl(hue$1);
function lab(start, end) {
	var l = nogamma((start = lab$1(start)).l, (end = lab$1(end)).l), a = nogamma(start.a, end.a), b = nogamma(start.b, end.b), opacity = nogamma(start.opacity, end.opacity);
	return function(t) {
		start.l = l(t);
		start.a = a(t);
		start.b = b(t);
		start.opacity = opacity(t);
		return start + "";
	};
}
function hcl(hue) {
	return function(start, end) {
		var h = hue((start = hcl$1(start)).h, (end = hcl$1(end)).h), c = nogamma(start.c, end.c), l = nogamma(start.l, end.l), opacity = nogamma(start.opacity, end.opacity);
		return function(t) {
			start.h = h(t);
			start.c = c(t);
			start.l = l(t);
			start.opacity = opacity(t);
			return start + "";
		};
	};
}
var hcl_default = hcl(hue$1);
function cubehelix$2(hue) {
	return (function cubehelixGamma(y) {
		y = +y;
		function cubehelix(start, end) {
			var h = hue((start = cubehelix$1(start)).h, (end = cubehelix$1(end)).h), s = nogamma(start.s, end.s), l = nogamma(start.l, end.l), opacity = nogamma(start.opacity, end.opacity);
			return function(t) {
				start.h = h(t);
				start.s = s(t);
				start.l = l(Math.pow(t, y));
				start.opacity = opacity(t);
				return start + "";
			};
		}
		cubehelix.gamma = cubehelixGamma;
		return cubehelix;
	})(1);
}
cubehelix$2(hue$1);
var cubehelixLong = cubehelix$2(nogamma);
function piecewise(interpolate, values) {
	if (values === void 0) values = interpolate, interpolate = value;
	var i = 0, n = values.length - 1, v = values[0], I = new Array(n < 0 ? 0 : n);
	while (i < n) I[i] = interpolate(v, v = values[++i]);
	return function(t) {
		var i = Math.max(0, Math.min(n - 1, Math.floor(t *= n)));
		return I[i](t - i);
	};
}
function quantize(interpolator, n) {
	var samples = new Array(n);
	for (var i = 0; i < n; ++i) samples[i] = interpolator(i / (n - 1));
	return samples;
}
// ../../node_modules/.pnpm/d3-path@3.1.1/node_modules/d3-path/dist/d3-path.mjs
var pi$3 = Math.PI;
var tau$3 = 2 * pi$3;
var epsilon$2 = 1e-6;
var tauEpsilon = tau$3 - epsilon$2;
function append$1(strings) {
	this._ += strings[0];
	for (let i = 1, n = strings.length; i < n; ++i) this._ += arguments[i] + strings[i];
}
function appendRound$1(digits) {
	let d = Math.floor(digits);
	if (!(d >= 0)) throw new Error(`invalid digits: ${digits}`);
	if (d > 15) return append$1;
	const k = 10 ** d;
	return function(strings) {
		this._ += strings[0];
		for (let i = 1, n = strings.length; i < n; ++i) this._ += Math.round(arguments[i] * k) / k + strings[i];
	};
}
function equal(x0, y0, x1, y1) {
	return x0 === x1 && y0 === y1;
}
function equalRound(digits) {
	const d = Math.floor(digits);
	if (!(d <= 15)) return equal;
	const k = 10 ** d;
	const r = function(value) {
		return Math.round(value * k);
	};
	return function(x0, y0, x1, y1) {
		return r(x0) === r(x1) && r(y0) === r(y1);
	};
}
var Path = class {
	constructor(digits) {
		this._x0 = this._y0 = this._x1 = this._y1 = null;
		this._ = "";
		this._append = digits == null ? append$1 : appendRound$1(digits);
		this._equal = digits == null ? equal : equalRound(digits);
	}
	moveTo(x, y) {
		this._append`M${this._x0 = this._x1 = +x},${this._y0 = this._y1 = +y}`;
	}
	closePath() {
		if (this._x1 !== null) {
			this._x1 = this._x0, this._y1 = this._y0;
			this._append`Z`;
		}
	}
	lineTo(x, y) {
		this._append`L${this._x1 = +x},${this._y1 = +y}`;
	}
	quadraticCurveTo(x1, y1, x, y) {
		this._append`Q${+x1},${+y1},${this._x1 = +x},${this._y1 = +y}`;
	}
	bezierCurveTo(x1, y1, x2, y2, x, y) {
		this._append`C${+x1},${+y1},${+x2},${+y2},${this._x1 = +x},${this._y1 = +y}`;
	}
	arcTo(x1, y1, x2, y2, r) {
		x1 = +x1, y1 = +y1, x2 = +x2, y2 = +y2, r = +r;
		if (r < 0) throw new Error(`negative radius: ${r}`);
		let x0 = this._x1, y0 = this._y1, x21 = x2 - x1, y21 = y2 - y1, x01 = x0 - x1, y01 = y0 - y1, l01_2 = x01 * x01 + y01 * y01;
		if (this._x1 === null) this._append`M${this._x1 = x1},${this._y1 = y1}`;
		else if (!(l01_2 > epsilon$2));
		else if (!(Math.abs(y01 * x21 - y21 * x01) > epsilon$2) || !r) this._append`L${this._x1 = x1},${this._y1 = y1}`;
		else {
			let x20 = x2 - x0, y20 = y2 - y0, l21_2 = x21 * x21 + y21 * y21, l20_2 = x20 * x20 + y20 * y20, l21 = Math.sqrt(l21_2), l01 = Math.sqrt(l01_2), l = r * Math.tan((pi$3 - Math.acos((l21_2 + l01_2 - l20_2) / (2 * l21 * l01))) / 2), t01 = l / l01, t21 = l / l21;
			if (Math.abs(t01 - 1) > epsilon$2) this._append`L${x1 + t01 * x01},${y1 + t01 * y01}`;
			this._append`A${r},${r},0,0,${+(y01 * x20 > x01 * y20)},${this._x1 = x1 + t21 * x21},${this._y1 = y1 + t21 * y21}`;
		}
	}
	arc(x, y, r, a0, a1, ccw) {
		x = +x, y = +y, r = +r, ccw = !!ccw;
		if (r < 0) throw new Error(`negative radius: ${r}`);
		let dx = r * Math.cos(a0), dy = r * Math.sin(a0), x0 = x + dx, y0 = y + dy, cw = 1 ^ ccw, da = ccw ? a0 - a1 : a1 - a0;
		if (this._x1 === null) this._append`M${x0},${y0}`;
		else if (Math.abs(this._x1 - x0) > epsilon$2 || Math.abs(this._y1 - y0) > epsilon$2) this._append`L${x0},${y0}`;
		if (!r) return;
		if (da < 0) da = da % tau$3 + tau$3;
		if (da > tauEpsilon) this._append`A${r},${r},0,1,${cw},${x - dx},${y - dy}A${r},${r},0,1,${cw},${this._x1 = x0},${this._y1 = y0}`;
		else if (da > epsilon$2) {
			const x1 = x + r * Math.cos(a1);
			const y1 = y + r * Math.sin(a1);
			if (da >= pi$3 && this._equal(x0, y0, x1, y1)) {
				da /= 2;
				let a00 = a0 + da;
				this._append`A${r},${r},0,${+(da >= pi$3)},${cw},${x + r * Math.cos(a00)},${y + r * Math.sin(a00)}`;
			}
			this._append`A${r},${r},0,${+(da >= pi$3)},${cw},${this._x1 = x1},${this._y1 = y1}`;
		}
	}
	rect(x, y, w, h) {
		this._append`M${this._x0 = this._x1 = +x},${this._y0 = this._y1 = +y}h${w = +w}v${+h}h${-w}Z`;
	}
	toString() {
		return this._;
	}
};
function path() {
	return new Path();
}
path.prototype = Path.prototype;
function pathRound(digits = 3) {
	return new Path(+digits);
}
// ../../node_modules/.pnpm/d3-format@3.1.3/node_modules/d3-format/dist/d3-format.mjs
function formatDecimal(x) {
	return Math.abs(x = Math.round(x)) >= 1e21 ? x.toLocaleString("en").replace(/,/g, "") : x.toString(10);
}
function formatDecimalParts(x, p) {
	if (!isFinite(x) || x === 0) return null;
	var i = (x = p ? x.toExponential(p - 1) : x.toExponential()).indexOf("e"), coefficient = x.slice(0, i);
	return [coefficient.length > 1 ? coefficient[0] + coefficient.slice(2) : coefficient, +x.slice(i + 1)];
}
function exponent(x) {
	return x = formatDecimalParts(Math.abs(x)), x ? x[1] : NaN;
}
function formatGroup(grouping, thousands) {
	return function(value, width) {
		var i = value.length, t = [], j = 0, g = grouping[0], length = 0;
		while (i > 0 && g > 0) {
			if (length + g + 1 > width) g = Math.max(1, width - length);
			t.push(value.substring(i -= g, i + g));
			if ((length += g + 1) > width) break;
			g = grouping[j = (j + 1) % grouping.length];
		}
		return t.reverse().join(thousands);
	};
}
function formatNumerals(numerals) {
	return function(value) {
		return value.replace(/[0-9]/g, function(i) {
			return numerals[+i];
		});
	};
}
var re$1 = /^(?:(.)?([<>=^]))?([+\-( ])?([$#])?(0)?(\d+)?(,)?(\.\d+)?(~)?([a-z%])?$/i;
function formatSpecifier(specifier) {
	if (!(match = re$1.exec(specifier))) throw new Error("invalid format: " + specifier);
	var match;
	return new FormatSpecifier({
		fill: match[1],
		align: match[2],
		sign: match[3],
		symbol: match[4],
		zero: match[5],
		width: match[6],
		comma: match[7],
		precision: match[8] && match[8].slice(1),
		trim: match[9],
		type: match[10]
	});
}
formatSpecifier.prototype = FormatSpecifier.prototype;
function FormatSpecifier(specifier) {
	this.fill = specifier.fill === void 0 ? " " : specifier.fill + "";
	this.align = specifier.align === void 0 ? ">" : specifier.align + "";
	this.sign = specifier.sign === void 0 ? "-" : specifier.sign + "";
	this.symbol = specifier.symbol === void 0 ? "" : specifier.symbol + "";
	this.zero = !!specifier.zero;
	this.width = specifier.width === void 0 ? void 0 : +specifier.width;
	this.comma = !!specifier.comma;
	this.precision = specifier.precision === void 0 ? void 0 : +specifier.precision;
	this.trim = !!specifier.trim;
	this.type = specifier.type === void 0 ? "" : specifier.type + "";
}
FormatSpecifier.prototype.toString = function() {
	return this.fill + this.align + this.sign + this.symbol + (this.zero ? "0" : "") + (this.width === void 0 ? "" : Math.max(1, this.width | 0)) + (this.comma ? "," : "") + (this.precision === void 0 ? "" : "." + Math.max(0, this.precision | 0)) + (this.trim ? "~" : "") + this.type;
};
function formatTrim(s) {
	out: for (var n = s.length, i = 1, i0 = -1, i1; i < n; ++i) switch (s[i]) {
		case ".":
			i0 = i1 = i;
			break;
		case "0":
			if (i0 === 0) i0 = i;
			i1 = i;
			break;
		default:
			if (!+s[i]) break out;
			if (i0 > 0) i0 = 0;
	}
	return i0 > 0 ? s.slice(0, i0) + s.slice(i1 + 1) : s;
}
var prefixExponent;
function formatPrefixAuto(x, p) {
	var d = formatDecimalParts(x, p);
	if (!d) return prefixExponent = void 0, x.toPrecision(p);
	var coefficient = d[0], exponent = d[1], i = exponent - (prefixExponent = Math.max(-8, Math.min(8, Math.floor(exponent / 3))) * 3) + 1, n = coefficient.length;
	return i === n ? coefficient : i > n ? coefficient + new Array(i - n + 1).join("0") : i > 0 ? coefficient.slice(0, i) + "." + coefficient.slice(i) : "0." + new Array(1 - i).join("0") + formatDecimalParts(x, Math.max(0, p + i - 1))[0];
}
function formatRounded(x, p) {
	var d = formatDecimalParts(x, p);
	if (!d) return x + "";
	var coefficient = d[0], exponent = d[1];
	return exponent < 0 ? "0." + new Array(-exponent).join("0") + coefficient : coefficient.length > exponent + 1 ? coefficient.slice(0, exponent + 1) + "." + coefficient.slice(exponent + 1) : coefficient + new Array(exponent - coefficient.length + 2).join("0");
}
var formatTypes = {
	"%": (x, p) => (x * 100).toFixed(p),
	"b": (x) => Math.round(x).toString(2),
	"c": (x) => x + "",
	"d": formatDecimal,
	"e": (x, p) => x.toExponential(p),
	"f": (x, p) => x.toFixed(p),
	"g": (x, p) => x.toPrecision(p),
	"o": (x) => Math.round(x).toString(8),
	"p": (x, p) => formatRounded(x * 100, p),
	"r": formatRounded,
	"s": formatPrefixAuto,
	"X": (x) => Math.round(x).toString(16).toUpperCase(),
	"x": (x) => Math.round(x).toString(16)
};
function identity$3(x) {
	return x;
}
var map$1 = Array.prototype.map;
var prefixes = [
	"y",
	"z",
	"a",
	"f",
	"p",
	"n",
	"µ",
	"m",
	"",
	"k",
	"M",
	"G",
	"T",
	"P",
	"E",
	"Z",
	"Y"
];
function formatLocale$1(locale) {
	var group = locale.grouping === void 0 || locale.thousands === void 0 ? identity$3 : formatGroup(map$1.call(locale.grouping, Number), locale.thousands + ""), currencyPrefix = locale.currency === void 0 ? "" : locale.currency[0] + "", currencySuffix = locale.currency === void 0 ? "" : locale.currency[1] + "", decimal = locale.decimal === void 0 ? "." : locale.decimal + "", numerals = locale.numerals === void 0 ? identity$3 : formatNumerals(map$1.call(locale.numerals, String)), percent = locale.percent === void 0 ? "%" : locale.percent + "", minus = locale.minus === void 0 ? "−" : locale.minus + "", nan = locale.nan === void 0 ? "NaN" : locale.nan + "";
	function newFormat(specifier, options) {
		specifier = formatSpecifier(specifier);
		var fill = specifier.fill, align = specifier.align, sign = specifier.sign, symbol = specifier.symbol, zero = specifier.zero, width = specifier.width, comma = specifier.comma, precision = specifier.precision, trim = specifier.trim, type = specifier.type;
		if (type === "n") comma = true, type = "g";
		else if (!formatTypes[type]) precision === void 0 && (precision = 12), trim = true, type = "g";
		if (zero || fill === "0" && align === "=") zero = true, fill = "0", align = "=";
		var prefix = (options && options.prefix !== void 0 ? options.prefix : "") + (symbol === "$" ? currencyPrefix : symbol === "#" && /[boxX]/.test(type) ? "0" + type.toLowerCase() : ""), suffix = (symbol === "$" ? currencySuffix : /[%p]/.test(type) ? percent : "") + (options && options.suffix !== void 0 ? options.suffix : "");
		var formatType = formatTypes[type], maybeSuffix = /[defgprs%]/.test(type);
		precision = precision === void 0 ? 6 : /[gprs]/.test(type) ? Math.max(1, Math.min(21, precision)) : Math.max(0, Math.min(20, precision));
		function format(value) {
			var valuePrefix = prefix, valueSuffix = suffix, i, n, c;
			if (type === "c") {
				valueSuffix = formatType(value) + valueSuffix;
				value = "";
			} else {
				value = +value;
				var valueNegative = value < 0 || 1 / value < 0;
				value = isNaN(value) ? nan : formatType(Math.abs(value), precision);
				if (trim) value = formatTrim(value);
				if (valueNegative && +value === 0 && sign !== "+") valueNegative = false;
				valuePrefix = (valueNegative ? sign === "(" ? sign : minus : sign === "-" || sign === "(" ? "" : sign) + valuePrefix;
				valueSuffix = (type === "s" && !isNaN(value) && prefixExponent !== void 0 ? prefixes[8 + prefixExponent / 3] : "") + valueSuffix + (valueNegative && sign === "(" ? ")" : "");
				if (maybeSuffix) {
					i = -1, n = value.length;
					while (++i < n) if (c = value.charCodeAt(i), 48 > c || c > 57) {
						valueSuffix = (c === 46 ? decimal + value.slice(i + 1) : value.slice(i)) + valueSuffix;
						value = value.slice(0, i);
						break;
					}
				}
			}
			if (comma && !zero) value = group(value, Infinity);
			var length = valuePrefix.length + value.length + valueSuffix.length, padding = length < width ? new Array(width - length + 1).join(fill) : "";
			if (comma && zero) value = group(padding + value, padding.length ? width - valueSuffix.length : Infinity), padding = "";
			switch (align) {
				case "<":
					value = valuePrefix + value + valueSuffix + padding;
					break;
				case "=":
					value = valuePrefix + padding + value + valueSuffix;
					break;
				case "^":
					value = padding.slice(0, length = padding.length >> 1) + valuePrefix + value + valueSuffix + padding.slice(length);
					break;
				default: value = padding + valuePrefix + value + valueSuffix;
			}
			return numerals(value);
		}
		format.toString = function() {
			return specifier + "";
		};
		return format;
	}
	function formatPrefix(specifier, value) {
		var e = Math.max(-8, Math.min(8, Math.floor(exponent(value) / 3))) * 3, k = Math.pow(10, -e), f = newFormat((specifier = formatSpecifier(specifier), specifier.type = "f", specifier), { suffix: prefixes[8 + e / 3] });
		return function(value) {
			return f(k * value);
		};
	}
	return {
		format: newFormat,
		formatPrefix
	};
}
var locale$1;
var format$1;
var formatPrefix;
defaultLocale$1({
	thousands: ",",
	grouping: [3],
	currency: ["$", ""]
});
function defaultLocale$1(definition) {
	locale$1 = formatLocale$1(definition);
	format$1 = locale$1.format;
	formatPrefix = locale$1.formatPrefix;
	return locale$1;
}
function precisionFixed(step) {
	return Math.max(0, -exponent(Math.abs(step)));
}
function precisionPrefix(step, value) {
	return Math.max(0, Math.max(-8, Math.min(8, Math.floor(exponent(value) / 3))) * 3 - exponent(Math.abs(step)));
}
function precisionRound(step, max) {
	step = Math.abs(step), max = Math.abs(max) - step;
	return Math.max(0, exponent(max) - exponent(step)) + 1;
}
// ../../node_modules/.pnpm/d3-geo@3.1.2/node_modules/d3-geo/dist/d3-geo.mjs
var epsilon$1 = 1e-6;
var epsilon2 = 1e-12;
var pi$2 = Math.PI;
var halfPi$1 = pi$2 / 2;
var quarterPi = pi$2 / 4;
var tau$2 = pi$2 * 2;
var degrees = 180 / pi$2;
var radians$1 = pi$2 / 180;
var abs = Math.abs;
var atan = Math.atan;
var atan2 = Math.atan2;
var cos$1 = Math.cos;
var exp = Math.exp;
var log$1 = Math.log;
var pow$1 = Math.pow;
var sin$1 = Math.sin;
var sign$1 = Math.sign || function(x) {
	return x > 0 ? 1 : x < 0 ? -1 : 0;
};
var sqrt$1 = Math.sqrt;
var tan = Math.tan;
function acos(x) {
	return x > 1 ? 0 : x < -1 ? pi$2 : Math.acos(x);
}
function asin(x) {
	return x > 1 ? halfPi$1 : x < -1 ? -halfPi$1 : Math.asin(x);
}
function noop$1() {}
function streamGeometry(geometry, stream) {
	if (geometry && streamGeometryType.hasOwnProperty(geometry.type)) streamGeometryType[geometry.type](geometry, stream);
}
var streamObjectType = {
	Feature: function(object, stream) {
		streamGeometry(object.geometry, stream);
	},
	FeatureCollection: function(object, stream) {
		var features = object.features, i = -1, n = features.length;
		while (++i < n) streamGeometry(features[i].geometry, stream);
	}
};
var streamGeometryType = {
	Sphere: function(object, stream) {
		stream.sphere();
	},
	Point: function(object, stream) {
		object = object.coordinates;
		stream.point(object[0], object[1], object[2]);
	},
	MultiPoint: function(object, stream) {
		var coordinates = object.coordinates, i = -1, n = coordinates.length;
		while (++i < n) object = coordinates[i], stream.point(object[0], object[1], object[2]);
	},
	LineString: function(object, stream) {
		streamLine(object.coordinates, stream, 0);
	},
	MultiLineString: function(object, stream) {
		var coordinates = object.coordinates, i = -1, n = coordinates.length;
		while (++i < n) streamLine(coordinates[i], stream, 0);
	},
	Polygon: function(object, stream) {
		streamPolygon(object.coordinates, stream);
	},
	MultiPolygon: function(object, stream) {
		var coordinates = object.coordinates, i = -1, n = coordinates.length;
		while (++i < n) streamPolygon(coordinates[i], stream);
	},
	GeometryCollection: function(object, stream) {
		var geometries = object.geometries, i = -1, n = geometries.length;
		while (++i < n) streamGeometry(geometries[i], stream);
	}
};
function streamLine(coordinates, stream, closed) {
	var i = -1, n = coordinates.length - closed, coordinate;
	stream.lineStart();
	while (++i < n) coordinate = coordinates[i], stream.point(coordinate[0], coordinate[1], coordinate[2]);
	stream.lineEnd();
}
function streamPolygon(coordinates, stream) {
	var i = -1, n = coordinates.length;
	stream.polygonStart();
	while (++i < n) streamLine(coordinates[i], stream, 1);
	stream.polygonEnd();
}
function geoStream(object, stream) {
	if (object && streamObjectType.hasOwnProperty(object.type)) streamObjectType[object.type](object, stream);
	else streamGeometry(object, stream);
}
new Adder();
new Adder();
function spherical(cartesian) {
	return [atan2(cartesian[1], cartesian[0]), asin(cartesian[2])];
}
function cartesian(spherical) {
	var lambda = spherical[0], phi = spherical[1], cosPhi = cos$1(phi);
	return [
		cosPhi * cos$1(lambda),
		cosPhi * sin$1(lambda),
		sin$1(phi)
	];
}
function cartesianDot(a, b) {
	return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
function cartesianCross(a, b) {
	return [
		a[1] * b[2] - a[2] * b[1],
		a[2] * b[0] - a[0] * b[2],
		a[0] * b[1] - a[1] * b[0]
	];
}
function cartesianAddInPlace(a, b) {
	a[0] += b[0], a[1] += b[1], a[2] += b[2];
}
function cartesianScale(vector, k) {
	return [
		vector[0] * k,
		vector[1] * k,
		vector[2] * k
	];
}
function cartesianNormalizeInPlace(d) {
	var l = sqrt$1(d[0] * d[0] + d[1] * d[1] + d[2] * d[2]);
	d[0] /= l, d[1] /= l, d[2] /= l;
}
function compose(a, b) {
	function compose(x, y) {
		return x = a(x, y), b(x[0], x[1]);
	}
	if (a.invert && b.invert) compose.invert = function(x, y) {
		return x = b.invert(x, y), x && a.invert(x[0], x[1]);
	};
	return compose;
}
function rotationIdentity(lambda, phi) {
	if (abs(lambda) > pi$2) lambda -= Math.round(lambda / tau$2) * tau$2;
	return [lambda, phi];
}
rotationIdentity.invert = rotationIdentity;
function rotateRadians(deltaLambda, deltaPhi, deltaGamma) {
	return (deltaLambda %= tau$2) ? deltaPhi || deltaGamma ? compose(rotationLambda(deltaLambda), rotationPhiGamma(deltaPhi, deltaGamma)) : rotationLambda(deltaLambda) : deltaPhi || deltaGamma ? rotationPhiGamma(deltaPhi, deltaGamma) : rotationIdentity;
}
function forwardRotationLambda(deltaLambda) {
	return function(lambda, phi) {
		lambda += deltaLambda;
		if (abs(lambda) > pi$2) lambda -= Math.round(lambda / tau$2) * tau$2;
		return [lambda, phi];
	};
}
function rotationLambda(deltaLambda) {
	var rotation = forwardRotationLambda(deltaLambda);
	rotation.invert = forwardRotationLambda(-deltaLambda);
	return rotation;
}
function rotationPhiGamma(deltaPhi, deltaGamma) {
	var cosDeltaPhi = cos$1(deltaPhi), sinDeltaPhi = sin$1(deltaPhi), cosDeltaGamma = cos$1(deltaGamma), sinDeltaGamma = sin$1(deltaGamma);
	function rotation(lambda, phi) {
		var cosPhi = cos$1(phi), x = cos$1(lambda) * cosPhi, y = sin$1(lambda) * cosPhi, z = sin$1(phi), k = z * cosDeltaPhi + x * sinDeltaPhi;
		return [atan2(y * cosDeltaGamma - k * sinDeltaGamma, x * cosDeltaPhi - z * sinDeltaPhi), asin(k * cosDeltaGamma + y * sinDeltaGamma)];
	}
	rotation.invert = function(lambda, phi) {
		var cosPhi = cos$1(phi), x = cos$1(lambda) * cosPhi, y = sin$1(lambda) * cosPhi, z = sin$1(phi), k = z * cosDeltaGamma - y * sinDeltaGamma;
		return [atan2(y * cosDeltaGamma + z * sinDeltaGamma, x * cosDeltaPhi + k * sinDeltaPhi), asin(k * cosDeltaPhi - x * sinDeltaPhi)];
	};
	return rotation;
}
function rotation(rotate) {
	rotate = rotateRadians(rotate[0] * radians$1, rotate[1] * radians$1, rotate.length > 2 ? rotate[2] * radians$1 : 0);
	function forward(coordinates) {
		coordinates = rotate(coordinates[0] * radians$1, coordinates[1] * radians$1);
		return coordinates[0] *= degrees, coordinates[1] *= degrees, coordinates;
	}
	forward.invert = function(coordinates) {
		coordinates = rotate.invert(coordinates[0] * radians$1, coordinates[1] * radians$1);
		return coordinates[0] *= degrees, coordinates[1] *= degrees, coordinates;
	};
	return forward;
}
function circleStream(stream, radius, delta, direction, t0, t1) {
	if (!delta) return;
	var cosRadius = cos$1(radius), sinRadius = sin$1(radius), step = direction * delta;
	if (t0 == null) {
		t0 = radius + direction * tau$2;
		t1 = radius - step / 2;
	} else {
		t0 = circleRadius(cosRadius, t0);
		t1 = circleRadius(cosRadius, t1);
		if (direction > 0 ? t0 < t1 : t0 > t1) t0 += direction * tau$2;
	}
	for (var point, t = t0; direction > 0 ? t > t1 : t < t1; t -= step) {
		point = spherical([
			cosRadius,
			-sinRadius * cos$1(t),
			-sinRadius * sin$1(t)
		]);
		stream.point(point[0], point[1]);
	}
}
function circleRadius(cosRadius, point) {
	point = cartesian(point), point[0] -= cosRadius;
	cartesianNormalizeInPlace(point);
	var radius = acos(-point[1]);
	return ((-point[2] < 0 ? -radius : radius) + tau$2 - epsilon$1) % tau$2;
}
function clipBuffer() {
	var lines = [], line;
	return {
		point: function(x, y, m) {
			line.push([
				x,
				y,
				m
			]);
		},
		lineStart: function() {
			lines.push(line = []);
		},
		lineEnd: noop$1,
		rejoin: function() {
			if (lines.length > 1) lines.push(lines.pop().concat(lines.shift()));
		},
		result: function() {
			var result = lines;
			lines = [];
			line = null;
			return result;
		}
	};
}
function pointEqual(a, b) {
	return abs(a[0] - b[0]) < epsilon$1 && abs(a[1] - b[1]) < epsilon$1;
}
function Intersection(point, points, other, entry) {
	this.x = point;
	this.z = points;
	this.o = other;
	this.e = entry;
	this.v = false;
	this.n = this.p = null;
}
function clipRejoin(segments, compareIntersection, startInside, interpolate, stream) {
	var subject = [], clip = [], i, n;
	segments.forEach(function(segment) {
		if ((n = segment.length - 1) <= 0) return;
		var n, p0 = segment[0], p1 = segment[n], x;
		if (pointEqual(p0, p1)) {
			if (!p0[2] && !p1[2]) {
				stream.lineStart();
				for (i = 0; i < n; ++i) stream.point((p0 = segment[i])[0], p0[1]);
				stream.lineEnd();
				return;
			}
			p1[0] += 2 * epsilon$1;
		}
		subject.push(x = new Intersection(p0, segment, null, true));
		clip.push(x.o = new Intersection(p0, null, x, false));
		subject.push(x = new Intersection(p1, segment, null, false));
		clip.push(x.o = new Intersection(p1, null, x, true));
	});
	if (!subject.length) return;
	clip.sort(compareIntersection);
	link(subject);
	link(clip);
	for (i = 0, n = clip.length; i < n; ++i) clip[i].e = startInside = !startInside;
	var start = subject[0], points, point;
	while (1) {
		var current = start, isSubject = true;
		while (current.v) if ((current = current.n) === start) return;
		points = current.z;
		stream.lineStart();
		do {
			current.v = current.o.v = true;
			if (current.e) {
				if (isSubject) for (i = 0, n = points.length; i < n; ++i) stream.point((point = points[i])[0], point[1]);
				else interpolate(current.x, current.n.x, 1, stream);
				current = current.n;
			} else {
				if (isSubject) {
					points = current.p.z;
					for (i = points.length - 1; i >= 0; --i) stream.point((point = points[i])[0], point[1]);
				} else interpolate(current.x, current.p.x, -1, stream);
				current = current.p;
			}
			current = current.o;
			points = current.z;
			isSubject = !isSubject;
		} while (!current.v);
		stream.lineEnd();
	}
}
function link(array) {
	if (!(n = array.length)) return;
	var n, i = 0, a = array[0], b;
	while (++i < n) {
		a.n = b = array[i];
		b.p = a;
		a = b;
	}
	a.n = b = array[0];
	b.p = a;
}
function longitude(point) {
	return abs(point[0]) <= pi$2 ? point[0] : sign$1(point[0]) * ((abs(point[0]) + pi$2) % tau$2 - pi$2);
}
function polygonContains(polygon, point) {
	var lambda = longitude(point), phi = point[1], sinPhi = sin$1(phi), normal = [
		sin$1(lambda),
		-cos$1(lambda),
		0
	], angle = 0, winding = 0;
	var sum = new Adder();
	if (sinPhi === 1) phi = halfPi$1 + epsilon$1;
	else if (sinPhi === -1) phi = -halfPi$1 - epsilon$1;
	for (var i = 0, n = polygon.length; i < n; ++i) {
		if (!(m = (ring = polygon[i]).length)) continue;
		var ring, m, point0 = ring[m - 1], lambda0 = longitude(point0), phi0 = point0[1] / 2 + quarterPi, sinPhi0 = sin$1(phi0), cosPhi0 = cos$1(phi0);
		for (var j = 0; j < m; ++j, lambda0 = lambda1, sinPhi0 = sinPhi1, cosPhi0 = cosPhi1, point0 = point1) {
			var point1 = ring[j], lambda1 = longitude(point1), phi1 = point1[1] / 2 + quarterPi, sinPhi1 = sin$1(phi1), cosPhi1 = cos$1(phi1), delta = lambda1 - lambda0, sign = delta >= 0 ? 1 : -1, absDelta = sign * delta, antimeridian = absDelta > pi$2, k = sinPhi0 * sinPhi1;
			sum.add(atan2(k * sign * sin$1(absDelta), cosPhi0 * cosPhi1 + k * cos$1(absDelta)));
			angle += antimeridian ? delta + sign * tau$2 : delta;
			if (antimeridian ^ lambda0 >= lambda ^ lambda1 >= lambda) {
				var arc = cartesianCross(cartesian(point0), cartesian(point1));
				cartesianNormalizeInPlace(arc);
				var intersection = cartesianCross(normal, arc);
				cartesianNormalizeInPlace(intersection);
				var phiArc = (antimeridian ^ delta >= 0 ? -1 : 1) * asin(intersection[2]);
				if (phi > phiArc || phi === phiArc && (arc[0] || arc[1])) winding += antimeridian ^ delta >= 0 ? 1 : -1;
			}
		}
	}
	return (angle < -epsilon$1 || angle < epsilon$1 && sum < -epsilon2) ^ winding & 1;
}
function clip(pointVisible, clipLine, interpolate, start) {
	return function(sink) {
		var line = clipLine(sink), ringBuffer = clipBuffer(), ringSink = clipLine(ringBuffer), polygonStarted = false, polygon, segments, ring;
		var clip = {
			point,
			lineStart,
			lineEnd,
			polygonStart: function() {
				clip.point = pointRing;
				clip.lineStart = ringStart;
				clip.lineEnd = ringEnd;
				segments = [];
				polygon = [];
			},
			polygonEnd: function() {
				clip.point = point;
				clip.lineStart = lineStart;
				clip.lineEnd = lineEnd;
				segments = merge(segments);
				var startInside = polygonContains(polygon, start);
				if (segments.length) {
					if (!polygonStarted) sink.polygonStart(), polygonStarted = true;
					clipRejoin(segments, compareIntersection, startInside, interpolate, sink);
				} else if (startInside) {
					if (!polygonStarted) sink.polygonStart(), polygonStarted = true;
					sink.lineStart();
					interpolate(null, null, 1, sink);
					sink.lineEnd();
				}
				if (polygonStarted) sink.polygonEnd(), polygonStarted = false;
				segments = polygon = null;
			},
			sphere: function() {
				sink.polygonStart();
				sink.lineStart();
				interpolate(null, null, 1, sink);
				sink.lineEnd();
				sink.polygonEnd();
			}
		};
		function point(lambda, phi) {
			if (pointVisible(lambda, phi)) sink.point(lambda, phi);
		}
		function pointLine(lambda, phi) {
			line.point(lambda, phi);
		}
		function lineStart() {
			clip.point = pointLine;
			line.lineStart();
		}
		function lineEnd() {
			clip.point = point;
			line.lineEnd();
		}
		function pointRing(lambda, phi) {
			ring.push([lambda, phi]);
			ringSink.point(lambda, phi);
		}
		function ringStart() {
			ringSink.lineStart();
			ring = [];
		}
		function ringEnd() {
			pointRing(ring[0][0], ring[0][1]);
			ringSink.lineEnd();
			var clean = ringSink.clean(), ringSegments = ringBuffer.result(), i, n = ringSegments.length, m, segment, point;
			ring.pop();
			polygon.push(ring);
			ring = null;
			if (!n) return;
			if (clean & 1) {
				segment = ringSegments[0];
				if ((m = segment.length - 1) > 0) {
					if (!polygonStarted) sink.polygonStart(), polygonStarted = true;
					sink.lineStart();
					for (i = 0; i < m; ++i) sink.point((point = segment[i])[0], point[1]);
					sink.lineEnd();
				}
				return;
			}
			if (n > 1 && clean & 2) ringSegments.push(ringSegments.pop().concat(ringSegments.shift()));
			segments.push(ringSegments.filter(validSegment));
		}
		return clip;
	};
}
function validSegment(segment) {
	return segment.length > 1;
}
function compareIntersection(a, b) {
	return ((a = a.x)[0] < 0 ? a[1] - halfPi$1 - epsilon$1 : halfPi$1 - a[1]) - ((b = b.x)[0] < 0 ? b[1] - halfPi$1 - epsilon$1 : halfPi$1 - b[1]);
}
var clipAntimeridian = clip(function() {
	return true;
}, clipAntimeridianLine, clipAntimeridianInterpolate, [-pi$2, -halfPi$1]);
function clipAntimeridianLine(stream) {
	var lambda0 = NaN, phi0 = NaN, sign0 = NaN, clean;
	return {
		lineStart: function() {
			stream.lineStart();
			clean = 1;
		},
		point: function(lambda1, phi1) {
			var sign1 = lambda1 > 0 ? pi$2 : -pi$2, delta = abs(lambda1 - lambda0);
			if (abs(delta - pi$2) < epsilon$1) {
				stream.point(lambda0, phi0 = (phi0 + phi1) / 2 > 0 ? halfPi$1 : -halfPi$1);
				stream.point(sign0, phi0);
				stream.lineEnd();
				stream.lineStart();
				stream.point(sign1, phi0);
				stream.point(lambda1, phi0);
				clean = 0;
			} else if (sign0 !== sign1 && delta >= pi$2) {
				if (abs(lambda0 - sign0) < epsilon$1) lambda0 -= sign0 * epsilon$1;
				if (abs(lambda1 - sign1) < epsilon$1) lambda1 -= sign1 * epsilon$1;
				phi0 = clipAntimeridianIntersect(lambda0, phi0, lambda1, phi1);
				stream.point(sign0, phi0);
				stream.lineEnd();
				stream.lineStart();
				stream.point(sign1, phi0);
				clean = 0;
			}
			stream.point(lambda0 = lambda1, phi0 = phi1);
			sign0 = sign1;
		},
		lineEnd: function() {
			stream.lineEnd();
			lambda0 = phi0 = NaN;
		},
		clean: function() {
			return 2 - clean;
		}
	};
}
function clipAntimeridianIntersect(lambda0, phi0, lambda1, phi1) {
	var cosPhi0, cosPhi1, sinLambda0Lambda1 = sin$1(lambda0 - lambda1);
	return abs(sinLambda0Lambda1) > epsilon$1 ? atan((sin$1(phi0) * (cosPhi1 = cos$1(phi1)) * sin$1(lambda1) - sin$1(phi1) * (cosPhi0 = cos$1(phi0)) * sin$1(lambda0)) / (cosPhi0 * cosPhi1 * sinLambda0Lambda1)) : (phi0 + phi1) / 2;
}
function clipAntimeridianInterpolate(from, to, direction, stream) {
	var phi;
	if (from == null) {
		phi = direction * halfPi$1;
		stream.point(-pi$2, phi);
		stream.point(0, phi);
		stream.point(pi$2, phi);
		stream.point(pi$2, 0);
		stream.point(pi$2, -phi);
		stream.point(0, -phi);
		stream.point(-pi$2, -phi);
		stream.point(-pi$2, 0);
		stream.point(-pi$2, phi);
	} else if (abs(from[0] - to[0]) > epsilon$1) {
		var lambda = from[0] < to[0] ? pi$2 : -pi$2;
		phi = direction * lambda / 2;
		stream.point(-lambda, phi);
		stream.point(0, phi);
		stream.point(lambda, phi);
	} else stream.point(to[0], to[1]);
}
function clipCircle(radius) {
	var cr = cos$1(radius), delta = 2 * radians$1, smallRadius = cr > 0, notHemisphere = abs(cr) > epsilon$1;
	function interpolate(from, to, direction, stream) {
		circleStream(stream, radius, delta, direction, from, to);
	}
	function visible(lambda, phi) {
		return cos$1(lambda) * cos$1(phi) > cr;
	}
	function clipLine(stream) {
		var point0, c0, v0, v00, clean;
		return {
			lineStart: function() {
				v00 = v0 = false;
				clean = 1;
			},
			point: function(lambda, phi) {
				var point1 = [lambda, phi], point2, v = visible(lambda, phi), c = smallRadius ? v ? 0 : code(lambda, phi) : v ? code(lambda + (lambda < 0 ? pi$2 : -pi$2), phi) : 0;
				if (!point0 && (v00 = v0 = v)) stream.lineStart();
				if (v !== v0) {
					point2 = intersect(point0, point1);
					if (!point2 || pointEqual(point0, point2) || pointEqual(point1, point2)) point1[2] = 1;
				}
				if (v !== v0) {
					clean = 0;
					if (v) {
						stream.lineStart();
						point2 = intersect(point1, point0);
						stream.point(point2[0], point2[1]);
					} else {
						point2 = intersect(point0, point1);
						stream.point(point2[0], point2[1], 2);
						stream.lineEnd();
					}
					point0 = point2;
				} else if (notHemisphere && point0 && smallRadius ^ v) {
					var t;
					if (!(c & c0) && (t = intersect(point1, point0, true))) {
						clean = 0;
						if (smallRadius) {
							stream.lineStart();
							stream.point(t[0][0], t[0][1]);
							stream.point(t[1][0], t[1][1]);
							stream.lineEnd();
						} else {
							stream.point(t[1][0], t[1][1]);
							stream.lineEnd();
							stream.lineStart();
							stream.point(t[0][0], t[0][1], 3);
						}
					}
				}
				if (v && (!point0 || !pointEqual(point0, point1))) stream.point(point1[0], point1[1]);
				point0 = point1, v0 = v, c0 = c;
			},
			lineEnd: function() {
				if (v0) stream.lineEnd();
				point0 = null;
			},
			clean: function() {
				return clean | (v00 && v0) << 1;
			}
		};
	}
	function intersect(a, b, two) {
		var pa = cartesian(a), pb = cartesian(b);
		var n1 = [
			1,
			0,
			0
		], n2 = cartesianCross(pa, pb), n2n2 = cartesianDot(n2, n2), n1n2 = n2[0], determinant = n2n2 - n1n2 * n1n2;
		if (!determinant) return !two && a;
		var c1 = cr * n2n2 / determinant, c2 = -cr * n1n2 / determinant, n1xn2 = cartesianCross(n1, n2), A = cartesianScale(n1, c1);
		cartesianAddInPlace(A, cartesianScale(n2, c2));
		var u = n1xn2, w = cartesianDot(A, u), uu = cartesianDot(u, u), t2 = w * w - uu * (cartesianDot(A, A) - 1);
		if (t2 < 0) return;
		var t = sqrt$1(t2), q = cartesianScale(u, (-w - t) / uu);
		cartesianAddInPlace(q, A);
		q = spherical(q);
		if (!two) return q;
		var lambda0 = a[0], lambda1 = b[0], phi0 = a[1], phi1 = b[1], z;
		if (lambda1 < lambda0) z = lambda0, lambda0 = lambda1, lambda1 = z;
		var delta = lambda1 - lambda0, polar = abs(delta - pi$2) < epsilon$1, meridian = polar || delta < epsilon$1;
		if (!polar && phi1 < phi0) z = phi0, phi0 = phi1, phi1 = z;
		if (meridian ? polar ? phi0 + phi1 > 0 ^ q[1] < (abs(q[0] - lambda0) < epsilon$1 ? phi0 : phi1) : phi0 <= q[1] && q[1] <= phi1 : delta > pi$2 ^ (lambda0 <= q[0] && q[0] <= lambda1)) {
			var q1 = cartesianScale(u, (-w + t) / uu);
			cartesianAddInPlace(q1, A);
			return [q, spherical(q1)];
		}
	}
	function code(lambda, phi) {
		var r = smallRadius ? radius : pi$2 - radius, code = 0;
		if (lambda < -r) code |= 1;
		else if (lambda > r) code |= 2;
		if (phi < -r) code |= 4;
		else if (phi > r) code |= 8;
		return code;
	}
	return clip(visible, clipLine, interpolate, smallRadius ? [0, -radius] : [-pi$2, radius - pi$2]);
}
function clipLine(a, b, x0, y0, x1, y1) {
	var ax = a[0], ay = a[1], bx = b[0], by = b[1], t0 = 0, t1 = 1, dx = bx - ax, dy = by - ay, r = x0 - ax;
	if (!dx && r > 0) return;
	r /= dx;
	if (dx < 0) {
		if (r < t0) return;
		if (r < t1) t1 = r;
	} else if (dx > 0) {
		if (r > t1) return;
		if (r > t0) t0 = r;
	}
	r = x1 - ax;
	if (!dx && r < 0) return;
	r /= dx;
	if (dx < 0) {
		if (r > t1) return;
		if (r > t0) t0 = r;
	} else if (dx > 0) {
		if (r < t0) return;
		if (r < t1) t1 = r;
	}
	r = y0 - ay;
	if (!dy && r > 0) return;
	r /= dy;
	if (dy < 0) {
		if (r < t0) return;
		if (r < t1) t1 = r;
	} else if (dy > 0) {
		if (r > t1) return;
		if (r > t0) t0 = r;
	}
	r = y1 - ay;
	if (!dy && r < 0) return;
	r /= dy;
	if (dy < 0) {
		if (r > t1) return;
		if (r > t0) t0 = r;
	} else if (dy > 0) {
		if (r < t0) return;
		if (r < t1) t1 = r;
	}
	if (t0 > 0) a[0] = ax + t0 * dx, a[1] = ay + t0 * dy;
	if (t1 < 1) b[0] = ax + t1 * dx, b[1] = ay + t1 * dy;
	return true;
}
var clipMax = 1e9;
var clipMin = -clipMax;
function clipRectangle(x0, y0, x1, y1) {
	function visible(x, y) {
		return x0 <= x && x <= x1 && y0 <= y && y <= y1;
	}
	function interpolate(from, to, direction, stream) {
		var a = 0, a1 = 0;
		if (from == null || (a = corner(from, direction)) !== (a1 = corner(to, direction)) || comparePoint(from, to) < 0 ^ direction > 0) do
			stream.point(a === 0 || a === 3 ? x0 : x1, a > 1 ? y1 : y0);
		while ((a = (a + direction + 4) % 4) !== a1);
		else stream.point(to[0], to[1]);
	}
	function corner(p, direction) {
		return abs(p[0] - x0) < epsilon$1 ? direction > 0 ? 0 : 3 : abs(p[0] - x1) < epsilon$1 ? direction > 0 ? 2 : 1 : abs(p[1] - y0) < epsilon$1 ? direction > 0 ? 1 : 0 : direction > 0 ? 3 : 2;
	}
	function compareIntersection(a, b) {
		return comparePoint(a.x, b.x);
	}
	function comparePoint(a, b) {
		var ca = corner(a, 1), cb = corner(b, 1);
		return ca !== cb ? ca - cb : ca === 0 ? b[1] - a[1] : ca === 1 ? a[0] - b[0] : ca === 2 ? a[1] - b[1] : b[0] - a[0];
	}
	return function(stream) {
		var activeStream = stream, bufferStream = clipBuffer(), segments, polygon, ring, x__, y__, v__, x_, y_, v_, first, clean;
		var clipStream = {
			point,
			lineStart,
			lineEnd,
			polygonStart,
			polygonEnd
		};
		function point(x, y) {
			if (visible(x, y)) activeStream.point(x, y);
		}
		function polygonInside() {
			var winding = 0;
			for (var i = 0, n = polygon.length; i < n; ++i) for (var ring = polygon[i], j = 1, m = ring.length, point = ring[0], a0, a1, b0 = point[0], b1 = point[1]; j < m; ++j) {
				a0 = b0, a1 = b1, point = ring[j], b0 = point[0], b1 = point[1];
				if (a1 <= y1) {
					if (b1 > y1 && (b0 - a0) * (y1 - a1) > (b1 - a1) * (x0 - a0)) ++winding;
				} else if (b1 <= y1 && (b0 - a0) * (y1 - a1) < (b1 - a1) * (x0 - a0)) --winding;
			}
			return winding;
		}
		function polygonStart() {
			activeStream = bufferStream, segments = [], polygon = [], clean = true;
		}
		function polygonEnd() {
			var startInside = polygonInside(), cleanInside = clean && startInside, visible = (segments = merge(segments)).length;
			if (cleanInside || visible) {
				stream.polygonStart();
				if (cleanInside) {
					stream.lineStart();
					interpolate(null, null, 1, stream);
					stream.lineEnd();
				}
				if (visible) clipRejoin(segments, compareIntersection, startInside, interpolate, stream);
				stream.polygonEnd();
			}
			activeStream = stream, segments = polygon = ring = null;
		}
		function lineStart() {
			clipStream.point = linePoint;
			if (polygon) polygon.push(ring = []);
			first = true;
			v_ = false;
			x_ = y_ = NaN;
		}
		function lineEnd() {
			if (segments) {
				linePoint(x__, y__);
				if (v__ && v_) bufferStream.rejoin();
				segments.push(bufferStream.result());
			}
			clipStream.point = point;
			if (v_) activeStream.lineEnd();
		}
		function linePoint(x, y) {
			var v = visible(x, y);
			if (polygon) ring.push([x, y]);
			if (first) {
				x__ = x, y__ = y, v__ = v;
				first = false;
				if (v) {
					activeStream.lineStart();
					activeStream.point(x, y);
				}
			} else if (v && v_) activeStream.point(x, y);
			else {
				var a = [x_ = Math.max(clipMin, Math.min(clipMax, x_)), y_ = Math.max(clipMin, Math.min(clipMax, y_))], b = [x = Math.max(clipMin, Math.min(clipMax, x)), y = Math.max(clipMin, Math.min(clipMax, y))];
				if (clipLine(a, b, x0, y0, x1, y1)) {
					if (!v_) {
						activeStream.lineStart();
						activeStream.point(a[0], a[1]);
					}
					activeStream.point(b[0], b[1]);
					if (!v) activeStream.lineEnd();
					clean = false;
				} else if (v) {
					activeStream.lineStart();
					activeStream.point(x, y);
					clean = false;
				}
			}
			x_ = x, y_ = y, v_ = v;
		}
		return clipStream;
	};
}
var identity$1$2 = (x) => x;
var areaSum = new Adder();
var areaRingSum = new Adder();
var x00$2;
var y00$2;
var x0$3;
var y0$3;
var areaStream = {
	point: noop$1,
	lineStart: noop$1,
	lineEnd: noop$1,
	polygonStart: function() {
		areaStream.lineStart = areaRingStart;
		areaStream.lineEnd = areaRingEnd;
	},
	polygonEnd: function() {
		areaStream.lineStart = areaStream.lineEnd = areaStream.point = noop$1;
		areaSum.add(abs(areaRingSum));
		areaRingSum = new Adder();
	},
	result: function() {
		var area = areaSum / 2;
		areaSum = new Adder();
		return area;
	}
};
function areaRingStart() {
	areaStream.point = areaPointFirst;
}
function areaPointFirst(x, y) {
	areaStream.point = areaPoint;
	x00$2 = x0$3 = x, y00$2 = y0$3 = y;
}
function areaPoint(x, y) {
	areaRingSum.add(y0$3 * x - x0$3 * y);
	x0$3 = x, y0$3 = y;
}
function areaRingEnd() {
	areaPoint(x00$2, y00$2);
}
var x0$2 = Infinity;
var y0$2 = x0$2;
var x1 = -x0$2;
var y1 = x1;
var boundsStream = {
	point: boundsPoint,
	lineStart: noop$1,
	lineEnd: noop$1,
	polygonStart: noop$1,
	polygonEnd: noop$1,
	result: function() {
		var bounds = [[x0$2, y0$2], [x1, y1]];
		x1 = y1 = -(y0$2 = x0$2 = Infinity);
		return bounds;
	}
};
function boundsPoint(x, y) {
	if (x < x0$2) x0$2 = x;
	if (x > x1) x1 = x;
	if (y < y0$2) y0$2 = y;
	if (y > y1) y1 = y;
}
var X0 = 0;
var Y0 = 0;
var Z0 = 0;
var X1 = 0;
var Y1 = 0;
var Z1 = 0;
var X2 = 0;
var Y2 = 0;
var Z2 = 0;
var x00$1;
var y00$1;
var x0$1;
var y0$1;
var centroidStream = {
	point: centroidPoint,
	lineStart: centroidLineStart,
	lineEnd: centroidLineEnd,
	polygonStart: function() {
		centroidStream.lineStart = centroidRingStart;
		centroidStream.lineEnd = centroidRingEnd;
	},
	polygonEnd: function() {
		centroidStream.point = centroidPoint;
		centroidStream.lineStart = centroidLineStart;
		centroidStream.lineEnd = centroidLineEnd;
	},
	result: function() {
		var centroid = Z2 ? [X2 / Z2, Y2 / Z2] : Z1 ? [X1 / Z1, Y1 / Z1] : Z0 ? [X0 / Z0, Y0 / Z0] : [NaN, NaN];
		X0 = Y0 = Z0 = X1 = Y1 = Z1 = X2 = Y2 = Z2 = 0;
		return centroid;
	}
};
function centroidPoint(x, y) {
	X0 += x;
	Y0 += y;
	++Z0;
}
function centroidLineStart() {
	centroidStream.point = centroidPointFirstLine;
}
function centroidPointFirstLine(x, y) {
	centroidStream.point = centroidPointLine;
	centroidPoint(x0$1 = x, y0$1 = y);
}
function centroidPointLine(x, y) {
	var dx = x - x0$1, dy = y - y0$1, z = sqrt$1(dx * dx + dy * dy);
	X1 += z * (x0$1 + x) / 2;
	Y1 += z * (y0$1 + y) / 2;
	Z1 += z;
	centroidPoint(x0$1 = x, y0$1 = y);
}
function centroidLineEnd() {
	centroidStream.point = centroidPoint;
}
function centroidRingStart() {
	centroidStream.point = centroidPointFirstRing;
}
function centroidRingEnd() {
	centroidPointRing(x00$1, y00$1);
}
function centroidPointFirstRing(x, y) {
	centroidStream.point = centroidPointRing;
	centroidPoint(x00$1 = x0$1 = x, y00$1 = y0$1 = y);
}
function centroidPointRing(x, y) {
	var dx = x - x0$1, dy = y - y0$1, z = sqrt$1(dx * dx + dy * dy);
	X1 += z * (x0$1 + x) / 2;
	Y1 += z * (y0$1 + y) / 2;
	Z1 += z;
	z = y0$1 * x - x0$1 * y;
	X2 += z * (x0$1 + x);
	Y2 += z * (y0$1 + y);
	Z2 += z * 3;
	centroidPoint(x0$1 = x, y0$1 = y);
}
function PathContext(context) {
	this._context = context;
}
PathContext.prototype = {
	_radius: 4.5,
	pointRadius: function(_) {
		return this._radius = _, this;
	},
	polygonStart: function() {
		this._line = 0;
	},
	polygonEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._point = 0;
	},
	lineEnd: function() {
		if (this._line === 0) this._context.closePath();
		this._point = NaN;
	},
	point: function(x, y) {
		switch (this._point) {
			case 0:
				this._context.moveTo(x, y);
				this._point = 1;
				break;
			case 1:
				this._context.lineTo(x, y);
				break;
			default:
				this._context.moveTo(x + this._radius, y);
				this._context.arc(x, y, this._radius, 0, tau$2);
		}
	},
	result: noop$1
};
var lengthSum = new Adder();
var lengthRing;
var x00;
var y00;
var x0;
var y0;
var lengthStream = {
	point: noop$1,
	lineStart: function() {
		lengthStream.point = lengthPointFirst;
	},
	lineEnd: function() {
		if (lengthRing) lengthPoint(x00, y00);
		lengthStream.point = noop$1;
	},
	polygonStart: function() {
		lengthRing = true;
	},
	polygonEnd: function() {
		lengthRing = null;
	},
	result: function() {
		var length = +lengthSum;
		lengthSum = new Adder();
		return length;
	}
};
function lengthPointFirst(x, y) {
	lengthStream.point = lengthPoint;
	x00 = x0 = x, y00 = y0 = y;
}
function lengthPoint(x, y) {
	x0 -= x, y0 -= y;
	lengthSum.add(sqrt$1(x0 * x0 + y0 * y0));
	x0 = x, y0 = y;
}
var cacheDigits;
var cacheAppend;
var cacheRadius;
var cacheCircle;
var PathString = class {
	constructor(digits) {
		this._append = digits == null ? append : appendRound(digits);
		this._radius = 4.5;
		this._ = "";
	}
	pointRadius(_) {
		this._radius = +_;
		return this;
	}
	polygonStart() {
		this._line = 0;
	}
	polygonEnd() {
		this._line = NaN;
	}
	lineStart() {
		this._point = 0;
	}
	lineEnd() {
		if (this._line === 0) this._ += "Z";
		this._point = NaN;
	}
	point(x, y) {
		switch (this._point) {
			case 0:
				this._append`M${x},${y}`;
				this._point = 1;
				break;
			case 1:
				this._append`L${x},${y}`;
				break;
			default:
				this._append`M${x},${y}`;
				if (this._radius !== cacheRadius || this._append !== cacheAppend) {
					const r = this._radius;
					const s = this._;
					this._ = "";
					this._append`m0,${r}a${r},${r} 0 1,1 0,${-2 * r}a${r},${r} 0 1,1 0,${2 * r}z`;
					cacheRadius = r;
					cacheAppend = this._append;
					cacheCircle = this._;
					this._ = s;
				}
				this._ += cacheCircle;
		}
	}
	result() {
		const result = this._;
		this._ = "";
		return result.length ? result : null;
	}
};
function append(strings) {
	let i = 1;
	this._ += strings[0];
	for (const j = strings.length; i < j; ++i) this._ += arguments[i] + strings[i];
}
function appendRound(digits) {
	const d = Math.floor(digits);
	if (!(d >= 0)) throw new RangeError(`invalid digits: ${digits}`);
	if (d > 15) return append;
	if (d !== cacheDigits) {
		const k = 10 ** d;
		cacheDigits = d;
		cacheAppend = function append(strings) {
			let i = 1;
			this._ += strings[0];
			for (const j = strings.length; i < j; ++i) this._ += Math.round(arguments[i] * k) / k + strings[i];
		};
	}
	return cacheAppend;
}
function index(projection, context) {
	let digits = 3, pointRadius = 4.5, projectionStream, contextStream;
	function path(object) {
		if (object) {
			if (typeof pointRadius === "function") contextStream.pointRadius(+pointRadius.apply(this, arguments));
			geoStream(object, projectionStream(contextStream));
		}
		return contextStream.result();
	}
	path.area = function(object) {
		geoStream(object, projectionStream(areaStream));
		return areaStream.result();
	};
	path.measure = function(object) {
		geoStream(object, projectionStream(lengthStream));
		return lengthStream.result();
	};
	path.bounds = function(object) {
		geoStream(object, projectionStream(boundsStream));
		return boundsStream.result();
	};
	path.centroid = function(object) {
		geoStream(object, projectionStream(centroidStream));
		return centroidStream.result();
	};
	path.projection = function(_) {
		if (!arguments.length) return projection;
		projectionStream = _ == null ? (projection = null, identity$1$2) : (projection = _).stream;
		return path;
	};
	path.context = function(_) {
		if (!arguments.length) return context;
		contextStream = _ == null ? (context = null, new PathString(digits)) : new PathContext(context = _);
		if (typeof pointRadius !== "function") contextStream.pointRadius(pointRadius);
		return path;
	};
	path.pointRadius = function(_) {
		if (!arguments.length) return pointRadius;
		pointRadius = typeof _ === "function" ? _ : (contextStream.pointRadius(+_), +_);
		return path;
	};
	path.digits = function(_) {
		if (!arguments.length) return digits;
		if (_ == null) digits = null;
		else {
			const d = Math.floor(_);
			if (!(d >= 0)) throw new RangeError(`invalid digits: ${_}`);
			digits = d;
		}
		if (context === null) contextStream = new PathString(digits);
		return path;
	};
	return path.projection(projection).digits(digits).context(context);
}
function transform(methods) {
	return { stream: transformer$1(methods) };
}
function transformer$1(methods) {
	return function(stream) {
		var s = new TransformStream();
		for (var key in methods) s[key] = methods[key];
		s.stream = stream;
		return s;
	};
}
function TransformStream() {}
TransformStream.prototype = {
	constructor: TransformStream,
	point: function(x, y) {
		this.stream.point(x, y);
	},
	sphere: function() {
		this.stream.sphere();
	},
	lineStart: function() {
		this.stream.lineStart();
	},
	lineEnd: function() {
		this.stream.lineEnd();
	},
	polygonStart: function() {
		this.stream.polygonStart();
	},
	polygonEnd: function() {
		this.stream.polygonEnd();
	}
};
function fit$1(projection, fitBounds, object) {
	var clip = projection.clipExtent && projection.clipExtent();
	projection.scale(150).translate([0, 0]);
	if (clip != null) projection.clipExtent(null);
	geoStream(object, projection.stream(boundsStream));
	fitBounds(boundsStream.result());
	if (clip != null) projection.clipExtent(clip);
	return projection;
}
function fitExtent(projection, extent, object) {
	return fit$1(projection, function(b) {
		var w = extent[1][0] - extent[0][0], h = extent[1][1] - extent[0][1], k = Math.min(w / (b[1][0] - b[0][0]), h / (b[1][1] - b[0][1])), x = +extent[0][0] + (w - k * (b[1][0] + b[0][0])) / 2, y = +extent[0][1] + (h - k * (b[1][1] + b[0][1])) / 2;
		projection.scale(150 * k).translate([x, y]);
	}, object);
}
function fitSize(projection, size, object) {
	return fitExtent(projection, [[0, 0], size], object);
}
function fitWidth(projection, width, object) {
	return fit$1(projection, function(b) {
		var w = +width, k = w / (b[1][0] - b[0][0]), x = (w - k * (b[1][0] + b[0][0])) / 2, y = -k * b[0][1];
		projection.scale(150 * k).translate([x, y]);
	}, object);
}
function fitHeight(projection, height, object) {
	return fit$1(projection, function(b) {
		var h = +height, k = h / (b[1][1] - b[0][1]), x = -k * b[0][0], y = (h - k * (b[1][1] + b[0][1])) / 2;
		projection.scale(150 * k).translate([x, y]);
	}, object);
}
var maxDepth = 16;
var cosMinDistance = cos$1(30 * radians$1);
function resample(project, delta2) {
	return +delta2 ? resample$1(project, delta2) : resampleNone(project);
}
function resampleNone(project) {
	return transformer$1({ point: function(x, y) {
		x = project(x, y);
		this.stream.point(x[0], x[1]);
	} });
}
function resample$1(project, delta2) {
	function resampleLineTo(x0, y0, lambda0, a0, b0, c0, x1, y1, lambda1, a1, b1, c1, depth, stream) {
		var dx = x1 - x0, dy = y1 - y0, d2 = dx * dx + dy * dy;
		if (d2 > 4 * delta2 && depth--) {
			var a = a0 + a1, b = b0 + b1, c = c0 + c1, m = sqrt$1(a * a + b * b + c * c), phi2 = asin(c /= m), lambda2 = abs(abs(c) - 1) < epsilon$1 || abs(lambda0 - lambda1) < epsilon$1 ? (lambda0 + lambda1) / 2 : atan2(b, a), p = project(lambda2, phi2), x2 = p[0], y2 = p[1], dx2 = x2 - x0, dy2 = y2 - y0, dz = dy * dx2 - dx * dy2;
			if (dz * dz / d2 > delta2 || abs((dx * dx2 + dy * dy2) / d2 - .5) > .3 || a0 * a1 + b0 * b1 + c0 * c1 < cosMinDistance) {
				resampleLineTo(x0, y0, lambda0, a0, b0, c0, x2, y2, lambda2, a /= m, b /= m, c, depth, stream);
				stream.point(x2, y2);
				resampleLineTo(x2, y2, lambda2, a, b, c, x1, y1, lambda1, a1, b1, c1, depth, stream);
			}
		}
	}
	return function(stream) {
		var lambda00, x00, y00, a00, b00, c00, lambda0, x0, y0, a0, b0, c0;
		var resampleStream = {
			point,
			lineStart,
			lineEnd,
			polygonStart: function() {
				stream.polygonStart();
				resampleStream.lineStart = ringStart;
			},
			polygonEnd: function() {
				stream.polygonEnd();
				resampleStream.lineStart = lineStart;
			}
		};
		function point(x, y) {
			x = project(x, y);
			stream.point(x[0], x[1]);
		}
		function lineStart() {
			x0 = NaN;
			resampleStream.point = linePoint;
			stream.lineStart();
		}
		function linePoint(lambda, phi) {
			var c = cartesian([lambda, phi]), p = project(lambda, phi);
			resampleLineTo(x0, y0, lambda0, a0, b0, c0, x0 = p[0], y0 = p[1], lambda0 = lambda, a0 = c[0], b0 = c[1], c0 = c[2], maxDepth, stream);
			stream.point(x0, y0);
		}
		function lineEnd() {
			resampleStream.point = point;
			stream.lineEnd();
		}
		function ringStart() {
			lineStart();
			resampleStream.point = ringPoint;
			resampleStream.lineEnd = ringEnd;
		}
		function ringPoint(lambda, phi) {
			linePoint(lambda00 = lambda, phi), x00 = x0, y00 = y0, a00 = a0, b00 = b0, c00 = c0;
			resampleStream.point = linePoint;
		}
		function ringEnd() {
			resampleLineTo(x0, y0, lambda0, a0, b0, c0, x00, y00, lambda00, a00, b00, c00, maxDepth, stream);
			resampleStream.lineEnd = lineEnd;
			lineEnd();
		}
		return resampleStream;
	};
}
var transformRadians = transformer$1({ point: function(x, y) {
	this.stream.point(x * radians$1, y * radians$1);
} });
function transformRotate(rotate) {
	return transformer$1({ point: function(x, y) {
		var r = rotate(x, y);
		return this.stream.point(r[0], r[1]);
	} });
}
function scaleTranslate(k, dx, dy, sx, sy) {
	function transform(x, y) {
		x *= sx;
		y *= sy;
		return [dx + k * x, dy - k * y];
	}
	transform.invert = function(x, y) {
		return [(x - dx) / k * sx, (dy - y) / k * sy];
	};
	return transform;
}
function scaleTranslateRotate(k, dx, dy, sx, sy, alpha) {
	if (!alpha) return scaleTranslate(k, dx, dy, sx, sy);
	var cosAlpha = cos$1(alpha), sinAlpha = sin$1(alpha), a = cosAlpha * k, b = sinAlpha * k, ai = cosAlpha / k, bi = sinAlpha / k, ci = (sinAlpha * dy - cosAlpha * dx) / k, fi = (sinAlpha * dx + cosAlpha * dy) / k;
	function transform(x, y) {
		x *= sx;
		y *= sy;
		return [a * x - b * y + dx, dy - b * x - a * y];
	}
	transform.invert = function(x, y) {
		return [sx * (ai * x - bi * y + ci), sy * (fi - bi * x - ai * y)];
	};
	return transform;
}
function projection$1(project) {
	return projectionMutator(function() {
		return project;
	})();
}
function projectionMutator(projectAt) {
	var project, k = 150, x = 480, y = 250, lambda = 0, phi = 0, deltaLambda = 0, deltaPhi = 0, deltaGamma = 0, rotate, alpha = 0, sx = 1, sy = 1, theta = null, preclip = clipAntimeridian, x0 = null, y0, x1, y1, postclip = identity$1$2, delta2 = .5, projectResample, projectTransform, projectRotateTransform, cache, cacheStream;
	function projection(point) {
		return projectRotateTransform(point[0] * radians$1, point[1] * radians$1);
	}
	function invert(point) {
		point = projectRotateTransform.invert(point[0], point[1]);
		return point && [point[0] * degrees, point[1] * degrees];
	}
	projection.stream = function(stream) {
		return cache && cacheStream === stream ? cache : cache = transformRadians(transformRotate(rotate)(preclip(projectResample(postclip(cacheStream = stream)))));
	};
	projection.preclip = function(_) {
		return arguments.length ? (preclip = _, theta = void 0, reset()) : preclip;
	};
	projection.postclip = function(_) {
		return arguments.length ? (postclip = _, x0 = y0 = x1 = y1 = null, reset()) : postclip;
	};
	projection.clipAngle = function(_) {
		return arguments.length ? (preclip = +_ ? clipCircle(theta = _ * radians$1) : (theta = null, clipAntimeridian), reset()) : theta * degrees;
	};
	projection.clipExtent = function(_) {
		return arguments.length ? (postclip = _ == null ? (x0 = y0 = x1 = y1 = null, identity$1$2) : clipRectangle(x0 = +_[0][0], y0 = +_[0][1], x1 = +_[1][0], y1 = +_[1][1]), reset()) : x0 == null ? null : [[x0, y0], [x1, y1]];
	};
	projection.scale = function(_) {
		return arguments.length ? (k = +_, recenter()) : k;
	};
	projection.translate = function(_) {
		return arguments.length ? (x = +_[0], y = +_[1], recenter()) : [x, y];
	};
	projection.center = function(_) {
		return arguments.length ? (lambda = _[0] % 360 * radians$1, phi = _[1] % 360 * radians$1, recenter()) : [lambda * degrees, phi * degrees];
	};
	projection.rotate = function(_) {
		return arguments.length ? (deltaLambda = _[0] % 360 * radians$1, deltaPhi = _[1] % 360 * radians$1, deltaGamma = _.length > 2 ? _[2] % 360 * radians$1 : 0, recenter()) : [
			deltaLambda * degrees,
			deltaPhi * degrees,
			deltaGamma * degrees
		];
	};
	projection.angle = function(_) {
		return arguments.length ? (alpha = _ % 360 * radians$1, recenter()) : alpha * degrees;
	};
	projection.reflectX = function(_) {
		return arguments.length ? (sx = _ ? -1 : 1, recenter()) : sx < 0;
	};
	projection.reflectY = function(_) {
		return arguments.length ? (sy = _ ? -1 : 1, recenter()) : sy < 0;
	};
	projection.precision = function(_) {
		return arguments.length ? (projectResample = resample(projectTransform, delta2 = _ * _), reset()) : sqrt$1(delta2);
	};
	projection.fitExtent = function(extent, object) {
		return fitExtent(projection, extent, object);
	};
	projection.fitSize = function(size, object) {
		return fitSize(projection, size, object);
	};
	projection.fitWidth = function(width, object) {
		return fitWidth(projection, width, object);
	};
	projection.fitHeight = function(height, object) {
		return fitHeight(projection, height, object);
	};
	function recenter() {
		var center = scaleTranslateRotate(k, 0, 0, sx, sy, alpha).apply(null, project(lambda, phi)), transform = scaleTranslateRotate(k, x - center[0], y - center[1], sx, sy, alpha);
		rotate = rotateRadians(deltaLambda, deltaPhi, deltaGamma);
		projectTransform = compose(project, transform);
		projectRotateTransform = compose(rotate, projectTransform);
		projectResample = resample(projectTransform, delta2);
		return reset();
	}
	function reset() {
		cache = cacheStream = null;
		return projection;
	}
	return function() {
		project = projectAt.apply(this, arguments);
		projection.invert = project.invert && invert;
		return recenter();
	};
}
function conicProjection$1(projectAt) {
	var phi0 = 0, phi1 = pi$2 / 3, m = projectionMutator(projectAt), p = m(phi0, phi1);
	p.parallels = function(_) {
		return arguments.length ? m(phi0 = _[0] * radians$1, phi1 = _[1] * radians$1) : [phi0 * degrees, phi1 * degrees];
	};
	return p;
}
function cylindricalEqualAreaRaw(phi0) {
	var cosPhi0 = cos$1(phi0);
	function forward(lambda, phi) {
		return [lambda * cosPhi0, sin$1(phi) / cosPhi0];
	}
	forward.invert = function(x, y) {
		return [x / cosPhi0, asin(y * cosPhi0)];
	};
	return forward;
}
function conicEqualAreaRaw(y0, y1) {
	var sy0 = sin$1(y0), n = (sy0 + sin$1(y1)) / 2;
	if (abs(n) < epsilon$1) return cylindricalEqualAreaRaw(y0);
	var c = 1 + sy0 * (2 * n - sy0), r0 = sqrt$1(c) / n;
	function project(x, y) {
		var r = sqrt$1(c - 2 * n * sin$1(y)) / n;
		return [r * sin$1(x *= n), r0 - r * cos$1(x)];
	}
	project.invert = function(x, y) {
		var r0y = r0 - y, l = atan2(x, abs(r0y)) * sign$1(r0y);
		if (r0y * n < 0) l -= pi$2 * sign$1(x) * sign$1(r0y);
		return [l / n, asin((c - (x * x + r0y * r0y) * n * n) / (2 * n))];
	};
	return project;
}
function conicEqualArea() {
	return conicProjection$1(conicEqualAreaRaw).scale(155.424).center([0, 33.6442]);
}
function albers() {
	return conicEqualArea().parallels([29.5, 45.5]).scale(1070).translate([480, 250]).rotate([96, 0]).center([-.6, 38.7]);
}
function multiplex(streams) {
	var n = streams.length;
	return {
		point: function(x, y) {
			var i = -1;
			while (++i < n) streams[i].point(x, y);
		},
		sphere: function() {
			var i = -1;
			while (++i < n) streams[i].sphere();
		},
		lineStart: function() {
			var i = -1;
			while (++i < n) streams[i].lineStart();
		},
		lineEnd: function() {
			var i = -1;
			while (++i < n) streams[i].lineEnd();
		},
		polygonStart: function() {
			var i = -1;
			while (++i < n) streams[i].polygonStart();
		},
		polygonEnd: function() {
			var i = -1;
			while (++i < n) streams[i].polygonEnd();
		}
	};
}
function albersUsa() {
	var cache, cacheStream, lower48 = albers(), lower48Point, alaska = conicEqualArea().rotate([154, 0]).center([-2, 58.5]).parallels([55, 65]), alaskaPoint, hawaii = conicEqualArea().rotate([157, 0]).center([-3, 19.9]).parallels([8, 18]), hawaiiPoint, point, pointStream = { point: function(x, y) {
		point = [x, y];
	} };
	function albersUsa(coordinates) {
		var x = coordinates[0], y = coordinates[1];
		return point = null, (lower48Point.point(x, y), point) || (alaskaPoint.point(x, y), point) || (hawaiiPoint.point(x, y), point);
	}
	albersUsa.invert = function(coordinates) {
		var k = lower48.scale(), t = lower48.translate(), x = (coordinates[0] - t[0]) / k, y = (coordinates[1] - t[1]) / k;
		return (y >= .12 && y < .234 && x >= -.425 && x < -.214 ? alaska : y >= .166 && y < .234 && x >= -.214 && x < -.115 ? hawaii : lower48).invert(coordinates);
	};
	albersUsa.stream = function(stream) {
		return cache && cacheStream === stream ? cache : cache = multiplex([
			lower48.stream(cacheStream = stream),
			alaska.stream(stream),
			hawaii.stream(stream)
		]);
	};
	albersUsa.precision = function(_) {
		if (!arguments.length) return lower48.precision();
		lower48.precision(_), alaska.precision(_), hawaii.precision(_);
		return reset();
	};
	albersUsa.scale = function(_) {
		if (!arguments.length) return lower48.scale();
		lower48.scale(_), alaska.scale(_ * .35), hawaii.scale(_);
		return albersUsa.translate(lower48.translate());
	};
	albersUsa.translate = function(_) {
		if (!arguments.length) return lower48.translate();
		var k = lower48.scale(), x = +_[0], y = +_[1];
		lower48Point = lower48.translate(_).clipExtent([[x - .455 * k, y - .238 * k], [x + .455 * k, y + .238 * k]]).stream(pointStream);
		alaskaPoint = alaska.translate([x - .307 * k, y + .201 * k]).clipExtent([[x - .425 * k + epsilon$1, y + .12 * k + epsilon$1], [x - .214 * k - epsilon$1, y + .234 * k - epsilon$1]]).stream(pointStream);
		hawaiiPoint = hawaii.translate([x - .205 * k, y + .212 * k]).clipExtent([[x - .214 * k + epsilon$1, y + .166 * k + epsilon$1], [x - .115 * k - epsilon$1, y + .234 * k - epsilon$1]]).stream(pointStream);
		return reset();
	};
	albersUsa.fitExtent = function(extent, object) {
		return fitExtent(albersUsa, extent, object);
	};
	albersUsa.fitSize = function(size, object) {
		return fitSize(albersUsa, size, object);
	};
	albersUsa.fitWidth = function(width, object) {
		return fitWidth(albersUsa, width, object);
	};
	albersUsa.fitHeight = function(height, object) {
		return fitHeight(albersUsa, height, object);
	};
	function reset() {
		cache = cacheStream = null;
		return albersUsa;
	}
	return albersUsa.scale(1070);
}
function azimuthalRaw(scale) {
	return function(x, y) {
		var cx = cos$1(x), cy = cos$1(y), k = scale(cx * cy);
		if (k === Infinity) return [2, 0];
		return [k * cy * sin$1(x), k * sin$1(y)];
	};
}
function azimuthalInvert(angle) {
	return function(x, y) {
		var z = sqrt$1(x * x + y * y), c = angle(z), sc = sin$1(c), cc = cos$1(c);
		return [atan2(x * sc, z * cc), asin(z && y * sc / z)];
	};
}
var azimuthalEqualAreaRaw = azimuthalRaw(function(cxcy) {
	return sqrt$1(2 / (1 + cxcy));
});
azimuthalEqualAreaRaw.invert = azimuthalInvert(function(z) {
	return 2 * asin(z / 2);
});
function azimuthalEqualArea() {
	return projection$1(azimuthalEqualAreaRaw).scale(124.75).clipAngle(179.999);
}
var azimuthalEquidistantRaw = azimuthalRaw(function(c) {
	return (c = acos(c)) && c / sin$1(c);
});
azimuthalEquidistantRaw.invert = azimuthalInvert(function(z) {
	return z;
});
function azimuthalEquidistant() {
	return projection$1(azimuthalEquidistantRaw).scale(79.4188).clipAngle(179.999);
}
function mercatorRaw(lambda, phi) {
	return [lambda, log$1(tan((halfPi$1 + phi) / 2))];
}
mercatorRaw.invert = function(x, y) {
	return [x, 2 * atan(exp(y)) - halfPi$1];
};
function mercator() {
	return mercatorProjection(mercatorRaw).scale(961 / tau$2);
}
function mercatorProjection(project) {
	var m = projection$1(project), center = m.center, scale = m.scale, translate = m.translate, clipExtent = m.clipExtent, x0 = null, y0, x1, y1;
	m.scale = function(_) {
		return arguments.length ? (scale(_), reclip()) : scale();
	};
	m.translate = function(_) {
		return arguments.length ? (translate(_), reclip()) : translate();
	};
	m.center = function(_) {
		return arguments.length ? (center(_), reclip()) : center();
	};
	m.clipExtent = function(_) {
		return arguments.length ? (_ == null ? x0 = y0 = x1 = y1 = null : (x0 = +_[0][0], y0 = +_[0][1], x1 = +_[1][0], y1 = +_[1][1]), reclip()) : x0 == null ? null : [[x0, y0], [x1, y1]];
	};
	function reclip() {
		var k = pi$2 * scale(), t = m(rotation(m.rotate()).invert([0, 0]));
		return clipExtent(x0 == null ? [[t[0] - k, t[1] - k], [t[0] + k, t[1] + k]] : project === mercatorRaw ? [[Math.max(t[0] - k, x0), y0], [Math.min(t[0] + k, x1), y1]] : [[x0, Math.max(t[1] - k, y0)], [x1, Math.min(t[1] + k, y1)]]);
	}
	return reclip();
}
function tany(y) {
	return tan((halfPi$1 + y) / 2);
}
function conicConformalRaw(y0, y1) {
	var cy0 = cos$1(y0), n = y0 === y1 ? sin$1(y0) : log$1(cy0 / cos$1(y1)) / log$1(tany(y1) / tany(y0)), f = cy0 * pow$1(tany(y0), n) / n;
	if (!n) return mercatorRaw;
	function project(x, y) {
		if (f > 0) {
			if (y < -halfPi$1 + epsilon$1) y = -halfPi$1 + epsilon$1;
		} else if (y > halfPi$1 - epsilon$1) y = halfPi$1 - epsilon$1;
		var r = f / pow$1(tany(y), n);
		return [r * sin$1(n * x), f - r * cos$1(n * x)];
	}
	project.invert = function(x, y) {
		var fy = f - y, r = sign$1(n) * sqrt$1(x * x + fy * fy), l = atan2(x, abs(fy)) * sign$1(fy);
		if (fy * n < 0) l -= pi$2 * sign$1(x) * sign$1(fy);
		return [l / n, 2 * atan(pow$1(f / r, 1 / n)) - halfPi$1];
	};
	return project;
}
function conicConformal() {
	return conicProjection$1(conicConformalRaw).scale(109.5).parallels([30, 30]);
}
function equirectangularRaw(lambda, phi) {
	return [lambda, phi];
}
equirectangularRaw.invert = equirectangularRaw;
function equirectangular() {
	return projection$1(equirectangularRaw).scale(152.63);
}
function conicEquidistantRaw(y0, y1) {
	var cy0 = cos$1(y0), n = y0 === y1 ? sin$1(y0) : (cy0 - cos$1(y1)) / (y1 - y0), g = cy0 / n + y0;
	if (abs(n) < epsilon$1) return equirectangularRaw;
	function project(x, y) {
		var gy = g - y, nx = n * x;
		return [gy * sin$1(nx), g - gy * cos$1(nx)];
	}
	project.invert = function(x, y) {
		var gy = g - y, l = atan2(x, abs(gy)) * sign$1(gy);
		if (gy * n < 0) l -= pi$2 * sign$1(x) * sign$1(gy);
		return [l / n, g - sign$1(n) * sqrt$1(x * x + gy * gy)];
	};
	return project;
}
function conicEquidistant() {
	return conicProjection$1(conicEquidistantRaw).scale(131.154).center([0, 13.9389]);
}
var A1 = 1.340264;
var A2 = -.081106;
var A3 = 893e-6;
var A4 = .003796;
var M = sqrt$1(3) / 2;
var iterations = 12;
function equalEarthRaw(lambda, phi) {
	var l = asin(M * sin$1(phi)), l2 = l * l, l6 = l2 * l2 * l2;
	return [lambda * cos$1(l) / (M * (A1 + 3 * A2 * l2 + l6 * (7 * A3 + 9 * A4 * l2))), l * (A1 + A2 * l2 + l6 * (A3 + A4 * l2))];
}
equalEarthRaw.invert = function(x, y) {
	var l = y, l2 = l * l, l6 = l2 * l2 * l2;
	for (var i = 0, delta, fy, fpy; i < iterations; ++i) {
		fy = l * (A1 + A2 * l2 + l6 * (A3 + A4 * l2)) - y;
		fpy = A1 + 3 * A2 * l2 + l6 * (7 * A3 + 9 * A4 * l2);
		l -= delta = fy / fpy, l2 = l * l, l6 = l2 * l2 * l2;
		if (abs(delta) < epsilon2) break;
	}
	return [M * x * (A1 + 3 * A2 * l2 + l6 * (7 * A3 + 9 * A4 * l2)) / cos$1(l), asin(sin$1(l) / M)];
};
function equalEarth() {
	return projection$1(equalEarthRaw).scale(177.158);
}
function gnomonicRaw(x, y) {
	var cy = cos$1(y), k = cos$1(x) * cy;
	return [cy * sin$1(x) / k, sin$1(y) / k];
}
gnomonicRaw.invert = azimuthalInvert(atan);
function gnomonic() {
	return projection$1(gnomonicRaw).scale(144.049).clipAngle(60);
}
function naturalEarth1Raw(lambda, phi) {
	var phi2 = phi * phi, phi4 = phi2 * phi2;
	return [lambda * (.8707 - .131979 * phi2 + phi4 * (-.013791 + phi4 * (.003971 * phi2 - .001529 * phi4))), phi * (1.007226 + phi2 * (.015085 + phi4 * (-.044475 + .028874 * phi2 - .005916 * phi4)))];
}
naturalEarth1Raw.invert = function(x, y) {
	var phi = y, i = 25, delta;
	do {
		var phi2 = phi * phi, phi4 = phi2 * phi2;
		phi -= delta = (phi * (1.007226 + phi2 * (.015085 + phi4 * (-.044475 + .028874 * phi2 - .005916 * phi4))) - y) / (1.007226 + phi2 * (.045255 + phi4 * (-.311325 + .259866 * phi2 - .005916 * 11 * phi4)));
	} while (abs(delta) > epsilon$1 && --i > 0);
	return [x / (.8707 + (phi2 = phi * phi) * (-.131979 + phi2 * (-.013791 + phi2 * phi2 * phi2 * (.003971 - .001529 * phi2)))), phi];
};
function orthographicRaw(x, y) {
	return [cos$1(y) * sin$1(x), sin$1(y)];
}
orthographicRaw.invert = azimuthalInvert(asin);
function orthographic() {
	return projection$1(orthographicRaw).scale(249.5).clipAngle(90 + epsilon$1);
}
function stereographicRaw(x, y) {
	var cy = cos$1(y), k = 1 + cos$1(x) * cy;
	return [cy * sin$1(x) / k, sin$1(y) / k];
}
stereographicRaw.invert = azimuthalInvert(function(z) {
	return 2 * atan(z);
});
function stereographic() {
	return projection$1(stereographicRaw).scale(250).clipAngle(142);
}
function transverseMercatorRaw(lambda, phi) {
	return [log$1(tan((halfPi$1 + phi) / 2)), -lambda];
}
transverseMercatorRaw.invert = function(x, y) {
	return [-y, 2 * atan(exp(x)) - halfPi$1];
};
function transverseMercator() {
	var m = mercatorProjection(transverseMercatorRaw), center = m.center, rotate = m.rotate;
	m.center = function(_) {
		return arguments.length ? center([-_[1], _[0]]) : (_ = center(), [_[1], -_[0]]);
	};
	m.rotate = function(_) {
		return arguments.length ? rotate([
			_[0],
			_[1],
			_.length > 2 ? _[2] + 90 : 90
		]) : (_ = rotate(), [
			_[0],
			_[1],
			_[2] - 90
		]);
	};
	return rotate([
		0,
		0,
		90
	]).scale(159.155);
}
// ../../node_modules/.pnpm/d3-time@3.1.1/node_modules/d3-time/dist/d3-time.mjs
var t0 = /* @__PURE__ */ new Date();
var t1 = /* @__PURE__ */ new Date();
function timeInterval$1(floori, offseti, count, field) {
	function interval(date) {
		return floori(date = arguments.length === 0 ? /* @__PURE__ */ new Date() : /* @__PURE__ */ new Date(+date)), date;
	}
	interval.floor = (date) => {
		return floori(date = /* @__PURE__ */ new Date(+date)), date;
	};
	interval.ceil = (date) => {
		return floori(date = /* @__PURE__ */ new Date(date - 1)), offseti(date, 1), floori(date), date;
	};
	interval.round = (date) => {
		const d0 = interval(date), d1 = interval.ceil(date);
		return date - d0 < d1 - date ? d0 : d1;
	};
	interval.offset = (date, step) => {
		return offseti(date = /* @__PURE__ */ new Date(+date), step == null ? 1 : Math.floor(step)), date;
	};
	interval.range = (start, stop, step) => {
		const range = [];
		start = interval.ceil(start);
		step = step == null ? 1 : Math.floor(step);
		if (!(start < stop) || !(step > 0)) return range;
		let previous;
		do
			range.push(previous = /* @__PURE__ */ new Date(+start)), offseti(start, step), floori(start);
		while (previous < start && start < stop);
		return range;
	};
	interval.filter = (test) => {
		return timeInterval$1((date) => {
			if (date >= date) while (floori(date), !test(date)) date.setTime(date - 1);
		}, (date, step) => {
			if (date >= date) {
				if (step < 0) while (++step <= 0) while (offseti(date, -1), !test(date));
				else while (--step >= 0) while (offseti(date, 1), !test(date));
			}
		});
	};
	if (count) {
		interval.count = (start, end) => {
			t0.setTime(+start), t1.setTime(+end);
			floori(t0), floori(t1);
			return Math.floor(count(t0, t1));
		};
		interval.every = (step) => {
			step = Math.floor(step);
			return !isFinite(step) || !(step > 0) ? null : !(step > 1) ? interval : interval.filter(field ? (d) => field(d) % step === 0 : (d) => interval.count(0, d) % step === 0);
		};
	}
	return interval;
}
var millisecond = timeInterval$1(() => {}, (date, step) => {
	date.setTime(+date + step);
}, (start, end) => {
	return end - start;
});
millisecond.every = (k) => {
	k = Math.floor(k);
	if (!isFinite(k) || !(k > 0)) return null;
	if (!(k > 1)) return millisecond;
	return timeInterval$1((date) => {
		date.setTime(Math.floor(date / k) * k);
	}, (date, step) => {
		date.setTime(+date + step * k);
	}, (start, end) => {
		return (end - start) / k;
	});
};
millisecond.range;
var durationSecond$1 = 1e3;
var durationMinute$1 = durationSecond$1 * 60;
var durationHour$1 = durationMinute$1 * 60;
var durationDay$1 = durationHour$1 * 24;
var durationWeek$1 = durationDay$1 * 7;
var durationMonth$1 = durationDay$1 * 30;
var durationYear$1 = durationDay$1 * 365;
var second$1 = timeInterval$1((date) => {
	date.setTime(date - date.getMilliseconds());
}, (date, step) => {
	date.setTime(+date + step * durationSecond$1);
}, (start, end) => {
	return (end - start) / durationSecond$1;
}, (date) => {
	return date.getUTCSeconds();
});
second$1.range;
var timeMinute = timeInterval$1((date) => {
	date.setTime(date - date.getMilliseconds() - date.getSeconds() * durationSecond$1);
}, (date, step) => {
	date.setTime(+date + step * durationMinute$1);
}, (start, end) => {
	return (end - start) / durationMinute$1;
}, (date) => {
	return date.getMinutes();
});
timeMinute.range;
var utcMinute = timeInterval$1((date) => {
	date.setUTCSeconds(0, 0);
}, (date, step) => {
	date.setTime(+date + step * durationMinute$1);
}, (start, end) => {
	return (end - start) / durationMinute$1;
}, (date) => {
	return date.getUTCMinutes();
});
utcMinute.range;
var timeHour = timeInterval$1((date) => {
	date.setTime(date - date.getMilliseconds() - date.getSeconds() * durationSecond$1 - date.getMinutes() * durationMinute$1);
}, (date, step) => {
	date.setTime(+date + step * durationHour$1);
}, (start, end) => {
	return (end - start) / durationHour$1;
}, (date) => {
	return date.getHours();
});
timeHour.range;
var utcHour = timeInterval$1((date) => {
	date.setUTCMinutes(0, 0, 0);
}, (date, step) => {
	date.setTime(+date + step * durationHour$1);
}, (start, end) => {
	return (end - start) / durationHour$1;
}, (date) => {
	return date.getUTCHours();
});
utcHour.range;
var timeDay = timeInterval$1((date) => date.setHours(0, 0, 0, 0), (date, step) => date.setDate(date.getDate() + step), (start, end) => (end - start - (end.getTimezoneOffset() - start.getTimezoneOffset()) * durationMinute$1) / durationDay$1, (date) => date.getDate() - 1);
timeDay.range;
var utcDay = timeInterval$1((date) => {
	date.setUTCHours(0, 0, 0, 0);
}, (date, step) => {
	date.setUTCDate(date.getUTCDate() + step);
}, (start, end) => {
	return (end - start) / durationDay$1;
}, (date) => {
	return date.getUTCDate() - 1;
});
utcDay.range;
var unixDay = timeInterval$1((date) => {
	date.setUTCHours(0, 0, 0, 0);
}, (date, step) => {
	date.setUTCDate(date.getUTCDate() + step);
}, (start, end) => {
	return (end - start) / durationDay$1;
}, (date) => {
	return Math.floor(date / durationDay$1);
});
unixDay.range;
function timeWeekday(i) {
	return timeInterval$1((date) => {
		date.setDate(date.getDate() - (date.getDay() + 7 - i) % 7);
		date.setHours(0, 0, 0, 0);
	}, (date, step) => {
		date.setDate(date.getDate() + step * 7);
	}, (start, end) => {
		return (end - start - (end.getTimezoneOffset() - start.getTimezoneOffset()) * durationMinute$1) / durationWeek$1;
	});
}
var timeSunday = timeWeekday(0);
var timeMonday = timeWeekday(1);
var timeTuesday = timeWeekday(2);
var timeWednesday = timeWeekday(3);
var timeThursday = timeWeekday(4);
var timeFriday = timeWeekday(5);
var timeSaturday = timeWeekday(6);
timeSunday.range;
timeMonday.range;
timeTuesday.range;
timeWednesday.range;
timeThursday.range;
timeFriday.range;
timeSaturday.range;
function utcWeekday(i) {
	return timeInterval$1((date) => {
		date.setUTCDate(date.getUTCDate() - (date.getUTCDay() + 7 - i) % 7);
		date.setUTCHours(0, 0, 0, 0);
	}, (date, step) => {
		date.setUTCDate(date.getUTCDate() + step * 7);
	}, (start, end) => {
		return (end - start) / durationWeek$1;
	});
}
var utcSunday = utcWeekday(0);
var utcMonday = utcWeekday(1);
var utcTuesday = utcWeekday(2);
var utcWednesday = utcWeekday(3);
var utcThursday = utcWeekday(4);
var utcFriday = utcWeekday(5);
var utcSaturday = utcWeekday(6);
utcSunday.range;
utcMonday.range;
utcTuesday.range;
utcWednesday.range;
utcThursday.range;
utcFriday.range;
utcSaturday.range;
var timeMonth = timeInterval$1((date) => {
	date.setDate(1);
	date.setHours(0, 0, 0, 0);
}, (date, step) => {
	date.setMonth(date.getMonth() + step);
}, (start, end) => {
	return end.getMonth() - start.getMonth() + (end.getFullYear() - start.getFullYear()) * 12;
}, (date) => {
	return date.getMonth();
});
timeMonth.range;
var utcMonth = timeInterval$1((date) => {
	date.setUTCDate(1);
	date.setUTCHours(0, 0, 0, 0);
}, (date, step) => {
	date.setUTCMonth(date.getUTCMonth() + step);
}, (start, end) => {
	return end.getUTCMonth() - start.getUTCMonth() + (end.getUTCFullYear() - start.getUTCFullYear()) * 12;
}, (date) => {
	return date.getUTCMonth();
});
utcMonth.range;
var timeYear = timeInterval$1((date) => {
	date.setMonth(0, 1);
	date.setHours(0, 0, 0, 0);
}, (date, step) => {
	date.setFullYear(date.getFullYear() + step);
}, (start, end) => {
	return end.getFullYear() - start.getFullYear();
}, (date) => {
	return date.getFullYear();
});
timeYear.every = (k) => {
	return !isFinite(k = Math.floor(k)) || !(k > 0) ? null : timeInterval$1((date) => {
		date.setFullYear(Math.floor(date.getFullYear() / k) * k);
		date.setMonth(0, 1);
		date.setHours(0, 0, 0, 0);
	}, (date, step) => {
		date.setFullYear(date.getFullYear() + step * k);
	});
};
timeYear.range;
var utcYear = timeInterval$1((date) => {
	date.setUTCMonth(0, 1);
	date.setUTCHours(0, 0, 0, 0);
}, (date, step) => {
	date.setUTCFullYear(date.getUTCFullYear() + step);
}, (start, end) => {
	return end.getUTCFullYear() - start.getUTCFullYear();
}, (date) => {
	return date.getUTCFullYear();
});
utcYear.every = (k) => {
	return !isFinite(k = Math.floor(k)) || !(k > 0) ? null : timeInterval$1((date) => {
		date.setUTCFullYear(Math.floor(date.getUTCFullYear() / k) * k);
		date.setUTCMonth(0, 1);
		date.setUTCHours(0, 0, 0, 0);
	}, (date, step) => {
		date.setUTCFullYear(date.getUTCFullYear() + step * k);
	});
};
utcYear.range;
function ticker(year, month, week, day, hour, minute) {
	const tickIntervals = [
		[
			second$1,
			1,
			durationSecond$1
		],
		[
			second$1,
			5,
			5 * durationSecond$1
		],
		[
			second$1,
			15,
			15 * durationSecond$1
		],
		[
			second$1,
			30,
			30 * durationSecond$1
		],
		[
			minute,
			1,
			durationMinute$1
		],
		[
			minute,
			5,
			5 * durationMinute$1
		],
		[
			minute,
			15,
			15 * durationMinute$1
		],
		[
			minute,
			30,
			30 * durationMinute$1
		],
		[
			hour,
			1,
			durationHour$1
		],
		[
			hour,
			3,
			3 * durationHour$1
		],
		[
			hour,
			6,
			6 * durationHour$1
		],
		[
			hour,
			12,
			12 * durationHour$1
		],
		[
			day,
			1,
			durationDay$1
		],
		[
			day,
			2,
			2 * durationDay$1
		],
		[
			week,
			1,
			durationWeek$1
		],
		[
			month,
			1,
			durationMonth$1
		],
		[
			month,
			3,
			3 * durationMonth$1
		],
		[
			year,
			1,
			durationYear$1
		]
	];
	function ticks(start, stop, count) {
		const reverse = stop < start;
		if (reverse) [start, stop] = [stop, start];
		const interval = count && typeof count.range === "function" ? count : tickInterval(start, stop, count);
		const ticks = interval ? interval.range(start, +stop + 1) : [];
		return reverse ? ticks.reverse() : ticks;
	}
	function tickInterval(start, stop, count) {
		const target = Math.abs(stop - start) / count;
		const i = bisector(([, , step]) => step).right(tickIntervals, target);
		if (i === tickIntervals.length) return year.every(tickStep(start / durationYear$1, stop / durationYear$1, count));
		if (i === 0) return millisecond.every(Math.max(tickStep(start, stop, count), 1));
		const [t, step] = tickIntervals[target / tickIntervals[i - 1][2] < tickIntervals[i][2] / target ? i - 1 : i];
		return t.every(step);
	}
	return [ticks, tickInterval];
}
var [utcTicks, utcTickInterval] = ticker(utcYear, utcMonth, utcSunday, unixDay, utcHour, utcMinute);
var [timeTicks, timeTickInterval] = ticker(timeYear, timeMonth, timeSunday, timeDay, timeHour, timeMinute);
// ../../node_modules/.pnpm/d3-time-format@4.1.1/node_modules/d3-time-format/dist/d3-time-format.mjs
function localDate(d) {
	if (0 <= d.y && d.y < 100) {
		var date = new Date(-1, d.m, d.d, d.H, d.M, d.S, d.L);
		date.setFullYear(d.y);
		return date;
	}
	return new Date(d.y, d.m, d.d, d.H, d.M, d.S, d.L);
}
function utcDate(d) {
	if (0 <= d.y && d.y < 100) {
		var date = new Date(Date.UTC(-1, d.m, d.d, d.H, d.M, d.S, d.L));
		date.setUTCFullYear(d.y);
		return date;
	}
	return new Date(Date.UTC(d.y, d.m, d.d, d.H, d.M, d.S, d.L));
}
function newDate(y, m, d) {
	return {
		y,
		m,
		d,
		H: 0,
		M: 0,
		S: 0,
		L: 0
	};
}
function formatLocale(locale) {
	var locale_dateTime = locale.dateTime, locale_date = locale.date, locale_time = locale.time, locale_periods = locale.periods, locale_weekdays = locale.days, locale_shortWeekdays = locale.shortDays, locale_months = locale.months, locale_shortMonths = locale.shortMonths;
	var periodRe = formatRe(locale_periods), periodLookup = formatLookup(locale_periods), weekdayRe = formatRe(locale_weekdays), weekdayLookup = formatLookup(locale_weekdays), shortWeekdayRe = formatRe(locale_shortWeekdays), shortWeekdayLookup = formatLookup(locale_shortWeekdays), monthRe = formatRe(locale_months), monthLookup = formatLookup(locale_months), shortMonthRe = formatRe(locale_shortMonths), shortMonthLookup = formatLookup(locale_shortMonths);
	var formats = {
		"a": formatShortWeekday,
		"A": formatWeekday,
		"b": formatShortMonth,
		"B": formatMonth,
		"c": null,
		"d": formatDayOfMonth,
		"e": formatDayOfMonth,
		"f": formatMicroseconds,
		"g": formatYearISO,
		"G": formatFullYearISO,
		"H": formatHour24,
		"I": formatHour12,
		"j": formatDayOfYear,
		"L": formatMilliseconds,
		"m": formatMonthNumber,
		"M": formatMinutes,
		"p": formatPeriod,
		"q": formatQuarter,
		"Q": formatUnixTimestamp,
		"s": formatUnixTimestampSeconds,
		"S": formatSeconds,
		"u": formatWeekdayNumberMonday,
		"U": formatWeekNumberSunday,
		"V": formatWeekNumberISO,
		"w": formatWeekdayNumberSunday,
		"W": formatWeekNumberMonday,
		"x": null,
		"X": null,
		"y": formatYear$1,
		"Y": formatFullYear,
		"Z": formatZone,
		"%": formatLiteralPercent
	};
	var utcFormats = {
		"a": formatUTCShortWeekday,
		"A": formatUTCWeekday,
		"b": formatUTCShortMonth,
		"B": formatUTCMonth,
		"c": null,
		"d": formatUTCDayOfMonth,
		"e": formatUTCDayOfMonth,
		"f": formatUTCMicroseconds,
		"g": formatUTCYearISO,
		"G": formatUTCFullYearISO,
		"H": formatUTCHour24,
		"I": formatUTCHour12,
		"j": formatUTCDayOfYear,
		"L": formatUTCMilliseconds,
		"m": formatUTCMonthNumber,
		"M": formatUTCMinutes,
		"p": formatUTCPeriod,
		"q": formatUTCQuarter,
		"Q": formatUnixTimestamp,
		"s": formatUnixTimestampSeconds,
		"S": formatUTCSeconds,
		"u": formatUTCWeekdayNumberMonday,
		"U": formatUTCWeekNumberSunday,
		"V": formatUTCWeekNumberISO,
		"w": formatUTCWeekdayNumberSunday,
		"W": formatUTCWeekNumberMonday,
		"x": null,
		"X": null,
		"y": formatUTCYear,
		"Y": formatUTCFullYear,
		"Z": formatUTCZone,
		"%": formatLiteralPercent
	};
	var parses = {
		"a": parseShortWeekday,
		"A": parseWeekday,
		"b": parseShortMonth,
		"B": parseMonth,
		"c": parseLocaleDateTime,
		"d": parseDayOfMonth,
		"e": parseDayOfMonth,
		"f": parseMicroseconds,
		"g": parseYear,
		"G": parseFullYear,
		"H": parseHour24,
		"I": parseHour24,
		"j": parseDayOfYear,
		"L": parseMilliseconds,
		"m": parseMonthNumber,
		"M": parseMinutes,
		"p": parsePeriod,
		"q": parseQuarter,
		"Q": parseUnixTimestamp,
		"s": parseUnixTimestampSeconds,
		"S": parseSeconds,
		"u": parseWeekdayNumberMonday,
		"U": parseWeekNumberSunday,
		"V": parseWeekNumberISO,
		"w": parseWeekdayNumberSunday,
		"W": parseWeekNumberMonday,
		"x": parseLocaleDate,
		"X": parseLocaleTime,
		"y": parseYear,
		"Y": parseFullYear,
		"Z": parseZone,
		"%": parseLiteralPercent
	};
	formats.x = newFormat(locale_date, formats);
	formats.X = newFormat(locale_time, formats);
	formats.c = newFormat(locale_dateTime, formats);
	utcFormats.x = newFormat(locale_date, utcFormats);
	utcFormats.X = newFormat(locale_time, utcFormats);
	utcFormats.c = newFormat(locale_dateTime, utcFormats);
	function newFormat(specifier, formats) {
		return function(date) {
			var string = [], i = -1, j = 0, n = specifier.length, c, pad, format;
			if (!(date instanceof Date)) date = /* @__PURE__ */ new Date(+date);
			while (++i < n) if (specifier.charCodeAt(i) === 37) {
				string.push(specifier.slice(j, i));
				if ((pad = pads[c = specifier.charAt(++i)]) != null) c = specifier.charAt(++i);
				else pad = c === "e" ? " " : "0";
				if (format = formats[c]) c = format(date, pad);
				string.push(c);
				j = i + 1;
			}
			string.push(specifier.slice(j, i));
			return string.join("");
		};
	}
	function newParse(specifier, Z) {
		return function(string) {
			var d = newDate(1900, void 0, 1), i = parseSpecifier(d, specifier, string += "", 0), week, day;
			if (i != string.length) return null;
			if ("Q" in d) return new Date(d.Q);
			if ("s" in d) return new Date(d.s * 1e3 + ("L" in d ? d.L : 0));
			if (Z && !("Z" in d)) d.Z = 0;
			if ("p" in d) d.H = d.H % 12 + d.p * 12;
			if (d.m === void 0) d.m = "q" in d ? d.q : 0;
			if ("V" in d) {
				if (d.V < 1 || d.V > 53) return null;
				if (!("w" in d)) d.w = 1;
				if ("Z" in d) {
					week = utcDate(newDate(d.y, 0, 1)), day = week.getUTCDay();
					week = day > 4 || day === 0 ? utcMonday.ceil(week) : utcMonday(week);
					week = utcDay.offset(week, (d.V - 1) * 7);
					d.y = week.getUTCFullYear();
					d.m = week.getUTCMonth();
					d.d = week.getUTCDate() + (d.w + 6) % 7;
				} else {
					week = localDate(newDate(d.y, 0, 1)), day = week.getDay();
					week = day > 4 || day === 0 ? timeMonday.ceil(week) : timeMonday(week);
					week = timeDay.offset(week, (d.V - 1) * 7);
					d.y = week.getFullYear();
					d.m = week.getMonth();
					d.d = week.getDate() + (d.w + 6) % 7;
				}
			} else if ("W" in d || "U" in d) {
				if (!("w" in d)) d.w = "u" in d ? d.u % 7 : "W" in d ? 1 : 0;
				day = "Z" in d ? utcDate(newDate(d.y, 0, 1)).getUTCDay() : localDate(newDate(d.y, 0, 1)).getDay();
				d.m = 0;
				d.d = "W" in d ? (d.w + 6) % 7 + d.W * 7 - (day + 5) % 7 : d.w + d.U * 7 - (day + 6) % 7;
			}
			if ("Z" in d) {
				d.H += d.Z / 100 | 0;
				d.M += d.Z % 100;
				return utcDate(d);
			}
			return localDate(d);
		};
	}
	function parseSpecifier(d, specifier, string, j) {
		var i = 0, n = specifier.length, m = string.length, c, parse;
		while (i < n) {
			if (j >= m) return -1;
			c = specifier.charCodeAt(i++);
			if (c === 37) {
				c = specifier.charAt(i++);
				parse = parses[c in pads ? specifier.charAt(i++) : c];
				if (!parse || (j = parse(d, string, j)) < 0) return -1;
			} else if (c != string.charCodeAt(j++)) return -1;
		}
		return j;
	}
	function parsePeriod(d, string, i) {
		var n = periodRe.exec(string.slice(i));
		return n ? (d.p = periodLookup.get(n[0].toLowerCase()), i + n[0].length) : -1;
	}
	function parseShortWeekday(d, string, i) {
		var n = shortWeekdayRe.exec(string.slice(i));
		return n ? (d.w = shortWeekdayLookup.get(n[0].toLowerCase()), i + n[0].length) : -1;
	}
	function parseWeekday(d, string, i) {
		var n = weekdayRe.exec(string.slice(i));
		return n ? (d.w = weekdayLookup.get(n[0].toLowerCase()), i + n[0].length) : -1;
	}
	function parseShortMonth(d, string, i) {
		var n = shortMonthRe.exec(string.slice(i));
		return n ? (d.m = shortMonthLookup.get(n[0].toLowerCase()), i + n[0].length) : -1;
	}
	function parseMonth(d, string, i) {
		var n = monthRe.exec(string.slice(i));
		return n ? (d.m = monthLookup.get(n[0].toLowerCase()), i + n[0].length) : -1;
	}
	function parseLocaleDateTime(d, string, i) {
		return parseSpecifier(d, locale_dateTime, string, i);
	}
	function parseLocaleDate(d, string, i) {
		return parseSpecifier(d, locale_date, string, i);
	}
	function parseLocaleTime(d, string, i) {
		return parseSpecifier(d, locale_time, string, i);
	}
	function formatShortWeekday(d) {
		return locale_shortWeekdays[d.getDay()];
	}
	function formatWeekday(d) {
		return locale_weekdays[d.getDay()];
	}
	function formatShortMonth(d) {
		return locale_shortMonths[d.getMonth()];
	}
	function formatMonth(d) {
		return locale_months[d.getMonth()];
	}
	function formatPeriod(d) {
		return locale_periods[+(d.getHours() >= 12)];
	}
	function formatQuarter(d) {
		return 1 + ~~(d.getMonth() / 3);
	}
	function formatUTCShortWeekday(d) {
		return locale_shortWeekdays[d.getUTCDay()];
	}
	function formatUTCWeekday(d) {
		return locale_weekdays[d.getUTCDay()];
	}
	function formatUTCShortMonth(d) {
		return locale_shortMonths[d.getUTCMonth()];
	}
	function formatUTCMonth(d) {
		return locale_months[d.getUTCMonth()];
	}
	function formatUTCPeriod(d) {
		return locale_periods[+(d.getUTCHours() >= 12)];
	}
	function formatUTCQuarter(d) {
		return 1 + ~~(d.getUTCMonth() / 3);
	}
	return {
		format: function(specifier) {
			var f = newFormat(specifier += "", formats);
			f.toString = function() {
				return specifier;
			};
			return f;
		},
		parse: function(specifier) {
			var p = newParse(specifier += "", false);
			p.toString = function() {
				return specifier;
			};
			return p;
		},
		utcFormat: function(specifier) {
			var f = newFormat(specifier += "", utcFormats);
			f.toString = function() {
				return specifier;
			};
			return f;
		},
		utcParse: function(specifier) {
			var p = newParse(specifier += "", true);
			p.toString = function() {
				return specifier;
			};
			return p;
		}
	};
}
var pads = {
	"-": "",
	"_": " ",
	"0": "0"
};
var numberRe = /^\s*\d+/;
var percentRe = /^%/;
var requoteRe = /[\\^$*+?|[\]().{}]/g;
function pad$1(value, fill, width) {
	var sign = value < 0 ? "-" : "", string = (sign ? -value : value) + "", length = string.length;
	return sign + (length < width ? new Array(width - length + 1).join(fill) + string : string);
}
function requote(s) {
	return s.replace(requoteRe, "\\$&");
}
function formatRe(names) {
	return new RegExp("^(?:" + names.map(requote).join("|") + ")", "i");
}
function formatLookup(names) {
	return new Map(names.map((name, i) => [name.toLowerCase(), i]));
}
function parseWeekdayNumberSunday(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 1));
	return n ? (d.w = +n[0], i + n[0].length) : -1;
}
function parseWeekdayNumberMonday(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 1));
	return n ? (d.u = +n[0], i + n[0].length) : -1;
}
function parseWeekNumberSunday(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.U = +n[0], i + n[0].length) : -1;
}
function parseWeekNumberISO(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.V = +n[0], i + n[0].length) : -1;
}
function parseWeekNumberMonday(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.W = +n[0], i + n[0].length) : -1;
}
function parseFullYear(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 4));
	return n ? (d.y = +n[0], i + n[0].length) : -1;
}
function parseYear(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.y = +n[0] + (+n[0] > 68 ? 1900 : 2e3), i + n[0].length) : -1;
}
function parseZone(d, string, i) {
	var n = /^(Z)|([+-]\d\d)(?::?(\d\d))?/.exec(string.slice(i, i + 6));
	return n ? (d.Z = n[1] ? 0 : -(n[2] + (n[3] || "00")), i + n[0].length) : -1;
}
function parseQuarter(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 1));
	return n ? (d.q = n[0] * 3 - 3, i + n[0].length) : -1;
}
function parseMonthNumber(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.m = n[0] - 1, i + n[0].length) : -1;
}
function parseDayOfMonth(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.d = +n[0], i + n[0].length) : -1;
}
function parseDayOfYear(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 3));
	return n ? (d.m = 0, d.d = +n[0], i + n[0].length) : -1;
}
function parseHour24(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.H = +n[0], i + n[0].length) : -1;
}
function parseMinutes(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.M = +n[0], i + n[0].length) : -1;
}
function parseSeconds(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 2));
	return n ? (d.S = +n[0], i + n[0].length) : -1;
}
function parseMilliseconds(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 3));
	return n ? (d.L = +n[0], i + n[0].length) : -1;
}
function parseMicroseconds(d, string, i) {
	var n = numberRe.exec(string.slice(i, i + 6));
	return n ? (d.L = Math.floor(n[0] / 1e3), i + n[0].length) : -1;
}
function parseLiteralPercent(d, string, i) {
	var n = percentRe.exec(string.slice(i, i + 1));
	return n ? i + n[0].length : -1;
}
function parseUnixTimestamp(d, string, i) {
	var n = numberRe.exec(string.slice(i));
	return n ? (d.Q = +n[0], i + n[0].length) : -1;
}
function parseUnixTimestampSeconds(d, string, i) {
	var n = numberRe.exec(string.slice(i));
	return n ? (d.s = +n[0], i + n[0].length) : -1;
}
function formatDayOfMonth(d, p) {
	return pad$1(d.getDate(), p, 2);
}
function formatHour24(d, p) {
	return pad$1(d.getHours(), p, 2);
}
function formatHour12(d, p) {
	return pad$1(d.getHours() % 12 || 12, p, 2);
}
function formatDayOfYear(d, p) {
	return pad$1(1 + timeDay.count(timeYear(d), d), p, 3);
}
function formatMilliseconds(d, p) {
	return pad$1(d.getMilliseconds(), p, 3);
}
function formatMicroseconds(d, p) {
	return formatMilliseconds(d, p) + "000";
}
function formatMonthNumber(d, p) {
	return pad$1(d.getMonth() + 1, p, 2);
}
function formatMinutes(d, p) {
	return pad$1(d.getMinutes(), p, 2);
}
function formatSeconds(d, p) {
	return pad$1(d.getSeconds(), p, 2);
}
function formatWeekdayNumberMonday(d) {
	var day = d.getDay();
	return day === 0 ? 7 : day;
}
function formatWeekNumberSunday(d, p) {
	return pad$1(timeSunday.count(timeYear(d) - 1, d), p, 2);
}
function dISO(d) {
	var day = d.getDay();
	return day >= 4 || day === 0 ? timeThursday(d) : timeThursday.ceil(d);
}
function formatWeekNumberISO(d, p) {
	d = dISO(d);
	return pad$1(timeThursday.count(timeYear(d), d) + (timeYear(d).getDay() === 4), p, 2);
}
function formatWeekdayNumberSunday(d) {
	return d.getDay();
}
function formatWeekNumberMonday(d, p) {
	return pad$1(timeMonday.count(timeYear(d) - 1, d), p, 2);
}
function formatYear$1(d, p) {
	return pad$1(d.getFullYear() % 100, p, 2);
}
function formatYearISO(d, p) {
	d = dISO(d);
	return pad$1(d.getFullYear() % 100, p, 2);
}
function formatFullYear(d, p) {
	return pad$1(d.getFullYear() % 1e4, p, 4);
}
function formatFullYearISO(d, p) {
	var day = d.getDay();
	d = day >= 4 || day === 0 ? timeThursday(d) : timeThursday.ceil(d);
	return pad$1(d.getFullYear() % 1e4, p, 4);
}
function formatZone(d) {
	var z = d.getTimezoneOffset();
	return (z > 0 ? "-" : (z *= -1, "+")) + pad$1(z / 60 | 0, "0", 2) + pad$1(z % 60, "0", 2);
}
function formatUTCDayOfMonth(d, p) {
	return pad$1(d.getUTCDate(), p, 2);
}
function formatUTCHour24(d, p) {
	return pad$1(d.getUTCHours(), p, 2);
}
function formatUTCHour12(d, p) {
	return pad$1(d.getUTCHours() % 12 || 12, p, 2);
}
function formatUTCDayOfYear(d, p) {
	return pad$1(1 + utcDay.count(utcYear(d), d), p, 3);
}
function formatUTCMilliseconds(d, p) {
	return pad$1(d.getUTCMilliseconds(), p, 3);
}
function formatUTCMicroseconds(d, p) {
	return formatUTCMilliseconds(d, p) + "000";
}
function formatUTCMonthNumber(d, p) {
	return pad$1(d.getUTCMonth() + 1, p, 2);
}
function formatUTCMinutes(d, p) {
	return pad$1(d.getUTCMinutes(), p, 2);
}
function formatUTCSeconds(d, p) {
	return pad$1(d.getUTCSeconds(), p, 2);
}
function formatUTCWeekdayNumberMonday(d) {
	var dow = d.getUTCDay();
	return dow === 0 ? 7 : dow;
}
function formatUTCWeekNumberSunday(d, p) {
	return pad$1(utcSunday.count(utcYear(d) - 1, d), p, 2);
}
function UTCdISO(d) {
	var day = d.getUTCDay();
	return day >= 4 || day === 0 ? utcThursday(d) : utcThursday.ceil(d);
}
function formatUTCWeekNumberISO(d, p) {
	d = UTCdISO(d);
	return pad$1(utcThursday.count(utcYear(d), d) + (utcYear(d).getUTCDay() === 4), p, 2);
}
function formatUTCWeekdayNumberSunday(d) {
	return d.getUTCDay();
}
function formatUTCWeekNumberMonday(d, p) {
	return pad$1(utcMonday.count(utcYear(d) - 1, d), p, 2);
}
function formatUTCYear(d, p) {
	return pad$1(d.getUTCFullYear() % 100, p, 2);
}
function formatUTCYearISO(d, p) {
	d = UTCdISO(d);
	return pad$1(d.getUTCFullYear() % 100, p, 2);
}
function formatUTCFullYear(d, p) {
	return pad$1(d.getUTCFullYear() % 1e4, p, 4);
}
function formatUTCFullYearISO(d, p) {
	var day = d.getUTCDay();
	d = day >= 4 || day === 0 ? utcThursday(d) : utcThursday.ceil(d);
	return pad$1(d.getUTCFullYear() % 1e4, p, 4);
}
function formatUTCZone() {
	return "+0000";
}
function formatLiteralPercent() {
	return "%";
}
function formatUnixTimestamp(d) {
	return +d;
}
function formatUnixTimestampSeconds(d) {
	return Math.floor(+d / 1e3);
}
var locale;
var timeFormat;
var utcFormat;
var utcParse;
defaultLocale({
	dateTime: "%x, %X",
	date: "%-m/%-d/%Y",
	time: "%-I:%M:%S %p",
	periods: ["AM", "PM"],
	days: [
		"Sunday",
		"Monday",
		"Tuesday",
		"Wednesday",
		"Thursday",
		"Friday",
		"Saturday"
	],
	shortDays: [
		"Sun",
		"Mon",
		"Tue",
		"Wed",
		"Thu",
		"Fri",
		"Sat"
	],
	months: [
		"January",
		"February",
		"March",
		"April",
		"May",
		"June",
		"July",
		"August",
		"September",
		"October",
		"November",
		"December"
	],
	shortMonths: [
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
	]
});
function defaultLocale(definition) {
	locale = formatLocale(definition);
	timeFormat = locale.format;
	locale.parse;
	utcFormat = locale.utcFormat;
	utcParse = locale.utcParse;
	return locale;
}
var isoSpecifier = "%Y-%m-%dT%H:%M:%S.%LZ";
Date.prototype.toISOString || utcFormat(isoSpecifier);
+/* @__PURE__ */ new Date("2000-01-01T00:00:00.000Z") || utcParse(isoSpecifier);
// ../../node_modules/.pnpm/d3-scale@4.0.3/node_modules/d3-scale/dist/d3-scale.mjs
function initRange(domain, range) {
	switch (arguments.length) {
		case 0: break;
		case 1:
			this.range(domain);
			break;
		default: this.range(range).domain(domain);
	}
	return this;
}
function initInterpolator(domain, interpolator) {
	switch (arguments.length) {
		case 0: break;
		case 1:
			if (typeof domain === "function") this.interpolator(domain);
			else this.range(domain);
			break;
		default:
			this.domain(domain);
			if (typeof interpolator === "function") this.interpolator(interpolator);
			else this.range(interpolator);
	}
	return this;
}
var implicit = Symbol("implicit");
function ordinal() {
	var index = new InternMap(), domain = [], range = [], unknown = implicit;
	function scale(d) {
		let i = index.get(d);
		if (i === void 0) {
			if (unknown !== implicit) return unknown;
			index.set(d, i = domain.push(d) - 1);
		}
		return range[i % range.length];
	}
	scale.domain = function(_) {
		if (!arguments.length) return domain.slice();
		domain = [], index = new InternMap();
		for (const value of _) {
			if (index.has(value)) continue;
			index.set(value, domain.push(value) - 1);
		}
		return scale;
	};
	scale.range = function(_) {
		return arguments.length ? (range = Array.from(_), scale) : range.slice();
	};
	scale.unknown = function(_) {
		return arguments.length ? (unknown = _, scale) : unknown;
	};
	scale.copy = function() {
		return ordinal(domain, range).unknown(unknown);
	};
	initRange.apply(scale, arguments);
	return scale;
}
function band$2() {
	var scale = ordinal().unknown(void 0), domain = scale.domain, ordinalRange = scale.range, r0 = 0, r1 = 1, step, bandwidth, round = false, paddingInner = 0, paddingOuter = 0, align = .5;
	delete scale.unknown;
	function rescale() {
		var n = domain().length, reverse = r1 < r0, start = reverse ? r1 : r0, stop = reverse ? r0 : r1;
		step = (stop - start) / Math.max(1, n - paddingInner + paddingOuter * 2);
		if (round) step = Math.floor(step);
		start += (stop - start - step * (n - paddingInner)) * align;
		bandwidth = step * (1 - paddingInner);
		if (round) start = Math.round(start), bandwidth = Math.round(bandwidth);
		var values = range$2(n).map(function(i) {
			return start + step * i;
		});
		return ordinalRange(reverse ? values.reverse() : values);
	}
	scale.domain = function(_) {
		return arguments.length ? (domain(_), rescale()) : domain();
	};
	scale.range = function(_) {
		return arguments.length ? ([r0, r1] = _, r0 = +r0, r1 = +r1, rescale()) : [r0, r1];
	};
	scale.rangeRound = function(_) {
		return [r0, r1] = _, r0 = +r0, r1 = +r1, round = true, rescale();
	};
	scale.bandwidth = function() {
		return bandwidth;
	};
	scale.step = function() {
		return step;
	};
	scale.round = function(_) {
		return arguments.length ? (round = !!_, rescale()) : round;
	};
	scale.padding = function(_) {
		return arguments.length ? (paddingInner = Math.min(1, paddingOuter = +_), rescale()) : paddingInner;
	};
	scale.paddingInner = function(_) {
		return arguments.length ? (paddingInner = Math.min(1, _), rescale()) : paddingInner;
	};
	scale.paddingOuter = function(_) {
		return arguments.length ? (paddingOuter = +_, rescale()) : paddingOuter;
	};
	scale.align = function(_) {
		return arguments.length ? (align = Math.max(0, Math.min(1, _)), rescale()) : align;
	};
	scale.copy = function() {
		return band$2(domain(), [r0, r1]).round(round).paddingInner(paddingInner).paddingOuter(paddingOuter).align(align);
	};
	return initRange.apply(rescale(), arguments);
}
function pointish(scale) {
	var copy = scale.copy;
	scale.padding = scale.paddingOuter;
	delete scale.paddingInner;
	delete scale.paddingOuter;
	scale.copy = function() {
		return pointish(copy());
	};
	return scale;
}
function point$4() {
	return pointish(band$2.apply(null, arguments).paddingInner(1));
}
function constants(x) {
	return function() {
		return x;
	};
}
function number$1(x) {
	return +x;
}
var unit$1 = [0, 1];
function identity$1$1(x) {
	return x;
}
function normalize(a, b) {
	return (b -= a = +a) ? function(x) {
		return (x - a) / b;
	} : constants(isNaN(b) ? NaN : .5);
}
function clamper(a, b) {
	var t;
	if (a > b) t = a, a = b, b = t;
	return function(x) {
		return Math.max(a, Math.min(b, x));
	};
}
function bimap(domain, range, interpolate) {
	var d0 = domain[0], d1 = domain[1], r0 = range[0], r1 = range[1];
	if (d1 < d0) d0 = normalize(d1, d0), r0 = interpolate(r1, r0);
	else d0 = normalize(d0, d1), r0 = interpolate(r0, r1);
	return function(x) {
		return r0(d0(x));
	};
}
function polymap(domain, range, interpolate) {
	var j = Math.min(domain.length, range.length) - 1, d = new Array(j), r = new Array(j), i = -1;
	if (domain[j] < domain[0]) {
		domain = domain.slice().reverse();
		range = range.slice().reverse();
	}
	while (++i < j) {
		d[i] = normalize(domain[i], domain[i + 1]);
		r[i] = interpolate(range[i], range[i + 1]);
	}
	return function(x) {
		var i = bisectRight(domain, x, 1, j) - 1;
		return r[i](d[i](x));
	};
}
function copy$1(source, target) {
	return target.domain(source.domain()).range(source.range()).interpolate(source.interpolate()).clamp(source.clamp()).unknown(source.unknown());
}
function transformer$2() {
	var domain = unit$1, range = unit$1, interpolate$1 = value, transform, untransform, unknown, clamp = identity$1$1, piecewise, output, input;
	function rescale() {
		var n = Math.min(domain.length, range.length);
		if (clamp !== identity$1$1) clamp = clamper(domain[0], domain[n - 1]);
		piecewise = n > 2 ? polymap : bimap;
		output = input = null;
		return scale;
	}
	function scale(x) {
		return x == null || isNaN(x = +x) ? unknown : (output || (output = piecewise(domain.map(transform), range, interpolate$1)))(transform(clamp(x)));
	}
	scale.invert = function(y) {
		return clamp(untransform((input || (input = piecewise(range, domain.map(transform), number$3)))(y)));
	};
	scale.domain = function(_) {
		return arguments.length ? (domain = Array.from(_, number$1), rescale()) : domain.slice();
	};
	scale.range = function(_) {
		return arguments.length ? (range = Array.from(_), rescale()) : range.slice();
	};
	scale.rangeRound = function(_) {
		return range = Array.from(_), interpolate$1 = round, rescale();
	};
	scale.clamp = function(_) {
		return arguments.length ? (clamp = _ ? true : identity$1$1, rescale()) : clamp !== identity$1$1;
	};
	scale.interpolate = function(_) {
		return arguments.length ? (interpolate$1 = _, rescale()) : interpolate$1;
	};
	scale.unknown = function(_) {
		return arguments.length ? (unknown = _, scale) : unknown;
	};
	return function(t, u) {
		transform = t, untransform = u;
		return rescale();
	};
}
function continuous() {
	return transformer$2()(identity$1$1, identity$1$1);
}
function tickFormat(start, stop, count, specifier) {
	var step = tickStep(start, stop, count), precision;
	specifier = formatSpecifier(specifier == null ? ",f" : specifier);
	switch (specifier.type) {
		case "s":
			var value = Math.max(Math.abs(start), Math.abs(stop));
			if (specifier.precision == null && !isNaN(precision = precisionPrefix(step, value))) specifier.precision = precision;
			return formatPrefix(specifier, value);
		case "":
		case "e":
		case "g":
		case "p":
		case "r":
			if (specifier.precision == null && !isNaN(precision = precisionRound(step, Math.max(Math.abs(start), Math.abs(stop))))) specifier.precision = precision - (specifier.type === "e");
			break;
		case "f":
		case "%": if (specifier.precision == null && !isNaN(precision = precisionFixed(step))) specifier.precision = precision - (specifier.type === "%") * 2;
	}
	return format$1(specifier);
}
function linearish(scale) {
	var domain = scale.domain;
	scale.ticks = function(count) {
		var d = domain();
		return ticks(d[0], d[d.length - 1], count == null ? 10 : count);
	};
	scale.tickFormat = function(count, specifier) {
		var d = domain();
		return tickFormat(d[0], d[d.length - 1], count == null ? 10 : count, specifier);
	};
	scale.nice = function(count) {
		if (count == null) count = 10;
		var d = domain();
		var i0 = 0;
		var i1 = d.length - 1;
		var start = d[i0];
		var stop = d[i1];
		var prestep;
		var step;
		var maxIter = 10;
		if (stop < start) {
			step = start, start = stop, stop = step;
			step = i0, i0 = i1, i1 = step;
		}
		while (maxIter-- > 0) {
			step = tickIncrement(start, stop, count);
			if (step === prestep) {
				d[i0] = start;
				d[i1] = stop;
				return domain(d);
			} else if (step > 0) {
				start = Math.floor(start / step) * step;
				stop = Math.ceil(stop / step) * step;
			} else if (step < 0) {
				start = Math.ceil(start * step) / step;
				stop = Math.floor(stop * step) / step;
			} else break;
			prestep = step;
		}
		return scale;
	};
	return scale;
}
function linear() {
	var scale = continuous();
	scale.copy = function() {
		return copy$1(scale, linear());
	};
	initRange.apply(scale, arguments);
	return linearish(scale);
}
function identity$2(domain) {
	var unknown;
	function scale(x) {
		return x == null || isNaN(x = +x) ? unknown : x;
	}
	scale.invert = scale;
	scale.domain = scale.range = function(_) {
		return arguments.length ? (domain = Array.from(_, number$1), scale) : domain.slice();
	};
	scale.unknown = function(_) {
		return arguments.length ? (unknown = _, scale) : unknown;
	};
	scale.copy = function() {
		return identity$2(domain).unknown(unknown);
	};
	domain = arguments.length ? Array.from(domain, number$1) : [0, 1];
	return linearish(scale);
}
function nice(domain, interval) {
	domain = domain.slice();
	var i0 = 0, i1 = domain.length - 1, x0 = domain[i0], x1 = domain[i1], t;
	if (x1 < x0) {
		t = i0, i0 = i1, i1 = t;
		t = x0, x0 = x1, x1 = t;
	}
	domain[i0] = interval.floor(x0);
	domain[i1] = interval.ceil(x1);
	return domain;
}
function transformLog$1(x) {
	return Math.log(x);
}
function transformExp(x) {
	return Math.exp(x);
}
function transformLogn(x) {
	return -Math.log(-x);
}
function transformExpn(x) {
	return -Math.exp(-x);
}
function pow10(x) {
	return isFinite(x) ? +("1e" + x) : x < 0 ? 0 : x;
}
function powp(base) {
	return base === 10 ? pow10 : base === Math.E ? Math.exp : (x) => Math.pow(base, x);
}
function logp(base) {
	return base === Math.E ? Math.log : base === 10 && Math.log10 || base === 2 && Math.log2 || (base = Math.log(base), (x) => Math.log(x) / base);
}
function reflect(f) {
	return (x, k) => -f(-x, k);
}
function loggish(transform) {
	const scale = transform(transformLog$1, transformExp);
	const domain = scale.domain;
	let base = 10;
	let logs;
	let pows;
	function rescale() {
		logs = logp(base), pows = powp(base);
		if (domain()[0] < 0) {
			logs = reflect(logs), pows = reflect(pows);
			transform(transformLogn, transformExpn);
		} else transform(transformLog$1, transformExp);
		return scale;
	}
	scale.base = function(_) {
		return arguments.length ? (base = +_, rescale()) : base;
	};
	scale.domain = function(_) {
		return arguments.length ? (domain(_), rescale()) : domain();
	};
	scale.ticks = (count) => {
		const d = domain();
		let u = d[0];
		let v = d[d.length - 1];
		const r = v < u;
		if (r) [u, v] = [v, u];
		let i = logs(u);
		let j = logs(v);
		let k;
		let t;
		const n = count == null ? 10 : +count;
		let z = [];
		if (!(base % 1) && j - i < n) {
			i = Math.floor(i), j = Math.ceil(j);
			if (u > 0) for (; i <= j; ++i) for (k = 1; k < base; ++k) {
				t = i < 0 ? k / pows(-i) : k * pows(i);
				if (t < u) continue;
				if (t > v) break;
				z.push(t);
			}
			else for (; i <= j; ++i) for (k = base - 1; k >= 1; --k) {
				t = i > 0 ? k / pows(-i) : k * pows(i);
				if (t < u) continue;
				if (t > v) break;
				z.push(t);
			}
			if (z.length * 2 < n) z = ticks(u, v, n);
		} else z = ticks(i, j, Math.min(j - i, n)).map(pows);
		return r ? z.reverse() : z;
	};
	scale.tickFormat = (count, specifier) => {
		if (count == null) count = 10;
		if (specifier == null) specifier = base === 10 ? "s" : ",";
		if (typeof specifier !== "function") {
			if (!(base % 1) && (specifier = formatSpecifier(specifier)).precision == null) specifier.trim = true;
			specifier = format$1(specifier);
		}
		if (count === Infinity) return specifier;
		const k = Math.max(1, base * count / scale.ticks().length);
		return (d) => {
			let i = d / pows(Math.round(logs(d)));
			if (i * base < base - .5) i *= base;
			return i <= k ? specifier(d) : "";
		};
	};
	scale.nice = () => {
		return domain(nice(domain(), {
			floor: (x) => pows(Math.floor(logs(x))),
			ceil: (x) => pows(Math.ceil(logs(x)))
		}));
	};
	return scale;
}
function log() {
	const scale = loggish(transformer$2()).domain([1, 10]);
	scale.copy = () => copy$1(scale, log()).base(scale.base());
	initRange.apply(scale, arguments);
	return scale;
}
function transformSymlog$1(c) {
	return function(x) {
		return Math.sign(x) * Math.log1p(Math.abs(x / c));
	};
}
function transformSymexp(c) {
	return function(x) {
		return Math.sign(x) * Math.expm1(Math.abs(x)) * c;
	};
}
function symlogish(transform) {
	var c = 1, scale = transform(transformSymlog$1(c), transformSymexp(c));
	scale.constant = function(_) {
		return arguments.length ? transform(transformSymlog$1(c = +_), transformSymexp(c)) : c;
	};
	return linearish(scale);
}
function symlog() {
	var scale = symlogish(transformer$2());
	scale.copy = function() {
		return copy$1(scale, symlog()).constant(scale.constant());
	};
	return initRange.apply(scale, arguments);
}
function transformPow$1(exponent) {
	return function(x) {
		return x < 0 ? -Math.pow(-x, exponent) : Math.pow(x, exponent);
	};
}
function transformSqrt$1(x) {
	return x < 0 ? -Math.sqrt(-x) : Math.sqrt(x);
}
function transformSquare(x) {
	return x < 0 ? -x * x : x * x;
}
function powish(transform) {
	var scale = transform(identity$1$1, identity$1$1), exponent = 1;
	function rescale() {
		return exponent === 1 ? transform(identity$1$1, identity$1$1) : exponent === .5 ? transform(transformSqrt$1, transformSquare) : transform(transformPow$1(exponent), transformPow$1(1 / exponent));
	}
	scale.exponent = function(_) {
		return arguments.length ? (exponent = +_, rescale()) : exponent;
	};
	return linearish(scale);
}
function pow() {
	var scale = powish(transformer$2());
	scale.copy = function() {
		return copy$1(scale, pow()).exponent(scale.exponent());
	};
	initRange.apply(scale, arguments);
	return scale;
}
function quantile() {
	var domain = [], range = [], thresholds = [], unknown;
	function rescale() {
		var i = 0, n = Math.max(1, range.length);
		thresholds = new Array(n - 1);
		while (++i < n) thresholds[i - 1] = quantileSorted(domain, i / n);
		return scale;
	}
	function scale(x) {
		return x == null || isNaN(x = +x) ? unknown : range[bisectRight(thresholds, x)];
	}
	scale.invertExtent = function(y) {
		var i = range.indexOf(y);
		return i < 0 ? [NaN, NaN] : [i > 0 ? thresholds[i - 1] : domain[0], i < thresholds.length ? thresholds[i] : domain[domain.length - 1]];
	};
	scale.domain = function(_) {
		if (!arguments.length) return domain.slice();
		domain = [];
		for (let d of _) if (d != null && !isNaN(d = +d)) domain.push(d);
		domain.sort(ascending$1);
		return rescale();
	};
	scale.range = function(_) {
		return arguments.length ? (range = Array.from(_), rescale()) : range.slice();
	};
	scale.unknown = function(_) {
		return arguments.length ? (unknown = _, scale) : unknown;
	};
	scale.quantiles = function() {
		return thresholds.slice();
	};
	scale.copy = function() {
		return quantile().domain(domain).range(range).unknown(unknown);
	};
	return initRange.apply(scale, arguments);
}
function threshold() {
	var domain = [.5], range = [0, 1], unknown, n = 1;
	function scale(x) {
		return x != null && x <= x ? range[bisectRight(domain, x, 0, n)] : unknown;
	}
	scale.domain = function(_) {
		return arguments.length ? (domain = Array.from(_), n = Math.min(domain.length, range.length - 1), scale) : domain.slice();
	};
	scale.range = function(_) {
		return arguments.length ? (range = Array.from(_), n = Math.min(domain.length, range.length - 1), scale) : range.slice();
	};
	scale.invertExtent = function(y) {
		var i = range.indexOf(y);
		return [domain[i - 1], domain[i]];
	};
	scale.unknown = function(_) {
		return arguments.length ? (unknown = _, scale) : unknown;
	};
	scale.copy = function() {
		return threshold().domain(domain).range(range).unknown(unknown);
	};
	return initRange.apply(scale, arguments);
}
function date(t) {
	return new Date(t);
}
function number$2(t) {
	return t instanceof Date ? +t : Math.round(t);
}
function calendar(ticks, tickInterval, year, month, week, day, hour, minute, second, format) {
	var scale = continuous(), invert = scale.invert, domain = scale.domain;
	var formatMillisecond = format(".%L"), formatSecond = format(":%S"), formatMinute = format("%I:%M"), formatHour = format("%I %p"), formatDay = format("%a %d"), formatWeek = format("%b %d"), formatMonth = format("%B"), formatYear = format("%Y");
	function tickFormat(date) {
		return (second(date) < date ? formatMillisecond : minute(date) < date ? formatSecond : hour(date) < date ? formatMinute : day(date) < date ? formatHour : month(date) < date ? week(date) < date ? formatDay : formatWeek : year(date) < date ? formatMonth : formatYear)(date);
	}
	scale.invert = function(y) {
		return new Date(Math.round(invert(y)));
	};
	scale.domain = function(_) {
		return arguments.length ? domain(Array.from(_, number$2)) : domain().map(date);
	};
	scale.ticks = function(interval) {
		var d = domain();
		return ticks(d[0], d[d.length - 1], interval == null ? 10 : interval);
	};
	scale.tickFormat = function(count, specifier) {
		return specifier == null ? tickFormat : format(specifier);
	};
	scale.nice = function(interval) {
		var d = domain();
		if (!interval || typeof interval.range !== "function") interval = tickInterval(d[0], d[d.length - 1], interval == null ? 10 : interval);
		return interval ? domain(nice(d, interval)) : scale;
	};
	scale.copy = function() {
		return copy$1(scale, calendar(ticks, tickInterval, year, month, week, day, hour, minute, second, format));
	};
	return scale;
}
function time() {
	return initRange.apply(calendar(timeTicks, timeTickInterval, timeYear, timeMonth, timeSunday, timeDay, timeHour, timeMinute, second$1, timeFormat).domain([new Date(2e3, 0, 1), new Date(2e3, 0, 2)]), arguments);
}
function utcTime() {
	return initRange.apply(calendar(utcTicks, utcTickInterval, utcYear, utcMonth, utcSunday, utcDay, utcHour, utcMinute, second$1, utcFormat).domain([Date.UTC(2e3, 0, 1), Date.UTC(2e3, 0, 2)]), arguments);
}
function copy(source, target) {
	return target.domain(source.domain()).interpolator(source.interpolator()).clamp(source.clamp()).unknown(source.unknown());
}
function transformer() {
	var x0 = 0, x1 = .5, x2 = 1, s = 1, t0, t1, t2, k10, k21, interpolator = identity$1$1, transform, clamp = false, unknown;
	function scale(x) {
		return x == null || isNaN(x = +x) ? unknown : (x = .5 + ((x = +transform(x)) - t1) * (s * x < s * t1 ? k10 : k21), interpolator(clamp ? Math.max(0, Math.min(1, x)) : x));
	}
	scale.domain = function(_) {
		return arguments.length ? ([x0, x1, x2] = _, t0 = transform(x0 = +x0), t1 = transform(x1 = +x1), t2 = transform(x2 = +x2), k10 = t0 === t1 ? 0 : .5 / (t1 - t0), k21 = t1 === t2 ? 0 : .5 / (t2 - t1), s = t1 < t0 ? -1 : 1, scale) : [
			x0,
			x1,
			x2
		];
	};
	scale.clamp = function(_) {
		return arguments.length ? (clamp = !!_, scale) : clamp;
	};
	scale.interpolator = function(_) {
		return arguments.length ? (interpolator = _, scale) : interpolator;
	};
	function range(interpolate) {
		return function(_) {
			var r0, r1, r2;
			return arguments.length ? ([r0, r1, r2] = _, interpolator = piecewise(interpolate, [
				r0,
				r1,
				r2
			]), scale) : [
				interpolator(0),
				interpolator(.5),
				interpolator(1)
			];
		};
	}
	scale.range = range(value);
	scale.rangeRound = range(round);
	scale.unknown = function(_) {
		return arguments.length ? (unknown = _, scale) : unknown;
	};
	return function(t) {
		transform = t, t0 = t(x0), t1 = t(x1), t2 = t(x2), k10 = t0 === t1 ? 0 : .5 / (t1 - t0), k21 = t1 === t2 ? 0 : .5 / (t2 - t1), s = t1 < t0 ? -1 : 1;
		return scale;
	};
}
function diverging() {
	var scale = linearish(transformer()(identity$1$1));
	scale.copy = function() {
		return copy(scale, diverging());
	};
	return initInterpolator.apply(scale, arguments);
}
function divergingLog() {
	var scale = loggish(transformer()).domain([
		.1,
		1,
		10
	]);
	scale.copy = function() {
		return copy(scale, divergingLog()).base(scale.base());
	};
	return initInterpolator.apply(scale, arguments);
}
function divergingSymlog() {
	var scale = symlogish(transformer());
	scale.copy = function() {
		return copy(scale, divergingSymlog()).constant(scale.constant());
	};
	return initInterpolator.apply(scale, arguments);
}
function divergingPow() {
	var scale = powish(transformer());
	scale.copy = function() {
		return copy(scale, divergingPow()).exponent(scale.exponent());
	};
	return initInterpolator.apply(scale, arguments);
}
// ../../node_modules/.pnpm/d3-scale-chromatic@3.1.1/node_modules/d3-scale-chromatic/dist/d3-scale-chromatic.mjs
function colors(specifier) {
	var n = specifier.length / 6 | 0, colors = new Array(n), i = 0;
	while (i < n) colors[i] = "#" + specifier.slice(i * 6, ++i * 6);
	return colors;
}
var category10 = colors("1f77b4ff7f0e2ca02cd627289467bd8c564be377c27f7f7fbcbd2217becf");
var Accent = colors("7fc97fbeaed4fdc086ffff99386cb0f0027fbf5b17666666");
var Dark2 = colors("1b9e77d95f027570b3e7298a66a61ee6ab02a6761d666666");
var observable10 = colors("4269d0efb118ff725c6cc5b03ca951ff8ab7a463f297bbf59c6b4e9498a0");
var Paired = colors("a6cee31f78b4b2df8a33a02cfb9a99e31a1cfdbf6fff7f00cab2d66a3d9affff99b15928");
var Pastel1 = colors("fbb4aeb3cde3ccebc5decbe4fed9a6ffffcce5d8bdfddaecf2f2f2");
var Pastel2 = colors("b3e2cdfdcdaccbd5e8f4cae4e6f5c9fff2aef1e2cccccccc");
var Set1 = colors("e41a1c377eb84daf4a984ea3ff7f00ffff33a65628f781bf999999");
var Set2 = colors("66c2a5fc8d628da0cbe78ac3a6d854ffd92fe5c494b3b3b3");
var Set3 = colors("8dd3c7ffffb3bebadafb807280b1d3fdb462b3de69fccde5d9d9d9bc80bdccebc5ffed6f");
var Tableau10 = colors("4e79a7f28e2ce1575976b7b259a14fedc949af7aa1ff9da79c755fbab0ab");
var ramp$1 = (scheme) => rgbBasis(scheme[scheme.length - 1]);
var scheme$q = new Array(3).concat("d8b365f5f5f55ab4ac", "a6611adfc27d80cdc1018571", "a6611adfc27df5f5f580cdc1018571", "8c510ad8b365f6e8c3c7eae55ab4ac01665e", "8c510ad8b365f6e8c3f5f5f5c7eae55ab4ac01665e", "8c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e", "8c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e", "5430058c510abf812ddfc27df6e8c3c7eae580cdc135978f01665e003c30", "5430058c510abf812ddfc27df6e8c3f5f5f5c7eae580cdc135978f01665e003c30").map(colors);
var BrBG = ramp$1(scheme$q);
var scheme$p = new Array(3).concat("af8dc3f7f7f77fbf7b", "7b3294c2a5cfa6dba0008837", "7b3294c2a5cff7f7f7a6dba0008837", "762a83af8dc3e7d4e8d9f0d37fbf7b1b7837", "762a83af8dc3e7d4e8f7f7f7d9f0d37fbf7b1b7837", "762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b7837", "762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b7837", "40004b762a839970abc2a5cfe7d4e8d9f0d3a6dba05aae611b783700441b", "40004b762a839970abc2a5cfe7d4e8f7f7f7d9f0d3a6dba05aae611b783700441b").map(colors);
var PRGn = ramp$1(scheme$p);
var scheme$o = new Array(3).concat("e9a3c9f7f7f7a1d76a", "d01c8bf1b6dab8e1864dac26", "d01c8bf1b6daf7f7f7b8e1864dac26", "c51b7de9a3c9fde0efe6f5d0a1d76a4d9221", "c51b7de9a3c9fde0eff7f7f7e6f5d0a1d76a4d9221", "c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221", "c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221", "8e0152c51b7dde77aef1b6dafde0efe6f5d0b8e1867fbc414d9221276419", "8e0152c51b7dde77aef1b6dafde0eff7f7f7e6f5d0b8e1867fbc414d9221276419").map(colors);
var PiYG = ramp$1(scheme$o);
var scheme$n = new Array(3).concat("998ec3f7f7f7f1a340", "5e3c99b2abd2fdb863e66101", "5e3c99b2abd2f7f7f7fdb863e66101", "542788998ec3d8daebfee0b6f1a340b35806", "542788998ec3d8daebf7f7f7fee0b6f1a340b35806", "5427888073acb2abd2d8daebfee0b6fdb863e08214b35806", "5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b35806", "2d004b5427888073acb2abd2d8daebfee0b6fdb863e08214b358067f3b08", "2d004b5427888073acb2abd2d8daebf7f7f7fee0b6fdb863e08214b358067f3b08").map(colors);
var PuOr = ramp$1(scheme$n);
var scheme$m = new Array(3).concat("ef8a62f7f7f767a9cf", "ca0020f4a58292c5de0571b0", "ca0020f4a582f7f7f792c5de0571b0", "b2182bef8a62fddbc7d1e5f067a9cf2166ac", "b2182bef8a62fddbc7f7f7f7d1e5f067a9cf2166ac", "b2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac", "b2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac", "67001fb2182bd6604df4a582fddbc7d1e5f092c5de4393c32166ac053061", "67001fb2182bd6604df4a582fddbc7f7f7f7d1e5f092c5de4393c32166ac053061").map(colors);
var RdBu = ramp$1(scheme$m);
var scheme$l = new Array(3).concat("ef8a62ffffff999999", "ca0020f4a582bababa404040", "ca0020f4a582ffffffbababa404040", "b2182bef8a62fddbc7e0e0e09999994d4d4d", "b2182bef8a62fddbc7ffffffe0e0e09999994d4d4d", "b2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d", "b2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d", "67001fb2182bd6604df4a582fddbc7e0e0e0bababa8787874d4d4d1a1a1a", "67001fb2182bd6604df4a582fddbc7ffffffe0e0e0bababa8787874d4d4d1a1a1a").map(colors);
var RdGy = ramp$1(scheme$l);
var scheme$k = new Array(3).concat("fc8d59ffffbf91bfdb", "d7191cfdae61abd9e92c7bb6", "d7191cfdae61ffffbfabd9e92c7bb6", "d73027fc8d59fee090e0f3f891bfdb4575b4", "d73027fc8d59fee090ffffbfe0f3f891bfdb4575b4", "d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4", "d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4", "a50026d73027f46d43fdae61fee090e0f3f8abd9e974add14575b4313695", "a50026d73027f46d43fdae61fee090ffffbfe0f3f8abd9e974add14575b4313695").map(colors);
var RdYlBu = ramp$1(scheme$k);
var scheme$j = new Array(3).concat("fc8d59ffffbf91cf60", "d7191cfdae61a6d96a1a9641", "d7191cfdae61ffffbfa6d96a1a9641", "d73027fc8d59fee08bd9ef8b91cf601a9850", "d73027fc8d59fee08bffffbfd9ef8b91cf601a9850", "d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850", "d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850", "a50026d73027f46d43fdae61fee08bd9ef8ba6d96a66bd631a9850006837", "a50026d73027f46d43fdae61fee08bffffbfd9ef8ba6d96a66bd631a9850006837").map(colors);
var RdYlGn = ramp$1(scheme$j);
var scheme$i = new Array(3).concat("fc8d59ffffbf99d594", "d7191cfdae61abdda42b83ba", "d7191cfdae61ffffbfabdda42b83ba", "d53e4ffc8d59fee08be6f59899d5943288bd", "d53e4ffc8d59fee08bffffbfe6f59899d5943288bd", "d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd", "d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd", "9e0142d53e4ff46d43fdae61fee08be6f598abdda466c2a53288bd5e4fa2", "9e0142d53e4ff46d43fdae61fee08bffffbfe6f598abdda466c2a53288bd5e4fa2").map(colors);
var Spectral = ramp$1(scheme$i);
var scheme$h = new Array(3).concat("e5f5f999d8c92ca25f", "edf8fbb2e2e266c2a4238b45", "edf8fbb2e2e266c2a42ca25f006d2c", "edf8fbccece699d8c966c2a42ca25f006d2c", "edf8fbccece699d8c966c2a441ae76238b45005824", "f7fcfde5f5f9ccece699d8c966c2a441ae76238b45005824", "f7fcfde5f5f9ccece699d8c966c2a441ae76238b45006d2c00441b").map(colors);
var BuGn = ramp$1(scheme$h);
var scheme$g = new Array(3).concat("e0ecf49ebcda8856a7", "edf8fbb3cde38c96c688419d", "edf8fbb3cde38c96c68856a7810f7c", "edf8fbbfd3e69ebcda8c96c68856a7810f7c", "edf8fbbfd3e69ebcda8c96c68c6bb188419d6e016b", "f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d6e016b", "f7fcfde0ecf4bfd3e69ebcda8c96c68c6bb188419d810f7c4d004b").map(colors);
var BuPu = ramp$1(scheme$g);
var scheme$f = new Array(3).concat("e0f3dba8ddb543a2ca", "f0f9e8bae4bc7bccc42b8cbe", "f0f9e8bae4bc7bccc443a2ca0868ac", "f0f9e8ccebc5a8ddb57bccc443a2ca0868ac", "f0f9e8ccebc5a8ddb57bccc44eb3d32b8cbe08589e", "f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe08589e", "f7fcf0e0f3dbccebc5a8ddb57bccc44eb3d32b8cbe0868ac084081").map(colors);
var GnBu = ramp$1(scheme$f);
var scheme$e = new Array(3).concat("fee8c8fdbb84e34a33", "fef0d9fdcc8afc8d59d7301f", "fef0d9fdcc8afc8d59e34a33b30000", "fef0d9fdd49efdbb84fc8d59e34a33b30000", "fef0d9fdd49efdbb84fc8d59ef6548d7301f990000", "fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301f990000", "fff7ecfee8c8fdd49efdbb84fc8d59ef6548d7301fb300007f0000").map(colors);
var OrRd = ramp$1(scheme$e);
var scheme$d = new Array(3).concat("ece2f0a6bddb1c9099", "f6eff7bdc9e167a9cf02818a", "f6eff7bdc9e167a9cf1c9099016c59", "f6eff7d0d1e6a6bddb67a9cf1c9099016c59", "f6eff7d0d1e6a6bddb67a9cf3690c002818a016450", "fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016450", "fff7fbece2f0d0d1e6a6bddb67a9cf3690c002818a016c59014636").map(colors);
var PuBuGn = ramp$1(scheme$d);
var scheme$c = new Array(3).concat("ece7f2a6bddb2b8cbe", "f1eef6bdc9e174a9cf0570b0", "f1eef6bdc9e174a9cf2b8cbe045a8d", "f1eef6d0d1e6a6bddb74a9cf2b8cbe045a8d", "f1eef6d0d1e6a6bddb74a9cf3690c00570b0034e7b", "fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0034e7b", "fff7fbece7f2d0d1e6a6bddb74a9cf3690c00570b0045a8d023858").map(colors);
var PuBu = ramp$1(scheme$c);
var scheme$b = new Array(3).concat("e7e1efc994c7dd1c77", "f1eef6d7b5d8df65b0ce1256", "f1eef6d7b5d8df65b0dd1c77980043", "f1eef6d4b9dac994c7df65b0dd1c77980043", "f1eef6d4b9dac994c7df65b0e7298ace125691003f", "f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125691003f", "f7f4f9e7e1efd4b9dac994c7df65b0e7298ace125698004367001f").map(colors);
var PuRd = ramp$1(scheme$b);
var scheme$a = new Array(3).concat("fde0ddfa9fb5c51b8a", "feebe2fbb4b9f768a1ae017e", "feebe2fbb4b9f768a1c51b8a7a0177", "feebe2fcc5c0fa9fb5f768a1c51b8a7a0177", "feebe2fcc5c0fa9fb5f768a1dd3497ae017e7a0177", "fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a0177", "fff7f3fde0ddfcc5c0fa9fb5f768a1dd3497ae017e7a017749006a").map(colors);
var RdPu = ramp$1(scheme$a);
var scheme$9 = new Array(3).concat("edf8b17fcdbb2c7fb8", "ffffcca1dab441b6c4225ea8", "ffffcca1dab441b6c42c7fb8253494", "ffffccc7e9b47fcdbb41b6c42c7fb8253494", "ffffccc7e9b47fcdbb41b6c41d91c0225ea80c2c84", "ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea80c2c84", "ffffd9edf8b1c7e9b47fcdbb41b6c41d91c0225ea8253494081d58").map(colors);
var YlGnBu = ramp$1(scheme$9);
var scheme$8 = new Array(3).concat("f7fcb9addd8e31a354", "ffffccc2e69978c679238443", "ffffccc2e69978c67931a354006837", "ffffccd9f0a3addd8e78c67931a354006837", "ffffccd9f0a3addd8e78c67941ab5d238443005a32", "ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443005a32", "ffffe5f7fcb9d9f0a3addd8e78c67941ab5d238443006837004529").map(colors);
var YlGn = ramp$1(scheme$8);
var scheme$7 = new Array(3).concat("fff7bcfec44fd95f0e", "ffffd4fed98efe9929cc4c02", "ffffd4fed98efe9929d95f0e993404", "ffffd4fee391fec44ffe9929d95f0e993404", "ffffd4fee391fec44ffe9929ec7014cc4c028c2d04", "ffffe5fff7bcfee391fec44ffe9929ec7014cc4c028c2d04", "ffffe5fff7bcfee391fec44ffe9929ec7014cc4c02993404662506").map(colors);
var YlOrBr = ramp$1(scheme$7);
var scheme$6 = new Array(3).concat("ffeda0feb24cf03b20", "ffffb2fecc5cfd8d3ce31a1c", "ffffb2fecc5cfd8d3cf03b20bd0026", "ffffb2fed976feb24cfd8d3cf03b20bd0026", "ffffb2fed976feb24cfd8d3cfc4e2ae31a1cb10026", "ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cb10026", "ffffccffeda0fed976feb24cfd8d3cfc4e2ae31a1cbd0026800026").map(colors);
var YlOrRd = ramp$1(scheme$6);
var scheme$5 = new Array(3).concat("deebf79ecae13182bd", "eff3ffbdd7e76baed62171b5", "eff3ffbdd7e76baed63182bd08519c", "eff3ffc6dbef9ecae16baed63182bd08519c", "eff3ffc6dbef9ecae16baed64292c62171b5084594", "f7fbffdeebf7c6dbef9ecae16baed64292c62171b5084594", "f7fbffdeebf7c6dbef9ecae16baed64292c62171b508519c08306b").map(colors);
var Blues = ramp$1(scheme$5);
var scheme$4 = new Array(3).concat("e5f5e0a1d99b31a354", "edf8e9bae4b374c476238b45", "edf8e9bae4b374c47631a354006d2c", "edf8e9c7e9c0a1d99b74c47631a354006d2c", "edf8e9c7e9c0a1d99b74c47641ab5d238b45005a32", "f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45005a32", "f7fcf5e5f5e0c7e9c0a1d99b74c47641ab5d238b45006d2c00441b").map(colors);
var Greens = ramp$1(scheme$4);
var scheme$3 = new Array(3).concat("f0f0f0bdbdbd636363", "f7f7f7cccccc969696525252", "f7f7f7cccccc969696636363252525", "f7f7f7d9d9d9bdbdbd969696636363252525", "f7f7f7d9d9d9bdbdbd969696737373525252252525", "fffffff0f0f0d9d9d9bdbdbd969696737373525252252525", "fffffff0f0f0d9d9d9bdbdbd969696737373525252252525000000").map(colors);
var Greys = ramp$1(scheme$3);
var scheme$2 = new Array(3).concat("efedf5bcbddc756bb1", "f2f0f7cbc9e29e9ac86a51a3", "f2f0f7cbc9e29e9ac8756bb154278f", "f2f0f7dadaebbcbddc9e9ac8756bb154278f", "f2f0f7dadaebbcbddc9e9ac8807dba6a51a34a1486", "fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a34a1486", "fcfbfdefedf5dadaebbcbddc9e9ac8807dba6a51a354278f3f007d").map(colors);
var Purples = ramp$1(scheme$2);
var scheme$1 = new Array(3).concat("fee0d2fc9272de2d26", "fee5d9fcae91fb6a4acb181d", "fee5d9fcae91fb6a4ade2d26a50f15", "fee5d9fcbba1fc9272fb6a4ade2d26a50f15", "fee5d9fcbba1fc9272fb6a4aef3b2ccb181d99000d", "fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181d99000d", "fff5f0fee0d2fcbba1fc9272fb6a4aef3b2ccb181da50f1567000d").map(colors);
var Reds = ramp$1(scheme$1);
var scheme = new Array(3).concat("fee6cefdae6be6550d", "feeddefdbe85fd8d3cd94701", "feeddefdbe85fd8d3ce6550da63603", "feeddefdd0a2fdae6bfd8d3ce6550da63603", "feeddefdd0a2fdae6bfd8d3cf16913d948018c2d04", "fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d948018c2d04", "fff5ebfee6cefdd0a2fdae6bfd8d3cf16913d94801a636037f2704").map(colors);
var Oranges = ramp$1(scheme);
function cividis(t) {
	t = Math.max(0, Math.min(1, t));
	return "rgb(" + Math.max(0, Math.min(255, Math.round(-4.54 - t * (35.34 - t * (2381.73 - t * (6402.7 - t * (7024.72 - t * 2710.57))))))) + ", " + Math.max(0, Math.min(255, Math.round(32.49 + t * (170.73 + t * (52.82 - t * (131.46 - t * (176.58 - t * 67.37))))))) + ", " + Math.max(0, Math.min(255, Math.round(81.24 + t * (442.36 - t * (2482.43 - t * (6167.24 - t * (6614.94 - t * 2475.67))))))) + ")";
}
var cubehelix = cubehelixLong(cubehelix$1(300, .5, 0), cubehelix$1(-240, .5, 1));
var warm = cubehelixLong(cubehelix$1(-100, .75, .35), cubehelix$1(80, 1.5, .8));
var cool = cubehelixLong(cubehelix$1(260, .75, .35), cubehelix$1(80, 1.5, .8));
var c$1 = cubehelix$1();
function rainbow(t) {
	if (t < 0 || t > 1) t -= Math.floor(t);
	var ts = Math.abs(t - .5);
	c$1.h = 360 * t - 100;
	c$1.s = 1.5 - 1.5 * ts;
	c$1.l = .8 - .9 * ts;
	return c$1 + "";
}
var c$2 = rgb$1();
var pi_1_3 = Math.PI / 3;
var pi_2_3 = Math.PI * 2 / 3;
function sinebow(t) {
	var x;
	t = (.5 - t) * Math.PI;
	c$2.r = 255 * (x = Math.sin(t)) * x;
	c$2.g = 255 * (x = Math.sin(t + pi_1_3)) * x;
	c$2.b = 255 * (x = Math.sin(t + pi_2_3)) * x;
	return c$2 + "";
}
function turbo(t) {
	t = Math.max(0, Math.min(1, t));
	return "rgb(" + Math.max(0, Math.min(255, Math.round(34.61 + t * (1172.33 - t * (10793.56 - t * (33300.12 - t * (38394.49 - t * 14825.05))))))) + ", " + Math.max(0, Math.min(255, Math.round(23.31 + t * (557.33 + t * (1225.33 - t * (3574.96 - t * (1073.77 + t * 707.56))))))) + ", " + Math.max(0, Math.min(255, Math.round(27.2 + t * (3211.1 - t * (15327.97 - t * (27814 - t * (22569.18 - t * 6838.66))))))) + ")";
}
function ramp(range) {
	var n = range.length;
	return function(t) {
		return range[Math.max(0, Math.min(n - 1, Math.floor(t * n)))];
	};
}
var viridis = ramp(colors("44015444025645045745055946075a46085c460a5d460b5e470d60470e6147106347116447136548146748166848176948186a481a6c481b6d481c6e481d6f481f70482071482173482374482475482576482677482878482979472a7a472c7a472d7b472e7c472f7d46307e46327e46337f463480453581453781453882443983443a83443b84433d84433e85423f854240864241864142874144874045884046883f47883f48893e49893e4a893e4c8a3d4d8a3d4e8a3c4f8a3c508b3b518b3b528b3a538b3a548c39558c39568c38588c38598c375a8c375b8d365c8d365d8d355e8d355f8d34608d34618d33628d33638d32648e32658e31668e31678e31688e30698e306a8e2f6b8e2f6c8e2e6d8e2e6e8e2e6f8e2d708e2d718e2c718e2c728e2c738e2b748e2b758e2a768e2a778e2a788e29798e297a8e297b8e287c8e287d8e277e8e277f8e27808e26818e26828e26828e25838e25848e25858e24868e24878e23888e23898e238a8d228b8d228c8d228d8d218e8d218f8d21908d21918c20928c20928c20938c1f948c1f958b1f968b1f978b1f988b1f998a1f9a8a1e9b8a1e9c891e9d891f9e891f9f881fa0881fa1881fa1871fa28720a38620a48621a58521a68522a78522a88423a98324aa8325ab8225ac8226ad8127ad8128ae8029af7f2ab07f2cb17e2db27d2eb37c2fb47c31b57b32b67a34b67935b77937b87838b9773aba763bbb753dbc743fbc7340bd7242be7144bf7046c06f48c16e4ac16d4cc26c4ec36b50c46a52c56954c56856c66758c7655ac8645cc8635ec96260ca6063cb5f65cb5e67cc5c69cd5b6ccd5a6ece5870cf5773d05675d05477d1537ad1517cd2507fd34e81d34d84d44b86d54989d5488bd6468ed64590d74393d74195d84098d83e9bd93c9dd93ba0da39a2da37a5db36a8db34aadc32addc30b0dd2fb2dd2db5de2bb8de29bade28bddf26c0df25c2df23c5e021c8e020cae11fcde11dd0e11cd2e21bd5e21ad8e219dae319dde318dfe318e2e418e5e419e7e419eae51aece51befe51cf1e51df4e61ef6e620f8e621fbe723fde725"));
var magma = ramp(colors("00000401000501010601010802010902020b02020d03030f03031204041405041606051806051a07061c08071e0907200a08220b09240c09260d0a290e0b2b100b2d110c2f120d31130d34140e36150e38160f3b180f3d19103f1a10421c10441d11471e114920114b21114e22115024125325125527125829115a2a115c2c115f2d11612f116331116533106734106936106b38106c390f6e3b0f703d0f713f0f72400f74420f75440f764510774710784910784a10794c117a4e117b4f127b51127c52137c54137d56147d57157e59157e5a167e5c167f5d177f5f187f601880621980641a80651a80671b80681c816a1c816b1d816d1d816e1e81701f81721f817320817521817621817822817922827b23827c23827e24828025828125818326818426818627818827818928818b29818c29818e2a81902a81912b81932b80942c80962c80982d80992d809b2e7f9c2e7f9e2f7fa02f7fa1307ea3307ea5317ea6317da8327daa337dab337cad347cae347bb0357bb2357bb3367ab5367ab73779b83779ba3878bc3978bd3977bf3a77c03a76c23b75c43c75c53c74c73d73c83e73ca3e72cc3f71cd4071cf4070d0416fd2426fd3436ed5446dd6456cd8456cd9466bdb476adc4869de4968df4a68e04c67e24d66e34e65e44f64e55064e75263e85362e95462ea5661eb5760ec5860ed5a5fee5b5eef5d5ef05f5ef1605df2625df2645cf3655cf4675cf4695cf56b5cf66c5cf66e5cf7705cf7725cf8745cf8765cf9785df9795df97b5dfa7d5efa7f5efa815ffb835ffb8560fb8761fc8961fc8a62fc8c63fc8e64fc9065fd9266fd9467fd9668fd9869fd9a6afd9b6bfe9d6cfe9f6dfea16efea36ffea571fea772fea973feaa74feac76feae77feb078feb27afeb47bfeb67cfeb77efeb97ffebb81febd82febf84fec185fec287fec488fec68afec88cfeca8dfecc8ffecd90fecf92fed194fed395fed597fed799fed89afdda9cfddc9efddea0fde0a1fde2a3fde3a5fde5a7fde7a9fde9aafdebacfcecaefceeb0fcf0b2fcf2b4fcf4b6fcf6b8fcf7b9fcf9bbfcfbbdfcfdbf"));
var inferno = ramp(colors("00000401000501010601010802010a02020c02020e03021004031204031405041706041907051b08051d09061f0a07220b07240c08260d08290e092b10092d110a30120a32140b34150b37160b39180c3c190c3e1b0c411c0c431e0c451f0c48210c4a230c4c240c4f260c51280b53290b552b0b572d0b592f0a5b310a5c320a5e340a5f3609613809623909633b09643d09653e0966400a67420a68440a68450a69470b6a490b6a4a0c6b4c0c6b4d0d6c4f0d6c510e6c520e6d540f6d550f6d57106e59106e5a116e5c126e5d126e5f136e61136e62146e64156e65156e67166e69166e6a176e6c186e6d186e6f196e71196e721a6e741a6e751b6e771c6d781c6d7a1d6d7c1d6d7d1e6d7f1e6c801f6c82206c84206b85216b87216b88226a8a226a8c23698d23698f24699025689225689326679526679727669827669a28659b29649d29649f2a63a02a63a22b62a32c61a52c60a62d60a82e5fa92e5eab2f5ead305dae305cb0315bb1325ab3325ab43359b63458b73557b93556ba3655bc3754bd3853bf3952c03a51c13a50c33b4fc43c4ec63d4dc73e4cc83f4bca404acb4149cc4248ce4347cf4446d04545d24644d34743d44842d54a41d74b3fd84c3ed94d3dda4e3cdb503bdd513ade5238df5337e05536e15635e25734e35933e45a31e55c30e65d2fe75e2ee8602de9612bea632aeb6429eb6628ec6726ed6925ee6a24ef6c23ef6e21f06f20f1711ff1731df2741cf3761bf37819f47918f57b17f57d15f67e14f68013f78212f78410f8850ff8870ef8890cf98b0bf98c0af98e09fa9008fa9207fa9407fb9606fb9706fb9906fb9b06fb9d07fc9f07fca108fca309fca50afca60cfca80dfcaa0ffcac11fcae12fcb014fcb216fcb418fbb61afbb81dfbba1ffbbc21fbbe23fac026fac228fac42afac62df9c72ff9c932f9cb35f8cd37f8cf3af7d13df7d340f6d543f6d746f5d949f5db4cf4dd4ff4df53f4e156f3e35af3e55df2e661f2e865f2ea69f1ec6df1ed71f1ef75f1f179f2f27df2f482f3f586f3f68af4f88ef5f992f6fa96f8fb9af9fc9dfafda1fcffa4"));
var plasma = ramp(colors("0d088710078813078916078a19068c1b068d1d068e20068f2206902406912605912805922a05932c05942e05952f059631059733059735049837049938049a3a049a3c049b3e049c3f049c41049d43039e44039e46039f48039f4903a04b03a14c02a14e02a25002a25102a35302a35502a45601a45801a45901a55b01a55c01a65e01a66001a66100a76300a76400a76600a76700a86900a86a00a86c00a86e00a86f00a87100a87201a87401a87501a87701a87801a87a02a87b02a87d03a87e03a88004a88104a78305a78405a78606a68707a68808a68a09a58b0aa58d0ba58e0ca48f0da4910ea3920fa39410a29511a19613a19814a099159f9a169f9c179e9d189d9e199da01a9ca11b9ba21d9aa31e9aa51f99a62098a72197a82296aa2395ab2494ac2694ad2793ae2892b02991b12a90b22b8fb32c8eb42e8db52f8cb6308bb7318ab83289ba3388bb3488bc3587bd3786be3885bf3984c03a83c13b82c23c81c33d80c43e7fc5407ec6417dc7427cc8437bc9447aca457acb4679cc4778cc4977cd4a76ce4b75cf4c74d04d73d14e72d24f71d35171d45270d5536fd5546ed6556dd7566cd8576bd9586ada5a6ada5b69db5c68dc5d67dd5e66de5f65de6164df6263e06363e16462e26561e26660e3685fe4695ee56a5de56b5de66c5ce76e5be76f5ae87059e97158e97257ea7457eb7556eb7655ec7754ed7953ed7a52ee7b51ef7c51ef7e50f07f4ff0804ef1814df1834cf2844bf3854bf3874af48849f48948f58b47f58c46f68d45f68f44f79044f79143f79342f89441f89540f9973ff9983ef99a3efa9b3dfa9c3cfa9e3bfb9f3afba139fba238fca338fca537fca636fca835fca934fdab33fdac33fdae32fdaf31fdb130fdb22ffdb42ffdb52efeb72dfeb82cfeba2cfebb2bfebd2afebe2afec029fdc229fdc328fdc527fdc627fdc827fdca26fdcb26fccd25fcce25fcd025fcd225fbd324fbd524fbd724fad824fada24f9dc24f9dd25f8df25f8e125f7e225f7e425f6e626f6e826f5e926f5eb27f4ed27f3ee27f3f027f2f227f1f426f1f525f0f724f0f921"));
// ../../node_modules/.pnpm/d3-shape@3.2.1/node_modules/d3-shape/dist/d3-shape.mjs
function constant$1(x) {
	return function constant() {
		return x;
	};
}
var cos = Math.cos;
var min = Math.min;
var sin = Math.sin;
var sqrt = Math.sqrt;
var epsilon = 1e-12;
var pi$1 = Math.PI;
pi$1 / 2;
var tau$1 = 2 * pi$1;
function withPath(shape) {
	let digits = 3;
	shape.digits = function(_) {
		if (!arguments.length) return digits;
		if (_ == null) digits = null;
		else {
			const d = Math.floor(_);
			if (!(d >= 0)) throw new RangeError(`invalid digits: ${_}`);
			digits = d;
		}
		return shape;
	};
	return () => new Path(digits);
}
Array.prototype.slice;
function array(x) {
	return typeof x === "object" && "length" in x ? x : Array.from(x);
}
function Linear(context) {
	this._context = context;
}
Linear.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._point = 0;
	},
	lineEnd: function() {
		if (this._line || this._line !== 0 && this._point === 1) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				this._line ? this._context.lineTo(x, y) : this._context.moveTo(x, y);
				break;
			case 1: this._point = 2;
			default: this._context.lineTo(x, y);
		}
	}
};
function curveLinear(context) {
	return new Linear(context);
}
function x(p) {
	return p[0];
}
function y(p) {
	return p[1];
}
function line$1(x$1, y$1) {
	var defined = constant$1(true), context = null, curve = curveLinear, output = null, path = withPath(line);
	x$1 = typeof x$1 === "function" ? x$1 : x$1 === void 0 ? x : constant$1(x$1);
	y$1 = typeof y$1 === "function" ? y$1 : y$1 === void 0 ? y : constant$1(y$1);
	function line(data) {
		var i, n = (data = array(data)).length, d, defined0 = false, buffer;
		if (context == null) output = curve(buffer = path());
		for (i = 0; i <= n; ++i) {
			if (!(i < n && defined(d = data[i], i, data)) === defined0) {
				if (defined0 = !defined0) output.lineStart();
				else output.lineEnd();
			}
			if (defined0) output.point(+x$1(d, i, data), +y$1(d, i, data));
		}
		if (buffer) return output = null, buffer + "" || null;
	}
	line.x = function(_) {
		return arguments.length ? (x$1 = typeof _ === "function" ? _ : constant$1(+_), line) : x$1;
	};
	line.y = function(_) {
		return arguments.length ? (y$1 = typeof _ === "function" ? _ : constant$1(+_), line) : y$1;
	};
	line.defined = function(_) {
		return arguments.length ? (defined = typeof _ === "function" ? _ : constant$1(!!_), line) : defined;
	};
	line.curve = function(_) {
		return arguments.length ? (curve = _, context != null && (output = curve(context)), line) : curve;
	};
	line.context = function(_) {
		return arguments.length ? (_ == null ? context = output = null : output = curve(context = _), line) : context;
	};
	return line;
}
function area(x0, y0, y1) {
	var x1 = null, defined = constant$1(true), context = null, curve = curveLinear, output = null, path = withPath(area);
	x0 = typeof x0 === "function" ? x0 : x0 === void 0 ? x : constant$1(+x0);
	y0 = typeof y0 === "function" ? y0 : y0 === void 0 ? constant$1(0) : constant$1(+y0);
	y1 = typeof y1 === "function" ? y1 : y1 === void 0 ? y : constant$1(+y1);
	function area(data) {
		var i, j, k, n = (data = array(data)).length, d, defined0 = false, buffer, x0z = new Array(n), y0z = new Array(n);
		if (context == null) output = curve(buffer = path());
		for (i = 0; i <= n; ++i) {
			if (!(i < n && defined(d = data[i], i, data)) === defined0) {
				if (defined0 = !defined0) {
					j = i;
					output.areaStart();
					output.lineStart();
				} else {
					output.lineEnd();
					output.lineStart();
					for (k = i - 1; k >= j; --k) output.point(x0z[k], y0z[k]);
					output.lineEnd();
					output.areaEnd();
				}
			}
			if (defined0) {
				x0z[i] = +x0(d, i, data), y0z[i] = +y0(d, i, data);
				output.point(x1 ? +x1(d, i, data) : x0z[i], y1 ? +y1(d, i, data) : y0z[i]);
			}
		}
		if (buffer) return output = null, buffer + "" || null;
	}
	function arealine() {
		return line$1().defined(defined).curve(curve).context(context);
	}
	area.x = function(_) {
		return arguments.length ? (x0 = typeof _ === "function" ? _ : constant$1(+_), x1 = null, area) : x0;
	};
	area.x0 = function(_) {
		return arguments.length ? (x0 = typeof _ === "function" ? _ : constant$1(+_), area) : x0;
	};
	area.x1 = function(_) {
		return arguments.length ? (x1 = _ == null ? null : typeof _ === "function" ? _ : constant$1(+_), area) : x1;
	};
	area.y = function(_) {
		return arguments.length ? (y0 = typeof _ === "function" ? _ : constant$1(+_), y1 = null, area) : y0;
	};
	area.y0 = function(_) {
		return arguments.length ? (y0 = typeof _ === "function" ? _ : constant$1(+_), area) : y0;
	};
	area.y1 = function(_) {
		return arguments.length ? (y1 = _ == null ? null : typeof _ === "function" ? _ : constant$1(+_), area) : y1;
	};
	area.lineX0 = area.lineY0 = function() {
		return arealine().x(x0).y(y0);
	};
	area.lineY1 = function() {
		return arealine().x(x0).y(y1);
	};
	area.lineX1 = function() {
		return arealine().x(x1).y(y0);
	};
	area.defined = function(_) {
		return arguments.length ? (defined = typeof _ === "function" ? _ : constant$1(!!_), area) : defined;
	};
	area.curve = function(_) {
		return arguments.length ? (curve = _, context != null && (output = curve(context)), area) : curve;
	};
	area.context = function(_) {
		return arguments.length ? (_ == null ? context = output = null : output = curve(context = _), area) : context;
	};
	return area;
}
curveRadial(curveLinear);
function Radial(curve) {
	this._curve = curve;
}
Radial.prototype = {
	areaStart: function() {
		this._curve.areaStart();
	},
	areaEnd: function() {
		this._curve.areaEnd();
	},
	lineStart: function() {
		this._curve.lineStart();
	},
	lineEnd: function() {
		this._curve.lineEnd();
	},
	point: function(a, r) {
		this._curve.point(r * Math.sin(a), r * -Math.cos(a));
	}
};
function curveRadial(curve) {
	function radial(context) {
		return new Radial(curve(context));
	}
	radial._curve = curve;
	return radial;
}
var Bump = class {
	constructor(context, x) {
		this._context = context;
		this._x = x;
	}
	areaStart() {
		this._line = 0;
	}
	areaEnd() {
		this._line = NaN;
	}
	lineStart() {
		this._point = 0;
	}
	lineEnd() {
		if (this._line || this._line !== 0 && this._point === 1) this._context.closePath();
		this._line = 1 - this._line;
	}
	point(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				if (this._line) this._context.lineTo(x, y);
				else this._context.moveTo(x, y);
				break;
			case 1: this._point = 2;
			default: if (this._x) this._context.bezierCurveTo(this._x0 = (this._x0 + x) / 2, this._y0, this._x0, y, x, y);
			else this._context.bezierCurveTo(this._x0, this._y0 = (this._y0 + y) / 2, x, this._y0, x, y);
		}
		this._x0 = x, this._y0 = y;
	}
};
function bumpX(context) {
	return new Bump(context, true);
}
function bumpY(context) {
	return new Bump(context, false);
}
var sqrt3$2 = sqrt(3);
var asterisk = { draw(context, size) {
	const r = sqrt(size + min(size / 28, .75)) * .59436;
	const t = r / 2;
	const u = t * sqrt3$2;
	context.moveTo(0, r);
	context.lineTo(0, -r);
	context.moveTo(-u, -t);
	context.lineTo(u, t);
	context.moveTo(-u, t);
	context.lineTo(u, -t);
} };
var circle = { draw(context, size) {
	const r = sqrt(size / pi$1);
	context.moveTo(r, 0);
	context.arc(0, 0, r, 0, tau$1);
} };
var cross = { draw(context, size) {
	const r = sqrt(size / 5) / 2;
	context.moveTo(-3 * r, -r);
	context.lineTo(-r, -r);
	context.lineTo(-r, -3 * r);
	context.lineTo(r, -3 * r);
	context.lineTo(r, -r);
	context.lineTo(3 * r, -r);
	context.lineTo(3 * r, r);
	context.lineTo(r, r);
	context.lineTo(r, 3 * r);
	context.lineTo(-r, 3 * r);
	context.lineTo(-r, r);
	context.lineTo(-3 * r, r);
	context.closePath();
} };
var tan30 = sqrt(1 / 3);
var tan30_2 = tan30 * 2;
var diamond = { draw(context, size) {
	const y = sqrt(size / tan30_2);
	const x = y * tan30;
	context.moveTo(0, -y);
	context.lineTo(x, 0);
	context.lineTo(0, y);
	context.lineTo(-x, 0);
	context.closePath();
} };
var diamond2 = { draw(context, size) {
	const r = sqrt(size) * .62625;
	context.moveTo(0, -r);
	context.lineTo(r, 0);
	context.lineTo(0, r);
	context.lineTo(-r, 0);
	context.closePath();
} };
var plus = { draw(context, size) {
	const r = sqrt(size - min(size / 7, 2)) * .87559;
	context.moveTo(-r, 0);
	context.lineTo(r, 0);
	context.moveTo(0, r);
	context.lineTo(0, -r);
} };
var square = { draw(context, size) {
	const w = sqrt(size);
	const x = -w / 2;
	context.rect(x, x, w, w);
} };
var square2 = { draw(context, size) {
	const r = sqrt(size) * .4431;
	context.moveTo(r, r);
	context.lineTo(r, -r);
	context.lineTo(-r, -r);
	context.lineTo(-r, r);
	context.closePath();
} };
var ka = .8908130915292852;
var kr = sin(pi$1 / 10) / sin(7 * pi$1 / 10);
var kx = sin(tau$1 / 10) * kr;
var ky = -cos(tau$1 / 10) * kr;
var star = { draw(context, size) {
	const r = sqrt(size * ka);
	const x = kx * r;
	const y = ky * r;
	context.moveTo(0, -r);
	context.lineTo(x, y);
	for (let i = 1; i < 5; ++i) {
		const a = tau$1 * i / 5;
		const c = cos(a);
		const s = sin(a);
		context.lineTo(s * r, -c * r);
		context.lineTo(c * x - s * y, s * x + c * y);
	}
	context.closePath();
} };
var sqrt3$1 = sqrt(3);
var triangle = { draw(context, size) {
	const y = -sqrt(size / (sqrt3$1 * 3));
	context.moveTo(0, y * 2);
	context.lineTo(-sqrt3$1 * y, -y);
	context.lineTo(sqrt3$1 * y, -y);
	context.closePath();
} };
var sqrt3$3 = sqrt(3);
var triangle2 = { draw(context, size) {
	const s = sqrt(size) * .6824;
	const t = s / 2;
	const u = s * sqrt3$3 / 2;
	context.moveTo(0, -s);
	context.lineTo(u, t);
	context.lineTo(-u, t);
	context.closePath();
} };
var c = -.5;
var s = sqrt(3) / 2;
var k = 1 / sqrt(12);
var a = (k / 2 + 1) * 3;
var wye = { draw(context, size) {
	const r = sqrt(size / a);
	const x0 = r / 2, y0 = r * k;
	const x1 = x0, y1 = r * k + r;
	const x2 = -x1, y2 = y1;
	context.moveTo(x0, y0);
	context.lineTo(x1, y1);
	context.lineTo(x2, y2);
	context.lineTo(c * x0 - s * y0, s * x0 + c * y0);
	context.lineTo(c * x1 - s * y1, s * x1 + c * y1);
	context.lineTo(c * x2 - s * y2, s * x2 + c * y2);
	context.lineTo(c * x0 + s * y0, c * y0 - s * x0);
	context.lineTo(c * x1 + s * y1, c * y1 - s * x1);
	context.lineTo(c * x2 + s * y2, c * y2 - s * x2);
	context.closePath();
} };
var times = { draw(context, size) {
	const r = sqrt(size - min(size / 6, 1.7)) * .6189;
	context.moveTo(-r, -r);
	context.lineTo(r, r);
	context.moveTo(-r, r);
	context.lineTo(r, -r);
} };
var symbolsFill = [
	circle,
	cross,
	diamond,
	square,
	star,
	triangle,
	wye
];
var symbolsStroke = [
	circle,
	plus,
	times,
	triangle2,
	asterisk,
	square2,
	diamond2
];
function noop() {}
function point$3(that, x, y) {
	that._context.bezierCurveTo((2 * that._x0 + that._x1) / 3, (2 * that._y0 + that._y1) / 3, (that._x0 + 2 * that._x1) / 3, (that._y0 + 2 * that._y1) / 3, (that._x0 + 4 * that._x1 + x) / 6, (that._y0 + 4 * that._y1 + y) / 6);
}
function Basis(context) {
	this._context = context;
}
Basis.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x0 = this._x1 = this._y0 = this._y1 = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		switch (this._point) {
			case 3: point$3(this, this._x1, this._y1);
			case 2: this._context.lineTo(this._x1, this._y1);
		}
		if (this._line || this._line !== 0 && this._point === 1) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				this._line ? this._context.lineTo(x, y) : this._context.moveTo(x, y);
				break;
			case 1:
				this._point = 2;
				break;
			case 2:
				this._point = 3;
				this._context.lineTo((5 * this._x0 + this._x1) / 6, (5 * this._y0 + this._y1) / 6);
			default: point$3(this, x, y);
		}
		this._x0 = this._x1, this._x1 = x;
		this._y0 = this._y1, this._y1 = y;
	}
};
function basis(context) {
	return new Basis(context);
}
function BasisClosed(context) {
	this._context = context;
}
BasisClosed.prototype = {
	areaStart: noop,
	areaEnd: noop,
	lineStart: function() {
		this._x0 = this._x1 = this._x2 = this._x3 = this._x4 = this._y0 = this._y1 = this._y2 = this._y3 = this._y4 = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		switch (this._point) {
			case 1:
				this._context.moveTo(this._x2, this._y2);
				this._context.closePath();
				break;
			case 2:
				this._context.moveTo((this._x2 + 2 * this._x3) / 3, (this._y2 + 2 * this._y3) / 3);
				this._context.lineTo((this._x3 + 2 * this._x2) / 3, (this._y3 + 2 * this._y2) / 3);
				this._context.closePath();
				break;
			case 3:
				this.point(this._x2, this._y2);
				this.point(this._x3, this._y3);
				this.point(this._x4, this._y4);
		}
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				this._x2 = x, this._y2 = y;
				break;
			case 1:
				this._point = 2;
				this._x3 = x, this._y3 = y;
				break;
			case 2:
				this._point = 3;
				this._x4 = x, this._y4 = y;
				this._context.moveTo((this._x0 + 4 * this._x1 + x) / 6, (this._y0 + 4 * this._y1 + y) / 6);
				break;
			default: point$3(this, x, y);
		}
		this._x0 = this._x1, this._x1 = x;
		this._y0 = this._y1, this._y1 = y;
	}
};
function basisClosed(context) {
	return new BasisClosed(context);
}
function BasisOpen(context) {
	this._context = context;
}
BasisOpen.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x0 = this._x1 = this._y0 = this._y1 = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		if (this._line || this._line !== 0 && this._point === 3) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				break;
			case 1:
				this._point = 2;
				break;
			case 2:
				this._point = 3;
				var x0 = (this._x0 + 4 * this._x1 + x) / 6, y0 = (this._y0 + 4 * this._y1 + y) / 6;
				this._line ? this._context.lineTo(x0, y0) : this._context.moveTo(x0, y0);
				break;
			case 3: this._point = 4;
			default: point$3(this, x, y);
		}
		this._x0 = this._x1, this._x1 = x;
		this._y0 = this._y1, this._y1 = y;
	}
};
function basisOpen(context) {
	return new BasisOpen(context);
}
function Bundle(context, beta) {
	this._basis = new Basis(context);
	this._beta = beta;
}
Bundle.prototype = {
	lineStart: function() {
		this._x = [];
		this._y = [];
		this._basis.lineStart();
	},
	lineEnd: function() {
		var x = this._x, y = this._y, j = x.length - 1;
		if (j > 0) {
			var x0 = x[0], y0 = y[0], dx = x[j] - x0, dy = y[j] - y0, i = -1, t;
			while (++i <= j) {
				t = i / j;
				this._basis.point(this._beta * x[i] + (1 - this._beta) * (x0 + t * dx), this._beta * y[i] + (1 - this._beta) * (y0 + t * dy));
			}
		}
		this._x = this._y = null;
		this._basis.lineEnd();
	},
	point: function(x, y) {
		this._x.push(+x);
		this._y.push(+y);
	}
};
var bundle = (function custom(beta) {
	function bundle(context) {
		return beta === 1 ? new Basis(context) : new Bundle(context, beta);
	}
	bundle.beta = function(beta) {
		return custom(+beta);
	};
	return bundle;
})(.85);
function point$2(that, x, y) {
	that._context.bezierCurveTo(that._x1 + that._k * (that._x2 - that._x0), that._y1 + that._k * (that._y2 - that._y0), that._x2 + that._k * (that._x1 - x), that._y2 + that._k * (that._y1 - y), that._x2, that._y2);
}
function Cardinal(context, tension) {
	this._context = context;
	this._k = (1 - tension) / 6;
}
Cardinal.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x0 = this._x1 = this._x2 = this._y0 = this._y1 = this._y2 = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		switch (this._point) {
			case 2:
				this._context.lineTo(this._x2, this._y2);
				break;
			case 3: point$2(this, this._x1, this._y1);
		}
		if (this._line || this._line !== 0 && this._point === 1) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				this._line ? this._context.lineTo(x, y) : this._context.moveTo(x, y);
				break;
			case 1:
				this._point = 2;
				this._x1 = x, this._y1 = y;
				break;
			case 2: this._point = 3;
			default: point$2(this, x, y);
		}
		this._x0 = this._x1, this._x1 = this._x2, this._x2 = x;
		this._y0 = this._y1, this._y1 = this._y2, this._y2 = y;
	}
};
var cardinal = (function custom(tension) {
	function cardinal(context) {
		return new Cardinal(context, tension);
	}
	cardinal.tension = function(tension) {
		return custom(+tension);
	};
	return cardinal;
})(0);
function CardinalClosed(context, tension) {
	this._context = context;
	this._k = (1 - tension) / 6;
}
CardinalClosed.prototype = {
	areaStart: noop,
	areaEnd: noop,
	lineStart: function() {
		this._x0 = this._x1 = this._x2 = this._x3 = this._x4 = this._x5 = this._y0 = this._y1 = this._y2 = this._y3 = this._y4 = this._y5 = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		switch (this._point) {
			case 1:
				this._context.moveTo(this._x3, this._y3);
				this._context.closePath();
				break;
			case 2:
				this._context.lineTo(this._x3, this._y3);
				this._context.closePath();
				break;
			case 3:
				this.point(this._x3, this._y3);
				this.point(this._x4, this._y4);
				this.point(this._x5, this._y5);
		}
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				this._x3 = x, this._y3 = y;
				break;
			case 1:
				this._point = 2;
				this._context.moveTo(this._x4 = x, this._y4 = y);
				break;
			case 2:
				this._point = 3;
				this._x5 = x, this._y5 = y;
				break;
			default: point$2(this, x, y);
		}
		this._x0 = this._x1, this._x1 = this._x2, this._x2 = x;
		this._y0 = this._y1, this._y1 = this._y2, this._y2 = y;
	}
};
var cardinalClosed = (function custom(tension) {
	function cardinal(context) {
		return new CardinalClosed(context, tension);
	}
	cardinal.tension = function(tension) {
		return custom(+tension);
	};
	return cardinal;
})(0);
function CardinalOpen(context, tension) {
	this._context = context;
	this._k = (1 - tension) / 6;
}
CardinalOpen.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x0 = this._x1 = this._x2 = this._y0 = this._y1 = this._y2 = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		if (this._line || this._line !== 0 && this._point === 3) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				break;
			case 1:
				this._point = 2;
				break;
			case 2:
				this._point = 3;
				this._line ? this._context.lineTo(this._x2, this._y2) : this._context.moveTo(this._x2, this._y2);
				break;
			case 3: this._point = 4;
			default: point$2(this, x, y);
		}
		this._x0 = this._x1, this._x1 = this._x2, this._x2 = x;
		this._y0 = this._y1, this._y1 = this._y2, this._y2 = y;
	}
};
var cardinalOpen = (function custom(tension) {
	function cardinal(context) {
		return new CardinalOpen(context, tension);
	}
	cardinal.tension = function(tension) {
		return custom(+tension);
	};
	return cardinal;
})(0);
function point$1(that, x, y) {
	var x1 = that._x1, y1 = that._y1, x2 = that._x2, y2 = that._y2;
	if (that._l01_a > epsilon) {
		var a = 2 * that._l01_2a + 3 * that._l01_a * that._l12_a + that._l12_2a, n = 3 * that._l01_a * (that._l01_a + that._l12_a);
		x1 = (x1 * a - that._x0 * that._l12_2a + that._x2 * that._l01_2a) / n;
		y1 = (y1 * a - that._y0 * that._l12_2a + that._y2 * that._l01_2a) / n;
	}
	if (that._l23_a > epsilon) {
		var b = 2 * that._l23_2a + 3 * that._l23_a * that._l12_a + that._l12_2a, m = 3 * that._l23_a * (that._l23_a + that._l12_a);
		x2 = (x2 * b + that._x1 * that._l23_2a - x * that._l12_2a) / m;
		y2 = (y2 * b + that._y1 * that._l23_2a - y * that._l12_2a) / m;
	}
	that._context.bezierCurveTo(x1, y1, x2, y2, that._x2, that._y2);
}
function CatmullRom(context, alpha) {
	this._context = context;
	this._alpha = alpha;
}
CatmullRom.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x0 = this._x1 = this._x2 = this._y0 = this._y1 = this._y2 = NaN;
		this._l01_a = this._l12_a = this._l23_a = this._l01_2a = this._l12_2a = this._l23_2a = this._point = 0;
	},
	lineEnd: function() {
		switch (this._point) {
			case 2:
				this._context.lineTo(this._x2, this._y2);
				break;
			case 3: this.point(this._x2, this._y2);
		}
		if (this._line || this._line !== 0 && this._point === 1) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		if (this._point) {
			var x23 = this._x2 - x, y23 = this._y2 - y;
			this._l23_a = Math.sqrt(this._l23_2a = Math.pow(x23 * x23 + y23 * y23, this._alpha));
		}
		switch (this._point) {
			case 0:
				this._point = 1;
				this._line ? this._context.lineTo(x, y) : this._context.moveTo(x, y);
				break;
			case 1:
				this._point = 2;
				break;
			case 2: this._point = 3;
			default: point$1(this, x, y);
		}
		this._l01_a = this._l12_a, this._l12_a = this._l23_a;
		this._l01_2a = this._l12_2a, this._l12_2a = this._l23_2a;
		this._x0 = this._x1, this._x1 = this._x2, this._x2 = x;
		this._y0 = this._y1, this._y1 = this._y2, this._y2 = y;
	}
};
var catmullRom = (function custom(alpha) {
	function catmullRom(context) {
		return alpha ? new CatmullRom(context, alpha) : new Cardinal(context, 0);
	}
	catmullRom.alpha = function(alpha) {
		return custom(+alpha);
	};
	return catmullRom;
})(.5);
function CatmullRomClosed(context, alpha) {
	this._context = context;
	this._alpha = alpha;
}
CatmullRomClosed.prototype = {
	areaStart: noop,
	areaEnd: noop,
	lineStart: function() {
		this._x0 = this._x1 = this._x2 = this._x3 = this._x4 = this._x5 = this._y0 = this._y1 = this._y2 = this._y3 = this._y4 = this._y5 = NaN;
		this._l01_a = this._l12_a = this._l23_a = this._l01_2a = this._l12_2a = this._l23_2a = this._point = 0;
	},
	lineEnd: function() {
		switch (this._point) {
			case 1:
				this._context.moveTo(this._x3, this._y3);
				this._context.closePath();
				break;
			case 2:
				this._context.lineTo(this._x3, this._y3);
				this._context.closePath();
				break;
			case 3:
				this.point(this._x3, this._y3);
				this.point(this._x4, this._y4);
				this.point(this._x5, this._y5);
		}
	},
	point: function(x, y) {
		x = +x, y = +y;
		if (this._point) {
			var x23 = this._x2 - x, y23 = this._y2 - y;
			this._l23_a = Math.sqrt(this._l23_2a = Math.pow(x23 * x23 + y23 * y23, this._alpha));
		}
		switch (this._point) {
			case 0:
				this._point = 1;
				this._x3 = x, this._y3 = y;
				break;
			case 1:
				this._point = 2;
				this._context.moveTo(this._x4 = x, this._y4 = y);
				break;
			case 2:
				this._point = 3;
				this._x5 = x, this._y5 = y;
				break;
			default: point$1(this, x, y);
		}
		this._l01_a = this._l12_a, this._l12_a = this._l23_a;
		this._l01_2a = this._l12_2a, this._l12_2a = this._l23_2a;
		this._x0 = this._x1, this._x1 = this._x2, this._x2 = x;
		this._y0 = this._y1, this._y1 = this._y2, this._y2 = y;
	}
};
var catmullRomClosed = (function custom(alpha) {
	function catmullRom(context) {
		return alpha ? new CatmullRomClosed(context, alpha) : new CardinalClosed(context, 0);
	}
	catmullRom.alpha = function(alpha) {
		return custom(+alpha);
	};
	return catmullRom;
})(.5);
function CatmullRomOpen(context, alpha) {
	this._context = context;
	this._alpha = alpha;
}
CatmullRomOpen.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x0 = this._x1 = this._x2 = this._y0 = this._y1 = this._y2 = NaN;
		this._l01_a = this._l12_a = this._l23_a = this._l01_2a = this._l12_2a = this._l23_2a = this._point = 0;
	},
	lineEnd: function() {
		if (this._line || this._line !== 0 && this._point === 3) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		if (this._point) {
			var x23 = this._x2 - x, y23 = this._y2 - y;
			this._l23_a = Math.sqrt(this._l23_2a = Math.pow(x23 * x23 + y23 * y23, this._alpha));
		}
		switch (this._point) {
			case 0:
				this._point = 1;
				break;
			case 1:
				this._point = 2;
				break;
			case 2:
				this._point = 3;
				this._line ? this._context.lineTo(this._x2, this._y2) : this._context.moveTo(this._x2, this._y2);
				break;
			case 3: this._point = 4;
			default: point$1(this, x, y);
		}
		this._l01_a = this._l12_a, this._l12_a = this._l23_a;
		this._l01_2a = this._l12_2a, this._l12_2a = this._l23_2a;
		this._x0 = this._x1, this._x1 = this._x2, this._x2 = x;
		this._y0 = this._y1, this._y1 = this._y2, this._y2 = y;
	}
};
var catmullRomOpen = (function custom(alpha) {
	function catmullRom(context) {
		return alpha ? new CatmullRomOpen(context, alpha) : new CardinalOpen(context, 0);
	}
	catmullRom.alpha = function(alpha) {
		return custom(+alpha);
	};
	return catmullRom;
})(.5);
function LinearClosed(context) {
	this._context = context;
}
LinearClosed.prototype = {
	areaStart: noop,
	areaEnd: noop,
	lineStart: function() {
		this._point = 0;
	},
	lineEnd: function() {
		if (this._point) this._context.closePath();
	},
	point: function(x, y) {
		x = +x, y = +y;
		if (this._point) this._context.lineTo(x, y);
		else this._point = 1, this._context.moveTo(x, y);
	}
};
function linearClosed(context) {
	return new LinearClosed(context);
}
function sign(x) {
	return x < 0 ? -1 : 1;
}
function slope3(that, x2, y2) {
	var h0 = that._x1 - that._x0, h1 = x2 - that._x1, s0 = (that._y1 - that._y0) / (h0 || h1 < 0 && -0), s1 = (y2 - that._y1) / (h1 || h0 < 0 && -0), p = (s0 * h1 + s1 * h0) / (h0 + h1);
	return (sign(s0) + sign(s1)) * Math.min(Math.abs(s0), Math.abs(s1), .5 * Math.abs(p)) || 0;
}
function slope2(that, t) {
	var h = that._x1 - that._x0;
	return h ? (3 * (that._y1 - that._y0) / h - t) / 2 : t;
}
function point(that, t0, t1) {
	var x0 = that._x0, y0 = that._y0, x1 = that._x1, y1 = that._y1, dx = (x1 - x0) / 3;
	that._context.bezierCurveTo(x0 + dx, y0 + dx * t0, x1 - dx, y1 - dx * t1, x1, y1);
}
function MonotoneX(context) {
	this._context = context;
}
MonotoneX.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x0 = this._x1 = this._y0 = this._y1 = this._t0 = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		switch (this._point) {
			case 2:
				this._context.lineTo(this._x1, this._y1);
				break;
			case 3: point(this, this._t0, slope2(this, this._t0));
		}
		if (this._line || this._line !== 0 && this._point === 1) this._context.closePath();
		this._line = 1 - this._line;
	},
	point: function(x, y) {
		var t1 = NaN;
		x = +x, y = +y;
		if (x === this._x1 && y === this._y1) return;
		switch (this._point) {
			case 0:
				this._point = 1;
				this._line ? this._context.lineTo(x, y) : this._context.moveTo(x, y);
				break;
			case 1:
				this._point = 2;
				break;
			case 2:
				this._point = 3;
				point(this, slope2(this, t1 = slope3(this, x, y)), t1);
				break;
			default: point(this, this._t0, t1 = slope3(this, x, y));
		}
		this._x0 = this._x1, this._x1 = x;
		this._y0 = this._y1, this._y1 = y;
		this._t0 = t1;
	}
};
function MonotoneY(context) {
	this._context = new ReflectContext(context);
}
(MonotoneY.prototype = Object.create(MonotoneX.prototype)).point = function(x, y) {
	MonotoneX.prototype.point.call(this, y, x);
};
function ReflectContext(context) {
	this._context = context;
}
ReflectContext.prototype = {
	moveTo: function(x, y) {
		this._context.moveTo(y, x);
	},
	closePath: function() {
		this._context.closePath();
	},
	lineTo: function(x, y) {
		this._context.lineTo(y, x);
	},
	bezierCurveTo: function(x1, y1, x2, y2, x, y) {
		this._context.bezierCurveTo(y1, x1, y2, x2, y, x);
	}
};
function monotoneX(context) {
	return new MonotoneX(context);
}
function monotoneY(context) {
	return new MonotoneY(context);
}
function Natural(context) {
	this._context = context;
}
Natural.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x = [];
		this._y = [];
	},
	lineEnd: function() {
		var x = this._x, y = this._y, n = x.length;
		if (n) {
			this._line ? this._context.lineTo(x[0], y[0]) : this._context.moveTo(x[0], y[0]);
			if (n === 2) this._context.lineTo(x[1], y[1]);
			else {
				var px = controlPoints(x), py = controlPoints(y);
				for (var i0 = 0, i1 = 1; i1 < n; ++i0, ++i1) this._context.bezierCurveTo(px[0][i0], py[0][i0], px[1][i0], py[1][i0], x[i1], y[i1]);
			}
		}
		if (this._line || this._line !== 0 && n === 1) this._context.closePath();
		this._line = 1 - this._line;
		this._x = this._y = null;
	},
	point: function(x, y) {
		this._x.push(+x);
		this._y.push(+y);
	}
};
function controlPoints(x) {
	var i, n = x.length - 1, m, a = new Array(n), b = new Array(n), r = new Array(n);
	a[0] = 0, b[0] = 2, r[0] = x[0] + 2 * x[1];
	for (i = 1; i < n - 1; ++i) a[i] = 1, b[i] = 4, r[i] = 4 * x[i] + 2 * x[i + 1];
	a[n - 1] = 2, b[n - 1] = 7, r[n - 1] = 8 * x[n - 1] + x[n];
	for (i = 1; i < n; ++i) m = a[i] / b[i - 1], b[i] -= m, r[i] -= m * r[i - 1];
	a[n - 1] = r[n - 1] / b[n - 1];
	for (i = n - 2; i >= 0; --i) a[i] = (r[i] - a[i + 1]) / b[i];
	b[n - 1] = (x[n] + a[n - 1]) / 2;
	for (i = 0; i < n - 1; ++i) b[i] = 2 * x[i + 1] - a[i + 1];
	return [a, b];
}
function natural(context) {
	return new Natural(context);
}
function Step(context, t) {
	this._context = context;
	this._t = t;
}
Step.prototype = {
	areaStart: function() {
		this._line = 0;
	},
	areaEnd: function() {
		this._line = NaN;
	},
	lineStart: function() {
		this._x = this._y = NaN;
		this._point = 0;
	},
	lineEnd: function() {
		if (0 < this._t && this._t < 1 && this._point === 2) this._context.lineTo(this._x, this._y);
		if (this._line || this._line !== 0 && this._point === 1) this._context.closePath();
		if (this._line >= 0) this._t = 1 - this._t, this._line = 1 - this._line;
	},
	point: function(x, y) {
		x = +x, y = +y;
		switch (this._point) {
			case 0:
				this._point = 1;
				this._line ? this._context.lineTo(x, y) : this._context.moveTo(x, y);
				break;
			case 1: this._point = 2;
			default: if (this._t <= 0) {
				this._context.lineTo(this._x, y);
				this._context.lineTo(x, y);
			} else {
				var x1 = this._x * (1 - this._t) + x * this._t;
				this._context.lineTo(x1, this._y);
				this._context.lineTo(x1, y);
			}
		}
		this._x = x, this._y = y;
	}
};
function step(context) {
	return new Step(context, .5);
}
function stepBefore(context) {
	return new Step(context, 0);
}
function stepAfter(context) {
	return new Step(context, 1);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/defined.js
function defined(x) {
	return x != null && !Number.isNaN(x);
}
function ascendingDefined(a, b) {
	return +defined(b) - +defined(a) || ascending$1(a, b);
}
function descendingDefined(a, b) {
	return +defined(b) - +defined(a) || descending(a, b);
}
function nonempty(x) {
	return x != null && `${x}` !== "";
}
function finite(x) {
	return isFinite(x) ? x : NaN;
}
function positive(x) {
	return x > 0 && isFinite(x) ? x : NaN;
}
function negative(x) {
	return x < 0 && isFinite(x) ? x : NaN;
}
// ../../node_modules/.pnpm/isoformat@0.2.1/node_modules/isoformat/src/format.js
function format(date, fallback) {
	if (!(date instanceof Date)) date = /* @__PURE__ */ new Date(+date);
	if (isNaN(date)) return typeof fallback === "function" ? fallback(date) : fallback;
	const hours = date.getUTCHours();
	const minutes = date.getUTCMinutes();
	const seconds = date.getUTCSeconds();
	const milliseconds = date.getUTCMilliseconds();
	return `${formatYear(date.getUTCFullYear(), 4)}-${pad(date.getUTCMonth() + 1, 2)}-${pad(date.getUTCDate(), 2)}${hours || minutes || seconds || milliseconds ? `T${pad(hours, 2)}:${pad(minutes, 2)}${seconds || milliseconds ? `:${pad(seconds, 2)}${milliseconds ? `.${pad(milliseconds, 3)}` : ``}` : ``}Z` : ``}`;
}
function formatYear(year) {
	return year < 0 ? `-${pad(-year, 6)}` : year > 9999 ? `+${pad(year, 6)}` : pad(year, 4);
}
function pad(value, width) {
	return `${value}`.padStart(width, "0");
}
// ../../node_modules/.pnpm/isoformat@0.2.1/node_modules/isoformat/src/parse.js
var re = /^(?:[-+]\d{2})?\d{4}(?:-\d{2}(?:-\d{2})?)?(?:T\d{2}:\d{2}(?::\d{2}(?:\.\d{3})?)?(?:Z|[-+]\d{2}:?\d{2})?)?$/;
function parse(string, fallback) {
	if (!re.test(string += "")) return typeof fallback === "function" ? fallback(string) : fallback;
	return new Date(string);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/order.js
function orderof(values) {
	if (values == null) return;
	const first = values[0];
	const last = values[values.length - 1];
	return descending(first, last);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/time.js
var durationSecond = 1e3;
var durationMinute = durationSecond * 60;
var durationHour = durationMinute * 60;
var durationDay = durationHour * 24;
var durationWeek = durationDay * 7;
var durationMonth = durationDay * 30;
var durationYear = durationDay * 365;
var tickIntervals = [
	["millisecond", 1],
	["2 milliseconds", 2],
	["5 milliseconds", 5],
	["10 milliseconds", 10],
	["20 milliseconds", 20],
	["50 milliseconds", 50],
	["100 milliseconds", 100],
	["200 milliseconds", 200],
	["500 milliseconds", 500],
	["second", durationSecond],
	["5 seconds", 5 * durationSecond],
	["15 seconds", 15 * durationSecond],
	["30 seconds", 30 * durationSecond],
	["minute", durationMinute],
	["5 minutes", 5 * durationMinute],
	["15 minutes", 15 * durationMinute],
	["30 minutes", 30 * durationMinute],
	["hour", durationHour],
	["3 hours", 3 * durationHour],
	["6 hours", 6 * durationHour],
	["12 hours", 12 * durationHour],
	["day", durationDay],
	["2 days", 2 * durationDay],
	["week", durationWeek],
	["2 weeks", 2 * durationWeek],
	["month", durationMonth],
	["3 months", 3 * durationMonth],
	["6 months", 6 * durationMonth],
	["year", durationYear],
	["2 years", 2 * durationYear],
	["5 years", 5 * durationYear],
	["10 years", 10 * durationYear],
	["20 years", 20 * durationYear],
	["50 years", 50 * durationYear],
	["100 years", 100 * durationYear]
];
var durations = /* @__PURE__ */ new Map([
	["second", durationSecond],
	["minute", durationMinute],
	["hour", durationHour],
	["day", durationDay],
	["monday", durationWeek],
	["tuesday", durationWeek],
	["wednesday", durationWeek],
	["thursday", durationWeek],
	["friday", durationWeek],
	["saturday", durationWeek],
	["sunday", durationWeek],
	["week", durationWeek],
	["month", durationMonth],
	["year", durationYear]
]);
var timeIntervals = /* @__PURE__ */ new Map([
	["second", second$1],
	["minute", timeMinute],
	["hour", timeHour],
	["day", timeDay],
	["monday", timeMonday],
	["tuesday", timeTuesday],
	["wednesday", timeWednesday],
	["thursday", timeThursday],
	["friday", timeFriday],
	["saturday", timeSaturday],
	["sunday", timeSunday],
	["week", timeSunday],
	["month", timeMonth],
	["year", timeYear]
]);
var utcIntervals = /* @__PURE__ */ new Map([
	["second", second$1],
	["minute", utcMinute],
	["hour", utcHour],
	["day", unixDay],
	["monday", utcMonday],
	["tuesday", utcTuesday],
	["wednesday", utcWednesday],
	["thursday", utcThursday],
	["friday", utcFriday],
	["saturday", utcSaturday],
	["sunday", utcSunday],
	["week", utcSunday],
	["month", utcMonth],
	["year", utcYear]
]);
var intervalDuration = Symbol("intervalDuration");
var intervalType = Symbol("intervalType");
for (const [name, interval] of timeIntervals) {
	interval[intervalDuration] = durations.get(name);
	interval[intervalType] = "time";
}
for (const [name, interval] of utcIntervals) {
	interval[intervalDuration] = durations.get(name);
	interval[intervalType] = "utc";
}
var utcFormatIntervals = [
	[
		"year",
		utcYear,
		"utc"
	],
	[
		"month",
		utcMonth,
		"utc"
	],
	[
		"day",
		unixDay,
		"utc",
		6 * durationMonth
	],
	[
		"hour",
		utcHour,
		"utc",
		3 * durationDay
	],
	[
		"minute",
		utcMinute,
		"utc",
		6 * durationHour
	],
	[
		"second",
		second$1,
		"utc",
		30 * durationMinute
	]
];
var timeFormatIntervals = [
	[
		"year",
		timeYear,
		"time"
	],
	[
		"month",
		timeMonth,
		"time"
	],
	[
		"day",
		timeDay,
		"time",
		6 * durationMonth
	],
	[
		"hour",
		timeHour,
		"time",
		3 * durationDay
	],
	[
		"minute",
		timeMinute,
		"time",
		6 * durationHour
	],
	[
		"second",
		second$1,
		"time",
		30 * durationMinute
	]
];
var formatIntervals = [
	utcFormatIntervals[0],
	timeFormatIntervals[0],
	utcFormatIntervals[1],
	timeFormatIntervals[1],
	utcFormatIntervals[2],
	timeFormatIntervals[2],
	...utcFormatIntervals.slice(3)
];
function parseTimeInterval(input) {
	let name = `${input}`.toLowerCase();
	if (name.endsWith("s")) name = name.slice(0, -1);
	let period = 1;
	const match = /^(?:(\d+)\s+)/.exec(name);
	if (match) {
		name = name.slice(match[0].length);
		period = +match[1];
	}
	switch (name) {
		case "quarter":
			name = "month";
			period *= 3;
			break;
		case "half":
			name = "month";
			period *= 6;
	}
	let interval = utcIntervals.get(name);
	if (!interval) throw new Error(`unknown interval: ${input}`);
	if (period > 1 && !interval.every) throw new Error(`non-periodic interval: ${name}`);
	return [name, period];
}
function timeInterval(input) {
	return asInterval(parseTimeInterval(input), "time");
}
function utcInterval(input) {
	return asInterval(parseTimeInterval(input), "utc");
}
function asInterval([name, period], type) {
	let interval = (type === "time" ? timeIntervals : utcIntervals).get(name);
	if (period > 1) {
		interval = interval.every(period);
		interval[intervalDuration] = durations.get(name) * period;
		interval[intervalType] = type;
	}
	return interval;
}
function generalizeTimeInterval(interval, n) {
	if (!(n > 1)) return;
	const duration = interval[intervalDuration];
	if (!tickIntervals.some(([, d]) => d === duration)) return;
	if (duration % durationDay === 0 && durationDay < duration && duration < durationMonth) return;
	const [i] = tickIntervals[bisector(([, step]) => Math.log(step)).center(tickIntervals, Math.log(duration * n))];
	return (interval[intervalType] === "time" ? timeInterval : utcInterval)(i);
}
function formatTimeInterval(name, type, anchor) {
	const format = type === "time" ? timeFormat : utcFormat;
	if (anchor == null) return format(name === "year" ? "%Y" : name === "month" ? "%Y-%m" : name === "day" ? "%Y-%m-%d" : name === "hour" || name === "minute" ? "%Y-%m-%dT%H:%M" : name === "second" ? "%Y-%m-%dT%H:%M:%S" : "%Y-%m-%dT%H:%M:%S.%L");
	const template = getTimeTemplate(anchor);
	switch (name) {
		case "millisecond": return formatConditional(format(".%L"), format(":%M:%S"), template);
		case "second": return formatConditional(format(":%S"), format("%-I:%M"), template);
		case "minute": return formatConditional(format("%-I:%M"), format("%p"), template);
		case "hour": return formatConditional(format("%-I %p"), format("%b %-d"), template);
		case "day": return formatConditional(format("%-d"), format("%b"), template);
		case "month": return formatConditional(format("%b"), format("%Y"), template);
		case "year": return format("%Y");
	}
	throw new Error("unable to format time ticks");
}
function getTimeTemplate(anchor) {
	return anchor === "left" || anchor === "right" ? (f1, f2) => `\n${f1}\n${f2}` : anchor === "top" ? (f1, f2) => `${f2}\n${f1}` : (f1, f2) => `${f1}\n${f2}`;
}
function getFormatIntervals(type) {
	return type === "time" ? timeFormatIntervals : type === "utc" ? utcFormatIntervals : formatIntervals;
}
function inferTimeFormat(type, dates, anchor) {
	const step = max(pairs(dates, (a, b) => Math.abs(b - a)));
	if (step < 1e3) return formatTimeInterval("millisecond", "utc", anchor);
	for (const [name, interval, intervalType, maxStep] of getFormatIntervals(type)) {
		if (step > maxStep) break;
		if (name === "hour" && !step) break;
		if (dates.every((d) => interval.floor(d) >= d)) return formatTimeInterval(name, intervalType, anchor);
	}
}
function formatConditional(format1, format2, template) {
	return (x, i, X) => {
		const f1 = format1(x, i);
		const f2 = format2(x, i);
		const j = i - orderof(X);
		return i !== j && X[j] !== void 0 && f2 === format2(X[j], j) ? f1 : template(f1, f2);
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/options.js
var TypedArray = Object.getPrototypeOf(Uint8Array);
var objectToString = Object.prototype.toString;
function isArray(value) {
	return value instanceof Array || value instanceof TypedArray;
}
function isNumberArray(value) {
	return value instanceof TypedArray && !isBigIntArray(value);
}
function isNumberType(type) {
	return type?.prototype instanceof TypedArray && !isBigIntType(type);
}
function isBigIntArray(value) {
	return value instanceof BigInt64Array || value instanceof BigUint64Array;
}
function isBigIntType(type) {
	return type === BigInt64Array || type === BigUint64Array;
}
var reindex = Symbol("reindex");
function valueof(data, value, type) {
	const valueType = typeof value;
	return valueType === "string" ? isArrowTable(data) ? maybeTypedArrowify(data.getChild(value), type) : maybeTypedMap(data, field(value), type) : valueType === "function" ? maybeTypedMap(data, value, type) : valueType === "number" || value instanceof Date || valueType === "boolean" ? map(data, constant(value), type) : typeof value?.transform === "function" ? maybeTypedArrayify(value.transform(data), type) : maybeTake(maybeTypedArrayify(value, type), data?.[reindex]);
}
function maybeTake(values, index) {
	return values != null && index ? take(values, index) : values;
}
function maybeTypedMap(data, f, type) {
	return map(data, isNumberType(type) ? (d, i) => coerceNumber(f(d, i)) : f, type);
}
function maybeTypedArrayify(data, type) {
	return type === void 0 ? arrayify(data) : isArrowVector(data) ? maybeTypedArrowify(data, type) : data instanceof type ? data : type.from(data, isNumberType(type) && !isNumberArray(data) ? coerceNumber : void 0);
}
function maybeTypedArrowify(vector, type) {
	return vector == null ? vector : (type === void 0 || type === Array) && isArrowDateType(vector.type) ? coerceDates(vectorToArray(vector)) : maybeTypedArrayify(vectorToArray(vector), type);
}
function vectorToArray(vector) {
	return vector.nullCount ? vector.toJSON() : vector.toArray();
}
var singleton = [null];
var field = (name) => (d) => {
	const v = d[name];
	return v === void 0 && d.type === "Feature" ? d.properties?.[name] : v;
};
var indexOf = { transform: range$1 };
var identity$1 = { transform: (d) => d };
var one = () => 1;
var yes = () => true;
var string = (x) => x == null ? x : `${x}`;
var number = (x) => x == null ? x : +x;
var first = (x) => x ? x[0] : void 0;
var second = (x) => x ? x[1] : void 0;
var constant = (x) => () => x;
function percentile(reduce) {
	const p = +`${reduce}`.slice(1) / 100;
	return (I, f) => quantile$1(I, p, f);
}
function coerceNumbers(values) {
	return isNumberArray(values) ? values : map(values, coerceNumber, Float64Array);
}
function coerceNumber(x) {
	return x == null ? NaN : Number(x);
}
function coerceDates(values) {
	return map(values, coerceDate);
}
function coerceDate(x) {
	return x instanceof Date && !isNaN(x) ? x : typeof x === "string" ? parse(x) : x == null || isNaN(x = Number(x)) ? void 0 : new Date(x);
}
function maybeColorChannel(value, defaultValue) {
	if (value === void 0) value = defaultValue;
	return value === null ? [void 0, "none"] : isColor(value) ? [void 0, value] : [value, void 0];
}
function maybeNumberChannel(value, defaultValue) {
	if (value === void 0) value = defaultValue;
	return value === null || typeof value === "number" ? [void 0, value] : [value, void 0];
}
function maybeKeyword(input, name, allowed) {
	if (input != null) return keyword(input, name, allowed);
}
function keyword(input, name, allowed) {
	const i = `${input}`.toLowerCase();
	if (!allowed.includes(i)) throw new Error(`invalid ${name}: ${input}`);
	return i;
}
function dataify(data) {
	return isArrowTable(data) ? data : arrayify(data);
}
function arrayify(values) {
	if (values == null || isArray(values)) return values;
	if (isArrowVector(values)) return maybeTypedArrowify(values);
	if (isGeoJSON(values)) switch (values.type) {
		case "FeatureCollection": return values.features;
		case "GeometryCollection": return values.geometries;
		default: return [values];
	}
	return Array.from(values);
}
function isGeoJSON(x) {
	switch (x?.type) {
		case "FeatureCollection":
		case "GeometryCollection":
		case "Feature":
		case "LineString":
		case "MultiLineString":
		case "MultiPoint":
		case "MultiPolygon":
		case "Point":
		case "Polygon":
		case "Sphere": return true;
		default: return false;
	}
}
function map(values, f, type = Array) {
	return values == null ? values : values instanceof type ? values.map(f) : type.from(values, f);
}
function slice(values, type = Array) {
	return values instanceof type ? values.slice() : type.from(values);
}
function hasY({ y, y1, y2 }) {
	return y !== void 0 || y1 !== void 0 || y2 !== void 0;
}
function isObject(option) {
	return option?.toString === objectToString;
}
function isScaleOptions(option) {
	return isObject(option) && (option.type !== void 0 || option.domain !== void 0);
}
function isOptions(option) {
	return isObject(option) && typeof option.transform !== "function";
}
function isDomainSort(sort) {
	return isOptions(sort) && sort.value === void 0 && sort.channel === void 0;
}
function maybeZero(x, x1, x2, x3 = identity$1) {
	if (x1 === void 0 && x2 === void 0) x1 = 0, x2 = x === void 0 ? x3 : x;
	else if (x1 === void 0) x1 = x === void 0 ? 0 : x;
	else if (x2 === void 0) x2 = x === void 0 ? 0 : x;
	return [x1, x2];
}
function maybeTuple(x, y) {
	return x === void 0 && y === void 0 ? [first, second] : [x, y];
}
function maybeZ({ z, fill, stroke } = {}) {
	if (z === void 0) [z] = maybeColorChannel(fill);
	if (z === void 0) [z] = maybeColorChannel(stroke);
	return z;
}
function lengthof(data) {
	return isArray(data) ? data.length : data?.numRows;
}
function range$1(data) {
	const n = lengthof(data);
	const r = new Uint32Array(n);
	for (let i = 0; i < n; ++i) r[i] = i;
	return r;
}
function take(values, index) {
	return isArray(values) ? map(index, (i) => values[i], values.constructor) : map(index, (i) => values.at(i));
}
function subarray(I, i, j) {
	return I.subarray ? I.subarray(i, j) : I.slice(i, j);
}
function keyof(value) {
	return value !== null && typeof value === "object" ? value.valueOf() : value;
}
function maybeInput(key, options) {
	if (options[key] !== void 0) return options[key];
	switch (key) {
		case "x1":
		case "x2":
			key = "x";
			break;
		case "y1":
		case "y2": key = "y";
	}
	return options[key];
}
function column(source) {
	let value;
	return [{
		transform: () => value,
		label: labelof(source)
	}, (v) => value = v];
}
function maybeColumn(source) {
	return source == null ? [source] : column(source);
}
function labelof(value, defaultValue) {
	return typeof value === "string" ? value : value && value.label !== void 0 ? value.label : defaultValue;
}
function mid(x1, x2) {
	return {
		transform(data) {
			const X1 = x1.transform(data);
			const X2 = x2.transform(data);
			return isTemporal(X1) || isTemporal(X2) ? map(X1, (_, i) => /* @__PURE__ */ new Date((+X1[i] + +X2[i]) / 2)) : map(X1, (_, i) => (+X1[i] + +X2[i]) / 2, Float64Array);
		},
		label: x1.label
	};
}
function maybeApplyInterval(V, scale) {
	const t = maybeIntervalTransform(scale?.interval, scale?.type);
	return t ? map(V, t) : V;
}
function maybeIntervalTransform(interval, type) {
	const i = maybeInterval(interval, type);
	return i && ((v) => defined(v) ? i.floor(v) : v);
}
function maybeInterval(interval, type) {
	if (interval == null) return;
	if (typeof interval === "number") return numberInterval(interval);
	if (typeof interval === "string") return (type === "time" ? timeInterval : utcInterval)(interval);
	if (typeof interval.floor !== "function") throw new Error("invalid interval; missing floor method");
	if (typeof interval.offset !== "function") throw new Error("invalid interval; missing offset method");
	return interval;
}
function numberInterval(interval) {
	interval = +interval;
	if (0 < interval && interval < 1 && Number.isInteger(1 / interval)) interval = -1 / interval;
	const n = Math.abs(interval);
	return interval < 0 ? {
		floor: (d) => Math.floor(d * n) / n,
		offset: (d, s = 1) => (d * n + Math.floor(s)) / n,
		range: (lo, hi) => range$2(Math.ceil(lo * n), hi * n).map((x) => x / n)
	} : {
		floor: (d) => Math.floor(d / n) * n,
		offset: (d, s = 1) => d + n * Math.floor(s),
		range: (lo, hi) => range$2(Math.ceil(lo / n), hi / n).map((x) => x * n)
	};
}
function maybeRangeInterval(interval, type) {
	interval = maybeInterval(interval, type);
	if (interval && typeof interval.range !== "function") throw new Error("invalid interval: missing range method");
	return interval;
}
function maybeNiceInterval(interval, type) {
	interval = maybeRangeInterval(interval, type);
	if (interval && typeof interval.ceil !== "function") throw new Error("invalid interval: missing ceil method");
	return interval;
}
function isTimeInterval(t) {
	return isInterval(t) && typeof t?.floor === "function" && t.floor() instanceof Date;
}
function isInterval(t) {
	return typeof t?.range === "function";
}
function maybeValue(value) {
	return value === void 0 || isOptions(value) ? value : { value };
}
function numberChannel(source) {
	return source == null ? null : {
		transform: (data) => valueof(data, source, Float64Array),
		label: labelof(source)
	};
}
function isIterable(value) {
	return value && typeof value[Symbol.iterator] === "function";
}
function isTextual(values) {
	for (const value of values) {
		if (value == null) continue;
		return typeof value !== "object" || value instanceof Date;
	}
}
function isOrdinal(values) {
	for (const value of values) {
		if (value == null) continue;
		const type = typeof value;
		return type === "string" || type === "boolean";
	}
}
function isTemporal(values) {
	for (const value of values) {
		if (value == null) continue;
		return value instanceof Date;
	}
}
function isTemporalString(values) {
	for (const value of values) {
		if (value == null) continue;
		return typeof value === "string" && isNaN(value) && parse(value);
	}
}
function isNumericString(values) {
	for (const value of values) {
		if (value == null) continue;
		if (typeof value !== "string") return false;
		if (!value.trim()) continue;
		return !isNaN(value);
	}
}
function isNumeric(values) {
	for (const value of values) {
		if (value == null) continue;
		return typeof value === "number";
	}
}
function isEvery(values, is) {
	let every;
	for (const value of values) {
		if (value == null) continue;
		if (!is(value)) return false;
		every = true;
	}
	return every;
}
var namedColors = new Set("none,currentcolor,transparent,aliceblue,antiquewhite,aqua,aquamarine,azure,beige,bisque,black,blanchedalmond,blue,blueviolet,brown,burlywood,cadetblue,chartreuse,chocolate,coral,cornflowerblue,cornsilk,crimson,cyan,darkblue,darkcyan,darkgoldenrod,darkgray,darkgreen,darkgrey,darkkhaki,darkmagenta,darkolivegreen,darkorange,darkorchid,darkred,darksalmon,darkseagreen,darkslateblue,darkslategray,darkslategrey,darkturquoise,darkviolet,deeppink,deepskyblue,dimgray,dimgrey,dodgerblue,firebrick,floralwhite,forestgreen,fuchsia,gainsboro,ghostwhite,gold,goldenrod,gray,green,greenyellow,grey,honeydew,hotpink,indianred,indigo,ivory,khaki,lavender,lavenderblush,lawngreen,lemonchiffon,lightblue,lightcoral,lightcyan,lightgoldenrodyellow,lightgray,lightgreen,lightgrey,lightpink,lightsalmon,lightseagreen,lightskyblue,lightslategray,lightslategrey,lightsteelblue,lightyellow,lime,limegreen,linen,magenta,maroon,mediumaquamarine,mediumblue,mediumorchid,mediumpurple,mediumseagreen,mediumslateblue,mediumspringgreen,mediumturquoise,mediumvioletred,midnightblue,mintcream,mistyrose,moccasin,navajowhite,navy,oldlace,olive,olivedrab,orange,orangered,orchid,palegoldenrod,palegreen,paleturquoise,palevioletred,papayawhip,peachpuff,peru,pink,plum,powderblue,purple,rebeccapurple,red,rosybrown,royalblue,saddlebrown,salmon,sandybrown,seagreen,seashell,sienna,silver,skyblue,slateblue,slategray,slategrey,snow,springgreen,steelblue,tan,teal,thistle,tomato,turquoise,violet,wheat,white,whitesmoke,yellow".split(","));
function isColor(value) {
	if (typeof value !== "string") return false;
	value = value.toLowerCase().trim();
	return /^#[0-9a-f]{3,8}$/.test(value) || /^(?:url|var|rgb|rgba|hsl|hsla|hwb|lab|lch|oklab|oklch|color|color-mix)\(.*\)$/.test(value) || namedColors.has(value);
}
function isOpacity(value) {
	return typeof value === "number" && (0 <= value && value <= 1 || isNaN(value));
}
function isNoneish(value) {
	return value == null || isNone(value);
}
function isNone(value) {
	return /^\s*none\s*$/i.test(value);
}
function isRound(value) {
	return /^\s*round\s*$/i.test(value);
}
function maybeAnchor$1(value, name) {
	return maybeKeyword(value, name, [
		"middle",
		"top-left",
		"top",
		"top-right",
		"right",
		"bottom-right",
		"bottom",
		"bottom-left",
		"left"
	]);
}
function maybeFrameAnchor(value = "middle") {
	return maybeAnchor$1(value, "frameAnchor");
}
function inherit(options = {}, ...rest) {
	let o = options;
	for (const defaults of rest) for (const key in defaults) if (o[key] === void 0) {
		const value = defaults[key];
		if (o === options) o = {
			...o,
			[key]: value
		};
		else o[key] = value;
	}
	return o;
}
function named(things) {
	console.warn("named iterables are deprecated; please use an object instead");
	const names = /* @__PURE__ */ new Set();
	return Object.fromEntries(Array.from(things, (thing) => {
		const { name } = thing;
		if (name == null) throw new Error("missing name");
		const key = `${name}`;
		if (key === "__proto__") throw new Error(`illegal name: ${key}`);
		if (names.has(key)) throw new Error(`duplicate name: ${key}`);
		names.add(key);
		return [name, thing];
	}));
}
function maybeNamed(things) {
	return isIterable(things) ? named(things) : things;
}
function maybeClip(clip) {
	if (clip === true) clip = "frame";
	else if (clip === false) clip = null;
	else if (!isGeoJSON(clip) && clip != null) {
		clip = keyword(clip, "clip", ["frame", "sphere"]);
		if (clip === "sphere") clip = { type: "Sphere" };
	}
	return clip;
}
function isArrowTable(value) {
	return value && typeof value.getChild === "function" && typeof value.toArray === "function" && value.schema && Array.isArray(value.schema.fields);
}
function isArrowVector(value) {
	return value && typeof value.toArray === "function" && value.type;
}
function isArrowDateType(type) {
	return type && (type.typeId === 8 || type.typeId === 10) && type.unit === 1;
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/scales/index.js
var position = Symbol("position");
var color = Symbol("color");
var radius = Symbol("radius");
var length = Symbol("length");
var opacity = Symbol("opacity");
var symbol = Symbol("symbol");
var projection = Symbol("projection");
var registry = /* @__PURE__ */ new Map([
	["x", position],
	["y", position],
	["fx", position],
	["fy", position],
	["r", radius],
	["color", color],
	["opacity", opacity],
	["symbol", symbol],
	["length", length],
	["projection", projection]
]);
function isPosition(kind) {
	return kind === position || kind === projection;
}
function hasNumericRange(kind) {
	return kind === position || kind === radius || kind === length || kind === opacity;
}
var sqrt4_3 = 2 / Math.sqrt(3);
var symbols = /* @__PURE__ */ new Map([
	["asterisk", asterisk],
	["circle", circle],
	["cross", cross],
	["diamond", diamond],
	["diamond2", diamond2],
	["hexagon", { draw(context, size) {
		const rx = Math.sqrt(size / Math.PI), ry = rx * sqrt4_3, hy = ry / 2;
		context.moveTo(0, ry);
		context.lineTo(rx, hy);
		context.lineTo(rx, -hy);
		context.lineTo(0, -ry);
		context.lineTo(-rx, -hy);
		context.lineTo(-rx, hy);
		context.closePath();
	} }],
	["plus", plus],
	["square", square],
	["square2", square2],
	["star", star],
	["times", times],
	["triangle", triangle],
	["triangle2", triangle2],
	["wye", wye]
]);
function isSymbolObject(value) {
	return value && typeof value.draw === "function";
}
function isSymbol(value) {
	if (isSymbolObject(value)) return true;
	if (typeof value !== "string") return false;
	return symbols.has(value.toLowerCase());
}
function maybeSymbol(symbol) {
	if (symbol == null || isSymbolObject(symbol)) return symbol;
	const value = symbols.get(`${symbol}`.toLowerCase());
	if (value) return value;
	throw new Error(`invalid symbol: ${symbol}`);
}
function maybeSymbolChannel(symbol) {
	if (symbol == null || isSymbolObject(symbol)) return [void 0, symbol];
	if (typeof symbol === "string") {
		const value = symbols.get(`${symbol}`.toLowerCase());
		if (value) return [void 0, value];
	}
	return [symbol, void 0];
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/basic.js
function basic({ filter: f1, sort: s1, reverse: r1, transform: t1, initializer: i1, ...options } = {}, transform) {
	if (t1 === void 0) {
		if (f1 != null) t1 = filterTransform(f1);
		if (s1 != null && !isDomainSort(s1)) t1 = composeTransform(t1, sortTransform(s1));
		if (r1) t1 = composeTransform(t1, reverseTransform);
	}
	if (transform != null && i1 != null) throw new Error("transforms cannot be applied after initializers");
	return {
		...options,
		...(s1 === null || isDomainSort(s1)) && { sort: s1 },
		transform: composeTransform(t1, transform)
	};
}
function initializer({ filter: f1, sort: s1, reverse: r1, initializer: i1, ...options } = {}, initializer) {
	if (i1 === void 0) {
		if (f1 != null) i1 = filterTransform(f1);
		if (s1 != null && !isDomainSort(s1)) i1 = composeInitializer(i1, sortTransform(s1));
		if (r1) i1 = composeInitializer(i1, reverseTransform);
	}
	return {
		...options,
		...(s1 === null || isDomainSort(s1)) && { sort: s1 },
		initializer: composeInitializer(i1, initializer)
	};
}
function composeTransform(t1, t2) {
	if (t1 == null) return t2 === null ? void 0 : t2;
	if (t2 == null) return t1 === null ? void 0 : t1;
	return function(data, facets, plotOptions) {
		({data, facets} = t1.call(this, data, facets, plotOptions));
		return t2.call(this, dataify(data), facets, plotOptions);
	};
}
function composeInitializer(i1, i2) {
	if (i1 == null) return i2 === null ? void 0 : i2;
	if (i2 == null) return i1 === null ? void 0 : i1;
	return function(data, facets, channels, ...args) {
		let c1, d1, f1, c2, d2, f2;
		({data: d1 = data, facets: f1 = facets, channels: c1} = i1.call(this, data, facets, channels, ...args));
		({data: d2 = d1, facets: f2 = f1, channels: c2} = i2.call(this, d1, f1, {
			...channels,
			...c1
		}, ...args));
		return {
			data: d2,
			facets: f2,
			channels: {
				...c1,
				...c2
			}
		};
	};
}
function apply(options, t) {
	return (options.initializer != null ? initializer : basic)(options, t);
}
function filterTransform(value) {
	return (data, facets) => {
		const V = valueof(data, value);
		return {
			data,
			facets: facets.map((I) => I.filter((i) => V[i]))
		};
	};
}
function reverseTransform(data, facets) {
	return {
		data,
		facets: facets.map((I) => I.slice().reverse())
	};
}
function sort(order, { sort, ...options } = {}) {
	return {
		...(isOptions(order) && order.channel !== void 0 ? initializer : apply)(options, sortTransform(order)),
		sort: isDomainSort(sort) ? sort : null
	};
}
function sortTransform(value) {
	return (typeof value === "function" && value.length !== 1 ? sortData : sortValue)(value);
}
function sortData(compare) {
	return (data, facets) => {
		const compareData = isArray(data) ? (i, j) => compare(data[i], data[j]) : (i, j) => compare(data.get(i), data.get(j));
		return {
			data,
			facets: facets.map((I) => I.slice().sort(compareData))
		};
	};
}
function sortValue(value) {
	let channel, order;
	({channel, value, order} = { ...maybeValue(value) });
	const negate = channel?.startsWith("-");
	if (negate) channel = channel.slice(1);
	if (order === void 0) order = negate ? descendingDefined : ascendingDefined;
	if (typeof order !== "function") switch (`${order}`.toLowerCase()) {
		case "ascending":
			order = ascendingDefined;
			break;
		case "descending":
			order = descendingDefined;
			break;
		default: throw new Error(`invalid order: ${order}`);
	}
	return (data, facets, channels) => {
		let V;
		if (channel === void 0) V = valueof(data, value);
		else {
			if (channels === void 0) throw new Error("channel sort requires an initializer");
			V = channels[channel];
			if (!V) return {};
			V = V.value;
		}
		const compareValue = (i, j) => order(V[i], V[j]);
		return {
			data,
			facets: facets.map((I) => I.slice().sort(compareValue))
		};
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/group.js
function hasOutput(outputs, ...names) {
	for (const { name } of outputs) if (names.includes(name)) return true;
	return false;
}
function maybeOutputs(outputs, inputs, asOutput = maybeOutput) {
	const entries = Object.entries(outputs);
	if (inputs.title != null && outputs.title === void 0) entries.push(["title", reduceTitle]);
	if (inputs.href != null && outputs.href === void 0) entries.push(["href", reduceFirst]);
	return entries.filter(([, reduce]) => reduce !== void 0).map(([name, reduce]) => reduce === null ? nullOutput(name) : asOutput(name, reduce, inputs));
}
function maybeOutput(name, reduce, inputs, asEvaluator = maybeEvaluator) {
	let scale;
	if (isObject(reduce) && "reduce" in reduce) scale = reduce.scale, reduce = reduce.reduce;
	const evaluator = asEvaluator(name, reduce, inputs);
	const [output, setOutput] = column(evaluator.label);
	let O;
	return {
		name,
		output: scale === void 0 ? output : {
			value: output,
			scale
		},
		initialize(data) {
			evaluator.initialize(data);
			O = setOutput([]);
		},
		scope(scope, I) {
			evaluator.scope(scope, I);
		},
		reduce(I, extent) {
			O.push(evaluator.reduce(I, extent));
		}
	};
}
function nullOutput(name) {
	return {
		name,
		initialize() {},
		scope() {},
		reduce() {}
	};
}
function maybeEvaluator(name, reduce, inputs, asReduce = maybeReduce) {
	const input = maybeInput(name, inputs);
	const reducer = asReduce(reduce, input);
	let V, context;
	return {
		label: labelof(reducer === reduceCount ? null : input, reducer.label),
		initialize(data) {
			V = input === void 0 ? data : valueof(data, input);
			if (reducer.scope === "data") context = reducer.reduceIndex(range$1(data), V);
		},
		scope(scope, I) {
			if (reducer.scope === scope) context = reducer.reduceIndex(I, V);
		},
		reduce(I, extent) {
			return reducer.scope == null ? reducer.reduceIndex(I, V, extent) : reducer.reduceIndex(I, V, context, extent);
		}
	};
}
function maybeGroup(I, X) {
	return X ? group(I, (i) => X[i]) : [[, I]];
}
function maybeReduce(reduce, value, fallback = invalidReduce) {
	if (reduce == null) return fallback(reduce);
	if (typeof reduce.reduceIndex === "function") return reduce;
	if (typeof reduce.reduce === "function" && isObject(reduce)) return reduceReduce(reduce);
	if (typeof reduce === "function") return reduceFunction(reduce);
	if (/^p\d{2}$/i.test(reduce)) return reduceAccessor(percentile(reduce));
	switch (`${reduce}`.toLowerCase()) {
		case "first": return reduceFirst;
		case "last": return reduceLast;
		case "identity": return reduceIdentity;
		case "count": return reduceCount;
		case "distinct": return reduceDistinct;
		case "sum": return value == null ? reduceCount : reduceSum;
		case "proportion": return reduceProportion(value, "data");
		case "proportion-facet": return reduceProportion(value, "facet");
		case "deviation": return reduceAccessor(deviation);
		case "min": return reduceAccessor(min$1);
		case "min-index": return reduceAccessor(minIndex);
		case "max": return reduceAccessor(max);
		case "max-index": return reduceAccessor(maxIndex);
		case "mean": return reduceMaybeTemporalAccessor(mean);
		case "median": return reduceMaybeTemporalAccessor(median);
		case "variance": return reduceAccessor(variance);
		case "mode": return reduceAccessor(mode);
	}
	return fallback(reduce);
}
function invalidReduce(reduce) {
	throw new Error(`invalid reduce: ${reduce}`);
}
function maybeSubgroup(outputs, inputs) {
	for (const name in inputs) {
		const value = inputs[name];
		if (value !== void 0 && !outputs.some((o) => o.name === name)) return value;
	}
}
function maybeSort(facets, sort, reverse) {
	if (sort) {
		const S = sort.output.transform();
		const compare = (i, j) => ascendingDefined(S[i], S[j]);
		facets.forEach((f) => f.sort(compare));
	}
	if (reverse) facets.forEach((f) => f.reverse());
}
function reduceReduce(reduce) {
	console.warn("deprecated reduce interface; implement reduceIndex instead.");
	return {
		...reduce,
		reduceIndex: reduce.reduce.bind(reduce)
	};
}
function reduceFunction(f) {
	return { reduceIndex(I, X, extent) {
		return f(take(X, I), extent);
	} };
}
function reduceAccessor(f) {
	return { reduceIndex(I, X) {
		return f(I, (i) => X[i]);
	} };
}
function reduceMaybeTemporalAccessor(f) {
	return { reduceIndex(I, X) {
		const x = f(I, (i) => X[i]);
		return isTemporal(X) ? new Date(x) : x;
	} };
}
var reduceIdentity = { reduceIndex(I, X) {
	return take(X, I);
} };
var reduceFirst = { reduceIndex(I, X) {
	return X[I[0]];
} };
var reduceTitle = { reduceIndex(I, X) {
	const groups = sort$1(rollup(I, (V) => V.length, (i) => X[i]), second);
	const top = groups.slice(-5).reverse();
	if (top.length < groups.length) {
		const bottom = groups.slice(0, -4);
		top[4] = [`… ${bottom.length.toLocaleString("en-US")} more`, sum$1(bottom, second)];
	}
	return top.map(([key, value]) => `${key} (${value.toLocaleString("en-US")})`).join("\n");
} };
var reduceLast = { reduceIndex(I, X) {
	return X[I[I.length - 1]];
} };
var reduceCount = {
	label: "Frequency",
	reduceIndex(I) {
		return I.length;
	}
};
var reduceDistinct = {
	label: "Distinct",
	reduceIndex(I, X) {
		const s = new InternSet();
		for (const i of I) s.add(X[i]);
		return s.size;
	}
};
var reduceSum = reduceAccessor(sum$1);
function reduceProportion(value, scope) {
	return value == null ? {
		scope,
		label: "Frequency",
		reduceIndex: (I, V, basis = 1) => I.length / basis
	} : {
		scope,
		reduceIndex: (I, V, basis = 1) => sum$1(I, (i) => V[i]) / basis
	};
}
var reduceZ = { reduceIndex(I, X, { z }) {
	return z;
} };
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/channel.js
function createChannel(data, { scale, type, value, filter, hint, label = labelof(value) }, name) {
	if (hint === void 0 && typeof value?.transform === "function") hint = value.hint;
	return inferChannelScale(name, {
		scale,
		type,
		value: valueof(data, value),
		label,
		filter,
		hint
	});
}
function createChannels(channels, data) {
	return Object.fromEntries(Object.entries(channels).map(([name, channel]) => [name, createChannel(data, channel, name)]));
}
function valueObject(channels, scales) {
	const values = Object.fromEntries(Object.entries(channels).map(([name, { scale: scaleName, value }]) => {
		const scale = scaleName == null ? null : scales[scaleName];
		return [name, scale == null ? value : map(value, scale)];
	}));
	values.channels = channels;
	return values;
}
function inferChannelScale(name, channel) {
	const { scale, value } = channel;
	if (scale === true || scale === "auto") switch (name) {
		case "fill":
		case "stroke":
		case "color":
			channel.scale = scale !== true && isEvery(value, isColor) ? null : "color";
			channel.defaultScale = "color";
			break;
		case "fillOpacity":
		case "strokeOpacity":
		case "opacity":
			channel.scale = scale !== true && isEvery(value, isOpacity) ? null : "opacity";
			channel.defaultScale = "opacity";
			break;
		case "symbol":
			if (scale !== true && isEvery(value, isSymbol)) {
				channel.scale = null;
				channel.value = map(value, maybeSymbol);
			} else channel.scale = "symbol";
			channel.defaultScale = "symbol";
			break;
		default: channel.scale = registry.has(name) ? name : null;
	}
	else if (scale === false) channel.scale = null;
	else if (scale != null && !registry.has(scale)) throw new Error(`unknown scale: ${scale}`);
	return channel;
}
function channelDomain(data, facets, channels, facetChannels, options) {
	const { order: defaultOrder, reverse: defaultReverse, reduce: defaultReduce = true, limit: defaultLimit } = options;
	for (const x in options) {
		if (!registry.has(x)) continue;
		let { value: y, order = defaultOrder, reverse = defaultReverse, reduce = defaultReduce, limit = defaultLimit } = maybeValue(options[x]);
		const negate = y?.startsWith("-");
		if (negate) y = y.slice(1);
		order = order === void 0 ? negate !== (y === "width" || y === "height") ? descendingGroup : ascendingGroup : maybeOrder$1(order);
		if (reduce == null || reduce === false) continue;
		const X = x === "fx" || x === "fy" ? reindexFacetChannel(facets, facetChannels[x]) : findScaleChannel(channels, x);
		if (!X) throw new Error(`missing channel for scale: ${x}`);
		const XV = X.value;
		const [lo = 0, hi = Infinity] = isIterable(limit) ? limit : limit < 0 ? [limit] : [0, limit];
		if (y == null) X.domain = () => {
			let domain = Array.from(new InternSet(XV));
			if (reverse) domain = domain.reverse();
			if (lo !== 0 || hi !== Infinity) domain = domain.slice(lo, hi);
			return domain;
		};
		else {
			const YV = y === "data" ? data : y === "height" ? difference(channels, "y1", "y2") : y === "width" ? difference(channels, "x1", "x2") : values(channels, y, y === "y" ? "y2" : y === "x" ? "x2" : void 0);
			const reducer = maybeReduce(reduce === true ? "max" : reduce, YV);
			X.domain = () => {
				let domain = rollups(range$1(XV), (I) => reducer.reduceIndex(I, YV), (i) => XV[i]);
				if (order) domain.sort(order);
				if (reverse) domain.reverse();
				if (lo !== 0 || hi !== Infinity) domain = domain.slice(lo, hi);
				return domain.map(first);
			};
		}
	}
}
function findScaleChannel(channels, scale) {
	for (const name in channels) {
		const channel = channels[name];
		if (channel.scale === scale) return channel;
	}
}
function reindexFacetChannel(facets, channel) {
	const originalFacets = facets.original;
	if (originalFacets === facets) return channel;
	const V1 = channel.value;
	const V2 = channel.value = [];
	for (let i = 0; i < originalFacets.length; ++i) {
		const vi = V1[originalFacets[i][0]];
		for (const j of facets[i]) V2[j] = vi;
	}
	return channel;
}
function difference(channels, k1, k2) {
	const X1 = values(channels, k1);
	return map(values(channels, k2), (x2, i) => Math.abs(x2 - X1[i]), Float64Array);
}
function values(channels, name, alias) {
	let channel = channels[name];
	if (!channel && alias !== void 0) channel = channels[alias];
	if (channel) return channel.value;
	throw new Error(`missing channel: ${name}`);
}
function maybeOrder$1(order) {
	if (order == null || typeof order === "function") return order;
	switch (`${order}`.toLowerCase()) {
		case "ascending": return ascendingGroup;
		case "descending": return descendingGroup;
	}
	throw new Error(`invalid order: ${order}`);
}
function ascendingGroup([ak, av], [bk, bv]) {
	return ascendingDefined(av, bv) || ascendingDefined(ak, bk);
}
function descendingGroup([ak, av], [bk, bv]) {
	return descendingDefined(av, bv) || ascendingDefined(ak, bk);
}
function getSource(channels, key) {
	let channel = channels[key];
	if (!channel) return;
	while (channel.source) channel = channel.source;
	return channel.source === null ? null : channel;
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/scales/schemes.js
var categoricalSchemes = /* @__PURE__ */ new Map([
	["accent", Accent],
	["category10", category10],
	["dark2", Dark2],
	["observable10", observable10],
	["paired", Paired],
	["pastel1", Pastel1],
	["pastel2", Pastel2],
	["set1", Set1],
	["set2", Set2],
	["set3", Set3],
	["tableau10", Tableau10]
]);
function isCategoricalScheme(scheme) {
	return scheme != null && categoricalSchemes.has(`${scheme}`.toLowerCase());
}
var ordinalSchemes = new Map([
	...categoricalSchemes,
	["brbg", scheme11(scheme$q, BrBG)],
	["prgn", scheme11(scheme$p, PRGn)],
	["piyg", scheme11(scheme$o, PiYG)],
	["puor", scheme11(scheme$n, PuOr)],
	["rdbu", scheme11(scheme$m, RdBu)],
	["rdgy", scheme11(scheme$l, RdGy)],
	["rdylbu", scheme11(scheme$k, RdYlBu)],
	["rdylgn", scheme11(scheme$j, RdYlGn)],
	["spectral", scheme11(scheme$i, Spectral)],
	["burd", scheme11r(scheme$m, RdBu)],
	["buylrd", scheme11r(scheme$k, RdYlBu)],
	["blues", scheme9(scheme$5, Blues)],
	["greens", scheme9(scheme$4, Greens)],
	["greys", scheme9(scheme$3, Greys)],
	["oranges", scheme9(scheme, Oranges)],
	["purples", scheme9(scheme$2, Purples)],
	["reds", scheme9(scheme$1, Reds)],
	["turbo", schemei(turbo)],
	["viridis", schemei(viridis)],
	["magma", schemei(magma)],
	["inferno", schemei(inferno)],
	["plasma", schemei(plasma)],
	["cividis", schemei(cividis)],
	["cubehelix", schemei(cubehelix)],
	["warm", schemei(warm)],
	["cool", schemei(cool)],
	["bugn", scheme9(scheme$h, BuGn)],
	["bupu", scheme9(scheme$g, BuPu)],
	["gnbu", scheme9(scheme$f, GnBu)],
	["orrd", scheme9(scheme$e, OrRd)],
	["pubu", scheme9(scheme$c, PuBu)],
	["pubugn", scheme9(scheme$d, PuBuGn)],
	["purd", scheme9(scheme$b, PuRd)],
	["rdpu", scheme9(scheme$a, RdPu)],
	["ylgn", scheme9(scheme$8, YlGn)],
	["ylgnbu", scheme9(scheme$9, YlGnBu)],
	["ylorbr", scheme9(scheme$7, YlOrBr)],
	["ylorrd", scheme9(scheme$6, YlOrRd)],
	["rainbow", schemeicyclical(rainbow)],
	["sinebow", schemeicyclical(sinebow)]
]);
function scheme9(scheme, interpolate) {
	return ({ length: n }) => {
		if (n === 1) return [scheme[3][1]];
		if (n === 2) return [scheme[3][1], scheme[3][2]];
		n = Math.max(3, Math.floor(n));
		return n > 9 ? quantize(interpolate, n) : scheme[n];
	};
}
function scheme11(scheme, interpolate) {
	return ({ length: n }) => {
		if (n === 2) return [scheme[3][0], scheme[3][2]];
		n = Math.max(3, Math.floor(n));
		return n > 11 ? quantize(interpolate, n) : scheme[n];
	};
}
function scheme11r(scheme, interpolate) {
	return ({ length: n }) => {
		if (n === 2) return [scheme[3][2], scheme[3][0]];
		n = Math.max(3, Math.floor(n));
		return n > 11 ? quantize((t) => interpolate(1 - t), n) : scheme[n].slice().reverse();
	};
}
function schemei(interpolate) {
	return ({ length: n }) => quantize(interpolate, Math.max(2, Math.floor(n)));
}
function schemeicyclical(interpolate) {
	return ({ length: n }) => quantize(interpolate, Math.floor(n) + 1).slice(0, -1);
}
function ordinalScheme(scheme) {
	const s = `${scheme}`.toLowerCase();
	if (!ordinalSchemes.has(s)) throw new Error(`unknown ordinal scheme: ${s}`);
	return ordinalSchemes.get(s);
}
function ordinalRange(scheme, length) {
	const s = ordinalScheme(scheme);
	const r = typeof s === "function" ? s({ length }) : s;
	return r.length !== length ? r.slice(0, length) : r;
}
function maybeBooleanRange(domain, scheme = "greys") {
	const range = /* @__PURE__ */ new Set();
	const [f, t] = ordinalRange(scheme, 2);
	for (const value of domain) {
		if (value == null) continue;
		if (value === true) range.add(t);
		else if (value === false) range.add(f);
		else return;
	}
	return [...range];
}
var quantitativeSchemes = /* @__PURE__ */ new Map([
	["brbg", BrBG],
	["prgn", PRGn],
	["piyg", PiYG],
	["puor", PuOr],
	["rdbu", RdBu],
	["rdgy", RdGy],
	["rdylbu", RdYlBu],
	["rdylgn", RdYlGn],
	["spectral", Spectral],
	["burd", (t) => RdBu(1 - t)],
	["buylrd", (t) => RdYlBu(1 - t)],
	["blues", Blues],
	["greens", Greens],
	["greys", Greys],
	["purples", Purples],
	["reds", Reds],
	["oranges", Oranges],
	["turbo", turbo],
	["viridis", viridis],
	["magma", magma],
	["inferno", inferno],
	["plasma", plasma],
	["cividis", cividis],
	["cubehelix", cubehelix],
	["warm", warm],
	["cool", cool],
	["bugn", BuGn],
	["bupu", BuPu],
	["gnbu", GnBu],
	["orrd", OrRd],
	["pubugn", PuBuGn],
	["pubu", PuBu],
	["purd", PuRd],
	["rdpu", RdPu],
	["ylgnbu", YlGnBu],
	["ylgn", YlGn],
	["ylorbr", YlOrBr],
	["ylorrd", YlOrRd],
	["rainbow", rainbow],
	["sinebow", sinebow]
]);
function quantitativeScheme(scheme) {
	const s = `${scheme}`.toLowerCase();
	if (!quantitativeSchemes.has(s)) throw new Error(`unknown quantitative scheme: ${s}`);
	return quantitativeSchemes.get(s);
}
var divergingSchemes = /* @__PURE__ */ new Set([
	"brbg",
	"prgn",
	"piyg",
	"puor",
	"rdbu",
	"rdgy",
	"rdylbu",
	"rdylgn",
	"spectral",
	"burd",
	"buylrd"
]);
function isDivergingScheme(scheme) {
	return scheme != null && divergingSchemes.has(`${scheme}`.toLowerCase());
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/scales/quantitative.js
var flip = (i) => (t) => i(1 - t);
var unit = [0, 1];
var interpolators = /* @__PURE__ */ new Map([
	["number", number$3],
	["rgb", rgb],
	["hsl", hsl_default],
	["hcl", hcl_default],
	["lab", lab]
]);
function maybeInterpolator(interpolate) {
	const i = `${interpolate}`.toLowerCase();
	if (!interpolators.has(i)) throw new Error(`unknown interpolator: ${i}`);
	return interpolators.get(i);
}
function createScaleQ(key, scale, channels, { type, nice, clamp, zero, domain = inferAutoDomain(key, channels), unknown, round: round$1, scheme, interval, range = registry.get(key) === radius ? inferRadialRange(channels, domain) : registry.get(key) === length ? inferLengthRange(channels, domain) : registry.get(key) === opacity ? unit : void 0, interpolate = registry.get(key) === color ? scheme == null && range !== void 0 ? rgb : quantitativeScheme(scheme !== void 0 ? scheme : type === "cyclical" ? "rainbow" : "turbo") : round$1 ? round : number$3, reverse: reverse$2 }) {
	domain = maybeRepeat(domain);
	interval = maybeRangeInterval(interval, type);
	if (type === "cyclical" || type === "sequential") type = "linear";
	if (typeof interpolate !== "function") interpolate = maybeInterpolator(interpolate);
	reverse$2 = !!reverse$2;
	if (range !== void 0) {
		if (domain.length !== (range = maybeRepeat(range)).length) {
			if (interpolate.length === 1) throw new Error("invalid piecewise interpolator");
			interpolate = piecewise(interpolate, range);
			range = void 0;
		}
	}
	if (interpolate.length === 1) {
		if (reverse$2) {
			interpolate = flip(interpolate);
			reverse$2 = false;
		}
		if (range === void 0) {
			range = Float64Array.from(domain, (_, i) => i / (domain.length - 1));
			if (range.length === 2) range = unit;
		}
		scale.interpolate((range === unit ? constant : interpolatePiecewise)(interpolate));
	} else scale.interpolate(interpolate);
	if (zero) {
		const [min, max] = extent$1(domain);
		if (min > 0 || max < 0) {
			domain = slice(domain);
			if ((orderof(domain) || 1) === Math.sign(min)) domain[0] = 0;
			else domain[domain.length - 1] = 0;
		}
	}
	if (reverse$2) domain = reverse(domain);
	scale.domain(domain).unknown(unknown);
	if (nice) scale.nice(maybeNice(nice, type)), domain = scale.domain();
	if (range !== void 0) scale.range(range);
	if (clamp) scale.clamp(clamp);
	return {
		type,
		domain,
		range,
		scale,
		interpolate,
		interval
	};
}
function maybeRepeat(values) {
	values = arrayify(values);
	return values.length >= 2 ? values : [values[0], values[0]];
}
function maybeNice(nice, type) {
	return nice === true ? void 0 : typeof nice === "number" ? nice : maybeNiceInterval(nice, type);
}
function createScaleLinear(key, channels, options) {
	return createScaleQ(key, linear(), channels, options);
}
function createScaleSqrt(key, channels, options) {
	return createScalePow(key, channels, {
		...options,
		exponent: .5
	});
}
function createScalePow(key, channels, { exponent = 1, ...options }) {
	return createScaleQ(key, pow().exponent(exponent), channels, {
		...options,
		type: "pow"
	});
}
function createScaleLog(key, channels, { base = 10, domain = inferLogDomain(channels), ...options }) {
	return createScaleQ(key, log().base(base), channels, {
		...options,
		domain
	});
}
function createScaleSymlog(key, channels, { constant = 1, ...options }) {
	return createScaleQ(key, symlog().constant(constant), channels, options);
}
function createScaleQuantile(key, channels, { range, quantiles = range === void 0 ? 5 : (range = [...range]).length, n = quantiles, scheme = "rdylbu", domain = inferQuantileDomain(channels), unknown, interpolate, reverse }) {
	if (range === void 0) range = interpolate !== void 0 ? quantize(interpolate, n) : registry.get(key) === color ? ordinalRange(scheme, n) : void 0;
	if (domain.length > 0) domain = quantile(domain, range === void 0 ? { length: n } : range).quantiles();
	return createScaleThreshold(key, channels, {
		domain,
		range,
		reverse,
		unknown
	});
}
function createScaleQuantize(key, channels, { range, n = range === void 0 ? 5 : (range = [...range]).length, scheme = "rdylbu", domain = inferAutoDomain(key, channels), unknown, interpolate, reverse }) {
	const [min, max] = extent$1(domain);
	let thresholds;
	if (range === void 0) {
		thresholds = ticks(min, max, n);
		if (thresholds[0] <= min) thresholds.splice(0, 1);
		if (thresholds[thresholds.length - 1] >= max) thresholds.pop();
		n = thresholds.length + 1;
		range = interpolate !== void 0 ? quantize(interpolate, n) : registry.get(key) === color ? ordinalRange(scheme, n) : void 0;
	} else {
		thresholds = quantize(number$3(min, max), n + 1).slice(1, -1);
		if (min instanceof Date) thresholds = thresholds.map((x) => new Date(x));
	}
	if (orderof(arrayify(domain)) < 0) thresholds.reverse();
	return createScaleThreshold(key, channels, {
		domain: thresholds,
		range,
		reverse,
		unknown
	});
}
function createScaleThreshold(key, channels, { domain = [0], unknown, scheme = "rdylbu", interpolate, range = interpolate !== void 0 ? quantize(interpolate, domain.length + 1) : registry.get(key) === color ? ordinalRange(scheme, domain.length + 1) : void 0, reverse: reverse$3 }) {
	domain = arrayify(domain);
	const sign = orderof(domain);
	if (!isNaN(sign) && !isOrdered(domain, sign)) throw new Error(`the ${key} scale has a non-monotonic domain`);
	if (reverse$3) range = reverse(range);
	return {
		type: "threshold",
		scale: threshold(sign < 0 ? reverse(domain) : domain, range === void 0 ? [] : range).unknown(unknown),
		domain,
		range
	};
}
function isOrdered(domain, sign) {
	for (let i = 1, n = domain.length, d = domain[0]; i < n; ++i) {
		const s = descending(d, d = domain[i]);
		if (s !== 0 && s !== sign) return false;
	}
	return true;
}
function createScaleIdentity(key) {
	return {
		type: "identity",
		scale: hasNumericRange(registry.get(key)) ? identity$2() : (d) => d
	};
}
function inferDomain$1(channels, f = finite) {
	return channels.length ? [min$1(channels, ({ value }) => value === void 0 ? value : min$1(value, f)), max(channels, ({ value }) => value === void 0 ? value : max(value, f))] : [0, 1];
}
function inferAutoDomain(key, channels) {
	const type = registry.get(key);
	return (type === radius || type === opacity || type === length ? inferZeroDomain : inferDomain$1)(channels);
}
function inferZeroDomain(channels) {
	return [0, channels.length ? max(channels, ({ value }) => value === void 0 ? value : max(value, finite)) : 1];
}
function inferRadialRange(channels, domain) {
	const hint = channels.find(({ radius }) => radius !== void 0);
	if (hint !== void 0) return [0, hint.radius];
	const h25 = quantile$1(channels, .5, ({ value }) => value === void 0 ? NaN : quantile$1(value, .25, positive));
	const range = domain.map((d) => 3 * Math.sqrt(d / h25));
	const k = 30 / max(range);
	return k < 1 ? range.map((r) => r * k) : range;
}
function inferLengthRange(channels, domain) {
	const h50 = median(channels, ({ value }) => value === void 0 ? NaN : median(value, Math.abs));
	const range = domain.map((d) => 12 * d / h50);
	const k = 60 / max(range);
	return k < 1 ? range.map((r) => r * k) : range;
}
function inferLogDomain(channels) {
	for (const { value } of channels) if (value !== void 0) for (let v of value) {
		if (v > 0) return inferDomain$1(channels, positive);
		if (v < 0) return inferDomain$1(channels, negative);
	}
	return [1, 10];
}
function inferQuantileDomain(channels) {
	const domain = [];
	for (const { value } of channels) {
		if (value === void 0) continue;
		for (const v of value) domain.push(v);
	}
	return domain;
}
function interpolatePiecewise(interpolate) {
	return (i, j) => (t) => interpolate(i + t * (j - i));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/warnings.js
var warnings = 0;
var lastMessage;
function consumeWarnings() {
	const w = warnings;
	warnings = 0;
	lastMessage = void 0;
	return w;
}
function warn(message) {
	if (message === lastMessage) return;
	lastMessage = message;
	console.warn(message);
	++warnings;
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/scales/diverging.js
function createScaleD(key, scale, transform, channels, { type, nice, clamp, domain = inferDomain$1(channels), unknown, pivot = 0, scheme, range, symmetric = true, interpolate = registry.get(key) === color ? scheme == null && range !== void 0 ? rgb : quantitativeScheme(scheme !== void 0 ? scheme : "rdbu") : number$3, reverse }) {
	pivot = +pivot;
	domain = arrayify(domain);
	let [min, max] = domain;
	if (domain.length > 2) warn(`Warning: the diverging ${key} scale domain contains extra elements.`);
	if (descending(min, max) < 0) [min, max] = [max, min], reverse = !reverse;
	min = Math.min(min, pivot);
	max = Math.max(max, pivot);
	if (typeof interpolate !== "function") interpolate = maybeInterpolator(interpolate);
	if (range !== void 0) interpolate = interpolate.length === 1 ? interpolatePiecewise(interpolate)(...range) : piecewise(interpolate, range);
	if (reverse) interpolate = flip(interpolate);
	if (symmetric) {
		const mid = transform.apply(pivot);
		const mindelta = mid - transform.apply(min);
		const maxdelta = transform.apply(max) - mid;
		if (mindelta < maxdelta) min = transform.invert(mid - maxdelta);
		else if (mindelta > maxdelta) max = transform.invert(mid + mindelta);
	}
	scale.domain([
		min,
		pivot,
		max
	]).unknown(unknown).interpolator(interpolate);
	if (clamp) scale.clamp(clamp);
	if (nice) scale.nice(nice);
	return {
		type,
		domain: [min, max],
		pivot,
		interpolate,
		scale
	};
}
function createScaleDiverging(key, channels, options) {
	return createScaleD(key, diverging(), transformIdentity, channels, options);
}
function createScaleDivergingSqrt(key, channels, options) {
	return createScaleDivergingPow(key, channels, {
		...options,
		exponent: .5
	});
}
function createScaleDivergingPow(key, channels, { exponent = 1, ...options }) {
	return createScaleD(key, divergingPow().exponent(exponent = +exponent), transformPow(exponent), channels, {
		...options,
		type: "diverging-pow"
	});
}
function createScaleDivergingLog(key, channels, { base = 10, pivot = 1, domain = inferDomain$1(channels, pivot < 0 ? negative : positive), ...options }) {
	return createScaleD(key, divergingLog().base(base = +base), transformLog, channels, {
		domain,
		pivot,
		...options
	});
}
function createScaleDivergingSymlog(key, channels, { constant = 1, ...options }) {
	return createScaleD(key, divergingSymlog().constant(constant = +constant), transformSymlog(constant), channels, options);
}
var transformIdentity = {
	apply(x) {
		return x;
	},
	invert(x) {
		return x;
	}
};
var transformLog = {
	apply: Math.log,
	invert: Math.exp
};
var transformSqrt = {
	apply(x) {
		return Math.sign(x) * Math.sqrt(Math.abs(x));
	},
	invert(x) {
		return Math.sign(x) * (x * x);
	}
};
function transformPow(exponent) {
	return exponent === .5 ? transformSqrt : {
		apply(x) {
			return Math.sign(x) * Math.pow(Math.abs(x), exponent);
		},
		invert(x) {
			return Math.sign(x) * Math.pow(Math.abs(x), 1 / exponent);
		}
	};
}
function transformSymlog(constant) {
	return {
		apply(x) {
			return Math.sign(x) * Math.log1p(Math.abs(x / constant));
		},
		invert(x) {
			return Math.sign(x) * Math.expm1(Math.abs(x)) * constant;
		}
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/scales/temporal.js
function createScaleT(key, scale, channels, options) {
	return createScaleQ(key, scale, channels, options);
}
function createScaleTime(key, channels, options) {
	return createScaleT(key, time(), channels, options);
}
function createScaleUtc(key, channels, options) {
	return createScaleT(key, utcTime(), channels, options);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/scales/ordinal.js
var ordinalImplicit = Symbol("ordinal");
function createScaleO(key, scale, channels, { type, interval, domain, range, reverse: reverse$1, hint }) {
	interval = maybeRangeInterval(interval, type);
	if (domain === void 0) domain = inferDomain(channels, interval, key);
	if (type === "categorical" || type === ordinalImplicit) type = "ordinal";
	if (reverse$1) domain = reverse(domain);
	domain = scale.domain(domain).domain();
	if (range !== void 0) {
		if (typeof range === "function") range = range(domain);
		scale.range(range);
	}
	return {
		type,
		domain,
		range,
		scale,
		hint,
		interval
	};
}
function createScaleOrdinal(key, channels, { type, interval, domain, range, scheme, unknown, ...options }) {
	interval = maybeRangeInterval(interval, type);
	if (domain === void 0) domain = inferDomain(channels, interval, key);
	let hint;
	if (registry.get(key) === symbol) {
		hint = inferSymbolHint(channels);
		range = range === void 0 ? inferSymbolRange(hint) : map(range, maybeSymbol);
	} else if (registry.get(key) === color) {
		if (range === void 0 && (type === "ordinal" || type === ordinalImplicit)) {
			range = maybeBooleanRange(domain, scheme);
			if (range !== void 0) scheme = void 0;
		}
		if (scheme === void 0 && range === void 0) scheme = type === "ordinal" ? "turbo" : "observable10";
		if (scheme !== void 0) {
			if (range !== void 0) {
				const interpolate = quantitativeScheme(scheme);
				const t0 = range[0], d = range[1] - range[0];
				range = ({ length: n }) => quantize((t) => interpolate(t0 + d * t), n);
			} else range = ordinalScheme(scheme);
		}
	}
	if (unknown === implicit) throw new Error(`implicit unknown on ${key} scale is not supported`);
	return createScaleO(key, ordinal().unknown(unknown), channels, {
		...options,
		type,
		domain,
		range,
		hint
	});
}
function createScalePoint(key, channels, { align = .5, padding = .5, ...options }) {
	return maybeRound(point$4().align(align).padding(padding), channels, options, key);
}
function createScaleBand(key, channels, { align = .5, padding = .1, paddingInner = padding, paddingOuter = key === "fx" || key === "fy" ? 0 : padding, ...options }) {
	return maybeRound(band$2().align(align).paddingInner(paddingInner).paddingOuter(paddingOuter), channels, options, key);
}
function maybeRound(scale, channels, options, key) {
	let { round } = options;
	if (round !== void 0) scale.round(round = !!round);
	scale = createScaleO(key, scale, channels, options);
	scale.round = round;
	return scale;
}
function inferDomain(channels, interval, key) {
	const values = new InternSet();
	for (const { value, domain } of channels) {
		if (domain !== void 0) return domain();
		if (value === void 0) continue;
		for (const v of value) values.add(v);
	}
	if (interval !== void 0) {
		const [min, max] = extent$1(values).map(interval.floor, interval);
		return interval.range(min, interval.offset(max));
	}
	if (values.size > 1e4 && registry.get(key) === position) throw new Error(`implicit ordinal domain of ${key} scale has more than 10,000 values`);
	return sort$1(values, ascendingDefined);
}
function inferHint(channels, key) {
	let value;
	for (const { hint } of channels) {
		const candidate = hint?.[key];
		if (candidate === void 0) continue;
		if (value === void 0) value = candidate;
		else if (value !== candidate) return;
	}
	return value;
}
function inferSymbolHint(channels) {
	return {
		fill: inferHint(channels, "fill"),
		stroke: inferHint(channels, "stroke")
	};
}
function inferSymbolRange(hint) {
	return isNoneish(hint.fill) ? symbolsStroke : symbolsFill;
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/scales.js
function createScales(channelsByScale, { label: globalLabel, inset: globalInset = 0, insetTop: globalInsetTop = globalInset, insetRight: globalInsetRight = globalInset, insetBottom: globalInsetBottom = globalInset, insetLeft: globalInsetLeft = globalInset, round, nice, clamp, zero, align, padding, projection, facet: { label: facetLabel = globalLabel } = {}, ...options } = {}) {
	const scales = {};
	for (const [key, channels] of channelsByScale) {
		const scaleOptions = options[key];
		const scale = createScale(key, channels, {
			round: registry.get(key) === position ? round : void 0,
			nice,
			clamp,
			zero,
			align,
			padding,
			projection,
			...scaleOptions
		});
		if (scale) {
			let { label = key === "fx" || key === "fy" ? facetLabel : globalLabel, percent, transform, inset, insetTop = inset !== void 0 ? inset : key === "y" ? globalInsetTop : 0, insetRight = inset !== void 0 ? inset : key === "x" ? globalInsetRight : 0, insetBottom = inset !== void 0 ? inset : key === "y" ? globalInsetBottom : 0, insetLeft = inset !== void 0 ? inset : key === "x" ? globalInsetLeft : 0 } = scaleOptions || {};
			if (transform == null) transform = void 0;
			else if (typeof transform !== "function") throw new Error("invalid scale transform; not a function");
			scale.percent = !!percent;
			scale.label = label === void 0 ? inferScaleLabel(channels, scale) : label;
			scale.transform = transform;
			if (key === "x" || key === "fx") {
				scale.insetLeft = +insetLeft;
				scale.insetRight = +insetRight;
			} else if (key === "y" || key === "fy") {
				scale.insetTop = +insetTop;
				scale.insetBottom = +insetBottom;
			}
			scales[key] = scale;
		}
	}
	return scales;
}
function createScaleFunctions(descriptors) {
	const scales = {};
	const scaleFunctions = { scales };
	for (const [key, descriptor] of Object.entries(descriptors)) {
		const { scale, type, interval, label } = descriptor;
		scales[key] = exposeScale(descriptor);
		scaleFunctions[key] = scale;
		scale.type = type;
		if (interval != null) scale.interval = interval;
		if (label != null) scale.label = label;
	}
	return scaleFunctions;
}
function autoScaleRange(scales, dimensions) {
	const { x, y, fx, fy } = scales;
	const superdimensions = fx || fy ? outerDimensions(dimensions) : dimensions;
	if (fx) autoScaleRangeX(fx, superdimensions);
	if (fy) autoScaleRangeY(fy, superdimensions);
	const subdimensions = fx || fy ? innerDimensions(scales, dimensions) : dimensions;
	if (x) autoScaleRangeX(x, subdimensions);
	if (y) autoScaleRangeY(y, subdimensions);
}
function inferScaleLabel(channels = [], scale) {
	let label;
	for (const { label: l } of channels) {
		if (l === void 0) continue;
		if (label === void 0) label = l;
		else if (label !== l) return;
	}
	if (label === void 0) return;
	if (!isOrdinalScale(scale) && scale.percent) label = `${label} (%)`;
	return {
		inferred: true,
		toString: () => label
	};
}
function inferScaleOrder(scale) {
	return Math.sign(orderof(scale.domain())) * Math.sign(orderof(scale.range()));
}
function outerDimensions(dimensions) {
	const { marginTop, marginRight, marginBottom, marginLeft, width, height, facet: { marginTop: facetMarginTop, marginRight: facetMarginRight, marginBottom: facetMarginBottom, marginLeft: facetMarginLeft } } = dimensions;
	return {
		marginTop: Math.max(marginTop, facetMarginTop),
		marginRight: Math.max(marginRight, facetMarginRight),
		marginBottom: Math.max(marginBottom, facetMarginBottom),
		marginLeft: Math.max(marginLeft, facetMarginLeft),
		width,
		height
	};
}
function innerDimensions({ fx, fy }, dimensions) {
	const { marginTop, marginRight, marginBottom, marginLeft, width, height } = outerDimensions(dimensions);
	return {
		marginTop,
		marginRight,
		marginBottom,
		marginLeft,
		width: fx ? fx.scale.bandwidth() + marginLeft + marginRight : width,
		height: fy ? fy.scale.bandwidth() + marginTop + marginBottom : height,
		facet: {
			width,
			height
		}
	};
}
function autoScaleRangeX(scale, dimensions) {
	if (scale.range === void 0) {
		const { insetLeft, insetRight } = scale;
		const { width, marginLeft = 0, marginRight = 0 } = dimensions;
		const left = marginLeft + insetLeft;
		const right = width - marginRight - insetRight;
		scale.range = [left, Math.max(left, right)];
		if (!isOrdinalScale(scale)) scale.range = piecewiseRange(scale);
		scale.scale.range(scale.range);
	}
	autoScaleRound(scale);
}
function autoScaleRangeY(scale, dimensions) {
	if (scale.range === void 0) {
		const { insetTop, insetBottom } = scale;
		const { height, marginTop = 0, marginBottom = 0 } = dimensions;
		const top = marginTop + insetTop;
		const bottom = height - marginBottom - insetBottom;
		scale.range = [Math.max(top, bottom), top];
		if (!isOrdinalScale(scale)) scale.range = piecewiseRange(scale);
		else scale.range.reverse();
		scale.scale.range(scale.range);
	}
	autoScaleRound(scale);
}
function autoScaleRound(scale) {
	if (scale.round === void 0 && isBandScale(scale) && roundError(scale) <= 30) scale.scale.round(true);
}
function roundError({ scale }) {
	const n = scale.domain().length;
	const [start, stop] = scale.range();
	const paddingInner = scale.paddingInner ? scale.paddingInner() : 1;
	const paddingOuter = scale.paddingOuter ? scale.paddingOuter() : scale.padding();
	const m = n - paddingInner;
	const step = Math.abs(stop - start) / Math.max(1, m + paddingOuter * 2);
	return (step - Math.floor(step)) * m;
}
function piecewiseRange(scale) {
	const length = scale.scale.domain().length + isThresholdScale(scale);
	if (!(length > 2)) return scale.range;
	const [start, end] = scale.range;
	return Array.from({ length }, (_, i) => start + i / (length - 1) * (end - start));
}
function createScale(key, channels = [], options = {}) {
	const type = inferScaleType(key, channels, options);
	if (options.type === void 0 && options.domain === void 0 && options.range === void 0 && options.interval == null && key !== "fx" && key !== "fy" && isOrdinalScale({ type })) {
		const values = channels.map(({ value }) => value).filter((value) => value !== void 0);
		if (values.some(isTemporal)) warn(`Warning: some data associated with the ${key} scale are dates. Dates are typically associated with a "utc" or "time" scale rather than a "${formatScaleType(type)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can specify the interval of the ${key} scale (e.g., d3.utcDay), or you can suppress this warning by setting the type of the ${key} scale to "${formatScaleType(type)}".`);
		else if (values.some(isTemporalString)) warn(`Warning: some data associated with the ${key} scale are strings that appear to be dates (e.g., YYYY-MM-DD). If these strings represent dates, you should parse them to Date objects. Dates are typically associated with a "utc" or "time" scale rather than a "${formatScaleType(type)}" scale. If you are using a bar mark, you probably want a rect mark with the interval option instead; if you are using a group transform, you probably want a bin transform instead. If you want to treat this data as ordinal, you can suppress this warning by setting the type of the ${key} scale to "${formatScaleType(type)}".`);
		else if (values.some(isNumericString)) warn(`Warning: some data associated with the ${key} scale are strings that appear to be numbers. If these strings represent numbers, you should parse or coerce them to numbers. Numbers are typically associated with a "linear" scale rather than a "${formatScaleType(type)}" scale. If you want to treat this data as ordinal, you can specify the interval of the ${key} scale (e.g., 1 for integers), or you can suppress this warning by setting the type of the ${key} scale to "${formatScaleType(type)}".`);
	}
	options.type = type;
	switch (type) {
		case "diverging":
		case "diverging-sqrt":
		case "diverging-pow":
		case "diverging-log":
		case "diverging-symlog":
		case "cyclical":
		case "sequential":
		case "linear":
		case "sqrt":
		case "threshold":
		case "quantile":
		case "pow":
		case "log":
		case "symlog":
			options = coerceType(channels, options, coerceNumbers);
			break;
		case "identity":
			switch (registry.get(key)) {
				case position:
					options = coerceType(channels, options, coerceNumbers);
					break;
				case symbol: options = coerceType(channels, options, coerceSymbols);
			}
			break;
		case "utc":
		case "time": options = coerceType(channels, options, coerceDates);
	}
	switch (type) {
		case "diverging": return createScaleDiverging(key, channels, options);
		case "diverging-sqrt": return createScaleDivergingSqrt(key, channels, options);
		case "diverging-pow": return createScaleDivergingPow(key, channels, options);
		case "diverging-log": return createScaleDivergingLog(key, channels, options);
		case "diverging-symlog": return createScaleDivergingSymlog(key, channels, options);
		case "categorical":
		case "ordinal":
		case ordinalImplicit: return createScaleOrdinal(key, channels, options);
		case "cyclical":
		case "sequential":
		case "linear": return createScaleLinear(key, channels, options);
		case "sqrt": return createScaleSqrt(key, channels, options);
		case "threshold": return createScaleThreshold(key, channels, options);
		case "quantile": return createScaleQuantile(key, channels, options);
		case "quantize": return createScaleQuantize(key, channels, options);
		case "pow": return createScalePow(key, channels, options);
		case "log": return createScaleLog(key, channels, options);
		case "symlog": return createScaleSymlog(key, channels, options);
		case "utc": return createScaleUtc(key, channels, options);
		case "time": return createScaleTime(key, channels, options);
		case "point": return createScalePoint(key, channels, options);
		case "band": return createScaleBand(key, channels, options);
		case "identity": return createScaleIdentity(key);
		case void 0: return;
		default: throw new Error(`unknown scale type: ${type}`);
	}
}
function formatScaleType(type) {
	return typeof type === "symbol" ? type.description : type;
}
function maybeScaleType(type) {
	return typeof type === "string" ? `${type}`.toLowerCase() : type;
}
var typeProjection = { toString: () => "projection" };
function inferScaleType(key, channels, { type, domain, range, scheme, pivot, projection }) {
	type = maybeScaleType(type);
	if (key === "fx" || key === "fy") return "band";
	if ((key === "x" || key === "y") && projection != null) type = typeProjection;
	for (const channel of channels) {
		const t = maybeScaleType(channel.type);
		if (t === void 0) continue;
		else if (type === void 0) type = t;
		else if (type !== t) throw new Error(`scale incompatible with channel: ${type} !== ${t}`);
	}
	if (type === typeProjection) return;
	if (type !== void 0) return type;
	if (domain === void 0 && !channels.some(({ value }) => value !== void 0)) return;
	const kind = registry.get(key);
	if (kind === radius) return "sqrt";
	if (kind === opacity || kind === length) return "linear";
	if (kind === symbol) return "ordinal";
	const n = (domain ?? range)?.length;
	if (n < 2 || n > 2) return asOrdinalType(kind);
	if (domain !== void 0) {
		if (isOrdinal(domain)) return asOrdinalType(kind);
		if (isTemporal(domain)) return "utc";
	} else {
		const values = channels.map(({ value }) => value).filter((value) => value !== void 0);
		if (values.some(isOrdinal)) return asOrdinalType(kind);
		if (values.some(isTemporal)) return "utc";
	}
	if (kind === color) {
		if (pivot != null || isDivergingScheme(scheme)) return "diverging";
		if (isCategoricalScheme(scheme)) return "categorical";
	}
	return "linear";
}
function asOrdinalType(kind) {
	switch (kind) {
		case position: return "point";
		case color: return ordinalImplicit;
		default: return "ordinal";
	}
}
function isOrdinalScale({ type }) {
	return type === "ordinal" || type === "point" || type === "band" || type === ordinalImplicit;
}
function isThresholdScale({ type }) {
	return type === "threshold";
}
function isBandScale({ type }) {
	return type === "point" || type === "band";
}
function isCollapsed(scale) {
	if (scale === void 0) return true;
	const domain = scale.domain();
	const value = scale(domain[0]);
	for (let i = 1, n = domain.length; i < n; ++i) if (scale(domain[i]) - value) return false;
	return true;
}
function coerceType(channels, { domain, ...options }, coerceValues) {
	for (const c of channels) if (c.value !== void 0) {
		if (domain === void 0) domain = c.value?.domain;
		c.value = coerceValues(c.value);
	}
	return {
		domain: domain === void 0 ? domain : coerceValues(domain),
		...options
	};
}
function coerceSymbols(values) {
	return map(values, maybeSymbol);
}
function exposeScales(scales) {
	return (key) => {
		if (!registry.has(key = `${key}`)) throw new Error(`unknown scale: ${key}`);
		return scales[key];
	};
}
function exposeScale({ scale, type, domain, range, interpolate, interval, transform, percent, pivot }) {
	if (type === "identity") return {
		type: "identity",
		apply: (d) => d,
		invert: (d) => d
	};
	const unknown = scale.unknown ? scale.unknown() : void 0;
	return {
		type,
		domain: slice(domain),
		...range !== void 0 && { range: slice(range) },
		...transform !== void 0 && { transform },
		...percent && { percent },
		...unknown !== void 0 && { unknown },
		...interval !== void 0 && { interval },
		...interpolate !== void 0 && { interpolate },
		...scale.clamp && { clamp: scale.clamp() },
		...pivot !== void 0 && {
			pivot,
			symmetric: false
		},
		...scale.base && { base: scale.base() },
		...scale.exponent && { exponent: scale.exponent() },
		...scale.constant && { constant: scale.constant() },
		...scale.align && {
			align: scale.align(),
			round: scale.round()
		},
		...scale.padding && (scale.paddingInner ? {
			paddingInner: scale.paddingInner(),
			paddingOuter: scale.paddingOuter()
		} : { padding: scale.padding() }),
		...scale.bandwidth && {
			bandwidth: scale.bandwidth(),
			step: scale.step()
		},
		apply: (t) => scale(t),
		...scale.invert && { invert: (t) => scale.invert(t) }
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/facet.js
function createFacets(channelsByScale, options) {
	const { fx, fy } = createScales(channelsByScale, options);
	const fxDomain = fx?.scale.domain();
	const fyDomain = fy?.scale.domain();
	return fxDomain && fyDomain ? cross$1(fxDomain, fyDomain).map(([x, y], i) => ({
		x,
		y,
		i
	})) : fxDomain ? fxDomain.map((x, i) => ({
		x,
		i
	})) : fyDomain ? fyDomain.map((y, i) => ({
		y,
		i
	})) : void 0;
}
function recreateFacets(facets, { x: X, y: Y }) {
	X &&= facetIndex(X);
	Y &&= facetIndex(Y);
	return facets.filter(X && Y ? (f) => X.has(f.x) && Y.has(f.y) : X ? (f) => X.has(f.x) : (f) => Y.has(f.y)).sort(X && Y ? (a, b) => X.get(a.x) - X.get(b.x) || Y.get(a.y) - Y.get(b.y) : X ? (a, b) => X.get(a.x) - X.get(b.x) : (a, b) => Y.get(a.y) - Y.get(b.y));
}
function facetGroups(data, { fx, fy }) {
	const I = range$1(data);
	const FX = fx?.value;
	const FY = fy?.value;
	return fx && fy ? rollup(I, (G) => (G.fx = FX[G[0]], G.fy = FY[G[0]], G), (i) => FX[i], (i) => FY[i]) : fx ? rollup(I, (G) => (G.fx = FX[G[0]], G), (i) => FX[i]) : rollup(I, (G) => (G.fy = FY[G[0]], G), (i) => FY[i]);
}
function facetTranslator(fx, fy, { marginTop, marginLeft }) {
	const x = fx ? ({ x }) => fx(x) - marginLeft : () => 0;
	const y = fy ? ({ y }) => fy(y) - marginTop : () => 0;
	return function(d) {
		if (this.tagName === "svg") {
			this.setAttribute("x", x(d));
			this.setAttribute("y", y(d));
		} else this.setAttribute("transform", `translate(${x(d)},${y(d)})`);
	};
}
function facetExclude(index) {
	const ex = [];
	const e = new Uint32Array(sum$1(index, (d) => d.length));
	for (const i of index) {
		let n = 0;
		for (const j of index) {
			if (i === j) continue;
			e.set(j, n);
			n += j.length;
		}
		ex.push(e.slice(0, n));
	}
	return ex;
}
var facetAnchors = /* @__PURE__ */ new Map([
	["top", facetAnchorTop],
	["right", facetAnchorRight],
	["bottom", facetAnchorBottom],
	["left", facetAnchorLeft],
	["top-left", and(facetAnchorTop, facetAnchorLeft)],
	["top-right", and(facetAnchorTop, facetAnchorRight)],
	["bottom-left", and(facetAnchorBottom, facetAnchorLeft)],
	["bottom-right", and(facetAnchorBottom, facetAnchorRight)],
	["top-empty", facetAnchorTopEmpty],
	["right-empty", facetAnchorRightEmpty],
	["bottom-empty", facetAnchorBottomEmpty],
	["left-empty", facetAnchorLeftEmpty],
	["empty", facetAnchorEmpty]
]);
function maybeFacetAnchor(facetAnchor) {
	if (facetAnchor == null) return null;
	const anchor = facetAnchors.get(`${facetAnchor}`.toLowerCase());
	if (anchor) return anchor;
	throw new Error(`invalid facet anchor: ${facetAnchor}`);
}
var indexCache = /* @__PURE__ */ new WeakMap();
function facetIndex(V) {
	let I = indexCache.get(V);
	if (!I) indexCache.set(V, I = new InternMap(map(V, (v, i) => [v, i])));
	return I;
}
function facetIndexOf(V, v) {
	return facetIndex(V).get(v);
}
function facetFind(facets, x, y) {
	x = keyof(x);
	y = keyof(y);
	return facets.find((f) => Object.is(keyof(f.x), x) && Object.is(keyof(f.y), y));
}
function facetEmpty(facets, x, y) {
	return facetFind(facets, x, y)?.empty;
}
function facetAnchorTop(facets, { y: Y }, { y }) {
	return Y ? facetIndexOf(Y, y) === 0 : true;
}
function facetAnchorBottom(facets, { y: Y }, { y }) {
	return Y ? facetIndexOf(Y, y) === Y.length - 1 : true;
}
function facetAnchorLeft(facets, { x: X }, { x }) {
	return X ? facetIndexOf(X, x) === 0 : true;
}
function facetAnchorRight(facets, { x: X }, { x }) {
	return X ? facetIndexOf(X, x) === X.length - 1 : true;
}
function facetAnchorTopEmpty(facets, { y: Y }, { x, y, empty }) {
	if (empty) return false;
	if (!Y) return;
	const i = facetIndexOf(Y, y);
	if (i > 0) return facetEmpty(facets, x, Y[i - 1]);
}
function facetAnchorBottomEmpty(facets, { y: Y }, { x, y, empty }) {
	if (empty) return false;
	if (!Y) return;
	const i = facetIndexOf(Y, y);
	if (i < Y.length - 1) return facetEmpty(facets, x, Y[i + 1]);
}
function facetAnchorLeftEmpty(facets, { x: X }, { x, y, empty }) {
	if (empty) return false;
	if (!X) return;
	const i = facetIndexOf(X, x);
	if (i > 0) return facetEmpty(facets, X[i - 1], y);
}
function facetAnchorRightEmpty(facets, { x: X }, { x, y, empty }) {
	if (empty) return false;
	if (!X) return;
	const i = facetIndexOf(X, x);
	if (i < X.length - 1) return facetEmpty(facets, X[i + 1], y);
}
function facetAnchorEmpty(facets, channels, { empty }) {
	return empty;
}
function and(a, b) {
	return function() {
		return a.apply(null, arguments) && b.apply(null, arguments);
	};
}
function facetFilter(facets, { channels: { fx, fy }, groups }) {
	return fx && fy ? facets.map(({ x, y }) => groups.get(x)?.get(y) ?? []) : fx ? facets.map(({ x }) => groups.get(x) ?? []) : facets.map(({ y }) => groups.get(y) ?? []);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/projection.js
var pi = Math.PI;
var tau = 2 * pi;
var defaultAspectRatio = .618;
function createProjection({ projection, inset: globalInset = 0, insetTop = globalInset, insetRight = globalInset, insetBottom = globalInset, insetLeft = globalInset } = {}, dimensions) {
	if (projection == null) return;
	if (typeof projection.stream === "function") return projection;
	let options;
	let domain;
	let clip = "frame";
	if (isObject(projection)) {
		let inset;
		({type: projection, domain, inset, insetTop = inset !== void 0 ? inset : insetTop, insetRight = inset !== void 0 ? inset : insetRight, insetBottom = inset !== void 0 ? inset : insetBottom, insetLeft = inset !== void 0 ? inset : insetLeft, clip = clip, ...options} = projection);
		if (projection == null) return;
	}
	if (typeof projection !== "function") ({type: projection} = namedProjection(projection));
	const { width, height, marginLeft, marginRight, marginTop, marginBottom } = dimensions;
	const dx = width - marginLeft - marginRight - insetLeft - insetRight;
	const dy = height - marginTop - marginBottom - insetTop - insetBottom;
	projection = projection?.({
		width: dx,
		height: dy,
		clip,
		...options
	});
	if (projection == null) return;
	clip = maybePostClip(clip, marginLeft, marginTop, width - marginRight, height - marginBottom);
	let tx = marginLeft + insetLeft;
	let ty = marginTop + insetTop;
	let transform$1;
	if (domain != null) {
		const [[x0, y0], [x1, y1]] = index(projection).bounds(domain);
		const k = Math.min(dx / (x1 - x0), dy / (y1 - y0));
		if (k > 0) {
			tx -= (k * (x0 + x1) - dx) / 2;
			ty -= (k * (y0 + y1) - dy) / 2;
			transform$1 = transform({ point(x, y) {
				this.stream.point(x * k + tx, y * k + ty);
			} });
		} else warn(`Warning: the projection could not be fit to the specified domain; using the default scale.`);
	}
	transform$1 ??= tx === 0 && ty === 0 ? identity() : transform({ point(x, y) {
		this.stream.point(x + tx, y + ty);
	} });
	return { stream: (s) => projection.stream(transform$1.stream(clip(s))) };
}
function namedProjection(projection) {
	switch (`${projection}`.toLowerCase()) {
		case "albers-usa": return scaleProjection(albersUsa, .7463, .4673);
		case "albers": return conicProjection(albers, .7463, .4673);
		case "azimuthal-equal-area": return scaleProjection(azimuthalEqualArea, 4, 4);
		case "azimuthal-equidistant": return scaleProjection(azimuthalEquidistant, tau, tau);
		case "conic-conformal": return conicProjection(conicConformal, tau, tau);
		case "conic-equal-area": return conicProjection(conicEqualArea, 6.1702, 2.9781);
		case "conic-equidistant": return conicProjection(conicEquidistant, 7.312, 3.6282);
		case "equal-earth": return scaleProjection(equalEarth, 5.4133, 2.6347);
		case "equirectangular": return scaleProjection(equirectangular, tau, pi);
		case "gnomonic": return scaleProjection(gnomonic, 3.4641, 3.4641);
		case "identity": return { type: identity };
		case "reflect-y": return { type: reflectY };
		case "mercator": return scaleProjection(mercator, tau, tau);
		case "orthographic": return scaleProjection(orthographic, 2, 2);
		case "stereographic": return scaleProjection(stereographic, 2, 2);
		case "transverse-mercator": return scaleProjection(transverseMercator, tau, tau);
		default: throw new Error(`unknown projection type: ${projection}`);
	}
}
function maybePostClip(clip, x1, y1, x2, y2) {
	if (clip === false || clip == null || typeof clip === "number") return (s) => s;
	if (clip === true) clip = "frame";
	switch (`${clip}`.toLowerCase()) {
		case "frame": return clipRectangle(x1, y1, x2, y2);
		default: throw new Error(`unknown projection clip type: ${clip}`);
	}
}
function scaleProjection(createProjection, kx, ky) {
	return {
		type: ({ width, height, rotate, precision = .15, clip }) => {
			const projection = createProjection();
			if (precision != null) projection.precision?.(precision);
			if (rotate != null) projection.rotate?.(rotate);
			if (typeof clip === "number") projection.clipAngle?.(clip);
			if (width != null) {
				projection.scale(Math.min(width / kx, height / ky));
				projection.translate([width / 2, height / 2]);
			}
			return projection;
		},
		aspectRatio: ky / kx
	};
}
function conicProjection(createProjection, kx, ky) {
	const { type, aspectRatio } = scaleProjection(createProjection, kx, ky);
	return {
		type: (options) => {
			const { parallels, domain, width, height } = options;
			const projection = type(options);
			if (parallels != null) {
				projection.parallels(parallels);
				if (domain === void 0 && width != null) projection.fitSize([width, height], { type: "Sphere" });
			}
			return projection;
		},
		aspectRatio
	};
}
var identity = constant({ stream: (stream) => stream });
var reflectY = constant(transform({ point(x, y) {
	this.stream.point(x, -y);
} }));
function project(cx, cy, values, projection) {
	const x = values[cx];
	const y = values[cy];
	const n = x.length;
	const X = values[cx] = new Float64Array(n).fill(NaN);
	const Y = values[cy] = new Float64Array(n).fill(NaN);
	let i;
	const stream = projection.stream({ point(x, y) {
		X[i] = x;
		Y[i] = y;
	} });
	for (i = 0; i < n; ++i) stream.point(x[i], y[i]);
}
function hasProjection({ projection } = {}) {
	if (projection == null) return false;
	if (typeof projection.stream === "function") return true;
	if (isObject(projection)) projection = projection.type;
	return projection != null;
}
function projectionAspectRatio(projection) {
	if (typeof projection?.stream === "function") return defaultAspectRatio;
	if (isObject(projection)) {
		let domain, options;
		({domain, type: projection, ...options} = projection);
		if (domain != null && projection != null) {
			const [[x0, y0], [x1, y1]] = index((typeof projection === "string" ? namedProjection(projection).type : projection)({
				...options,
				width: 100,
				height: 100
			})).bounds(domain);
			const r = (y1 - y0) / (x1 - x0);
			return r && isFinite(r) ? r < .2 ? .2 : r > 5 ? 5 : r : defaultAspectRatio;
		}
	}
	if (projection == null) return;
	if (typeof projection !== "function") {
		const { aspectRatio } = namedProjection(projection);
		if (aspectRatio) return aspectRatio;
	}
	return defaultAspectRatio;
}
function getGeometryChannels(channel) {
	const X = [];
	const Y = [];
	const x = {
		scale: "x",
		value: X
	};
	const y = {
		scale: "y",
		value: Y
	};
	const sink = {
		point(x, y) {
			X.push(x);
			Y.push(y);
		},
		lineStart() {},
		lineEnd() {},
		polygonStart() {},
		polygonEnd() {},
		sphere() {}
	};
	for (const object of channel.value) geoStream(object, sink);
	return [x, y];
}
function xyProjection({ x: X, y: Y }) {
	if (X || Y) {
		X ??= (x) => x;
		Y ??= (y) => y;
		return transform({ point(x, y) {
			this.stream.point(X(x), Y(y));
		} });
	}
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/context.js
function createContext(options = {}) {
	const { document = typeof window !== "undefined" ? window.document : void 0, clip } = options;
	return {
		document,
		clip: maybeClip(clip)
	};
}
function create(name, { document }) {
	return select(creator(name).call(document.documentElement));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/memoize.js
var unset = Symbol("unset");
function memoize1(compute) {
	return (compute.length === 1 ? memoize1Arg : memoize1Args)(compute);
}
function memoize1Arg(compute) {
	let cacheValue;
	let cacheKey = unset;
	return (key) => {
		if (!Object.is(cacheKey, key)) {
			cacheKey = key;
			cacheValue = compute(key);
		}
		return cacheValue;
	};
}
function memoize1Args(compute) {
	let cacheValue, cacheKeys;
	return (...keys) => {
		if (cacheKeys?.length !== keys.length || cacheKeys.some((k, i) => !Object.is(k, keys[i]))) {
			cacheKeys = keys;
			cacheValue = compute(...keys);
		}
		return cacheValue;
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/format.js
var numberFormat = memoize1((locale) => {
	return new Intl.NumberFormat(locale);
});
memoize1((locale, month) => {
	return new Intl.DateTimeFormat(locale, {
		timeZone: "UTC",
		...month && { month }
	});
});
memoize1((locale, weekday) => {
	return new Intl.DateTimeFormat(locale, {
		timeZone: "UTC",
		...weekday && { weekday }
	});
});
function formatNumber(locale = "en-US") {
	const format = numberFormat(locale);
	return (i) => i != null && !isNaN(i) ? format.format(i) : void 0;
}
function formatIsoDate(date) {
	return format(date, "Invalid Date");
}
function formatAuto(locale = "en-US") {
	const number = formatNumber(locale);
	return (v) => (v instanceof Date ? formatIsoDate : typeof v === "number" ? number : string)(v);
}
var formatDefault = formatAuto();
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/style.js
var offset = (typeof window !== "undefined" ? window.devicePixelRatio > 1 : typeof it === "undefined") ? 0 : .5;
var nextClipId = 0;
function getClipId() {
	return `plot-clip-${++nextClipId}`;
}
function styles(mark, { title, href, ariaLabel: variaLabel, ariaDescription, ariaHidden, target, fill, fillOpacity, stroke, strokeWidth, strokeOpacity, strokeLinejoin, strokeLinecap, strokeMiterlimit, strokeDasharray, strokeDashoffset, opacity, mixBlendMode, imageFilter, paintOrder, pointerEvents, shapeRendering, channels }, { ariaLabel: cariaLabel, fill: defaultFill = "currentColor", fillOpacity: defaultFillOpacity, stroke: defaultStroke = "none", strokeOpacity: defaultStrokeOpacity, strokeWidth: defaultStrokeWidth, strokeLinecap: defaultStrokeLinecap, strokeLinejoin: defaultStrokeLinejoin, strokeMiterlimit: defaultStrokeMiterlimit, paintOrder: defaultPaintOrder }) {
	if (defaultFill === null) {
		fill = null;
		fillOpacity = null;
	}
	if (defaultStroke === null) {
		stroke = null;
		strokeOpacity = null;
	}
	if (isNoneish(defaultFill)) {
		if (!isNoneish(defaultStroke) && (!isNoneish(fill) || channels?.fill)) defaultStroke = "none";
	} else if (isNoneish(defaultStroke) && (!isNoneish(stroke) || channels?.stroke)) defaultFill = "none";
	const [vfill, cfill] = maybeColorChannel(fill, defaultFill);
	const [vfillOpacity, cfillOpacity] = maybeNumberChannel(fillOpacity, defaultFillOpacity);
	const [vstroke, cstroke] = maybeColorChannel(stroke, defaultStroke);
	const [vstrokeOpacity, cstrokeOpacity] = maybeNumberChannel(strokeOpacity, defaultStrokeOpacity);
	const [vopacity, copacity] = maybeNumberChannel(opacity);
	if (!isNone(cstroke)) {
		if (strokeWidth === void 0) strokeWidth = defaultStrokeWidth;
		if (strokeLinecap === void 0) strokeLinecap = defaultStrokeLinecap;
		if (strokeLinejoin === void 0) strokeLinejoin = defaultStrokeLinejoin;
		if (strokeMiterlimit === void 0 && !isRound(strokeLinejoin)) strokeMiterlimit = defaultStrokeMiterlimit;
		if (!isNone(cfill) && paintOrder === void 0) paintOrder = defaultPaintOrder;
	}
	const [vstrokeWidth, cstrokeWidth] = maybeNumberChannel(strokeWidth);
	if (defaultFill !== null) {
		mark.fill = impliedString(cfill, "currentColor");
		mark.fillOpacity = impliedNumber(cfillOpacity, 1);
	}
	if (defaultStroke !== null) {
		mark.stroke = impliedString(cstroke, "none");
		mark.strokeWidth = impliedNumber(cstrokeWidth, 1);
		mark.strokeOpacity = impliedNumber(cstrokeOpacity, 1);
		mark.strokeLinejoin = impliedString(strokeLinejoin, "miter");
		mark.strokeLinecap = impliedString(strokeLinecap, "butt");
		mark.strokeMiterlimit = impliedNumber(strokeMiterlimit, 4);
		mark.strokeDasharray = impliedString(strokeDasharray, "none");
		mark.strokeDashoffset = impliedString(strokeDashoffset, "0");
	}
	mark.target = string(target);
	mark.ariaLabel = string(cariaLabel);
	mark.ariaDescription = string(ariaDescription);
	mark.ariaHidden = string(ariaHidden);
	mark.opacity = impliedNumber(copacity, 1);
	mark.mixBlendMode = impliedString(mixBlendMode, "normal");
	mark.imageFilter = impliedString(imageFilter, "none");
	mark.paintOrder = impliedString(paintOrder, "normal");
	mark.pointerEvents = impliedString(pointerEvents, "auto");
	mark.shapeRendering = impliedString(shapeRendering, "auto");
	return {
		title: {
			value: title,
			optional: true,
			filter: null
		},
		href: {
			value: href,
			optional: true,
			filter: null
		},
		ariaLabel: {
			value: variaLabel,
			optional: true,
			filter: null
		},
		fill: {
			value: vfill,
			scale: "auto",
			optional: true
		},
		fillOpacity: {
			value: vfillOpacity,
			scale: "auto",
			optional: true
		},
		stroke: {
			value: vstroke,
			scale: "auto",
			optional: true
		},
		strokeOpacity: {
			value: vstrokeOpacity,
			scale: "auto",
			optional: true
		},
		strokeWidth: {
			value: vstrokeWidth,
			optional: true
		},
		opacity: {
			value: vopacity,
			scale: "auto",
			optional: true
		}
	};
}
function applyTitle(selection, L) {
	if (L) selection.filter((i) => nonempty(L[i])).append("title").call(applyText, L);
}
function applyTitleGroup(selection, L) {
	if (L) selection.filter(([i]) => nonempty(L[i])).append("title").call(applyTextGroup, L);
}
function applyText(selection, T) {
	if (T) selection.text((i) => formatDefault(T[i]));
}
function applyTextGroup(selection, T) {
	if (T) selection.text(([i]) => formatDefault(T[i]));
}
function applyChannelStyles(selection, { target, tip }, { ariaLabel: AL, title: T, fill: F, fillOpacity: FO, stroke: S, strokeOpacity: SO, strokeWidth: SW, opacity: O, href: H }) {
	if (AL) applyAttr(selection, "aria-label", (i) => AL[i]);
	if (F) applyAttr(selection, "fill", (i) => F[i]);
	if (FO) applyAttr(selection, "fill-opacity", (i) => FO[i]);
	if (S) applyAttr(selection, "stroke", (i) => S[i]);
	if (SO) applyAttr(selection, "stroke-opacity", (i) => SO[i]);
	if (SW) applyAttr(selection, "stroke-width", (i) => SW[i]);
	if (O) applyAttr(selection, "opacity", (i) => O[i]);
	if (H) applyHref(selection, (i) => H[i], target);
	if (!tip) applyTitle(selection, T);
}
function applyGroupedChannelStyles(selection, { target, tip }, { ariaLabel: AL, title: T, fill: F, fillOpacity: FO, stroke: S, strokeOpacity: SO, strokeWidth: SW, opacity: O, href: H }) {
	if (AL) applyAttr(selection, "aria-label", ([i]) => AL[i]);
	if (F) applyAttr(selection, "fill", ([i]) => F[i]);
	if (FO) applyAttr(selection, "fill-opacity", ([i]) => FO[i]);
	if (S) applyAttr(selection, "stroke", ([i]) => S[i]);
	if (SO) applyAttr(selection, "stroke-opacity", ([i]) => SO[i]);
	if (SW) applyAttr(selection, "stroke-width", ([i]) => SW[i]);
	if (O) applyAttr(selection, "opacity", ([i]) => O[i]);
	if (H) applyHref(selection, ([i]) => H[i], target);
	if (!tip) applyTitleGroup(selection, T);
}
function groupAesthetics({ ariaLabel: AL, title: T, fill: F, fillOpacity: FO, stroke: S, strokeOpacity: SO, strokeWidth: SW, opacity: O, href: H }, { tip }) {
	return [
		AL,
		tip ? void 0 : T,
		F,
		FO,
		S,
		SO,
		SW,
		O,
		H
	].filter((c) => c !== void 0);
}
function groupZ(I, Z, z) {
	const G = group(I, (i) => Z[i]);
	if (z === void 0 && G.size > 1 + I.length >> 1) warn(`Warning: the implicit z channel has high cardinality. This may occur when the fill or stroke channel is associated with quantitative data rather than ordinal or categorical data. You can suppress this warning by setting the z option explicitly; if this data represents a single series, set z to null.`);
	return G.values();
}
function* groupIndex(I, position, mark, channels) {
	const { z } = mark;
	const { z: Z } = channels;
	const A = groupAesthetics(channels, mark);
	const C = [...position, ...A];
	for (const G of Z ? groupZ(I, Z, z) : [I]) {
		let Ag;
		let Gg;
		out: for (const i of G) {
			for (const c of C) if (!defined(c[i])) {
				if (Gg) Gg.push(-1);
				continue out;
			}
			if (Ag === void 0) {
				if (Gg) yield Gg;
				Ag = A.map((c) => keyof(c[i])), Gg = [i];
				continue;
			}
			Gg.push(i);
			for (let j = 0; j < A.length; ++j) if (keyof(A[j][i]) !== Ag[j]) {
				yield Gg;
				Ag = A.map((c) => keyof(c[i])), Gg = [i];
				continue out;
			}
		}
		if (Gg) yield Gg;
	}
}
function applyClip(selection, mark, dimensions, context) {
	let clipUrl;
	const { clip = context.clip } = mark;
	if (clip === "frame") {
		selection = create("svg:g", context).each(function() {
			this.appendChild(selection.node());
			selection.node = () => this;
		});
		clipUrl = getFrameClip(context, dimensions);
	} else if (clip) clipUrl = getGeoClip(clip, context);
	applyAttr(selection, "aria-label", mark.ariaLabel);
	applyAttr(selection, "aria-description", mark.ariaDescription);
	applyAttr(selection, "aria-hidden", mark.ariaHidden);
	applyAttr(selection, "clip-path", clipUrl);
}
function memoizeClip(clip) {
	const cache = /* @__PURE__ */ new WeakMap();
	return (context, dimensions) => {
		let url = cache.get(context);
		if (!url) {
			const id = getClipId();
			select(context.ownerSVGElement).append("clipPath").attr("id", id).call(clip, context, dimensions);
			cache.set(context, url = `url(#${id})`);
		}
		return url;
	};
}
var getFrameClip = memoizeClip((clipPath, context, dimensions) => {
	const { width, height, marginLeft, marginRight, marginTop, marginBottom } = dimensions;
	clipPath.append("rect").attr("x", marginLeft).attr("y", marginTop).attr("width", width - marginRight - marginLeft).attr("height", height - marginTop - marginBottom);
});
var geoClipCache = /* @__PURE__ */ new WeakMap();
var sphere = { type: "Sphere" };
function getGeoClip(geo, context) {
	let cache, url;
	if (!(cache = geoClipCache.get(context))) geoClipCache.set(context, cache = /* @__PURE__ */ new WeakMap());
	if (geo.type === "Sphere") geo = sphere;
	if (!(url = cache.get(geo))) {
		const id = getClipId();
		select(context.ownerSVGElement).append("clipPath").attr("id", id).append("path").attr("d", context.path()(geo));
		cache.set(geo, url = `url(#${id})`);
	}
	return url;
}
function applyIndirectStyles(selection, mark, dimensions, context) {
	applyClip(selection, mark, dimensions, context);
	applyAttr(selection, "class", mark.className);
	applyAttr(selection, "fill", mark.fill);
	applyAttr(selection, "fill-opacity", mark.fillOpacity);
	applyAttr(selection, "stroke", mark.stroke);
	applyAttr(selection, "stroke-width", mark.strokeWidth);
	applyAttr(selection, "stroke-opacity", mark.strokeOpacity);
	applyAttr(selection, "stroke-linejoin", mark.strokeLinejoin);
	applyAttr(selection, "stroke-linecap", mark.strokeLinecap);
	applyAttr(selection, "stroke-miterlimit", mark.strokeMiterlimit);
	applyAttr(selection, "stroke-dasharray", mark.strokeDasharray);
	applyAttr(selection, "stroke-dashoffset", mark.strokeDashoffset);
	applyAttr(selection, "shape-rendering", mark.shapeRendering);
	applyAttr(selection, "filter", mark.imageFilter);
	applyAttr(selection, "paint-order", mark.paintOrder);
	const { pointerEvents = context.pointerSticky === false ? "none" : void 0 } = mark;
	applyAttr(selection, "pointer-events", pointerEvents);
}
function applyDirectStyles(selection, mark) {
	applyStyle(selection, "mix-blend-mode", mark.mixBlendMode);
	applyAttr(selection, "opacity", mark.opacity);
}
function applyHref(selection, href, target) {
	selection.each(function(i) {
		const h = href(i);
		if (h != null) {
			const a = this.ownerDocument.createElementNS(namespaces.svg, "a");
			a.setAttribute("fill", "inherit");
			a.setAttributeNS(namespaces.xlink, "href", h);
			if (target != null) a.setAttribute("target", target);
			this.parentNode.insertBefore(a, this).appendChild(this);
		}
	});
}
function applyAttr(selection, name, value) {
	if (value != null) selection.attr(name, value);
}
function applyStyle(selection, name, value) {
	if (value != null) selection.style(name, value);
}
function applyTransform(selection, mark, { x, y }, tx = offset, ty = offset) {
	tx += mark.dx;
	ty += mark.dy;
	if (x?.bandwidth) tx += x.bandwidth() / 2;
	if (y?.bandwidth) ty += y.bandwidth() / 2;
	if (tx || ty) selection.attr("transform", `translate(${tx},${ty})`);
}
function impliedString(value, impliedValue) {
	if ((value = string(value)) !== impliedValue) return value;
}
function impliedNumber(value, impliedValue) {
	if ((value = number(value)) !== impliedValue) return value;
}
var validClassName = /^-?([_a-z]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])([_a-z0-9-]|[\240-\377]|\\[0-9a-f]{1,6}(\r\n|[ \t\r\n\f])?|\\[^\r\n\f0-9a-f])*$/i;
function maybeClassName(name) {
	if (name === void 0) return "plot-d6a7b5";
	name = `${name}`;
	if (!validClassName.test(name)) throw new Error(`invalid class name: ${name}`);
	return name;
}
function applyInlineStyles(selection, style) {
	if (typeof style === "string") selection.property("style", style);
	else if (style != null) for (const element of selection) Object.assign(element.style, style);
}
function applyFrameAnchor({ frameAnchor }, { width, height, marginTop, marginRight, marginBottom, marginLeft }) {
	return [/left$/.test(frameAnchor) ? marginLeft : /right$/.test(frameAnchor) ? width - marginRight : (marginLeft + width - marginRight) / 2, /^top/.test(frameAnchor) ? marginTop : /^bottom/.test(frameAnchor) ? height - marginBottom : (marginTop + height - marginBottom) / 2];
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/mark.js
var Mark = class {
	constructor(data, channels = {}, options = {}, defaults) {
		const { facet = "auto", facetAnchor, fx, fy, sort, dx = 0, dy = 0, margin = 0, marginTop = margin, marginRight = margin, marginBottom = margin, marginLeft = margin, className, clip = defaults?.clip, channels: extraChannels, tip, render } = options;
		this.data = data;
		this.sort = isDomainSort(sort) ? sort : null;
		this.initializer = initializer(options).initializer;
		this.transform = this.initializer ? options.transform : basic(options).transform;
		if (facet === null || facet === false) this.facet = null;
		else {
			this.facet = keyword(facet === true ? "include" : facet, "facet", [
				"auto",
				"include",
				"exclude",
				"super"
			]);
			this.fx = data === singleton && typeof fx === "string" ? [fx] : fx;
			this.fy = data === singleton && typeof fy === "string" ? [fy] : fy;
		}
		this.facetAnchor = maybeFacetAnchor(facetAnchor);
		channels = maybeNamed(channels);
		if (extraChannels !== void 0) channels = {
			...maybeChannels(extraChannels),
			...channels
		};
		if (defaults !== void 0) channels = {
			...styles(this, options, defaults),
			...channels
		};
		this.channels = Object.fromEntries(Object.entries(channels).map(([name, channel]) => {
			if (isOptions(channel.value)) {
				const { value, label = channel.label, scale = channel.scale } = channel.value;
				channel = {
					...channel,
					label,
					scale,
					value
				};
			}
			if (data === singleton && typeof channel.value === "string") {
				const { value } = channel;
				channel = {
					...channel,
					value: [value]
				};
			}
			return [name, channel];
		}).filter(([name, { value, optional }]) => {
			if (value != null) return true;
			if (optional) return false;
			throw new Error(`missing channel value: ${name}`);
		}));
		this.dx = +dx;
		this.dy = +dy;
		this.marginTop = +marginTop;
		this.marginRight = +marginRight;
		this.marginBottom = +marginBottom;
		this.marginLeft = +marginLeft;
		this.clip = maybeClip(clip);
		this.tip = maybeTip(tip);
		this.className = string(className);
		if (this.facet === "super") {
			if (fx || fy) throw new Error(`super-faceting cannot use fx or fy`);
			for (const name in this.channels) {
				const { scale } = channels[name];
				if (scale !== "x" && scale !== "y") continue;
				throw new Error(`super-faceting cannot use x or y`);
			}
		}
		if (render != null) this.render = composeRender(render, this.render);
	}
	initialize(facets, facetChannels, plotOptions) {
		let data = dataify(this.data);
		if (facets === void 0 && data != null) facets = [range$1(data)];
		const originalFacets = facets;
		if (this.transform != null) ({facets, data} = this.transform(data, facets, plotOptions)), data = dataify(data);
		if (facets !== void 0) facets.original = originalFacets;
		const channels = createChannels(this.channels, data);
		if (this.sort != null) channelDomain(data, facets, channels, facetChannels, this.sort);
		return {
			data,
			facets,
			channels
		};
	}
	filter(index, channels, values) {
		for (const name in channels) {
			const { filter = defined } = channels[name];
			if (filter !== null) {
				const value = values[name];
				index = index.filter((i) => filter(value[i]));
			}
		}
		return index;
	}
	project(channels, values, context) {
		for (const cx in channels) if (channels[cx].scale === "x" && /^x|x$/.test(cx)) {
			const cy = cx.replace(/^x|x$/, "y");
			if (cy in channels && channels[cy].scale === "y") project(cx, cy, values, context.projection);
		}
	}
	scale(channels, scales, context) {
		const values = valueObject(channels, scales);
		if (context.projection) this.project(channels, values, context);
		return values;
	}
};
function marks(...marks) {
	marks.plot = Mark.prototype.plot;
	return marks;
}
function composeRender(r1, r2) {
	if (r1 == null) return r2 === null ? void 0 : r2;
	if (r2 == null) return r1 === null ? void 0 : r1;
	if (typeof r1 !== "function") throw new TypeError(`invalid render transform: ${r1}`);
	if (typeof r2 !== "function") throw new TypeError(`invalid render transform: ${r2}`);
	return function(i, s, v, d, c, next) {
		return r1.call(this, i, s, v, d, c, (i, s, v, d, c) => {
			return r2.call(this, i, s, v, d, c, next);
		});
	};
}
function maybeChannels(channels) {
	return Object.fromEntries(Object.entries(maybeNamed(channels)).map(([name, channel]) => {
		channel = typeof channel === "string" ? {
			value: channel,
			label: name
		} : maybeValue(channel);
		if (channel.filter === void 0 && channel.scale == null) channel = {
			...channel,
			filter: null
		};
		return [name, channel];
	}));
}
function maybeTip(tip) {
	return tip === true ? "xy" : tip === false || tip == null ? null : typeof tip === "string" ? keyword(tip, "tip", [
		"x",
		"y",
		"xy"
	]) : tip;
}
function withTip(options, pointer) {
	return options?.tip === true ? {
		...options,
		tip: pointer
	} : isObject(options?.tip) && options.tip.pointer === void 0 ? {
		...options,
		tip: {
			...options.tip,
			pointer
		}
	} : options;
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/dimensions.js
function createDimensions(scales, marks, options = {}) {
	let marginTopDefault = .5 - offset, marginRightDefault = .5 + offset, marginBottomDefault = .5 + offset, marginLeftDefault = .5 - offset;
	for (const { marginTop, marginRight, marginBottom, marginLeft } of marks) {
		if (marginTop > marginTopDefault) marginTopDefault = marginTop;
		if (marginRight > marginRightDefault) marginRightDefault = marginRight;
		if (marginBottom > marginBottomDefault) marginBottomDefault = marginBottom;
		if (marginLeft > marginLeftDefault) marginLeftDefault = marginLeft;
	}
	let { margin, marginTop = margin !== void 0 ? margin : marginTopDefault, marginRight = margin !== void 0 ? margin : marginRightDefault, marginBottom = margin !== void 0 ? margin : marginBottomDefault, marginLeft = margin !== void 0 ? margin : marginLeftDefault } = options;
	marginTop = +marginTop;
	marginRight = +marginRight;
	marginBottom = +marginBottom;
	marginLeft = +marginLeft;
	let { width = 640, height = autoHeight(scales, options, {
		width,
		marginTopDefault,
		marginRightDefault,
		marginBottomDefault,
		marginLeftDefault
	}) + Math.max(0, marginTop - marginTopDefault + marginBottom - marginBottomDefault) } = options;
	width = +width;
	height = +height;
	const dimensions = {
		width,
		height,
		marginTop,
		marginRight,
		marginBottom,
		marginLeft
	};
	if (scales.fx || scales.fy) {
		let { margin: facetMargin, marginTop: facetMarginTop = facetMargin !== void 0 ? facetMargin : marginTop, marginRight: facetMarginRight = facetMargin !== void 0 ? facetMargin : marginRight, marginBottom: facetMarginBottom = facetMargin !== void 0 ? facetMargin : marginBottom, marginLeft: facetMarginLeft = facetMargin !== void 0 ? facetMargin : marginLeft } = options.facet ?? {};
		facetMarginTop = +facetMarginTop;
		facetMarginRight = +facetMarginRight;
		facetMarginBottom = +facetMarginBottom;
		facetMarginLeft = +facetMarginLeft;
		dimensions.facet = {
			marginTop: facetMarginTop,
			marginRight: facetMarginRight,
			marginBottom: facetMarginBottom,
			marginLeft: facetMarginLeft
		};
	}
	return dimensions;
}
function autoHeight({ x, y, fy, fx }, { projection, aspectRatio }, { width, marginTopDefault, marginRightDefault, marginBottomDefault, marginLeftDefault }) {
	const nfy = fy ? fy.scale.domain().length || 1 : 1;
	const ar = projectionAspectRatio(projection);
	if (ar) {
		const nfx = fx ? fx.scale.domain().length : 1;
		const far = (1.1 * nfy - .1) / (1.1 * nfx - .1) * ar;
		const lar = Math.max(.1, Math.min(10, far));
		return Math.round((width - marginLeftDefault - marginRightDefault) * lar + marginTopDefault + marginBottomDefault);
	}
	const ny = y ? isOrdinalScale(y) ? y.scale.domain().length || 1 : Math.max(7, 17 / nfy) : 1;
	if (aspectRatio != null) {
		aspectRatio = +aspectRatio;
		if (!(isFinite(aspectRatio) && aspectRatio > 0)) throw new Error(`invalid aspectRatio: ${aspectRatio}`);
		const ratio = aspectRatioLength("y", y) / (aspectRatioLength("x", x) * aspectRatio);
		const fxb = fx ? fx.scale.bandwidth() : 1;
		const fyb = fy ? fy.scale.bandwidth() : 1;
		return (ratio * (fxb * (width - marginLeftDefault - marginRightDefault) - x.insetLeft - x.insetRight) + y.insetTop + y.insetBottom) / fyb + marginTopDefault + marginBottomDefault;
	}
	return !!(y || fy) * Math.max(1, Math.min(60, ny * nfy)) * 20 + !!fx * 30 + 60;
}
function aspectRatioLength(k, scale) {
	if (!scale) throw new Error(`aspectRatio requires ${k} scale`);
	const { type, domain } = scale;
	let transform;
	switch (type) {
		case "linear":
		case "utc":
		case "time":
			transform = Number;
			break;
		case "pow": {
			const exponent = scale.scale.exponent();
			transform = (x) => Math.pow(x, exponent);
			break;
		}
		case "log":
			transform = Math.log;
			break;
		case "point":
		case "band": return domain.length;
		default: throw new Error(`unsupported ${k} scale for aspectRatio: ${type}`);
	}
	const [min, max] = extent$1(domain);
	return Math.abs(transform(max) - transform(min));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/interactions/pointer.js
var states = /* @__PURE__ */ new WeakMap();
function pointerK(kx, ky, { x, y, px, py, maxRadius = 40, channels, render, ...options } = {}) {
	maxRadius = +maxRadius;
	if (px != null) x ??= null, channels = {
		...channels,
		px: {
			value: px,
			scale: "x"
		}
	};
	if (py != null) y ??= null, channels = {
		...channels,
		py: {
			value: py,
			scale: "y"
		}
	};
	return {
		x,
		y,
		channels,
		...options,
		render: composeRender(function(index, scales, values, dimensions, context, next) {
			context = {
				...context,
				pointerSticky: false
			};
			const svg = context.ownerSVGElement;
			const { data } = context.getMarkState(this);
			let state = states.get(svg);
			if (!state) states.set(svg, state = {
				sticky: false,
				roots: [],
				renders: []
			});
			let renderIndex = state.renders.push(render) - 1;
			const { x, y, fx, fy } = scales;
			let tx = fx ? fx(index.fx) - dimensions.marginLeft : 0;
			let ty = fy ? fy(index.fy) - dimensions.marginTop : 0;
			if (x?.bandwidth) tx += x.bandwidth() / 2;
			if (y?.bandwidth) ty += y.bandwidth() / 2;
			const faceted = index.fi != null;
			let facetState;
			if (faceted) {
				let facetStates = state.facetStates;
				if (!facetStates) state.facetStates = facetStates = /* @__PURE__ */ new Map();
				facetState = facetStates.get(this);
				if (!facetState) facetStates.set(this, facetState = /* @__PURE__ */ new Map());
			}
			const [cx, cy] = applyFrameAnchor(this, dimensions);
			const { px: PX, py: PY } = values;
			const px = PX ? (i) => PX[i] : anchorX$1(values, cx);
			const py = PY ? (i) => PY[i] : anchorY$1(values, cy);
			let i;
			let g;
			let s;
			let f;
			function update(ii, ri) {
				if (faceted) {
					if (f) f = cancelAnimationFrame(f);
					if (ii == null) facetState.delete(index.fi);
					else {
						facetState.set(index.fi, ri);
						f = requestAnimationFrame(() => {
							f = null;
							for (const [fi, r] of facetState) if (r < ri || r === ri && fi < index.fi) {
								ii = null;
								break;
							}
							render(ii);
						});
						return;
					}
				}
				render(ii);
			}
			function render(ii) {
				if (i === ii && s === state.sticky) return;
				i = ii;
				s = context.pointerSticky = state.sticky;
				const I = i == null ? [] : [i];
				if (faceted) I.fx = index.fx, I.fy = index.fy, I.fi = index.fi;
				const r = next(I, scales, values, dimensions, context);
				if (g) {
					if (faceted) {
						const p = g.parentNode;
						const ft = g.getAttribute("transform");
						const mt = r.getAttribute("transform");
						ft ? r.setAttribute("transform", ft) : r.removeAttribute("transform");
						mt ? p.setAttribute("transform", mt) : p.removeAttribute("transform");
						r.removeAttribute("aria-label");
						r.removeAttribute("aria-description");
						r.removeAttribute("aria-hidden");
					}
					g.replaceWith(r);
				}
				state.roots[renderIndex] = g = r;
				if (!(i == null && facetState?.size > 1)) {
					const value = i == null ? null : isArray(data) ? data[i] : data.get(i);
					context.dispatchValue(value);
				}
				return r;
			}
			function pointermove(event) {
				if (state.sticky || event.pointerType === "mouse" && event.buttons === 1) return;
				let [xp, yp] = pointer$1(event);
				xp -= tx, yp -= ty;
				const kpx = xp < dimensions.marginLeft || xp > dimensions.width - dimensions.marginRight ? 1 : kx;
				const kpy = yp < dimensions.marginTop || yp > dimensions.height - dimensions.marginBottom ? 1 : ky;
				let ii = null;
				let ri = maxRadius * maxRadius;
				for (const j of index) {
					const dx = kpx * (px(j) - xp);
					const dy = kpy * (py(j) - yp);
					const rj = dx * dx + dy * dy;
					if (rj <= ri) ii = j, ri = rj;
				}
				if (ii != null && (kx !== 1 || ky !== 1)) {
					const dx = px(ii) - xp;
					const dy = py(ii) - yp;
					ri = dx * dx + dy * dy;
				}
				update(ii, ri);
			}
			function pointerdown(event) {
				if (event.pointerType !== "mouse") return;
				if (i == null) return;
				if (state.sticky && state.roots.some((r) => r?.contains(event.target))) return;
				if (state.sticky) state.sticky = false, state.renders.forEach((r) => r(null));
				else state.sticky = true, render(i);
				event.stopImmediatePropagation();
			}
			function pointerleave(event) {
				if (event.pointerType !== "mouse") return;
				if (!state.sticky) update(null);
			}
			svg.addEventListener("pointerenter", pointermove);
			svg.addEventListener("pointermove", pointermove);
			svg.addEventListener("pointerdown", pointerdown);
			svg.addEventListener("pointerleave", pointerleave);
			return render(null);
		}, render)
	};
}
function pointer(options) {
	return pointerK(1, 1, options);
}
function pointerX(options) {
	return pointerK(1, .01, options);
}
function pointerY(options) {
	return pointerK(.01, 1, options);
}
function anchorX$1({ x1: X1, x2: X2, x: X = X1 }, cx) {
	return X1 && X2 ? (i) => (X1[i] + X2[i]) / 2 : X ? (i) => X[i] : () => cx;
}
function anchorY$1({ y1: Y1, y2: Y2, y: Y = Y1 }, cy) {
	return Y1 && Y2 ? (i) => (Y1[i] + Y2[i]) / 2 : Y ? (i) => Y[i] : () => cy;
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/axes.js
function inferFontVariant$2(scale) {
	return isOrdinalScale(scale) && scale.interval === void 0 ? void 0 : "tabular-nums";
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/legends/ramp.js
function legendRamp(color, options) {
	let { label = color.label, tickSize = 6, width = 240, height = 44 + tickSize, marginTop = 18, marginRight = 0, marginBottom = 16 + tickSize, marginLeft = 0, style, ticks = (width - marginLeft - marginRight) / 64, tickFormat, fontVariant = inferFontVariant$2(color), round = true, opacity, className } = options;
	const context = createContext(options);
	className = maybeClassName(className);
	opacity = maybeNumberChannel(opacity)[1];
	if (tickFormat === null) tickFormat = () => null;
	const svg = create("svg", context).attr("class", `${className}-ramp`).attr("font-family", "system-ui, sans-serif").attr("font-size", 10).attr("width", width).attr("height", height).attr("viewBox", `0 0 ${width} ${height}`).call((svg) => svg.append("style").text(`:where(.${className}-ramp) {
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
  overflow: visible;
}
:where(.${className}-ramp text) {
  white-space: pre;
}`)).call(applyInlineStyles, style);
	let tickAdjust = (g) => g.selectAll(".tick line").attr("y1", marginTop + marginBottom - height);
	let x;
	const applyRange = round ? (x, range) => x.rangeRound(range) : (x, range) => x.range(range);
	const { type, domain, range, interpolate, scale, pivot } = color;
	if (interpolate) {
		const interpolator = range === void 0 ? interpolate : piecewise(interpolate.length === 1 ? interpolatePiecewise(interpolate) : interpolate, range);
		x = applyRange(scale.copy(), quantize(number$3(marginLeft, width - marginRight), Math.min(domain.length + (pivot !== void 0), range === void 0 ? Infinity : range.length)));
		const n = 256;
		const canvas = context.document.createElement("canvas");
		canvas.width = n;
		canvas.height = 1;
		const context2 = canvas.getContext("2d");
		for (let i = 0, j = 255; i < n; ++i) {
			context2.fillStyle = interpolator(i / j);
			context2.fillRect(i, 0, 1, 1);
		}
		svg.append("image").attr("opacity", opacity).attr("x", marginLeft).attr("y", marginTop).attr("width", width - marginLeft - marginRight).attr("height", height - marginTop - marginBottom).attr("preserveAspectRatio", "none").attr("xlink:href", canvas.toDataURL());
	} else if (type === "threshold") {
		const thresholds = domain;
		const thresholdFormat = tickFormat === void 0 ? (d) => d : typeof tickFormat === "string" ? format$1(tickFormat) : tickFormat;
		x = applyRange(linear().domain([-1, range.length - 1]), [marginLeft, width - marginRight]);
		svg.append("g").attr("fill-opacity", opacity).selectAll().data(range).enter().append("rect").attr("x", (d, i) => x(i - 1)).attr("y", marginTop).attr("width", (d, i) => x(i) - x(i - 1)).attr("height", height - marginTop - marginBottom).attr("fill", (d) => d);
		ticks = map(thresholds, (_, i) => i);
		tickFormat = (i) => thresholdFormat(thresholds[i], i);
	} else {
		x = applyRange(band$2().domain(domain), [marginLeft, width - marginRight]);
		svg.append("g").attr("fill-opacity", opacity).selectAll().data(domain).enter().append("rect").attr("x", x).attr("y", marginTop).attr("width", Math.max(0, x.bandwidth() - 1)).attr("height", height - marginTop - marginBottom).attr("fill", scale);
		tickAdjust = () => {};
	}
	svg.append("g").attr("transform", `translate(0,${height - marginBottom})`).call(axisBottom(x).ticks(Array.isArray(ticks) ? null : ticks, typeof tickFormat === "string" ? tickFormat : void 0).tickFormat(typeof tickFormat === "function" ? tickFormat : void 0).tickSize(tickSize).tickValues(Array.isArray(ticks) ? ticks : null)).attr("font-size", null).attr("font-family", null).attr("font-variant", impliedString(fontVariant, "normal")).call(tickAdjust).call((g) => g.select(".domain").remove());
	if (label !== void 0) svg.append("text").attr("x", marginLeft).attr("y", marginTop - 6).attr("fill", "currentColor").attr("font-weight", "bold").text(label);
	return svg.node();
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/math.js
var radians = Math.PI / 180;
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marker.js
function markers(mark, { marker, markerStart = marker, markerMid = marker, markerEnd = marker } = {}) {
	mark.markerStart = maybeMarker(markerStart);
	mark.markerMid = maybeMarker(markerMid);
	mark.markerEnd = maybeMarker(markerEnd);
}
function maybeMarker(marker) {
	if (marker == null || marker === false) return null;
	if (marker === true) return markerCircleFill;
	if (typeof marker === "function") return marker;
	switch (`${marker}`.toLowerCase()) {
		case "none": return null;
		case "arrow": return markerArrow("auto");
		case "arrow-reverse": return markerArrow("auto-start-reverse");
		case "dot": return markerDot;
		case "circle":
		case "circle-fill": return markerCircleFill;
		case "circle-stroke": return markerCircleStroke;
		case "tick": return markerTick("auto");
		case "tick-x": return markerTick(90);
		case "tick-y": return markerTick(0);
	}
	throw new Error(`invalid marker: ${marker}`);
}
function markerArrow(orient) {
	return (color, context) => create("svg:marker", context).attr("viewBox", "-5 -5 10 10").attr("markerWidth", 6.67).attr("markerHeight", 6.67).attr("orient", orient).attr("fill", "none").attr("stroke", color).attr("stroke-width", 1.5).attr("stroke-linecap", "round").attr("stroke-linejoin", "round").call((marker) => marker.append("path").attr("d", "M-1.5,-3l3,3l-3,3")).node();
}
function markerDot(color, context) {
	return create("svg:marker", context).attr("viewBox", "-5 -5 10 10").attr("markerWidth", 6.67).attr("markerHeight", 6.67).attr("fill", color).attr("stroke", "none").call((marker) => marker.append("circle").attr("r", 2.5)).node();
}
function markerCircleFill(color, context) {
	return create("svg:marker", context).attr("viewBox", "-5 -5 10 10").attr("markerWidth", 6.67).attr("markerHeight", 6.67).attr("fill", color).attr("stroke", "var(--plot-background)").attr("stroke-width", 1.5).call((marker) => marker.append("circle").attr("r", 3)).node();
}
function markerCircleStroke(color, context) {
	return create("svg:marker", context).attr("viewBox", "-5 -5 10 10").attr("markerWidth", 6.67).attr("markerHeight", 6.67).attr("fill", "var(--plot-background)").attr("stroke", color).attr("stroke-width", 1.5).call((marker) => marker.append("circle").attr("r", 3)).node();
}
function markerTick(orient) {
	return (color, context) => create("svg:marker", context).attr("viewBox", "-3 -3 6 6").attr("markerWidth", 6).attr("markerHeight", 6).attr("orient", orient).attr("stroke", color).call((marker) => marker.append("path").attr("d", "M0,-3v6")).node();
}
var nextMarkerId = 0;
function applyMarkers(path, mark, { stroke: S }, context) {
	return applyMarkersColor(path, mark, S && ((i) => S[i]), null, context);
}
function applyGroupedMarkers(path, mark, { stroke: S, z: Z }, context) {
	return applyMarkersColor(path, mark, S && (([i]) => S[i]), Z, context);
}
var START = 1;
var END = 2;
/**
* When rendering lines or areas with variable aesthetics, a single series
* produces multiple path elements. The first path element is a START segment;
* the last path element is an END segment. When there is only a single path
* element, it is both a START and an END segment.
*/
function getGroupedOrientation(path, Z) {
	const O = new Uint8Array(Z.length);
	const D = path.data().filter((I) => I.length > 1);
	const n = D.length;
	for (let i = 0, z = unset; i < n; ++i) {
		const I = D[i];
		if (I.length > 1) {
			const i = I[0];
			if (z !== (z = keyof(Z[i]))) O[i] |= START;
		}
	}
	for (let i = n - 1, z = unset; i >= 0; --i) {
		const I = D[i];
		if (I.length > 1) {
			const i = I[0];
			if (z !== (z = keyof(Z[i]))) O[i] |= END;
		}
	}
	return ([i]) => O[i];
}
function applyMarkersColor(path, { markerStart, markerMid, markerEnd, stroke }, strokeof = () => stroke, Z, context) {
	if (!markerStart && !markerMid && !markerEnd) return;
	const iriByMarkerColor = /* @__PURE__ */ new Map();
	const orient = Z && getGroupedOrientation(path, Z);
	function applyMarker(name, marker, filter) {
		return function(i) {
			if (filter && !filter(i)) return;
			const color = strokeof(i);
			let iriByColor = iriByMarkerColor.get(marker);
			if (!iriByColor) iriByMarkerColor.set(marker, iriByColor = /* @__PURE__ */ new Map());
			let iri = iriByColor.get(color);
			if (!iri) {
				const node = this.parentNode.insertBefore(marker(color, context), this);
				const id = `plot-marker-${++nextMarkerId}`;
				node.setAttribute("id", id);
				iriByColor.set(color, iri = `url(#${id})`);
			}
			this.setAttribute(name, iri);
		};
	}
	if (markerStart) path.each(applyMarker("marker-start", markerStart, orient && ((i) => orient(i) & START)));
	if (markerMid && orient) path.each(applyMarker("marker-start", markerMid, (i) => !(orient(i) & START)));
	if (markerMid) path.each(applyMarker("marker-mid", markerMid));
	if (markerEnd) path.each(applyMarker("marker-end", markerEnd, orient && ((i) => orient(i) & END)));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/inset.js
function maybeInsetX({ inset, insetLeft, insetRight, ...options } = {}) {
	[insetLeft, insetRight] = maybeInset(inset, insetLeft, insetRight);
	return {
		inset,
		insetLeft,
		insetRight,
		...options
	};
}
function maybeInsetY({ inset, insetTop, insetBottom, ...options } = {}) {
	[insetTop, insetBottom] = maybeInset(inset, insetTop, insetBottom);
	return {
		inset,
		insetTop,
		insetBottom,
		...options
	};
}
function maybeInset(inset, inset1, inset2) {
	return inset === void 0 && inset1 === void 0 && inset2 === void 0 ? offset ? [1, 0] : [.5, .5] : [inset1, inset2];
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/interval.js
function maybeIntervalValue(value, { interval }) {
	value = { ...maybeValue(value) };
	value.interval = maybeInterval(value.interval === void 0 ? interval : value.interval);
	return value;
}
function maybeIntervalK(k, maybeInsetK, options, trivial) {
	const { [k]: v, [`${k}1`]: v1, [`${k}2`]: v2 } = options;
	const { value, interval } = maybeIntervalValue(v, options);
	if (value == null || interval == null && !trivial) return options;
	const label = labelof(v);
	if (interval == null) {
		let V;
		const kv = {
			transform: (data) => V || (V = valueof(data, value)),
			label
		};
		return {
			...options,
			[k]: void 0,
			[`${k}1`]: v1 === void 0 ? kv : v1,
			[`${k}2`]: v2 === void 0 && !(v1 === v2 && trivial) ? kv : v2
		};
	}
	let D1, V1;
	function transform(data) {
		if (V1 !== void 0 && data === D1) return V1;
		return V1 = map(valueof(D1 = data, value), (v) => interval.floor(v));
	}
	return maybeInsetK({
		...options,
		[k]: void 0,
		[`${k}1`]: v1 === void 0 ? {
			transform,
			label
		} : v1,
		[`${k}2`]: v2 === void 0 ? {
			transform: (data) => transform(data).map((v) => interval.offset(v)),
			label
		} : v2
	});
}
function maybeIntervalMidK(k, maybeInsetK, options) {
	const { [k]: v } = options;
	const { value, interval } = maybeIntervalValue(v, options);
	if (value == null || interval == null) return options;
	return maybeInsetK({
		...options,
		[k]: {
			label: labelof(v),
			transform: (data) => {
				const V1 = map(valueof(data, value), (v) => interval.floor(v));
				const V2 = V1.map((v) => interval.offset(v));
				return V1.map(isTemporal(V1) ? (v1, v2) => v1 == null || isNaN(v1 = +v1) || (v2 = V2[v2], v2 == null) || isNaN(v2 = +v2) ? void 0 : /* @__PURE__ */ new Date((v1 + v2) / 2) : (v1, v2) => v1 == null || (v2 = V2[v2], v2 == null) ? NaN : (+v1 + +v2) / 2);
			}
		}
	});
}
function maybeTrivialIntervalX(options = {}) {
	return maybeIntervalK("x", maybeInsetX, options, true);
}
function maybeTrivialIntervalY(options = {}) {
	return maybeIntervalK("y", maybeInsetY, options, true);
}
function maybeIntervalX(options = {}) {
	return maybeIntervalK("x", maybeInsetX, options);
}
function maybeIntervalY(options = {}) {
	return maybeIntervalK("y", maybeInsetY, options);
}
function maybeIntervalMidX(options = {}) {
	return maybeIntervalMidK("x", maybeInsetX, options);
}
function maybeIntervalMidY(options = {}) {
	return maybeIntervalMidK("y", maybeInsetY, options);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/rule.js
var defaults$8 = {
	ariaLabel: "rule",
	fill: null,
	stroke: "currentColor"
};
var RuleX = class extends Mark {
	constructor(data, options = {}) {
		const { x, y1, y2, inset = 0, insetTop = inset, insetBottom = inset } = options;
		super(data, {
			x: {
				value: x,
				scale: "x",
				optional: true
			},
			y1: {
				value: y1,
				scale: "y",
				optional: true
			},
			y2: {
				value: y2,
				scale: "y",
				optional: true
			}
		}, withTip(options, "x"), defaults$8);
		this.insetTop = number(insetTop);
		this.insetBottom = number(insetBottom);
		markers(this, options);
	}
	render(index, scales, channels, dimensions, context) {
		const { x, y } = scales;
		const { x: X, y1: Y1, y2: Y2 } = channels;
		const { width, height, marginTop, marginRight, marginLeft, marginBottom } = dimensions;
		const { insetTop, insetBottom } = this;
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyTransform, this, { x: X && x }, offset, 0).call((g) => g.selectAll().data(index).enter().append("line").call(applyDirectStyles, this).attr("x1", X ? (i) => X[i] : (marginLeft + width - marginRight) / 2).attr("x2", X ? (i) => X[i] : (marginLeft + width - marginRight) / 2).attr("y1", Y1 && !isCollapsed(y) ? (i) => Y1[i] + insetTop : marginTop + insetTop).attr("y2", Y2 && !isCollapsed(y) ? y.bandwidth ? (i) => Y2[i] + y.bandwidth() - insetBottom : (i) => Y2[i] - insetBottom : height - marginBottom - insetBottom).call(applyChannelStyles, this, channels).call(applyMarkers, this, channels, context)).node();
	}
};
var RuleY = class extends Mark {
	constructor(data, options = {}) {
		const { x1, x2, y, inset = 0, insetRight = inset, insetLeft = inset } = options;
		super(data, {
			y: {
				value: y,
				scale: "y",
				optional: true
			},
			x1: {
				value: x1,
				scale: "x",
				optional: true
			},
			x2: {
				value: x2,
				scale: "x",
				optional: true
			}
		}, withTip(options, "y"), defaults$8);
		this.insetRight = number(insetRight);
		this.insetLeft = number(insetLeft);
		markers(this, options);
	}
	render(index, scales, channels, dimensions, context) {
		const { x, y } = scales;
		const { y: Y, x1: X1, x2: X2 } = channels;
		const { width, height, marginTop, marginRight, marginLeft, marginBottom } = dimensions;
		const { insetLeft, insetRight } = this;
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyTransform, this, { y: Y && y }, 0, offset).call((g) => g.selectAll().data(index).enter().append("line").call(applyDirectStyles, this).attr("x1", X1 && !isCollapsed(x) ? (i) => X1[i] + insetLeft : marginLeft + insetLeft).attr("x2", X2 && !isCollapsed(x) ? x.bandwidth ? (i) => X2[i] + x.bandwidth() - insetRight : (i) => X2[i] - insetRight : width - marginRight - insetRight).attr("y1", Y ? (i) => Y[i] : (marginTop + height - marginBottom) / 2).attr("y2", Y ? (i) => Y[i] : (marginTop + height - marginBottom) / 2).call(applyChannelStyles, this, channels).call(applyMarkers, this, channels, context)).node();
	}
};
function ruleX(data, options) {
	let { x = identity$1, y, y1, y2, ...rest } = maybeIntervalY(options);
	[y1, y2] = maybeOptionalZero(y, y1, y2);
	return new RuleX(data, {
		...rest,
		x,
		y1,
		y2
	});
}
function ruleY(data, options) {
	let { y = identity$1, x, x1, x2, ...rest } = maybeIntervalX(options);
	[x1, x2] = maybeOptionalZero(x, x1, x2);
	return new RuleY(data, {
		...rest,
		y,
		x1,
		x2
	});
}
function maybeOptionalZero(x, x1, x2) {
	if (x == null) {
		if (x1 === void 0) {
			if (x2 !== void 0) return [0, x2];
		} else if (x2 === void 0) return [0, x1];
	} else if (x1 === void 0) return x2 === void 0 ? [0, x] : [x, x2];
	else if (x2 === void 0) return [x, x1];
	return [x1, x2];
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/template.js
function template(strings, ...parts) {
	let n = parts.length;
	for (let j = 0, copy = true; j < n; ++j) if (typeof parts[j] !== "function") {
		if (copy) {
			strings = strings.slice();
			copy = false;
		}
		strings.splice(j, 2, strings[j] + parts[j] + strings[j + 1]);
		parts.splice(j, 1);
		--j, --n;
	}
	return (i) => {
		let s = strings[0];
		for (let j = 0; j < n; ++j) s += parts[j](i) + strings[j + 1];
		return s;
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/text.js
var defaults$7 = {
	ariaLabel: "text",
	strokeLinejoin: "round",
	strokeWidth: 3,
	paintOrder: "stroke"
};
var softHyphen = "­";
var Text = class extends Mark {
	constructor(data, options = {}) {
		const { x, y, text = isIterable(data) && isTextual(data) ? identity$1 : indexOf, frameAnchor, textAnchor = /right$/i.test(frameAnchor) ? "end" : /left$/i.test(frameAnchor) ? "start" : "middle", lineAnchor = /^top/i.test(frameAnchor) ? "top" : /^bottom/i.test(frameAnchor) ? "bottom" : "middle", lineHeight = 1, lineWidth = Infinity, textOverflow, monospace, fontFamily = monospace ? "ui-monospace, monospace" : void 0, fontSize, fontStyle, fontVariant, fontWeight, rotate } = options;
		const [vrotate, crotate] = maybeNumberChannel(rotate, 0);
		const [vfontSize, cfontSize] = maybeFontSizeChannel(fontSize);
		super(data, {
			x: {
				value: x,
				scale: "x",
				optional: true
			},
			y: {
				value: y,
				scale: "y",
				optional: true
			},
			fontSize: {
				value: vfontSize,
				optional: true
			},
			rotate: {
				value: numberChannel(vrotate),
				optional: true
			},
			text: {
				value: text,
				filter: nonempty,
				optional: true
			}
		}, options, defaults$7);
		this.rotate = crotate;
		this.textAnchor = impliedString(textAnchor, "middle");
		this.lineAnchor = keyword(lineAnchor, "lineAnchor", [
			"top",
			"middle",
			"bottom"
		]);
		this.lineHeight = +lineHeight;
		this.lineWidth = +lineWidth;
		this.textOverflow = maybeTextOverflow(textOverflow);
		this.monospace = !!monospace;
		this.fontFamily = string(fontFamily);
		this.fontSize = cfontSize;
		this.fontStyle = string(fontStyle);
		this.fontVariant = string(fontVariant);
		this.fontWeight = string(fontWeight);
		this.frameAnchor = maybeFrameAnchor(frameAnchor);
		if (!(this.lineWidth >= 0)) throw new Error(`invalid lineWidth: ${lineWidth}`);
		this.splitLines = splitter(this);
		this.clipLine = clipper(this);
	}
	render(index, scales, channels, dimensions, context) {
		const { x, y } = scales;
		const { x: X, y: Y, rotate: R, text: T, title: TL, fontSize: FS } = channels;
		const { rotate } = this;
		const [cx, cy] = applyFrameAnchor(this, dimensions);
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyIndirectTextStyles, this, T, dimensions).call(applyTransform, this, {
			x: X && x,
			y: Y && y
		}).call((g) => g.selectAll().data(index).enter().append("text").call(applyDirectStyles, this).call(applyMultilineText, this, T, TL).attr("transform", template`translate(${X ? (i) => X[i] : cx},${Y ? (i) => Y[i] : cy})${R ? (i) => ` rotate(${R[i]})` : rotate ? ` rotate(${rotate})` : ``}`).call(applyAttr, "font-size", FS && ((i) => FS[i])).call(applyChannelStyles, this, channels)).node();
	}
};
function maybeTextOverflow(textOverflow) {
	return textOverflow == null ? null : keyword(textOverflow, "textOverflow", [
		"clip",
		"ellipsis",
		"clip-start",
		"clip-end",
		"ellipsis-start",
		"ellipsis-middle",
		"ellipsis-end"
	]).replace(/^(clip|ellipsis)$/, "$1-end");
}
function applyMultilineText(selection, mark, T, TL) {
	if (!T) return;
	const { lineAnchor, lineHeight, textOverflow, splitLines, clipLine } = mark;
	selection.each(function(i) {
		const lines = splitLines(formatDefault(T[i]) ?? "").map(clipLine);
		const n = lines.length;
		const y = lineAnchor === "top" ? .71 : lineAnchor === "bottom" ? 1 - n : (164 - n * 100) / 200;
		if (n > 1) {
			let m = 0;
			for (let i = 0; i < n; ++i) {
				++m;
				if (!lines[i]) continue;
				const tspan = this.ownerDocument.createElementNS(namespaces.svg, "tspan");
				tspan.setAttribute("x", 0);
				if (i === m - 1) tspan.setAttribute("y", `${(y + i) * lineHeight}em`);
				else tspan.setAttribute("dy", `${m * lineHeight}em`);
				tspan.textContent = lines[i];
				this.appendChild(tspan);
				m = 0;
			}
		} else {
			if (y) this.setAttribute("y", `${y * lineHeight}em`);
			this.textContent = lines[0];
		}
		if (textOverflow && !TL && lines[0] !== T[i]) {
			const title = this.ownerDocument.createElementNS(namespaces.svg, "title");
			title.textContent = T[i];
			this.appendChild(title);
		}
	});
}
function text(data, { x, y, ...options } = {}) {
	if (options.frameAnchor === void 0) [x, y] = maybeTuple(x, y);
	return new Text(data, {
		...options,
		x,
		y
	});
}
function textX(data, { x = identity$1, ...options } = {}) {
	return new Text(data, maybeIntervalMidY({
		...options,
		x
	}));
}
function textY(data, { y = identity$1, ...options } = {}) {
	return new Text(data, maybeIntervalMidX({
		...options,
		y
	}));
}
function applyIndirectTextStyles(selection, mark, T) {
	applyAttr(selection, "text-anchor", mark.textAnchor);
	applyAttr(selection, "font-family", mark.fontFamily);
	applyAttr(selection, "font-size", mark.fontSize);
	applyAttr(selection, "font-style", mark.fontStyle);
	applyAttr(selection, "font-variant", mark.fontVariant === void 0 ? inferFontVariant$1(T) : mark.fontVariant);
	applyAttr(selection, "font-weight", mark.fontWeight);
}
function inferFontVariant$1(T) {
	return T && (isNumeric(T) || isTemporal(T)) ? "tabular-nums" : void 0;
}
var fontSizes = /* @__PURE__ */ new Set([
	"inherit",
	"initial",
	"revert",
	"unset",
	"xx-small",
	"x-small",
	"small",
	"medium",
	"large",
	"x-large",
	"xx-large",
	"xxx-large",
	"larger",
	"smaller"
]);
function maybeFontSizeChannel(fontSize) {
	if (fontSize == null || typeof fontSize === "number") return [void 0, fontSize];
	if (typeof fontSize !== "string") return [fontSize, void 0];
	fontSize = fontSize.trim().toLowerCase();
	return fontSizes.has(fontSize) || /^[+-]?\d*\.?\d+(e[+-]?\d+)?(\w*|%)$/.test(fontSize) ? [void 0, fontSize] : [fontSize, void 0];
}
function lineWrap(input, maxWidth, widthof) {
	const lines = [];
	let lineStart, lineEnd = 0;
	for (const [wordStart, wordEnd, required] of lineBreaks(input)) {
		if (lineStart === void 0) lineStart = wordStart;
		if (lineEnd > lineStart && widthof(input, lineStart, wordEnd) > maxWidth) {
			lines.push(input.slice(lineStart, lineEnd) + (input[lineEnd - 1] === softHyphen ? "-" : ""));
			lineStart = wordStart;
		}
		if (required) {
			lines.push(input.slice(lineStart, wordEnd));
			lineStart = void 0;
			continue;
		}
		lineEnd = wordEnd;
	}
	return lines;
}
function* lineBreaks(input) {
	let i = 0, j = 0;
	const n = input.length;
	while (j < n) {
		let k = 1;
		switch (input[j]) {
			case softHyphen:
			case "-":
				++j;
				yield [
					i,
					j,
					false
				];
				i = j;
				break;
			case " ":
				yield [
					i,
					j,
					false
				];
				while (input[++j] === " ");
				i = j;
				break;
			case "\r": if (input[j + 1] === "\n") ++k;
			case "\n":
				yield [
					i,
					j,
					true
				];
				j += k;
				i = j;
				break;
			default: ++j;
		}
	}
	yield [
		i,
		j,
		true
	];
}
var defaultWidthMap = {
	a: 56,
	b: 63,
	c: 57,
	d: 63,
	e: 58,
	f: 37,
	g: 62,
	h: 60,
	i: 26,
	j: 26,
	k: 55,
	l: 26,
	m: 88,
	n: 60,
	o: 60,
	p: 62,
	q: 62,
	r: 39,
	s: 54,
	t: 38,
	u: 60,
	v: 55,
	w: 79,
	x: 54,
	y: 55,
	z: 55,
	A: 69,
	B: 67,
	C: 73,
	D: 74,
	E: 61,
	F: 58,
	G: 76,
	H: 75,
	I: 28,
	J: 55,
	K: 67,
	L: 58,
	M: 89,
	N: 75,
	O: 78,
	P: 65,
	Q: 78,
	R: 67,
	S: 65,
	T: 65,
	U: 75,
	V: 69,
	W: 98,
	X: 69,
	Y: 67,
	Z: 67,
	0: 64,
	1: 48,
	2: 62,
	3: 64,
	4: 66,
	5: 63,
	6: 65,
	7: 58,
	8: 65,
	9: 65,
	" ": 29,
	"!": 32,
	"\"": 49,
	"'": 31,
	"(": 39,
	")": 39,
	",": 31,
	"-": 48,
	".": 31,
	"/": 32,
	":": 31,
	";": 31,
	"?": 52,
	"‘": 31,
	"’": 31,
	"“": 47,
	"”": 47,
	"…": 82
};
function defaultWidth(text, start = 0, end = text.length) {
	let sum = 0;
	for (let i = start; i < end; i = readCharacter(text, i)) sum += defaultWidthMap[text[i]] ?? (isPictographic(text, i) ? 120 : defaultWidthMap.e);
	return sum;
}
function monospaceWidth(text, start = 0, end = text.length) {
	let sum = 0;
	for (let i = start; i < end; i = readCharacter(text, i)) sum += isPictographic(text, i) ? 126 : 63;
	return sum;
}
function splitter({ monospace, lineWidth, textOverflow }) {
	if (textOverflow != null || lineWidth == Infinity) return (text) => text.split(/\r\n?|\n/g);
	const widthof = monospace ? monospaceWidth : defaultWidth;
	const maxWidth = lineWidth * 100;
	return (text) => lineWrap(text, maxWidth, widthof);
}
function clipper({ monospace, lineWidth, textOverflow }) {
	if (textOverflow == null || lineWidth == Infinity) return (text) => text;
	const widthof = monospace ? monospaceWidth : defaultWidth;
	const maxWidth = lineWidth * 100;
	switch (textOverflow) {
		case "clip-start": return (text) => clipStart(text, maxWidth, widthof, "");
		case "clip-end": return (text) => clipEnd(text, maxWidth, widthof, "");
		case "ellipsis-start": return (text) => clipStart(text, maxWidth, widthof, "…");
		case "ellipsis-middle": return (text) => clipMiddle(text, maxWidth, widthof, "…");
		case "ellipsis-end": return (text) => clipEnd(text, maxWidth, widthof, "…");
	}
}
function cut$1(text, width, widthof, inset) {
	const I = [];
	let w = 0;
	for (let i = 0, j = 0, n = text.length; i < n; i = j) {
		j = readCharacter(text, i);
		const l = widthof(text, i, j);
		if (w + l > width) {
			w += inset;
			while (w > width && i > 0) j = i, i = I.pop(), w -= widthof(text, i, j);
			return [i, width - w];
		}
		w += l;
		I.push(i);
	}
	return [-1, 0];
}
function clipEnd(text, width, widthof, ellipsis) {
	text = text.trim();
	const e = widthof(ellipsis);
	const [i] = cut$1(text, width, widthof, e);
	return i < 0 ? text : text.slice(0, i).trimEnd() + ellipsis;
}
function clipMiddle(text, width, widthof, ellipsis) {
	text = text.trim();
	const w = widthof(text);
	if (w <= width) return text;
	const e = widthof(ellipsis) / 2;
	const [i, ei] = cut$1(text, width / 2, widthof, e);
	const [j] = cut$1(text, w - width / 2 - ei + e, widthof, -e);
	return j < 0 ? ellipsis : text.slice(0, i).trimEnd() + ellipsis + text.slice(readCharacter(text, j)).trimStart();
}
function clipStart(text, width, widthof, ellipsis) {
	text = text.trim();
	const w = widthof(text);
	if (w <= width) return text;
	const e = widthof(ellipsis);
	const [j] = cut$1(text, w - width + e, widthof, -e);
	return j < 0 ? ellipsis : ellipsis + text.slice(readCharacter(text, j)).trimStart();
}
var reCombiner = /[\p{Combining_Mark}\p{Emoji_Modifier}]+/uy;
var rePictographic = /\p{Extended_Pictographic}/uy;
function readCharacter(text, i) {
	i += isSurrogatePair(text, i) ? 2 : 1;
	if (isCombiner(text, i)) i = reCombiner.lastIndex;
	if (isZeroWidthJoiner(text, i)) return readCharacter(text, i + 1);
	return i;
}
function isAscii(text, i) {
	return text.charCodeAt(i) < 128;
}
function isSurrogatePair(text, i) {
	const hi = text.charCodeAt(i);
	if (hi >= 55296 && hi < 56320) {
		const lo = text.charCodeAt(i + 1);
		return lo >= 56320 && lo < 57344;
	}
	return false;
}
function isZeroWidthJoiner(text, i) {
	return text.charCodeAt(i) === 8205;
}
function isCombiner(text, i) {
	return isAscii(text, i) ? false : (reCombiner.lastIndex = i, reCombiner.test(text));
}
function isPictographic(text, i) {
	return isAscii(text, i) ? false : (rePictographic.lastIndex = i, rePictographic.test(text));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/vector.js
var defaults$6 = {
	ariaLabel: "vector",
	fill: "none",
	stroke: "currentColor",
	strokeWidth: 1.5,
	strokeLinejoin: "round",
	strokeLinecap: "round"
};
var defaultRadius = 3.5;
var wingRatio = defaultRadius * 5;
var shapeArrow = { draw(context, l, r) {
	const wing = l * r / wingRatio;
	context.moveTo(0, 0);
	context.lineTo(0, -l);
	context.moveTo(-wing, wing - l);
	context.lineTo(0, -l);
	context.lineTo(wing, wing - l);
} };
var shapes = /* @__PURE__ */ new Map([["arrow", shapeArrow], ["spike", { draw(context, l, r) {
	context.moveTo(-r, 0);
	context.lineTo(0, -l);
	context.lineTo(r, 0);
} }]]);
function isShapeObject(value) {
	return value && typeof value.draw === "function";
}
function maybeShape(shape) {
	if (isShapeObject(shape)) return shape;
	const value = shapes.get(`${shape}`.toLowerCase());
	if (value) return value;
	throw new Error(`invalid shape: ${shape}`);
}
var Vector = class extends Mark {
	constructor(data, options = {}) {
		const { x, y, r = defaultRadius, length, rotate, shape = shapeArrow, anchor = "middle", frameAnchor } = options;
		const [vl, cl] = maybeNumberChannel(length, 12);
		const [vr, cr] = maybeNumberChannel(rotate, 0);
		super(data, {
			x: {
				value: x,
				scale: "x",
				optional: true
			},
			y: {
				value: y,
				scale: "y",
				optional: true
			},
			length: {
				value: vl,
				scale: "length",
				optional: true
			},
			rotate: {
				value: vr,
				optional: true
			}
		}, options, defaults$6);
		this.r = +r;
		this.length = cl;
		this.rotate = cr;
		this.shape = maybeShape(shape);
		this.anchor = keyword(anchor, "anchor", [
			"start",
			"middle",
			"end"
		]);
		this.frameAnchor = maybeFrameAnchor(frameAnchor);
	}
	render(index, scales, channels, dimensions, context) {
		const { x, y } = scales;
		const { x: X, y: Y, length: L, rotate: A } = channels;
		const { length, rotate, anchor, shape, r } = this;
		const [cx, cy] = applyFrameAnchor(this, dimensions);
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyTransform, this, {
			x: X && x,
			y: Y && y
		}).call((g) => g.selectAll().data(index).enter().append("path").call(applyDirectStyles, this).attr("transform", template`translate(${X ? (i) => X[i] : cx},${Y ? (i) => Y[i] : cy})${A ? (i) => ` rotate(${A[i]})` : rotate ? ` rotate(${rotate})` : ``}${anchor === "start" ? `` : anchor === "end" ? L ? (i) => ` translate(0,${L[i]})` : ` translate(0,${length})` : L ? (i) => ` translate(0,${L[i] / 2})` : ` translate(0,${length / 2})`}`).attr("d", L ? (i) => {
			const p = pathRound();
			shape.draw(p, L[i], r);
			return p;
		} : (() => {
			const p = pathRound();
			shape.draw(p, length, r);
			return p;
		})()).call(applyChannelStyles, this, channels)).node();
	}
};
function vectorX(data, options = {}) {
	const { x = identity$1, ...rest } = options;
	return new Vector(data, {
		...rest,
		x
	});
}
function vectorY(data, options = {}) {
	const { y = identity$1, ...rest } = options;
	return new Vector(data, {
		...rest,
		y
	});
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/axis.js
function maybeData(data, options) {
	if (arguments.length < 2 && !isIterable(data)) options = data, data = null;
	if (options === void 0) options = {};
	return [data, options];
}
function maybeAnchor({ anchor } = {}, anchors) {
	return anchor === void 0 ? anchors[0] : keyword(anchor, "anchor", anchors);
}
function anchorY(options) {
	return maybeAnchor(options, ["left", "right"]);
}
function anchorFy(options) {
	return maybeAnchor(options, ["right", "left"]);
}
function anchorX(options) {
	return maybeAnchor(options, ["bottom", "top"]);
}
function anchorFx(options) {
	return maybeAnchor(options, ["top", "bottom"]);
}
function axisY() {
	const [data, options] = maybeData(...arguments);
	return axisKy("y", anchorY(options), data, options);
}
function axisFy() {
	const [data, options] = maybeData(...arguments);
	return axisKy("fy", anchorFy(options), data, options);
}
function axisX() {
	const [data, options] = maybeData(...arguments);
	return axisKx("x", anchorX(options), data, options);
}
function axisFx() {
	const [data, options] = maybeData(...arguments);
	return axisKx("fx", anchorFx(options), data, options);
}
function axisKy(k, anchor, data, { color = "currentColor", opacity = 1, stroke = color, strokeOpacity = opacity, strokeWidth = 1, fill = color, fillOpacity = opacity, textAnchor, textStroke, textStrokeOpacity, textStrokeWidth, tickSize = k === "y" ? 6 : 0, tickPadding, tickRotate, x, margin, marginTop = margin === void 0 ? 20 : margin, marginRight = margin === void 0 ? anchor === "right" ? 40 : 0 : margin, marginBottom = margin === void 0 ? 20 : margin, marginLeft = margin === void 0 ? anchor === "left" ? 40 : 0 : margin, label, labelAnchor, labelArrow, labelOffset, ariaLabel = `${k}-axis`, ...options }) {
	tickSize = number(tickSize);
	tickPadding = number(tickPadding);
	tickRotate = number(tickRotate);
	if (labelAnchor !== void 0) labelAnchor = keyword(labelAnchor, "labelAnchor", [
		"center",
		"top",
		"bottom"
	]);
	labelArrow = maybeLabelArrow(labelArrow);
	return marks(tickSize && !isNoneish(stroke) ? axisTickKy(k, anchor, data, {
		stroke,
		strokeOpacity,
		strokeWidth,
		tickSize,
		tickPadding,
		tickRotate,
		x,
		ariaLabel,
		...options
	}) : null, !isNoneish(fill) ? axisTextKy(k, anchor, data, {
		fill,
		fillOpacity,
		stroke: textStroke,
		strokeOpacity: textStrokeOpacity,
		strokeWidth: textStrokeWidth,
		textAnchor,
		tickSize,
		tickPadding,
		tickRotate,
		x,
		marginTop,
		marginRight,
		marginBottom,
		marginLeft,
		ariaLabel,
		...options
	}) : null, !isNoneish(fill) && label !== null ? text([], labelOptions({
		fill,
		fillOpacity,
		...options
	}, function(data, facets, channels, scales, dimensions) {
		const scale = scales[k];
		const { marginTop, marginRight, marginBottom, marginLeft } = k === "y" && dimensions.inset || dimensions;
		const cla = labelAnchor ?? (scale.bandwidth ? "center" : "top");
		const clo = labelOffset ?? (anchor === "right" ? marginRight : marginLeft) - 3;
		if (cla === "center") {
			this.textAnchor = void 0;
			this.lineAnchor = anchor === "right" ? "bottom" : "top";
			this.frameAnchor = anchor;
			this.rotate = -90;
		} else {
			this.textAnchor = anchor === "right" ? "end" : "start";
			this.lineAnchor = cla;
			this.frameAnchor = `${cla}-${anchor}`;
			this.rotate = 0;
		}
		this.dy = cla === "top" ? 3 - marginTop : cla === "bottom" ? marginBottom - 3 : 0;
		this.dx = anchor === "right" ? clo : -clo;
		this.ariaLabel = `${ariaLabel} label`;
		return {
			facets: [[0]],
			channels: { text: { value: [formatAxisLabel(k, scale, {
				anchor,
				label,
				labelAnchor: cla,
				labelArrow
			})] } }
		};
	})) : null);
}
function axisKx(k, anchor, data, { color = "currentColor", opacity = 1, stroke = color, strokeOpacity = opacity, strokeWidth = 1, fill = color, fillOpacity = opacity, textAnchor, textStroke, textStrokeOpacity, textStrokeWidth, tickSize = k === "x" ? 6 : 0, tickPadding, tickRotate, y, margin, marginTop = margin === void 0 ? anchor === "top" ? 30 : 0 : margin, marginRight = margin === void 0 ? 20 : margin, marginBottom = margin === void 0 ? anchor === "bottom" ? 30 : 0 : margin, marginLeft = margin === void 0 ? 20 : margin, label, labelAnchor, labelArrow, labelOffset, ariaLabel = `${k}-axis`, ...options }) {
	tickSize = number(tickSize);
	tickPadding = number(tickPadding);
	tickRotate = number(tickRotate);
	if (labelAnchor !== void 0) labelAnchor = keyword(labelAnchor, "labelAnchor", [
		"center",
		"left",
		"right"
	]);
	labelArrow = maybeLabelArrow(labelArrow);
	return marks(tickSize && !isNoneish(stroke) ? axisTickKx(k, anchor, data, {
		stroke,
		strokeOpacity,
		strokeWidth,
		tickSize,
		tickPadding,
		tickRotate,
		y,
		ariaLabel,
		...options
	}) : null, !isNoneish(fill) ? axisTextKx(k, anchor, data, {
		fill,
		fillOpacity,
		stroke: textStroke,
		strokeOpacity: textStrokeOpacity,
		strokeWidth: textStrokeWidth,
		textAnchor,
		tickSize,
		tickPadding,
		tickRotate,
		y,
		marginTop,
		marginRight,
		marginBottom,
		marginLeft,
		ariaLabel,
		...options
	}) : null, !isNoneish(fill) && label !== null ? text([], labelOptions({
		fill,
		fillOpacity,
		...options
	}, function(data, facets, channels, scales, dimensions) {
		const scale = scales[k];
		const { marginTop, marginRight, marginBottom, marginLeft } = k === "x" && dimensions.inset || dimensions;
		const cla = labelAnchor ?? (scale.bandwidth ? "center" : "right");
		const clo = labelOffset ?? (anchor === "top" ? marginTop : marginBottom) - 3;
		if (cla === "center") {
			this.frameAnchor = anchor;
			this.textAnchor = void 0;
		} else {
			this.frameAnchor = `${anchor}-${cla}`;
			this.textAnchor = cla === "right" ? "end" : "start";
		}
		this.lineAnchor = anchor;
		this.dy = anchor === "top" ? -clo : clo;
		this.dx = cla === "right" ? marginRight - 3 : cla === "left" ? 3 - marginLeft : 0;
		this.ariaLabel = `${ariaLabel} label`;
		return {
			facets: [[0]],
			channels: { text: { value: [formatAxisLabel(k, scale, {
				anchor,
				label,
				labelAnchor: cla,
				labelArrow
			})] } }
		};
	})) : null);
}
function axisTickKy(k, anchor, data, { strokeWidth = 1, strokeLinecap = null, strokeLinejoin = null, facetAnchor = anchor + (k === "y" ? "-empty" : ""), frameAnchor = anchor, tickSize, inset = 0, insetLeft = inset, insetRight = inset, dx = 0, y = k === "y" ? void 0 : null, ariaLabel, ...options }) {
	return axisMark(vectorY, k, data, {
		ariaLabel: `${ariaLabel} tick`,
		ariaHidden: true
	}, {
		strokeWidth,
		strokeLinecap,
		strokeLinejoin,
		facetAnchor,
		frameAnchor,
		y,
		...options,
		dx: anchor === "left" ? +dx - offset + +insetLeft : +dx + offset - insetRight,
		anchor: "start",
		length: tickSize,
		shape: anchor === "left" ? shapeTickLeft : shapeTickRight
	});
}
function axisTickKx(k, anchor, data, { strokeWidth = 1, strokeLinecap = null, strokeLinejoin = null, facetAnchor = anchor + (k === "x" ? "-empty" : ""), frameAnchor = anchor, tickSize, inset = 0, insetTop = inset, insetBottom = inset, dy = 0, x = k === "x" ? void 0 : null, ariaLabel, ...options }) {
	return axisMark(vectorX, k, data, {
		ariaLabel: `${ariaLabel} tick`,
		ariaHidden: true
	}, {
		strokeWidth,
		strokeLinejoin,
		strokeLinecap,
		facetAnchor,
		frameAnchor,
		x,
		...options,
		dy: anchor === "bottom" ? +dy - offset - insetBottom : +dy + offset + +insetTop,
		anchor: "start",
		length: tickSize,
		shape: anchor === "bottom" ? shapeTickBottom : shapeTickTop
	});
}
function axisTextKy(k, anchor, data, { facetAnchor = anchor + (k === "y" ? "-empty" : ""), frameAnchor = anchor, tickSize, tickRotate = 0, tickPadding = Math.max(3, 9 - tickSize) + (Math.abs(tickRotate) > 60 ? 4 * Math.cos(tickRotate * radians) : 0), text, textAnchor = Math.abs(tickRotate) > 60 ? "middle" : anchor === "left" ? "end" : "start", lineAnchor = tickRotate > 60 ? "top" : tickRotate < -60 ? "bottom" : "middle", fontVariant, inset = 0, insetLeft = inset, insetRight = inset, dx = 0, ariaLabel, y = k === "y" ? void 0 : null, ...options }) {
	return axisMark(textY, k, data, { ariaLabel: `${ariaLabel} tick label` }, {
		facetAnchor,
		frameAnchor,
		text,
		textAnchor,
		lineAnchor,
		fontVariant,
		rotate: tickRotate,
		y,
		...options,
		dx: anchor === "left" ? +dx - tickSize - tickPadding + +insetLeft : +dx + +tickSize + +tickPadding - insetRight
	}, function(scale, data, ticks, tickFormat, channels) {
		if (fontVariant === void 0) this.fontVariant = inferFontVariant(scale);
		if (text === void 0) channels.text = inferTextChannel(scale, data, ticks, tickFormat, anchor);
	});
}
function axisTextKx(k, anchor, data, { facetAnchor = anchor + (k === "x" ? "-empty" : ""), frameAnchor = anchor, tickSize, tickRotate = 0, tickPadding = Math.max(3, 9 - tickSize) + (Math.abs(tickRotate) >= 10 ? 4 * Math.cos(tickRotate * radians) : 0), text, textAnchor = Math.abs(tickRotate) >= 10 ? tickRotate < 0 ^ anchor === "bottom" ? "start" : "end" : "middle", lineAnchor = Math.abs(tickRotate) >= 10 ? "middle" : anchor === "bottom" ? "top" : "bottom", fontVariant, inset = 0, insetTop = inset, insetBottom = inset, dy = 0, x = k === "x" ? void 0 : null, ariaLabel, ...options }) {
	return axisMark(textX, k, data, { ariaLabel: `${ariaLabel} tick label` }, {
		facetAnchor,
		frameAnchor,
		text: text === void 0 ? null : text,
		textAnchor,
		lineAnchor,
		fontVariant,
		rotate: tickRotate,
		x,
		...options,
		dy: anchor === "bottom" ? +dy + +tickSize + +tickPadding - insetBottom : +dy - tickSize - tickPadding + +insetTop
	}, function(scale, data, ticks, tickFormat, channels) {
		if (fontVariant === void 0) this.fontVariant = inferFontVariant(scale);
		if (text === void 0) channels.text = inferTextChannel(scale, data, ticks, tickFormat, anchor);
	});
}
function gridY() {
	const [data, options] = maybeData(...arguments);
	return gridKy("y", anchorY(options), data, options);
}
function gridFy() {
	const [data, options] = maybeData(...arguments);
	return gridKy("fy", anchorFy(options), data, options);
}
function gridX() {
	const [data, options] = maybeData(...arguments);
	return gridKx("x", anchorX(options), data, options);
}
function gridFx() {
	const [data, options] = maybeData(...arguments);
	return gridKx("fx", anchorFx(options), data, options);
}
function gridKy(k, anchor, data, { y = k === "y" ? void 0 : null, x = null, x1 = anchor === "left" ? x : null, x2 = anchor === "right" ? x : null, ariaLabel = `${k}-grid`, ariaHidden = true, ...options }) {
	return axisMark(ruleY, k, data, {
		ariaLabel,
		ariaHidden
	}, {
		y,
		x1,
		x2,
		...gridDefaults(options)
	});
}
function gridKx(k, anchor, data, { x = k === "x" ? void 0 : null, y = null, y1 = anchor === "top" ? y : null, y2 = anchor === "bottom" ? y : null, ariaLabel = `${k}-grid`, ariaHidden = true, ...options }) {
	return axisMark(ruleX, k, data, {
		ariaLabel,
		ariaHidden
	}, {
		x,
		y1,
		y2,
		...gridDefaults(options)
	});
}
function gridDefaults({ color = "currentColor", opacity = .1, stroke = color, strokeOpacity = opacity, strokeWidth = 1, ...options }) {
	return {
		stroke,
		strokeOpacity,
		strokeWidth,
		...options
	};
}
function labelOptions({ fill, fillOpacity, fontFamily, fontSize, fontStyle, fontVariant, fontWeight, monospace, pointerEvents, shapeRendering, clip = false }, initializer) {
	[, fill] = maybeColorChannel(fill);
	[, fillOpacity] = maybeNumberChannel(fillOpacity);
	return {
		facet: "super",
		x: null,
		y: null,
		fill,
		fillOpacity,
		fontFamily,
		fontSize,
		fontStyle,
		fontVariant,
		fontWeight,
		monospace,
		pointerEvents,
		shapeRendering,
		clip,
		initializer
	};
}
function axisMark(mark, k, data, properties, options, initialize) {
	let channels;
	function axisInitializer(data, facets, _channels, scales, dimensions, context) {
		const initializeFacets = data == null && (k === "fx" || k === "fy");
		const { [k]: scale } = scales;
		if (!scale) throw new Error(`missing scale: ${k}`);
		const domain = scale.domain();
		let { interval, ticks, tickFormat, tickSpacing = k === "x" ? 80 : 35 } = options;
		if (typeof ticks === "string" && hasTemporalDomain(scale)) interval = ticks, ticks = void 0;
		if (ticks === void 0) ticks = maybeRangeInterval(interval, scale.type) ?? inferTickCount(scale, tickSpacing);
		if (data == null) {
			if (isIterable(ticks)) data = arrayify(ticks);
			else if (isInterval(ticks)) data = inclusiveRange(ticks, ...extent$1(domain));
			else if (scale.interval) {
				let interval = scale.interval;
				if (scale.ticks) {
					const [min, max] = extent$1(domain);
					const n = (max - min) / interval[intervalDuration];
					interval = generalizeTimeInterval(interval, n / ticks) ?? interval;
					data = inclusiveRange(interval, min, max);
				} else {
					data = domain;
					const n = data.length;
					interval = generalizeTimeInterval(interval, n / ticks) ?? interval;
					if (interval !== scale.interval) data = inclusiveRange(interval, ...extent$1(data));
				}
				if (interval === scale.interval) {
					const n = Math.round(data.length / ticks);
					if (n > 1) data = data.filter((d, i) => i % n === 0);
				}
			} else if (scale.ticks) data = scale.ticks(ticks);
			else data = domain;
			if (!scale.ticks && data.length && data !== domain) {
				const domainSet = new InternSet(domain);
				data = data.filter((d) => domainSet.has(d));
				if (!data.length) warn(`Warning: the ${k}-axis ticks appear to not align with the scale domain, resulting in no ticks. Try different ticks?`);
			}
			if (k === "y" || k === "x") facets = [range$1(data)];
			else channels[k] = {
				scale: k,
				value: identity$1
			};
		}
		initialize?.call(this, scale, data, ticks, tickFormat, channels);
		const initializedChannels = Object.fromEntries(Object.entries(channels).map(([name, channel]) => {
			return [name, {
				...channel,
				value: valueof(data, channel.value)
			}];
		}));
		if (initializeFacets) facets = context.filterFacets(data, initializedChannels);
		return {
			data,
			facets,
			channels: initializedChannels
		};
	}
	const basicInitializer = initializer(options).initializer;
	const m = mark(data, initializer({
		...options,
		initializer: axisInitializer
	}, basicInitializer));
	if (data == null) {
		channels = m.channels;
		m.channels = {};
	} else channels = {};
	if (properties !== void 0) Object.assign(m, properties);
	if (m.clip === void 0) m.clip = false;
	return m;
}
function inferTickCount(scale, tickSpacing) {
	const [min, max] = extent$1(scale.range());
	return (max - min) / tickSpacing;
}
function inferTextChannel(scale, data, ticks, tickFormat, anchor) {
	return { value: inferTickFormat(scale, data, ticks, tickFormat, anchor) };
}
function inferTickFormat(scale, data, ticks, tickFormat, anchor) {
	return typeof tickFormat === "function" && !(scale.type === "log" && scale.tickFormat) ? tickFormat : tickFormat === void 0 && data && isTemporal(data) ? inferTimeFormat(scale.type, data, anchor) ?? formatDefault : scale.tickFormat ? scale.tickFormat(typeof ticks === "number" ? ticks : null, tickFormat) : typeof tickFormat === "string" && scale.domain().length > 0 ? (isTemporal(scale.domain()) ? utcFormat : format$1)(tickFormat) : tickFormat === void 0 ? formatDefault : constant(tickFormat);
}
function inclusiveRange(interval, min, max) {
	return interval.range(min, interval.offset(interval.floor(max)));
}
var shapeTickBottom = { draw(context, l) {
	context.moveTo(0, 0);
	context.lineTo(0, l);
} };
var shapeTickTop = { draw(context, l) {
	context.moveTo(0, 0);
	context.lineTo(0, -l);
} };
var shapeTickLeft = { draw(context, l) {
	context.moveTo(0, 0);
	context.lineTo(-l, 0);
} };
var shapeTickRight = { draw(context, l) {
	context.moveTo(0, 0);
	context.lineTo(l, 0);
} };
function inferFontVariant(scale) {
	return scale.bandwidth && !scale.interval ? void 0 : "tabular-nums";
}
function formatAxisLabel(k, scale, { anchor, label = scale.label, labelAnchor, labelArrow } = {}) {
	if (label == null || label.inferred && hasTemporalDomain(scale) && /^(date|time|year)$/i.test(label)) return;
	label = String(label);
	if (labelArrow === "auto") labelArrow = (!scale.bandwidth || scale.interval) && !/[↑↓→←]/.test(label);
	if (!labelArrow) return label;
	if (labelArrow === true) {
		const order = inferScaleOrder(scale);
		if (order) labelArrow = /x$/.test(k) || labelAnchor === "center" ? /x$/.test(k) === order < 0 ? "left" : "right" : order < 0 ? "up" : "down";
	}
	switch (labelArrow) {
		case "left": return `← ${label}`;
		case "right": return `${label} →`;
		case "up": return anchor === "right" ? `${label} ↑` : `↑ ${label}`;
		case "down": return anchor === "right" ? `${label} ↓` : `↓ ${label}`;
	}
	return label;
}
function maybeLabelArrow(labelArrow = "auto") {
	return isNoneish(labelArrow) ? false : typeof labelArrow === "boolean" ? labelArrow : keyword(labelArrow, "labelArrow", [
		"auto",
		"up",
		"right",
		"down",
		"left"
	]);
}
function hasTemporalDomain(scale) {
	return isTemporal(scale.domain());
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/legends/swatches.js
function maybeScale(scale, key) {
	if (key == null) return key;
	const s = scale(key);
	if (!s) throw new Error(`scale not found: ${key}`);
	return s;
}
function legendSwatches(color, { opacity, ...options } = {}) {
	if (!isOrdinalScale(color) && !isThresholdScale(color)) throw new Error(`swatches legend requires ordinal or threshold color scale (not ${color.type})`);
	return legendItems(color, options, (selection, scale, width, height) => selection.append("svg").attr("width", width).attr("height", height).attr("fill", scale.scale).attr("fill-opacity", maybeNumberChannel(opacity)[1]).append("rect").attr("width", "100%").attr("height", "100%"));
}
function legendSymbols(symbol, { fill = symbol.hint?.fill !== void 0 ? symbol.hint.fill : "none", fillOpacity = 1, stroke = symbol.hint?.stroke !== void 0 ? symbol.hint.stroke : isNoneish(fill) ? "currentColor" : "none", strokeOpacity = 1, strokeWidth = 1.5, r = 4.5, ...options } = {}, scale) {
	const [vf, cf] = maybeColorChannel(fill);
	const [vs, cs] = maybeColorChannel(stroke);
	const sf = maybeScale(scale, vf);
	const ss = maybeScale(scale, vs);
	const size = r * r * Math.PI;
	fillOpacity = maybeNumberChannel(fillOpacity)[1];
	strokeOpacity = maybeNumberChannel(strokeOpacity)[1];
	strokeWidth = maybeNumberChannel(strokeWidth)[1];
	return legendItems(symbol, options, (selection, scale, width, height) => selection.append("svg").attr("viewBox", "-8 -8 16 16").attr("width", width).attr("height", height).attr("fill", vf === "color" ? (d) => sf.scale(d) : cf).attr("fill-opacity", fillOpacity).attr("stroke", vs === "color" ? (d) => ss.scale(d) : cs).attr("stroke-opacity", strokeOpacity).attr("stroke-width", strokeWidth).append("path").attr("d", (d) => {
		const p = pathRound();
		symbol.scale(d).draw(p, size);
		return p;
	}));
}
function legendItems(scale, options = {}, swatch) {
	let { columns, tickFormat, fontVariant = inferFontVariant$2(scale), swatchSize = 15, swatchWidth = swatchSize, swatchHeight = swatchSize, marginLeft = 0, className, style, width } = options;
	const context = createContext(options);
	className = maybeClassName(className);
	tickFormat = inferTickFormat(scale.scale, scale.domain, void 0, tickFormat);
	const swatches = create("div", context).attr("class", `${className}-swatches ${className}-swatches-${columns != null ? "columns" : "wrap"}`);
	let extraStyle;
	if (columns != null) {
		extraStyle = `:where(.${className}-swatches-columns .${className}-swatch) {
  display: flex;
  align-items: center;
  break-inside: avoid;
  padding-bottom: 1px;
}
:where(.${className}-swatches-columns .${className}-swatch::before) {
  flex-shrink: 0;
}
:where(.${className}-swatches-columns .${className}-swatch-label) {
  white-space: nowrap;
  overflow: hidden;
  text-overflow: ellipsis;
}`;
		swatches.style("columns", columns).selectAll().data(scale.domain).enter().append("div").attr("class", `${className}-swatch`).call(swatch, scale, swatchWidth, swatchHeight).call((item) => item.append("div").attr("class", `${className}-swatch-label`).attr("title", tickFormat).text(tickFormat));
	} else {
		extraStyle = `:where(.${className}-swatches-wrap) {
  display: flex;
  align-items: center;
  min-height: 33px;
  flex-wrap: wrap;
}
:where(.${className}-swatches-wrap .${className}-swatch) {
  display: inline-flex;
  align-items: center;
  margin-right: 1em;
}`;
		swatches.selectAll().data(scale.domain).enter().append("span").attr("class", `${className}-swatch`).call(swatch, scale, swatchWidth, swatchHeight).append(function() {
			return this.ownerDocument.createTextNode(tickFormat.apply(this, arguments));
		});
	}
	return swatches.call((div) => div.insert("style", "*").text(`:where(.${className}-swatches) {
  font-family: system-ui, sans-serif;
  font-size: 10px;
  margin-bottom: 0.5em;
}
:where(.${className}-swatch > svg) {
  margin-right: 0.5em;
  overflow: visible;
}
${extraStyle}`)).style("margin-left", marginLeft ? `${+marginLeft}px` : null).style("width", width === void 0 ? null : `${+width}px`).style("font-variant", impliedString(fontVariant, "normal")).call(applyInlineStyles, style).node();
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/legends.js
var legendRegistry = /* @__PURE__ */ new Map([
	["symbol", legendSymbols],
	["color", legendColor],
	["opacity", legendOpacity]
]);
function exposeLegends(scales, context, defaults = {}) {
	return (key, options) => {
		if (!legendRegistry.has(key)) throw new Error(`unknown legend type: ${key}`);
		if (!(key in scales)) return;
		return legendRegistry.get(key)(scales[key], legendOptions(context, defaults[key], options), (key) => scales[key]);
	};
}
function legendOptions({ className, ...context }, { label, ticks, tickFormat } = {}, options) {
	return inherit(options, {
		className,
		...context
	}, {
		label,
		ticks,
		tickFormat
	});
}
function legendColor(color, { legend = true, ...options }) {
	if (legend === true) legend = color.type === "ordinal" ? "swatches" : "ramp";
	if (color.domain === void 0) return;
	switch (`${legend}`.toLowerCase()) {
		case "swatches": return legendSwatches(color, options);
		case "ramp": return legendRamp(color, options);
		default: throw new Error(`unknown legend type: ${legend}`);
	}
}
function legendOpacity({ type, interpolate, ...scale }, { legend = true, color = rgb$1(0, 0, 0), ...options }) {
	if (!interpolate) throw new Error(`${type} opacity scales are not supported`);
	if (legend === true) legend = "ramp";
	if (`${legend}`.toLowerCase() !== "ramp") throw new Error(`${legend} opacity legends are not supported`);
	return legendColor({
		type,
		...scale,
		interpolate: interpolateOpacity(color)
	}, {
		legend,
		...options
	});
}
function interpolateOpacity(color) {
	const { r, g, b } = rgb$1(color) || rgb$1(0, 0, 0);
	return (t) => `rgba(${r},${g},${b},${t})`;
}
function createLegends(scales, context, options) {
	const legends = [];
	for (const [key, value] of legendRegistry) {
		const o = options[key];
		if (o?.legend && key in scales) {
			const legend = value(scales[key], legendOptions(context, scales[key], o), (key) => scales[key]);
			if (legend != null) legends.push(legend);
		}
	}
	return legends;
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/identity.js
function maybeIdentityY(options = {}, k = "y") {
	return hasY(options) ? options : {
		...options,
		[k]: identity$1
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/exclusiveFacets.js
function exclusiveFacets(data, facets) {
	if (facets.length === 1) return {
		data,
		facets
	};
	const n = lengthof(data);
	const O = new Uint8Array(n);
	let overlaps = 0;
	for (const facet of facets) for (const i of facet) {
		if (O[i]) ++overlaps;
		O[i] = 1;
	}
	if (overlaps === 0) return {
		data,
		facets
	};
	data = slice(data);
	const R = data[reindex] = new Uint32Array(n + overlaps);
	facets = facets.map((facet) => slice(facet, Uint32Array));
	let j = n;
	O.fill(0);
	for (const facet of facets) for (let k = 0, m = facet.length; k < m; ++k) {
		const i = facet[k];
		if (O[i]) facet[k] = j, data[j] = data[i], R[j] = i, ++j;
		else R[i] = i;
		O[i] = 1;
	}
	return {
		data,
		facets
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/stack.js
function stackY(stackOptions = {}, options = {}) {
	if (arguments.length === 1) [stackOptions, options] = mergeOptions$1(stackOptions);
	const { x1, x = x1, y, ...rest } = options;
	const [transform, X, y1, y2] = stack(x, y, "x", "y", stackOptions, rest);
	return {
		...transform,
		x1,
		x: X,
		y1,
		y2,
		y: mid(y1, y2)
	};
}
function maybeStackY({ y, y1, y2, ...options } = {}) {
	options = withTip(options, "x");
	if (y1 === void 0 && y2 === void 0) return stackY({
		y,
		...options
	});
	[y1, y2] = maybeZero(y, y1, y2);
	return {
		...options,
		y1,
		y2
	};
}
function mergeOptions$1(options) {
	const { offset, order, reverse, ...rest } = options;
	return [{
		offset,
		order,
		reverse
	}, rest];
}
var lengthy = { length: true };
function stack(x, y = one, kx, ky, { offset, order, reverse }, options) {
	if (y === null) throw new Error(`stack requires ${ky}`);
	const z = maybeZ(options);
	const [X, setX] = maybeColumn(x);
	const [Y1, setY1] = column(y);
	const [Y2, setY2] = column(y);
	Y1.hint = Y2.hint = lengthy;
	offset = maybeOffset(offset);
	order = maybeOrder(order, offset, ky);
	return [
		basic(options, (data, facets, plotOptions) => {
			({data, facets} = exclusiveFacets(data, facets));
			const X = x == null ? void 0 : setX(maybeApplyInterval(valueof(data, x), plotOptions?.[kx]));
			const Y = valueof(data, y, Float64Array);
			const Z = valueof(data, z);
			const compare = order && order(data, X, Y, Z);
			const n = lengthof(data);
			const Y1 = setY1(new Float64Array(n));
			const Y2 = setY2(new Float64Array(n));
			const facetstacks = [];
			for (const facet of facets) {
				const stacks = X ? Array.from(group(facet, (i) => X[i]).values()) : [facet];
				if (compare) for (const stack of stacks) stack.sort(compare);
				for (const stack of stacks) {
					let yn = 0;
					let yp = 0;
					if (reverse) stack.reverse();
					for (const i of stack) {
						const y = Y[i];
						if (y < 0) yn = Y2[i] = (Y1[i] = yn) + y;
						else if (y > 0) yp = Y2[i] = (Y1[i] = yp) + y;
						else Y2[i] = Y1[i] = yp;
					}
				}
				facetstacks.push(stacks);
			}
			if (offset) offset(facetstacks, Y1, Y2, Z);
			return {
				data,
				facets
			};
		}),
		X,
		Y1,
		Y2
	];
}
function maybeOffset(offset) {
	if (offset == null) return;
	if (typeof offset === "function") return offset;
	switch (`${offset}`.toLowerCase()) {
		case "expand":
		case "normalize": return offsetExpand;
		case "center":
		case "silhouette": return offsetCenter;
		case "wiggle": return offsetWiggle;
	}
	throw new Error(`unknown offset: ${offset}`);
}
function extent(stack, Y2) {
	let min = 0, max = 0;
	for (const i of stack) {
		const y = Y2[i];
		if (y < min) min = y;
		if (y > max) max = y;
	}
	return [min, max];
}
function offsetExpand(facetstacks, Y1, Y2) {
	for (const stacks of facetstacks) for (const stack of stacks) {
		const [yn, yp] = extent(stack, Y2);
		for (const i of stack) {
			const m = 1 / (yp - yn || 1);
			Y1[i] = m * (Y1[i] - yn);
			Y2[i] = m * (Y2[i] - yn);
		}
	}
}
function offsetCenter(facetstacks, Y1, Y2) {
	for (const stacks of facetstacks) {
		for (const stack of stacks) {
			const [yn, yp] = extent(stack, Y2);
			for (const i of stack) {
				const m = (yp + yn) / 2;
				Y1[i] -= m;
				Y2[i] -= m;
			}
		}
		offsetZero(stacks, Y1, Y2);
	}
	offsetCenterFacets(facetstacks, Y1, Y2);
}
function offsetWiggle(facetstacks, Y1, Y2, Z) {
	for (const stacks of facetstacks) {
		const prev = new InternMap();
		let y = 0;
		for (const stack of stacks) {
			let j = -1;
			const Fi = stack.map((i) => Math.abs(Y2[i] - Y1[i]));
			const Df = stack.map((i) => {
				j = Z ? Z[i] : ++j;
				const value = Y2[i] - Y1[i];
				const diff = prev.has(j) ? value - prev.get(j) : 0;
				prev.set(j, value);
				return diff;
			});
			const Cf1 = [0, ...cumsum(Df)];
			for (const i of stack) {
				Y1[i] += y;
				Y2[i] += y;
			}
			const s1 = sum$1(Fi);
			if (s1) y -= sum$1(Fi, (d, i) => (Df[i] / 2 + Cf1[i]) * d) / s1;
		}
		offsetZero(stacks, Y1, Y2);
	}
	offsetCenterFacets(facetstacks, Y1, Y2);
}
function offsetZero(stacks, Y1, Y2) {
	const m = min$1(stacks, (stack) => min$1(stack, (i) => Y1[i]));
	for (const stack of stacks) for (const i of stack) {
		Y1[i] -= m;
		Y2[i] -= m;
	}
}
function offsetCenterFacets(facetstacks, Y1, Y2) {
	const n = facetstacks.length;
	if (n === 1) return;
	const facets = facetstacks.map((stacks) => stacks.flat());
	const m = facets.map((I) => (min$1(I, (i) => Y1[i]) + max(I, (i) => Y2[i])) / 2);
	const m0 = min$1(m);
	for (let j = 0; j < n; j++) {
		const p = m0 - m[j];
		for (const i of facets[j]) {
			Y1[i] += p;
			Y2[i] += p;
		}
	}
}
function maybeOrder(order, offset, ky) {
	if (order === void 0 && offset === offsetWiggle) return orderInsideOut(ascendingDefined);
	if (order == null) return;
	if (typeof order === "string") {
		const negate = order.startsWith("-");
		const compare = negate ? descendingDefined : ascendingDefined;
		switch ((negate ? order.slice(1) : order).toLowerCase()) {
			case "value":
			case ky: return orderY(compare);
			case "z": return orderZ(compare);
			case "sum": return orderSum(compare);
			case "appearance": return orderAppearance(compare);
			case "inside-out": return orderInsideOut(compare);
		}
		return orderAccessor(field(order));
	}
	if (typeof order === "function") return (order.length === 1 ? orderAccessor : orderComparator)(order);
	if (isArray(order)) return orderGiven(order);
	throw new Error(`invalid order: ${order}`);
}
function orderY(compare) {
	return (data, X, Y) => (i, j) => compare(Y[i], Y[j]);
}
function orderZ(compare) {
	return (data, X, Y, Z) => (i, j) => compare(Z[i], Z[j]);
}
function orderSum(compare) {
	return orderZDomain(compare, (data, X, Y, Z) => groupSort(range$1(data), (I) => sum$1(I, (i) => Y[i]), (i) => Z[i]));
}
function orderAppearance(compare) {
	return orderZDomain(compare, (data, X, Y, Z) => groupSort(range$1(data), (I) => X[greatest(I, (i) => Y[i])], (i) => Z[i]));
}
function orderInsideOut(compare) {
	return orderZDomain(compare, (data, X, Y, Z) => {
		const I = range$1(data);
		const K = groupSort(I, (I) => X[greatest(I, (i) => Y[i])], (i) => Z[i]);
		const sums = rollup(I, (I) => sum$1(I, (i) => Y[i]), (i) => Z[i]);
		const Kp = [], Kn = [];
		let s = 0;
		for (const k of K) if (s < 0) {
			s += sums.get(k);
			Kp.push(k);
		} else {
			s -= sums.get(k);
			Kn.push(k);
		}
		return Kn.reverse().concat(Kp);
	});
}
function orderAccessor(f) {
	return (data) => {
		const O = valueof(data, f);
		return (i, j) => ascendingDefined(O[i], O[j]);
	};
}
function orderComparator(f) {
	return (data) => {
		return isArray(data) ? (i, j) => f(data[i], data[j]) : (i, j) => f(data.get(i), data.get(j));
	};
}
function orderGiven(domain) {
	return orderZDomain(ascendingDefined, () => domain);
}
function orderZDomain(compare, domain) {
	return (data, X, Y, Z) => {
		if (!Z) throw new Error("missing channel: z");
		const map = new InternMap(domain(data, X, Y, Z).map((d, i) => [d, i]));
		return (i, j) => compare(map.get(Z[i]), map.get(Z[j]));
	};
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/rect.js
var defaults$5 = { ariaLabel: "rect" };
var Rect = class extends Mark {
	constructor(data, options = {}) {
		const { x1, y1, x2, y2 } = options;
		super(data, {
			x1: {
				value: x1,
				scale: "x",
				type: x1 != null && x2 == null ? "band" : void 0,
				optional: true
			},
			y1: {
				value: y1,
				scale: "y",
				type: y1 != null && y2 == null ? "band" : void 0,
				optional: true
			},
			x2: {
				value: x2,
				scale: "x",
				optional: true
			},
			y2: {
				value: y2,
				scale: "y",
				optional: true
			}
		}, options, defaults$5);
		rectInsets(this, options);
		rectRadii(this, options);
	}
	render(index, scales, channels, dimensions, context) {
		const { x, y } = scales;
		let { x1: X1, y1: Y1, x2: X2, y2: Y2 } = channels;
		const { marginTop, marginRight, marginBottom, marginLeft, width, height } = dimensions;
		const { projection } = context;
		const { insetTop, insetRight, insetBottom, insetLeft } = this;
		const { rx, ry, rx1y1, rx1y2, rx2y1, rx2y2 } = this;
		if ((X1 || X2) && !projection && isCollapsed(x)) X1 = X2 = null;
		if ((Y1 || Y2) && !projection && isCollapsed(y)) Y1 = Y2 = null;
		const bx = x?.bandwidth ? x.bandwidth() : 0;
		const by = y?.bandwidth ? y.bandwidth() : 0;
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyTransform, this, {}, 0, 0).call((g) => g.selectAll().data(index).enter().call(rx1y1 || rx1y2 || rx2y1 || rx2y2 ? (g) => g.append("path").call(applyDirectStyles, this).call(applyRoundedRect, X1 && X2 ? (i) => X1[i] + (X2[i] < X1[i] ? -insetRight : insetLeft) : X1 ? (i) => X1[i] + insetLeft : marginLeft + insetLeft, Y1 && Y2 ? (i) => Y1[i] + (Y2[i] < Y1[i] ? -insetBottom : insetTop) : Y1 ? (i) => Y1[i] + insetTop : marginTop + insetTop, X1 && X2 ? (i) => X2[i] - (X2[i] < X1[i] ? -insetLeft : insetRight) : X1 ? (i) => X1[i] + bx - insetRight : width - marginRight - insetRight, Y1 && Y2 ? (i) => Y2[i] - (Y2[i] < Y1[i] ? -insetTop : insetBottom) : Y1 ? (i) => Y1[i] + by - insetBottom : height - marginBottom - insetBottom, this).call(applyChannelStyles, this, channels) : (g) => g.append("rect").call(applyDirectStyles, this).attr("x", X1 ? X2 ? (i) => Math.min(X1[i], X2[i]) + insetLeft : (i) => X1[i] + insetLeft : marginLeft + insetLeft).attr("y", Y1 ? Y2 ? (i) => Math.min(Y1[i], Y2[i]) + insetTop : (i) => Y1[i] + insetTop : marginTop + insetTop).attr("width", X1 ? X2 ? (i) => Math.max(0, Math.abs(X2[i] - X1[i]) + bx - insetLeft - insetRight) : bx - insetLeft - insetRight : width - marginRight - marginLeft - insetRight - insetLeft).attr("height", Y1 ? Y2 ? (i) => Math.max(0, Math.abs(Y1[i] - Y2[i]) + by - insetTop - insetBottom) : by - insetTop - insetBottom : height - marginTop - marginBottom - insetTop - insetBottom).call(applyAttr, "rx", rx).call(applyAttr, "ry", ry).call(applyChannelStyles, this, channels))).node();
	}
};
function rectInsets(mark, { inset = 0, insetTop = inset, insetRight = inset, insetBottom = inset, insetLeft = inset } = {}) {
	mark.insetTop = number(insetTop);
	mark.insetRight = number(insetRight);
	mark.insetBottom = number(insetBottom);
	mark.insetLeft = number(insetLeft);
}
function rectRadii(mark, { r, rx, ry, rx1 = r, ry1 = r, rx2 = r, ry2 = r, rx1y1 = rx1 !== void 0 ? +rx1 : ry1 !== void 0 ? +ry1 : 0, rx1y2 = rx1 !== void 0 ? +rx1 : ry2 !== void 0 ? +ry2 : 0, rx2y1 = rx2 !== void 0 ? +rx2 : ry1 !== void 0 ? +ry1 : 0, rx2y2 = rx2 !== void 0 ? +rx2 : ry2 !== void 0 ? +ry2 : 0 } = {}) {
	if (rx1y1 || rx1y2 || rx2y1 || rx2y2) {
		mark.rx1y1 = rx1y1;
		mark.rx1y2 = rx1y2;
		mark.rx2y1 = rx2y1;
		mark.rx2y2 = rx2y2;
	} else {
		mark.rx = impliedString(rx, "auto");
		mark.ry = impliedString(ry, "auto");
	}
}
function applyRoundedRect(selection, X1, Y1, X2, Y2, mark) {
	const { rx1y1: r11, rx1y2: r12, rx2y1: r21, rx2y2: r22 } = mark;
	if (typeof X1 !== "function") X1 = constant(X1);
	if (typeof Y1 !== "function") Y1 = constant(Y1);
	if (typeof X2 !== "function") X2 = constant(X2);
	if (typeof Y2 !== "function") Y2 = constant(Y2);
	const rx = Math.max(Math.abs(r11 + r21), Math.abs(r12 + r22));
	const ry = Math.max(Math.abs(r11 + r12), Math.abs(r21 + r22));
	selection.attr("d", (i) => {
		const x1 = X1(i);
		const y1 = Y1(i);
		const x2 = X2(i);
		const y2 = Y2(i);
		const ix = x1 > x2;
		const iy = y1 > y2;
		const l = ix ? x2 : x1;
		const r = ix ? x1 : x2;
		const t = iy ? y2 : y1;
		const b = iy ? y1 : y2;
		const k = Math.min(1, (r - l) / rx, (b - t) / ry);
		const tl = k * (ix ? iy ? r22 : r21 : iy ? r12 : r11);
		const tr = k * (ix ? iy ? r12 : r11 : iy ? r22 : r21);
		const br = k * (ix ? iy ? r11 : r12 : iy ? r21 : r22);
		const bl = k * (ix ? iy ? r21 : r22 : iy ? r11 : r12);
		return `M${l},${t + biasY(tl, bl)}A${tl},${tl} 0 0 ${tl < 0 ? 0 : 1} ${l + biasX(tl, bl)},${t}H${r - biasX(tr, br)}A${tr},${tr} 0 0 ${tr < 0 ? 0 : 1} ${r},${t + biasY(tr, br)}V${b - biasY(br, tr)}A${br},${br} 0 0 ${br < 0 ? 0 : 1} ${r - biasX(br, tr)},${b}H${l + biasX(bl, tl)}A${bl},${bl} 0 0 ${bl < 0 ? 0 : 1} ${l},${b - biasY(bl, tl)}Z`;
	});
}
/**
* If the opposing corner has a negative radius r2, if this corner has a
* negative radius r1, this corner’s “wing” will extend horizontally rather than
* vertically.
*/
function biasX(r1, r2) {
	return r2 < 0 ? r1 : Math.abs(r1);
}
/**
* If the opposing corner has a negative radius r2, if this corner has a
* negative radius r1, this corner’s “wing” will extend horizontally rather than
* vertically.
*/
function biasY(r1, r2) {
	return r2 < 0 ? Math.abs(r1) : r1;
}
function rect(data, options) {
	return new Rect(data, maybeTrivialIntervalX(maybeTrivialIntervalY(options)));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/frame.js
var defaults$4 = {
	ariaLabel: "frame",
	fill: "none",
	stroke: "currentColor",
	clip: false
};
var lineDefaults = {
	ariaLabel: "frame",
	fill: null,
	stroke: "currentColor",
	strokeLinecap: "square",
	clip: false
};
var Frame = class extends Mark {
	constructor(options = {}) {
		const { anchor = null } = options;
		super(singleton, void 0, options, anchor == null ? defaults$4 : lineDefaults);
		this.anchor = maybeKeyword(anchor, "anchor", [
			"top",
			"right",
			"bottom",
			"left"
		]);
		rectInsets(this, options);
		if (!anchor) rectRadii(this, options);
	}
	render(index, scales, channels, dimensions, context) {
		const { marginTop, marginRight, marginBottom, marginLeft, width, height } = dimensions;
		const { anchor, insetTop, insetRight, insetBottom, insetLeft } = this;
		const { rx, ry, rx1y1, rx1y2, rx2y1, rx2y2 } = this;
		const x1 = marginLeft + insetLeft;
		const x2 = width - marginRight - insetRight;
		const y1 = marginTop + insetTop;
		const y2 = height - marginBottom - insetBottom;
		return create(anchor ? "svg:line" : rx1y1 || rx1y2 || rx2y1 || rx2y2 ? "svg:path" : "svg:rect", context).datum(0).call(applyIndirectStyles, this, dimensions, context).call(applyDirectStyles, this).call(applyChannelStyles, this, channels).call(applyTransform, this, {}).call(anchor === "left" ? (line) => line.attr("x1", x1).attr("x2", x1).attr("y1", y1).attr("y2", y2) : anchor === "right" ? (line) => line.attr("x1", x2).attr("x2", x2).attr("y1", y1).attr("y2", y2) : anchor === "top" ? (line) => line.attr("x1", x1).attr("x2", x2).attr("y1", y1).attr("y2", y1) : anchor === "bottom" ? (line) => line.attr("x1", x1).attr("x2", x2).attr("y1", y2).attr("y2", y2) : rx1y1 || rx1y2 || rx2y1 || rx2y2 ? (path) => path.call(applyRoundedRect, x1, y1, x2, y2, this) : (rect) => rect.attr("x", x1).attr("y", y1).attr("width", x2 - x1).attr("height", y2 - y1).attr("rx", rx).attr("ry", ry)).node();
	}
};
function frame(options) {
	return new Frame(options);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/tip.js
var defaults$3 = {
	ariaLabel: "tip",
	fill: "var(--plot-background)",
	stroke: "currentColor"
};
var ignoreChannels = /* @__PURE__ */ new Set([
	"geometry",
	"href",
	"src",
	"ariaLabel",
	"scales"
]);
var Tip = class extends Mark {
	constructor(data, options = {}) {
		if (options.tip) options = {
			...options,
			tip: false
		};
		if (options.title === void 0 && isIterable(data) && isTextual(data)) options = {
			...options,
			title: identity$1
		};
		const { x, y, x1, x2, y1, y2, anchor, preferredAnchor = "bottom", monospace, fontFamily = monospace ? "ui-monospace, monospace" : void 0, fontSize, fontStyle, fontVariant, fontWeight, lineHeight = 1, lineWidth = 20, frameAnchor, format, textAnchor = "start", textOverflow, textPadding = 8, title, pointerSize = 12, pathFilter = "drop-shadow(0 3px 4px rgba(0,0,0,0.2))" } = options;
		super(data, {
			x: {
				value: x1 != null && x2 != null ? null : x,
				scale: "x",
				optional: true
			},
			y: {
				value: y1 != null && y2 != null ? null : y,
				scale: "y",
				optional: true
			},
			x1: {
				value: x1,
				scale: "x",
				optional: x2 == null
			},
			y1: {
				value: y1,
				scale: "y",
				optional: y2 == null
			},
			x2: {
				value: x2,
				scale: "x",
				optional: x1 == null
			},
			y2: {
				value: y2,
				scale: "y",
				optional: y1 == null
			},
			title: {
				value: title,
				optional: true
			}
		}, options, defaults$3);
		this.anchor = maybeAnchor$1(anchor, "anchor");
		this.preferredAnchor = maybeAnchor$1(preferredAnchor, "preferredAnchor");
		this.frameAnchor = maybeFrameAnchor(frameAnchor);
		this.textAnchor = impliedString(textAnchor, "middle");
		this.textPadding = +textPadding;
		this.pointerSize = +pointerSize;
		this.pathFilter = string(pathFilter);
		this.lineHeight = +lineHeight;
		this.lineWidth = +lineWidth;
		this.textOverflow = maybeTextOverflow(textOverflow);
		this.monospace = !!monospace;
		this.fontFamily = string(fontFamily);
		this.fontSize = number(fontSize);
		this.fontStyle = string(fontStyle);
		this.fontVariant = string(fontVariant);
		this.fontWeight = string(fontWeight);
		for (const key in defaults$3) if (key in this.channels) this[key] = defaults$3[key];
		this.splitLines = splitter(this);
		this.clipLine = clipper(this);
		this.format = typeof format === "string" || typeof format === "function" ? { title: format } : { ...format };
	}
	render(index, scales, values, dimensions, context) {
		const mark = this;
		const { x, y, fx, fy } = scales;
		const { ownerSVGElement: svg, document } = context;
		const { anchor, monospace, lineHeight, lineWidth } = this;
		const { textPadding: r, pointerSize: m, pathFilter } = this;
		const { marginTop, marginLeft } = dimensions;
		const { x1: X1, y1: Y1, x2: X2, y2: Y2, x: X = X1 ?? X2, y: Y = Y1 ?? Y2 } = values;
		const ox = fx ? fx(index.fx) - marginLeft : 0;
		const oy = fy ? fy(index.fy) - marginTop : 0;
		const [cx, cy] = applyFrameAnchor(this, dimensions);
		const px = anchorX$1(values, cx);
		const py = anchorY$1(values, cy);
		const widthof = monospace ? monospaceWidth : defaultWidth;
		const ee = widthof("…");
		let sources, format;
		if ("title" in values) {
			sources = getSourceChannels.call(this, { title: values.channels.title }, scales);
			format = formatTitle;
		} else {
			sources = getSourceChannels.call(this, values.channels, scales);
			format = formatChannels;
		}
		const g = create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyIndirectTextStyles, this).call(applyTransform, this, {
			x: X && x,
			y: Y && y
		}).call((g) => g.selectAll().data(index).enter().append("g").attr("transform", (i) => `translate(${Math.round(px(i))},${Math.round(py(i))})`).call(applyDirectStyles, this).call((g) => g.append("path").attr("filter", pathFilter)).call((g) => g.append("text").each(function(i) {
			const that = select(this);
			this.setAttribute("fill", "currentColor");
			this.setAttribute("fill-opacity", 1);
			this.setAttribute("stroke", "none");
			const lines = format.call(mark, i, index, sources, scales, values);
			if (typeof lines === "string") for (const line of mark.splitLines(lines)) renderLine(that, { value: mark.clipLine(line) });
			else {
				const labels = /* @__PURE__ */ new Set();
				for (const line of lines) {
					const { label = "" } = line;
					if (label && labels.has(label)) continue;
					else labels.add(label);
					renderLine(that, line);
				}
			}
		})));
		function renderLine(selection, { label, value, color, opacity }) {
			label ??= "", value ??= "";
			const swatch = color != null || opacity != null;
			let title;
			let w = lineWidth * 100;
			const [j] = cut$1(label, w, widthof, ee);
			if (j >= 0) {
				label = label.slice(0, j).trimEnd() + "…";
				title = value.trim();
				value = "";
			} else {
				if (label || !value && !swatch) value = " " + value;
				const [k] = cut$1(value, w - widthof(label), widthof, ee);
				if (k >= 0) {
					title = value.trim();
					value = value.slice(0, k).trimEnd() + "…";
				}
			}
			const line = selection.append("tspan").attr("x", 0).attr("dy", `${lineHeight}em`).text("​");
			if (label) line.append("tspan").attr("font-weight", "bold").text(label);
			if (value) line.append(() => document.createTextNode(value));
			if (swatch) line.append("tspan").text(" ■").attr("fill", color).attr("fill-opacity", opacity).style("user-select", "none");
			if (title) line.append("title").text(title);
		}
		function postrender() {
			const { width, height } = dimensions.facet ?? dimensions;
			g.selectChildren().each(function(i) {
				let { x: tx, width: w, height: h } = this.getBBox();
				w = Math.round(w), h = Math.round(h);
				let a = anchor;
				if (a === void 0) {
					const x = px(i) + ox;
					const y = py(i) + oy;
					const fitLeft = x + w + m + r * 2 < width;
					const fitRight = x - w - m - r * 2 > 0;
					const fitTop = y + h + m + r * 2 < height;
					const fitBottom = y - h - m - r * 2 > 0;
					a = fitLeft && fitRight ? fitTop && fitBottom ? mark.preferredAnchor : fitBottom ? "bottom" : "top" : fitTop && fitBottom ? fitLeft ? "left" : "right" : (fitLeft || fitRight) && (fitTop || fitBottom) ? `${fitBottom ? "bottom" : "top"}-${fitLeft ? "left" : "right"}` : mark.preferredAnchor;
				}
				const path = this.firstChild;
				const text = this.lastChild;
				path.setAttribute("d", getPath(a, m, r, w, h));
				if (tx) for (const t of text.childNodes) t.setAttribute("x", -tx);
				text.setAttribute("y", `${+getLineOffset(a, text.childNodes.length, lineHeight).toFixed(6)}em`);
				text.setAttribute("transform", `translate(${getTextTranslate(a, m, r, w, h)})`);
			});
			g.attr("visibility", null);
		}
		if (index.length) {
			g.attr("visibility", "hidden");
			if (svg.isConnected) Promise.resolve().then(postrender);
			else if (typeof requestAnimationFrame !== "undefined") requestAnimationFrame(postrender);
		}
		return g.node();
	}
};
function tip(data, { x, y, ...options } = {}) {
	if (options.frameAnchor === void 0) [x, y] = maybeTuple(x, y);
	return new Tip(data, {
		...options,
		x,
		y
	});
}
function getLineOffset(anchor, length, lineHeight) {
	return /^top(?:-|$)/.test(anchor) ? .94 - lineHeight : -.29 - length * lineHeight;
}
function getTextTranslate(anchor, m, r, width, height) {
	switch (anchor) {
		case "middle": return [-width / 2, height / 2];
		case "top-left": return [r, m + r];
		case "top": return [-width / 2, m / 2 + r];
		case "top-right": return [-width - r, m + r];
		case "right": return [-m / 2 - width - r, height / 2];
		case "bottom-left": return [r, -m - r];
		case "bottom": return [-width / 2, -m / 2 - r];
		case "bottom-right": return [-width - r, -m - r];
		case "left": return [r + m / 2, height / 2];
	}
}
function getPath(anchor, m, r, width, height) {
	const w = width + r * 2;
	const h = height + r * 2;
	switch (anchor) {
		case "middle": return `M${-w / 2},${-h / 2}h${w}v${h}h${-w}z`;
		case "top-left": return `M0,0l${m},${m}h${w - m}v${h}h${-w}z`;
		case "top": return `M0,0l${m / 2},${m / 2}h${(w - m) / 2}v${h}h${-w}v${-h}h${(w - m) / 2}z`;
		case "top-right": return `M0,0l${-m},${m}h${m - w}v${h}h${w}z`;
		case "right": return `M0,0l${-m / 2},${-m / 2}v${m / 2 - h / 2}h${-w}v${h}h${w}v${m / 2 - h / 2}z`;
		case "bottom-left": return `M0,0l${m},${-m}h${w - m}v${-h}h${-w}z`;
		case "bottom": return `M0,0l${m / 2},${-m / 2}h${(w - m) / 2}v${-h}h${-w}v${h}h${(w - m) / 2}z`;
		case "bottom-right": return `M0,0l${-m},${-m}h${m - w}v${-h}h${w}z`;
		case "left": return `M0,0l${m / 2},${-m / 2}v${m / 2 - h / 2}h${w}v${h}h${-w}v${m / 2 - h / 2}z`;
	}
}
function getSourceChannels(channels, scales) {
	const sources = {};
	let format = this.format;
	format = maybeExpandPairedFormat(format, channels, "x");
	format = maybeExpandPairedFormat(format, channels, "y");
	this.format = format;
	for (const key in format) {
		const value = format[key];
		if (value === null || value === false) continue;
		else if (key === "fx" || key === "fy") sources[key] = true;
		else {
			const source = getSource(channels, key);
			if (source) sources[key] = source;
		}
	}
	for (const key in channels) {
		if (key in sources || key in format || ignoreChannels.has(key)) continue;
		if ((key === "x" || key === "y") && channels.geometry) continue;
		const source = getSource(channels, key);
		if (source) {
			if (source.scale == null && source.defaultScale === "color") continue;
			sources[key] = source;
		}
	}
	if (this.facet) {
		if (scales.fx && !("fx" in format)) sources.fx = true;
		if (scales.fy && !("fy" in format)) sources.fy = true;
	}
	for (const key in sources) {
		const format = this.format[key];
		if (typeof format === "string") {
			const value = sources[key]?.value ?? scales[key]?.domain() ?? [];
			this.format[key] = (isTemporal(value) ? utcFormat : format$1)(format);
		} else if (format === void 0 || format === true) {
			const scale = scales[key];
			this.format[key] = scale?.bandwidth ? inferTickFormat(scale, scale.domain()) : formatDefault;
		}
	}
	return sources;
}
function maybeExpandPairedFormat(format, channels, key) {
	if (!(key in format)) return format;
	const key1 = `${key}1`;
	const key2 = `${key}2`;
	if ((key1 in format || !(key1 in channels)) && (key2 in format || !(key2 in channels))) return format;
	const entries = Object.entries(format);
	const value = format[key];
	entries.splice(entries.findIndex(([name]) => name === key) + 1, 0, [key1, value], [key2, value]);
	return Object.fromEntries(entries);
}
function formatTitle(i, index, { title }) {
	return this.format.title(title.value[i], i);
}
function* formatChannels(i, index, channels, scales, values) {
	for (const key in channels) {
		if (key === "fx" || key === "fy") {
			yield {
				label: formatLabel(scales, channels, key),
				value: this.format[key](index[key], i)
			};
			continue;
		}
		if (key === "x1" && "x2" in channels) continue;
		if (key === "y1" && "y2" in channels) continue;
		const channel = channels[key];
		if (key === "x2" && "x1" in channels) yield {
			label: formatPairLabel(scales, channels, "x"),
			value: formatPair(this.format.x2, channels.x1, channel, i)
		};
		else if (key === "y2" && "y1" in channels) yield {
			label: formatPairLabel(scales, channels, "y"),
			value: formatPair(this.format.y2, channels.y1, channel, i)
		};
		else {
			const value = channel.value[i];
			const scale = channel.scale;
			if (!defined(value) && scale == null) continue;
			yield {
				label: formatLabel(scales, channels, key),
				value: this.format[key](value, i),
				color: scale === "color" ? values[key][i] : null,
				opacity: scale === "opacity" ? values[key][i] : null
			};
		}
	}
}
function formatPair(formatValue, c1, c2, i) {
	return c2.hint?.length ? `${formatValue(c2.value[i] - c1.value[i], i)}` : `${formatValue(c1.value[i], i)}–${formatValue(c2.value[i], i)}`;
}
function formatPairLabel(scales, channels, key) {
	const l1 = formatLabel(scales, channels, `${key}1`, key);
	const l2 = formatLabel(scales, channels, `${key}2`, key);
	return l1 === l2 ? l1 : `${l1}–${l2}`;
}
function formatLabel(scales, channels, key, defaultLabel = key) {
	const channel = channels[key];
	const scale = scales[channel?.scale ?? key];
	return String(scale?.label ?? channel?.label ?? defaultLabel);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/plot.js
function plot(options = {}) {
	const { facet, style, title, subtitle, caption, ariaLabel, ariaDescription } = options;
	const className = maybeClassName(options.className);
	const marks = options.marks === void 0 ? [] : flatMarks(options.marks);
	marks.push(...inferTips(marks));
	const topFacetState = maybeTopFacet(facet, options);
	const facetStateByMark = /* @__PURE__ */ new Map();
	for (const mark of marks) {
		const facetState = maybeMarkFacet(mark, topFacetState, options);
		if (facetState) facetStateByMark.set(mark, facetState);
	}
	const channelsByScale = /* @__PURE__ */ new Map();
	if (topFacetState) addScaleChannels(channelsByScale, [topFacetState], options);
	addScaleChannels(channelsByScale, facetStateByMark, options);
	const axes = flatMarks(inferAxes(marks, channelsByScale, options));
	for (const mark of axes) {
		const facetState = maybeMarkFacet(mark, topFacetState, options);
		if (facetState) facetStateByMark.set(mark, facetState);
	}
	marks.unshift(...axes);
	let facets = createFacets(channelsByScale, options);
	if (facets !== void 0) {
		const topFacetsIndex = topFacetState ? facetFilter(facets, topFacetState) : void 0;
		for (const mark of marks) {
			if (mark.facet === null || mark.facet === "super") continue;
			const facetState = facetStateByMark.get(mark);
			if (facetState === void 0) continue;
			facetState.facetsIndex = mark.fx != null || mark.fy != null ? facetFilter(facets, facetState) : topFacetsIndex;
		}
		const nonEmpty = /* @__PURE__ */ new Set();
		for (const { facetsIndex } of facetStateByMark.values()) facetsIndex?.forEach((index, i) => {
			if (index?.length > 0) nonEmpty.add(i);
		});
		facets.forEach(0 < nonEmpty.size && nonEmpty.size < facets.length ? (f, i) => f.empty = !nonEmpty.has(i) : (f) => f.empty = false);
		for (const mark of marks) if (mark.facet === "exclude") {
			const facetState = facetStateByMark.get(mark);
			if (facetState !== void 0) facetState.facetsIndex = facetExclude(facetState.facetsIndex);
		}
	}
	for (const key of registry.keys()) if (isScaleOptions(options[key]) && key !== "fx" && key !== "fy") channelsByScale.set(key, []);
	const stateByMark = /* @__PURE__ */ new Map();
	for (const mark of marks) {
		if (stateByMark.has(mark)) throw new Error("duplicate mark; each mark must be unique");
		const { facetsIndex, channels: facetChannels } = facetStateByMark.get(mark) ?? {};
		const { data, facets, channels } = mark.initialize(facetsIndex, facetChannels, options);
		applyScaleTransforms(channels, options);
		stateByMark.set(mark, {
			data,
			facets,
			channels
		});
	}
	const scaleDescriptors = createScales(addScaleChannels(channelsByScale, stateByMark, options), options);
	const dimensions = createDimensions(scaleDescriptors, marks, options);
	autoScaleRange(scaleDescriptors, dimensions);
	const scales = createScaleFunctions(scaleDescriptors);
	const { fx, fy } = scales;
	const subdimensions = fx || fy ? innerDimensions(scaleDescriptors, dimensions) : dimensions;
	const superdimensions = fx || fy ? actualDimensions(scales, dimensions) : dimensions;
	const context = createContext(options);
	const document = context.document;
	const svg = creator("svg").call(document.documentElement);
	let figure = svg;
	context.ownerSVGElement = svg;
	context.className = className;
	context.projection = createProjection(options, subdimensions);
	context.path = function() {
		return index(this.projection ?? xyProjection(scales));
	};
	context.filterFacets = (data, channels) => {
		return facetFilter(facets, {
			channels,
			groups: facetGroups(data, channels)
		});
	};
	context.getMarkState = (mark) => {
		const state = stateByMark.get(mark);
		const facetState = facetStateByMark.get(mark);
		return {
			...state,
			channels: {
				...state.channels,
				...facetState?.channels
			}
		};
	};
	context.dispatchValue = (value) => {
		if (figure.value === value) return;
		figure.value = value;
		figure.dispatchEvent(new context.document.defaultView.Event("input", { bubbles: true }));
	};
	const newByScale = /* @__PURE__ */ new Set();
	for (const [mark, state] of stateByMark) if (mark.initializer != null) {
		const dimensions = mark.facet === "super" ? superdimensions : subdimensions;
		const update = mark.initializer(state.data, state.facets, state.channels, scales, dimensions, context);
		if (update.data !== void 0) state.data = update.data;
		if (update.facets !== void 0) state.facets = update.facets;
		if (update.channels !== void 0) {
			const { fx, fy, ...channels } = update.channels;
			inferChannelScales(channels);
			Object.assign(state.channels, channels);
			for (const channel of Object.values(channels)) {
				const { scale } = channel;
				if (scale != null && !isPosition(registry.get(scale))) {
					applyScaleTransform(channel, options);
					newByScale.add(scale);
				}
			}
			if (fx != null || fy != null) facetStateByMark.set(mark, true);
		}
	}
	if (newByScale.size) {
		const newChannelsByScale = /* @__PURE__ */ new Map();
		addScaleChannels(newChannelsByScale, stateByMark, options, (key) => newByScale.has(key));
		addScaleChannels(channelsByScale, stateByMark, options, (key) => newByScale.has(key));
		const newScaleDescriptors = inheritScaleLabels(createScales(newChannelsByScale, options), scaleDescriptors);
		const { scales: newExposedScales, ...newScales } = createScaleFunctions(newScaleDescriptors);
		Object.assign(scaleDescriptors, newScaleDescriptors);
		Object.assign(scales, newScales);
		Object.assign(scales.scales, newExposedScales);
	}
	let facetDomains, facetTranslate;
	if (facets !== void 0) {
		facetDomains = {
			x: fx?.domain(),
			y: fy?.domain()
		};
		facets = recreateFacets(facets, facetDomains);
		facetTranslate = facetTranslator(fx, fy, dimensions);
	}
	for (const [mark, state] of stateByMark) state.values = mark.scale(state.channels, scales, context);
	const { width, height } = dimensions;
	select(svg).attr("class", className).attr("fill", "currentColor").attr("font-family", "system-ui, sans-serif").attr("font-size", 10).attr("text-anchor", "middle").attr("width", width).attr("height", height).attr("viewBox", `0 0 ${width} ${height}`).attr("aria-label", ariaLabel).attr("aria-description", ariaDescription).call((svg) => svg.append("style").text(`:where(.${className}) {
  --plot-background: white;
  display: block;
  height: auto;
  height: intrinsic;
  max-width: 100%;
}
:where(.${className} text),
:where(.${className} tspan) {
  white-space: pre;
}`)).call(applyInlineStyles, style);
	for (const mark of marks) {
		const { channels, values, facets: indexes } = stateByMark.get(mark);
		if (facets === void 0 || mark.facet === "super") {
			let index = null;
			if (indexes) {
				index = indexes[0];
				index = mark.filter(index, channels, values);
				if (index.length === 0) continue;
			}
			const node = mark.render(index, scales, values, superdimensions, context);
			if (node == null) continue;
			svg.appendChild(node);
		} else {
			let g;
			for (const f of facets) {
				if (!(mark.facetAnchor?.(facets, facetDomains, f) ?? !f.empty)) continue;
				let index = null;
				if (indexes) {
					const faceted = facetStateByMark.has(mark);
					index = indexes[faceted ? f.i : 0];
					index = mark.filter(index, channels, values);
					if (index.length === 0) continue;
					if (!faceted && index === indexes[0]) index = subarray(index);
					index.fx = f.x, index.fy = f.y, index.fi = f.i;
				}
				const node = mark.render(index, scales, values, subdimensions, context);
				if (node == null) continue;
				(g ??= select(svg).append("g")).append(() => node).datum(f);
				for (const name of [
					"aria-label",
					"aria-description",
					"aria-hidden",
					"transform"
				]) if (node.hasAttribute(name)) {
					g.attr(name, node.getAttribute(name));
					node.removeAttribute(name);
				}
			}
			g?.selectChildren().each(facetTranslate);
		}
	}
	const legends = createLegends(scaleDescriptors, context, options);
	const { figure: figured = title != null || subtitle != null || caption != null || legends.length > 0 } = options;
	if (figured) {
		figure = document.createElement("figure");
		figure.className = `${className}-figure`;
		figure.style.maxWidth = "initial";
		if (title != null) figure.append(createTitleElement(document, title, "h2"));
		if (subtitle != null) figure.append(createTitleElement(document, subtitle, "h3"));
		figure.append(...legends, svg);
		if (caption != null) figure.append(createFigcaption(document, caption));
		if ("value" in svg) figure.value = svg.value, delete svg.value;
	}
	figure.scale = exposeScales(scales.scales);
	figure.legend = exposeLegends(scaleDescriptors, context, options);
	const w = consumeWarnings();
	if (w > 0) select(svg).append("text").attr("x", width).attr("y", 20).attr("dy", "-1em").attr("text-anchor", "end").attr("font-family", "initial").text("⚠️").append("title").text(`${w.toLocaleString("en-US")} warning${w === 1 ? "" : "s"}. Please check the console.`);
	return figure;
}
function createTitleElement(document, contents, tag) {
	if (contents.ownerDocument) return contents;
	const e = document.createElement(tag);
	e.append(contents);
	return e;
}
function createFigcaption(document, caption) {
	const e = document.createElement("figcaption");
	e.append(caption);
	return e;
}
function flatMarks(marks) {
	return marks.flat(Infinity).filter((mark) => mark != null).map(markify);
}
function markify(mark) {
	return typeof mark.render === "function" ? mark : new Render(mark);
}
var Render = class extends Mark {
	constructor(render) {
		if (typeof render !== "function") throw new TypeError("invalid mark; missing render function");
		super();
		this.render = render;
	}
	render() {}
};
function applyScaleTransforms(channels, options) {
	for (const name in channels) applyScaleTransform(channels[name], options);
	return channels;
}
function applyScaleTransform(channel, options) {
	const { scale, transform: t = true } = channel;
	if (scale == null || !t) return;
	const { type, percent, interval, transform = percent ? (x) => x == null ? NaN : x * 100 : maybeIntervalTransform(interval, type) } = options[scale] ?? {};
	if (transform == null) return;
	channel.value = map(channel.value, transform);
	channel.transform = false;
}
function inferChannelScales(channels) {
	for (const name in channels) inferChannelScale(name, channels[name]);
}
function addScaleChannels(channelsByScale, stateByMark, options, filter = yes) {
	for (const { channels } of stateByMark.values()) for (const name in channels) {
		const channel = channels[name];
		const { scale } = channel;
		if (scale != null && filter(scale)) {
			if (scale === "projection") {
				if (!hasProjection(options)) {
					const gx = options.x?.domain === void 0;
					const gy = options.y?.domain === void 0;
					if (gx || gy) {
						const [x, y] = getGeometryChannels(channel);
						if (gx) addScaleChannel(channelsByScale, "x", x);
						if (gy) addScaleChannel(channelsByScale, "y", y);
					}
				}
			} else addScaleChannel(channelsByScale, scale, channel);
		}
	}
	return channelsByScale;
}
function addScaleChannel(channelsByScale, scale, channel) {
	const scaleChannels = channelsByScale.get(scale);
	if (scaleChannels !== void 0) scaleChannels.push(channel);
	else channelsByScale.set(scale, [channel]);
}
function maybeTopFacet(facet, options) {
	if (facet == null) return;
	const { x, y } = facet;
	if (x == null && y == null) return;
	const data = dataify(facet.data);
	if (data == null) throw new Error("missing facet data");
	const channels = {};
	if (x != null) channels.fx = createChannel(data, {
		value: x,
		scale: "fx"
	});
	if (y != null) channels.fy = createChannel(data, {
		value: y,
		scale: "fy"
	});
	applyScaleTransforms(channels, options);
	return {
		channels,
		groups: facetGroups(data, channels),
		data: facet.data
	};
}
function maybeMarkFacet(mark, topFacetState, options) {
	if (mark.facet === null || mark.facet === "super") return;
	const { fx, fy } = mark;
	if (fx != null || fy != null) {
		const data = dataify(mark.data ?? fx ?? fy);
		if (data === void 0) throw new Error(`missing facet data in ${mark.ariaLabel}`);
		if (data === null) return;
		const channels = {};
		if (fx != null) channels.fx = createChannel(data, {
			value: fx,
			scale: "fx"
		});
		if (fy != null) channels.fy = createChannel(data, {
			value: fy,
			scale: "fy"
		});
		applyScaleTransforms(channels, options);
		return {
			channels,
			groups: facetGroups(data, channels)
		};
	}
	if (topFacetState === void 0) return;
	const { channels, groups, data } = topFacetState;
	if (mark.facet !== "auto" || mark.data === data) return {
		channels,
		groups
	};
	if (data.length > 0 && (groups.size > 1 || groups.size === 1 && channels.fx && channels.fy && [...groups][0][1].size > 1) && lengthof(dataify(mark.data)) === lengthof(data)) warn(`Warning: the ${mark.ariaLabel} mark appears to use faceted data, but isn’t faceted. The mark data has the same length as the facet data and the mark facet option is "auto", but the mark data and facet data are distinct. If this mark should be faceted, set the mark facet option to true; otherwise, suppress this warning by setting the mark facet option to false.`);
}
function derive(mark, options = {}) {
	return initializer({
		...options,
		x: null,
		y: null
	}, (data, facets, channels, scales, dimensions, context) => {
		return context.getMarkState(mark);
	});
}
function inferTips(marks) {
	const tips = [];
	for (const mark of marks) {
		let tipOptions = mark.tip;
		if (tipOptions) {
			if (tipOptions === true) tipOptions = {};
			else if (typeof tipOptions === "string") tipOptions = { pointer: tipOptions };
			let { pointer: p, preferredAnchor: a } = tipOptions;
			p = /^x$/i.test(p) ? pointerX : /^y$/i.test(p) ? pointerY : pointer;
			tipOptions = p(derive(mark, tipOptions));
			tipOptions.title = null;
			if (a === void 0) tipOptions.preferredAnchor = p === pointerY ? "left" : "bottom";
			const t = tip(mark.data, tipOptions);
			t.facet = mark.facet;
			t.facetAnchor = mark.facetAnchor;
			tips.push(t);
		}
	}
	return tips;
}
function inferAxes(marks, channelsByScale, options) {
	let { projection, x = {}, y = {}, fx = {}, fy = {}, axis, grid, facet = {}, facet: { axis: facetAxis = axis, grid: facetGrid } = facet, x: { axis: xAxis = axis, grid: xGrid = xAxis === null ? null : grid } = x, y: { axis: yAxis = axis, grid: yGrid = yAxis === null ? null : grid } = y, fx: { axis: fxAxis = facetAxis, grid: fxGrid = fxAxis === null ? null : facetGrid } = fx, fy: { axis: fyAxis = facetAxis, grid: fyGrid = fyAxis === null ? null : facetGrid } = fy } = options;
	if (projection || !isScaleOptions(x) && !hasPositionChannel("x", marks)) xAxis = xGrid = null;
	if (projection || !isScaleOptions(y) && !hasPositionChannel("y", marks)) yAxis = yGrid = null;
	if (!channelsByScale.has("fx")) fxAxis = fxGrid = null;
	if (!channelsByScale.has("fy")) fyAxis = fyGrid = null;
	if (xAxis === void 0) xAxis = !hasAxis(marks, "x");
	if (yAxis === void 0) yAxis = !hasAxis(marks, "y");
	if (fxAxis === void 0) fxAxis = !hasAxis(marks, "fx");
	if (fyAxis === void 0) fyAxis = !hasAxis(marks, "fy");
	if (xAxis === true) xAxis = "bottom";
	if (yAxis === true) yAxis = "left";
	if (fxAxis === true) fxAxis = xAxis === "top" || xAxis === null ? "bottom" : "top";
	if (fyAxis === true) fyAxis = yAxis === "right" || yAxis === null ? "left" : "right";
	const axes = [];
	maybeGrid(axes, fyGrid, gridFy, fy);
	maybeAxis(axes, fyAxis, axisFy, "right", "left", facet, fy);
	maybeGrid(axes, fxGrid, gridFx, fx);
	maybeAxis(axes, fxAxis, axisFx, "top", "bottom", facet, fx);
	maybeGrid(axes, yGrid, gridY, y);
	maybeAxis(axes, yAxis, axisY, "left", "right", options, y);
	maybeGrid(axes, xGrid, gridX, x);
	maybeAxis(axes, xAxis, axisX, "bottom", "top", options, x);
	return axes;
}
function maybeAxis(axes, axis, axisType, primary, secondary, defaults, options) {
	if (!axis) return;
	const both = isBoth(axis);
	options = axisOptions(both ? primary : axis, defaults, options);
	const { line } = options;
	if ((axisType === axisY || axisType === axisX) && line && !isNone(line)) axes.push(frame(lineOptions(options)));
	axes.push(axisType(options));
	if (both) axes.push(axisType({
		...options,
		anchor: secondary,
		label: null
	}));
}
function maybeGrid(axes, grid, gridType, options) {
	if (!grid || isNone(grid)) return;
	axes.push(gridType(gridOptions(grid, options)));
}
function isBoth(value) {
	return /^\s*both\s*$/i.test(value);
}
function axisOptions(anchor, defaults, { line = defaults.line, ticks, tickSize, tickSpacing, tickPadding, tickFormat, tickRotate, fontVariant, ariaLabel, ariaDescription, label = defaults.label, labelAnchor, labelArrow = defaults.labelArrow, labelOffset }) {
	return {
		anchor,
		line,
		ticks,
		tickSize,
		tickSpacing,
		tickPadding,
		tickFormat,
		tickRotate,
		fontVariant,
		ariaLabel,
		ariaDescription,
		label,
		labelAnchor,
		labelArrow,
		labelOffset
	};
}
function lineOptions(options) {
	const { anchor, line } = options;
	return {
		anchor,
		facetAnchor: anchor + "-empty",
		stroke: line === true ? void 0 : line
	};
}
function gridOptions(grid, { stroke = isColor(grid) ? grid : void 0, ticks = isGridTicks(grid) ? grid : void 0, tickSpacing, ariaLabel, ariaDescription }) {
	return {
		stroke,
		ticks,
		tickSpacing,
		ariaLabel,
		ariaDescription
	};
}
function isGridTicks(grid) {
	switch (typeof grid) {
		case "number": return true;
		case "string": return !isColor(grid);
	}
	return isIterable(grid) || typeof grid?.range === "function";
}
function hasAxis(marks, k) {
	const prefix = `${k}-axis `;
	return marks.some((m) => m.ariaLabel?.startsWith(prefix));
}
function hasPositionChannel(k, marks) {
	for (const mark of marks) for (const key in mark.channels) {
		const { scale } = mark.channels[key];
		if (scale === k || scale === "projection") return true;
	}
	return false;
}
function inheritScaleLabels(newScales, scales) {
	for (const key in newScales) {
		const newScale = newScales[key];
		const scale = scales[key];
		if (newScale.label === void 0 && scale) newScale.label = scale.label;
	}
	return newScales;
}
function actualDimensions({ fx, fy }, dimensions) {
	const { marginTop, marginRight, marginBottom, marginLeft, width, height } = outerDimensions(dimensions);
	const fxr = fx && outerRange(fx);
	const fyr = fy && outerRange(fy);
	return {
		marginTop: fy ? fyr[0] : marginTop,
		marginRight: fx ? width - fxr[1] : marginRight,
		marginBottom: fy ? height - fyr[1] : marginBottom,
		marginLeft: fx ? fxr[0] : marginLeft,
		inset: {
			marginTop: dimensions.marginTop,
			marginRight: dimensions.marginRight,
			marginBottom: dimensions.marginBottom,
			marginLeft: dimensions.marginLeft
		},
		width,
		height
	};
}
function outerRange(scale) {
	const domain = scale.domain();
	if (domain.length === 0) return [0, scale.bandwidth()];
	let x1 = scale(domain[0]);
	let x2 = scale(domain[domain.length - 1]);
	if (x2 < x1) [x1, x2] = [x2, x1];
	return [x1, x2 + scale.bandwidth()];
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/curve.js
var curves = /* @__PURE__ */ new Map([
	["basis", basis],
	["basis-closed", basisClosed],
	["basis-open", basisOpen],
	["bundle", bundle],
	["bump-x", bumpX],
	["bump-y", bumpY],
	["cardinal", cardinal],
	["cardinal-closed", cardinalClosed],
	["cardinal-open", cardinalOpen],
	["catmull-rom", catmullRom],
	["catmull-rom-closed", catmullRomClosed],
	["catmull-rom-open", catmullRomOpen],
	["linear", curveLinear],
	["linear-closed", linearClosed],
	["monotone-x", monotoneX],
	["monotone-y", monotoneY],
	["natural", natural],
	["step", step],
	["step-after", stepAfter],
	["step-before", stepBefore]
]);
function maybeCurve(curve = curveLinear, tension) {
	if (typeof curve === "function") return curve;
	const c = curves.get(`${curve}`.toLowerCase());
	if (!c) throw new Error(`unknown curve: ${curve}`);
	if (tension !== void 0) {
		if ("beta" in c) return c.beta(tension);
		else if ("tension" in c) return c.tension(tension);
		else if ("alpha" in c) return c.alpha(tension);
	}
	return c;
}
function maybeCurveAuto(curve = curveAuto, tension) {
	return typeof curve !== "function" && `${curve}`.toLowerCase() === "auto" ? curveAuto : maybeCurve(curve, tension);
}
function curveAuto(context) {
	return curveLinear(context);
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/transforms/bin.js
function binX(outputs = { y: "count" }, options = {}) {
	[outputs, options] = mergeOptions(outputs, options);
	const { x, y } = options;
	return binn(maybeBinValue(x, options, identity$1), null, null, y, outputs, maybeInsetX(options));
}
function maybeDenseInterval(bin, k, options = {}) {
	if (options?.interval == null) return options;
	const { reduce = reduceFirst } = options;
	const outputs = { filter: null };
	if (options[k] != null) outputs[k] = reduce;
	if (options[`${k}1`] != null) outputs[`${k}1`] = reduce;
	if (options[`${k}2`] != null) outputs[`${k}2`] = reduce;
	return bin(outputs, options);
}
function maybeDenseIntervalX(options = {}) {
	return maybeDenseInterval(binX, "y", withTip(options, "x"));
}
function binn(bx, by, gx, gy, { data: reduceData = reduceIdentity, filter = reduceCount, sort, reverse, ...outputs } = {}, inputs = {}) {
	bx = maybeBin(bx);
	by = maybeBin(by);
	outputs = maybeBinOutputs(outputs, inputs);
	reduceData = maybeBinReduce(reduceData, identity$1);
	sort = sort == null ? void 0 : maybeBinOutput("sort", sort, inputs);
	filter = filter == null ? void 0 : maybeBinEvaluator("filter", filter, inputs);
	if (gx != null && hasOutput(outputs, "x", "x1", "x2")) gx = null;
	if (gy != null && hasOutput(outputs, "y", "y1", "y2")) gy = null;
	const [BX1, setBX1] = maybeColumn(bx);
	const [BX2, setBX2] = maybeColumn(bx);
	const [BY1, setBY1] = maybeColumn(by);
	const [BY2, setBY2] = maybeColumn(by);
	const [k, gk] = gx != null ? [gx, "x"] : gy != null ? [gy, "y"] : [];
	const [GK, setGK] = maybeColumn(k);
	const { x, y, z, fill, stroke, x1, x2, y1, y2, domain, cumulative, thresholds, interval, ...options } = inputs;
	const [GZ, setGZ] = maybeColumn(z);
	const [vfill] = maybeColorChannel(fill);
	const [vstroke] = maybeColorChannel(stroke);
	const [GF, setGF] = maybeColumn(vfill);
	const [GS, setGS] = maybeColumn(vstroke);
	return {
		..."z" in inputs && { z: GZ || z },
		..."fill" in inputs && { fill: GF || fill },
		..."stroke" in inputs && { stroke: GS || stroke },
		...basic(options, (data, facets, plotOptions) => {
			const K = maybeApplyInterval(valueof(data, k), plotOptions?.[gk]);
			const Z = valueof(data, z);
			const F = valueof(data, vfill);
			const S = valueof(data, vstroke);
			const G = maybeSubgroup(outputs, {
				z: Z,
				fill: F,
				stroke: S
			});
			const groupFacets = [];
			const groupData = [];
			const GK = K && setGK([]);
			const GZ = Z && setGZ([]);
			const GF = F && setGF([]);
			const GS = S && setGS([]);
			const BX1 = bx && setBX1([]);
			const BX2 = bx && setBX2([]);
			const BY1 = by && setBY1([]);
			const BY2 = by && setBY2([]);
			const bin = bing(bx, by, data);
			let i = 0;
			for (const o of outputs) o.initialize(data);
			if (sort) sort.initialize(data);
			if (filter) filter.initialize(data);
			for (const facet of facets) {
				const groupFacet = [];
				for (const o of outputs) o.scope("facet", facet);
				if (sort) sort.scope("facet", facet);
				if (filter) filter.scope("facet", facet);
				for (const [f, I] of maybeGroup(facet, G)) for (const [k, g] of maybeGroup(I, K)) for (const [b, extent] of bin(g)) {
					if (G) extent.z = f;
					if (filter && !filter.reduce(b, extent)) continue;
					groupFacet.push(i++);
					groupData.push(reduceData.reduceIndex(b, data, extent));
					if (K) GK.push(k);
					if (Z) GZ.push(G === Z ? f : Z[(b.length > 0 ? b : g)[0]]);
					if (F) GF.push(G === F ? f : F[(b.length > 0 ? b : g)[0]]);
					if (S) GS.push(G === S ? f : S[(b.length > 0 ? b : g)[0]]);
					if (BX1) BX1.push(extent.x1), BX2.push(extent.x2);
					if (BY1) BY1.push(extent.y1), BY2.push(extent.y2);
					for (const o of outputs) o.reduce(b, extent);
					if (sort) sort.reduce(b, extent);
				}
				groupFacets.push(groupFacet);
			}
			maybeSort(groupFacets, sort, reverse);
			return {
				data: groupData,
				facets: groupFacets
			};
		}),
		...!hasOutput(outputs, "x") && (BX1 ? {
			x1: BX1,
			x2: BX2,
			x: mid(BX1, BX2)
		} : {
			x,
			x1,
			x2
		}),
		...!hasOutput(outputs, "y") && (BY1 ? {
			y1: BY1,
			y2: BY2,
			y: mid(BY1, BY2)
		} : {
			y,
			y1,
			y2
		}),
		...GK && { [gk]: GK },
		...Object.fromEntries(outputs.map(({ name, output }) => [name, output]))
	};
}
function mergeOptions({ cumulative, domain, thresholds, interval, ...outputs }, options) {
	return [outputs, {
		cumulative,
		domain,
		thresholds,
		interval,
		...options
	}];
}
function maybeBinValue(value, { cumulative, domain, thresholds, interval }, defaultValue) {
	value = { ...maybeValue(value) };
	if (value.domain === void 0) value.domain = domain;
	if (value.cumulative === void 0) value.cumulative = cumulative;
	if (value.thresholds === void 0) value.thresholds = thresholds;
	if (value.interval === void 0) value.interval = interval;
	if (value.value === void 0) value.value = defaultValue;
	value.thresholds = maybeThresholds(value.thresholds, value.interval);
	return value;
}
function maybeBin(options) {
	if (options == null) return;
	const { value, cumulative, domain = extent$1, thresholds } = options;
	const bin = (data) => {
		let V = valueof(data, value);
		let T;
		if (isTemporal(V) || isTimeThresholds(thresholds)) {
			V = map(V, coerceDate, Float64Array);
			let [min, max] = typeof domain === "function" ? domain(V) : domain;
			let t = typeof thresholds === "function" && !isInterval(thresholds) ? thresholds(V, min, max) : thresholds;
			if (typeof t === "number") t = utcTickInterval(min, max, t);
			if (isInterval(t)) {
				if (domain === extent$1) {
					min = t.floor(min);
					max = t.offset(t.floor(max));
				}
				t = t.range(min, t.offset(max));
			}
			T = t;
		} else {
			V = coerceNumbers(V);
			let [min, max] = typeof domain === "function" ? domain(V) : domain;
			let t = typeof thresholds === "function" && !isInterval(thresholds) ? thresholds(V, min, max) : thresholds;
			if (typeof t === "number") {
				if (domain === extent$1) {
					let step = tickIncrement(min, max, t);
					if (isFinite(step)) {
						if (step > 0) {
							let r0 = Math.round(min / step);
							let r1 = Math.round(max / step);
							if (!(r0 * step <= min)) --r0;
							if (!(r1 * step > max)) ++r1;
							let n = r1 - r0 + 1;
							t = new Float64Array(n);
							for (let i = 0; i < n; ++i) t[i] = (r0 + i) * step;
						} else if (step < 0) {
							step = -step;
							let r0 = Math.round(min * step);
							let r1 = Math.round(max * step);
							if (!(r0 / step <= min)) --r0;
							if (!(r1 / step > max)) ++r1;
							let n = r1 - r0 + 1;
							t = new Float64Array(n);
							for (let i = 0; i < n; ++i) t[i] = (r0 + i) / step;
						} else t = [min];
					} else t = [min];
				} else t = ticks(min, max, t);
			} else if (isInterval(t)) {
				if (domain === extent$1) {
					min = t.floor(min);
					max = t.offset(t.floor(max));
				}
				t = t.range(min, t.offset(max));
			}
			T = t;
		}
		const E = [];
		if (T.length === 1) E.push([T[0], T[0]]);
		else for (let i = 1; i < T.length; ++i) E.push([T[i - 1], T[i]]);
		E.bin = (cumulative < 0 ? bin1cn : cumulative > 0 ? bin1cp : bin1)(E, T, V);
		return E;
	};
	bin.label = labelof(value);
	return bin;
}
function maybeThresholds(thresholds, interval, defaultThresholds = thresholdAuto) {
	if (thresholds === void 0) return interval === void 0 ? defaultThresholds : maybeRangeInterval(interval);
	if (typeof thresholds === "string") {
		switch (thresholds.toLowerCase()) {
			case "freedman-diaconis": return thresholdFreedmanDiaconis;
			case "scott": return thresholdScott;
			case "sturges": return thresholdSturges;
			case "auto": return thresholdAuto;
		}
		return utcInterval(thresholds);
	}
	return thresholds;
}
function maybeBinOutputs(outputs, inputs) {
	return maybeOutputs(outputs, inputs, maybeBinOutput);
}
function maybeBinOutput(name, reduce, inputs) {
	return maybeOutput(name, reduce, inputs, maybeBinEvaluator);
}
function maybeBinEvaluator(name, reduce, inputs) {
	return maybeEvaluator(name, reduce, inputs, maybeBinReduce);
}
function maybeBinReduce(reduce, value) {
	return maybeReduce(reduce, value, maybeBinReduceFallback);
}
function maybeBinReduceFallback(reduce) {
	switch (`${reduce}`.toLowerCase()) {
		case "x": return reduceX;
		case "x1": return reduceX1;
		case "x2": return reduceX2;
		case "y": return reduceY;
		case "y1": return reduceY1;
		case "y2": return reduceY2;
		case "z": return reduceZ;
	}
	throw new Error(`invalid bin reduce: ${reduce}`);
}
function thresholdAuto(values, min, max) {
	return Math.min(200, thresholdScott(values, min, max));
}
function isTimeThresholds(t) {
	return isTimeInterval(t) || isIterable(t) && isTemporal(t);
}
function bing(bx, by, data) {
	const EX = bx?.(data);
	const EY = by?.(data);
	return EX && EY ? function* (I) {
		const X = EX.bin(I);
		for (const [ix, [x1, x2]] of EX.entries()) {
			const Y = EY.bin(X[ix]);
			for (const [iy, [y1, y2]] of EY.entries()) yield [Y[iy], {
				data,
				x1,
				y1,
				x2,
				y2
			}];
		}
	} : EX ? function* (I) {
		const X = EX.bin(I);
		for (const [i, [x1, x2]] of EX.entries()) yield [X[i], {
			data,
			x1,
			x2
		}];
	} : function* (I) {
		const Y = EY.bin(I);
		for (const [i, [y1, y2]] of EY.entries()) yield [Y[i], {
			data,
			y1,
			y2
		}];
	};
}
function bin1(E, T, V) {
	T = coerceNumbers(T);
	return (I) => {
		const B = E.map(() => []);
		for (const i of I) B[bisectRight(T, V[i]) - 1]?.push(i);
		return B;
	};
}
function bin1cp(E, T, V) {
	const bin = bin1(E, T, V);
	return (I) => {
		const B = bin(I);
		for (let i = 1, n = B.length; i < n; ++i) {
			const C = B[i - 1];
			const b = B[i];
			for (const j of C) b.push(j);
		}
		return B;
	};
}
function bin1cn(E, T, V) {
	const bin = bin1(E, T, V);
	return (I) => {
		const B = bin(I);
		for (let i = B.length - 2; i >= 0; --i) {
			const C = B[i + 1];
			const b = B[i];
			for (const j of C) b.push(j);
		}
		return B;
	};
}
function mid1(x1, x2) {
	const m = (+x1 + +x2) / 2;
	return x1 instanceof Date ? new Date(m) : m;
}
var reduceX = { reduceIndex(I, X, { x1, x2 }) {
	return mid1(x1, x2);
} };
var reduceY = { reduceIndex(I, X, { y1, y2 }) {
	return mid1(y1, y2);
} };
var reduceX1 = { reduceIndex(I, X, { x1 }) {
	return x1;
} };
var reduceX2 = { reduceIndex(I, X, { x2 }) {
	return x2;
} };
var reduceY1 = { reduceIndex(I, X, { y1 }) {
	return y1;
} };
var reduceY2 = { reduceIndex(I, X, { y2 }) {
	return y2;
} };
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/area.js
var defaults$2 = {
	ariaLabel: "area",
	strokeWidth: 1,
	strokeLinecap: "round",
	strokeLinejoin: "round",
	strokeMiterlimit: 1
};
var Area = class extends Mark {
	constructor(data, options = {}) {
		const { x1, y1, x2, y2, z, curve, tension } = options;
		super(data, {
			x1: {
				value: x1,
				scale: "x"
			},
			y1: {
				value: y1,
				scale: "y"
			},
			x2: {
				value: x2,
				scale: "x",
				optional: true
			},
			y2: {
				value: y2,
				scale: "y",
				optional: true
			},
			z: {
				value: maybeZ(options),
				optional: true
			}
		}, options, defaults$2);
		this.z = z;
		this.curve = maybeCurve(curve, tension);
	}
	filter(index) {
		return index;
	}
	render(index, scales, channels, dimensions, context) {
		const { x1: X1, y1: Y1, x2: X2 = X1, y2: Y2 = Y1 } = channels;
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyTransform, this, scales, 0, 0).call((g) => g.selectAll().data(groupIndex(index, [
			X1,
			Y1,
			X2,
			Y2
		], this, channels)).enter().append("path").call(applyDirectStyles, this).call(applyGroupedChannelStyles, this, channels).attr("d", area().curve(this.curve).defined((i) => i >= 0).x0((i) => X1[i]).y0((i) => Y1[i]).x1((i) => X2[i]).y1((i) => Y2[i]))).node();
	}
};
function areaY(data, options) {
	const { x = indexOf, ...rest } = maybeDenseIntervalX(options);
	return new Area(data, maybeStackY(maybeIdentityY({
		...rest,
		x1: x,
		x2: void 0
	}, x === indexOf ? "y2" : "y")));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/dot.js
var defaults$1 = {
	ariaLabel: "dot",
	fill: "none",
	stroke: "currentColor",
	strokeWidth: 1.5
};
function withDefaultSort(options) {
	return options.sort === void 0 && options.reverse === void 0 ? sort({ channel: "-r" }, options) : options;
}
var Dot = class extends Mark {
	constructor(data, options = {}) {
		const { x, y, r, rotate, symbol = circle, frameAnchor } = options;
		const [vrotate, crotate] = maybeNumberChannel(rotate, 0);
		const [vsymbol, csymbol] = maybeSymbolChannel(symbol);
		const [vr, cr] = maybeNumberChannel(r, vsymbol == null ? 3 : 4.5);
		super(data, {
			x: {
				value: x,
				scale: "x",
				optional: true
			},
			y: {
				value: y,
				scale: "y",
				optional: true
			},
			r: {
				value: vr,
				scale: "r",
				filter: positive,
				optional: true
			},
			rotate: {
				value: vrotate,
				optional: true
			},
			symbol: {
				value: vsymbol,
				scale: "auto",
				optional: true
			}
		}, withDefaultSort(options), defaults$1);
		this.r = cr;
		this.rotate = crotate;
		this.symbol = csymbol;
		this.frameAnchor = maybeFrameAnchor(frameAnchor);
		const { channels } = this;
		const { symbol: symbolChannel } = channels;
		if (symbolChannel) {
			const { fill: fillChannel, stroke: strokeChannel } = channels;
			symbolChannel.hint = {
				fill: fillChannel ? fillChannel.value === symbolChannel.value ? "color" : "currentColor" : this.fill ?? "currentColor",
				stroke: strokeChannel ? strokeChannel.value === symbolChannel.value ? "color" : "currentColor" : this.stroke ?? "none"
			};
		}
	}
	render(index, scales, channels, dimensions, context) {
		const { x, y } = scales;
		const { x: X, y: Y, r: R, rotate: A, symbol: S } = channels;
		const { r, rotate, symbol } = this;
		const [cx, cy] = applyFrameAnchor(this, dimensions);
		const circle$1 = symbol === circle;
		const size = R ? void 0 : r * r * Math.PI;
		if (negative(r)) index = [];
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyTransform, this, {
			x: X && x,
			y: Y && y
		}).call((g) => g.selectAll().data(index).enter().append(circle$1 ? "circle" : "path").call(applyDirectStyles, this).call(circle$1 ? (selection) => {
			selection.attr("cx", X ? (i) => X[i] : cx).attr("cy", Y ? (i) => Y[i] : cy).attr("r", R ? (i) => R[i] : r);
		} : (selection) => {
			selection.attr("transform", template`translate(${X ? (i) => X[i] : cx},${Y ? (i) => Y[i] : cy})${A ? (i) => ` rotate(${A[i]})` : rotate ? ` rotate(${rotate})` : ``}`).attr("d", R && S ? (i) => {
				const p = pathRound();
				S[i].draw(p, R[i] * R[i] * Math.PI);
				return p;
			} : R ? (i) => {
				const p = pathRound();
				symbol.draw(p, R[i] * R[i] * Math.PI);
				return p;
			} : S ? (i) => {
				const p = pathRound();
				S[i].draw(p, size);
				return p;
			} : (() => {
				const p = pathRound();
				symbol.draw(p, size);
				return p;
			})());
		}).call(applyChannelStyles, this, channels)).node();
	}
};
function dot(data, { x, y, ...options } = {}) {
	if (options.frameAnchor === void 0) [x, y] = maybeTuple(x, y);
	return new Dot(data, {
		...options,
		x,
		y
	});
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/marks/line.js
var defaults = {
	ariaLabel: "line",
	fill: "none",
	stroke: "currentColor",
	strokeWidth: 1.5,
	strokeLinecap: "round",
	strokeLinejoin: "round",
	strokeMiterlimit: 1
};
var Line = class extends Mark {
	constructor(data, options = {}) {
		const { x, y, z, curve, tension } = options;
		super(data, {
			x: {
				value: x,
				scale: "x"
			},
			y: {
				value: y,
				scale: "y"
			},
			z: {
				value: maybeZ(options),
				optional: true
			}
		}, options, defaults);
		this.z = z;
		this.curve = maybeCurveAuto(curve, tension);
		markers(this, options);
	}
	filter(index) {
		return index;
	}
	project(channels, values, context) {
		if (this.curve !== curveAuto) super.project(channels, values, context);
	}
	render(index, scales, channels, dimensions, context) {
		const { x: X, y: Y } = channels;
		const { curve } = this;
		return create("svg:g", context).call(applyIndirectStyles, this, dimensions, context).call(applyTransform, this, scales).call((g) => g.selectAll().data(groupIndex(index, [X, Y], this, channels)).enter().append("path").call(applyDirectStyles, this).call(applyGroupedChannelStyles, this, channels).call(applyGroupedMarkers, this, channels, context).attr("d", curve === curveAuto && context.projection ? sphereLine(context.path(), X, Y) : line$1().curve(curve).defined((i) => i >= 0).x((i) => X[i]).y((i) => Y[i]))).node();
	}
};
function sphereLine(path, X, Y) {
	X = coerceNumbers(X);
	Y = coerceNumbers(Y);
	return (I) => {
		let line = [];
		const lines = [line];
		for (const i of I) if (i === -1) {
			line = [];
			lines.push(line);
		} else line.push([X[i], Y[i]]);
		return path({
			type: "MultiLineString",
			coordinates: lines
		});
	};
}
function lineY(data, { x = indexOf, y = identity$1, ...options } = {}) {
	return new Line(data, maybeDenseIntervalX({
		...options,
		x,
		y
	}));
}
// ../../node_modules/.pnpm/@observablehq+plot@0.6.17/node_modules/@observablehq/plot/src/index.js
Mark.prototype.plot = function({ marks = [], ...options } = {}) {
	return plot({
		...options,
		marks: [...marks, this]
	});
};
// ../../packages/charts/src/labels/placeFlags.ts
var clear = 6;
/**
* Places labels on poles so that no two labels overlap and no pole runs through another's label.
*
* Poles rise from the drawing; each label flies right or left of the top of its own pole, or sits over it.
* All ways are tried (at most 12 to the power of the number of flags, cut short early); the best uses the
* fewest rows, then the lowest ones, then flies right. Labels never overlap; should no way keep every pole
* clear (only when the span is narrower than three labels), the one with the fewest crossings is taken.
*
* @param flags  Up to five; `at` within `min` and `max`. In any order.
* @returns One place for each flag, in the same order.
*/
function placeFlags(flags, min, max) {
	const n = flags.length;
	let best = [];
	let bestCost = Number.POSITIVE_INFINITY;
	const placed = [];
	function extend(cost) {
		if (cost >= bestCost) return;
		const k = placed.length;
		const flag = flags[k];
		if (flag === void 0) {
			best = placed.map((p) => ({ ...p }));
			bestCost = cost;
			return;
		}
		for (let row = 0; row < n; row++) for (const option of options(flag, row, min, max)) {
			let extra = rowCost * row + (option.side === "right" ? 0 : option.side === "left" ? 1 : 3);
			for (let j = 0; j < k && extra < Number.POSITIVE_INFINITY; j++) {
				const [other, otherFlag] = [placed[j], flags[j]];
				if (other === void 0 || otherFlag === void 0) continue;
				if (overlaps(option, flag, other, otherFlag)) extra = Number.POSITIVE_INFINITY;
				else if (crosses(flag.at, option, other, otherFlag)) extra += crossingCost;
				else if (crosses(otherFlag.at, other, option, flag)) extra += crossingCost;
			}
			if (extra === Number.POSITIVE_INFINITY) continue;
			placed.push(option);
			extend(cost + extra);
			placed.pop();
		}
	}
	extend(0);
	return best;
}
/** How many times a pole runs through the label of another: nought but in a drawing too narrow for them. */
function countCrossings(flags, placed) {
	let count = 0;
	flags.forEach((pole, i) => {
		flags.forEach((label, j) => {
			const [a, b] = [placed[i], placed[j]];
			if (i !== j && a !== void 0 && b !== void 0 && crosses(pole.at, a, b, label)) count++;
		});
	});
	return count;
}
var rowCost = 20;
var crossingCost = 1e4;
function options(flag, row, min, max) {
	const over = Math.max(min, Math.min(max - flag.width, flag.at - flag.width / 2));
	const list = [];
	if (flag.at + clear + flag.width <= max) list.push({
		row,
		from: flag.at + clear,
		side: "right"
	});
	if (flag.at - clear - flag.width >= min) list.push({
		row,
		from: flag.at - clear - flag.width,
		side: "left"
	});
	list.push({
		row,
		from: over,
		side: "over"
	});
	return list;
}
function overlaps(a, flagA, b, flagB) {
	return a.row === b.row && a.from < b.from + flagB.width + clear && b.from < a.from + flagA.width + clear;
}
/** Whether the pole at `at`, which rises to `pole.row`, runs through the label. */
function crosses(at, pole, label, flag) {
	return (pole.side === "over" ? pole.row > label.row : pole.row >= label.row) && at > label.from - clear / 2 && at < label.from + flag.width + clear / 2;
}
// ../../packages/charts/src/draw/flags.ts
/**
* Works out rows and sides for labels whose poles stand at `at` px. Where labels of two lines would be run
* through by a pole, they become narrower: one part of the detail to a line.
*/
function planFlags(flags, at, min, max) {
	const two = layOut(flags.map((flag) => [flag.title, flag.detail]), at, min, max);
	return two.crossings === 0 ? two.plan : layOut(flags.map((flag) => [flag.title, ...flag.detail.split(" · ")]), at, min, max).plan;
}
function layOut(lines, at, min, max) {
	const widths = lines.map((each) => Math.ceil(Math.max(...each.map((line, k) => require_palette.textWidth(line, k === 0 ? 13 : 12, k === 0)))));
	const wishes = widths.map((width, k) => ({
		at: at[k] ?? min,
		width
	}));
	const places = placeFlags(wishes, min, max);
	const rowHeight = 7 + 15 * lines.reduce((most, each) => Math.max(most, each.length), 0);
	const rows = places.reduce((most, place) => Math.max(most, place.row + 1), 0);
	return {
		plan: {
			places,
			lines,
			widths,
			height: rows * rowHeight + (rows > 0 ? 6 : 0),
			rowHeight
		},
		crossings: countCrossings(wishes, places)
	};
}
/**
* Draws poles from `bottom` up to their labels, and the labels. `top` is where the drawing begins: the lowest
* row of labels sits on it.
*/
function drawFlags(document, flags, at, plan, top, bottom, colours) {
	const poles = require_fonts.make(document, "g", { fill: "none" });
	const labels = require_fonts.make(document, "g");
	flags.forEach(({ level }, k) => {
		const place = plan.places[k];
		const lines = plan.lines[k];
		const x = at[k];
		if (place === void 0 || lines === void 0 || x === void 0) return;
		const floor = top - 6 - place.row * plan.rowHeight;
		const poleTop = place.side === "over" ? floor : floor - plan.rowHeight + 4;
		poles.append(require_fonts.make(document, "line", {
			x1: x,
			x2: x,
			y1: bottom,
			y2: poleTop,
			...levelLine(level, colours)
		}));
		const anchor = place.side === "left" ? "end" : "start";
		const side = place.side === "left" ? place.from + (plan.widths[k] ?? 0) : place.from;
		lines.forEach((line, n) => {
			const y = floor - 5 - 15 * (lines.length - 1 - n);
			const type = n === 0 ? {
				"font-size": 13,
				"font-weight": 600
			} : {};
			const fill = n === 0 ? levelColour(level, colours) : colours.ink;
			labels.append(require_fonts.make(document, "text", {
				x: side,
				y,
				"text-anchor": anchor,
				...type,
				fill
			}, line));
		});
	});
	return {
		poles,
		labels
	};
}
// ../../packages/charts/src/draw/plotLayer.ts
/**
* Marks drawn by Observable Plot, as a group to put into a drawing of our own.
*
* Plot's picture comes with a style sheet, class names, names for parts that are not read aloud inside an
* image, and a half-pixel shift that depends on the screen. They are taken off, and coordinates rounded, so
* that a page and a terminal make the same file to the byte.
*/
function plotLayer(document, options) {
	const plot$1 = plot({
		axis: null,
		...options,
		document
	});
	const group = require_fonts.make(document, "g");
	for (const child of Array.from(plot$1.childNodes)) if (child.nodeName.toLowerCase() !== "style") group.append(child);
	for (const element of Array.from(group.querySelectorAll("*"))) tidy(element);
	for (const empty of Array.from(group.querySelectorAll("g:empty"))) empty.remove();
	return {
		group,
		x: applied(plot$1.scale("x")),
		y: applied(plot$1.scale("y"))
	};
}
function applied(scale) {
	return (value) => {
		const at = scale?.apply(value);
		return typeof at === "number" ? at : NaN;
	};
}
function tidy(element) {
	if (element.namespaceURI !== "http://www.w3.org/2000/svg") return;
	for (const { name, value } of Array.from(element.attributes)) if (name === "class" || name.startsWith("aria-")) element.removeAttribute(name);
	else if (name === "transform" && /^translate\((0|0\.5),(0|0\.5)\)$/.test(value)) element.removeAttribute(name);
	else if (/\d\.\d/.test(value)) element.setAttribute(name, value.replace(/-?\d+\.\d+/g, (n) => require_fonts.px(Number(n))));
}
// ../../packages/charts/src/curves/curvePlace.ts
var places = /* @__PURE__ */ new WeakMap();
function keepCurvePlace(svg, place) {
	places.set(svg, place);
}
// ../../packages/charts/src/curves/drawCurve.ts
/** A cumulative curve with its sampling limits, its levels on poles, and an axis that is read. */
function drawCurve(view, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const left = 46;
	const right = 14;
	const [from, to] = span(view);
	const scale = (value) => left + (value - from) / (to - from) * (width - left - right);
	const inside = (value) => Math.max(from, Math.min(to, value));
	const at = view.marks.map((mark) => scale(inside(mark.value)));
	const flags = view.marks.map((mark) => beyond$1(mark, from, to));
	const plan = planFlags(flags, at, 2, width - 2);
	const plotHeight = width < 520 ? 220 : 270;
	const top = plan.height + 12;
	const bottom = top + plotHeight;
	const height = bottom + 52;
	const svg = openSvg(document, width, height, colours);
	const points = shown(view.curve);
	const p10 = require_arrangeDots.valueAt(view.curve, .1);
	const p90 = require_arrangeDots.valueAt(view.curve, .9);
	const core = [
		{
			p: .1,
			at: p10
		},
		...points.filter((point) => point.p > .1 && point.p < .9),
		{
			p: .9,
			at: p90
		}
	];
	const layer = plotLayer(document, {
		width,
		height,
		marginLeft: left,
		marginRight: right,
		marginTop: top,
		marginBottom: height - bottom,
		x: {
			type: "linear",
			domain: [from, to]
		},
		y: {
			type: "linear",
			domain: [0, 1]
		},
		marks: [
			areaY(points, {
				x: "at",
				y1: 0,
				y2: "p",
				fill: colours.rangeWide
			}),
			areaY(core, {
				x: "at",
				y1: 0,
				y2: "p",
				fill: colours.rangeCore
			}),
			areaY(band$1(view), {
				x: "at",
				y1: "low",
				y2: "high",
				fill: colours.rangeEdge,
				fillOpacity: .55
			}),
			lineY(points, {
				x: "at",
				y: "p",
				stroke: colours.ink,
				strokeWidth: 2,
				strokeLinejoin: "round"
			})
		]
	});
	const { poles, labels } = drawFlags(document, flags, at, plan, top, bottom, colours);
	const axes = require_fonts.make(document, "g", { fill: colours.inkQuiet });
	const shares = [.../* @__PURE__ */ new Set([
		0,
		.1,
		.5,
		.9,
		1,
		Math.round(view.confidence * 100) / 100
	])].sort((a, b) => a - b);
	const wishes = shares.map((share) => ({
		at: layer.y(share),
		size: 13
	}));
	const rows = placeAlong(wishes, top - 8, bottom + 8, 1) ?? wishes.map((wish) => wish.at);
	shares.forEach((share, k) => {
		const isCommitted = Math.abs(share - view.confidence) < .005;
		axes.append(require_fonts.make(document, "text", {
			x: 38,
			y: (rows[k] ?? 0) + 4,
			"text-anchor": "end",
			fill: isCommitted ? colours.committed : colours.inkQuiet,
			"font-weight": isCommitted ? 600 : void 0
		}, `${Math.round(share * 100)} %`));
	});
	const guide = {
		x1: left,
		y1: layer.y(view.confidence),
		y2: layer.y(view.confidence)
	};
	const committed = view.marks.find((mark) => mark.level === "committed");
	const guides = require_fonts.make(document, "g");
	if (committed !== void 0) guides.append(require_fonts.make(document, "line", {
		...guide,
		x2: scale(inside(committed.value)),
		...levelLine("committed", colours),
		"stroke-width": 1
	}));
	axes.append(require_fonts.make(document, "line", {
		x1: left,
		x2: width - right,
		y1: bottom,
		y2: bottom,
		stroke: colours.ink
	}));
	let free = Number.NEGATIVE_INFINITY;
	let freeBelow = Number.NEGATIVE_INFINITY;
	for (const tick of view.ticks(from, to, width - left - right)) {
		const x = layer.x(tick.at);
		const wide = require_palette.textWidth(tick.label, 12);
		const begins = view.centred ? x - wide / 2 : x + 4;
		const anchor = view.centred ? "middle" : "start";
		axes.append(require_fonts.make(document, "line", {
			x1: x,
			x2: x,
			y1: bottom,
			y2: bottom + 6,
			stroke: colours.ink
		}));
		if (begins < free || begins + wide > width) continue;
		free = begins + wide + 6;
		const textX = view.centred ? x : begins;
		axes.append(require_fonts.make(document, "text", {
			x: textX,
			y: bottom + 27,
			"text-anchor": anchor
		}, tick.label));
		if (tick.below !== "" && begins >= freeBelow) {
			freeBelow = begins + require_palette.textWidth(tick.below, 12) + 6;
			axes.append(require_fonts.make(document, "text", {
				x: textX,
				y: bottom + 43,
				"text-anchor": anchor
			}, tick.below));
		}
	}
	const shapes = require_fonts.make(document, "g");
	view.marks.forEach((mark, k) => {
		const y = mark.level === "asked" ? bottom : layer.y(mark.chance);
		shapes.append(levelShape(document, mark.level, at[k] ?? 0, y, colours));
	});
	svg.append(layer.group, guides, axes, poles, shapes, labels);
	keepCurvePlace(svg, {
		width,
		height,
		left,
		top,
		bottom,
		x: (value) => scale(inside(value)),
		y: (share) => bottom - share * (bottom - top)
	});
	return svg;
}
/**
* What is drawn of the curve: from P1 to P99. The last future in a hundred may lie so far out that the rest
* would be squeezed to a step.
*/
function shown(curve) {
	return curve.p.flatMap((p, k) => p < .01 || p > .99 ? [] : [{
		p,
		at: curve.at[k] ?? 0
	}]);
}
/** The range of the axis: the curve, and every mark that would not squeeze it to a quarter of the width. */
function span(view) {
	const points = shown(view.curve);
	let from = points[0]?.at ?? view.marks[0]?.value ?? 0;
	let to = points[points.length - 1]?.at ?? from;
	const own = Math.max(to - from, view.padding);
	for (const { value } of view.marks) {
		if (Math.max(to, value) - Math.min(from, value) > 4 * own) continue;
		from = Math.min(from, value);
		to = Math.max(to, value);
	}
	const margin = Math.max((to - from) * .03, (view.padding - (to - from)) / 2);
	return [from - margin, to + margin];
}
/** A mark that lies beyond the axis says so: an arrow on its label. */
function beyond$1(mark, from, to) {
	const { level, title, detail } = mark;
	if (mark.value < from) return {
		level,
		title: `← ${title}`,
		detail
	};
	return {
		level,
		title: mark.value > to ? `${title} →` : title,
		detail
	};
}
/**
* The 95 % limits, as a band along the curve: the percentile p lies between the values at ranks
* np ± 1.96 √(np(1 − p)), so read across at height p the band is as wide as the limits of p, and read upwards it
* is p ± 1.96 √(p(1 − p)/n). Drawn upwards it stays with the curve where that stands still or jumps; limits
* joined from percentile to percentile would not.
*
* Source: the distribution-free limits the forecast itself uses (order statistics, normal approximation).
*/
function band$1({ curve, iterations }) {
	return shown(curve).map(({ p, at }) => {
		const half = iterations > 0 ? 1.96 * Math.sqrt(p * (1 - p) / iterations) : 0;
		return {
			at,
			low: Math.max(0, p - half),
			high: Math.min(1, p + half)
		};
	});
}
// ../../packages/charts/src/costCurve.ts
/**
* The cost as a cumulative curve: the share of futures that cost at most each sum, with the level committed
* to, the plan as written and the sum asked for. Marked as `finishCurve` marks dates.
*
* Reads `cost`, `committed`, `asWritten`, `asked`, `chance`. Cost: under 300 elements whatever the plan.
*/
function costCurve(forecast, options) {
	const { cost, committed, asWritten, asked } = forecast;
	const { currency } = forecast.plan;
	const half = cost.percentiles.find((each) => each.p === .5);
	const marks = [{
		level: "asWritten",
		value: asWritten.cost,
		chance: cost.asWrittenChance,
		title: "As written",
		detail: `${sum(forecast, asWritten.cost)} · ${require_formatPercent.formatPercent(cost.asWrittenChance)}`
	}];
	if (asked.budget !== void 0) {
		const chance = forecast.chance.budget ?? require_arrangeDots.shareAt(cost.curve, asked.budget);
		marks.push({
			level: "asked",
			value: asked.budget,
			chance,
			title: "Asked for",
			detail: `${require_formatMoney.formatMoney(asked.budget, currency)} · ${require_formatPercent.formatPercent(chance)}`
		});
	}
	if (half !== void 0 && committed.confidence !== .5) marks.push({
		level: "half",
		value: half.value,
		chance: .5,
		title: "Half",
		detail: `${sum(forecast, half.value)} · 50 %`
	});
	marks.push({
		level: "committed",
		value: committed.cost,
		chance: committed.confidence,
		title: "Committed",
		detail: `${sum(forecast, committed.cost)} · ${require_formatPercent.formatPercent(committed.confidence)}`
	});
	const unit = moneyUnit(Math.max(...marks.map((mark) => Math.abs(mark.value))), currency);
	const svg = drawCurve({
		curve: cost.curve,
		iterations: forecast.iterations,
		confidence: committed.confidence,
		marks,
		padding: Math.max(1, Math.abs(committed.cost) * .02),
		ticks: (from, to, width) => {
			const at = roundTicks(from, to, Math.floor(width / 84));
			const labels = tickLabels(at, unit.divisor);
			return at.map((each, k) => ({
				at: each,
				label: labels[k] ?? "",
				below: k === 0 ? unit.name : ""
			}));
		},
		centred: true
	}, options);
	return {
		title: finding$11(forecast, half),
		subtitle: subtitle$1(forecast, unit.name),
		summary: summary$1(forecast),
		table: {
			columns: [
				{
					name: "Level",
					align: "start"
				},
				{
					name: "Chance",
					align: "end"
				},
				{
					name: "Costs at most",
					unit: currency,
					align: "end"
				},
				{
					name: "Limits, low",
					unit: currency,
					align: "end"
				},
				{
					name: "Limits, high",
					unit: currency,
					align: "end"
				}
			],
			rows: table$1(forecast)
		},
		svg
	};
}
/** All sums of the chart end on the same place, the one the limits of the committed sum support. */
function sum({ committed, plan }, value, currency = plan.currency) {
	const step = require_roundToLimits.limitStep(committed.cost, committed.costLow, committed.costHigh);
	return require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, step), currency);
}
function finding$11(forecast, half) {
	const { committed, cost } = forecast;
	const level = require_formatPercent.formatPercent(committed.confidence);
	const most = sum(forecast, committed.cost);
	const first = cost.curve.at[0];
	const last = cost.curve.at[cost.curve.at.length - 1];
	if (first !== void 0 && first === last) return `Every future costs ${most}`;
	if (half === void 0 || committed.confidence === .5) return `${level} of all futures cost at most ${most}`;
	const middle = sum(forecast, half.value);
	if (middle === most) return `Half of all futures, and ${level}, cost at most ${most}`;
	return committed.confidence > .5 ? `Half of all futures cost at most ${middle}; ${level} at most ${most}` : `${level} of all futures cost at most ${most}; half at most ${middle}`;
}
function subtitle$1(forecast, unit) {
	const { cost, iterations } = forecast;
	const what = `Share of ${require_groupDigits.groupDigits(iterations)} futures that cost at most each sum, in ${unit}`;
	const p10 = cost.percentiles.find((each) => each.p === .1);
	const p90 = cost.percentiles.find((each) => each.p === .9);
	if (p10 === void 0 || p90 === void 0 || p10.value === p90.value) return what;
	return `${what}; the stronger tint, P10 to P90, runs from ${sum(forecast, p10.value)} to ${sum(forecast, p90.value)}`;
}
function summary$1(forecast) {
	const { cost, committed, asWritten, asked, plan } = forecast;
	const p10 = cost.percentiles.find((each) => each.p === .1);
	const p90 = cost.percentiles.find((each) => each.p === .9);
	const range = p10 === void 0 || p90 === void 0 ? "The curve shows the share of futures that cost at most each sum." : `A curve rising from one future in ten at ${sum(forecast, p10.value)} or less to nine in ten at ${sum(forecast, p90.value)} or less.`;
	const request = asked.budget === void 0 ? "" : `; the sum asked for, ${require_formatMoney.formatMoney(asked.budget, plan.currency)}, holds ${require_formatChance.formatChance(forecast.chance.budget ?? require_arrangeDots.shareAt(cost.curve, asked.budget))}`;
	const written = sum(forecast, asWritten.cost);
	return `${range} Committed: ${sum(forecast, committed.cost)}; the plan as written says ${written} (${require_formatChance.formatChance(cost.asWrittenChance)})${request}.`;
}
function table$1(forecast) {
	const { cost, committed, asWritten, asked } = forecast;
	const rows = cost.percentiles.map(({ p, value, low, high }) => [
		p === committed.confidence ? "Committed" : "",
		require_formatPercent.formatPercent(p),
		...[
			value,
			low,
			high
		].map((each) => sum(forecast, each, ""))
	]);
	const written = sum(forecast, asWritten.cost, "");
	rows.push([
		"Plan as written",
		require_formatPercent.formatPercent(cost.asWrittenChance),
		written,
		"",
		""
	]);
	if (asked.budget !== void 0) {
		const chance = forecast.chance.budget ?? require_arrangeDots.shareAt(cost.curve, asked.budget);
		rows.push([
			"Asked for",
			require_formatPercent.formatPercent(chance),
			require_formatMoney.formatMoney(asked.budget, ""),
			"",
			""
		]);
	}
	return rows;
}
// ../../packages/charts/src/drift/drawDrift.ts
/** Commitments over the days they speak from: a band from P10 to P90, the line committed to, what was asked for. */
function drawDrift(view, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const { marks } = view;
	const first = marks[0]?.at ?? 0;
	const last = marks.at(-1);
	const span = [first, Math.max(last?.at ?? 0, first + 7)];
	const values = marks.flatMap(({ low, high, value, asked }) => [
		low,
		high,
		value,
		asked ?? value
	]);
	const [low, high] = padded(Math.min(...values), Math.max(...values), view.padding);
	const plotHeight = width < 520 ? 220 : 270;
	const ticks = view.ticks(low, high, Math.floor(plotHeight / 40));
	const left = 12 + ticks.reduce((widest, { label }) => Math.max(widest, require_palette.textWidth(label, 12)), 0);
	const ends = endsOf(view);
	const endWidth = ends.reduce((widest, { name, text }) => Math.max(widest, require_palette.textWidth(name, 12, true), require_palette.textWidth(text, 12)), 0);
	const right = Math.max(left + 40, width - 14 - endWidth);
	const top = 34;
	const bottom = top + plotHeight;
	const x = (day) => left + 10 + (day - span[0]) / (span[1] - span[0]) * (right - left - 18);
	const y = (value) => bottom - (value - low) / (high - low) * plotHeight;
	const svg = openSvg(document, width, bottom + 52, colours);
	const axes = require_fonts.make(document, "g", { fill: colours.inkQuiet });
	axes.append(require_fonts.make(document, "text", {
		x: 2,
		y: 18
	}, view.unit));
	axes.append(require_fonts.make(document, "line", {
		x1: left,
		x2: left,
		y1: top,
		y2: bottom,
		stroke: colours.ink
	}));
	for (const { at, label } of ticks) {
		axes.append(require_fonts.make(document, "line", {
			x1: left - 5,
			x2: left,
			y1: y(at),
			y2: y(at),
			stroke: colours.ink
		}));
		axes.append(require_fonts.make(document, "text", {
			x: left - 8,
			y: y(at) + 4,
			"text-anchor": "end"
		}, label));
	}
	const months = require_arrangeDots.calendarTicks(view.start, span[0], span[1], Math.floor((right - left) / 58));
	svg.append(band(document, marks, x, y, colours), asked(document, marks, x, y, colours), axes);
	svg.append(line(document, marks, x, y, colours));
	svg.append(calendarAxis(document, months, x, bottom, left, right, colours));
	svg.append(endLabels(document, ends, right, top, bottom, y, colours));
	return svg;
}
function padded(low, high, least) {
	const margin = Math.max((high - low) * .06, (least - (high - low)) / 2, 1e-9);
	return [low - margin, high + margin];
}
function band(document, marks, x, y, colours) {
	const group = require_fonts.make(document, "g", { fill: "none" });
	const corner = (of) => (mark) => `${require_fonts.px(x(mark.at))},${require_fonts.px(y(mark[of]))}`;
	const around = [...marks.map(corner("high")), ...[...marks].reverse().map(corner("low"))];
	if (marks.length > 1) {
		group.append(require_fonts.make(document, "path", {
			d: `M${around.join("L")}Z`,
			fill: colours.rangeCore
		}));
		for (const of of ["low", "high"]) {
			const d = `M${marks.map(corner(of)).join("L")}`;
			group.append(require_fonts.make(document, "path", {
				d,
				stroke: colours.rangeEdge,
				"stroke-width": 1.5
			}));
		}
	}
	for (const { at, low, high } of marks) {
		const stroke = {
			stroke: colours.rangeEdge,
			"stroke-width": marks.length > 1 ? 1 : 3
		};
		group.append(require_fonts.make(document, "line", {
			x1: x(at),
			x2: x(at),
			y1: y(low),
			y2: y(high),
			...stroke
		}));
	}
	return group;
}
/** What was asked for, in steps: it holds from the forecast that first has it. */
function asked(document, marks, x, y, colours) {
	const group = require_fonts.make(document, "g", { fill: "none" });
	marks.forEach(({ at, asked: value }, k) => {
		if (value === void 0) return;
		const next = marks[k + 1];
		const until = next === void 0 ? x(at) + 8 : x(next.at);
		const here = {
			x1: x(at),
			x2: until,
			y1: y(value),
			y2: y(value)
		};
		group.append(require_fonts.make(document, "line", {
			...here,
			...levelLine("asked", colours)
		}));
	});
	return group;
}
function line(document, marks, x, y, colours) {
	const group = require_fonts.make(document, "g");
	const points = marks.map(({ at, value }) => `${require_fonts.px(x(at))},${require_fonts.px(y(value))}`);
	if (points.length > 1) {
		const d = `M${points.join("L")}`;
		group.append(require_fonts.make(document, "path", {
			d,
			fill: "none",
			...levelLine("committed", colours)
		}));
	}
	for (const { at, value, kind } of marks) {
		const [cx, cy] = [x(at), y(value)];
		if (kind === "plain") group.append(levelShape(document, "committed", cx, cy, colours));
		else {
			const fill = kind === "signed" ? colours.committed : colours.paper;
			const stroke = {
				stroke: colours.committed,
				"stroke-width": 2
			};
			group.append(require_fonts.make(document, "rect", {
				x: cx - 5,
				y: cy - 5,
				width: 10,
				height: 10,
				fill,
				...stroke
			}));
		}
	}
	return group;
}
function endsOf({ marks, text }) {
	const last = marks.at(-1);
	if (last === void 0) return [];
	const wide = last.high > last.low;
	return [
		{
			name: "Committed",
			text: text(last.value),
			at: last.value,
			strong: true
		},
		...wide && last.high > last.value ? [{
			name: "P90",
			text: text(last.high),
			at: last.high,
			strong: false
		}] : [],
		...wide && last.low < last.value ? [{
			name: "P10",
			text: text(last.low),
			at: last.low,
			strong: false
		}] : [],
		...last.asked === void 0 ? [] : [{
			name: "Asked for",
			text: text(last.asked),
			at: last.asked,
			strong: false
		}]
	];
}
function endLabels(document, ends, right, top, bottom, y, colours) {
	const wishes = ends.map(({ at }) => ({
		at: y(at),
		size: 28
	}));
	const rows = placeAlong(wishes, top - 20, bottom + 14, 2) ?? wishes.map(({ at }) => at);
	const group = require_fonts.make(document, "g");
	ends.forEach(({ name, text, strong }, k) => {
		const row = rows[k] ?? 0;
		const fill = strong ? colours.committed : colours.inkQuiet;
		group.append(require_fonts.make(document, "text", {
			x: right + 10,
			y: row - 2,
			"font-weight": 600,
			fill
		}, name));
		group.append(require_fonts.make(document, "text", {
			x: right + 10,
			y: row + 12
		}, text));
	});
	return group;
}
// ../../packages/charts/src/drift/driftMarks.ts
/** What the squares among the marks mean, as further sentences; empty where every mark is a plain one. */
function marksSaid(marks) {
	const has = (kind) => marks.some((mark) => mark.kind === kind);
	const said = [...has("signed") ? ["filled square: signed"] : [], ...has("changed") ? ["hollow square: the plan itself was changed"] : []].join("; ");
	return said === "" ? "" : `. ${said.slice(0, 1).toUpperCase()}${said.slice(1)}`;
}
/** The day from which the marks count: that of the first forecast. */
function driftStart({ points }) {
	return points[0]?.asOf ?? "2000-01-01";
}
/** Days of a date since the drift's start. */
function daysSince(start, date) {
	return Math.round((require_arrangeDots.isoToMs(date) - require_arrangeDots.isoToMs(start)) / require_arrangeDots.dayMs);
}
/** Where a forecast stands along the axis, and how it is marked. */
function markOf(point, start) {
	const signed = point.entry.approvals.some(({ decision }) => decision.startsWith("approve"));
	const changed = point.terms?.includes("plan") === true;
	return {
		at: daysSince(start, point.asOf),
		kind: signed ? "signed" : changed ? "changed" : "plain"
	};
}
// ../../packages/charts/src/driftDates.ts
/**
* How the committed date drifted: each kept forecast over the day it speaks from, with its band from P10 to P90, the
* date asked for, and marks where the plan was signed or changed. Reads the drift and nothing else.
*/
function driftDates(drift, options) {
	const { points } = drift;
	const start = driftStart(drift);
	const day = (date) => daysSince(start, date);
	const marks = points.map((point) => {
		const { finish, asked } = point.entry;
		return {
			...markOf(point, start),
			value: day(finish.committed.date),
			low: day(finish.p10.date),
			high: day(finish.p90.date),
			...asked.finishBy === void 0 ? {} : { asked: day(asked.finishBy) }
		};
	});
	const dated = points.some(({ entry }) => entry.asked.finishBy !== void 0);
	const title = finding$10(drift);
	return {
		title,
		subtitle: `Committed date of each forecast kept, over the day it speaks from; the band runs from P10 to P90${dated ? "; dots: the date asked for" : ""}${marksSaid(marks)}`,
		summary: `${points.length === 1 ? "One forecast" : `A line over ${points.length} forecasts`} of the committed date${dated ? ", against the date asked for" : ""}. ${title}.`,
		table: {
			columns: [
				{
					name: "As of",
					align: "start"
				},
				{
					name: "Committed",
					align: "end"
				},
				{
					name: "P10",
					align: "end"
				},
				{
					name: "P90",
					align: "end"
				},
				{
					name: "Moved",
					unit: "calendar days",
					align: "end"
				},
				...dated ? [{
					name: "Asked for",
					align: "end"
				}, {
					name: "Chance of it",
					align: "end"
				}] : [],
				{
					name: "Why",
					align: "start"
				}
			],
			rows: points.map(({ asOf, entry, moved }) => [
				require_formatDate.formatDate(asOf, "weekday"),
				require_formatDate.formatDate(entry.finish.committed.date, "weekday"),
				require_formatDate.formatDate(entry.finish.p10.date, "weekday"),
				require_formatDate.formatDate(entry.finish.p90.date, "weekday"),
				moved === void 0 ? "" : moved.days < 0 ? `−${-moved.days}` : `${moved.days > 0 ? "+" : ""}${moved.days}`,
				...dated ? [entry.asked.finishBy === void 0 ? "" : require_formatDate.formatDate(entry.asked.finishBy, "weekday"), entry.chance.finishBy === void 0 ? "" : require_formatPercent.formatPercent(entry.chance.finishBy)] : [],
				entry.change.why ?? entry.change.what
			])
		},
		svg: marks.length === 0 ? emptyDrawing("No forecast was kept yet.", options) : drawDrift({
			start,
			marks,
			unit: "Committed date",
			padding: 14,
			ticks: (from, to, most) => require_arrangeDots.calendarTicks(start, from, to, most).flatMap(({ day: at, label, below }) => label === "" ? [] : [{
				at,
				label: below === "" ? label : `${label} ${below}`
			}]),
			text: (value) => require_formatDate.formatDate(require_arrangeDots.dayToIso(start, value))
		}, options)
	};
}
function finding$10({ points, moved }) {
	const [first] = points;
	const last = points.at(-1);
	if (first === void 0 || last === void 0) return "No forecast was kept yet";
	const date = require_formatDate.formatDate(last.entry.finish.committed.date, "weekday");
	if (points.length === 1) return `The first forecast kept commits to ${date}`;
	const since = require_formatDate.formatDate(first.asOf);
	if (moved.days === 0) return `The committed date is ${date}, as it was on ${since}`;
	return `The committed date is ${date}, ${require_driftSentences.daysWords(moved.days)} than on ${since}`;
}
// ../../packages/charts/src/driftSums.ts
/**
* How the committed sum drifted: as `driftDates`, in money. Forecasts in another currency than the last are left out of
* the drawing, not of the table.
*/
function driftSums(drift, options) {
	const { points } = drift;
	const start = driftStart(drift);
	const last = points.at(-1)?.entry;
	const currency = last?.currency ?? "";
	const place = last === void 0 ? 1 : require_roundToLimits.limitStep(last.cost.committed, last.cost.low, last.cost.high);
	const sum = (value) => require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, place), "");
	const drawn = points.filter((point) => point.entry.currency === currency && require_driftSentences.keptSum(point) !== void 0);
	const marks = drawn.map((point) => {
		const { cost, asked } = point.entry;
		return {
			...markOf(point, start),
			value: cost.committed,
			low: cost.p10,
			high: cost.p90,
			...asked.budget === void 0 ? {} : { asked: asked.budget }
		};
	});
	const largest = Math.max(0, ...marks.map(({ high }) => Math.abs(high)));
	const unit = moneyUnit(largest, currency);
	const budgeted = drawn.some(({ entry }) => entry.asked.budget !== void 0);
	const title = finding$9(drift, sum);
	return {
		title,
		subtitle: `Committed sum of each forecast kept, over the day it speaks from; the band runs from P10 to P90${budgeted ? "; dots: the budget" : ""}${marksSaid(marks)}. In ${currency}`,
		summary: `${drawn.length === 1 ? "One forecast" : `A line over ${drawn.length} forecasts`} of the committed sum${budgeted ? ", against the budget" : ""}. ${title}.`,
		table: {
			columns: [
				{
					name: "As of",
					align: "start"
				},
				{
					name: "Committed",
					unit: currency,
					align: "end"
				},
				{
					name: "P10",
					unit: currency,
					align: "end"
				},
				{
					name: "P90",
					unit: currency,
					align: "end"
				},
				...budgeted ? [{
					name: "Budget",
					unit: currency,
					align: "end"
				}, {
					name: "Chance of it",
					align: "end"
				}] : [],
				{
					name: "Why",
					align: "start"
				}
			],
			rows: points.map(({ asOf, entry }) => [
				require_formatDate.formatDate(asOf, "weekday"),
				entry.currency === currency ? sum(entry.cost.committed) : require_formatMoney.formatMoney(entry.cost.committed, entry.currency),
				sum(entry.cost.p10),
				sum(entry.cost.p90),
				...budgeted ? [entry.asked.budget === void 0 ? "" : require_formatMoney.formatMoney(entry.asked.budget, ""), entry.chance.budget === void 0 ? "" : require_formatPercent.formatPercent(entry.chance.budget)] : [],
				entry.change.why ?? entry.change.what
			])
		},
		svg: marks.length === 0 ? emptyDrawing("No forecast that speaks of money was kept.", options) : drawDrift({
			start,
			marks,
			unit: `Committed sum, ${unit.name}`,
			padding: Math.max(1, largest * .02),
			ticks: (from, to, most) => {
				const ticks = roundTicks(from, to, most);
				const labels = tickLabels(ticks, unit.divisor);
				return ticks.map((at, k) => ({
					at,
					label: labels[k] ?? ""
				}));
			},
			text: sum
		}, options)
	};
}
function finding$9({ points, moved }, sum) {
	const [first] = points;
	const last = points.at(-1);
	if (first === void 0 || last === void 0 || require_driftSentences.keptSum(last) === void 0) return "No forecast that speaks of money was kept";
	const { currency, cost } = last.entry;
	const now = `${currency} ${sum(cost.committed)}`;
	if (points.length === 1) return `The first forecast kept commits to ${now}`;
	const since = require_formatDate.formatDate(first.asOf);
	if (moved.money === void 0) return `The committed sum is ${now}; sums were in another currency before`;
	const money = require_movedSentences.roundMove(moved.money);
	if (money === 0) return `The committed sum is ${now}, as it was on ${since}`;
	return `The committed sum is ${now}, ${require_formatMoney.formatMoney(Math.abs(money), currency)} ${money < 0 ? "less" : "more"} than on ${since}`;
}
// ../../packages/charts/src/draw/kinds.ts
/** The kind of an item in a word; a task needs none. */
function kindWord$1(kind) {
	switch (kind) {
		case "task": return "";
		case "task-cost": return "cost";
		case "risk": return "risk";
		case "assumption": return "assumption";
		case "lag": return "wait";
		case "overhead": return "running cost";
		case "response": return "response";
	}
}
/** Events of the register are plum; ranges of estimates are a tint of the ink with an edge. */
function kindFill(kind, colours) {
	return kind === "risk" || kind === "assumption" || kind === "response" ? {
		fill: colours.register,
		stroke: colours.register,
		"stroke-width": 1
	} : {
		fill: colours.rangeCore,
		stroke: colours.rangeEdge,
		"stroke-width": 1
	};
}
// ../../packages/charts/src/tornado/fitScale.ts
/**
* The largest linear scale on which every bar and both of its labels stay between `left` and `right` px.
*
* Of two bars i and j the first's label must fit before its start and the second's after its end, which
* bounds px per unit by (room - labels) / (to_j - from_i); the tightest pair decides. Exact, n squared.
*
* @returns Data to px. When the labels alone fill the room, the bars shrink to points between them.
*/
function fitScale(bars, left, right) {
	let slope = Number.POSITIVE_INFINITY;
	for (const first of bars) for (const last of bars) {
		const reach = last.to - first.from;
		if (reach > 0) slope = Math.min(slope, (right - left - first.before - last.after) / reach);
	}
	if (slope === Number.POSITIVE_INFINITY || slope < 0) slope = 0;
	let origin = Number.NEGATIVE_INFINITY;
	for (const bar of bars) origin = Math.max(origin, left + bar.before - bar.from * slope);
	if (origin === Number.NEGATIVE_INFINITY) origin = (left + right) / 2;
	return (value) => origin + value * slope;
}
// ../../packages/charts/src/drivers/drawDrivers.ts
var gap$2 = 7;
/** Two bars for each driver, side by side: days and money, each from its own nought. */
function drawDrivers(drivers, currency, money, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const inline = width < 560;
	const names = drivers.map((driver) => require_program.plainName(driver.name));
	const nameWidth = inline ? width - 4 : Math.min(width * .34, Math.max(90, ...names.map((name) => require_palette.textWidth(name, 13) + 4)));
	const rowHeight = inline ? 54 : 40;
	const top = 28;
	const bottom = top + drivers.length * rowHeight;
	const svg = openSvg(document, width, bottom + 6, colours);
	const left = inline ? 2 : nameWidth + 20;
	const centre = (k) => top + k * rowHeight + (inline ? 36 : rowHeight / 2);
	const [days, sums] = [{
		name: "Working days",
		value: (d) => require_columnDays.columnDays(d.days) === "0" ? 0 : d.days,
		text: (d) => require_columnDays.columnDays(d.days)
	}, {
		name: currency,
		value: (d) => d.money,
		text: (d) => money(d.money)
	}];
	const between = 24;
	const [needDays, needSums] = [labelRoom$1(drivers, days), labelRoom$1(drivers, sums)];
	const split = left + needDays + Math.max(0, (width - 2 - left - between - needDays - needSums) / 2);
	const panels = [{
		...days,
		from: left,
		to: split
	}, {
		...sums,
		from: split + between,
		to: width - 2
	}];
	drivers.forEach((driver, k) => {
		const place = {
			x: inline ? 2 : 0,
			y: inline ? centre(k) - 14 : centre(k),
			width: nameWidth,
			inline
		};
		svg.append(itemLabel(document, names[k] ?? "", kindWord$1(driver.kind), place, colours));
	});
	for (const panel of panels) {
		const scale = fitScale(drivers.map((driver) => {
			const [value, label] = [panel.value(driver), require_palette.textWidth(panel.text(driver), 13, true) + gap$2];
			const [from, to] = [Math.min(0, value), Math.max(0, value)];
			return {
				from,
				to,
				before: value < 0 ? label : 1,
				after: value < 0 ? 1 : label
			};
		}), panel.from, panel.to);
		const zero = scale(0);
		svg.append(require_fonts.make(document, "text", {
			x: zero,
			y: 14,
			fill: colours.inkQuiet
		}, panel.name));
		const axis = {
			x1: zero,
			x2: zero,
			stroke: colours.ink
		};
		if (!inline) svg.append(require_fonts.make(document, "line", {
			...axis,
			y1: 22,
			y2: bottom
		}));
		drivers.forEach((driver, k) => {
			const value = panel.value(driver);
			const x = scale(value);
			const bar = {
				x: Math.min(zero, x),
				y: centre(k) - 7,
				width: Math.abs(x - zero),
				height: 14
			};
			if (value !== 0) svg.append(require_fonts.make(document, "rect", {
				...bar,
				...kindFill(driver.kind, colours)
			}));
			if (inline) svg.append(require_fonts.make(document, "line", {
				...axis,
				y1: centre(k) - 11,
				y2: centre(k) + 11
			}));
			const anchor = value < 0 ? "end" : "start";
			const at = {
				x: x + (value < 0 ? -7 : gap$2),
				y: centre(k) + 4.5,
				"text-anchor": anchor
			};
			svg.append(require_fonts.make(document, "text", {
				...at,
				"font-size": 13,
				"font-weight": 600
			}, panel.text(driver)));
		});
	}
	return svg;
}
/** Px the labels of a panel need, before its bars and after them, and its name. */
function labelRoom$1(drivers, { name, value, text }) {
	let [before, after] = [0, 0];
	for (const driver of drivers) {
		const label = require_palette.textWidth(text(driver), 13, true) + gap$2;
		if (value(driver) < 0) before = Math.max(before, label);
		else after = Math.max(after, label);
	}
	return Math.max(before + after, require_palette.textWidth(name, 12));
}
// ../../packages/charts/src/drivers/rankDrivers.ts
/**
* The `most` largest drivers: picked by their share of all days or of all money, whichever is more (signs
* aside), then put in order of days, of money, of id. Those that add nothing are left out.
*/
function rankDrivers(drivers, most) {
	const days = drivers.reduce((sum, each) => sum + Math.abs(each.days), 0);
	const money = drivers.reduce((sum, each) => sum + Math.abs(each.money), 0);
	const size = (each) => Math.max(days > 0 ? Math.abs(each.days) / days : 0, money > 0 ? Math.abs(each.money) / money : 0);
	const byId = (a, b) => a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
	return drivers.filter((each) => size(each) > 0).sort((a, b) => size(b) - size(a) || byId(a, b)).slice(0, most).sort((a, b) => b.days - a.days || b.money - a.money || byId(a, b));
}
// ../../packages/charts/src/driversBars.ts
/**
* The five largest drivers, each with the working days and the money it adds on average.
*
* Reads `drivers`. Largest: by share of the days or of the money, whichever is more.
*/
function driversBars(forecast, options) {
	const { currency } = forecast.plan;
	const drivers = rankDrivers(forecast.drivers, 5);
	const money = (value, unit) => require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), unit);
	const subtitle = `Mean over the futures of what each item adds, in working days on critical tasks and in ${currency}`;
	const table = {
		columns: [
			{
				name: "Item",
				align: "start"
			},
			{
				name: "Kind",
				align: "start"
			},
			{
				name: "Adds",
				unit: "working days",
				align: "end"
			},
			{
				name: "Adds",
				unit: currency,
				align: "end"
			}
		],
		rows: drivers.map((driver) => [
			require_program.plainName(driver.name),
			kindWord$1(driver.kind) || "task",
			require_columnDays.columnDays(driver.days),
			money(driver.money, "")
		])
	};
	if (drivers.length === 0) {
		const sentence = "No estimate, risk or assumption in this plan adds days or money to what is written.";
		return {
			title: "Nothing adds to the plan as written",
			subtitle,
			summary: sentence,
			table,
			svg: emptyDrawing(sentence, options)
		};
	}
	const title = finding$8(drivers, (value) => money(value, currency));
	const parts = drivers.map((driver) => `${require_program.quoteName(driver.name)} ${require_formatDays.formatDays(driver.days)} and ${money(driver.money, currency)}`);
	return {
		title,
		subtitle,
		summary: `The ${drivers.length === 1 ? "only driver" : `${drivers.length} largest drivers`}: ${parts.join("; ")}.`,
		table,
		svg: drawDrivers(drivers, currency, (value) => money(value, ""), options)
	};
}
function finding$8(drivers, money) {
	const byDays = drivers.reduce((most, each) => each.days > most.days ? each : most);
	const byMoney = drivers.reduce((most, each) => each.money > most.money ? each : most);
	const [days, sum] = [byDays.days > 0, byMoney.money > 0];
	if (days && sum && byDays === byMoney) return `${require_program.quoteName(byDays.name)} adds most: ${require_formatDays.formatDays(byDays.days)} and ${money(byDays.money)} on average`;
	if (days && sum) return `${require_program.quoteName(byDays.name)} adds most time, ${require_formatDays.formatDays(byDays.days)} on average; ${require_program.quoteName(byMoney.name)} most money, ${money(byMoney.money)}`;
	if (days) return `${require_program.quoteName(byDays.name)} adds most: ${require_formatDays.formatDays(byDays.days)} on average`;
	if (sum) return `${require_program.quoteName(byMoney.name)} adds most: ${money(byMoney.money)} on average`;
	return "On average the largest items save time and money";
}
// ../../packages/charts/src/fiftyFutures.ts
var count = 50;
/**
* Fifty ways it could go: fifty finishes spread evenly over the quantiles, as dots on the calendar. Full dots
* make the committed date, rings do not. Counted in whole days: a future that ends on a date ends by that date.
*
* Reads `finish.curve`, `committed`, `asWritten`, `asked`.
* Source: quantile dots as a display of 50, Fernandes, Walls, Munson, Hullman & Kay (2018), Uncertainty
* displays using quantile dotplots or CDFs improve transit decision-making, CHI; recalled from memory.
*/
function fiftyFutures(forecast, options) {
	const { finish, committed, asWritten, asked, plan, iterations } = forecast;
	const end = (day) => Math.ceil(day - 1e-9);
	const due = end(committed.day);
	const days = Array.from({ length: count }, (_, k) => require_arrangeDots.valueAt(finish.curve, (k + .5) / count)).map((day) => Number.isFinite(day) ? end(day) : due);
	const madeBy = (day) => days.filter((each) => each <= end(day)).length;
	const mark = (level, title, iso, day) => ({
		level,
		title,
		detail: `${require_formatDate.formatDate(iso)} · ${madeBy(day)} of ${count}`,
		day: end(day),
		made: madeBy(day)
	});
	const marks = [mark("asWritten", "As written", asWritten.finish, asWritten.day)];
	if (asked.finishBy !== void 0) marks.push(mark("asked", "Asked for", asked.finishBy, require_arrangeDots.askedDay(forecast)));
	const commitment = mark("committed", "Committed", committed.date, committed.day);
	marks.push(commitment);
	const first = days[0] ?? due;
	const last = days[49] ?? due;
	const { svg, arrangement } = drawDots(days, marks, plan.start, due, options);
	const by = require_formatDate.formatDate(committed.date, "weekday");
	const request = asked.finishBy === void 0 ? "" : `, ${madeBy(require_arrangeDots.askedDay(forecast))} by ${require_formatDate.formatDate(asked.finishBy)} as asked`;
	return {
		title: first === last ? `All ${count} futures finish on ${by}` : `${commitment.made} of ${count} futures finish by ${by}${request}`,
		subtitle: `Each dot is one way this could go: ${count} finishes that stand for ${require_groupDigits.groupDigits(iterations)}. ${columnWords(arrangement.days)}; rings finish after the committed date`,
		summary: `${count} dots on a calendar, from ${require_formatDate.formatDate(require_arrangeDots.finishDate(plan.start, first))} to ${require_formatDate.formatDate(require_arrangeDots.finishDate(plan.start, last))}: ${commitment.made} finish by the committed date, ${require_formatDate.formatDate(committed.date, "long")}, and ${madeBy(asWritten.day)} by the date of the plan as written, ${require_formatDate.formatDate(asWritten.finish)}.`,
		table: {
			columns: [
				{
					name: "Future",
					align: "end"
				},
				{
					name: "Finishes",
					align: "end"
				},
				{
					name: "Committed date",
					align: "start"
				}
			],
			rows: days.map((day, k) => [
				String(k + 1),
				require_formatDate.formatDate(require_arrangeDots.finishDate(plan.start, day), "weekday"),
				day <= due ? "made" : "missed"
			])
		},
		svg
	};
}
function columnWords(days) {
	if (days === 1) return "One column is one day";
	return days === 7 ? "One column is one week" : `One column is ${require_groupDigits.groupDigits(days / 7)} weeks`;
}
function drawDots(days, marks, start, anchor, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const [left, right] = [2, width - 16];
	const first = days[0] ?? anchor;
	const last = days[days.length - 1] ?? anchor;
	const own = Math.max(last - first, 14);
	const near = marks.filter(({ day }) => Math.max(last, day) - Math.min(first, day) <= 2.5 * own);
	const from = Math.min(first - 1, ...near.map(({ day }) => day - own * .03));
	const to = Math.max(last, ...near.map(({ day }) => day + own * .03));
	const room = width < 520 ? 210 : 240;
	const arrangement = require_arrangeDots.arrangeDots(days, anchor, from, to, right - left, room);
	const scale = (day) => left + (day - arrangement.from) / (arrangement.to - arrangement.from) * (right - left);
	const inside = (day) => Math.max(arrangement.from, Math.min(arrangement.to, day));
	const at = marks.map(({ day }) => scale(inside(day)));
	const flags = marks.map((each) => {
		const beyond = each.day < arrangement.from ? "← " : "";
		return {
			...each,
			title: `${beyond}${each.title}${each.day > arrangement.to ? " →" : ""}`
		};
	});
	const plan = planFlags(flags, at, 2, width - 2);
	const top = plan.height + 12;
	const bottom = top + Math.max(70, arrangement.height + 6);
	const height = bottom + 50;
	const svg = openSvg(document, width, height, colours);
	const radius = Math.max(1.2, arrangement.pitch / 2 - 1.5);
	const dots = arrangement.dots.map((dot, k) => ({
		x: left + dot.x,
		y: bottom - 2 - dot.y,
		made: (days[k] ?? 0) <= anchor
	}));
	const layer = plotLayer(document, {
		width,
		height,
		margin: 0,
		x: { type: "identity" },
		y: { type: "identity" },
		marks: [dot(dots.filter((dot) => dot.made), {
			x: "x",
			y: "y",
			r: radius,
			fill: colours.committed,
			stroke: "none"
		}), dot(dots.filter((dot) => !dot.made), {
			x: "x",
			y: "y",
			r: Math.max(.8, radius - .75),
			fill: colours.paper,
			stroke: colours.ink,
			strokeWidth: 1.5
		})]
	});
	const ticks = require_arrangeDots.calendarTicks(start, arrangement.from, arrangement.to, Math.floor((right - left) / 62));
	const { poles, labels } = drawFlags(document, flags, at, plan, top, bottom, colours);
	svg.append(poles, layer.group, calendarAxis(document, ticks, scale, bottom, left, right, colours));
	marks.forEach(({ level }, k) => {
		if (level !== "committed") svg.append(levelShape(document, level, at[k] ?? 0, bottom, colours));
	});
	svg.append(labels);
	return {
		svg,
		arrangement
	};
}
// ../../packages/charts/src/finishCurve.ts
/**
* The finish as a cumulative curve on the calendar: the share of futures that are done by each date, with
* the level committed to, the plan as written and the date asked for.
*
* Reads `finish`, `committed`, `asWritten`, `asked`, `chance`. Cost: under 300 elements whatever the plan.
*/
function finishCurve(forecast, options) {
	const { finish, committed, asWritten, asked } = forecast;
	const half = finish.percentiles.find((each) => each.p === .5);
	const marks = [];
	const written = finish.asWrittenChance;
	marks.push({
		level: "asWritten",
		value: asWritten.day,
		chance: written,
		title: "As written",
		detail: `${require_formatDate.formatDate(asWritten.finish)} · ${require_formatPercent.formatPercent(written)}`
	});
	if (asked.finishBy !== void 0) {
		const chance = askedChance(forecast);
		marks.push({
			level: "asked",
			value: require_arrangeDots.askedDay(forecast),
			chance,
			title: "Asked for",
			detail: `${require_formatDate.formatDate(asked.finishBy)} · ${require_formatPercent.formatPercent(chance)}`
		});
	}
	if (half !== void 0 && committed.confidence !== .5) marks.push({
		level: "half",
		value: half.day,
		chance: .5,
		title: "Half",
		detail: `${require_formatDate.formatDate(half.date)} · 50 %`
	});
	const level = require_formatPercent.formatPercent(committed.confidence);
	marks.push({
		level: "committed",
		value: committed.day,
		chance: committed.confidence,
		title: "Committed",
		detail: `${require_formatDate.formatDate(committed.date)} · ${level}`
	});
	const svg = drawCurve({
		curve: finish.curve,
		iterations: forecast.iterations,
		confidence: committed.confidence,
		marks,
		padding: 14,
		ticks: (from, to, width) => require_arrangeDots.calendarTicks(forecast.plan.start, from, to, Math.floor(width / 62)).map((tick) => ({
			at: tick.day,
			label: tick.label,
			below: tick.below
		})),
		centred: false
	}, options);
	return {
		title: finding$7(forecast, half),
		subtitle: subtitle(forecast),
		summary: summary(forecast),
		table: {
			columns: [
				{
					name: "Level",
					align: "start"
				},
				{
					name: "Chance",
					align: "end"
				},
				{
					name: "Finish by",
					align: "end"
				},
				{
					name: "Limits, earliest",
					align: "end"
				},
				{
					name: "Limits, latest",
					align: "end"
				}
			],
			rows: table(forecast)
		},
		svg
	};
}
function askedChance(forecast) {
	return forecast.chance.finishBy ?? require_arrangeDots.shareAt(forecast.finish.curve, require_arrangeDots.askedDay(forecast));
}
function finding$7({ finish, committed }, half) {
	const level = require_formatPercent.formatPercent(committed.confidence);
	const by = require_formatDate.formatDate(committed.date, "weekday");
	const first = finish.curve.at[0];
	const last = finish.curve.at[finish.curve.at.length - 1];
	if (first !== void 0 && first === last) return `Every future finishes on ${by}`;
	if (half === void 0 || committed.confidence === .5) return `${level} of all futures finish by ${by}`;
	const [p10, p90] = [require_arrangeDots.valueAt(finish.curve, .1), require_arrangeDots.valueAt(finish.curve, .9)];
	if (half.high - half.low > (p90 - p10) / 4 && half.lowDate !== half.highDate) return `Half of all futures finish by a date between ${require_formatDate.formatDate(half.lowDate)} and ${require_formatDate.formatDate(half.highDate)}; ${level} by ${by}`;
	if (half.date === committed.date) return `Half of all futures, and ${level}, finish by ${by}`;
	const sameYear = half.date.slice(0, 4) === committed.date.slice(0, 4);
	const halfBy = require_formatDate.formatDate(half.date, sameYear ? "weekday-no-year" : "weekday");
	return committed.confidence > .5 ? `Half of all futures finish by ${halfBy}; ${level} by ${by}` : `${level} of all futures finish by ${require_formatDate.formatDate(committed.date, sameYear ? "weekday-no-year" : "weekday")}; half by ${require_formatDate.formatDate(half.date, "weekday")}`;
}
function subtitle({ finish, iterations }) {
	const what = `Share of ${require_groupDigits.groupDigits(iterations)} futures that are finished by each date`;
	const p10 = finish.percentiles.find((each) => each.p === .1);
	const p90 = finish.percentiles.find((each) => each.p === .9);
	if (p10 === void 0 || p90 === void 0 || p10.date === p90.date) return what;
	return `${what}; the stronger tint, P10 to P90, runs from ${require_formatDate.formatDate(p10.date)} to ${require_formatDate.formatDate(p90.date)}`;
}
function summary(forecast) {
	const { finish, committed, asWritten, asked } = forecast;
	const p10 = finish.percentiles.find((each) => each.p === .1);
	const p90 = finish.percentiles.find((each) => each.p === .9);
	const range = p10 === void 0 || p90 === void 0 ? "The curve shows the share of futures finished by each date." : `A curve rising from one future in ten finished by ${require_formatDate.formatDate(p10.date)} to nine in ten by ${require_formatDate.formatDate(p90.date)}.`;
	const request = asked.finishBy === void 0 ? "" : `; the date asked for, ${require_formatDate.formatDate(asked.finishBy)}, holds ${require_formatChance.formatChance(askedChance(forecast))}`;
	return `${range} Committed: ${require_formatDate.formatDate(committed.date, "long")} (sampling limits ${require_formatDate.formatDate(committed.lowDate)} to ${require_formatDate.formatDate(committed.highDate)}); the plan as written says ${require_formatDate.formatDate(asWritten.finish)} (${require_formatChance.formatChance(finish.asWrittenChance)})${request}.`;
}
function table(forecast) {
	const { finish, committed, asWritten, asked } = forecast;
	const rows = finish.percentiles.map((each) => [
		each.p === committed.confidence ? "Committed" : "",
		require_formatPercent.formatPercent(each.p),
		require_formatDate.formatDate(each.date, "weekday"),
		require_formatDate.formatDate(each.lowDate, "weekday"),
		require_formatDate.formatDate(each.highDate, "weekday")
	]);
	rows.push([
		"Plan as written",
		require_formatPercent.formatPercent(finish.asWrittenChance),
		require_formatDate.formatDate(asWritten.finish, "weekday"),
		"",
		""
	]);
	if (asked.finishBy !== void 0) rows.push([
		"Asked for",
		require_formatPercent.formatPercent(askedChance(forecast)),
		require_formatDate.formatDate(asked.finishBy, "weekday"),
		"",
		""
	]);
	return rows;
}
// ../../packages/charts/src/spending/drawSpending.ts
/** Money spent by the end of each month as a band against money released, and under it the mean of each month. */
function drawSpending(view, options) {
	const { document } = options;
	const { months, mark } = view;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const last = months[months.length - 1];
	const days = [months[0]?.from ?? 0, last?.to ?? 1];
	const spent = months.flatMap(({ p50, p80 }) => [p50, p80]);
	const low = Math.min(0, ...spent);
	const most = Math.max(low + 1e-9, ...spent);
	const released = months.map((month) => month.released).filter((each) => each !== void 0);
	const high = Math.min(Math.max(most, ...released), low + 1.8 * (most - low));
	const unit = moneyUnit(Math.max(Math.abs(low), high), view.currency);
	const plotHeight = width < 520 ? 200 : 260;
	const ticks = roundTicks(low, high, Math.floor(plotHeight / 44));
	const labels = tickLabels(ticks, unit.divisor);
	const left = 12 + labels.reduce((widest, label) => Math.max(widest, require_palette.textWidth(label, 12)), 0);
	const ends = [
		{
			name: "P80",
			value: last?.p80 ?? 0
		},
		{
			name: "P50",
			value: last?.p50 ?? 0
		},
		...last?.released === void 0 ? [] : [{
			name: "Released",
			value: last.released
		}]
	].map(({ name, value }) => ({
		name: value > high ? `${name} ↑` : name,
		value,
		text: view.sum(value)
	}));
	const endWidth = ends.reduce((widest, { name, text }) => Math.max(widest, require_palette.textWidth(name, 12, true), require_palette.textWidth(text, 12)), 0);
	const right = width - 12 - endWidth;
	const x = (day) => left + (day - days[0]) / (days[1] - days[0]) * (right - left);
	const flags = mark === void 0 ? [] : [mark];
	const at = flags.map(({ day }) => x(day));
	const plan = planFlags(flags, at, 2, width - 2);
	const top = plan.height + 30;
	const bottom = top + plotHeight;
	const y = (value) => bottom - (Math.min(value, high) - low) / (high - low) * plotHeight;
	const barTop = bottom + 34;
	const barHeight = 46;
	const base = barTop + barHeight;
	const svg = openSvg(document, width, base + 50, colours);
	const band = require_fonts.make(document, "g");
	const upper = corners(months, (month) => month.p80);
	const lower = corners(months, (month) => month.p50);
	const line = (points) => points.map(([a, b]) => `${require_fonts.px(x(a))},${require_fonts.px(y(b))}`).join("L");
	const around = `M${line([...upper, ...lower.reverse()])}Z`;
	band.append(require_fonts.make(document, "path", {
		d: around,
		fill: colours.rangeCore
	}));
	for (const points of [upper, lower]) band.append(require_fonts.make(document, "path", {
		d: `M${line(points)}`,
		fill: "none",
		stroke: colours.rangeEdge,
		"stroke-width": 1.5
	}));
	const funds = require_fonts.make(document, "g", { fill: "none" });
	const steps = months.flatMap(({ from, to, released: sum }) => sum === void 0 ? [] : [[from, sum], [to, sum]]);
	if (steps.length > 0) funds.append(require_fonts.make(document, "path", {
		d: `M${line(steps)}`,
		stroke: colours.ink,
		"stroke-width": 2,
		"stroke-dasharray": "11 4"
	}));
	const axes = require_fonts.make(document, "g", { fill: colours.inkQuiet });
	axes.append(require_fonts.make(document, "text", {
		x: 2,
		y: top - 8
	}, unit.name));
	axes.append(require_fonts.make(document, "line", {
		x1: left,
		x2: left,
		y1: top,
		y2: bottom,
		stroke: colours.ink
	}));
	axes.append(require_fonts.make(document, "line", {
		x1: left,
		x2: right,
		y1: y(0),
		y2: y(0),
		stroke: colours.ink
	}));
	ticks.forEach((tick, k) => {
		const short = {
			x1: left - 5,
			x2: left,
			y1: y(tick),
			y2: y(tick),
			stroke: colours.ink
		};
		axes.append(require_fonts.make(document, "line", short));
		if (y(tick) > top + 6) axes.append(require_fonts.make(document, "text", {
			x: left - 8,
			y: y(tick) + 4,
			"text-anchor": "end"
		}, labels[k] ?? ""));
	});
	const wishes = ends.map(({ value }) => ({
		at: y(value),
		size: 28
	}));
	const rows = placeAlong(wishes, top - 12, bottom + 14, 2) ?? wishes.map((wish) => wish.at);
	const words = require_fonts.make(document, "g");
	ends.forEach(({ name, text }, k) => {
		const label = {
			x: right + 8,
			fill: name.startsWith("P") ? colours.inkQuiet : colours.ink
		};
		const row = rows[k] ?? 0;
		words.append(require_fonts.make(document, "text", {
			...label,
			y: row - 2,
			"font-weight": 600
		}, name));
		words.append(require_fonts.make(document, "text", {
			...label,
			y: row + 12,
			fill: colours.ink
		}, text));
	});
	const means = require_fonts.make(document, "g");
	const scale = months.reduce((largest, { mean }) => Math.max(largest, Math.abs(mean)), 1e-9);
	for (const { from, to, mean } of months) {
		const tall = Math.abs(mean) / scale * barHeight;
		const wide = Math.max(1, x(to) - x(from) - 2);
		const paint = mean < 0 ? {
			fill: colours.paper,
			stroke: colours.ink
		} : {
			fill: colours.rangeCore,
			stroke: colours.rangeEdge
		};
		if (tall > .05) {
			if (tall > .05) means.append(require_fonts.make(document, "rect", {
				x: x(from) + 1,
				y: base - tall,
				width: wide,
				height: tall,
				...paint
			}));
		}
	}
	means.append(require_fonts.make(document, "text", {
		x: 2,
		y: barTop - 10,
		fill: colours.inkQuiet
	}, view.means));
	const { poles, labels: flagLabels } = drawFlags(document, flags, at, plan, top - 18, bottom, colours);
	const months12 = require_arrangeDots.calendarTicks(view.start, days[0], days[1], Math.floor((right - left) / 52));
	svg.append(band, axes, funds, poles, words, means);
	svg.append(calendarAxis(document, months12, x, base, left, right, colours), flagLabels);
	return svg;
}
/** Spent by the end of each month, from nothing at the start of the first. */
function corners(months, value) {
	const first = months[0];
	return [...first === void 0 ? [] : [[first.from, 0]], ...months.map((month) => [month.to, value(month)])];
}
// ../../packages/charts/src/fundsMonths.ts
/**
* Money spent by the end of each month, from P50 to P80, against what is released by then, as steps; what would cure the
* first month that runs short is the title. Beneath: each month's part of the committed sum, which add up to it.
*
* Reads `months`, `funds`, `total`, `confidence`, `plan`.
*/
function fundsMonths(budget, options) {
	const { months, total, plan, funds } = budget;
	const { currency } = plan;
	const place = require_roundToLimits.limitStep(total.committed, total.low, total.high);
	const sum = (value) => require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, place), "");
	const shown = months.slice(0, lastToShow$1(months, place, funds?.firstShort?.month));
	const day = (iso) => (require_arrangeDots.isoToMs(iso) - require_arrangeDots.isoToMs(plan.start)) / require_arrangeDots.dayMs;
	const view = shown.map(({ month, byEnd, spent, released }) => {
		const from = day(`${month}-01`);
		return {
			from,
			to: from + daysIn(month),
			mean: spent.split,
			p50: byEnd.p50,
			p80: byEnd.p80,
			...released === void 0 ? {} : { released }
		};
	});
	const short = funds?.firstShort;
	const title = require_fundsFinding.fundsFinding(budget);
	const last = months.at(-1);
	return {
		title,
		subtitle: `Money spent by the end of each month: the band runs from what half of the futures stay within (P50) to what 80 % do (P80)${funds === void 0 ? "" : "; dashes: money released by then"}; bars: how the sum that ${require_formatPercent.formatPercent(budget.confidence)} stay within falls on the months. In ${currency}`,
		summary: last === void 0 ? "The plan says nothing of when money is spent." : `A band that rises to between ${currency} ${sum(last.byEnd.p50)} (P50) and ${currency} ${sum(last.byEnd.p80)} (P80)${last.released === void 0 ? "" : `, against ${currency} ${sum(last.released)} released by the end`}. ${title}.`,
		table: {
			columns: [
				{
					name: "Month",
					align: "start"
				},
				{
					name: "Spent in it, P50",
					unit: currency,
					align: "end"
				},
				{
					name: "Spent in it, P80",
					unit: currency,
					align: "end"
				},
				{
					name: "Part of the committed sum",
					unit: currency,
					align: "end"
				},
				{
					name: "By its end, P50",
					unit: currency,
					align: "end"
				},
				{
					name: "By its end, P80",
					unit: currency,
					align: "end"
				},
				...funds === void 0 ? [] : [
					{
						name: "Released",
						unit: currency,
						align: "end"
					},
					{
						name: "Covered",
						align: "end"
					},
					{
						name: "Short",
						unit: currency,
						align: "end"
					}
				]
			],
			rows: months.map(({ month, spent, byEnd, released, chanceCovered, short: lacking = 0 }) => [
				require_fundsFinding.monthName(month),
				sum(spent.p50),
				sum(spent.p80),
				sum(spent.split),
				sum(byEnd.p50),
				sum(byEnd.p80),
				...funds === void 0 ? [] : [
					released === void 0 ? "" : sum(released),
					chanceCovered === void 0 ? "" : require_formatPercent.formatPercent(chanceCovered),
					lacking > 0 ? sum(lacking) : ""
				]
			])
		},
		svg: view.length === 0 ? emptyDrawing("The plan says nothing of when money is spent.", options) : drawSpending({
			start: plan.start,
			currency,
			months: view,
			means: `Each month's part of ${sum(total.committed)}`,
			...short === void 0 ? {} : { mark: {
				level: "half",
				title: `${sum(short.short)} short`,
				detail: `end of ${require_fundsFinding.monthName(short.month)} · covered in ${require_formatPercent.formatPercent(short.chanceCovered)}`,
				day: day(`${short.month}-01`) + daysIn(short.month)
			} },
			sum
		}, options)
	};
}
/** How many months to draw: to the last that still moves the band by a digit shown, and to the shortfall. */
function lastToShow$1(months, place, short) {
	const end = months.at(-1)?.byEnd.p80 ?? 0;
	let reached = months.length - 1;
	while (reached > 0 && Math.abs(end - (months[reached - 1]?.byEnd.p80 ?? 0)) < place) reached--;
	const marked = months.findIndex(({ month }) => month === short);
	return Math.min(months.length, Math.max(reached + 1, marked + 2, 1));
}
function daysIn(month) {
	const [year = 0, number = 1] = month.split("-").map(Number);
	const next = `${String(number === 12 ? year + 1 : year).padStart(4, "0")}-${String(number % 12 + 1).padStart(2, "0")}-01`;
	return (require_arrangeDots.isoToMs(next) - require_arrangeDots.isoToMs(`${month}-01`)) / require_arrangeDots.dayMs;
}
// ../../packages/charts/src/draw/rowFrame.ts
/** Height of a row, of its bar and of its name in it, px; a name on two lines is given by their middle. */
var beside = {
	height: 36,
	bar: 18,
	name: 18,
	figure: 22.5
};
var above = {
	height: 46,
	bar: 32,
	name: 18,
	figure: 18
};
var twoAbove = {
	height: 62,
	bar: 47,
	name: 19,
	figure: 16
};
/**
* Rows for a drawing of `width` px. Names stand beside the bars from 560 px on; in a narrower drawing above them, on one
* line or, where one does not hold a name and its word, on two.
*/
function rowFrame(width, rows) {
	const { names, words = [], share = .32 } = rows;
	const inline = width < 560;
	let widest = 90;
	for (const [k, name] of names.entries()) widest = Math.max(widest, require_palette.textWidth(name, 13) + 4, require_palette.textWidth(words[k] ?? "", 12) + 4);
	const nameWidth = inline ? width - 4 - (rows.beside ?? 0) : Math.min(width * share, widest);
	const kinds = names.map((name, k) => {
		const word = words[k] ?? "";
		const long = require_palette.textWidth(name, 13) + (word === "" ? 0 : require_palette.textWidth(word, 12) + 8);
		return !inline ? beside : long > nameWidth ? twoAbove : above;
	});
	let height = 0;
	const tops = kinds.map((kind) => {
		height += kind.height;
		return height - kind.height;
	});
	const at = (row, what) => (tops[row] ?? height) + (kinds[row] ?? beside)[what];
	return {
		inline,
		left: inline ? 2 : nameWidth + 18,
		height,
		middle: (row) => at(row, "bar"),
		figureAt: (row) => at(row, "figure"),
		label: (row, top) => ({
			x: inline ? 2 : 0,
			y: top + at(row, "name"),
			width: nameWidth,
			inline: kinds[row] === above
		})
	};
}
// ../../packages/charts/src/future/drawFuture.ts
/**
* The tasks of one future on the calendar: full bars are the path that set the finish, joined where it goes on; a
* plum square stands where a risk struck; diamonds are the finishes of the plan as written.
*/
function drawFuture(view, options) {
	const { document } = options;
	const { tasks, future } = view;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const names = tasks.map((task) => require_program.plainName(task.name));
	const words = tasks.map((task) => plainWord(view.word(task)));
	const dateWidth = Math.max(require_palette.textWidth(view.heading, 12), require_palette.textWidth("30 Nov 2027", 12));
	const frame = rowFrame(width, {
		names,
		words,
		beside: dateWidth + 8
	});
	const { inline } = frame;
	const left = inline ? 8 : frame.left + 6;
	const right = inline ? width - 10 : width - dateWidth - 16;
	const [from, to] = range(view);
	const x = (day) => left + (day - from) / (to - from) * (right - left);
	const at = view.marks.map((mark) => x(mark.day));
	const plan = planFlags(view.marks, at, 2, inline ? width - 2 : right + 8);
	const top = plan.height + (inline ? 26 : 12);
	const middle = (row) => top + frame.middle(row);
	const bottom = top + frame.height + 4;
	const svg = openSvg(document, width, bottom + (view.rest === "" ? 50 : 72), colours);
	const ticks = require_arrangeDots.calendarTicks(future.plan.start, from, to, Math.floor((right - left) / 62));
	const grid = require_fonts.make(document, "g", { stroke: colours.hairline });
	const bars = require_fonts.make(document, "g");
	const texts = require_fonts.make(document, "g");
	const { poles, labels } = drawFlags(document, view.marks, at, plan, inline ? top - 18 : top, inline ? top - 18 : bottom, colours);
	const headed = {
		x: width - 2,
		y: top - 6,
		"text-anchor": "end",
		fill: colours.inkQuiet
	};
	texts.append(require_fonts.make(document, "text", headed, view.heading));
	const onPath = new Map(future.path.map(({ task }, k) => [task.id, k]));
	const rowOf = new Map(tasks.map((task, k) => [task.id, k]));
	tasks.forEach((task, k) => {
		const y = middle(k);
		for (const tick of ticks) {
			const line = {
				x1: x(tick.day),
				x2: x(tick.day),
				y1: y - 11,
				y2: y + 11
			};
			grid.append(require_fonts.make(document, "line", line));
		}
		texts.append(itemLabel(document, names[k] ?? "", words[k] ?? "", frame.label(k, top), colours));
		const date = {
			x: width - 2,
			y: top + frame.figureAt(k),
			"text-anchor": "end"
		};
		if (!task.needed) {
			texts.append(require_fonts.make(document, "text", {
				...date,
				fill: colours.inkQuiet
			}, "not needed"));
			return;
		}
		texts.append(require_fonts.make(document, "text", date, require_formatDate.formatDate(task.finishDate)));
		bars.append(...taskBar(document, task, onPath.has(task.id), view.touched(task), x, y, colours));
	});
	const joints = require_fonts.make(document, "g", { stroke: colours.ink });
	if (!inline) future.path.slice(1).forEach(({ task }, k) => {
		const [above, below] = [rowOf.get(future.path[k]?.task.id ?? ""), rowOf.get(task.id)];
		const before = above === void 0 ? void 0 : tasks[above];
		if (above === void 0 || below === void 0 || before === void 0 || above === below) return;
		const down = below > above ? 6 : -6;
		const line = {
			x1: x(before.finish),
			x2: x(before.finish),
			y1: middle(above) + down,
			y2: middle(below) - down
		};
		joints.append(require_fonts.make(document, "line", line));
	});
	svg.append(grid, poles, joints, bars, calendarAxis(document, ticks, x, bottom, left, right, colours));
	if (view.rest !== "") texts.append(require_fonts.make(document, "text", {
		x: 2,
		y: bottom + 66,
		fill: colours.inkQuiet
	}, require_fonts.fitText(view.rest, width - 4, 12)));
	svg.append(texts, labels);
	return svg;
}
function plainWord(word) {
	return word === "" ? "" : require_program.plainName(word, 46);
}
function taskBar(document, task, onPath, touched, x, y, colours) {
	const paint = onPath ? {
		fill: colours.ink,
		stroke: colours.ink
	} : {
		fill: colours.rangeCore,
		stroke: colours.rangeEdge
	};
	const parts = [];
	const long = x(task.finish) - x(task.start);
	if (task.milestone) {
		const [at, half] = [x(task.finish), 5];
		const ring = {
			cx: at,
			cy: y,
			r: half,
			"stroke-width": 1.5
		};
		parts.push(require_fonts.make(document, "circle", {
			...ring,
			fill: onPath ? colours.ink : colours.paper,
			stroke: colours.ink
		}));
	} else parts.push(require_fonts.make(document, "rect", {
		x: x(task.start),
		y: y - 6,
		width: Math.max(1, long),
		height: 12,
		...paint
	}));
	if (touched) {
		const box = {
			x: x(task.start) - 3.5,
			y: y - 12,
			width: 7,
			height: 7
		};
		parts.push(require_fonts.make(document, "rect", {
			...box,
			fill: colours.register,
			stroke: colours.paper
		}));
	}
	parts.push(levelShape(document, "asWritten", x(task.asWritten.finish), y + 8, colours));
	return parts;
}
function range({ tasks, marks }) {
	let [from, to] = [0, 1];
	for (const { day } of marks) [from, to] = [Math.min(from, day), Math.max(to, day)];
	for (const task of tasks) {
		from = Math.min(from, task.asWritten.finish, task.needed ? task.start : 0);
		to = Math.max(to, task.asWritten.finish, task.needed ? task.finish : 0);
	}
	const margin = Math.max(1, (to - from) * .015);
	return [from - margin, to + margin];
}
// ../../packages/charts/src/future/eventsByTask.ts
/**
* Names of the risks and assumptions that touched each task in this future, by task id: those that occurred and drew
* a delay, a factor or a wait for it.
*/
function eventsByTask({ events, draws }) {
	const occurred = new Map(events.filter((event) => event.occurred).map((event) => [event.id, event.name]));
	const touched = /* @__PURE__ */ new Map();
	for (const { of, on = [], counts } of draws) {
		const name = occurred.get(of.id);
		if (name === void 0 || !counts) continue;
		for (const { id } of on) {
			const names = touched.get(id) ?? [];
			if (!names.includes(name)) names.push(name);
			touched.set(id, names);
		}
	}
	return touched;
}
// ../../packages/charts/src/futureBars.ts
/**
* One future replayed on the calendar: when each task started and finished, the path that set the finish, what
* occurred and whom it struck, and where the plan as written had put each finish.
*
* Reads all but `cost.lines`. Any number of tasks; height grows with them.
*/
function futureBars(future, options) {
	const { tasks, finish, asWritten, events, path, stamp, plan } = future;
	const touched = eventsByTask(future);
	const occurred = events.filter((event) => event.occurred);
	const elsewhere = occurred.filter((event) => ![...touched.values()].some((names) => names.includes(event.name)));
	const later = finish.workingDays - asWritten.workingDays;
	const on = new Set(path.map(({ task }) => task.id));
	const word = (task) => {
		const struck = touched.get(task.id) ?? [];
		if (struck.length > 0) return struck.join(", ");
		const [first] = task.heldBy;
		return first?.kind === "person" && first.person !== void 0 ? `waits for ${first.person.name}` : "";
	};
	const which = `Future ${require_groupDigits.groupDigits(future.iteration)} of ${require_groupDigits.groupDigits(stamp.iterations)}`;
	return {
		title: finding$6(future, later),
		subtitle: `${which}: when each task was done. Full bars set the finish; plum squares: a risk or a wrong assumption struck; diamonds: finishes as written`,
		summary: `${which}: it finishes on ${require_formatDate.formatDate(finish.date, "long")}, no later than which ${require_formatPercent.formatPercent(finish.level)} of the futures finish, and costs ${require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(future.cost.total, 4), plan.currency)}. ${occurred.length === 0 ? "No risk occurred." : `Occurred: ${occurred.map((event) => require_program.quoteName(event.name)).join(", ")}.`} The path that set the finish: ${path.map(({ task }) => require_program.plainName(task.name, 60)).join(", ") || "none"}.`,
		table: {
			columns: [
				{
					name: "Task",
					align: "start"
				},
				{
					name: "Started",
					align: "end"
				},
				{
					name: "Finished",
					align: "end"
				},
				{
					name: "As written",
					align: "end"
				},
				{
					name: "Took",
					unit: "working days",
					align: "end"
				},
				{
					name: "As written",
					unit: "working days",
					align: "end"
				},
				{
					name: "On the path",
					align: "start"
				},
				{
					name: "Could have slipped",
					unit: "working days",
					align: "end"
				},
				{
					name: "What happened",
					align: "start"
				}
			],
			rows: tasks.map((task) => [
				require_program.plainName(task.name),
				task.needed ? require_formatDate.formatDate(task.startDate) : "not needed",
				task.needed ? require_formatDate.formatDate(task.finishDate) : "not needed",
				require_formatDate.formatDate(task.asWritten.finishDate),
				task.needed ? require_columnDays.columnDays(task.duration) : "",
				require_columnDays.columnDays(task.asWritten.duration),
				on.has(task.id) ? "yes" : "no",
				task.slack === void 0 ? "" : require_columnDays.columnDays(task.slack),
				word(task) === "" ? "" : require_program.plainName(word(task))
			])
		},
		svg: tasks.length === 0 ? emptyDrawing("The plan has no tasks.", options) : drawFuture({
			future,
			tasks,
			word,
			touched: (task) => touched.has(task.id),
			marks: [{
				level: "asWritten",
				title: "As written",
				detail: require_formatDate.formatDate(asWritten.date),
				day: asWritten.day
			}, {
				level: "half",
				title: "This future",
				detail: `${require_formatDate.formatDate(finish.date)} · ${require_formatPercent.formatPercent(finish.level)} finish by then`,
				day: finish.day
			}],
			heading: "finished",
			rest: elsewhere.length === 0 ? "" : `Without a task: ${elsewhere.map((event) => require_program.quoteName(event.name)).join(", ")}`
		}, options)
	};
}
function finding$6({ finish, asWritten, events, asWritten: { date } }, later) {
	const occurred = events.filter((event) => event.occurred).length;
	const risks = occurred === 0 ? "nothing of the register occurs" : `${occurred === 1 ? "one event" : `${occurred} events`} of the register ${occurred === 1 ? "occurs" : "occur"}`;
	const by = require_formatDate.formatDate(finish.date, "weekday");
	if (finish.date === asWritten.date) return `In this future ${risks} and the plan finishes as written, on ${by}`;
	const size = require_columnDays.columnDays(later) === "0" ? require_formatDate.formatDate(date) : `${require_formatDays.formatDays(Math.abs(later))} ${later < 0 ? "before" : "after"} the plan as written`;
	return require_columnDays.columnDays(later) === "0" ? `In this future ${risks} and the plan finishes on ${by}, as written on ${size}` : `In this future ${risks} and the plan finishes on ${by}, ${size}`;
}
// ../../packages/charts/src/joint/densityCells.ts
/**
* The grid as runs of equal tint. Cells are ranked by count: the fewest that hold half of all futures are darkest,
* those that make it eight in ten are next, the others that hold any are palest.
*
* Source: highest density regions, Hyndman (1996), Computing and graphing highest density regions, The American
* Statistician 50(2); recalled from memory.
*/
function densityCells({ days, costs, counts }) {
	const filled = counts.flatMap((line, row) => line.flatMap((count, column) => count > 0 ? [{
		row,
		column,
		count
	}] : []));
	const total = filled.reduce((sum, cell) => sum + cell.count, 0);
	filled.sort((a, b) => b.count - a.count || a.row - b.row || a.column - b.column);
	const tints = /* @__PURE__ */ new Map();
	let held = 0;
	for (const { row, column, count } of filled) {
		tints.set(`${row} ${column}`, held < .5 * total ? 0 : held < .8 * total ? 1 : 2);
		held += count;
	}
	const runs = [];
	counts.forEach((line, row) => {
		let open;
		line.forEach((_, column) => {
			const tint = tints.get(`${row} ${column}`);
			if (open !== void 0 && tint === open.tint) {
				open.toDay = days[column + 1] ?? open.toDay;
				return;
			}
			open = void 0;
			if (tint === void 0) return;
			open = {
				fromDay: days[column] ?? 0,
				toDay: days[column + 1] ?? 0,
				fromCost: costs[row] ?? 0,
				toCost: costs[row + 1] ?? 0,
				tint
			};
			runs.push(open);
		});
	});
	return runs;
}
/**
* The part of the grid worth drawing: edges of columns and rows, cut where fewer than one future in 200 lies further
* out on that side.
*/
function densityRange({ days, costs, counts }) {
	const across = days.slice(1).map((_, column) => counts.reduce((sum, line) => sum + (line[column] ?? 0), 0));
	const up = counts.map((line) => line.reduce((sum, count) => sum + count, 0));
	return {
		days: cut(days, across),
		costs: cut(costs, up)
	};
}
function cut(edges, counts) {
	const most = counts.reduce((sum, count) => sum + count, 0) / 200;
	let [first, last] = [0, counts.length - 1];
	for (let sum = counts[first] ?? 0; first < last && sum < most; sum += counts[first] ?? 0) first++;
	for (let sum = counts[last] ?? 0; last > first && sum < most; sum += counts[last] ?? 0) last--;
	return [edges[first] ?? 0, edges[last + 1] ?? 1];
}
// ../../packages/charts/src/joint/drawJoint.ts
/** Futures by day and sum as a density, the curve of equal confidence, and the pairs that are marked. */
function drawJoint(view, options) {
	const { document } = options;
	const { density, frontier } = view.joint;
	const { currency, start } = view;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const range = densityRange(density);
	const days = widened(range.days, view.marks.map((mark) => mark.day), 1);
	const costs = widened(range.costs, view.marks.map((mark) => mark.cost), 1);
	const unit = moneyUnit(Math.max(Math.abs(costs[0]), Math.abs(costs[1])), currency);
	const plotHeight = width < 520 ? 240 : 340;
	const sums = roundTicks(costs[0], costs[1], Math.floor(plotHeight / 44));
	const sumLabels = tickLabels(sums, unit.divisor);
	const left = 12 + sumLabels.reduce((most, label) => Math.max(most, require_palette.textWidth(label, 12)), 0);
	const right = width - 14;
	const x = (day) => left + (inside(day, days) - days[0]) / (days[1] - days[0]) * (right - left);
	const at = view.marks.map((mark) => x(mark.day));
	const flags = view.marks.map((mark) => beyond(mark, days, costs));
	const plan = planFlags(flags, at, 2, width - 2);
	const top = plan.height + 30;
	const bottom = top + plotHeight;
	const y = (cost) => bottom - (inside(cost, costs) - costs[0]) / (costs[1] - costs[0]) * plotHeight;
	const svg = openSvg(document, width, bottom + 50, colours);
	const cells = require_fonts.make(document, "g");
	const tints = [
		colours.rangeEdge,
		colours.rangeCore,
		colours.rangeWide
	];
	for (const run of densityCells(density)) {
		const [x1, x2, y1, y2] = [
			x(run.fromDay),
			x(run.toDay),
			y(run.toCost),
			y(run.fromCost)
		];
		if (x2 - x1 < .01 || y2 - y1 < .01) continue;
		const box = {
			x: x1,
			y: y1,
			width: x2 - x1 + .6,
			height: y2 - y1 + .6
		};
		cells.append(require_fonts.make(document, "rect", {
			...box,
			fill: tints[run.tint]
		}));
	}
	const curve = require_fonts.make(document, "g");
	const points = frontier.pairs.filter(({ day, cost }) => day >= days[0] && day <= days[1] && cost >= costs[0] && cost <= costs[1]).map(({ day, cost }) => [x(day), y(cost)]);
	if (points.length > 1) {
		const line = {
			d: thinned(points).map(([a, b], k) => `${k === 0 ? "M" : "L"}${require_fonts.px(a)},${require_fonts.px(b)}`).join(""),
			fill: "none",
			"stroke-linejoin": "round"
		};
		curve.append(require_fonts.make(document, "path", {
			...line,
			stroke: colours.paper,
			"stroke-width": 5
		}));
		curve.append(require_fonts.make(document, "path", {
			...line,
			stroke: colours.ink,
			"stroke-width": 2
		}));
	}
	const { poles, labels } = drawFlags(document, flags, at, plan, top - 18, bottom, colours);
	const guides = require_fonts.make(document, "g", { fill: "none" });
	const shapes = require_fonts.make(document, "g");
	view.marks.forEach(({ level, cost }, k) => {
		const ends = {
			x1: left,
			x2: at[k],
			y1: y(cost),
			y2: y(cost)
		};
		guides.append(require_fonts.make(document, "line", {
			...ends,
			...levelLine(level, colours)
		}));
		shapes.append(levelShape(document, level, at[k] ?? left, y(cost), colours));
	});
	const axes = require_fonts.make(document, "g", { fill: colours.inkQuiet });
	axes.append(require_fonts.make(document, "text", {
		x: 2,
		y: top - 8
	}, unit.name));
	axes.append(require_fonts.make(document, "line", {
		x1: left,
		x2: left,
		y1: top,
		y2: bottom,
		stroke: colours.ink
	}));
	sums.forEach((tick, k) => {
		const line = {
			x1: left - 5,
			x2: left,
			y1: y(tick),
			y2: y(tick),
			stroke: colours.ink
		};
		axes.append(require_fonts.make(document, "line", line));
		const text = {
			x: left - 8,
			y: y(tick) + 4,
			"text-anchor": "end"
		};
		if (y(tick) > top + 6) axes.append(require_fonts.make(document, "text", text, sumLabels[k] ?? ""));
	});
	const ticks = require_arrangeDots.calendarTicks(start, days[0], days[1], Math.floor((right - left) / 62));
	axes.append(calendarAxis(document, ticks, x, bottom, left, right, colours));
	svg.append(cells, axes, guides, poles, curve, shapes, labels);
	const place = placeWords(view, points, at, y, require_palette.textWidth(view.curve, 12), [
		left,
		right,
		top,
		bottom
	]);
	if (place !== void 0) {
		const [wordX, wordY] = place;
		const box = {
			x: wordX - 3,
			y: wordY - 11,
			width: require_palette.textWidth(view.curve, 12) + 6,
			height: 15
		};
		svg.append(require_fonts.make(document, "rect", {
			...box,
			fill: colours.paper
		}));
		svg.append(require_fonts.make(document, "text", {
			x: wordX,
			y: wordY
		}, view.curve));
	}
	return svg;
}
function inside(value, [from, to]) {
	return Math.max(from, Math.min(to, value));
}
/** The range, and every mark that would not squeeze it to half of the room; never empty. */
function widened([from, to], marks, least) {
	let [low, high] = [from, to];
	for (const mark of marks) {
		if (Math.max(high, mark) - Math.min(low, mark) > 2 * (to - from)) continue;
		low = Math.min(low, mark);
		high = Math.max(high, mark);
	}
	const margin = Math.max((high - low) * .03, high - low < least ? least : 0);
	return [low - (low < from ? margin : 0), high + (high > to ? margin : 0) + (high > low ? 0 : least)];
}
/** A mark that lies beyond an axis says so: an arrow on its label. */
function beyond({ level, title, detail, day, cost }, days, costs) {
	return {
		level,
		title: `${day < days[0] ? "← " : ""}${title}${day > days[1] ? " →" : ""}${cost < costs[0] ? " ↓" : cost > costs[1] ? " ↑" : ""}`,
		detail
	};
}
/** Points closer than half a px to the last one kept are left out. */
function thinned(points) {
	const kept = [];
	for (const point of points) {
		const last = kept[kept.length - 1];
		if (last === void 0 || Math.hypot(point[0] - last[0], point[1] - last[1]) >= .5) kept.push(point);
	}
	return kept;
}
/** A place beside the curve where its words touch no pole, no guide and no mark; none where there is no such place. */
function placeWords({ marks }, points, poles, y, wide, [left, right, top, bottom]) {
	const guides = marks.map(({ cost }, k) => ({
		y: y(cost),
		to: poles[k] ?? left
	}));
	const free = (a, b) => a >= left + 4 && a + wide <= right && b - 12 >= top && b + 4 <= bottom - 2 && poles.every((pole) => pole < a - 5 || pole > a + wide + 5) && guides.every((guide) => guide.to < a - 5 || guide.y < b - 16 || guide.y > b + 8) && points.every(([p, q]) => p < a - 4 || p > a + wide + 4 || q < b - 14 || q > b + 6);
	for (const [p, q] of [...points].reverse()) for (const [a, b] of [
		[p - wide, q - 10],
		[p + 8, q - 8],
		[p - wide, q + 20]
	]) if (free(a, b)) return [a, b];
}
// ../../packages/charts/src/jointDensity.ts
/**
* Date and sum together: all futures as a density by day and cost, the committed pair, the pair asked for, and the
* curve of pairs that hold the wanted chance of both, with the one of equal levels on it.
*
* Reads `joint`, `plan`, and of `steps` the limits of the committed sum. Counts on a grid, never the single futures: under 1,300 elements.
*/
function jointDensity(answer, options) {
	const { joint, plan } = answer;
	const { committed, asked, equal, frontier } = joint;
	const figures = roundedSum(answer);
	const sum = (value) => require_formatMoney.formatMoney(figures(value), plan.currency);
	const wanted = require_formatPercent.formatPercent(equal.joint);
	const each = require_formatPercent.formatPercent(equal.level);
	const tied = equal.level < equal.joint;
	const words = (pair) => `${require_formatDate.formatDate(pair.date)} · ${sum(pair.cost)} · both ${require_formatPercent.formatPercent(pair.both)}`;
	const marks = [{
		level: "committed",
		title: "Committed",
		detail: words(committed),
		day: committed.day,
		cost: committed.cost
	}];
	if (asked !== void 0) marks.push({
		level: "asked",
		title: "Asked for",
		detail: words(asked),
		day: asked.day,
		cost: asked.cost
	});
	const apart = equal.day !== committed.day || equal.cost !== committed.cost;
	if (apart) marks.push({
		level: "half",
		title: `Each at ${each}`,
		detail: `${require_formatDate.formatDate(equal.date)} · ${sum(equal.cost)} · both ${require_formatPercent.formatPercent(equal.both)}`,
		day: equal.day,
		cost: equal.cost
	});
	const both = require_formatPercent.formatPercent(joint.atCommitted);
	const futures = require_groupDigits.groupDigits(joint.stamp.iterations);
	const title = apart ? `The committed date and sum hold together in ${both} of futures; to hold both in ${wanted} takes ${require_formatDate.formatDate(equal.date)} and ${sum(equal.cost)}` : `The committed date and sum hold together in ${both} of futures`;
	const pair = (name, at) => [
		name,
		require_formatDate.formatDate(at.date, "weekday"),
		require_formatMoney.formatMoney(figures(at.cost), ""),
		require_formatPercent.formatPercent(at.finishLevel),
		require_formatPercent.formatPercent(at.costLevel),
		require_formatPercent.formatPercent(at.both)
	];
	return {
		title,
		subtitle: `${futures} futures by finish and cost: the strongest tint holds half of them, with the next one 80 %; the line: pairs that hold both in ${wanted}`,
		summary: `A density of futures by finish and cost, whose correlation is ${require_groupDigits.groupDigits(joint.correlation, 2)}. The committed pair, ${require_formatDate.formatDate(committed.date, "long")} and ${sum(committed.cost)}, holds ${require_formatChance.formatChance(committed.both)}${asked === void 0 ? "" : `; the pair asked for, ${require_formatDate.formatDate(asked.date)} and ${sum(asked.cost)}, ${require_formatChance.formatChance(asked.both)}`}. A line joins the pairs that hold both in ${wanted} of futures; ${tied ? `on it both hold in ${require_formatPercent.formatPercent(equal.both)}` : `on it each level is ${each}`} at ${require_formatDate.formatDate(equal.date)} and ${sum(equal.cost)}.`,
		table: {
			columns: [
				{
					name: "Pair",
					align: "start"
				},
				{
					name: "Finish by",
					align: "end"
				},
				{
					name: "Costs at most",
					unit: plan.currency,
					align: "end"
				},
				{
					name: "Date alone",
					align: "end"
				},
				{
					name: "Sum alone",
					align: "end"
				},
				{
					name: "Both",
					align: "end"
				}
			],
			rows: [
				pair("Committed", committed),
				...asked === void 0 ? [] : [pair("Asked for", asked)],
				pair("Equal levels", {
					...equal,
					finishLevel: equal.level,
					costLevel: equal.level
				}),
				...spread(frontier.pairs).map((at) => pair(`Holds both in ${wanted}`, at))
			]
		},
		svg: drawJoint({
			...plan,
			joint,
			marks,
			curve: `both ${wanted}`
		}, options)
	};
}
/** Sums to the place the limits of the committed one support, else to three significant digits. */
function roundedSum({ steps, confidence }) {
	const own = steps.find((step) => step.p === confidence);
	if (own === void 0) return (value) => require_roundSignificant.roundSignificant(value, 3);
	const place = require_roundToLimits.limitStep(own.cost, own.costLow, own.costHigh);
	return (value) => require_roundToLimits.roundToStep(value, place);
}
/** At most nine pairs, evenly along the curve: enough for a table. */
function spread(pairs) {
	const most = 9;
	if (pairs.length <= most) return [...pairs];
	return Array.from({ length: most }, (_, k) => pairs[Math.round(k * (pairs.length - 1) / 8)]).filter((pair) => pair !== void 0);
}
// ../../packages/charts/src/measure/moneyColumn.ts
/**
* Money for a column of figures: all in one unit, all on the same place, the one that gives the largest three
* digits; nothing finer than a hundredth.
*/
function moneyColumn(amounts, currency) {
	let largest = 0;
	for (const amount of amounts) if (Number.isFinite(amount)) largest = Math.max(largest, Math.abs(amount));
	const unit = moneyUnit(largest, currency);
	const step = largest > 0 ? Math.max(.01, 10 ** (Math.floor(Math.log10(largest)) - 2)) : 1;
	const decimals = Math.max(0, -Math.floor(Math.log10(step / unit.divisor) + 1e-9));
	return {
		unit: unit.name,
		step,
		text: (value, signed = false) => {
			const digits = require_groupDigits.groupDigits(Math.abs(require_roundToLimits.roundToStep(value, step)) / unit.divisor, decimals);
			if (!/[1-9]/.test(digits)) return "0";
			return `${value < 0 ? "−" : signed ? "+" : ""}${digits}`;
		}
	};
}
// ../../packages/charts/src/measure/worthRounding.ts
/**
* How the net worth of responses is rounded wherever it is told: all of one answer to the same place, the one that gives
* the largest three digits, so that a sentence says what the chart beside it says.
*
* @returns rounds a sum of money in the currency of the plan; not finite: as it is.
*/
function worthRounding({ responses, plan }) {
	const { step } = moneyColumn(responses.map((each) => each.given.netWorth), plan.currency);
	return (worth) => require_roundToLimits.roundToStep(worth, step);
}
// ../../packages/charts/src/measure/daysMeasure.ts
/**
* Working days, to the tenth in columns so that the figures shown add up; in whole days where the largest has
* three digits.
*
* @param amounts  Everything that will stand in the column.
*/
function daysMeasure(amounts) {
	let largest = 0;
	for (const amount of amounts) largest = Math.max(largest, Math.abs(amount));
	const decimals = largest < 99.95 ? 1 : 0;
	const least = decimals === 1 ? .05 : .5;
	return {
		amount: (effect) => effect.workingDays,
		what: "date",
		unit: "working days",
		currency: "",
		less: "earlier",
		more: "later",
		least,
		column: (value) => {
			if (Math.abs(value) < least) return "0";
			return `${value < 0 ? "−" : "+"}${require_groupDigits.groupDigits(Math.abs(value), decimals)}`;
		},
		say: (value) => require_formatDays.formatDays(Math.abs(value))
	};
}
// ../../packages/charts/src/measure/errorText.ts
/** A standard error for a table: "exact" where there is none, "under 0.1" where it shows no digit. */
function errorText(error, { column, least }) {
	if (!(error > 0)) return "exact";
	const text = column(error).replace(/^\+/, "");
	return text === "0" ? `under ${column(2 * least).replace(/^\+/, "")}` : text;
}
// ../../packages/charts/src/waterfall/drawWaterfall.ts
var barHeight$1 = 14;
/** Half the width of 95 % limits, in standard errors. */
var limits = 1.96;
/**
* Steps from one value to another, each bar beginning where the one before it ended; the end a step arrives at
* is the one with the thick edge. Below them their sum, from mark to mark.
*/
function drawWaterfall(view, options) {
	const { document } = options;
	const { falls, total, measure } = view;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const names = [...falls.map((fall) => require_program.plainName(fall.name)), total.name];
	const figures = [...falls.map((fall) => fall.value), total.value].map(measure.column);
	const errors = falls.map((fall) => {
		const text = unsigned(measure.column(limits * fall.error));
		return text === "0" ? "" : `± ${text}`;
	});
	const errorWidth = widest$1(errors, 12, false);
	const figureWidth = Math.max(widest$1(figures, 13, true), require_palette.textWidth(measure.unit, 12) - errorWidth);
	const figureRight = width - 2 - (errorWidth > 0 ? errorWidth + 6 : 0);
	const frame = rowFrame(width, {
		names,
		words: falls.map((fall) => fall.word),
		beside: figureWidth + errorWidth + 20,
		share: view.nameShare ?? .32
	});
	const { inline } = frame;
	const left = frame.left + 6;
	const right = inline ? width - 8 : figureRight - figureWidth - 16;
	const scale = fit(falls, total.value, left, right);
	const ends = [scale(0), scale(total.value)];
	const plan = planFlags([view.from, view.to], ends, 2, inline ? width - 2 : right + 8);
	const top = plan.height + (inline ? 24 : 10);
	const at = (row) => top + frame.middle(row);
	const last = falls.length;
	const lastAt = inline ? top + frame.figureAt(last) + 18 : at(last);
	const bottom = lastAt + (inline ? 14 : 18);
	const svg = openSvg(document, width, bottom + 24, colours);
	const { poles, labels } = drawFlags(document, [view.from, view.to], ends, plan, inline ? top - 16 : top, inline ? top - 16 : lastAt, colours);
	const bars = require_fonts.make(document, "g");
	const texts = require_fonts.make(document, "g");
	const heading = {
		x: width - 2,
		y: top - 4,
		"text-anchor": "end",
		fill: colours.inkQuiet
	};
	texts.append(require_fonts.make(document, "text", heading, measure.unit));
	let sum = 0;
	falls.forEach((fall, k) => {
		const [from, to] = [scale(sum), scale(sum + fall.value)];
		sum += fall.value;
		if (!inline && k > 0) bars.append(joint(document, from, at(k - 1), at(k), colours));
		const half = Math.abs(scale(limits * fall.error) - scale(0));
		const told = require_fonts.make(document, "title", {}, `${names[k]}: ${figures[k]} ${errors[k]}`.trimEnd());
		bars.append(require_fonts.make(document, "g", {}, told, ...bar(document, fall, [from, to], half, at(k), colours)));
		texts.append(itemLabel(document, names[k] ?? "", fall.word, frame.label(k, top), colours));
		const y = top + frame.figureAt(k);
		texts.append(figure(document, figures[k] ?? "", figureRight, y));
		if (errors[k]) texts.append(require_fonts.make(document, "text", {
			x: width - 2,
			y,
			"text-anchor": "end",
			fill: colours.inkQuiet
		}, errors[k] ?? ""));
	});
	const y = top + frame.figureAt(last);
	const rule = y - (inline ? 14 : 22.5);
	const line = {
		stroke: colours.inkQuiet,
		y1: rule,
		y2: rule
	};
	texts.append(require_fonts.make(document, "line", {
		...line,
		x1: figureRight - figureWidth,
		x2: width - 2
	}));
	texts.append(require_fonts.make(document, "text", {
		x: inline ? 2 : 0,
		y,
		"font-size": 13,
		"font-weight": 600
	}, total.name));
	texts.append(figure(document, figures[last] ?? "", figureRight, y));
	const span = {
		x1: ends[0],
		x2: ends[1],
		y1: lastAt,
		y2: lastAt
	};
	bars.append(require_fonts.make(document, "line", {
		...span,
		stroke: colours.ink,
		"stroke-width": 1.5
	}));
	bars.append(levelShape(document, view.from.level, ends[0] ?? 0, lastAt, colours));
	bars.append(levelShape(document, view.to.level, ends[1] ?? 0, lastAt, colours));
	if (inline) for (let k = 0; k < last; k++) bars.prepend(...stubs(document, view, ends, at(k), colours));
	const quiet = {
		y: bottom + 14,
		fill: colours.inkQuiet
	};
	texts.append(require_fonts.make(document, "text", {
		...quiet,
		x: left
	}, `← ${measure.less}`));
	texts.append(require_fonts.make(document, "text", {
		...quiet,
		x: right,
		"text-anchor": "end"
	}, `${measure.more} →`));
	svg.append(poles, bars, texts, labels);
	return svg;
}
function widest$1(texts, size, bold) {
	return texts.reduce((most, text) => Math.max(most, Math.ceil(require_palette.textWidth(text, size, bold))), 0);
}
function unsigned(text) {
	return text.replace(/^[+−]/, "");
}
/** Data to px: all places the steps pass, with their whiskers, from `left` to `right`. */
function fit(falls, total, left, right) {
	let [low, high, sum] = [
		Math.min(0, total),
		Math.max(0, total),
		0
	];
	for (const { value, error } of falls) {
		sum += value;
		low = Math.min(low, sum - limits * error);
		high = Math.max(high, sum + limits * error);
	}
	if (!(high > low)) return () => (left + right) / 2;
	return (value) => left + (value - low) / (high - low) * (right - left);
}
/** A step, the 95 % limits of where it arrives (`half` px to either side), and that end as a thick edge. */
function bar(document, fall, [from, to], half, y, colours) {
	const paint = fall.tint === "register" ? {
		fill: colours.register,
		stroke: colours.register
	} : fall.tint === "people" ? {
		fill: colours.paper,
		stroke: colours.ink
	} : {
		fill: colours.rangeCore,
		stroke: colours.rangeEdge
	};
	const box = {
		x: Math.min(from, to),
		y: y - barHeight$1 / 2,
		width: Math.abs(to - from),
		height: barHeight$1
	};
	const edge = {
		x1: to,
		x2: to,
		y1: y - barHeight$1 / 2 - 2,
		y2: y + barHeight$1 / 2 + 2
	};
	return [
		require_fonts.make(document, "rect", {
			...box,
			...paint
		}),
		...half > 0 ? whisker(document, to, half, y, colours) : [],
		require_fonts.make(document, "line", {
			...edge,
			stroke: colours.ink,
			"stroke-width": 2
		})
	];
}
/** From where a step arrives down to where the next begins. */
function joint(document, x, above, y, colours) {
	const ends = {
		x1: x,
		x2: x,
		y1: above + barHeight$1 / 2 + 2,
		y2: y - barHeight$1 / 2
	};
	return require_fonts.make(document, "line", {
		...ends,
		stroke: colours.rangeEdge
	});
}
/** Limits around the end of a step, on a ground that keeps them apart from the bar. */
function whisker(document, x, half, y, colours) {
	const [from, to, up, down] = [
		x - half,
		x + half,
		y - 3.5,
		y + 3.5
	].map(require_fonts.px);
	const line = {
		d: `M${from},${require_fonts.px(y)}H${to}M${from},${up}V${down}M${to},${up}V${down}`,
		fill: "none"
	};
	return [require_fonts.make(document, "path", {
		...line,
		stroke: colours.paper,
		"stroke-width": 3.5
	}), require_fonts.make(document, "path", {
		...line,
		stroke: colours.ink,
		"stroke-width": 1.25
	})];
}
function figure(document, text, x, y) {
	return require_fonts.make(document, "text", {
		x,
		y,
		"text-anchor": "end",
		"font-size": 13,
		"font-weight": 600
	}, text);
}
/** The two marks beside a bar, where names stand between the rows. */
function stubs(document, view, ends, y, colours) {
	return [view.from, view.to].map(({ level }, k) => require_fonts.make(document, "line", {
		x1: ends[k],
		x2: ends[k],
		y1: y - 9,
		y2: y + 9,
		...levelLine(level, colours)
	}));
}
// ../../packages/charts/src/waterfall/largestFalls.ts
/**
* The `most` largest steps, largest first, the rest as one last step, so
* that they still add up. Steps smaller than `least`, which show no digit, are among the rest; where that
* is all the rest is, and it comes to nothing, no step stands for it.
*
* The error of the rest is the root of the sum of squares, as if its parts were independent: of shares that add up to
* a given total one is large where others are small, so the sum of errors would say too much.
*/
function largestFalls(falls, least, most = 14) {
	const ranked = rankFalls(falls);
	const seen = ranked.filter((fall) => Math.abs(fall.value) >= least);
	const kept = seen.length <= most + 1 ? seen : seen.slice(0, most);
	const rest = ranked.filter((fall) => !kept.includes(fall));
	const [only] = rest;
	const value = rest.reduce((sum, each) => sum + each.value, 0);
	if (only === void 0 || kept.length > 0 && kept.length === seen.length && Math.abs(value) < least) return kept;
	if (rest.length === 1) return [...kept, only];
	const smaller = {
		id: "smaller",
		name: `${rest.length} smaller ones`,
		word: "together",
		tint: "range",
		value,
		error: Math.sqrt(rest.reduce((sum, each) => sum + each.error ** 2, 0))
	};
	return [...kept, smaller];
}
/** All steps, largest first, gathered ones last: by size, ties by id, by code unit. */
function rankFalls(falls) {
	return [...falls].sort((a, b) => Number(a.gathered ?? false) - Number(b.gathered ?? false) || Math.abs(b.value) - Math.abs(a.value) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
// ../../packages/charts/src/waterfall/standingFlags.ts
/** The plan as written and the commitment as marks: each with its date or its sum, both sums to the same place. */
function standingFlags({ asWritten, committed, limits }, measure, level) {
	const { cost } = committed;
	const step = limits === void 0 ? void 0 : require_roundToLimits.limitStep(cost, limits.low.money, limits.high.money);
	const words = (standing) => measure.what === "date" || step === void 0 ? standingWords(standing, measure) : require_formatMoney.formatMoney(require_roundToLimits.roundToStep(standing.cost, step), measure.currency);
	return {
		from: {
			level: "asWritten",
			title: "As written",
			detail: words(asWritten)
		},
		to: {
			level: "committed",
			title: "Committed",
			detail: `${words(committed)} · ${level}`
		}
	};
}
/** The date of a standing, or its sum: what its limits support where it has any, else four significant digits. */
function standingWords({ date, cost, costLow, costHigh }, { what, currency }) {
	if (what === "date") return require_formatDate.formatDate(date);
	const rounded = costLow === void 0 || costHigh === void 0 ? require_roundSignificant.roundSignificant(cost, 4) : require_roundToLimits.roundToLimits(cost, costLow, costHigh);
	return require_formatMoney.formatMoney(rounded, currency);
}
// ../../packages/charts/src/moves/movesFigure.ts
/** The figure both charts of what moved have in common; `measure` tells days from money. */
function movesFigure(comparison, measure, options) {
	const { from, to, moves, confidence } = comparison;
	const level = require_formatPercent.formatPercent(confidence);
	const whole = measure.amount(comparison.difference);
	const also = comparison.alsoChanged.length;
	const nothing = also === 0 ? "" : ` ${also === 1 ? "One change" : `${also} changes`} besides moved nothing.`;
	const falls = moves.map((move, k) => ({
		id: String(k).padStart(6, "0"),
		name: move.what,
		word: kindWord(move.kind),
		tint: move.kind === "risks" ? "register" : move.kind === "people" ? "people" : "range",
		value: measure.amount(move),
		error: measure.amount(move.error)
	}));
	const ranked = rankFalls(falls);
	const [before, after] = [standingWords(from, measure), standingWords(to, measure)];
	const limits = falls.some((fall) => fall.error > 0) ? "; ± and whiskers: 95 % limits of the sampled orders" : "";
	const largest = ranked.slice(0, 3).map((fall) => `${require_program.quoteName(fall.name)} ${say$1(fall.value, measure)}`).join("; ");
	return {
		title: finding$5(ranked, whole, measure, after),
		subtitle: `What each group of changes did to the ${level} commitment, in ${measure.unit}, on the same draws, averaged over the orders in which they can be made${limits}`,
		summary: moves.length === 0 ? `Between the two plans nothing moved the commitment: it is ${after} in both.${nothing}` : `A waterfall from the earlier commitment, ${before}, to the present one, ${after}, in ${moves.length === 1 ? "one step" : `${moves.length} steps`} that add up exactly. ${moves.length === 1 ? "" : "Largest: "}${largest}.${nothing}`,
		table: {
			columns: [
				{
					name: "Change",
					align: "start"
				},
				{
					name: "Kind",
					align: "start"
				},
				{
					name: "Moved",
					unit: measure.unit,
					align: "end"
				},
				{
					name: "Standard error",
					unit: measure.unit,
					align: "end"
				},
				{
					name: "In detail",
					align: "start"
				}
			],
			rows: [...ranked.map((fall) => [
				require_program.plainName(fall.name),
				fall.word,
				measure.column(fall.value),
				errorText(fall.error, measure),
				require_program.plainName((moves[Number(fall.id)]?.changes ?? []).join("; "), 600)
			]), [
				"All together",
				"",
				measure.column(whole),
				"",
				""
			]]
		},
		svg: moves.length === 0 ? emptyDrawing("No change between the two plans touches a date or a sum.", options) : drawWaterfall({
			falls: largestFalls(falls, measure.least),
			from: {
				level: "half",
				title: "Before",
				detail: before
			},
			to: {
				level: "committed",
				title: "Now",
				detail: `${after} · ${level}`
			},
			total: {
				name: "All together",
				value: whole
			},
			measure,
			nameShare: .42
		}, options)
	};
}
function kindWord(kind) {
	switch (kind) {
		case "actuals": return "progress";
		case "other": return "";
		default: return kind;
	}
}
function say$1(value, { say: size, less, more, least }) {
	if (Math.abs(value) < least) return "no change";
	return `${size(value)} ${value < 0 ? less : more}`;
}
/** "moves 17 working days earlier", "falls by EUR 19,200". */
function moves(whole, measure) {
	if (measure.what === "date") return `moves ${say$1(whole, measure)}`;
	return `${whole < 0 ? "falls" : "rises"} by ${measure.say(whole)}`;
}
function finding$5(ranked, whole, measure, after) {
	const { least, what } = measure;
	const real = ranked.filter((fall) => Math.abs(fall.value) >= least);
	const first = real[0];
	const moved = Math.abs(whole) < least ? `The committed ${what} stays ${after}` : `The committed ${what} ${moves(whole, measure)}, to ${after}`;
	if (first === void 0) return Math.abs(whole) < least ? `${moved}: nothing moved it` : moved;
	const name = `“${require_program.plainName(first.name.split(": ")[0] ?? "", 44)}”`;
	if (real.length === 1) return `${moved}: ${name}`;
	if (Math.abs(whole) < least) return `${moved}: changes cancel out, the largest ${name}, ${say$1(first.value, measure)}`;
	return `${moved}, most by ${name}, ${first.value < 0 === whole < 0 ? measure.say(first.value) : say$1(first.value, measure)}`;
}
// ../../packages/charts/src/movesDays.ts
/**
* What moved the committed date between two plans: a waterfall from the earlier date to the present one, in
* working days, the largest fourteen groups of changes and the rest as one.
*
* Reads `moves`, `from`, `to`, `difference`.
*/
function movesDays(comparison, options) {
	return movesFigure(comparison, daysMeasure([comparison.difference, ...comparison.moves].map((each) => each.workingDays)), options);
}
// ../../packages/charts/src/measure/moneyMeasure.ts
/**
* Money, all on the same place, so that the figures shown add up as nearly as they can.
*
* @param amounts  Everything that will stand in the column.
*/
function moneyMeasure(amounts, currency) {
	const { unit, step, text } = moneyColumn(amounts, currency);
	return {
		amount: (effect) => effect.money,
		what: "sum",
		unit,
		currency,
		less: "cheaper",
		more: "dearer",
		least: step / 2,
		column: (value) => text(value, true),
		say: (value) => {
			const size = Math.abs(value);
			return require_formatMoney.formatMoney(size < step / 2 ? 0 : require_roundSignificant.roundSignificant(size, size >= step * 10 ? 3 : 2), currency);
		}
	};
}
// ../../packages/charts/src/movesMoney.ts
/**
* What moved the committed sum between two plans: as `movesDays`, in money.
*
* Reads `moves`, `from`, `to`, `difference`, `plan.currency`.
*/
function movesMoney(comparison, options) {
	return movesFigure(comparison, moneyMeasure([comparison.difference, ...comparison.moves].map((each) => each.money), comparison.plan.currency), options);
}
// ../../packages/charts/src/ranges/drawRanges.ts
var TOP = 40;
/**
* A bar from low to high per row, a tick at the likely value, a dot at what happened: filled inside the bar, a ring
* outside. Values on one axis for all rows.
*/
function drawRanges(rows, axis, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const text = Math.max(0, ...rows.map((row) => require_palette.textWidth(row.text, 13) + 12));
	const frame = rowFrame(width, {
		names: rows.map(({ name }) => name),
		words: rows.map(({ word }) => word),
		beside: text
	});
	const right = frame.inline ? width - 10 : width - text - 10;
	const values = rows.flatMap(({ low, high, actual }) => [
		low,
		high,
		...actual === void 0 ? [] : [actual]
	]);
	const most = Math.max(...values, axis.at?.value ?? 0);
	const least = Math.min(0, ...values);
	const span = most - least || 1;
	const left = frame.left + 8;
	const x = (value) => left + (value - least) / span * (right - left);
	const bottom = TOP + frame.height;
	const svg = openSvg(document, width, bottom + 6, colours);
	const put = (node) => svg.append(node);
	const line = (x1, y1, y2, more) => put(require_fonts.make(document, "line", {
		x1,
		x2: x1,
		y1,
		y2,
		...more
	}));
	put(require_fonts.make(document, "text", {
		x: left,
		y: 12,
		fill: colours.inkQuiet
	}, axis.name));
	const ticks = roundTicks(least, most, Math.max(2, (right - left) / 90));
	tickLabels(ticks).forEach((label, k) => {
		const at = x(ticks[k] ?? 0);
		put(require_fonts.make(document, "text", {
			x: at,
			y: 28,
			"text-anchor": "middle",
			fill: colours.inkQuiet
		}, label));
		line(at, 32, 36, { stroke: colours.inkQuiet });
	});
	if (axis.at !== void 0) {
		const at = x(axis.at.value);
		const drawn = {
			stroke: colours.asWritten,
			"stroke-dasharray": "4 3"
		};
		if (!frame.inline) line(at, 36, bottom, drawn);
		else for (const k of rows.keys()) line(at, TOP + frame.middle(k) - 9, TOP + frame.middle(k) + 9, drawn);
		const anchor = at > width - 80 ? "end" : "start";
		const place = {
			x: at + (anchor === "end" ? -4 : 4),
			y: bottom + 9,
			"text-anchor": anchor
		};
		put(require_fonts.make(document, "text", {
			...place,
			fill: colours.asWritten
		}, axis.at.name));
		svg.setAttribute("height", String(bottom + 16));
		svg.setAttribute("viewBox", `0 0 ${width} ${bottom + 16}`);
	}
	rows.forEach((row, k) => {
		put(itemLabel(document, row.name, row.word, frame.label(k, TOP), colours));
		const y = TOP + frame.middle(k);
		const fill = row.strong === true ? colours.committed : colours.rangeCore;
		const bar = {
			x: x(row.low),
			y: y - 6,
			width: Math.max(1, x(row.high) - x(row.low)),
			height: 12
		};
		put(require_fonts.make(document, "rect", {
			...bar,
			fill,
			stroke: row.strong === true ? fill : colours.rangeEdge
		}));
		const tick = row.strong === true ? colours.paper : colours.ink;
		line(x(row.likely), y - 6, y + 6, {
			stroke: tick,
			"stroke-width": 2
		});
		if (row.actual !== void 0) {
			const inside = row.actual >= row.low && row.actual <= row.high;
			const dot = {
				cx: x(row.actual),
				cy: y,
				r: 5,
				stroke: colours.ink,
				"stroke-width": 2
			};
			put(require_fonts.make(document, "circle", {
				...dot,
				fill: inside ? colours.ink : colours.paper
			}));
		}
		const foot = {
			x: width - 2,
			y: TOP + frame.figureAt(k),
			"text-anchor": "end",
			"font-size": 13
		};
		put(require_fonts.make(document, "text", {
			...foot,
			...row.strong === true && { "font-weight": 600 }
		}, row.text));
	});
	return svg;
}
// ../../packages/charts/src/opinionsBars.ts
var ENDS = {
	extremes: "least and most",
	"p10-p90": "one in ten at each end",
	"p5-p95": "one in twenty at each end"
};
/** What each person said of one task, and what it comes to. Reads a pooling and nothing else. */
function opinionsBars(pooling, about, options) {
	const { voices, disagreement } = pooling;
	const { task, unitWords, name } = about;
	const { apart, farOut, level, common } = disagreement;
	const [pair] = apart;
	const [out] = farOut;
	const who = (id) => require_program.plainName(name(id), 40);
	const title = out !== void 0 ? `${who(out.by)} stands alone on ${require_program.quoteName(task)}` : pair !== void 0 ? `${who(pair[0])} and ${who(pair[1])} have no value in common on ${require_program.quoteName(task)}` : level === "one" ? `${who(voices[0]?.by ?? "")} alone has spoken of ${require_program.quoteName(task)}` : level === "agree" ? `They agree on ${require_program.quoteName(task)}` : `They differ on ${require_program.quoteName(task)}, with values in common`;
	const row = (label, three, strong) => ({
		name: label,
		word: "",
		...three,
		text: [
			three.low,
			three.likely,
			three.high
		].map(short).join(" · "),
		strong
	});
	const { low, likely, high } = pooling;
	const rows = [...voices.map((voice) => row(who(voice.by), voice, false)), ...voices.length > 1 ? [row("Pooled", {
		low,
		likely,
		high
	}, true)] : []];
	const shared = common === void 0 ? "No value is possible to all." : `Possible to all: ${short(common.low)} to ${short(common.high)}.`;
	return {
		title,
		subtitle: `Bars: ${ENDS[pooling.bounds]}; tick: likely; in ${unitWords}. Pooled: the average, everybody weighing the same`,
		summary: `${rows.map((each) => `${each.name}: ${each.text}`).join("; ")} ${unitWords}. ${shared}`,
		table: {
			columns: [
				{
					name: "Who",
					align: "start"
				},
				{
					name: "Low",
					unit: unitWords,
					align: "end"
				},
				{
					name: "Likely",
					unit: unitWords,
					align: "end"
				},
				{
					name: "High",
					unit: unitWords,
					align: "end"
				}
			],
			rows: rows.map((each) => [
				each.name,
				short(each.low),
				short(each.likely),
				short(each.high)
			])
		},
		svg: drawRanges(rows, { name: unitWords.replace(/^./, (letter) => letter.toUpperCase()) }, options)
	};
}
function short(value) {
	return String(Number(value.toPrecision(Math.abs(value) >= 100 ? 4 : 3))).replace("-", "−");
}
// ../../packages/charts/src/paths/flow.ts
/**
* Places pieces one after another on lines of at most `width` px, like words; a piece wider than a line is cut.
*
* @param most  No more lines than this: where there are more pieces, "… and n more" ends the last line.
*/
function flow(pieces, width, size, most) {
	const space = require_palette.textWidth(" ", size) + 1;
	const placed = [];
	let [x, line] = [0, 0];
	for (const [k, piece] of pieces.entries()) {
		const rest = pieces.length - k;
		const last = line === most - 1;
		const more = last && rest > 1 ? require_palette.textWidth(`… and ${rest} more`, size) + space : 0;
		const text = require_fonts.fitText(piece.text, width, size, piece.bold);
		const wide = require_palette.textWidth(text, size, piece.bold);
		if (x > 0 && x + wide + more > width) {
			if (last) {
				placed.push({
					text: `… and ${rest} more`,
					bold: false,
					x,
					line
				});
				break;
			}
			line++;
			x = 0;
		}
		placed.push({
			text,
			bold: piece.bold,
			x,
			line
		});
		x += wide + space;
	}
	return {
		placed,
		lines: placed.length === 0 ? 0 : line + 1
	};
}
// ../../packages/charts/src/paths/drawPaths.ts
var size = 13;
var lineHeight = 18;
/**
* Each path as a bar of its share and, beneath, its tasks in order; from the second on, tasks that the first does not
* pass are bold and those it does are quiet. `rest` is a line at the end, or "".
*/
function drawPaths(paths, rest, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const [first] = paths;
	const usual = new Set(first?.tasks);
	const most = paths.reduce((largest, path) => Math.max(largest, path.share), 0);
	const barRoom = Math.min(width * .55, 420);
	const indent = 2;
	let y = 4;
	const marks = require_fonts.make(document, "g");
	const texts = require_fonts.make(document, "g");
	for (const path of paths) {
		const long = most > 0 ? path.share / most * barRoom : 0;
		const bar = {
			x: indent,
			y,
			width: Math.max(1, long),
			height: 14
		};
		marks.append(require_fonts.make(document, "rect", {
			...bar,
			fill: colours.rangeCore,
			stroke: colours.rangeEdge
		}));
		const label = {
			x: indent + Math.max(1, long) + 8,
			y: y + 11.5,
			"font-size": 13,
			"font-weight": 600
		};
		texts.append(require_fonts.make(document, "text", label, require_formatPercent.formatPercent(path.share)));
		y += 14;
		const { placed, lines } = flow(pieces(path, usual), width - 4, size, 8);
		for (const { text, bold, x, line } of placed) {
			const at = {
				x: indent + x,
				y: y + 17 + line * lineHeight,
				"font-size": size
			};
			const type = bold ? { "font-weight": 600 } : { fill: path === first ? colours.ink : colours.inkQuiet };
			texts.append(require_fonts.make(document, "text", {
				...at,
				...type
			}, text));
		}
		y += lines * lineHeight + 22;
	}
	const svg = openSvg(document, width, y + (rest === "" ? 0 : 16), colours);
	if (rest !== "") texts.append(require_fonts.make(document, "text", {
		x: indent,
		y: y + 6,
		fill: colours.inkQuiet
	}, rest));
	svg.append(marks, texts);
	return svg;
}
/** Names with arrows after all but the last; where a task waited for a person, whom. */
function pieces(path, usual) {
	return path.tasks.map((id, k) => {
		const next = path.ways[k + 1];
		const person = next?.kind === "person" && next.person !== void 0 ? ` (${require_program.plainName(next.person.name, 40)})` : "";
		const arrow = k === path.tasks.length - 1 ? "" : `${person} →`;
		return {
			text: `${require_program.plainName(path.names[k] ?? id)}${arrow}`,
			bold: !usual.has(id)
		};
	});
}
// ../../packages/charts/src/pathBars.ts
/**
* The chains of tasks that set the finish most often, each with its share of the futures; tasks that are not
* on the most frequent one stand out.
*
* Reads `paths`, `different`.
*/
function pathBars(answer, options) {
	const { paths, different, stamp } = answer;
	const title = finding$4(paths);
	const others = different - paths.length;
	const left = Math.max(0, 1 - paths.reduce((sum, path) => sum + path.share, 0));
	const rest = others <= 0 ? "" : `${others === 1 ? "One other path sets" : `${require_groupDigits.groupDigits(others)} other paths set`} it in the rest of futures, ${require_formatPercent.formatPercent(left)}`;
	const [first] = paths;
	const chain = first === void 0 ? "" : first.names.map((name) => require_program.plainName(name, 60)).join(", ");
	const people = paths.some((path) => path.ways.some((way) => way.kind === "person"));
	return {
		title,
		subtitle: `Chains of tasks that set the finish, with the share of ${require_groupDigits.groupDigits(stamp.iterations)} futures in which they did${paths.length > 1 ? "; bold: not on the first" : ""}${people ? "; in brackets: who was waited for" : ""}`,
		summary: first === void 0 ? "No task sets the finish of this plan." : `${paths.length === 1 ? "One path" : `The ${paths.length} most frequent paths`}. The first, in ${require_formatPercent.formatPercent(first.share)} of the futures: ${chain}. ${rest === "" ? "No other path sets the finish" : rest}.`,
		table: {
			columns: [
				{
					name: "Path",
					align: "end"
				},
				{
					name: "Share of futures",
					align: "end"
				},
				{
					name: "Tasks, in order",
					align: "start"
				}
			],
			rows: paths.map((path, k) => [
				String(k + 1),
				require_formatPercent.formatPercent(path.share),
				path.names.map((name) => require_program.plainName(name)).join(" → ")
			])
		},
		svg: paths.length === 0 ? emptyDrawing("The plan has no task that could set its finish.", options) : drawPaths(paths, rest, options)
	};
}
function finding$4(paths) {
	const [first, second] = paths;
	if (first === void 0) return "No path sets the finish";
	const often = first.share >= 1 ? "every future" : `${require_formatPercent.formatPercent(first.share)} of futures`;
	if (second === void 0) return `One path sets the finish in ${often}`;
	const own = first.tasks.findIndex((id) => !second.tasks.includes(id));
	const over = own < 0 ? "One path" : `The path over ${require_program.quoteName(first.names[own] ?? "")}`;
	const all = paths.reduce((sum, path) => sum + path.share, 0);
	return `${over} sets the finish most often, in ${often}; the first ${paths.length} together in ${require_formatPercent.formatPercent(Math.min(1, all))}`;
}
// ../../packages/charts/src/people/drawWeeks.ts
var barHeight = 40;
/**
* A strip for each person: what each week asks of them as a bar, dark where it is more than there is and open where it
* falls into an absence; the capacity present as a stepped line, and a tick at the load that 80 % of the futures stay
* within.
*/
function drawWeeks(view, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const inline = width < 560;
	const names = view.people.map((person) => require_program.plainName(person.name));
	const words = view.people.map((person) => person.role === void 0 ? "" : require_program.plainName(person.role, 40));
	const figureWidth = [...view.figures, view.heading].reduce((most, text) => Math.max(most, require_palette.textWidth(text, 13, true)), 0);
	const widest = names.reduce((most, name, k) => Math.max(most, require_palette.textWidth(name, 13), require_palette.textWidth(words[k] ?? "", 12)), 60);
	const nameWidth = inline ? width - figureWidth - 16 : Math.min(width * .26, widest + 4);
	const left = inline ? 4 : nameWidth + 16;
	const right = inline ? width - 12 : width - figureWidth - 16;
	const rowHeight = inline ? 70 : 52;
	const top = 24;
	const base = (row) => top + (row + 1) * rowHeight - 4;
	const bottom = top + view.people.length * rowHeight + 6;
	const svg = openSvg(document, width, bottom + (view.rest === "" ? 50 : 72), colours);
	const [from, to] = [view.weeks[0] ?? 0, (view.weeks[view.weeks.length - 1] ?? 0) + 7];
	const x = (day) => left + (day - from) / (to - from) * (right - left);
	const texts = require_fonts.make(document, "g");
	const head = {
		x: width - 2,
		y: 12,
		"text-anchor": "end",
		fill: colours.inkQuiet
	};
	texts.append(require_fonts.make(document, "text", head, view.heading));
	const strips = require_fonts.make(document, "g");
	view.people.forEach((person, row) => {
		const y = base(row);
		const nameY = inline ? y - barHeight - 9 : y - barHeight / 2;
		const place = {
			x: inline ? 2 : 0,
			y: nameY,
			width: nameWidth,
			inline
		};
		texts.append(itemLabel(document, names[row] ?? "", words[row] ?? "", place, colours));
		const figure = {
			x: width - 2,
			y: inline ? nameY : nameY + 4.5,
			"text-anchor": "end"
		};
		texts.append(require_fonts.make(document, "text", {
			...figure,
			"font-size": 13,
			"font-weight": 600
		}, view.figures[row] ?? ""));
		strips.append(...strip(document, person, view.weeks, x, y, colours));
	});
	const ticks = require_arrangeDots.calendarTicks(view.start, from, to, Math.floor((right - left) / 62));
	svg.append(strips, calendarAxis(document, ticks, x, bottom, left, right, colours));
	if (view.rest !== "") texts.append(require_fonts.make(document, "text", {
		x: 2,
		y: bottom + 66,
		fill: colours.inkQuiet
	}, view.rest));
	svg.append(texts);
	return svg;
}
/** Each strip has a scale of its own: a person of two days a week is as readable as one of five. */
function strip(document, person, weeks, x, base, colours) {
	const { unlimited, present, p80 } = person;
	let most = 1e-9;
	weeks.forEach((_, k) => {
		most = Math.max(most, unlimited.asked[k] ?? 0, present[k] ?? 0, p80[k] ?? 0);
	});
	const y = (days) => base - days / most * barHeight;
	const parts = [];
	const line = [];
	const ticks = require_fonts.make(document, "g", {
		stroke: colours.ink,
		"stroke-width": 1.5
	});
	weeks.forEach((day, k) => {
		const [a, b] = [x(day), x(day + 7)];
		const asked = unlimited.asked[k] ?? 0;
		const over = Math.min(asked, unlimited.over[k] ?? 0);
		const wide = Math.max(.6, b - a - (b - a > 4 ? 1 : 0));
		const bar = (low, high, paint) => {
			if (high - low < most * 1e-6) return;
			parts.push(require_fonts.make(document, "rect", {
				x: a,
				y: y(high),
				width: wide,
				height: y(low) - y(high),
				"stroke-width": .75,
				...paint
			}));
		};
		const there = Math.min(asked - over, present[k] ?? 0);
		bar(0, there, {
			fill: colours.rangeCore,
			stroke: colours.rangeEdge
		});
		bar(there, asked - over, {
			fill: colours.paper,
			stroke: colours.ink
		});
		bar(asked - over, asked, {
			fill: colours.ink,
			stroke: colours.ink
		});
		const level = require_fonts.px(y(present[k] ?? 0));
		line.push(`${line.length === 0 ? "M" : "L"}${require_fonts.px(a)},${level}`, `L${require_fonts.px(b)},${level}`);
		const load = p80[k] ?? 0;
		if (load > most * 1e-6) ticks.append(require_fonts.make(document, "line", {
			x1: a + wide * .15,
			x2: a + wide * .85,
			y1: y(load),
			y2: y(load)
		}));
	});
	const d = line.join("");
	parts.push(require_fonts.make(document, "path", {
		d,
		fill: "none",
		stroke: colours.paper,
		"stroke-width": 3.5
	}), require_fonts.make(document, "path", {
		d,
		fill: "none",
		stroke: colours.ink,
		"stroke-width": 1.5
	}), ticks, require_fonts.make(document, "line", {
		x1: x(weeks[0] ?? 0),
		x2: x((weeks[weeks.length - 1] ?? 0) + 7),
		y1: base,
		y2: base,
		stroke: colours.rangeEdge
	}));
	return parts;
}
// ../../packages/charts/src/peopleWeeks.ts
var most$2 = 12;
/** Less of a day than this is no overload. */
var least = .05;
/**
* People's load week by week against the capacity present: what the plan as written asks of them when nobody waits,
* dark where that is more than there is, and the load that 80 % of the futures stay within. The twelve most
* overloaded.
*
* Reads `people`, `weeks`, `respectCapacity`, `plan.start`.
*/
function peopleWeeks(answer, options) {
	const { plan, respectCapacity } = answer;
	const people = answer.people.filter((person) => total(person.unlimited.asked) > 0).sort(heavier);
	const shown = people.length <= 13 ? people : people.slice(0, most$2);
	const rest = people.length - shown.length;
	const last = lastWeek(answer);
	const weeks = answer.weeks.slice(0, last + 1).map((monday) => (require_arrangeDots.isoToMs(monday) - require_arrangeDots.isoToMs(plan.start)) / require_arrangeDots.dayMs);
	const away = people.some(({ unlimited, present }) => unlimited.asked.some((days, k) => days - (unlimited.over[k] ?? 0) > (present[k] ?? 0) + least));
	const title = finding$3(people, answer);
	const worst = people.filter((person) => weeksOver(person) > 0).slice(0, 3);
	return {
		title,
		subtitle: `Days asked of each person, week by week, ${respectCapacity ? "were nobody to wait" : "as written"}; full: more than there is${away ? "; open: while away" : ""}. Line: capacity present; ticks: the load 80 % of futures stay within`,
		summary: people.length === 0 ? "No task of this plan names a person." : `Weekly load of ${people.length === 1 ? "one person" : `${people.length} people`}. ${worst.length === 0 ? "In no week is anybody asked for more than there is." : `Most overloaded: ${worst.map((person) => `${require_program.quoteName(person.name)}, ${weeksWord(weeksOver(person))}, ${require_formatDays.formatDays(total(person.unlimited.over), "day")} too many`).join("; ")}.`}${respectCapacity ? " The plan lets tasks wait for people, so what is too much is done later." : ""}`,
		table: {
			columns: [
				{
					name: "Person",
					align: "start"
				},
				{
					name: "Role",
					align: "start"
				},
				{
					name: "Asked in all",
					unit: "days",
					align: "end"
				},
				{
					name: "Weeks over capacity",
					align: "end"
				},
				{
					name: "Too much in all",
					unit: "days",
					align: "end"
				},
				{
					name: "Worst week",
					align: "end"
				},
				{
					name: "Asked in it",
					unit: "days",
					align: "end"
				},
				{
					name: "Too many in it",
					unit: "days",
					align: "end"
				},
				{
					name: "Present in it",
					unit: "days",
					align: "end"
				}
			],
			rows: people.map((person) => {
				const week = worstWeek(person);
				return [
					require_program.plainName(person.name),
					person.role === void 0 ? "" : require_program.plainName(person.role),
					require_columnDays.columnDays(total(person.unlimited.asked)),
					require_groupDigits.groupDigits(weeksOver(person)),
					require_columnDays.columnDays(total(person.unlimited.over)),
					require_formatDate.formatDate(answer.weeks[week] ?? ""),
					require_columnDays.columnDays(person.unlimited.asked[week] ?? 0),
					require_columnDays.columnDays(person.unlimited.over[week] ?? 0),
					require_columnDays.columnDays(person.present[week] ?? 0)
				];
			})
		},
		svg: people.length === 0 || weeks.length === 0 ? emptyDrawing("No task of this plan names a person.", options) : drawWeeks({
			start: plan.start,
			weeks,
			people: shown,
			figures: shown.map((person) => {
				const over = weeksOver(person);
				return over === 0 ? "none" : weeksWord(over);
			}),
			heading: "over capacity",
			rest: rest === 0 ? "" : `and ${rest} more, none asked for more days too many`
		}, options)
	};
}
function total(days) {
	return days.reduce((sum, each) => sum + each, 0);
}
function weeksOver(person) {
	return person.unlimited.over.filter((days) => days >= least).length;
}
function weeksWord(count) {
	return count === 1 ? "1 week" : `${count} weeks`;
}
/** The week asked for most beyond what there is; where there is none, the one asked for most. */
function worstWeek({ unlimited }) {
	const measure = unlimited.over.some((days) => days >= least) ? unlimited.over : unlimited.asked;
	let worst = 0;
	measure.forEach((days, k) => {
		if (days > (measure[worst] ?? 0)) worst = k;
	});
	return worst;
}
/** Most days too many first, then most days asked, then by id, by code unit. */
function heavier(a, b) {
	return total(b.unlimited.over) - total(a.unlimited.over) || total(b.unlimited.asked) - total(a.unlimited.asked) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}
/** The last week in which anybody has anything to do, in the plan or in 80 % of the futures. */
function lastWeek({ people, weeks }) {
	for (let k = weeks.length - 1; k > 0; k--) if (people.some((person) => (person.unlimited.asked[k] ?? 0) > 1e-6 || (person.p80[k] ?? 0) > 1e-6)) return k;
	return 0;
}
function finding$3(people, answer) {
	const [first] = people;
	if (first === void 0) return "No task names a person";
	const week = worstWeek(first);
	const asked = `${require_formatDays.formatDays(first.unlimited.asked[week] ?? 0, "day")}, ${require_columnDays.columnDays(first.unlimited.over[week] ?? 0)} too many`;
	const monday = require_formatDate.formatDate(answer.weeks[week] ?? "");
	const over = weeksOver(first);
	if (over === 0) return "Nobody is asked for more than there is of them";
	const others = people.filter((person) => weeksOver(person) > 0).length - 1;
	const more = others === 0 ? "" : `; ${others === 1 ? "one other is" : `${others} others are`} overloaded too`;
	return `${require_program.quoteName(first.name)} is asked for too much in ${weeksWord(over)}, most from ${monday}: ${asked}${more}`;
}
// ../../packages/charts/src/bars/drawBarPanels.ts
var gap$1 = 7;
var between = 22;
/**
* Bars for each row in several panels side by side, each panel from its own nought; names beside them or, in a narrow
* drawing, above. `rest` is a line beneath: what is left out, or "".
*/
function drawBarPanels(rows, headings, rest, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const names = rows.map((row) => require_program.plainName(row.name));
	const frame = rowFrame(width, {
		names,
		words: rows.map((row) => row.word)
	});
	const lines = headings.map(({ name, unit }) => frame.inline ? [name, unit] : [`${name}, ${unit}`]);
	const top = frame.inline ? 40 : 28;
	const bottom = top + frame.height;
	const svg = openSvg(document, width, bottom + (rest === "" ? 6 : 28), colours);
	rows.forEach((row, k) => {
		svg.append(itemLabel(document, names[k] ?? "", row.word, frame.label(k, top), colours));
	});
	const needs = lines.map((words, p) => labelRoom(rows, p, words));
	const spare = width - 2 - frame.left - between * (headings.length - 1) - needs.reduce((a, b) => a + b, 0);
	let from = frame.left;
	lines.forEach((words, p) => {
		const to = from + (needs[p] ?? 0) + Math.max(0, spare / headings.length);
		svg.append(panel(words, p, from, Math.min(width - 2, to)));
		from = to + between;
	});
	if (rest !== "") svg.append(require_fonts.make(document, "text", {
		x: frame.inline ? 2 : 0,
		y: bottom + 18,
		fill: colours.inkQuiet
	}, rest));
	return svg;
	function panel(words, p, left, right) {
		const group = require_fonts.make(document, "g");
		const scale = fitScale(rows.map((row) => {
			const { value, text } = row.bars[p] ?? {
				value: 0,
				text: ""
			};
			const label = require_palette.textWidth(text, 13, true) + gap$1;
			const [before, after] = value < 0 ? [label, 1] : [1, label];
			return {
				from: Math.min(0, value),
				to: Math.max(0, value),
				before,
				after
			};
		}), left, right);
		const zero = scale(0);
		const wide = widest(words);
		const at = Math.max(left, Math.min(zero, right - wide));
		words.forEach((line, k) => {
			group.append(require_fonts.make(document, "text", {
				x: at,
				y: 14 + k * 14,
				fill: colours.inkQuiet
			}, line));
		});
		const axis = {
			x1: zero,
			x2: zero,
			stroke: colours.ink
		};
		if (!frame.inline) group.append(require_fonts.make(document, "line", {
			...axis,
			y1: top - 6,
			y2: bottom
		}));
		rows.forEach((row, k) => {
			const { value, text } = row.bars[p] ?? {
				value: 0,
				text: ""
			};
			const y = top + frame.middle(k);
			const x = scale(value);
			const bar = {
				x: Math.min(zero, x),
				y: y - 7,
				width: Math.abs(x - zero),
				height: 14
			};
			if (value !== 0) group.append(require_fonts.make(document, "rect", {
				...bar,
				...row.paint
			}));
			if (frame.inline) group.append(require_fonts.make(document, "line", {
				...axis,
				y1: y - 9,
				y2: y + 9
			}));
			group.append(endLabel$1(document, text, x, y, value < 0, colours));
		});
		return group;
	}
}
function endLabel$1(document, text, x, y, left, colours) {
	const at = {
		x: x + (left ? -7 : gap$1),
		y: y + 4.5,
		"text-anchor": left ? "end" : "start"
	};
	return require_fonts.make(document, "text", {
		...at,
		"font-size": 13,
		"font-weight": 600,
		fill: colours.ink
	}, text);
}
/** Px the labels of a panel need, before its bars and after them, and its heading. */
function labelRoom(rows, p, words) {
	let [before, after] = [1, 1];
	for (const row of rows) {
		const { value, text } = row.bars[p] ?? {
			value: 0,
			text: ""
		};
		const label = require_palette.textWidth(text, 13, true) + gap$1;
		if (value < 0) before = Math.max(before, label);
		else after = Math.max(after, label);
	}
	return Math.max(before + after, widest(words));
}
function widest(words) {
	return words.reduce((most, line) => Math.max(most, require_palette.textWidth(line, 12)), 0);
}
// ../../packages/charts/src/responseWorth.ts
var most$1 = 12;
/**
* What each response costs, the working days it buys at the committed level and what it is worth net, given the
* adopted ones; adopted ones are filled in the colour of the commitment. The twelve worth most.
*
* Reads `responses`, `confidence`, `asked`, `plan.currency`.
*/
function responseWorth(answer, options) {
	const { confidence, asked } = answer;
	const { currency } = answer.plan;
	const colours = require_palette.palette(options.theme);
	const level = require_formatPercent.formatPercent(confidence);
	const responses = rank(answer.responses);
	const costs = moneyColumn(responses.map((each) => each.cost), currency);
	const nets = moneyColumn(responses.map((each) => each.given.netWorth), currency);
	const shown = responses.length <= 13 ? responses : responses.slice(0, most$1);
	const rest = responses.length - shown.length;
	const anyChance = asked.finishBy !== void 0;
	const anyLateness = responses.some((each) => each.given.latenessAvoided !== void 0);
	const round = worthRounding(answer);
	return {
		title: finding$2(responses, currency, round),
		subtitle: `What each response costs on average, the working days it buys at ${level}, and its worth: money saved less its cost${anyLateness ? ", lateness priced in" : ""}. Each with the adopted ones as they are; full bars: adopted`,
		summary: responses.length === 0 ? "The plan names no response to a risk or an assumption." : `${responses.length === 1 ? "One response" : `${responses.length} responses`}, ${responses.filter((each) => each.adopted).length} adopted, in the order of their worth: ${responses.slice(0, 4).map((each) => say(each, currency, round)).join("; ")}.`,
		table: {
			columns: [
				{
					name: "Response",
					align: "start"
				},
				{
					name: "Answers",
					align: "start"
				},
				{
					name: "Adopted",
					align: "start"
				},
				{
					name: "Costs",
					unit: costs.unit,
					align: "end"
				},
				{
					name: "Buys",
					unit: "working days",
					align: "end"
				},
				{
					name: "Buys alone",
					unit: "working days",
					align: "end"
				},
				...anyChance ? [{
					name: `Chance of ${require_formatDate.formatDate(asked.finishBy ?? "")}`,
					unit: "points",
					align: "end"
				}] : [],
				...anyLateness ? [{
					name: "Lateness avoided",
					unit: currency,
					align: "end"
				}] : [],
				{
					name: "Net worth",
					unit: nets.unit,
					align: "end"
				},
				{
					name: "Net worth alone",
					unit: nets.unit,
					align: "end"
				}
			],
			rows: responses.map((each) => [
				require_program.plainName(each.action),
				require_program.plainName(each.entry.name),
				each.adopted ? "yes" : "no",
				costs.text(each.cost),
				require_columnDays.columnDays(-each.given.workingDays),
				require_columnDays.columnDays(-each.alone.workingDays),
				...anyChance ? [points(each.given.finishBy)] : [],
				...anyLateness ? [lateness(each.given.latenessAvoided)] : [],
				nets.text(each.given.netWorth, true),
				nets.text(each.alone.netWorth, true)
			])
		},
		svg: responses.length === 0 ? emptyDrawing("The plan names no response to a risk or an assumption.", options) : drawBarPanels(shown.map((each) => ({
			name: each.action,
			word: each.adopted ? "adopted" : "",
			paint: each.adopted ? {
				fill: colours.committed,
				stroke: colours.committed
			} : {
				fill: colours.paper,
				stroke: colours.ink,
				"stroke-width": 1.25
			},
			bars: [
				{
					value: each.cost,
					text: costs.text(each.cost)
				},
				{
					value: seen(-each.given.workingDays),
					text: require_columnDays.columnDays(-each.given.workingDays)
				},
				{
					value: each.given.netWorth,
					text: nets.text(each.given.netWorth, true)
				}
			]
		})), [
			{
				name: "Costs",
				unit: costs.unit
			},
			{
				name: "Buys",
				unit: "working days"
			},
			{
				name: "Net worth",
				unit: nets.unit
			}
		], rest === 0 ? "" : `and ${rest} more, none worth more than those above`, options)
	};
}
/** Worth most first, given the adopted ones; ties by id, by code unit. */
function rank(responses) {
	return [...responses].sort((a, b) => b.given.netWorth - a.given.netWorth || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}
/** Nought where no digit would show it. */
function seen(days) {
	return require_columnDays.columnDays(days) === "0" ? 0 : days;
}
function points(change) {
	if (change === void 0) return "";
	const rounded = Math.round(change * 100);
	return `${rounded > 0 ? "+" : ""}${require_groupDigits.groupDigits(rounded)}`;
}
function lateness(value) {
	return value === void 0 ? "" : require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(value, 2), "");
}
function finding$2(ranked, currency, round) {
	const [best] = ranked;
	if (best === void 0) return "The plan names no responses";
	const worth = round(best.given.netWorth);
	if (worth > 0) return `${ranked.length === 1 ? `${require_program.quoteName(best.action)} is worth its cost` : `${require_program.quoteName(best.action)} is worth most`}: ${bought(best, currency)}, ${require_formatMoney.formatMoney(worth, currency)} net`;
	return ranked.length === 1 ? `${require_program.quoteName(best.action)} is not worth its cost: ${bought(best, currency)}` : `No response is worth its cost; nearest comes ${require_program.quoteName(best.action)}: ${bought(best, currency)}`;
}
/** "EUR 2,000 buys 4 working days". */
function bought({ cost, given }, currency) {
	const price = require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(cost, 2), currency);
	const days = seen(-given.workingDays);
	if (days === 0) return `${price} buys no day`;
	return days > 0 ? `${price} buys ${require_formatDays.formatDays(days)}` : `${price} loses ${require_formatDays.formatDays(-days)}`;
}
function say(response, currency, round) {
	const net = require_formatMoney.formatMoney(round(response.given.netWorth), currency);
	return `${require_program.quoteName(response.action)}${response.adopted ? " (adopted)" : ""}: ${bought(response, currency)}, ${net} net`;
}
// ../../packages/charts/src/scorecardBars.ts
/** More rows cannot be read in one picture; the table beneath has them all. */
var MOST = 40;
/**
* Finished tasks: the range that was said and what happened, each as a multiple of its likely value, the furthest over
* first. Reads `entries` of time and `overall`.
*/
function scorecardBars(card, options) {
	const entries = [...card.entries.filter(({ of, likely }) => of === "duration" && likely > 0)].sort((a, b) => b.actual / b.likely - a.actual / a.likely);
	const subtitle = "Bar: one in ten below to one in ten above; tick: likely; dot: what happened, a ring where outside; times the likely value";
	const table = {
		columns: [
			{
				name: "Task",
				align: "start"
			},
			{
				name: "1 in 10 below",
				unit: "working days",
				align: "end"
			},
			{
				name: "Likely",
				unit: "working days",
				align: "end"
			},
			{
				name: "1 in 10 above",
				unit: "working days",
				align: "end"
			},
			{
				name: "Actual",
				unit: "working days",
				align: "end"
			},
			{
				name: "",
				align: "start"
			}
		],
		rows: entries.map((entry) => [
			require_program.plainName(entry.name),
			...[
				entry.p10,
				entry.likely,
				entry.p90,
				entry.actual
			].map(oneDecimal),
			entry.where
		])
	};
	const { overall } = card;
	if (overall === void 0 || entries.length === 0) {
		const sentence = "No finished task has a range to be compared with what happened.";
		return {
			title: "Nothing to score yet",
			subtitle,
			summary: sentence,
			table,
			svg: emptyDrawing(sentence, options)
		};
	}
	const { inside } = overall;
	const title = `${inside.k} of ${inside.n} tasks stayed inside their one-in-ten range; 8 in 10 are meant to`;
	const [furthest] = entries;
	const over = furthest === void 0 ? "" : ` Furthest over: ${require_program.quoteName(furthest.name)}, ${multiple(furthest)} its likely value.`;
	const rows = entries.slice(0, MOST).map((entry) => ({
		name: require_program.plainName(entry.name),
		word: entry.where === "inside" ? "" : entry.where,
		low: entry.p10 / entry.likely,
		likely: 1,
		high: entry.p90 / entry.likely,
		actual: entry.actual / entry.likely,
		text: multiple(entry)
	}));
	return {
		title,
		subtitle,
		summary: `${inside.k} of ${inside.n} (${require_formatPercent.formatPercent(inside.share)}, limits ${require_formatPercent.formatPercent(inside.low)} to ${require_formatPercent.formatPercent(inside.high)} at 95 %) inside, ${overall.below} below, ${overall.above} above.${over}`,
		table,
		svg: drawRanges(rows, {
			name: "Times the likely value",
			at: {
				value: 1,
				name: "likely"
			}
		}, options)
	};
}
function multiple({ actual, likely }) {
	return `${(actual / likely).toFixed(2)} ×`;
}
function oneDecimal(value) {
	return value.toFixed(1);
}
// ../../packages/charts/src/shares/causeKind.ts
/** What kind of cause it is, in a word beside its name. */
function causeWord(kind) {
	switch (kind) {
		case "spread": return "range of estimates";
		case "risk": return "risk";
		case "assumption": return "assumption";
		case "cause": return "shared cause";
		case "people": return "limited people";
	}
}
/** Events of the register are plum, limited people outlined, ranges a tint of the ink. */
function causeTint(kind) {
	if (kind === "risk" || kind === "assumption") return "register";
	return kind === "people" ? "people" : "range";
}
// ../../packages/charts/src/shares/sharesFinding.ts
/**
* What the parts of a contingency say, in one sentence: which is largest, that they are alike, that there is
* only one, that they cancel out, or that there is no contingency.
*/
function sharesFinding(parts, whole, measure) {
	const { say, least, what } = measure;
	const real = parts.filter((part) => Math.abs(part.value) >= least);
	const [first, ...others] = [...real].sort((a, b) => b.value - a.value);
	const last = others[others.length - 1] ?? first;
	if (Math.abs(whole) < least) {
		if (first === void 0 || last === void 0 || first === last) return `No contingency: the committed ${what} is that of the plan as written`;
		return `No contingency: what ${require_program.quoteName(first.name)} adds, ${say(first.value)}, the rest saves`;
	}
	if (whole < 0) {
		const size = `${say(whole)} ${what === "date" ? "before" : "below"} the plan as written`;
		if (last === void 0) return `The committed ${what} is ${size}`;
		return `The committed ${what} is ${size}: ${require_program.quoteName(last.name)} saves most, ${say(last.value)}`;
	}
	const contingency = `${say(whole)} of contingency`;
	if (first === void 0) return `${capital(contingency)}, in parts too small to name`;
	if (others.length === 0) return `All ${contingency} come from ${require_program.quoteName(first.name)}`;
	const singles = real.filter((part) => part.single);
	const largest = singles.reduce((most, part) => part.value > most.value ? part : most, singles[0] ?? first);
	const least1 = real.reduce((small, part) => part.value < small.value ? part : small, first);
	if (first.value - least1.value < Math.max(least, first.value * .005)) return `No cause stands out: each of ${real.length} makes ${say(whole / real.length)} of ${say(whole)}`;
	return `${require_program.quoteName(largest.name)} makes ${share(largest.value, whole, measure)} of contingency, the largest single share`;
}
/** "9.1 of 41 working days", "EUR 14,000 of EUR 57,000". */
function share(value, whole, { say, unit }) {
	const [part, all] = [say(value), say(whole)];
	return unit === "working days" ? `${part.replace(/ working days?$/, "")} of ${all}` : `${part} of ${all}`;
}
function capital(text) {
	return text.charAt(0).toUpperCase() + text.slice(1);
}
// ../../packages/charts/src/shares/sharesFigure.ts
/** The figure both charts of shares have in common; `measure` tells days from money. */
function sharesFigure(explanation, measure, options) {
	const { shares, contingency, orders, confidence } = explanation;
	const whole = measure.amount(contingency);
	const level = require_formatPercent.formatPercent(confidence);
	const falls = shares.map((share) => ({
		id: share.id,
		name: share.name,
		word: wordOf(share),
		tint: causeTint(share.kind),
		gathered: (share.gathers?.length ?? 1) > 1,
		value: measure.amount(share),
		error: measure.amount(share.error)
	}));
	const ranked = rankFalls(falls);
	const byId = new Map(shares.map((share) => [share.id, share]));
	const sampled = falls.some((fall) => fall.error > 0);
	const title = sharesFinding(shares.map((share) => ({
		name: share.name,
		value: measure.amount(share),
		single: (share.gathers?.length ?? 1) <= 1
	})), whole, measure);
	const limits = sampled ? "; ± and whiskers: 95 % limits of the sampled orders" : "";
	const subtitle = `What each cause adds to the ${level} commitment, in ${measure.unit}, averaged over the orders in which causes can be taken${limits}`;
	const table = {
		columns: [
			{
				name: "Cause",
				align: "start"
			},
			{
				name: "Kind",
				align: "start"
			},
			{
				name: "Share",
				unit: measure.unit,
				align: "end"
			},
			{
				name: "Standard error",
				unit: measure.unit,
				align: "end"
			},
			{
				name: "Of the contingency",
				align: "end"
			},
			{
				name: "Commitment moves, were it to vanish",
				unit: measure.unit,
				align: "end"
			}
		],
		rows: [...ranked.map((fall) => {
			const share = byId.get(fall.id);
			return [
				require_program.plainName(fall.name),
				share === void 0 ? "" : causeWord(share.kind),
				measure.column(fall.value),
				errorText(fall.error, measure),
				part(fall.value, whole, measure),
				share === void 0 ? "" : measure.column(measure.amount(share.ifRemoved))
			];
		}), [
			"Contingency",
			"",
			measure.column(whole),
			"",
			part(whole, whole, measure),
			""
		]]
	};
	const taken = orders.all ? "every order of the causes was taken" : `${require_groupDigits.groupDigits(orders.taken)} orders of the causes were sampled`;
	const flags = standingFlags(explanation, measure, level);
	const largest = ranked.slice(0, 3).map((fall) => `${require_program.quoteName(fall.name)} ${measure.say(fall.value)}${fall.value < 0 ? ` ${measure.less}` : ""}`);
	return {
		title,
		subtitle,
		summary: falls.length === 0 ? "Nothing in this plan is uncertain: it has no causes to share a contingency." : `A waterfall from the plan as written, ${flags.from.detail}, to the commitment, ${flags.to.detail}. Largest: ${largest.join("; ")}. Shares add up to the contingency exactly; ${taken}. A share says who owns the contingency, not what would be gained if the cause vanished.`,
		table,
		svg: falls.length === 0 ? emptyDrawing("No estimate, risk or assumption of this plan is uncertain.", options) : drawWaterfall({
			falls: largestFalls(falls, measure.least),
			...flags,
			total: {
				name: "Contingency",
				value: whole
			},
			measure
		}, options)
	};
}
/** What kind of cause it is, where its name does not say so already. */
function wordOf({ kind, name, gathers }) {
	const word = causeWord(kind);
	return (gathers?.length ?? 1) > 1 || name.toLowerCase() === word ? "" : word;
}
function part(value, whole, { least }) {
	if (Math.abs(whole) < least) return "";
	const share = Math.round(value / whole * 100);
	return `${share < 0 ? "−" : ""}${Math.abs(share)} %`;
}
// ../../packages/charts/src/sharesDays.ts
/**
* The contingency of the date split over its causes: a waterfall from the plan as written to the committed
* date, in working days, the largest fourteen and the rest as one.
*
* Reads `shares`, `contingency`, `asWritten`, `committed`. Any number of shares; all are in the table.
*/
function sharesDays(explanation, options) {
	return sharesFigure(explanation, daysMeasure([explanation.contingency, ...explanation.shares].map((each) => each.workingDays)), options);
}
// ../../packages/charts/src/sharesMoney.ts
/**
* The contingency of the sum split over its causes: as `sharesDays`, in money.
*
* Reads `shares`, `contingency`, `asWritten`, `committed`, `plan.currency`.
*/
function sharesMoney(explanation, options) {
	return sharesFigure(explanation, moneyMeasure([explanation.contingency, ...explanation.shares].map((each) => each.money), explanation.plan.currency), options);
}
// ../../packages/charts/src/spending.ts
/**
* Spending by the end of each month as a band from P50 to P80, against the money released by then; beneath it what is
* spent in each month on average. The first month that the money does not cover is marked.
*
* Reads `months`, `firstShortfall`, `committed`. Months after the last one in which a digit moves are left out of the
* drawing, not of the table.
*/
function spending(forecast, options) {
	const { months = [], firstShortfall, committed, plan } = forecast;
	const { currency } = plan;
	const place = require_roundToLimits.limitStep(committed.cost, committed.costLow, committed.costHigh);
	const sum = (value) => require_formatMoney.formatMoney(require_roundToLimits.roundToStep(value, place), "");
	const funded = months.some((month) => month.released !== void 0);
	const shown = months.slice(0, lastToShow(months, place, firstShortfall?.month));
	const day = (iso) => (require_arrangeDots.isoToMs(iso) - require_arrangeDots.isoToMs(plan.start)) / require_arrangeDots.dayMs;
	const view = shown.map((month) => ({
		from: day(`${month.month}-01`),
		to: day(`${nextMonth(month.month)}-01`),
		mean: month.mean,
		...month.cumulative,
		...month.released === void 0 ? {} : { released: month.released }
	}));
	const short = firstShortfall && {
		level: "half",
		title: "Runs short",
		detail: `end of ${monthName(firstShortfall.month)} · covered in ${require_formatPercent.formatPercent(firstShortfall.chanceCovered)}`,
		day: day(`${nextMonth(firstShortfall.month)}-01`)
	};
	const title = finding$1(forecast, funded);
	const peak = peakOf(months);
	const means = peak === void 0 ? "" : `; most in ${monthName(peak.month)}, ${sum(peak.mean)}`;
	const end = months[months.length - 1];
	return {
		title,
		subtitle: `Money spent by the end of each month: the band runs from what half of the futures stay within (P50) to what 80 % do (P80)${funded ? "; dashes: money released by then" : ""}. In ${currency}`,
		summary: end === void 0 ? "The plan says nothing of when money is spent." : `A band that rises from nothing to between ${currency} ${sum(end.cumulative.p50)} (P50) and ${currency} ${sum(end.cumulative.p80)} (P80)${end.released === void 0 ? "" : `, against ${currency} ${sum(end.released)} released by the end`}. ${title}.`,
		table: {
			columns: [
				{
					name: "Month",
					align: "start"
				},
				{
					name: "Spent in it, mean",
					unit: currency,
					align: "end"
				},
				{
					name: "By its end, P50",
					unit: currency,
					align: "end"
				},
				{
					name: "By its end, P80",
					unit: currency,
					align: "end"
				},
				...funded ? [{
					name: "Released",
					unit: currency,
					align: "end"
				}, {
					name: "Covered",
					align: "end"
				}] : []
			],
			rows: months.map((month) => [
				monthName(month.month),
				sum(month.mean),
				sum(month.cumulative.p50),
				sum(month.cumulative.p80),
				...funded ? [month.released === void 0 ? "" : sum(month.released), month.chanceCovered === void 0 ? "" : require_formatPercent.formatPercent(month.chanceCovered)] : []
			])
		},
		svg: view.length === 0 ? emptyDrawing("The plan says nothing of when money is spent.", options) : drawSpending({
			start: plan.start,
			currency,
			months: view,
			means: `In each month, on average${means}`,
			...short && { mark: short },
			sum
		}, options)
	};
}
/** How many months to draw: to the last that still moves the band by a digit shown, and to the shortfall. */
function lastToShow(months, place, short) {
	const end = months[months.length - 1];
	if (end === void 0) return 0;
	let reached = months.length - 1;
	while (reached > 0 && Math.abs(end.cumulative.p80 - (months[reached - 1]?.cumulative.p80 ?? 0)) < place) reached--;
	const marked = months.findIndex(({ month }) => month === short);
	return Math.min(months.length, Math.max(reached + 1, marked + 2, 1));
}
function nextMonth(month) {
	const [year = 0, number = 1] = month.split("-").map(Number);
	return number === 12 ? `${String(year + 1).padStart(4, "0")}-01` : `${String(year).padStart(4, "0")}-${String(number + 1).padStart(2, "0")}`;
}
/** "Oct 2027". */
function monthName(month) {
	return require_formatDate.formatDate(`${month}-01`).replace(/^\d+ /, "");
}
/** The month in which most is spent on average; undefined where nothing is. */
function peakOf(months) {
	const [first] = months;
	const peak = months.reduce((most, month) => month.mean > most.mean ? month : most, first ?? none);
	return peak.mean > 0 ? peak : void 0;
}
var none = {
	month: "",
	mean: 0,
	cumulative: {
		p50: 0,
		p80: 0
	}
};
function finding$1({ months = [], firstShortfall, committed, plan }, funded) {
	if (months.length === 0) return "The plan has no money by month";
	const level = require_formatPercent.formatPercent(committed.confidence);
	if (firstShortfall !== void 0) return `Money runs short by the end of ${monthName(firstShortfall.month)}: what is released covers ${require_formatPercent.formatPercent(firstShortfall.chanceCovered)} of futures, not ${level}`;
	if (funded) return `Money released covers the spending to the end of every month in at least ${level} of futures`;
	const peak = peakOf(months);
	if (peak === void 0) return "Nothing is spent in any month";
	return `Spending peaks in ${monthName(peak.month)}, at ${require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(peak.mean, 2), plan.currency)} on average`;
}
// ../../packages/charts/src/tasksAtStake.ts
var most = 12;
/**
* The working days at stake on each task, and how often it is critical: a task that is often critical but never late
* has none. The twelve with most at stake; the trade's indices are in the table.
*
* Reads `tasks`, `confidence`.
*/
function tasksAtStake(answer, options) {
	const colours = require_palette.palette(options.theme);
	const level = require_formatPercent.formatPercent(answer.confidence);
	const stake = (task) => task.daysAtStake ?? 0;
	const critical = answer.tasks.filter((task) => task.criticality > 0).sort((a, b) => stake(b) - stake(a));
	const known = critical.filter((task) => task.daysAtStake !== void 0);
	const shown = known.slice(0, most);
	const rest = critical.length - shown.length;
	const index = (value) => require_groupDigits.groupDigits(value, 2);
	const [best] = known;
	return {
		title: best === void 0 ? "No task is ever critical" : require_columnDays.columnDays(stake(best)) === "0" ? "No single task has days at stake: kept to what is written, none alone moves the finish" : `${require_program.quoteName(best.name)} has most at stake: ${require_formatDays.formatDays(stake(best))}, were it never to take longer than written`,
		subtitle: `How often each task is critical, and what the ${level} finish would gain if it never took longer than written, in working days`,
		summary: best === void 0 ? "No task of this plan is critical in any future." : `Most at stake: ${shown.slice(0, 5).map((task) => `${require_program.quoteName(task.name)} ${require_formatDays.formatDays(stake(task))}, critical in ${require_formatPercent.formatPercent(task.criticality)}`).join("; ")}.`,
		table: {
			columns: [
				{
					name: "Task",
					align: "start"
				},
				{
					name: "Critical",
					align: "end"
				},
				{
					name: "At stake",
					unit: "working days",
					align: "end"
				},
				{
					name: "Could slip, mean",
					unit: "working days",
					align: "end"
				},
				{
					name: "Significance",
					align: "end"
				},
				{
					name: "Cruciality",
					align: "end"
				},
				{
					name: "Schedule sensitivity",
					align: "end"
				}
			],
			rows: answer.tasks.map((task) => [
				require_program.plainName(task.name),
				require_formatPercent.formatPercent(task.criticality),
				task.daysAtStake === void 0 ? "" : require_columnDays.columnDays(task.daysAtStake),
				task.slack === void 0 ? "never moves it" : require_columnDays.columnDays(task.slack),
				index(task.significance),
				index(task.cruciality),
				index(task.scheduleSensitivity)
			])
		},
		svg: shown.length === 0 ? emptyDrawing("No task is critical in any future.", options) : drawBarPanels(shown.map((task) => ({
			name: task.name,
			word: "",
			paint: {
				fill: colours.rangeCore,
				stroke: colours.rangeEdge
			},
			bars: [{
				value: task.criticality,
				text: require_formatPercent.formatPercent(task.criticality)
			}, {
				value: require_columnDays.columnDays(stake(task)) === "0" ? 0 : stake(task),
				text: require_columnDays.columnDays(stake(task))
			}]
		})), [{
			name: "Critical",
			unit: "of futures"
		}, {
			name: "At stake",
			unit: "working days"
		}], rest === 0 ? "" : `and ${rest} more that are critical in some futures`, options)
	};
}
// ../../packages/charts/src/tornado/drawTornado.ts
var gap = 15;
var markRadius = 4.5;
/** Bars from the low to the high side of each item around the committed value. */
function drawTornado(view, options) {
	const { document } = options;
	const colours = require_palette.palette(options.theme);
	const width = drawingWidth(options.width);
	const inline = width < 560;
	const names = view.bars.map((bar) => require_program.plainName(bar.name));
	const nameWidth = inline ? width - 4 : Math.min(width * .32, Math.max(90, ...names.map((name) => require_palette.textWidth(name, 13) + 4)));
	const areaLeft = inline ? 2 : nameWidth + 16;
	const rowHeight = inline ? 54 : 38;
	const heldWidth = inline ? Math.min(84, width * .23) : 120;
	const rows = view.bars.map((bar) => {
		const ends = orderedEnds(bar, view);
		return {
			bar,
			ends,
			labels: ends.map((end) => endLabel(end, view.format, heldWidth))
		};
	});
	const scale = fitScale([{
		from: 0,
		to: 0,
		before: 4,
		after: 4
	}, ...rows.map(({ ends, labels }) => ({
		from: ends[0].value,
		to: ends[1].value,
		before: (labels[0]?.width ?? 0) + gap,
		after: (labels[1]?.width ?? 0) + gap
	}))], areaLeft, width - 2);
	const zero = scale(0);
	const plan = planFlags([view.flag], [zero], 2, width - 2);
	const top = plan.height + 8;
	const bottom = top + rows.length * rowHeight + 4;
	const height = bottom + 24 + (view.rest === "" ? 0 : 22);
	const svg = openSvg(document, width, height, colours);
	const centre = (k) => top + k * rowHeight + (inline ? 38 : rowHeight / 2);
	const { poles, labels: flagLabels } = drawFlags(document, [view.flag], [zero], plan, top, inline ? top : bottom, colours);
	const layer = plotLayer(document, {
		width,
		height,
		margin: 0,
		x: { type: "identity" },
		y: { type: "identity" },
		marks: rows.map(({ bar, ends }, k) => {
			const { fill, stroke } = kindFill(bar.kind, colours);
			return rect([ends], {
				x1: scale(ends[0].value),
				x2: scale(ends[1].value),
				y1: centre(k) - 6,
				y2: centre(k) + 6,
				fill: String(fill),
				stroke: String(stroke)
			});
		})
	});
	const zeros = require_fonts.make(document, "g");
	const line = levelLine("committed", colours);
	if (inline) for (const k of rows.keys()) zeros.append(require_fonts.make(document, "line", {
		x1: zero,
		x2: zero,
		y1: centre(k) - 10,
		y2: centre(k) + 10,
		...line
	}));
	const texts = require_fonts.make(document, "g");
	rows.forEach(({ bar, ends, labels }, k) => {
		const row = require_fonts.make(document, "g");
		const place = {
			x: inline ? 2 : 0,
			y: inline ? centre(k) - 15 : centre(k),
			width: nameWidth,
			inline
		};
		row.append(require_fonts.make(document, "title", {}, describe(bar, ends, view.format)));
		row.append(itemLabel(document, names[k] ?? "", kindWord$1(bar.kind), place, colours));
		ends.forEach((end, side) => {
			const x = scale(end.value);
			const outside = x + (side === 0 ? -4.5 : markRadius);
			row.append(endMark(document, end, outside, centre(k), colours));
			const label = labels[side];
			if (label !== void 0) row.append(endText(document, label, x, centre(k), side, colours));
		});
		texts.append(row);
	});
	const quiet = {
		y: bottom + 14,
		fill: colours.inkQuiet
	};
	const ways = require_fonts.make(document, "g");
	ways.append(require_fonts.make(document, "text", {
		...quiet,
		x: zero - 8,
		"text-anchor": "end"
	}, `← ${view.less}`), require_fonts.make(document, "text", {
		...quiet,
		x: zero + 8
	}, `${view.more} →`));
	if (view.rest !== "") ways.append(require_fonts.make(document, "text", {
		...quiet,
		x: inline ? 2 : 0,
		y: bottom + 38
	}, view.rest));
	svg.append(layer.group, poles, zeros, texts, ways, flagLabels);
	return svg;
}
/** The two ends from left to right. */
function orderedEnds(bar, { amount, held }) {
	const low = {
		value: amount(bar.low),
		held: held(bar, "low"),
		isHigh: false
	};
	const high = {
		value: amount(bar.high),
		held: held(bar, "high"),
		isHigh: true
	};
	return low.value <= high.value ? [low, high] : [high, low];
}
function endLabel(end, format, most) {
	const change = format(end.value);
	const held = require_fonts.fitText(end.held, most, 12);
	return {
		change,
		held,
		width: require_palette.textWidth(change, 13, true) + 7 + require_palette.textWidth(held, 12)
	};
}
function endText(document, label, x, y, side, colours) {
	const sign = side === 0 ? -1 : 1;
	const anchor = side === 0 ? "end" : "start";
	const changeAt = x + sign * gap;
	const heldAt = changeAt + sign * (require_palette.textWidth(label.change, 13, true) + 7);
	return require_fonts.make(document, "g", { "text-anchor": anchor }, require_fonts.make(document, "text", {
		x: changeAt,
		y: y + 4.5,
		"font-size": 13,
		"font-weight": 600
	}, label.change), require_fonts.make(document, "text", {
		x: heldAt,
		y: y + 4.5,
		fill: colours.inkQuiet
	}, label.held));
}
/** A ring at the low side, a disc at the high side; outside the bar, so that they stay apart on a short one. */
function endMark(document, end, x, y, colours) {
	return require_fonts.make(document, "circle", {
		cx: x,
		cy: y,
		r: markRadius,
		fill: end.isHigh ? colours.ink : colours.paper,
		stroke: end.isHigh ? colours.paper : colours.ink,
		"stroke-width": 1.5
	});
}
function describe(bar, ends, format) {
	return `${require_program.plainName(bar.name)}: ${ends.map((end) => `${end.held} ${format(end.value)}`).join(", ")}`;
}
// ../../packages/charts/src/tornado/rankBars.ts
/** How far a bar reaches, the committed value (no change) included. */
function reach(bar, amount) {
	const [low, high] = [amount(bar.low), amount(bar.high)];
	return Math.max(low, high, 0) - Math.min(low, high, 0);
}
/**
* Bars that reach at least `least`, the furthest first (ties by id, by code unit), split after the first
* `most`.
*/
function rankBars(bars, amount, least, most = 12) {
	const ranked = bars.filter((bar) => reach(bar, amount) >= least).sort((a, b) => reach(b, amount) - reach(a, amount) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
	return {
		shown: ranked.slice(0, most),
		rest: ranked.slice(most)
	};
}
// ../../packages/charts/src/tornado/tornadoFigure.ts
/** The figure both tornados share. */
function tornadoFigure(forecast, measure, options) {
	const bars = forecast.tornado ?? [];
	const { amount, what } = measure;
	const held = (bar, side) => require_heldText.heldText(bar, side, forecast.plan.currency);
	const { shown, rest } = rankBars(bars, amount, measure.least);
	const all = [...shown, ...rest];
	const first = shown[0];
	const table = {
		columns: [
			{
				name: "Item",
				align: "start"
			},
			{
				name: "Kind",
				align: "start"
			},
			{
				name: "Low side",
				align: "end"
			},
			{
				name: "Change",
				unit: measure.unit,
				align: "end"
			},
			{
				name: "High side",
				align: "end"
			},
			{
				name: "Change",
				unit: measure.unit,
				align: "end"
			}
		],
		rows: all.map((bar) => [
			require_program.plainName(bar.name),
			kindWord$1(bar.kind) || "task",
			held(bar, "low"),
			measure.format(amount(bar.low)),
			held(bar, "high"),
			measure.format(amount(bar.high))
		])
	};
	const subtitle = `Change of ${what}, in ${measure.unit}, when one item alone is held at its low side (ring: P10, or absent) or its high side (disc: P90, or occurring)`;
	if (first === void 0) {
		const tried = forecast.tornado !== void 0;
		const title = tried ? `No single item moves ${what}` : "No item has been held at its ends yet";
		const sentence = !tried ? "This forecast was made without that part of the explanation." : bars.length === 0 ? "No estimate, risk or assumption in this plan has two sides to be held at." : `Each item was held at its low and at its high side in turn; ${what} stayed where it was.`;
		return {
			title,
			subtitle,
			summary: `${title}. ${sentence}`,
			table,
			svg: emptyDrawing(sentence, options)
		};
	}
	const svg = drawTornado({
		bars: shown,
		amount,
		format: measure.format,
		held,
		flag: measure.flag,
		less: measure.less,
		more: measure.more,
		rest: restText(rest, measure)
	}, options);
	const title = `${require_program.quoteName(first.name)} moves ${what} most: ${sides(first, measure, held)}`;
	const second = shown[1];
	return {
		title,
		subtitle,
		summary: `${title}. ${second === void 0 ? "No other item moves it." : `Next comes ${require_program.quoteName(second.name)}: ${sides(second, measure, held)}.`}`,
		table,
		svg
	};
}
/** "from 8.2 working days earlier (20 days) to 12 working days later (45 days)", low side first. */
function sides(bar, { amount, say }, held) {
	return `from ${say(amount(bar.low))} (${held(bar, "low")}) to ${say(amount(bar.high))} (${held(bar, "high")})`;
}
function restText(rest, measure) {
	const largest = rest[0];
	if (largest === void 0) return "";
	const span = measure.format(reach(largest, measure.amount)).replace("+", "");
	return `and ${rest.length} more, none reaching further than ${span}`;
}
// ../../packages/charts/src/tornadoDays.ts
/**
* What moves the committed finish: each item held at its low and at its high side, all else as it was. The
* twelve that reach furthest, in working days.
*
* Reads `tornado` and `committed`. Without a tornado the figure says so.
*/
function tornadoDays(forecast, options) {
	const { committed } = forecast;
	return tornadoFigure(forecast, {
		amount: (side) => side.workingDays,
		least: .05,
		what: "the committed finish",
		unit: "working days",
		less: "earlier",
		more: "later",
		format: (change) => require_columnDays.columnDays(change, true),
		say: (change) => {
			const size = require_formatDays.formatDays(Math.abs(change));
			return size.startsWith("0 ") ? "no change" : `${size} ${change < 0 ? "earlier" : "later"}`;
		},
		flag: {
			level: "committed",
			title: "Committed",
			detail: `${require_formatDate.formatDate(committed.date)} · ${require_formatPercent.formatPercent(committed.confidence)}`
		}
	}, options);
}
// ../../packages/charts/src/tornadoMoney.ts
/**
* What moves the committed cost: as `tornadoDays`, in money, two significant digits.
*
* Reads `tornado` and `committed`. Without a tornado the figure says so.
*/
function tornadoMoney(forecast, options) {
	const { committed } = forecast;
	const { currency } = forecast.plan;
	const sum = require_formatMoney.formatMoney(require_roundToLimits.roundToLimits(committed.cost, committed.costLow, committed.costHigh), currency);
	return tornadoFigure(forecast, {
		amount: (side) => side.money,
		least: Math.max(1e-9, Math.abs(committed.cost) * 1e-4),
		what: "the committed cost",
		unit: currency,
		less: "cheaper",
		more: "dearer",
		format: (change) => require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(change, 2), "", true),
		say: (change) => {
			const size = require_formatMoney.formatMoney(require_roundSignificant.roundSignificant(Math.abs(change), 2), currency);
			return change === 0 ? "no change" : `${size} ${change < 0 ? "less" : "more"}`;
		},
		flag: {
			level: "committed",
			title: "Committed",
			detail: `${sum} · ${require_formatPercent.formatPercent(committed.confidence)}`
		}
	}, options);
}
// ../../packages/charts/src/walk/walkFigure.ts
/** The figure both charts of the walk have in common; `measure` tells days from money. */
function walkFigure(explanation, measure, options) {
	const { walk, contingency } = explanation;
	const whole = measure.amount(contingency);
	const level = require_formatPercent.formatPercent(explanation.confidence);
	const flags = standingFlags(explanation, measure, level);
	const falls = walk.map((step, k) => ({
		id: `${k}`,
		name: step.step,
		word: "",
		tint: stepTint(step),
		value: measure.amount(step),
		error: 0
	}));
	const sentences = walk.map((step) => `${require_program.plainName(step.step)} ${measure.column(measure.amount(step))}`);
	return {
		title: finding(falls, whole, measure, level),
		subtitle: `From the plan as written to the ${level} commitment, in ${measure.unit}: each step adds to those above it, so another order would divide them otherwise`,
		summary: walk.length === 0 ? "This explanation holds no steps from the plan as written to the commitment." : `A waterfall from the plan as written, ${flags.from.detail}, to the commitment, ${flags.to.detail}. In ${measure.unit}: ${sentences.join(", ")}.`,
		table: {
			columns: [
				{
					name: "Step",
					align: "start"
				},
				{
					name: "Adds",
					unit: measure.unit,
					align: "end"
				},
				{
					name: "So far",
					unit: measure.unit,
					align: "end"
				},
				{
					name: "What it is",
					align: "start"
				}
			],
			rows: [...walk.map((step, k) => [
				require_program.plainName(step.step),
				measure.column(measure.amount(step)),
				measure.column(walk.slice(0, k + 1).reduce((sum, each) => sum + measure.amount(each), 0)),
				require_program.plainName(step.text)
			]), [
				"Contingency",
				measure.column(whole),
				measure.column(whole),
				""
			]]
		},
		svg: walk.length === 0 ? emptyDrawing("No steps to draw.", options) : drawWaterfall({
			falls,
			...flags,
			total: {
				name: "Contingency",
				value: whole
			},
			measure
		}, options)
	};
}
/** Steps of the register are plum and those of people outlined, as in the chart of shares. */
function stepTint({ kind }) {
	return kind === "register" || kind === "people" ? kind : "range";
}
function finding(falls, whole, measure, level) {
	const { say, least, what, more, less } = measure;
	const real = falls.filter((fall) => Math.abs(fall.value) >= least);
	const first = [...real].sort((a, b) => Math.abs(b.value) - Math.abs(a.value))[0];
	const ends = `the ${level} ${what}`;
	if (Math.abs(whole) < least) return first === void 0 ? `Nothing lies between the plan as written and ${ends}` : `Steps cancel out: ${ends} is that of the plan as written`;
	const size = `${say(whole)} ${what === "sum" ? whole < 0 ? "less" : "more" : whole < 0 ? less : more}`;
	const start = `${ends.charAt(0).toUpperCase()}${ends.slice(1)} is ${size} than the plan as written`;
	if (first === void 0) return start;
	if (real.length === 1) return `${start}, all of it by one step: ${require_program.quoteName(first.name)}`;
	const by = say(first.value);
	const way = first.value < 0 === whole < 0 ? "" : ` ${first.value < 0 ? less : more}`;
	return `${start}; the largest step is ${require_program.quoteName(first.name)}, ${by}${way}`;
}
// ../../packages/charts/src/walkDays.ts
/**
* From the plan as written to the committed date, step by step, in working days: a waterfall in the order in
* which the steps are taken.
*
* Reads `walk`, `contingency`, `asWritten`, `committed`.
*/
function walkDays(explanation, options) {
	return walkFigure(explanation, daysMeasure([explanation.contingency, ...explanation.walk].map((each) => each.workingDays)), options);
}
// ../../packages/charts/src/walkMoney.ts
/**
* From the plan as written to the committed sum, step by step: as `walkDays`, in money.
*
* Reads `walk`, `contingency`, `asWritten`, `committed`, `plan.currency`.
*/
function walkMoney(explanation, options) {
	return walkFigure(explanation, moneyMeasure([explanation.contingency, ...explanation.walk].map((each) => each.money), explanation.plan.currency), options);
}
// src/charts/figureLists.ts
/** What `--charts` draws of each verb's answer, in reading order. */
var figureLists = {
	forecast: (forecast) => [
		["finish-curve", (options) => finishCurve(forecast, options)],
		["fifty-futures", (options) => fiftyFutures(forecast, options)],
		["cost-curve", (options) => costCurve(forecast, options)],
		["drivers", (options) => driversBars(forecast, options)],
		...forecast.months === void 0 ? [] : [["spending", (options) => spending(forecast, options)]],
		...forecast.tornado === void 0 ? [] : [["tornado-days", (options) => tornadoDays(forecast, options)], ["tornado-money", (options) => tornadoMoney(forecast, options)]]
	],
	explain: (explanation) => [
		["shares-days", (options) => sharesDays(explanation, options)],
		["shares-money", (options) => sharesMoney(explanation, options)],
		["walk-days", (options) => walkDays(explanation, options)],
		["walk-money", (options) => walkMoney(explanation, options)]
	],
	compare: (comparison) => [["moves-days", (options) => movesDays(comparison, options)], ["moves-money", (options) => movesMoney(comparison, options)]],
	responses: (responses) => [["response-worth", (options) => responseWorth(responses, options)]],
	confidence: (confidence) => [["confidence-steps", (options) => confidenceSteps(confidence, options)], ["joint-density", (options) => jointDensity(confidence, options)]],
	paths: (paths) => [["paths", (options) => pathBars(paths, options)], ["tasks-at-stake", (options) => tasksAtStake(paths, options)]],
	future: (future) => [["future", (options) => futureBars(future, options)]],
	people: (load) => [["people-weeks", (options) => peopleWeeks(load, options)]],
	money: (budget) => [...budget.months.length === 0 ? [] : [["funds-months", (options) => fundsMonths(budget, options)]], ...leftFigures(budget.left)],
	history: (drift) => [["drift-dates", (options) => driftDates(drift, options)], ["drift-sums", (options) => driftSums(drift, options)]],
	scorecard: (card) => [["scorecard", (options) => scorecardBars(card, options)]],
	pool: ({ pooled, name }) => pooled.map(({ task, pooling, unitWords }) => [`opinions-${task.id}-${pooling.of}`, (options) => opinionsBars(pooling, {
		task: task.name,
		unitWords,
		name
	}, options)])
};
function leftFigures(left) {
	if (left === void 0) return [];
	return [["contingency-left-money", (options) => contingencyLeftMoney(left, options)], ["contingency-left-days", (options) => contingencyLeftDays(left, options)]];
}
exports.figureLists = figureLists;
