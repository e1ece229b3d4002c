/* One call of the package, and whether what came of it is allowed. */
import { CallersOwn, unknownFields } from "./generators.mjs";

export function deepFreeze(value) {
  if (typeof value !== "object" || value === null || Object.isFrozen(value) || ArrayBuffer.isView(value))
    return value;
  Object.freeze(value);
  for (const key of Reflect.ownKeys(value)) deepFreeze(Object.getOwnPropertyDescriptor(value, key).value);
  return value;
}

/** Every object in the arguments: what a caller hands in may come back in the answer as it was. */
function objectsIn(value, found = new Set(), depth = 0) {
  if (typeof value !== "object" || value === null || found.has(value) || depth > 8) return found;
  found.add(value);
  for (const inner of Object.values(value)) objectsIn(inner, found, depth + 1);
  return found;
}

/**
 * Says what is wrong with a returned value, or nothing. Plain data only: no class, no NaN, no Infinity, no
 * text that shows one.
 */
function faultOf(value, path, odd, own) {
  if (typeof value === "number") return Number.isFinite(value) ? "" : `${path} is ${value}`;
  if (typeof value === "string")
    return !odd && /(?<!got [-"]{0,2})\b(?:NaN|Infinity|undefined)\b|\[object /.test(value)
      ? `${path} reads ${JSON.stringify(value.slice(0, 120))}`
      : "";
  if (value === undefined || value === null || typeof value === "boolean") return "";
  if (own.has(value)) return "";
  if (typeof value !== "object") return `${path} is a ${typeof value}`;
  const prototype = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== Array.prototype) return `${path} is no plain object`;
  for (const key of Reflect.ownKeys(value)) {
    // A rejected record comes back as it came; a baseline keeps a kind that somebody gave it.
    if (
      (key === "kind" && "timeS" in value) ||
      key === "length" ||
      key === "record" ||
      // What was got is the caller's own.
      (key === "actual" && !("severity" in value)) ||
      (!Array.isArray(value) && unknownFields.includes(key))
    )
      continue;
    const fault = faultOf(value[key], `${path}.${String(key)}`, odd, own);
    if (fault !== "") return fault;
  }
  return "";
}

/**
 * Whether arguments hold text that an answer may rightly repeat, or data that is not plain and may be handed
 * back as it came.
 */
function isOdd(value, depth = 0) {
  if (typeof value === "string") return /NaN|Infinity|undefined|object/.test(value);
  if (typeof value !== "object" || value === null || depth > 6)
    return typeof value === "symbol" || typeof value === "bigint" || typeof value === "function";
  return Object.values(value).some((inner) => isOdd(inner, depth + 1));
}

const PROBES = [20, 0, 100, 55.5, NaN, "20", undefined, 1e300];

/**
 * Judges calls of `name` with the package's `functions`. Returns "value", "refused", or a text that starts
 * with "FAULT". An error has to be a TypeError or RangeError that begins with the name of an exported
 * function.
 */
export function judge(functions, name, given) {
  const call = functions[name];
  const names = new RegExp(`^(?:${Object.keys(functions).join("|")}):? `);
  const refusal = (error) => {
    // A class handed in as a forecast refuses to be called, in the engine's words: that too is the caller's
    // own.
    if (error instanceof CallersOwn || /^Class constructor /.test(error?.message)) return "refused";
    const kind = Object.getPrototypeOf(error ?? {})?.constructor;
    if (kind !== TypeError && kind !== RangeError)
      return `FAULT: threw ${String(error?.stack ?? error).slice(0, 300)}`;
    return names.test(error.message)
      ? "refused"
      : `FAULT: ${error.name} without a function's name: ${error.stack.split("\n").slice(0, 4).join(" ").slice(0, 400)}`;
  };
  let result;
  try {
    result = call(...given);
  } catch (error) {
    return refusal(error);
  }
  if (name === "prepareCompensation")
    // Three functions: the answer is judged, and the time has to be its own.
    try {
      const { compensate, timeS, times } = result;
      const conditions = { temperatureC: 21 };
      if (timeS(conditions) !== compensate(conditions).timeS)
        return "FAULT: the time is not that of the answer";
      times({ temperatureC: Float64Array.of(21) });
      result = compensate(conditions);
    } catch (error) {
      return refusal(error);
    }
  if (typeof result === "function") {
    for (const probe of PROBES) {
      try {
        const fault = faultOf(result(probe), `result(${String(probe)})`, false, new Set());
        if (fault !== "") return `FAULT: ${fault}`;
      } catch (error) {
        const outcome = refusal(error);
        if (outcome !== "refused") return outcome;
      }
    }
    return "value";
  }
  // What learnRecipe does not read of a recipe comes back as it was given.
  if (name === "learnRecipe")
    result = Object.fromEntries(
      Object.entries(result).filter(([key, value]) => !Object.is(value, given[0][key])),
    );
  const odd = isOdd(given);
  const fault = faultOf(result, "result", odd, objectsIn(given));
  // What a caller hands in may come back in the answer (a basis, a source): only plain input has to give
  // plain output.
  return fault === "" || (odd && !/NaN|Infinity/.test(fault)) ? "value" : `FAULT: ${fault}`;
}

/** Everything global that a library could change, as one text. */
export function globalState() {
  const of = (object, label) =>
    Reflect.ownKeys(object).map(
      (key) => `${label}.${String(key)}:${typeof Object.getOwnPropertyDescriptor(object, key).value}`,
    );
  const prototypes = [
    Object,
    Array,
    Function,
    String,
    Number,
    Boolean,
    Map,
    Set,
    Date,
    RegExp,
    Error,
    TypeError,
    RangeError,
    Promise,
    Symbol,
    BigInt,
  ];
  return [
    ...of(globalThis, "globalThis"),
    ...of(Math, "Math"),
    ...of(JSON, "JSON"),
    ...prototypes.flatMap((one) => [...of(one, one.name), ...of(one.prototype, `${one.name}.prototype`)]),
  ].join("\n");
}
