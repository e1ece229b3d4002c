import type { Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { pushSentences } from "./text.js";

/** The gradient and the push of a change. */
interface Contrast {
  readonly gamma?: number | undefined;
  readonly pushStops?: number | undefined;
}

/**
 * A push is development to a steeper gradient. Asked together with another gradient it says one thing twice,
 * and both factors are multiplied.
 */
export function pushAndContrast(known: Contrast, { gamma, pushStops = 0 }: Contrast): readonly Caution[] {
  if (pushStops === 0 || gamma === undefined || gamma === known.gamma) return [];
  return [
    makeCaution(pushSentences, "push-and-contrast", "warn", {
      path: "/conditions/pushStops",
      quantity: "stops",
      actual: pushStops,
    }),
  ];
}
