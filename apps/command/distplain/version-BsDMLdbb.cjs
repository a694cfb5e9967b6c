// ../../packages/core/src/version.ts
/** Engine version, part of every run stamp. A change of results is a change of this and of the changelog. */
var version = "0.1.0";
Object.defineProperty(exports, "version", {
	enumerable: true,
	get: function() {
		return version;
	}
});
