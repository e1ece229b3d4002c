/*
 * Module: bath. How much a bath can develop, for all who ask it.
 */
import type { BrewMaterial } from "../brew/brewCapacity.js";
import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { inRange, notOneOf, plainObject, positive } from "../core/guards.js";
import { checkedOrigin } from "../core/term.js";
import { unreadFields } from "../core/pointer.js";
import {
  capacityLimits,
  type CapacityBasis,
  type CapacityLimit,
  type CapacityQuestion,
} from "./capacityLimits.js";
import { floorOf, LEAST_ML_PER_CM2, thinLayer, type Layer } from "./layer.js";
import { leastStockMl } from "./leastStock.js";
import { isFarPast, pastEstimate } from "./pastEstimate.js";
import { stockCautions } from "./stockCautions.js";
import { say } from "./text.js";
import { usedUp } from "./usedUp.js";
import { brewMaterials } from "../brew/brewCapacity.js";
import { vessels } from "../handbook/process.js";

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
  /** what is unwise about the bath */
  readonly cautions: readonly Caution[];
}

/**
 * The answer of `bathCapacity`.
 *
 * @param where - for errors: the function that was called, and its argument
 * @param bath - as for `bathCapacity`
 */
export function capacityOf(where: string, bath: CapacityBath): BathCapacity {
  plainObject(where, bath);
  if (bath.use !== undefined) checkedOrigin(`${where}/use`, bath.use);
  const { brew, areaCm2, usedCm2PerL = 0, material = "film", dilution, vessel } = bath;
  const volumeMl = positive(where, bath.volumeMl ?? brew?.volumeMl, 1e6, "volumeMl", "/volumeMl");
  inRange(where, usedCm2PerL, 0, 1e6, "cm2PerL", "/usedCm2PerL");
  if (areaCm2 !== undefined) positive(where, areaCm2, 1e6, "areaCm2", "/areaCm2");
  if (!brewMaterials.includes(material)) notOneOf(`${where}/material`, brewMaterials, material);
  if (vessel !== undefined && !vessels.includes(vessel)) notOneOf(`${where}/vessel`, vessels, vessel);
  const { limits, allAgentCm2PerL = Infinity } = capacityLimits(where, bath, material);
  const { by, cm2PerL } = limits[0] as CapacityLimit;
  const afterCm2PerL = usedCm2PerL + (1000 * (areaCm2 ?? 0)) / volumeMl;
  const stated = by === "own" || by === "printed";
  const cautions: Caution[] = [...unreadFields("", bath, FIELDS), ...usedUp(usedCm2PerL, cm2PerL, stated)];
  const spent = cautions.some(({ code }) => code === "bath-past-capacity");
  const after = { path: "/areaCm2", quantity: "cm2PerL", actual: afterCm2PerL } as const;
  const ratio = afterCm2PerL / cm2PerL;
  const severity = !stated
    ? pastEstimate(ratio)
    : isFarPast(ratio)
      ? "stop"
      : isPast(ratio, 1)
        ? "warn"
        : undefined;
  const stock = areaCm2 !== undefined && dilution !== undefined && brew === undefined;
  const [short] = stock ? stockCautions({ ...bath, dilution, areaCm2, totalMl: volumeMl }) : [];
  const shortRatio = short === undefined ? 0 : (short.limit as number) / (short.actual as number);
  // One shortage is told once, by what is missing most; of the stock it says how much.
  if (isPast(afterCm2PerL, allAgentCm2PerL))
    cautions.push(say("bath-past-agent", "stop", { ...after, limit: allAgentCm2PerL }));
  else if (severity !== undefined && !spent && isPast(ratio, shortRatio))
    cautions.push(say("bath-capacity-reached", severity, { ...after, limit: cm2PerL, data: { by } }));
  else if (short !== undefined) cautions.push({ ...short, path: "/volumeMl" });
  const floorCm2 = floorOf(where, bath);
  cautions.push(...thinLayer(volumeMl, floorCm2));
  return {
    capacityCm2PerL: cm2PerL,
    capacityCm2: (cm2PerL * volumeMl) / 1000,
    leftCm2: (Math.max(0, cm2PerL - usedCm2PerL) * volumeMl) / 1000,
    ...(stock && { leastStockMl: leastStockMl(where, bath, areaCm2) }),
    ...(floorCm2 > 0 && { leastVolumeMl: LEAST_ML_PER_CM2 * floorCm2 }),
    by,
    limits,
    cautions: gravestFirst(cautions),
  };
}
