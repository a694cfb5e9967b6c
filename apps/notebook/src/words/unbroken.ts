const month =
  "Jan(?:uary)?|Feb(?:ruary)?|Mar(?:ch)?|Apr(?:il)?|May|June?|July?|Aug(?:ust)?|Sep(?:tember)?|Oct(?:ober)?|Nov(?:ember)?|Dec(?:ember)?";
/** As the page writes dates: "1 Jun 2031", "Fri 1 Oct", "Oct 2027"; before "1 October 2027" a line may end after its "Friday". */
const dates = new RegExp(
  `(?:\\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) (?=\\d))?(?:\\b\\d{1,2} )?\\b(?:${month})\\b(?: \\d{4}\\b)?`,
  "g",
);

/** A percentage is not parted from its sign at the end of a line, nor a currency from its sum, nor a date within itself. */
export function unbroken(text: string): string {
  return text
    .replaceAll(" %", "\u00a0%")
    .replace(/\b([A-Z]{3}) (?=[−\d])/g, "$1\u00a0")
    .replace(dates, (date) => date.replaceAll(" ", "\u00a0"));
}
