import type { Caution } from "../core/caution.js";
import type { Quantity } from "../core/quantity.js";
import { basisOf, type LawOrigin } from "../core/term.js";
import { unusualDilutionLaw } from "../dilution/plausible.js";
import { unusualTemperatureLaw } from "../temperature/plausible.js";
import { unusualUseLaw } from "../use/plausible.js";
import type { Knowledge } from "./types.js";

/** What a module of a law finds unusual about it. */
interface Unusual {
  readonly reason: string;
  readonly path: string;
  readonly limit: number;
  readonly actual: number;
}

const RATIO: Quantity = "ratio";

const SENTENCES: Readonly<Record<string, string>> = {
  "energy": "The temperature law is outside what was ever published, 20 to 110 kJ/mol.",
  "maybe-kilocalories": "The activation energy is very low. Is it in kcal/mol?",
  "maybe-fahrenheit": "The ratio is over 18 degrees. Is that in °F? It is 10 °C.",
  "exponent": "The dilution law is outside what was ever published, an exponent of 0.2 to 2.",
  "increase": "The increase by use is outside what was ever published.",
  "maybe-percent": "The increase by use is 1 or more. Is it in per cent?",
};

/** A law that rests on something other than own runs, which may say what they do. */
const handedIn = <Law extends LawOrigin>(law: Law | undefined): law is Law =>
  law !== undefined && basisOf(law) !== "own-runs";

/**
 * Cautions about laws that were handed in and are outside what was ever published. Own runs may say what they
 * do.
 */
export function unusualLaws({ temperature, dilution, use }: Knowledge): readonly Caution[] {
  const found: Caution[] = [];
  const say = (law: string, quantity: Quantity, unusual: Unusual | undefined): void => {
    if (unusual === undefined) return;
    const { reason, path, limit, actual } = unusual;
    found.push({
      code: "law-unusual",
      severity: "warn",
      message: SENTENCES[reason] as string,
      path: `/knowledge/${law}${path}`,
      quantity: reason === "maybe-fahrenheit" ? "temperatureDifferenceC" : quantity,
      limit,
      // A ratio may be so large that its energy has no number.
      actual: Math.min(Number.MAX_VALUE, actual),
      data: { law, reason },
    });
  };
  if (handedIn(temperature)) say("temperature", "kJPerMol", unusualTemperatureLaw(temperature));
  if (handedIn(dilution)) say("dilution", RATIO, unusualDilutionLaw(dilution));
  if (handedIn(use)) say("use", RATIO, unusualUseLaw(use));
  return found;
}
