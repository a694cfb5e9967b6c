/**
 * Tells which section the reader is at: the last whose top has passed the upper third of the window.
 * Returns a function that ends it.
 */
export function inView(sections: Iterable<Element>, at: (id: string) => void): () => void {
  const list = [...sections];
  const tell = (): void => {
    const line = innerHeight / 3;
    const passed = list.filter((section) => section.getBoundingClientRect().top <= line);
    const current = passed.at(-1) ?? list[0];
    if (current !== undefined) at(current.id);
  };
  let due = false;
  const later = (): void => {
    if (due) return;
    due = true;
    requestAnimationFrame(() => {
      due = false;
      tell();
    });
  };
  addEventListener("scroll", later, { passive: true });
  addEventListener("resize", later);
  return () => {
    removeEventListener("scroll", later);
    removeEventListener("resize", later);
  };
}
