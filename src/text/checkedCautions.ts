import { arrayOf, isText, knownEntry, plainObject } from "../core/guards.js";
import { severityTexts } from "../process/text.js";

/** Checks what a caution is read for. */
export function checkedCautions(where: string, cautions: unknown): void {
  arrayOf(where, cautions, 0).forEach((caution, i) => {
    const at = `${where}/${i}`;
    const { code, severity, message, path = "" } = plainObject(at, caution);
    isText(`${at}/code`, code);
    knownEntry(`${at}/severity`, severityTexts, severity);
    isText(`${at}/message`, message);
    isText(`${at}/path`, path);
  });
}
