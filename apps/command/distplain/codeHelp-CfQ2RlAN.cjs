const require_checkRules = require("./checkRules-CJV1ay2n.cjs");
const require_program = require("./program.cjs");
// ../../packages/core/src/problems/problemFamilies.ts
/** Every code a problem or a refusal of the library can have, once, in the order of the page `docs/errors.md`. */
var problemFamilies = [
	{
		title: "The text",
		rules: [
			{
				code: "not-text",
				what: "The file is no text: it holds bytes no text has, or it is a workbook or a packed file.",
				rule: "A plan is YAML or JSON text in UTF-8; a table is comma-separated text.",
				why: "Read as text, it would give names and numbers nobody wrote.",
				remedy: "Save or export it as text, encoded as UTF-8."
			},
			{
				code: "empty",
				what: "Nothing stands in the file, or only comments; of a table, not even headings.",
				rule: "A document has a beginning.",
				why: "An empty plan has no date to forecast.",
				remedy: "Begin with `leeway new`, or with a row of headings."
			},
			{
				code: "encoding",
				what: "Bytes or half characters that UTF-8 does not have.",
				rule: "A plan is encoded as UTF-8.",
				why: "Read in another encoding, names would change silently.",
				remedy: "Save the file as UTF-8 and type again what is damaged."
			},
			{
				code: "lost-character",
				what: "A replacement character stands where a letter was lost earlier.",
				rule: "A text holds what was typed.",
				why: "Whoever saved the file last lost a letter; what it was is not to be guessed.",
				remedy: "Type the word again and save as UTF-8."
			},
			{
				code: "yaml-syntax",
				what: "The text breaks the rules of YAML at the place named.",
				rule: "A plan is YAML 1.2 or JSON.",
				why: "What cannot be parsed cannot be guessed.",
				remedy: "Mend the line; often it is an indent, a bracket left open or a quote."
			},
			{
				code: "json-syntax",
				what: "The text begins as JSON and breaks its rules at the place named.",
				rule: "JSON after RFC 8259.",
				why: "What cannot be parsed cannot be guessed.",
				remedy: "Mend the place, or write the plan as YAML."
			},
			{
				code: "several-documents",
				what: "A line of three hyphens begins a second document.",
				rule: "A file holds one plan.",
				why: "Taking the first and dropping the rest would hide half a plan.",
				remedy: "Keep one document in a file."
			},
			{
				code: "colon-in-text",
				what: "A text holds a colon followed by a space, which YAML takes for a key.",
				rule: "Such a text stands between quotes.",
				why: "Otherwise the rest of the line becomes a key nobody meant.",
				remedy: "Put quotes around the text."
			},
			{
				code: "odd-key",
				what: "A key is a list, an object or empty.",
				rule: "A key is plain text.",
				why: "No key of the format looks so.",
				remedy: "Write `key: value`."
			},
			{
				code: "alias",
				what: "A YAML alias stands for something that is not complete before it.",
				rule: "An alias repeats what was marked earlier.",
				why: "It would contain itself.",
				remedy: "Write the value out."
			},
			{
				code: "alias-growth",
				what: "Aliases of aliases make the document far larger than its text.",
				rule: "A document is about as large as its text.",
				why: "A few lines could fill the memory of whoever opens them.",
				remedy: "Write the values out."
			},
			{
				code: "too-deep",
				what: "Brackets or indents nest deeper than any plan does.",
				rule: "A plan nests at most so many levels.",
				why: "Deeper nesting is damage, or meant to exhaust the reader.",
				remedy: "Close the brackets."
			},
			{
				code: "loop-of-data",
				what: "A value handed over as data that contains itself.",
				rule: "Data is a tree, as `JSON.parse` gives it.",
				why: "There would be no end to reading it.",
				remedy: "Hand over a copy without the reference to itself."
			},
			{
				code: "not-json",
				what: "A value handed over as data has no form in JSON: a function, a date object, an endless number.",
				rule: "Data is what `JSON.parse` can give.",
				why: "It could be neither saved nor hashed.",
				remedy: "Hand over texts, numbers, booleans, lists and plain objects."
			}
		]
	},
	{
		title: "The form of the document",
		rules: [
			{
				code: "unknown-key",
				what: "A key the format does not know at this place.",
				rule: "Every key is one of those the format lists.",
				why: "A misspelt key that is passed over changes the answer without a word.",
				remedy: "Correct it to the one suggested, or use `notes` for what is only to be kept."
			},
			{
				code: "missing-key",
				what: "A key that this part cannot do without.",
				rule: "What is required is written.",
				why: "There is no value that could be assumed.",
				remedy: "Add it; the message says what it is."
			},
			{
				code: "repeated-key",
				what: "The same key twice in one object.",
				rule: "A key stands once.",
				why: "Which of the two counts would depend on the reader.",
				remedy: "Keep one of the two."
			},
			{
				code: "wrong-type",
				what: "A value of another kind: text for a number, a list for an object, nothing at all.",
				rule: "Each key has its kind of value.",
				why: "Turning one kind into another guesses.",
				remedy: "Write it in the form the message shows."
			},
			{
				code: "bad-format",
				what: "A text that is not of the form asked for: an id with capitals, a date written another way, an empty text.",
				rule: "Ids are small letters, digits and hyphens, dates `2027-03-01`, texts not empty.",
				why: "Ids address draws and dates place work; both must be read in one way only.",
				remedy: "Write it as the message shows."
			},
			{
				code: "out-of-range",
				what: "A number or date outside what makes sense there.",
				rule: "Each number has bounds, such as a chance from 0 to 1.",
				why: "Outside them the simulation would mean nothing.",
				remedy: "Write a value within the bounds named."
			},
			{
				code: "not-a-choice",
				what: "A word that is none of those allowed.",
				rule: "The message lists the words.",
				why: "An unknown word cannot be acted on.",
				remedy: "Take one of them; the nearest is suggested."
			},
			{
				code: "too-few",
				what: "A list is shorter than it may be, such as a plan without tasks; or too few past plans for what was asked.",
				rule: "Some lists need their first items.",
				why: "There is nothing to reckon with.",
				remedy: "Add what the message names."
			},
			{
				code: "too-many",
				what: "A list, a table or an estimate has more than it may: more than three values, 500 columns, 200,000 rows.",
				rule: "Lists have limits.",
				why: "Beyond them it is damage or another kind of file.",
				remedy: "Leave out what is too much."
			},
			{
				code: "number-as-text",
				what: "A text that YAML reads as a number, such as a name 2027.",
				rule: "A text that looks like a number stands between quotes.",
				why: "007 would become 7.",
				remedy: "Put it between quotes."
			},
			{
				code: "grouped-digits",
				what: "A number with its thousands apart, such as 1,000 or 1 000.",
				rule: "Digits stand together.",
				why: "In other countries 1,000 is one.",
				remedy: "Write 1000."
			},
			{
				code: "no-such-date",
				what: "A date no calendar has, such as 30 February.",
				rule: "The day exists.",
				why: "Moving it to the next day would change the plan silently.",
				remedy: "Write a day that exists."
			}
		]
	},
	{
		title: "Names and what they point at",
		rules: [
			{
				code: "repeated-id",
				what: "Two items with the same id.",
				rule: "An id names one thing.",
				why: "Links and random draws would be of both.",
				remedy: "Give one of the two another id."
			},
			{
				code: "repeated-name",
				what: "Two phases or calendars with the same name.",
				rule: "Such a name is unique among its like.",
				why: "A task naming it could mean either.",
				remedy: "Give each its own name."
			},
			{
				code: "unknown-id",
				what: "An id that nothing in the plan has.",
				rule: "Every id points at something that exists.",
				why: "A link to nowhere, quietly dropped, lets work begin too early.",
				remedy: "Correct it; the nearest id is suggested."
			},
			{
				code: "wrong-kind",
				what: "An id that exists but names another kind of thing, such as a person where a task belongs.",
				rule: "An id names what is asked for there.",
				why: "It cannot be done what was asked.",
				remedy: "Name one of the kind the message gives."
			},
			{
				code: "unknown-task",
				what: "The task asked about is not in the plan.",
				rule: "What is asked about exists.",
				why: "There is no answer.",
				remedy: "Name one of the ids suggested."
			},
			{
				code: "old-id-taken",
				what: "`was` names an id that something else has or had.",
				rule: "Old ids lead to one new one.",
				why: "The two would share their random draws, and so always fare alike.",
				remedy: "Keep `was` on the one that was renamed."
			},
			{
				code: "given-calendar",
				what: "A calendar of the plan takes the name of one that is built in.",
				rule: "Built-in calendars cannot be changed.",
				why: "Two plans would mean other days by the same word.",
				remedy: "Give it another name, with `like`."
			}
		]
	},
	{
		title: "Tasks and links",
		rules: [
			{
				code: "no-duration",
				what: "A task that has neither duration nor effort.",
				rule: "A task takes time, or it is a milestone.",
				why: "It would be over at once.",
				remedy: "Add `duration` or `effort`, or `milestone: true`."
			},
			{
				code: "duration-and-effort",
				what: "A task with both.",
				rule: "Effort over people gives the duration.",
				why: "The two could contradict each other.",
				remedy: "Keep one of the two."
			},
			{
				code: "effort-without-people",
				what: "Effort and nobody to do it, or people whose shares sum to 0.",
				rule: "Effort is done by somebody.",
				why: "It would never end.",
				remedy: "Add `people` with a share above 0, or write `duration`."
			},
			{
				code: "milestone-key",
				what: "A milestone with a duration, people or another key of work.",
				rule: "A milestone is a point in time.",
				why: "It would take time and not take time.",
				remedy: "Remove the key, or `milestone`."
			},
			{
				code: "repeated-person",
				what: "Somebody twice in one task.",
				rule: "A person stands once, with the whole share.",
				why: "Which share counts would be a guess.",
				remedy: "Name them once."
			},
			{
				code: "loop",
				what: "Tasks that wait for each other in a circle; the message shows the way round.",
				rule: "What follows what has a beginning.",
				why: "None of them could ever start.",
				remedy: "Remove one of the links."
			},
			{
				code: "repeated-link",
				what: "The same two tasks linked twice in the same way.",
				rule: "One link of a kind between two tasks.",
				why: "With two lags only one could count.",
				remedy: "Keep one, or change its `link`."
			}
		]
	},
	{
		title: "Estimates",
		rules: [
			{
				code: "estimate-order",
				what: "Low, likely and high are not in rising order.",
				rule: "Low is at most likely, and likely at most high.",
				why: "Most often two numbers were exchanged; which two is not to be guessed.",
				remedy: "Put the smallest first."
			},
			{
				code: "estimate-shape",
				what: "A shape that does not go with the values or bounds given.",
				rule: "Each shape has the values it needs: uniform has no likely value, lognormal nothing at or below 0.",
				why: "There is no such distribution.",
				remedy: "Change the shape or the values, as the message says."
			},
			{
				code: "outcome-chance",
				what: "An outcome with a chance of 0 or less.",
				rule: "A chance is above 0.",
				why: "What cannot happen is no outcome.",
				remedy: "Leave it out."
			},
			{
				code: "outcome-repeated",
				what: "The same value twice among outcomes.",
				rule: "Each value stands once.",
				why: "Two chances of one thing are one chance.",
				remedy: "Add the chances up."
			},
			{
				code: "outcome-sum",
				what: "The chances of the outcomes do not sum to 1.",
				rule: "Something happens, and only one of them.",
				why: "Scaling them would change what was stated.",
				remedy: "Correct the chances."
			}
		]
	},
	{
		title: "People, calendars and correlations",
		rules: [
			{
				code: "share-above-capacity",
				what: "A task takes more of a person than there is.",
				rule: "A share is at most the capacity.",
				why: "Nobody could ever do it.",
				remedy: "Lower the share, or raise the capacity."
			},
			{
				code: "dates-reversed",
				what: "A time off that ends before it begins.",
				rule: "From comes before to.",
				why: "Nobody would be away.",
				remedy: "Exchange the two dates."
			},
			{
				code: "calendar-loop",
				what: "Calendars that are like each other in a circle.",
				rule: "`like` leads to a beginning.",
				why: "There would be no days to start from.",
				remedy: "Let one of them stand alone."
			},
			{
				code: "calendar-chain",
				what: "`like` leads through more calendars than anybody can follow.",
				rule: "Chains are short.",
				why: "A change far down would be missed.",
				remedy: "Start from a calendar nearer the beginning."
			},
			{
				code: "repeated-member",
				what: "The same item twice in a set that moves together.",
				rule: "An item is named once.",
				why: "It is always one with itself.",
				remedy: "Name it once."
			},
			{
				code: "repeated-pair",
				what: "Two sets that both state how the same pair moves together.",
				rule: "Each pair has one coefficient.",
				why: "Two could contradict each other.",
				remedy: "Name each pair once."
			},
			{
				code: "too-many-pairs",
				what: "More correlated pairs than can be worked with.",
				rule: "There is a limit, which the message names.",
				why: "Checking that they agree would take longer than the simulation.",
				remedy: "Name fewer tasks in a set, or write the shared cause as a risk."
			},
			{
				code: "no-draw",
				what: "An item in a correlation that has nothing uncertain to move.",
				rule: "What moves together is drawn.",
				why: "There would be no effect.",
				remedy: "Give it a range, or leave it out of the set."
			}
		]
	},
	{
		title: "The register",
		rules: [
			{
				code: "impact-empty",
				what: "An impact without any effect.",
				rule: "An impact says what it does: delay, factor, wait or cost.",
				why: "It would happen and change nothing.",
				remedy: "Add what it does."
			},
			{
				code: "impact-target",
				what: "A delay without a place, or with both tasks and a phase.",
				rule: "An impact touches tasks or one phase.",
				why: "It would touch nothing, or some things twice.",
				remedy: "Keep one, or write two impacts."
			},
			{
				code: "impact-nothing",
				what: "A phase that holds milestones only.",
				rule: "There is something to delay.",
				why: "Nothing would happen.",
				remedy: "Name the tasks it touches."
			},
			{
				code: "impact-on-milestone",
				what: "A delay or factor on a milestone.",
				rule: "A milestone can only wait.",
				why: "It has no duration to lengthen.",
				remedy: "Write `wait`, or name a task."
			},
			{
				code: "repeated-task",
				what: "A task twice in one impact.",
				rule: "A task is touched once by an impact.",
				why: "The delay would count twice.",
				remedy: "Name it once."
			},
			{
				code: "group-sum",
				what: "Chances in a group sum to more than 1.",
				rule: "What excludes each other sums to at most 1.",
				why: "There is no such set of chances.",
				remedy: "Lower them, or take one out of the group."
			},
			{
				code: "group-occurred",
				what: "Two of a group have occurred.",
				rule: "They exclude each other.",
				why: "Either the group or a status is wrong.",
				remedy: "Take one out, or correct its status."
			},
			{
				code: "group-raised",
				what: "A response raises a chance inside a group.",
				rule: "In a group responses may only lower it.",
				why: "The chances could sum to more than 1.",
				remedy: "Lower its `probability`, or take the entry out of the group."
			},
			{
				code: "actual-status",
				what: "What an entry did is written, but it has not occurred.",
				rule: "`actual` belongs to what occurred.",
				why: "It would count twice: as a fact and as a chance.",
				remedy: "Write `status: occurred`, or remove `actual`."
			},
			{
				code: "actual-nowhere",
				what: "Days are written for an entry that delays nothing.",
				rule: "Days touch a task.",
				why: "They would be lost.",
				remedy: "Add an impact with `tasks` and `delay`, or remove the days."
			}
		]
	},
	{
		title: "Money, benefits, quality and sign-off in the plan",
		rules: [
			{
				code: "no-amount",
				what: "A benefit without amount or quantity, or an overhead without `perDay`.",
				rule: "Money has a sum.",
				why: "It would count as nothing.",
				remedy: "Add it, or take the entry out."
			},
			{
				code: "amount-and-quantity",
				what: "A benefit with both.",
				rule: "A benefit is counted in money or in its own unit.",
				why: "It would count twice.",
				remedy: "Keep one of the two."
			},
			{
				code: "no-period",
				what: "A recurring value without `per`.",
				rule: "A rate has its time.",
				why: "It is read as a value per year, which may not be meant.",
				remedy: "Add `per`."
			},
			{
				code: "without-quantity",
				what: "A price or unit without a quantity.",
				rule: "It belongs to a quantity.",
				why: "There is nothing to multiply.",
				remedy: "Remove it, or add `quantity`."
			},
			{
				code: "no-deadline",
				what: "A price of being late, but no day after which it is late.",
				rule: "Lateness is counted from a day.",
				why: "It would never be paid.",
				remedy: "Add `finishBy` to the commitment, or `after`."
			},
			{
				code: "quality-bound",
				what: "A quality bar with no bound, or with two.",
				rule: "`atLeast` or `atMost`, exactly one.",
				why: "Whether it holds could not be told.",
				remedy: "Keep one, or make two bars of it."
			},
			{
				code: "quality-measured",
				what: "The day of a measurement without its value.",
				rule: "`on` is the day of `measured`.",
				why: "A day alone says nothing.",
				remedy: "Add `measured`, or remove `on`."
			},
			{
				code: "without-conditions",
				what: "Who is to meet a condition, and by when, but no condition.",
				rule: "Those keys belong to `conditions`.",
				why: "Nobody could tell what to meet.",
				remedy: "Write `conditions`."
			},
			{
				code: "trigger-condition",
				what: "A return trigger with no condition, or with several.",
				rule: "One trigger, one condition.",
				why: "Which of them called would not be known.",
				remedy: "Make a trigger of each."
			},
			{
				code: "no-accountable",
				what: "Nobody answers for this task.",
				rule: "Exactly one person is accountable.",
				why: "Nobody would notice.",
				remedy: "Name one."
			},
			{
				code: "many-accountable",
				what: "Several people answer for one task.",
				rule: "Exactly one person is accountable.",
				why: "Each may rely on the other.",
				remedy: "Keep one; the others may be consulted."
			},
			{
				code: "no-responsible",
				what: "Nobody does this task.",
				rule: "Somebody is responsible.",
				why: "Work without a doer is not planned.",
				remedy: "Name who does it."
			}
		]
	},
	{
		title: "Progress",
		rules: [
			{
				code: "no-status-date",
				what: "Progress without the day up to which it is recorded.",
				rule: "Progress has a status date.",
				why: "What is unfinished must lie after some day, or it would be planned into the past.",
				remedy: "Add `statusDate`."
			},
			{
				code: "progress-date",
				what: "A day of progress before the plan or after the status date.",
				rule: "Progress has already happened.",
				why: "It would be known before it happened.",
				remedy: "Correct the day, or move `start` or `statusDate`."
			},
			{
				code: "progress-order",
				what: "A finish without a start, or before it; work left on what is finished; money spent on what has not begun.",
				rule: "Start, then work left or spent, then finish.",
				why: "The task would be in two states.",
				remedy: "Correct one of the two, as the message says."
			},
			{
				code: "already-recorded",
				what: "A day that stands in the plan already.",
				rule: "What was recorded stays.",
				why: "Changing a fact without a reason loses it.",
				remedy: "Nothing, or correct it in the plan with a change entry."
			},
			{
				code: "said-twice",
				what: "One report says two things of the same task.",
				rule: "A report says each thing once.",
				why: "Which is true is not known.",
				remedy: "Keep one of them."
			},
			{
				code: "status-before",
				what: "A status date before the one the plan has.",
				rule: "Reports go forward in time.",
				why: "Later facts would lie in the future.",
				remedy: "Give a later day."
			},
			{
				code: "out-of-sequence",
				what: "Work that began or ended before what its links ask for.",
				rule: "Links state what must come first.",
				why: "Either the day or the link is wrong; the forecast keeps both and says so.",
				remedy: "Ask; correct the day, or change the link."
			},
			{
				code: "not-progress",
				what: "The report is not a list of progress.",
				rule: "A JSON list of objects, or a table with headings.",
				why: "It cannot be told what happened.",
				remedy: "Write it as the message shows."
			},
			{
				code: "heading",
				what: "A column of a report that is unknown or there twice.",
				rule: "Headings are those the message lists.",
				why: "What stands below would be lost.",
				remedy: "Correct or remove the column."
			},
			{
				code: "no-id",
				what: "A row of a report without a task.",
				rule: "A row is known by its id.",
				why: "It cannot be told whose progress it is.",
				remedy: "Write the id."
			},
			{
				code: "bad-value",
				what: "A value of a report that is no date or number.",
				rule: "Dates as 2027-03-01, numbers plain.",
				why: "It would be guessed.",
				remedy: "Correct it as the message says."
			}
		]
	},
	{
		title: "Tables",
		rules: [
			{
				code: "quotes",
				what: "A quote that is not closed, or stands in the middle of a cell.",
				rule: "Quotes after RFC 4180.",
				why: "The rest of the table would become one cell.",
				remedy: "Close it, and write a quote inside quotes twice."
			},
			{
				code: "row-too-long",
				what: "A row with more cells than there are headings.",
				rule: "A cell has its heading.",
				why: "Most often a comma in a text without quotes; the columns after it would shift.",
				remedy: "Put quotes around a cell that holds a separator."
			},
			{
				code: "unknown-column",
				what: "A heading the table does not have.",
				rule: "Headings are those of the export.",
				why: "Its cells are not read.",
				remedy: "Correct it, or leave it if it is only for you."
			},
			{
				code: "repeated-column",
				what: "The same heading twice.",
				rule: "A heading stands once.",
				why: "Which of the two counts is not known.",
				remedy: "Keep one of them."
			},
			{
				code: "missing-column",
				what: "A heading without which rows cannot be matched.",
				rule: "Some columns are needed, such as `id`.",
				why: "Rows could not be told apart.",
				remedy: "Add it."
			},
			{
				code: "missing-id",
				what: "A row without an id.",
				rule: "A row is known by its id.",
				why: "It would be matched by its place.",
				remedy: "Write the id; of a new row a new one."
			},
			{
				code: "repeated-row",
				what: "Two rows about the same.",
				rule: "One row an item.",
				why: "Which of them counts is not known.",
				remedy: "Keep one of them."
			},
			{
				code: "row-kind",
				what: "A row of the register of an unknown kind.",
				rule: "A risk, an assumption, an impact or a response.",
				why: "It cannot be told where it belongs.",
				remedy: "Write one of them."
			},
			{
				code: "estimate-of",
				what: "A row of estimates of something that has no estimate.",
				rule: "The message lists what has.",
				why: "There is nothing to change.",
				remedy: "Write one of them."
			},
			{
				code: "emptied",
				what: "A cell that was filled in the plan and is empty in the table.",
				rule: "Empty cells change nothing.",
				why: "A spreadsheet loses cells easily; nothing is deleted by silence.",
				remedy: "Write another value, or remove it in the plan."
			},
			{
				code: "brackets",
				what: "Brackets or quotes in a cell that are not closed.",
				rule: "What stands in brackets is written as in a plan.",
				why: "It cannot be read.",
				remedy: "Close what is open."
			},
			{
				code: "not-a-number",
				what: "A text where the table has a number.",
				rule: "A number is plain digits.",
				why: "It would be guessed.",
				remedy: "Write a number."
			},
			{
				code: "decimal-comma",
				what: "A number whose comma is its decimal point.",
				rule: "The whole table is read so, or none of it.",
				why: "1,500 may be one and a half or fifteen hundred; what was taken is said.",
				remedy: "Check that it is meant so, or write decimal points."
			},
			{
				code: "not-a-forecast",
				what: "A file named as a saved forecast does not hold one.",
				rule: "A saved forecast is what `leeway forecast PLAN --json` printed: plan, seed, futures, design, version, figures.",
				why: "Without them it cannot be run again.",
				remedy: "Save it again with `leeway forecast PLAN --json`."
			},
			{
				code: "another-plan",
				what: "A saved forecast is of another plan than the one named, by its hash.",
				rule: "A forecast is run again on the plan it was made from.",
				why: "Figures of two plans differ for reasons that have nothing to do with the run.",
				remedy: "Name the plan it was made from; versions that were kept stand in NAME.versions."
			},
			{
				code: "too-large",
				what: "More text or more memory than can be worked with.",
				rule: "There are limits, which the message names.",
				why: "Going on would end without an answer.",
				remedy: "Leave out what no plan holds, or ask for fewer iterations."
			},
			{
				code: "answer",
				what: "An answer of a sheet or interview that cannot be an estimate.",
				rule: "Bad, good and likely case in order.",
				why: "The range would be upside down.",
				remedy: "Ask again; the message says which answer."
			},
			{
				code: "unit",
				what: "A sheet whose values are in another unit than was asked.",
				rule: "Values come back in the unit of the sheet.",
				why: "Days taken for weeks are wrong by five.",
				remedy: "Give them in that unit."
			}
		]
	},
	{
		title: "What is asked of a plan",
		rules: [
			{
				code: "beyond-calendar",
				what: "The plan runs past the last day the calendar reaches.",
				rule: "Plans end within about a hundred years.",
				why: "Beyond it no date could be given.",
				remedy: "Look for a duration in the wrong unit; shorten the plan."
			},
			{
				code: "option-value",
				what: "An option of a call outside what it may be.",
				rule: "The message names the bounds.",
				why: "It would mean nothing.",
				remedy: "Write a value within them."
			},
			{
				code: "contradiction",
				what: "A scenario that takes and leaves the same thing.",
				rule: "With or without, not both.",
				why: "Which of the two is meant is not known.",
				remedy: "Leave out one of them."
			},
			{
				code: "without-effect",
				what: "A scenario that changes nothing: adopted already, closed already.",
				rule: "A what-if differs from the plan.",
				why: "The two answers will be the same; said so that nobody wonders.",
				remedy: "Nothing, or name another."
			},
			{
				code: "nothing-asked",
				what: "The plan asks for no date and no sum.",
				rule: "To reach something it must be named.",
				why: "There is nothing to reach.",
				remedy: "Add `finishBy` or `budget`, or hand one over."
			},
			{
				code: "no-such-future",
				what: "A future outside the run, or a level that is none.",
				rule: "Futures are counted from 1; levels lie between 0 and 1.",
				why: "There is nothing to replay.",
				remedy: "Name one within the run."
			},
			{
				code: "absence",
				what: "An absence that cannot be: nobody of that id, no days, a day that is past.",
				rule: "Somebody in the plan, from a day to come, for 1 to 366 working days.",
				why: "There is nothing to try.",
				remedy: "Correct it as the message says."
			},
			{
				code: "before-status-date",
				what: "A day of looking before the plan's status date.",
				rule: "Today is not before what is recorded.",
				why: "What has happened would lie ahead.",
				remedy: "Give a later day."
			},
			{
				code: "other-currency",
				what: "The signed version counts in another currency.",
				rule: "Both count in the same.",
				why: "Sums could not be compared.",
				remedy: "Give the agreed sum in the plan's currency."
			}
		]
	},
	{
		title: "Editing a plan's text",
		rules: [{
			code: "no-such-place",
			what: "A place that is not in the document.",
			rule: "An edit names a place that exists.",
			why: "Nothing would be changed.",
			remedy: "Name another place."
		}, {
			code: "cannot-edit",
			what: "A place that cannot be changed by itself, such as one written through an alias.",
			rule: "An edit changes one place and leaves the rest of the text as it is.",
			why: "More would change than was asked.",
			remedy: "Change it in the text."
		}]
	},
	{
		title: "Signing, objections and changes",
		rules: [
			{
				code: "unknown-person",
				what: "Nobody in the plan has this id.",
				rule: "Who decides or speaks is in the plan.",
				why: "A signature of nobody binds nobody.",
				remedy: "Name one of the ids in the plan."
			},
			{
				code: "not-an-approver",
				what: "Somebody who is no approver, or may not stand in for one.",
				rule: "Only approvers decide.",
				why: "It would look signed.",
				remedy: "Name an approver, or make them one in the plan first."
			},
			{
				code: "no-approver",
				what: "A change that nobody agreed to.",
				rule: "A change names who agreed to it.",
				why: "An approved plan would change by itself.",
				remedy: "Add who agreed; the message names who may."
			},
			{
				code: "not-a-party",
				what: "Somebody who neither raised the objection nor accepted it, and does not decide on the plan.",
				rule: "An objection is withdrawn or opened again by those it concerns.",
				why: "Anybody could put away another's objection.",
				remedy: "Ask one of those the message names."
			},
			{
				code: "no-conditions",
				what: "Approved subject to conditions, without conditions.",
				rule: "Conditions are written down.",
				why: "Nobody could meet them.",
				remedy: "Add them."
			},
			{
				code: "no-condition-open",
				what: "Somebody whose approval has no condition left to meet.",
				rule: "A condition is met once.",
				why: "Nothing would change.",
				remedy: "There is nothing to do, or name another approver."
			},
			{
				code: "above-limit",
				what: "More money than the approver may approve.",
				rule: "The sum asked for is within the limit.",
				why: "The signature would not hold.",
				remedy: "Ask somebody whose limit suffices, or change the plan."
			},
			{
				code: "open-objection",
				what: "An objection that is open.",
				rule: "Open objections are answered, or accepted by name.",
				why: "It would be passed over in silence.",
				remedy: "Answer it, or accept it by name."
			},
			{
				code: "unknown-objection",
				what: "No objection of that id.",
				rule: "An objection is in the plan.",
				why: "There is nothing to answer.",
				remedy: "Name one of those there are."
			},
			{
				code: "objection-state",
				what: "An objection that is in that state already.",
				rule: "Open, then answered or accepted.",
				why: "Nothing would change.",
				remedy: "There is nothing to do."
			},
			{
				code: "error-found",
				what: "The check finds an error in the plan.",
				rule: "A plan with errors is not signed.",
				why: "It contradicts its own promise.",
				remedy: "Mend it; `leeway check` says how."
			},
			{
				code: "date-before",
				what: "A decision dated before an earlier one by the same person.",
				rule: "Decisions go forward in time.",
				why: "Which of them holds would be unclear.",
				remedy: "Name a later day."
			},
			{
				code: "empty-text",
				what: "A change, reason or objection without words.",
				rule: "What is logged is said.",
				why: "Later nobody knows what was meant.",
				remedy: "Say it in a sentence."
			}
		]
	}
];
// src/call/callRules.ts
/** Codes of problems with a call; those with a plan are in the library's `problemFamilies`. */
var callRules = {
	title: "Calling the command",
	rules: [
		{
			code: "missing-verb",
			what: "A call without a verb.",
			rule: "`leeway VERB ...`.",
			why: "There is nothing to do.",
			remedy: "Try `leeway help`."
		},
		{
			code: "unknown-verb",
			what: "A verb there is not.",
			rule: "`leeway help` lists them.",
			why: "It cannot be guessed.",
			remedy: "Take the one suggested."
		},
		{
			code: "missing-plan",
			what: "A verb without the plan it works on.",
			rule: "Plans come after the verb.",
			why: "There is nothing to read.",
			remedy: "Name the file, or `-` for standard input."
		},
		{
			code: "missing-word",
			what: "A verb without a word it needs, such as the task.",
			rule: "`leeway help VERB` shows the words.",
			why: "It cannot be told what is asked about.",
			remedy: "Add it."
		},
		{
			code: "extra-word",
			what: "More words than the verb takes.",
			rule: "`leeway help VERB` shows the words.",
			why: "It would be passed over.",
			remedy: "Leave it out."
		},
		{
			code: "missing-option",
			what: "A verb without an option it needs.",
			rule: "`leeway help VERB` marks the options it needs.",
			why: "It cannot be assumed.",
			remedy: "Add it."
		},
		{
			code: "option-missing",
			what: "A verb that writes needs to know for whom, when or which.",
			rule: "Every entry has its name and day.",
			why: "An entry without them is worth nothing later.",
			remedy: "Add the option named."
		},
		{
			code: "unknown-option",
			what: "An option the verb does not have.",
			rule: "`leeway help VERB` lists them.",
			why: "A misspelt option passed over would change the answer.",
			remedy: "Take the one suggested."
		},
		{
			code: "option-twice",
			what: "An option given twice.",
			rule: "Once.",
			why: "Which of them counts would depend on the order.",
			remedy: "Keep one."
		},
		{
			code: "option-clash",
			what: "Options that exclude each other.",
			rule: "One at a time.",
			why: "They ask for different things.",
			remedy: "Leave one out."
		},
		{
			code: "option-both",
			what: "Two options that choose the same thing.",
			rule: "One of them chooses.",
			why: "They may name different ones.",
			remedy: "Keep one of them."
		},
		{
			code: "option-alone",
			what: "An option that belongs to another one, without it.",
			rule: "The message names the other.",
			why: "By itself it says nothing.",
			remedy: "Add the other, or leave it out."
		},
		{
			code: "output-clash",
			what: "Text and JSON on the same output.",
			rule: "One answer on standard output.",
			why: "Neither could be read.",
			remedy: "Name a file for one, or leave `--json` out."
		},
		{
			code: "repeated-plan",
			what: "Standard input for two plans.",
			rule: "It can be read once.",
			why: "The second would be empty.",
			remedy: "Name a file for the other."
		},
		{
			code: "repeated-input",
			what: "Standard input for the plan and the answers.",
			rule: "It can be read once.",
			why: "One of them would be empty.",
			remedy: "Name a file for one of them."
		},
		{
			code: "call",
			what: "Options of this verb that do not go together.",
			rule: "The message names the rule.",
			why: "They ask for different things.",
			remedy: "Correct the call as the message says."
		},
		{
			code: "unreadable",
			what: "A file that cannot be opened.",
			rule: "It is there and may be read.",
			why: "There is nothing to work on.",
			remedy: "Check the name and who may read it."
		},
		{
			code: "unwritable",
			what: "A file or folder that cannot be written.",
			rule: "It may be written to.",
			why: "The result would be lost.",
			remedy: "Choose another place."
		},
		{
			code: "write-protected",
			what: "A file says that nobody writes to it.",
			rule: "A file that is write-protected is not overwritten, `--force` or not.",
			why: "Whoever protected it meant it.",
			remedy: "Take the protection off it, or choose another place."
		},
		{
			code: "file-exists",
			what: "A file of that name is there already.",
			rule: "Nothing is overwritten unasked.",
			why: "Somebody's work could be lost.",
			remedy: "Name another, or add `--force`."
		},
		{
			code: "changed-meanwhile",
			what: "The plan changed between reading and writing.",
			rule: "What is written rests on what was read.",
			why: "Somebody else's change would be lost.",
			remedy: "Look at it, and try again."
		},
		{
			code: "locked",
			what: "Another call is writing to the same plan.",
			rule: "One at a time.",
			why: "Entries would be mixed.",
			remedy: "Wait; if none runs, remove the lock named."
		},
		{
			code: "needs-file",
			what: "Standard input where a file is needed.",
			rule: "What is written beside a plan needs its place.",
			why: "There is nowhere to write.",
			remedy: "Name the plan's file."
		},
		{
			code: "no-file",
			what: "The notebook on standard input.",
			rule: "It is bound to a file.",
			why: "Changes could not be saved.",
			remedy: "Name the file of the plan."
		},
		{
			code: "no-notebook",
			what: "The page has not been built.",
			rule: "`leeway open` serves the built page.",
			why: "There is nothing to show.",
			remedy: "Run `npm run setup` once."
		},
		{
			code: "not-served",
			what: "The page could not be served on this machine.",
			rule: "A free port on loopback.",
			why: "Most often the port is taken.",
			remedy: "Name another `--port`."
		},
		{
			code: "no-terminal",
			what: "Questions where nobody can answer.",
			rule: "Questions need a terminal.",
			why: "It would wait for ever.",
			remedy: "Add `--yes` for the defaults."
		},
		{
			code: "nothing-to-ask",
			what: "An item without the estimate asked about.",
			rule: "The message lists what it has.",
			why: "There is nothing to ask.",
			remedy: "Name another."
		},
		{
			code: "unfinished",
			what: "An interview that was left before its end.",
			rule: "All of it, or none.",
			why: "Half an estimate is none.",
			remedy: "Answer all of it, or use `--answers`."
		},
		{
			code: "no-rows",
			what: "A sheet for somebody who has nothing to estimate.",
			rule: "A sheet asks about their tasks.",
			why: "It would be empty.",
			remedy: "Add `--all`."
		},
		{
			code: "no-opinions",
			what: "Nobody has been asked about this item.",
			rule: "There is something to pool.",
			why: "There is nothing to put together.",
			remedy: "Ask with `leeway interview`."
		},
		{
			code: "which-estimate",
			what: "Several estimates of an item, and it is not said which is meant.",
			rule: "One is settled at a time.",
			why: "The wrong one could change.",
			remedy: "Add `--of`."
		},
		{
			code: "unknown-schema",
			what: "A schema of something that has none.",
			rule: "The message lists them.",
			why: "There is nothing to print.",
			remedy: "Name one of them."
		}
	]
};
// src/call/codeHelp.ts
var problems = [...problemFamilies, callRules].flatMap(({ rules }) => rules);
/** Every code `help` knows: those of problems and those of findings. */
var codes = [...problems.map(({ code }) => code), ...require_checkRules.checkRules.map(({ code }) => code)];
/** What stands behind a code, in sentences of at most `width` columns; undefined when there is no such code. */
function codeHelp(code, width) {
	const problem = problems.find((rule) => rule.code === code);
	const finding = require_checkRules.checkRules.find((rule) => rule.code === code);
	const parts = [...problem === void 0 ? [] : [
		`${code}: a problem`,
		problem.what,
		`The rule: ${problem.rule}`,
		`Why: ${problem.why}`,
		`The way out: ${problem.remedy}`
	], ...finding === void 0 ? [] : [
		`${code}: a finding of \`leeway check\` (${finding.severity})`,
		`${finding.what}.`,
		`Why: ${finding.why}`,
		`The way out: ${finding.advice}`,
		/^Common practice/.test(finding.source) ? finding.source : `Source: ${finding.source}`
	]];
	if (parts.length === 0) return void 0;
	return `${parts.flatMap((part) => require_program.wrap(part, width)).join("\n")}\n`;
}
exports.codeHelp = codeHelp;
exports.codes = codes;
