import { arrayOf } from "../core/guards.js";
import { gravestFirst, type Caution } from "../core/caution.js";

const WORDS: Readonly<Record<Caution["severity"], string>> = { stop: "Stop", warn: "Take care", note: "Note" };

/**
 * Cautions in short English lines.
 *
 * @param cautions - cautions of any room
 * @returns a line each, gravest first: how grave, what, and where in the data, when it says so
 * @throws TypeError when `cautions` is not an array
 *
 * @example
 * ```ts
 * describeCautions([{ code: "short-time", severity: "warn", message: "Under five minutes.", path: "/timeS" }]) // => ["Take care: Under five minutes. [/timeS]"]
 * ```
 */
export function describeCautions(cautions: readonly Caution[]): readonly string[] {
  arrayOf("describeCautions: cautions", cautions, 0);
  return gravestFirst(cautions).map(({ severity, message, path }) => `${WORDS[severity]}: ${message}${path === undefined || path === "" ? "" : ` [${path}]`}`);
}
