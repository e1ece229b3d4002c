import { frozen } from "./frozen.js";

/** Deeper data are no laws: they are kept as they are. */
const DEEPEST = 20;

/**
 * A frozen copy of plain data, for what is read again at a later call: what its owner changes afterwards
 * changes no answer.
 */
export function kept<T>(value: T): T {
  return frozen(copied(value, 0));
}

function copied<T>(value: T, depth: number): T {
  if (typeof value !== "object" || value === null || depth > DEEPEST) return value;
  if (Array.isArray(value)) return value.map((one: unknown) => copied(one, depth + 1)) as T;
  return Object.fromEntries(
    Object.entries(value).map(([field, one]) => [field, copied(one, depth + 1)]),
  ) as T;
}
