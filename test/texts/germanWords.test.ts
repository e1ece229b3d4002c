/*
 * The German words that a usual answer does not need, each made from the figures that it names.
 */
import { describe, expect, it } from "vitest";
import { describeCaution, type CautionCode } from "../../src/index.js";
import { wordsOf } from "../../src/command/words.js";
import { de } from "../../src/texts/de.js";
import { anyOf } from "../helpers.js";
import { englishSentences } from "./english.js";

describe("a picture in German", () => {
  const { picture } = de;
  it("names what warns and what refuses, and on which side", () => {
    expect([
      picture.warning("hydroquinone-cold", "below"),
      picture.warning("temperature-unusual", "below"),
      picture.warning("temperature-unusual", "above"),
      picture.refusal("bath-past-life", undefined),
      picture.refusal("temperature-limit", undefined),
      picture.refusal("temperature-limit", "below"),
      picture.refusal("temperature-limit", "above"),
    ]).toEqual([
      "Hydrochinon wird schwach",
      "kälter als üblich",
      "wärmer als üblich",
      "über die Lebensdauer: keine Zeit",
      "keine Zeit",
      "zu kalt: keine Zeit",
      "zu warm: keine Zeit",
    ]);
  });
  it("names both sides of a change where both are known", () => {
    expect([
      picture.steady("14.5 °C"),
      picture.colder("2.5°"),
      picture.warmer("1.5°"),
      picture.instead("1+14", "1+9"),
      picture.use("648 cm²/l", undefined),
      picture.use("648 cm²/l", "100 cm²/l"),
      picture.age("3 h", undefined),
      picture.age("3 h", "1 h"),
      picture.minutes(7.5, false),
      picture.minutes(7.5, true),
      picture.strip(5),
    ]).toEqual([
      "heute, wie bei gleichmäßig 14,5 °C",
      "2,5° kälter",
      "1,5° wärmer",
      "1+14 statt 1+9",
      "648 cm²/l schon entwickelt",
      "648 cm²/l schon entwickelt statt 100 cm²/l",
      "vor 3 h angesetzt",
      "vor 3 h angesetzt statt 1 h",
      "7,5",
      "7,5 min",
      "Ein Reststück, 5 Zeiten.",
    ]);
  });
  it("is described without a time, with its refusals, rows and runs", () => {
    const said = picture.description({
      fromTime: "6:00",
      toTime: "40:00",
      fromTemperature: "6 °C",
      toTemperature: "28 °C",
      known: { time: "8:30", temperature: "20 °C" },
      today: undefined,
      coldest: undefined,
      warmest: undefined,
      warnings: [{ text: "kälter als üblich", from: "17.5 °C" }],
      refusals: [{ text: "zu kalt: keine Zeit", from: "6 °C", to: "12.5 °C" }],
      tableRows: 3,
      ownRuns: 2,
      causes: [],
    } as never);
    expect(said.slice(3)).toEqual([
      "Für heute gibt es keine Zeit.",
      "Ab 17,5 °C eine Warnung: kälter als üblich.",
      "Von 6 °C bis 12,5 °C: zu kalt: keine Zeit.",
      "Gedruckte Zeilen im Bild: 3.",
      "Eigene Entwicklungen im Bild: 2.",
    ]);
  });
});

describe("steering in German", () => {
  const { steering } = de;
  it("says when, what the bath has done, and what the image says", () => {
    expect([
      steering.goal("12:30", true),
      steering.goal("12:30", false),
      steering.now(true),
      steering.now(false),
      steering.drifted(true, "4:00", "3:40"),
      steering.drifting(false, "4:00", "4:20"),
      steering.appeared("on-time", "12:00"),
      steering.appeared("early", "11:00"),
      steering.appeared("late", "13:00"),
    ]).toEqual([
      "12:30 nach dem Einlegen herausheben.",
      "12:30 nach dem Einguss ausgießen.",
      "Jetzt herausheben.",
      "Jetzt ausgießen.",
      "Das Bad ist kälter als geplant: 4:00 haben so viel bewirkt wie 3:40.",
      "Das Bad ist wärmer als geplant: 4:00 bewirken so viel wie 4:20.",
      "Das Bild kam zur erwarteten Zeit.",
      "Das Bild kam früh: allein danach wären es 11:00.",
      "Das Bild kam spät: allein danach wären es 13:00.",
    ]);
  });
});

describe("a caution in German", () => {
  const said = (code: CautionCode, figures: object): string =>
    describeCaution(anyOf({ code, severity: "warn", message: "", ...figures }), de.cautions);
  it("names first what was learned, of whatever gender", () => {
    const far = { actual: -4, limit: 3 };
    expect(said("far-from-known", { ...far, data: { parameter: "t", cause: "thermometer" } })).toBe(
      "Thermometer: nach den Entwicklungen 4,0 Standardabweichungen vom Bekannten. Die Notizen prüfen.",
    );
    expect(said("held-at-limit", { ...far, data: { parameter: "a", cause: "age" } })).toBe(
      "Alter: nach den Entwicklungen jenseits der Grenze. Es gilt die Grenze. Die Notizen prüfen.",
    );
    expect(said("held-at-limit", { ...far, data: { parameter: "b", cause: "baseline" } })).toMatch(
      /^Die bekannte Zeit: /,
    );
  });
  it("names a pair by what it is of, and not anew right behind both", () => {
    const without = (causes: readonly string[]): readonly string[] => {
      const data = { causes };
      return [
        englishSentences["default-law"]({ severity: "note", data } as never, "C"),
        said("default-law", { data }),
      ].map((sentence) => sentence.split(". ")[0]!);
    };
    expect(without(["temperature", "dilution", "interaction"])).toEqual([
      "No data of your own for temperature, dilution and both together",
      "Keine eigenen Daten für Temperatur, Verdünnung und deren Zusammenwirken",
    ]);
    expect(without(["temperature", "dilution", "age", "interaction"])).toEqual([
      "No data of your own for temperature, dilution, age and temperature with dilution",
      "Keine eigenen Daten für Temperatur, Verdünnung, Alter und das Zusammenwirken von Temperatur und Verdünnung",
    ]);
    expect(without(["interaction"])[1]).toMatch(/für das Zusammenwirken von Temperatur und Verdünnung$/);
  });
  it("writes how many times as a noun", () => {
    const over10C = { actual: 4.66, limit: 3 };
    const figures = { limit: 80, actual: 110, data: { law: "temperature", reason: "energy", over10C } };
    expect(said("law-unusual", figures)).toContain("110 kJ/mol, das 4,66-Fache auf 10 °C.");
  });
});

describe("an answer and a chart in German", () => {
  it("say a factor as a share below two, and as times from there on", () => {
    const { answer, chart } = de;
    expect([1, 1.2, 0.8, 2, 0.4].map((factor) => answer.change(factor))).toEqual([
      "gleiche Zeit",
      "20 % länger",
      "20 % kürzer",
      "2-mal so lang",
      "0,4-mal so lang",
    ]);
    expect([1.2, 1.49, 1.5, 2.5].map((ratio) => answer.giveOrTake(ratio))).toEqual([
      "± 20 %",
      "± 49 %",
      "Faktor 1,5 mehr oder weniger",
      "Faktor 2,5 mehr oder weniger",
    ]);
    expect([
      answer.time("20:00", "13:30", "29:30"),
      answer.refusedTime("20:00", "13:30", "29:30"),
      answer.sides("14 °C", "20 °C", "temperature"),
      answer.sides("alle 30 s", "ständig", "agitation"),
    ]).toEqual([
      "20:00 entwickeln, mit 90 % Sicherheit zwischen 13:30 und 29:30.",
      "Die Gesetze allein ergäben 20:00, mit 90 % Sicherheit zwischen 13:30 und 29:30.",
      "von 14 °C auf 20 °C",
      "ständig statt alle 30 s",
    ]);
    expect(de.mixing.steps.stop({ do: "stop" } as never, {} as never)).toBe("Das nicht ansetzen.");
    expect(answer.before("allgemeine Regel")).toBe("anfangs allgemeine Regel");
    expect([chart.more(1), chart.more(3)]).toEqual([
      "Eine weitere Warnung steht in den Daten.",
      "3 weitere Warnungen stehen in den Daten.",
    ]);
  });
});

describe("the words of the command", () => {
  it("say a brew, a table and a sound file in both languages", () => {
    const said = (["en", "de"] as const).map((language) => {
      const words = wordsOf({ lang: language, unit: "C" });
      return [
        words.known("8:30", "20 °C", ""),
        words.today("14 °C"),
        words.develop("20:00", "13:30", "29:30"),
        words.spoons(1.5, "heaped"),
        words.tablets(4, 500),
        words.strength("1.25"),
        words.table([1, 3]),
        words.printed("9:00", "9:15"),
        words.sound(0, false),
        words.sound(1, false),
        words.sound(2, false),
        words.figure("1.5"),
      ];
    });
    expect(said).toMatchSnapshot();
  });
  it("leave a name that no language knows as it is", () => {
    expect((["en", "de"] as const).map((lang) => wordsOf({ lang, unit: "C" }).ingredient("sand"))).toEqual([
      "sand",
      "sand",
    ]);
  });
});
