/*
 * Module: process. Where a caution of a plan is read: before its first bath, while its brew is mixed, at one
 * of its steps, or after all of them.
 */
import type { Caution } from "../core/caution.js";
import type { CautionCode } from "../core/cautionCodes.js";
import type { StepName } from "./types.js";

/** `"first"` before all else, `"mixing"` before the first pour-in, a step by its name, `"last"` after all. */
export type CautionPlace = "first" | "mixing" | StepName | "last";

const PLACES: Readonly<Partial<Record<CautionCode, CautionPlace>>> = {
  "hazard": "mixing",
  "mix-apart": "mixing",
  "acid-foams": "mixing",
  "coffee-without-vitamin-c": "mixing",
  "decaffeinated": "mixing",
  "brewed-coffee": "mixing",
  "tablet-filler": "mixing",
  "spoon-range": "mixing",
  "restrainer-wanted": "mixing",
  "rest-before-use": "mixing",
  "stop-gas": "stop",
};

/** Whether a caution is about mixing a brew. */
export const isOfMixing = ({ code }: Caution): boolean => PLACES[code] === "mixing";

/** Where a caution is read: what is grave first of all, a note where it is of use. */
export const cautionPlace = ({ code, severity }: Caution): CautionPlace =>
  severity === "note" ? (PLACES[code] ?? "last") : "first";
