/*
 * Module: process. What all baths share: which there are, their temperature, their length and its sources.
 */
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { handbookFixers, handbookStops, handbookWash } from "../handbook/process.js";
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

/** The checked baths of an input: which there are, their kinds, lengths and temperatures. */
export function checkedBaths(where: string, given: ProcessBaths | undefined): ProcessBaths {
  if (given === undefined) return USUAL_BATHS;
  onlyFields(where, given, Object.keys(STEP_OF));
  for (const [name, setting] of Object.entries(given) as [string, unknown][]) {
    if (setting === undefined || !Object.hasOwn(STEP_OF, name)) continue;
    const at = `${where}/${name}`;
    const { durationS, temperatureC } = plainObject(at, setting);
    if (durationS !== undefined) positive(`${at}/durationS`, durationS, 86400, "timeS");
    if (temperatureC !== undefined) inRange(`${at}/temperatureC`, temperatureC, 0, 100, "temperatureC");
  }
  const { stop, fix, wash } = given;
  if (stop?.kind !== undefined) knownEntry(`${where}/stop/kind`, handbookStops, stop.kind);
  if (fix?.kind !== undefined) knownEntry(`${where}/fix/kind`, handbookFixers, fix.kind);
  if (wash?.method !== undefined) knownEntry(`${where}/wash/method`, handbookWash, wash.method);
  return given;
}

/** The temperature of a checked bath: its own, or the developer's. */
export const bathTemperatureC = (context: BathContext, { temperatureC }: BathSetting): number =>
  temperatureC ?? context.temperatureC;

/** What a length rests on: nothing in print, where the input states it. */
export const sourcesOf = (setting: BathSetting, sources: readonly string[]): readonly string[] =>
  setting.durationS === undefined ? sources : [];
