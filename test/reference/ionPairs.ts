/*
 * An independent reckoning of pH at 25 °C: hydrogen phosphate pairs with sodium, boric acid joins into rings, activity
 * coefficients follow ion sizes, and masses are balanced by Newton's method for all
 * bases at once. It shares no line with src/brew; shared are only the published constants, typed again.
 *
 * Carbonic acid and water: Plummer and Busenberg 1982. Phosphate 12.346 and 7.207,
 * boric acid 9.24: USGS thermodynamic database of 2009 (read). Ion sizes of the extended Debye and Hückel equation,
 * NaHPO4− 0.29, sulphite 1.9 and 7.2, citric acid: from memory. The pairs of
 * sodium with carbonate of that database, 1.27 and −0.25, are left out: with them the NBS carbonate buffer of 10.01
 * comes out as 9.87. Rings of boric acid, 3 B(OH)3 = B3O3(OH)4− + H+, −7.3,
 * and 4 B(OH)3 = B4O5(OH)4²− + 2 H+, −15.8: after N. Ingri 1963 (from memory). Coffee and ascorbic acid as in
 * src/handbook/equilibria.ts, since they are what is assumed.
 */

/** Totals put into a kilogram of water, mol; `h` is protons beyond the fully ionised forms. */
export interface Recipe {
  readonly na: number;
  readonly h: number;
  readonly co3?: number;
  readonly asc?: number;
  readonly cga?: number;
  readonly acid?: number;
  readonly phenol?: number;
  readonly b?: number;
  readonly po4?: number;
  readonly so3?: number;
  readonly cit?: number;
  /** salts of strong ions, mol */
  readonly salt?: number;
}

type Base = Exclude<keyof Recipe, "salt">;

/** log10 K of formation from the bases, charge, and how many of each base. */
type Species = readonly [
  logK: number,
  charge: number,
  of: Readonly<Partial<Record<Base, number>>>,
  size?: readonly [a: number, b: number],
];

const SPECIES: readonly Species[] = [
  [0, 1, { na: 1 }, [4.08, 0.082]],
  [0, 1, { h: 1 }, [9, 0]],
  [-14, -1, { h: -1 }, [3.5, 0.015]],
  [0, -2, { co3: 1 }, [5.4, 0]],
  [10.329, -1, { co3: 1, h: 1 }, [5.4, 0]],
  [16.681, 0, { co3: 1, h: 2 }],
  [0, -2, { asc: 1 }],
  [11.8, -1, { asc: 1, h: 1 }],
  [15.95, 0, { asc: 1, h: 2 }],
  [0, -3, { cga: 1 }],
  [11.25, -2, { cga: 1, h: 1 }],
  [19.65, -1, { cga: 1, h: 2 }],
  [23.1, 0, { cga: 1, h: 3 }],
  [0, -1, { acid: 1 }],
  [6, 0, { acid: 1, h: 1 }],
  [0, -1, { phenol: 1 }],
  [9.5, 0, { phenol: 1, h: 1 }],
  [0, -1, { b: 1 }],
  [9.24, 0, { b: 1, h: 1 }],
  [3 * 9.24 - 7.3, -1, { b: 3, h: 2 }],
  [4 * 9.24 - 15.8, -2, { b: 4, h: 2 }],
  [0, -3, { po4: 1 }],
  [12.346, -2, { po4: 1, h: 1 }, [5, 0]],
  [19.553, -1, { po4: 1, h: 2 }, [5.4, 0]],
  [21.703, 0, { po4: 1, h: 3 }],
  [12.346 + 0.29, -1, { po4: 1, h: 1, na: 1 }],
  [0, -2, { so3: 1 }],
  [7.2, -1, { so3: 1, h: 1 }],
  [9.1, 0, { so3: 1, h: 2 }],
  [0, -3, { cit: 1 }],
  [6.4, -2, { cit: 1, h: 1 }],
  [11.16, -1, { cit: 1, h: 2 }],
  [14.29, 0, { cit: 1, h: 3 }],
];

const A = 0.5085;
const B = 0.3285;

/** log10 γ: extended Debye and Hückel with ion sizes, Davies for ions without. */
function logGamma(charge: number, strength: number, size?: readonly [number, number]): number {
  const root = Math.sqrt(strength);
  if (charge === 0) return 0.1 * strength;
  if (size === undefined) return -A * charge ** 2 * (root / (1 + root) - 0.3 * strength);
  return (-A * charge ** 2 * root) / (1 + B * size[0] * root) + size[1] * strength;
}

/** Solves M x = v by elimination with pivots. */
function solveLinear(matrix: readonly (readonly number[])[], vector: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, vector[i]!]);
  const n = rows.length;
  for (let k = 0; k < n; k += 1) {
    let best = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(rows[i]![k]!) > Math.abs(rows[best]![k]!)) best = i;
    [rows[k], rows[best]] = [rows[best]!, rows[k]!];
    for (let i = 0; i < n; i += 1) {
      if (i === k) continue;
      const factor = rows[i]![k]! / rows[k]![k]!;
      for (let j = k; j <= n; j += 1) rows[i]![j]! -= factor * rows[k]![j]!;
    }
  }
  return rows.map((row, i) => row[n]! / row[i]!);
}

/** Everything present at a pH and an ionic strength, by Newton's method for all bases but H⁺ at once. */
function speciate(
  recipe: Recipe,
  x: Map<Base, number>,
  ph: number,
  strength: number,
): { readonly excess: number; readonly strength: number } {
  const bases = [...x.keys()];
  const present = SPECIES.filter(([, , of]) =>
    Object.keys(of).every((base) => base === "h" || x.has(base as Base)),
  );
  const molal = (): number[] =>
    present.map(([logK, charge, of, size]) => {
      const log = Object.entries(of).reduce(
        (sum, [base, count]) => sum + count * (base === "h" ? -ph : x.get(base as Base)!),
        logK,
      );
      return 10 ** (log - logGamma(charge, strength, size));
    });
  const total = (base: Base, m: readonly number[]): number =>
    present.reduce((sum, [, , of], j) => sum + (of[base] ?? 0) * m[j]!, 0);
  for (let turn = 0; turn < 200; turn += 1) {
    const m = molal();
    const off = bases.map((base) => recipe[base]! - total(base, m));
    const slopes = bases.map((one) =>
      bases.map((other) =>
        present.reduce((sum, [, , of], j) => sum + (of[one] ?? 0) * (of[other] ?? 0) * m[j]!, 0),
      ),
    );
    const step = solveLinear(slopes, off).map((change) => change / Math.LN10);
    const most = Math.max(...step.map(Math.abs));
    bases.forEach((base, i) => x.set(base, x.get(base)! + step[i]! * Math.min(1, 0.5 / most)));
    if (most < 1e-9) break;
  }
  const m = molal();
  const squares = present.reduce((sum, [, charge], j) => sum + (charge ** 2 * m[j]!) / 2, recipe.salt ?? 0);
  return { excess: total("h", m) - recipe.h, strength: squares };
}

/** pH of a recipe at 25 °C: protons are balanced by halving, and the ionic strength follows. */
export function ionPairPh(recipe: Recipe): number {
  const names = (["na", "co3", "asc", "cga", "acid", "phenol", "b", "po4", "so3", "cit"] as const).filter(
    (base) => (recipe[base] ?? 0) > 0,
  );
  const x = new Map<Base, number>(names.map((base) => [base, Math.log10(recipe[base]! / 2)]));
  let strength = recipe.na + (recipe.salt ?? 0);
  let ph = 8;
  for (let turn = 0; turn < 100; turn += 1) {
    let [low, high] = turn === 0 ? [2, 14] : [ph - 0.5, ph + 0.5];
    let now = strength;
    while (high - low > 1e-7) {
      ph = (low + high) / 2;
      const found = speciate(recipe, x, ph, strength);
      now = found.strength;
      if (found.excess > 0) low = ph;
      else high = ph;
    }
    if (Math.abs(now - strength) < 1e-7) return ph;
    strength += 0.7 * (now - strength);
  }
  throw new Error("the independent reckoning did not settle");
}
