import { ambiguous, inRange, positive, refuse, type TextForm, unreadable } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { volumeNeededText } from "./text.js";
import { isFresh } from "../quantities/fresh.js";
import { filmAreaCm2 } from "../quantities/filmAreaCm2.js";
import { groupReadings, plainAmount } from "../quantities/numberText.js";
import { readFilmFormat, SIZE_IN_TEXT } from "../quantities/parseFilmFormat.js";

/** What belongs to an amount of film. */
export interface ParseUseOptions {
  /** the volume of the bath, ml, for an amount without one: `"2 rolls"`; above 0 to 1e6 */
  readonly volumeMl?: number | undefined;
}

const USES: TextForm = { format: "use", examples: ["516 cm2/l", "2 rolls/l", "3 9x12cm/l"] };

const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const FILM = String.raw`(?:(?:roll|kleinbild)[-\s]?)?film(?:s|en?)?`;
const AMOUNT = String.raw`${NUMBER}\s*(cm[2\u00b2]|rolls?|rollen?|${FILM})`;
const PLATES = String.raw`plates?|sheets?|pieces?|platten?|st\u00fccke?|blatt|bl\u00e4ttern?`;
const PIECE = String.raw`(?:${PLATES}|(?:plan)?film(?:s|en?)?)`;
/** So many plates or sheets of a size: "3 9x12cm", "3 x 9x12", "3 Platten 9x12". */
const TIMES = String.raw`(?:\s*[x\u00d7]\s*|\s+)(?:${PIECE}\s+)?`;
const SHEETS = String.raw`${NUMBER}${TIMES}(${SIZE_IN_TEXT})(?:[-\s]*${PIECE})?`;
/** Plates whose size is not said. */
const SIZELESS = new RegExp(String.raw`^\d+(?:\.\d+)?\s*(?:${PLATES}|planfilm(?:en?)?)(?![^\s/])`, "i");
const IN = String.raw`(?:\/|per|in|pro|je)`;
const VOLUME = String.raw`(?:${NUMBER}\s*)?(ml|l|lit(?:er|re)s?)`;
const USE = new RegExp(String.raw`^(?:${AMOUNT}|${SHEETS})(?:\s*${IN}\s*${VOLUME})?$`, "i");
/** A bath may have developed a thousand cm², but hardly a thousand rolls. */
const SMALL = /^\d+\.\d+\s*cm[2\u00b2]/i;
/** A number before the volume, and what is before it. */
const BEHIND = new RegExp(String.raw`^(.*${IN}\s*)(\d.*)$`, "i");
const ANY_VOLUME = new RegExp(`^${VOLUME}$`, "i");
const SMALL_VOLUME = /^\d+\.\d+\s*ml$/i;

/**
 * Reads how much a bath was used, as people write it.
 *
 * @param text - area developed in each litre, with its unit: `"516 cm2/l"`, `"516 cm²/l"`, `"2 rolls/l"`,
 * `"1,5 rolls/l"`, `"2 films in 500 ml"`; so many plates or sheets of a size, `"3 9x12cm/l"`,
 * `"3 x 4x5in/l"`, `"3 plates 9x12 in 500 ml"`; `"0"`, `"none"` or `"fresh"` for a fresh
 * bath; in German `"2 Rollfilme/l"`, `"3 Platten 9x12/l"`, `"frisch"`
 * @param options - `volumeMl`: the volume of the bath for an amount without one, such as `"2 rolls"`
 * @returns the area in cm²/l
 * @throws TypeError when `text` is not text or `options` not an object
 * @throws RangeError when it is not a use, has no unit, a size without one or maybe thousands (code
 * `"ambiguous"`: `"1.032 cm2/l"`), is an amount without a volume (code `"needs-counterpart"`), or is above
 * 1e6 cm²/l
 *
 * @remarks A roll or a film counts as 516.128 cm², as in {@link filmAreaCm2}. A size without a unit is one
 * of the trade's, as {@link parseFilmFormat} takes it. Plates without their size are refused.
 *
 * @example
 * ```ts
 * parseUse("2 rolls/l") // => 1032.256
 * parseUse("3 plates 9x12 in 500 ml") // => 648
 * parseUse("2 rolls", { volumeMl: 500 }) // => 2064.512
 * ```
 */
export function parseUse(text: string, options: ParseUseOptions = {}): number {
  const at = "parseUse/text";
  if (typeof text !== "string") unreadable(at, USES, text);
  const { volumeMl } = onlyFields("parseUse/options", options, ["volumeMl"]);
  if (volumeMl !== undefined) positive("parseUse/options", volumeMl, 1e6, "volumeMl", "/volumeMl");
  const plain = plainAmount(text);
  if (Number(plain || NaN) === 0 || isFresh(text)) return 0;
  const thousands = thousandsIn(plain);
  if (thousands) ambiguous(at, USES, thousands, text);
  const [, area, kind = "", pieces, size = "", volume = "1", unit] = USE.exec(plain) ?? [];
  const amount = area ?? pieces;
  if (amount === undefined) noUse(at, plain, text);
  // Nothing was developed, in however much of it.
  if (Number(amount) === 0) return 0;
  const ml = unit === undefined ? volumeMl : Number(volume) * (/^m/i.test(unit) ? 1 : 1000);
  if (ml === undefined) refuse(at, "volume-needed", volumeNeededText, {}, text, "needs-counterpart");
  const inText = { whole: text, form: USES, with: (one: string) => plain.replace(size, () => one) };
  const each = /^c/i.test(kind)
    ? 1
    : size === ""
      ? filmAreaCm2("120")
      : readFilmFormat(at, size, inText).areaCm2;
  const cm2 = Number(amount) * each;
  // To twelve figures: ten rolls stand at a capacity of ten rolls, and not a rounding past it.
  return inRange(at, Number(((1000 * cm2) / (ml as number)).toPrecision(12)), 0, 1e6, "cm2PerL");
}

/** What the amount, or the volume behind it, may mean where its three figures could be thousands. */
function thousandsIn(plain: string): readonly string[] | undefined {
  const amount = groupReadings(plain, USE, SMALL);
  if (amount) return amount;
  const [, before, volume = ""] = BEHIND.exec(plain) ?? [];
  const readings = groupReadings(volume, ANY_VOLUME, SMALL_VOLUME)?.map((one) => `${before as string}${one}`);
  return readings?.every((one) => USE.test(one)) ? readings : undefined;
}

function noUse(at: string, plain: string, text: string): never {
  if (SIZELESS.test(plain)) refuse(at, "volume-needed", volumeNeededText, {}, text, "unreadable");
  if (!/^\d+(?:\.\d+)?$/.test(plain)) unreadable(at, USES, text);
  ambiguous(at, USES, [`${plain} cm2/l`, `${plain} rolls/l`], text);
}
