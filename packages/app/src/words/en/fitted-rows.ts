/** The parts by name and how each is known, as a bike and its next step say them: the rest of what is fitted comes later. */
export const fittedRows = {
  part: {
    pilot: "Pilot jet",
    screw: "Screw",
    slide: "Slide",
    needle: "Needle",
    clip: "Clip",
    needleJet: "Needle jet",
    main: "Main jet",
    fuelLevel: "Fuel level",
    pilotAirJet: "Pilot air jet",
    mainAirJet: "Main air jet",
  },
  screw: { air: "Air screw", fuel: "Fuel screw" },
  notKnown: "not known",
  how: { measured: "measured", "read by eye": "read by eye", told: "told", unknown: "" },
};
