import { pointerTo } from "./pointer.js";

/** Deeper data are a mistake, or made to overflow a stack. */
const DEEPEST = 20;

/** More values than this are not copied. */
const MOST_VALUES = 100_000;

/** Where data are not plain, as a JSON Pointer into them, and what is there. */
export interface NotPlain {
  readonly path: string;
  readonly actual: unknown;
}

/**
 * A copy of plain JSON data; undefined for anything else, and for data too deep, in a ring, or more than
 * `most` values. Then `fault` is told where.
 */
export function plainCopy(
  value: unknown,
  fault?: (found: NotPlain) => void,
  most: number = MOST_VALUES,
): unknown {
  let left = most;
  const names: (string | number)[] = [];
  let actual: unknown;
  const copied = (part: unknown): unknown => {
    actual = part;
    left -= 1;
    if (part === null || typeof part === "string" || typeof part === "boolean") return part;
    if (typeof part === "number" && Number.isFinite(part)) return part;
    if (typeof part !== "object" || names.length > DEEPEST || left < 0 || losesContent(part)) throw NOT_PLAIN;
    const inside = (name: string | number, one: unknown): unknown => {
      names.push(name);
      const kept = copied(one);
      names.pop();
      return kept;
    };
    // Holes count too: they cost time and are no JSON.
    if (Array.isArray(part) && part.length > left) throw NOT_PLAIN;
    if (Array.isArray(part)) return part.map((one: unknown, i) => inside(i, one));
    const copy: Record<string, unknown> = {};
    const fields = part as Readonly<Record<string, unknown>>;
    for (const key of Object.keys(fields)) {
      const one = fields[key];
      if (one === undefined) continue;
      const kept = inside(key, one);
      // Assigned, a field of this name would become the prototype.
      if (key === "__proto__") Object.defineProperty(copy, key, { value: kept, enumerable: true });
      else copy[key] = kept;
    }
    return copy;
  };
  try {
    return copied(value);
  } catch {
    // A getter that throws is no plain data either. Too deep or too many is said of the whole.
    const whole = left < 0 || names.length > DEEPEST;
    fault?.(whole ? { path: "", actual: value } : { path: names.reduce(pointerTo, ""), actual });
    return undefined;
  }
}

const NOT_PLAIN = new TypeError("not plain data");

/** Whether JSON would lose what an object holds beside its fields: a date, a map, a set. */
function losesContent(part: object): boolean {
  const tag = Object.prototype.toString.call(part);
  return tag !== "[object Object]" && tag !== "[object Array]";
}
