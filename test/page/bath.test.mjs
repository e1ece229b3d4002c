/*
 * An evening at the sink on a phone, without a network: from the shelf to the wash, with what goes wrong on one. And
 * the page in a dish: pure red strokes, or black to the last pixel.
 */
import assert from "node:assert/strict";
import { after, before, describe, it } from "node:test";
import { compensate, newtonDrift } from "../../dist/node/index.js";
import { openPage, pasteNotes, place, readThermometer, write } from "./browser.mjs";

const PHONE = { width: 390, height: 844 };
let chromium;
before(async () => {
  chromium = await openPage();
});
after(() => chromium.browser.close());

/** The page with a clock that the test alone moves. */
async function clocked(options) {
  const page = await chromium.open({ ...PHONE, ...options });
  await page.clock.install({ time: new Date("2026-11-28T20:00:00") });
  await page.clock.pauseAt(new Date("2026-11-28T20:00:01"));
  await reload(page);
  return page;
}
async function reload(page) {
  await page.reload();
  // The script is read in the second frame: it takes a moment of the clock that stands.
  while ((await page.locator("html[data-ready]").count()) === 0) await page.clock.runFor(50);
}
const seconds = (text) => text.split(":").reduce((sum, part) => 60 * sum + Number(part), 0);
const text = (page, selector) => page.locator(selector).textContent();
const clock = async (page) => seconds((await text(page, ".scale .now")).replace(/^\D+/, ""));
const goal = async (page) => seconds(await text(page, ".goal-text"));
const cue = (page) => text(page, "#cue");
/** Moves the clock by whole seconds. */
const wait = (page, s) => page.clock.runFor(1000 * s);

/** How many pixels of a screenshot pass, by a test of red, green and blue; counted by the browser itself. */
async function count(page, passes) {
  const png = (await page.screenshot()).toString("base64");
  const blank = await page.context().newPage();
  const counted = await blank.evaluate(
    async ([data, source]) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext("2d");
      context.drawImage(image, 0, 0);
      const { data: pixels } = context.getImageData(0, 0, image.width, image.height);
      const test = new Function("red", "green", "blue", `return ${source}`);
      let found = 0;
      for (let i = 0; i < pixels.length; i += 4)
        if (test(pixels[i], pixels[i + 1], pixels[i + 2])) found += 1;
      return { found, all: pixels.length / 4 };
    },
    [png, passes],
  );
  await blank.close();
  return counted;
}

describe("an evening", () => {
  it("goes from the shelf to the wash, and pours out within 2 % of the truth", async () => {
    const requests = [];
    const page = await clocked({ requests });
    // The shelf: each step of the mixing, one at a time.
    const next = page.locator("#shelf").getByRole("button", { name: "Next" });
    const hazards = [await text(page, "#mixing-step")];
    while (await next.isEnabled()) {
      await next.click();
      hazards.push(await text(page, "#mixing-step"));
    }
    assert.ok(hazards.length >= 6);
    assert.ok(hazards.some((step) => /gloves and glasses/i.test(step)));
    const was = await page.locator("#time").inputValue();
    await page.locator("#use-brew").click();
    await page.getByRole("button", { name: "Undo: what stood here before" }).click();
    assert.equal(await page.locator("#time").inputValue(), was);
    await page.locator("#use-brew").click();
    assert.equal(await page.locator("#time").inputValue(), await text(page, "#answer-time"));

    // The true bath cools from 14 °C in a hut of 8 °C; the known time is that of the brew.
    const known = { timeS: seconds(await page.locator("#time").inputValue()), temperatureC: 14 };
    const drift = { startC: 14, ambientC: 8, timeConstantS: 4000 };
    const truthS = compensate(known, { temperatureC: drift }).timeS;
    const temperatureAt = newtonDrift(drift);

    await page.locator("#pour-in").click();
    assert.ok(await page.locator("#use-brew").isHidden(), "no brew changes the time of what is in the bath");
    await wait(page, 40);
    const before = await goal(page);
    // 57 for °F, before the first minute is over: asked about, and nothing changes.
    await readThermometer(page, "57");
    await wait(page, 2);
    assert.match(await text(page, ".doubt"), /57 °F is 13.9 °C/);
    assert.equal(await goal(page), before);
    assert.equal(await clock(page), 42);
    await wait(page, 20);
    assert.equal(await clock(page), 62);
    assert.match(await cue(page), /Invert the tank/);
    assert.equal(await goal(page), before);
    await page.getByRole("button", { name: "Yes, 57 °F" }).click();
    assert.ok(await page.locator(".doubt").isHidden());

    /** Reads the thermometer as a person does: the nearest of the three buttons. */
    const read = async () => {
      const celsius = temperatureAt(await clock(page));
      const buttons = page.locator(".readings button");
      const offered = (await buttons.allTextContents()).map((one) => Number(one.replace(/[^\d.]/g, "")));
      const off = offered.map((one) => Math.abs(one - celsius));
      await buttons.nth(off.indexOf(Math.min(...off))).click();
    };
    for (let i = 0; i < 3; i++) {
      await wait(page, 60);
      await read();
    }
    // A jump: the thermometer lay in the air.
    await readThermometer(page, "20");
    await wait(page, 1);
    assert.match(await text(page, ".doubt"), /20 °C\?/);
    await page.getByRole("button", { name: "No, forget it" }).click();

    // A reload in mid-bath: the run is where it was, and so is the eye.
    const [clockBefore, goalBefore] = [await clock(page), await goal(page)];
    await reload(page);
    await wait(page, 1);
    assert.ok((await clock(page)) - clockBefore <= 2);
    assert.equal(await goal(page), goalBefore);

    // Hidden for five minutes: no timer runs, and the clock is right all the same.
    const hiddenAt = await clock(page);
    await page.clock.setSystemTime(new Date(await page.evaluate(() => Date.now() + 300_000)));
    await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
    assert.equal(await clock(page), hiddenAt + 300);

    // On to the end, with a reading every two minutes.
    while ((await goal(page)) - (await clock(page)) > 135) {
      await wait(page, 120);
      await read();
    }
    await wait(page, (await goal(page)) - (await clock(page)) - 15);
    while (!/Pour out/.test(await cue(page))) await wait(page, 1);
    const outS = (await clock(page)) + 10;
    assert.ok(Math.abs(outS / truthS - 1) < 0.02, `poured out at ${outS} s, the truth is ${truthS} s`);
    await wait(page, 10);
    await page.locator("#out").click();

    // Undone, and done again.
    await page.locator("#back").click();
    await wait(page, 1);
    assert.match(await cue(page), /Pour out/);
    await page.locator("#out").click();

    // Stop, fix, wash, by the plan, each with its cautions.
    const names = [];
    for (let i = 0; i < 150 && !/Washed/.test(await cue(page)); i++) {
      const name = ((await text(page, ".bath-name")) ?? "").split(",")[0];
      if (names.at(-1) !== name) names.push(name);
      if (name === "Fixing bath") assert.match(await text(page, ".after .care"), /silver/);
      await wait(page, 20);
    }
    assert.deepEqual(names.slice(0, 3), ["Stop bath", "Fixing bath", "Wash"]);
    assert.match(await cue(page), /Washed/);
    await page.locator("#finish").click();

    // The run waits for its outcome, and is learned from.
    await page.locator(".outcome-good").click();
    assert.equal(await page.locator(".runs tbody tr").count(), 1);
    assert.equal(await page.locator(".bands li").count(), 2);
    assert.deepEqual(
      requests.filter((url) => !url.startsWith("file:") && !url.startsWith("data:")),
      [],
    );
    await page.context().close();
  });

  for (const [language, said] of [
    ["en", (time) => `Pour out ${time} after the pour-in.`],
    ["de", (time) => `${time} nach dem Einguss ausgießen.`],
  ])
    it(`says the time of the sheet in the bath too, counted from the pour-in, in ${language}`, async () => {
      const page = await clocked();
      if (language === "de") await page.locator("#language").click();
      // To 15 s it is 12:45, and to 5 s it would be 12:40.
      await write(page, "temperature", "20 °C");
      const time = await text(page, "#answer-time");
      assert.equal(time, "12:45");
      await page.locator("#pour-in").click();
      await wait(page, 1);
      assert.equal(await text(page, ".goal-text"), time);
      assert.ok((await text(page, "#bath .why")).startsWith(said(time)));
      const label = await page.locator(".scale").getAttribute("aria-label");
      assert.ok(label.includes(time));
      assert.doesNotMatch(label, / (at|bei) \d/);
      await page.context().close();
    });

  it("offers the image once, only for agents with a factor, and takes it back", async () => {
    const closed = await clocked();
    await closed.locator("#pour-in").click();
    await wait(closed, 90);
    assert.ok(await closed.locator("#image").isHidden(), "nobody sees into a closed tank");
    await closed.context().close();
    const page = await clocked();
    await place(page, 1);
    await page.locator("#pour-in").click();
    await wait(page, 90);
    const before = await goal(page);
    await page.locator("#image").click();
    await wait(page, 1);
    assert.ok(await page.locator("#image").isHidden());
    assert.notEqual(await goal(page), before);
    await page.locator(".seen button").click();
    await wait(page, 1);
    assert.equal(await goal(page), before);
    await page.context().close();
    const other = await clocked();
    await other.locator("#developer").selectOption("unknown");
    await place(other, 1);
    await other.locator("#pour-in").click();
    await wait(other, 5);
    assert.ok(await other.locator("#image").isHidden());
    await other.context().close();
  });
});

describe("what is typed and not read yet", () => {
  it("stays in its box in the other language, with what is wrong with it", async () => {
    const page = await chromium.open(PHONE);
    await pasteNotes(page);
    const row = await page.locator("#notes").inputValue();
    assert.match(row, /^Date\tTime\tTemp\tDilution\tOutcome\n2026-10-18\t24\t14\t1\+14\tgood$/);
    for (const [id, said] of [
      ["air", "cold"],
      ["run-1-temperature", "warm"],
    ]) {
      await page.locator(`#${id}`).fill(said);
      await page.locator(`#${id}`).press("Tab");
    }
    await page.locator("#language").click();
    assert.equal(await page.locator("#notes").inputValue(), row);
    assert.equal(await page.locator("#air").inputValue(), "cold");
    assert.match(await text(page, "#air-message"), /„cold“ ist nicht lesbar/);
    assert.equal(await page.locator("#run-1-temperature").inputValue(), "warm");
    assert.match(await text(page, "#learned .message"), /„warm“ ist nicht lesbar/);
    await page.locator("#pour-in").click();
    await page.locator("#thermometer").fill("13");
    await page.locator("#language").click();
    assert.equal(await page.locator("#thermometer").inputValue(), "13");
    await page.context().close();
  });
});

describe("in a dish", () => {
  for (const [name, i] of [
    ["red", 1],
    ["amber", 2],
  ])
    it(`shows this section alone under a ${name} lamp, and lights nothing but red`, async () => {
      const page = await clocked();
      await place(page, i);
      assert.ok(await page.locator("#known").isHidden());
      assert.ok(await page.locator("footer").isHidden());
      assert.match(await text(page, "#bath"), /A phone is no safelight/);
      for (const reach of [() => undefined, () => page.locator("#pour-in").click()]) {
        await reach();
        await wait(page, 2);
        assert.equal(await page.locator("#bath input:visible, #bath select:visible").count(), 0);
        assert.equal(await page.getByRole("heading", { level: 1 }).count(), 1);
        for (let k = 0; k < 4; k++) {
          // With the focus on one button after the other: a ring of another colour would show.
          await page.keyboard.press("Tab");
          const { found } = await count(page, "green > 0 || blue > 0");
          assert.equal(found, 0);
        }
        const { found, all } = await count(page, "red > 0");
        assert.ok(found > 500 && found < 0.12 * all, `${found} of ${all} pixels are lit`);
      }
      // A reload shows no white frame: the sheet as built stays hidden until the script has run.
      await page.reload({ waitUntil: "commit" });
      assert.equal(await page.evaluate(() => document.documentElement.dataset.lamp), name);
      await page.context().close();
    });

  it("is black to the last pixel without light, the rest out of reach, until it is held", async () => {
    const page = await clocked();
    await place(page, 3);
    assert.match(await text(page, "#bath"), /A dark screen still glows/);
    assert.match(await text(page, "#bath"), /face down in a drawer/);
    await page.locator("#pour-in").click();
    await wait(page, 15);
    const lit = async () => (await count(page, "red > 0 || green > 0 || blue > 0")).found;
    assert.equal(await lit(), 0);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Shift+Tab");
    assert.equal(await lit(), 0);
    assert.equal(await page.locator("main[inert]").count(), 1);
    await reload(page);
    await wait(page, 1);
    assert.equal(await lit(), 0);
    await page.mouse.move(200, 400);
    await page.mouse.down();
    await wait(page, 1.9);
    assert.equal(await lit(), 0);
    await page.mouse.up();
    await wait(page, 1);
    assert.equal(await lit(), 0);
    await page.mouse.down();
    await wait(page, 2.1);
    await page.mouse.up();
    assert.ok((await lit()) > 500);
    assert.equal(await page.locator("main[inert]").count(), 0);
    // The clock went on meanwhile, from ten seconds after the press.
    assert.ok((await clock(page)) >= 10);
    await page.context().close();
  });
});

describe("finished plates", () => {
  /** Develops a plate for so long, s. */
  async function develop(page, s) {
    await page.locator("#pour-in").click();
    await wait(page, s);
    await page.locator("#out").click();
    await wait(page, 1);
    await page.locator("#finish").click();
  }
  const cards = (page) => page.locator("#learned .waiting .card");
  const waits = async (page) => (await cards(page).locator(".said").allTextContents()).join();

  it("all wait for their outcome, each to be judged against its own known time", async () => {
    const page = await clocked();
    for (const [blank, value] of [
      ["name", "Plate 1"],
      ["time", "9:00"],
    ])
      await write(page, blank, value);
    await develop(page, 600);
    await write(page, "name", "Plate 2");
    await develop(page, 900);
    assert.match(
      await waits(page),
      /A run waits: Plate 1\. .* 10:00 min .*A run waits: Plate 2\. .* 15:00 min /,
    );
    // They wait on beside an empty sheet, which has another known time.
    await page.getByRole("button", { name: "Start with an empty sheet" }).click();
    await reload(page);
    assert.equal(await cards(page).count(), 2);
    assert.equal(await page.locator(".outcome-good").count(), 0);
    assert.match(await cards(page).first().textContent(), /Another known time stands above/);
    await page.getByRole("button", { name: "Put back Plate 1, 9:00, 20 °C" }).click();
    assert.equal(await page.locator("#time").inputValue(), "9:00");
    await cards(page).first().locator(".outcome-thin").click();
    assert.equal(await page.locator(".runs tbody tr").count(), 1);
    assert.match(await waits(page), /^A run waits: Plate 2\./);
    // Another known time is written over this one: what waits goes back to its own, with the run that was judged.
    await write(page, "time", "22:00");
    assert.equal(await page.locator(".outcome-good").count(), 0);
    await page.getByRole("button", { name: "Put back Plate 2, 9:00, 20 °C" }).click();
    await page.locator(".outcome-good").click();
    assert.deepEqual(
      await page.locator(".runs [data-column=Time] input").evaluateAll((all) => all.map((one) => one.value)),
      ["10:00", "15:00"],
    );
    assert.equal(await cards(page).count(), 0);
    await page.context().close();
  });
  it("are counted, and the bath is older by the clock, in the blanks; that can be taken back", async () => {
    const page = await clocked();
    const value = (id) => page.locator(`#${id}`).inputValue();
    const both = async () => [await value("count"), await value("age")];
    const counted = page.locator("#counted");
    assert.ok(await counted.isHidden());
    const before = await text(page, "#answer-time");
    await page.locator(".box").nth(2).click();
    await develop(page, 1799);
    assert.deepEqual(await both(), ["4", "3.5 h"]);
    assert.equal(await page.locator(".runs tbody tr").count(), 1, "what the strip told stays as a run");
    assert.notEqual(await text(page, "#answer-time"), before);
    assert.match(await text(page, "#counted"), /^Counted: 4 before, mixed 3\.5 h ago\./);
    const later = counted.getByRole("button", { name: "By the clock" });
    assert.ok(await later.isHidden());
    // An hour at the table: the page says so by itself, and the second plate counts from there.
    await wait(page, 3600);
    await page.locator("#language").click();
    await counted.getByRole("button", { name: "Nach der Uhr ist es 4,5 h alt: übernehmen" }).click();
    assert.deepEqual(await both(), ["4", "4,5 h"]);
    await page.locator("#language").click();
    await develop(page, 1799);
    assert.deepEqual(await both(), ["5", "5 h"]);
    await counted.getByRole("button", { name: "Undo: do not count it" }).click();
    assert.deepEqual(await both(), ["4", "4.5 h"]);
    assert.ok(await counted.isHidden());
    // A bath that was mixed anew meanwhile is not counted.
    await page.locator("#pour-in").click();
    await wait(page, 60);
    await page.locator("#out").click();
    await write(page, "age", "0 h");
    await write(page, "count", "none");
    await page.locator("#finish").click();
    assert.deepEqual(await both(), ["none", "0 h"]);
    await page.context().close();
  });
  it("are thrown away only after a question", async () => {
    const page = await clocked();
    await develop(page, 600);
    const away = () => cards(page).getByRole("button", { name: "Throw it away" }).click();
    page.once("dialog", (dialog) => dialog.dismiss());
    await away();
    assert.equal(await cards(page).count(), 1);
    page.once("dialog", (dialog) => dialog.accept());
    await away();
    assert.equal(await cards(page).count(), 0);
    await page.context().close();
  });
});

describe("what was learned", () => {
  it("reads pasted notes, keeps the rejected rows' reasons, and can be written over", async () => {
    const page = await chromium.open(PHONE);
    const before = await text(page, "#answer-interval");
    await pasteNotes(page);
    assert.match(
      await text(page, "#learned .care"),
      /3 runs were read.*Row 4 below the headings: Time must be "24 min" or "24 s"/s,
    );
    assert.equal(await page.locator(".runs tbody tr").count(), 3);
    assert.notEqual(await text(page, "#answer-interval"), before);
    const time = await text(page, "#answer-time");
    // The same notes again count once.
    const runs = await page.locator("#learned tbody tr").count();
    await pasteNotes(page);
    assert.match(await text(page, "#learned"), /3 runs are here already, equal in every field/);
    assert.equal(await page.locator("#learned tbody tr").count(), runs);
    await page.getByLabel("Time of run 3").fill("30:00");
    await page.getByLabel("Time of run 3").press("Tab");
    assert.notEqual(await text(page, "#answer-time"), time);
    await page.getByLabel("Temperature of run 3").fill("cold");
    await page.getByLabel("Temperature of run 3").press("Tab");
    assert.match(await text(page, "#learned .message"), /cold/);
    await page.getByRole("button", { name: "Take out run 3" }).click();
    assert.equal(await page.locator(".runs tbody tr").count(), 2);
    await page.context().close();
  });
});
