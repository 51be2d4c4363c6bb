// The figures of the metering model. They describe slide bodies in general, not one maker's. Standing: estimates
// fitted to common working practice; a ratio of two setups hardly depends on them, an absolute mixture would.

/** Discharge coefficient of the main jet; textbooks use 0.6 to 0.9. Only its ratio to the annulus counts. */
export const MAIN_DISCHARGE = 0.8;
/** Discharge coefficient of the gap between needle and needle jet, range 0.55 to 0.8. */
export const ANNULUS_DISCHARGE = 0.7;

/** Where the nozzle sits between the two lips of the slide: share of the cutaway it feels, range 0.7 to 1. */
export const LIP_SHARE = 0.85;
/** Opening over which the cutaway loses its effect, range 0.2 to 0.5. */
export const CUTAWAY_FADE = 0.3;

/** Pilot share of the fuel that stays at full throttle, range 0.03 to 0.08. */
export const PILOT_SHARE_LEFT = 0.05;
/** Opening over which the pilot share fades, range 0.10 to 0.22. */
export const PILOT_FADE = 0.16;
/** How abruptly it fades, range 1 to 2. */
export const PILOT_FADE_POWER = 1.5;

/** The usual setting of either screw, turns out. */
export const USUAL_TURNS = 1.5;
/** Air screw: share of the outlet's depression that the pilot well feels at the usual turns, range 0.6 to 0.85. */
export const WELL_SIGNAL = 0.75;
/** Turns at which a screw has opened half of its passage, range 0.5 to 2. */
export const HALF_OPEN_TURNS = 1;
/** Fuel screw: (pilot jet over outlet)² at the usual turns; makes half a turn worth about what an air screw's is. */
export const OUTLET_THROTTLING = 0.5;
/** Fuel screw: part of the outlet that the screw does not close (bypass holes). */
export const BYPASS_SHARE = 0.15;

/** Depression at the nozzle in standard air, Pa, by opening; good to a factor of 2, felt only through the fuel lift. */
export const DEPRESSION: readonly (readonly [opening: number, pascal: number])[] = [
  [0, 150],
  [0.045, 200],
  [0.125, 500],
  [0.25, 900],
  [0.5, 1300],
  [0.75, 1500],
  [1, 1600],
];
/** Below this part of the depression the lift formula says nothing more: the nozzle is just starting to flow. */
export const LEAST_SIGNAL = 0.05;
/** Air density the depressions above are given for, kg/m³. ISO 2533:1975, sea level [from memory]. */
export const STANDARD_DENSITY = 1.225;
/** m/s², exact by definition. */
export const GRAVITY = 9.80665;

/** Fuel flow goes as viscosity to minus this, main jet; range 0 to 0.06. */
export const MAIN_VISCOSITY_POWER = 0.03;
/** The same for the pilot jet; range 0.05 to 0.15. */
export const PILOT_VISCOSITY_POWER = 0.1;

/** Slide lift at idle over the height of the bore, where it was not measured: 1.6 mm on a 36 mm body. */
export const IDLE_LIFT_SHARE = 0.045;
