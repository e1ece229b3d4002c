/*
 * Module: process. A caution with its English sentence.
 */
import { sayer, type Sayer } from "../core/cautionTexts.js";
import { processSentences, type ProcessCautionCode } from "./text.js";

/** Makes a caution of this module; `figures` holds all that its sentence names. */
export const caution: Sayer<ProcessCautionCode> = /* @__PURE__ */ sayer(processSentences);
