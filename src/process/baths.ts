/*
 * Module: process. What all baths share: which there are, their temperature, their length and its sources.
 */
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import type { BathContext } from "./context.js";
import type { BathSetting, ProcessBaths, StepName } from "./types.js";

/** The baths of a recipe that does not name any. */
export const USUAL_BATHS: ProcessBaths = { stop: {}, fix: {}, wash: {}, wettingAgent: {} };

/** The step of each bath, in the order in which they are done. */
export const STEP_OF: Readonly<Record<keyof ProcessBaths, StepName>> = {
  preSoak: "pre-soak",
  stop: "stop",
  fix: "fix",
  clearingAid: "clearing-aid",
  wash: "wash",
  wettingAgent: "wetting-agent",
};

/** The checked baths of an input. */
export function checkedBaths(where: string, given: ProcessBaths | undefined): ProcessBaths {
  if (given === undefined) return USUAL_BATHS;
  plainObject(where, given);
  for (const [name, setting] of Object.entries(given) as [string, unknown][]) {
    knownEntry(where, STEP_OF, name);
    if (setting !== undefined) plainObject(`${where}/${name}`, setting);
  }
  return given;
}

/** The temperature of a bath: its own, or the developer's. */
export function bathTemperatureC(
  context: BathContext,
  name: keyof ProcessBaths,
  { temperatureC = context.temperatureC }: BathSetting,
): number {
  return inRange(`${context.where}/${name}/temperatureC`, temperatureC, 0, 100, "temperatureC");
}

/** The length of a bath: its own, or the usual one. */
export function lengthOr(where: string, { durationS }: BathSetting, usualS: number): number {
  return durationS === undefined ? usualS : positive(`${where}/durationS`, durationS, 86400, "timeS");
}

/** What a length rests on: nothing in print, where the input states it. */
export const sourcesOf = (setting: BathSetting, sources: readonly string[]): readonly string[] =>
  setting.durationS === undefined ? sources : [];
