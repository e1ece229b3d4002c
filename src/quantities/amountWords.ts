/*
 * Amounts of steps and stops in words.
 */

/** A step of a judgement. */
export const STEP = "(?:steps?|stufen?)";
/** Amounts in words, before a step or a stop: "half a step", "zwei Stufen". */
const AMOUNTS = [
  ["(?:one|1) and a half|anderthalb|eineinhalb", "1.5"],
  ["half an?|a half|half|eine halbe|halbe", "0.5"],
  ["an?|one|eine?", "1"],
  ["two|zwei", "2"],
  ["three|drei", "3"],
].map(([words = "", figure = ""]) => ({
  words: new RegExp(`(?<![\\p{L}\\d])(?:${words})(?= (?:${STEP}|stops?|blenden?)(?!\\p{L}))`, "u"),
  figure,
}));

/** Words with the amounts before a step or a stop as figures. */
export function amountsAsFigures(words: string): string {
  let plain = words;
  for (const { words: amount, figure } of AMOUNTS) plain = plain.replace(amount, figure);
  return plain;
}
