/*
 * Module: handbook. Published laws for 2 NaHCO3 → Na2CO3 + H2O + CO2 in thin powder.
 */

/**
 * A rate constant k = a·exp(−E/RT), a in 1/s, and the shape it goes with: first order, or a shrinking cube.
 */
export interface BakingLaw {
  readonly energyKJPerMol: number;
  readonly perS: number;
  readonly cube?: true;
  /** where it is used, °C, when not everywhere */
  readonly fromC?: number;
  readonly toC?: number;
}

/**
 * Four laws; their disagreement is the honest spread. The gap between those of Ball is split in the middle.
 * In turn: Y. Wu, S. Shih, Thermochim. Acta 223, 1993, p. 177 (abstract; nitrogen, 87 to 177 °C); M. C. Ball
 * et al., J. Chem. Soc. Faraday Trans. 1, 82, 1986, p. 3709 (abstract): below 117 °C in nitrogen, below 117
 * °C in carbon dioxide, and above 167 °C.
 */
export const handbookBaking: readonly BakingLaw[] = [
  { energyKJPerMol: 105.8, perS: 6.7e12 / 60 },
  { energyKJPerMol: 64, perS: 1e5, toC: 142 },
  { energyKJPerMol: 130, perS: 10 ** 13.5, toC: 142 },
  { energyKJPerMol: 32, perS: 10, cube: true, fromC: 142 },
];
