/*
 * Module: brew. What is in the water: charge balance over mass balances, with activity coefficients that
 * follow the ionic strength. Two nested roots, each in a bracket that holds one for any make-up, so neither
 * can fail to converge.
 */
import type { AcidSystem } from "../handbook/equilibria.js";
import { activityCoefficients } from "./activity.js";
import type { Bath } from "./bath.js";
import { bracketedRoot } from "./bracketedRoot.js";
import type { BathConstants } from "./constants.js";

/**
 * A solved bath. Species are by charge, in mol/kg: `species.carbonate[2]` is what is present as carbonate.
 */
export interface Solution {
  readonly ph: number;
  readonly ionicStrength: number;
  /** what the charges leave over, mol/kg */
  readonly residual: number;
  readonly hydrogen: number;
  readonly hydroxide: number;
  /** mol/kg of strong base that lifts pH by one */
  readonly buffer: number;
  readonly species: Readonly<Partial<Record<AcidSystem, readonly number[]>>>;
  /** carbon dioxide that leaves as foam, mol/kg */
  readonly foam: number;
}

/** An acid with its total and its constants, against the activity of H⁺. */
interface Present {
  readonly acid: AcidSystem;
  readonly total: number;
  readonly constants: readonly number[];
}

/** Constants in concentrations, from those at infinite dilution. */
function atStrength(acids: readonly Present[], gamma: readonly number[]): readonly Present[] {
  return acids.map(({ acid, total, constants }) => ({
    acid,
    total,
    constants: constants.map((constant, z) => (constant * (gamma[z] as number)) / (gamma[z + 1] as number)),
  }));
}

/** What of an acid stays in the water: carbon dioxide beyond one atmosphere's worth does not. */
function staying({ acid, total }: Present, sum: number, carbonDioxide: number): number {
  return acid === "carbonate" ? Math.min(total, carbonDioxide * sum) : total;
}

interface Balance {
  readonly residual: number;
  readonly slope: number;
  /** Σ m z² of the ions that depend on pH */
  readonly squares: number;
  readonly hydrogen: number;
  readonly hydroxide: number;
}

/** Adds up the charges at a pH. */
function balanceAt(
  ph: number,
  bath: Bath,
  present: readonly Present[],
  gamma: readonly number[],
  { water, carbonDioxide }: BathConstants,
): Balance {
  const activity = 10 ** -ph;
  const hydrogen = activity / (gamma[1] as number);
  const hydroxide = water / activity / (gamma[4] as number);
  let residual = bath.sodium + hydrogen - hydroxide;
  let squares = hydrogen + hydroxide;
  let buffer = squares;
  for (const acid of present) {
    // Each form relative to the uncharged one: their sum, and the sums of their charges and squared charges.
    let form = 1;
    let sum = 1;
    let charge = 0;
    let square = 0;
    let z = 0;
    for (const constant of acid.constants) {
      z += 1;
      form *= constant / activity;
      sum += form;
      charge += z * form;
      square += z * z * form;
    }
    const amount = staying(acid, sum, carbonDioxide);
    const perTerm = amount / sum;
    residual -= perTerm * charge;
    squares += perTerm * square;
    // While carbon dioxide leaves, the uncharged form is held and the ions alone answer to pH.
    buffer += perTerm * (amount < acid.total ? square : square - (charge * charge) / sum);
  }
  return { residual, slope: -Math.LN10 * buffer, squares, hydrogen, hydroxide };
}

/**
 * Solves a bath. For a given ionic strength the charges left over fall strictly with pH, and the ions found
 * then are never more than the totals allow: both brackets hold a root whatever the make-up. With `near`, the
 * solution of a like bath, its ionic strength is taken over: a third of the work where a small change of the
 * bath is asked for.
 */
export function solveBath(bath: Bath, constants: BathConstants, near?: Solution): Solution {
  const cations = bath.sodium + bath.salt;
  const acids = Object.entries(bath.acids).map(([name, total]) => {
    const acid = name as AcidSystem;
    return { acid, total, constants: constants.acids[acid] };
  });
  const totals = acids.reduce((sum, { total }) => sum + total, 0);
  let ph = near?.ph ?? 9;
  const settle = (strength: number): { present: readonly Present[]; balance: Balance } => {
    const gamma = activityCoefficients(strength, cations, constants.debyeHueckel);
    const present = atStrength(acids, gamma);
    const at = (x: number): Balance => balanceAt(x, bath, present, gamma, constants);
    ph = bracketedRoot(at, -5, 30, ph, 1e-11);
    return { present, balance: at(ph) };
  };
  let last = { strength: 0, residual: 0 };
  const excessOf = (strength: number): { residual: number; slope: number } => {
    const residual = bath.salt + (bath.sodium + settle(strength).balance.squares) / 2 - strength;
    // The ions found hardly depend on the strength assumed: a secant from the second turn on.
    const slope = last.residual === 0 ? -1 : (residual - last.residual) / (strength - last.strength);
    last = { strength, residual };
    return { residual, slope };
  };
  const most = cations + 7.5 * totals + 1e-3;
  const ionicStrength = near?.ionicStrength ?? bracketedRoot(excessOf, 0, most, 1.2 * cations + 1e-6, 1e-9);
  const { present, balance } = settle(ionicStrength);
  const { residual, slope, hydrogen, hydroxide } = balance;
  const species: Partial<Record<AcidSystem, readonly number[]>> = {};
  let foam = 0;
  for (const acid of present) {
    const terms = [1];
    for (const constant of acid.constants)
      terms.push(((terms[terms.length - 1] as number) * constant) / 10 ** -ph);
    const sum = terms.reduce((total, term) => total + term, 0);
    const amount = staying(acid, sum, constants.carbonDioxide);
    foam += acid.total - amount;
    species[acid.acid] = terms.map((term) => (term / sum) * amount);
  }
  return { ph, ionicStrength, residual, hydrogen, hydroxide, buffer: -slope, species, foam };
}
