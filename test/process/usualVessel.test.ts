import { describe, expect, it } from "vitest";
import { usualVessel } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { refusal } from "./helpers.js";

describe("the usual vessel", () => {
  it("is a tank for film, and a tray for plates and paper", () => {
    expect((["film", "plate", "paper"] as const).map(usualVessel)).toEqual(["tank", "tray", "tray"]);
    expect(usualVessel()).toBe("tank");
  });
  it("is that of no other material", () => {
    expect(refusal(() => usualVessel(anyOf("glass")))).toBe("RangeError usualVessel /material not-one-of");
  });
});
