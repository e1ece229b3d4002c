/*
 * How far a film was pushed, in a cell of its own or among the remarks.
 */
import { isInputError } from "../core/errors.js";
import { unreadable, type TextForm } from "../core/guards.js";
import { stopsFromText } from "../push/parseStops.js";

/** A cell that was crossed out. */
const CROSSED = /^[-\u2013/]$/;
const PUSH_WORD = /\b(?:push|pull)(?:e[dn]|ing)?\b|\bgepu(?:sh|ll)t\b/i;
/** What was done, or was not. */
const DONE = /\b(?:pushed|pulled|gepusht|gepullt|no|not|kein(?:en?)?|nicht|ohne)\b/i;
const BARE = /\b(?:push|pull)\b/i;
const REMARK: TextForm = { format: "push", examples: ["pushed 1 stop", "not pushed"] };

/** The stops of a push, below 0 of a pull, which the heading may say too; 0 where it is crossed out. */
export const pushCell = (text: string, unit = ""): number =>
  CROSSED.test(text) ? 0 : stopsFromText("", text, unit);

/** A part of a remark about push, and the stops if it says no more than that the film was pushed. */
interface PushPart {
  readonly part: string;
  readonly stops: number | undefined;
}

/** The parts of a remark that are about push: "pushed 1 stop", "next time push 1 stop". */
function pushParts(remark: string): readonly PushPart[] {
  return remark.split(/(?<=[;.!?])\s+|\n+/).flatMap((text) => {
    const sentence = text.replace(/(?<![;.!\s])[;.!\s]+$/, "");
    return sentence
      .split(/,\s+/)
      .filter((part) => PUSH_WORD.test(part))
      .map((part) => {
        // Behind a comma a bare word may be a wish: "next time, push 1 stop".
        const said = DONE.test(part) || (part === sentence && BARE.test(part));
        return { part, stops: said && !sentence.includes("?") ? stopsIn(part) : undefined };
      });
  });
}

function stopsIn(part: string): number | undefined {
  try {
    return stopsFromText("", part);
  } catch (error) {
    if (!isInputError(error) || error.code !== "unreadable") throw error;
    return undefined;
  }
}

/** What a remark says of how far the film was pushed. */
export function pushesIn(remark: string): readonly { readonly part: string; readonly value: number }[] {
  return pushParts(remark).flatMap(({ part, stops }) =>
    stops === undefined ? [] : [{ part, value: stops }],
  );
}

/** Refuses a remark about push that does not say how far the film was pushed, or whether. */
export function refuseUnsaidPush(remark: string): void {
  const unsaid = pushParts(remark).find(({ stops }) => stops === undefined);
  if (unsaid) unreadable("", REMARK, unsaid.part);
}
