/*
 * Module: process. The plates of an evening, as they come in.
 */
import { brewMaterial } from "../brew/brewCapacity.js";
import type { Caution } from "../core/caution.js";
import { arrayOf, isText, plainObject, positive, refuse, wrongCount } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import type { EveningPlateInput } from "./eveningTypes.js";
import { leftOutText } from "./text.js";

const MOST_PLATES = 1000;

/** What a plate may say of itself. */
const PLATE: Readonly<Record<keyof EveningPlateInput, true>> = {
  areaCm2: true,
  name: true,
  material: true,
  baseline: true,
  conditions: true,
};

/** The plates of an evening, each checked; `where` is their place. */
export function checkedPlates(where: string, plates: unknown): readonly EveningPlateInput[] {
  const list = arrayOf(where, plates, 1);
  if (list.length > MOST_PLATES) wrongCount(where, list.length, { most: MOST_PLATES });
  return list.map((one, i) => {
    const at = `${where}/${i}`;
    const { areaCm2, name, material, baseline, conditions } = plainObject(at, one);
    positive(`${at}/areaCm2`, areaCm2, 1e6, "areaCm2");
    if (name !== undefined) isText(`${at}/name`, name);
    if (material !== undefined) brewMaterial(`${at}/material`, material);
    if (baseline !== undefined) plainObject(`${at}/baseline`, baseline);
    if (conditions !== undefined) notCounted(`${at}/conditions`, conditions);
    return one as EveningPlateInput;
  });
}

/** Refuses a plate's own use or age: the evening counts them. */
function notCounted(at: string, given: unknown): void {
  const conditions = plainObject(at, given);
  for (const field of ["usedCm2PerL", "ageH"])
    if (conditions[field] !== undefined)
      refuse(`${at}/${field}`, "left-out-beside", leftOutText, { path: "/plates" }, conditions[field]);
}

/** A caution for each field of a plate that is not read. */
export const unreadOfPlate = (plate: number, own: EveningPlateInput): readonly Caution[] =>
  unreadFields(`/plates/${plate}`, own, Object.keys(PLATE));
