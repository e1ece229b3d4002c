// The page that a bundler builds: shows the compensated time, and leaves the whole answer for the check to read.
import * as library from "darkroom-kinetics";
import bath from "./bath.json";
import { sweep } from "./sweep.mjs";
import { stops, widest, work, type Bath } from "./typed.js";

declare const document: { getElementById(id: string): { textContent: string } };

const result = work(bath as Bath);
document.getElementById("time").textContent = `Develop ${result.shown}`;
document.getElementById("why").textContent =
  `${result.answer.factors.map(({ cause, value }) => `${cause} × ${value.toFixed(2)}`).join(", ")}; ` +
  `least certain: ${widest(result.answer.factors) ?? ""}; reasons to stop: ${stops(result.answer.cautions).length}`;
document.getElementById("answer").textContent = JSON.stringify({ ...result, sweep: sweep(library) });
