/**
 * Spreads a calendar's integers out into its two tables of doubles (see time.ts), in place: `order` has its `count`
 * integers in the second half, `days` its `length` integers (working days before each day) in the last quarter. What is
 * read next always lies behind what is written.
 *
 * Answers the largest distance between working days that follow each other, and from day 0 to the first.
 */
export function fillCalendar(days: usize, length: u32, order: usize, count: u32): f64 {
  const numbers = order + ((<usize>count) << 2);
  let gap: f64 = 0;
  let previous: f64 = 0;
  for (let k: usize = 0; k < count; k++) {
    const day = <f64>load<i32>(numbers + (k << 2));
    store<f64>(order + (k << 3), day);
    // The last entry stands for "never".
    if (k + 1 < count) {
      gap = max(gap, day - previous);
      previous = day;
    }
  }
  const counts = days + <usize>length * 12;
  for (let d: usize = 0; d < length; d++) {
    const before = load<i32>(counts + (d << 2));
    store<f64>(days + (d << 4), <f64>before);
    store<f64>(days + (d << 4), load<f64>(order + ((<usize>before) << 3)), 8);
  }
  return gap;
}

/**
 * From one flag a day, 1 where it works: working days before each of `length` days and after the last (`cum`), and the day
 * of each working day, then 10,000,000 (`nth`), all integers. Working days after a gap of more than 366 days are left out.
 * Answers how many there are.
 */
export function countDays(flags: usize, length: i32, cum: usize, nth: usize): i32 {
  let count = 0;
  let previous = -1;
  let broken = false;
  for (let day = 0; day < length; day++) {
    store<i32>(cum + ((<usize>day) << 2), count);
    if (load<u8>(flags + <usize>day) === 1 && !broken) {
      store<i32>(nth + ((<usize>count) << 2), day);
      count += 1;
      previous = day;
    } else if (day - previous > 366) broken = true;
  }
  store<i32>(cum + ((<usize>length) << 2), count);
  store<i32>(nth + ((<usize>count) << 2), 10000000);
  return count;
}
