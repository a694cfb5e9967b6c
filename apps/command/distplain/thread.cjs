const require_engine = require("./engine-Bbth-FEh.cjs");
const require_measureVariants = require("./measureVariants-DaJ0Ulvd.cjs");
const require_tornado = require("./tornado-Cjcc5Wok.cjs");
const require_valuesOfPlans = require("./valuesOfPlans-BqwKAdJD.cjs");
const require_scenarios = require("./scenarios-C-RVibDE.cjs");
const require_takeBlocks = require("./takeBlocks-CNr0mh9B.cjs");
const require_sparingly = require("./sparingly-_hY-ttWS.cjs");
let node_worker_threads = require("node:worker_threads");
// ../../packages/core/src/explain/responses/gauger.ts
/**
* Whoever has the plan can compute the gauges a question asks for: the same numbers everywhere.
*
* @param names  What the question is about (`switchNames`): of these, in this order, its sets are.
*/
function gauger(plan, names) {
	const known = new Map(require_scenarios.everySwitch(plan).list.map((one) => [require_scenarios.nameOfSwitch(one), one]));
	const switches = names.map((name) => {
		const one = known.get(name);
		if (one === void 0) throw new Error(`Nothing called "${name}" is to be decided in this plan.`);
		return one;
	});
	const scenarios = require_scenarios.scenariosOf(plan, switches);
	return (draw, targets, ask, onProgress) => require_scenarios.gaugeSets({
		scenarios,
		draw,
		targets
	}, ask, onProgress);
}
// ../../packages/parallel/src/gaugesFor.ts
/** By plan: what it takes to gauge its sets is made once, however many asks there are. */
var made = /* @__PURE__ */ new WeakMap();
/** A thread's answer to a question about sets of decisions. */
function gaugesFor(model, { about, draw, targets, sets, iterations }, onProgress) {
	const gaugers = made.get(model) ?? /* @__PURE__ */ new Map();
	made.set(model, gaugers);
	const key = JSON.stringify(about);
	const gauge = gaugers.get(key) ?? gauger(model.plan, about);
	gaugers.set(key, gauge);
	return {
		kind: "gauges",
		gauges: gauge(draw, targets, {
			sets,
			iterations
		}, onProgress)
	};
}
// ../../packages/parallel/src/serve.ts
/**
* A thread's side: says that it runs and returns what to do with each message. It compiles the plan itself,
* which gives the same model everywhere. What goes wrong is answered whole instead of thrown, and nothing
* else is until the next plan.
*/
function serve(post) {
	let subject;
	let broken;
	const take = (message) => {
		if (message.kind === "forget") subject = void 0;
		else if (message.kind === "practise") require_engine.practise();
		else if (message.kind === "touch") require_engine.touchMemory(message.memory);
		else if (message.kind === "plan") {
			const model = require_engine.compile(message.plan);
			subject = {
				model,
				asWritten: require_engine.planAsWritten(model),
				options: message.options
			};
		} else if (message.kind === "assist") {
			require_engine.joinRun(message.entry);
			post({ kind: "assisted" }, []);
		} else {
			if (subject === void 0) throw new Error(`Asked for "${message.kind}" before any plan.`);
			const said = answer(subject, message, (done) => post({
				kind: "progress",
				done
			}, []));
			post(said, handedOver(said));
		}
	};
	post({ kind: "ready" }, []);
	return (message) => {
		if (message.kind === "plan") broken = void 0;
		try {
			if (broken === void 0) return take(message);
		} catch (thrown) {
			broken = failure(thrown);
		}
		const { kind } = message;
		if (broken !== void 0 && kind !== "plan" && kind !== "practise" && kind !== "touch" && kind !== "forget") post(broken, []);
	};
}
/** Memory that goes with an answer instead of being copied. */
function handedOver(said) {
	if (said.kind === "stretch") return require_takeBlocks.buffersOf(said.rows);
	if (said.kind === "moments") return require_takeBlocks.buffersOf(require_takeBlocks.momentRowsOf(said.parts));
	return said.kind === "joined" ? require_takeBlocks.buffersOf(require_takeBlocks.momentRowsOf(said.moments)) : [];
}
function answer(subject, message, progress) {
	const { model, asWritten, options } = subject;
	switch (message.kind) {
		case "join": {
			const { rows, iterations } = message;
			subject.joined = require_engine.newTrials(model, asWritten, {
				...options,
				iterations
			}, rows);
			return {
				kind: "joined",
				...require_takeBlocks.takeBlocks(model, asWritten, subject.joined, message.counter)
			};
		}
		case "ranks": {
			const { confidence, from, to } = message;
			if (subject.joined === void 0) throw new Error("Asked for ranks before any blocks.");
			return {
				kind: "ranks",
				values: require_engine.taskRanks({
					model,
					asWritten,
					trials: subject.joined
				}, confidence, from, to)
			};
		}
		case "stretch": return stretch(subject, message, progress);
		case "moments": {
			const into = require_engine.newTrials(model, asWritten, {
				...options,
				iterations: 0,
				total: message.total
			});
			subject.runner?.settle(into);
			return {
				kind: "moments",
				parts: into.moments?.parts ?? []
			};
		}
		case "summarise": {
			const { trials, confidence } = message;
			return {
				kind: "summary",
				forecast: require_engine.summarise(model, trials, asWritten, confidence === void 0 ? {} : { confidence })
			};
		}
		case "measure": {
			const { draw, confidence, settings } = message;
			return {
				kind: "measures",
				measures: require_measureVariants.measureVariants(model, draw, confidence, settings, require_sparingly.sparingly(progress))
			};
		}
		case "values": {
			const terms = {
				...message.terms,
				newer: model.plan
			};
			return {
				kind: "values",
				values: require_valuesOfPlans.valuesOfPlans(terms, message.plans, require_sparingly.sparingly(progress))
			};
		}
		case "gauge": return gaugesFor(model, message, require_sparingly.sparingly(progress));
		case "tornado": return {
			kind: "bars",
			bars: require_tornado.tornadoBars(model, message.draw, asWritten, message.committed, message, require_sparingly.sparingly(progress))
		};
	}
}
function stretch(subject, { fromBlock, iterations, total }, progress) {
	const { model, asWritten, options } = subject;
	const into = require_engine.newTrials(model, asWritten, {
		...options,
		iterations,
		total
	});
	subject.runner ??= require_engine.blockRunner(model, asWritten, into);
	const sums = [];
	const tell = require_sparingly.sparingly(progress);
	for (let first = 0, b = fromBlock; first < iterations; first += require_engine.blockSize, b++) {
		const n = Math.min(require_engine.blockSize, iterations - first);
		const found = subject.runner.run(b, first, n, into);
		if (typeof found === "number") return {
			kind: "stretch",
			rows: [],
			sums,
			beyond: found
		};
		sums.push(found);
		tell(first + n, iterations);
	}
	return {
		kind: "stretch",
		rows: require_takeBlocks.rowsOf(into),
		sums,
		beyond: -1
	};
}
function failure(thrown) {
	const error = thrown instanceof Error ? thrown : new Error(String(thrown));
	return {
		kind: "failed",
		name: error.name,
		message: error.message,
		stack: error.stack ?? ""
	};
}
// ../../packages/parallel/src/nodeWorker.ts
var take = serve((message, transfer) => node_worker_threads.parentPort?.postMessage(message, transfer));
node_worker_threads.parentPort?.on("message", (message) => take(message));
