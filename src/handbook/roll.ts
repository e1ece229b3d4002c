/** One roll in the trade's count, 80 square inches, in cm²: one 135-36, one 120, half a 220. */
export const ROLL_CM2 = 516.128;
