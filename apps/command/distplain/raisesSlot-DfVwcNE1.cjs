const require_engine = require("./engine-Bbth-FEh.cjs");
// ../../packages/core/src/plan/addCapacity.ts
/**
* The plan with what these people `couldAdd` taken in: their `capacity` is that much greater, and the money is
* part of the total, once.
*
* Until `from` the added part counts as away, beside their own absences, which then take only what was there
* before; from that day on an absence takes its part of the whole, added part included. So nothing but
* `capacity` and `away` changes, and every rule about them holds as it stands. (People who go `along` are not
* limited by absences: for them the added part counts from the start.)
*
* What has been added cannot be added again: `couldAdd` is gone.
*
* The money stands in the register, as the adopted response `capacity:ID` of a closed entry: it is spent
* whatever happens, falls due on `from`, and shows by name wherever responses do. Its ids hold a colon, which no
* written id may.
*
* @param ids  People with `couldAdd`; others are left as they are.
*/
function addCapacity(plan, ids) {
	const taken = plan.people.filter((person) => person.couldAdd !== void 0 && ids.has(person.id));
	if (taken.length === 0) return plan;
	const paid = taken.map((person) => ({
		kind: "assumption",
		id: `extra:${person.id}`,
		name: capacityPayment(person).action,
		probability: 0,
		impacts: [],
		status: "closed",
		responses: [capacityPayment(person)]
	}));
	return {
		...plan,
		people: plan.people.map((person) => taken.includes(person) ? extended(person, plan.start) : person),
		assumptions: [...plan.assumptions, ...paid]
	};
}
function extended(person, start) {
	const { couldAdd, ...rest } = person;
	const { capacity } = person;
	if (couldAdd === void 0) return person;
	const whole = capacity + couldAdd.capacity;
	const grown = {
		...rest,
		capacity: whole
	};
	if (couldAdd.from === void 0 || couldAdd.from <= start) return grown;
	const eve = require_engine.isoDate(require_engine.dayNumber(couldAdd.from) - 1);
	const from = couldAdd.from;
	const before = person.away.filter((absence) => absence.from <= eve).map((absence) => ({
		...absence,
		to: absence.to < eve ? absence.to : eve,
		share: absence.share * capacity / whole
	}));
	const after = person.away.filter((absence) => absence.to >= from).map((absence) => ({
		...absence,
		from: absence.from > from ? absence.from : from
	}));
	const notYet = {
		from: start,
		to: eve,
		share: couldAdd.capacity / whole,
		why: "not yet added"
	};
	return {
		...grown,
		away: [
			notYet,
			...before,
			...after
		]
	};
}
/** The money of what a person `couldAdd`, as the adopted response it is counted as. */
function capacityPayment(person) {
	const { couldAdd } = person;
	return {
		id: `capacity:${person.id}`,
		action: `${couldAdd?.capacity ?? 0} more of ${person.name}`,
		cost: {
			kind: "fixed",
			value: couldAdd?.cost ?? 0,
			unit: "days"
		},
		adopted: true,
		scale: 1,
		...couldAdd?.from === void 0 ? {} : { due: couldAdd.from }
	};
}
// ../../packages/core/src/plan/raisesSlot.ts
/**
* Whether the adopted responses make an entry of a group likelier than before, which the plan format forbids: its
* slot of the group's draw would reach into the next one's.
*/
function raisesSlot({ group, probability: own, responses }) {
	if (group === void 0 || own === 0) return false;
	let after = own;
	for (const { adopted, probability } of responses) if (adopted && probability !== void 0) after *= probability / own;
	return after > own + 1e-9;
}
Object.defineProperty(exports, "addCapacity", {
	enumerable: true,
	get: function() {
		return addCapacity;
	}
});
Object.defineProperty(exports, "capacityPayment", {
	enumerable: true,
	get: function() {
		return capacityPayment;
	}
});
Object.defineProperty(exports, "raisesSlot", {
	enumerable: true,
	get: function() {
		return raisesSlot;
	}
});
