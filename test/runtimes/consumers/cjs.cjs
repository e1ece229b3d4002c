// Node as CommonJS.
const { compensate, formatTime, handbookTemperatureLaw, mixVolumes, parseDilution } = require("darkroom-kinetics");
const { known, today, developer, totalMl } = require("./bath.json");

const answer = compensate(known, today, { temperature: handbookTemperatureLaw(developer) });
const shown = formatTime(answer.timeS);
console.log(JSON.stringify({ answer, shown, volumes: mixVolumes(parseDilution(today.dilution), totalMl) }));
