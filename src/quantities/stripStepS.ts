import type { TimeEstimate } from "../core/estimate.js";
import { roundEstimate } from "./roundEstimate.js";

/** The step of a test strip's times, s: as fine as the shortest of them needs. */
export const stripStepS = ({ lowS, highS }: TimeEstimate): number =>
  roundEstimate({ timeS: lowS, lowS, highS }).stepS;
