import { normalDensity, normalUpper } from "../core/normal.js";

/** How probable a window is, and how ln of that moves with the mean. */
export interface WindowLikelihood {
  readonly probability: number;
  /** d ln(probability)/d mean */
  readonly slope: number;
  /** −d² ln(probability)/d mean², above 0 and at most 1/variance */
  readonly curvature: number;
}

/** From so many standard deviations on the tail is taken by its asymptote: its figures would cancel. */
const FAR = 8;

/**
 * The probability that mean + N(0, variance) falls between low and high. The truncated normal within has the
 * mean `mean + variance·slope` and the variance `variance − variance²·curvature`.
 */
export function windowLikelihood(
  low: number,
  high: number,
  mean: number,
  variance: number,
): WindowLikelihood {
  const sd = Math.sqrt(variance);
  const below = (low - mean) / sd;
  const above = (high - mean) / sd;
  // Turned so that the window lies in the upper half, where tails are exact.
  const turned = below + above < 0;
  const a = turned ? -above : below;
  const b = turned ? -below : above;
  const sign = (turned ? -1 : 1) / sd;
  if (a > FAR) return { probability: 0, slope: sign * (a + 1 / a), curvature: (1 - 1 / (a * a)) / variance };
  const probability = normalUpper(a) - normalUpper(b);
  const [atA, atB] = [normalDensity(a), normalDensity(b)];
  const slope = (atA - atB) / probability;
  const curvature = slope * slope - (edge(a, atA) - edge(b, atB)) / probability;
  return {
    probability,
    slope: sign * slope,
    curvature: Math.min(1, Math.max(1e-6, curvature)) / variance,
  };
}

/** x·φ(x), 0 at the ends. */
function edge(x: number, density: number): number {
  return Number.isFinite(x) ? x * density : 0;
}
