/*
 * Keeping limits as printed, and the test in which an alkaline bath of vitamin C dies at
 * once.
 */
import { convert } from "convert";
import { describe, expect, it } from "vitest";
import { ageFactor, bathVerdict, compensate, handbookKeeping, type AgeLaw } from "../../../src/index.js";
import * as published from "../keeping.js";
import { eachRow } from "./ledger.js";

/** Hours, by the independent converter; a month is a twelfth of 365 days. */
function hours(value: number, unit: "minute" | "hour" | "day" | "month"): number {
  return unit === "month" ? (value * 365 * 24) / 12 : convert(value, unit).to("hour");
}

const limitOf = (developer: string, storage: string): number =>
  handbookKeeping.find((one) => one.developer === developer && one.storage === storage)!.limitH;

export function checkKeeping(): void {
  it.each(published.keepingLimits)(
    "$id: the handbook's limit is the printed one, or lies in the printed range",
    (record) => {
      eachRow(record, ({ developer, storage, low, high, unit }) => {
        const keepingLimitH = limitOf(developer, storage);
        expect(keepingLimitH).toBeGreaterThanOrEqual(hours(low, unit) - 1e-9);
        expect(keepingLimitH).toBeLessThanOrEqual(hours(high, unit) + 1e-9);
        // A limit is a limit: nothing slows down before it, and past it the bath is not used.
        expect(bathVerdict({ ageH: keepingLimitH, keepingLimitH })).toEqual({
          verdict: "usable",
          factor: 1,
          cautions: [],
        });
        expect(bathVerdict({ ageH: keepingLimitH * 1.001, keepingLimitH }).verdict).toBe("discard");
      });
    },
  );

  it("KEP-001 and KEP-002: one bath keeps 256 times as long as the other", () => {
    expect(limitOf("chlorhydroquinone-metol", "open") / limitOf("pyro-metol", "open")).toBeCloseTo(256, 9);
  });

  describe("KEP-003: a plateau, and then a cliff", () => {
    const lifeH = limitOf("carbonate-ascorbate", "open");
    const law: AgeLaw = { kind: "life", lifeH };
    it("no more time while black is full, and no time at all after", () => {
      eachRow(published.cliff, ({ ageH, black }) => {
        if (black === "full") {
          expect(ageFactor(0, ageH, law)).toBe(1);
          expect(bathVerdict({ ageH, age: law }).verdict).toBe("usable");
        } else {
          expect(() => ageFactor(0, ageH, law)).toThrow(RangeError);
          expect(bathVerdict({ ageH, age: law })).toMatchObject({
            verdict: "discard",
            cautions: [{ code: "bath-past-life", severity: "stop" }],
          });
          const { cautions } = compensate({ timeS: 600, temperatureC: 20 }, { ageH }, { age: law });
          expect(cautions.filter(({ severity }) => severity === "stop").map(({ code }) => code)).toContain(
            "bath-past-life",
          );
        }
      });
    });
    it("no half-life gives that shape", () => {
      // Past ten half-lives no time is right: that is a bath which does not reach black.
      const factorAt = (ageH: number, law: AgeLaw & { readonly kind: "half-life" }): number =>
        ageH / law.halfLifeH > 10 ? Infinity : ageFactor(0, ageH, law);
      // Full to 1.5 h means at most a change that shows, 5 %; a half-life that slow is at 9 % after 2.5 h,
      // and black was not reached.
      for (let halfLifeH = 0.1; halfLifeH < 200; halfLifeH *= 1.1) {
        const slow = { kind: "half-life", halfLifeH } as const;
        const [early, late] = [1.5, 2.5].map((ageH) => factorAt(ageH, slow));
        expect(early! <= 1.05 && late! >= 1.5, `${halfLifeH} h`).toBe(false);
      }
    });
  });
}
