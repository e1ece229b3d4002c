/* What each picture of the gallery says of itself against what it shows: the numbers are read back from its marks. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseTime } from "../../src/index.js";
import { plotted, type Place } from "./plotted.js";

const svgOf = (file: string): string => readFileSync(`docs/gallery/${file}`, "utf8");
const shown = (file: string): ReturnType<typeof plotted> => plotted(svgOf(file));
const minutes = (text: string): number => parseTime(text) / 60;
/** The numbers and times of a sentence, in their order, as groups of a pattern. */
const told = (said: string, pattern: RegExp): readonly string[] => {
  const found = pattern.exec(said);
  expect(found, `${String(pattern)} in: ${said}`).not.toBeNull();
  return found!.slice(1);
};
const end = (line: readonly Place[]): Place => line.at(-1)!;

/** A check for each picture that Plot draws. */
const CHECKS: Readonly<Record<string, () => void>> = {
  "temperature.svg": () => {
    const { said, panels } = shown("temperature.svg");
    const rows = panels[0]!.dots.filter(({ className }) => className === "ink").map(({ place }) => place);
    const [cold, warm] = [rows.at(0)!, rows.at(-1)!];
    const [coldTime, coldC, warmTime, warmC] = told(said, /from (\S+) at (\S+) °C to (\S+) at (\S+) °C/);
    // The longer time belongs to the colder end.
    expect(cold[0]).toBeLessThan(warm[0]);
    expect(cold[1]).toBeGreaterThan(warm[1]);
    expect([Number(coldC), Number(warmC)]).toEqual([expect.closeTo(cold[0], 0), expect.closeTo(warm[0], 0)]);
    expect(minutes(coldTime!)).toBeCloseTo(cold[1], 1);
    expect(minutes(warmTime!)).toBeCloseTo(warm[1], 1);
    expect(rows).toHaveLength(7);
    expect(said).toMatch(/^Seven printed times/);
  },
  "tables.svg": () => {
    const { said, panels } = shown("tables.svg");
    const count = (className: string): number =>
      panels[0]!.dots.filter((dot) => dot.className === className).length;
    const [all, inside, outside] = told(said, /^(\d+) printed times.*?(\d+) lie inside.*?, (\d+) outside/s);
    expect([count("ink"), count("two")]).toEqual([Number(inside), Number(outside)]);
    expect(count("ink") + count("two")).toBe(Number(all));
  },
  "cooling.svg": () => {
    const { said, panels } = shown("cooling.svg");
    const done = told(said, /of (\d+) minutes is done after (\S+) in.*?, (\S+) in.*? and (\S+) in/);
    const [goal, ...times] = done;
    const places = panels[1]!.dots.map(({ place }) => place);
    expect(places).toHaveLength(3);
    places.forEach(([clock, work], i) => {
      expect(clock).toBeCloseTo(minutes(times[i]!), 1);
      expect(work).toBeCloseTo(Number(goal), 1);
    });
  },
  "agitation.svg": () => {
    const { said, panels } = shown("agitation.svg");
    const [from, to] = told(said, /rises from (\S+) for continuous.*? to (\S+) at three minutes/);
    const [curve] = panels[0]!.lines;
    expect(curve![0]![1]).toBeCloseTo(Number(from), 1);
    expect(end(curve!)[0]).toBeCloseTo(180, 0);
    expect(end(curve!)[1]).toBeCloseTo(Number(to), 1);
  },
  "use.svg": () => {
    const { said, panels } = shown("use.svg");
    const [added, multiplied, generic] = told(
      said,
      /added, reaches (\S+) times.*?multiplied reaches (\S+)\. .*?reaches (\S+) with/,
    );
    expect(panels[0]!.lines.map((line) => end(line)[1].toFixed(1))).toEqual(
      [generic, added, multiplied].map((text) => Number(text).toFixed(1)),
    );
  },
  "age.svg": () => {
    const { said, panels } = shown("age.svg");
    const strips = panels[0]!.dots.map(({ shape, place }) => [shape === "circle", place[0]] as const);
    const full = strips.filter(([circle]) => circle).map(([, ageH]) => ageH);
    const [others] = [
      strips
        .filter(([circle]) => !circle)
        .map(([, ageH]) => ageH)
        .sort(),
    ];
    const [until, weak, none] = told(
      said,
      /full black until (\S+) h, a slightly weak one at (\S+) h and none at (\S+) h/,
    );
    expect(Math.max(...full)).toBeCloseTo(Number(until), 1);
    expect(others).toEqual([expect.closeTo(Number(weak), 1), expect.closeTo(Number(none), 1)]);
    // The life ends after one and a half hours.
    expect(said).toContain("for one and a half hours");
    expect(end(panels[0]!.lines[1]!)[0]).toBeCloseTo(1.5, 1);
  },
  "contrast.svg": () => {
    const { said, panels } = shown("contrast.svg");
    const [wanted, ...times] = told(said, /A gradient of (\S+) is reached after (\S+) and (\S+)\./);
    const places = panels[0]!.dots.map(({ place }) => place);
    expect(places.map(([time]) => time.toFixed(1))).toEqual(times.map((text) => minutes(text).toFixed(1)));
    for (const [, gamma] of places) expect(gamma).toBeCloseTo(Number(wanted), 1);
  },
  "five-runs.svg": () => {
    const { said, panels } = shown("five-runs.svg");
    const ends = told(
      said,
      /begins at (\S+) with a 90 % range from (\S+) to (\S+), .*? it is (\S+), from (\S+) to (\S+)\./,
    );
    const { rules, dots } = panels[0]!;
    const at = (count: number): readonly number[] => {
      const rule = rules.find(([[x]]) => Math.abs(x - count) < 0.01)!;
      const dot = dots.find(({ place: [x] }) => Math.abs(x - count) < 0.01)!;
      return [dot.place[1], ...[rule[0][1], rule[1][1]].sort((a, b) => a - b)];
    };
    [...at(0), ...at(5)].forEach((value, i) => {
      expect(value / minutes(ends[i]!)).toBeCloseTo(1, 2);
    });
  },
  "next-test.svg": () => {
    const { said, panels } = shown("next-test.svg");
    const best = [...said.matchAll(/a strip at ([\d.]+) °C narrows it from ±(\d+) % to ±(\d+) %/g)];
    expect(best).toHaveLength(3);
    best.forEach(([, bestC, , left]) => {
      const found = panels[0]!.lines.some((line) => {
        const least = line.reduce((a, b) => (b[1] < a[1] ? b : a));
        return Math.abs(least[0] - Number(bestC)) <= 0.6 && Math.abs(least[1] - Number(left)) <= 0.6;
      });
      expect(found, `a curve with its least at ${bestC!} °C, ± ${left!} %`).toBe(true);
    });
  },
  "evening-3-plan.svg": () => {
    barsTell("evening-3-plan.svg");
  },
  "evening-5-finish.svg": () => {
    barsTell("evening-5-finish.svg");
    const { said, panels } = shown("evening-5-finish.svg");
    const [clear] = told(said, /clears in (\S+), halfway/);
    const fix = panels[0]!.bars.find(({ name }) => name === "fix")!;
    expect(minutes(clear!)).toBeCloseTo((fix.to - fix.from) / 2, 1);
  },
  "evening-4-bath.svg": () => {
    const { said, panels } = shown("evening-4-bath.svg");
    const readings = panels[0]!.dots.map(({ place }) => place);
    const [first, second, after, third, thirdC] = told(
      said,
      /circles: (\S+) °C at pour-in and (\S+) °C after (\S+)\. .*? after (\S+), is a cross at its (\S+) °C/,
    );
    expect(readings.map(([x, y]) => [x.toFixed(1), y.toFixed(1)])).toEqual([
      ["0.0", Number(first).toFixed(1)],
      [minutes(after!).toFixed(1), Number(second).toFixed(1)],
      [minutes(third!).toFixed(1), Number(thirdC).toFixed(1)],
    ]);
    const [until] = told(said, /poured out at (\S+) instead/);
    expect(panels[0]!.rules[0]![0][0]).toBeCloseTo(minutes(until!), 1);
    const [course] = panels[0]!.lines;
    const [start] = told(said, /poured in at (\S+) °C/);
    expect(course![0]![1]).toBeCloseTo(Number(start), 1);
    // The readings lie below the planned course, as the description says.
    expect(readings[1]![1]).toBeLessThan(course!.find(([x]) => x >= 3)![1]);
  },
  "evening-8-tomorrow.svg": () => {
    const { said, panels } = shown("evening-8-tomorrow.svg");
    const { bars } = panels[0]!;
    const [none] = told(said, /Without a strip it is (\d+) %/);
    expect(bars[0]!.to).toBeCloseTo(Number(none), 0);
    for (const { name, to } of bars.slice(1))
      expect(told(said, new RegExp(`a ${name}(?:, which)? leaves (\\d+) %`))[0]).toBe(to.toFixed(0));
    const [best] = told(said, /The best is a (strip at \d+ °C)/);
    expect(bars.reduce((a, b) => (b.to < a.to ? b : a)).name).toBe(best);
  },
};

/** Bars that follow each other, each as long as the description says. */
function barsTell(file: string): void {
  const { said, panels } = shown(file);
  const steps = [...told(said, /on: (.*?)\. /)[0]!.matchAll(/([a-z ]+?) (\d+:\d\d)/g)];
  const { bars } = panels[0]!;
  expect(bars.map(({ name }) => name)).toEqual(steps.map(([, name]) => name!.trim()));
  bars.forEach(({ from, to }, i) => {
    expect(to - from).toBeCloseTo(minutes(steps[i]![2]!), 1);
    expect(from).toBeCloseTo(i === 0 ? 0 : bars[i - 1]!.to, 1);
  });
}

const files = readdirSync("docs/gallery").filter((file) => file.endsWith(".svg"));
const answers = files.filter((file) => svgOf(file).includes('class="picture"'));

describe("what a picture of the gallery says of itself", () => {
  it("is checked for every picture", () => {
    expect([...answers, ...Object.keys(CHECKS)].sort()).toEqual([...files].sort());
    expect(answers.length).toBeGreaterThan(4);
  });
  it.each(Object.entries(CHECKS))("is what %s shows", (_file, check) => {
    check();
  });
  it.each(answers)("has the longer time at the colder end in %s", (file) => {
    const said = /<desc[^>]*>([^<]*)</.exec(svgOf(file))![1]!;
    const [coldTime, coldC, warmTime, warmC] = told(
      said,
      /falls from (\S+) at (\S+) °C to (\S+) at (\S+) °C/,
    );
    expect(Number(coldC)).toBeLessThan(Number(warmC));
    expect(minutes(coldTime!)).toBeGreaterThan(minutes(warmTime!));
  });
  it("would be found out if both ends were told the wrong way round", () => {
    const { said } = shown("temperature.svg");
    const wrong = said.replace(
      /from (\S+) at (\S+) °C to (\S+) at (\S+) °C/,
      "from $3 at $2 °C to $1 at $4 °C",
    );
    expect(wrong).not.toBe(said);
    const [coldTime] = told(wrong, /from (\S+) at/);
    const [cold] = shown("temperature.svg").panels[0]!.dots;
    expect(minutes(coldTime!)).not.toBeCloseTo(cold!.place[1], 1);
  });
});
