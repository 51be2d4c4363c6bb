import type { World } from "../world/world.ts";
import type { Notes } from "./notes.ts";

/** A way of working on a bike, from the owner's own ride to the end. */
export interface Policy {
  readonly name: string;
  readonly words: string;
  /** Works on the bike until it is content or gives up; ride 1 is the owner's. */
  readonly work: (world: World, notes: Notes) => void;
}

/** Rides after which nobody goes on. */
export const MOST_RIDES = 15;

export const mayGoOn = (world: World): boolean => world.outings < MOST_RIDES && !world.engineLost;
