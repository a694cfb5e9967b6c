import {
  html,
  nothing,
  type ReactiveController,
  type ReactiveControllerHost,
  type TemplateResult,
} from "lit";
import { sectionKeyWords } from "./sectionKeys.ts";

const key = "leeway-folded";

/**
 * Sections of the page that fold: a button in their heading, and the reader's choice kept in their own browser. A
 * folded section is found by the browser's search, and unfolds for it and for any link that leads into it; on paper
 * nothing is folded (print.css).
 *
 * Source: disclosure pattern of the WAI-ARIA Authoring Practices; `hidden="until-found"` and `beforematch` of the HTML
 * standard, which a browser that knows neither takes as plain `hidden`. Recalled.
 */
export class Folding implements ReactiveController {
  #host: ReactiveControllerHost & Element;
  #folded: ReadonlySet<string> = recall();

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    document.addEventListener("click", this.#follow, true);
    addEventListener("hashchange", this.#arrive);
  }

  hostDisconnected(): void {
    document.removeEventListener("click", this.#follow, true);
    removeEventListener("hashchange", this.#arrive);
  }

  /** A section with its heading, open or folded. */
  section(id: string, title: string, body: unknown): TemplateResult {
    const folded = this.#folded.has(id);
    return html`<section id=${id} aria-labelledby="${id}-title">
      <h2 id="${id}-title"><button type="button" class="fold" aria-expanded=${folded ? "false" : "true"} aria-controls="${id}-body" aria-describedby="section-keys"
        @click=${() => this.#set(id, !this.#folded.has(id))}>${title}</button><span class="section-keys" aria-hidden="true" data-words=${sectionKeyWords}></span></h2>
      <div class="fold-body" id="${id}-body" hidden=${folded ? "until-found" : nothing}
        @beforematch=${() => this.#set(id, false)}>${body}</div>
    </section>`;
  }

  #set(id: string, folded: boolean): void {
    if (this.#folded.has(id) === folded) return;
    const next = new Set(this.#folded);
    if (folded) next.add(id);
    else next.delete(id);
    this.#folded = next;
    keep(next);
    this.#host.requestUpdate();
  }

  /** A link leads somewhere: it has to be in sight before the browser goes there. */
  #follow = (event: Event): void => {
    const link = event.target instanceof Element ? event.target.closest("a[href^='#']") : null;
    if (link !== null) this.#unfoldFor(link.getAttribute("href") ?? "");
  };

  #arrive = (): void => this.#unfoldFor(location.hash);

  #unfoldFor(hash: string): void {
    const target = hash.length > 1 ? document.getElementById(decoded(hash.slice(1))) : null;
    const section = target?.closest<HTMLElement>("section[id]");
    if (section === null || section === undefined || !this.#folded.has(section.id)) return;
    // At once, and not with the next update: the browser scrolls before that.
    section.querySelector(":scope > .fold-body")?.removeAttribute("hidden");
    this.#set(section.id, false);
  }
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function recall(): ReadonlySet<string> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "[]");
    return new Set(Array.isArray(kept) ? kept.filter((one) => typeof one === "string") : []);
  } catch {
    return new Set(); // storage refused, or not ours: everything is open
  }
}

function keep(folded: ReadonlySet<string>): void {
  try {
    if (folded.size === 0) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify([...folded]));
  } catch {
    // Storage refused or full: it holds for this visit.
  }
}
