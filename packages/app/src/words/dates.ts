/** A day in the way of the language, such as "3 Apr 2026". */
export const dayText = (at: number, language: string): string =>
  new Date(at).toLocaleDateString(language === "en" ? "en-GB" : language, {
    day: "numeric",
    month: "short",
    year: "numeric",
  });

/** The time of day, hours and minutes. */
export const clockText = (at: number, language: string): string =>
  new Date(at).toLocaleTimeString(language === "en" ? "en-GB" : language, {
    hour: "2-digit",
    minute: "2-digit",
  });

/** A day as file names carry it: "2026-04-03". */
export const fileDay = (at: number): string => new Date(at).toISOString().slice(0, 10);
