/** What a command may touch of the world. Tests hand in their own. */
export interface Io {
  readonly stdin: AsyncIterable<Uint8Array | string>;
  readonly stdinIsTerminal: boolean;
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  /** Columns to write in. */
  readonly width: number;
  /** False: letters beyond ASCII would come out garbled. */
  readonly unicode: boolean;
  readonly colour: boolean;
  /** Milliseconds since 1970, for the age of a weather report. */
  readonly now: () => number;
}

type Environment = Readonly<Record<string, string | undefined>>;

/** Whether the locale promises UTF-8. One that says nothing is taken to, as terminals today do. */
export function speaksUnicode(env: Environment): boolean {
  if (env.TERM === "dumb") return false;
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG;
  return locale === undefined || locale === "" || /utf-?8/i.test(locale);
}

/** Colour only on a terminal, and never where NO_COLOR says something. */
export const wantsColour = (env: Environment, terminal: boolean): boolean =>
  terminal && (env.NO_COLOR === undefined || env.NO_COLOR === "") && env.TERM !== "dumb";

const WIDEST = 80;
const NARROWEST = 48;

/** Eighty columns, or fewer where the terminal has fewer. */
export const widthFor = (columns: number | undefined): number =>
  Math.max(NARROWEST, Math.min(WIDEST, columns ?? WIDEST));
