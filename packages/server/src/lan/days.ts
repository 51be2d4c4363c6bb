/** Milliseconds. */
export const DAY = 86_400_000;
