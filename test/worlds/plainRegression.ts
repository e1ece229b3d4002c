/*
 * What a plain regression without windows, walks, pair terms and terms of a run scores in these worlds: 300
 * photographers a world, seed 1. Measured before nature bounded what temperature and dilution do together. Mean interval scores at 5, 20 and 40 runs, per cent of ln(time).
 */
export const PLAIN_REGRESSION = {
  tame: [43.0, 18.7, 13.2],
  tameDated: [42.9, 19.4, 13.4],
  /** the mean over all worlds but those that drift steadily */
  all: [84.7, 69.3, 70.5],
} as const;
