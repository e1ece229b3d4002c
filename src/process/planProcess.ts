import { planOf } from "./planOf.js";
import type { ProcessInput, ProcessPlan } from "./types.js";

/**
 * The plan of a run, from the rest of the fresh bath to the wetting agent.
 *
 * @param input - vessel, and the development time: `timeS` in s, with the temperature in °C, or `answer`,
 * what `compensate` returned; agitation, baths and the rest as they are known
 * @returns steps laid end to end, each with its cues (`atS` counts from the start of the plan, like
 * `startS`), the total time in s, what to have ready in ml, cautions, gravest first, and the standing notes
 * @throws TypeError when a field is of the wrong kind, or neither `timeS` nor `answer` is given
 * @throws RangeError when a value is out of range, both `timeS` and `answer` are given, the times of the
 * answer are not in order, or the development of a `timeS` would hold more than 90000 agitations
 *
 * @remarks The development time runs from pouring in to the moment when the material is drained: pouring out
 * begins `drainS` before its end. An agitation that pouring out would cut short is left out. A time shorter
 * than the draining is planned as long as the draining, with a `"stop"` caution.
 *
 * With `stepS` the length of each step is rounded first, then the steps are laid end to end: fixing, washing
 * and the look for clearing upward, development and the others to the nearest step, but never to nothing.
 * Where that moves the development by more than 5 %, `development-rounded` warns; from a quarter on it stops.
 * Without `stepS` the handbook's fixing and washing go up to 5 s below ten minutes, to a minute below an
 * hour, then to five minutes (assumed); what the input states stays as it is.
 *
 * Each bath is drained within its length. A drum lies: it is turned without pause in every bath, and
 * opened when the fixing bath is out. Elsewhere white light is safe, and clearing is looked for, once it is
 * clear and half of the fixing is over. Three clearing times are planned for plates, and where the clearing
 * time is assumed, but no less than a minute of rapid fixer or five of plain hypo. Paper has a fixing time
 * of its own, since nobody sees it clear.
 *
 * A plate is taken as soft unless `emulsion` is `"hardened"` (common practice). An acid stop blisters soft
 * gelatin after carbonate, so plain water is planned there; a brew in `developer` says whether it holds any.
 *
 * An answer longer than a plan holds, 1e6 s or 90000 agitations, is planned that long: it has a `"stop"`
 * caution `plan-cut-short`, and `timeRefused` is true.
 *
 * An answer says the temperature at pour-in, the agitation and the dilution that its time is for. They are
 * planned where the input leaves them out. Where the input has another, the plan has a caution.
 *
 * Where the volume and the area are known, the plan says whether there is enough of the developer, as
 * {@link bathCapacity} does, and whether it covers the dish.
 *
 * Every figure that the input leaves out is a published one or common practice, named in the step's
 * `sources`: agitation from US Navy, Photography (Basic), NAVEDTRA 14209, p. 10-16; stop and wash from US
 * Army, subcourse SS05098, p. 24; fixing as {@link fixingTime} and {@link clearingTimeAt} say. Fixer carries
 * silver: local codes say where it goes, and the safety data sheets of all chemicals go before this plan.
 *
 * @example
 * ```ts
 * const plan = planProcess({ vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500 });
 * plan.steps.map((step) => step.durationS) // => [510, 30, 180, 1800, 60]
 * plan.steps[0].cues.at(-1)?.atS // => 500
 * plan.totalS // => 2580
 * ```
 */
export function planProcess(input: ProcessInput): ProcessPlan {
  return planOf("planProcess/input", input);
}
