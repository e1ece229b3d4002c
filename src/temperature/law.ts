/*
 * What a temperature law is, and how ln(time) runs under each form of it.
 */
import { inRange, isBoolean, notOneOf, positive } from "../core/guards.js";
import { preparedTable, type Table, type TableUnread, type TimeKnot } from "../core/table.js";
import { readyTableWalk, type TableAxis } from "../core/tableWalk.js";
import { tableRows, type Placing } from "../core/tableRows.js";
import {
  checkedDepartures,
  departedSd,
  readyWalk,
  type Departure,
  type ReadyWalk,
} from "../core/departures.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";

/**
 * Molar gas constant in kJ/(mol·K): CODATA 2018, exact in the SI (Tiesinga et al., Rev. Mod. Phys. 93,
 * 025010, 2021).
 */
export const GAS_CONSTANT_KJ: number = 8.314462618e-3;

/** 0 °C in kelvin, by definition. */
export const ZERO_CELSIUS_K: number = 273.15;

/**
 * The spread of a law that was given without one, kJ/mol: the standard deviation between published tables,
 * which is hardly less between those of one developer on different films (docs/decisions/priors.md).
 */
export const GIVEN_LAW_SD_KJ: number = 14;

/**
 * How far the slope of a table as a whole is off before the first run, kJ/mol (an assumption of this
 * package): a developer mixed and used at home is not the maker's. Its variance is learned too, so that many
 * runs which lean one way can move it far.
 */
export const TABLE_ENERGY_SD_KJ: number = 5;

/**
 * How far ln(time) departs from one activation energy: the standard deviation of a random walk over one °C.
 *
 * @remarks Assumed, at the wide end of what the published tables in this repository bear: they are most
 * likely under 0.0125, and were smoothed before they were printed. The figures: docs/decisions/priors.md.
 */
export const DEPARTURE_LOG_SD: number = 0.03;

/**
 * Temperatures nearer than this share one departure, °C: between them the walk leaves 2 % at most. The axis
 * is °C: over the 10 °C of a table it and 1/T are alike to 7 %, and places stand as they were noted.
 */
export const SPACING_C: number = 2;

/** No spread of an energy is wider, kJ/mol. */
export const WIDEST_ENERGY_SD_KJ = 200;

/** How far off the slope of a table may be, kJ/mol. */
export const TABLE_ENERGY_RANGE: readonly [low: number, high: number] = [-200, 200];

/** Places of departures, °C. */
export const PLACES_C: readonly [low: number, high: number] = [0, 100];

/** A row of a published time-temperature table: the time that gives the same contrast at that temperature. */
export interface TemperatureRow {
  /** °C, 0 to 100 */
  readonly temperatureC: number;
  /** s, above 0 to 1e7 */
  readonly timeS: number;
  /** the step to which the time was rounded, s, above 0 to 1e7: a fit then knows how well the row is known */
  readonly stepS?: number | undefined;
}

/** Where a temperature law comes from, and what it says of its developer. */
export interface OfDeveloper extends LawOrigin {
  /** whether the law's developer holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean | undefined;
}

/**
 * How development time depends on temperature: plain data, in one of three forms.
 *
 * - `"arrhenius"`: ln(rate) = (E/R)(1/T0 − 1/T), E in kJ/mol from 0 to 200, with its standard deviation.
 *   `departures` are what was learned or fitted of the departures from it, between neighbouring temperatures;
 *   between them and beyond them a random walk of 0.03 in ln(time) over one °C is left.
 * - `"coefficient"`: the rate grows by `ratio` over `intervalC` degrees, ln(rate) linear in °C; the ratio is
 *   1 or more and at most e per degree, its spread `sdRatio` from 0 to ratio × `intervalC`.
 * - `"table"`: two or more rows of a maker's table, no two at one temperature, no warmer row longer than a
 *   colder one. `departures` are what was learned of single temperatures against the print,
 *   `energyOffKJPerMol` of its slope as a whole, known to `sdKJPerMol`: 0 ± 5 when left out.
 */
export type TemperatureLaw =
  | ({
      readonly kind: "arrhenius";
      /** activation energy, kJ/mol, 0 to 200 */
      readonly activationEnergyKJPerMol: number;
      /** its standard deviation, kJ/mol, 0 to 200 */
      readonly sdKJPerMol?: number | undefined;
      /** departures of single temperatures from this energy, as learned or fitted; places in °C */
      readonly departures?: readonly Departure[] | undefined;
    } & OfDeveloper)
  | ({
      readonly kind: "coefficient";
      /** the rate grows by this factor over `intervalC`, 1 to e for each degree */
      readonly ratio: number;
      /** the interval of the ratio, K, above 0 to 100 */
      readonly intervalC: number;
      /** its standard deviation, 0 to ratio × `intervalC` */
      readonly sdRatio?: number | undefined;
    } & OfDeveloper)
  | ({
      readonly kind: "table";
      /** times over temperature, two or more */
      readonly rows: readonly TemperatureRow[];
      /** how far the slope of the whole table is off, kJ/mol, −200 to 200; 0 when left out */
      readonly energyOffKJPerMol?: number | undefined;
      /** its standard deviation, kJ/mol, 0 to 200; 5 when left out */
      readonly sdKJPerMol?: number | undefined;
      /** learned departures of single temperatures from the table; places in °C */
      readonly departures?: readonly Departure[] | undefined;
    } & OfDeveloper);

/** The Arrhenius form on its own. */
export type ArrheniusLaw = Extract<TemperatureLaw, { kind: "arrhenius" }>;

/** The coefficient form on its own. */
export type CoefficientLaw = Extract<TemperatureLaw, { kind: "coefficient" }>;

/** The Arrhenius form, prepared: what is known of its departures can be asked. */
export type ReadyArrheniusLaw = ArrheniusLaw & { readonly walk?: ReadyWalk };

/** The table form, prepared: x is 1/T in 1/K, rising. */
export type ReadyTableLaw = Extract<TemperatureLaw, { kind: "table" }> & {
  readonly table: Table;
  readonly walk?: ReadyWalk;
};

/** A law that was checked; a table is sorted and curved. */
export type ReadyTemperatureLaw = ReadyArrheniusLaw | CoefficientLaw | ReadyTableLaw;

/** Returns a bath temperature when it is from 0 to 100 °C; throws otherwise. */
export function bathTemperature(at: string, value: unknown): number {
  return inRange(at, value, 0, 100, "temperatureC");
}

/** 1/T in 1/K. */
export function inverseKelvin(temperatureC: number): number {
  return 1 / (temperatureC + ZERO_CELSIUS_K);
}

/** 1/T at one temperature less that at another, in 1/K: a difference of the two quotients loses digits. */
export function inverseStep(fromC: number, toC: number): number {
  return (fromC - toC) / ((fromC + ZERO_CELSIUS_K) * (toC + ZERO_CELSIUS_K));
}

const BY_TEMPERATURE: Placing = {
  by: "temperatureC",
  x: (at, value) => -bathTemperature(at, value),
  steepest: 1,
};

/** The rows of a table, checked, sorted from warm to cold: x is 1/T in 1/K. */
export function checkedRows(at: string, rows: unknown): readonly TimeKnot[] {
  return tableRows(at, rows, BY_TEMPERATURE).map((row) => ({ ...row, x: inverseKelvin(-row.x) }));
}

/** Checks a law; a table comes back sorted and curved. */
export function checkedTemperatureLaw(at: string, given: unknown): ReadyTemperatureLaw {
  const law = checkedOrigin(at, given as TemperatureLaw);
  if (law.hydroquinone !== undefined) isBoolean(`${at}/hydroquinone`, law.hydroquinone);
  // Read once: where many forms of law meet, each reading of a field costs a search.
  const { kind } = law;
  if (kind === "arrhenius") {
    inRange(at, law.sdKJPerMol ?? 0, 0, WIDEST_ENERGY_SD_KJ, "kJPerMol", "/sdKJPerMol");
    inRange(at, law.activationEnergyKJPerMol, 0, 200, "kJPerMol", "/activationEnergyKJPerMol");
    if (law.departures === undefined) return law;
    const departures = checkedDepartures(`${at}/departures`, law.departures, PLACES_C);
    return { ...law, walk: readyWalk("temperature", departures, DEPARTURE_LOG_SD) };
  }
  if (kind === "coefficient") return checkedCoefficient(at, law);
  // A caller without types can get here with any kind at all.
  if ((kind as unknown) !== "table") notOneOf(`${at}/kind`, ["arrhenius", "coefficient", "table"], kind);
  inRange(at, law.energyOffKJPerMol ?? 0, ...TABLE_ENERGY_RANGE, "kJPerMol", "/energyOffKJPerMol");
  inRange(at, law.sdKJPerMol ?? 0, 0, WIDEST_ENERGY_SD_KJ, "kJPerMol", "/sdKJPerMol");
  const rows = checkedRows(at, law.rows);
  const ready = { ...law, table: preparedTable(rows, UNREAD) };
  if (law.departures === undefined) return ready;
  const departures = checkedDepartures(`${at}/departures`, law.departures, PLACES_C);
  return { ...ready, walk: readyTableWalk(tableAxis(ready), departures) };
}

/**
 * What is unknown of a table, for each unit of 1/T in 1/K. It goes on along rows that lie 2.6 °C apart or
 * more (assumed): the slope between two rows of 1 °C is as much rounding as law.
 */
const UNREAD: TableUnread = {
  perX: GIVEN_LAW_SD_KJ / GAS_CONSTANT_KJ,
  perRootX: 0,
  reach: 3e-5,
};

/** A table as its departures see it, along °C. */
export function tableAxis({ rows }: Extract<TemperatureLaw, { kind: "table" }>): TableAxis {
  return {
    name: "temperature",
    rows: rows.map(({ temperatureC }) => temperatureC).sort((a, b) => a - b),
    x: inverseKelvin,
    ...UNREAD,
    spacing: SPACING_C,
  };
}

function checkedCoefficient(at: string, law: CoefficientLaw): CoefficientLaw {
  const interval = positive(at, law.intervalC, 100, "temperatureDifferenceC", "/intervalC");
  const ratio = inRange(at, law.ratio, 1, Math.exp(interval), undefined, "/ratio");
  inRange(at, law.sdRatio ?? 0, 0, ratio * interval, undefined, "/sdRatio");
  return law;
}

/** ln(time) under a checked law at a temperature, less that at another; exactly 0 where they are equal. */
export function logTimeRatio(law: ReadyTemperatureLaw, fromC: number, toC: number): number {
  if (law.kind === "arrhenius") {
    const log = law.activationEnergyKJPerMol * (inverseStep(fromC, toC) / GAS_CONSTANT_KJ);
    return law.walk === undefined ? log : log + law.walk(fromC, toC).log;
  }
  if (law.kind === "coefficient") return (Math.log(law.ratio) / law.intervalC) * (fromC - toC);
  const log = Math.log(law.table.timeAt(inverseKelvin(toC)) / law.table.timeAt(inverseKelvin(fromC)));
  const off = (law.energyOffKJPerMol ?? 0) * (inverseStep(fromC, toC) / GAS_CONSTANT_KJ);
  return log + off + (law.walk === undefined ? 0 : law.walk(fromC, toC).log);
}

/** The standard deviation of ln(time) between two temperatures under a checked law. */
export function temperatureSpread(law: ReadyTemperatureLaw, fromC: number, toC: number): number {
  if (law.kind === "table")
    return Math.hypot(
      energyLogSd(law.sdKJPerMol ?? TABLE_ENERGY_SD_KJ, fromC, toC),
      law.walk === undefined
        ? law.table.spread(inverseKelvin(fromC), inverseKelvin(toC))
        : departedSd(law.walk(fromC, toC)),
    );
  if (law.kind === "arrhenius") {
    const sd = energyLogSd(law.sdKJPerMol ?? GIVEN_LAW_SD_KJ, fromC, toC);
    return law.walk === undefined ? sd : Math.hypot(sd, departedSd(law.walk(fromC, toC)));
  }
  // null, which is what JSON makes of NaN, is no spread of 0.
  return typeof law.sdRatio === "number"
    ? ((law.sdRatio / law.ratio) * Math.abs(toC - fromC)) / law.intervalC
    : energyLogSd(GIVEN_LAW_SD_KJ, fromC, toC);
}

/**
 * What an activation energy comes to over 10 °C, from 15 to 25 °C, as photographers know it; at most a
 * number.
 */
export function ratioOver10C(energyKJPerMol: number): number {
  return Math.min(Number.MAX_VALUE, Math.exp((energyKJPerMol / GAS_CONSTANT_KJ) * inverseStep(25, 15)));
}

/** The spread that an activation energy known to so many kJ/mol leaves. */
export function energyLogSd(sdKJPerMol: number, fromC: number, toC: number): number {
  return (sdKJPerMol / GAS_CONSTANT_KJ) * Math.abs(inverseStep(fromC, toC));
}

/** A conversion rounds: what passes a limit by its last bits is the limit. */
export function settled(value: number, limit: number): number {
  return value > limit && value <= limit * (1 + 1e-9) ? limit : value;
}
