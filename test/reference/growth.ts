/*
 * Room: reference. Published figures on the growth of contrast: limit and velocity constant.
 */
import type { Published } from "./published.js";
import { IVES } from "./temperature.js";

/**
 * γ = limit × (1 − e^(−constant × time)). The book gives no unit for the constant; per minute is the usual
 * one. `gammas` are not printed: they are the gradients at so many minutes, worked from the two constants
 * apart from this package.
 */
export const growthConstants: readonly Published<{
  readonly gammaInfinity: number;
  readonly perMinute: number;
  readonly gammas: Readonly<Record<number, number>>;
}>[] = [
  {
    id: "ives-1920-gamma-pyrometol",
    source: IVES,
    provenance: "read",
    about: "pyro-metol with carbonate; aerial plate",
    rows: [
      {
        gammaInfinity: 1.45,
        perMinute: 0.32,
        gammas: { 1: 0.397, 2: 0.685, 3: 0.895, 4: 1.047, 5: 1.157, 8: 1.338 },
      },
    ],
  },
  {
    id: "ives-1920-gamma-chlorhq",
    source: IVES,
    provenance: "read",
    about: "chlorhydroquinone-metol with carbonate and hydroxide; aerial plate",
    rows: [
      {
        gammaInfinity: 2.12,
        perMinute: 0.4,
        gammas: { 1: 0.699, 2: 1.167, 3: 1.481, 4: 1.692, 5: 1.833, 8: 2.034 },
      },
    ],
  },
];
