// A small page: a known time, today's bath, the time with its reasons, the plan, and a development in progress. All of it invented.
import {
  compensate,
  checkConditions,
  describeCompensation,
  describeFactor,
  describePlan,
  describeProblem,
  formatTime,
  isInputError,
  parseDilution,
  parseTemperature,
  parseTime,
  planAt,
  planProcess,
  roundEstimate,
  steer,
  type Baseline,
  type Compensation,
  type Conditions,
  type InputProblem,
  type ProcessPlan,
} from "darkroom-kinetics";
import { catalogues, languages, words, type Language } from "./words.js";

const fields = ["timeS", "temperatureC", "dilution", "todayC", "todayDilution", "reading"] as const;
type Field = (typeof fields)[number];
const start: Readonly<Record<Field, string>> = {
  timeS: "8:30",
  temperatureC: "20 °C",
  dilution: "1+9",
  todayC: "14 °C",
  todayDilution: "1+14",
  reading: "",
};

/** A place of the page; it is there, or the page is not this one. */
function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no #${id}`);
  return found;
}

function list(id: string, lines: readonly string[]): void {
  part(id).replaceChildren(
    ...lines.map((line) => {
      const item = document.createElement("li");
      item.textContent = line;
      return item;
    }),
  );
}

const written = new Map<Field, string>(fields.map((field) => [field, start[field]]));
let language: Language = "en";

/** What a field holds, or what is wrong with it. */
type Read<Value> = { readonly value: Value } | { readonly problem: InputProblem };
function read<Value>(field: Field, parse: (text: string) => Value): Read<Value> {
  try {
    return { value: parse(written.get(field) ?? "") };
  } catch (error) {
    if (isInputError(error)) return { problem: error };
    throw error;
  }
}

function complain(field: Field, one: Read<unknown>): void {
  part(`${field}-wrong`).textContent =
    "problem" in one ? describeProblem(one.problem, catalogues[language]?.problems) : "";
}

/** Where the data of a problem stands on the page. */
const places: Readonly<Record<string, Field>> = {
  "/baseline/timeS": "timeS",
  "/baseline/temperatureC": "temperatureC",
  "/baseline/dilution": "dilution",
  "/conditions/temperatureC": "todayC",
  "/conditions/dilution": "todayDilution",
};

function show(): void {
  const say = words[language];
  const catalogue = catalogues[language];
  document.documentElement.lang = language;
  part("title").textContent = say.title;
  part("why-title").textContent = say.why;
  part("plan-title").textContent = say.plan;
  for (const field of fields) part(`${field}-label`).textContent = say[field];
  const timeS = read("timeS", parseTime);
  const temperatureC = read("temperatureC", parseTemperature);
  const dilution = read("dilution", parseDilution);
  const todayC = read("todayC", parseTemperature);
  const todayDilution = read("todayDilution", parseDilution);
  complain("timeS", timeS);
  complain("temperatureC", temperatureC);
  complain("dilution", dilution);
  complain("todayC", todayC);
  complain("todayDilution", todayDilution);
  if (!("value" in timeS && "value" in temperatureC && "value" in dilution)) return;
  if (!("value" in todayC && "value" in todayDilution)) return;
  const baseline: Baseline = {
    timeS: timeS.value,
    temperatureC: temperatureC.value,
    dilution: dilution.value,
  };
  const conditions: Conditions = { temperatureC: todayC.value, dilution: todayDilution.value };
  const check = checkConditions(baseline, conditions);
  if (!check.ok) {
    for (const problem of check.problems) {
      const field = places[problem.path];
      if (field !== undefined) complain(field, { problem });
    }
    return;
  }
  const answer = compensate(baseline, conditions);
  const plan = planProcess({
    vessel: "tray",
    movement: "rock",
    answer,
    temperatureC: todayC.value,
    volumeMl: 500,
  });
  showTime(answer);
  list("lines", describeCompensation(answer, catalogue?.answer));
  list(
    "why",
    answer.factors.map((row) => describeFactor(row, catalogue?.answer)),
  );
  list("plan", describePlan(plan, catalogue?.plan));
  showRun(baseline, conditions, plan);
  part("answer").textContent = JSON.stringify({ answer, language });
}

function showTime(answer: Compensation): void {
  const { timeS, lowS, highS } = roundEstimate(answer);
  part("time").textContent = answer.refused
    ? ""
    : `${formatTime(timeS)} (${formatTime(lowS)}–${formatTime(highS)})`;
}

/** Two minutes into the run, with what the thermometer says. */
function showRun(baseline: Baseline, conditions: Conditions, plan: ProcessPlan): void {
  const say = words[language];
  const nowS = 120;
  const inC = (text: string): number => parseTemperature(text, { unit: "C" });
  const given = written.get("reading") === "" ? undefined : read("reading", inC);
  complain("reading", given ?? { value: undefined });
  const { step, next } = planAt(plan, nowS);
  part("step").textContent = `${step?.name ?? ""} → ${next === undefined ? "" : formatTime(next.atS)}`;
  if (given === undefined || !("value" in given)) {
    part("run").textContent = "";
    return;
  }
  const log = [{ timeS: nowS, temperatureC: given.value }];
  const run = steer({ baseline, conditions, log, nowS, ambientC: 14, vessel: "tray-in-air" });
  const left = formatTime(roundEstimate(run.remaining).timeS);
  part("run").textContent = [
    run.action === "pour-out" ? say.pourOut : `${say.left} ${left}`,
    run.trusted ? "" : say.doubt,
  ].join(" ");
}

for (const field of fields) {
  const input = part(field);
  if (!(input instanceof HTMLInputElement)) throw new Error(`#${field} is no blank`);
  input.value = start[field];
  input.addEventListener("input", () => {
    written.set(field, input.value);
    show();
  });
}
for (const each of languages)
  part(each).addEventListener("click", () => {
    language = each;
    show();
  });
show();
