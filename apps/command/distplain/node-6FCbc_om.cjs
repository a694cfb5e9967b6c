const require_engine = require("./engine-Bbth-FEh.cjs");
const require_sparingly = require("./sparingly-_hY-ttWS.cjs");
let node_worker_threads = require("node:worker_threads");
let node_os = require("node:os");
// ../../packages/parallel/src/crew.ts
/**
* Takes threads from the pool, tells them the plan, lets them work, and gives them back. When the work fails or
* is aborted the threads are ended first, so that nothing is left running when the promise rejects.
*/
async function withCrew(task, work) {
	const { pool, threads, plan, options } = task;
	const { signal, seed, design, months, confidence } = options;
	signal?.throwIfAborted();
	const crew = pool.take(threads);
	let abort = () => {};
	const aborted = new Promise((_, reject) => {
		abort = () => reject(signal?.reason);
	});
	signal?.addEventListener("abort", abort, { once: true });
	try {
		const told = {
			...seed === void 0 ? {} : { seed },
			...design === void 0 ? {} : { design },
			...months === void 0 ? {} : { months },
			...confidence === void 0 ? {} : { confidence }
		};
		for (const helper of crew) helper.tell({
			kind: "plan",
			plan,
			options: told
		});
		const result = await Promise.race([work(crew), aborted]);
		pool.giveBack(crew);
		await Promise.all(crew.filter(({ alive }) => !alive).map((helper) => helper.end()));
		return result;
	} catch (error) {
		await Promise.all(crew.map((helper) => helper.end()));
		throw error;
	} finally {
		signal?.removeEventListener("abort", abort);
	}
}
/**
* Has jobs done by whoever is free, in order. Threads that could not be started are passed over.
*
* @returns false when no thread could be had: no job was begun.
*/
async function shareOut(crew, jobs, work) {
	let next = 0;
	let done = 0;
	let finish = (_) => {};
	const allDone = new Promise((resolve) => {
		finish = resolve;
	});
	const everyone = Promise.all(crew.map(async (helper) => {
		if (!await helper.ready) return;
		while (next < jobs.length) {
			const job = jobs[next++];
			await work(helper, job);
			done++;
		}
		if (done === jobs.length) finish(true);
	}));
	return Promise.race([allDone, everyone.then(() => done === jobs.length)]);
}
// ../../packages/parallel/src/progressOf.ts
/** Adds up what the threads say: what is done, and how far each is with what it is doing. */
function progressOf(total, tell) {
	const report = require_sparingly.sparingly(tell ?? (() => {}));
	const current = /* @__PURE__ */ new Map();
	let done = 0;
	const say = () => {
		let sum = done;
		for (const part of current.values()) sum += part;
		report(sum, total);
	};
	return {
		during(helper, part) {
			current.set(helper, part);
			if (part > 0 && done + part < total) say();
		},
		after(helper, part) {
			current.delete(helper);
			done += part;
			say();
		}
	};
}
// ../../packages/parallel/src/share.ts
/**
* Work that pays for a thread of its own, in task-iterations of about 50 ns. Measured on Node 20, two cores: starting
* threads, compiling in each, warming up and handing over costs 200 ms (100 tasks) to 350 ms (1,000 tasks), so two threads
* begin to pay where one needs 0.4 to 0.7 s; what is below twice this stays where it is.
*/
var workPerThread = 8e6;
/**
* The same for a simulation, whose threads also share what their memory can carry: 30 million take 1.9 s on one thread and
* 2.2 s on two, 100 million 2.9 s on either.
*/
var simulationPerThread = 4e7;
/** What placing on limited people adds to a task's share: 100 and 1,000 tasks took 2 to 3 times as long. */
var peopleFactor = 2.5;
/** An item of the tornado in simulations: two re-runs of the part it reaches, without marks and sums. */
var itemFactor = .15;
/** Memory that one stretch may take before it is handed over. */
var stretchBytes = 128e6;
/** Stretches per thread: enough that a thread that starts late or is held up does not keep the others waiting. */
var stretchesPerThread = 4;
/** Blocks in a stretch at least, where there are as many for each thread: beginning a stretch costs half a block. */
var leastBlocks = 8;
/** A rough measure of a simulation: tasks times iterations, limited people counted in. */
function workOf(plan, iterations) {
	const limited = plan.respectCapacity && plan.tasks.some((task) => task.people.length > 0);
	return plan.tasks.length * iterations * (limited ? peopleFactor : 1);
}
/** Work from which helpers in shared memory pay, if they are there already. */
var leastShared = 1e6;
/** Helpers worth starting for so many task-iterations in shared memory (`simulateShared`). */
function sharersFor(work, iterations, options) {
	const { pool, workers, workPerThread, together } = options;
	if (pool?.shares !== true || together === true || workPerThread !== void 0) return 0;
	if (work < leastShared) return 0;
	return Math.min(workers ?? pool.cores, Math.ceil(iterations / require_engine.blockSize), mostSharers + 1) - 1;
}
/** More would wait for each other. */
var mostSharers = 7;
/** How many simulations' work a tornado is, from the number of ranges and register entries. */
function tornadoFactor(plan) {
	return itemFactor * (plan.tasks.reduce((sum, { duration, effort, remaining, cost, costPerDay }) => sum + [
		duration,
		effort,
		remaining,
		cost,
		costPerDay
	].filter((e) => e !== void 0 && e.kind !== "fixed").length, 0) + plan.risks.length + plan.assumptions.length);
}
/**
* Threads to use; 0: the caller's own is best.
*
* @param perThread  Work that pays for a second thread and each further one, where that is more than for the first.
*/
function threadsFor(work, iterations, options, perThread = workPerThread) {
	const { pool, aside = false, workPerThread: given } = options;
	if (pool === void 0) return 0;
	if (work < 2 * (given ?? workPerThread)) return 0;
	const least = given ?? perThread;
	const paid = least > 0 ? Math.floor(work / least) : Number.POSITIVE_INFINITY;
	const blocks = Math.ceil(iterations / require_engine.blockSize);
	const threads = Math.min(options.workers ?? pool.cores, blocks, paid);
	return threads >= 2 || aside ? Math.max(1, threads) : 0;
}
/**
* Helpers that share memory with the caller, who computes too; 0: none. Only where `together` asks for it: on two cores
* that share what their memory can carry, 1,000 tasks x 10,000 took 0.54 s so, and 0.45 s on one thread.
*/
function helpersFor(iterations, { pool, workers, together }) {
	if (pool?.shares !== true || together !== true) return 0;
	return Math.min(workers ?? pool.cores, Math.ceil(iterations / require_engine.blockSize)) - 1;
}
/** Cuts n iterations into stretches of whole blocks (the last block may be short), in address order. */
function stretchesOf(n, threads, bytesPerIteration) {
	const blocks = Math.ceil(n / require_engine.blockSize);
	const most = Math.max(1, Math.floor(stretchBytes / (bytesPerIteration * require_engine.blockSize)));
	const least = Math.min(leastBlocks, Math.ceil(blocks / threads));
	const size = Math.min(most, Math.max(least, Math.ceil(blocks / (threads * stretchesPerThread))));
	const stretches = [];
	for (let fromBlock = 0; fromBlock < blocks; fromBlock += size) {
		const first = fromBlock * require_engine.blockSize;
		stretches.push({
			fromBlock,
			iterations: Math.min(size * require_engine.blockSize, n - first)
		});
	}
	return stretches;
}
// ../../packages/parallel/src/helper.ts
/** An error that happened in a thread, as it was there. */
function asError({ name, message, stack }) {
	const error = new Error(message);
	error.name = name;
	if (stack !== "") error.stack = stack;
	return error;
}
/** Starts a thread. Never throws: one that cannot be started says so through `ready`. */
function startHelper(start) {
	let asked;
	let lost;
	let settle = () => {};
	const ready = new Promise((resolve) => {
		settle = resolve;
	});
	const fail = (error) => {
		lost ??= error;
		settle(false);
		const waiting = asked;
		asked = void 0;
		waiting?.fail(error);
	};
	const message = (said) => {
		if (lost !== void 0) return;
		if (said.kind === "ready") settle(true);
		else if (said.kind === "progress") try {
			asked?.progress?.(said.done);
		} catch (error) {
			fail(error instanceof Error ? error : new Error(String(error)));
		}
		else {
			const waiting = asked;
			asked = void 0;
			if (said.kind === "failed") waiting?.fail(asError(said));
			else waiting?.answer(said);
		}
	};
	let thread;
	try {
		thread = start({
			message,
			lost: fail
		});
	} catch (error) {
		fail(error instanceof Error ? error : new Error(String(error)));
	}
	return {
		ready,
		get alive() {
			return lost === void 0;
		},
		tell: (request) => thread?.post(request, []),
		ask(request, transfer = [], onProgress = void 0) {
			return new Promise((answer, reject) => {
				if (lost !== void 0 || thread === void 0) {
					reject(lost);
					return;
				}
				asked = {
					answer,
					fail: reject,
					progress: onProgress
				};
				thread.post(request, transfer);
			});
		},
		async end() {
			fail(/* @__PURE__ */ new Error("The thread was ended."));
			await thread?.end();
		},
		rest: (resting) => thread?.rest(resting)
	};
}
// ../../packages/parallel/src/pool.ts
/**
* @param start  `nodeThread` or `webThread`, or another way to have work done aside.
* @param cores  From `os.availableParallelism()` or `navigator.hardwareConcurrency`.
* @param shares Whether a SharedArrayBuffer can be posted to such a thread: in a page only under special headers.
*/
function createPool(start, cores, shares = false) {
	let resting = [];
	return {
		cores,
		shares,
		prepare(count, room = 0) {
			resting = resting.filter(({ alive }) => alive);
			while (resting.length < count) {
				const helper = startHelper(start);
				if (shares) helper.tell({ kind: "practise" });
				helper.rest(true);
				resting.push(helper);
			}
			const memory = shares && room > 0 && count > 0 ? require_engine.spareMemory(room) : void 0;
			if (memory !== void 0) resting[0]?.tell({
				kind: "touch",
				memory
			});
		},
		take(count) {
			resting = resting.filter(({ alive }) => alive);
			const taken = resting.splice(0, count);
			for (const helper of taken) helper.rest(false);
			while (taken.length < count) taken.push(startHelper(start));
			return taken;
		},
		giveBack(helpers) {
			for (const helper of helpers.filter(({ alive }) => alive)) {
				helper.tell({ kind: "forget" });
				helper.rest(true);
				resting.push(helper);
			}
		},
		async close() {
			const ended = resting;
			resting = [];
			await Promise.all(ended.map((helper) => helper.end()));
		}
	};
}
// ../../packages/parallel/src/node.ts
/**
* Threads of Node.
*
* @param file     nodeWorker.ts as built: Node runs JavaScript only.
* @param started  The first of them.
*/
function nodePool(file, started) {
	let first = started;
	const start = (listener) => {
		const worker = first?.worker ?? new node_worker_threads.Worker(file);
		first?.worker.removeAllListeners("message");
		first?.worker.removeAllListeners("error");
		const thread = nodeThread(worker, listener);
		first?.said.forEach(listener.message);
		first?.lost.forEach(listener.lost);
		first = void 0;
		return thread;
	};
	return createPool(start, (0, node_os.availableParallelism)(), true);
}
function nodeThread(worker, { message, lost }) {
	worker.on("message", (said) => message(said));
	worker.on("error", lost);
	worker.on("messageerror", lost);
	worker.on("exit", (code) => lost(/* @__PURE__ */ new Error(`The thread ended with code ${code}.`)));
	return {
		post: (request, transfer) => worker.postMessage(request, transfer),
		end: async () => {
			await worker.terminate();
		},
		rest: (resting) => resting ? worker.unref() : worker.ref()
	};
}
Object.defineProperty(exports, "helpersFor", {
	enumerable: true,
	get: function() {
		return helpersFor;
	}
});
Object.defineProperty(exports, "nodePool", {
	enumerable: true,
	get: function() {
		return nodePool;
	}
});
Object.defineProperty(exports, "progressOf", {
	enumerable: true,
	get: function() {
		return progressOf;
	}
});
Object.defineProperty(exports, "shareOut", {
	enumerable: true,
	get: function() {
		return shareOut;
	}
});
Object.defineProperty(exports, "sharersFor", {
	enumerable: true,
	get: function() {
		return sharersFor;
	}
});
Object.defineProperty(exports, "simulationPerThread", {
	enumerable: true,
	get: function() {
		return simulationPerThread;
	}
});
Object.defineProperty(exports, "stretchesOf", {
	enumerable: true,
	get: function() {
		return stretchesOf;
	}
});
Object.defineProperty(exports, "threadsFor", {
	enumerable: true,
	get: function() {
		return threadsFor;
	}
});
Object.defineProperty(exports, "tornadoFactor", {
	enumerable: true,
	get: function() {
		return tornadoFactor;
	}
});
Object.defineProperty(exports, "withCrew", {
	enumerable: true,
	get: function() {
		return withCrew;
	}
});
Object.defineProperty(exports, "workOf", {
	enumerable: true,
	get: function() {
		return workOf;
	}
});
