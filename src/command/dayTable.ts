/*
 * The table of a day file: a published table of times, predicted from some of its own rows.
 */
import {
  fahrenheitToCelsius,
  fitTemperatureLaw,
  parseTime,
  temperatureFactor,
  type ArrheniusLaw,
  type TemperatureRow,
} from "../index.js";
import { given, list, object, text, type Fields } from "./fields.js";
import { fault, placed } from "./fault.js";

/** A table, each row with what was printed and what the law of the fitted rows predicts. */
export interface TableReport {
  readonly about?: string;
  readonly unit: "C" | "F";
  readonly fitRows: readonly number[];
  readonly law: ArrheniusLaw;
  readonly rows: readonly {
    readonly temperatureC: number;
    readonly printedS: number;
    readonly predictedS: number;
  }[];
}

export function tableReport(table: Fields): TableReport {
  const { unit = "C" } = table;
  if (unit !== "C" && unit !== "F")
    throw fault(
      { en: 'the unit must be "C" or "F".', de: "nötig ist als Einheit „C“ oder „F“." },
      { pointer: "/table/unit" },
    );
  const rows = list(table["rows"], "/table/rows", { en: "the list of rows", de: "die Liste der Zeilen" }).map(
    (row, i) => readRow(row, i, unit),
  );
  const fitRows = list(table["fitRows"], "/table/fitRows", {
    en: "the list of rows to fit",
    de: "die Liste der Zeilen zum Anpassen",
  }) as readonly number[];
  const picked = fitRows.map((index, i) => {
    const row = rows[index];
    if (row === undefined)
      throw fault(
        {
          en: `there is no row ${String(index)}, counted from 0.`,
          de: `eine Zeile ${String(index)} gibt es nicht, von 0 an gezählt.`,
        },
        { pointer: `/table/fitRows/${i}` },
      );
    return row;
  });
  const { law } = placed([["/rows", "/table/fitRows"]], () => fitTemperatureLaw(picked));
  const [first] = picked as [TemperatureRow];
  return {
    ...(table["about"] === undefined ? {} : { about: text(table["about"], "/table/about") }),
    unit,
    fitRows,
    law,
    rows: rows.map(({ temperatureC, timeS }, i) => ({
      temperatureC,
      printedS: timeS,
      predictedS: placed(
        [["", `/table/rows/${i}`]],
        () => first.timeS * temperatureFactor(first.temperatureC, temperatureC, law),
      ),
    })),
  };
}

function readRow(given_: unknown, i: number, unit: "C" | "F"): TemperatureRow {
  const pointer = `/table/rows/${i}`;
  const row = object(given_, pointer, { en: "a row", de: "eine Zeile" });
  const temperature = given(row["temperature"], `${pointer}/temperature`, {
    en: "the temperature",
    de: "die Temperatur",
  }) as number;
  const time = given(row["time"], `${pointer}/time`, { en: "the time", de: "die Zeit" }) as string;
  const temperatureC =
    unit === "C"
      ? temperature
      : placed([["", `${pointer}/temperature`]], () => fahrenheitToCelsius(temperature));
  return { temperatureC, timeS: placed([["", `${pointer}/time`]], () => parseTime(time)) };
}
