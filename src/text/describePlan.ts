import { formatTime } from "../quantities/formatTime.js";
import { checkedPlan } from "../process/checkedPlan.js";
import type { Cue, Material, ProcessPlan } from "../process/types.js";

/**
 * A plan in short English lines, to read aloud or to pin to the wall.
 *
 * @param plan - a plan of `planProcess`
 * @returns first what there is to stop for, if anything; a line for each step and each cue, with the time
 * from the start of the plan; a cue that repeats has one line; at the end the total time and what to have
 * ready
 * @throws TypeError when `plan` is not a plan
 * @throws RangeError when a figure of it is out of range
 *
 * @example
 * ```ts
 * describePlan(planProcess({ vessel: "dish", timeS: 510, temperatureC: 20, volumeMl: 300, baths: { stop: {} } })).slice(0, 3) // => ["0:00 develop, 8:30 at 20.0 °C", "  0:00 Pour in, then rock the dish, each side in turn without pause.", "  8:25 Begin to pour out or lift out, so that it is drained 5 s later."]
 * ```
 */
export function describePlan(plan: ProcessPlan): readonly string[] {
  checkedPlan("describePlan/plan", plan);
  const lines = plan.steps.flatMap(({ name, startS, durationS, temperatureC, cues }) => [
    `${formatTime(startS)} ${name.replace("-", " ")}, ${formatTime(durationS)} at ${temperatureC.toFixed(1)} °C`,
    ...cueLines(cues),
  ]);
  const stops = plan.cautions
    .filter(({ severity }) => severity === "stop")
    .map(({ message }) => `Stop: ${message}`);
  return [
    ...stops,
    ...lines,
    `In all ${formatTime(plan.totalS)}.`,
    `Have ready: ${plan.materials.map(materialText).join("; ")}.`,
  ];
}

/** A run of equal texts becomes one line with its first and last time. */
function cueLines(cues: readonly Cue[]): readonly string[] {
  const lines: string[] = [];
  for (let i = 0; i < cues.length;) {
    const { atS, text } = cues[i] as Cue;
    const from = i;
    while (cues[i]?.text === text) i++;
    const second = cues[from + 1] as Cue;
    const last = cues[i - 1] as Cue;
    const again = i - from > 1 ? ` Every ${interval(second.atS - atS)} until ${formatTime(last.atS)}.` : "";
    lines.push(`  ${formatTime(atS)} ${text}${again}`);
  }
  return lines;
}

/** Whole seconds as a clock shows them; 7.5 s as they are. */
function interval(lengthS: number): string {
  return Math.abs(lengthS - Math.round(lengthS)) < 1e-6
    ? formatTime(lengthS)
    : `${Number(lengthS.toFixed(2))} s`;
}

function materialText({ name, volumeMl, stockMl, waterMl, stocksMl = [] }: Material): string {
  const ml = (value: number): string => `${Number(value.toPrecision(4))} ml`;
  // Each of several stocks is measured by itself, in the order of the dilution.
  const stocks = (whole: number): string => (stocksMl.length > 0 ? stocksMl : [whole]).map(ml).join(" + ");
  const mixed =
    stockMl === undefined || waterMl === undefined ? "" : ` (${stocks(stockMl)} stock, ${ml(waterMl)} water)`;
  return `${name} ${ml(volumeMl)}${mixed}`;
}
