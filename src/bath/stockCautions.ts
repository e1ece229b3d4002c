import type { Caution } from "../core/caution.js";
import { isText, plainObject, positive } from "../core/guards.js";
import { logConcentration, readDilution, type Dilution } from "../dilution/dilution.js";
import { leastStock, leastStockMl, type LeastStockOf } from "./leastStock.js";
import { pastEstimate } from "./pastEstimate.js";
import { say } from "./text.js";

/** What {@link stockCautions} is asked about. */
export interface StockQuestion extends LeastStockOf {
  /** as text, `"1+9"`, or parts */
  readonly dilution: Dilution | string;
  /** volume of the bath, ml */
  readonly totalMl: number;
  /** area developed in this bath, cm² */
  readonly areaCm2: number;
}

/**
 * Checks that a bath holds enough stock for the film area, however far it is diluted.
 *
 * @param question - dilution, bath volume in ml (above 0 to 1e6), film area in cm² (above 0 to 1e6), and the
 * developer's family or the least stock per roll, where known
 * @returns one caution `"too-little-stock"` when the bath holds less than it should; otherwise none
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, or the family has no figure
 *
 * @remarks Least stock = ml per roll × area / 516.128 cm². The figures by family are makers' or
 * practitioners', from memory or common practice. Without a family the least of them serves, 6 ml a roll:
 * with less every developer of the handbook has too little. With less the developer is used up locally and
 * the time no longer holds. Figures of one or two digits, good to a factor of 2 (assumed): up to 5 % too
 * little is inside their rounding, and less than a third is a stop.
 *
 * @example
 * ```ts
 * const film = { areaCm2: 516.128, family: "p-aminophenol" } as const;
 * stockCautions({ ...film, dilution: "1+100", totalMl: 300 })[0].limit // => 10
 * ```
 */
export function stockCautions(question: StockQuestion): readonly Caution[] {
  const where = "stockCautions/question";
  plainObject(where, question);
  const dilution = readDilution(`${where}/dilution`, question.dilution);
  const totalMl = positive(`${where}/totalMl`, question.totalMl, 1e6, "volumeMl");
  const areaCm2 = positive(`${where}/areaCm2`, question.areaCm2, 1e6, "areaCm2");
  const { family } = question;
  if (family !== undefined) isText(`${where}/family`, family);
  const { mlPerRoll, basis } = leastStock(where, question);
  const stockMl = totalMl * Math.exp(logConcentration(dilution));
  const limit = leastStockMl(where, question, areaCm2);
  const severity = pastEstimate(limit / stockMl);
  if (severity === undefined) return [];
  return [
    say("too-little-stock", severity, {
      path: "/totalMl",
      quantity: "volumeMl",
      limit,
      actual: stockMl,
      data: { mlPerRoll, basis, ...(family !== undefined && { family }) },
    }),
  ];
}
