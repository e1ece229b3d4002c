/** One text of one source file, and what stands there in its place. */
export interface HandMutant {
  readonly what: string;
  readonly file: string;
  readonly tests: readonly string[];
  readonly from: string;
  readonly to: string;
}
export const handMutants: readonly HandMutant[];
export function applied(mutant: HandMutant, source: string): string;
