import { formatDate } from "../words/formatDate.ts";

/** "Oct 2027", of `2027-10`. */
export function monthName(month: string): string {
  return formatDate(`${month}-01`).replace(/^\d+ /, "");
}
