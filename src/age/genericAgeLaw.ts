import { frozen } from "../core/frozen.js";
import type { AgeLaw } from "./law.js";

/**
 * The age law used when none is given: for a day no change is expected, and the spread is that of a bath of
 * which nothing is known. Past the day time and spread grow in proportion to the age.
 */
export const genericAgeLaw: AgeLaw = /* @__PURE__ */ frozen({
  kind: "speeding",
  perDay: 0,
  sdPerDay: 0.08,
  runs: 0,
  sources: ["no law of age: the median is held for a day, then time and spread grow with the age (assumed)"],
});
