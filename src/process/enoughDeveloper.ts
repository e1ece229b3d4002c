/*
 * Module: process. Whether there is enough of the developing bath for what is planned.
 */
import { capacityOf } from "../bath/capacityOf.js";
import type { Caution } from "../core/caution.js";
import { plainObject } from "../core/guards.js";
import type { Handling, ProcessInput } from "./types.js";

/** Fields that a plan has itself; all others are of its `developer`. */
const OF_THE_PLAN = ["/areaCm2", "/volumeMl"];

/**
 * The cautions of `bathCapacity` about a plan whose other fields are checked, with their paths in its input.
 * None where neither a volume nor a brew is known.
 */
export function enoughDeveloper(
  where: string,
  { developer = {}, volumeMl, areaCm2, material, dilution, pieces = 1 }: ProcessInput,
  { vessel, movement }: Handling,
): readonly Caution[] {
  const at = `${where}/developer`;
  plainObject(at, developer);
  if (volumeMl === undefined && developer.brew === undefined) return [];
  // Sheets that are shuffled lie on one another: the floor of the dish is that of one.
  const sheetCm2 = movement === "shuffle" && areaCm2 !== undefined ? areaCm2 / pieces : undefined;
  const floor = vessel === "tray" ? (developer.dishCm2 ?? sheetCm2) : undefined;
  const { cautions } = capacityOf(at, {
    ...developer,
    ...(volumeMl !== undefined && { volumeMl }),
    areaCm2,
    material,
    dilution,
    vessel,
    dishCm2: floor,
  });
  return cautions.map((one) =>
    OF_THE_PLAN.includes(one.path ?? "") ? one : { ...one, path: `/developer${one.path ?? ""}` },
  );
}
