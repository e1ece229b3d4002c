/*
 * What the sentence of a caution names besides its limit and its actual figure, code by code. A code that is
 * not here names nothing else.
 */
import type { BrewCautionData } from "./brewCautionData.js";
import type { LearnedCautionData } from "./learnedCautionData.js";

/** The `data` of a caution, by its code. */
export interface CautionData extends LearnedCautionData, BrewCautionData {
  /** a time that was perhaps meant in minutes */
  readonly "maybe-minutes": {
    /** which time, where it is not one of development */
    readonly of?: "clearing" | undefined;
  };
  /** what did not follow from the runs */
  readonly "stored-differs": {
    /** the fields of stored knowledge that were worked out again */
    readonly fields: readonly string[];
  };
  /** what rests on a generic law */
  readonly "default-law": {
    /** causes, pairs and marks by their names */
    readonly causes: readonly string[];
  };
  /** a law outside what was published */
  readonly "law-unusual": {
    /** its field in knowledge */
    readonly law: string;
    /** what is unusual about it */
    readonly reason: UnusualReason;
    /** of an energy: by what it multiplies the rate over 10 °C */
    readonly over10C?:
      | {
          /** the same of the limit */
          readonly limit: number;
          /** of the law's own energy */
          readonly actual: number;
        }
      | undefined;
  };
  /** a field that is not read */
  readonly "unknown-field": {
    /** its name */
    readonly field: string;
    /** the known field that is nearest to it */
    readonly nearest?: string | undefined;
  };
  /** a side beyond the rows of a table */
  readonly "outside-table": {
    /** whose table it is */
    readonly cause: "temperature" | "dilution";
  };
  /** a law by which a colder, weaker, less agitated or older bath is faster, or a push takes less time */
  readonly "wrong-way": {
    /** whose law it is */
    readonly cause: "temperature" | "dilution" | "agitation" | "age" | "push";
  };
  /** far from the known time */
  readonly "far-extrapolation": {
    /** what is far from it */
    readonly cause: "temperature" | "dilution";
    /** of dilution: whether the bath is the weaker or the stronger one */
    readonly bath?: "weaker" | "stronger" | undefined;
  };
  /** stand development */
  readonly "stand": {
    /** the side that stands: the known time, or today's alone */
    readonly side: "baseline" | "conditions";
  };
  /** a gradient near a limit of growth */
  readonly "near-limit": {
    /** the limit that is near: the top of growth, or 0 */
    readonly side: "top" | "bottom";
  };
  /** a temperature that is too warm for °C */
  readonly "maybe-fahrenheit": {
    /** the figure taken as °F, in °C */
    readonly celsius: number;
  };
  /** a temperature that is too cold for a bath */
  readonly "maybe-celsius": {
    /** the figure before it was converted, °C */
    readonly celsius: number;
  };
  /** a temperature that no print describes */
  readonly "temperature-limit": {
    /** the lower end of the range, °C */
    readonly low: number;
    /** the upper end, °C */
    readonly high: number;
  };
  /** a temperature outside the usual */
  readonly "temperature-unusual": {
    /** the lower end of the range, °C */
    readonly low: number;
    /** the upper end, °C */
    readonly high: number;
    /** so cold that this agent stops, which the developer may hold */
    readonly unnamed?: "hydroquinone" | undefined;
  };
  /** a bath that does not live long enough */
  readonly "bath-past-life": {
    /** whether it is judged at the pour-in or at the pour-out */
    readonly at: "pour-in" | "pour-out";
  };
  /** a bath that may not live long enough */
  readonly "bath-may-fail": {
    /** whether it is that old at the pour-in, or at the long end of the interval alone */
    readonly at: "pour-in" | "pour-out";
  };
  /** less stock than the area needs */
  readonly "too-little-stock": {
    /** what a roll needs, ml */
    readonly mlPerRoll: number;
    /** what that rests on */
    readonly basis: string;
    /** the family of developers */
    readonly family?: string | undefined;
  };
  /** a bath that does not cover the dish */
  readonly "thin-layer": {
    /** the least volume that does, ml */
    readonly leastMl: number;
  };
  /** a bath that this material takes past its capacity */
  readonly "bath-capacity-reached": {
    /** what sets the capacity */
    readonly by: string;
  };
  /** what a push does for the shadows */
  readonly "push-shadows": {
    /** what they gain at most, stops */
    readonly shadowStops: number;
  };
  /** two estimates of one time */
  readonly "estimates-disagree": {
    /** the first, s */
    readonly firstS: number;
    /** the second, s */
    readonly secondS: number;
  };
  /** a plan that is not what its time is for */
  readonly "answer-differs": {
    /** what differs */
    readonly cause: "temperature" | "dilution" | "agitation";
    /** what the time is for: °C, s from one agitation to the next, or text */
    readonly answered: number | string;
    /** what is planned */
    readonly planned: number | string;
  };
  /** a bath that has drifted since an earlier plate */
  readonly "bath-drifted": {
    /** where it was, °C */
    readonly fromC: number;
    /** where it is at this pour-in, °C */
    readonly toC: number;
  };
  /** a drum whose recipe says another agitation */
  readonly "drum-turned": {
    /** what the recipe says: s from one agitation to the next, or text */
    readonly agitation: number | string;
  };
  /** a step between two baths */
  readonly "temperature-step": {
    /** the step of the plan that follows it */
    readonly bath: string;
  };
  /** a fixing bath that clears slowly */
  readonly "fixer-spent": {
    /** true where its fresh clearing time is the handbook's and was not measured */
    readonly assumed?: true | undefined;
  };
  /** fixing that is too short */
  readonly "short-fix": {
    /** the clearing times that are due; none where the limit is the least for the material, as of paper */
    readonly times?: number | undefined;
  };
  /** fixing that bleaches */
  readonly "long-fix": {
    /** the clearing times that were planned; of paper there are none */
    readonly times?: number | undefined;
  };
  /** sources that disagree */
  readonly "fixing-split": {
    /** the clearing times that are planned */
    readonly times: number;
  };
  /** no reading */
  readonly "reading-missing": {
    /** what came in its place, where it is text; null where nothing came */
    readonly text: string | null;
  };
  /** a reading that no bath can have gone to */
  readonly "reading-jump": {
    /** the reading, °C */
    readonly readC: number;
    /** when it was taken, s from pour-in */
    readonly atS: number;
    /** what the bath was mixed to, °C, where no other reading speaks against it */
    readonly mixedC?: number | undefined;
  };
  /** no reading is believed */
  readonly "forecast-only": {
    /** since when, s from pour-in */
    readonly sinceS: number;
  };
}

/** What is unusual about a law. */
export type UnusualReason =
  "energy" | "maybe-kilocalories" | "maybe-fahrenheit" | "exponent" | "increase" | "maybe-percent";
