/*
 * Module: picture. An answer as a picture: plain data, from which the SVG and its words are made.
 */
import type { Baseline, Conditions, FactorCause, Knowledge } from "../compensate/types.js";
import type { TemperatureCurvePoint } from "../compensate/temperatureCurve.js";
import type { Caution } from "../core/caution.js";
import type { CautionCode } from "../core/cautionCodes.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Basis } from "../core/term.js";
import type { TestStrip, TestStripOptions } from "../process/testStripTimes.js";

/** What a picture covers; what is left out is chosen so that both dots and the ladder fit in. */
export interface PictureRange {
  /** the temperature at the lower edge, 0 to 100 °C, below `toC` */
  readonly fromC?: number | undefined;
  /** the temperature at the upper edge, 0 to 100 °C */
  readonly toC?: number | undefined;
  /** the time at the left edge, s, above 0 and below `highS` */
  readonly lowS?: number | undefined;
  /** the time at the right edge, s, up to 1e7 */
  readonly highS?: number | undefined;
  /** how many points a curve has: whole, 2 to 1000; 45 when left out */
  readonly points?: number | undefined;
  /** a test strip around today's time: true, or how it is made; none when left out */
  readonly strip?: boolean | TestStripOptions | undefined;
}

/** What a picture is made from. */
export interface AnswerPictureInput extends PictureRange {
  /** the known time and its conditions */
  readonly baseline: Baseline;
  /** today's conditions; as in the baseline when left out */
  readonly conditions?: Conditions | undefined;
  /** laws known for this developer and material; generic laws are used for the rest */
  readonly knowledge?: Knowledge | undefined;
}

/** A dot of the picture: a time with its 90 % interval, in s, at a temperature in °C. */
export interface PictureDot extends TimeEstimate {
  /** °C */
  readonly temperatureC: number;
}

/** Today's dot. */
export interface PictureToday extends PictureDot {
  /** the bath drifts: the temperature is that of a steady bath that takes as long */
  readonly steady?: true | undefined;
}

/** A stretch of temperatures that has no time. */
export interface PictureRefusal {
  /** its cold end, °C */
  readonly fromC: number;
  /** its warm end, °C */
  readonly toC: number;
  /** the caution that is in the way */
  readonly code: CautionCode;
  /** on which side of its limit the stretch lies; left out where it is no matter of temperature */
  readonly side?: "below" | "above" | undefined;
  /** its sentence, in English */
  readonly message: string;
}

/** A temperature from which on there is a warning. */
export interface PictureWarning {
  /** °C */
  readonly atC: number;
  /** the side of it that is warned of */
  readonly side: "below" | "above";
  /** the caution */
  readonly code: CautionCode;
  /** its sentence, in English */
  readonly message: string;
}

/** A point that a curve rests on. */
export interface PicturePoint {
  /** °C */
  readonly temperatureC: number;
  /** s */
  readonly timeS: number;
  /**
   * `"table"`: a row of the temperature law, as the known recipe would take there; `"run"`: an own run, the
   * time that it says is right, carried over to today's bath
   */
  readonly of: "table" | "run";
}

/** A rung of the ladder: one cause, and what it does to the time. */
export interface PictureRung {
  /** the known time, a cause, or the sum of all */
  readonly kind: "known" | "cause" | "sum";
  /**
   * the name of the cause or pair; `"baseline"` for the known time, `"strip"` for a test strip that was
   * judged, `"together"` for the sum
   */
  readonly cause: FactorCause | "strip" | "together";
  /** where the arrow starts, s: the end of the rung before */
  readonly startS: number;
  /** where it ends, s */
  readonly endS: number;
  /** where the whisker starts, s: nine in ten, from this cause alone; of the sum, today's interval */
  readonly lowS: number;
  /** where the whisker ends, s */
  readonly highS: number;
  /** the change of the time, %: 20 is a fifth more; of the sum, against the known time */
  readonly percent: number;
  /** what it rests on; the sum has none */
  readonly basis?: Basis | undefined;
  /** a general rule: its arrow is hollow */
  readonly general: boolean;
  /** the known side of the change, as it was given */
  readonly from?: unknown;
  /** today's side; a bath that drifts is left out */
  readonly to?: unknown;
}

/** The axes of a picture. */
export interface PictureAxes {
  /** the time at the left edge, s; the scale is logarithmic */
  readonly lowS: number;
  /** the time at the right edge, s */
  readonly highS: number;
  /** the times that are written, s */
  readonly ticksS: readonly number[];
  /** the temperature at the lower edge, °C; the scale is even */
  readonly fromC: number;
  /** the temperature at the upper edge, °C */
  readonly toC: number;
}

/** A picture as plain data: all that {@link pictureSvg} draws. */
export interface AnswerPicture {
  /** there is no time for today: no dot, no ladder, no strip */
  readonly refused: boolean;
  /** the known time */
  readonly known: PictureDot;
  /** missing where the time is refused */
  readonly today?: PictureToday | undefined;
  /** time over temperature, from `fromC` to `toC`, each point with its interval */
  readonly curves: {
    /** the known recipe at other temperatures */
    readonly known: readonly TemperatureCurvePoint[];
    /** today's bath at other temperatures */
    readonly bath: readonly TemperatureCurvePoint[];
    /** both are one: today differs in temperature alone, or in nothing */
    readonly same: boolean;
  };
  /** the stretches of temperature without a time */
  readonly refusals: readonly PictureRefusal[];
  /** where a warning begins */
  readonly warnings: readonly PictureWarning[];
  /** rows of a table and own runs */
  readonly points: readonly PicturePoint[];
  /** the known time, the causes, the sum; empty where the time is refused */
  readonly rungs: readonly PictureRung[];
  /** the times of a test strip, where one was asked for and there is a time */
  readonly strip?: TestStrip | undefined;
  /** what the picture covers */
  readonly axes: PictureAxes;
  /** the cautions of the answer, gravest first */
  readonly cautions: readonly Caution[];
}
