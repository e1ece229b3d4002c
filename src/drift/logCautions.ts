import { gravestFirst, type Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { temperatureCautions } from "../temperature/temperatureCautions.js";
import { checkedLog, type TemperatureLog, type TemperatureReading } from "./log.js";
import { driftSentences } from "./text.js";

/**
 * Cautions about a log of thermometer readings.
 *
 * @param log - two or more readings, times strictly rising
 * @returns the cautions, gravest first: readings that look like °F or leave the usual temperatures, and a gap
 * without readings that is longer than all the rest of the log
 * @throws TypeError or RangeError when it is no log
 *
 * @remarks The temperature between two readings is taken as a straight line: over a long gap that is a guess.
 *
 * @example
 * ```ts
 * const log = [{ timeS: 0, temperatureC: 68 }, { timeS: 60, temperatureC: 67 }];
 * logCautions(log)[0].code // => "maybe-fahrenheit"
 * ```
 */
export function logCautions(log: TemperatureLog): readonly Caution[] {
  const readings = checkedLog("logCautions/log", log);
  let low = 0;
  let high = 0;
  let gap = 1;
  const at = (i: number): TemperatureReading => readings[i] as TemperatureReading;
  const length = (i: number): number => at(i).timeS - at(i - 1).timeS;
  for (let i = 1; i < readings.length; i += 1) {
    if (at(i).temperatureC < at(low).temperatureC) low = i;
    if (at(i).temperatureC > at(high).temperatureC) high = i;
    if (length(i) > length(gap)) gap = i;
  }
  const cautions: Caution[] = [...new Set([high, low])].flatMap((i) =>
    temperatureCautions(at(i).temperatureC, { path: `/${i}/temperatureC` }),
  );
  const rest = at(readings.length - 1).timeS - at(0).timeS - length(gap);
  if (readings.length > 2 && length(gap) > rest)
    cautions.push(
      makeCaution(driftSentences, "log-gap", "warn", {
        path: `/${gap}/timeS`,
        quantity: "timeS",
        limit: rest,
        actual: length(gap),
      }),
    );
  return gravestFirst(cautions);
}
