/*
 * Generators that the compiler holds to a type of the package: one for each field and each kind, none missing,
 * none too many.
 */
import { fc } from "../property.js";
import { changed, takeAway } from "./changed.js";

/** The fields of a type that may be left out. */
type Optional<Type> = {
  [Field in keyof Type]-?: object extends Pick<Type, Field> ? Field : never;
}[keyof Type];

/** A generator for each of these fields. */
type Fields<Type, Names extends keyof Type> = {
  readonly [Field in Names]-?: fc.Arbitrary<Exclude<Type[Field], undefined>>;
};

/** Documents of a type. A field that may be left out is left out, `undefined`, or there. */
export function document<Type extends object>(
  required: Fields<Type, Exclude<keyof Type, Optional<Type>>>,
  optional: Fields<Type, Optional<Type>>,
): fc.Arbitrary<Type> {
  const perhaps = Object.entries<fc.Arbitrary<unknown>>(optional).map(
    ([field, value]) => [field, fc.option(value, { nil: undefined, freq: 9 })] as const,
  );
  const model = { ...required, ...Object.fromEntries(perhaps) };
  return fc.record(model, {
    requiredKeys: Object.keys(required),
  }) as fc.Arbitrary<unknown> as fc.Arbitrary<Type>;
}

/** Documents of a type that comes in kinds. */
export function kinds<Type extends { readonly kind: string }>(forms: {
  readonly [Kind in Type["kind"]]: fc.Arbitrary<Extract<Type, { readonly kind: Kind }>>;
}): fc.Arbitrary<Type> {
  return fc.oneof(...Object.values<fc.Arbitrary<Type>>(forms));
}

/** A number from one end to the other, often an end. */
export const within = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.constantFrom(min, max, (min + max) / 2),
    fc.double({ min, max, noNaN: true, noDefaultInfinity: true }),
  );

/** A number above 0. */
export const above0 = (max: number): fc.Arbitrary<number> => fc.oneof(within(1e-6, max), fc.constant(1e-29));

/** A usual number, and now and then any that is allowed. */
export const mostly = (usual: fc.Arbitrary<number>, any: fc.Arbitrary<number>): fc.Arbitrary<number> =>
  fc.oneof({ weight: 4, arbitrary: usual }, { weight: 1, arbitrary: any });

/** Text of up to so many characters, now and then the longest. */
export const text = (most: number): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 9, arbitrary: fc.string({ maxLength: Math.min(12, most) }) },
    { weight: 1, arbitrary: fc.constant("x".repeat(most)) },
  );

const odd = fc.oneof(
  fc.constantFrom<unknown>(null, true, "", "stock", "1:9", "good", 0, -1, 0.5, 1e9, 1e308, -0, [], {}),
  fc.constantFrom<unknown>({ kind: "table" }, "life", "0+9", "1+99999", NaN, Infinity, "x".repeat(2001)),
  fc.jsonValue({ maxDepth: 2 }),
);

/** Documents near a type: right ones with one or two changes. */
export const near = (documents: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc
    .tuple(documents, fc.array(fc.tuple(fc.nat(), fc.boolean(), odd), { minLength: 1, maxLength: 2 }))
    .map(([document, changes]) =>
      changes.reduce(
        (now, [place, taken, value]) =>
          changed(now, place, (holder, key) => {
            if (taken) takeAway(holder, key, value);
            else holder[key] = value;
          }),
        document,
      ),
    );
