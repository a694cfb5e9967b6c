// ../../packages/charts/src/draw/keepTogether.ts
/** Spaces that a line never breaks at: "80 %", "EUR 655,000", "16 Nov 2027", "9 days". */
var together = / (?=%)|(?<=working) (?=day)|(?<=\b[A-Z]{3}) (?=[\d−])|(?<=\d) (?=(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec|days?|working|billion|trillion)\b)|(?<=\b(?:[A-Z][a-z]{2})) (?=\d)/g;
/** The text with no-break spaces where a line should not end: within dates, sums, shares and spans. */
function keepTogether(text) {
	return text.replace(together, "\xA0");
}
// ../../packages/charts/src/draw/textWidth.ts
/**
* Advance widths in thousandths of the type size, of the common sans-serif metrics (Helvetica, and the faces
* made to its widths). Recalled from the published Adobe font metrics, not read here. The faces the pages
* ship are narrower, so a label measured with these has room.
*/
var widths = {
	" ": 278,
	"!": 278,
	"\"": 355,
	"#": 556,
	$: 556,
	"%": 889,
	"&": 667,
	"'": 191,
	"(": 333,
	")": 333,
	"*": 389,
	"+": 584,
	",": 278,
	"-": 333,
	".": 278,
	"/": 278,
	":": 278,
	";": 278,
	"<": 584,
	"=": 584,
	">": 584,
	"?": 556,
	"@": 1015,
	A: 667,
	B: 667,
	C: 722,
	D: 722,
	E: 667,
	F: 611,
	G: 778,
	H: 722,
	I: 278,
	J: 500,
	K: 667,
	L: 556,
	M: 833,
	N: 722,
	O: 778,
	P: 667,
	Q: 778,
	R: 722,
	S: 667,
	T: 611,
	U: 722,
	V: 667,
	W: 944,
	X: 667,
	Y: 667,
	Z: 611,
	a: 556,
	b: 556,
	c: 500,
	d: 556,
	e: 556,
	f: 278,
	g: 556,
	h: 556,
	i: 222,
	j: 222,
	k: 500,
	l: 222,
	m: 833,
	n: 556,
	o: 556,
	p: 556,
	q: 556,
	r: 333,
	s: 500,
	t: 278,
	u: 556,
	v: 500,
	w: 722,
	x: 500,
	y: 500,
	z: 500,
	"·": 278,
	"–": 556,
	"−": 584,
	"…": 1e3,
	"←": 1e3,
	"→": 1e3,
	"↑": 500,
	"↓": 500,
	"±": 549,
	"×": 584
};
/**
* The width of a line of text in px, without a page to measure it on.
*
* @param size  Type size in px.
* @param bold  Adds 8 %.
*
* Error  within about 10 % for Latin text in the usual faces. Wide scripts count a full em, marks that
*        combine and direction controls count nothing.
*/
function textWidth(text, size, bold = false) {
	let sum = 0;
	for (const character of text) sum += widths[character] ?? otherWidth(character);
	return sum / 1e3 * size * (bold ? 1.08 : 1);
}
function otherWidth(character) {
	if (/\p{Mark}|\p{Format}|\p{Control}/u.test(character)) return 0;
	if (/\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Script=Hangul}/u.test(character)) return 1e3;
	if (/\p{Extended_Pictographic}/u.test(character)) return 1300;
	if (/\d/.test(character)) return 556;
	return /\p{Uppercase}/u.test(character) ? 740 : 600;
}
// ../../packages/charts/src/palette.ts
var light = {
	paper: "#fbf8f1",
	ink: "#24211c",
	inkQuiet: "#5f594e",
	hairline: "#ddd6c8",
	committed: "#064148",
	asWritten: "#9a6208",
	register: "#7b4069",
	rangeWide: "#ece6d9",
	rangeCore: "#d3cab9",
	rangeEdge: "#8b8373"
};
var dark = {
	paper: "#1b1a17",
	ink: "#ece7db",
	inkQuiet: "#b0a898",
	hairline: "#3d3a33",
	committed: "#62afbf",
	asWritten: "#e2c26b",
	register: "#b16f97",
	rangeWide: "#2c2a25",
	rangeCore: "#4a463c",
	rangeEdge: "#8f8776"
};
/** The palette of a theme; light unless told otherwise. */
function palette(theme = "light") {
	return theme === "dark" ? dark : light;
}
Object.defineProperty(exports, "keepTogether", {
	enumerable: true,
	get: function() {
		return keepTogether;
	}
});
Object.defineProperty(exports, "palette", {
	enumerable: true,
	get: function() {
		return palette;
	}
});
Object.defineProperty(exports, "textWidth", {
	enumerable: true,
	get: function() {
		return textWidth;
	}
});
