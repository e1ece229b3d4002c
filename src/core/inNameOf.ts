import { inputError, isInputError } from "./errors.js";

/**
 * Runs what calls another function of the package, and lets an input error carry the name of the function
 * that the caller knows.
 *
 * @param name - the function that was called, and perhaps the place of what it was given
 * @param placeOf - where the value is in what the caller gave
 */
export function inNameOf<T>(name: string, work: () => T, placeOf = (path: string): string => path): T {
  try {
    return work();
  } catch (error) {
    if (!isInputError(error)) throw error;
    const { code, path, expected, actual, sentence } = error;
    const kind = error instanceof TypeError ? TypeError : RangeError;
    throw inputError(kind, name + placeOf(path), code, expected, actual, sentence);
  }
}
