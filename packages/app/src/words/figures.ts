/** Languages that the app's words are written in. */
export type Language = "en" | "de" | "es";

const MARK: Readonly<Record<Language, string>> = { en: ".", de: ",", es: "," };

const marked = (text: string, language: Language): string =>
  text.replace(".", MARK[language]).replace("-", "−");

/** A number with exactly so many decimals, in the way of the language, with a true minus sign. */
export const figure = (x: number, decimals: number, language: Language): string =>
  marked(x.toFixed(decimals), language);

/**
 * A number in the way of the language to at most so many decimals (left out: as many as it has), without a tail of
 * zeros or a minus before nothing.
 */
export const plainFigure = (x: number, language: Language, decimals?: number): string =>
  marked(String((decimals === undefined ? x : Number(x.toFixed(decimals))) + 0), language);
