/* Inputs that inputs.test.ts finds out: one field takes no undefined; what a function answers is no input. */
interface Asked {
  readonly exact?: number;
  readonly loose?: number | undefined;
  readonly call: (told: Answered) => Told;
}
interface Told {
  readonly back?: string;
}
interface Answered {
  readonly free?: number;
}
export function answer({ exact = 0 }: Asked): Answered {
  return { free: exact };
}
