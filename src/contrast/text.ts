/*
 * Module: contrast. The English sentences of its cautions, each from its data.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { decimals, digits } from "../core/digits.js";
import type { CurveEnd, InputWanted } from "../core/errorRules.js";

export const nearLimitSentence: Pick<CautionSentences, "near-limit"> = {
  "near-limit": ({ limit, actual }) =>
    `A contrast of ${digits(actual)} is close to its limit of ${digits(limit)}. ` +
    `The interval is rough there. Run a test strip first.`,
};

export const isoContrastSentence: Pick<CautionSentences, "not-iso-contrast"> = {
  "not-iso-contrast": ({ limit, actual }) =>
    `Density rises by ${decimals(actual, 2)} over 1.30 in log H, not by ${decimals(limit, 2)}. ` +
    `This is a speed for this development, not an ISO speed.`,
};

export const belowTopText: InputWanted<"below-top"> = ({ max }) =>
  `below ${max}, the limit of this growth law (a harder material needs its own, as growthFromDoubling gives)`;

export const betweenText: InputWanted<"between-once-and-twice"> = ({ above }) =>
  `between gamma (${above}) and twice gamma, which has no limit`;

export const beforePointText: InputWanted<"before-first-point"> = ({ below }) =>
  `before the first point (${below} s)`;

export const pointsDifferText: InputWanted<"points-differ"> = ({ timeS }) =>
  `different in time, not two at ${timeS} s`;

export const pointsRiseText: InputWanted<"points-rise"> = ({ points }) =>
  `rising with time, not ${points.map(({ timeS, gamma }) => `${gamma} at ${timeS} s`).join(" and ")}`;

export const pointsAllSdText: InputWanted<"points-all-sd"> = () => "all with sd, or all without it";

export const pointsBendText: InputWanted<"points-bend"> = () =>
  "bent toward a limit, but these are not: add a longer time of development, or where they are level a " +
  "shorter one";

export const pointsCarryText: InputWanted<"points-carry"> = () =>
  "precise enough to tell limit and rate: the error of one is larger than itself";

export const stepsDifferText: InputWanted<"steps-differ"> = ({ logH }) =>
  `different in exposure, not two at log H ${logH}`;

/** Why a curve misses what is asked of it. */
const endText = ({ startsAt, endsAt }: CurveEnd): string =>
  startsAt !== undefined
    ? `but starts at ${startsAt.toFixed(2)}: add steps with less exposure`
    : endsAt !== undefined
      ? `but ends at ${endsAt.toFixed(2)}: add steps with more exposure`
      : "but runs level there";

export const speedPointText: InputWanted<"curve-speed-point"> = ({ density, ...end }) =>
  `a curve through ${density.toFixed(2)}, 0.10 over base plus fog, ${endText(end)}`;

export const curveRisesText: InputWanted<"curve-rises"> = (end) =>
  `a curve that rises from base plus fog with a slope above 0.1, ${endText(end)}`;

export const outerArcText: InputWanted<"curve-outer-arc"> = (end) =>
  `a curve that cuts the outer arc, 2.2 from its foot, ${endText(end)}`;

export const curveReachesText: InputWanted<"curve-reaches"> = ({ logH, lastLogH }) =>
  `a curve up to log H ${logH.toFixed(2)}, 1.30 above the speed point, but ends at ${lastLogH.toFixed(2)}`;
