import { inRange } from "../core/guards.js";

/** Air, or the water around a vessel, °C: from a hard frost to boiling (assumed). */
export const AMBIENT_C = { coldest: -50, warmest: 100 } as const;

/** Returns the temperature of the surroundings when it is in range; throws otherwise. */
export const ambientTemperature = (where: string, value: unknown): number =>
  inRange(where, value, AMBIENT_C.coldest, AMBIENT_C.warmest, "temperatureC", "/ambientC");
