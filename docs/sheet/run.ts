/*
 * What is shown of a run at a moment of the day: a pure function of the run and the moment. `steer` follows
 * the thermometer, `planAt` says what there is to do.
 */
import {
  planAt,
  planProcess,
  steer,
  steeringGoal,
  type Caution,
  type PlanCue,
  type ProcessPlan,
  type ProcessStep,
  type RoundedEstimate,
  type DevelopmentRun,
  type Sensitization,
  type StepName,
  type SteerAnswer,
} from "darkroom-kinetics";
import { clockAt, readingsOf, vesselOf, type Doubt, type Place, type Run } from "./bath.js";
import { asRun } from "./recipe.js";

/** What the light of each place lets the material see; in a closed tank it may be any. */
const SENSITIZATION: Readonly<Record<Place, Sensitization>> = {
  tank: "panchromatic",
  red: "orthochromatic",
  amber: "blue-sensitive",
  dark: "panchromatic",
};

/** At which baths each standing note has its place; at the first it is said before the clock starts. */
const NOTED_AT: Readonly<Partial<Record<string, readonly StepName[]>>> = {
  "bench-gloves": ["develop", "stop", "fix"],
  "bench-air": ["develop", "stop", "fix"],
  "bench-acid": ["develop", "stop"],
  "silver-disposal": ["fix", "wash"],
  "safety-data-sheets": ["develop"],
};

/** Where a moment lies along the scale, as a share of its length. */
export interface Scale {
  readonly now: number;
  readonly low: number;
  readonly goal: number;
  readonly high: number;
}

/** What is shown at a moment. */
export interface Shown {
  /** s from pour-in */
  readonly clockS: number;
  readonly phase: "develop" | "after" | "over";
  readonly answer: SteerAnswer;
  /** when it is to be out of the bath, s from pour-in: it begins as the time of the sheet */
  readonly goalS: number;
  /** nine times in ten, rounded as the time of the sheet is */
  readonly band: RoundedEstimate;
  readonly scale: Scale;
  readonly plan: ProcessPlan;
  readonly step: ProcessStep;
  /** what there is to do at once, begun a moment ago */
  readonly moments: readonly PlanCue[];
  /** what is to be done for a while; none where there is nothing to do */
  readonly cue?: PlanCue | undefined;
  /** until it ends, s */
  readonly cueLeftS: number;
  /** what comes next in this step or the one after, and in how many s */
  readonly next?: PlanCue | undefined;
  readonly nextInS: number;
  /** until the step ends, s */
  readonly stepLeftS: number;
  /** what is unwise about the bath that runs, gravest first; nothing of the developer, which the sheet says */
  readonly cautions: readonly Caution[];
  /** what is to be minded at this bath in every run */
  readonly notes: readonly Caution[];
  /** the readings that are asked about, in their order */
  readonly doubts: readonly Doubt[];
  /** whether the image may be reported */
  readonly canSee: boolean;
}

/** The plan of a run whose development takes so long; the other baths are as the package knows them. */
function planOf({ followed }: Run, place: Place, developS: number, temperatureC: number): ProcessPlan {
  const { baseline, conditions, volumeMl, areaCm2, planned = {} } = followed;
  return planProcess({
    vessel: place === "tank" ? "tank" : "tray",
    // A negative in a dish is alone where nothing else is said.
    pieces: planned.pieces ?? 1,
    timeS: developS,
    temperatureC,
    agitation: conditions.agitation ?? baseline.agitation,
    volumeMl,
    areaCm2,
    dilution: conditions.dilution ?? baseline.dilution,
    material: planned.material,
    iodideRich: planned.iodideRich,
    emulsion: planned.emulsion,
    developer: planned.developer,
    sensitization: planned.sensitization ?? SENSITIZATION[place],
    baths: planned.baths ?? { stop: {}, fix: {}, wash: {} },
    stepS: 1,
  });
}

let last:
  | { readonly run: Run; readonly place: Place; readonly nowS: number; readonly answer: SteerAnswer }
  | undefined;

/** What steering says at a clock time. The last answer is kept: after pouring out it stays the same. */
function steerAt(run: Run, place: Place, nowS: number): SteerAnswer {
  if (last?.run !== run || last.place !== place || last.nowS !== nowS)
    last = { run, place, nowS, answer: steered(run, place, nowS) };
  return last.answer;
}

function steered({ followed, log, seenS }: Run, place: Place, nowS: number): SteerAnswer {
  const { baseline, conditions, knowledge, appearance, ambientC } = followed;
  return steer({
    baseline,
    conditions,
    knowledge,
    log: readingsOf(log),
    nowS,
    ...vesselOf(place),
    ambientC,
    ...(seenS === undefined || appearance === undefined
      ? {}
      : {
          appearance: { appearanceS: seenS, factor: appearance.factor, factorLogSd: appearance.logSd },
        }),
  });
}

/** Just before the end of the development: what is shown until it is poured out. */
const BEFORE_S = 0.001;

/** How long what is done at once stays on the screen, s: long enough to be read by somebody who is busy. */
const MOMENT_S = 15;

/** What is shown of a run at a moment of the day. */
export function shownAt(run: Run, place: Place, nowMs: number): Shown {
  const clockS = clockAt(run, nowMs);
  const { outS, lateS, doubts } = run;
  const answer = steerAt(run, place, outS ?? clockS);
  const band = steeringGoal(answer, { stepS: run.followed.stepS });
  const { timeS: goalS } = band;
  const plan = planOf(run, place, outS ?? goalS, answer.equivalent.referenceC);
  const { endS } = developOf(plan);
  const planS = outS === undefined ? Math.min(clockS, endS - BEFORE_S) : Math.max(endS, clockS - lateS);
  const { step, cues, next, over } = planAt(plan, planS, { momentS: MOMENT_S });
  const moments = cues.filter(({ durationS }) => durationS === undefined);
  const cue = cues.filter(({ durationS }) => durationS !== undefined).at(-1);
  return {
    clockS,
    phase: outS === undefined ? "develop" : over ? "over" : "after",
    // The plan says when to pour out, by the rounded time, so that all on the page say the same.
    answer: { ...answer, action: cue?.do === "pour-out" && outS === undefined ? "pour-out" : "continue" },
    goalS,
    band,
    scale: scaleOf(answer),
    plan,
    step,
    moments: over ? [] : moments,
    cue: over ? undefined : cue,
    cueLeftS: cue?.durationS === undefined ? 0 : cue.atS + cue.durationS - planS,
    next,
    nextInS: next === undefined ? 0 : next.atS - planS,
    stepLeftS: step.endS - planS,
    cautions:
      outS === undefined ? [] : plan.cautions.filter(({ path }) => path?.startsWith(`/baths/${step.name}`)),
    notes: plan.benchNotes.filter(({ code }) => NOTED_AT[code]?.includes(step.name)),
    doubts,
    canSee: canSee(run, place) && clockS > 0,
  };
}

/** Nobody sees into a closed tank, and only some developers have a factor from appearance to the whole time. */
const canSee = ({ outS, seenS, followed }: Run, place: Place): boolean =>
  outS === undefined && seenS === undefined && place !== "tank" && followed.appearance !== undefined;

const developOf = ({ steps }: ProcessPlan): ProcessStep =>
  steps.find(({ name }) => name === "develop") as ProcessStep;

/** The bath that should run by the plan was begun only now: what follows is as much later. */
export function withLateBath(run: Run, place: Place, nowMs: number): Run {
  const { clockS, step } = shownAt(run, place, nowMs);
  return { ...run, lateS: Math.max(0, clockS - step.startS) };
}

/** The scale ends a little behind the band, or behind now. */
function scaleOf({ equivalent: { nowS, lowS, timeS, highS } }: SteerAnswer): Scale {
  const wholeS = 1.06 * Math.max(highS, nowS);
  return { now: nowS / wholeS, low: lowS / wholeS, goal: timeS / wholeS, high: highS / wholeS };
}

/**
 * A run that was poured out, as one to learn from: as long as a bath would have taken that stays at the
 * stated temperature; undefined where it teaches nothing.
 */
export function learnedFrom(run: Run, place: Place): Omit<DevelopmentRun, "outcome"> | undefined {
  const { equivalent } = steerAt(run, place, run.outS ?? 0);
  const conditions = asRun(run.followed.baseline, run.followed.conditions);
  if (conditions === undefined) return undefined;
  return {
    ...conditions,
    date: dayOf(run.startedMs),
    timeS: equivalent.nowS,
    temperatureC: equivalent.referenceC,
  };
}

/** The day on the calendar of this place, as an ISO date. */
function dayOf(timeMs: number): string {
  const minutes = new Date(timeMs).getTimezoneOffset();
  return new Date(timeMs - 60_000 * minutes).toISOString().slice(0, 10);
}
