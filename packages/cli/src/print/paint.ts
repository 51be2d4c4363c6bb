/** Colour on a terminal. It only repeats what words and places say. */
export interface Paint {
  readonly loud: (text: string) => string;
  readonly strong: (text: string) => string;
  readonly side: (text: string, side: "rich" | "lean") => string;
}

const code =
  (on: number, off: number) =>
  (text: string): string =>
    text === "" ? "" : `\u001b[${on}m${text}\u001b[${off}m`;
const same = (text: string): string => text;

const reverse = code(7, 27);
const bold = code(1, 22);
const umber = code(33, 39);
const blue = code(34, 39);

export const paintFor = (colour: boolean): Paint =>
  colour
    ? { loud: reverse, strong: bold, side: (text, side) => (side === "rich" ? umber : blue)(text) }
    : { loud: same, strong: same, side: same };
