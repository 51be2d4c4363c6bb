import type { BodyOf } from "../kinds/all.ts";
import { FITTED_PARTS, type FittedPart } from "../kinds/setup-fitted.ts";

type Fitted = BodyOf<"setup-fitted">;

/** Metering parts as the records say them; a part left out has never been named. */
export type FittedParts = { readonly [Part in FittedPart]?: Fitted[Part] };

/** What was fitted from a time on, until the next. */
export interface FittedSetup {
  /** Id of the record that made it; null for what was there before anything was written. */
  readonly record: string | null;
  /** Milliseconds since 1970; minus infinity for the first. */
  readonly at: number;
  readonly parts: FittedParts;
}

type Mutable = { -readonly [Key in keyof FittedSetup]: FittedSetup[Key] };

const VALUE = {
  main: "number",
  pilot: "number",
  needle: "marks",
  clip: "groove",
  needleJet: "boreMm",
  slide: "cutawayMm",
  screw: "turnsOut",
  fuelLevel: "liftMm",
  mainAirJet: "number",
  pilotAirJet: "number",
} as const satisfies Record<FittedPart, string>;

export const isUnknown = (part: unknown): boolean => part === undefined || part === "unknown";

/** The same part, whatever else is told of it or how it is known. */
export function sameValue(name: FittedPart, a: unknown, b: unknown): boolean {
  if (isUnknown(a) || isUnknown(b)) return isUnknown(a) === isUnknown(b);
  return (a as Record<string, unknown>)[VALUE[name]] === (b as Record<string, unknown>)[VALUE[name]];
}

/** The setups of one bike, in the order they were fitted. */
export class SetupTimeline {
  readonly #setups: Mutable[] = [{ record: null, at: -Infinity, parts: {} }];

  get setups(): readonly FittedSetup[] {
    return this.#setups;
  }

  get current(): FittedSetup {
    return this.#setups.at(-1)!;
  }

  /**
   * Takes a record. Parts changed start a new setup. Parts found fitted were there before as well: they fill
   * what was unknown back to the last time that part was known. A part found that is not what the records
   * say starts a new setup; the names of such parts are given back.
   */
  take(record: string, at: number, fitted: Fitted): readonly FittedPart[] {
    const named = FITTED_PARTS.filter((name) => fitted[name] !== undefined);
    if (fitted.asFound !== true) {
      this.#change(record, at, fitted, named);
      return [];
    }
    const surprises: FittedPart[] = [];
    for (const name of named) {
      if (fitted[name] === "unknown") continue;
      const now = this.current.parts[name];
      if (isUnknown(now)) this.#fillBack(name, fitted);
      else if (sameValue(name, now, fitted[name])) this.#merge(name, fitted);
      else surprises.push(name);
    }
    if (surprises.length > 0) this.#change(record, at, fitted, surprises);
    return surprises;
  }

  #change(record: string, at: number, fitted: Fitted, names: readonly FittedPart[]): void {
    const changed = Object.fromEntries(names.map((name) => [name, fitted[name]]));
    this.#setups.push({ record, at, parts: { ...this.current.parts, ...changed } });
  }

  #fillBack(name: FittedPart, fitted: Fitted): void {
    for (let i = this.#setups.length - 1; i >= 0; i--) {
      const setup = this.#setups[i]!;
      if (!isUnknown(setup.parts[name])) return;
      setup.parts = { ...setup.parts, [name]: fitted[name] };
    }
  }

  /** The same part seen again: what is told now is laid over what was told, as far back as it is one part. */
  #merge(name: FittedPart, fitted: Fitted): void {
    const told = fitted[name] as object;
    const current = this.current.parts[name] as Record<string, unknown>;
    const news = Object.entries(told).some(
      ([key, value]) => JSON.stringify(value) !== JSON.stringify(current[key]),
    );
    if (!news) return;
    for (let i = this.#setups.length - 1; i >= 0; i--) {
      const setup = this.#setups[i]!;
      const before = setup.parts[name];
      if (isUnknown(before) || !sameValue(name, before, told)) return;
      setup.parts = { ...setup.parts, [name]: { ...(before as object), ...told } };
    }
  }
}
