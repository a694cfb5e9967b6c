/**
 * The trade's thresholds, each a prompt to ask and no verdict. Fourteen-point schedule assessment, DCMA-EA PAM 200.1
 * (October 2012), sections 4.1 to 4.14: recalled from memory, the 5 % and the 0.95 read at dau.edu. The appendices VI
 * and VII of GAO-16-89G say that they are no tests to pass, and that one grave fault outranks many small ones.
 */
export const thresholds = {
  /** Open ends, lags, hard dates, much float, long tasks, missed tasks: share of the tasks or links. */
  share: 0.05,
  finishToStart: 0.9,
  /** Working days, float and duration alike: 44 is not much, 45 is. */
  days: 44,
  /** Working days by which the path is lengthened. */
  slip: 600,
  /** Critical path length index and baseline execution index. */
  index: 0.95,
  /** Common practice, no source, from here on. */
  nearDays: 60,
  farDays: 365,
  fineDays: 5,
  narrow: 0.1,
  cutAtZero: 0.01,
  fewTasks: 8,
  staleDays: 35,
  dominating: 0.6,
} as const;
