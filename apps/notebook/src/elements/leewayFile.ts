import { html, nothing } from "lit";
import type { Keeper, KeeperState } from "../keeping/keeper.ts";
import { momentWords } from "../words/momentWords.ts";
import { PageElement } from "./pageElement.ts";

/** Which file this is and how safe it is: one line, with open and save. */
export class LeewayFile extends PageElement {
  static override properties = { keeper: { attribute: false }, state: { state: true } };
  keeper: Keeper | undefined;
  state: KeeperState | undefined;
  #end: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener("beforeunload", this.#leaving);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener("beforeunload", this.#leaving);
    this.#end?.();
    this.#end = undefined;
  }

  /** The browser asks before it closes the only place where the plan is. */
  #leaving = (event: Event): void => {
    if (this.state !== undefined && atRisk(this.state)) event.preventDefault();
  };

  protected override willUpdate(): void {
    const { keeper } = this;
    if (keeper === undefined || this.#end !== undefined) return;
    this.state = keeper.state;
    this.#end = keeper.subscribe(() => {
      this.state = keeper.state;
    });
  }

  protected override render() {
    const { keeper, state } = this;
    if (keeper === undefined || state === undefined) return nothing;
    return html`<div class="file" role="group" aria-label="This plan's file">
        <p class="file-state">
          ${state.safety.kind === "example" ? nothing : html`<strong>${state.name}</strong>`}
          <span class="quiet" id="safety">${safetyWords(state)}</span>
        </p>
        <div class="file-actions">
          <button type="button" @click=${() => keeper.open()}>Open …</button>
          <button type="button" @click=${() => keeper.save(false)}>Save</button>
          <button type="button" @click=${() => keeper.save(true)}>Save as …</button>
        </div>
      </div>
      ${state.safety.kind === "moved-on" ? movedOn(keeper) : nothing}
      ${
        atRisk(state)
          ? html`<div class="message" role="alert"><p>${state.safety.words}</p>${downloads(keeper)}</div>`
          : nothing
      }
      <p class="file-told" role="status">${state.told ?? ""}</p>
      ${state.offered ? downloads(keeper) : nothing}`;
  }
}

/** Neither the browser nor a file has it as it stands. */
function atRisk(state: KeeperState): state is KeeperState & { safety: { kind: "unkept"; words: string } } {
  return state.safety.kind === "unkept" && state.fileDiffers !== false;
}

function downloads(keeper: Keeper) {
  return html`<button type="button" @click=${() => keeper.download()}>Download the plan</button>`;
}

function movedOn(keeper: Keeper) {
  return html`<div class="message" role="alert">
    <p>It was saved elsewhere, in another tab or by another program, while you changed it here. Nothing is lost: whichever you leave is kept among the versions.</p>
    <button type="button" @click=${() => keeper.settle("mine")}>Go on with this one</button>
    <button type="button" @click=${() => keeper.settle("theirs")}>Take the other one</button>
  </div>`;
}

function safetyWords({ safety, fileDiffers, place }: KeeperState): string {
  const file = fileDiffers === true ? " Not saved to its file yet." : "";
  switch (safety.kind) {
    case "example":
      return "An example to try things on. Change anything: it is kept in this browser from then on.";
    case "keeping":
      return `Keeping your change …${file}`;
    case "kept":
      return `${place}, ${momentWords(safety.at)}.${file}`;
    case "unkept":
      return fileDiffers === false ? "Not kept in this browser; its file has it." : "Not kept.";
    case "moved-on":
      return "Changed in two tabs.";
  }
}

customElements.define("leeway-file", LeewayFile);
