/*
 * An independent reckoning of the pH of soda at 25 °C by K. S. Pitzer's equations for sodium with carbonate,
 * bicarbonate and hydroxide, without the electrostatic mixing terms. It shares no line and no parameter with
 * src/brew but pK2 of carbonic acid.
 *
 * Parameters Na-CO3 and Na-OH, mixing terms: USGS thermodynamic database pitzer.dat (read). Na-HCO3: C. E.
 * Harvie, N. Moller, J. H. Weare, Geochim. Cosmochim. Acta 48, 1984, p. 723 (from memory). pK2 10.329:
 * Plummer and Busenberg 1982; pKw 13.997.
 */
const PK2 = 10.329;
const PKW = 13.997;
const A_PHI = 0.3915;
const IONS = {
  carbonate: { charge: 2, b0: 0.0399, b1: 1.389, c: 0.0044 },
  bicarbonate: { charge: 1, b0: 0.0277, b1: 0.0411, c: 0 },
  hydroxide: { charge: 1, b0: 0.0864, b1: 0.253, c: 0.0044 },
} as const;
type Ion = keyof typeof IONS;
const NAMES = Object.keys(IONS) as Ion[];
const THETA: Record<string, number> = { "bicarbonate carbonate": -0.04, "carbonate hydroxide": 0.1 };
const PSI: Record<string, number> = { "bicarbonate carbonate": 0.002, "carbonate hydroxide": -0.017 };
const pair = (a: Ion, b: Ion): string => [a, b].sort().join(" ");

function logGamma(m: Record<Ion, number>): Record<Ion, number> {
  const sodium = NAMES.reduce((sum, ion) => sum + IONS[ion].charge * m[ion], 0);
  const strength = (sodium + NAMES.reduce((sum, ion) => sum + IONS[ion].charge ** 2 * m[ion], 0)) / 2;
  const root = Math.sqrt(strength);
  const x = 2 * root;
  const g = (2 * (1 - (1 + x) * Math.exp(-x))) / x ** 2;
  const gPrime = (-2 * (1 - (1 + x + x ** 2 / 2) * Math.exp(-x))) / x ** 2;
  const z = 2 * sodium;
  const cOf = (ion: Ion): number => IONS[ion].c / (2 * Math.sqrt(IONS[ion].charge));
  const f =
    -A_PHI * (root / (1 + 1.2 * root) + (2 / 1.2) * Math.log(1 + 1.2 * root)) +
    NAMES.reduce((sum, ion) => sum + (sodium * m[ion] * IONS[ion].b1 * gPrime) / strength, 0);
  const ternary = NAMES.reduce((sum, ion) => sum + sodium * m[ion] * cOf(ion), 0);
  return Object.fromEntries(
    NAMES.map((ion) => {
      const { charge, b0, b1 } = IONS[ion];
      const mixing = NAMES.filter((other) => other !== ion).reduce(
        (sum, other) =>
          sum + m[other] * (2 * (THETA[pair(ion, other)] ?? 0) + sodium * (PSI[pair(ion, other)] ?? 0)),
        0,
      );
      const log = charge ** 2 * f + sodium * (2 * (b0 + b1 * g) + z * cOf(ion)) + mixing + charge * ternary;
      return [ion, log / Math.LN10];
    }),
  ) as Record<Ion, number>;
}

/** pH of a solution of soda and baking soda, mol per kg water each. */
export function pitzerPh(sodaMolal: number, bicarbonateMolal: number): number {
  const total = sodaMolal + bicarbonateMolal;
  const sodium = 2 * sodaMolal + bicarbonateMolal;
  let ph = 10;
  let gamma: Record<Ion, number> = { carbonate: 0, bicarbonate: 0, hydroxide: 0 };
  for (let turn = 0; turn < 60; turn += 1) {
    let low = 6;
    let high = 14;
    const known = gamma;
    const at = (x: number): Record<Ion, number> => {
      const ratio = 10 ** (x - PK2 + known.bicarbonate - known.carbonate);
      const carbonate = (total * ratio) / (1 + ratio);
      return { carbonate, bicarbonate: total - carbonate, hydroxide: 10 ** (x - PKW - known.hydroxide) };
    };
    for (let i = 0; i < 50; i += 1) {
      ph = (low + high) / 2;
      const m = at(ph);
      if (sodium - 2 * m.carbonate - m.bicarbonate - m.hydroxide > 0) low = ph;
      else high = ph;
    }
    gamma = logGamma(at(ph));
  }
  return ph;
}
