// ../../packages/charts/src/sentences/enumerated.ts
/** "a", "a and b", "a, b and c". */
function enumerated(parts) {
	if (parts.length < 2) return parts.join("");
	return `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
Object.defineProperty(exports, "enumerated", {
	enumerable: true,
	get: function() {
		return enumerated;
	}
});
