/*
 * The JSON Schema of the baths around the developer.
 */
import { above0, from, object, one, type Fields, type JsonSchema } from "../core/schema.js";
import { dilutionSchema } from "../dilution/schema.js";
import { fixerKinds, stopKinds, washMethods } from "../handbook/process.js";

/** The baths around the developer. Only those that are named are done. */
export function bathsSchema(): JsonSchema {
  const bath = (): Fields => ({
    durationS: above0(86400, "Length of the step, in seconds; the handbook's when left out."),
    temperatureC: from(0, 100, "Temperature, in °C; the developer's when left out."),
    dilution: dilutionSchema("Dilution, for the volumes to measure; ready to use when left out."),
  });
  return object(
    [],
    {
      preSoak: object([], bath(), "Water before the developer."),
      stop: object([], { kind: one(stopKinds, "Weak acid, or plain water."), ...bath() }, "The stop bath."),
      fix: object(
        [],
        {
          kind: one(fixerKinds, "Ammonium thiosulphate, or plain sodium thiosulphate."),
          clearingS: above0(7200, "Clearing time measured with a scrap of the material, in seconds."),
          clearingAtC: from(0, 40, "Temperature of that measurement, in °C."),
          freshClearingS: above0(7200, "Clearing time of the same bath when it was fresh, in seconds."),
          times: from(1, 10, "Fixing time in clearing times."),
          usedCm2PerL: from(0, 1e6, "Area fixed in it before, in cm² per litre."),
          capacityCm2PerL: above0(1e6, "Capacity, in cm² per litre."),
          ...bath(),
        },
        "The fixing bath.",
      ),
      clearingAid: object([], bath(), "A bath that helps the wash."),
      wash: object([], { method: one(washMethods, "How it is washed."), ...bath() }, "The wash."),
      wettingAgent: object([], bath(), "The last bath, for even drying."),
    },
    "The baths around the developer, as planProcess takes them.",
  );
}
