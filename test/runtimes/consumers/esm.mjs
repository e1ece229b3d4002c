// Node as an ES module, and Deno: the same file.
import { readFileSync } from "node:fs";
import { compensate, formatTime, handbookTemperatureLaw, mixVolumes, parseDilution } from "darkroom-kinetics";

const { known, today, developer, totalMl } = JSON.parse(readFileSync(new URL("bath.json", import.meta.url), "utf8"));
const answer = compensate(known, today, { temperature: handbookTemperatureLaw(developer) });
const shown = formatTime(answer.timeS);
console.log(JSON.stringify({ answer, shown, volumes: mixVolumes(parseDilution(today.dilution), totalMl) }));
