/* What the compiler knows of a caution once its code is asked for. */
import { describe, expect, expectTypeOf, it } from "vitest";
import { compensate, type Caution, type CautionCode, type CautionData } from "../../src/index.js";

/** What is said of a caution by an app in words of its own. */
function own(one: Caution): string {
  switch (one.code) {
    case "far-extrapolation":
    case "outside-table":
      expectTypeOf(one.data.cause).toEqualTypeOf<"temperature" | "dilution">();
      return `far: ${one.data.cause}`;
    case "default-law":
      return `guessed: ${one.data.causes.join(", ")}`;
    case "short-time":
      expectTypeOf(one.data).toEqualTypeOf<undefined>();
      return "short";
    default:
      return one.code;
  }
}

describe("a caution", () => {
  it("has the data of its code", () => {
    const { cautions } = compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: 31 });
    expect(cautions.map(own)).toEqual(expect.arrayContaining(["far: temperature", "short"]));
    expectTypeOf<Caution["code"]>().toEqualTypeOf<CautionCode>();
    expectTypeOf<Caution<"hazard">["data"]>().toEqualTypeOf<CautionData["hazard"]>();
    expectTypeOf<Extract<Caution, { code: "hazard" }>["data"]>().toEqualTypeOf<CautionData["hazard"]>();
  });

  it("is written by hand with the data of its code, and no other", () => {
    const said = { severity: "warn", message: "Far." } as const;
    const far: Caution = { ...said, code: "outside-table", data: { cause: "dilution" } };
    // @ts-expect-error -- its data are missing
    const without: Caution = { ...said, code: "outside-table" };
    // @ts-expect-error -- no table is of agitation
    const wrong: Caution = { ...said, code: "outside-table", data: { cause: "agitation" } };
    expect([far, without, wrong].map(({ code }) => code)).toEqual(Array(3).fill("outside-table"));
  });
});
