import { ambiguous, inRange, positive, refuse, type TextForm, unreadable } from "../core/guards.js";
import type { RunOutcome } from "../learning/types.js";
import { pushFactor } from "../push/pushFactor.js";
import { amountsAsFigures, STEP } from "../quantities/amountWords.js";
import { plainFigures } from "../quantities/numberText.js";
import { overOrUnderText, subjectText } from "./text.js";

/** How an outcome is written. */
export const OUTCOMES: TextForm = {
  format: "outcome",
  examples: ["good", "thin", "dense", "over 1", "under 0.5", "x1.2", "15% more"],
};

const GOOD = new RegExp(
  "^(?:(?:very|quite|fairly|pretty|sehr|ganz|ziemlich) )?(?:good|gut)(?:[- ]?ish| ?\\(ish\\))?$|" +
    "^(?:ok|okay|right|just right|spot on|normal|fine|perfect|great|excellent|super|n|passt|perfekt|prima|" +
    "richtig|genau richtig|in ordnung|i\\. ?o|(?:it )?came out (?:good|right|well))$",
);

/** Words that say how much without an amount. */
const ABOUT =
  "(?:(?:way|much|far|a|an?|bit|little|touch|tad|trifle|slightly|rather|very|quite|somewhat|too|still|" +
  "heavily|badly|looks?|came|out|it|is|was|negatives?|zu|viel|etwas|ein|wenig|bisschen|leicht|sehr|" +
  "deutlich|stark|kr\u00e4ftig|noch) )*";
const THIN = new RegExp(`^${ABOUT}(?:thin|under-?developed|d(?:\u00fc|ue)nn|unterentwickelt)$`);
const DENSE = new RegExp(`^${ABOUT}(?:dense|thick|over-?developed|dicht|dick|(?:\u00fc|ue)berentwickelt)$`);
/** How long it was developed, or how dense it did not get. */
const TOO_SHORT = new RegExp(
  `^${ABOUT}(?:developed )?(?:too short|zu kurz)(?: developed| entwickelt)?$|` +
    "^not dense enough$|^nicht dicht genug$|^nicht lange? genug entwickelt$|^not developed long enough$",
);
const TOO_LONG_DEVELOPED = new RegExp(
  `^${ABOUT}(?:developed )?(?:too long|zu lange?)(?: developed| entwickelt)?$`,
);
const BY_HOW_MUCH = "(?:(?:way|much|far|a|bit|little|slightly|rather|etwas|ein|bisschen|viel) )*";
/** A negative too dark is dense, one too light is thin. "Dark" alone may speak of the light. */
const TOO_DARK = new RegExp(`^${BY_HOW_MUCH}(?:too dark|zu dunkel)$`);
const TOO_LIGHT = new RegExp(`^${BY_HOW_MUCH}(?:too light|zu hell)$`);
/** How sure somebody is; it does not change what was seen. */
const DOUBT =
  /(?:,? (?:i think|i guess|probably|maybe|perhaps|glaube ich|denke ich|wohl|vielleicht))?[.!? ]*$/;
const FAILED = /^(?:failed|misslungen|mi\u00dflungen)$/;
const FOGGED = /^(?:fogged|verschleiert|schleier)$/;
const FOG =
  "(?:(?:a |some |slight(?:ly)? |etwas |leicht(?:er)? |ein wenig )*(?:fog(?:ged)?|schleier|verschleiert))";
/** How long, but not what: of fixing, washing or the exposure a remark may say so too. */
const LENGTH_ALONE = new RegExp(`^${ABOUT}(?:too (?:short|long)|zu (?:kurz|lange?))$`);
/** Fog that was seen beside a judgement: "fog, otherwise good", "gut, aber Schleier". */
const FOG_BESIDE = [
  new RegExp(`^${FOG}[,;]? (?:but|otherwise|else|aber|sonst)(?: otherwise| sonst)? (.+)$`),
  new RegExp(`^(.+?)[,;]? (?:but|with|aber|mit|trotz) ${FOG}$`),
];

/** Which way a negative is off, by its words. */
const OVER = "over(?:-?developed)?|(?:\u00fc|ue)ber(?:entwickelt)?";
const UNDER = "under(?:-?developed)?|unter(?:entwickelt)?";
const DARK = "dense|dicht|dick";
const PALE = "thin|d(?:\u00fc|ue)nn";
const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
/** The way first: "over 1", "\u00fcber 1"; a figure behind "dense" without a step may be a density. */
const STEPS = new RegExp(`^(${OVER}|${UNDER})(?:by|um)?${NUMBER}${STEP}?$`);
const DENSE_BY = new RegExp(
  String.raw`^(?:too|zu)?(${DARK}|${PALE})[,:(]?(?:by|um|etwa|about)?${NUMBER}${STEP}\)?$`,
);
/** The amount first: "1 step under", "0.5 step too thin". */
const STEPS_FIRST = new RegExp(`^(?:um)?${NUMBER}${STEP}(?:too|zu)?(${OVER}|${UNDER}|${DARK}|${PALE})$`);
const IS_UNDER = new RegExp(`^(?:${UNDER}|${PALE})$`);
/** So many stops. A step of judgement is not a stop, and neither is a stop bath. */
const STOPS = /(?<![\d.])([0-4](?:\.\d+)?)(?:stops?|blenden?)(?!-?ba[dt])/;
/** Stops of exposure and of push say nothing of how it came out. */
const OTHER_STOPS = /expos|belicht|push|pull/;
const NEEDS_LESS = /over|\u00fcber|ueber|dense|thick|dicht|dick|dark|dunkel|less|shorter|weniger|k\u00fcrzer/;
const NEEDS_MORE = /under|unter|thin|d(?:\u00fc|ue)nn|more|longer|mehr|l\u00e4nger/;
const BARE = /^(?:n)?[-+](\d+(?:\.\d+)?)(?:steps?|stufen?)?$/;
const RATIO = /^(?:(?:x|\u00d7)(\d+(?:\.\d+)?)|(\d+(?:\.\d+)?)(?:x|\u00d7))$/;
const BARE_SHARE = /^[-+](\d+(?:\.\d+)?)%$/;
/** A share of the time that was missing or too much: "needs +15%", "15% more", "15 % l\u00e4nger". */
const NEEDS =
  /^(?:needs?|needed|braucht?)([-+]?)(\d+(?:\.\d+)?)%(more|less|longer|shorter|mehr|weniger)?(?:time)?$/;
const SHARE = /^()(\d+(?:\.\d+)?)%(more|less|longer|shorter|mehr|weniger|l\u00e4nger|k\u00fcrzer)(?:time)?$/;
/** How much the time given was longer or shorter than the right one: "10% too long". */
const TOO = /^(\d+(?:\.\d+)?)%(?:too|zu)(long|short|lang|kurz)$/;
const TOO_LONG = /^l[oa]ng$/;
const LESS = /^(?:less|shorter|weniger|k\u00fcrzer)$/;

/**
 * How a negative came out, in the words of a notebook: `"good"` and its like, `"failed"`, `"fogged"`; `"too
 * thin"` or `"a bit dense"`, which say no amount; steps over or under (`"over 1"`, `"half a step thin"`); the
 * right time as a multiple (`"x1.2"`, `"needs +15%"`); or how far the time given was off (`"10% too long"`).
 * Of "fog, otherwise good" it is the judgement.
 * `"+1"`, `"N+1"`, `"over 1 stop"`, `"2 Blenden zu dicht"` and `"flat"` may mean two things and are refused
 * with the question which.
 */
export function judgement(at: string, text: string): RunOutcome {
  const words = wordsIn(text);
  const fogged = besideFog(words);
  if (fogged !== undefined) return judgement(at, fogged);
  if (GOOD.test(words)) return { kind: "good" };
  if (FAILED.test(words)) return { kind: "failed" };
  if (FOGGED.test(words)) return { kind: "fogged" };
  if ([THIN, TOO_LIGHT, TOO_SHORT].some((form) => form.test(words))) return { kind: "thin" };
  if ([DENSE, TOO_DARK, TOO_LONG_DEVELOPED].some((form) => form.test(words))) return { kind: "dense" };
  const tight = tightened(words);
  const [, first, behind] = STEPS_FIRST.exec(tight) ?? [];
  const [, side = behind ?? "", amount = first] = STEPS.exec(tight) ?? DENSE_BY.exec(tight) ?? [];
  if (amount !== undefined) {
    const steps = Number(amount) * (IS_UNDER.test(side) ? -1 : 1);
    return { kind: "steps", steps: inRange(at, steps, -10, 10) };
  }
  const [, ratio, turned] = RATIO.exec(tight) ?? [];
  if (ratio !== undefined || turned !== undefined) return judged(at, Number(ratio ?? turned));
  const [, sign, share, more = ""] = NEEDS.exec(tight) ?? SHARE.exec(tight) ?? [];
  if (share !== undefined && (sign !== "-" || more === "")) {
    const less = sign === "-" || LESS.test(more);
    // Fifteen digits: 1 + 0.15 is 1.15 on paper.
    return judged(at, Number((1 + ((less ? -1 : 1) * Number(share)) / 100).toPrecision(15)));
  }
  const [, excess, way = ""] = TOO.exec(tight) ?? [];
  if (excess !== undefined) {
    const wrong = 1 + ((TOO_LONG.test(way) ? 1 : -1) * Number(excess)) / 100;
    return judged(at, wrong > 0 ? 1 / wrong : wrong);
  }
  ask(at, words, tight, text);
  return unreadable(at, OUTCOMES, text);
}

/** The words of a judgement, without what does not change them. */
const wordsIn = (text: string): string =>
  plainFigures(text)
    .toLowerCase()
    .replace(/[\u2212\u2013]/g, "-")
    .replace(/\s+/g, " ")
    .replace(DOUBT, "")
    .trim();

const besideFog = (words: string): string | undefined =>
  FOG_BESIDE.map((form) => form.exec(words)?.[1]).find((rest) => rest !== undefined);

/** Whether a judgement tells of fog besides, which its outcome does not hold. */
export const tellsFog = (text: string): boolean => besideFog(wordsIn(text)) !== undefined;

/** Whether a text says that a length was wrong, but not which: as an outcome it is the development. */
export const saysLengthAlone = (text: string): boolean => LENGTH_ALONE.test(wordsIn(text));

/** Words without the blanks between them, their amounts as figures. */
const tightened = (words: string): string => amountsAsFigures(words).replace(/ /g, "");

const judged = (at: string, ratio: number): RunOutcome => ({
  kind: "judged",
  timeRatio: positive(at, ratio, 100),
});

/** Refuses what may mean two things, with the ways to write each. */
function ask(at: string, words: string, tight: string, text: string): void {
  const either = (...readings: readonly string[]): never =>
    refuse(at, "over-or-under", overOrUnderText, { ...OUTCOMES, readings }, text, "ambiguous");
  const subject = (judgedSo: string): never =>
    refuse(
      at,
      "process-or-subject",
      subjectText,
      { ...OUTCOMES, readings: [judgedSo, "good"] },
      text,
      "ambiguous",
    );
  const [, bare] = BARE.exec(tight) ?? [];
  if (bare !== undefined) either(`over ${bare}`, `under ${bare}`);
  const [, percent] = BARE_SHARE.exec(tight) ?? [];
  if (percent !== undefined) either(`${percent}% less`, `${percent}% more`);
  const [, amount] = OTHER_STOPS.test(tight) ? [] : (STOPS.exec(tight) ?? []);
  if (amount !== undefined) {
    // A step of a judgement is not a stop of push; a ratio for that is offered to a twentieth.
    const push = pushFactor(Number(amount));
    const times = (ratio: number): string => `x${Math.round(20 * ratio) / 20}`;
    const over = [`over ${amount}`, times(1 / push)] as const;
    const under = [`under ${amount}`, times(push)] as const;
    const [isOver, isUnder] = [NEEDS_LESS.test(tight), NEEDS_MORE.test(tight)];
    if (isOver === isUnder) either(...over, ...under);
    ambiguous(at, OUTCOMES, isOver ? over : under, text);
  }
  if (/(?:^| )(?:flat|soft|flau|weich|low contrast)$/.test(words)) subject("thin");
  if (/(?:^| )(?:contrasty|hard|harsh|hart|kontrastreich|high contrast)$/.test(words)) subject("dense");
}
