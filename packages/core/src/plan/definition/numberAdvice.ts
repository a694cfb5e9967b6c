import type { NumberRange } from "./scalars.ts";

/** What to write where text such as `30%`, `1,5` or `210 000 EUR` stands for a number. */
export function advice(written: string, range: NumberRange): string | undefined {
  const text = written.trim();
  if (text.length > 60) return undefined;
  const percent = /^([-+]?\d+(?:[.,]\d+)?)\s*(?:%|percent|per cent)$/i.exec(text);
  if (percent) return `Write ${Number(((Number(point(percent[1])) || 0) / 100).toPrecision(12))}.`;
  const of = /^(\d+)\s*(?:\/|in|out of)\s*(\d+)$/i.exec(text);
  if (of && range.max === 1 && Number(of[2]) > 0)
    return `Write ${Number((Number(of[1]) / Number(of[2])).toPrecision(6))}.`;
  const span = /^(\d+(?:\.\d+)?)\s*(?:-|–|to|\.\.)\s*(\d+(?:\.\d+)?)$/.exec(text);
  if (span) return `Write low, likely and high: [${span[1]}, ..., ${span[2]}].`;
  const days = /^([-+]?\d+(?:[.,]\d+)?)\s*(d|days?|w|wks?|weeks?)$/i.exec(text);
  if (days) {
    const value = point(days[1]);
    return /^w/i.test(days[2] ?? "")
      ? `Write { low: ${value}, likely: ${value}, high: ${value}, unit: weeks } where an estimate of time stands, else days.`
      : `Write ${value}.`;
  }
  const bare = text.replace(/^(?:[A-Z]{3}|[€$£¥])\s*|\s*(?:[A-Z]{3}|[€$£¥])$/g, "");
  const plain = bare.replace(/^~|[\s'_\u00a0\u202f]/g, "");
  if (/^[-+]?\d{1,3}(?:[.,]\d{3}){2,}$/.test(plain)) return `Write ${plain.replace(/[.,]/g, "")}.`;
  if (/^[-+]?\d{1,3}(?:\.\d{3})+,\d+$/.test(plain))
    return `Write ${plain.replace(/\./g, "").replace(",", ".")}.`;
  if (/^[-+]?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(plain))
    return `Write ${plain.replace(/,/g, "")}; the dot is the decimal point.`;
  if (/^[-+]?\d+,\d+$/.test(plain)) return `Write ${plain.replace(",", ".")}; the dot is the decimal point.`;
  const thousands = /^([-+]?\d+(?:\.\d+)?)k$/i.exec(plain);
  if (thousands) return `Write ${Number(thousands[1]) * 1000}.`;
  if (/^[-+]?\d+(?:\.\d+)?$/.test(plain)) {
    return plain === text ? `Write ${plain} without quotes.` : `Write ${plain}.`;
  }
  return undefined;
}

function point(written = ""): string {
  return written.replace(",", ".");
}
