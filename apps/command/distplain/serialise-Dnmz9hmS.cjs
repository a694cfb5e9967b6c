// ../../packages/charts/src/figure/serialise.ts
/**
* An SVG element as XML text: attributes in the order they were set, text escaped, and only characters that
* XML 1.0 allows (section 2.2 of the recommendation). Anything but elements and text is left out.
*
* Not the document's own serialiser, because those differ in namespaces and escapes from one to the next.
*/
function serialise(node) {
	if (node.nodeType === 3) return escapeXml(node.nodeValue ?? "");
	if (node.nodeType !== 1) return "";
	const element = node;
	const attributes = Array.from(element.attributes, ({ name, value }) => ` ${name}="${escapeXml(value)}"`).join("");
	const inside = Array.from(element.childNodes, serialise).join("");
	const name = element.localName;
	if (inside === "") return `<${name}${attributes}/>`;
	return `<${name}${attributes}>${inside}</${name}>`;
}
var escapes = {
	"&": "&amp;",
	"<": "&lt;",
	">": "&gt;",
	"\"": "&quot;",
	"'": "&#39;"
};
/** Text as it may stand in XML content and in a quoted attribute. Characters XML forbids become U+FFFD. */
function escapeXml(text) {
	return text.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "�").replace(/[&<>"']/g, (character) => escapes[character] ?? character);
}
Object.defineProperty(exports, "escapeXml", {
	enumerable: true,
	get: function() {
		return escapeXml;
	}
});
Object.defineProperty(exports, "serialise", {
	enumerable: true,
	get: function() {
		return serialise;
	}
});
