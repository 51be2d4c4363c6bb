/** What to mind, one to three short sentences each. */
export const cautions = {
  "makers-manual":
    "The maker's manual for this very bike comes before anything said here: its figures, its order, its torques.",
  "fuel-off-first":
    "Turn the fuel off before the job starts. Let the engine cool. Drain the bowl into a fuel-safe tray.",
  "petrol-vapour":
    "Work outdoors or with the doors open. No flame, heater, pilot light, grinder or smoking: petrol vapour is heavy and lies in pits. Have a fire extinguisher for burning liquids in reach; never use water.",
  "spilled-fuel":
    "Wipe up spilled petrol before starting, and put the rags in a closed metal bin. A fuel leak that will not stop means: do not start it.",
  battery:
    "Where there is a battery, take its negative lead off while fuel is open. Keep the plug lead away from fuel, and never crank with the plug out beside open fuel.",
  fumes:
    "Exhaust gas kills without a smell. Never run the engine indoors, not even with the door open; wind can push the gas back in.",
  "hot-parts": "Header, head and coolant burn. Wait, or wear gloves. Never open a hot radiator.",
  "eyes-and-skin":
    "Wear glasses when blowing jets out, and gloves against petrol and cleaner. Hold a rag over the jet. Never point an air line at skin.",
  "seizure-at-full-throttle":
    "Too little fuel at full throttle can seize the engine and lock the wheel. Start on the thick side, keep two fingers on the clutch, make no long full-throttle run on an unproved main jet, and stop at the first ping.",
  "lean-damage":
    "Too little fuel burns pistons; too much mostly only fouls plugs. When unsure, go to the side of more fuel.",
  "stop-at-knock":
    "A knock, a tearing note, metal on the plug or a nip of the piston ends the tuning. Shut off gently, do not repeat it, and find the cause.",
  runaway:
    "Engine runs away: clutch in, brakes, kill switch. If it goes on, fuel off and cover the carburetor mouth if that is safe to reach; or, only seated with both wheels on the ground, top gear, both brakes hard, clutch out to stall it. Otherwise stand clear until it is dry, and no restart before slide, cable, boots and seals are checked.",
  "slide-snap-before-start":
    "Before every first start, engine off: open and let go, bars straight, left and right. The slide must be heard hitting its stop. Keep a thumb at the kill switch.",
  "test-riding":
    "Ride tests only on a closed course or land where you may, in full gear, with somebody watching and the kill switch tried out. No phone in the hand. Children only under supervision.",
  noise: "Whoever helps beside the bike wears hearing protection. Keep to the place's noise limit and hours.",
  "free-revving":
    "Do not hold full throttle in neutral: nothing loads the engine, and parts fly. Short blips only.",
  "spray-fire":
    "Spraying fuel or gas at joints can start a fire. Never on a hot engine and never near a spark; the pressure test with soapy water tells more and burns nothing.",
  "low-pressure-only":
    "Low pressure only: never above 10 psi (0.69 bar) in a crankcase. Use a hand pump and a gauge to 15 psi, not a workshop air line.",
  "never-wire-or-drill":
    "Clean jets with solvent and air only. Never put wire or a drill through one, and never blow toward the filter side.",
  waste:
    "Petrol, cleaner, coolant, oil and old packing go to a collection point, never into a drain or the soil.",
  law: "On road-registered machines sealed screws and jets may not be altered, and changes can void approval and insurance. Off road, local rules on noise and spark arresters apply.",
  "hand-over":
    "Hand it to a licensed technician after a runaway, seizure or knock, with metal on the plug, a failed pressure test, a fuel leak that will not stop, a throttle or brake fault, or without the tools and a safe place.",
} satisfies Readonly<Record<string, string>>;
