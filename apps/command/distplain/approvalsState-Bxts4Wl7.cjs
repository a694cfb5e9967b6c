// ../../packages/core/src/signoff/hasLapsed.ts
/** Approved on conditions whose day has passed, and nobody says that they were met. */
function hasLapsed({ decision, conditionsBy, conditionsMet }, now) {
	return decision === "approve-subject-to" && conditionsBy !== void 0 && conditionsMet === void 0 && now > conditionsBy;
}
// ../../packages/core/src/signoff/approvalsState.ts
/**
* Who has signed what. A signature is bound to the hash of the plan without approvals, objections, changes and
* progress: recording progress keeps it, changing the plan does not.
*
* @param sum  Money asked for: the committed cost; without it the plan's budget counts.
* @param today  The day of today; the later of it and the status date says whether conditions have lapsed.
*/
function approvalsState(plan, sum = plan.commitment.budget, today = void 0) {
	const now = [today, plan.statusDate].reduce((a, b) => (b ?? "") > (a ?? "") ? b : a);
	const asked = /* @__PURE__ */ new Map();
	for (const approval of plan.approvals) {
		const before = asked.get(approval.who);
		if (before === void 0 || (approval.date ?? "") >= (before.date ?? "")) asked.set(approval.who, approval);
	}
	const approvers = [...asked.values()].map((approval) => stateOf(plan, approval, sum, now));
	approvers.push(...missingApprovers(plan, approvers, sum));
	const lastSigned = approvers.flatMap(({ date, signed }) => signed === void 0 || date === void 0 ? [] : [date]).sort().at(-1);
	const { reserve } = plan.commitment;
	return {
		plan: {
			title: plan.title,
			currency: plan.currency,
			approvalSha256: plan.approvalSha256
		},
		...sum === void 0 ? {} : { sum },
		...reserve === void 0 ? {} : { reserve },
		overall: overallOf(approvers),
		approvers,
		open: plan.objections.filter(({ state }) => state === "open").map(({ id }) => id),
		...lastSigned === void 0 ? {} : { lastSigned },
		unexplained: unexplainedOf(plan, approvers)
	};
}
function stateOf(plan, approval, sum, now) {
	const { who, decision, date, conditions, conditionsBy, conditionsMet, by, plan: signed } = approval;
	const said = decision === "approve" || decision === "approve-subject-to";
	const covers = signed !== void 0 && signed === plan.approvalSha256;
	const limit = limitOf(plan, who);
	return {
		...personOf(plan, who),
		state: !said ? decision === "rework" ? "rework" : "pending" : covers ? "covers" : "stale",
		decision,
		...date === void 0 ? {} : { date },
		...conditions === void 0 ? {} : { conditions },
		...conditionsBy === void 0 ? {} : { conditionsBy },
		...conditionsMet === void 0 ? {} : { conditionsMet },
		lapsed: now !== void 0 && hasLapsed(approval, now),
		...by === void 0 ? {} : { by },
		...signed === void 0 ? {} : { signed },
		...limit === void 0 ? {} : { limit },
		aboveLimit: isAbove(sum, limit)
	};
}
/** Name, role and delegate of a person or a stakeholder. */
function personOf(plan, who) {
	const stakeholder = plan.stakeholders.find(({ id }) => id === who);
	const one = stakeholder ?? plan.people.find(({ id }) => id === who);
	const { role } = one ?? {};
	const delegate = stakeholder?.delegate;
	return {
		who,
		name: one?.name ?? who,
		...role === void 0 ? {} : { role },
		...delegate === void 0 ? {} : { delegate }
	};
}
function limitOf(plan, who) {
	return plan.stakeholders.find(({ id }) => id === who)?.approvesUpTo;
}
/** Above by more than half a unit of money: a limit is a round sum. */
function isAbove(sum, limit) {
	return sum !== void 0 && limit !== void 0 && sum > limit + .5;
}
/** Where nobody who was asked may approve the sum: all who may, the least limit first. One of them will do. */
function missingApprovers(plan, approvers, sum) {
	if (sum === void 0 || approvers.some(({ limit }) => limit !== void 0 && !isAbove(sum, limit))) return [];
	return plan.stakeholders.flatMap(({ id, approvesUpTo: limit }) => limit === void 0 || isAbove(sum, limit) ? [] : [{
		id,
		limit
	}]).sort((a, b) => a.limit - b.limit || (a.id < b.id ? -1 : 1)).map(({ id, limit }) => ({
		...personOf(plan, id),
		state: "missing",
		decision: "pending",
		limit,
		lapsed: false,
		aboveLimit: false
	}));
}
function overallOf(approvers) {
	const is = (state) => approvers.some((one) => one.state === state);
	if (approvers.every(({ state }) => state === "missing")) return "not-asked";
	if (is("rework")) return "rework";
	if (is("stale")) return "outdated";
	if (approvers.some(({ lapsed }) => lapsed)) return "lapsed";
	if (is("pending") || is("missing")) return "waiting";
	const isOpen = ({ decision, conditionsMet }) => decision === "approve-subject-to" && conditionsMet === void 0;
	return approvers.some(isOpen) ? "on-conditions" : "approved";
}
/** A changed plan needs a reason and somebody who agreed: GAO-16-89G, best practice 10 (digest read). */
function unexplainedOf(plan, approvers) {
	const stale = approvers.filter(({ state }) => state === "stale");
	if (stale.length === 0) return void 0;
	const signed = stale.reduce((last, { date = "" }) => date > last ? date : last, "");
	const since = plan.changes.filter(({ date = "" }) => date >= signed);
	if (!since.some(({ what, why }) => what !== void 0 && why !== void 0)) return "no-entry";
	return since.some(({ approvedBy }) => approvedBy !== void 0) ? void 0 : "no-approver";
}
Object.defineProperty(exports, "approvalsState", {
	enumerable: true,
	get: function() {
		return approvalsState;
	}
});
Object.defineProperty(exports, "hasLapsed", {
	enumerable: true,
	get: function() {
		return hasLapsed;
	}
});
Object.defineProperty(exports, "isAbove", {
	enumerable: true,
	get: function() {
		return isAbove;
	}
});
Object.defineProperty(exports, "limitOf", {
	enumerable: true,
	get: function() {
		return limitOf;
	}
});
Object.defineProperty(exports, "personOf", {
	enumerable: true,
	get: function() {
		return personOf;
	}
});
