/*
 * Learning's half of agitation: one loss, which scales the curve that the law had.
 */
import type { Learnable } from "../core/cause.js";
import { GIVEN_LOSS_SD, type AgitationLaw } from "./agitation.js";
import { agitationEffect } from "./cause.js";

/** Agitation as a number that runs teach. */
export const agitationLearnable: Learnable<AgitationLaw, number> = {
  parameters: ({ staleLoss: value, sdStaleLoss: sd = GIVEN_LOSS_SD }) => [
    { parameter: "agitation", value, sd, range: [0, 10] },
  ],
  row: (law, from, to) => [{ parameter: "agitation", slope: agitationEffect(law, from, to).slope }],
  law: (law, learned) => {
    const found = learned.get("agitation");
    return found === undefined
      ? law
      : { ...law, shape: law.shape ?? law.staleLoss, staleLoss: found.value, sdStaleLoss: found.sd };
  },
  unfit: (_law, from, to) =>
    (from === Infinity) === (to === Infinity) ? undefined : "stand needs a baseline that stands",
};
