/** Today as the calendar on the wall has it: `2027-02-01`. */
export function today(now = new Date()): string {
  const two = (part: number) => String(part).padStart(2, "0");
  return `${String(now.getFullYear()).padStart(4, "0")}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
