/*
 * Module: process. An input error of a function that is called on the way, told in the name of the one that
 * was called first.
 */
import { inputError, isInputError } from "../core/errors.js";

/** Calls; an input error of the function `inner` gets the place `outer` before its path. */
export function inNameOf<Value>(outer: string, inner: string, call: () => Value): Value {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error) || !error.message.startsWith(inner)) throw error;
    const { code, path, expected, actual, sentence } = error;
    const kind = error instanceof TypeError ? TypeError : RangeError;
    throw inputError(kind, outer + path, code, expected, actual, sentence);
  }
}
