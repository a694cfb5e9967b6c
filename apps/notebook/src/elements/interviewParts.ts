// What an interview needs of the library, apart from the rest: it is loaded when somebody begins one.
export { answerInterview, askableOf, beginInterview, INTERVIEW_ORDER, writeOpinion } from "@leeway/core";
