/** What a policy said of the mixture and of faults, with what was true: for the honesty figures. */
export interface Notes {
  /** Of each band said: the opening, how many of its standard deviations the truth lay off, and whether a fault was there. */
  readonly bands: {
    readonly at: number;
    readonly z: number;
    readonly sd: number;
    readonly error: number;
    readonly broken: boolean;
  }[];
  /** Of each chance of a fault said: the chance, and whether it was there. */
  readonly faults: { readonly chance: number; readonly there: boolean; readonly fault: string }[];
  /** Of each chance of a sound bike said. */
  readonly sound: { readonly chance: number; readonly there: boolean }[];
  /** Whether it said it could not tell, and whether its best change would have been wrong. */
  readonly unsure: { readonly said: boolean; readonly wrong: boolean }[];
  /** Steps in order, for the one who tunes. */
  readonly steps: string[];
}

export const newNotes = (): Notes => ({ bands: [], faults: [], sound: [], unsure: [], steps: [] });
