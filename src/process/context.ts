/*
 * Module: process. What every bath needs to know of the run: the material, the vessel, the rounding.
 */
import { brewMaterials, type BrewMaterial } from "../brew/brewCapacity.js";
import { inRange, isBoolean, knownEntry, notOneOf, wrongKind } from "../core/guards.js";
import {
  handbookDrain,
  handbookHabits,
  handbookPaperWash,
  type PaperBase,
  type StopKind,
} from "../handbook/process.js";
import type { Sensitization } from "../inspection/safelightCautions.js";
import { emulsionOf } from "../temperature/emulsionOf.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import type { Handling, ProcessBaths, ProcessInput, ProcessMaterialFacts } from "./types.js";

/** What the steps of all baths need to know. */
export interface BathContext {
  /** function and field of the baths, for errors */
  readonly where: string;
  /** °C of the developer */
  readonly temperatureC: number;
  readonly material: BrewMaterial;
  readonly paperBase: PaperBase;
  readonly iodideRich: boolean;
  readonly soft: boolean;
  readonly carbonate: boolean | undefined;
  readonly sensitization: Sensitization | undefined;
  readonly handling: Handling;
}

/** Checks what the steps of all baths share; `where` is the function and the argument. */
export function bathContext(
  where: string,
  temperatureC: number,
  facts: ProcessMaterialFacts,
  handling: Handling,
  sensitization?: Sensitization,
): BathContext {
  const { material = "film", paperBase = "fibre", iodideRich, carbonate, emulsion } = facts;
  for (const [field, value] of Object.entries({ iodideRich, carbonate }))
    if (value !== undefined) isBoolean(`${where}/${field}`, value);
  if (!brewMaterials.includes(material)) notOneOf(`${where}/material`, brewMaterials, material);
  knownEntry(`${where}/paperBase`, handbookPaperWash, paperBase);
  checkMaterial(where, { emulsion });
  return {
    where: `${where}/baths`,
    temperatureC,
    material,
    paperBase,
    iodideRich: iodideRich === true,
    soft: emulsionOf(material, emulsion) === "soft",
    carbonate,
    sensitization,
    handling,
  };
}

/** What an acid stop meets. */
type Gelatin = Pick<BathContext, "soft" | "carbonate">;

/**
 * The kind of the stop bath. Acid would blister soft gelatin after a soda developer, and spoil plain hypo:
 * there it is water unless the input says otherwise.
 */
export function stopKind(context: Gelatin, { stop, fix }: ProcessBaths): StopKind {
  if (stop?.kind !== undefined) return stop.kind;
  return fix?.kind === "plain" || blisters(context) ? "water" : "acid";
}

/** Whether an acid stop can blister this gelatin: it is soft, and the developer may hold carbonate. */
export const blisters = ({ soft, carbonate }: Gelatin): boolean => soft && carbonate !== false;

/** How the development is done, checked: what the input leaves out is the habit of vessel and movement. */
export function handlingOf(where: string, input: ProcessInput): Handling {
  const { vessel, pieces, material, stepS } = input;
  const habit = knownEntry(`${where}/vessel`, handbookHabits, vessel);
  if (pieces !== undefined) checkedPieces(where, pieces);
  // A sheet cannot be shuffled alone, and glass plates would scratch each other.
  const stack = vessel === "tray" && pieces !== undefined && pieces > 1 && material !== "plate";
  const { movement = stack ? "shuffle" : habit.movements[0] } = input;
  if (!habit.movements.includes(movement)) notOneOf(`${where}/movement`, habit.movements, movement);
  const usual = habit.everyS === 0 ? "continuous" : { everyS: habit.everyS };
  // Only what is left out gets the habit; null, which is what JSON makes of NaN, is refused.
  const { agitation = usual, drainS = handbookDrain[movement].drainS } = input;
  inRange(`${where}/drainS`, drainS, 0, 600, "timeS");
  return {
    vessel,
    movement,
    agitation,
    ...(vessel === "tray" && pieces !== undefined && pieces > 1 && { pieces }),
    drainS,
    ...(stepS === undefined ? {} : { stepS: checkedStep(where, stepS) }),
  };
}

/** Refuses what is no number of sheets or plates. */
export function checkedPieces(where: string, pieces: unknown): void {
  if (!Number.isInteger(inRange(`${where}/pieces`, pieces, 1, 1000, "count")))
    wrongKind(`${where}/pieces`, ["whole number"], pieces);
}

/** A step to round to, s. */
export function checkedStep(where: string, stepS: unknown): number {
  return inRange(`${where}/stepS`, stepS, 0.1, 3600, "timeS");
}
