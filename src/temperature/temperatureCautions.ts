import { isPast, type Caution } from "../core/caution.js";
import type { CautionData } from "../core/cautionData.js";
import { makeCaution, type CautionFigures } from "../core/cautionTexts.js";
import { frozen } from "../core/frozen.js";
import { isBoolean, isText, notOneOf, plainObject } from "../core/guards.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { bathTemperature } from "./law.js";
import { temperatureSentences } from "./text.js";

/** Above this a temperature is probably in °F, and no bath is so warm: 113 °F (assumed). */
export const FAHRENHEIT_ABOVE_C: number = 45;

/** What is known of the developer and the emulsion, for the cautions that depend on them. */
export interface TemperatureCautionOptions {
  /** the developer holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean | undefined;
  /** `"soft"`: a plate or an unhardened film, whose gelatin stands less heat */
  readonly emulsion?: "soft" | "hardened" | undefined;
  /** where the temperature is in the caller's data, as a JSON Pointer */
  readonly path?: string | undefined;
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
 * Soft emulsions: autochrome plates 15 to 18 °C (French Ministry of Culture, Autochromes Lumière);
 * unhardened gelatin softens above about 24 °C (from memory). Below 13 °C a developer of which nothing is
 * known is told that more time does not help if it holds hydroquinone (common practice). Limits 4 and 32 °C:
 * H. E. Ives, Airplane Photography, 1920, ch. XXII. Above 45 °C the reading is probably in °F.
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
  if (path !== undefined) isText("temperatureCautions/options/path", path);
  checkMaterial("temperatureCautions/options", options);
  return bathCautions(c, options.hydroquinone, options.emulsion === "soft", path);
}

const NONE: readonly Caution[] = [];

/** Whether a temperature in °C, of a bath or of what is around it, is probably in °F. */
export function fahrenheitCautions(c: number, path: string | undefined): readonly Caution[] {
  if (!isPast(c, FAHRENHEIT_ABOVE_C)) return NONE;
  const data = { celsius: Number(fahrenheitToCelsius(c).toFixed(1)) };
  const figures = { quantity: "temperatureC", limit: FAHRENHEIT_ABOVE_C, actual: c, data } as const;
  return [
    makeCaution(
      temperatureSentences,
      "maybe-fahrenheit",
      "stop",
      path === undefined ? figures : { path, ...figures },
    ),
  ];
}

/** The same for a checked temperature; `hydroquinone` is undefined where the developer is not known. */
export function bathCautions(
  c: number,
  hydroquinone: boolean | undefined,
  soft: boolean,
  path: string | undefined,
): readonly Caution[] {
  const usual = !isPast(USUAL_C.low, c) && !isPast(c, USUAL_C.high);
  if (usual && !(soft && isPast(c, SOFT_C[0]))) return NONE;
  const cautions: Caution[] = [];
  // Written out rather than spread: this runs for each answer of a dial.
  const about = (limit: number): CautionFigures<"hydroquinone-cold"> =>
    path === undefined
      ? { quantity: "temperatureC", limit, actual: c }
      : { path, quantity: "temperatureC", limit, actual: c };
  const fahrenheit = fahrenheitCautions(c, path);
  if (fahrenheit.length > 0) return fahrenheit;
  const past = (
    code: "hydroquinone-cold" | "soft-emulsion-warm",
    stop: boolean,
    limits: readonly [warnC: number, stopC: number],
  ): void => {
    const severity = stop ? "stop" : "warn";
    cautions.push(makeCaution(temperatureSentences, code, severity, about(limits[stop ? 1 : 0])));
  };
  if (hydroquinone === true && isPast(HYDROQUINONE_C[0], c))
    past("hydroquinone-cold", isPast(HYDROQUINONE_C[1], c), HYDROQUINONE_C);
  if (soft && isPast(c, SOFT_C[0])) past("soft-emulsion-warm", isPast(c, SOFT_C[1]), SOFT_C);
  const damaged = isPast(DAMAGE_C.low, c) || isPast(c, DAMAGE_C.high);
  if (damaged || !usual) {
    const unnamed = hydroquinone === undefined && isPast(HYDROQUINONE_C[1], c);
    const data = damaged ? DAMAGE_C : unnamed ? UNNAMED_C : USUAL_C;
    const figures = Object.assign(about(c < data.low ? data.low : data.high), { data });
    cautions.push(
      damaged
        ? makeCaution(temperatureSentences, "temperature-limit", "stop", figures)
        : makeCaution(temperatureSentences, "temperature-unusual", "warn", figures),
    );
  }
  return cautions;
}

/** Below the first hydroquinone weakens, below the second it stops. */
const HYDROQUINONE_C = [16, 13] as const;
/** Above the first soft gelatin swells, above the second it tears. */
const SOFT_C = [20, 24] as const;
const DAMAGE_C: CautionData["temperature-limit"] = /* @__PURE__ */ frozen({ low: 4, high: 32 });
const USUAL_C: CautionData["temperature-unusual"] = /* @__PURE__ */ frozen({ low: 18, high: 24 });
/** The same where the developer may hold hydroquinone, and it is too cold for that. */
const UNNAMED_C: CautionData["temperature-unusual"] = /* @__PURE__ */ frozen({
  low: 18,
  high: 24,
  unnamed: "hydroquinone",
});

/** Refuses what is no emulsion and no answer about hydroquinone: misspelt, they would leave out a caution. */
export function checkMaterial(
  where: string,
  { emulsion, hydroquinone }: { readonly emulsion?: unknown; readonly hydroquinone?: unknown },
): void {
  if (emulsion !== undefined && emulsion !== "soft" && emulsion !== "hardened")
    notOneOf(`${where}/emulsion`, ["soft", "hardened"], emulsion);
  if (hydroquinone !== undefined) isBoolean(`${where}/hydroquinone`, hydroquinone);
}
