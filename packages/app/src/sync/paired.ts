import type { ComponentType } from "preact";
import { watched } from "../store/value.ts";
import type { Fetched } from "./fetch-blobs.ts";

/** The setting that says which shop this device is paired with. */
export const PAIRED = "sync-paired";

/** Gets a picture or clip from the shop; null for a device of no shop. */
export const fetchFromShop = watched<((hash: string) => Promise<Fetched>) | null>(null);

/** Goes up whenever the shop was in reach: what it had not got before may be there. */
export const shopRounds = watched(0);

/** Draws where the device stands with its shop; null for a device of no shop, and until the code is there. */
export const syncLine = watched<ComponentType | null>(null);
