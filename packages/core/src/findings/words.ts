/** `a, b and c`. */
export function joined(words: readonly string[], last = "and"): string {
  const [end] = words.slice(-1);
  return words.length < 2 ? (end ?? "") : `${words.slice(0, -1).join(", ")} ${last} ${end}`;
}

/** `1 working day`, `2.5 working days`. */
export function daysText(days: number): string {
  const rounded = Math.round(days * 10) / 10;
  return `${rounded} working ${rounded === 1 ? "day" : "days"}`;
}

/** A share as `12 %`, rounded once, as everywhere; never `0 %` or `100 %` for what is not. */
export function percentText(share: number): string {
  const whole = Math.round(share * 100);
  const told = (whole === 0 && share > 0) || (whole === 100 && share < 1) ? oneDigit(share) : whole;
  return `${told} %`;
}

function oneDigit(share: number): number {
  return Math.round(share * 1000) / 10;
}

/** The first few names and how many more: `A, B, C and 4 more`. */
export function fewNames(names: readonly string[], most = 4): string {
  return names.length <= most + 1
    ? joined(names)
    : `${names.slice(0, most).join(", ")} and ${names.length - most} more`;
}

/** Whole money with the plan's currency, `EUR 640,000`. */
export function moneyText(value: number, currency: string): string {
  return `${currency} ${String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ",")}`;
}

/** A share of the futures of one run; of a finite number, so none of them is said as that and not as never. */
export function futuresText(share: number, iterations: number): string {
  return share > 0
    ? `in ${percentText(share)} of the futures`
    : `in none of ${iterations === 1 ? "1 future" : `${iterations} futures`}`;
}
