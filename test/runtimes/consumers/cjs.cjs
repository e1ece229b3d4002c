// Node as CommonJS, and Jest.
const library = require("darkroom-kinetics");
const { sweep } = require("./sweep.cjs");
const { known, today, developer, totalMl } = require("./bath.json");

const { compensate, formatTime, handbookTemperatureLaw, mixVolumes, parseDilution } = library;
const answer = compensate(known, today, { temperature: handbookTemperatureLaw(developer) });
const shown = formatTime(answer.timeS);
const volumes = mixVolumes(parseDilution(today.dilution), totalMl);
console.log(JSON.stringify({ answer, shown, volumes, sweep: sweep(library) }));
