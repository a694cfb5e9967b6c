/** One change to the plan document. `value` undefined takes away what stands at `path`. */
export interface Edit {
  path: string;
  value: unknown;
  /** The value becomes an item of the list at `path`: before the one at this place, or last. */
  add?: number | "last";
  /** The item at this place of the list at `path` and the one behind it change places ... */
  swap?: number;
  /** ... or it goes to this place, and those it passes move up. */
  to?: number;
  /** What `path` leads into may be written as its id alone, and is made an object whose key this is, when more is said. */
  names?: "id" | "task";
}
