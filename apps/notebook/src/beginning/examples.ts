import foodBank from "../../../../examples/brackenford-food-bank.plan.yaml?raw";
import ferry from "../../../../examples/ostrel-ferry-ticketing.plan.yaml?raw";
import clinic from "../../../../examples/quillmarsh-clinic.plan.yaml?raw";

/** The example plans, all invented. */
export const examples = { clinic, "food-bank": foodBank, ferry };
export type ExampleName = keyof typeof examples;
