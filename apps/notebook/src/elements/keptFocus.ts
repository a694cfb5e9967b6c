import type { ReactiveController, ReactiveControllerHost } from "lit";

/**
 * A button that leaves while it has the focus (Stop, once the work is done) leaves a reader without a pointer nowhere.
 * The focus goes to what takes its place, otherwise to the control before it, which at the top of a section is its
 * heading, otherwise to the one after.
 */
export class KeptFocus implements ReactiveController {
  #host: ReactiveControllerHost & Element;
  #held: { one: HTMLButtonElement; all: HTMLElement[] } | undefined;

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    host.addController(this);
  }

  hostUpdate(): void {
    const one = document.activeElement;
    const inside = one instanceof HTMLButtonElement && this.#host.contains(one);
    this.#held = inside ? { one, all: this.#stops() } : undefined;
  }

  hostUpdated(): void {
    const held = this.#held;
    this.#held = undefined;
    if (held === undefined || (held.one.isConnected && !held.one.disabled)) return;
    // Only now: whether something can be seen is known after the layout of the page, which costs.
    const now = this.#stops().filter((one) => !one.matches(":disabled") && one.checkVisibility());
    const before = held.all.slice(0, held.all.indexOf(held.one)).findLast((one) => now.includes(one));
    const follows = now[before === undefined ? 0 : now.indexOf(before) + 1];
    const instead = follows !== undefined && !held.all.includes(follows) ? follows : (before ?? follows);
    instead?.focus();
  }

  /** Where Tab may stop in the section, in order. */
  #stops(): HTMLElement[] {
    const scope = this.#host.closest("section[id]") ?? this.#host;
    return [...scope.querySelectorAll<HTMLElement>("button, a[href], input, select, textarea, summary")];
  }
}
