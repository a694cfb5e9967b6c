/** One change to the plan document. `value` undefined takes away what stands at `path`. */
export interface Edit {
  path: string;
  value: unknown;
}
