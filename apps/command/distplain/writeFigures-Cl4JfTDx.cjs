const require_fonts = require("./fonts-G8mucTyq.cjs");
const require_palette = require("./palette-CMcc1XZm.cjs");
const require_serialise = require("./serialise-Dnmz9hmS.cjs");
const require_whyNotWritten = require("./whyNotWritten-C19bLT-P.cjs");
const require_writeWhole = require("./writeWhole-D_ORKldc.cjs");
const require_program = require("./program.cjs");
let node_path = require("node:path");
let jsdom = require("jsdom");
// ../../packages/charts/src/figure/figureSvg.ts
var margin = 20;
/**
* A figure as the text of an SVG file that stands alone: its own ground, the finding and the subtitle inside
* the picture, `title` and `desc` for a screen reader, fonts that end in a generic family, no style sheet,
* script or link. The same figure gives the same text, to the byte.
*/
function figureSvg(figure) {
	const document = figure.svg.ownerDocument;
	const colours = paletteOf(figure.svg);
	const width = Number(figure.svg.getAttribute("width"));
	const height = Number(figure.svg.getAttribute("height"));
	const titleSize = width < 520 ? 17 : 21;
	const titleLines = require_fonts.wrapEvenly(figure.title, width, titleSize, 5, true);
	const subtitleLines = require_fonts.wrapEvenly(figure.subtitle, width, 13, 4);
	let y = margin;
	const heading = require_fonts.make(document, "g");
	for (const line of titleLines) {
		y += titleSize * 1.25;
		heading.append(require_fonts.make(document, "text", {
			x: margin,
			y: y - titleSize * .25,
			"font-family": require_fonts.serif,
			"font-size": titleSize,
			"font-weight": 600,
			fill: colours.ink
		}, line));
	}
	y += 4;
	for (const line of subtitleLines) {
		y += 18;
		heading.append(require_fonts.make(document, "text", {
			x: margin,
			y: y - 4,
			"font-size": 13,
			fill: colours.inkQuiet
		}, line));
	}
	y += 14;
	const total = {
		width: width + 40,
		height: y + height + margin
	};
	const inner = require_fonts.make(document, "g", { transform: `translate(${margin} ${Math.round(y * 100) / 100})` });
	for (const child of Array.from(figure.svg.childNodes)) inner.append(child.cloneNode(true));
	const file = require_fonts.make(document, "svg", {
		xmlns: require_fonts.svgNamespace,
		...total,
		viewBox: `0 0 ${total.width} ${Math.round(total.height * 100) / 100}`,
		role: "img",
		"aria-labelledby": "figure-title",
		"aria-describedby": "figure-summary",
		"font-family": require_fonts.sans,
		"font-size": 12,
		"font-variant-numeric": "tabular-nums",
		fill: colours.ink,
		direction: "ltr"
	}, require_fonts.make(document, "title", { id: "figure-title" }, figure.title), require_fonts.make(document, "desc", { id: "figure-summary" }, figure.summary), require_fonts.make(document, "rect", {
		...total,
		fill: colours.paper
	}), heading, inner);
	return `${require_serialise.serialise(file)}\n`;
}
/** The theme a drawing was made in, told by its ink. */
function paletteOf(svg) {
	const dark = require_palette.palette("dark");
	return svg.getAttribute("fill") === dark.ink ? dark : require_palette.palette("light");
}
// src/charts/writeFigures.ts
/**
* Draws figures into a folder as SVG files, each written whole, and lists them on standard error. Takes half a second
* to load: import it only where something is drawn.
*
* @returns false when one could not be written, after saying so
*/
function writeFigures(files, folder) {
	const { document } = new jsdom.JSDOM("").window;
	const drawn = files.map(([name, draw]) => ({
		path: (0, node_path.join)(folder, `${name}.svg`),
		text: figureSvg(draw({ document }))
	}));
	for (const { path, text } of drawn) try {
		require_writeWhole.writeWhole(path, text, true);
	} catch (error) {
		require_program.printProblems([require_whyNotWritten.whyNotWritten(path, error, ["It could not be written: a file has that name.", "Name a folder that may be written to."])]);
		return false;
	}
	require_program.printNote(`Wrote ${drawn.map(({ path }) => path).join(", ")}.`);
	return true;
}
exports.writeFigures = writeFigures;
