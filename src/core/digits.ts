/** A number in a sentence: to so many digits, without trailing noughts. */
export function digits(value: number | undefined, count = 3): string {
  return value === undefined ? "an unknown number" : String(Number(value.toPrecision(count)));
}
