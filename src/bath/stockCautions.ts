import type { Caution } from "../core/caution.js";
import { plainObject, positive, wrongValue } from "../core/guards.js";
import { handbookLeastStock, type DilutionFamily } from "../handbook/dilution.js";
import { ROLL_CM2 } from "../handbook/roll.js";
import { logConcentration, readDilution, type Dilution } from "../dilution/dilution.js";

/** What {@link stockCautions} is asked about. */
export interface StockQuestion {
  readonly dilution: Dilution | string;
  readonly totalMl: number;
  /** area developed in this bath, cm² */
  readonly areaCm2: number;
  /** developer family, for its published least amount */
  readonly family?: DilutionFamily;
  /** own or maker's figure for the least stock per roll of 516 cm², ml; goes before `family` */
  readonly leastMlPerRoll?: number;
}

/**
 * Checks that a bath holds enough stock for the film area, however far it is diluted.
 *
 * @param question - dilution, bath volume in ml (above 0 to 1e6), film area in cm² (above 0 to 1e6), and the
 * least stock per roll
 * @returns one caution `"too-little-stock"` when the bath holds less than it should; otherwise none
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, or neither `leastMlPerRoll` nor a known `family` is given
 *
 * @remarks Least stock = ml per roll × area / 516.128 cm². The figures by family are makers' or
 * practitioners' and marked so in the handbook room; with less the developer is used up locally and the time
 * no longer holds.
 *
 * @example
 * ```ts
 * stockCautions({ dilution: "1+100", totalMl: 300, areaCm2: 516.128, family: "p-aminophenol" })[0].limit // => 10
 * ```
 */
export function stockCautions(question: StockQuestion): readonly Caution[] {
  const where = "stockCautions";
  plainObject(`${where}/question`, question);
  const dilution = readDilution(`${where}/dilution`, question.dilution);
  const totalMl = positive(`${where}/totalMl`, question.totalMl, 1e6, "volumeMl");
  const areaCm2 = positive(`${where}/areaCm2`, question.areaCm2, 1e6, "areaCm2");
  const known = Object.keys(handbookLeastStock);
  const published = known.includes(question.family ?? "")
    ? handbookLeastStock[question.family as DilutionFamily]
    : undefined;
  if (question.leastMlPerRoll === undefined && published === undefined)
    wrongValue(`${where}/family`, `one of ${known.join(", ")}, or leastMlPerRoll be given`, question.family);
  const perRoll = positive(
    `${where}/leastMlPerRoll`,
    question.leastMlPerRoll === undefined ? published?.mlPerRoll : question.leastMlPerRoll,
    1e5,
    "volumeMl",
  );
  const stockMl = totalMl * Math.exp(logConcentration(dilution));
  const leastMl = (perRoll * areaCm2) / ROLL_CM2;
  if (stockMl >= leastMl * (1 - 1e-12)) return [];
  return [
    {
      code: "too-little-stock",
      severity: "warn",
      message: `The bath holds ${stockMl.toFixed(1)} ml of stock; ${leastMl.toFixed(1)} ml is the least for this area. Use more bath or dilute less.`,
      limit: leastMl,
      actual: stockMl,
    },
  ];
}
