import type { BrewMaterial } from "../brew/brewCapacity.js";
import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { inRange, notOneOf, plainObject, positive } from "../core/guards.js";
import { checkedOrigin } from "../core/term.js";
import { unreadFields } from "../core/pointer.js";
import { capacityCautions } from "../use/capacityCautions.js";
import {
  capacityLimits,
  type CapacityBasis,
  type CapacityLimit,
  type CapacityQuestion,
} from "./capacityLimits.js";
import { floorOf, LEAST_ML_PER_CM2, thinLayer, type Layer } from "./layer.js";
import { leastStockMl } from "./leastStock.js";
import { stockCautions } from "./stockCautions.js";
import { say } from "./text.js";
import { brewMaterials } from "../brew/brewCapacity.js";
import { vessels } from "../handbook/process.js";

const WHERE = "bathCapacity/bath";
const FIELDS: readonly string[] = [
  ...["volumeMl", "dilution", "brew", "use", "capacityCm2PerL", "family", "leastMlPerRoll"],
  ...["material", "areaCm2", "usedCm2PerL", "vessel", "dishCm2"],
];

/** A bath, and what is to be developed in it. */
export interface CapacityBath extends CapacityQuestion, Layer {
  /** volume of the bath, ml; that of the brew when left out */
  readonly volumeMl?: number | undefined;
  /** `"film"` when left out */
  readonly material?: BrewMaterial | undefined;
  /** area developed in a litre of the bath before, cm²/l; 0 when left out */
  readonly usedCm2PerL?: number | undefined;
}

/** How much a bath can develop. */
export interface BathCapacity {
  /** cm² in each litre of the bath, from fresh to spent */
  readonly capacityCm2PerL: number;
  /** cm² in the whole bath, from fresh to spent */
  readonly capacityCm2: number;
  /** cm² that the bath can develop still */
  readonly leftCm2: number;
  /** the least stock for the area, ml, where a dilution and an area are given */
  readonly leastStockMl?: number;
  /** the least bath for the dish, ml, where there is one */
  readonly leastVolumeMl?: number;
  /** the limit that decides */
  readonly by: CapacityBasis;
  /** all limits, the one that decides first */
  readonly limits: readonly CapacityLimit[];
  readonly cautions: readonly Caution[];
}

/**
 * How much a bath can develop, and whether it is enough.
 *
 * @param bath - its volume (above 0 to 1e6 ml), dilution, brew, laws and limits where known, and the material
 * and area (above 0 to 1e6 cm²) that is to be developed in it
 * @returns the capacity in cm², what is left of it, the limits behind it, and cautions
 * @throws TypeError when something is of the wrong kind, or there is neither a volume nor a brew
 * @throws RangeError when a value is out of range
 *
 * @remarks An own capacity goes first, then that of the use law at its dilution, then the least of: a fifth
 * of the silver that a brew's agent can reduce, bromide released to that of 1 g/l, the least stock of the
 * family, and 250 ml a roll (common practice). Own, printed and stock capacities are as stated, whatever the
 * material; the others count film at 5, plates at 7.5 and paper at 1.6 g/m² of silver (from memory). Past a
 * stated capacity is a stop, past an estimated one a warning; past all agent at all silver coated is a stop.
 * A dish needs 0.5 ml for each cm²: two fluid ounces for a quarter plate, four for a half plate (household
 * encyclopaedia, Photography: Development of the Negative, part 2).
 *
 * @example
 * ```ts
 * const { capacityCm2, by } = bathCapacity({ volumeMl: 500, areaCm2: 1032.256 });
 * [capacityCm2 / 516.128, by] // => [2, "practice"]
 * ```
 */
export function bathCapacity(bath: CapacityBath): BathCapacity {
  plainObject(WHERE, bath);
  if (bath.use !== undefined) checkedOrigin(`${WHERE}/use`, bath.use);
  const { brew, areaCm2, usedCm2PerL = 0, material = "film", dilution, vessel } = bath;
  const volumeMl = positive(WHERE, bath.volumeMl ?? brew?.volumeMl, 1e6, "volumeMl", "/volumeMl");
  inRange(WHERE, usedCm2PerL, 0, 1e6, "cm2PerL", "/usedCm2PerL");
  if (areaCm2 !== undefined) positive(WHERE, areaCm2, 1e6, "areaCm2", "/areaCm2");
  if (!brewMaterials.includes(material)) notOneOf(`${WHERE}/material`, brewMaterials, material);
  if (vessel !== undefined && !vessels.includes(vessel)) notOneOf(`${WHERE}/vessel`, vessels, vessel);
  const { limits, allAgentCm2PerL = Infinity } = capacityLimits(WHERE, bath, material);
  const { by, cm2PerL } = limits[0] as CapacityLimit;
  const afterCm2PerL = usedCm2PerL + (1000 * (areaCm2 ?? 0)) / volumeMl;
  const stated = by === "own" || by === "printed";
  const cautions: Caution[] = [...unreadFields("", bath, FIELDS)];
  const after = { path: "/areaCm2", quantity: "cm2PerL", actual: afterCm2PerL } as const;
  if (isPast(afterCm2PerL, allAgentCm2PerL))
    cautions.push(say("stop", "bath-past-agent", { ...after, limit: allAgentCm2PerL }));
  if (isPast(usedCm2PerL, cm2PerL))
    for (const one of capacityCautions(usedCm2PerL, cm2PerL))
      cautions.push({ ...one, severity: stated ? "stop" : "warn", path: "/usedCm2PerL" });
  else if (isPast(afterCm2PerL, cm2PerL))
    cautions.push(say("warn", "bath-capacity-reached", { ...after, limit: cm2PerL, data: { by } }));
  const floorCm2 = floorOf(WHERE, bath);
  cautions.push(...thinLayer(volumeMl, floorCm2));
  const stock = areaCm2 !== undefined && dilution !== undefined && brew === undefined;
  if (stock)
    for (const one of stockCautions({ ...bath, dilution, areaCm2, totalMl: volumeMl }))
      cautions.push({ ...one, path: "/volumeMl" });
  return {
    capacityCm2PerL: cm2PerL,
    capacityCm2: (cm2PerL * volumeMl) / 1000,
    leftCm2: (Math.max(0, cm2PerL - usedCm2PerL) * volumeMl) / 1000,
    ...(stock && { leastStockMl: leastStockMl(WHERE, bath, areaCm2) }),
    ...(floorCm2 > 0 && { leastVolumeMl: LEAST_ML_PER_CM2 * floorCm2 }),
    by,
    limits,
    cautions: gravestFirst(cautions),
  };
}
