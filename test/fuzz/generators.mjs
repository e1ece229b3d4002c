/* What arguments are made of: numbers with their edges, nearly right values, and values that nobody should pass. */
import fc from "fast-check";

/**
 * A number from `min` to `max`: mostly somewhere between, sometimes an end, sometimes one of the tiny or odd
 * doubles between them.
 */
export const within = (min, max) =>
  fc.oneof(
    {
      weight: 40,
      arbitrary: fc.integer({ min: 0, max: 1_000_000 }).map((step) => min + ((max - min) * step) / 1_000_000),
    },
    { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
  );

/** A number above 0 to `max`, of any size. */
export const above0 = (max) => {
  const top = Math.floor(Math.log10(max)) - 3;
  const size = fc.tuple(
    fc.integer({ min: 1, max: 9999 }),
    fc.integer({ min: Math.min(-4, top - 5), max: top }),
  );
  return fc.oneof(
    { weight: 60, arbitrary: size.map(([figures, power]) => Math.min(max, figures * 10 ** power)) },
    { weight: 1, arbitrary: fc.double({ min: 1e-30, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(max, 1e-30, Number.MIN_VALUE) },
  );
};

export const oneOf = (...values) => fc.constantFrom(...values);

/** A record of which only the fields named in `required` must be there. */
export const record = (fields, required = Object.keys(fields)) =>
  fc.record(fields, { requiredKeys: required });

/** Arguments of which the last `optional` may be left out. */
export const args = (needed, optional = []) =>
  fc
    .tuple(fc.tuple(...needed), fc.tuple(...optional), fc.nat({ max: optional.length }))
    .map(([first, rest, count]) => [...first, ...rest.slice(0, count)]);

class Instance {
  timeS = 510;
  temperatureC = 20;
}

const sparse = [];
sparse.length = 4_294_967_295;

/** What the caller's own function throws: it comes back out as it is. */
export class CallersOwn extends Error {}

/** Functions for fields that take one: some behave, some do not. */
export const hostileFunctions = [
  () => NaN,
  () => Infinity,
  () => "20",
  () => undefined,
  () => -5,
  () => ({ temperatureC: 20 }),
  (x) => x,
  (x) => (x > 100 ? NaN : 20),
  (x) => 50 + 50 * Math.sin(x * 1e9),
  () => {
    throw new CallersOwn("the caller's own");
  },
];

const words = [
  "",
  "constructor",
  "__proto__",
  "toString",
  "hasOwnProperty",
  "length",
  "NaN",
  "Infinity",
  "1+9",
  "stock",
  "1:9",
  "8:30",
  "0x10",
  "1e3",
  "١",
  "😀",
  "-1",
  "null",
];

/** JSON that a parser makes: own keys named like parts of a prototype. */
const polluting = [
  '{"__proto__":{"polluted":true}}',
  '{"constructor":{"prototype":{"polluted":true}}}',
  '{"__proto__":null,"kind":"power"}',
].map((text) => JSON.parse(text));

/** Values that do not belong where they are put. */
export const hostile = fc.oneof(
  {
    weight: 6,
    arbitrary: oneOf(
      NaN,
      Infinity,
      -Infinity,
      -0,
      0,
      -1,
      1,
      1e-320,
      Number.MIN_VALUE,
      Number.MAX_VALUE,
      2 ** 53,
      1e21,
      0.1,
      100.00000000000001,
    ),
  },
  { weight: 4, arbitrary: oneOf(undefined, null, true, false, "", "20", 20n, Symbol("s"), Symbol.iterator) },
  { weight: 3, arbitrary: oneOf(...words) },
  { weight: 3, arbitrary: fc.double() },
  { weight: 2, arbitrary: fc.string({ maxLength: 12, unit: "grapheme" }) },
  {
    weight: 3,
    arbitrary: oneOf(
      {},
      [],
      [[]],
      [{}],
      [null, null],
      [undefined],
      new Array(3),
      sparse,
      Object.create(null),
      new Instance(),
      new Map([["a", 1]]),
      new Set([1]),
      new Date(0),
      /x/g,
      new Uint8Array(2),
      Promise.resolve(1),
    ),
  },
  { weight: 2, arbitrary: oneOf(...polluting) },
  { weight: 2, arbitrary: oneOf(...hostileFunctions, Math.max, Instance) },
  { weight: 1, arbitrary: fc.object({ maxDepth: 2, maxKeys: 4 }) },
);

function places(value, path = []) {
  if (typeof value !== "object" || value === null) return [path];
  return [
    path,
    ...Object.keys(value)
      .slice(0, 40)
      .flatMap((key) => places(value[key], [...path, key])),
  ];
}

const isPlain = (value) =>
  typeof value === "object" &&
  value !== null &&
  [Object.prototype, Array.prototype, null].includes(Object.getPrototypeOf(value));

/**
 * A copy of plain data that can be spoilt, of which half the records have no prototype, as those of a careful
 * parser.
 */
function copy(value) {
  if (!isPlain(value) || value === sparse) return value;
  if (Array.isArray(value)) return value.map(copy);
  const made = Object.create(Object.getPrototypeOf(value));
  for (const key of Object.keys(value))
    Object.defineProperty(made, key, {
      value: copy(value[key]),
      enumerable: true,
      configurable: true,
      writable: true,
    });
  return made;
}

/**
 * Fields that no type knows. Where a function keeps such a field of its input, the value is the caller's own.
 */
export const unknownFields = ["__proto__", "constructor", "toString", "then", "0", "unit/~"];

/** Right arguments with one thing wrong: a value replaced, a field taken away, doubled or added. */
function spoil(args, pick, wrong, how, key) {
  const spoilt = copy(args);
  const all = places(args).slice(1);
  if (all.length === 0) return [wrong];
  const path = all[pick % all.length];
  const last = path.at(-1);
  const owner = path.slice(0, -1).reduce((inner, step) => inner[step], spoilt);
  if (how === "add" && isPlain(owner[last]) && !Array.isArray(owner[last]))
    Object.defineProperty(owner[last], key, { value: wrong, enumerable: true, configurable: true });
  else if (how === "remove") Array.isArray(owner) ? owner.splice(Number(last), 1) : delete owner[last];
  else if (how === "double" && Array.isArray(owner)) owner.splice(Number(last), 0, copy(owner[last]));
  else owner[last] = wrong;
  return spoilt;
}

/** The arguments of one call: mostly right, often with one thing wrong, sometimes anything at all. */
export const calls = (valid) =>
  fc.oneof(
    { weight: 10, arbitrary: valid },
    {
      weight: 9,
      arbitrary: fc
        .tuple(
          valid,
          fc.nat({ max: 10_000 }),
          hostile,
          oneOf("replace", "replace", "replace", "remove", "double", "add"),
          oneOf("kind", ...unknownFields),
        )
        .map(([args, pick, wrong, how, key]) => spoil(args, pick, wrong, how, key)),
    },
    { weight: 1, arbitrary: fc.array(hostile, { maxLength: 4 }) },
  );
