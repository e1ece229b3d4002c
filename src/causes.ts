/*
 * The one list of causes. Every loop takes it as an argument; the public functions are those loops over this
 * list.
 */
import type { CauseSchema } from "./core/schema.js";
import { ageCause } from "./age/cause.js";
import { ageLearnable } from "./age/learnable.js";
import { ageSchema } from "./age/schema.js";
import { agitationCause } from "./agitation/cause.js";
import { agitationLearnable } from "./agitation/learnable.js";
import { agitationCauseSchema } from "./agitation/schema.js";
import { contrastCause } from "./contrast/cause.js";
import { contrastSchema } from "./contrast/schema.js";
import { dilutionCause } from "./dilution/cause.js";
import { dilutionLearnable } from "./dilution/learnable.js";
import { dilutionCauseSchema } from "./dilution/schema.js";
import { pushCause } from "./push/cause.js";
import { pushLearnable } from "./push/learnable.js";
import { pushSchema } from "./push/schema.js";
import { strengthCause } from "./strength/cause.js";
import { strengthLearnable } from "./strength/learnable.js";
import { strengthSchema } from "./strength/schema.js";
import { temperatureCause } from "./temperature/cause.js";
import { temperatureLearnable } from "./temperature/learnable.js";
import { temperatureSchema } from "./temperature/schema.js";
import { useCause } from "./use/cause.js";
import { useLearnable } from "./use/learnable.js";
import { useSchema } from "./use/schema.js";

/** Every cause of a change of development time, in the order of their rows in an answer. */
export const causes: readonly [
  typeof temperatureCause,
  typeof dilutionCause,
  typeof agitationCause,
  typeof useCause,
  typeof ageCause,
  typeof strengthCause,
  typeof contrastCause,
  typeof pushCause,
] = [
  temperatureCause,
  dilutionCause,
  agitationCause,
  useCause,
  ageCause,
  strengthCause,
  contrastCause,
  pushCause,
];

/** The name of a cause. */
export type CauseName = (typeof causes)[number]["name"];

/** The names of the causes, in the order of their rows. */
export const causeNames: readonly CauseName[] = /* @__PURE__ */ namesInOrder();

function namesInOrder(): readonly CauseName[] {
  return Object.freeze(causes.map(({ name }) => name));
}

/**
 * Learning's half of each cause that runs can teach, by the name of the cause. Apart from the list above, so
 * that an app that only compensates does not carry it.
 */
export const learnables: {
  readonly temperature: typeof temperatureLearnable;
  readonly dilution: typeof dilutionLearnable;
  readonly agitation: typeof agitationLearnable;
  readonly use: typeof useLearnable;
  readonly age: typeof ageLearnable;
  readonly strength: typeof strengthLearnable;
  readonly push: typeof pushLearnable;
} = {
  temperature: temperatureLearnable,
  dilution: dilutionLearnable,
  agitation: agitationLearnable,
  use: useLearnable,
  age: ageLearnable,
  strength: strengthLearnable,
  push: pushLearnable,
};

/**
 * The JSON Schema of each cause's condition and law, in the order of the causes. Apart from both lists above,
 * so that only what reads or writes documents carries it.
 */
export const causeSchemas: readonly CauseSchema[] = [
  temperatureSchema,
  dilutionCauseSchema,
  agitationCauseSchema,
  useSchema,
  ageSchema,
  strengthSchema,
  contrastSchema,
  pushSchema,
];
