const require_raisesSlot = require("./raisesSlot-DfVwcNE1.cjs");
const require_program = require("./program.cjs");
// ../../packages/core/src/plan/scenarioProblems.ts
var takesIn = "It takes in responses that are not adopted yet, and people who `couldAdd` capacity.";
var leavesOut = "It leaves out risks, assumptions, optional scope items and adopted responses.";
/**
* What cannot be done of a scenario, all of it: ids that are not there or cannot be switched, each with what it is and
* the nearest that can be, and ids that are both taken in and left out.
*/
function scenarioProblems(plan, choice) {
	const taken = new Set(choice.with ?? []);
	const left = new Set(choice.without ?? []);
	const entries = entriesOf(plan);
	const responses = entries.flatMap((entry) => entry.responses.map((response) => response.id));
	const adding = plan.people.filter(({ couldAdd }) => couldAdd !== void 0).map(({ id }) => id);
	const optional = plan.purpose.scopeIn.filter((item) => item.optional).map(({ id }) => id);
	const takeable = [...responses, ...adding];
	const droppable = [
		...entries.map(({ id }) => id),
		...responses,
		...optional
	];
	return [
		...[...taken].filter((id) => !takeable.includes(id)).map((id) => unknown("with", id, takesIn, remedyFor(plan, "with", id, takeable))),
		...[...left].filter((id) => !droppable.includes(id)).map((id) => unknown("without", id, leavesOut, remedyFor(plan, "without", id, droppable))),
		...[...taken].filter((id) => left.has(id)).map((id) => ({
			...unknown("with", id, "It is taken in and left out at once.", "Name it once."),
			code: "contradiction"
		}))
	];
}
/**
* What a scenario says that changes nothing, as warnings: what is adopted or closed already, what is not adopted, scope
* that no task delivers or whose tasks have all begun.
*/
function scenarioNotes(plan, choice) {
	const notes = [];
	const say = (option, id, rule) => notes.push({
		...unknown(option, id, rule, "It changes nothing here."),
		code: "without-effect",
		severity: "warning"
	});
	const taken = new Set(choice.with ?? []);
	const left = new Set(choice.without ?? []);
	for (const entry of entriesOf(plan)) {
		if (left.has(entry.id) && entry.status === "closed") say("without", entry.id, "It is closed already.");
		for (const { id, adopted } of entry.responses) {
			if (taken.has(id) && adopted) say("with", id, "It is adopted already.");
			if (left.has(id) && !adopted) say("without", id, "It is not adopted.");
		}
	}
	for (const { id, optional } of plan.purpose.scopeIn) {
		if (!optional || !left.has(id)) continue;
		const tasks = plan.tasks.filter((task) => task.scope === id);
		if (tasks.length === 0) say("without", id, "No task delivers it (`scope`).");
		else if (tasks.every(({ started, finished }) => (started ?? finished) !== void 0)) say("without", id, "All its tasks have begun, and work that has begun stays.");
	}
	return notes;
}
function entriesOf(plan) {
	return [...plan.risks, ...plan.assumptions];
}
/** What the id is instead, where it is anything; else the nearest of those that would do. */
function remedyFor(plan, option, id, known) {
	const entry = entriesOf(plan).find((each) => each.id === id);
	if (option === "with" && entry !== void 0) {
		const responses = entry.responses.filter(({ adopted }) => !adopted).map((response) => response.id);
		const own = responses.length === 0 ? "It has no response to take in." : `Its responses: ${list(responses)}.`;
		return `That is ${entry.kind === "risk" ? "a risk" : "an assumption"}, which counts already. ${own}`;
	}
	if (plan.purpose.scopeIn.find((item) => item.id === id) !== void 0) return option === "with" ? "That is a scope item, which is in the plan already." : "That scope item is not optional: say `optional: true`, and in `lost` what is lost without it.";
	if (plan.people.some((person) => person.id === id)) return option === "with" ? "That person has no `couldAdd`: say there what could be added." : "That is a person: see `people --lose`, which shows what an absence does.";
	if (option === "without" && plan.tasks.some((task) => task.id === id)) return "That is a task: name the optional scope item that it delivers (`scope`).";
	if (known.length === 0) return "This plan has none.";
	const near = require_program.nearest$1(id, known);
	return near === void 0 ? `Name one of: ${list(known)}.` : `Did you mean ${near}?`;
}
function list(ids) {
	return [...ids].sort().join(", ");
}
function unknown(option, id, rule, remedy) {
	return {
		code: "unknown-id",
		severity: "error",
		path: `--${option}`,
		received: `\`${id}\``,
		rule,
		remedy
	};
}
// ../../packages/core/src/plan/applyScenario.ts
/**
* The same plan with responses and what people `couldAdd` taken in (`with`) and risks, assumptions, optional scope
* items or adopted responses left out (`without`). Draws are untouched, so two scenarios differ by what was
* switched and by nothing else. The plan's hash stays that of the document.
*/
function applyScenario(plan, choice) {
	const taken = new Set(choice.with ?? []);
	const left = new Set(choice.without ?? []);
	if (taken.size === 0 && left.size === 0) return {
		plan,
		problems: []
	};
	const problems = scenarioProblems(plan, choice);
	const change = (entry) => ({
		...entry,
		status: left.has(entry.id) ? "closed" : entry.status,
		responses: entry.responses.map((response) => ({
			...response,
			adopted: !left.has(response.id) && (response.adopted || taken.has(response.id))
		}))
	});
	const changed = {
		...plan,
		risks: plan.risks.map(change),
		assumptions: plan.assumptions.map(change),
		tasks: plan.tasks.map((task) => task.scope !== void 0 && left.has(task.scope) && !begun(task) ? {
			...task,
			chance: 0
		} : task)
	};
	for (const entry of [...changed.risks, ...changed.assumptions]) if (require_raisesSlot.raisesSlot(entry)) problems.push(raised(entry));
	return {
		plan: require_raisesSlot.addCapacity(changed, taken),
		problems
	};
}
/** Work that has begun stays, whatever is left out. */
function begun({ started, finished }) {
	return (started ?? finished) !== void 0;
}
function raised({ id, group, probability, responses }) {
	return {
		code: "group-raised",
		severity: "error",
		path: "--with",
		received: responses.filter((response) => response.adopted).map((response) => response.id).map((response) => `\`${response}\``).join(", "),
		rule: `In group ${group} responses may not raise the chance of \`${id}\`, which is ${probability}.`,
		remedy: "Leave out the one that raises it, or lower its `probability`."
	};
}
Object.defineProperty(exports, "applyScenario", {
	enumerable: true,
	get: function() {
		return applyScenario;
	}
});
Object.defineProperty(exports, "scenarioNotes", {
	enumerable: true,
	get: function() {
		return scenarioNotes;
	}
});
