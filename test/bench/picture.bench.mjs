/* The picture of an answer, in the built package: a page draws it at every step of a dial, within 50 ms. */
import { answerPicture, pictureSvg } from "darkroom-kinetics";

const LIMIT_MS = 50;

export default function pictureBench(report) {
  const times = Array.from({ length: 60 }, (_, i) => {
    const start = performance.now();
    const picture = answerPicture({
      baseline: { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } },
      conditions: { temperatureC: 14 + i / 100, dilution: "1+14" },
    });
    pictureSvg(picture, { width: 350 });
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const median = times[30];
  report({
    name: "pictureSvg of a new answer, ms / 50",
    ratio: median / LIMIT_MS,
    limit: 1,
    note: `${median.toFixed(1)} ms`,
  });
}
