/*
 * Every published figure against the package, and the proof that none was dropped: the
 * totals below were counted by hand from the collected records, and each typed row must have been through a
 * check.
 */
import { describe, expect, it } from "vitest";
import * as agitation from "./agitation.js";
import { checkAgitation } from "./checks/agitation.js";
import { checkCoefficients, checkNegative } from "./checks/coefficients.js";
import { checkDilution } from "./checks/dilution.js";
import { checkKeeping } from "./checks/keeping.js";
import { assertionsOf } from "./checks/ledger.js";
import { checkTimeTables } from "./checks/temperature.js";
import { checkUse } from "./checks/use.js";
import * as dilution from "./dilution.js";
import * as keeping from "./keeping.js";
import type { NotUsed, Published } from "./published.js";
import * as temperature from "./temperature.js";
import * as use from "./use.js";

describe("time-temperature tables", checkTimeTables);
describe("a column that must not pass", checkNegative);
describe("coefficients, factors and limits of temperature", checkCoefficients);
describe("dilution", checkDilution);
describe("agitation", checkAgitation);
describe("use", checkUse);
describe("keeping", checkKeeping);

/** Everything typed in, by the table of this folder that holds it. */
const typed: Readonly<Record<string, readonly Published<unknown>[]>> = {
  "timeTables": temperature.timeTables,
  "coefficients": temperature.coefficients,
  "limits": temperature.limits,
  "other temperature": [
    temperature.wallAppearance,
    temperature.meesDefinition,
    temperature.fergusonHoward,
    temperature.homogeneous,
    temperature.autochromeFactors,
    temperature.tenPercentRule,
    temperature.armyTimes,
    temperature.toleranceArithmetic,
    temperature.quotedRange,
    temperature.orderOfAgents,
  ],
  "dilutionSeries": dilution.dilutionSeries,
  "stockAndHalf": dilution.stockAndHalf,
  "pyroPairs": dilution.pyroPairs,
  "dilution rules": [
    ...dilution.timesPerDilution,
    ...dilution.dilutionRules,
    ...dilution.leastStock,
    dilution.rotaryAt24,
    dilution.tankAgainstTray,
    dilution.letterDilutions,
    dilution.furthestDilution,
  ],
  "agitation": [
    ...agitation.agitationRatios,
    agitation.standPractice,
    agitation.shortestTime,
    agitation.rotaryStock,
  ],
  "use": [
    ...use.useRules,
    ...use.capacities,
    ...use.replenishment,
    use.stepRule,
    use.addedMinutes,
    use.perFilmRange,
    use.rollEquivalents,
  ],
  "keeping": [...keeping.keepingLimits, keeping.cliff],
};

/** Records and rows of each table, counted by hand. */
const counted: Readonly<Record<string, readonly [records: number, rows: number]>> = {
  // 72 printed cells less the one that is not legible
  "timeTables": [16, 71],
  "coefficients": [9, 9],
  "limits": [8, 16],
  "other temperature": [10, 18],
  "dilutionSeries": [24, 59],
  "stockAndHalf": [2, 8],
  "pyroPairs": [3, 6],
  "dilution rules": [13, 32],
  "agitation": [7, 12],
  "use": [15, 23],
  "keeping": [10, 18],
};

const notUsed: readonly NotUsed[] = [
  ...temperature.temperatureNotUsed,
  ...dilution.dilutionNotUsed,
  ...agitation.agitationNotUsed,
  ...use.useNotUsed,
  ...keeping.keepingNotUsed,
  ...keeping.otherModules,
];

describe("no row was dropped", () => {
  const all = Object.values(typed).flat();
  it("every table holds the records and rows that were counted by hand", () => {
    const found = Object.fromEntries(
      Object.entries(typed).map(([name, records]) => [
        name,
        [records.length, records.reduce((sum, { rows }) => sum + rows.length, 0)],
      ]),
    );
    expect(found).toEqual(counted);
  });
  it("87 records on temperature, 175 on the rest and what was found later are each used once or set aside with a reason", () => {
    const ids = [...all.map(({ id }) => id), ...notUsed.flatMap((group) => group.ids)];
    expect(
      ids.filter((id, i) => ids.indexOf(id) !== i),
      "twice",
    ).toEqual([]);
    const rest = ids.filter((id) => /^(DIL|AGI|EXH|KEP|PSH|FIX|REC)-\d{3}$/.test(id));
    const later = ids.filter((id) => id.startsWith("EV-"));
    expect([ids.length - rest.length - later.length, rest.length, later.length]).toEqual([87, 175, 3]);
    for (const { reason } of notUsed) expect(reason.length).toBeGreaterThan(10);
  });
  it("every record says where it stands and how it came", () => {
    for (const { id, source, provenance } of all) {
      expect(source, id).toMatch(/\d{4}|n\.d\.|practitioners' rule/);
      if (provenance === "common practice") expect(source).toMatch(/^practitioners' rule/);
    }
  });
  it("every row went through a check", () => {
    const bare = all
      .flatMap(({ id, rows }) => rows.map((_, i) => ((assertionsOf(id)[i] ?? 0) > 0 ? "" : `${id} row ${i}`)))
      .filter((name) => name !== "");
    expect(bare).toEqual([]);
    const assertions = all.flatMap(({ id }) => assertionsOf(id)).reduce((sum, n) => sum + n, 0);
    expect(assertions).toBeGreaterThan(all.reduce((sum, { rows }) => sum + rows.length, 0));
  });
});
