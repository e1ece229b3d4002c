/*
 * How the cells of each column are read.
 */
import { parseAge } from "../age/parseAge.js";
import { parseAgitation } from "../agitation/parseAgitation.js";
import { inRange, notOneOf, positive } from "../core/guards.js";
import { formatDilution } from "../dilution/formatDilution.js";
import { parseDilution, type ParseDilutionOptions } from "../dilution/parseDilution.js";
import type { DevelopmentRun } from "../learning/types.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { numberFromText } from "../quantities/numberText.js";
import { parseTemperature, temperatureParts } from "../quantities/parseTemperature.js";
import { parseTime } from "../quantities/parseTime.js";
import { parseVolume } from "../quantities/parseVolume.js";
import { bathTemperature } from "../temperature/law.js";
import { FAHRENHEIT_ABOVE_C } from "../temperature/temperatureCautions.js";
import { parseUse } from "../use/parseUse.js";
import { dateCell, type DateOptions } from "./dateCell.js";
import { judgement } from "./judgement.js";
import type { Reader, Readers } from "./headings.js";
import { pushCell } from "./pushCell.js";

/** What the readers have to be told. */
export interface ReaderOptions extends ParseDilutionOptions, DateOptions {}

/** The reader of each column that holds more than plain words. */
export function readersFor({ year, dates, ...colon }: ReaderOptions): Readers {
  const figure = (least: number, most: number) => (text: string) => {
    const value = numberFromText(text, "");
    return least === 0 ? positive("", value, most) : inRange("", value, least, most);
  };
  return new Map<string, Reader>([
    ["time", (text) => positive("", parseTime(text), 1e6, "timeS")],
    ["temperature", temperatureCell],
    ["dilution", (text) => dilutionCell(text, colon)],
    ["agitation", parseAgitation],
    ["used", (text) => parseUse(text)],
    ["age", parseAge],
    ["push", pushCell],
    ["outcome", (text) => judgement("", text)],
    ["date", (text) => dateCell("", text, { year, dates })],
    ["printed", printedCell],
    ["appearance", (text) => positive("", parseTime(text), 1e6, "timeS")],
    ["volume", parseVolume],
    ["gamma", figure(0, 10)],
    ["density", figure(0, 10)],
    ["wanted", figure(0, 10)],
    ["factor", figure(1, 1000)],
    ["sd", figure(0, 3)],
  ]);
}

/**
 * The temperature of a bath. A number without a scale, with a ring or without, is read where only one scale
 * makes a bath of it: 20 °F is ice and 20 °C is not; 68 may be either. No bath is as warm as 200 °F: there a
 * comma was lost.
 */
function temperatureCell(text: string): number {
  const { degrees, scale } = temperatureParts(text) ?? {};
  const bare = scale === undefined && degrees !== undefined ? degrees : NaN;
  if (bare >= 0 && bare < FREEZES_F) return bare;
  // Above 100 it is no °C of water.
  if (bare > 100 && fahrenheitToCelsius(bare) <= FAHRENHEIT_ABOVE_C) return fahrenheitToCelsius(bare);
  return bathTemperature("", parseTemperature(text));
}

/** Below this, in °F, water is ice. */
const FREEZES_F = 32;

/**
 * The dilution as text where the text is plain, so that notes stay readable; as parts where a colon had to be
 * read. Stock is "stock", whatever it was called.
 */
function dilutionCell(text: string, options: ParseDilutionOptions): DevelopmentRun["dilution"] {
  const parts = parseDilution(text, options);
  if (!/\d/.test(text)) return formatDilution(parts);
  return text.includes(":") ? parts : text;
}

/** Whether the run is a row that was printed, and not an own one. */
function printedCell(text: string): true | undefined {
  if (/^(?:yes|y|x|true|printed|ja|gedruckt|1)$/i.test(text)) return true;
  if (/^(?:no|n|false|own|nein|eigene?[rs]?|-|0)$/i.test(text)) return undefined;
  return notOneOf("", ["yes", "no"], text);
}
