/*
 * Module: process. The wash: how long by material, fixing bath and cold, and what is done in it.
 */
import {
  COLD_WASH,
  handbookPaperWash,
  handbookWash,
  PLAIN_WASH,
  RUNNING_CHANGE_S,
  WASH_CHANGE_S,
  WASH_CHANGES,
  type HandbookWash,
  type WashMethod,
} from "../handbook/process.js";
import { bathTemperatureC, sourcesOf } from "./baths.js";
import type { BathContext } from "./context.js";
import { leftAlone, pourOut } from "./developmentCues.js";
import type { CueDraft, Draft } from "./layOut.js";
import { toUpper, upByLength } from "./rounding.js";
import type { Handling, ProcessBaths, WashSetting } from "./types.js";

/** How many times longer a wash takes in cold water. */
export function coldWashFactor(temperatureC: number): number {
  return 2 ** (Math.max(0, COLD_WASH.belowC - temperatureC) / COLD_WASH.doublingC);
}

/** The wash of the material at 20 °C after the fixing bath that is planned. */
function usualWash(context: BathContext, method: WashMethod, { fix }: ProcessBaths): HandbookWash {
  const film = handbookWash[method];
  if (context.material === "paper") return handbookPaperWash[context.paperBase];
  if (fix?.kind !== "plain") return film;
  const { times, sources } = PLAIN_WASH;
  return {
    durationS: film.durationS * times,
    afterAidS: film.afterAidS * times,
    leastS: film.leastS * times,
    sources: [...film.sources, ...sources],
  };
}

/** How long a wash takes: as the input says, or as the handbook reckons. */
export function washLengthS(context: BathContext, wash: WashSetting, baths: ProcessBaths): number {
  const { stepS } = context.handling;
  if (wash.durationS !== undefined) return toUpper(wash.durationS, stepS);
  const usual = usualWash(context, wash.method ?? "running", baths);
  const warmS = baths.clearingAid === undefined ? usual.durationS : usual.afterAidS;
  return upByLength(warmS * coldWashFactor(bathTemperatureC(context, wash)), stepS);
}

/**
 * The least length of a wash that is stated. Inversions are counted, and done faster where there is less
 * time: they have none.
 */
export function leastWashS(context: BathContext, wash: WashSetting, baths: ProcessBaths): number {
  const { method = "running" } = wash;
  if (method === "changes") return 0;
  const { leastS, afterAidS } = usualWash(context, method, baths);
  const warmS = baths.clearingAid === undefined ? leastS : Math.min(leastS, afterAidS);
  return warmS * coldWashFactor(bathTemperatureC(context, wash));
}

/** The step of the wash. */
export function washDraft(context: BathContext, wash: WashSetting, baths: ProcessBaths): Draft {
  const temperatureC = bathTemperatureC(context, wash);
  const { method = "running" } = wash;
  const usual = usualWash(context, method, baths);
  const durationS = washLengthS(context, wash, baths);
  // The other methods are changes of water, which are the handbook's in a wash of any length.
  const sources = method === "running" ? sourcesOf(wash, usual.sources) : usual.sources;
  return {
    name: "wash",
    durationS,
    temperatureC,
    cues: washCues(method, durationS, context.handling),
    sources,
  };
}

function washCues(method: WashMethod, durationS: number, handling: Handling): readonly CueDraft[] {
  if (method === "running") return [{ atS: 0, durationS, do: "run-water" }];
  if (method === "changes") return inversionCues(durationS, handling);
  const cues: CueDraft[] = [{ atS: 0, do: "fill" }, leftAlone(handling, 0, durationS)];
  for (let i = 1; i * WASH_CHANGE_S < durationS; i++)
    cues.push({ atS: i * WASH_CHANGE_S, do: "change-water" });
  return cues;
}

/**
 * Fill, move so often, leave it for the rest of the filling, pour out. A wash that is longer than the
 * handbook's leaves it longer; a shorter one does all of it faster.
 */
function inversionCues(durationS: number, handling: Handling): readonly CueDraft[] {
  const { inversions, inversionS, pourS } = WASH_CHANGES;
  const stretch = durationS / handbookWash.changes.durationS;
  const pace = Math.min(1, stretch);
  const halfPourS = (pourS / 2) * pace;
  const cues: CueDraft[] = [];
  let atS = 0;
  inversions.forEach((count, i) => {
    const endS = i === inversions.length - 1 ? durationS : atS + (count * inversionS + pourS) * stretch;
    const moveS = count * inversionS * pace;
    const restAtS = atS + halfPourS + moveS;
    const pourAtS = endS - halfPourS;
    cues.push(
      { atS, do: "fill" },
      { atS: atS + halfPourS, durationS: moveS, do: "agitate", movement: handling.movement, count },
    );
    if (pourAtS > restAtS + 1e-9) cues.push(leftAlone(handling, restAtS, pourAtS - restAtS));
    cues.push(pourOut(pourAtS, halfPourS));
    atS = endS;
  });
  return cues;
}

/** How many volumes of the vessel a wash takes. */
export function washFillings(method: WashMethod, durationS: number): number {
  if (method === "changes") return WASH_CHANGES.inversions.length;
  return Math.ceil(durationS / (method === "running" ? RUNNING_CHANGE_S : WASH_CHANGE_S));
}
