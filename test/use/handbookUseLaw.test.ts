import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { basisOf } from "../../src/core/term.js";
import { effect, genericUseLaw, handbookUseLaw, useFactor } from "../../src/index.js";
import { anyOf, quoted } from "../helpers.js";
const developers = [
  "metol-hydroquinone-borax",
  "metol-hydroquinone-borax-per-film",
  "metol-sulphite",
  "phenidone-ascorbate",
] as const;

describe("handbookUseLaw", () => {
  it("has a source for each rule, and sensible numbers", () => {
    for (const developer of developers) {
      const law = handbookUseLaw(developer);
      expect(law.sources.join("").length).toBeGreaterThan(20);
      expect(useFactor(0, law.capacityCm2PerL, law)).toBeGreaterThan(1.3);
      expect(useFactor(0, law.capacityCm2PerL, law)).toBeLessThanOrEqual(2);
    }
    expect(() => handbookUseLaw(anyOf("soup"))).toThrow(
      new RangeError(
        `handbookUseLaw: developer must be ${quoted(["metol-hydroquinone-borax", "metol-hydroquinone-borax-per-film", "metol-sulphite", "phenidone-ascorbate"])}, got "soup"`,
      ),
    );
  });
  it("is not published, since none of its figures was read in print", () => {
    for (const developer of developers) {
      const law = handbookUseLaw(developer);
      expect(law).toMatchObject({ seen: "from-memory", dilution: "stock" });
      expect(law).not.toHaveProperty("published");
      expect(basisOf(law)).toBe("handbook");
    }
  });
  test.prop([fc.constantFrom(...developers), fc.double({ min: 0, max: 1, noNaN: true })])(
    "spreads at least as far as the generic rule, up to its capacity",
    (developer, share) => {
      const law = handbookUseLaw(developer);
      const used = share * law.capacityCm2PerL;
      expect(effect("use", 0, used, law).logSd).toBeGreaterThanOrEqual(
        effect("use", 0, used, genericUseLaw).logSd - 1e-12,
      );
    },
  );
});
