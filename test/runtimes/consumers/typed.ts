// TypeScript, strict, with the types of several modules; compiled as .mts and .cts under nodenext and as .ts for a bundler.
import {
  compensate,
  formatTime,
  handbookTemperatureLaw,
  mixVolumes,
  parseDilution,
  type Agitation,
  type Baseline,
  type Caution,
  type Compensation,
  type Conditions,
  type Dilution,
  type Factor,
  type HandbookDeveloper,
  type Knowledge,
  type MixedVolumes,
  type TemperatureLaw,
} from "darkroom-kinetics";

export interface Bath {
  readonly known: Baseline;
  readonly today: Conditions & { readonly dilution: string };
  readonly developer: HandbookDeveloper;
  readonly totalMl: number;
}

export interface Shown {
  readonly answer: Compensation;
  readonly shown: string;
  readonly volumes: MixedVolumes;
}

export function work({ known, today, developer, totalMl }: Bath): Shown {
  const temperature: TemperatureLaw = handbookTemperatureLaw(developer);
  const knowledge: Knowledge = { temperature };
  const answer: Compensation = compensate(known, today, knowledge);
  const dilution: Dilution = parseDilution(today.dilution);
  return { answer, shown: formatTime(answer.timeS), volumes: mixVolumes(dilution, totalMl) };
}

export const stops = (cautions: readonly Caution[]): readonly Caution[] => cautions.filter(({ severity }) => severity === "stop");
export const widest = (factors: readonly Factor[]): string | undefined =>
  [...factors].sort((a, b) => b.logSd - a.logSd)[0]?.cause;
export const interval = (agitation: Agitation): number | undefined =>
  agitation === "continuous" ? 0 : agitation === "stand" ? undefined : agitation.everyS;

// What the types must refuse: an error that is expected and does not come is an error itself.
// @ts-expect-error a temperature is a number
compensate.bind(undefined, { timeS: 510, temperatureC: "20" });
// @ts-expect-error answers are readonly
export const spoil = (answer: Compensation): void => void (answer.timeS = 0);
// @ts-expect-error no such developer
export const unknown: HandbookDeveloper = "coffee";
