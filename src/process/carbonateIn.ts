/*
 * Module: process. Whether a brew holds carbonate, of which acid makes gas.
 */
import { readParts } from "../brew/brew.js";

/** Whether a brew holds carbonate, soda of any kind; `where` is the place of the brew. */
export const carbonateIn = (where: string, brew: unknown): boolean =>
  readParts(where, brew).parts.some(({ data }) => (data.moles?.carbonate ?? 0) > 0);
