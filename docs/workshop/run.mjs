/*
 * npm start: the main job on real input. Reads a JSON file (docs/workshop/day.json, or the path given), compensates every bath in it, takes a
 * brew from the cupboard to its time and predicts a published time-temperature table from two of its rows. A broken file gives one line that says what is wrong, and exit code 1.
 */
import { readFileSync } from "node:fs";
import {
  brewPh,
  brewStrength,
  checkBrew,
  compensate,
  fahrenheitToCelsius,
  fitTemperatureLaw,
  formatTime,
  massOf,
  mixingSteps,
  parseTime,
  temperatureFactor,
} from "darkroom-kinetics";

const path = process.argv[2] ?? new URL("day.json", import.meta.url);

/** Runs one part of the page and names the place in the file when it fails. */
function at(place, work) {
  try {
    return work();
  } catch (error) {
    if (error.placed) throw error;
    return refuse(place, inFile(error.message));
  }
}

function refuse(place, text) {
  throw Object.assign(new Error(`${place}: ${text}`), { placed: true });
}

function need(value, place, what) {
  return value ?? refuse(place, `${what} is missing`);
}

function needList(value, place, what) {
  return Array.isArray(need(value, place, what)) ? value : refuse(place, "must be a list");
}

function needObject(value, place, what) {
  return typeof need(value, place, what) === "object" && !Array.isArray(value)
    ? value
    : refuse(place, "must be an object");
}

// The upper half of the 90 % range, as the first lines of the page say.
const percent = (logSd) => `±${((Math.exp(1.645 * logSd) - 1) * 100).toFixed(0)} %`;

function printBath(baseline, laws, bath, number) {
  const place = `/baths/${number}`;
  const { name = `Bath ${number + 1}`, ...conditions } = needObject(bath, place, "a bath");
  console.log(`\n${name}`);
  printAnswer(at(place, () => compensate(baseline, conditions, laws)));
}

function printAnswer(answer) {
  const { timeS, lowS, highS } = answer;
  const stopped = answer.cautions.filter(({ severity }) => severity === "stop");
  if (stopped.length > 0) {
    console.log("  no time");
    printCautions(stopped);
    return;
  }
  // A field that was not read changes the question itself: it is named before the time.
  printCautions(answer.cautions.filter(({ code }) => code === "unknown-field"));
  console.log(`  develop ${formatTime(timeS)}   90 % between ${formatTime(lowS)} and ${formatTime(highS)}`);
  for (const { cause, value, logSd, basis, sources } of answer.factors) {
    const source = sources[0] ?? "";
    const short = source.length > 84 ? `${source.slice(0, 83)}…` : source;
    console.log(
      `    ${cause.padEnd(12)} × ${value.toFixed(3)}  ${percent(logSd).padStart(6)}  ${basis.padEnd(9)} ${short}`.trimEnd(),
    );
  }
  printCautions(answer.cautions.filter(({ code }) => code !== "unknown-field"));
}

function printCautions(cautions) {
  for (const { severity, message } of cautions) console.log(`    ${severity.padEnd(4)}  ${inFile(message)}`);
}

/** A brew from the cupboard to its time: grams with their range, pH, strength against the known brew, time, cautions, steps. */
function printBrew({ about = "", spoons, reference, volumeMl, temperatureC }) {
  const place = "/brew";
  const known = needObject(reference, `${place}/reference`, "the brew whose time is known");
  need(temperatureC, place, "temperatureC");
  need(known.temperatureC, `${place}/reference`, "temperatureC");
  console.log(`\nA brew by the spoon\n  ${about}`);
  const ingredients = needList(spoons, `${place}/spoons`, "the spoons").map((spoon, i) => {
    const { value, low, high } = at(`${place}/spoons/${i}`, () => massOf(spoon));
    const shown = `${spoon.spoons} ${spoon.heap ?? "level"}`;
    console.log(
      `    ${spoon.ingredient.padEnd(16)} ${shown.padEnd(10)} ${value.toFixed(1).padStart(5)} g   (${low.toFixed(1)} to ${high.toFixed(1)})`,
    );
    const { ingredient, spoons: count, spoonMl, heap } = spoon;
    return { ingredient, massG: value, lowG: low, highG: high, spoons: count, spoonMl, heap };
  });
  const brew = { volumeMl, temperatureC, ingredients };
  const { ph, low, high } = at(place, () => brewPh(brew));
  const strength = at(`${place}/reference`, () =>
    brewStrength({ volumeMl: known.volumeMl, ingredients: known.ingredients }, brew),
  );
  console.log(
    `    pH ${ph.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)})   strength: time × ${strength.value.toFixed(2)} ${percent(strength.logSd)}`,
  );
  const timeS = at(`${place}/reference/time`, () =>
    parseTime(need(known.time, `${place}/reference`, "time")),
  );
  console.log(
    `  Known: ${formatTime(timeS)} at ${known.temperatureC} °C (${known.about ?? ""}); today ${temperatureC} °C`,
  );
  const answer = at(place, () =>
    compensate({ timeS, temperatureC: known.temperatureC }, { temperatureC, strength }),
  );
  const check = at(place, () => checkBrew(brew));
  // What stops the brew stops its time.
  printAnswer({
    ...answer,
    cautions: [...answer.cautions, ...check.filter(({ severity }) => severity === "stop")],
  });
  printCautions(check.filter(({ severity }) => severity !== "stop"));
  for (const { step, text } of mixingSteps(brew)) console.log(`    ${step}. ${text}`);
}

function printTable(table) {
  const { unit = "C" } = table;
  if (unit !== "C" && unit !== "F") refuse("/table/unit", `must be "C" or "F", got ${JSON.stringify(unit)}`);
  const toC = unit === "F" ? fahrenheitToCelsius : (c) => c;
  const rows = needList(table.rows, "/table/rows", "the list of rows").map((row, i) =>
    at(`/table/rows/${i}`, () => ({
      shown: row.temperature,
      temperatureC: toC(row.temperature),
      timeS: parseTime(row.time),
    })),
  );
  const picked = needList(table.fitRows, "/table/fitRows", "the list of rows to fit").map((i) =>
    need(rows[i], "/table/fitRows", `row ${i}, counted from 0,`),
  );
  const { law } = at("/table", () => fitTemperatureLaw(picked));
  console.log(
    `\nA published table, predicted from its rows ${table.fitRows.map((i) => i + 1).join(" and ")}`,
  );
  console.log(`  ${table.about ?? ""}`);
  console.log(
    `  ${law.activationEnergyKJPerMol.toFixed(1)} kJ/mol, standard deviation ${law.sdKJPerMol.toFixed(1)}`,
  );
  console.log(
    `  ${"temperature".padStart(12)} ${"printed".padStart(8)} ${"predicted".padStart(10)} ${"error".padStart(8)}`,
  );
  for (const { shown, temperatureC, timeS } of rows) {
    const predicted = picked[0].timeS * temperatureFactor(picked[0].temperatureC, temperatureC, law);
    const error = `${predicted >= timeS ? "+" : ""}${((predicted / timeS - 1) * 100).toFixed(1)} %`;
    const degrees =
      unit === "F" ? `${shown} °F ${temperatureC.toFixed(1)} °C` : `${temperatureC.toFixed(1)} °C`;
    console.log(
      `  ${degrees.padStart(14)} ${formatTime(timeS).padStart(6)} ${formatTime(predicted).padStart(10)} ${error.padStart(8)}`,
    );
  }
}

/** The library's words for the parts of a question, in the words of the file. */
function inFile(text) {
  const words = { conditions: "bath", knowledge: "laws" };
  return text.replace(/^compensate: /, "").replace(/^(?:conditions|knowledge)\b/, (word) => words[word]);
}

/** The file as data. A byte order mark is no part of it; an engine's message about JSON may run over lines. */
function readDay() {
  const text = readFileSync(path, "utf8").replace(/^\uFEFF/, "");
  try {
    return JSON.parse(text);
  } catch (error) {
    return refuse(
      "not valid JSON",
      `${error.message.replace(/\s+/g, " ")} (a comma before ] or }, or a missing quote?)`,
    );
  }
}

const FIELDS = ["about", "baseline", "laws", "baths", "brew", "table"];

function main() {
  const day = needObject(readDay(), "the file", "its content");
  const {
    time,
    note = "the known time",
    ...known
  } = needObject(day.baseline, "/baseline", "the known time with its conditions");
  const baseline = {
    ...known,
    timeS: at("/baseline/time", () => parseTime(need(time, "/baseline", "time"))),
  };
  need(baseline.temperatureC, "/baseline", "temperatureC");
  const baths = needList(day.baths, "/baths", "a list of baths");
  const dilution = baseline.dilution === undefined ? "" : `, ${baseline.dilution}`;
  if (day.about !== undefined) console.log(`${day.about}\n`);
  for (const name of Object.keys(day))
    if (!FIELDS.includes(name))
      console.log(`warn  the file has a field ${JSON.stringify(name)} that is not read.`);
  console.log(`Known: ${formatTime(baseline.timeS)} at ${baseline.temperatureC} °C${dilution} (${note})`);
  console.log("× multiplies the time; ± is how far up the 90 % range of that cause alone goes.");
  baths.forEach((bath, i) => printBath(baseline, day.laws ?? {}, bath, i));
  if (day.brew !== undefined) printBrew(needObject(day.brew, "/brew", "the brew"));
  if (day.table !== undefined) printTable(needObject(day.table, "/table", "the table"));
}

try {
  main();
} catch (error) {
  const reason = error.code === "ENOENT" ? `no such file, looked for in ${process.cwd()}` : error.message;
  console.error(`${String(path).replace(/^file:\/\//, "")}: ${reason}`);
  process.exitCode = 1;
}
