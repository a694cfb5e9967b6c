/**
 * A required key of a draft that was read without an error. The reader has reported it where it is missing,
 * so a throw here is a defect of the reader, never of a plan.
 */
export function must<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("the reader let a missing key pass");
  return value;
}

type Present<T> = { [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined> } & {
  [K in keyof T as undefined extends T[K] ? never : K]: T[K];
};

/** The object without its undefined keys. */
export function present<T extends object>(from: T): Present<T> {
  const result: Partial<Record<keyof T, unknown>> = {};
  for (const key of Object.keys(from) as (keyof T)[]) if (from[key] !== undefined) result[key] = from[key];
  // Only keys whose value is undefined were dropped, which is what `Present` says.
  return result as unknown as Present<T>;
}
