/** One roll in the trade's count, 80 square inches, in cm²: one 135-36, one 120, half a 220. */
export const ROLL_CM2 = 516.128;

/** What practice gives a litre of bath, in cm² of film: four rolls, 250 ml for each (common practice). */
export const PRACTICE_FILM_CM2_PER_L: number = 4 * ROLL_CM2;
