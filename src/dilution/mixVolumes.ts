import { Decimal } from "decimal.js";
import { positive } from "../core/guards.js";
import { readDilution, type Dilution } from "./dilution.js";

/** Volumes to measure for a bath; `stocksMl` splits the stock where there are several stock solutions. */
export interface MixedVolumes {
  /** all stocks together, ml */
  readonly stockMl: number;
  /** water, ml */
  readonly waterMl: number;
  /** each stock, ml, in the order of the dilution */
  readonly stocksMl?: readonly number[];
}

/**
 * The volumes of stock and water that make a bath.
 *
 * @param dilution - parts of stock and of water, as text (`"1+9"`) or parts
 * @param totalMl - volume of the bath in ml, above 0 to 1e6
 * @returns volumes in ml; stock and water sum to the total
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when parts or volume are out of range, or a colon is ambiguous
 *
 * @remarks Computed in decimals of 20 digits: the water is the total less the stock, so that nothing is lost
 * to rounding.
 *
 * @example
 * ```ts
 * mixVolumes("1+9", 500) // => { stockMl: 50, waterMl: 450 }
 * ```
 */
export function mixVolumes(dilution: Dilution | string, totalMl: number): MixedVolumes {
  const { stockParts, waterParts, stocks } = readDilution("mixVolumes/dilution", dilution);
  const total = new Decimal(positive("mixVolumes/totalMl", totalMl, 1e6, "volumeMl"));
  // Several stocks are added up on paper: 0.1 and 0.2 parts are 0.3.
  const parts = Decimal.sum(...(stocks ?? [stockParts]));
  const share = (some: Decimal.Value): Decimal => total.times(some).div(parts.plus(waterParts));
  const stock = share(parts);
  const volumes = { stockMl: stock.toNumber(), waterMl: Decimal.max(0, total.minus(stock)).toNumber() };
  return stocks === undefined
    ? volumes
    : { ...volumes, stocksMl: stocks.map((some) => share(some).toNumber()) };
}
