import type { ComponentType } from "preact";
import { watched } from "../store/value.ts";

/** The setting that says which shop this device is paired with. */
export const PAIRED = "sync-paired";

/** Draws where the device stands with its shop; null for a device of no shop, and until the code is there. */
export const syncLine = watched<ComponentType | null>(null);
