import { type Estimate, estimateMean, estimateQuantile, lawOf } from "@leeway/core";
import { formatMoney } from "../words/formatMoney.ts";
import { groupDigits } from "../words/groupDigits.ts";

/** What an estimate is of, for its words. */
export interface EstimateAbout {
  /** "Permit decided" */
  name: string;
  /** `working days`, `weeks`, `person-days`, or a currency code. */
  unitWords: string;
  /** `delays` and money may be below nothing; what takes time may not, and is cut at zero by the forecast. */
  of: "takes" | "delays" | "costs";
}

/** The one-in-ten reading of an estimate, in its own unit, as the forecast draws it. */
export interface EstimateReading {
  p10: number;
  half: number;
  p90: number;
  mean: number;
  /** The chance below zero that counts as zero; 0 where nothing is cut. */
  cut: number;
  /** A number of it in words, without its unit; as many digits as the width of the range bears. */
  short: (value: number) => string;
  /** The same with its unit. */
  full: (value: number) => string;
}

/** Draws behind the mean of what is cut at zero: even steps of chance, exact to a thousandth of the range. */
const STEPS = 2000;

/** One estimate as it is read in words: its one-in-ten values, half, mean, and what is cut at zero; in its own unit. */
export function estimateReading(estimate: Estimate, about: EstimateAbout): EstimateReading {
  const cuts = about.of === "takes";
  const kept = (value: number) => (cuts ? Math.max(0, value) : value);
  const [p10, half, p90] = [0.1, 0.5, 0.9].map((p) => kept(estimateQuantile(estimate, p))) as [
    number,
    number,
    number,
  ];
  const law = estimate.kind === "range" ? lawOf(estimate) : undefined;
  const cut = cuts && law !== undefined && law.min < 0 ? law.cdf(0) : 0;
  let mean = estimateMean(estimate);
  if (cut > 0 && law !== undefined) {
    mean = 0;
    for (let k = 0; k < STEPS; k++) mean += Math.max(0, law.quantile((k + 0.5) / STEPS)) / STEPS;
  }
  const decimals = p90 > p10 ? Math.max(0, Math.min(6, 1 - Math.floor(Math.log10(p90 - p10) + 1e-9))) : 6;
  const short = (value: number) => digits(value, decimals);
  const currency = /^[A-Z]{3}$/.test(about.unitWords) ? about.unitWords : undefined;
  const full = (value: number) => {
    if (currency !== undefined) return formatMoney(value, currency);
    const said = short(value);
    return `${said} ${said === "1" ? about.unitWords.replace(/s$/, "") : about.unitWords}`;
  };
  return { p10, half, p90, mean, cut, short, full };
}

function digits(value: number, decimals: number): string {
  const text = groupDigits(value, decimals);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** "One time in ten it takes less than 6 working days, one in ten more than 19; the average is 11 working days". */
export function oneInTenSentence(reading: EstimateReading, about: EstimateAbout): string {
  const { p10, p90, mean, short, full } = reading;
  const { of } = about;
  const does = of === "takes" ? "takes" : of === "costs" ? "costs" : "delays by";
  if (p10 === p90) return `It always ${does} ${full(mean)}`;
  const low =
    reading.cut > 0.1
      ? `One time in ten or more it ${of === "delays" ? "does not delay" : `${does} nothing`}`
      : `One time in ten it ${does} less than ${full(p10)}`;
  return `${low}, one in ten more than ${short(p90)}; average ${full(mean)}`;
}
