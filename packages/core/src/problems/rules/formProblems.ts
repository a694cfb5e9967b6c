import type { ProblemRule } from "../types.ts";

/** The form of the document. */
export const formProblems: readonly ProblemRule[] = [
  {
    code: "unknown-key",
    what: "A key the format does not know at this place.",
    rule: "Every key is one of those the format lists.",
    why: "A misspelt key that is passed over changes the answer without a word.",
    remedy: "Correct it to the one suggested, or use `notes` for what is only to be kept.",
  },
  {
    code: "missing-key",
    what: "A key that this part cannot do without.",
    rule: "What is required is written.",
    why: "There is no value that could be assumed.",
    remedy: "Add it; the message says what it is.",
  },
  {
    code: "repeated-key",
    what: "The same key twice in one object.",
    rule: "A key stands once.",
    why: "Which of the two counts would depend on the reader.",
    remedy: "Keep one of the two.",
  },
  {
    code: "wrong-type",
    what: "A value of another kind: text for a number, a list for an object, nothing at all.",
    rule: "Each key has its kind of value.",
    why: "Turning one kind into another guesses.",
    remedy: "Write it in the form the message shows.",
  },
  {
    code: "bad-format",
    what: "A text that is not of the form asked for: an id with capitals, a date written another way, an empty text.",
    rule: "Ids are small letters, digits and hyphens, dates `2027-03-01`, texts not empty.",
    why: "Ids address draws and dates place work; both must be read in one way only.",
    remedy: "Write it as the message shows.",
  },
  {
    code: "out-of-range",
    what: "A number or date outside what makes sense there.",
    rule: "Each number has bounds, such as a chance from 0 to 1.",
    why: "Outside them the simulation would mean nothing.",
    remedy: "Write a value within the bounds named.",
  },
  {
    code: "not-a-choice",
    what: "A word that is none of those allowed.",
    rule: "The message lists the words.",
    why: "An unknown word cannot be acted on.",
    remedy: "Take one of them; the nearest is suggested.",
  },
  {
    code: "too-few",
    what: "A list is shorter than it may be, such as a plan without tasks; or too few past plans for what was asked.",
    rule: "Some lists need their first items.",
    why: "There is nothing to reckon with.",
    remedy: "Add what the message names.",
  },
  {
    code: "too-many",
    what: "A list, a table or an estimate has more than it may: more than three values, 500 columns, 200,000 rows.",
    rule: "Lists have limits.",
    why: "Beyond them it is damage or another kind of file.",
    remedy: "Leave out what is too much.",
  },
  {
    code: "number-as-text",
    what: "A text that YAML reads as a number, such as a name 2027.",
    rule: "A text that looks like a number stands between quotes.",
    why: "007 would become 7.",
    remedy: "Put it between quotes.",
  },
  {
    code: "grouped-digits",
    what: "A number with its thousands apart, such as 1,000 or 1 000.",
    rule: "Digits stand together.",
    why: "In other countries 1,000 is one.",
    remedy: "Write 1000.",
  },
  {
    code: "no-such-date",
    what: "A date no calendar has, such as 30 February.",
    rule: "The day exists.",
    why: "Moving it to the next day would change the plan silently.",
    remedy: "Write a day that exists.",
  },
];
