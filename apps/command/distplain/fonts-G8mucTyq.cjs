const require_palette = require("./palette-CMcc1XZm.cjs");
// ../../packages/charts/src/draw/fitText.ts
/** Characters as a reader counts them, so that no accent or emoji is cut in two. */
function graphemes(text) {
	return Array.from(new Intl.Segmenter("en", { granularity: "grapheme" }).segment(text), (s) => s.segment);
}
/** The text, cut with "…" where it is wider than `width` px. */
function fitText(text, width, size, bold = false) {
	if (require_palette.textWidth(text, size, bold) <= width) return text;
	const letters = graphemes(text.slice(0, Math.ceil(width / size * 5) + 20));
	while (letters.length > 0 && require_palette.textWidth(`${letters.join("").trimEnd()}…`, size, bold) > width) letters.pop();
	return `${letters.join("").trimEnd()}…`;
}
/**
* Breaks text into lines of at most `width` px, at spaces; a word wider than a line is cut with "…".
* A figure stays with its unit or currency, a day with its month.
*
* @param most  No more lines than this; the last one is cut with "…".
*/
function wrapText(text, width, size, most = 4, bold = false) {
	const words = require_palette.keepTogether(text).split(" ");
	const lines = [];
	let line = "";
	for (const word of words) {
		const longer = line === "" ? word : `${line} ${word}`;
		if (line === "" || require_palette.textWidth(longer, size, bold) <= width) line = longer;
		else {
			lines.push(line);
			line = word;
		}
	}
	lines.push(line);
	const kept = lines.slice(0, most);
	if (lines.length > most) kept[most - 1] = `${kept[most - 1]} ${lines.slice(most).join(" ")}`;
	return kept.map((each) => fitText(each, width, size, bold));
}
/** As `wrapText`, with the lines of about one length: no last word on a line of its own. */
function wrapEvenly(text, width, size, most = 4, bold = false) {
	const lines = wrapText(text, width, size, most, bold);
	const joined = lines.join(" ");
	for (let narrower = width - 8; narrower > width / 2; narrower -= 8) if (wrapText(text, narrower, size, lines.length, bold).join(" ") !== joined) return wrapText(text, narrower + 8, size, most, bold);
	return lines;
}
// ../../packages/charts/src/draw/make.ts
var svgNamespace = "http://www.w3.org/2000/svg";
/** A coordinate to a hundredth of a px: enough for print, and the same text on every machine. */
function px(value) {
	const rounded = Math.round(value * 100) / 100;
	return String(rounded === 0 ? 0 : rounded);
}
/**
* One SVG element. Numbers are rounded by `px`; undefined attributes are left out; strings become text nodes,
* never markup.
*/
function make(document, name, attributes = {}, ...children) {
	const element = document.createElementNS(svgNamespace, name);
	for (const [key, value] of Object.entries(attributes)) if (value !== void 0) element.setAttribute(key, typeof value === "number" ? px(value) : value);
	element.append(...children);
	return element;
}
// ../../packages/charts/src/draw/fonts.ts
/** For sentences and titles. Ends in a generic family, so that a file standing alone finds a serif. */
var serif = "\"Source Serif 4 Variable\", \"Source Serif 4\", Georgia, \"Times New Roman\", serif";
/** For labels, axes and tables. Ends in a generic family. */
var sans = "\"Source Sans 3 Variable\", \"Source Sans 3\", \"Segoe UI\", \"Helvetica Neue\", Arial, sans-serif";
Object.defineProperty(exports, "fitText", {
	enumerable: true,
	get: function() {
		return fitText;
	}
});
Object.defineProperty(exports, "make", {
	enumerable: true,
	get: function() {
		return make;
	}
});
Object.defineProperty(exports, "px", {
	enumerable: true,
	get: function() {
		return px;
	}
});
Object.defineProperty(exports, "sans", {
	enumerable: true,
	get: function() {
		return sans;
	}
});
Object.defineProperty(exports, "serif", {
	enumerable: true,
	get: function() {
		return serif;
	}
});
Object.defineProperty(exports, "svgNamespace", {
	enumerable: true,
	get: function() {
		return svgNamespace;
	}
});
Object.defineProperty(exports, "wrapEvenly", {
	enumerable: true,
	get: function() {
		return wrapEvenly;
	}
});
Object.defineProperty(exports, "wrapText", {
	enumerable: true,
	get: function() {
		return wrapText;
	}
});
