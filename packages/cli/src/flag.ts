/** One flag of a command. */
export interface Flag {
  readonly type: "text" | "switch";
  /** What stands in its place in the help, such as HEIGHT. */
  readonly value?: string;
  readonly help: string;
  /** Listed under its own heading in the help. */
  readonly group?: string;
}

export type Flags = Readonly<Record<string, Flag>>;
