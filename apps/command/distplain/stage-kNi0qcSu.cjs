const require_rolldown_runtime = require("./rolldown-runtime-C-fzZZTt.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/lib/alea.js
var require_alea = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module, this$7) => {
	(function(global, module, define) {
		function Alea(seed) {
			var me = this, mash = Mash();
			me.next = function() {
				var t = 2091639 * me.s0 + me.c * 23283064365386963e-26;
				me.s0 = me.s1;
				me.s1 = me.s2;
				return me.s2 = t - (me.c = t | 0);
			};
			me.c = 1;
			me.s0 = mash(" ");
			me.s1 = mash(" ");
			me.s2 = mash(" ");
			me.s0 -= mash(seed);
			if (me.s0 < 0) me.s0 += 1;
			me.s1 -= mash(seed);
			if (me.s1 < 0) me.s1 += 1;
			me.s2 -= mash(seed);
			if (me.s2 < 0) me.s2 += 1;
			mash = null;
		}
		function copy(f, t) {
			t.c = f.c;
			t.s0 = f.s0;
			t.s1 = f.s1;
			t.s2 = f.s2;
			return t;
		}
		function impl(seed, opts) {
			var xg = new Alea(seed), state = opts && opts.state, prng = xg.next;
			prng.int32 = function() {
				return xg.next() * 4294967296 | 0;
			};
			prng.double = function() {
				return prng() + (prng() * 2097152 | 0) * 11102230246251565e-32;
			};
			prng.quick = prng;
			if (state) {
				if (typeof state == "object") copy(state, xg);
				prng.state = function() {
					return copy(xg, {});
				};
			}
			return prng;
		}
		function Mash() {
			var n = 4022871197;
			var mash = function(data) {
				data = String(data);
				for (var i = 0; i < data.length; i++) {
					n += data.charCodeAt(i);
					var h = .02519603282416938 * n;
					n = h >>> 0;
					h -= n;
					h *= n;
					n = h >>> 0;
					h -= n;
					n += h * 4294967296;
				}
				return (n >>> 0) * 23283064365386963e-26;
			};
			return mash;
		}
		if (module && module.exports) module.exports = impl;
		else if (define && define.amd) define(function() {
			return impl;
		});
		else this.alea = impl;
	})(this$7, typeof module == "object" && module, typeof define == "function" && define);
}));
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/lib/xor128.js
var require_xor128 = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module, this$6) => {
	(function(global, module, define) {
		function XorGen(seed) {
			var me = this, strseed = "";
			me.x = 0;
			me.y = 0;
			me.z = 0;
			me.w = 0;
			me.next = function() {
				var t = me.x ^ me.x << 11;
				me.x = me.y;
				me.y = me.z;
				me.z = me.w;
				return me.w ^= me.w >>> 19 ^ t ^ t >>> 8;
			};
			if (seed === (seed | 0)) me.x = seed;
			else strseed += seed;
			for (var k = 0; k < strseed.length + 64; k++) {
				me.x ^= strseed.charCodeAt(k) | 0;
				me.next();
			}
		}
		function copy(f, t) {
			t.x = f.x;
			t.y = f.y;
			t.z = f.z;
			t.w = f.w;
			return t;
		}
		function impl(seed, opts) {
			var xg = new XorGen(seed), state = opts && opts.state, prng = function() {
				return (xg.next() >>> 0) / 4294967296;
			};
			prng.double = function() {
				do
					var result = ((xg.next() >>> 11) + (xg.next() >>> 0) / 4294967296) / (1 << 21);
				while (result === 0);
				return result;
			};
			prng.int32 = xg.next;
			prng.quick = prng;
			if (state) {
				if (typeof state == "object") copy(state, xg);
				prng.state = function() {
					return copy(xg, {});
				};
			}
			return prng;
		}
		if (module && module.exports) module.exports = impl;
		else if (define && define.amd) define(function() {
			return impl;
		});
		else this.xor128 = impl;
	})(this$6, typeof module == "object" && module, typeof define == "function" && define);
}));
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/lib/xorwow.js
var require_xorwow = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module, this$5) => {
	(function(global, module, define) {
		function XorGen(seed) {
			var me = this, strseed = "";
			me.next = function() {
				var t = me.x ^ me.x >>> 2;
				me.x = me.y;
				me.y = me.z;
				me.z = me.w;
				me.w = me.v;
				return (me.d = me.d + 362437 | 0) + (me.v = me.v ^ me.v << 4 ^ (t ^ t << 1)) | 0;
			};
			me.x = 0;
			me.y = 0;
			me.z = 0;
			me.w = 0;
			me.v = 0;
			if (seed === (seed | 0)) me.x = seed;
			else strseed += seed;
			for (var k = 0; k < strseed.length + 64; k++) {
				me.x ^= strseed.charCodeAt(k) | 0;
				if (k == strseed.length) me.d = me.x << 10 ^ me.x >>> 4;
				me.next();
			}
		}
		function copy(f, t) {
			t.x = f.x;
			t.y = f.y;
			t.z = f.z;
			t.w = f.w;
			t.v = f.v;
			t.d = f.d;
			return t;
		}
		function impl(seed, opts) {
			var xg = new XorGen(seed), state = opts && opts.state, prng = function() {
				return (xg.next() >>> 0) / 4294967296;
			};
			prng.double = function() {
				do
					var result = ((xg.next() >>> 11) + (xg.next() >>> 0) / 4294967296) / (1 << 21);
				while (result === 0);
				return result;
			};
			prng.int32 = xg.next;
			prng.quick = prng;
			if (state) {
				if (typeof state == "object") copy(state, xg);
				prng.state = function() {
					return copy(xg, {});
				};
			}
			return prng;
		}
		if (module && module.exports) module.exports = impl;
		else if (define && define.amd) define(function() {
			return impl;
		});
		else this.xorwow = impl;
	})(this$5, typeof module == "object" && module, typeof define == "function" && define);
}));
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/lib/xorshift7.js
var require_xorshift7 = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module, this$4) => {
	(function(global, module, define) {
		function XorGen(seed) {
			var me = this;
			me.next = function() {
				var X = me.x, i = me.i, t = X[i], v;
				t ^= t >>> 7;
				v = t ^ t << 24;
				t = X[i + 1 & 7];
				v ^= t ^ t >>> 10;
				t = X[i + 3 & 7];
				v ^= t ^ t >>> 3;
				t = X[i + 4 & 7];
				v ^= t ^ t << 7;
				t = X[i + 7 & 7];
				t = t ^ t << 13;
				v ^= t ^ t << 9;
				X[i] = v;
				me.i = i + 1 & 7;
				return v;
			};
			function init(me, seed) {
				var j, X = [];
				if (seed === (seed | 0)) X[0] = seed;
				else {
					seed = "" + seed;
					for (j = 0; j < seed.length; ++j) X[j & 7] = X[j & 7] << 15 ^ seed.charCodeAt(j) + X[j + 1 & 7] << 13;
				}
				while (X.length < 8) X.push(0);
				for (j = 0; j < 8 && X[j] === 0; ++j);
				if (j == 8) X[7] = -1;
				else X[j];
				me.x = X;
				me.i = 0;
				for (j = 256; j > 0; --j) me.next();
			}
			init(me, seed);
		}
		function copy(f, t) {
			t.x = f.x.slice();
			t.i = f.i;
			return t;
		}
		function impl(seed, opts) {
			if (seed == null) seed = +/* @__PURE__ */ new Date();
			var xg = new XorGen(seed), state = opts && opts.state, prng = function() {
				return (xg.next() >>> 0) / 4294967296;
			};
			prng.double = function() {
				do
					var result = ((xg.next() >>> 11) + (xg.next() >>> 0) / 4294967296) / (1 << 21);
				while (result === 0);
				return result;
			};
			prng.int32 = xg.next;
			prng.quick = prng;
			if (state) {
				if (state.x) copy(state, xg);
				prng.state = function() {
					return copy(xg, {});
				};
			}
			return prng;
		}
		if (module && module.exports) module.exports = impl;
		else if (define && define.amd) define(function() {
			return impl;
		});
		else this.xorshift7 = impl;
	})(this$4, typeof module == "object" && module, typeof define == "function" && define);
}));
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/lib/xor4096.js
var require_xor4096 = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module, this$3) => {
	(function(global, module, define) {
		function XorGen(seed) {
			var me = this;
			me.next = function() {
				var w = me.w, X = me.X, i = me.i, t, v;
				me.w = w = w + 1640531527 | 0;
				v = X[i + 34 & 127];
				t = X[i = i + 1 & 127];
				v ^= v << 13;
				t ^= t << 17;
				v ^= v >>> 15;
				t ^= t >>> 12;
				v = X[i] = v ^ t;
				me.i = i;
				return v + (w ^ w >>> 16) | 0;
			};
			function init(me, seed) {
				var t, v, i, j, w, X = [], limit = 128;
				if (seed === (seed | 0)) {
					v = seed;
					seed = null;
				} else {
					seed = seed + "\0";
					v = 0;
					limit = Math.max(limit, seed.length);
				}
				for (i = 0, j = -32; j < limit; ++j) {
					if (seed) v ^= seed.charCodeAt((j + 32) % seed.length);
					if (j === 0) w = v;
					v ^= v << 10;
					v ^= v >>> 15;
					v ^= v << 4;
					v ^= v >>> 13;
					if (j >= 0) {
						w = w + 1640531527 | 0;
						t = X[j & 127] ^= v + w;
						i = 0 == t ? i + 1 : 0;
					}
				}
				if (i >= 128) X[(seed && seed.length || 0) & 127] = -1;
				i = 127;
				for (j = 512; j > 0; --j) {
					v = X[i + 34 & 127];
					t = X[i = i + 1 & 127];
					v ^= v << 13;
					t ^= t << 17;
					v ^= v >>> 15;
					t ^= t >>> 12;
					X[i] = v ^ t;
				}
				me.w = w;
				me.X = X;
				me.i = i;
			}
			init(me, seed);
		}
		function copy(f, t) {
			t.i = f.i;
			t.w = f.w;
			t.X = f.X.slice();
			return t;
		}
		function impl(seed, opts) {
			if (seed == null) seed = +/* @__PURE__ */ new Date();
			var xg = new XorGen(seed), state = opts && opts.state, prng = function() {
				return (xg.next() >>> 0) / 4294967296;
			};
			prng.double = function() {
				do
					var result = ((xg.next() >>> 11) + (xg.next() >>> 0) / 4294967296) / (1 << 21);
				while (result === 0);
				return result;
			};
			prng.int32 = xg.next;
			prng.quick = prng;
			if (state) {
				if (state.X) copy(state, xg);
				prng.state = function() {
					return copy(xg, {});
				};
			}
			return prng;
		}
		if (module && module.exports) module.exports = impl;
		else if (define && define.amd) define(function() {
			return impl;
		});
		else this.xor4096 = impl;
	})(this$3, typeof module == "object" && module, typeof define == "function" && define);
}));
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/lib/tychei.js
var require_tychei = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module, this$2) => {
	(function(global, module, define) {
		function XorGen(seed) {
			var me = this, strseed = "";
			me.next = function() {
				var b = me.b, c = me.c, d = me.d, a = me.a;
				b = b << 25 ^ b >>> 7 ^ c;
				c = c - d | 0;
				d = d << 24 ^ d >>> 8 ^ a;
				a = a - b | 0;
				me.b = b = b << 20 ^ b >>> 12 ^ c;
				me.c = c = c - d | 0;
				me.d = d << 16 ^ c >>> 16 ^ a;
				return me.a = a - b | 0;
			};
			me.a = 0;
			me.b = 0;
			me.c = -1640531527;
			me.d = 1367130551;
			if (seed === Math.floor(seed)) {
				me.a = seed / 4294967296 | 0;
				me.b = seed | 0;
			} else strseed += seed;
			for (var k = 0; k < strseed.length + 20; k++) {
				me.b ^= strseed.charCodeAt(k) | 0;
				me.next();
			}
		}
		function copy(f, t) {
			t.a = f.a;
			t.b = f.b;
			t.c = f.c;
			t.d = f.d;
			return t;
		}
		function impl(seed, opts) {
			var xg = new XorGen(seed), state = opts && opts.state, prng = function() {
				return (xg.next() >>> 0) / 4294967296;
			};
			prng.double = function() {
				do
					var result = ((xg.next() >>> 11) + (xg.next() >>> 0) / 4294967296) / (1 << 21);
				while (result === 0);
				return result;
			};
			prng.int32 = xg.next;
			prng.quick = prng;
			if (state) {
				if (typeof state == "object") copy(state, xg);
				prng.state = function() {
					return copy(xg, {});
				};
			}
			return prng;
		}
		if (module && module.exports) module.exports = impl;
		else if (define && define.amd) define(function() {
			return impl;
		});
		else this.tychei = impl;
	})(this$2, typeof module == "object" && module, typeof define == "function" && define);
}));
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/seedrandom.js
var require_seedrandom$1 = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module, this$1) => {
	(function(global, pool, math) {
		var width = 256, chunks = 6, digits = 52, rngname = "random", startdenom = math.pow(width, chunks), significance = math.pow(2, digits), overflow = significance * 2, mask = width - 1, nodecrypto;
		function seedrandom(seed, options, callback) {
			var key = [];
			options = options == true ? { entropy: true } : options || {};
			var shortseed = mixkey(flatten(options.entropy ? [seed, tostring(pool)] : seed == null ? autoseed() : seed, 3), key);
			var arc4 = new ARC4(key);
			var prng = function() {
				var n = arc4.g(chunks), d = startdenom, x = 0;
				while (n < significance) {
					n = (n + x) * width;
					d *= width;
					x = arc4.g(1);
				}
				while (n >= overflow) {
					n /= 2;
					d /= 2;
					x >>>= 1;
				}
				return (n + x) / d;
			};
			prng.int32 = function() {
				return arc4.g(4) | 0;
			};
			prng.quick = function() {
				return arc4.g(4) / 4294967296;
			};
			prng.double = prng;
			mixkey(tostring(arc4.S), pool);
			return (options.pass || callback || function(prng, seed, is_math_call, state) {
				if (state) {
					if (state.S) copy(state, arc4);
					prng.state = function() {
						return copy(arc4, {});
					};
				}
				if (is_math_call) {
					math[rngname] = prng;
					return seed;
				} else return prng;
			})(prng, shortseed, "global" in options ? options.global : this == math, options.state);
		}
		function ARC4(key) {
			var t, keylen = key.length, me = this, i = 0, j = me.i = me.j = 0, s = me.S = [];
			if (!keylen) key = [keylen++];
			while (i < width) s[i] = i++;
			for (i = 0; i < width; i++) {
				s[i] = s[j = mask & j + key[i % keylen] + (t = s[i])];
				s[j] = t;
			}
			(me.g = function(count) {
				var t, r = 0, i = me.i, j = me.j, s = me.S;
				while (count--) {
					t = s[i = mask & i + 1];
					r = r * width + s[mask & (s[i] = s[j = mask & j + t]) + (s[j] = t)];
				}
				me.i = i;
				me.j = j;
				return r;
			})(width);
		}
		function copy(f, t) {
			t.i = f.i;
			t.j = f.j;
			t.S = f.S.slice();
			return t;
		}
		function flatten(obj, depth) {
			var result = [], typ = typeof obj, prop;
			if (depth && typ == "object") for (prop in obj) try {
				result.push(flatten(obj[prop], depth - 1));
			} catch (e) {}
			return result.length ? result : typ == "string" ? obj : obj + "\0";
		}
		function mixkey(seed, key) {
			var stringseed = seed + "", smear, j = 0;
			while (j < stringseed.length) key[mask & j] = mask & (smear ^= key[mask & j] * 19) + stringseed.charCodeAt(j++);
			return tostring(key);
		}
		function autoseed() {
			try {
				var out;
				if (nodecrypto && (out = nodecrypto.randomBytes)) out = out(width);
				else {
					out = new Uint8Array(width);
					(global.crypto || global.msCrypto).getRandomValues(out);
				}
				return tostring(out);
			} catch (e) {
				var browser = global.navigator, plugins = browser && browser.plugins;
				return [
					+/* @__PURE__ */ new Date(),
					global,
					plugins,
					global.screen,
					tostring(pool)
				];
			}
		}
		function tostring(a) {
			return String.fromCharCode.apply(0, a);
		}
		mixkey(math.random(), pool);
		if (typeof module == "object" && module.exports) {
			module.exports = seedrandom;
			try {
				nodecrypto = require("crypto");
			} catch (ex) {}
		} else if (typeof define == "function" && define.amd) define(function() {
			return seedrandom;
		});
		else math["seed" + rngname] = seedrandom;
	})(typeof self !== "undefined" ? self : this$1, [], Math);
}));
// ../../node_modules/.pnpm/seedrandom@3.0.5/node_modules/seedrandom/index.js
var require_seedrandom = /* @__PURE__ */ require_rolldown_runtime.__commonJSMin(((exports, module) => {
	var alea = require_alea();
	var xor128 = require_xor128();
	var xorwow = require_xorwow();
	var xorshift7 = require_xorshift7();
	var xor4096 = require_xor4096();
	var tychei = require_tychei();
	var sr = require_seedrandom$1();
	sr.alea = alea;
	sr.xor128 = xor128;
	sr.xorwow = xorwow;
	sr.xorshift7 = xorshift7;
	sr.xor4096 = xor4096;
	sr.tychei = tychei;
	module.exports = sr;
}));
// ../../packages/core/src/network/placementOrder.ts
/**
* The order in which tasks are placed: always a task whose predecessors are all placed; among those the highest
* `priority`, then the longest tail (rounded to 1e-6), then the id in code-point order. It depends on as-written
* values only, so it is the same in every iteration, and it is a topological order.
*
* The tail of a task is the as-written length of the longest chain from its start to the end of the network
* (plan format, "People"). Serial schedule generation with a priority list: Kelley (1963), "The critical-path
* method: resources planning and scheduling", in Muth & Thompson, Industrial Scheduling (recalled).
*
* Returns indices into `tasks`. Expects no loop. Cost: a sort of m, and m * log(width of the network).
*/
function placementOrder(tasks) {
	const m = tasks.length;
	const successors = tasks.map(() => []);
	const waiting = new Int32Array(m);
	tasks.forEach((task, j) => {
		for (const link of task.after) {
			successors[link.task].push({
				task: j,
				kind: link.kind,
				lag: link.lag
			});
			if (!task.placed) waiting[j] = waiting[j] + 1;
		}
	});
	const tail = tails(tasks, successors);
	const ranked = rankedByTail(tasks, tail) ?? rankedByAll(tasks, tail);
	const rank = new Int32Array(m);
	ranked.forEach((i, r) => {
		rank[i] = r;
	});
	const eligible = leastFirst(m);
	for (let i = 0; i < m; i++) if (waiting[i] === 0) eligible.push(rank[i]);
	const order = new Int32Array(m);
	for (let k = 0; k < m; k++) {
		const i = ranked[eligible.pop()];
		order[k] = i;
		for (const link of successors[i]) {
			if (tasks[link.task].placed) continue;
			waiting[link.task] = waiting[link.task] - 1;
			if (waiting[link.task] === 0) eligible.push(rank[link.task]);
		}
	}
	return order;
}
function rankedByAll(tasks, tail) {
	return Int32Array.from(tasks, (_, i) => i).sort((a, b) => {
		const x = tasks[a];
		const y = tasks[b];
		if (x.placed !== y.placed) return x.placed ? -1 : 1;
		if (x.priority !== y.priority) return y.priority - x.priority;
		if (tail[a] !== tail[b]) return tail[b] - tail[a];
		return x.id < y.id ? -1 : 1;
	});
}
/**
* The same for tasks in order of ids of which none is placed and all have one priority, where tail and index fit into one
* whole number each: numbers are sorted without calling anything. undefined: not such tasks.
*/
function rankedByTail(tasks, tail) {
	const m = tasks.length;
	const keys = new Float64Array(m);
	for (let i = 0; i < m; i++) {
		const { id, placed, priority } = tasks[i];
		const before = tasks[i - 1];
		if (placed || before !== void 0 && (priority !== before.priority || before.id > id)) return void 0;
		const key = i - m * tail[i];
		if (!Number.isSafeInteger(key)) return void 0;
		keys[i] = key;
	}
	return Int32Array.from(keys.sort(), (key) => (key % m + m) % m);
}
/** A heap of up to `most` whole numbers, the least of which comes first. */
function leastFirst(most) {
	const heap = new Int32Array(most);
	let size = 0;
	return {
		push(value) {
			let at = size++;
			while (at > 0) {
				const parent = at - 1 >> 1;
				if (heap[parent] <= value) break;
				heap[at] = heap[parent];
				at = parent;
			}
			heap[at] = value;
		},
		pop() {
			const least = heap[0];
			const last = heap[--size];
			let at = 0;
			for (let child = 1; child < size; child = 2 * at + 1) {
				if (child + 1 < size && heap[child + 1] < heap[child]) child++;
				if (heap[child] >= last) break;
				heap[at] = heap[child];
				at = child;
			}
			heap[at] = last;
			return least;
		}
	};
}
/** tail(i), rounded to 1e-6; successors first, by an explicit stack (a chain may be thousands of tasks long). */
function tails(tasks, successors) {
	const m = tasks.length;
	const tail = new Float64Array(m);
	const pending = Int32Array.from(successors, (list) => list.length);
	const ready = [];
	for (let i = 0; i < m; i++) if (pending[i] === 0) ready.push(i);
	while (ready.length > 0) {
		const i = ready.pop();
		const d = tasks[i].duration;
		let longest = d;
		for (const { task: j, kind, lag } of successors[i]) {
			const dj = tasks[j].duration;
			const through = (kind === "finish-to-start" || kind === "finish-to-finish" ? d : 0) + lag + tail[j] - (kind === "finish-to-finish" || kind === "start-to-finish" ? dj : 0);
			if (through > longest) longest = through;
		}
		tail[i] = longest;
		for (const link of tasks[i].after) {
			pending[link.task] = pending[link.task] - 1;
			if (pending[link.task] === 0) ready.push(link.task);
		}
	}
	return tail.map((value) => Math.round(value * 1e6));
}
// ../../packages/core/src/explain/lastFinish.ts
/**
* The plan's finish and its date, as `markFinish` finds them, without its marks.
*
* It looks only at tasks that can be the last: one that a task always needed follows, finish to start, ends no later
* than that one (to the bit: points stand where their bounds are, work takes more than the tolerance, which is
* more than rounding). Likewise only points with an earliest date of their own, or that mark a start, can put the
* date past the day of the finish.
*/
function lastFinish(model) {
	const everyone = model.tasks.map((_, j) => j);
	const followed = /* @__PURE__ */ new Set();
	for (const task of model.tasks) {
		if (task.progress !== void 0 || task.chance < 1) continue;
		for (const { from, kind, direct } of task.links) if (direct && kind === "finish-to-start") followed.add(from);
	}
	const last = everyone.filter((j) => !followed.has(j));
	const dated = everyone.filter((j) => {
		const task = model.tasks[j];
		if (!task.mayBePoint && task.progress === void 0) return false;
		return task.progress?.finished !== true && (task.kind === "milestone-start" || task.readingFloor > 0);
	});
	return (block, all) => {
		if (model.finishOf >= 0) finishOfTask(model, block);
		else {
			latest(block, all ? everyone : last);
			for (const j of dated) dateOfPoint(model.tasks[j], j, block);
		}
	};
}
function finishOfTask(model, { n, planFinish, planFinishDay, ...block }) {
	const j = model.finishOf;
	const task = model.tasks[j];
	const finish = block.finish[j];
	const duration = block.duration[j];
	const needed = block.needed[j];
	for (let k = 0; k < n; k++) {
		const t = finish[k];
		planFinish[k] = t;
		planFinishDay[k] = require_engine.finishDay(task, t, duration[k] <= require_engine.tolerance, needed?.[k] !== 0);
	}
}
function latest(block, tasks) {
	const { n, planFinish, planFinishDay, kernel } = block;
	planFinish.fill(0, 0, n);
	for (const j of tasks) {
		const finish = block.finish[j];
		const needed = block.needed[j];
		if (needed === void 0) {
			kernel.raiseTo(planFinish, finish, n);
			continue;
		}
		for (let k = 0; k < n; k++) {
			const t = finish[k];
			if (needed[k] === 1 && t > planFinish[k]) planFinish[k] = t;
		}
	}
	for (let k = 0; k < n; k++) planFinishDay[k] = Math.max(0, Math.ceil(planFinish[k] - require_engine.tolerance) - 1);
}
/** A point may stand on a later day than work that ends at the same moment: at its own earliest date. */
function dateOfPoint(task, j, block) {
	const { n, planFinish, planFinishDay } = block;
	const finish = block.finish[j];
	const duration = block.duration[j];
	const needed = block.needed[j];
	for (let k = 0; k < n; k++) {
		const t = finish[k];
		if (needed?.[k] === 0 || t < planFinish[k] - 1e-9) continue;
		if (duration[k] > 1e-9) continue;
		const day = require_engine.finishDay(task, t, true);
		if (day > planFinishDay[k]) planFinishDay[k] = day;
	}
}
// ../../packages/core/src/explain/settings.ts
/** The slots, entries and tasks on which two settings differ, in either direction. */
function difference(a, b) {
	return {
		slots: differing(a.slots, b.slots),
		entries: differing(a.entries, b.entries),
		needed: differing(a.needed, b.needed),
		people: a.people !== b.people
	};
}
function differing(a, b) {
	const at = /* @__PURE__ */ new Set();
	for (const [index, value] of a ?? []) if (b?.get(index) !== value) at.add(index);
	for (const [index, value] of b ?? []) if (a?.get(index) !== value) at.add(index);
	return at;
}
/** Which tasks each slot and entry of a model touches. Made once per model. */
function touchesOf(model) {
	const touches = {
		durations: /* @__PURE__ */ new Map(),
		lags: /* @__PURE__ */ new Map(),
		costs: /* @__PURE__ */ new Map(),
		entries: /* @__PURE__ */ new Map()
	};
	const add = (to, at, task) => {
		if (at === void 0 || at < 0) return;
		const known = to.get(at);
		if (known === void 0) to.set(at, [task]);
		else if (known[known.length - 1] !== task) known.push(task);
	};
	model.tasks.forEach((task, j) => {
		add(touches.durations, task.duration.slot, j);
		add(touches.durations, task.progress?.remaining?.slot, j);
		add(touches.costs, task.cost.slot, j);
		add(touches.costs, task.costPerDay.slot, j);
		for (const link of task.links) add(touches.lags, link.lag.slot, j);
		for (const at of task.impacts) {
			const impact = model.register[at.entry]?.impacts[at.impact];
			if ((impact?.delay ?? impact?.factor ?? impact?.wait) === void 0) continue;
			add(touches.entries, at.entry, j);
			for (const part of [
				impact?.delay,
				impact?.factor,
				impact?.wait
			]) add(touches.durations, part?.slot, j);
		}
	});
	return touches;
}
/**
* What has to be computed again where settings differ: the tasks the difference touches, everything that follows
* them by links, and, with limited people, tasks placed later that share a person with those.
*
* @param limited  Whether people are limited in the run to be computed.
*/
function reachOf(model, touches, differs, limited) {
	const changed = new Set(differs.needed);
	const seeds = /* @__PURE__ */ new Set();
	const priced = /* @__PURE__ */ new Set();
	for (const slot of differs.slots) {
		for (const j of touches.durations.get(slot) ?? []) changed.add(j);
		for (const j of touches.lags.get(slot) ?? []) seeds.add(j);
		for (const j of touches.costs.get(slot) ?? []) priced.add(j);
	}
	for (const entry of differs.entries) for (const j of touches.entries.get(entry) ?? []) changed.add(j);
	const placed = new Uint8Array(model.tasks.length);
	for (const j of seeds) placed[j] = 1;
	for (const j of changed) {
		placed[j] = 1;
		priced.add(j);
	}
	const busy = /* @__PURE__ */ new Set();
	let count = 0;
	for (const j of model.order) {
		const task = model.tasks[j];
		if (task === void 0) continue;
		if (differs.people && task.holds.length > 0 || task.links.some((link) => placed[link.from] === 1) || limited && task.holds.some((hold) => busy.has(hold.person))) placed[j] = 1;
		if (placed[j] === 0) continue;
		count++;
		for (const hold of task.holds) busy.add(hold.person);
	}
	return {
		changed: [...changed],
		placed,
		count,
		priced: [...priced]
	};
}
// ../../packages/core/src/explain/totalCost.ts
/**
* The cost of a variant, as `addMoney` adds it up, with tasks whose cost has not changed taken from rows instead of
* priced again. Additions are those of `addMoney` in its order, so the totals are the same to the bit.
*
* Memory: two rows for each task that costs anything.
*/
function totalCost(model, { kernel }, size) {
	const costly = model.tasks.flatMap(({ cost, costPerDay, peoplePerDay, progress }, j) => [cost, costPerDay].some(({ slot, value }) => slot >= 0 || value !== 0) || peoplePerDay !== 0 || progress?.spent !== void 0 ? [j] : []);
	const rows = () => new Map(costly.map((j) => [j, kernel.arena.rows(1, size)[0]]));
	const base = rows();
	const work = rows();
	const parts = new Map(base);
	return {
		load(block) {
			for (const [j, part] of base) require_engine.taskCost(model.tasks[j], j, block, part);
		},
		reset() {
			for (const [j, part] of base) parts.set(j, part);
		},
		price(block, j, own) {
			const part = (own ? work : base).get(j);
			if (part === void 0) return;
			if (own) require_engine.taskCost(model.tasks[j], j, block, part);
			parts.set(j, part);
		},
		sum(block) {
			const { n, cost } = block;
			cost.fill(0, 0, n);
			for (const part of parts.values()) kernel.addCost(cost, part, n);
			addOthers(model, block);
		}
	};
}
/** Register, responses, overheads, onto the tasks: few, and their rows depend on occurrences and dates. */
function addOthers(model, block) {
	const { n, cost: total, scratch: part, scratch2: spare, kernel } = block;
	model.register.forEach((entry, e) => {
		const occurs = block.occurs[e];
		for (const { cost } of entry.impacts) {
			if (cost === void 0) continue;
			kernel.addCostWhere(total, occurs, require_engine.rowOf(cost, block) ?? spare.fill(cost.value, 0, n), entry.scale, n);
		}
	});
	for (const response of model.responses) {
		require_engine.fillAmount(response.cost, block, part);
		kernel.addCost(total, part, n);
	}
	for (const overhead of model.overheads) {
		require_engine.fillAmount(overhead.perDay, block, part);
		const from = overhead.from < 0 ? void 0 : block.start[overhead.from];
		const to = overhead.to < 0 ? block.planFinish : block.finish[overhead.to];
		for (let k = 0; k < n; k++) {
			const before = from === void 0 ? 0 : require_engine.workAt(model.planCalendar, from[k]);
			const days = require_engine.workAt(model.planCalendar, to[k]) - before;
			part[k] = days > 0 ? part[k] * days : 0;
		}
		kernel.addCost(total, part, n);
	}
}
// ../../packages/core/src/explain/stage.ts
/** A task of a re-run runs past the end of what calendars cover. */
var BeyondCalendarError = class extends Error {
	problem;
	constructor(problem) {
		super(`${problem.received}: ${problem.rule} ${problem.remedy}`);
		this.name = "BeyondCalendarError";
		this.problem = problem;
	}
};
/**
* Rows for the model as it is and for one variant, and rows of held values.
*
* @param all  Every settings that will be prepared: their held values get rows here.
*/
function stage(model, draw, all) {
	const size = Math.min(draw.iterations, require_engine.blockSize);
	const values = heldValues(all);
	const rowsOfBlock = model.slots.length + 4 * model.tasks.length + 8;
	const kernel = require_engine.kernelFor(model, size, 3 + Math.ceil((values.size + 2 * model.tasks.length) / rowsOfBlock));
	const base = require_engine.newBlock(model, size, kernel);
	const work = require_engine.newBlock(model, size, kernel);
	const held = /* @__PURE__ */ new Map();
	for (const value of values) held.set(value, kernel.arena.rows(1, size)[0].fill(value));
	const [never, always] = kernel.arena.bytes(2, size);
	always.fill(1);
	const source = require_engine.draws(model, draw.seed, draw.design);
	const planned = require_engine.planAsWritten(model).starts;
	const touches = touchesOf(model);
	const block = { ...work };
	const finish = lastFinish(model);
	const money = totalCost(model, base, size);
	const standAsBase = () => {
		block.draws = [...base.draws];
		block.occurs = [...base.occurs];
		block.needed = [...base.needed];
		block.duration = [...base.duration];
		block.wait = [...base.wait];
		block.start = [...base.start];
		block.finish = [...base.finish];
	};
	/** Points the block's draws at what the settings hold; the rest are the model's own. */
	const hold = ({ slots, entries, needed }) => {
		block.draws = [...base.draws];
		block.occurs = [...base.occurs];
		block.needed = [...base.needed];
		for (const [slot, value] of slots ?? []) block.draws[slot] = held.get(value);
		for (const [entry, occurs] of entries ?? []) block.occurs[entry] = occurs === 1 ? always : never;
		for (const [task, is] of needed ?? []) block.needed[task] = is === 1 ? always : never;
	};
	const realiseAgain = (j, own) => {
		const task = model.tasks[j];
		if (!own) {
			block.duration[j] = base.duration[j];
			block.wait[j] = base.wait[j];
		} else if (require_engine.drawnAsIs(task) && block.needed[j] === void 0) block.duration[j] = block.draws[task.duration.slot];
		else {
			block.duration[j] = work.duration[j];
			block.wait[j] = work.wait[j];
			require_engine.realiseTask(model, block, j);
		}
	};
	const check = (beyond) => {
		if (beyond >= 0) throw new BeyondCalendarError(require_engine.beyondCalendar(model, beyond));
	};
	return {
		prepare(settings) {
			let before;
			return settings.map((now) => {
				const limited = model.limitedPeople && now.people !== false;
				const fromModel = reachOf(model, touches, difference({}, now), limited);
				const fromLast = before === void 0 ? void 0 : reachOf(model, touches, difference(before, now), limited);
				before = now;
				const fromBase = fromLast === void 0 || fromModel.count <= fromLast.count;
				return {
					settings: now,
					fromBase,
					limited,
					own: flags(model, fromModel.changed),
					ownCost: flags(model, fromModel.priced),
					dropped: [...now.needed?.keys() ?? []].some((j) => (model.tasks[j]?.chance ?? 1) >= 1),
					...fromBase ? fromModel : fromLast
				};
			});
		},
		load(b, n) {
			base.n = n;
			block.n = n;
			source.fill(b, base);
			require_engine.realise(model, base);
			const capacity = model.limitedPeople ? require_engine.newCapacity(model) : void 0;
			check(require_engine.place(model, base, planned, capacity));
			finish(base, false);
			money.load(base);
		},
		compute(step, into, first) {
			const { n } = block;
			if (step.fromBase) {
				standAsBase();
				money.reset();
				block.planFinish.set(base.planFinish.subarray(0, n));
				block.planFinishDay.set(base.planFinishDay.subarray(0, n));
			}
			hold(step.settings);
			for (const j of step.changed) realiseAgain(j, step.own[j] === 1);
			if (step.count > 0) {
				step.placed.forEach((again, j) => {
					if (again === 0) return;
					block.start[j] = work.start[j];
					block.finish[j] = work.finish[j];
				});
				check(require_engine.place(model, block, planned, step.limited ? require_engine.newCapacity(model) : void 0, step.placed));
				finish(block, step.dropped);
			}
			for (const j of step.priced) money.price(block, j, step.ownCost[j] === 1);
			money.sum(block);
			into.finish.set(block.planFinish.subarray(0, n), first);
			into.finishDay.set(block.planFinishDay.subarray(0, n), first);
			into.cost.set(block.cost.subarray(0, n), first);
			if (into.lateness !== void 0) require_engine.lateCost(model, block, first, into.lateness);
		}
	};
}
function flags(model, tasks) {
	const row = new Uint8Array(model.tasks.length);
	for (const j of tasks) row[j] = 1;
	return row;
}
function heldValues(all) {
	const values = /* @__PURE__ */ new Set();
	for (const { slots } of all) for (const value of slots?.values() ?? []) values.add(value);
	return values;
}
Object.defineProperty(exports, "BeyondCalendarError", {
	enumerable: true,
	get: function() {
		return BeyondCalendarError;
	}
});
Object.defineProperty(exports, "addOthers", {
	enumerable: true,
	get: function() {
		return addOthers;
	}
});
Object.defineProperty(exports, "lastFinish", {
	enumerable: true,
	get: function() {
		return lastFinish;
	}
});
Object.defineProperty(exports, "placementOrder", {
	enumerable: true,
	get: function() {
		return placementOrder;
	}
});
Object.defineProperty(exports, "reachOf", {
	enumerable: true,
	get: function() {
		return reachOf;
	}
});
Object.defineProperty(exports, "require_seedrandom", {
	enumerable: true,
	get: function() {
		return require_seedrandom;
	}
});
Object.defineProperty(exports, "stage", {
	enumerable: true,
	get: function() {
		return stage;
	}
});
Object.defineProperty(exports, "touchesOf", {
	enumerable: true,
	get: function() {
		return touchesOf;
	}
});
