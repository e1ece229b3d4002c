/*
 * How far a film was pushed, in a cell of its own or among the remarks.
 */
import { isInputError } from "../core/errors.js";
import { parseStops } from "../push/parseStops.js";
import { amountsAsFigures } from "../quantities/amountWords.js";

const NORMAL = /^(?:n|normal|box(?: ?speed)?|nominal|[-\u2013/]|nein|(?:no|not|nicht|ohne|kein)(?: .*)?)$/;
const PUSHED = /\b(?:push(?:ed|en)?|gepusht|pull(?:ed)?|gepullt)\b/g;
const PULLED = /\bpull|\bgepullt/;
/** What may be said between the word and its amount. */
const FILLERS = /\b(?:by|um|n(?= ?[-+\u2212\u2013]))\b/g;
/** A push with its stops somewhere in a remark, in either order. */
const STOPS = String.raw`[-+]?\d+(?:[.,]\d+)?(?: \d/\d|/\d)? ?(?:stops?|blenden?)\b`;
const WITHIN = new RegExp(`${PUSHED.source} (?:by |um )?${STOPS}|${STOPS} ${PUSHED.source}`);

/**
 * The stops of a push, below 0 of a pull: "+1", "N+1", "pushed one stop", "pull 1"; 0 for "N" and "normal".
 * A push without an amount is refused.
 */
export function pushCell(text: string): number {
  const words = text.toLowerCase().trim();
  if (NORMAL.test(words)) return 0;
  const amount = amountsAsFigures(words).replace(PUSHED, " ").replace(FILLERS, " ").trim();
  const stops = parseStops(amount);
  return PULLED.test(words) && stops > 0 ? -stops : stops;
}

/** The stops of a push among the remarks, where they say one with its amount. */
export function pushInRemark(remark: string): number | undefined {
  for (const part of remark.toLowerCase().split(/[,;.]\s+/)) {
    if (part.search(PUSHED) < 0 || NORMAL.test(part)) continue;
    const [within = part] = WITHIN.exec(amountsAsFigures(part)) ?? [];
    try {
      return pushCell(within);
    } catch (error) {
      if (!isInputError(error)) throw error;
    }
  }
  return undefined;
}
