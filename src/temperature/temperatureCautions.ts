import type { Caution } from "../core/caution.js";
import { frozen } from "../core/frozen.js";
import { plainObject, wrongKind, notOneOf } from "../core/guards.js";
import { bathTemperature } from "./law.js";

/** Above this a reading is probably in °F. */
export const FAHRENHEIT_ABOVE_C: number = 45;

/** What is known of the developer and the emulsion, for the cautions that depend on them. */
export interface TemperatureCautionOptions {
  /** the developer holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean | undefined;
  /** `"soft"`: a plate or an unhardened film, whose gelatin stands less heat */
  readonly emulsion?: "soft" | "hardened" | undefined;
  /** where the temperature is in the caller's data, as a JSON Pointer */
  readonly path?: string;
}

/**
 * Cautions about one bath temperature.
 *
 * @param temperatureC - bath temperature, 0 to 100 °C
 * @param options - what is known of developer and emulsion
 * @returns the cautions, gravest first; none from 18 to 24 °C except for soft emulsions above 20 °C
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the temperature is not from 0 to 100, or the emulsion none of the two
 *
 * @remarks Usual range 18 to 24 °C: US Army correspondence subcourse SS0509, lesson 1, p. 13 (68 to 75 °F
 * recommended, below 65 °F inconveniently long). Hydroquinone: Wellington and Ward, The Wellington
 * Photographic Handbook, p. 130 (fails below 15.6 °C), and a household encyclopaedia (ceases at 12.8 °C).
 * Soft emulsions: autochrome plates 15 to 18 °C (French Ministry of Culture, Autochromes Lumière); unhardened
 * gelatin softens above about 24 °C (from memory). Limits 4 and 32 °C: H. E. Ives, Airplane Photography,
 * 1920, ch. XXII. Above 45 °C the reading is probably in °F.
 *
 * @example
 * ```ts
 * temperatureCautions(68)[0].code // => "maybe-fahrenheit"
 * ```
 */
export function temperatureCautions(
  temperatureC: number,
  options: TemperatureCautionOptions = {},
): readonly Caution[] {
  const c = bathTemperature("temperatureCautions/temperatureC", temperatureC);
  const { path } = plainObject("temperatureCautions/options", options) as TemperatureCautionOptions;
  if (path !== undefined && typeof path !== "string")
    wrongKind("temperatureCautions/options/path", "text", path);
  checkMaterial("temperatureCautions/options", options);
  return bathCautions(c, options.hydroquinone === true, options.emulsion === "soft", path);
}

const NONE: readonly Caution[] = [];

/** The same for a checked temperature. */
export function bathCautions(
  c: number,
  hydroquinone: boolean,
  soft: boolean,
  path: string | undefined,
): readonly Caution[] {
  const [usualLow, usualHigh] = USUAL_C;
  const usual = c >= usualLow && c <= usualHigh;
  if (usual && !(soft && c > SOFT_WARN_C)) return NONE;
  const cautions: Caution[] = [];
  const add = (
    code: Caution["code"],
    severity: Caution["severity"],
    limit: number,
    message: string,
    data?: Caution["data"],
  ): void => {
    const about: { -readonly [Field in keyof Caution]: Caution[Field] } = { code, severity, message };
    if (path !== undefined) about.path = path;
    about.quantity = "temperatureC";
    about.limit = limit;
    about.actual = c;
    if (data !== undefined) about.data = data;
    cautions.push(about);
  };
  if (c > FAHRENHEIT_ABOVE_C) {
    const celsius = Number(((c - 32) / 1.8).toFixed(1));
    const message = `${c} °C: is it in °F? ${c} °F is ${celsius.toFixed(1)} °C.`;
    add("maybe-fahrenheit", "stop", FAHRENHEIT_ABOVE_C, message, { celsius });
    return cautions;
  }
  if (hydroquinone && c < HYDROQUINONE_WEAK_C) {
    const stopped = c < HYDROQUINONE_STOPS_C;
    const limit = stopped ? HYDROQUINONE_STOPS_C : HYDROQUINONE_WEAK_C;
    add("hydroquinone-cold", stopped ? "stop" : "warn", limit, stopped ? STOPPED : WEAKENED);
  }
  if (soft && c > SOFT_WARN_C) {
    const torn = c > SOFT_STOP_C;
    add("soft-emulsion-warm", torn ? "stop" : "warn", torn ? SOFT_STOP_C : SOFT_WARN_C, SWELLS);
  }
  const [low, high] = DAMAGE_C;
  if (c < low || c > high) add("temperature-limit", "stop", c < low ? low : high, DAMAGE, DAMAGE_DATA);
  else if (!usual)
    add(
      "temperature-unusual",
      "warn",
      c < usualLow ? usualLow : usualHigh,
      c < usualLow ? COLD : WARM,
      USUAL_DATA,
    );
  return cautions;
}

const HYDROQUINONE_WEAK_C = 16;
const HYDROQUINONE_STOPS_C = 13;
const WEAKENED = "Hydroquinone weakens below about 16 °C: expect less contrast.";
const STOPPED = "Hydroquinone practically stops below about 13 °C: more time does not help.";
const SOFT_WARN_C = 20;
const SOFT_STOP_C = 24;
const DAMAGE_C = [4, 32] as const;
const USUAL_C = [18, 24] as const;
const DAMAGE_DATA: Caution["data"] = /* @__PURE__ */ frozen({ low: 4, high: 32 });
const USUAL_DATA: Caution["data"] = /* @__PURE__ */ frozen({ low: 18, high: 24 });
const SWELLS = "Soft or unhardened gelatin swells and tears above 20 to 22 °C: cool the bath.";
const DAMAGE = "No development in print goes below 4 °C or above 32 °C: gelatin and developer fail there.";
const COLD = "Below the usual 18 to 24 °C: times get long and uncertain.";
const WARM = "Above the usual 18 to 24 °C: gelatin softens and times get short.";

/** Refuses what is no emulsion and no answer about hydroquinone: misspelt, they would leave out a caution. */
export function checkMaterial(
  where: string,
  { emulsion, hydroquinone }: { readonly emulsion?: unknown; readonly hydroquinone?: unknown },
): void {
  if (emulsion !== undefined && emulsion !== "soft" && emulsion !== "hardened")
    notOneOf(`${where}/emulsion`, ["soft", "hardened"], emulsion);
  if (hydroquinone !== undefined && typeof hydroquinone !== "boolean")
    wrongKind(`${where}/hydroquinone`, "true or false", hydroquinone);
}
