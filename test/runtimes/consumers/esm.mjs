// Node as an ES module, Deno, and the bundlers: the same file.
import { readFileSync } from "node:fs";
import * as library from "darkroom-kinetics";
import { sweep } from "./sweep.mjs";

const { compensate, formatTime, handbookTemperatureLaw, mixVolumes, parseDilution } = library;
const { known, today, developer, totalMl } = JSON.parse(readFileSync("bath.json", "utf8"));
const answer = compensate(known, today, { temperature: handbookTemperatureLaw(developer) });
const shown = formatTime(answer.timeS);
const volumes = mixVolumes(parseDilution(today.dilution), totalMl);
console.log(JSON.stringify({ answer, shown, volumes, sweep: sweep(library) }));
