// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const CONTROLS = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;

/** Text from a log made safe to print: control characters, which could move the cursor or hide text, become spaces. */
export const printable = (text: string): string => text.replaceAll(CONTROLS, " ");

/** The same on one line. */
export const oneLine = (text: string): string => printable(text).replaceAll(/\s+/g, " ").trim();
