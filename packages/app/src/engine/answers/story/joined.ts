/** The texts that are there, put together. */
export const joined = (texts: readonly (string | null | undefined | false)[], by = ", "): string =>
  texts.filter(Boolean).join(by);
