/*
 * The one list of pairs of causes. Loops over the causes take it beside their list.
 */
import { interactionLearnable } from "./interaction/learnable.js";
import { interactionPair } from "./interaction/pair.js";
import { interactionSchema } from "./interaction/schema.js";
import type { JsonSchema } from "./core/schema.js";

/** Every pair of causes whose effects do not simply add, in the order of their rows in an answer. */
export const pairs: readonly [typeof interactionPair] = [interactionPair];

/** The name of a pair. */
export type PairName = (typeof pairs)[number]["name"];

/** Learning's half of each pair, by its name. */
export const pairLearnables: { readonly interaction: typeof interactionLearnable } = {
  interaction: interactionLearnable,
};

/** The JSON Schema of each pair's law, by its field in knowledge. Apart, so that only documents carry it. */
export const pairSchemas: Readonly<Record<string, () => JsonSchema>> = { interaction: interactionSchema };
