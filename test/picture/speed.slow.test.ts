import { describe, expect, it } from "vitest";
import { answerPicture, pictureSvg } from "../../src/index.js";
import { bestOf } from "../processorTime.js";
import { inputs } from "./pictures.js";

describe("the time that a picture takes", () => {
  it.each(Object.entries(inputs))("is below 50 ms for %s", (_, input) => {
    expect(bestOf(20, () => pictureSvg(answerPicture(input), { width: 350 }))).toBeLessThan(50);
  });
});
