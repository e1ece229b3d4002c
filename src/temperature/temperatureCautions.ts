import type { Caution } from "../core/caution.js";
import { plainObject, wrongKind, notOneOf } from "../core/guards.js";
import { bathTemperature } from "./law.js";

/** What is known of the developer and the emulsion, for the cautions that depend on them. */
export interface TemperatureCautionOptions {
  /** the developer holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean | undefined;
  /** `"soft"`: a plate or an unhardened film, whose gelatin stands less heat */
  readonly emulsion?: "soft" | "hardened" | undefined;
  /** where the temperature stands in the caller's data, as a JSON Pointer */
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
  const cautions: Caution[] = [];
  const add = (code: string, severity: Caution["severity"], limit: number, message: string): void => {
    // Two literals rather than a spread: this runs on every call of compensate.
    cautions.push(
      path === undefined
        ? { code, severity, message, limit, actual: c }
        : { code, severity, message, path, limit, actual: c },
    );
  };
  if (c > 45) {
    add(
      "maybe-fahrenheit",
      "stop",
      45,
      `${c} °C: is it in °F? ${c} °F is ${((c - 32) / 1.8).toFixed(1)} °C.`,
    );
    return cautions;
  }
  if (options.hydroquinone === true && c < 16)
    add(
      "hydroquinone-cold",
      c < 13 ? "stop" : "warn",
      c < 13 ? 13 : 16,
      c < 13
        ? "Hydroquinone practically stops below about 13 °C: more time does not help."
        : "Hydroquinone weakens below about 16 °C: expect less contrast.",
    );
  if (options.emulsion === "soft" && c > 20)
    add(
      "soft-emulsion-warm",
      c > 24 ? "stop" : "warn",
      c > 24 ? 24 : 20,
      "Soft or unhardened gelatin swells and tears above 20 to 22 °C: cool the bath.",
    );
  if (c < 4 || c > 32)
    add("temperature-limit", "stop", c < 4 ? 4 : 32, "Outside 4 to 32 °C development does serious damage.");
  else if (c < 18 || c > 24)
    add(
      "temperature-unusual",
      "warn",
      c < 18 ? 18 : 24,
      c < 18
        ? "Below the usual 18 to 24 °C: times get long and uncertain."
        : "Above the usual 18 to 24 °C: gelatin softens and times get short.",
    );
  return cautions;
}

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
