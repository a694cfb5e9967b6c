const require_plan = require("./plan-DgohkeUq.cjs");
const require_shapes = require("./shapes-8oDnecao.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_program = require("./program.cjs");
const require_dist$1 = require("./dist-CwAs5euc.cjs");
// ../../node_modules/.pnpm/@noble+hashes@2.4.0/node_modules/@noble/hashes/_u64.js
var fromNumH = (n) => n / 2 ** 32 | 0;
var fromNumL = (n) => n >>> 0;
function setU64FromNum(view, byteOffset, n, isLE) {
	const h = fromNumH(n);
	const l = fromNumL(n);
	view.setUint32(byteOffset, isLE ? l : h, isLE);
	view.setUint32(byteOffset + 4, isLE ? h : l, isLE);
}
// ../../node_modules/.pnpm/@noble+hashes@2.4.0/node_modules/@noble/hashes/utils.js
/**
* Checks if something is Uint8Array. Be careful: nodejs Buffer will return true.
* @param a - value to test
* @returns `true` when the value is a Uint8Array-compatible view.
* @example
* Check whether a value is a Uint8Array-compatible view.
* ```ts
* isBytes(new Uint8Array([1, 2, 3]));
* ```
*/
function isBytes(a) {
	return a instanceof Uint8Array || ArrayBuffer.isView(a) && a.constructor.name === "Uint8Array" && "BYTES_PER_ELEMENT" in a && a.BYTES_PER_ELEMENT === 1;
}
var atitle = (title) => title ? `"${title}" ` : "";
/**
* Asserts something is a non-negative integer.
* @param n - number to validate
* @param title - label included in thrown errors
* @returns The validated number.
* @throws On wrong argument types. {@link TypeError}
* @throws On wrong argument ranges or values. {@link RangeError}
* @example
* Validate a non-negative integer option.
* ```ts
* anumber(32, 'length');
* ```
*/
function anumber(n, title = "") {
	if (typeof n !== "number") throw new TypeError(atitle(title) + "expected number, got " + typeof n);
	if (!Number.isSafeInteger(n) || n < 0) throw new RangeError(atitle(title) + "expected integer >= 0, got " + n);
	return n;
}
/**
* Asserts something is Uint8Array.
* @param value - value to validate
* @param length - optional exact length constraint
* @param title - label included in thrown errors
* @returns The validated byte array.
* @throws On wrong argument types. {@link TypeError}
* @throws On wrong argument ranges or values. {@link RangeError}
* @example
* Validate that a value is a byte array.
* ```ts
* abytes(new Uint8Array([1, 2, 3]));
* ```
*/
function abytes(value, length, title = "") {
	if (isBytes(value) && (length === void 0 || value.length === length)) return value;
	if (length !== void 0) anumber(length, "length");
	const bytes = isBytes(value);
	const ofLen = length !== void 0 ? ` of length ${length}` : "";
	const got = bytes ? `length=${value.length}` : `type=${typeof value}`;
	const message = atitle(title) + "expected Uint8Array" + ofLen + ", got " + got;
	if (!bytes) throw new TypeError(message);
	throw new RangeError(message);
}
var aobject = (value, label) => {
	if (value === null || typeof value !== "object" || Array.isArray(value)) throw new TypeError((label === "object" ? "" : `"${label}" `) + "expected object, got type=" + typeof value);
};
var aopts = (value, label) => {
	aobject(value, label);
	const proto = Object.getPrototypeOf(value);
	if (proto !== Object.prototype && proto !== null) throw new TypeError(`"${label}" expected plain object`);
	if (Object.hasOwn(value, "__proto__")) throw new TypeError(`"${label}.__proto__" is not allowed`);
};
/**
* Asserts a hash instance has not been destroyed or finished.
* @param instance - hash instance to validate
* @param checkFinished - whether to reject finalized instances
* @throws If the hash instance has already been destroyed or finalized. {@link Error}
* @example
* Validate that a hash instance is still usable.
* ```ts
* import { aexists } from '@noble/hashes/utils.js';
* import { sha256 } from '@noble/hashes/sha2.js';
* const hash = sha256.create();
* aexists(hash);
* ```
*/
function aexists(instance, checkFinished = true) {
	if (instance.destroyed) throw new Error("hash was destroyed");
	if (checkFinished && instance.finished) throw new Error("digest() was already called");
}
/**
* Asserts output is a sufficiently-sized byte array.
* @param out - destination buffer
* @param instance - hash instance providing output length
* Oversized buffers are allowed; downstream code only promises to fill the first `outputLen` bytes.
* @throws On wrong argument types. {@link TypeError}
* @throws On wrong argument ranges or values. {@link RangeError}
* @example
* Validate a caller-provided digest buffer.
* ```ts
* import { aoutput } from '@noble/hashes/utils.js';
* import { sha256 } from '@noble/hashes/sha2.js';
* const hash = sha256.create();
* aoutput(new Uint8Array(hash.outputLen), hash);
* ```
*/
function aoutput(out, instance) {
	abytes(out, void 0, "output");
	const min = instance.outputLen;
	if (!(out.length >= min)) throw new RangeError("\"output\" expected length >= " + min);
}
/**
* Zeroizes typed arrays in place. Warning: JS provides no guarantees.
* @param arrays - arrays to overwrite with zeros
* @example
* Zeroize sensitive buffers in place.
* ```ts
* clean(new Uint8Array([1, 2, 3]));
* ```
*/
function clean(...arrays) {
	for (let i = 0; i < arrays.length; i++) arrays[i].fill(0);
}
/**
* Creates a DataView for byte-level manipulation.
* @param arr - source typed array
* @returns DataView over the same buffer region.
* @example
* Create a DataView over an existing buffer.
* ```ts
* createView(new Uint8Array(4));
* ```
*/
function createView(arr) {
	return new DataView(arr.buffer, arr.byteOffset, arr.byteLength);
}
/**
* Rotate-right operation for uint32 values.
* @param word - source word
* @param shift - shift amount in bits
* @returns Rotated word.
* @example
* Rotate a 32-bit word to the right.
* ```ts
* rotr(0x12345678, 8);
* ```
*/
function rotr(word, shift) {
	return word << 32 - shift | word >>> shift;
}
var hasHexBuiltin = /* @__PURE__ */ (() => typeof Uint8Array.from([]).toHex === "function" && typeof Uint8Array.fromHex === "function")();
var hexes = /* @__PURE__ */ Array.from({ length: 256 }, (_, i) => i.toString(16).padStart(2, "0"));
/**
* Convert byte array to hex string.
* Uses the built-in function when available and assumes it matches the tested
* fallback semantics.
* @param bytes - bytes to encode
* @returns Lowercase hexadecimal string.
* @throws On wrong argument types. {@link TypeError}
* @example
* Convert bytes to lowercase hexadecimal.
* ```ts
* bytesToHex(Uint8Array.from([0xca, 0xfe, 0x01, 0x23])); // 'cafe0123'
* ```
*/
function bytesToHex(bytes) {
	abytes(bytes);
	if (hasHexBuiltin) return bytes.toHex();
	let hex = "";
	for (let i = 0; i < bytes.length; i++) hex += hexes[bytes[i]];
	return hex;
}
/**
* Converts string to bytes using UTF8 encoding.
* Built-in doesn't validate input to be string: we do the check.
* Non-ASCII details are delegated to the platform `TextEncoder`.
* @param str - string to encode
* @returns UTF-8 encoded bytes.
* @throws On wrong argument types. {@link TypeError}
* @example
* Encode a string as UTF-8 bytes.
* ```ts
* utf8ToBytes('abc'); // Uint8Array.from([97, 98, 99])
* ```
*/
function utf8ToBytes(str) {
	if (typeof str !== "string") throw new TypeError("string expected");
	const encoded = new TextEncoder().encode(str);
	try {
		return new Uint8Array(encoded);
	} finally {
		clean(encoded);
	}
}
/**
* Merges default options and passed options.
* @param defaults - base option object
* @param opts - user overrides
* @param title - label included in thrown override errors
* @returns Fresh merged option object with a null prototype.
* @throws On wrong argument types. {@link TypeError}
* @example
* Merge user overrides onto default options.
* ```ts
* checkOpts({ dkLen: 32 }, { asyncTick: 10 });
* ```
*/
function checkOpts(defaults, opts, title = "opts") {
	aopts(defaults, "defaults");
	if (opts !== void 0) aopts(opts, title);
	return Object.assign(Object.create(null), defaults, opts);
}
/**
* Creates a callable hash function from a stateful class constructor.
* @param hashCons - hash constructor or factory
* @param info - optional metadata such as DER OID
* @returns Frozen callable hash wrapper with `.create()`.
*   Wrapper construction eagerly calls `hashCons(undefined)` once to read
*   `outputLen` / `blockLen`, so constructor side effects happen at module
*   init time.
* @throws On wrong argument types. {@link TypeError}
* @example
* Wrap a stateful hash constructor into a callable helper.
* ```ts
* import { createHasher } from '@noble/hashes/utils.js';
* import { sha256 } from '@noble/hashes/sha2.js';
* const wrapped = createHasher(sha256.create, { oid: sha256.oid });
* wrapped(new Uint8Array([1]));
* ```
*/
function createHasher(hashCons, info = {}) {
	if (typeof hashCons !== "function") throw new TypeError("\"hashCons\" expected function, got type=" + typeof hashCons);
	info = checkOpts({}, info, "info");
	const hashC = (msg, opts) => hashCons(opts).update(msg).digest();
	const tmp = hashCons(void 0);
	hashC.outputLen = tmp.outputLen;
	hashC.blockLen = tmp.blockLen;
	hashC.canXOF = tmp.canXOF;
	hashC.create = (opts) => hashCons(opts);
	Object.assign(hashC, info);
	return Object.freeze(hashC);
}
/**
* Creates OID metadata for NIST hashes with prefix `06 09 60 86 48 01 65 03 04 02`.
* @param suffix - final OID byte for the selected hash.
*   The helper accepts any byte even though only the documented NIST hash
*   suffixes are meaningful downstream.
* @returns Object containing the DER-encoded OID.
* @example
* Build OID metadata for a NIST hash.
* ```ts
* oidNist(0x01);
* ```
*/
var oidNist = (suffix) => ({ oid: Uint8Array.from([
	6,
	9,
	96,
	134,
	72,
	1,
	101,
	3,
	4,
	2,
	suffix
]) });
// ../../node_modules/.pnpm/@noble+hashes@2.4.0/node_modules/@noble/hashes/_md.js
/**
* Internal Merkle-Damgard hash utils.
* @module
*/
/**
* Shared 32-bit conditional boolean primitive reused by SHA-256, SHA-1, and MD5 `F`.
* Returns bits from `b` when `a` is set, otherwise from `c`.
* The XOR form is equivalent to MD5's `F(X,Y,Z) = XY v not(X)Z` because the masked terms never
* set the same bit.
* @param a - selector word
* @param b - word chosen when selector bit is set
* @param c - word chosen when selector bit is clear
* @returns Mixed 32-bit word.
* @example
* Combine three words with the shared 32-bit choice primitive.
* ```ts
* Chi(0xffffffff, 0x12345678, 0x87654321);
* ```
*/
function Chi(a, b, c) {
	return a & b ^ ~a & c;
}
/**
* Shared 32-bit majority primitive reused by SHA-256 and SHA-1.
* Returns bits shared by at least two inputs.
* @param a - first input word
* @param b - second input word
* @param c - third input word
* @returns Mixed 32-bit word.
* @example
* Combine three words with the shared 32-bit majority primitive.
* ```ts
* Maj(0xffffffff, 0x12345678, 0x87654321);
* ```
*/
function Maj(a, b, c) {
	return a & b ^ a & c ^ b & c;
}
/**
* Merkle-Damgard hash construction base class.
* Could be used to create MD5, RIPEMD, SHA1, SHA2.
* Accepts only byte-aligned `Uint8Array` input, even when the underlying spec describes bit
* strings with partial-byte tails.
* @param blockLen - internal block size in bytes
* @param outputLen - digest size in bytes
* @param padOffset - trailing length field size in bytes
* @param isLE - whether length and state words are encoded in little-endian
* @example
* Use a concrete subclass to get the shared Merkle-Damgard update/digest flow.
* ```ts
* import { _SHA1 } from '@noble/hashes/legacy.js';
* const hash = new _SHA1();
* hash.update(new Uint8Array([97, 98, 99]));
* hash.digest();
* ```
*/
var HashMD = class {
	blockLen;
	outputLen;
	canXOF = false;
	padOffset;
	isLE;
	buffer;
	view;
	finished = false;
	length = 0;
	pos = 0;
	destroyed = false;
	constructor(blockLen, outputLen, padOffset, isLE) {
		this.blockLen = blockLen;
		this.outputLen = outputLen;
		this.padOffset = padOffset;
		this.isLE = isLE;
		this.buffer = new Uint8Array(blockLen);
		this.view = createView(this.buffer);
	}
	update(data) {
		aexists(this);
		abytes(data);
		const { view, buffer, blockLen } = this;
		const len = data.length;
		let processed = false;
		for (let pos = 0; pos < len;) {
			const take = Math.min(blockLen - this.pos, len - pos);
			if (take === blockLen) {
				const dataView = createView(data);
				for (; blockLen <= len - pos; pos += blockLen) this.process(dataView, pos);
				processed = true;
				continue;
			}
			buffer.set(pos === 0 && take === len ? data : data.subarray(pos, pos + take), this.pos);
			this.pos += take;
			pos += take;
			if (this.pos === blockLen) {
				this.process(view, 0);
				this.pos = 0;
				processed = true;
			}
		}
		this.length += data.length;
		if (processed) this.roundClean();
		return this;
	}
	digestInto(out) {
		aexists(this);
		aoutput(out, this);
		this.finished = true;
		const { buffer, view, blockLen, isLE } = this;
		let { pos } = this;
		buffer[pos++] = 128;
		buffer.fill(0, pos);
		if (this.padOffset > blockLen - pos) {
			this.process(view, 0);
			buffer.fill(0);
		}
		setU64FromNum(view, blockLen - 8, this.length * 8, isLE);
		this.process(view, 0);
		this.roundClean();
		const oview = out === buffer ? view : createView(out);
		const len = this.outputLen;
		const outLen = len / 4;
		const state = this.get();
		if (len % 4 || outLen > state.length) throw new Error("invalid outputLen");
		for (let i = 0; i < outLen; i++) oview.setUint32(4 * i, state[i], isLE);
	}
	digest() {
		const { buffer, outputLen } = this;
		this.digestInto(buffer);
		const res = buffer.slice(0, outputLen);
		this.destroy();
		return res;
	}
	_cloneIntoMeta(to) {
		const { buffer, length, finished, destroyed, pos } = this;
		to.destroyed = destroyed;
		to.finished = finished;
		to.length = length;
		to.pos = pos;
		if (pos) to.buffer.set(buffer);
		return to;
	}
	clone() {
		return this._cloneInto();
	}
};
/**
* Initial SHA-2 state: fractional parts of square roots of first 16 primes 2..53.
* Check out `test/misc/sha2-gen-iv.js` for recomputation guide.
*/
/** Initial SHA256 state from RFC 6234 §6.1: the first 32 bits of the fractional parts of the
* square roots of the first eight prime numbers. Exported as a shared table; callers must treat
* it as read-only because constructors copy words from it by index. */
var SHA256_IV = /* @__PURE__ */ Uint32Array.from([
	1779033703,
	3144134277,
	1013904242,
	2773480762,
	1359893119,
	2600822924,
	528734635,
	1541459225
]);
// ../../node_modules/.pnpm/@noble+hashes@2.4.0/node_modules/@noble/hashes/sha2.js
/**
* SHA2 hash function. A.k.a. sha256, sha384, sha512, sha512_224, sha512_256.
* SHA256 is the fastest hash implementable in JS, even faster than Blake3.
* Check out {@link https://www.rfc-editor.org/rfc/rfc4634 | RFC 4634} and
* {@link https://nvlpubs.nist.gov/nistpubs/FIPS/NIST.FIPS.180-4.pdf | FIPS 180-4}.
* @module
*/
/**
* SHA-224 / SHA-256 round constants from RFC 6234 §5.1: the first 32 bits
* of the cube roots of the first 64 primes (2..311).
*/
var SHA256_K = /* @__PURE__ */ Uint32Array.from([
	1116352408,
	1899447441,
	3049323471,
	3921009573,
	961987163,
	1508970993,
	2453635748,
	2870763221,
	3624381080,
	310598401,
	607225278,
	1426881987,
	1925078388,
	2162078206,
	2614888103,
	3248222580,
	3835390401,
	4022224774,
	264347078,
	604807628,
	770255983,
	1249150122,
	1555081692,
	1996064986,
	2554220882,
	2821834349,
	2952996808,
	3210313671,
	3336571891,
	3584528711,
	113926993,
	338241895,
	666307205,
	773529912,
	1294757372,
	1396182291,
	1695183700,
	1986661051,
	2177026350,
	2456956037,
	2730485921,
	2820302411,
	3259730800,
	3345764771,
	3516065817,
	3600352804,
	4094571909,
	275423344,
	430227734,
	506948616,
	659060556,
	883997877,
	958139571,
	1322822218,
	1537002063,
	1747873779,
	1955562222,
	2024104815,
	2227730452,
	2361852424,
	2428436474,
	2756734187,
	3204031479,
	3329325298
]);
/** Reusable SHA-224 / SHA-256 message schedule buffer `W_t` from RFC 6234 §6.2 step 1. */
var SHA256_W = /* @__PURE__ */ new Uint32Array(64);
/** Internal SHA-224 / SHA-256 compression engine from RFC 6234 §6.2. */
var SHA2_32B = class extends HashMD {
	A = 0;
	B = 0;
	C = 0;
	D = 0;
	E = 0;
	F = 0;
	G = 0;
	H = 0;
	constructor(outputLen, IV) {
		super(64, outputLen, 8, false);
		this.A = IV[0] | 0;
		this.B = IV[1] | 0;
		this.C = IV[2] | 0;
		this.D = IV[3] | 0;
		this.E = IV[4] | 0;
		this.F = IV[5] | 0;
		this.G = IV[6] | 0;
		this.H = IV[7] | 0;
	}
	get() {
		const { A, B, C, D, E, F, G, H } = this;
		return [
			A,
			B,
			C,
			D,
			E,
			F,
			G,
			H
		];
	}
	set(A, B, C, D, E, F, G, H) {
		this.A = A | 0;
		this.B = B | 0;
		this.C = C | 0;
		this.D = D | 0;
		this.E = E | 0;
		this.F = F | 0;
		this.G = G | 0;
		this.H = H | 0;
	}
	_cloneInto(to) {
		(to ||= new this.constructor()).set(...this.get());
		return this._cloneIntoMeta(to);
	}
	process(view, offset) {
		for (let i = 0; i < 16; i++, offset += 4) SHA256_W[i] = view.getUint32(offset, false);
		for (let i = 16; i < 64; i++) {
			const W15 = SHA256_W[i - 15];
			const W2 = SHA256_W[i - 2];
			const s0 = rotr(W15, 7) ^ rotr(W15, 18) ^ W15 >>> 3;
			const s1 = rotr(W2, 17) ^ rotr(W2, 19) ^ W2 >>> 10;
			SHA256_W[i] = s1 + SHA256_W[i - 7] + s0 + SHA256_W[i - 16] | 0;
		}
		let { A, B, C, D, E, F, G, H } = this;
		for (let i = 0; i < 64; i++) {
			const sigma1 = rotr(E, 6) ^ rotr(E, 11) ^ rotr(E, 25);
			const T1 = H + sigma1 + Chi(E, F, G) + SHA256_K[i] + SHA256_W[i] | 0;
			const T2 = (rotr(A, 2) ^ rotr(A, 13) ^ rotr(A, 22)) + Maj(A, B, C) | 0;
			H = G;
			G = F;
			F = E;
			E = D + T1 | 0;
			D = C;
			C = B;
			B = A;
			A = T1 + T2 | 0;
		}
		A = A + this.A | 0;
		B = B + this.B | 0;
		C = C + this.C | 0;
		D = D + this.D | 0;
		E = E + this.E | 0;
		F = F + this.F | 0;
		G = G + this.G | 0;
		H = H + this.H | 0;
		this.set(A, B, C, D, E, F, G, H);
	}
	roundClean() {
		clean(SHA256_W);
	}
	destroy() {
		this.destroyed = true;
		this.set(0, 0, 0, 0, 0, 0, 0, 0);
		clean(this.buffer);
	}
};
/** Internal SHA-256 hash class grounded in RFC 6234 §6.2. */
var _SHA256 = class extends SHA2_32B {
	constructor() {
		super(32, SHA256_IV);
	}
};
/**
* SHA2-256 hash function from RFC 4634. In JS it's the fastest: even faster than Blake3. Some info:
*
* - Trying 2^128 hashes would get 50% chance of collision, using birthday attack.
* - BTC network is doing 2^70 hashes/sec (2^95 hashes/year) as per 2025.
* - Each sha256 hash is executing 2^18 bit operations.
* - Good 2024 ASICs can do 200Th/sec with 3500 watts of power, corresponding to 2^36 hashes/joule.
* @param msg - message bytes to hash
* @param opts - Reserved hash options.
* @returns Digest bytes.
* @example
* Hash a message with SHA2-256.
* ```ts
* sha256(new Uint8Array([97, 98, 99]));
* ```
*/
var sha256 = /* @__PURE__ */ createHasher(() => new _SHA256(), /* @__PURE__ */ oidNist(1));
// ../../packages/core/src/plan/source/readJson.ts
var JsonFault = class extends Error {
	fault;
	constructor(fault) {
		super(fault.code);
		this.fault = fault;
	}
};
var NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
/** Unrolled, so that long text costs no backtracking. */
var STRING = /"[^"\\\u0000-\u001f]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[^"\\\u0000-\u001f]*)*"/y;
var SPACE = /[ \t\r\n]*/y;
/**
* Reads JSON (RFC 8259) into nodes with positions, repeated keys kept apart instead of silently dropped
* as `JSON.parse` does. Linear in the text; nesting beyond `MAX_DEPTH` is a fault. Never throws.
*/
function readJson(text) {
	let at = 0;
	const skip = () => {
		SPACE.lastIndex = at;
		SPACE.test(text);
		at = SPACE.lastIndex;
	};
	const fail = (rule, remedy, code = "json-syntax") => {
		const received = at < text.length ? text.slice(at, at + 24).split("\n")[0] ?? "" : "";
		throw new JsonFault({
			code,
			at,
			received,
			rule,
			remedy
		});
	};
	const string = () => {
		STRING.lastIndex = at;
		if (!STRING.test(text)) return fail("This is not a JSON string.", "Write text between double quotes.");
		const raw = text.slice(at, STRING.lastIndex);
		at = STRING.lastIndex;
		return raw.includes("\\") ? JSON.parse(raw) : raw.slice(1, -1);
	};
	const word = (literal, value) => {
		if (!text.startsWith(literal, at)) return fail("A JSON value was expected.", "Check the text from here on.");
		const node = {
			kind: "scalar",
			value,
			at,
			end: at + literal.length
		};
		at += literal.length;
		return node;
	};
	const value = (depth) => {
		if (depth > 100) return fail(`A plan nests at most 100 levels.`, "Close the brackets.", "too-deep");
		const begin = at;
		const first = text[at];
		if (first === "{") return object(begin, depth);
		if (first === "[") return list(begin, depth);
		if (first === "\"") return {
			kind: "scalar",
			value: string(),
			at: begin,
			end: at
		};
		if (first === "t") return word("true", true);
		if (first === "f") return word("false", false);
		if (first === "n") return word("null", null);
		NUMBER.lastIndex = at;
		if (!NUMBER.test(text)) return fail("A JSON value was expected.", "Check the text from here on.");
		at = NUMBER.lastIndex;
		return {
			kind: "scalar",
			value: Number(text.slice(begin, at)),
			at: begin,
			end: at
		};
	};
	const list = (begin, depth) => {
		const items = [];
		at++;
		skip();
		if (text[at] !== "]") {
			for (;;) {
				skip();
				items.push(value(depth + 1));
				skip();
				if (text[at] !== ",") break;
				at++;
			}
			if (text[at] !== "]") return fail("A list ends with `]`.", "Put a comma between items, `]` at the end.");
		}
		at++;
		return {
			kind: "list",
			items,
			at: begin,
			end: at
		};
	};
	const object = (begin, depth) => {
		const entries = /* @__PURE__ */ new Map();
		const repeated = [];
		at++;
		skip();
		if (text[at] !== "}") {
			for (;;) {
				skip();
				const keyAt = at;
				const key = string();
				skip();
				if (text[at] !== ":") return fail("A colon follows a key.", "Write a colon here.");
				at++;
				skip();
				const entry = {
					key,
					keyAt,
					node: value(depth + 1)
				};
				if (entries.has(key)) repeated.push(entry);
				else entries.set(key, entry);
				skip();
				if (text[at] !== ",") break;
				at++;
			}
			if (text[at] !== "}") return fail("An object ends with `}`.", "Put a comma between keys, `}` at the end.");
		}
		at++;
		return {
			kind: "map",
			entries,
			repeated,
			at: begin,
			end: at
		};
	};
	try {
		if (text.charCodeAt(0) === 65279) at = 1;
		skip();
		const root = value(0);
		skip();
		if (at < text.length) fail("The document ends here.", "Remove what follows.");
		return {
			text,
			root,
			faults: []
		};
	} catch (error) {
		if (error instanceof JsonFault) return {
			text,
			faults: [error.fault],
			brokenFrom: error.fault.at
		};
		throw error;
	}
}
// ../../packages/core/src/plan/source/quoteColons.ts
var import_dist = require_dist$1.require_dist();
/** A key and its unquoted text, as far as the end of the line: `title: Phase 2: build`. */
var IN_BLOCK = /^([ \t]*(?:- +)*[^\s:#"'[{][^:]*: +)([^\s"'[{>|&*!#].*)$/;
/** Unquoted text between brackets, as far as the next comma or bracket. */
var IN_BRACKETS = /[^\s"'[{>|&*!#,\]}][^,\]}\n\r]*/y;
/** A longer text is not written out again in what is to be done. */
var MOST = 120;
/**
* Puts quotes round unquoted text that holds a colon, where the parser stumbled over it, and reports each.
* Every line keeps its number. `undefined` where there is nothing to quote.
*/
function quoteColons(text, errors, faults) {
	const parts = [];
	let done = 0;
	for (const { code, pos } of errors) {
		const found = code === "BLOCK_AS_IMPLICIT_KEY" ? inBlock(text, pos[0]) : code === "BLOCK_IN_FLOW" ? inBrackets(text, pos[0]) : void 0;
		if (found === void 0 || found.at < done || !/:(?:\s|$)/.test(found.value)) continue;
		const quoted = JSON.stringify(found.value);
		faults.push({
			code: "colon-in-text",
			at: found.at,
			received: found.value,
			rule: "A text with a colon needs quotes.",
			remedy: quoted.length > MOST ? "Put it between quotes." : `Write ${found.key}: ${quoted}.`
		});
		parts.push(text.slice(done, found.at), quoted);
		done = found.at + found.value.length;
	}
	return done === 0 ? void 0 : parts.join("") + text.slice(done);
}
function inBlock(text, at) {
	const begin = text.lastIndexOf("\n", at - 1) + 1;
	const newline = text.indexOf("\n", begin);
	const line = text.slice(begin, newline < 0 ? text.length : newline).replace(/\r$/, "");
	const [, head = "", rest = ""] = IN_BLOCK.exec(line) ?? [];
	const value = rest.trimEnd();
	if (value === "") return void 0;
	return {
		key: head.trim().replace(/^(?:- +)+|:$/g, ""),
		value,
		at: begin + head.length
	};
}
function inBrackets(text, at) {
	IN_BRACKETS.lastIndex = at;
	const value = IN_BRACKETS.exec(text)?.[0].trimEnd();
	if (value === void 0) return void 0;
	const [, key = "name"] = /([\w-]+):[ \t]+$/.exec(text.slice(Math.max(0, at - 60), at)) ?? [];
	return {
		key,
		value,
		at
	};
}
// ../../packages/core/src/plan/source/sizeFault.ts
/** A plan of 200,000 tasks; beyond it the memory of a small machine would not do. */
var MOST_CHARACTERS = 2e7;
/**
* The parser of YAML takes up to 2 kB of memory for each of its signs, text between them next to nothing (measured: a
* million lines of `k: 1`, of `a`, of `- { id: a }`). This many are 50,000 tasks.
*/
var MOST_SIGNS = 1e6;
var fault = (received, rule, remedy) => ({
	code: "too-large",
	at: 0,
	received,
	rule,
	remedy
});
/** What is wrong with the size of a text, before anything is made of it. */
function sizeFault(text) {
	if (text.length <= MOST_CHARACTERS) return void 0;
	return fault(`${text.length} characters`, "A plan of more than 20 million characters is not read.", "Make several plans of it, or leave out what no plan needs.");
}
/** ... of a text that is to be read as YAML. */
function yamlSizeFault(text) {
	if (text.length <= MOST_SIGNS) return void 0;
	let signs = 0;
	for (let at = 0; at < text.length; at++) if (SIGNS[text.charCodeAt(at)] === 1) signs++;
	if (signs <= MOST_SIGNS) return void 0;
	return fault(`${signs} signs`, "A plan of more than a million lines, commas, colons and other signs is not read as YAML.", "Write it as JSON, or make several plans of it.");
}
var SIGNS = /* @__PURE__ */ new Uint8Array(65536);
for (const sign of "\n\r	,:[]{}-?&*!|>#%@`\"'") SIGNS[sign.charCodeAt(0)] = 1;
// ../../packages/core/src/plan/source/yamlError.ts
/** What to say to someone who does not know YAML, by the parser's code for the fault. */
var WORDS = {
	TAB_AS_INDENT: ["Lines are indented with spaces.", "Replace the tab by spaces."],
	BAD_INDENT: ["Keys of one object stand in one column.", "Indent this line like the lines beside it."],
	BLOCK_AS_IMPLICIT_KEY: ["Keys of one object stand in one column, each with its value behind it.", "Indent this line and the next alike; put text with a colon between quotes."],
	MULTILINE_IMPLICIT_KEY: ["A key stands on one line, with a colon after it.", "Write `key: value` on one line."],
	MISSING_CHAR: ["Something is opened here and not closed, or a sign is missing.", "Check quotes, brackets and colons."],
	BAD_ALIAS: ["`*` begins a reference to something marked with `&`.", "Put the text between quotes."],
	BAD_DQ_ESCAPE: ["`\\` in double quotes begins an escape.", "Use single quotes, or write `\\\\`."],
	BAD_SCALAR_START: ["Text may not begin with this sign.", "Put the text between quotes."],
	MULTIPLE_DOCS: ["A plan is one document.", "Remove the `---` and what follows it."],
	TAG_RESOLVE_FAILED: ["A plan holds only text, numbers, true or false, lists and objects.", "Remove the tag."],
	BLOCK_IN_FLOW: ["Inside brackets everything is written in brackets.", "Write lists as [a, b], and text with a colon between quotes."],
	COMMENT_SPACE: ["A comment begins with a space and `#`.", "Put a space before the `#`."],
	UNEXPECTED_TOKEN: ["This does not belong here.", "Put text between quotes, or check brackets and indentation."]
};
/** Turns a fault of the YAML parser into words for a planner. */
function describeYamlError(error, text) {
	const at = error.pos[0];
	const [rule, remedy] = WORDS[unclosed(error) ? "MISSING_CHAR" : error.code] ?? [`${error.message.split("\n")[0]}.`, "Check this line."];
	const newline = text.indexOf("\n", at);
	const received = text.slice(at, Math.min(newline < 0 ? text.length : newline, at + 40)).trim();
	return {
		code: error.code === "MULTIPLE_DOCS" ? "several-documents" : "yaml-syntax",
		at,
		received,
		rule,
		remedy
	};
}
/** Brackets that never end come as an error of indentation. */
function unclosed(error) {
	return error.code === "BAD_INDENT" && /and end with/.test(error.message);
}
// ../../packages/core/src/plan/source/readYaml.ts
/** How many times larger than written a document may grow through its aliases. */
var ALIAS_GROWTH = 20;
/** Faults of syntax that are listed. */
var MOST_ERRORS = 20;
var OPTIONS = {
	version: "1.2",
	schema: "core",
	uniqueKeys: false,
	prettyErrors: false,
	logLevel: "error",
	stringKeys: false
};
/**
* Reads YAML 1.2 (core schema: dates stay text) into nodes with positions. Aliases are followed; loops and
* explosive growth through them are faults. A line whose unquoted text holds a colon is reported and read
* as if quoted, so that what follows is still checked. Never throws.
*/
function readYaml(text) {
	const tooLarge = yamlSizeFault(text);
	if (tooLarge !== void 0) return {
		text,
		faults: [tooLarge],
		brokenFrom: 0
	};
	const faults = [];
	let reading = text.replace(/\r(?!\n)/g, "\n");
	try {
		for (let pass = 0;; pass++) {
			const document = (0, import_dist.parseDocument)(reading, OPTIONS);
			const repaired = pass < 3 ? quoteColons(reading, document.errors, faults) : void 0;
			if (repaired !== void 0) {
				reading = repaired;
				continue;
			}
			let brokenFrom;
			let last;
			for (const [index, error] of [...document.errors, ...document.warnings].entries()) {
				if (index < MOST_ERRORS && error.pos[0] !== last) faults.push(describeYamlError(error, reading));
				last = error.pos[0];
				brokenFrom = Math.min(brokenFrom ?? error.pos[0], error.pos[0]);
			}
			const tree = {
				text: reading,
				faults
			};
			if (brokenFrom !== void 0) tree.brokenFrom = brokenFrom;
			const root = document.contents === null ? void 0 : new Converter(reading, faults).convert(document.contents);
			if (root !== void 0) tree.root = root;
			return tree;
		}
	} catch (error) {
		const deep = error instanceof RangeError;
		faults.push({
			code: deep ? "too-deep" : "yaml-syntax",
			at: 0,
			received: "",
			rule: deep ? `A plan nests at most 100 levels.` : "This is not YAML 1.2.",
			remedy: deep ? "Close the brackets." : "Check the text, or start from a fresh plan."
		});
		return {
			text,
			faults,
			brokenFrom: 0
		};
	}
}
var Converter = class {
	anchors = /* @__PURE__ */ new Map();
	text;
	faults;
	/** Nodes as written, and nodes with aliases followed. */
	written = 0;
	grown = 0;
	constructor(text, faults) {
		this.text = text;
		this.faults = faults;
	}
	convert(node, depth = 0) {
		this.written++;
		const before = this.grown++;
		const [at, end] = node?.range ?? [
			0,
			0,
			0
		];
		if (node === null) return {
			kind: "scalar",
			value: null,
			at,
			end
		};
		if (depth > 100) {
			this.fault("too-deep", at, `A plan nests at most 100 levels.`, "Close the brackets.");
			return;
		}
		if ((0, import_dist.isAlias)(node)) return this.alias(node.source, at);
		let result;
		if ((0, import_dist.isScalar)(node)) {
			const value = node.value;
			result = {
				kind: "scalar",
				value: typeof value === "string" || typeof value === "number" || typeof value === "boolean" ? value : null,
				at,
				end
			};
		} else if ((0, import_dist.isSeq)(node)) {
			const items = [];
			for (const item of node.items) {
				const converted = this.convert(item, depth + 1);
				if (converted !== void 0) items.push(converted);
			}
			result = {
				kind: "list",
				items,
				at,
				end
			};
		} else if ((0, import_dist.isMap)(node)) {
			const entries = /* @__PURE__ */ new Map();
			const repeated = [];
			for (const pair of node.items) {
				const key = this.key(pair.key);
				const keyAt = pair.key?.range?.[0] ?? at;
				if (key === void 0) {
					this.fault("odd-key", keyAt, "A key is plain text.", "Write `key: value`.");
					continue;
				}
				const value = this.convert(pair.value ?? null, depth + 1);
				if (value === void 0) continue;
				if (value.at === 0 && value.end === 0) value.at = value.end = keyAt;
				const entry = {
					key,
					keyAt,
					node: value
				};
				if (entries.has(key)) repeated.push(entry);
				else entries.set(key, entry);
			}
			result = {
				kind: "map",
				entries,
				repeated,
				at,
				end
			};
		} else return;
		if (node.anchor) this.anchors.set(node.anchor, {
			node: result,
			size: this.grown - before
		});
		return result;
	}
	key(node) {
		if (!(0, import_dist.isScalar)(node)) return void 0;
		const value = node.value;
		if (typeof value === "string") return value;
		if (value === null && node.source === "") return void 0;
		return node.source ?? String(value);
	}
	alias(name, at) {
		const target = this.anchors.get(name);
		if (target === void 0) {
			this.fault("alias", at, `\`*${name}\` stands for nothing that is complete before it.`, "Write the value out.");
			return;
		}
		this.grown += target.size;
		if (this.grown > 1e4 + ALIAS_GROWTH * this.written) {
			if (!this.faults.some((fault) => fault.code === "alias-growth")) this.fault("alias-growth", at, "Aliases make this document far larger than its text.", "Write the values out.");
			return;
		}
		return target.node;
	}
	fault(code, at, rule, remedy) {
		const received = this.text.slice(at, at + 40).split("\n")[0] ?? "";
		this.faults.push({
			code,
			at,
			received,
			rule,
			remedy
		});
	}
};
// ../../packages/core/src/plan/source/readSource.ts
/**
* Reads a text as JSON where it is JSON, as YAML 1.2 otherwise. JSON has its own path because it is an
* order of magnitude faster (`npm run bench` tells how long that takes).
*/
function readSource(text) {
	const tooLarge = sizeFault(text);
	if (tooLarge !== void 0) return {
		text,
		faults: [tooLarge],
		brokenFrom: 0
	};
	const encoding = wrongEncoding(text);
	if (encoding !== void 0) return {
		text,
		faults: [encoding],
		brokenFrom: 0
	};
	if (/^\uFEFF?\s*$/.test(text)) return {
		text,
		faults: [{
			code: "empty",
			at: 0,
			received: "",
			rule: "The document is empty.",
			remedy: STARTER
		}],
		brokenFrom: 0
	};
	if (!/^\uFEFF?\s*[{[]/.test(text)) return readYaml(text);
	const json = readJson(text);
	if (json.root !== void 0 || json.faults.some((fault) => fault.code === "too-deep")) return json;
	const yaml = readYaml(text);
	return yaml.faults.length > 0 && /^\uFEFF?\s*\{\s*"/.test(text) ? json : yaml;
}
var STARTER = "Begin with `format: 1`, `title`, `start` and `tasks`.";
function wrongEncoding(text) {
	const at = text.indexOf("\0");
	if (at < 0) return void 0;
	return {
		code: "encoding",
		at,
		received: "a NUL character",
		rule: "A plan is UTF-8 text.",
		remedy: "Save the file as UTF-8."
	};
}
// ../../packages/core/src/plan/source/toJson.ts
/** The JSON value of a node, on objects without a prototype (so that `__proto__` is a key like any other). */
function toJson(node) {
	if (node.kind === "scalar") return node.value;
	if (node.kind === "list") return node.items.map(toJson);
	const result = Object.create(null);
	for (const { key, node: value } of node.entries.values()) result[key] = toJson(value);
	return result;
}
// ../../packages/core/src/plan/source/lineColumn.ts
/** Turns offsets into 1-based lines and columns; columns count UTF-16 units. One pass, then O(log n). */
function lineColumn(text) {
	const starts = [0];
	for (let i = text.indexOf("\n"); i >= 0; i = text.indexOf("\n", i + 1)) starts.push(i + 1);
	return (at) => {
		let low = 0;
		let high = starts.length - 1;
		while (low < high) {
			const middle = low + high + 1 >> 1;
			if ((starts[middle] ?? 0) <= at) low = middle;
			else high = middle - 1;
		}
		return {
			line: low + 1,
			column: at - (starts[low] ?? 0) + 1
		};
	};
}
// ../../packages/core/src/plan/definition/reading.ts
/** Problems that come from the form of the document alone: what its JSON Schema refuses too. */
var STRUCTURAL_CODES = /* @__PURE__ */ new Set([
	"unknown-key",
	"missing-key",
	"wrong-type",
	"bad-format",
	"out-of-range",
	"not-a-choice",
	"too-few",
	"too-many"
]);
/** Names are compared for suggestions at most this often, so that hostile input costs no more than its size. */
var COMPARISONS = 3e4;
/** One reading of one document: what was found, and what was wrong. */
var Reading = class {
	problems = [];
	ids = /* @__PURE__ */ new Map();
	references = [];
	labels = {
		phase: /* @__PURE__ */ new Map(),
		calendar: /* @__PURE__ */ new Map()
	};
	labelReferences = [];
	estimates = [];
	places = /* @__PURE__ */ new Map();
	text;
	locate;
	comparisons = COMPARISONS;
	constructor(tree) {
		this.text = tree.text;
		let found;
		this.locate = (at) => {
			found ??= lineColumn(tree.text ?? "");
			return found(at);
		};
	}
	/** Remembers where a draft object stands. */
	settle(draft, place) {
		this.places.set(draft, place);
		return draft;
	}
	/** Where a draft stands, or one of its keys. */
	placeOf(draft, key) {
		const place = this.places.get(draft);
		if (place === void 0) throw new Error("a draft without a place");
		return key === void 0 ? place : require_plan.childPlace(place, key);
	}
	/** A value as it stands in the text. */
	source(place) {
		const { node } = place;
		if (this.text !== void 0 && node.at >= 0) return this.text.slice(node.at, node.end);
		if (node.kind === "list") return "[...]";
		if (node.kind === "map") return "{...}";
		return typeof node.value === "number" ? String(node.value) : JSON.stringify(node.value);
	}
	report(place, code, rule, remedy, extra = {}) {
		const at = extra.at ?? place.node.at;
		const problem = {
			code,
			severity: extra.severity ?? "error",
			path: require_plan.pathText(place),
			...this.text !== void 0 && at >= 0 ? this.locate(at) : {},
			received: shorten(extra.received ?? this.source(place)),
			rule,
			remedy
		};
		this.problems.push(problem);
	}
	/** Whether a problem stands before an offset. */
	isBefore(problem, at) {
		const { line, column } = this.locate(at);
		return problem.line !== void 0 && (problem.line - line || (problem.column ?? 0) - column) < 0;
	}
	reportFault(fault) {
		this.problems.push({
			code: fault.code,
			severity: fault.severity ?? "error",
			path: fault.path ?? "",
			...this.text !== void 0 && fault.at >= 0 ? this.locate(fault.at) : {},
			received: shorten(fault.received),
			rule: fault.rule,
			remedy: fault.remedy
		});
	}
	/** The nearest of `known` to `name`, while the budget for comparisons lasts. */
	suggest(name, known) {
		const candidates = [];
		for (const item of known) {
			if (this.comparisons-- <= 0) break;
			candidates.push(item);
		}
		return require_program.nearest$1(name, candidates);
	}
};
/** One line of at most 60 characters. */
function shorten(text) {
	const cut = require_engine.oneLine(text);
	return cut === "" ? "" : `\`${cut}\``;
}
// ../../packages/core/src/plan/build/must.ts
/**
* A required key of a draft that was read without an error. The reader has reported it where it is missing,
* so a throw here is a defect of the reader, never of a plan.
*/
function must(value) {
	if (value === void 0) throw new Error("the reader let a missing key pass");
	return value;
}
/** The object without its undefined keys. */
function present(from) {
	const result = {};
	for (const key of Object.keys(from)) if (from[key] !== void 0) result[key] = from[key];
	return result;
}
// ../../packages/core/src/plan/build/calendars.ts
var WEEKDAYS = [
	"mon",
	"tue",
	"wed",
	"thu",
	"fri"
];
var EVERY_DAY = [
	...WEEKDAYS,
	"sat",
	"sun"
];
/** Every calendar by name with `like` resolved: own workdays replace, own holidays add. */
function buildCalendars(drafts) {
	const result = /* @__PURE__ */ new Map([["weekdays", {
		name: "weekdays",
		workdays: WEEKDAYS,
		holidays: []
	}], ["every-day", {
		name: "every-day",
		workdays: EVERY_DAY,
		holidays: []
	}]]);
	const resolve = (name) => {
		const known = result.get(name);
		if (known !== void 0) return known;
		const draft = must(drafts?.get(name));
		const base = draft.like === void 0 ? void 0 : resolve(draft.like);
		const own = (draft.holidays ?? []).map((day) => {
			const from = must(day.from);
			return present({
				from,
				to: day.to ?? from,
				name: day.name
			});
		});
		const holidays = [...base?.holidays ?? [], ...own];
		const named = new Set(draft.workdays ?? base?.workdays ?? WEEKDAYS);
		const calendar = {
			name,
			workdays: EVERY_DAY.filter((day) => named.has(day)),
			holidays
		};
		result.set(name, calendar);
		return calendar;
	};
	for (const name of drafts?.keys() ?? []) resolve(name);
	return result;
}
// ../../packages/core/src/plan/build/estimate.ts
/** The estimate a checked draft stands for: outcomes ascending, `low == high` certain. */
function toEstimate(draft, defaults) {
	const unit = draft.unit ?? "days";
	if (draft.value !== void 0) return {
		kind: "fixed",
		value: draft.value,
		unit
	};
	if (draft.outcomes !== void 0) {
		const outcomes = draft.outcomes.map(({ value, chance }) => ({
			value: must(value),
			chance: must(chance)
		})).sort((a, b) => a.value - b.value);
		const [only] = outcomes;
		if (outcomes.length === 1 && only !== void 0) return {
			kind: "fixed",
			value: only.value,
			unit
		};
		return {
			kind: "outcomes",
			outcomes,
			unit
		};
	}
	const low = must(draft.low);
	const high = must(draft.high);
	if (low === high) return {
		kind: "fixed",
		value: low,
		unit
	};
	const range = {
		kind: "range",
		low,
		high,
		shape: draft.shape ?? defaults.shape ?? "pert",
		bounds: draft.bounds ?? defaults.bounds ?? "extremes",
		unit
	};
	if (draft.likely !== void 0) range.likely = draft.likely;
	return range;
}
// ../../packages/core/src/plan/build/context.ts
/** What stands round the work: people, stakeholders, phases, purpose and benefits. */
function buildContext(plan) {
	const defaults = plan.estimates ?? {};
	const maybe = (draft) => draft === void 0 ? void 0 : toEstimate(draft, defaults);
	const ownCalendar = plan.calendar ?? "weekdays";
	return {
		people: (plan.people ?? []).map((person) => present({
			id: must(person.id),
			name: must(person.name),
			role: person.role,
			rate: person.rate ?? 0,
			share: person.share ?? 1,
			capacity: person.capacity ?? 1,
			calendar: person.calendar ?? ownCalendar,
			away: (person.away ?? []).map((absence) => {
				const from = must(absence.from);
				return present({
					from,
					to: absence.to ?? from,
					share: absence.share ?? 1,
					why: absence.why
				});
			}),
			couldAdd: person.couldAdd && present({
				capacity: must(person.couldAdd.capacity),
				cost: person.couldAdd.cost ?? 0,
				from: person.couldAdd.from
			}),
			note: person.note,
			was: person.was
		})),
		stakeholders: (plan.stakeholders ?? []).map((one) => {
			const { inform } = one;
			return present({
				id: must(one.id),
				name: must(one.name),
				role: one.role,
				interest: one.interest,
				stance: one.stance,
				inform: inform && present({
					how: inform.how,
					every: inform.every,
					owner: inform.owner,
					what: inform.what,
					from: inform.from
				}),
				approvesUpTo: one.approvesUpTo,
				delegate: one.delegate,
				note: one.note,
				was: one.was
			});
		}),
		phases: (plan.phases ?? []).map((phase) => present({
			name: must(phase.name),
			responsible: phase.responsible ?? [],
			accountable: phase.accountable ?? [],
			consulted: phase.consulted ?? [],
			informed: phase.informed ?? [],
			calendar: phase.calendar,
			note: phase.note,
			was: phase.was
		})),
		benefits: (plan.benefits ?? []).map((benefit) => present({
			id: must(benefit.id),
			name: must(benefit.name),
			kind: benefit.kind,
			goal: benefit.goal,
			owner: benefit.owner,
			baseline: benefit.baseline,
			target: benefit.target,
			amount: maybe(benefit.amount),
			quantity: maybe(benefit.quantity),
			unit: benefit.unit,
			worth: benefit.worth,
			per: benefit.per ?? "year",
			starts: benefit.starts,
			lag: benefit.lag,
			ramp: benefit.ramp,
			lasts: benefit.lasts,
			until: benefit.until,
			note: benefit.note,
			was: benefit.was
		})),
		purpose: buildPurpose(plan.purpose, maybe)
	};
}
function buildPurpose(draft, maybe) {
	return present({
		problem: draft?.problem,
		goals: (draft?.goals ?? []).map((goal) => present({
			id: must(goal.id),
			statement: must(goal.statement),
			measure: goal.measure,
			target: goal.target,
			by: goal.by,
			owner: goal.owner,
			note: goal.note,
			was: goal.was
		})),
		scopeIn: (draft?.scope?.in ?? []).map((item) => {
			const id = must(item.id);
			return present({
				id,
				name: item.name ?? id,
				optional: item.optional ?? false,
				lost: item.lost,
				note: item.note,
				was: item.was
			});
		}),
		scopeOut: draft?.scope?.out ?? [],
		constraints: draft?.constraints ?? [],
		quality: (draft?.quality ?? []).map((bar) => present({
			id: must(bar.id),
			statement: must(bar.statement),
			atLeast: bar.atLeast,
			atMost: bar.atMost,
			unit: bar.unit,
			expected: maybe(bar.expected),
			measured: bar.measured,
			on: bar.on,
			owner: bar.owner,
			note: bar.note,
			was: bar.was
		}))
	});
}
// ../../packages/core/src/plan/build/decision.ts
/** What is asked of the approvers; absent where the plan does not say. */
function buildDecision(draft) {
	return draft && present({
		ask: draft.ask,
		by: draft.by,
		recommend: draft.recommend,
		doNothing: draft.doNothing,
		alternatives: (draft.alternatives ?? []).map((one) => present({
			name: must(one.name),
			text: one.text,
			note: one.note,
			was: one.was
		})),
		note: draft.note,
		was: draft.was
	});
}
// ../../packages/core/src/plan/build/pageTexts.ts
/** Free texts in the order of the document. */
function buildPageTexts(drafts) {
	return (drafts ?? []).map(({ after, text, note, was }) => present({
		after: must(after),
		text: must(text),
		note,
		was
	}));
}
// ../../packages/core/src/plan/build/facts.ts
/**
* Of an entry that has occurred and says what it did in fact (`actual`): its impacts with the fact in place of the
* range, and responses that no longer take anything off it. `cost` is money in all and falls once; `days` falls on each
* task that an impact delays, multiplies or makes wait. What the fact does not say keeps its range, as the adopted
* responses had left it.
*/
function withFacts(entry) {
	const { actual, status } = entry;
	if (status !== "occurred" || actual?.cost === void 0 && actual?.days === void 0) return entry;
	const scale = entry.responses.reduce((product, one) => one.adopted ? product * one.scale : product, 1);
	const { cost, days } = actual;
	const reached = /* @__PURE__ */ new Set();
	const impacts = entry.impacts.map((impact) => {
		const own = cost === void 0 ? scaled(impact.cost, scale, 0) : void 0;
		if (days === void 0) return present({
			...impact,
			delay: scaled(impact.delay, scale, 0),
			factor: scaled(impact.factor, scale, 1),
			wait: scaled(impact.wait, scale, 0),
			cost: own
		});
		const { delay, factor, wait, phase } = impact;
		const key = (delay ?? factor) !== void 0 ? "delay" : "wait";
		const tasks = impact.tasks.filter((id) => !reached.has(id));
		if ((delay ?? factor ?? wait) === void 0 || tasks.length === 0) return present({
			tasks: impact.tasks,
			phase,
			cost: own
		});
		for (const id of tasks) reached.add(id);
		return present({
			tasks,
			phase: tasks.length === impact.tasks.length ? phase : void 0,
			[key]: fixed(days),
			cost: own
		});
	});
	if (cost !== void 0) {
		const at = entry.impacts.findIndex((impact) => impact.cost !== void 0);
		const bearer = impacts[at];
		if (bearer === void 0) impacts.push({
			tasks: [],
			cost: fixed(cost)
		});
		else impacts[at] = {
			...bearer,
			cost: fixed(cost)
		};
	}
	return {
		...entry,
		impacts,
		responses: entry.responses.map((one) => ({
			...one,
			scale: 1
		}))
	};
}
function fixed(value) {
	return {
		kind: "fixed",
		value,
		unit: "days"
	};
}
/** Each value as a response leaves it: `neutral` stays, and of the rest `scale` remains. */
function scaled(estimate, scale, neutral) {
	if (estimate === void 0 || scale === 1) return estimate;
	const by = (value) => neutral + (value - neutral) * scale;
	if (estimate.kind === "fixed") return {
		...estimate,
		value: by(estimate.value)
	};
	if (scale === 0) return {
		kind: "fixed",
		value: neutral,
		unit: estimate.unit
	};
	if (estimate.kind === "outcomes") return {
		...estimate,
		outcomes: estimate.outcomes.map(({ value, chance }) => ({
			value: by(value),
			chance
		}))
	};
	const { low, likely, high } = estimate;
	return present({
		...estimate,
		low: by(low),
		likely: likely === void 0 ? void 0 : by(likely),
		high: by(high)
	});
}
// ../../packages/core/src/plan/build/register.ts
/** Risks and assumptions with impacts resolved to tasks. */
function buildRegister(plan, tasks) {
	const defaults = plan.estimates ?? {};
	const maybe = (draft) => draft === void 0 ? void 0 : toEstimate(draft, defaults);
	const byPhase = /* @__PURE__ */ new Map();
	for (const task of tasks) {
		if (task.phase === void 0 || task.milestone !== false) continue;
		const ids = byPhase.get(task.phase);
		if (ids === void 0) byPhase.set(task.phase, [task.id]);
		else ids.push(task.id);
	}
	const impact = (draft) => present({
		tasks: draft.tasks ?? (draft.phase === void 0 ? [] : [...byPhase.get(draft.phase) ?? []]),
		phase: draft.phase,
		delay: maybe(draft.delay),
		factor: maybe(draft.factor),
		wait: maybe(draft.wait),
		cost: maybe(draft.cost)
	});
	const response = (draft) => present({
		id: must(draft.id),
		action: must(draft.action),
		owner: draft.owner,
		due: draft.due,
		cost: maybe(draft.cost),
		adopted: draft.adopted ?? false,
		probability: draft.probability,
		scale: draft.scale ?? 1,
		note: draft.note,
		was: draft.was
	});
	const shared = (draft) => ({
		id: must(draft.id),
		owner: draft.owner,
		cause: draft.cause,
		impacts: (draft.impacts ?? []).map(impact),
		responses: (draft.responses ?? []).map(response),
		group: draft.group,
		status: draft.status ?? "open",
		actual: draft.actual && present({
			cost: draft.actual.cost,
			days: draft.actual.days
		}),
		expires: draft.expires,
		onlyIf: draft.onlyIf,
		note: draft.note,
		was: draft.was
	});
	return {
		risks: (plan.risks ?? []).map((draft) => withFacts(present({
			kind: "risk",
			name: must(draft.name),
			probability: must(draft.probability),
			...shared(draft)
		}))),
		assumptions: (plan.assumptions ?? []).map((draft) => withFacts(present({
			kind: "assumption",
			name: must(draft.statement),
			probability: must(draft.chanceWrong),
			reviewBy: draft.reviewBy,
			signpost: draft.signpost,
			tripped: draft.tripped,
			...shared(draft)
		})))
	};
}
// ../../packages/core/src/plan/build/returnTriggers.ts
/** When the plan comes back to its approvers. */
function buildReturnTriggers(draft) {
	return (draft ?? []).map((trigger) => {
		const { chanceOfDateBelow, chanceOfBudgetBelow, contingencyCoverBelow } = trigger;
		const { signpost, finishLaterThan, costAbove } = trigger;
		return present({
			id: must(trigger.id),
			name: trigger.name,
			chanceOfDateBelow,
			chanceOfBudgetBelow,
			contingencyCoverBelow,
			signpost,
			finishLaterThan,
			costAbove,
			note: trigger.note,
			was: trigger.was
		});
	});
}
// ../../packages/core/src/plan/build/opinions.ts
/** What people said about a task, in the order of the document; absent where nobody did. */
function buildOpinions(task, defaults) {
	return task.opinions?.map((draft) => {
		const { low, likely, high, shape, bounds, unit } = draft;
		return present({
			by: must(draft.by),
			date: draft.date,
			of: draft.of ?? (task.effort === void 0 ? "duration" : "effort"),
			estimate: toEstimate({
				low,
				likely,
				high,
				shape,
				bounds,
				unit
			}, defaults),
			basis: draft.basis,
			order: draft.order,
			dissent: draft.dissent,
			enteredBy: draft.enteredBy,
			note: draft.note,
			was: draft.was
		});
	});
}
// ../../packages/core/src/plan/build/tasks.ts
/** The tasks with links, people and calendars in full. */
function buildTasks(plan) {
	const defaults = plan.estimates ?? {};
	const maybe = (draft) => draft === void 0 ? void 0 : toEstimate(draft, defaults);
	const people = new Map((plan.people ?? []).map((person) => [must(person.id), person]));
	const phases = new Map((plan.phases ?? []).map((phase) => [must(phase.name), phase]));
	return must(plan.tasks).map((task) => {
		const phase = task.phase === void 0 ? void 0 : phases.get(task.phase);
		const team = (task.people ?? []).map((member) => buildMember(member, people));
		const first = team[0]?.id;
		return present({
			id: must(task.id),
			name: must(task.name),
			phase: task.phase,
			scope: task.scope,
			duration: maybe(task.duration),
			effort: maybe(task.effort),
			milestone: task.milestone === true ? "finish" : task.milestone ?? false,
			target: task.target,
			after: (task.after ?? []).map((link) => buildLink(link, maybe)),
			notBefore: task.notBefore,
			holdToPlan: task.holdToPlan ?? false,
			calendar: task.calendar ?? phase?.calendar ?? plan.calendar ?? "weekdays",
			unbroken: task.unbroken,
			people: team,
			cost: maybe(task.cost),
			due: task.due ?? "evenly",
			costPerDay: maybe(task.costPerDay),
			priority: task.priority ?? 0,
			detail: task.detail,
			chance: task.chance ?? 1,
			onlyIf: task.onlyIf,
			responsible: task.responsible ?? phase?.responsible ?? (first === void 0 ? [] : [first]),
			accountable: task.accountable ?? phase?.accountable ?? [],
			consulted: task.consulted ?? phase?.consulted ?? [],
			informed: task.informed ?? phase?.informed ?? [],
			estimatedBy: task.estimatedBy ?? [],
			basis: task.basis,
			enteredBy: task.enteredBy,
			started: task.started,
			finished: task.finished,
			remaining: maybe(task.remaining),
			spent: task.spent,
			opinions: buildOpinions(task, defaults),
			detailOf: task.detailOf,
			note: task.note,
			was: task.was
		});
	});
}
function buildMember(member, people) {
	const id = must(member.id);
	return {
		id,
		share: member.share ?? people.get(id)?.share ?? 1,
		along: member.along ?? false
	};
}
function buildLink(link, maybe) {
	return present({
		task: must(link.task),
		link: link.link ?? "finish-to-start",
		lag: maybe(link.lag?.days) ?? {
			kind: "fixed",
			value: 0,
			unit: "days"
		},
		lagCalendar: link.lag?.calendar
	});
}
// ../../packages/core/src/plan/build/plan.ts
/** The plan a faultless draft stands for, defaults filled in. */
function buildPlan(draft, hashes) {
	const defaults = draft.estimates ?? {};
	const maybe = (estimate) => estimate === void 0 ? void 0 : toEstimate(estimate, defaults);
	const tasks = buildTasks(draft);
	const { commitment, lateness, appraisal } = draft;
	return present({
		format: 1,
		title: must(draft.title),
		currency: draft.currency ?? "EUR",
		start: must(draft.start),
		statusDate: draft.statusDate,
		seed: draft.seed ?? "leeway",
		iterations: draft.iterations ?? 1e4,
		commitment: present({
			finishOf: commitment?.finishOf,
			confidence: commitment?.confidence ?? .8,
			confidenceByDefault: commitment && commitment.confidence === void 0 ? true : void 0,
			finishBy: commitment?.finishBy,
			budget: commitment?.budget,
			reserve: commitment?.reserve,
			holder: commitment?.holder,
			releaseRule: commitment?.releaseRule,
			funds: (commitment?.funds ?? []).map(({ from, amount }) => ({
				from: must(from),
				amount: must(amount)
			}))
		}),
		decision: buildDecision(draft.decision),
		lateness: lateness && present({
			after: lateness.after ?? commitment?.finishBy,
			perWeek: maybe(lateness.perWeek),
			once: maybe(lateness.once)
		}),
		calendars: buildCalendars(draft.calendars),
		calendar: draft.calendar ?? "weekdays",
		...buildContext(draft),
		appraisal: appraisal && {
			years: appraisal.years ?? 100,
			discountRate: appraisal.discountRate ?? 0
		},
		respectCapacity: draft.respectCapacity ?? true,
		tasks,
		intervals: (draft.intervals ?? []).map((interval) => {
			const id = must(interval.id);
			return present({
				id,
				name: interval.name ?? id,
				from: must(interval.from),
				to: must(interval.to),
				atMost: interval.atMost,
				note: interval.note,
				was: interval.was
			});
		}),
		...buildRegister(draft, tasks),
		correlations: (draft.correlations ?? []).map(({ between, coefficient, cause }) => present({
			between: must(between),
			coefficient: must(coefficient),
			cause
		})),
		overheads: (draft.overheads ?? []).map((overhead) => present({
			id: must(overhead.id),
			name: must(overhead.name),
			perDay: maybe(overhead.perDay) ?? {
				kind: "fixed",
				value: 0,
				unit: "days"
			},
			from: overhead.from,
			to: overhead.to,
			note: overhead.note,
			was: overhead.was
		})),
		returnTriggers: buildReturnTriggers(draft.returnTriggers),
		texts: buildPageTexts(draft.texts),
		...buildDecisions(draft),
		note: draft.note,
		was: draft.was,
		...hashes
	});
}
function buildDecisions(draft) {
	return {
		approvals: (draft.approvals ?? []).map((approval) => present({
			who: must(approval.who),
			decision: approval.decision ?? "pending",
			date: approval.date,
			conditions: approval.conditions,
			conditionsBy: approval.conditionsBy,
			conditionsMet: approval.conditionsMet,
			plan: approval.plan,
			by: approval.by,
			note: approval.note,
			was: approval.was
		})),
		objections: (draft.objections ?? []).map((objection) => present({
			id: must(objection.id),
			who: objection.who,
			date: objection.date,
			text: objection.text,
			answer: objection.answer,
			evidence: objection.evidence,
			state: objection.state ?? "open",
			changedPlan: objection.changedPlan ?? false,
			acceptedBy: objection.acceptedBy,
			reopenedBy: objection.reopenedBy,
			note: objection.note,
			was: objection.was
		})),
		changes: (draft.changes ?? []).map((change) => present({
			date: change.date,
			who: change.who,
			what: change.what,
			why: change.why,
			approvedBy: change.approvedBy,
			note: change.note,
			was: change.was
		})),
		acceptedFindings: (draft.acceptedFindings ?? []).map((accepted) => present({
			finding: must(accepted.finding),
			ids: accepted.ids,
			who: must(accepted.who),
			date: must(accepted.date),
			why: must(accepted.why),
			note: accepted.note,
			was: accepted.was
		}))
	};
}
// ../../packages/core/src/plan/check/benefits.ts
/** A benefit is money or a quantity; lateness needs a day; an overhead costs something. */
function checkBenefits(plan, reading) {
	for (const benefit of plan.benefits ?? []) {
		const place = reading.placeOf(benefit);
		const written = (key) => place.node.kind === "map" && place.node.entries.has(key);
		if (written("amount") && written("quantity")) reading.report(reading.placeOf(benefit, "quantity"), "amount-and-quantity", "A benefit has `amount` or `quantity`, not both.", "Keep one of the two.");
		if (!written("amount") && !written("quantity")) reading.report(place, "no-amount", "A benefit needs `amount` or `quantity`.", "Add `amount` in money, or `quantity` and `unit`.", { received: benefit.id ?? "" });
		if (written("amount") && !written("quantity")) for (const key of ["unit", "worth"]) {
			if (!written(key)) continue;
			reading.report(reading.placeOf(benefit, key), "without-quantity", `\`${key}\` belongs to a \`quantity\`.`, "Remove it.");
		}
		if (!written("per")) reading.report(place, "no-period", "Without `per` it is read as a value per year.", "Add `per`.", {
			received: benefit.id ?? "",
			severity: "warning"
		});
	}
	const { lateness } = plan;
	if (lateness !== void 0 && lateness.after === void 0 && plan.commitment?.finishBy === void 0) reading.report(reading.placeOf(lateness), "no-deadline", "Nothing says after which day it is late.", "Add `after`, or `commitment: { finishBy: ... }`.", {
		received: "",
		severity: "warning"
	});
	for (const overhead of plan.overheads ?? []) {
		if (overhead.perDay !== void 0) continue;
		reading.report(reading.placeOf(overhead), "no-amount", "Without `perDay` it costs nothing.", "Add `perDay`.", {
			received: overhead.id ?? "",
			severity: "warning"
		});
	}
}
// ../../packages/core/src/plan/check/calendars.ts
/** Longest chain of `like`: each calendar repeats the holidays of all before it. */
var LONGEST_CHAIN = 20;
/** `like` leads somewhere, and holidays end after they begin. */
function checkCalendars(plan, reading) {
	const calendars = plan.calendars ?? /* @__PURE__ */ new Map();
	/** Steps of `like` to a calendar that has none; Infinity on a loop. */
	const depths = /* @__PURE__ */ new Map();
	for (const [start, calendar] of plan.calendars ?? []) {
		for (const holiday of calendar.holidays ?? []) {
			if (holiday.from === void 0 || holiday.to === void 0 || holiday.from <= holiday.to) continue;
			const rule = `It ends on ${holiday.to}, before it begins on ${holiday.from}.`;
			reading.report(reading.placeOf(holiday, "to"), "dates-reversed", rule, "Exchange `from` and `to`.");
		}
		const chain = [];
		const onChain = /* @__PURE__ */ new Set();
		let name = start;
		while (name !== void 0 && calendars.has(name) && !depths.has(name) && !onChain.has(name)) {
			chain.push(name);
			onChain.add(name);
			name = plan.calendars?.get(name)?.like;
		}
		const looped = name !== void 0 && onChain.has(name);
		if (looped && name !== void 0) {
			const loop = [...chain.slice(chain.indexOf(name)), name].slice(-12).join(" -> ");
			const last = calendars.get(chain[chain.length - 1] ?? start);
			const rule = `\`like\` goes in a circle: ${loop}.`;
			reading.report(reading.placeOf(last ?? calendar, "like"), "calendar-loop", rule, "Let one of them stand alone.");
		}
		let depth = looped ? Number.POSITIVE_INFINITY : name === void 0 ? 0 : depths.get(name) ?? 0;
		for (const each of chain.reverse()) {
			depth++;
			depths.set(each, depth);
			if (depth !== 21) continue;
			const place = reading.placeOf(calendars.get(each) ?? calendar, "like");
			const rule = `\`like\` leads through more than ${LONGEST_CHAIN} calendars.`;
			reading.report(place, "calendar-chain", rule, "Start from a calendar nearer the beginning.");
		}
	}
}
// ../../packages/core/src/plan/check/correlations.ts
/** Most pairs all sets may name together: one matrix has to hold them. */
var MOST_PAIRS = 5e6;
/** Each name has a draw behind it, stands once in its set, and no pair is named in two sets. */
function checkCorrelations(plan, reading) {
	const correlations = plan.correlations ?? [];
	const tasks = /* @__PURE__ */ new Map();
	for (const task of plan.tasks ?? []) if (task.id !== void 0) tasks.set(task.id, task);
	const sets = correlations.map(({ between }) => new Set(between ?? []));
	let pairs = 0;
	for (const { size } of sets) pairs += size * (size - 1) / 2;
	if (pairs > MOST_PAIRS) {
		const rule = `The sets name ${pairs} pairs; at most ${MOST_PAIRS} can be worked with.`;
		reading.report(reading.placeOf(plan, "correlations"), "too-many-pairs", rule, "Name fewer tasks in a set.");
		return;
	}
	const uses = /* @__PURE__ */ new Map();
	for (const set of sets) for (const name of set) uses.set(name, (uses.get(name) ?? 0) + 1);
	/** Numbers of the names in more than one set: only their pairs can repeat. */
	const numbers = /* @__PURE__ */ new Map();
	for (const [name, count] of uses) if (count > 1) numbers.set(name, numbers.size);
	const names = [...numbers.keys()];
	/** Pair to the set that named it. */
	const named = /* @__PURE__ */ new Map();
	for (const [index, correlation] of correlations.entries()) {
		const seen = /* @__PURE__ */ new Set();
		const common = [];
		let pairReported = false;
		let cursor = 0;
		for (const name of correlation.between ?? []) {
			const list = reading.placeOf(correlation, "between");
			cursor = find(list, cursor, name);
			const place = itemPlace(list, cursor++);
			if (seen.has(name)) {
				reading.report(place, "repeated-member", `${name} stands twice in this set.`, "Name it once.");
				continue;
			}
			seen.add(name);
			checkDraw(name, tasks, place, reading);
			const number = numbers.get(name);
			if (number === void 0) continue;
			for (const other of common) {
				const pair = Math.min(number, other) * numbers.size + Math.max(number, other);
				const earlier = named.get(pair);
				if (earlier === void 0) named.set(pair, index);
				else if (!pairReported) {
					pairReported = true;
					const rule = `The pair ${names[other] ?? "?"} and ${name} is in correlations[${earlier}] already.`;
					reading.report(place, "repeated-pair", rule, "Name each pair once.");
				}
			}
			common.push(number);
		}
	}
}
function checkDraw(name, tasks, place, reading) {
	const ofCost = name.startsWith(require_plan.COST_PREFIX);
	const id = ofCost ? name.slice(require_plan.COST_PREFIX.length) : name;
	const task = tasks.get(id);
	if (task === void 0) return;
	if (ofCost) {
		if (task.cost !== void 0) return;
		reading.report(place, "no-draw", `\`${id}\` has no \`cost\`.`, "Give it one, or leave it out of the set.");
	} else if (task.milestone === true || task.milestone === "start") reading.report(place, "no-draw", `\`${id}\` is a milestone and has no duration.`, "Leave it out of the set.");
}
/** Index of the next item with this name; faulty items are not in the draft, so the two may differ. */
function find(list, from, name) {
	if (list.node.kind !== "list") return 0;
	const { items } = list.node;
	for (let index = from; index < items.length; index++) {
		const item = items[index];
		if (item?.kind === "scalar" && item.value === name) return index;
	}
	return from;
}
function itemPlace(list, index) {
	const item = list.node.kind === "list" ? list.node.items[index] : void 0;
	return item === void 0 ? list : {
		parent: list,
		key: index,
		keyAt: item.at,
		node: item
	};
}
// ../../packages/core/src/plan/check/estimates.ts
/** The rules of estimates: order, what each shape needs, outcomes that are distinct and sum to 1. */
function checkEstimates(plan, reading) {
	for (const { draft, place } of reading.estimates) if (draft.outcomes !== void 0) checkOutcomes(draft.outcomes, place, reading);
	else if (draft.value === void 0) checkRange(draft, place, plan, reading);
}
function checkRange(draft, place, plan, reading) {
	const { low, likely, high } = draft;
	const problem = (code, rule, remedy) => reading.report(place, code, rule, remedy);
	if (low !== void 0 && high !== void 0 && low > high) {
		problem("estimate-order", `low ${low} is above high ${high}; low <= likely <= high.`, "Put the smallest first.");
		return;
	}
	if (low !== void 0 && likely !== void 0 && likely < low) {
		problem("estimate-order", `likely ${likely} is below low ${low}; low <= likely <= high.`, orRaise("likely", low));
		return;
	}
	if (high !== void 0 && likely !== void 0 && likely > high) {
		problem("estimate-order", `likely ${likely} is above high ${high}; low <= likely <= high.`, orRaise("high", likely));
		return;
	}
	if (low === void 0 || high === void 0 || low === high) return;
	const shape = draft.shape ?? plan.estimates?.shape ?? "pert";
	const bounds = draft.bounds ?? plan.estimates?.bounds ?? "extremes";
	const by = draft.shape === void 0 && plan.estimates?.shape !== void 0 ? " (from `estimates`)" : "";
	const { takesLikely, ends } = require_shapes.shapeRules[shape];
	if (takesLikely) {
		if (likely === void 0 && !hasKey(place, "likely")) problem("estimate-shape", `The shape ${shape}${by} needs \`likely\`.`, "Add `likely`, or use shape: uniform.");
	} else if (likely !== void 0) problem("estimate-shape", `The shape ${shape}${by} takes no \`likely\`.`, "Write { low, high } only, or give it shape: pert or triangular.");
	if (ends !== "both" && bounds === "extremes") problem("estimate-shape", `The shape ${shape}${by} has no extremes; its bounds are percentiles.`, "Add bounds: p10-p90 or p5-p95, or use shape: pert.");
	if (ends === "above-nought" && low <= 0) problem("estimate-shape", `The shape ${shape}${by} needs low above 0; it is ${low}.`, "Raise low, or use shape: normal.");
}
function orRaise(key, to) {
	return `Raise ${key} to at least ${to}, or correct the other.`;
}
function hasKey(place, key) {
	return place.node.kind === "map" && place.node.entries.has(key);
}
function checkOutcomes(outcomes, place, reading) {
	const seen = /* @__PURE__ */ new Set();
	let sum = 0;
	let complete = true;
	for (const outcome of outcomes) {
		const { value, chance } = outcome;
		if (value !== void 0) {
			if (seen.has(value)) {
				const at = reading.placeOf(outcome, "value");
				reading.report(at, "outcome-repeated", "Each value stands once.", "Add its chances up in one outcome.");
			}
			seen.add(value);
		}
		if (chance === void 0) complete = false;
		else sum += chance;
		if (chance === 0) {
			const at = reading.placeOf(outcome, "chance");
			reading.report(at, "outcome-chance", "A chance is above 0.", "Leave out what cannot happen.");
		}
	}
	const written = place.node.kind === "map" ? place.node.entries.get("outcomes")?.node : void 0;
	if (written?.kind === "list" && written.items.length !== outcomes.length) complete = false;
	if (complete && Math.abs(sum - 1) > 1e-9) {
		const total = Number(sum.toPrecision(12));
		reading.report(place, "outcome-sum", `The chances sum to ${total}; they must sum to 1.`, "Correct the chances.");
	}
}
// ../../packages/core/src/plan/check/facts.ts
/** What the register says that happened, happened; a quality bar is one number; conditions have words. */
function checkFacts(plan, reading) {
	for (const entry of [...plan.risks ?? [], ...plan.assumptions ?? []]) {
		const { actual, status } = entry;
		if (actual === void 0) continue;
		const place = reading.placeOf(actual);
		if (status !== "occurred") reading.report(place, "actual-status", "`actual` says what it did, so it has occurred.", "Write status: occurred, or remove `actual`.");
		const takesTime = (entry.impacts ?? []).some(({ delay, factor, wait }) => delay !== void 0 || factor !== void 0 || wait !== void 0);
		if (actual.days !== void 0 && !takesTime) reading.report(reading.placeOf(actual, "days"), "actual-nowhere", "No impact of it delays a task, so its days touch nothing.", "Add an impact with `tasks` and `delay`, or remove `days`.");
	}
	for (const bar of plan.purpose?.quality ?? []) {
		const { node } = reading.placeOf(bar);
		const written = ["atLeast", "atMost"].filter((key) => node.kind === "map" && node.entries.has(key));
		if (written.length !== 1) {
			const rule = "A quality bar has `atLeast` or `atMost`, exactly one of the two.";
			const remedy = written.length === 0 ? "Add the number that has to hold." : "Make two bars of it.";
			const at = written.length === 0 ? reading.placeOf(bar) : reading.placeOf(bar, "atMost");
			reading.report(at, "quality-bound", rule, remedy, { received: bar.id ?? "" });
		}
		if (bar.on !== void 0 && bar.measured === void 0) reading.report(reading.placeOf(bar, "on"), "quality-measured", "`on` is the day it was measured.", "Add `measured`, or remove `on`.");
	}
	for (const approval of plan.approvals ?? []) {
		if (approval.conditions !== void 0) continue;
		for (const key of ["conditionsBy", "conditionsMet"]) {
			if (approval[key] === void 0) continue;
			const rule = `\`${key}\` belongs to \`conditions\`.`;
			reading.report(reading.placeOf(approval, key), "without-conditions", rule, "Write `conditions`.");
		}
	}
}
// ../../packages/core/src/plan/check/cycle.ts
/**
* One loop for each knot of a directed graph (each strongly connected component with a loop; Tarjan 1972),
* as the nodes along it, the first not repeated. Iterative, linear in nodes and edges; order of discovery.
*
* @param next  For each node the nodes its edges lead to.
*/
function findLoops(next) {
	const n = next.length;
	const index = new Int32Array(n).fill(-1);
	const low = new Int32Array(n);
	const component = new Int32Array(n).fill(-1);
	const edge = new Int32Array(n);
	const stack = [];
	const loops = [];
	let counter = 0;
	let components = 0;
	for (let root = 0; root < n; root++) {
		if (index[root] !== -1) continue;
		const path = [root];
		index[root] = low[root] = counter++;
		stack.push(root);
		while (path.length > 0) {
			const node = path[path.length - 1] ?? 0;
			const out = next[node] ?? [];
			const at = edge[node] ?? 0;
			if (at < out.length) {
				edge[node] = at + 1;
				const to = out[at] ?? 0;
				if (index[to] === -1) {
					index[to] = low[to] = counter++;
					stack.push(to);
					path.push(to);
				} else if (component[to] === -1) low[node] = Math.min(low[node] ?? 0, index[to] ?? 0);
				continue;
			}
			path.pop();
			const parent = path[path.length - 1];
			if (parent !== void 0) low[parent] = Math.min(low[parent] ?? 0, low[node] ?? 0);
			if (low[node] !== index[node]) continue;
			const members = [];
			for (;;) {
				const member = stack.pop();
				if (member === void 0) break;
				component[member] = components;
				members.push(member);
				if (member === node) break;
			}
			if (members.length > 1 || out.includes(node)) loops.push(shortestLoop(node, next, component, components));
			components++;
		}
	}
	return loops;
}
/** Shortest way from `from` back to itself inside its component, breadth first. */
function shortestLoop(from, next, component, inside) {
	const before = /* @__PURE__ */ new Map();
	let frontier = [from];
	while (frontier.length > 0) {
		const reached = [];
		for (const node of frontier) for (const to of next[node] ?? []) {
			if (to === from) {
				const loop = [node];
				for (let at = node; at !== from;) {
					at = before.get(at) ?? from;
					loop.push(at);
				}
				return loop.reverse();
			}
			if (component[to] !== inside || before.has(to)) continue;
			before.set(to, node);
			reached.push(to);
		}
		frontier = reached;
	}
	return [from];
}
// ../../packages/core/src/plan/check/links.ts
/** Longest loop shown in full. */
var SHOWN = 12;
/** No task is linked twice in the same way, and no links form a loop. */
function checkLinks(plan, reading) {
	const tasks = plan.tasks ?? [];
	const numbers = /* @__PURE__ */ new Map();
	for (const [index, task] of tasks.entries()) if (task.id !== void 0 && !numbers.has(task.id)) numbers.set(task.id, index);
	const successors = tasks.map(() => []);
	for (const [index, task] of tasks.entries()) {
		const seen = /* @__PURE__ */ new Set();
		for (const link of task.after ?? []) {
			if (link.task === void 0) continue;
			const kind = link.link ?? "finish-to-start";
			if (seen.has(`${kind} ${link.task}`)) {
				const rule = `${link.task} is linked ${kind} twice.`;
				reading.report(reading.placeOf(link), "repeated-link", rule, "Keep one, or change its `link`.");
			}
			seen.add(`${kind} ${link.task}`);
			const from = numbers.get(link.task);
			if (from !== void 0) successors[from]?.push(index);
		}
	}
	for (const loop of findLoops(successors)) {
		const ids = loop.map((index) => tasks[index]?.id ?? "?");
		const [first = "?"] = ids;
		const last = tasks[loop[loop.length - 1] ?? 0]?.id;
		const shown = ids.length <= SHOWN ? ids : [
			...ids.slice(0, 10),
			"...",
			...ids.slice(-1)
		];
		const where = (tasks[loop[0] ?? 0]?.after ?? []).find((link) => link.task === last) ?? tasks[loop[0] ?? 0];
		if (where === void 0) continue;
		const rule = `The links form a loop: ${[...shown, first].join(" -> ")}.`;
		reading.report(reading.placeOf(where), "loop", rule, "Remove one of these links.");
	}
}
// ../../packages/core/src/plan/check/people.ts
/** No share above the capacity there is (with `respectCapacity`), and absences that end after they begin. */
function checkPeople(plan, reading) {
	const people = /* @__PURE__ */ new Map();
	for (const person of plan.people ?? []) {
		if (person.id !== void 0) people.set(person.id, person);
		for (const absence of person.away ?? []) {
			if (absence.from === void 0 || absence.to === void 0 || absence.from <= absence.to) continue;
			const rule = `It ends on ${absence.to}, before it begins on ${absence.from}.`;
			reading.report(reading.placeOf(absence, "to"), "dates-reversed", rule, "Exchange `from` and `to`.");
		}
	}
	if (plan.respectCapacity === false) return;
	const reported = /* @__PURE__ */ new Set();
	for (const task of plan.tasks ?? []) for (const member of task.people ?? []) {
		const person = member.id === void 0 ? void 0 : people.get(member.id);
		if (person === void 0 || member.id === void 0) continue;
		const capacity = person.capacity ?? 1;
		const share = member.share ?? person.share ?? 1;
		if (share <= capacity + 1e-9) continue;
		const name = person.name ?? member.id;
		const rule = `\`share\` ${share} of ${name} is more than ${possessive(name)} capacity ${capacity}.`;
		if (member.share !== void 0) reading.report(reading.placeOf(member, "share"), "share-above-capacity", rule, `Write at most ${capacity}.`);
		else if (!reported.has(member.id)) {
			reported.add(member.id);
			const remedy = `Give ${name} \`share: ${capacity}\` in \`people\`, or a \`share\` in the task.`;
			reading.report(reading.placeOf(member), "share-above-capacity", rule, remedy);
		}
	}
}
function possessive(name) {
	return name.endsWith("s") ? `${name}'` : `${name}'s`;
}
// ../../packages/core/src/plan/check/progress.ts
/** Progress happened between `start` and `statusDate`, in an order that can be. */
function checkProgress(plan, reading) {
	const hasStatus = keyOf(reading, plan, "statusDate");
	for (const task of plan.tasks ?? []) {
		for (const key of [
			"started",
			"finished",
			"remaining",
			"spent"
		]) {
			if (task[key] === void 0) continue;
			if (!hasStatus) {
				const rule = `\`${key}\` needs the plan's \`statusDate\`.`;
				reading.report(reading.placeOf(task, key), "no-status-date", rule, "Add `statusDate`, the day up to which it is recorded.");
			}
		}
		for (const key of ["started", "finished"]) {
			const day = task[key];
			if (day === void 0) continue;
			if (plan.start !== void 0 && day < plan.start) {
				const rule = `It lies before the plan's \`start\`, ${plan.start}.`;
				reading.report(reading.placeOf(task, key), "progress-date", rule, "Correct the day, or move `start`.");
			}
			if (plan.statusDate !== void 0 && day > plan.statusDate) {
				const rule = `It lies after \`statusDate\`, ${plan.statusDate}; progress has already happened.`;
				reading.report(reading.placeOf(task, key), "progress-date", rule, "Correct the day, or move `statusDate`.");
			}
		}
		checkOrder(task, reading);
	}
}
function checkOrder(task, reading) {
	const milestone = task.milestone === true || task.milestone === "start";
	const started = keyOf(reading, task, "started");
	const finished = keyOf(reading, task, "finished");
	const report = (key, rule, remedy) => reading.report(reading.placeOf(task, key), "progress-order", rule, remedy);
	if (task.started !== void 0 && task.finished !== void 0 && task.finished < task.started) report("finished", `It finished before it started, on ${task.started}.`, "Correct one of the two days.");
	if (finished && !started && !milestone) report("finished", "What is finished has started.", "Add `started`.");
	if (milestone && started && !finished) report("started", "A milestone is a point in time: it is finished or not.", "Write `finished`.");
	if (task.remaining !== void 0 && !milestone) {
		if (finished) report("remaining", "Nothing remains of a finished task.", "Remove `remaining`, or `finished`.");
		else if (!started) report("remaining", "`remaining` is of a started task.", "Add `started`, or write `duration`.");
	}
	if (task.spent !== void 0 && !started && !finished) report("spent", "`spent` is of a started or finished task.", "Add `started`.");
}
function keyOf(reading, draft, key) {
	const { node } = reading.placeOf(draft);
	return node.kind === "map" && node.entries.has(key);
}
// ../../packages/core/src/plan/check/references.ts
/** Every id and every label that is named exists, and is of the right kind. */
function checkReferences(plan, reading) {
	const byKind = /* @__PURE__ */ new Map();
	for (const [id, { kind }] of reading.ids) {
		const list = byKind.get(kind);
		if (list === void 0) byKind.set(kind, [id]);
		else list.push(id);
	}
	const lists = /* @__PURE__ */ new Map();
	const knownOf = (kinds) => {
		const key = kinds.join();
		const list = lists.get(key) ?? kinds.flatMap((kind) => byKind.get(kind) ?? []);
		lists.set(key, list);
		return list;
	};
	for (const { kinds, id, place, lenient } of reading.references) {
		const found = reading.ids.get(id);
		if (found !== void 0 && kinds.includes(found.kind)) continue;
		const wanted = require_plan.oneOf(kinds);
		const extra = lenient ? { severity: "warning" } : {};
		if (found !== void 0) {
			const rule = `\`${id}\` is ${require_plan.oneOf([found.kind])}; ${wanted} belongs here.`;
			reading.report(place, "wrong-kind", rule, `Name ${wanted}.`, extra);
			continue;
		}
		const known = knownOf(kinds);
		const meant = reading.suggest(id, known);
		const remedy = meant !== void 0 ? `Did you mean \`${meant}\`?` : known.length === 0 ? `The plan has none yet: add it, or leave this out.` : `Known: ${known.slice(0, 6).join(", ")}${known.length > 6 ? ", ..." : ""}.`;
		reading.report(place, "unknown-id", `No ${kinds.join(" or ")} has this id.`, remedy, extra);
	}
	const phases = new Set(plan.phases === void 0 ? (plan.tasks ?? []).map((task) => task.phase) : []);
	for (const { kind, label, place } of reading.labelReferences) {
		const defined = reading.labels[kind];
		if (defined.has(label)) continue;
		if (kind === "calendar" && require_plan.GIVEN_CALENDARS.some((given) => given === label)) continue;
		if (kind === "phase" && phases.has(label)) continue;
		const names = (kind === "calendar" ? [...require_plan.GIVEN_CALENDARS, ...defined.keys()] : [...defined.keys(), ...phases]).filter((name) => name !== void 0);
		const meant = reading.suggest(label, names);
		const remedy = meant !== void 0 ? `Did you mean \`${meant}\`?` : `Add it to \`${kind}s\`, or name one of: ${names.slice(0, 6).join(", ")}.`;
		reading.report(place, `unknown-${kind}`, `No ${kind} has this name.`, remedy);
	}
}
// ../../packages/core/src/plan/check/register.ts
/** Impacts say what they touch and do; groups exclude each other. */
function checkRegister(plan, reading) {
	const milestones = /* @__PURE__ */ new Set();
	/** Phases with something in them that can be delayed. */
	const phases = /* @__PURE__ */ new Set();
	for (const { id, milestone, phase } of plan.tasks ?? []) if (milestone !== true && milestone !== "start") phases.add(phase ?? "");
	else if (id !== void 0) milestones.add(id);
	const members = [...(plan.risks ?? []).map((entry) => ({
		entry,
		own: entry.probability,
		ownKey: "probability"
	})), ...(plan.assumptions ?? []).map((entry) => ({
		entry,
		own: entry.chanceWrong,
		ownKey: "chanceWrong"
	}))];
	const groups = /* @__PURE__ */ new Map();
	for (const member of members) {
		for (const impact of member.entry.impacts ?? []) checkImpact(impact, milestones, phases, reading);
		const { group } = member.entry;
		if (group === void 0) continue;
		const list = groups.get(group);
		if (list === void 0) groups.set(group, [member]);
		else list.push(member);
	}
	for (const [name, list] of groups) checkGroup(name, list, reading);
}
var PARTS = [
	"delay",
	"factor",
	"wait",
	"cost"
];
function checkImpact(impact, milestones, phases, reading) {
	const place = reading.placeOf(impact);
	const written = (key) => place.node.kind === "map" && place.node.entries.has(key);
	if (written("tasks") && written("phase")) reading.report(reading.placeOf(impact, "phase"), "impact-target", "An impact touches `tasks` or a `phase`, not both.", "Keep one, or write two impacts.");
	if (!written("tasks") && !written("phase") && PARTS.some((part) => part !== "cost" && written(part))) reading.report(place, "impact-target", "A delay, factor or wait says what it touches.", "Add `tasks`, or `phase`.", { received: "" });
	if (!PARTS.some(written)) reading.report(place, "impact-empty", "An impact says what it does.", "Add `delay`, `factor`, `wait` or `cost`.", { received: "" });
	if (impact.phase !== void 0 && !phases.has(impact.phase) && reading.labels.phase.has(impact.phase)) {
		const rule = "This phase has no tasks but milestones, so nothing would happen.";
		const at = reading.placeOf(impact, "phase");
		reading.report(at, "impact-nothing", rule, "Name the tasks it touches.", { severity: "warning" });
	}
	const named = /* @__PURE__ */ new Set();
	for (const task of impact.tasks ?? []) {
		if (named.has(task)) {
			const rule = `${task} is named twice in one impact.`;
			reading.report(reading.placeOf(impact, "tasks"), "repeated-task", rule, "Name it once.");
		}
		named.add(task);
		if (!milestones.has(task)) continue;
		for (const part of PARTS) {
			if (part === "wait" || impact[part] === void 0) continue;
			const rule = `\`${task}\` is a milestone, which can only \`wait\`.`;
			reading.report(reading.placeOf(impact, part), "impact-on-milestone", rule, "Write `wait`, or name a task.");
		}
	}
}
function checkGroup(name, members, reading) {
	let sum = 0;
	for (const { own } of members) sum += own ?? 0;
	const last = members[members.length - 1];
	if (sum > 1 + 1e-9 && last !== void 0) {
		const rule = `The chances in group ${name} sum to ${Number(sum.toPrecision(12))}; what excludes each other sums to at most 1.`;
		reading.report(reading.placeOf(last.entry, last.ownKey), "group-sum", rule, "Lower them, or take one out of the group.");
	}
	let occurred;
	for (const { entry, own } of members) {
		if (entry.status === "occurred") {
			if (occurred !== void 0) {
				const rule = `\`${occurred}\` of group ${name} has occurred too; they exclude each other.`;
				reading.report(reading.placeOf(entry, "status"), "group-occurred", rule, "Take one out of the group, or correct its status.");
			}
			occurred ??= entry.id ?? "?";
		}
		checkSlot(name, entry, own, reading);
	}
}
/** After its adopted responses an entry of a group may not be likelier than before. */
function checkSlot(name, entry, own, reading) {
	if (own === void 0 || own === 0) return;
	let after = own;
	let raising;
	for (const response of entry.responses ?? []) {
		if (response.adopted !== true || response.probability === void 0) continue;
		after *= response.probability / own;
		if (response.probability > own) raising = response;
	}
	if (raising === void 0 || after <= own + 1e-9) return;
	const rule = `In group ${name} an adopted response may not raise the chance; it would go from ${own} to ${Number(after.toPrecision(12))}.`;
	const remedy = `Write at most ${own}, or take it out of the group.`;
	reading.report(reading.placeOf(raising, "probability"), "group-raised", rule, remedy);
}
// ../../packages/core/src/plan/check/returnTriggers.ts
/** Every return trigger has exactly one condition; a signpost was seen by the status date. */
function checkReturnTriggers(plan, reading) {
	for (const trigger of plan.returnTriggers ?? []) {
		const place = reading.placeOf(trigger);
		const { node } = place;
		const given = (node.kind === "map" ? [...node.entries.keys()] : []).flatMap((key) => require_plan.TRIGGER_CONDITIONS.find((condition) => condition === key) ?? []);
		if (given.length !== 1) {
			const rule = given.length === 0 ? "A return trigger has a condition." : "A return trigger has one condition only.";
			const remedy = given.length === 0 ? `Add one of: ${require_plan.TRIGGER_CONDITIONS.join(", ")}.` : `Make ${given.length} triggers of it.`;
			const at = given[1] === void 0 ? place : reading.placeOf(trigger, given[1]);
			reading.report(at, "trigger-condition", rule, remedy, { received: given.join(", ") });
		}
	}
	for (const assumption of plan.assumptions ?? []) {
		const { tripped } = assumption;
		if (tripped === void 0) continue;
		const place = reading.placeOf(assumption, "tripped");
		if (plan.statusDate === void 0) reading.report(place, "no-status-date", "`tripped` needs the plan's `statusDate`.", "Add `statusDate`, the day up to which it is recorded.");
		else if (tripped > plan.statusDate) {
			const rule = `It lies after \`statusDate\`, ${plan.statusDate}; a sign that was seen has already come.`;
			reading.report(place, "progress-date", rule, "Correct the day, or move `statusDate`.");
		}
	}
}
// ../../packages/core/src/plan/check/tasks.ts
/** What a milestone has no use for. */
var NOT_OF_A_MILESTONE = [
	"duration",
	"effort",
	"remaining",
	"people",
	"costPerDay",
	"unbroken"
];
/** Duration, effort and milestones; names a person once; labels of renamed items. */
function checkTasks(plan, reading) {
	const shares = new Map((plan.people ?? []).map((person) => [person.id, person.share ?? 1]));
	for (const task of plan.tasks ?? []) {
		if (task.milestone === true || task.milestone === "start") checkMilestone(task, reading);
		else checkAmount(task, shares, reading);
		const named = /* @__PURE__ */ new Set();
		for (const member of task.people ?? []) {
			if (member.id === void 0) continue;
			if (named.has(member.id)) {
				const rule = `${member.id} is named twice in this task.`;
				reading.report(reading.placeOf(member), "repeated-person", rule, "Name them once, with the whole `share`.");
			}
			named.add(member.id);
		}
	}
	checkOldIds(plan, reading);
}
function has(task, key, reading) {
	const { node } = reading.placeOf(task);
	return node.kind === "map" && node.entries.has(key);
}
function checkMilestone(task, reading) {
	for (const key of NOT_OF_A_MILESTONE) {
		if (!has(task, key, reading)) continue;
		const rule = `A milestone is a point in time and has no \`${key}\`.`;
		reading.report(reading.placeOf(task, key), "milestone-key", rule, `Remove \`${key}\`, or \`milestone\`.`);
	}
}
function checkAmount(task, shares, reading) {
	const duration = has(task, "duration", reading);
	const effort = has(task, "effort", reading);
	if (duration && effort) reading.report(reading.placeOf(task, "effort"), "duration-and-effort", "A task has `duration` or `effort`, not both.", "Keep one of the two.");
	if (!duration && !effort) reading.report(reading.placeOf(task), "no-duration", "A task needs `duration` or `effort`.", "Add `duration: [low, likely, high]` in working days, or `milestone: true`.", { received: task.id ?? "" });
	if (!effort) return;
	const place = reading.placeOf(task, "effort");
	const people = task.people ?? [];
	if (people.length === 0) {
		if (has(task, "people", reading) && reading.placeOf(task, "people").node.kind !== "list") return;
		reading.report(place, "effort-without-people", "Effort needs a person to do it.", "Add `people`, or write `duration`.");
		return;
	}
	let total = 0;
	for (const { id, share } of people) total += share ?? shares.get(id) ?? 1;
	if (total <= 1e-9) reading.report(place, "effort-without-people", "The shares of its people sum to 0; effort could never be done.", "Give someone a share above 0.");
}
/** Two things that claim the same old id would share their draws. */
function checkOldIds(plan, reading) {
	const everything = [
		...plan.tasks ?? [],
		...plan.people ?? [],
		...plan.overheads ?? [],
		...plan.benefits ?? [],
		...[...plan.risks ?? [], ...plan.assumptions ?? []].flatMap((entry) => [entry, ...entry.responses ?? []])
	];
	const taken = /* @__PURE__ */ new Map();
	for (const { id, was } of everything) if (id !== void 0 && was === void 0) taken.set(id, id);
	for (const item of everything) {
		if (item.was === void 0 || item.id === void 0) continue;
		const other = taken.get(item.was);
		if (other !== void 0) {
			const rule = `\`${other}\` has or had this id too; the two would share their random draws.`;
			const place = reading.placeOf(item, "was");
			reading.report(place, "old-id-taken", rule, "Keep `was` on the one that was renamed.", { severity: "warning" });
		}
		taken.set(item.was, item.id);
	}
}
// ../../packages/core/src/plan/check/checkDraft.ts
/** Checks everything that holds between keys; each problem is reported into `reading`. */
function checkDraft(plan, reading) {
	checkReferences(plan, reading);
	checkEstimates(plan, reading);
	checkCalendars(plan, reading);
	checkTasks(plan, reading);
	checkLinks(plan, reading);
	checkPeople(plan, reading);
	checkProgress(plan, reading);
	checkRegister(plan, reading);
	checkFacts(plan, reading);
	checkReturnTriggers(plan, reading);
	checkCorrelations(plan, reading);
	checkBenefits(plan, reading);
}
// ../../node_modules/.pnpm/canonicalize@3.0.0/node_modules/canonicalize/lib/canonicalize.js
function canonicalize(object, seen = /* @__PURE__ */ new Set()) {
	if (typeof object === "number" && isNaN(object)) throw new Error("NaN is not allowed");
	if (typeof object === "number" && !isFinite(object)) throw new Error("Infinity is not allowed");
	if (object === null || typeof object !== "object") return JSON.stringify(object);
	if (typeof object.toJSON === "function") {
		if (seen.has(object)) throw new Error("Circular reference detected");
		seen.add(object);
		const result = canonicalize(object.toJSON(), seen);
		seen.delete(object);
		return result;
	}
	if (seen.has(object)) throw new Error("Circular reference detected");
	seen.add(object);
	let result;
	if (Array.isArray(object)) result = `[${object.map((cv) => {
		return canonicalize(cv === void 0 || typeof cv === "symbol" ? null : cv, seen);
	}).join(",")}]`;
	else {
		const parts = [];
		for (const key of Object.keys(object).sort()) {
			if (object[key] === void 0 || typeof object[key] === "symbol") continue;
			parts.push(`${canonicalize(key)}:${canonicalize(object[key], seen)}`);
		}
		result = `{${parts.join(",")}}`;
	}
	seen.delete(object);
	return result;
}
// ../../packages/core/src/plan/hash.ts
var DECISIONS = [
	"approvals",
	"objections",
	"changes",
	"acceptedFindings"
];
/** Talk: what people said, and who wrote it down. */
var TASK_TALK = ["opinions", "enteredBy"];
var QUALITY_PROGRESS = ["measured", "on"];
var LIST_PROGRESS = [
	["tasks", [
		"started",
		"finished",
		"remaining",
		"spent"
	]],
	["risks", ["status", "actual"]],
	["assumptions", [
		"status",
		"actual",
		"tripped"
	]]
];
/**
* SHA-256, in hex, of a plan document as written: RFC 8785 JSON without approvals, objections, changes, accepted
* findings, opinions and who entered what, defaults not filled in, every list of objects with `id` sorted by it (code
* units) at every depth.
* YAML and JSON of the same content, comments and key order aside, give the same hash.
*/
function planHash(document) {
	return hash(sorted(withoutTalk(without(document, DECISIONS))));
}
/** Both hashes; one calculation where the plan has no progress yet. */
function planHashes(document) {
	const sha256 = planHash(document);
	const bare = withoutProgress(document);
	return {
		sha256,
		approvalSha256: bare === document ? sha256 : planHash(bare)
	};
}
/** What people said before an estimate was settled is talk; what was settled counts. */
function withoutTalk(document) {
	return at(document, "tasks", (tasks) => each(tasks, TASK_TALK));
}
/** The document itself where it holds no progress. */
function withoutProgress(document) {
	let bare = without(document, ["statusDate"]);
	for (const [list, keys] of LIST_PROGRESS) bare = at(bare, list, (items) => each(items, keys));
	return at(bare, "purpose", (purpose) => at(purpose, "quality", (bars) => each(bars, QUALITY_PROGRESS)));
}
/** The value with what stands under a key changed; itself where that stays the same. */
function at(value, key, change) {
	const item = isObject(value) ? value[key] : void 0;
	if (item === void 0) return value;
	const changed = change(item);
	return changed === item ? value : Object.assign(Object.create(null), value, { [key]: changed });
}
/** The items of a list, or a lone one, without these keys; itself where none has them. */
function each(list, keys) {
	if (!Array.isArray(list)) return without(list, keys);
	const items = list.map((item) => without(item, keys));
	return items.every((item, index) => item === list[index]) ? list : items;
}
/** SHA-256 of the RFC 8785 form. The document holds JSON values only, so canonicalize always answers. */
function hash(document) {
	const text = canonicalize(document);
	if (text === void 0) throw new Error("not a JSON value");
	return bytesToHex(sha256(utf8ToBytes(text)));
}
function isObject(value) {
	return typeof value === "object" && value !== null && !Array.isArray(value);
}
function without(value, keys) {
	if (!isObject(value) || !keys.some((key) => Object.hasOwn(value, key))) return value;
	const result = Object.create(null);
	for (const [key, item] of Object.entries(value)) if (!keys.includes(key)) result[key] = item;
	return result;
}
function sorted(value) {
	if (Array.isArray(value)) {
		const items = value.map(sorted);
		const keyed = items.map((item) => isObject(item) && typeof item.id === "string" ? item.id : void 0);
		if (items.length < 2 || keyed.includes(void 0)) return items;
		return items.map((item, index) => ({
			item,
			id: keyed[index] ?? ""
		})).sort((a, b) => a.id < b.id ? -1 : a.id > b.id ? 1 : 0).map(({ item }) => item);
	}
	if (!isObject(value)) return value;
	const result = Object.create(null);
	for (const [key, item] of Object.entries(value)) result[key] = sorted(item);
	return result;
}
// ../../packages/core/src/plan/readPlan.ts
/**
* Reads a plan document, format 1, from YAML 1.2 or JSON text. Every problem is listed at once, each with
* its path, line and column. Never throws; time is bounded in proportion to the text.
*
* @param text  The whole document.
*/
function readPlan(text) {
	return readTree(readSource(text));
}
function readTree(tree) {
	const reading = new Reading(tree);
	for (const fault of tree.faults) reading.reportFault(fault);
	const { root } = tree;
	if (root === void 0) {
		if (tree.faults.length === 0) reading.reportFault({
			code: "empty",
			at: 0,
			received: "",
			rule: "The document is empty.",
			remedy: "Begin with `format: 1`, `title`, `start` and `tasks`."
		});
		return { problems: reading.problems };
	}
	const before = reading.problems.length;
	const place = {
		keyAt: root.at,
		node: root
	};
	const draft = require_plan.planDocument.read(place, reading);
	if (tree.brokenFrom !== void 0) {
		const end = tree.brokenFrom;
		return { problems: inOrder(reading.problems.filter((problem, index) => {
			if (index < before) return true;
			return STRUCTURAL_CODES.has(problem.code) && problem.code !== "missing-key" && problem.code !== "too-few" && reading.isBefore(problem, end);
		})) };
	}
	if (draft === void 0) return { problems: inOrder(reading.problems) };
	checkDraft(draft, reading);
	const problems = inOrder(reading.problems);
	if (problems.some((problem) => problem.severity === "error")) return { problems };
	return {
		plan: buildPlan(draft, planHashes(toJson(root))),
		problems
	};
}
/** By line and column where known; otherwise as found. */
function inOrder(problems) {
	return [...problems].sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
}
Object.defineProperty(exports, "Reading", {
	enumerable: true,
	get: function() {
		return Reading;
	}
});
Object.defineProperty(exports, "bytesToHex", {
	enumerable: true,
	get: function() {
		return bytesToHex;
	}
});
Object.defineProperty(exports, "canonicalize", {
	enumerable: true,
	get: function() {
		return canonicalize;
	}
});
Object.defineProperty(exports, "planHash", {
	enumerable: true,
	get: function() {
		return planHash;
	}
});
Object.defineProperty(exports, "present", {
	enumerable: true,
	get: function() {
		return present;
	}
});
Object.defineProperty(exports, "readPlan", {
	enumerable: true,
	get: function() {
		return readPlan;
	}
});
Object.defineProperty(exports, "readSource", {
	enumerable: true,
	get: function() {
		return readSource;
	}
});
Object.defineProperty(exports, "sha256", {
	enumerable: true,
	get: function() {
		return sha256;
	}
});
Object.defineProperty(exports, "toJson", {
	enumerable: true,
	get: function() {
		return toJson;
	}
});
Object.defineProperty(exports, "utf8ToBytes", {
	enumerable: true,
	get: function() {
		return utf8ToBytes;
	}
});
