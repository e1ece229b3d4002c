/* Decimals of 60 digits, and a double as the decimal that it is: decimal.js by itself takes the shortest text of a number. */
import { Decimal } from "decimal.js";

export const D = Decimal.clone({ precision: 60 });

/** The value of a double, to 60 digits: its whole part, and then bit by bit. */
export function exact(value) {
  // Any double is a whole number below 2^53 times a power of two, and scaling by two is exact.
  let whole = value;
  let halvings = 0;
  while (!Number.isInteger(whole)) {
    whole *= 2;
    halvings += 1;
  }
  return new D(BigInt(whole).toString()).div(new D(2).pow(halvings));
}
