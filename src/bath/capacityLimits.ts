import { capacityOfBrew, materialLimits, type BrewMaterial } from "../brew/brewCapacity.js";
import { readBrew, type DeveloperBrew } from "../brew/brew.js";
import { positive } from "../core/guards.js";
import { logConcentration, readDilution, type Dilution } from "../dilution/dilution.js";
import { ROLL_CM2 } from "../handbook/roll.js";
import { stockShare } from "../use/stockShare.js";
import type { UseLaw } from "../use/useFactor.js";
import { leastStock, type LeastStockOf } from "./leastStock.js";

/** What a capacity rests on. */
export type CapacityBasis = "own" | "printed" | "agent" | "bromide" | "stock" | "practice";

/** One limit of a bath. */
export interface CapacityLimit {
  /** what sets this limit */
  readonly by: CapacityBasis;
  /** cm² per litre of bath */
  readonly cm2PerL: number;
  /** where it comes from */
  readonly sources: readonly string[];
}

/** What decides how much a litre of a bath can develop. */
export interface CapacityQuestion extends LeastStockOf {
  /** dilution of the bath; of a brew, how far it was diluted after mixing */
  readonly dilution?: Dilution | string | undefined;
  /** what the bath is, where it was mixed from groceries */
  readonly brew?: DeveloperBrew | undefined;
  /** the rule of use, with the capacity that was printed for its dilution */
  readonly use?: UseLaw | undefined;
  /** own or the maker's capacity of the bath as it is, cm² per litre; goes before all others */
  readonly capacityCm2PerL?: number | undefined;
}

const AGENT: readonly string[] = ["a fifth of the silver that the agent can reduce (assumed)"];
const BROMIDE: readonly string[] = [
  "bromide released to that of 1 g/l of potassium bromide (assumed; silver coated from memory)",
];
const PRACTICE: readonly string[] = ["250 ml of bath for each roll (common practice)"];
const STOCK: readonly string[] = ["least stock for each roll, by family (from memory or common practice)"];

/**
 * The limits of a bath that is checked, the one that decides first: its own capacity, else the printed one,
 * else the least of what chemistry, stock and practice allow.
 */
export function capacityLimits(
  where: string,
  question: CapacityQuestion,
  material: BrewMaterial,
): { readonly limits: readonly CapacityLimit[]; readonly allAgentCm2PerL?: number } {
  const { dilution, brew, use, capacityCm2PerL: own, family, leastMlPerRoll } = question;
  const concentration =
    dilution === undefined ? 1 : Math.exp(logConcentration(readDilution(`${where}/dilution`, dilution)));
  const stated: CapacityLimit[] = [];
  if (own !== undefined)
    stated.push({
      by: "own",
      cm2PerL: positive(where, own, 1e6, "cm2PerL", "/capacityCm2PerL"),
      sources: ["own or the maker's"],
    });
  if (use?.capacityCm2PerL !== undefined)
    stated.push({
      by: "printed",
      cm2PerL:
        positive(where, use.capacityCm2PerL, 1e6, "cm2PerL", "/use/capacityCm2PerL") *
        stockShare(where, dilution, use),
      sources: use.sources ?? [],
    });
  const { bromide, practice } = materialLimits(material);
  const found: CapacityLimit[] = [
    { by: "bromide", cm2PerL: bromide, sources: BROMIDE },
    { by: "practice", cm2PerL: practice, sources: PRACTICE },
  ];
  if (family !== undefined || leastMlPerRoll !== undefined) {
    const { mlPerRoll } = leastStock(where, question);
    found.push({
      by: "stock",
      cm2PerL: (1000 * concentration * ROLL_CM2) / mlPerRoll,
      sources: STOCK,
    });
  }
  const mixed = brew === undefined ? undefined : capacityOfBrew(readBrew(`${where}/brew`, brew), material);
  if (mixed !== undefined)
    found.push({ by: "agent", cm2PerL: mixed.agentCm2PerL * concentration, sources: AGENT });
  found.sort((a, b) => a.cm2PerL - b.cm2PerL);
  const limits = [...stated, ...found];
  return mixed === undefined
    ? { limits }
    : { limits, allAgentCm2PerL: mixed.allAgentCm2PerL * concentration };
}
