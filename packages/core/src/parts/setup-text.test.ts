import { expect, test } from "vitest";
import { fromDegree, fromMillimetre as mm } from "../units/convert.ts";
import { known, UNKNOWN } from "./known.ts";
import type { Needle } from "./needle.ts";
import type { Setup } from "./setup.ts";
import { partText, SETUP_ORDER } from "./setup-text.ts";

const setupText = (setup: Setup) => SETUP_ORDER.map((part) => partText(setup, part));

const needle: Needle = {
  marks: "N3",
  grooves: 5,
  groovePitch: mm(0.9),
  profile: {
    straightDiameter: mm(2.52),
    tapers: [{ start: mm(25), includedAngle: fromDegree(1.5) }],
    diameterSd: mm(0.003),
  },
};

const setup: Setup = {
  body: {
    bore: { shape: "round", diameter: mm(36) },
    screwKind: "air",
    nozzle: "primary",
    seatToJet: null,
    idleLift: null,
    bowlVent: "free air",
  },
  pilot: known({ number: 42, numbering: "bore", maker: "Nadel" }, "told"),
  main: known({ number: 175, numbering: "bore", maker: "" }),
  needle: known(needle, "measured"),
  clip: known(3),
  needleJet: known(mm(2.7)),
  cutaway: known(mm(3.5)),
  screw: known({ kind: "air", turnsOut: 1.5 }),
  fuelLift: known(mm(12), "measured"),
  mainAirJet: UNKNOWN,
  pilotAirJet: { part: { number: 80, numbering: "bore", maker: "" }, how: "unknown" },
};

test("a setup in words, from closed to full throttle", () => {
  expect(setupText(setup)).toEqual([
    "pilot 42 (bore, 1/100 mm, Nadel), told",
    "air screw 1 1/2 turns out, read by eye",
    "slide with 3.5 mm cutaway, read by eye",
    "needle jet 2.70 mm, read by eye",
    "needle N3 (5 grooves, 2.520 mm straight, 1 taper), measured",
    "clip in groove 3 of 5 from the top, read by eye",
    "main 175 (bore, 1/100 mm), read by eye",
    "fuel level 12.0 mm below the top of the needle jet, measured",
    "pilot air jet 80 (bore, 1/100 mm), a guess",
    "main air jet not known",
  ]);
});

test("what nobody knows is said so, part by part", () => {
  const blank: Setup = {
    ...setup,
    body: { ...setup.body, screwKind: "fuel" },
    pilot: UNKNOWN,
    main: UNKNOWN,
    needle: UNKNOWN,
    clip: UNKNOWN,
    needleJet: UNKNOWN,
    cutaway: UNKNOWN,
    screw: UNKNOWN,
    fuelLift: UNKNOWN,
    pilotAirJet: UNKNOWN,
  };
  expect(setupText(blank)).toEqual([
    "pilot not known",
    "fuel screw not known",
    "slide not known",
    "needle jet not known",
    "needle not known",
    "clip not known",
    "main not known",
    "fuel lift not known",
    "pilot air jet not known",
    "main air jet not known",
  ]);
});

test("a needle without marks or measurements, and a clip without its needle", () => {
  const bare: Setup = { ...setup, needle: known({ ...needle, marks: " ", profile: null }) };
  expect(partText(bare, "needle")).toBe("needle without marks (5 grooves, not measured), read by eye");
  expect(partText({ ...setup, needle: UNKNOWN }, "clip")).toBe("clip in groove 3 from the top, read by eye");
  const straight: Needle = { ...needle, profile: { ...needle.profile!, tapers: [] } };
  expect(partText({ ...setup, needle: known(straight) }, "needle")).toMatch(/no taper/);
  const two: Needle = {
    ...needle,
    profile: {
      ...needle.profile!,
      tapers: [...needle.profile!.tapers, { start: mm(40), includedAngle: fromDegree(3) }],
    },
  };
  expect(partText({ ...setup, needle: known(two) }, "needle")).toMatch(/2 tapers/);
});
