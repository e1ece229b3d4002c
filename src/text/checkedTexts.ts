import { plainObject, wrongKind } from "../core/guards.js";

/** A catalogue that was handed in: every field of the English one is there, and of its kind. */
export function checkedTexts<Texts extends object>(at: string, texts: unknown, english: Texts): Texts {
  if (texts === english) return english;
  const given = plainObject(at, texts);
  for (const [field, own] of Object.entries(english) as [string, unknown][]) {
    const value = given[field];
    const kind = typeof own;
    if (typeof value !== kind || value === null)
      wrongKind(`${at}/${field}`, [kind === "string" ? "text" : (kind as "object" | "function")], value);
    if (field === "cautions") checkedTexts(`${at}/${field}`, value, own as object);
  }
  return given as Texts;
}
