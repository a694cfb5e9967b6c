import { PageElement } from "./pageElement.ts";

/**
 * The base of sections with many rows. Each redraws in a task of its own, so that the page answers the reader
 * between one and the next.
 */
export class LongElement extends PageElement {
  protected override async scheduleUpdate(): Promise<void> {
    await new Promise((resolve) => setTimeout(resolve, 0));
    await super.scheduleUpdate();
  }
}
