/*
 * Module: process. What an answer was worked out for is what its plan does, unless the input says otherwise.
 */
import { agitationInterval, type Agitation } from "../agitation/agitation.js";
import type { Conditions } from "../compensate/types.js";
import { isPast, type Caution } from "../core/caution.js";
import { arrayOf, plainObject } from "../core/guards.js";
import { readDilution, logConcentration, type Dilution } from "../dilution/dilution.js";
import { formatDilution } from "../dilution/formatDilution.js";
import { caution } from "./caution.js";
import type { ProcessInput } from "./types.js";

/** What a plan and an answer can both say, as the sentence of a caution names it. */
type Said = number | string;

/** Temperatures nearer than this are shown alike, °C: half of a tenth. */
const ALIKE_C = 0.05;

/** How each field of a plan is read, told apart, and named in a caution. */
interface AnsweredField {
  readonly cause: "temperature" | "dilution" | "agitation";
  /** of the answer's side: what the plan takes from it */
  readonly taken: (side: unknown) => unknown;
  readonly differ: (at: string, answered: unknown, planned: unknown) => boolean;
  readonly said: (side: unknown) => Said;
}

const FIELDS: Readonly<Record<"temperatureC" | "dilution" | "agitation", AnsweredField>> = {
  temperatureC: {
    cause: "temperature",
    taken: (side) => pourInC(side as Conditions["temperatureC"]),
    // A temperature that is no number is refused by the plan.
    differ: (_, answered, planned) => isPast(Math.abs((answered as number) - (planned as number)), ALIKE_C),
    said: (side) => side as number,
  },
  dilution: {
    cause: "dilution",
    taken: (side) => side,
    differ: (at, answered, planned) => {
      const [a, b] = [answered, planned].map((side) => logConcentration(readDilution(at, side)));
      return Math.abs((a as number) - (b as number)) > 1e-9;
    },
    said: (side) => formatDilution(side as Dilution | string),
  },
  agitation: {
    cause: "agitation",
    taken: (side) => side,
    differ: (at, answered, planned) => agitationInterval(at, answered) !== agitationInterval(at, planned),
    said: (side) => (typeof side === "string" ? side : (side as Exclude<Agitation, string>).everyS),
  },
};

/** A plan's input with what its answer says. */
export interface AsAnswered {
  readonly input: ProcessInput;
  /** where both say it, and differ */
  readonly cautions: readonly Caution[];
}

/**
 * Temperature at pour-in, dilution and agitation are those of the answer's rows where the input leaves them
 * out.
 */
export function asAnswered(where: string, input: ProcessInput): AsAnswered {
  if (input.answer === undefined) return { input, cautions: [] };
  const { factors = [] } = plainObject(`${where}/answer`, input.answer);
  const rows = arrayOf(`${where}/answer/factors`, factors, 0).map((row, i) =>
    plainObject(`${where}/answer/factors/${i}`, row),
  );
  const taken: Partial<Record<keyof typeof FIELDS, unknown>> = {};
  const cautions: Caution[] = [];
  for (const [name, field] of Object.entries(FIELDS) as [keyof typeof FIELDS, AnsweredField][]) {
    const { cause, differ, said } = field;
    const row = rows.find((one) => one["cause"] === cause);
    const side = row?.["to"] ?? row?.["from"];
    if (side === undefined) continue;
    const answered = field.taken(side);
    const planned = input[name];
    if (planned === undefined) taken[name] = answered;
    else if (differ(`${where}/${name}`, answered, planned))
      cautions.push(
        caution("answer-differs", "warn", {
          path: `/${name}`,
          data: { cause, answered: said(answered), planned: said(planned) },
        }),
      );
  }
  return { input: { ...input, ...(taken as Partial<ProcessInput>) }, cautions };
}

/** The temperature of a bath at pour-in, °C: the first of a log, the start of a drift. */
export function pourInC(temperatureC: Conditions["temperatureC"]): number {
  if (typeof temperatureC !== "object") return temperatureC as number;
  return "startC" in temperatureC ? temperatureC.startC : (temperatureC[0]?.temperatureC as number);
}
