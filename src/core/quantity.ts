/** What a number measures, in the unit that its name ends in. */
export type MeasuredQuantity =
  | "timeS"
  | "temperatureC"
  | "temperatureDifferenceC"
  | "ratio"
  | "cm2PerL"
  | "ageH"
  | "areaCm2"
  | "volumeMl"
  | "massG"
  | "gPerL"
  | "ph"
  | "molPerL"
  | "stops"
  | "density"
  | "standardDeviations"
  | "gamma"
  | "weight"
  | "count"
  | "kJPerMol"
  | "ratePerS"
  | "labelMg"
  | "mlPerCm2"
  | "temperatureF";

/**
 * What lies between 0 and this measures nothing, and what is divided by it is no number any more: it is
 * refused wherever a figure must be above 0, and to people and in data it is 0.
 */
export const LEAST: number = 1e-30;

/** The unit of a quantity as it is written behind a number; nothing for a bare number. */
export function unitOf(quantity: MeasuredQuantity | undefined): string {
  const unit = UNITS[quantity as MeasuredQuantity];
  return unit ? ` ${unit}` : "";
}

/** What a field measures, from the unit that its name ends in. */
export function quantityOf(name: string): MeasuredQuantity | undefined {
  return ENDINGS.find(([ending]) => name.endsWith(ending))?.[1];
}

const ENDINGS: readonly (readonly [string, MeasuredQuantity])[] = [
  ["Cm2PerL", "cm2PerL"],
  ["KJPerMol", "kJPerMol"],
  ["PerS", "ratePerS"],
  ["RootH", "ratio"],
  ["Cm2", "areaCm2"],
  ["intervalC", "temperatureDifferenceC"],
  ["C", "temperatureC"],
  ["S", "timeS"],
  ["H", "ageH"],
  ["Ml", "volumeMl"],
  ["MlPerRoll", "volumeMl"],
  ["Mg", "labelMg"],
  ["G", "massG"],
  ["gamma", "gamma"],
  ["Stops", "stops"],
];

const UNITS: { readonly [Name in MeasuredQuantity]?: string } = {
  timeS: "s",
  temperatureC: "°C",
  temperatureDifferenceC: "°C",
  temperatureF: "°F",
  cm2PerL: "cm²/l",
  ageH: "h",
  areaCm2: "cm²",
  volumeMl: "ml",
  massG: "g",
  gPerL: "g/l",
  molPerL: "mol/l",
  stops: "stops",
  kJPerMol: "kJ/mol",
  ratePerS: "1/s",
  labelMg: "mg",
  mlPerCm2: "ml/cm²",
};
