import type { Decimal } from "decimal.js";

export const D: typeof Decimal;
export function exact(value: number): Decimal;
