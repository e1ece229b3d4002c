/* Random numbers with a seed, so that every run of the tests sees the same worlds. */

export interface Random {
  /** uniform, 0 to 1 */
  readonly uniform: () => number;
  /** normal, 0 ± 1 */
  readonly normal: () => number;
  /** Student's t with three degrees of freedom, scaled to a standard deviation of 1 */
  readonly heavyTailed: () => number;
  pick<T>(items: readonly T[]): T;
}

export function seeded(seed: number): Random {
  let state = seed | 0;
  // mulberry32, public domain.
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  return {
    uniform,
    normal,
    heavyTailed: () => normal() / Math.hypot(normal(), normal(), normal()),
    pick: (items) => items[Math.floor(uniform() * items.length)]!,
  };
}
