// ../../packages/core/src/findings/network/twiceCounted.ts
/**
* What an occurred risk or assumption adds on top of what was reported of a task: its days on a task whose `remaining`
* was said, its money beside a task whose `spent` was said, where nobody has said what it cost in fact.
*/
function twiceCounted(plan) {
	const tasks = new Map(plan.tasks.map((task) => [task.id, task]));
	return [...plan.risks, ...plan.assumptions].flatMap((entry) => {
		if (entry.status !== "occurred") return [];
		const found = /* @__PURE__ */ new Map();
		for (const { tasks: ids, delay, factor, cost } of entry.impacts) for (const id of ids) {
			const task = tasks.get(id);
			if (task === void 0) continue;
			if ((moves(delay, 0) || moves(factor, 1)) && task.remaining !== void 0 && task.finished === void 0) found.set(`${id} remaining`, {
				entry,
				task,
				part: "remaining",
				says: `The days of "${entry.name}" are added to what remains of ${task.name}.`,
				advice: `Where these days are in \`remaining\` already, record --days ${entry.id}=0.`
			});
			if (moves(cost, 0) && entry.actual?.cost === void 0 && task.spent !== void 0) found.set(`${id} spent`, {
				entry,
				task,
				part: "spent",
				says: `The money of "${entry.name}", a range still, is added to what was spent on ${task.name}.`,
				advice: `Record what it cost: --cost ${entry.id}=MONEY; 0 where it is in \`spent\` already.`
			});
		}
		return [...found.values()];
	});
}
function moves(estimate, neutral) {
	return estimate !== void 0 && !(estimate.kind === "fixed" && estimate.value === neutral);
}
Object.defineProperty(exports, "twiceCounted", {
	enumerable: true,
	get: function() {
		return twiceCounted;
	}
});
