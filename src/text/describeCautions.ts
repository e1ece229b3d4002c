import { arrayOf, knownEntry, plainObject, wrongKind } from "../core/guards.js";
import { gravestFirst, type Caution } from "../core/caution.js";

const WORDS: Readonly<Record<Caution["severity"], string>> = {
  stop: "Stop",
  warn: "Take care",
  note: "Note",
};

/**
 * Cautions in short English lines.
 *
 * @param cautions - cautions of any module
 * @returns a line each, gravest first: how grave, what, and where in the data, when it says so
 * @throws TypeError when `cautions` is not an array
 *
 * @example
 * ```ts
 * const short = { code: "short-time", severity: "warn", message: "Under five minutes.", path: "/timeS" };
 * describeCautions([short]) // => ["Take care: Under five minutes. [/timeS]"]
 * ```
 */
export function describeCautions(cautions: readonly Caution[]): readonly string[] {
  checkedCautions("describeCautions/cautions", cautions);
  return gravestFirst(cautions).map(
    ({ severity, message, path }) =>
      `${WORDS[severity]}: ${message}${path === undefined || path === "" ? "" : ` [${path}]`}`,
  );
}

/** Checks what a caution is read for. */
export function checkedCautions(where: string, cautions: unknown): void {
  arrayOf(where, cautions, 0).forEach((caution, i) => {
    const at = `${where}/${i}`;
    const { code, severity, message, path = "" } = plainObject(at, caution);
    if (typeof code !== "string") wrongKind(`${at}/code`, "text", code);
    knownEntry(`${at}/severity`, WORDS, severity);
    if (typeof message !== "string") wrongKind(`${at}/message`, "text", message);
    if (typeof path !== "string") wrongKind(`${at}/path`, "text", path);
  });
}
