/* A day with rough figures, and with an age that nobody knows. */
import { describe, expect, it } from "vitest";
import { day, ran } from "./machine.js";

const asked = (words: string, given: object): ReturnType<typeof ran> =>
  ran(words.split(" "), { "day.json": given });

describe("a day that says an age is unknown", () => {
  const [morning, evening] = day.baths;
  const bottle = (ageH: unknown): object => ({ ...day, baths: [morning, { ...evening, ageH }] });
  it.each(["unknown", "?", "unbekannt"])("answers, and says that the time does not count it: %j", (age) => {
    const { code, out, err } = asked("time day.json", bottle(age));
    expect([code, err]).toEqual([0, ""]);
    expect(out).toContain(
      "Take care: Nothing is known of the age of this bath. The time does not count it. " +
        "Test the bath with a scrap first, or mix fresh. [/baths/1/ageH]",
    );
    // But for that line it is the time without an age.
    const lines = out.split("\n").filter((line) => !line.includes("Nothing is known"));
    expect(lines.join("\n")).toBe(asked("time day.json", day).out);
    expect(asked("time day.json --strict", bottle(age)).code).toBe(1);
  });
  it("says so in German, in the check and of the known time", () => {
    expect(asked("time day.json --lang de", bottle("?")).out).toContain(
      "Vorsicht: Über das Alter dieses Bades ist nichts bekannt.",
    );
    expect(asked("check day.json", bottle("?")).out).toMatch(
      /day\.json:\d+:\d+: Take care: Nothing is known/,
    );
    const known = { ...day, baseline: { ...day.baseline, ageH: "unknown" } };
    expect(asked("time day.json", known).out).toContain("mix fresh. [/baseline/ageH]");
  });
  it("still refuses a word that is not an age", () => {
    expect(asked("time day.json", bottle("old"))).toMatchObject({ code: 2 });
  });
});

describe("a day that says its figures roughly", () => {
  it("reads them as notes are read", () => {
    const rough = {
      ...day,
      baseline: { ...day.baseline, time: "ca. 9:00" },
      baths: [{ ...day.baths[0], temperatureC: "~16 °C" }, day.baths[1]],
    };
    expect(asked("time day.json", rough)).toEqual(asked("time day.json", day));
  });
});
