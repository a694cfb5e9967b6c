import Module, { createRequire } from "node:module";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import vm from "node:vm";
import { crc32 } from "node:zlib";
// src/start/loadProgram.ts
var loaded = /* @__PURE__ */ new Map();
/**
* Runs a built file (CommonJS) and those beside it that it asks for, with the code that the engine compiled of them when
* they were built (`keepCompiled`): reading a megabyte of program anew costs a tenth of a second at every start. What was
* compiled by another engine, or is missing, is compiled as usual.
*
* Errors: whatever the program throws while it is loaded.
*/
function loadProgram(file) {
	const known = loaded.get(file);
	if (known !== void 0) return known.module.exports;
	const source = readFileSync(file);
	const script = new vm.Script(Module.wrap(source.toString("utf8")), {
		filename: file,
		cachedData: compiledOf(file, source),
		importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER
	});
	const module = { exports: {} };
	loaded.set(file, {
		file,
		source,
		script,
		module
	});
	const others = createRequire(file);
	const require = (id) => id.startsWith(".") ? loadProgram(others.resolve(id)) : others(id);
	const run = script.runInThisContext();
	try {
		run.call(module.exports, module.exports, require, module, file, dirname(file));
	} catch (error) {
		loaded.delete(file);
		throw error;
	}
	return module.exports;
}
/** Keeps what the engine has compiled of all that was run, beside each file. For the build. */
function keepCompiled() {
	for (const { file, source, script } of loaded.values()) writeFileSync(nameFor(file), Buffer.concat([sumOf(source), script.createCachedData()]));
}
/** The path of a file beside another. */
function beside(url, name) {
	return fileURLToPath(new URL(name, url));
}
/**
* The engine itself compares no more than its own version and the length of the source. A build that was cut short, or is
* going on, may leave one file of before beside another of after.
*/
function compiledOf(file, source) {
	try {
		const kept = readFileSync(nameFor(file));
		return sumOf(source).equals(kept.subarray(0, sumLength)) ? kept.subarray(sumLength) : void 0;
	} catch {
		return;
	}
}
var sumLength = 4;
function sumOf(source) {
	const sum = Buffer.alloc(sumLength);
	sum.writeUInt32LE(crc32(source));
	return sum;
}
function nameFor(file) {
	return `${file}.compiled`;
}
export { keepCompiled as n, loadProgram as r, beside as t };
