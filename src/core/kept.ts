import { frozen } from "./frozen.js";
import { plainCopy } from "./plainCopy.js";

/**
 * A frozen copy of plain data, for what is read again at a later call: what its owner changes afterwards
 * changes no answer. Anything else is returned as it is, to be refused where it is read.
 */
export function kept<T>(value: T): T {
  const copy = plainCopy(value) as T | undefined;
  return copy === undefined ? value : frozen(copy);
}
