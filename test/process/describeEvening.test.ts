import { describe, expect, it } from "vitest";
import { describeEvening, planEvening, type EveningInput, type EveningPlan } from "../../src/index.js";
import { eveningTexts } from "../../src/text/eveningTexts.js";
import { de } from "../../src/texts/de.js";
import { anyOf } from "../helpers.js";
import { refusal } from "./helpers.js";

// Invented: rolls in one tank of a litre, brought to 24 °C in a hut at 14 °C.
const roll = { areaCm2: 516.128 };
const hut: EveningInput = {
  baseline: { timeS: 480, temperatureC: 20 },
  conditions: { temperatureC: { startC: 24, ambientC: 14, timeConstantS: 3600 } },
  plates: [{ ...roll, name: "summit" }, roll],
  vessel: "tank",
  volumeMl: 1000,
  topUpMl: 50,
  betweenS: 120,
  baths: { stop: {}, fix: { clearingS: 40, times: 3 }, wash: {} },
};
const evening = planEvening(hut);

describe("an evening for the wall", () => {
  it("says when each plate begins, its time and what comes between, and each caution once", () => {
    expect(describeEvening(evening)).toEqual([
      "Take care: Film 2: The bath has gone from 24 °C to 19.1 °C. The time counts that. If you warm it again, plan with that temperature.",
      "Always: Wear gloves and glasses. Keep the baths away from food.",
      "Always: Let in fresh air. Stop and fixing baths give off vapours.",
      "Always: An acid stop is 1 to 2 % acetic or citric acid. Pour acid into water. Never take glacial acid or 25 % essence as it comes.",
      "Always: Used fixing bath holds silver. Keep it apart and hand it in where your local code says.",
      "Always: Local codes and safety data sheets go before this plan.",
      "0:00 Film 1 (summit) begins.",
      "  0:00 develop, 5:58 at 24.0 °C, with 90 % certainty between 5:04 and 7:02",
      "  5:58 stop, 0:30 at 24.0 °C",
      "  6:28 fix, 2:00 at 24.0 °C",
      "  8:28 wash, 30:00 at 24.0 °C",
      "  2:00 until Film 2 begins.",
      "40:28 Film 2 begins.",
      "  40:28 Pour off 50 ml of used developer and top up with as much fresh.",
      "  40:28 develop, 9:36 at 19.1 °C, with 90 % certainty between 8:37 and 10:42",
      "  50:04 stop, 0:30 at 19.1 °C",
      "  50:34 fix, 2:00 at 19.1 °C",
      "  52:34 wash, 30:00 at 19.1 °C",
      "In all 1:22:34.",
      "Have ready: developer 1000 ml; stop bath 1000 ml; fixing bath 1000 ml; wash water 6000 ml.",
      "Note: Film 1 (summit): No data of your own for temperature. A generic law with a wide spread is used.",
      "Note: Film 2: No data of your own for temperature, use and age. A generic law with a wide spread is used.",
    ]);
  });

  it("says the same in German", () => {
    expect(describeEvening(evening, de.evening)).toEqual([
      "Vorsicht: Film 2: Das Bad ist von 24 °C auf 19,1 °C gekommen. Die Zeit rechnet damit. Wird es wieder gewärmt, mit der Temperatur danach planen.",
      "Immer: Handschuhe und Brille tragen. Bäder von Essen fernhalten.",
      "Immer: Lüften. Stoppbad und Fixierbad geben Dämpfe ab.",
      "Immer: Ein saures Stoppbad hat 1 bis 2 % Essigsäure oder Zitronensäure. Säure ins Wasser gießen. Eisessig und 25-prozentige Essigessenz nie unverdünnt nehmen.",
      "Immer: Gebrauchtes Fixierbad enthält Silber. Getrennt sammeln und nach örtlicher Vorschrift abgeben.",
      "Immer: Örtliche Vorschriften und Sicherheitsdatenblätter gehen vor diesem Plan.",
      "0:00 Film 1 (summit) beginnt.",
      "  0:00 Entwickeln, 5:58 bei 24,0 °C, mit 90 % Sicherheit zwischen 5:04 und 7:02",
      "  5:58 Stoppen, 0:30 bei 24,0 °C",
      "  6:28 Fixieren, 2:00 bei 24,0 °C",
      "  8:28 Wässern, 30:00 bei 24,0 °C",
      "  Noch 2:00, dann beginnt Film 2.",
      "40:28 Film 2 beginnt.",
      "  40:28 50 ml gebrauchten Entwickler abgießen und ebenso viel frischen zugeben.",
      "  40:28 Entwickeln, 9:36 bei 19,1 °C, mit 90 % Sicherheit zwischen 8:37 und 10:42",
      "  50:04 Stoppen, 0:30 bei 19,1 °C",
      "  50:34 Fixieren, 2:00 bei 19,1 °C",
      "  52:34 Wässern, 30:00 bei 19,1 °C",
      "Zusammen 1:22:34.",
      "Bereitstellen: Entwickler 1000 ml; Stoppbad 1000 ml; Fixierbad 1000 ml; Wasser zum Wässern 6000 ml.",
      "Hinweis: Film 1 (summit): Keine eigenen Daten für Temperatur. Es gilt eine allgemeine Regel mit großer Streuung.",
      "Hinweis: Film 2: Keine eigenen Daten für Temperatur, Ausnutzung und Alter. Es gilt eine allgemeine Regel mit großer Streuung.",
    ]);
  });

  it("shows every temperature in °F", () => {
    const lines = describeEvening(evening, eveningTexts, { unit: "F" });
    expect(lines.join("\n")).toContain("75.2 °F");
    expect(lines.join("\n")).not.toContain("°C");
  });

  it("says in which step the next plate goes in, and names the plates that a caution is about", () => {
    const lines = describeEvening(
      planEvening({
        ...hut,
        conditions: { temperatureC: 20 },
        plates: [...Array.from({ length: 5 }, () => ({ areaCm2: 480 })), { areaCm2: 480, name: "last" }],
        vessel: "tray",
        emulsion: "hardened",
        betweenS: 0,
      }),
    );
    expect(lines).toContain("  Plate 2 begins during this step: wash.");
    expect(lines.filter((line) => line.includes("This brings the bath to"))).toEqual([
      "Take care: Plate 4: This brings the bath to 1781 cm² in each litre. It can do 1376. Use more bath.",
    ]);
  });

  it("names a row of plates by its ends, and plates apart each", () => {
    const warm = { ...roll, conditions: { temperatureC: 26 } };
    const plates = [roll, warm, roll, warm, warm, { ...warm, name: "last" }, roll, warm, warm];
    const lines = describeEvening(
      planEvening({ ...hut, volumeMl: 5000, conditions: { temperatureC: 20 }, plates }),
    );
    expect(lines.filter((line) => line.includes("18 to 24 °C"))).toEqual([
      "Take care: Film 2, Film 4 to Film 6 (last), Film 8, Film 9: " +
        "Above the usual 18 to 24 °C: gelatin softens and times get short.",
    ]);
  });

  it("puts first what cannot be developed, and why", () => {
    const stopped = planEvening({ ...hut, knowledge: { age: { kind: "life", lifeH: 0.5 } } });
    const [first, second, third] = describeEvening(stopped);
    expect([first, second]).toEqual([
      "Film 2 is not planned, nor any after it.",
      "Stop: Film 2: The bath is older than its life of 30 min: it fails at once. Mix fresh.",
    ]);
    expect(third).toMatch(/^(Take care|Always)/);
    const never = planEvening({ ...hut, conditions: { temperatureC: 68 } });
    expect(never.plates).toEqual([]);
    const lines = describeEvening(never);
    expect(lines[0]).toBe("Film 1 (summit) is not planned, nor any after it.");
    // What was not planned takes no time.
    expect(lines.filter((line) => /\d:\d\d/.test(line))).toEqual([]);
    expect(lines.some((line) => line.startsWith("Always:"))).toBe(true);
  });

  it("says how a brew is mixed before the first plate, and of gas at each stop", () => {
    const brew = {
      volumeMl: 1000,
      ingredients: [
        { ingredient: "soda-anhydrous", massG: 54 },
        { ingredient: "instant-coffee", massG: 40 },
        { ingredient: "ascorbic-acid", massG: 16 },
      ],
    } as const;
    const coffee = { ...hut, developer: { brew }, conditions: { temperatureC: 20 } };
    const lines = describeEvening(planEvening(coffee));
    const begins = lines.findIndex((line) => line.startsWith("0:00 "));
    const mixing = /^(?:Note|Always): (?:Mind washing soda|.*Add the acid last|.*No aluminium|Let it stand)/;
    expect(lines.slice(0, begins).filter((line) => mixing.test(line))).toHaveLength(4);
    expect(lines.slice(begins).filter((line) => mixing.test(line))).toEqual([]);
    const gas = lines.flatMap((line, i) => (line.includes("Acid after soda gives off gas") ? [i] : []));
    expect(gas.map((i) => lines[i - 1])).toEqual([
      expect.stringMatching(/ stop, 0:30 /),
      expect.stringMatching(/ stop, 0:30 /),
    ]);
    // A brew that is too old to begin with is minded all the same, and one that cannot develop is no bath.
    const dead = describeEvening(planEvening({ ...coffee, conditions: { temperatureC: 20, ageH: 20 } }));
    expect(dead[1]).toMatch(/^Stop: Film 1 \(summit\): The bath is older/);
    expect(dead.filter((line) => mixing.test(line))).toHaveLength(4);
    const soda = { volumeMl: 1000, ingredients: [{ ingredient: "soda-anhydrous", massG: 54 }] } as const;
    const { stopped } = planEvening({ ...coffee, developer: { brew: soda } });
    expect(stopped?.plan.cautions).toContainEqual(
      expect.objectContaining({ code: "no-agent", severity: "stop", path: "/developer/brew" }),
    );
  });

  it("says no wait of 0:00, where one begins with the end of the other to a part of a second", () => {
    const cooling = { temperatureC: { startC: 22, ambientC: 14, timeConstantS: 3600 } };
    const three = {
      ...hut,
      conditions: cooling,
      plates: [roll, roll, roll],
      betweenS: 0,
      topUpMl: undefined,
    };
    const lines = describeEvening(planEvening({ ...three, baths: { stop: {}, fix: {}, wash: {} } }));
    expect(lines.filter((line) => line.includes("begins"))).toHaveLength(3);
    expect(lines.filter((line) => line.includes("until"))).toEqual([]);
  });
  it("survives JSON", () => {
    expect(describeEvening(JSON.parse(JSON.stringify(evening)) as EveningPlan)).toEqual(
      describeEvening(evening),
    );
  });

  it.each<[string, unknown, string]>([
    ["nothing", undefined, "TypeError describeEvening /evening missing"],
    ["no plates", { ...evening, plates: 5 }, "TypeError describeEvening /evening/plates wrong-type"],
    [
      "a plate of another material",
      { ...evening, plates: [{ ...evening.plates[0], material: "glass" }] },
      "RangeError describeEvening /evening/plates/0/material not-one-of",
    ],
    [
      "a stopped plate without a plan",
      { ...evening, stopped: { ...evening.plates[0], plan: null } },
      "TypeError describeEvening /evening/stopped/plan missing",
    ],
    [
      "an answer without an interval",
      { ...evening, plates: [{ ...evening.plates[0], answer: { timeS: 600, cautions: [] } }] },
      "TypeError describeEvening /evening/plates/0/answer/lowS missing",
    ],
    [
      "an endless evening",
      { ...evening, totalS: 2e7 },
      "RangeError describeEvening /evening/totalS out-of-range",
    ],
  ])("refuses %s", (_, given, fault) => {
    expect(refusal(() => describeEvening(anyOf(given)))).toBe(fault);
  });
});
