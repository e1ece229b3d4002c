/*
 * Module: process. What to have ready: the baths, their volumes, and the water of the wash.
 */
import { formatDilution } from "../dilution/formatDilution.js";
import { readDilution } from "../dilution/dilution.js";
import { mixVolumes } from "../dilution/mixVolumes.js";
import type { StopKind } from "../handbook/process.js";
import type {
  BathSetting,
  ProcessBaths,
  ProcessMaterial,
  ProcessMaterialName,
  ProcessStep,
} from "./types.js";
import { washFillings } from "./wash.js";

const NAMES: Readonly<Record<Exclude<keyof ProcessBaths, "wash">, ProcessMaterialName>> = {
  preSoak: "pre-soak water",
  stop: "stop bath",
  fix: "fixing bath",
  clearingAid: "clearing aid",
  wettingAgent: "wetting agent",
};

/** The list of a plan; `where` is the function and its argument, `stop` the kind of the stop bath. */
export function materialsFor(
  where: string,
  volumeMl: number | undefined,
  dilution: BathSetting["dilution"],
  stop: StopKind,
  baths: ProcessBaths,
  steps: readonly ProcessStep[],
): readonly ProcessMaterial[] {
  const one = (name: ProcessMaterialName, at: string, given: BathSetting["dilution"]): ProcessMaterial => {
    const volume = volumeMl === undefined ? {} : { volumeMl };
    if (given === undefined) return { name, ...volume };
    const read = readDilution(`${at}/dilution`, given);
    const mixed = volumeMl === undefined ? {} : mixVolumes(read, volumeMl);
    return { name, ...volume, dilution: formatDilution(read), ...mixed };
  };
  const materials = [one("developer", where, dilution)];
  for (const [key, name] of Object.entries(NAMES) as [keyof typeof NAMES, ProcessMaterialName][]) {
    const setting = baths[key];
    if (setting === undefined) continue;
    const called = key === "stop" && stop === "water" ? "stop water" : name;
    materials.push(one(called, `${where}/baths/${key}`, setting.dilution));
  }
  const wash = steps.find(({ name }) => name === "wash");
  if (wash === undefined) return materials;
  const name = "wash water";
  if (volumeMl === undefined) return [...materials, { name }];
  return [
    ...materials,
    { name, volumeMl: volumeMl * washFillings(baths.wash?.method ?? "running", wash.durationS) },
  ];
}
