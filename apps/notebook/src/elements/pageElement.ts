import { LitElement } from "lit";

/**
 * The base of every element here: it renders into the page itself, not into a shadow root. One style sheet
 * then sets the whole report, labels and descriptions may refer across elements, and print is plain.
 */
export class PageElement extends LitElement {
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  /** Draws before the next key or click can come: for what a reader opens in order to type into it. */
  protected drawNow(): void {
    this.performUpdate();
  }

  /** Draws what still waits to be drawn: paper is printed as it is at that moment. */
  drawForPaper(): void {
    if (this.isUpdatePending) this.performUpdate();
  }
}
