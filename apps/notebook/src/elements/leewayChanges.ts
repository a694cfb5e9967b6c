import { hasSums, meaningOfMoves, movedSentence, standsSentences } from "@leeway/charts";
import { html, nothing } from "lit";
import { begunHere } from "../keeping/begunHere.ts";
import type { Keeper, KeeperState } from "../keeping/keeper.ts";
import type { KeptVersion } from "../keeping/shelf.ts";
import { momentWords } from "../words/momentWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { AskingElement } from "./askingElement.ts";

/** The most versions listed; the rest is a click away. */
const listed = 8;

/** What moved since an earlier version, and the versions there are: pin one, compare with one, go back to one. */
export class LeewayChanges extends AskingElement<"compare"> {
  static override properties = {
    ...AskingElement.properties,
    keeper: { attribute: false },
    opening: { attribute: false },
    origin: { attribute: false },
    lastText: { attribute: false },
    kept: { state: true },
    since: { state: true },
    all: { state: true },
  };
  keeper: Keeper | undefined;
  /** The text the page opened on. */
  opening = "";
  /** The text this plan came with, if later: what changes are told against until the reader picks another. */
  origin = "";
  /** The text before the last change that was answered. */
  lastText: string | undefined;
  kept: KeeperState | undefined;
  /** Key of the version compared with; "last": the text before the last change; undefined: the last pinned one, else the text the plan came with. */
  since: number | "last" | undefined;
  all = false;
  #endKeeper: (() => void) | undefined;

  protected readonly kind = "compare";
  protected readonly doing = "Taking the changes apart";

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#endKeeper?.();
    this.#endKeeper = undefined;
  }

  protected override willUpdate(): void {
    const { keeper } = this;
    if (keeper === undefined || this.#endKeeper !== undefined) return;
    this.kept = keeper.state;
    this.#endKeeper = keeper.subscribe(() => {
      this.kept = keeper.state;
    });
  }

  /** Tells what the last change moved: what the answer says beside the link that leads here. */
  showLast(): void {
    this.since = "last";
  }

  #base(): { text: string; words: string; key?: number } {
    if (this.since === "last" && this.lastText !== undefined)
      return { text: this.lastText, words: "your last change" };
    const versions = this.kept?.versions ?? [];
    const chosen =
      versions.find(({ key }) => key === this.since) ?? versions.find(({ pin }) => pin !== undefined);
    if (chosen === undefined) {
      const begun = versions.some(({ why, text }) => why === begunHere && text === this.origin);
      const words = this.origin === this.opening ? "this page was opened" : "this plan was opened";
      return { text: this.origin, words: begun ? "this plan was begun" : words };
    }
    return {
      text: chosen.text,
      words: versionName(chosen),
      ...(chosen.key === undefined ? {} : { key: chosen.key }),
    };
  }

  protected question() {
    return { kind: "compare" as const, old: this.#base().text };
  }

  protected override render() {
    const { keeper, kept } = this;
    if (keeper === undefined || kept === undefined) return nothing;
    const base = this.#base();
    return html`<div class="asking-line beside-heading">${this.status()}</div>
      <p class="note changes-since">${this.#since(base)}</p>
      ${this.#moved()}
      <form class="pin" @submit=${this.#pin}>
        <label>Name this version <input class="field text" name="pin" autocomplete="off" maxlength="80" /></label>
        <button type="submit">Pin it</button>
      </form>
      ${this.#versions(keeper, kept.versions, base.key)}`;
  }

  /** Since when, and the way from the last change to all of them and back. */
  #since(base: { words: string }) {
    const last = this.since === "last" && this.lastText !== undefined;
    const turn = (words: string, since: "last" | undefined) =>
      html`<button type="button" @click=${() => {
        this.since = since;
      }}>${words}</button>`;
    if (last) return html`What your last change moved. ${turn("All changes", undefined)}`;
    return html`What moved since ${base.words}. ${this.lastText === undefined ? nothing : turn("The last change alone", "last")}`;
  }

  #moved() {
    const answer = this.asked?.answer;
    if (answer === undefined) return nothing;
    const meaning = meaningOfMoves(answer);
    return html`<div class=${this.older || this.asked?.progress !== undefined ? "settling" : ""}>
      <p class="finding">${unbroken(movedSentence(answer))}</p>
      ${standsSentences(answer).map((sentence) => html`<p>${unbroken(sentence)}</p>`)}
      ${
        answer.moves.length === 0
          ? nothing
          : html`<div class="figures two">
              <leeway-figure chart="movesDays" .answer=${answer} theme=${this.theme}></leeway-figure>
              ${hasSums(answer) ? html`<leeway-figure chart="movesMoney" .answer=${answer} theme=${this.theme}></leeway-figure>` : nothing}
            </div>`
      }
      ${
        answer.alsoChanged.length === 0
          ? nothing
          : html`<details><summary>Changes that ${hasSums(answer) ? "move neither date nor sum" : "do not move the date"}: ${answer.alsoChanged.length}</summary>
              <ul>${answer.alsoChanged.map((change) => html`<li>${change}</li>`)}</ul></details>`
      }
      ${meaning === undefined ? nothing : html`<p class="note">${meaning}</p>`}
    </div>`;
  }

  #versions(keeper: Keeper, versions: readonly KeptVersion[], base: number | undefined) {
    if (versions.length === 0) {
      return html`<p class="quiet no-paper">No earlier version is kept yet. One is kept when you pin it, save to a file, and every few minutes while you work.</p>`;
    }
    const shown = this.all ? versions : versions.slice(0, listed);
    return html`<table class="levels versions">
        <caption>Versions kept in this browser, newest first</caption>
        <thead><tr><th scope="col">Version</th><th scope="col">Kept</th><th scope="col"><span class="unseen">What to do with it</span></th></tr></thead>
        <tbody>
          ${shown.map((version) => {
            const name = versionName(version);
            return html`<tr class=${version.key === base ? "committed" : ""}>
              <th scope="row">${version.pin ?? version.why}${version.key === base ? html`<span class="unseen">, compared with</span>` : nothing}</th>
              <td>${momentWords(version.at)}</td>
              <td class="version-actions">
                <button type="button" ?disabled=${version.key === base} @click=${() => {
                  this.since = version.key;
                }}>Compare<span class="unseen"> with ${name}</span></button>
                <button type="button" @click=${() => keeper.restore(version)}>Go back to it<span class="unseen">: ${name}</span></button>
                ${
                  version.pin === undefined || version.key === undefined
                    ? nothing
                    : html`<button type="button" @click=${() => keeper.unpin(version.key as number)}>Unpin<span class="unseen"> ${name}</span></button>`
                }
              </td>
            </tr>`;
          })}
        </tbody>
      </table>
      ${
        shown.length === versions.length
          ? nothing
          : html`<button type="button" @click=${() => {
              this.all = true;
            }}>Show all ${versions.length}</button>`
      }`;
  }

  #pin = (event: SubmitEvent): void => {
    event.preventDefault();
    const { target } = event;
    if (!(target instanceof HTMLFormElement)) return;
    const name = String(new FormData(target).get("pin") ?? "").trim();
    if (name === "") {
      target.querySelector("input")?.focus();
      return;
    }
    target.reset();
    this.since = undefined;
    void this.keeper?.pin(name);
  };
}

function versionName({ pin, why, at }: KeptVersion): string {
  return pin === undefined ? `the version ${why}, ${momentWords(at)}` : `“${pin}”, ${momentWords(at)}`;
}

customElements.define("leeway-changes", LeewayChanges);
