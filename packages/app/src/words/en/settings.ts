import { languageChoice } from "./language-choice.ts";

export const settings = {
  title: "More",
  bikes: "Bikes",
  person: "Who works here",
  personHint: "Written beside every record from now on, so that others see who fitted what.",
  theme: "Page",
  themes: { auto: "As the phone", paper: "Paper", night: "Night" },
  temperature: "Temperature",
  height: "Height",
  pressure: "Pressure",
  otherUnit: "Each field takes the other unit too: type 75F, 5000 ft or 29.92 inHg.",
  gloves: "Gloves",
  glovesOn: "Gloves on: larger buttons",
  glovesOff: "Bare hands",
  hand: "The hand that holds the phone",
  right: "Right",
  left: "Left",
  ...languageChoice,
  shop: "Shop and its other phones",
  backup: "Backup and copies",
  cautions: "All cautions",
  remove: "Remove a person's data",
  cautionsTitle: "Cautions",
  cautionsIntro: "Each stands again at the step it belongs to.",
  exampleLeave: "Take the example shop away",
  exampleGone: "The example shop is gone. Your own bikes are as they were.",
  exampleGoneInPart:
    "Gone, but for the example bikes you wrote about: those are whole, and so is the drawer.",
  exampleAtShop:
    "The shop's server has the example already, so it cannot be taken away here. Put its bikes away one by one.",
  exampleUndo: "Undo",
};
