/**
 * What can move the mixture, each with one factor for how strongly this engine answers to it. "air" stands
 * for the correction to other air and other fuel.
 */
export const CIRCUITS = ["pilot", "screw", "slide", "needle", "main", "air"] as const;

export type Circuit = (typeof CIRCUITS)[number];

/**
 * How one setup, air and fuel shift the mixture against a reference, by circuit: the natural log of the ratio
 * of fuel-air ratios at each of the eleven openings, in the order of OPENINGS. Above zero is richer.
 */
export type Shift = Readonly<Record<Circuit, readonly number[]>>;
