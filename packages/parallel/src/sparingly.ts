/** At most so many messages a second: more would cost the listener more than they tell. */
const perSecond = 20;

/** The same listener, told at most twenty times a second and always of the end. */
export function sparingly(
  tell: (done: number, total: number) => void,
): (done: number, total: number) => void {
  let told = Number.NEGATIVE_INFINITY;
  return (done, total) => {
    const now = performance.now();
    if (now - told < 1000 / perSecond && done < total) return;
    told = now;
    tell(done, total);
  };
}
