import { HEAD, TASK } from "../plans.ts";

export interface Broken {
  name: string;
  text: string;
  code: string;
  path: string;
  /** What the message holds. */
  says: string;
  /** First place in the text where the problem points to. */
  at?: string;
  severity?: "warning";
}

/** One document for each rule, with the least beside it. */
export const plan = (
  name: string,
  more: string,
  code: string,
  path: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken => ({
  name,
  text: `${HEAD}${more}${/^tasks:/m.test(more) ? "" : `\n${TASK}`}`,
  code,
  path,
  says,
  ...extra,
});
export const task = (
  name: string,
  keys: string,
  code: string,
  key: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken =>
  plan(
    name,
    `tasks:\n  - { id: a, name: A, ${keys} }\n`,
    code,
    key === "" ? "tasks[0]" : `tasks[0].${key}`,
    says,
    extra,
  );
export const risk = (
  name: string,
  keys: string,
  code: string,
  key: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken =>
  plan(
    name,
    `risks:\n  - { id: r, name: R, ${keys} }`,
    code,
    key === "" ? "risks[0]" : `risks[0].${key}`,
    says,
    extra,
  );
export const pair = (
  name: string,
  second: string,
  code: string,
  path: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken =>
  plan(
    name,
    `tasks:\n  - { id: a, name: A, duration: 1 }\n  - { id: b, name: B, duration: 1, ${second} }\n`,
    code,
    path,
    says,
    extra,
  );
