/* What a dilution law can plausibly be. */
import { describe, expect, it } from "vitest";
import { genericDilutionLaw, handbookDilutionLaw, type DilutionLaw } from "../../src/index.js";
import { handbookDilution } from "../../src/handbook/dilution.js";
import { unusualDilutionLaw } from "../../src/dilution/plausible.js";
import { dilutionSeries } from "../reference/dilution.js";

const power = (exponent: number): DilutionLaw => ({ kind: "power", exponent });
const table = (...rows: readonly (readonly [dilution: string, timeS: number])[]): DilutionLaw => ({
  kind: "table",
  rows: rows.map(([dilution, timeS]) => ({ dilution, timeS })),
});

describe("unusualDilutionLaw", () => {
  it.each([
    ["0.2", power(0.2)],
    ["2", power(2)],
    ["the generic law", genericDilutionLaw],
    ["near rows whose step is rounded away", table(["1+9", 360], ["1+10", 360])],
  ])("says nothing of %s", (_name, law) => {
    expect(unusualDilutionLaw(law)).toBeUndefined();
  });
  it.each([
    ["a bath that hardly minds water", power(0.1), "/exponent", 0.2, 0.1],
    ["an exponent above all published", power(2.5), "/exponent", 2, 2.5],
    ["a table of both kinds: level", table(["1+1", 300], ["1+3", 303], ["1+7", 306]), "/rows", 0.2, 0.0143],
    [
      "a table that grows eight times for each doubling",
      table(["1+7", 4800], ["1+1", 75], ["1+3", 600]),
      "/rows",
      2,
      3,
    ],
  ] as const)("names %s", (_name, law, path, limit, actual) => {
    const found = unusualDilutionLaw(law)!;
    expect(found).toMatchObject({ reason: "exponent", path, limit });
    expect(found.actual).toBeCloseTo(actual, 3);
  });
  it("says nothing of any published table, nor of the handbook", () => {
    for (const { rows } of dilutionSeries)
      expect(
        unusualDilutionLaw(table(...rows.map((row) => [row.dilution, row.minutes * 60] as const))),
      ).toBeUndefined();
    for (const family of Object.keys(handbookDilution) as (keyof typeof handbookDilution)[])
      expect(unusualDilutionLaw(handbookDilutionLaw(family))).toBeUndefined();
  });
});
