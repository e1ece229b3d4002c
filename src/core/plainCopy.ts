/** Deeper data are a mistake, or made to overflow a stack. */
const DEEPEST = 20;

/** More values than this are not copied. */
export const MOST_VALUES = 100_000;

/** A copy of plain JSON data; undefined for anything else, and for data too deep, in a ring, or too many. */
export function plainCopy(value: unknown): unknown {
  let left = MOST_VALUES;
  const copied = (part: unknown, depth: number): unknown => {
    left -= 1;
    if (part === null || typeof part === "string" || typeof part === "boolean") return part;
    if (typeof part === "number" && Number.isFinite(part)) return part;
    if (typeof part !== "object" || depth > DEEPEST || left < 0) throw NOT_PLAIN;
    // Holes count too: they cost time and are no JSON.
    if (Array.isArray(part) && part.length > left) throw NOT_PLAIN;
    if (Array.isArray(part)) return part.map((one: unknown) => copied(one, depth + 1));
    const copy: Record<string, unknown> = {};
    const fields = part as Readonly<Record<string, unknown>>;
    for (const key of Object.keys(fields)) {
      const one = fields[key];
      if (one === undefined) continue;
      const kept = copied(one, depth + 1);
      // Assigned, a field of this name would become the prototype.
      if (key === "__proto__") Object.defineProperty(copy, key, { value: kept, enumerable: true });
      else copy[key] = kept;
    }
    return copy;
  };
  try {
    return copied(value, 0);
  } catch {
    // A getter that throws is no plain data either.
    return undefined;
  }
}

const NOT_PLAIN = new TypeError("not plain data");
