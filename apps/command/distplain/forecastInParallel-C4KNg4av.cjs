const require_applyScenario = require("./applyScenario-C_221t4T.cjs");
const require_engine = require("./engine-Bbth-FEh.cjs");
const require_node = require("./node-6FCbc_om.cjs");
const require_takeBlocks = require("./takeBlocks-CNr0mh9B.cjs");
const require_tornado = require("./tornado-Cjcc5Wok.cjs");
// ../../packages/parallel/src/simulateOn.ts
/**
* Simulates on a crew that knows the plan. Rows are put at their place as they come, sums are added block by
* block in address order: the result is that of `simulate`, to the bit.
*
* @returns undefined when no thread could be had.
*/
async function simulateOn(crew, model, asWritten, options) {
	if (asWritten.beyond >= 0) return { problems: [require_engine.beyondCalendar(model, asWritten.beyond)] };
	const trials = require_engine.newTrials(model, asWritten, options);
	const rows = require_takeBlocks.rowsOf(trials);
	const n = trials.iterations;
	const waiting = /* @__PURE__ */ new Map();
	let summed = 0;
	let beyond = {
		block: Number.POSITIVE_INFINITY,
		task: -1
	};
	const progress = require_node.progressOf(n, options.onProgress);
	const stretches = require_node.stretchesOf(n, crew.length, 8 * rows.length);
	const worked = /* @__PURE__ */ new Set();
	if (!await require_node.shareOut(crew, stretches, async (helper, stretch) => {
		if (stretch.fromBlock > beyond.block) return;
		worked.add(helper);
		const answer = await helper.ask({
			kind: "stretch",
			...stretch,
			total: n
		}, [], (done) => progress.during(helper, done));
		if (answer.kind !== "stretch") throw new Error(`Asked for a stretch, got "${answer.kind}".`);
		const failed = stretch.fromBlock + answer.sums.length;
		if (answer.beyond >= 0 && failed < beyond.block) beyond = {
			block: failed,
			task: answer.beyond
		};
		const first = stretch.fromBlock * 1024;
		answer.rows.forEach((row, i) => {
			rows[i]?.set(row, first);
		});
		answer.sums.forEach((sums, b) => {
			waiting.set(stretch.fromBlock + b, sums);
		});
		for (let sums = waiting.get(summed); sums !== void 0; sums = waiting.get(summed)) {
			require_engine.addSums(trials.sums, sums);
			waiting.delete(summed++);
		}
		progress.after(helper, stretch.iterations);
	})) return void 0;
	if (trials.moments !== void 0 && beyond.task < 0) for (const helper of worked) {
		const answer = await helper.ask({
			kind: "moments",
			total: n
		});
		if (answer.kind === "moments") trials.moments.parts.push(...answer.parts);
	}
	if (beyond.task >= 0) return { problems: [require_engine.beyondCalendar(model, beyond.task)] };
	return {
		trials,
		asWritten,
		problems: []
	};
}
// ../../packages/parallel/src/simulateShared.ts
/** Milliseconds after which the caller, waiting for a helper, looks whether it is still there. */
var patience = 20;
/**
* Simulates on the caller's thread and on helpers that need not know the plan, in one memory (`shareForecast`): the same
* result, to the bit, as alone. Helpers that come late find less to do.
*
* @param computeAsWritten  Called once helpers have something to do.
*
* Returns undefined where memory cannot be shared. Rejects with the signal's reason when aborted, and with the error of a
* helper that was lost while it worked.
*/
async function simulateShared(pool, helpers, model, computeAsWritten, options) {
	options.signal?.throwIfAborted();
	let crew = [];
	let answers = [];
	let lost;
	const run = require_engine.shareForecast(model, options, helpers + 1, (entry) => {
		crew = pool.take(helpers);
		answers = crew.map((helper) => helper.ask({
			kind: "assist",
			entry
		}).then(() => {}, (error) => {
			lost ??= error;
		}));
	});
	if (run === void 0) return void 0;
	const release = () => {
		run.close();
		giveBack(pool, crew, answers);
	};
	const stage = async (name) => {
		run.drain(name);
		while (!run.done(name)) {
			run.wait(name, patience);
			if (run.done(name)) break;
			await new Promise((resolve) => setTimeout(resolve, 0));
			options.signal?.throwIfAborted();
			if (lost !== void 0) throw lost;
		}
		options.signal?.throwIfAborted();
	};
	const beyond = (task) => {
		release();
		return {
			simulation: { problems: [require_engine.beyondCalendar(model, task)] },
			ranks: async () => void 0
		};
	};
	try {
		const asWritten = computeAsWritten();
		if (asWritten.beyond >= 0) return beyond(asWritten.beyond);
		run.write(asWritten);
		await stage("tables");
		await stage("blocks");
		const { iterations } = run.trials;
		options.onProgress?.(iterations, iterations);
		const late = run.read();
		if (late !== void 0) return beyond(late);
		run.sum(asWritten);
		return {
			simulation: {
				trials: run.trials,
				asWritten,
				problems: []
			},
			ranks: () => readRanks(run, stage, release, model, options)
		};
	} catch (error) {
		run.close();
		await Promise.all(crew.map((helper) => helper.end()));
		throw error;
	}
}
async function readRanks(run, stage, release, model, options) {
	await stage("ranks");
	release();
	return require_engine.sharedRanks(run, run.trials, options.confidence ?? model.confidence);
}
/** Those who still start find nothing to do and then rest; nobody waits for them. */
function giveBack(pool, crew, answers) {
	for (const helper of crew) helper.rest(true);
	Promise.all(answers).then(() => pool.giveBack(crew));
}
// ../../packages/parallel/src/simulateTogether.ts
/**
* Simulates on the caller's thread and on helpers that know the plan, all writing into memory that they share: nothing is
* handed over, and nobody waits for a helper that is still starting. The same result, to the bit, as alone.
*
* Rejects with the error of a helper that broke while it computed.
*/
async function simulateTogether(crew, { model, asWritten }, options) {
	if (asWritten.beyond >= 0) return {
		simulation: { problems: [require_engine.beyondCalendar(model, asWritten.beyond)] },
		crew: []
	};
	const rows = new SharedArrayBuffer(require_engine.bytesOfTrials(model, asWritten, options));
	const counter = new SharedArrayBuffer(4);
	const trials = require_engine.newTrials(model, asWritten, options, rows);
	const iterations = trials.iterations;
	const asked = crew.map(async (helper) => {
		const answer = await helper.ask({
			kind: "join",
			rows,
			counter,
			iterations
		});
		if (answer.kind !== "joined") throw new Error(`Asked to join, got "${answer.kind}".`);
		return answer;
	});
	const answered = /* @__PURE__ */ new Set();
	asked.forEach((answer, i) => {
		answer.then(() => answered.add(crew[i]), () => {});
	});
	const count = Math.ceil(iterations / require_engine.blockSize);
	let done = 0;
	const own = require_takeBlocks.takeBlocks(model, asWritten, trials, counter, () => {
		options.onProgress?.(Math.min(iterations, ++done * require_engine.blockSize), iterations);
	});
	const complete = own.beyond.task < 0 && own.blocks.length === count;
	const parts = complete ? [own] : [own, ...await Promise.all(asked)];
	if (complete) {
		for (const helper of crew) if (!answered.has(helper)) helper.end();
	}
	const beyond = parts.map((part) => part.beyond).reduce((a, b) => b.block < a.block ? b : a);
	if (beyond.task >= 0) return {
		simulation: { problems: [require_engine.beyondCalendar(model, beyond.task)] },
		crew: []
	};
	const sums = [];
	for (const part of parts) for (const { block, sums: of } of part.blocks) sums[block] = of;
	for (const part of sums) require_engine.addSums(trials.sums, part);
	if (trials.moments !== void 0) trials.moments.parts = parts.flatMap(({ moments }) => moments);
	options.onProgress?.(iterations, iterations);
	return {
		simulation: {
			trials,
			asWritten,
			problems: []
		},
		crew: complete ? [] : [...crew]
	};
}
/** The percentiles of all tasks, read by the caller and those who simulated with it. */
async function ranksTogether({ simulation: { trials }, crew }, { model, asWritten }, confidence) {
	if (trials === void 0 || trials.moments !== void 0 || crew.length === 0) return void 0;
	const tasks = model.tasks.length;
	const share = Math.ceil(tasks / (crew.length + 1));
	const asked = crew.map(async (helper, i) => {
		const from = Math.min(tasks, (i + 1) * share);
		const answer = await helper.ask({
			kind: "ranks",
			confidence,
			from,
			to: Math.min(tasks, from + share)
		});
		if (answer.kind !== "ranks") throw new Error(`Asked for ranks, got "${answer.kind}".`);
		return answer.values;
	});
	const parts = [require_engine.taskRanks({
		model,
		asWritten,
		trials
	}, confidence, 0, Math.min(tasks, share)), ...await Promise.all(asked)];
	const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
	let at = 0;
	for (const part of parts) {
		all.set(part, at);
		at += part.length;
	}
	return all;
}
// ../../packages/parallel/src/tornadoInParallel.ts
/** Parts per thread: items differ much in what they reach, and a part's rows are in memory at once. */
var partsPerThread = 4;
/** The tornado, its bars shared out over threads where that pays; the same bars, to the bit. */
async function tornadoInParallel({ plan, model, asWritten }, draw, { committed }, options) {
	const { pool, signal } = options;
	const n = draw.iterations;
	const work = require_node.workOf(plan, n) * require_node.tornadoFactor(plan);
	const threads = require_node.threadsFor(work, Number.POSITIVE_INFINITY, options);
	if (pool !== void 0 && threads > 0) {
		const run = {
			seed: draw.seed,
			design: draw.design,
			...signal === void 0 ? {} : { signal }
		};
		const bars = await require_node.withCrew({
			pool,
			threads,
			plan,
			options: run
		}, async (crew) => {
			const of = threads * partsPerThread;
			const found = [];
			const progress = require_node.progressOf(n * of, (done) => options.onProgress?.(Math.floor(done / of), n));
			const parts = Array.from({ length: of }, (_, part) => part);
			return await require_node.shareOut(crew, parts, async (helper, part) => {
				const request = {
					kind: "tornado",
					draw,
					committed,
					part,
					of
				};
				const answer = await helper.ask(request, [], (done) => progress.during(helper, done));
				if (answer.kind !== "bars") throw new Error(`Asked for bars, got "${answer.kind}".`);
				found.push(...answer.bars);
				progress.after(helper, n);
			}) ? require_tornado.sortedBars(found) : void 0;
		});
		if (bars !== void 0) return bars;
	}
	return require_tornado.tornado(model, draw, asWritten, committed, options.onProgress);
}
// ../../packages/parallel/src/forecastInParallel.ts
/**
* `forecast(plan, options)` on several threads: the same object, to the bit, however many there are. Simulation
* and tornado are shared out; the summary is read on one of the threads, so the caller's stays free meanwhile.
*
* Problems are values. Rejects with the signal's reason when aborted, and with the error of a thread that broke.
*/
async function forecastInParallel(plan, options = {}) {
	const clock = options.clock ?? (() => 0);
	options.signal?.throwIfAborted();
	const scenario = require_applyScenario.applyScenario(plan, options);
	if (scenario.problems.length > 0) return { problems: scenario.problems };
	const stated = options.iterations ?? scenario.plan.iterations;
	const t0 = clock();
	const first = await begin(scenario.plan, stated, options, clock);
	const { subject, compiled: t1 } = first;
	let { round } = first;
	while (round.forecast !== void 0 && 2 * round.forecast.iterations <= 1e6) {
		if (!require_engine.tooWide(subject.model, round.forecast, options.withinDays)) break;
		round = await compute(subject, 2 * round.forecast.iterations, options, clock);
	}
	const { forecast, draw, simulated } = round;
	if (forecast === void 0 || draw === void 0) return { problems: round.problems };
	const t3 = clock();
	if (options.tornado === true) forecast.tornado = await tornadoInParallel(subject, draw, forecast, options);
	return {
		forecast,
		problems: round.problems,
		...options.clock === void 0 ? {} : { timing: {
			compile: t1 - t0,
			simulate: simulated - t1,
			summarise: t3 - simulated
		} }
	};
}
/** The first round; with helpers in common memory where that is asked for. */
async function begin(plan, n, options, clock) {
	const { pool } = options;
	const compiled = () => {
		const model = require_engine.compile(plan);
		return {
			subject: {
				plan,
				model,
				asWritten: require_engine.planAsWritten(model)
			},
			compiled: clock()
		};
	};
	const sharers = pool === void 0 ? 0 : require_node.sharersFor(require_node.workOf(plan, n), n, options);
	if (pool !== void 0 && sharers > 0) {
		const model = require_engine.compile(plan);
		const t1 = clock();
		const run = {
			...options,
			iterations: n
		};
		let asWritten;
		const computeAsWritten = () => {
			asWritten ??= require_engine.planAsWritten(model);
			return asWritten;
		};
		const shared = require_engine.canBeShared(model, run) ? await computeShared(pool, sharers, model, computeAsWritten, run, clock) : void 0;
		require_engine.dropSpare();
		const subject = {
			plan,
			model,
			asWritten: computeAsWritten()
		};
		return {
			subject,
			compiled: t1,
			round: shared ?? await compute(subject, n, options, clock)
		};
	}
	require_engine.dropSpare();
	const helpers = require_node.helpersFor(n, options);
	if (pool === void 0 || helpers === 0) {
		const own = compiled();
		return {
			...own,
			round: await compute(own.subject, n, options, clock)
		};
	}
	return require_node.withCrew({
		pool,
		threads: helpers,
		plan,
		options
	}, async (crew) => {
		const own = compiled();
		const { model, asWritten } = own.subject;
		const together = await simulateTogether(crew, own.subject, {
			...options,
			iterations: n
		});
		const simulated = clock();
		const { trials, problems } = together.simulation;
		if (trials === void 0) return {
			...own,
			round: {
				problems,
				simulated
			}
		};
		const ranks = await ranksTogether(together, own.subject, options.confidence ?? model.confidence);
		const forecast = require_engine.summarise(model, trials, asWritten, {
			...options.confidence === void 0 ? {} : { confidence: options.confidence },
			...ranks === void 0 ? {} : { ranks }
		});
		return {
			...own,
			round: {
				forecast,
				draw: drawOf(trials),
				problems,
				simulated
			}
		};
	});
}
/** One simulation and its summary in memory that the caller shares with helpers; undefined where it cannot be had. */
async function computeShared(pool, helpers, model, computeAsWritten, options, clock) {
	const shared = await simulateShared(pool, helpers, model, computeAsWritten, options);
	if (shared === void 0) return void 0;
	const { trials, problems } = shared.simulation;
	if (trials === void 0) return {
		problems,
		simulated: clock()
	};
	const simulated = clock();
	const asWritten = computeAsWritten();
	return {
		forecast: require_engine.beginSummary(model, trials, asWritten, options.confidence)(await shared.ranks()),
		draw: drawOf(trials),
		problems,
		simulated
	};
}
/** One simulation and its summary, on threads where that pays and threads can be had. */
async function compute(subject, n, options, clock) {
	const { plan, model, asWritten } = subject;
	const { pool, confidence } = options;
	const run = {
		...options,
		iterations: n
	};
	const threads = require_node.threadsFor(require_node.workOf(plan, n), n, options, require_node.simulationPerThread);
	if (pool !== void 0 && threads > 0) {
		const round = await require_node.withCrew({
			pool,
			threads,
			plan,
			options
		}, async (crew) => {
			const simulation = await simulateOn(crew, model, asWritten, run);
			if (simulation === void 0) return void 0;
			const { trials, problems } = simulation;
			const simulated = clock();
			if (trials === void 0) return {
				problems,
				simulated
			};
			const draw = drawOf(trials);
			return {
				forecast: await summariseOn(crew, trials, confidence),
				draw,
				problems,
				simulated
			};
		});
		if (round !== void 0) return round;
	}
	const { trials, problems } = require_engine.simulate(model, run);
	const simulated = clock();
	if (trials === void 0) return {
		problems,
		simulated
	};
	return {
		forecast: require_engine.summarise(model, trials, asWritten, options),
		draw: drawOf(trials),
		problems,
		simulated
	};
}
function drawOf({ seed, design, iterations }) {
	return {
		seed,
		design,
		iterations
	};
}
/** Has one of the crew read the forecast off the trials, whose memory is handed over to it. */
async function summariseOn(crew, trials, confidence) {
	const found = [];
	await require_node.shareOut(crew, [trials], async (helper) => {
		const request = {
			kind: "summarise",
			trials,
			confidence
		};
		const answer = await helper.ask(request, require_takeBlocks.buffersOf([...require_takeBlocks.rowsOf(trials), ...require_takeBlocks.momentRowsOf(trials.moments?.parts ?? [])]));
		if (answer.kind === "summary") found.push(answer.forecast);
	});
	const [forecast] = found;
	if (forecast === void 0) throw new Error("The threads that simulated are gone.");
	return forecast;
}
Object.defineProperty(exports, "forecastInParallel", {
	enumerable: true,
	get: function() {
		return forecastInParallel;
	}
});
