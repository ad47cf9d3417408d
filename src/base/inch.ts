/** By definition since the international yard of 1959. */
export const MM_PER_INCH = 25.4;
