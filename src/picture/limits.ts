/*
 * Where a picture has no time, and where it warns: found from the cautions of the answers along the curve.
 */
import type { Compensation } from "../compensate/types.js";
import { gravity, type Caution } from "../core/caution.js";
import type { PictureRefusal, PictureWarning } from "./types.js";

/** A limit is found to this, °C. */
const HUNDREDTHS = 2;

/** The stretches that have no time: neighbours that are refused for one reason. */
export function refusalsAlong(
  ask: (temperatureC: number) => Compensation,
  temperaturesC: readonly number[],
  answers: readonly Compensation[],
): readonly PictureRefusal[] {
  const stops = answers.map(stopOf);
  const refusals: PictureRefusal[] = [];
  let first = 0;
  for (let i = 1; i <= stops.length; i += 1) {
    const stop = stops[first];
    if (i < stops.length && stops[i]?.code === stop?.code) continue;
    if (stop !== undefined) {
      const { code, message } = stop;
      const fromC = edge(ask, temperaturesC, first);
      const toC = edge(ask, temperaturesC, i);
      const side = sideOf(stop);
      refusals.push({ fromC, toC, code, ...(side === undefined ? {} : { side }), message });
    }
    first = i;
  }
  return refusals;
}

/** The temperatures at which a warning begins, but for those that have no time anyway. */
export function warningsAlong(
  answers: readonly Compensation[],
  fromC: number,
  toC: number,
  refusals: readonly PictureRefusal[],
): readonly PictureWarning[] {
  const found = new Map<string, PictureWarning>();
  for (const { cautions } of answers)
    for (const caution of cautions) {
      const { code, message, limit, severity } = caution;
      const side = sideOf(caution);
      if (severity !== "warn" || side === undefined || limit === undefined) continue;
      const refused = refusals.some((one) => one.fromC <= limit && limit <= one.toC);
      if (limit > fromC && limit < toC && !refused)
        found.set(`${code} ${limit}`, { atC: limit, side, code, message });
    }
  return [...found.values()].sort((a, b) => a.atC - b.atC);
}

/** The first caution that refuses the time. */
function stopOf({ cautions }: Compensation): Caution | undefined {
  return cautions.find(({ severity }) => gravity(severity) === 0);
}

/** Where one reason gives way to another, between two points of the curve. */
function edge(
  ask: (temperatureC: number) => Compensation,
  temperaturesC: readonly number[],
  i: number,
): number {
  const before = temperaturesC[i - 1];
  const after = temperaturesC[i];
  if (before === undefined) return after as number;
  if (after === undefined) return before;
  const code = stopOf(ask(before))?.code;
  let [low, high] = [before, after];
  while (high - low > 1e-3) {
    const middle = (low + high) / 2;
    if (stopOf(ask(middle))?.code === code) low = middle;
    else high = middle;
  }
  return Number(((low + high) / 2).toFixed(HUNDREDTHS));
}

/** On which side of its limit a temperature lies; nothing where the caution is about something else. */
function sideOf({ quantity, limit, actual }: Caution): "below" | "above" | undefined {
  if (quantity !== "temperatureC" || limit === undefined || actual === undefined) return undefined;
  return actual < limit ? "below" : "above";
}
