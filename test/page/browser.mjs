/* The page in headless Chromium: how it is opened, and the states that are tested and looked at. */
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

const PROGRAMS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const FLAGS =
  "--no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync".split(
    " ",
  );

export const address = new URL("../../docs/page/index.html", import.meta.url).href;
export const file = fileURLToPath(address);

/** Width and height of the screens, in CSS px. */
export const widths = [
  [320, 640],
  [390, 844],
  [1280, 900],
];

/** Writes into a blank, as a person does. */
export const write = (page, blank, text) => page.locator(`#${blank}`).fill(text);

/** What the page is tested in: options of the context, and how the state is reached. */
export const states = {
  light: {},
  dark: { options: { colorScheme: "dark" } },
  german: { reach: (page) => page.locator("#language").click() },
  fahrenheit: { reach: (page) => page.locator("#unit").click() },
  refused: { reach: (page) => write(page, "temperature", "57") },
  unreadable: { reach: (page) => write(page, "temperature", "cold") },
  ticked: { reach: (page) => page.locator(".box").nth(3).click() },
  moved: {
    reach: async (page) => {
      await page.locator("#dot").focus();
      for (let i = 0; i < 6; i++) await page.keyboard.press("ArrowUp");
    },
  },
  empty: {
    reach: async (page) => {
      await write(page, "time", "9:00");
      await page.getByRole("button", { name: "Start with an empty sheet" }).click();
    },
  },
  ambiguous: { reach: (page) => write(page, "volume", "500") },
  shelf: { reach: (page) => page.locator(".more summary").click() },
  noBrew: { reach: (page) => page.getByRole("button", { name: "washing soda, anhydrous" }).click() },
  learned: { reach: (page) => pasteNotes(page) },
  bathing: { reach: (page) => page.locator("#pour-in").click() },
  doubt: {
    reach: async (page) => {
      await page.locator("#pour-in").click();
      await readThermometer(page, "57");
    },
  },
  stop: {
    reach: async (page) => {
      await page.locator("#pour-in").click();
      await page.locator("#out").click();
    },
  },
  waiting: {
    reach: async (page) => {
      for (const id of ["pour-in", "out", "finish"]) await page.locator(`#${id}`).click();
      await page.getByRole("button", { name: "Start with an empty sheet" }).click();
    },
  },
  red: { reach: (page) => place(page, 1) },
  redBathing: {
    reach: async (page) => {
      await place(page, 1);
      await page.locator("#pour-in").click();
    },
  },
  noLight: { reach: (page) => place(page, 3) },
  black: {
    reach: async (page) => {
      await place(page, 3);
      await page.locator("#pour-in").click();
    },
  },
};

/** Says where the negative is: in a tank, under a red or amber lamp, without light. */
export const place = (page, i) => page.locator("#bath [role=radio]").nth(i).click();

/** Types a reading, as a person does. */
export async function readThermometer(page, text) {
  await page.locator("#thermometer").fill(text);
  await page.locator("#thermometer").press("Enter");
}

/** Pastes the notes of three evenings, invented, and a row that lacks its units. */
export async function pasteNotes(page) {
  const rows = [
    ["Date", "Time", "Temp", "Dilution", "Outcome"],
    ["2026-10-03", "8:30", "20 C", "1+9", "good"],
    ["2026-10-10", "20:00", "14 C", "1+14", "too thin"],
    ["2026-10-17", "24:00", "14 C", "1+14", "good"],
    ["2026-10-18", "24", "14", "1+14", "good"],
  ];
  await page.locator("#notes").fill(rows.map((row) => row.join("\t")).join("\n"));
  await page.locator("#read-notes").click();
}

/**
 * Starts Chromium; `open` shows the page in a context of its own, without a network, and waits until its script has
 * run. What it asks for goes into `requests`.
 */
export async function openPage() {
  const executablePath = [process.env.CHROMIUM ?? "", ...PROGRAMS].find((path) => existsSync(path));
  if (executablePath === undefined)
    throw new Error(
      "no Chromium on this machine: bash test/runtimes/install.sh installs it, as root on Debian",
    );
  const browser = await chromium.launch({ executablePath, args: FLAGS, headless: true });
  const open = async ({ width = 390, height = 844, url = address, requests = [], ...options } = {}) => {
    const context = await browser.newContext({ viewport: { width, height }, offline: true, ...options });
    const page = await context.newPage();
    page.on("pageerror", (error) => {
      throw error;
    });
    page.on("request", (request) => requests.push(request.url()));
    await page.goto(url);
    await page.locator("html[data-ready]").waitFor({ timeout: 15_000 });
    return page;
  };
  return { browser, open, address };
}
