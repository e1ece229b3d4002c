import type { Caution } from "../core/caution.js";
import type { UnusualReason } from "../core/cautionData.js";
import { makeCaution } from "../core/cautionTexts.js";
import { frozen } from "../core/frozen.js";
import type { MeasuredQuantity } from "../core/quantity.js";
import { basisOf, type LawOrigin } from "../core/term.js";
import { unusualDilutionLaw } from "../dilution/plausible.js";
import { ratioOver10C } from "../temperature/law.js";
import { fahrenheitTable, unusualTemperatureLaw } from "../temperature/plausible.js";
import { unusualUseLaw } from "../use/plausible.js";
import { compensateSentences } from "./text.js";
import type { Knowledge } from "./types.js";

/** What a module of a law finds unusual about it. */
interface Unusual {
  readonly reason: UnusualReason;
  readonly path: string;
  readonly limit: number;
  readonly actual: number;
}

const RATIO: MeasuredQuantity = "ratio";

/** A law that was plainly handed in: own runs may say what they do, and the handbook was published. */
const handedIn = <Law extends LawOrigin>(law: Law | undefined): law is Law =>
  law !== undefined && basisOf(law) === "given";

const over10C = (limit: number, actual: number): { readonly limit: number; readonly actual: number } => ({
  limit: ratioOver10C(limit),
  actual: ratioOver10C(actual),
});

/** Cautions about laws that were handed in and are outside what was ever published, or in °F. */
export function unusualLaws({ temperature, dilution, use }: Knowledge): readonly Caution[] {
  const found: Caution[] = [];
  const say = (law: string, quantity: MeasuredQuantity, unusual: Unusual | undefined): void => {
    if (unusual === undefined) return;
    const { reason, path, limit, actual } = unusual;
    found.push(
      frozen(
        makeCaution(compensateSentences, "law-unusual", "warn", {
          path: `/knowledge/${law}${path}`,
          quantity: reason === "maybe-fahrenheit" ? "temperatureDifferenceC" : quantity,
          limit,
          // A ratio may be so large that its energy has no number.
          actual: Math.min(Number.MAX_VALUE, actual),
          data: reason === "energy" ? { law, reason, over10C: over10C(limit, actual) } : { law, reason },
        }),
      ),
    );
  };
  if (handedIn(temperature)) {
    const [fahrenheit] = fahrenheitTable("/knowledge/temperature", temperature);
    // Degrees of another size make another energy.
    if (fahrenheit === undefined) say("temperature", "kJPerMol", unusualTemperatureLaw(temperature));
    else found.push(fahrenheit);
  }
  if (handedIn(dilution)) say("dilution", RATIO, unusualDilutionLaw(dilution));
  if (handedIn(use)) say("use", RATIO, unusualUseLaw(use));
  return found;
}
