import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brewPh, checkBrew, scaleBrew, type DeveloperBrew, type WeighedPart } from "../../src/index.js";
import { activityCoefficients } from "../../src/brew/activity.js";
import { bathOf } from "../../src/brew/bath.js";
import { readBrew } from "../../src/brew/brew.js";
import { bracketedRoot } from "../../src/brew/bracketedRoot.js";
import { constantsAt } from "../../src/brew/constants.js";
import { solveBath } from "../../src/brew/equilibrium.js";
import type { AcidSystem } from "../../src/handbook/equilibria.js";
import { BORAX_BUFFER, CARBONATE_BUFFER, PHOSPHATE_BUFFER, RECIPES, SODA_PH } from "../reference/brew.js";
import { pitzerPh } from "../reference/pitzer.js";
import { anyBrew, brewOf, hutBrew, part, sensibleBrew, solve } from "./brews.js";

const G = { soda: 105.9875, bicarbonate: 84.0058, borax: 381.3625 };

describe("pH against published standards", () => {
  // Worst deviation 0.012, at 20 °C; the standard itself is quoted to 0.005.
  it.each(CARBONATE_BUFFER)("carbonate buffer at %d °C is %d within 0.02", (temperatureC, ph) => {
    const brew = {
      volumeMl: 1000,
      temperatureC,
      ingredients: [part("soda-anhydrous", 0.025 * G.soda), part("baking-soda", 0.025 * G.bicarbonate)],
    };
    expect(Math.abs(brewPh(brew).ph - ph)).toBeLessThan(0.02);
  });

  it("carbonate buffer at 25 °C against Staples and Bates, J. Res. NBS 73A, 1969, p. 37: 10.012, we are 0.010 low", () => {
    const brew = {
      volumeMl: 1000,
      temperatureC: 25,
      ingredients: [part("soda-anhydrous", 2.65), part("baking-soda", 2.1)],
    };
    expect(brewPh(brew).ph - 10.012).toBeCloseTo(-0.01, 2);
  });

  it.each(BORAX_BUFFER)("0.01 m borax at %d °C is %d within 0.02", (temperatureC, ph) => {
    const brew = { volumeMl: 1000, temperatureC, ingredients: [part("borax", 0.01 * G.borax)] };
    expect(Math.abs(brewPh(brew).ph - ph)).toBeLessThan(0.02);
  });

  it.each(PHOSPHATE_BUFFER)("0.025 m + 0.025 m phosphate at %d °C is %d within 0.02", (temperatureC, ph) => {
    const bath = { sodium: 0.075, salt: 0, acids: { phosphate: 0.05 } };
    expect(Math.abs(solveBath(bath, constantsAt(temperatureC)).ph - ph)).toBeLessThan(0.02);
  });

  // We are 0.008 and 0.011 high at 1 and 5 %, 0.024 low at 10 %; the source prints two decimals and no
  // method.
  it.each(SODA_PH)("%d %% soda, %d g a litre, is of pH %d within 0.03", (_, massG, ph) => {
    const found = brewPh({ volumeMl: 1000, temperatureC: 25, ingredients: [part("soda-anhydrous", massG)] });
    expect(Math.abs(found.ph - ph)).toBeLessThan(0.03);
    expect(found.low).toBeLessThan(ph);
    expect(found.high).toBeGreaterThan(ph);
  });

  it("an independent Pitzer reckoning lies 0 to 0.1 below, over soda and equal parts up to 1 mol/kg", () => {
    for (const molal of [0.001, 0.01, 0.05, 0.1, 0.2, 0.5, 1])
      for (const share of [0, 1]) {
        const { ph } = brewPh({
          volumeMl: 1000,
          temperatureC: 25,
          ingredients: [
            part("soda-anhydrous", molal * G.soda),
            part("baking-soda", share * molal * G.bicarbonate),
          ],
        });
        const difference = ph - pitzerPh(molal, share * molal);
        expect(difference, `${molal} mol/kg soda, ${share} of bicarbonate`).toBeGreaterThan(-0.003);
        expect(difference, `${molal} mol/kg soda, ${share} of bicarbonate`).toBeLessThan(0.106);
      }
  });

  // 8.12 here, 0.18 low: handbook solutions have lost carbon dioxide to the air, which this closed balance
  // keeps.
  it("0.1 mol/l of baking soda is inside handbook values of 8.3 ± 0.2 (from memory)", () => {
    const { ph } = brewPh({ volumeMl: 1000, temperatureC: 25, ingredients: [part("baking-soda", 8.4)] });
    expect(Math.abs(ph - 8.3)).toBeLessThan(0.2);
  });

  it("coffee alone is of pH 4.85 to 5.2 (Batali et al. 2021; Rao and Fuller 2018)", () => {
    const { ph } = brewPh(brewOf(part("instant-coffee", 15)));
    expect(ph).toBeGreaterThan(4.85);
    expect(ph).toBeLessThan(5.2);
  });

  it("published household recipes come out alkaline and pass; with baking soda instead they do not", () => {
    for (const { source, volumeMl, soda, ascorbic, coffee, bromide } of RECIPES) {
      const rest = [
        part("ascorbic-acid", ascorbic),
        part("instant-coffee", coffee),
        part("potassium-bromide", bromide),
      ];
      const good: DeveloperBrew = { volumeMl, ingredients: [part("soda-anhydrous", soda), ...rest] };
      const poor: DeveloperBrew = { volumeMl, ingredients: [part("baking-soda", soda), ...rest] };
      const grave = (brew: DeveloperBrew): string[] =>
        checkBrew(brew)
          .filter(({ severity }) => severity === "stop")
          .map(({ code }) => code);
      expect(brewPh(good).low, source).toBeGreaterThan(9);
      expect(grave(good), source).toEqual([]);
      expect(brewPh(poor).high, source).toBeLessThan(8.5);
      expect(grave(poor), source).toEqual(["alkali-too-weak"]);
    }
  });

  // The author prints 11.6 before coffee and 10.6 after; we give 10.92 and 10.30, 0.7 and 0.3 low. The second constant
  // of ascorbic acid is not all of it: with the highest in print, 12.07, it would be 11.19 and 10.49. The first figure
  // lies 0.36 above our interval, and no printed constant would bring it inside; how it was measured is not said.
  it("a concentrate of ascorbate set with caustic soda, then coffee (2013): 10.6 is held, 11.6 is missed by 0.4", () => {
    const before = [part("ascorbic-acid", 60), part("sodium-hydroxide", 20), part("potassium-bromide", 5)];
    const alkaline = brewPh({ volumeMl: 250, ingredients: before });
    const set = brewPh({ volumeMl: 250, ingredients: [...before, part("instant-coffee", 60)] });
    expect(alkaline.ph).toBeCloseTo(10.92, 1);
    expect(11.6 - alkaline.high).toBeLessThan(0.4);
    expect(set.ph).toBeCloseTo(10.3, 1);
    expect(set.low).toBeLessThan(10.6);
    expect(set.high).toBeGreaterThan(10.6);
  });
});

describe("constants", () => {
  // Plummer and Busenberg print 6.352, 10.329, 1.468 and 14.000 at 25 °C; Malmberg and Maryott's water gives
  // A = 0.5115.
  it("at 25 °C", () => {
    const { acids, water, carbonDioxide, debyeHueckel } = constantsAt(25);
    const p = (k: number | undefined): number => -Math.log10(k as number);
    expect(acids.carbonate.map(p)).toEqual([expect.closeTo(6.352, 3), expect.closeTo(10.329, 3)]);
    expect(acids.phosphate.map(p)).toEqual([
      expect.closeTo(2.15, 3),
      expect.closeTo(7.207, 3),
      expect.closeTo(12.346, 3),
    ]);
    // The first from memory, as those of citrate, chlorogenate, coffee and sulphite below. The second is between the
    // handbooks' 11.57 to 11.79 (from memory) and 12.07 by electrophoresis.
    expect(acids.ascorbate.map(p)).toEqual([expect.closeTo(4.15, 9), expect.closeTo(11.8, 9)]);
    expect(acids.citrate.map(p)).toEqual([3.13, 4.76, 6.4].map((k) => expect.closeTo(k, 9) as number));
    expect(acids.chlorogenate.map(p)).toEqual([
      expect.closeTo(3.45, 9),
      expect.closeTo(8.4, 9),
      expect.closeTo(11.25, 9),
    ]);
    expect(acids.sulphite.map(p)).toEqual([expect.closeTo(1.9, 9), expect.closeTo(7.2, 9)]);
    expect([...acids.coffeeAcid, ...acids.coffeePhenol].map(p)).toEqual([
      expect.closeTo(6, 9),
      expect.closeTo(9.5, 9),
    ]);
    // The USGS database of 2009 has 9.24.
    expect(Math.abs(p(acids.borate[0]) - 9.24)).toBeLessThan(0.006);
    expect(p(water)).toBeCloseTo(14, 3);
    expect(p(carbonDioxide)).toBeCloseTo(1.468, 3);
    expect(debyeHueckel).toBeCloseTo(0.5115, 4);
  });

  // Computed from the sources named; the table of A gives 0.4918 and 0.5374.
  it("at 0 and 50 °C", () => {
    expect(-Math.log10(constantsAt(0).acids.carbonate[1] as number)).toBeCloseTo(10.629, 3);
    expect(-Math.log10(constantsAt(50).water)).toBeCloseTo(13.275, 3);
    expect(constantsAt(0).debyeHueckel).toBeCloseTo(0.4918, 4);
    expect(constantsAt(50).debyeHueckel).toBeCloseTo(0.5374, 4);
  });

  // pKw by Harned and Owen, log Kw = −4470.99/T + 6.0875 − 0.01706 T: an independent equation, 0 to 60 °C.
  // The two published equations part by 0.0140 at 50 °C, the most.
  it("water agrees with Harned and Owen within 0.0145 from 0 to 50 °C", () => {
    for (let c = 0; c <= 50; c += 5) {
      const t = c + 273.15;
      expect(
        Math.abs(Math.log10(constantsAt(c).water) - (-4470.99 / t + 6.0875 - 0.01706 * t)),
        `${c} °C`,
      ).toBeLessThan(0.0145);
    }
  });

  it("activity coefficients are Davies up to 0.3 and go on without a step", () => {
    const strength = 0.1;
    const davies = (z: number): number =>
      10 ** (-0.5 * z * z * (Math.sqrt(strength) / (1 + Math.sqrt(strength)) - 0.3 * strength));
    expect(activityCoefficients(strength, 0.1, 0.5)).toEqual(
      [1, davies(1), davies(2), davies(3), davies(1)].map((g) => expect.closeTo(g, 12) as number),
    );
    const [below, above] = [activityCoefficients(0.3, 0.2, 0.5), activityCoefficients(0.3 + 1e-9, 0.2, 0.5)];
    above.forEach((g, z) => {
      expect(g).toBeCloseTo(below[z] as number, 7);
    });
  });

  // OECD NEA TDB-2: log γ = −A z² √I/(1 + 1.5√I) + ε m; between two strengths above the join the change is
  // that.
  it("activity coefficients change by specific interaction above 0.3", () => {
    const log = (strength: number, sodium: number): number[] =>
      activityCoefficients(strength, sodium, 0.5).map((g) => Math.log10(g));
    const d = (i: number): number => Math.sqrt(i) / (1 + 1.5 * Math.sqrt(i));
    const [one, two] = [log(1, 0.8), log(2, 1.6)];
    const metal = 1.6 * (1 - 0.15) - 0.8 * 0.7;
    for (const [i, z, interaction] of [
      [1, 1, 0],
      [2, 2, -0.08],
      [3, 3, -0.25],
      [4, 1, 0.04],
    ] as const)
      expect((two[i] as number) - (one[i] as number)).toBeCloseTo(
        -0.5 * z * z * (d(2) - d(1)) + interaction * metal,
        12,
      );
  });
});

describe("the root finder", () => {
  it("finds a root by Newton, and by halving when the slope misleads it", () => {
    const falling = (residual: (x: number) => number, slope: (x: number) => number) => (x: number) => ({
      residual: residual(x),
      slope: slope(x),
    });
    const line = (x: number): number => 2 - x;
    expect(
      bracketedRoot(
        falling(
          (x) => 8 - x ** 3,
          (x) => -3 * x ** 2,
        ),
        0,
        10,
        1,
        1e-13,
      ),
    ).toBeCloseTo(2, 12);
    expect(
      bracketedRoot(
        falling(line, () => -1e-9),
        0,
        10,
        1,
        1e-13,
      ),
    ).toBeCloseTo(2, 12);
    expect(
      bracketedRoot(
        falling(line, () => -1e9),
        0,
        10,
        1,
        1e-13,
      ),
    ).toBeCloseTo(2, 12);
    expect(
      bracketedRoot(
        falling(line, () => 1),
        0,
        10,
        1,
        1e-13,
      ),
    ).toBeCloseTo(2, 12);
    expect(
      bracketedRoot(
        falling(line, () => NaN),
        0,
        10,
        1,
        1e-13,
      ),
    ).toBeCloseTo(2, 12);
    expect(
      bracketedRoot(
        falling(
          (x) => (x < 7 ? 1 : -1),
          () => -1e9,
        ),
        0,
        10,
        1,
        0,
      ),
    ).toBeCloseTo(7, 12);
    expect(
      bracketedRoot(
        falling(
          (x) => 5 - x,
          () => -1,
        ),
        0,
        10,
        5,
        1e-13,
      ),
    ).toBe(5);
  });

  it("ends when two neighbouring numbers are left", () => {
    const turns: number[] = [];
    const found = bracketedRoot(
      (x) => (turns.push(x), { residual: x < Math.PI ? 1 : -1, slope: -1e-3 }),
      0,
      10,
      1,
      0,
    );
    expect(Math.abs(found - Math.PI)).toBeLessThan(1e-14);
    expect(turns.length).toBeLessThan(100);
  });

  it("takes few turns where Newton leads", () => {
    const turns: number[] = [];
    bracketedRoot((x) => (turns.push(x), { residual: 8 - x ** 3, slope: -3 * x ** 2 }), 0, 10, 3, 1e-9);
    expect(turns.length).toBeLessThan(8);
  });
});

describe("laws of the balance", () => {
  it("charges close to 1e-10 and masses are kept, whatever is mixed", () => {
    fc.assert(
      fc.property(anyBrew, (brew) => {
        const { species, hydrogen, hydroxide, ionicStrength, residual, foam, ph } = solve(brew);
        expect(Math.abs(residual)).toBeLessThan(1e-10);
        expect(Object.values({ hydrogen, hydroxide, ionicStrength, foam, ph }).every(Number.isFinite)).toBe(
          true,
        );
        const { sodium, acids } = bathOf(readBrew("test: brew", brew).parts, 1000);
        let left = sodium + hydrogen - hydroxide;
        for (const [name, forms] of Object.entries(species)) {
          forms.forEach((molal, z) => (left -= z * molal));
          const kept = forms.reduce((sum, molal) => sum + molal, name === "carbonate" ? foam : 0);
          expect(kept).toBeCloseTo(acids[name as AcidSystem] as number, 10);
        }
        expect(Math.abs(left)).toBeLessThan(1e-10);
      }),
    );
  });

  it("sodium, carbonate and ascorbate come back as they went in", () => {
    const brew = brewOf(
      part("soda-anhydrous", G.soda / 10),
      part("sodium-ascorbate", 198.1058 / 20),
      part("sodium-sulphite", 126.0365 / 50),
    );
    const { species, hydrogen, hydroxide, foam } = solve(brew);
    const sum = (forms: readonly number[] | undefined, weigh: (z: number) => number): number =>
      (forms as readonly number[]).reduce((total, molal, z) => total + weigh(z) * molal, 0);
    expect(sum(species.carbonate, () => 1)).toBeCloseTo(0.1, 10);
    expect(sum(species.ascorbate, () => 1)).toBeCloseTo(0.05, 10);
    expect(sum(species.sulphite, () => 1)).toBeCloseTo(0.02, 10);
    const charge = Object.values(species).reduce(
      (total, forms) => total + sum(forms, (z) => z),
      hydroxide - hydrogen,
    );
    expect(charge).toBeCloseTo(0.2 + 0.05 + 0.04, 10);
    expect(foam).toBe(0);
  });

  it("the ionic strength is half the sum of m z²", () => {
    const { ionicStrength, species, hydrogen, hydroxide } = solve(
      brewOf(part("soda-anhydrous", 50), part("table-salt", 5.84397693)),
    );
    const squares = (species.carbonate as readonly number[]).reduce(
      (sum, molal, z) => sum + z * z * molal,
      hydrogen + hydroxide,
    );
    expect(ionicStrength).toBeCloseTo((100 / G.soda + 0.2 + squares) / 2, 6);
  });

  it("carbon dioxide beyond one atmosphere foams off", () => {
    const { foam, species } = solve({
      volumeMl: 1000,
      temperatureC: 25,
      ingredients: [part("ascorbic-acid", 80), part("baking-soda", 20)],
    });
    const stays = (species.carbonate as readonly number[]).reduce((sum, molal) => sum + molal, 0);
    expect(stays + foam).toBeCloseTo(20 / G.bicarbonate, 9);
    expect((species.carbonate as readonly number[])[0]).toBeCloseTo(10 ** -1.468, 4);
    expect(brewPh(brewOf(part("ascorbic-acid", 80), part("baking-soda", 20))).foamMolPerL).toBeGreaterThan(
      0.15,
    );
  });

  it("salt water and a trace are neutral", () => {
    expect(
      brewPh({ volumeMl: 1000, temperatureC: 25, ingredients: [part("table-salt", 1e-6)] }).ph,
    ).toBeCloseTo(7, 3);
  });

  const withMore = (
    brew: DeveloperBrew,
    ingredient: WeighedPart["ingredient"],
    massG: number,
  ): DeveloperBrew => ({
    ...brew,
    ingredients: [...brew.ingredients, part(ingredient, massG)],
  });

  it("pH rises with every gram of carbonate and falls with every gram of acid", () => {
    fc.assert(
      fc.property(sensibleBrew, fc.double({ min: 0.5, max: 5, noNaN: true }), (brew, massG) => {
        const { ph } = brewPh(brew);
        expect(brewPh(withMore(brew, "soda-anhydrous", massG)).ph).toBeGreaterThan(ph);
        expect(brewPh(withMore(brew, "ascorbic-acid", massG)).ph).toBeLessThan(ph);
      }),
    );
  });

  it("pH rises all the way with soda, from a trace to saturation, and through the join at 0.3", () => {
    let before = 0;
    for (let grams = 0.01; grams < 300; grams *= 1.05) {
      const { ph } = brewPh(brewOf(part("soda-anhydrous", grams)));
      expect(ph, `${grams} g`).toBeGreaterThan(before);
      before = ph;
    }
  });

  it("scaling and order change nothing; the interval holds the value", () => {
    fc.assert(
      fc.property(anyBrew, fc.double({ min: 1, max: 5000, noNaN: true }), (brew, volumeMl) => {
        const here = brewPh(brew);
        const scaled = brewPh(scaleBrew(brew, volumeMl));
        const turned = brewPh({ ...brew, ingredients: [...brew.ingredients].reverse() });
        for (const key of ["ph", "low", "high", "ionicStrength"] as const) {
          expect(scaled[key]).toBeCloseTo(here[key], 7);
          expect(turned[key]).toBeCloseTo(here[key], 7);
        }
        expect(here.low).toBeLessThan(here.ph);
        expect(here.high).toBeGreaterThan(here.ph);
      }),
    );
  });

  it("a wider range of spoons never narrows the interval", () => {
    fc.assert(
      fc.property(
        sensibleBrew,
        fc.nat(2),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        (brew, which, less, more) => {
          const ranged = (by: number): DeveloperBrew => ({
            ...brew,
            ingredients: (brew.ingredients as WeighedPart[]).map((p, i) =>
              i === which ? { ...p, lowG: p.massG * (1 - by), highG: p.massG * (1 + by) } : p,
            ),
          });
          const [narrow, wide] = [brewPh(ranged(Math.min(less, more))), brewPh(ranged(Math.max(less, more)))];
          expect(wide.low).toBeLessThanOrEqual(narrow.low + 1e-9);
          expect(wide.high).toBeGreaterThanOrEqual(narrow.high - 1e-9);
        },
      ),
    );
  });
});

describe("the interval", () => {
  const halfOf = (brew: DeveloperBrew): [number, number] => {
    const { ph, low, high } = brewPh(brew);
    return [ph - low, high - ph];
  };

  it("is the model's alone for weighed soda: 0.02 in weak, 0.1 in strong baths, more beyond 3.5", () => {
    expect(halfOf(brewOf(part("soda-anhydrous", 1)))).toEqual([
      expect.closeTo(0.02, 9),
      expect.closeTo(0.02, 9),
    ]);
    const middle = brewOf(part("table-salt", 0.2 * 58.4398));
    expect(halfOf(middle)).toEqual([expect.closeTo(0.06, 5), expect.closeTo(0.06, 5)]);
    expect(halfOf(brewOf(part("soda-anhydrous", 50)))).toEqual([
      expect.closeTo(0.1, 9),
      expect.closeTo(0.1, 9),
    ]);
    expect(halfOf(brewOf(part("table-salt", 7 * 58.4398)))).toEqual([
      expect.closeTo(0.2, 5),
      expect.closeTo(0.2, 5),
    ]);
  });

  it("adds the second constant of ascorbic acid where ascorbate is the buffer", () => {
    // Half neutralised twice: the buffer is ascorbate's own, so 0.3 in the constant is nearly 0.3 in pH.
    const [below, above] = halfOf(
      brewOf(part("ascorbic-acid", 17.6124), part("sodium-hydroxide", 0.15 * 39.9968)),
    );
    expect(below).toBe(above);
    expect(below).toBeGreaterThan(0.25);
    expect(below).toBeLessThan(0.32);
  });

  // 1 to 4 % of solids, the handbook's strong brew.
  it("holds what a brewed coffee of any strength would do", () => {
    const soda = part("soda-anhydrous", 54);
    const { low, high } = brewPh(brewOf(soda, part("brewed-coffee", 750)));
    const at = (solids: number): number =>
      brewPh(brewOf(soda, part("instant-coffee", (750 * solids) / 0.97))).ph;
    expect(low).toBeLessThan(at(0.04));
    expect(high).toBeGreaterThan(at(0.01));
  });

  it("adds spoons on the side they pull to", () => {
    const soda = { ...part("soda-anhydrous", 50), lowG: 25, highG: 50 };
    const brew = brewOf(soda, part("ascorbic-acid", 16));
    const weak = brewPh(brewOf(part("soda-anhydrous", 25), part("ascorbic-acid", 16))).ph;
    const { ph, low, high } = brewPh(brew);
    expect(ph - low).toBeCloseTo(
      Math.hypot(halfOf(brewOf(part("soda-anhydrous", 50), part("ascorbic-acid", 16)))[0], ph - weak),
      9,
    );
    expect(high - ph).toBeCloseTo(
      halfOf(brewOf(part("soda-anhydrous", 50), part("ascorbic-acid", 16)))[1],
      9,
    );
    const more = brewPh(
      brewOf({ ...part("soda-anhydrous", 50), lowG: 50, highG: 100 }, part("ascorbic-acid", 16)),
    );
    const strong = brewPh(brewOf(part("soda-anhydrous", 100), part("ascorbic-acid", 16))).ph;
    const plain = halfOf(brewOf(part("soda-anhydrous", 50), part("ascorbic-acid", 16)));
    expect(more.high - more.ph).toBeCloseTo(Math.hypot(plain[1], strong - more.ph), 9);
    expect(more.ph - more.low).toBeCloseTo(plain[0], 9);
  });

  it("adds coffee's unlike acidity to both sides", () => {
    const { ph, low, high } = brewPh(hutBrew);
    expect(ph - low).toBeGreaterThan(0.12);
    expect(high - ph).toBeGreaterThan(0.12);
    expect(high - low).toBeLessThan(0.6);
  });

  it("takes 20 °C when no temperature is given", () => {
    const plain = { volumeMl: hutBrew.volumeMl, ingredients: hutBrew.ingredients };
    expect(brewPh(plain).ph).toBe(brewPh({ ...plain, temperatureC: 20 }).ph);
    expect(brewPh(plain).ph).not.toBe(brewPh(hutBrew).ph);
  });
});

describe("a mass below what is weighed", () => {
  it("is refused by its own name", () => {
    expect(() => brewPh({ volumeMl: 1000, ingredients: [{ ingredient: "borax", massG: 1e-31 }] })).toThrow(
      /massG must be above 0/,
    );
  });
});

describe("two ranges in one brew", () => {
  const ranged = (ingredient: WeighedPart["ingredient"], massG: number): WeighedPart => ({
    ingredient,
    massG,
    lowG: 0.7 * massG,
    highG: 1.4 * massG,
  });
  // Each range moves alone, so squares add: both ranges widen by what one widens and the other does.
  const bothAdd = (widthOf: (brew: DeveloperBrew) => number): void => {
    const square = (soda: WeighedPart, coffee: WeighedPart): number =>
      widthOf(brewOf(soda, part("baking-soda", 20), coffee)) ** 2;
    const [s, c, sr, cr] = [
      part("soda-anhydrous", 5),
      part("instant-coffee", 60),
      ranged("soda-anhydrous", 5),
      ranged("instant-coffee", 60),
    ];
    const none = square(s, c);
    expect(square(sr, c)).toBeGreaterThan(1.01 * none);
    expect(square(s, cr)).toBeGreaterThan(1.01 * none);
    expect(square(sr, cr) / (square(sr, c) + square(s, cr) - none)).toBeCloseTo(1, 6);
  };
  it("add in pH", () => {
    bothAdd((brew) => {
      const { ph, low } = brewPh(brew);
      return ph - low;
    });
    bothAdd((brew) => {
      const { ph, high } = brewPh(brew);
      return high - ph;
    });
  });
});

describe("brewPh of coffee alone", () => {
  it("is less certain than the model, whose ± is 0.02 in so thin a bath", () => {
    const { low, high, ionicStrength } = brewPh(brewOf(part("instant-coffee", 20)));
    expect(ionicStrength).toBeLessThan(0.1);
    expect(high - low).toBeGreaterThan(2 * 0.02 + 1e-4);
  });
});
