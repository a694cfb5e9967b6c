// ../../packages/core/src/findings/thresholds.ts
/**
* The trade's thresholds, each a prompt to ask and no verdict. Fourteen-point schedule assessment, DCMA-EA PAM 200.1
* (October 2012), sections 4.1 to 4.14: recalled from memory, the 5 % and the 0.95 read at dau.edu. The appendices VI
* and VII of GAO-16-89G say that they are no tests to pass, and that one grave fault outranks many small ones.
*/
var thresholds = {
	/** Open ends, lags, hard dates, much float, long tasks, missed tasks: share of the tasks or links. */
	share: .05,
	finishToStart: .9,
	/** Working days, float and duration alike: 44 is not much, 45 is. */
	days: 44,
	/** Working days by which the path is lengthened. */
	slip: 600,
	/** Critical path length index and baseline execution index. */
	index: .95,
	/** Common practice, no source, from here on. */
	nearDays: 60,
	farDays: 365,
	fineDays: 5,
	narrow: .1,
	cutAtZero: .01,
	fewTasks: 8,
	staleDays: 35,
	dominating: .6
};
// ../../packages/core/src/findings/sources.ts
/**
* Where rules come from. Page numbers are left out where the page itself was not at hand; what is marked "recalled" was
* not read when it was written down.
*/
var sources = {
	practice: "Common practice, no source.",
	/** Thresholds recalled; the limits of 5 % and 0.95 read at dau.edu and in the guide's appendix VII. */
	assessment: (section) => `Fourteen-point schedule assessment, DCMA-EA PAM 200.1 (October 2012), section ${section} (threshold recalled from memory).`,
	schedule: (practice) => `GAO Schedule Assessment Guide, GAO-16-89G (2015), ${practice}.`,
	cost: (chapter) => `GAO Cost Estimating and Assessment Guide, GAO-20-195G (2020), ${chapter}.`,
	shock: "NASA Schedule Management Handbook (2024), section 6.2: zero, then lengthen (read in a digest).",
	index: "Critical path length index, Defense Acquisition University, dau.edu; DCMA-EA PAM 200.1, 4.13.",
	joint: "NASA NPR 7120.5 and GAO-16-89G, best practice 8, on stating the chance of a date.",
	format: "The plan format."
};
// ../../packages/core/src/findings/rules/commitment.ts
var commitmentRules = [
	{
		code: "no-commitment",
		family: "commitment",
		severity: "warning",
		what: "Neither a date nor a sum is asked for",
		why: "The forecast then has nothing to give a chance of.",
		advice: "Write `commitment` with `finishBy`, `budget` and the `confidence` to commit at.",
		source: sources.joint
	},
	{
		code: "confidence-by-default",
		family: "commitment",
		severity: "note",
		what: "Nobody chose how sure to be",
		why: "No level is right by default: each step costs days and money and buys a chance.",
		advice: "Ask `leeway confidence` what each level costs, choose, and write `commitment.confidence`.",
		source: sources.schedule("best practice 8, schedule contingency")
	},
	{
		code: "finish-by-before-plan",
		family: "commitment",
		severity: "error",
		what: "The date asked for lies before the finish as written",
		why: "It is missed even if every estimate goes its likely way and nothing happens.",
		advice: "Ask `leeway reach` what it would take, or ask for another date.",
		source: sources.schedule("best practice 8: even the finish as written is nearly always too early")
	},
	{
		code: "target-before-plan",
		family: "commitment",
		severity: "warning",
		what: "A target lies before its task's finish as written",
		why: "It is missed even if everything goes its likely way.",
		advice: "Move the target, or the work before it.",
		source: sources.practice
	},
	{
		code: "date-unlikely",
		family: "commitment",
		severity: "warning",
		what: "The date asked for is missed more often than made",
		why: "Whoever promises it promises against the odds.",
		advice: "Ask `leeway reach` what it would take, or promise the date that holds at your level.",
		source: sources.joint,
		threshold: "a chance below 50 %",
		needsForecast: true
	},
	{
		code: "budget-unlikely",
		family: "commitment",
		severity: "warning",
		what: "The budget is overspent more often than kept",
		why: "Whoever promises it promises against the odds.",
		advice: "Ask `leeway reach` what it would take, or ask for the sum that holds at your level.",
		source: sources.joint,
		threshold: "a chance below 50 %",
		needsForecast: true
	},
	{
		code: "target-unlikely",
		family: "commitment",
		severity: "note",
		what: "A target is missed more often than made",
		why: "Those who wait for it will plan on a date that does not hold.",
		advice: "Give them the date at the level they need, or move the work before it.",
		source: sources.joint,
		threshold: "a chance below 50 %",
		needsForecast: true
	},
	{
		code: "too-few-tasks",
		family: "commitment",
		severity: "note",
		what: "Too little to simulate",
		why: "With so few tasks the answer hangs on two or three ranges; merging strands hardly matter.",
		advice: "Give a range and two or three named cases beside the forecast.",
		source: sources.practice,
		threshold: `fewer than ${thresholds.fewTasks} tasks`
	},
	{
		code: "one-unknown",
		family: "commitment",
		severity: "note",
		what: "One unknown dominates",
		why: "The forecast mostly repeats what was put in for it; a percentile hides that.",
		advice: "Tell its cases apart by name, and find out about it before you promise.",
		source: sources.practice,
		threshold: `one item adds more than ${thresholds.dominating * 100} % of the days`,
		needsForecast: true
	}
];
// ../../packages/core/src/findings/rules/estimates.ts
var narrowRanges = sources.cost("chapter 12, on ranges of experts being too narrow (read in a digest)");
var estimateRules = [
	{
		code: "no-ranges",
		family: "estimates",
		severity: "error",
		what: "No duration has a range",
		why: "Every future takes the same time, so a chance of a date says nothing.",
		advice: "Ask for a bad case, a good case and the likely one of the ten largest tasks first.",
		source: sources.schedule("best practice 8, conducting a schedule risk analysis")
	},
	{
		code: "range-missing",
		family: "estimates",
		severity: "warning",
		what: "A duration without a range, and nothing that says why it is certain",
		why: "It is counted as certain, which makes the promise look safer than it is.",
		advice: "Give low, likely and high, or say in `basis` why it cannot vary.",
		source: sources.schedule("best practice 8, conducting a schedule risk analysis")
	},
	{
		code: "ranges-symmetric",
		family: "estimates",
		severity: "note",
		what: "Nearly all ranges are symmetric",
		why: "Work is more easily late than early; equal sides are often a percentage put on by rule.",
		advice: "Ask for the bad case by itself: what would it exceed one time in ten?",
		source: sources.cost("chapter 11, on a bare plus or minus percentage"),
		threshold: "8 in 10 of at least five ranges"
	},
	{
		code: "range-narrow",
		family: "estimates",
		severity: "note",
		what: "A very narrow range",
		why: "People's ranges hold the outcome less often than they believe.",
		advice: "Ask what would have to happen for twice as long, and whether that is ruled out.",
		source: narrowRanges,
		threshold: "from low to high less than a tenth of the likely value, five days or more"
	},
	{
		code: "ranges-miss-history",
		family: "estimates",
		severity: "warning",
		what: "Finished tasks fell outside their ranges too often",
		why: "The ranges still to come are by the same people and will be as narrow.",
		advice: "Widen what is still open by what the finished tasks show, and write the reason into `basis`.",
		source: narrowRanges,
		threshold: "fewer than 6 in 10 of at least five finished tasks within their ranges"
	},
	{
		code: "near-outline",
		family: "estimates",
		severity: "warning",
		what: "Work that is near is still an outline",
		why: "It begins before anybody knows how it is done.",
		advice: "Break it down now with those who do it.",
		source: sources.practice,
		threshold: `starts within ${thresholds.nearDays} calendar days`
	},
	{
		code: "far-detail",
		family: "estimates",
		severity: "note",
		what: "Work that is far off is planned in fine detail",
		why: "Detail a year ahead will be rewritten, and hides how little is known.",
		advice: "Plan it as one outline task with a wide range until it is near.",
		source: sources.practice,
		threshold: `firm, less than ${thresholds.fineDays} working days, and more than ${thresholds.farDays} calendar days off`
	},
	{
		code: "basis-missing",
		family: "estimates",
		severity: "note",
		what: "An estimate that does not say what it rests on",
		why: "Approvers ask who stands behind the figure and why they would know.",
		advice: "Write in `basis` what was measured, asked or compared.",
		source: sources.schedule("best practice 4, establishing durations")
	},
	{
		code: "estimator-missing",
		family: "estimates",
		severity: "note",
		what: "An estimate that nobody gave",
		why: "It cannot be asked about, and nobody learns from how it turns out.",
		advice: "Write in `estimatedBy` who said so.",
		source: sources.schedule("best practice 8, on recording who was asked")
	},
	{
		code: "one-estimator",
		family: "estimates",
		severity: "warning",
		what: "One person estimated everything",
		why: "One person's optimism moves all figures together, and those who do the work were not asked.",
		advice: "Have those who do the work estimate it, at least for what drives the date.",
		source: sources.practice,
		threshold: `at least ${thresholds.fewTasks} estimates`
	},
	{
		code: "cut-at-zero",
		family: "estimates",
		severity: "note",
		what: "A range reaches below zero",
		why: "Draws below zero are cut at zero, so the low value is not beaten as often as it says.",
		advice: "Raise the low value, or take another shape.",
		source: sources.format,
		threshold: "more than 1 draw in 100"
	}
];
// ../../packages/core/src/findings/rules/logic.ts
var { days, slip, staleDays } = thresholds;
var logicRules = [
	{
		code: "runs-past-calendar",
		family: "logic",
		severity: "error",
		what: "The plan as written runs past what calendars cover",
		why: "Nothing that depends on dates can be checked or forecast.",
		advice: "Look at the task's calendar, at its people's absences, and at its duration.",
		source: sources.format
	},
	{
		code: "open-start",
		family: "logic",
		severity: "note",
		what: "Work that nothing comes before",
		why: "It starts on the first day whatever else happens; is that so?",
		advice: "Name in `after` what it waits for, or a milestone from which it may begin.",
		source: sources.assessment("4.1"),
		threshold: "5 % of the tasks lack a predecessor or a successor"
	},
	{
		code: "open-end",
		family: "logic",
		severity: "warning",
		what: "Work that nothing comes after",
		why: "If it is late nothing moves, so its risk is missing from the forecast.",
		advice: "Add it to the `after` of whatever needs it, or of the milestone that closes the plan.",
		source: sources.assessment("4.1"),
		threshold: "5 % of the tasks lack a predecessor or a successor"
	},
	{
		code: "dangling",
		family: "logic",
		severity: "note",
		what: "One end of a task is not tied to anything",
		why: "Its duration can then grow without moving what follows, or without being held by what comes before.",
		advice: "Tie its start to something before it, and its finish to something after it.",
		source: sources.schedule("best practice 2, sequencing all activities")
	},
	{
		code: "no-effect-on-finish",
		family: "logic",
		severity: "warning",
		what: "Work that cannot move the promised finish",
		why: `It may take ${slip} working days longer and the promise holds: is it outside the promise, or is a link missing?`,
		advice: "Link it to what is promised, or leave it so knowingly and accept this finding.",
		source: sources.shock
	},
	{
		code: "lead",
		family: "logic",
		severity: "warning",
		what: "A link with a negative lag",
		why: "The task before would have to know when it will finish; a lead hides the part of it that really comes first.",
		advice: "Split the task before at the point from which the next one may begin.",
		source: sources.assessment("4.2"),
		threshold: "no leads"
	},
	{
		code: "lag",
		family: "logic",
		severity: "note",
		what: "A link with a lag",
		why: "A lag is a task without a name, a person or a range.",
		advice: "Make it a task of its own with a name, such as curing or notice, or say in `note` what it stands for.",
		source: sources.assessment("4.3"),
		threshold: "5 % of the links"
	},
	{
		code: "link-mix",
		family: "logic",
		severity: "note",
		what: "Many links are not from a finish to a start",
		why: "Other links leave one end of a task free and are harder to follow.",
		advice: "Split tasks where only a part of them holds the next one.",
		source: sources.assessment("4.4"),
		threshold: "90 % of the links run from a finish to a start"
	},
	{
		code: "hard-date",
		family: "logic",
		severity: "note",
		what: "A task is held by a date and not by work",
		why: "A date takes the place of the reason for it, and stays when the reason moves.",
		advice: "Put what it waits for into `after`, or say in `note` why the date holds.",
		source: sources.assessment("4.5"),
		threshold: "5 % of the tasks"
	},
	{
		code: "high-float",
		family: "logic",
		severity: "note",
		what: "A task with much float",
		why: `More than ${days} working days of float often mean that a link is missing.`,
		advice: "Ask what needs its result first, and link it.",
		source: sources.assessment("4.6"),
		threshold: `more than ${days} working days, 5 % of the tasks`
	},
	{
		code: "negative-float",
		family: "logic",
		severity: "warning",
		what: "Tasks without time for the date asked for",
		why: "As written the date is missed before anything uncertain happens.",
		advice: "Ask `leeway reach` what it would take, change the plan, or ask for another date.",
		source: sources.assessment("4.7"),
		threshold: "no task"
	},
	{
		code: "long-task",
		family: "logic",
		severity: "note",
		what: "A long task",
		why: `Over more than ${days} working days nobody can tell half done from nearly done, and links to its middle are missing.`,
		advice: "Break it down, or mark it `detail: outline` until its work is near.",
		source: sources.assessment("4.8"),
		threshold: `more than ${days} working days, 5 % of the tasks`
	},
	{
		code: "date-past",
		family: "logic",
		severity: "warning",
		what: "A date of unfinished work lies in the past",
		why: "It was missed, or progress was not recorded; either way it says nothing any more.",
		advice: "Record the progress, or agree a new date and write the change down.",
		source: sources.assessment("4.9"),
		threshold: "no task"
	},
	{
		code: "status-missing",
		family: "logic",
		severity: "warning",
		what: "The plan has begun and has no status date",
		why: "The forecast still lets all of the work happen in the past.",
		advice: "Set `statusDate` and record what has started and finished.",
		source: sources.schedule("best practice 9, updating the schedule with actual progress")
	},
	{
		code: "status-stale",
		family: "logic",
		severity: "note",
		what: "Progress was last recorded long ago",
		why: `After more than ${staleDays} days the forecast answers for a plan that is no longer there.`,
		advice: "Record progress and move `statusDate`.",
		source: sources.schedule("best practice 9, updating the schedule with actual progress")
	},
	{
		code: "remaining-missing",
		family: "logic",
		severity: "note",
		what: "A task is under way and nobody says what remains",
		why: "Its remainder is then what its first estimate leaves, however it went since.",
		advice: "Ask who does it what remains, as three figures, and write `remaining`.",
		source: sources.schedule("best practice 9, updating the schedule with actual progress")
	},
	{
		code: "missed-task",
		family: "logic",
		severity: "note",
		what: "A task finished later than first planned, or is overdue",
		why: "Late tasks show where ranges were too narrow or work was not seen.",
		advice: "Ask why, and whether the tasks like it will do better.",
		source: sources.assessment("4.11"),
		threshold: "5 % of the tasks due by the status date"
	},
	{
		code: "path-does-not-respond",
		family: "logic",
		severity: "warning",
		what: "The finish does not respond to a task that sets it",
		why: "No other strand is as long, so a date or a calendar holds the finish, or a link is missing.",
		advice: "Look for `notBefore` and `holdToPlan` after it: `leeway why PLAN TASK` names what holds each start.",
		source: sources.shock,
		threshold: `the finish moves when the task is zeroed, and by as much as it is lengthened, tried with ${slip} working days`
	},
	{
		code: "cpli-low",
		family: "logic",
		severity: "note",
		what: "The path is too long for the date asked for",
		why: "The index below 0.95 says that more than 5 % of the time left is missing.",
		advice: "Ask `leeway reach` what it would take, or ask for another date.",
		source: sources.index,
		threshold: "critical path length index of 0.95"
	},
	{
		code: "bei-low",
		family: "logic",
		severity: "note",
		what: "Fewer tasks are finished than should be",
		why: "The index below 0.95 says that work falls behind faster than it is done.",
		advice: "Ask what holds the unfinished ones, and whether the rest will go as slowly.",
		source: sources.assessment("4.14"),
		threshold: "baseline execution index of 0.95"
	},
	{
		code: "redundant-link",
		family: "logic",
		severity: "note",
		what: "A link that others already imply",
		why: "It changes nothing and makes the plan harder to read.",
		advice: "Drop it, unless it says something of its own.",
		source: sources.schedule("best practice 2, sequencing all activities")
	}
];
// ../../packages/core/src/findings/rules/money.ts
var moneyRules = [
	{
		code: "over-budget",
		family: "money",
		severity: "error",
		what: "The plan as written costs more than the budget",
		why: "The money is missing before anything uncertain happens.",
		advice: "Ask `leeway reach` what it would take, cut scope, or ask for another sum.",
		source: sources.practice
	},
	{
		code: "contingency-in-task",
		family: "money",
		severity: "warning",
		what: "Contingency hidden in a task or an overhead",
		why: "Put into a task it is spent as work, and counted again on top of what the forecast holds.",
		advice: "Take it out: the forecast shows what is needed at the level you commit to, held in one place.",
		source: sources.schedule("best practices 7 and 8: contingency is no task, no lag and no float")
	},
	{
		code: "holder-missing",
		family: "money",
		severity: "warning",
		what: "Nobody holds the contingency",
		why: "What belongs to everybody is spent by the first who asks.",
		advice: "Name in `commitment.holder` who may release it.",
		source: sources.schedule("best practice 8, schedule contingency")
	},
	{
		code: "funds-missing",
		family: "money",
		severity: "note",
		what: "Nothing says when the money is there",
		why: "Whether each month is covered cannot be forecast.",
		advice: "List in `commitment.funds` from which day which sum may be spent.",
		source: sources.practice
	},
	{
		code: "funds-below-budget",
		family: "money",
		severity: "warning",
		what: "Less money is released than the budget says",
		why: "The budget is a promise that the funds do not keep.",
		advice: "Add the missing release to `commitment.funds`, or lower `budget`.",
		source: sources.practice
	},
	{
		code: "reserve-in-funds",
		family: "money",
		severity: "warning",
		what: "The reserve may be counted as money to spend",
		why: "Funds above the budget look like the sponsor's reserve, which is for what nobody foresaw.",
		advice: "Leave the reserve out of `commitment.funds`, or raise `budget` if it really may be spent.",
		source: sources.cost("on contingency and management reserve; common practice otherwise")
	},
	{
		code: "approver-limit",
		family: "money",
		severity: "error",
		what: "No approver may sign for the sum",
		why: "The approval would not bind.",
		advice: "Add an approver whose `approvesUpTo` covers it, after your own organisation's rules.",
		source: sources.practice
	}
];
// ../../packages/core/src/findings/rules/people.ts
var oneAccountable = "Responsibility matrix: one who answers for each row; common practice, no source.";
var peopleRules = [
	{
		code: "nobody-accountable",
		family: "people",
		severity: "warning",
		what: "Nobody answers for any task",
		why: "When something slips, nobody is the one to ask.",
		advice: "Name one in `accountable`, of each phase or of each task.",
		source: oneAccountable
	},
	{
		code: "accountable-missing",
		family: "people",
		severity: "error",
		what: "Nobody answers for a task, where others have somebody",
		why: "Each row of a responsibility matrix has exactly one who answers for it; when this one slips, nobody is the one to ask.",
		advice: "Name one in its `accountable`, or in that of its phase.",
		source: oneAccountable
	},
	{
		code: "accountable-several",
		family: "people",
		severity: "error",
		what: "More than one answers for a task",
		why: "Each row of a responsibility matrix has exactly one who answers for it; where two answer, neither does.",
		advice: "Keep one in `accountable`; the others are `responsible` or `consulted`.",
		source: oneAccountable
	},
	{
		code: "task-without-people",
		family: "people",
		severity: "note",
		what: "A task has neither people nor cost",
		why: "Work that takes nobody's time and no money is either somebody else's or was not thought through.",
		advice: "Name who does it in `people`, or say in `note` whose it is.",
		source: sources.assessment("4.10"),
		threshold: "no task of a day or more, where the plan names people"
	},
	{
		code: "no-people",
		family: "people",
		severity: "note",
		what: "The plan names no people",
		why: "The forecast takes it that everybody is always there.",
		advice: "List at least those who are wanted by more than one strand, with the weeks they are away.",
		source: sources.schedule("best practice 3, assigning resources")
	},
	{
		code: "over-allocated",
		family: "people",
		severity: "warning",
		what: "A person is asked for more than there is of them",
		why: "The plan as written counts on work that nobody can do at that time.",
		advice: "Set `respectCapacity: true` so that the tasks wait, or move work to somebody else.",
		source: sources.schedule("best practice 3, assigning resources")
	},
	{
		code: "path-on-one-person",
		family: "people",
		severity: "warning",
		what: "One person does everything that sets the finish",
		why: "Two weeks of illness are two weeks of the promise.",
		advice: "Find a deputy, and ask `leeway people PLAN --lose ID --days 10` what an absence does.",
		source: sources.practice,
		threshold: "at least three tasks that set the finish"
	},
	{
		code: "away-in-task",
		family: "people",
		severity: "note",
		what: "Somebody is away in the middle of their task",
		why: "The task waits for them, as written.",
		advice: "Move the leave, the task, or let somebody stand in.",
		source: sources.practice
	},
	{
		code: "rate-missing",
		family: "people",
		severity: "note",
		what: "A person without a rate, where others have one",
		why: "Their days cost nothing in the forecast.",
		advice: "Give a `rate`, or say in `note` who pays.",
		source: sources.cost("chapter 8, collecting data")
	},
	{
		code: "person-unused",
		family: "people",
		severity: "note",
		what: "A person named nowhere",
		why: "Either they have nothing to do with it, or their work was forgotten.",
		advice: "Name them where they work, own or decide, or take them out.",
		source: sources.practice
	}
];
// ../../packages/core/src/findings/rules/purpose.ts
var purposeRules = [
	{
		code: "purpose-missing",
		family: "purpose",
		severity: "warning",
		what: "The plan does not say what it is for",
		why: "Nobody can weigh a date or a sum against a purpose that is not written down.",
		advice: "Write `purpose`: the problem, the goals, what is in scope and what is out.",
		source: sources.practice
	},
	{
		code: "problem-missing",
		family: "purpose",
		severity: "warning",
		what: "No problem is stated",
		why: "Approvers ask first what happens if nothing is done.",
		advice: "Write `purpose.problem` in two or three sentences, with a figure that hurts.",
		source: sources.practice
	},
	{
		code: "goals-missing",
		family: "purpose",
		severity: "warning",
		what: "No goal is stated",
		why: "Without a goal nobody can tell afterwards whether the plan worked.",
		advice: "Write `purpose.goals`, each with a measure, a target, a date and an owner.",
		source: sources.practice
	},
	{
		code: "goal-incomplete",
		family: "purpose",
		severity: "warning",
		what: "A goal lacks its measure, target, date or owner",
		why: "A goal that cannot be measured by a day, by somebody, cannot be missed and so cannot be met.",
		advice: "Add what is missing: `measure`, `target`, `by`, `owner`.",
		source: sources.practice
	},
	{
		code: "goal-unserved",
		family: "purpose",
		severity: "note",
		what: "No benefit serves a goal",
		why: "A goal that nothing in the plan brings nearer is a wish, or the benefit was forgotten.",
		advice: "Name the goal in a benefit's `goal`, or drop it.",
		source: sources.practice
	},
	{
		code: "scope-missing",
		family: "purpose",
		severity: "warning",
		what: "Nothing is written down as in scope",
		why: "Work cannot be traced to what was asked for, so nobody sees what is missing or too much.",
		advice: "List what is delivered in `purpose.scope.in`, and name the item in each task's `scope`.",
		source: sources.schedule("best practice 1, capturing all activities")
	},
	{
		code: "task-without-scope",
		family: "purpose",
		severity: "warning",
		what: "A task belongs to nothing in scope",
		why: "Either the work is not asked for, or the scope leaves something out. Milestones are not asked.",
		advice: "Name the scope item it delivers in `scope`, or ask why it is done.",
		source: sources.schedule("best practice 1, capturing all activities")
	},
	{
		code: "scope-without-task",
		family: "purpose",
		severity: "warning",
		what: "Nothing is planned for something in scope",
		why: "It is promised, and no day and no money is planned for it.",
		advice: "Add the work, name the item in a task's `scope`, or move it to `purpose.scope.out`.",
		source: sources.schedule("best practice 1, capturing all activities")
	},
	{
		code: "scope-out-empty",
		family: "purpose",
		severity: "note",
		what: "Nothing is written down as out of scope",
		why: "What is left unsaid is expected by somebody.",
		advice: "List in `purpose.scope.out` what people may think they get and will not.",
		source: sources.practice
	},
	{
		code: "constraints-empty",
		family: "purpose",
		severity: "note",
		what: "No constraint is written down",
		why: "Approvers judge ways out by what may not be touched.",
		advice: "List in `purpose.constraints` what is fixed: a date, a sum, a rule; a bar with a number goes to `quality`.",
		source: sources.practice
	},
	{
		code: "quality-missed",
		family: "purpose",
		severity: "error",
		what: "A quality bar is not cleared",
		why: "A date and a sum that are kept by missing the bar are not what was promised.",
		advice: "Change the work until it holds, or have the bar changed by those who set it.",
		source: sources.practice,
		threshold: "measured outside it; a warning where what is expected clears it less than half of the time"
	},
	{
		code: "quality-unknown",
		family: "purpose",
		severity: "note",
		what: "Nobody says whether a quality bar will be cleared",
		why: "It can then neither be kept nor missed before the end.",
		advice: "Give what is expected today in `expected`, or what was measured in `measured`.",
		source: sources.practice
	},
	{
		code: "benefits-missing",
		family: "purpose",
		severity: "note",
		what: "No benefit is listed",
		why: "The cost can then be set against nothing.",
		advice: "List what gets better in `benefits`, with an owner and a figure each, in money or not.",
		source: sources.practice
	},
	{
		code: "benefit-incomplete",
		family: "purpose",
		severity: "warning",
		what: "A benefit lacks its owner, figures, baseline or start",
		why: "A benefit that nobody owns, measures from somewhere and can date will not be looked for.",
		advice: "Add what is missing: `owner`, `amount` or `quantity`, `baseline`, `starts`.",
		source: sources.practice
	},
	{
		code: "appraisal-missing",
		family: "purpose",
		severity: "warning",
		what: "Benefits in money are not set against the cost",
		why: "The forecast then leaves out whether it is worth it.",
		advice: "Add `appraisal` with the years to count and your organisation's own discount rate.",
		source: sources.practice
	}
];
// ../../packages/core/src/findings/rules/register.ts
var registerRules = [
	{
		code: "register-empty",
		family: "register",
		severity: "warning",
		what: "The register is empty",
		why: "Ranges cover how work varies, not what may happen to it; the forecast then promises that nothing will.",
		advice: "Ask each strand what it counts on and what would hurt, and list it in `risks` and `assumptions`.",
		source: sources.schedule("best practice 8, conducting a schedule risk analysis")
	},
	{
		code: "entry-without-owner",
		family: "register",
		severity: "warning",
		what: "A risk or an assumption without an owner",
		why: "What nobody watches is found out when it happens.",
		advice: "Name in `owner` who watches it and may act.",
		source: sources.practice
	},
	{
		code: "no-response",
		family: "register",
		severity: "note",
		what: "A threat for which no response was thought of",
		why: "To bear it may be right; to have thought of nothing is not the same.",
		advice: "Write a response with its cost and effect, or say in `note` that it is borne.",
		source: sources.practice
	},
	{
		code: "response-undecided",
		family: "register",
		severity: "note",
		what: "Responses are written down and none is decided",
		why: "The forecast counts none of them, and some have a day by which they must begin.",
		advice: "Ask `leeway responses` what each buys, then adopt one or say in `note` why not.",
		source: sources.practice
	},
	{
		code: "response-overdue",
		family: "register",
		severity: "warning",
		what: "A response's day has passed",
		why: "Adopted, it should have happened; not adopted, it may be too late for it.",
		advice: "Say what came of it, or give it a new day.",
		source: sources.practice
	},
	{
		code: "response-incomplete",
		family: "register",
		severity: "warning",
		what: "An adopted response lacks its owner, day or cost",
		why: "The forecast already counts its effect; it is real only once somebody does it, by a day, with money.",
		advice: "Add `owner`, `due` and `cost` (0 where it costs nothing).",
		source: sources.practice
	},
	{
		code: "certain-entry",
		family: "register",
		severity: "warning",
		what: "A chance of 0 or 1 that is left open",
		why: "What is certain belongs into the plan, what cannot happen out of the register.",
		advice: "Set `status: occurred` or `closed`, make it a task, or give it a real chance.",
		source: sources.practice
	},
	{
		code: "cause-twice",
		family: "register",
		severity: "warning",
		what: "One cause may be counted twice",
		why: "It stands in the range of a task and again as an event, so its days are in the forecast twice.",
		advice: "Keep it in one place: take it out of the range, or out of the register.",
		source: sources.cost("chapter 12, on risk drivers; NASA Schedule Management Handbook (2024), section 6.3 (read in a digest)")
	},
	{
		code: "occurred-in-remaining",
		family: "register",
		severity: "warning",
		what: "What occurred may be in the remaining days already",
		why: "Days that somebody counted when they said what remains must not be added once more.",
		advice: "Where they are in `remaining`, write `actual: { days: 0 }`; else what it took in `actual.days`.",
		source: sources.practice
	},
	{
		code: "occurred-in-spent",
		family: "register",
		severity: "warning",
		what: "What occurred may be in the money spent already",
		why: "It stays a range beside what was spent until somebody says what it cost.",
		advice: "Write what it cost in `actual.cost`; 0 where it is in `spent`.",
		source: sources.practice
	},
	{
		code: "entry-expired",
		family: "register",
		severity: "warning",
		what: "A risk is open past the day it could happen by",
		why: "Money and days are held for what can no longer come.",
		advice: "Close it and ask whether its contingency can be released, or correct `expires`.",
		source: sources.practice
	},
	{
		code: "review-overdue",
		family: "register",
		severity: "warning",
		what: "An assumption was to be looked at and was not",
		why: "Plans fail on what everybody still believes.",
		advice: "Look at its signpost, then set a new `reviewBy` or a status.",
		source: sources.practice
	},
	{
		code: "impact-nowhere",
		family: "register",
		severity: "warning",
		what: "An open risk or assumption that changes nothing",
		why: "It can happen in every future and no date and no sum notices.",
		advice: "Say in `impacts` what it does and to which unfinished tasks, or in `note` why it does nothing.",
		source: sources.practice
	},
	{
		code: "entry-outlived",
		family: "register",
		severity: "warning",
		what: "A risk or an assumption is open and the work it hits is done",
		why: "Its money is still drawn in every future, for something that can hardly happen any more.",
		advice: "Set its `status`: `occurred` or `closed`; where the money may still fall due, say until when in `expires`.",
		source: sources.practice
	},
	{
		code: "signpost-missing",
		family: "register",
		severity: "warning",
		what: "A load-bearing assumption without a signpost",
		why: "Nobody will notice in time that it no longer holds.",
		advice: "Write in `signpost` what would be seen first, and in `reviewBy` when to look.",
		source: "Assumption-based planning, RAND MR-114 (read in an abstract)."
	},
	{
		code: "only-threats",
		family: "register",
		severity: "note",
		what: "The register holds threats only",
		why: "A register without a chance to gain looks at half of what may happen.",
		advice: "Ask what could go better than planned, and what would make it likelier.",
		source: "ISO 31073: risk is the effect of uncertainty on objectives, for better or worse.",
		threshold: "at least five risks"
	},
	{
		code: "correlations-repaired",
		family: "register",
		severity: "warning",
		what: "The correlations contradict each other",
		why: "No draws can keep all of them, so the nearest that can be kept are used.",
		advice: "Lower the coefficients, or name fewer pairs.",
		source: "Higham (2002), Computing the nearest correlation matrix, IMA Journal of Numerical Analysis 22."
	}
];
// ../../packages/core/src/findings/rules/signOff.ts
var signOffRules = [
	{
		code: "change-unexplained",
		family: "sign-off",
		severity: "error",
		what: "A change after an approval lacks its reason or who agreed to it",
		why: "An approved plan is changed by decision; without a reason the next reader cannot tell drift from decision.",
		advice: "Add `why`, and in `approvedBy` who agreed to it.",
		source: sources.schedule("best practice 10, maintaining a baseline schedule")
	},
	{
		code: "change-unlogged",
		family: "sign-off",
		severity: "error",
		what: "The plan is not the one that was approved, and no change is logged",
		why: "What was approved is a baseline: it changes by decision, with a reason and somebody who agreed.",
		advice: "Log it: `leeway change PLAN --what ... --why ... --as ... --approved-by ...`.",
		source: sources.schedule("best practice 10, maintaining a baseline schedule")
	},
	{
		code: "conditions-lapsed",
		family: "sign-off",
		severity: "error",
		what: "The day by which an approval's conditions had to be met has passed",
		why: "An approval on a condition that was not met is none.",
		advice: "Write `conditionsMet` once they were met, or ask the approver again.",
		source: sources.practice
	},
	{
		code: "objection-open",
		family: "sign-off",
		severity: "note",
		what: "An objection is open",
		why: "It will be raised in the meeting if it is not answered before.",
		advice: "Answer it with evidence, or have it accepted by name.",
		source: sources.practice
	},
	{
		code: "acceptance-unused",
		family: "sign-off",
		severity: "note",
		what: "An accepted finding is no longer found",
		why: "It was mended, its code or id is mistyped, or it was accepted before it came up.",
		advice: "Take the acceptance out, or correct it.",
		source: sources.practice
	}
];
/** The table of all checks, family by family: what the checks, the page and the tests read. */
var checkRules = [
	...purposeRules,
	...logicRules,
	...estimateRules,
	...registerRules,
	...peopleRules,
	...moneyRules,
	...commitmentRules,
	...signOffRules
];
[...new Set(checkRules.map(({ family }) => family))];
Object.defineProperty(exports, "checkRules", {
	enumerable: true,
	get: function() {
		return checkRules;
	}
});
Object.defineProperty(exports, "sources", {
	enumerable: true,
	get: function() {
		return sources;
	}
});
Object.defineProperty(exports, "thresholds", {
	enumerable: true,
	get: function() {
		return thresholds;
	}
});
