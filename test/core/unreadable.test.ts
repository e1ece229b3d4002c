/* Checks of documents that refuse to be read. */
import { describe, expect, it } from "vitest";
import { checkConditions, checkLedger, checkLog, checkRecipe } from "../../src/index.js";
import { unlessUnreadable } from "../../src/core/unlessUnreadable.js";

const broken = {
  get timeS(): number {
    throw new Error("no such file");
  },
};
const revoked = (): object => {
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  return proxy;
};
const known = { timeS: 600, temperatureC: 20 };
const checks: readonly (readonly [string, (value: unknown) => unknown])[] = [
  ["checkRecipe", (value) => checkRecipe({ schemaVersion: 2, baseline: value })],
  ["checkLog", (value) => checkLog([value, { timeS: 10, temperatureC: 20 }])],
  ["checkLedger", (value) => checkLedger({ volumeMl: 500, mixedAtH: 0, processed: value })],
  ["a known time for checkConditions", (value) => checkConditions(value, {})],
  ["conditions for checkConditions", (value) => checkConditions(known, { temperatureC: value })],
  ["laws for checkConditions", (value) => checkConditions(known, {}, { temperature: value })],
];

describe.each(checks)("a document that refuses to be read: %s", (_, check) => {
  it.each([
    [
      "by a getter",
      (list: boolean): object => {
        // Each check reads other fields; a list is read by its places.
        const fields = ["0", "timeS", "forEach", "kind", "startC", "temperatureC"];
        const getter = Object.getOwnPropertyDescriptor(broken, "timeS") as PropertyDescriptor;
        return Object.defineProperties(
          list ? [] : {},
          Object.fromEntries(fields.map((field) => [field, { ...getter, enumerable: true }])),
        );
      },
    ],
    ["by a proxy", revoked],
  ])("is a problem, and no error, %s", (_, make) => {
    expect(check(make(false))).toMatchObject({ ok: false });
    expect(check(make(true))).toMatchObject({ ok: false });
  });
});

describe("an error of the check itself", () => {
  it("goes on where the document can be read", () => {
    const fault = (): never => {
      throw new Error("a bug");
    };
    const ring: Record<string, unknown> = { long: Array.from({ length: 10 }, (_, i) => ({ i })) };
    ring["ring"] = ring;
    expect(() => unlessUnreadable([ring, null, 5], fault, () => "refused")).toThrow(new Error("a bug"));
    expect(unlessUnreadable([{ deep: [broken] }], fault, ({ path, code }) => [path, code])).toEqual([
      "",
      "wrong-type",
    ]);
  });
});
