/*
 * Text that an input may hold, as a German would write it: the parsers read both, which a test checks.
 */
import type { InputFormat } from "../../core/errors.js";

/** Words of examples; documents hold "stock" and no other word for it. */
const WORDS: readonly (readonly [english: RegExp, german: string])[] = [
  [/\bevery(?= )/, "alle"],
  [/\bcontinuous\b/, "ständig"],
  [/\binversions(?=\/)/, "Kippungen"],
  [/\brolls?(?=\/| |$)/, "Rollfilme"],
  [/\bdays\b/, "Tage"],
  [/\bnone\b/, "keine"],
  [/\bgood\b/, "gut"],
  [/\bthin\b/, "dünn"],
  [/\bdense\b/, "dicht"],
  [/\bover(?= \d)/, "über"],
  [/\bunder(?= \d)/, "unter"],
  [/% more\b/, "% mehr"],
  [/% less\b/, "% weniger"],
  [/\bpushed 1 stop\b/, "1 Blende gepusht"],
  [/\bnot pushed\b/, "nicht gepusht"],
];

/** A point between figures that is a decimal one, where a comma would not part thousands. */
const POINT = /(?<![\d.,])(\d+)\.(\d{1,2})(?![\d.,])/g;

/** What is written alike in every language, but for the name of a month. */
const ALIKE: readonly (InputFormat | undefined)[] = ["date", "date with its year", "column with its unit"];

/** An example or a reading in German. */
export function inGerman(text: string, format?: InputFormat): string {
  if (ALIKE.includes(format)) return text.replace(/(\d) March\b/, "$1. März");
  const worded = WORDS.reduce((said, [english, german]) => said.replace(english, german), text);
  return worded.replace(POINT, "$1,$2");
}
