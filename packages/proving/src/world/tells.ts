/**
 * What a fault shows besides the mixture: the sign, and how often it can be noticed when the fault is slight and when
 * it is bad. Our own estimates from how each fault works, not the tool's figures.
 */
export const TELLS: Readonly<Record<string, readonly (readonly [string, number, number])[]>> = {
  "air-leak": [
    ["hangs-only-when-hot", 0.15, 0.55],
    ["idle-creeps-up-when-hot", 0.2, 0.6],
    ["idle-suddenly-high", 0.05, 0.4],
    ["worse-at-low-revs-same-grip", 0.1, 0.4],
  ],
  "blocked-pilot": [
    ["runs-only-on-choke", 0.1, 0.8],
    ["will-not-idle", 0.1, 0.7],
    ["hot-start-needs-choke", 0.1, 0.5],
  ],
  "float-level": [
    ["cuts-out-on-landing", 0.15, 0.6],
    ["changes-on-slopes", 0.2, 0.6],
    ["petrol-drips-from-overflow", 0, 0.3],
  ],
  "float-valve": [
    ["petrol-drips-from-overflow", 0.3, 0.9],
    ["hot-start-needs-open-throttle", 0.2, 0.6],
    ["petrol-smell-eyes-sting", 0.1, 0.4],
  ],
  "fuel-supply": [
    ["fades-after-ten-seconds", 0.35, 0.9],
    ["cuts-as-if-tap-off", 0.05, 0.7],
    ["comes-and-goes", 0.1, 0.4],
  ],
  "choke-not-seating": [
    ["cold-start-without-choke", 0.3, 0.7],
    ["fouls-plugs", 0.1, 0.5],
  ],
  "air-filter": [["clears-with-filter-off", 0.05, 0.2]],
  "slide-or-cable": [
    ["hangs-after-closing", 0.3, 0.8],
    ["revs-rise-over-bumps", 0.1, 0.5],
    ["idle-suddenly-high", 0.2, 0.6],
  ],
  "worn-needle-and-jet": [
    ["heavy-in-the-middle-clean-on-top", 0.15, 0.6],
    ["uses-more-fuel", 0.2, 0.6],
  ],
  reed: [
    ["spits-back-at-the-mouth", 0.2, 0.7],
    ["idle-suddenly-high", 0, 0.3],
  ],
  ignition: [
    ["misses-more-the-harder-it-pulls", 0.3, 0.85],
    ["fouls-plugs", 0.1, 0.5],
    ["comes-and-goes", 0.1, 0.4],
  ],
  compression: [
    ["kicks-over-easily", 0.25, 0.8],
    ["hot-start-needs-open-throttle", 0.1, 0.5],
  ],
  "gearbox-side-seal": [
    ["smokes-when-warm", 0.4, 0.9],
    ["gearbox-oil-goes-missing", 0.2, 0.8],
    ["plug-wet-and-oily", 0.2, 0.6],
  ],
  "exhaust-blocked": [
    ["follows-revs-not-grip", 0.15, 0.5],
    ["black-oil-at-silencer", 0.1, 0.4],
  ],
  "power-valve": [
    ["no-step-where-the-power-valve-opens", 0.3, 0.8],
    ["follows-revs-not-grip", 0.2, 0.5],
  ],
  "fuel-or-oil-wrong": [
    ["pings-on-roll-on", 0.2, 0.7],
    ["comes-and-goes", 0.1, 0.5],
  ],
  cooling: [
    ["weaker-lap-by-lap", 0.3, 0.8],
    ["very-hot-or-boils", 0.2, 0.9],
  ],
  "loose-head": [
    ["hiss-or-wet-at-head-joint", 0.2, 0.7],
    ["coolant-goes-missing", 0.2, 0.7],
    ["very-hot-or-boils", 0.1, 0.6],
  ],
  "idle-stop": [
    ["hangs-after-closing", 0.1, 0.5],
    ["idle-suddenly-high", 0.1, 0.4],
  ],
  "plug-heat-range": [
    ["plug-same-whatever-the-jets", 0.2, 0.6],
    ["fouls-plugs", 0.1, 0.4],
  ],
  "accelerator-pump": [
    ["fast-opening-bogs-slow-is-clean-four-stroke", 0.4, 0.9],
    ["bogs-hollow-no-smoke", 0.2, 0.5],
  ],
  "valve-clearance": [
    ["hangs-after-closing", 0.1, 0.4],
    ["spits-back-at-the-mouth", 0.1, 0.4],
    ["kicks-over-easily", 0.1, 0.4],
  ],
};

/** Signs that a rider sometimes sees on a sound bike. */
export const FANCIED: readonly string[] = [
  "idle-creeps-up-when-hot",
  "worse-at-low-revs-same-grip",
  "changes-on-slopes",
  "comes-and-goes",
  "uses-more-fuel",
  "petrol-smell-eyes-sting",
  "hot-start-needs-open-throttle",
  "misses-more-the-harder-it-pulls",
  "fouls-plugs",
];
export const FANCIES = 0.05;
