/*
 * The rule of use of a material, where none is known for its developer.
 */
import { silverOf } from "../brew/brewCapacity.js";
import { frozen } from "../core/frozen.js";
import { genericUseLaw, type UseLaw } from "../use/useFactor.js";

/**
 * Printed rules of use are for film. Paper has a third of its silver, so that a bath wears by as much over
 * three times the area (the silver from memory). Plates are taken as film, as an area is in print.
 */
const paperUseLaw: UseLaw = /* @__PURE__ */ frozen({
  ...genericUseLaw,
  perCm2PerL: (genericUseLaw.perCm2PerL * silverOf("film")) / silverOf("paper"),
  sources: ["generic rule over published ones for film, by the silver of paper"],
});

/** The rule that is known, or that of paper; undefined where the generic one serves. */
export function useOf(material: string | undefined, known: UseLaw | undefined): UseLaw | undefined {
  return known ?? (material === "paper" ? paperUseLaw : undefined);
}
