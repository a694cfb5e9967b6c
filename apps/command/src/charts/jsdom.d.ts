/** The little of jsdom that is used: it brings no types of its own. */
declare module "jsdom" {
  export class JSDOM {
    constructor(html: string);
    readonly window: { readonly document: Document };
  }
}
