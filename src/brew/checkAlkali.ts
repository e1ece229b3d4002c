/*
 * Module: brew. Whether a bath is alkaline enough to develop, and whether it is too much for emulsion and
 * hands.
 */
import { isPast, type Caution } from "../core/caution.js";
import type { ReadBrew } from "./brew.js";
import { phRange } from "./brewPh.js";
import { constantsAt } from "./constants.js";
import type { Solution } from "./equilibrium.js";
import { say } from "./text.js";

/** Below this nothing much develops; baking soda alone gives about 8. */
const PH_STOP = 8.5;
/** The first published coffee developer worked at pH 9 (S. A. Williams et al., 1995, as cited later). */
const PH_LOW = 9;
/** Free hydroxide that no emulsion takes, mol/l: 8 g/l of caustic soda (assumed). */
const HYDROXIDE_STOP = 0.2;
/** Gelatin swells from here, as pH at 20 °C (common practice). */
const PH_HIGH = 11;
/** A soft or old emulsion: care from here, and not beyond pH 11 (common practice). */
const PH_HIGH_SOFT = 10.65;
const PH_STOP_SOFT = 11;
/**
 * The bath itself counts as corrosive from here: the European rules for labels of 2008 (CLP), from memory.
 */
const PH_CAUSTIC = 11.5;
/** Where the upper end of the pH passes this, the pH is as good as unknown (assumed). */
const PH_UNKNOWN = 12;
/** Below it sulphite is mostly bisulphite: 3 ppm of sulphur dioxide above the bath at pH 6.6, 16 at 6.1. */
const PH_SULPHITE = 7;

/**
 * The pH that the same activity of hydroxide has at 20 °C. Hydroxide is what swells gelatin and burns: pH
 * 12.5 is a quarter as much of it at 5 °C.
 */
export function phAt20(ph: number, temperatureC: number): number {
  return ph + Math.log10(constantsAt(temperatureC).water / constantsAt(20).water);
}

/** Cautions about the alkali of a solved brew. */
export function alkaliCautions(read: ReadBrew, solution: Solution, soft: boolean): Caution[] {
  const { parts, temperatureC } = read;
  const { ph, hydroxide, species } = solution;
  const found: Caution[] = [];
  if (!parts.some(({ data }) => data.role === "alkali")) found.push(say("no-alkali", "stop"));
  else if (isPast(PH_STOP, ph))
    found.push(say("alkali-too-weak", "stop", { quantity: "ph", limit: PH_STOP, actual: ph }));
  else if (isPast(PH_LOW, ph))
    found.push(say("alkali-low", "warn", { quantity: "ph", limit: PH_LOW, actual: ph }));
  if (isPast(hydroxide, HYDROXIDE_STOP))
    found.push(
      say("hydroxide-high", "stop", { quantity: "molPerL", limit: HYDROXIDE_STOP, actual: hydroxide }),
    );
  const actual = phAt20(ph, temperatureC);
  const stop = soft && isPast(actual, PH_STOP_SOFT);
  const limit = stop ? PH_STOP_SOFT : soft ? PH_HIGH_SOFT : PH_HIGH;
  if (isPast(actual, limit))
    found.push(say("ph-high", stop ? "stop" : "warn", { quantity: "ph", limit, actual, data: { soft, ph } }));
  else for (const one of unsure(read, soft)) found.push(one);
  if (isPast(actual, PH_CAUSTIC))
    found.push(say("caustic-bath", "warn", { quantity: "ph", limit: PH_CAUSTIC, actual }));
  if (species.sulphite !== undefined && isPast(PH_SULPHITE, ph))
    found.push(say("sulphur-dioxide", "stop", { quantity: "ph", limit: PH_SULPHITE, actual: ph }));
  return found;
}

/** What the upper end of the pH may do, where the likely pH does no harm. */
function unsure(read: ReadBrew, soft: boolean): Caution[] {
  const { low, high } = phRange(read);
  const actual = phAt20(high, read.temperatureC);
  const limit = soft ? PH_STOP_SOFT : PH_CAUSTIC;
  if (!isPast(actual, limit)) return [];
  const severity = soft && isPast(actual, PH_UNKNOWN) ? "stop" : "warn";
  return [say("ph-unsure", severity, { quantity: "ph", limit, actual, data: { soft, low, high } })];
}
