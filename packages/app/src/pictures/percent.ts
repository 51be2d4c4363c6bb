/** A mixture error, ln of the fuel-air ratio over the wanted one, as percent of fuel too much; below 0 too little. */
export const percentRich = (error: number): number => 100 * Math.expm1(error);

/** How far the band of doubt reaches on either side, in standard deviations: right four times in five. */
export const LIKELY = 1.2816;
