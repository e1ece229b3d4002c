/*
 * Where the input of an evening has what is unwise about one of its plates.
 */
import type { Caution } from "../core/caution.js";
import type { Course } from "./eveningCourse.js";
import type { EveningInput, EveningPlateInput } from "./eveningTypes.js";

/** Cautions at their places in the input. */
export const placed = (cautions: readonly Caution[], placeOf: (path: string) => string): readonly Caution[] =>
  cautions.map((one) => (one.path === undefined ? one : { ...one, path: placeOf(one.path) }));

/** What a plan is asked that `compensate` is asked too. */
const ASKED: Readonly<Record<string, string>> = {
  "/temperatureC": "/conditions/temperatureC",
  "/agitation": "/conditions/agitation",
  "/dilution": "/conditions/dilution",
  "/developer/usedCm2PerL": "/conditions/usedCm2PerL",
};

/** What rises from plate to plate: the input has it for the first one alone. */
const COUNTED = ["/conditions/usedCm2PerL", "/conditions/ageH", "/baths/fix/usedCm2PerL"];

/** The place in the input of what `compensate` or a plan was asked for a plate. */
export function placeIn(asked: string, plate: number, input: EveningInput, { path, given }: Course): string {
  const at = `/plates/${plate}`;
  if (asked === "/areaCm2") return at + asked;
  const place = ASKED[asked] ?? asked;
  if (plate > 0 && COUNTED.includes(place)) return at;
  const [, side, field = ""] = place.split("/");
  const own = input.plates[plate] as EveningPlateInput;
  if (side === "baseline") return own.baseline === undefined ? place : at + place;
  if (side !== "conditions") return place;
  if (field === "temperatureC" && given !== undefined) return place.replace("/conditions/temperatureC", path);
  const holders: Readonly<Record<string, object | undefined>> = {
    [`${at}/conditions`]: own.conditions,
    "/conditions": input.conditions,
    "/baseline": input.baseline,
    [`${at}/baseline`]: own.baseline,
  };
  const says = (holder: string): boolean =>
    (holders[holder] as Readonly<Record<string, unknown>> | undefined)?.[field] !== undefined;
  return (Object.keys(holders).find(says) ?? "/conditions") + place.slice("/conditions".length);
}
