/**
 * Lines that take turns with shorter ones keep the room of the longest, as long as their width stays: what is below them
 * does not move, and need not be painted anew, each time one gives way to another. The style sheet makes `--kept` their least
 * height, on the screen.
 */
export class KeptHeight {
  /** Undefined until its size is told. */
  #kept = new Map<HTMLElement, { width: number; height: number } | undefined>();
  #sizes = new ResizeObserver((entries) => {
    for (const { target, contentRect } of entries) {
      if (!(target instanceof HTMLElement) || !this.#kept.has(target)) continue;
      const { width, height } = contentRect;
      const kept = this.#kept.get(target);
      if (kept !== undefined && kept.width !== width) {
        // What it needs at another width is told anew.
        target.style.removeProperty("--kept");
        this.#kept.set(target, { width, height: 0 });
      } else if (kept === undefined || kept.height < height) {
        target.style.setProperty("--kept", `${height}px`);
        this.#kept.set(target, { width, height });
      }
    }
  });

  /** From now on these, and no others. */
  watch(elements: Iterable<HTMLElement>): void {
    const wanted = new Set(elements);
    for (const one of this.#kept.keys()) if (!wanted.has(one)) this.#drop(one);
    for (const one of wanted) {
      if (this.#kept.has(one)) continue;
      this.#kept.set(one, undefined);
      this.#sizes.observe(one);
    }
  }

  /** What was long belongs to another plan. */
  forget(): void {
    for (const one of [...this.#kept.keys()]) this.#drop(one);
  }

  end(): void {
    this.forget();
    this.#sizes.disconnect();
  }

  #drop(one: HTMLElement): void {
    this.#kept.delete(one);
    this.#sizes.unobserve(one);
    one.style.removeProperty("--kept");
  }
}
