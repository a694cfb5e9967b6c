const weekdays = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];
const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/**
 * - `long`: Tuesday 16 November 2027
 * - `weekday`: Tue 16 Nov 2027
 * - `weekday-no-year`: Tue 16 Nov
 * - `short`: 16 Nov 2027
 * - `shortest`: 16 Nov
 */
export type DateStyle = "long" | "weekday" | "weekday-no-year" | "short" | "shortest";

/**
 * An ISO 8601 calendar date in English words, day before month.
 *
 * The names are spelled out here because `Intl` changes them with the version of its data ("Sep", "Sept").
 * Text that is not an existing date comes back as it is.
 *
 * @example
 * formatDate("2027-11-16", "long"); // "Tuesday 16 November 2027"
 */
export function formatDate(iso: string, style: DateStyle = "short"): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  if (parts === null) return iso;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day); // Date.UTC would read years 0 to 99 as 1900 to 1999
  const monthName = months[month - 1];
  const weekday = weekdays[date.getUTCDay()];
  if (monthName === undefined || weekday === undefined || date.getUTCDate() !== day) return iso;
  const short = monthName.slice(0, 3);
  switch (style) {
    case "long":
      return `${weekday} ${day} ${monthName} ${year}`;
    case "weekday":
      return `${weekday.slice(0, 3)} ${day} ${short} ${year}`;
    case "weekday-no-year":
      return `${weekday.slice(0, 3)} ${day} ${short}`;
    case "short":
      return `${day} ${short} ${year}`;
    case "shortest":
      return `${day} ${short}`;
  }
}
