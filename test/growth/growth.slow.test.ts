/*
 * No function that takes a list does more than n·log n of work, from a hundred entries to ten thousand, and with
 * GROWTH=100000 in the environment to a hundred thousand, which takes minutes. Counted in operations: see
 * operations.ts. All data are invented.
 */
import { describe, expect, it } from "vitest";
import {
  bathState,
  checkKnowledge,
  checkLedger,
  checkLog,
  compensate,
  contrastIndex,
  equivalentTime,
  fitDilutionLaw,
  fitDrift,
  fitGrowth,
  fitTemperatureLaw,
  learn,
  mergeKnowledge,
  predict,
  readRunNotes,
  remainingTime,
  startKnowledge,
  steer,
  temperatureFactor,
  tidyRuns,
  type Baseline,
  type DevelopmentRun,
  type LearnedKnowledge,
  type CharacteristicCurve,
  type DilutionRow,
  type GrowthPoint,
  type BathLedger,
  type TemperatureRow,
  type TemperatureLog,
} from "../../src/index.js";
import { counting, operations } from "./operations.js";

const MOST = Number(process.env["GROWTH"] ?? 10_000);
const DECADES = [100, 1000, 10_000, 100_000].filter((count) => count <= MOST);
/** The numbers from 0 to 1 in `count` equal steps. */
const shares = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i / (count - 1));
/** A small difference from row to row that is the same on every machine. */
const wobble = (i: number): number => ((i * 7919) % 13) - 6;

const known: Baseline = { timeS: 540, temperatureC: 20 };
const logOf = (count: number): TemperatureLog =>
  shares(count).map((share, i) => ({
    timeS: 300 * share,
    temperatureC: 18 + 4 * Math.exp(-3 * share) + 0.001 * wobble(i),
  }));
const tableOf = (count: number): readonly TemperatureRow[] =>
  shares(count).map((share) => ({
    temperatureC: 10 + 20 * share,
    timeS: 1200 * Math.exp(-1.6 * share),
  }));
const dilutionsOf = (count: number): readonly DilutionRow[] =>
  shares(count).map((share) => ({
    dilution: { stockParts: 1, waterParts: 4 + 20 * share },
    timeS: 400 + 600 * share,
  }));
const growthOf = (count: number): readonly GrowthPoint[] =>
  shares(count).map((share) => ({
    timeS: 60 + 900 * share,
    gamma: 1.2 * (1 - Math.exp(-0.3 - 3 * share)),
  }));
const curveOf = (count: number): CharacteristicCurve =>
  shares(count).map((share) => ({ logH: 4 * share, density: 0.1 + 2.6 * share ** 1.5 }));
const notesOf = (count: number): readonly Readonly<Record<string, string>>[] =>
  shares(count).map((share) => ({
    time: "9:00",
    temperature: `${(18 + 4 * share).toFixed(1)} °C`,
    outcome: "good",
  }));
const runsOf = (count: number): readonly DevelopmentRun[] =>
  shares(count).map((share, i) => ({
    id: `run ${i}`,
    timeS: 540 + 10 * wobble(i),
    temperatureC: 18 + 4 * share,
    outcome: i % 2 === 0 ? { kind: "good" } : { kind: "failed" },
  }));
const start = startKnowledge(known);
/** Knowledge from a store: nothing of its fit is remembered. */
const stored = (count: number): LearnedKnowledge => structuredClone(learn(start, runsOf(count)));
const ledgerOf = (count: number): BathLedger => ({
  volumeMl: 1000,
  mixedAtH: 0,
  processed: shares(count).map((share) => ({ atH: 100 * share, areaCm2: 0.01 })),
});

/** What so many entries are, and the call that takes them: only the call is counted. */
interface Row {
  readonly name: string;
  readonly entries: (count: number) => unknown;
  readonly call: (entries: never) => unknown;
}
const row = <Entries>(
  name: string,
  entries: (count: number) => Entries,
  call: (entries: Entries) => unknown,
): Row => ({ name, entries, call });

const rows: readonly Row[] = [
  row("fitGrowth, points", growthOf, (points) => fitGrowth(points)),
  row("fitDrift, readings", logOf, (log) => fitDrift(log)),
  row("contrastIndex, steps", curveOf, contrastIndex),
  row("fitTemperatureLaw, rows", tableOf, (table) => fitTemperatureLaw(table)),
  row("fitDilutionLaw, rows", dilutionsOf, (table) => fitDilutionLaw(table)),
  row("temperatureFactor, rows of its table", tableOf, (table) =>
    temperatureFactor(12, 24, { kind: "table", rows: table }),
  ),
  row("learn, runs", runsOf, (runs) => learn(start, runs)),
  row("checkKnowledge, runs", stored, checkKnowledge),
  row("tidyRuns, runs of which half failed", stored, tidyRuns),
  row("predict, runs", stored, (one) => predict(one, { temperatureC: 17 })),
  row("mergeKnowledge, runs", stored, (one) => mergeKnowledge(one, one)),
  row("readRunNotes, rows", notesOf, (notes) => readRunNotes(notes)),
  row("equivalentTime, readings", logOf, (log) => equivalentTime(log, 20)),
  row("remainingTime, readings", logOf, (log) => remainingTime({ log, targetS: 540, referenceC: 20 })),
  row("compensate, readings", logOf, (temperatureC) => compensate(known, { temperatureC })),
  row("checkLog, readings", logOf, (log) => checkLog(log)),
  row("steer, readings", logOf, (log) => steer({ baseline: known, conditions: {}, log })),
  row("bathState, films", ledgerOf, (ledger) => bathState(ledger, 100)),
  row("checkLedger, films", ledgerOf, checkLedger),
];

describe("work grows no faster than n·log n", () => {
  it.each(rows)("$name", { timeout: 600_000 }, ({ entries, call }) => {
    const lists = DECADES.map(entries);
    const counts = counting(() => lists.map((list) => operations(() => call(list as never))));
    expect(counts[0]).toBeGreaterThan(100);
    // From 10^k to 10^(k+1) n·log n grows 10·(k + 1)/k times.
    const growths = counts.slice(1).map((count, i) => count / counts[i]! / ((10 * (i + 3)) / (i + 2)));
    expect(
      growths.filter((growth) => growth > 1),
      counts.join(", "),
    ).toEqual([]);
  });
});
