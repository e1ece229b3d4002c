/** Deeper data are a mistake, or made to overflow a stack. */
const DEEPEST = 20;

/** More values than this are not copied. */
const MOST_VALUES = 100_000;

/** A copy of plain JSON data; undefined where they are none, too deep, a ring, or too many. */
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
    const entries = Object.entries(part).filter(([, one]) => one !== undefined);
    return Object.fromEntries(entries.map(([key, one]) => [key, copied(one, depth + 1)]));
  };
  try {
    return copied(value, 0);
  } catch {
    // A getter that throws is no plain data either.
    return undefined;
  }
}

const NOT_PLAIN = new TypeError("not plain data");
