/* What the tests of the plan share: an invented run, and errors and steps by name. */
import { isInputError, type ProcessInput, type ProcessPlan, type ProcessStep } from "../../src/index.js";

/** An invented weekend workshop in a mountain hut: tap water at 14 °C, baths warmed to 20 °C. */
export const hut: ProcessInput = { vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500 };

/** A step of a plan, which has to be there. */
export function stepOf(plan: ProcessPlan, name: string): ProcessStep {
  const step = plan.steps.find((one) => one.name === name);
  if (step === undefined) throw new Error(`the plan has no step ${name}`);
  return step;
}

export const codes = (list: readonly { readonly code: string }[]): readonly string[] =>
  list.map(({ code }) => code);

/** The fault that a call is refused with: kind, function, path and code. */
export function refusal(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    return `${error.name} ${error.message.split(":")[0]} ${error.path} ${error.code}`;
  }
  return "nothing refused";
}
