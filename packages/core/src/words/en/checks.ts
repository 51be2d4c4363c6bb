import type { CheckWords } from "../entry.ts";

const SCREWDRIVERS = "no. 2 cross-head and flat screwdriver";
const BOWL_TOOLS = [SCREWDRIVERS, "3 mm hex key", "14 or 17 mm open spanner for the bowl plug"];

/** Looks and measurements: the heading, the steps in order, and what to do when something is found. */
export const checks = {
  "look-at-boots-and-clamps": {
    words: "Look over the boots and clamps",
    steps: [
      "Bend both rubber boots by hand under a torch and look for cracks, most on the underside.",
      "Check all round that the carburetor sits fully in its boot, and that both clamps are tight in their grooves.",
      "Look for a wet or dusty line at the joints, and at every cap on a vacuum nipple.",
    ],
    tools: ["torch", SCREWDRIVERS],
    mend: "Replace a cracked boot or cap, seat the carburetor fully, tighten the clamps, then repeat the run that showed the trouble.",
  },
  "idle-stop": {
    words: "Set the idle stop",
    steps: [
      "Engine warm. Note where the stop screw stands by counting its turns as you move it.",
      "Turn it out until the idle just falls, then in to the idle the maker gives (off-road 250 to 300 two-strokes about 1500 to 1900 a minute).",
      "Throttle closed and warm, does the idle answer both ways, and does the small screw answer again?",
    ],
    tools: [SCREWDRIVERS],
    mend: "Leave it at the maker's idle. If it only holds with the slide far up, clean the pilot and check for leaks.",
  },
  "tap-and-vents": {
    words: "Check tap, cap vent and hoses",
    steps: [
      "Look at the fuel hose for kinks and at the filter in it for dirt; tap fully on.",
      "Pull the vent hose off the tank cap and blow through it: it must pass air in.",
      "Follow every hose of the bowl: open at its end, not pinched, not under the cable or in the mud.",
    ],
    tools: ["torch"],
    mend: "Clean or replace what is blocked, route the hoses as they came, and repeat the long full-throttle run.",
  },
  "overflow-drip": {
    words: "Tap on for two minutes: does it drip?",
    steps: [
      "Bike upright, engine off, a dry rag under the overflow hose.",
      "Tap on for two minutes. Tap the bowl lightly once with a screwdriver handle.",
      "Look at the rag, the overflow and the bowl joint.",
    ],
    tools: ["rag", SCREWDRIVERS],
    mend: "Clean the valve; if it still leaks replace valve and seat together, then set the float height.",
  },
  "air-filter": {
    words: "Look at the air filter",
    steps: [
      "Take the filter out and hold it to the light: dirt, dripping oil, holes, an opened seam.",
      "Wipe inside the intake with a white rag: dust there means it passes dirt.",
      "Look whether it seats all round, and whether box drain and lid are as ridden.",
    ],
    tools: ["white rag", "torch"],
    mend: "Clean and oil it or fit a new one, grease and seat the rim, and ride again before touching a jet.",
  },
  "slide-snap-and-cable": {
    words: "Snap the slide and check the cable",
    steps: [
      "Engine off. Open fully and let go with the bars straight, left and right: the slide must be heard hitting its stop each time.",
      "Feel the play: about 1 mm at the cable, 2 to 4 mm at the rim of the grip, unless the manual says otherwise.",
      "If in doubt, cap off: slide and bore free of scores and ledges, cutaway toward the filter, needle holder tight, spring whole.",
    ],
    tools: [SCREWDRIVERS, "torch"],
    mend: "Free, re-route or replace the cable; clean slide and bore; replace a worn slide. Snap test again before the first start.",
  },
  "fresh-fuel-and-oil": {
    words: "Drain and fill with fresh fuel",
    steps: [
      "Tap off, engine cool. Drain the bowl into a clear glass: water lies in beads at the bottom, dirt shows.",
      "Ask how old the fuel is, of which grade, and how it was mixed; more than a month or unknown counts as bad.",
      "Empty tank and bowl, fill fresh fuel of the maker's grade and oil share, and repeat the run.",
    ],
    tools: [
      "clear glass jar",
      "fuel-safe can",
      SCREWDRIVERS,
      "3 mm hex key",
      "14 or 17 mm open spanner for the bowl plug",
    ],
    mend: "Stay on fresh fuel; clean tap filter and bowl if there was water or dirt.",
  },
  "fuel-flow": {
    words: "Measure the fuel flow",
    steps: [
      "Pull the hose off the carburetor and hold it in a measuring can at the carburetor's height; cap closed as ridden.",
      "Tap on for two minutes, and read the can after each one.",
      "About 250 ml a minute or more is enough for a 250 to 300; that class burns about 150 to 200 ml a minute wide open. Smaller engines need less.",
      "A flow that slows in the second minute means a tank that cannot breathe.",
    ],
    tools: ["measuring can", "stop-watch", "pliers"],
    mend: "Clear cap vent, tap and filter, replace a kinked or swollen hose, and measure again.",
  },
  "choke-plunger": {
    words: "Check that the choke shuts",
    steps: [
      "Choke off: the knob or lever fully home, with free play where there is a cable.",
      "Take the plunger out: its rubber face clean, not cut or swollen, its spring whole, its seat free of dirt.",
      "Back in, work it a few times: it must snap home by itself.",
    ],
    tools: [SCREWDRIVERS, "14 mm open spanner", "torch"],
    mend: "Clean the seat, replace the plunger or its spring, give the cable play.",
  },
  "spark-and-plug": {
    words: "Check plug, cap, lead and spark",
    steps: [
      "Was the plug tight? Read its number against the manual's, measure its gap.",
      "Cap and lead: no cracks, no green wire, firm on the plug.",
      "Spark tester on the lead, body to metal, away from any fuel: a fat blue spark must jump the tester's gap (one maker asks for more than 6 mm).",
      "Fit a new plug of the right number and ride. A weak spark fails under load first, so a good spark on the bench proves little.",
    ],
    tools: ["plug spanner", "feeler gauge", "spark tester", "new plug"],
    mend: "New plug of the right number, cap or lead; if it still misses under load, have coil, stator and timing tested.",
  },
  "ignition-timing": {
    words: "Check the ignition timing",
    steps: [
      "Cover off: flywheel key whole, marks in line as the manual shows, backing plate tight.",
      "With a timing light or a dial gauge in the plug hole, compare with the manual's figure.",
      "Measure coil and stator windings against the manual, cold and again hot.",
    ],
    tools: ["dial gauge or timing light", "multimeter", "flywheel puller"],
    mend: "Set the timing, replace key, coil or stator.",
  },
  "head-and-plug-tight": {
    words: "Check head bolts and plug for tightness",
    steps: [
      "Engine cold. Plug first: it must not turn easily.",
      "Look along the head and base joints for oil, soot or coolant.",
      "Check every head and base nut with a torque wrench, crosswise, at the manual's figure.",
    ],
    tools: ["torque wrench", "sockets", "plug spanner"],
    mend: "Tighten crosswise to the manual's figure; a joint that has blown gets a new gasket and a flatness check.",
  },
  cooling: {
    words: "Check the cooling",
    steps: [
      "Engine cold: coolant to the mark, cap seal soft and whole, hoses firm.",
      "Fins of radiator or cylinder straight and free of mud.",
      "Run it with the cap off from cold: coolant must move; a steady string of bubbles means gas from the head joint.",
    ],
    tools: ["water and soft brush", "torch"],
    mend: "Fill and bleed, clean the fins, replace cap, hose or pump seal; bubbles mean a head gasket.",
  },
  compression: {
    words: "Measure the compression",
    steps: [
      "Engine warm, gauge in the plug hole, kill switch off, throttle held wide open.",
      "Five to ten kicks until the needle stands still. Repeat.",
      "A fresh 250 two-stroke shows about 175 to 200 psi (12 to 14 bar) or more, a 125 or a mini 150 to 200 (10 to 14). More than 20 % under this engine's own fresh figure means rings. The manual's figure comes first, and a decompression device reads low.",
      "This is no leak test of the crankcase.",
    ],
    tools: ["compression gauge", "plug spanner"],
    mend: "Rings and piston, cylinder measured; on a four-stroke valves first.",
  },
  "gearbox-oil-and-smoke": {
    words: "Check gearbox oil and smoke",
    steps: [
      "Drain the gearbox and measure: clearly less than was filled, with no drip outside, is the sign.",
      "Smell the oil: petrol in it means the seal passes both ways.",
      "Warm engine outdoors: steady smoke that does not change with the oil share of the fuel.",
    ],
    tools: ["measuring can", "spanners", "drain tray"],
    mend: "Renew the crank seal on the gearbox side (and its bearing if it has play), then pressure-test.",
  },
  "clean-pilot": {
    words: "Clean the pilot jet and its passages",
    steps: [
      "Tap off, bowl drained and off. Count the small screw's turns to lightly seated, write them down, take screw, spring, washer and O-ring out.",
      "Pilot jet out with a narrow flat driver that fills the slot. Hold it to the light: a clean round hole.",
      "Solvent, then air, through jet, screw hole and the small holes at the engine side of the slide; each must spray freely.",
      "Back together, screw at the turns written down.",
    ],
    tools: [...BOWL_TOOLS, "narrow flat driver", "carburetor cleaner", "low-pressure air", "torch"],
    mend: "What came out tells: dirt means cleaning tank, tap and filter too. A jet that will not clear is replaced by the same number.",
  },
  "float-height": {
    words: "Measure the float height",
    steps: [
      "Bowl off. Tilt the carburetor so that the tang just touches the valve pin without pressing its spring.",
      "Measure from the body's face to the float, both sides, against this model's figure in its manual.",
      "Or, fitted and running, with a clear hose from the drain held beside the bowl: the fuel must stand at the maker's mark.",
      "Valve tip: a ring worn into it means it leaks. The float itself: shake it, it must be dry inside.",
    ],
    tools: [...BOWL_TOOLS, "caliper or float gauge", "clear hose"],
    mend: "Bend the tang a little at a time to the figure; replace a worn valve with its seat, and a heavy float.",
  },
  "measure-needle-and-jet": {
    words: "Measure the needle and the needle jet",
    steps: [
      "Slide out, needle out, clip groove written down. Needle jet out where it can be.",
      "Look along the needle under a glass: flats, bright streaks, a step where it rides.",
      "Micrometer on the straight part, at four turns of the needle: 0.01 mm off round or under the new size already matters (about 3 to 5 % fuel at 1/4).",
      "Needle jet: gauge pins or a new jet beside it under a glass; an oval hole is worn.",
    ],
    tools: [...BOWL_TOOLS, "micrometer", "gauge pins", "magnifier"],
    mend: "Needle and needle jet new together, same types; then judge the clip again from the middle.",
  },
  reeds: {
    words: "Look at the reeds",
    steps: [
      "Carburetor and boot off, reed block out; plug the intake with a clean rag.",
      "Hold the block to the light: no light past the petals beyond what the manual allows, no chips, no cracks, no frayed corners.",
      "Press each petal: same spring on both sides. Stop plates tight.",
    ],
    tools: [SCREWDRIVERS, "hex keys", "torch", "clean rag"],
    mend: "New petals as a set, and the gasket; account for every chip before closing, it may be in the crankcase.",
  },
  "exhaust-and-silencer": {
    words: "Check pipe, joint and silencer",
    steps: [
      "Pipe cold. Joint at the cylinder: soot or oil outside means it leaks.",
      "Silencer off: look through the core, knock it, weigh it in the hand; soaked or blown packing is heavy or rattles.",
      "Pipe: dents by the header, carbon in the end pipe and at the port.",
      "One short run with another silencer of the same kind tells most.",
    ],
    tools: ["spring hook", "spanners", "torch"],
    mend: "Repack or replace the silencer, clear carbon, straighten or replace the pipe, new joint rings.",
  },
  "power-valve": {
    words: "Check that the power valve moves",
    steps: [
      "Cover off: the linkage must move by hand to both ends and spring back.",
      "Where it can be seen, watch it while the engine is blipped once from idle: it must open and close.",
      "Stiff: take it out, scrape off the carbon, look for broken pins.",
    ],
    tools: ["hex keys", "solvent", "soft scraper", "torch"],
    mend: "Clean, replace worn pins and seals, set the linkage to the manual.",
  },
  "spray-joints": {
    words: "Listen for a leak with gas or soapy water at the joints",
    steps: [
      "Engine idling, only warm, outdoors, extinguisher at hand. A helper at the kill switch.",
      "Soapy water, or unlit propane from a hose with care, at boots, base joint and vacuum caps, one place at a time.",
      "Revs that rise or fall at one place, every time, mark the leak. A seal behind the flywheel cannot be reached like this.",
    ],
    tools: ["spray bottle with soapy water", "or propane with a hose", "fire extinguisher"],
    mend: "Mend the place that answered; if none did and the hang is there, pressure-test.",
  },
  "pressure-test": {
    words: "Pressure-test the crankcase",
    steps: [
      "The maker's manual first, if it gives a figure. Test the tester alone before the engine.",
      "Block the exhaust port and the intake, piston at the bottom, plug fitted.",
      "Pump to 6 psi (0.41 bar) and watch for 6 minutes. Sources give 5 to 9 psi (0.34 to 0.62 bar) for 3 to 10 minutes.",
      "Best is no loss at all. Up to 1 psi (0.07 bar) a minute is allowed by the most lenient, half a psi in 10 minutes or none by the others.",
      "If it falls, soapy water at boots, base, head, case joint, plug and the seal behind the flywheel. Bubbles from the gearbox breather mean the seal on that side.",
    ],
    tools: ["block-off plates or plugs", "hand pump with gauge 0 to 15 psi", "soapy water", "spanners"],
    mend: "Renew the seal, gasket or boot that bubbled and test again before any jet is touched.",
  },
  "pump-timing": {
    words: "Check the accelerator pump",
    steps: [
      "Tap off, intake boot off, bowl full. Look in with a torch, eyes well back, and open the throttle once by hand.",
      "The squirt must come at once, clear the slide, and last as long as the manual says; a crooked or dribbling one is dirt.",
      "Fast and slow openings: only a fast one should give a full squirt.",
    ],
    tools: [SCREWDRIVERS, "hex keys", "torch"],
    mend: "Clean the nozzle, replace the diaphragm, set timing and rod to the manual, and only then think of the leak jet.",
  },
  "valve-clearance": {
    words: "Measure the valve clearance",
    steps: [
      "Engine cold. Covers off, piston at top on its firing stroke, marks as the manual shows.",
      "Feeler gauge under each cam or rocker; write every figure down.",
      "Compare with the manual. One that has closed up since last time is wearing into its seat.",
    ],
    tools: ["feeler gauge", "hex keys", "sockets", "spanners"],
    mend: "Shim or set to the manual; valves that keep closing up need the head seen to.",
  },
} satisfies Readonly<Record<string, CheckWords>>;
