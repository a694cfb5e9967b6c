import { PageElement } from "./pageElement.ts";
import { pageTurns } from "./pageTurns.ts";

/**
 * The base of sections that follow the answer. Each redraws in a turn of its own, so that the page answers the
 * reader between one and the next.
 */
export class LongElement extends PageElement {
  protected override async scheduleUpdate(): Promise<void> {
    await new Promise<void>((resolve) => pageTurns.take(this, resolve));
    await super.scheduleUpdate();
  }
}
