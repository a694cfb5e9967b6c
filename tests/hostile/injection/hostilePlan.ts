import { readFileSync } from "node:fs";
import { planJsonSchema } from "@leeway/core";
import { parse } from "yaml";
import { corpus } from "./corpus.ts";

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
interface Schema {
  $ref?: string;
  $defs?: Record<string, Schema>;
  type?: string | string[];
  pattern?: string;
  properties?: Record<string, Schema>;
  additionalProperties?: Schema | boolean;
  items?: Schema;
  anyOf?: Schema[];
  oneOf?: Schema[];
}

/** A plan with every key of the format (a test of the schema keeps it so). */
const complete = new URL("../../contract/plan/fixtures/complete.plan.yaml", import.meta.url);

/** Names by which one part of a plan refers to another that is given no id: they stay as they are. */
const references = new Set(["like", "calendar", "unbroken", "estimatedBy", "enteredBy"]);
/** Keys that contradict others beside them: they are filled where they stand, and not added. */
const notAdded = new Set(["phase", "unit", "worth"]);

export interface HostilePlan {
  /** A JSON document. */
  text: string;
  /** What each field of free text says. */
  said: string[];
}

/** Text n of the corpus into field n + turn: as many turns as there are texts put every text into every field. */
export function hostilePlan(turn: number, texts: readonly string[] = Object.values(corpus)): HostilePlan {
  return planSaying((field) => texts[(field + turn) % texts.length] ?? "");
}

/**
 * The complete plan with a text in every field that the published schema calls free text, those included that the plan
 * leaves out.
 *
 * @param say  What field n says, counted from 0.
 */
export function planSaying(say: (field: number) => string): HostilePlan {
  const schema = planJsonSchema() as Schema; // plain JSON, of the keywords named above
  const plan = runnable(parse(readFileSync(complete, "utf8")));
  /** Equal texts stay equal: a task names its phase. */
  const known = new Map<string, string>();
  const next = (before: string): string => {
    const text = known.get(before) ?? say(known.size);
    known.set(before, text);
    return text;
  };
  const resolved = (one: Schema): Schema =>
    one.$ref === undefined ? one : resolved(schema.$defs?.[one.$ref.replace("#/$defs/", "")] ?? {});

  function walk(value: Json | undefined, of: Schema, path: string): Json | undefined {
    const one = resolved(of);
    const ways = one.anyOf ?? one.oneOf;
    if (ways !== undefined) return walkOneOf(value, ways, path);
    if (isFreeText(one)) return value === undefined ? next(path) : next(`${value}`);
    if (Array.isArray(value))
      return value.map((each, at) => walk(each, one.items ?? {}, `${path}[${at}]`) ?? each);
    if (value === null || typeof value !== "object") return value;
    const keys = new Set([...Object.keys(value), ...freeTexts(one)]);
    const { additionalProperties: rest } = one;
    return Object.fromEntries(
      [...keys].flatMap((key) => {
        const inner = one.properties?.[key] ?? (typeof rest === "object" ? rest : {});
        const walked = references.has(key) ? value[key] : walk(value[key], inner, `${path}.${key}`);
        return walked === undefined ? [] : [[key, walked]];
      }),
    );
  }

  /** One value where a list is allowed, or one of several forms: the first whose kind and keys fit. */
  function walkOneOf(value: Json | undefined, ways: Schema[], path: string): Json | undefined {
    const fits = (way: Schema): boolean => {
      const { type, properties } = resolved(way);
      if (Array.isArray(value)) return type === "array";
      if (typeof value === "object" && value !== null)
        return type === "object" && Object.keys(value).every((key) => properties?.[key] !== undefined);
      return type !== "array" && type !== "object";
    };
    const way = ways.find(fits);
    return way === undefined || value === undefined ? value : walk(value, way, path);
  }

  const freeTexts = (one: Schema): string[] =>
    Object.entries(one.properties ?? {}).flatMap(([key, each]) =>
      isFreeText(resolved(each)) && !notAdded.has(key) ? [key] : [],
    );

  const data = walk(plan, schema, "");
  return { text: JSON.stringify(data, undefined, 1), said: [...known.values()] };
}

/** It is a plan to read: one of its tasks would find no day on which to be done whole. */
function runnable(plan: { tasks: { id: string; unbroken?: string }[] } & { [key: string]: Json }): Json {
  return { ...plan, iterations: 40, tasks: plan.tasks.map(({ unbroken: _, ...task }) => task as Json) };
}

/** What the schema says of a text a person writes: anything but blanks. An id, a date or a word of a list is none. */
function isFreeText({ type, pattern }: Schema): boolean {
  return Array.isArray(type) && type.includes("string") && type.includes("number") && pattern === "\\S";
}
