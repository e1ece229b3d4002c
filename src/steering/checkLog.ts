import { gravestFirst, type Caution } from "../core/caution.js";
import { attempt } from "../core/attempt.js";
import type { CheckProblem } from "../core/errors.js";
import { longEnough, wrongKind } from "../core/guards.js";
import type { TemperatureLog, TemperatureReading } from "../drift/log.js";
import { judgeLog } from "./judge.js";
import { unlessUnreadable } from "../core/unlessUnreadable.js";
import { inOrder, placedReading, unreadInLog, type PlacedReading } from "./readings.js";
import { surroundingsOf } from "./surroundings.js";

/** What {@link checkLog} returns. */
export type LogCheck =
  | {
      readonly ok: true;
      /** the log, as a clean copy */
      readonly log: TemperatureLog;
      /** what is in doubt about its readings */
      readonly cautions: readonly Caution[];
    }
  | {
      readonly ok: false;
      /** everything that is wrong with it */
      readonly problems: readonly CheckProblem[];
      /** what else is in doubt about it */
      readonly cautions: readonly Caution[];
    };

/**
 * Checks a log of thermometer readings from a file or a form.
 *
 * @param input - anything; a log is an array of 1 to 100,000 readings `{ timeS, temperatureC, changed? }`
 * @returns `ok: true` with the log in the order of time, one reading each moment, and what is in doubt about
 * it; or `ok: false` with every problem of its shape. Paths point into what was given. The log is empty where
 * every reading failed: the bath then has the temperature that it was mixed to
 *
 * @remarks {@link steer} gives the same time by this log as by the one that was given. A reading that is
 * absent or that no bath can have (85 or exactly 0 of a failed sensor) is a caution, and is left out of the
 * log; its `changed` goes to the next. One that may be in another unit is kept as it is. Where that is below
 * 0 or above 100 °C, {@link equivalentTime} refuses it. Readings of one moment become their mean, or the one
 * that agrees with the others, and `log-order` says so. A reading before a change of the same moment is moved
 * to 1 s earlier at most; at pour-in it is left out. A field that is not read is a caution too. Never throws.
 *
 * @example
 * ```ts
 * const check = checkLog([{ timeS: 60, temperatureC: null }, { timeS: 0, temperatureC: 18 }]);
 * check.ok && check.log // => [{ timeS: 0, temperatureC: 18 }]
 * check.ok && check.cautions.map(({ code }) => code) // => ["reading-missing", "log-order"]
 * ```
 */
export function checkLog(input: unknown): LogCheck {
  return unlessUnreadable(
    [input],
    () => logCheck(input),
    (problem) => ({ ok: false, problems: [problem], cautions: [] }),
  );
}

function logCheck(input: unknown): LogCheck {
  const problems: CheckProblem[] = [];
  const placed: PlacedReading[] = [];
  attempt(problems, () => {
    Array.from(longEnough("checkLog", input, 1), (reading, i) => {
      attempt(problems, () => placed.push(numbered(`checkLog/${i}`, reading, i)));
    });
  });
  const unread = Array.isArray(input) ? unreadInLog("", input) : [];
  if (problems.length > 0) return { ok: false, problems, cautions: unread };
  const ordered = inOrder(placed, undefined);
  const { cautions: doubts } = judgeLog("", ordered, surroundingsOf("checkLog", {}), undefined);
  const log = ordered.readings.map(asReading);
  const cautions = gravestFirst([...doubts.filter(({ code }) => code !== "forecast-only"), ...unread]);
  // Every reading may have failed, but one of them has to name a temperature: the field may be misspelt.
  if (!(input as readonly object[]).some((one) => "temperatureC" in one))
    attempt(problems, () => wrongKind("checkLog/0/temperatureC", ["number"], undefined));
  return problems.length > 0 ? { ok: false, problems, cautions } : { ok: true, log, cautions };
}

/** A reading of a document: its temperature is a number, or absent. */
function numbered(at: string, reading: unknown, index: number): PlacedReading {
  const placed = placedReading(at, reading, index);
  const { given } = placed;
  if (given !== undefined && given !== null && typeof given !== "number")
    wrongKind(`${at}/temperatureC`, ["number"], given);
  return placed;
}

function asReading({ timeS, given, changed }: PlacedReading): TemperatureReading {
  return { timeS, temperatureC: given as number, ...(changed ? { changed } : undefined) };
}
