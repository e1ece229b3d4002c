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
    if (error instanceof SyntaxError || error.placed) throw error;
    throw Object.assign(new Error(`${place}: ${error.message}`), { placed: true });
  }
}

function need(value, place, what) {
  if (value === undefined || value === null) throw Object.assign(new Error(`${place}: ${what} is missing`), { placed: true });
  return value;
}

const percent = (logSd) => `±${((Math.exp(1.645 * logSd) - 1) * 100).toFixed(0)} %`;

function printBath(baseline, laws, bath, place) {
  const { name = place, ...conditions } = bath;
  console.log(`\n${name}`);
  printAnswer(at(place, () => compensate(baseline, conditions, laws)));
}

function printAnswer(answer) {
  const { timeS, lowS, highS } = answer;
  const stopped = answer.cautions.some(({ severity }) => severity === "stop");
  console.log(stopped ? "  no time: see the first caution" : `  develop ${formatTime(timeS)}   90 % between ${formatTime(lowS)} and ${formatTime(highS)}`);
  for (const { cause, value, logSd, basis, sources } of answer.factors) {
    const source = sources[0] ?? "";
    const short = source.length > 62 ? `${source.slice(0, 61)}…` : source;
    console.log(`    ${cause.padEnd(12)} × ${value.toFixed(3)}  ${percent(logSd).padStart(6)}  ${basis.padEnd(9)} ${short}`.trimEnd());
  }
  printCautions(answer.cautions);
}

function printCautions(cautions) {
  for (const { severity, message } of cautions) console.log(`    ${severity.padEnd(4)}  ${message}`);
}

/** A brew from the cupboard to its time: grams with their range, pH, strength against the known brew, time, cautions, steps. */
function printBrew({ about = "", spoons, reference, volumeMl, temperatureC }) {
  const place = "/brew";
  const known = need(reference, `${place}/reference`, "the brew whose time is known");
  console.log(`\nA brew by the spoon\n  ${about}`);
  const ingredients = need(spoons, `${place}/spoons`, "the spoons").map((spoon, i) => {
    const { value, low, high } = at(`${place}/spoons/${i}`, () => massOf(spoon));
    const count = `${spoon.spoons} ${spoon.heap ?? "level"}`;
    console.log(`    ${spoon.ingredient.padEnd(16)} ${count.padEnd(10)} ${value.toFixed(1).padStart(5)} g   (${low.toFixed(1)} to ${high.toFixed(1)})`);
    return { ingredient: spoon.ingredient, massG: value, lowG: low, highG: high };
  });
  const brew = { volumeMl, temperatureC, ingredients };
  const { ph, low, high } = at(place, () => brewPh(brew));
  const strength = at(`${place}/reference`, () => brewStrength(brew, { volumeMl: known.volumeMl, ingredients: known.ingredients }));
  console.log(`    pH ${ph.toFixed(1)} (${low.toFixed(1)} to ${high.toFixed(1)})   strength: time × ${strength.value.toFixed(2)} ${percent(strength.logSd)}`);
  const timeS = at(`${place}/reference/time`, () => parseTime(need(known.time, `${place}/reference`, "time")));
  console.log(`  Known: ${formatTime(timeS)} at ${known.temperatureC} °C (${known.about ?? ""}); today ${temperatureC} °C`);
  printAnswer(at(place, () => compensate({ timeS, temperatureC: known.temperatureC }, { temperatureC, strength })));
  printCautions(at(place, () => checkBrew(brew)));
  for (const { step, text } of mixingSteps(brew)) console.log(`    ${step}. ${text}`);
}

function printTable(table) {
  const toC = table.unit === "F" ? fahrenheitToCelsius : (c) => c;
  const rows = need(table.rows, "/table", "rows").map((row, i) =>
    at(`/table/rows/${i}`, () => ({ shown: row.temperature, temperatureC: toC(row.temperature), timeS: parseTime(row.time) })),
  );
  const picked = need(table.fitRows, "/table", "fitRows").map((i) => need(rows[i], "/table/fitRows", `row ${i}`));
  const { law } = at("/table", () => fitTemperatureLaw(picked));
  console.log(`\nA published table, predicted from its rows ${table.fitRows.map((i) => i + 1).join(" and ")}`);
  console.log(`  ${table.about ?? ""}`);
  console.log(`  ${law.activationEnergyKJPerMol.toFixed(1)} ± ${law.sdKJPerMol.toFixed(1)} kJ/mol`);
  console.log(`  ${"temperature".padStart(12)} ${"printed".padStart(8)} ${"predicted".padStart(10)} ${"error".padStart(8)}`);
  for (const { shown, temperatureC, timeS } of rows) {
    const predicted = picked[0].timeS * temperatureFactor(law, picked[0].temperatureC, temperatureC);
    const error = `${predicted >= timeS ? "+" : ""}${((predicted / timeS - 1) * 100).toFixed(1)} %`;
    const degrees = table.unit === "F" ? `${shown} °F ${temperatureC.toFixed(1)} °C` : `${temperatureC.toFixed(1)} °C`;
    console.log(`  ${degrees.padStart(14)} ${formatTime(timeS).padStart(6)} ${formatTime(predicted).padStart(10)} ${error.padStart(8)}`);
  }
}

function main() {
  const day = JSON.parse(readFileSync(path, "utf8"));
  const { time, note = "the known time", ...known } = need(day.baseline, "/baseline", "the known time with its conditions");
  const baseline = { ...known, timeS: at("/baseline/time", () => parseTime(need(time, "/baseline", "time"))) };
  const dilution = baseline.dilution === undefined ? "" : `, ${baseline.dilution}`;
  console.log(day.about ?? "");
  console.log(`\nKnown: ${formatTime(baseline.timeS)} at ${baseline.temperatureC} °C${dilution} (${note})`);
  need(day.baths, "/baths", "a list of baths").forEach((bath, i) => printBath(baseline, day.laws ?? {}, bath, `/baths/${i}`));
  if (day.brew !== undefined) printBrew(day.brew);
  if (day.table !== undefined) printTable(day.table);
}

try {
  main();
} catch (error) {
  console.error(`${String(path).replace(/^file:\/\//, "")}: ${error.message}`);
  process.exitCode = 1;
}
