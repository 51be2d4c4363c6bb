/** What a first visit says of the choices of this device. */
export const languageChoice = { language: "Language" };
