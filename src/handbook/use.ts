/*
 * How developers slow with use, how long they keep, how much replenisher they take: published figures with
 * their sources. Typed data only. One roll is 516.128 cm².
 */
import { frozen, namesOf } from "../core/frozen.js";
import type { Seen } from "../core/term.js";
import { ROLL_CM2 } from "./roll.js";

const MEMORY = "(from memory, not seen in print)";
/** litres in a US gallon, exact by definition */
const GALLON_L = 3.785411784;

/** A published rule for more time as a bath is used. */
export interface HandbookUse {
  /** longer time for each `perCm2PerL` developed, as a fraction */
  readonly increase: number;
  /** the area in a litre that the increase is for, cm²/l */
  readonly perCm2PerL: number;
  /** how the increases of several areas add up */
  readonly growth: "linear" | "compound";
  /** standard deviation of `increase` (assumed): half of it, and at least 4 % a roll in a litre */
  readonly sdIncrease: number;
  /** the published capacity, cm² per litre */
  readonly capacityCm2PerL: number;
  /** the dilution for which the rule was printed */
  readonly dilution: string;
  /** how the figures were seen */
  readonly seen: Seen;
  /** where the rule comes from */
  readonly sources: readonly string[];
}

/** Developers with a published use rule. */
export type UseDeveloper =
  "metol-hydroquinone-borax" | "metol-hydroquinone-borax-per-film" | "metol-sulphite" | "phenidone-ascorbate";

/** Use rules as they are printed, none of them seen in print here. */
export const handbookUse: Readonly<Record<UseDeveloper, HandbookUse>> = /* @__PURE__ */ frozen({
  "metol-hydroquinone-borax": {
    increase: 0.15,
    sdIncrease: 0.075,
    perCm2PerL: (4 * ROLL_CM2) / GALLON_L,
    growth: "linear",
    capacityCm2PerL: (16 * ROLL_CM2) / GALLON_L,
    dilution: "stock",
    seen: "from-memory",
    sources: [
      `Eastman Kodak, publication J-78, D-76: 15 % for each 4 rolls in a US gallon, 16 rolls ${MEMORY}`,
    ],
  },
  "metol-hydroquinone-borax-per-film": {
    increase: 0.1,
    sdIncrease: 0.05,
    perCm2PerL: ROLL_CM2,
    growth: "linear",
    capacityCm2PerL: 10 * ROLL_CM2,
    dilution: "stock",
    seen: "from-memory",
    sources: [`Ilford/Harman, ID-11 and Microphen: 10 % for each film in a litre, 10 films ${MEMORY}`],
  },
  "metol-sulphite": {
    increase: 0.1,
    sdIncrease: 0.05,
    perCm2PerL: ROLL_CM2,
    growth: "linear",
    capacityCm2PerL: 10 * ROLL_CM2,
    dilution: "stock",
    seen: "from-memory",
    sources: [`D-23 without replenishment, 10 % a roll in a litre ${MEMORY}, uncertain`],
  },
  "phenidone-ascorbate": {
    increase: 0.03,
    sdIncrease: 0.04,
    perCm2PerL: ROLL_CM2,
    growth: "linear",
    capacityCm2PerL: 15 * ROLL_CM2,
    dilution: "stock",
    seen: "from-memory",
    sources: [
      `Eastman Kodak, publication J-109, XTOL: 15 % after 5 rolls in a litre, 30 % after 10 ${MEMORY}, ` +
        `uncertain`,
    ],
  },
});

/** The developers that `handbookUseLaw` takes. */
export const useDevelopers: readonly UseDeveloper[] = /* @__PURE__ */ namesOf(handbookUse);

/** A published keeping limit: a limit, not an activity. */
export interface KeepingLimit {
  /** the kind of developer */
  readonly developer: string;
  /** how it is kept */
  readonly storage: KeepingStorage;
  /** how long it keeps, h */
  readonly limitH: number;
  /** where the limit comes from */
  readonly sources: readonly string[];
}

/** How a bath or stock is kept. */
export type KeepingStorage = "open" | "covered-tank" | "half-full-bottle" | "full-bottle";

const MONTH_H = 730;

/** Keeping limits per storage. */
export const handbookKeeping: readonly KeepingLimit[] = /* @__PURE__ */ frozen([
  {
    developer: "coffee-carbonate-ascorbate",
    storage: "open",
    limitH: 1,
    sources: ["use within 30 to 60 minutes: common practice"],
  },
  {
    developer: "carbonate-ascorbate",
    storage: "open",
    limitH: 1.5,
    sources: [
      "Shinkawa Photographic Laboratory, L-ascorbic acid oxidation in alkaline solution, 2015 (full black " +
        "to 1.5 h, slightly weak at 2 h, none at 2.5 h)",
    ],
  },
  {
    developer: "pyro-metol",
    storage: "open",
    limitH: 0.75,
    sources: ["H. E. Ives, Airplane Photography, Philadelphia, 1920, ch. XXII (45 minutes, mixed)"],
  },
  {
    developer: "chlorhydroquinone-metol",
    storage: "open",
    limitH: 192,
    sources: ["H. E. Ives, Airplane Photography, Philadelphia, 1920, ch. XXII (8 days, mixed)"],
  },
  {
    developer: "pyro",
    storage: "covered-tank",
    limitH: 24,
    sources: [
      "J. B. Schriever (ed.), Self-Instructing Library of Practical Photography, Scranton, 1909, sec. 527",
    ],
  },
  {
    developer: "metol-hydroquinone-borax",
    storage: "open",
    limitH: 24,
    sources: [`Eastman Kodak, publication J-78, D-76 1+1 ${MEMORY}`],
  },
  {
    developer: "metol-hydroquinone-borax",
    storage: "half-full-bottle",
    limitH: 2 * MONTH_H,
    sources: [
      `Eastman Kodak, publication J-78, D-76 stock ${MEMORY}; Ilford/Harman say 1 month for ID-11 ${MEMORY}`,
    ],
  },
  {
    developer: "metol-hydroquinone-borax",
    storage: "full-bottle",
    limitH: 6 * MONTH_H,
    sources: [`Eastman Kodak, publication J-78, D-76 stock ${MEMORY}`],
  },
  {
    developer: "phenidone-ascorbate",
    storage: "half-full-bottle",
    limitH: 2 * MONTH_H,
    sources: [`Eastman Kodak, publication J-109, XTOL stock ${MEMORY}`],
  },
  {
    developer: "phenidone-ascorbate",
    storage: "full-bottle",
    limitH: 12 * MONTH_H,
    sources: [`Eastman Kodak, publication J-109, XTOL stock ${MEMORY}`],
  },
  {
    developer: "p-aminophenol",
    storage: "open",
    limitH: 1,
    sources: ["1+50 working bath, one to eight hours: common practice"],
  },
]);

/** Replenisher per area, ml per cm². */
export const handbookReplenishment: Readonly<
  Record<
    "metol-hydroquinone-borax" | "tank-generic" | "top-up",
    { readonly mlPerCm2: number; readonly sources: readonly string[] }
  >
> = /* @__PURE__ */ frozen({
  "metol-hydroquinone-borax": {
    mlPerCm2: 22 / ROLL_CM2,
    sources: [`Eastman Kodak, publication J-78, D-76R: 22 ml a roll ${MEMORY}`],
  },
  "tank-generic": {
    mlPerCm2: 23.7 / ROLL_CM2,
    sources: ["US Army correspondence subcourse SS0513, p. 23 (8 fl oz for 800 square inches)"],
  },
  "top-up": {
    mlPerCm2: 20 / ROLL_CM2,
    sources: ["R. Suzuki, Silvergrain Labs, Replenishing system (about the carry-over)"],
  },
});
