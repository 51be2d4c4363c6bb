/** How far the throttle may be opened on a ride, in the tool's own words. */
export type Throttle = "free" | "seconds only" | "stay below 3/4";
