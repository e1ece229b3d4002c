import { logConcentration, readDilution, type Dilution } from "../dilution/dilution.js";
import type { UseLaw } from "./useFactor.js";

/**
 * The stock in a litre of a bath, as a share of that for which a use rule was printed.
 *
 * @param at - the place of the bath's dilution, for errors
 * @param dilution - the bath's dilution; without it the bath is taken as the rule's own
 * @param law - the use rule
 * @returns 1 for the same dilution, 0.5 for half the stock; 1 when the rule or the bath says nothing
 * @throws TypeError or RangeError for a dilution that cannot be read
 *
 * @remarks A rule's increase and capacity go by the stock: sixteen rolls in a gallon of stock are eight in a
 * gallon of 1+1 (Eastman Kodak, publication J-78, from memory). So an area in a bath of share s counts as
 * area/s under the rule, and the rule's capacity is s times as much there.
 */
export function stockShare(at: string, dilution: Dilution | string | undefined, law: UseLaw): number {
  if (law.dilution === undefined) return 1;
  const printed = logConcentration(readDilution(`${at}/use/dilution`, law.dilution));
  if (dilution === undefined) return 1;
  return Math.exp(logConcentration(readDilution(`${at}/dilution`, dilution)) - printed);
}
