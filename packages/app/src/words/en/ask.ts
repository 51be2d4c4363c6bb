import type { Told } from "../told.ts";

/** The block of text for a friend, and its screen. The worker fills the lines. */
export const ask = {
  title: "Ask a friend",
  lead: "Everything that whoever helps you will ask back, in one block.",
  copy: "Copy the text",
  copied: "Copied. Paste it into a message.",
  notCopied: "This browser would not copy. Mark the text and copy it by hand.",
  share: "Share",
  extra: "Your question",
  extraHint: "Goes on top, in your own words",
  text: "The text",
  back: "Bike",
  heading: (name: string) => `Setup question: ${name}`,
  notKnown: "not known",
  numbered: (n: number, title: string, answer: string) => `${n}. ${title}: ${answer}`,
  items: {
    fitted: "What is in it now",
    air: "Height and air where it is ridden",
    opening: "What it does, at which throttle opening",
    fuel: "Fuel, oil and ratio",
    before: "What was changed just before",
    mechanics: "Is it really the carburetor: checks so far",
    plug: "Plug: photo, type, how it was taken",
    choke: "What a touch of choke does",
    carburetor: "Which carburetor",
    float: "Float level, hoses, tank vent",
    age: "Age of rings, seals and reeds",
    history: "Who set it up and what it was before",
    riding: "What riding, rider's weight",
  },
  engine: "Engine",
  tests: "Tests so far",
  nothingChanged: "nothing written down",
  noneDone: "none written down",
  wasBefore: (words: string) => `before the last change: ${words}`,
  setUpBy: (person: string) => `last fitted by ${person}`,
  vent: (vent: "free air" | "airbox") =>
    vent === "airbox" ? "bowl vented to the airbox" : "bowl vented to free air",
  genuine: "genuine or copy not known",
  weight: "rider's weight not known",
  photos: (count: number) => (count === 1 ? "1 photo on this phone" : `${count} photos on this phone`),
  onDay: (day: string, words: string) => `${day}: ${words}`,
};

export type AskWords = Told<typeof ask>;
