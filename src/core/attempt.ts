import { isInputError, problemOf, type CheckProblem } from "./errors.js";

/** Makes a call and returns what it gives; an input error that it throws is noted, and the check goes on. */
export function attempt<T>(problems: CheckProblem[], call: () => T): T | undefined {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    problems.push(problemOf(error));
    return undefined;
  }
}
