const require_engine = require("./engine-Bbth-FEh.cjs");
// ../../packages/core/src/explain/confidence/standings.ts
/** The plan as written, as a standing. */
function standingAsWritten(model, asWritten) {
	return {
		date: require_engine.isoDate(model.startDay + asWritten.finishDay),
		day: asWritten.finish,
		workingDays: asWritten.workingDays,
		cost: asWritten.cost,
		money: asWritten.cost
	};
}
/** Where the iterations stand at a level: the percentile of the finish, its date, and of the cost. Sorts copies. */
function standingAt(model, rows, p) {
	const rank = require_engine.rankOf(p, rows.finish.length) - 1;
	const day = rows.finish.slice().sort()[rank];
	const cost = rows.cost.slice().sort()[rank];
	return {
		date: require_engine.isoDate(model.startDay + rows.finishDay.slice().sort()[rank]),
		day,
		workingDays: require_engine.workAt(model.planCalendar, day),
		cost,
		money: cost
	};
}
Object.defineProperty(exports, "standingAsWritten", {
	enumerable: true,
	get: function() {
		return standingAsWritten;
	}
});
Object.defineProperty(exports, "standingAt", {
	enumerable: true,
	get: function() {
		return standingAt;
	}
});
