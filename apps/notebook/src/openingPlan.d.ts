declare module "virtual:opening-plan" {
  /** The plan document that the page opens on. */
  export const text: string;
  /** The same as plain data. */
  export const stated: unknown;
}
