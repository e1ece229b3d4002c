/**
 * darkroom-kinetics: how long to develop now. Pure functions over plain data, grouped by room.
 *
 * @packageDocumentation
 */

// core: what every answer is made of
export type { Caution, CautionSeverity } from "./core/caution.js";
export type { TimeEstimate } from "./core/estimate.js";
export type { Basis, Factor, LawOrigin } from "./core/term.js";

// temperature: time at another temperature
export type { ArrheniusLaw, CoefficientLaw, TemperatureLaw, TemperatureRow } from "./temperature/law.js";
export { temperatureFactor } from "./temperature/temperatureFactor.js";
export { rateFunction } from "./temperature/rateFunction.js";
export { temperatureCoefficient } from "./temperature/temperatureCoefficient.js";
export { temperatureLogSd } from "./temperature/temperatureLogSd.js";
export { asArrheniusLaw } from "./temperature/asArrheniusLaw.js";
export { asCoefficientLaw } from "./temperature/asCoefficientLaw.js";
export { fitTemperatureLaw, type FittedTemperatureLaw } from "./temperature/fitTemperatureLaw.js";
export type { HandbookDeveloper } from "./handbook/temperature.js";
export { handbookTemperatureLaw } from "./temperature/handbookTemperatureLaw.js";
export { genericTemperatureLaw } from "./temperature/genericTemperatureLaw.js";
export { temperatureCautions, type TemperatureCautionOptions } from "./temperature/temperatureCautions.js";
