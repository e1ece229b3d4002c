/*
 * The decision page on priors, written from what the tables say.
 */
import { DEPARTURE_LOG_SD, genericDilutionLaw } from "../../src/dilution/genericDilutionLaw.js";
import { genericAgitationLaw, genericInteractionLaw, genericTemperatureLaw } from "../../src/index.js";
import { stockAndHalf } from "../reference/dilution.js";
import { handbookDilution } from "../../src/handbook/dilution.js";
import { DEPARTURE_LOG_SD as DEGREE_LOG_SD, GIVEN_LAW_SD_KJ } from "../../src/temperature/law.js";
import {
  aboutOne,
  agitationScales,
  dilutions,
  moments,
  mostLikely,
  overInverse,
  ownSlope,
  stockAndHalfPairs,
  temperatures,
  type Series,
} from "./priors.js";
import { cells, rule } from "./markdown.js";

const groupsOf = (series: readonly Series[]): readonly string[] => [
  ...new Set(series.map(({ group }) => group)),
];

const MOST_ENERGY = 100;
const MOST_EXPONENT = 2;
const DEGREE_WALKS = [0, 0.005, 0.01, 0.0125, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05] as const;
const WALKS = [0.05, 0.1, 0.15, 0.19, 0.23, 0.27, 0.31] as const;

function temperatureLines(): string {
  const line = (name: string, series: readonly Series[]): string => {
    const own = moments(series.map((one) => ownSlope(one).slope));
    const { mean, between, tables } = mostLikely(series, 0, MOST_ENERGY);
    const about = aboutOne(
      series.map((one) => ownSlope(one).slope),
      60,
    );
    return cells(
      name,
      String(tables),
      own.mean.toFixed(0),
      own.sd.toFixed(0),
      mean.toFixed(0),
      between.toFixed(0),
      about.toFixed(0),
    );
  };
  return [
    cells(
      "tables",
      "n",
      "mean",
      "scatter",
      "most likely mean",
      "most likely scatter",
      "root mean square about 60",
    ),
    rule(1, 6),
    line(
      "read in print",
      temperatures.filter(({ read }) => read),
    ),
    ...groupsOf(temperatures).map((group) =>
      line(
        group,
        temperatures.filter((one) => one.group === group),
      ),
    ),
    line("all", temperatures),
  ].join("\n");
}

function walkLines(): string {
  const all = WALKS.map((walk) => [walk, mostLikely(dilutions, walk, MOST_EXPONENT)] as const);
  const print = WALKS.map((walk) =>
    mostLikely(
      dilutions.filter(({ read }) => read),
      walk,
      MOST_EXPONENT,
    ),
  );
  const top = Math.max(...all.map(([, { logLikelihood }]) => logLikelihood));
  const topPrint = Math.max(...print.map(({ logLikelihood }) => logLikelihood));
  return [
    cells(
      "departure",
      "all: n",
      "scatter",
      "ln likelihood below the best",
      "read: n",
      "scatter",
      "ln likelihood below the best",
    ),
    rule(1, 6),
    ...all.map(([walk, found], i) =>
      cells(
        walk.toFixed(2),
        found.mean.toFixed(2),
        found.between.toFixed(2),
        (top - found.logLikelihood).toFixed(1),
        print[i]!.mean.toFixed(2),
        print[i]!.between.toFixed(2),
        (topPrint - print[i]!.logLikelihood).toFixed(1),
      ),
    ),
  ].join("\n");
}

function degreeLines(): string {
  const of = (series: readonly Series[]) =>
    DEGREE_WALKS.map((walk) => mostLikely(series, overInverse(walk), MOST_ENERGY));
  const [all, print] = [of(temperatures), of(temperatures.filter(({ read }) => read))];
  const below = (found: typeof all, i: number): string =>
    (Math.max(...found.map((one) => one.logLikelihood)) - found[i]!.logLikelihood).toFixed(1);
  return [
    cells("departure over 1 °C", "all: scatter", "ln likelihood below the best", "read: scatter", "the same"),
    rule(1, 4),
    ...DEGREE_WALKS.map((walk, i) =>
      cells(
        walk.toFixed(4),
        all[i]!.between.toFixed(0),
        below(all, i),
        print[i]!.between.toFixed(0),
        below(print, i),
      ),
    ),
  ].join("\n");
}

function familyLines(): string {
  return [
    cells("family", "tables", "read", "most likely n", "scatter", "taken", "seen"),
    rule(1, 6),
    ...Object.entries(handbookDilution).map(([family, { exponent, sd, seen }]) => {
      const some = dilutions.filter(({ group }) => group === family);
      const found = some.length > 0 ? mostLikely(some, DEPARTURE_LOG_SD, MOST_EXPONENT) : undefined;
      return cells(
        family,
        String(some.length),
        String(some.filter(({ read }) => read).length),
        found === undefined ? "–" : found.mean.toFixed(2),
        found === undefined ? "–" : found.between.toFixed(2),
        `${exponent} ± ${sd}`,
        seen,
      );
    }),
  ].join("\n");
}

function tableLines(): string {
  return [
    cells("table", "seen", "kJ/mol"),
    rule(2, 1),
    ...temperatures.map((one) => {
      const { slope, sd } = ownSlope(one);
      return cells(one.id, one.read ? "read" : "from memory", `${slope.toFixed(0)} ± ${sd.toFixed(0)}`);
    }),
  ].join("\n");
}

function pairLines(): string {
  return [
    cells("1+1 against stock", "seen", "kJ/mol"),
    rule(2, 1),
    ...stockAndHalfPairs.map(({ name, read, changeKJ, sdKJ }) =>
      cells(name, read ? "read" : "from memory", `${signed(changeKJ)} ± ${sdKJ.toFixed(0)}`),
    ),
  ].join("\n");
}

const signed = (value: number): string => value.toFixed(0).replace("-", "−");

/** The whole page. */
export function priorsPage(): string {
  const { staleLoss, staleTimeS, sdStaleLoss = 0 } = genericAgitationLaw;
  const scales = agitationScales(staleLoss, staleTimeS);
  const scale = moments(scales.map((one) => one.scale));
  const { perHalvingKJPerMol, sdKJPerMol: sdPair = 0 } = genericInteractionLaw;
  const changes = stockAndHalfPairs.map(({ changeKJ }) => changeKJ);
  const change = moments(changes);
  const printed = stockAndHalf.flatMap(({ rows }) => rows.map(({ n }) => n));
  return `# Where the priors come from

Written by \`npm run accuracy\` from the tables in \`test/reference\`; a test fails when it is stale. Tables of uncertain memory are left out, and a table whose rows are all in
another is counted once. Each row is known to its printed step (step/√12) and 0.8 % beside it.

A prior is what is known before the first run. It is also what is taken where nothing better is given. It has to be wide enough for a developer of which nothing is known here. Where the tables
and a figure proposed beforehand disagreed, the wider was taken.

## Temperature: ${genericTemperatureLaw.activationEnergyKJPerMol} ± ${genericTemperatureLaw.sdKJPerMol} kJ/mol

Activation energies, kJ/mol. "Most likely" is the maximum likelihood of a normal distribution between tables, the rounding of their rows taken out.

${temperatureLines()}

- The tables that were read have a lower mean, because most are one maker's sheet for a rotary tube. The remembered tables are for small tanks, which more photographers use. The trade's
  rule of ten per cent for each °C comes to 68 to 75. The mean is kept at 60: re-centring on one sheet would be wrong for everyone else. An average of 63 for small tanks, which was
  proposed, is not found here.
- The spread is the root mean square about 60, which holds the scatter between tables and the doubt about the mean.
- **Classes buy nothing.** The tables of one ascorbate developer run from 25 to 78 kJ/mol, as far as all tables do; those of one borax developer from 40 to 62. So the prior is one for all.
- **A law given without a spread has ± ${GIVEN_LAW_SD_KJ}**, the scatter between tables. The most likely figure is ${mostLikely(temperatures, 0, MOST_ENERGY).between.toFixed(0)}, from ${temperatures.length} tables known to a sixth of itself: the two cannot be told apart.
- **A handbook coefficient that was read has 22 % over 10 °C**, in proportion over another interval. Of that, 20 % are the ± ${GIVEN_LAW_SD_KJ} kJ/mol; the reading of a graph or a ratio adds the rest.
- **A figure from memory has 28 %**. That is as wide as the generic law at any temperature. Its ± ${genericTemperatureLaw.sdKJPerMol} kJ/mol is 25 % from 15 to 25 °C and 28 % from 0 to 10 °C. A figure from memory is not \`published\`.

${tableLines()}

### The departure from one energy: ${DEGREE_LOG_SD} over 1 °C

A law that was fitted or learned departs from its energy as a random walk. Its variance in ln(time) is ${DEGREE_LOG_SD}² for each °C beyond its rows or runs. Between them it is that of a bridge. As for dilution:

${degreeLines()}

- The rows of the tables lie nearer to a straight line in 1/T than ${DEGREE_LOG_SD}. They were read off a smooth curve before they were printed, and span 4 to 11 °C: what a
  developer does beyond them is not in them. So ${DEGREE_LOG_SD} is assumed, at the wide end of what the tables that were read bear.
- Without a departure, two rows held 62.8 % of the rows more than 6 °C from both, and the interval score of two rows was 22.6. The table by distance: [accuracy](../accuracy.md).
- The energy below 18 °C may differ from that above as one developer's from another's (± ${GIVEN_LAW_SD_KJ} kJ/mol). Runs at 17 to 24 °C then have to answer for 12 °C.
  That is the world
  "energy that changes in the cold" in [learning](../learning.md). At 0.03 it holds 88 % at 40 runs.
- The generic law and a law that is given have no departure: their spread was measured over whole tables.

## Dilution: n = ${genericDilutionLaw.exponent} ± ${genericDilutionLaw.sd}, and a departure of ${DEPARTURE_LOG_SD}

Developers follow a power only roughly. The departure is a random walk: its variance in ln(time) is ${DEPARTURE_LOG_SD}² for each unit of ln(concentration). For each departure, the most likely mean and
scatter of the exponent:

${walkLines()}

- The tables alone would take 0.23 to 0.27. The likelihood of 0.19 is within 1 of the best, so that the two cannot be told apart; 0.19 is kept.
- The generic law is wider than the scatter between tables at that departure. The few tables that were read are concentrates and pyro, which lie higher; most
  developers at home are stocks, which lie lower.

By family, at a departure of ${DEPARTURE_LOG_SD}. No scatter means that the departure explains all of it; the spread taken is that of a family of which a handful of tables is known.

${familyLines()}

Glycin rests on a printed statement, twice the water for twice the time, and no table. For the ascorbate stock a maker's sheet was read that prints stock and 1+1 at four temperatures in two
columns: n from ${Math.min(...printed).toFixed(2)} to ${Math.max(...printed).toFixed(2)}, ${moments(printed).mean.toFixed(2)} on average. The figure taken stands between it and the remembered table.

## Temperature with dilution: ${signed(perHalvingKJPerMol)} ± ${sdPair} kJ/mol for each halving

How much lower the activation energy at 1+1 is than that of the stock, from the table above. The spread is what the rounding of the rows leaves open.

${pairLines()}

- Their mean is ${signed(change.mean)} and their standard deviation ${change.sd.toFixed(0)}. The law is kept at ${signed(perHalvingKJPerMol)}, nearer to no interaction: two of three pairs are of one developer on one maker's sheet, and the
  third was not seen in print.
- The spread follows the rule of temperature: the root mean square about the mean that was kept, ${aboutOne(changes, perHalvingKJPerMol).toFixed(0)}. Three pairs know a spread to two fifths of itself, so it is rounded
  up to ${sdPair}. A spread of 20 was proposed.
- The 90 % range of the law is ${signed(perHalvingKJPerMol - 1.6449 * sdPair)} to ${signed(perHalvingKJPerMol + 1.6449 * sdPair)} kJ/mol. The pair on size 120 stands at its edge.

## Agitation: ${staleLoss} ± ${sdStaleLoss}, as a scale along the law's curve

None of the ratios was read in print. As scales along the curve of a loss of ${staleLoss}:

${cells("record", "scale")}
${rule(1, 1)}
${scales.map(({ id, scale: found }) => cells(id, found.toFixed(2))).join("\n")}

Their mean is ${scale.mean.toFixed(2)} and their standard deviation ${scale.sd.toFixed(2)}. A spread of 0.35 was proposed; ${sdStaleLoss} is taken, since the records scatter more.

## Row and fit

A row of a table is known to 2.5 % where its step is not told: half a minute on six minutes is 2.4 % (step/√12). A fit is the update of the prior by the rows. For dilution the departure is part
of that update: two rows near each other cannot tell a slope from it. Leaving it out brings the median error down and lets the intervals hold too few rows. What it gives with it: [accuracy](../accuracy.md).
`;
}
