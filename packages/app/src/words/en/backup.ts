import { kept, records } from "./kept.ts";

export const backup = {
  ...kept,
  title: "Backup",
  back: "Bikes",
  lead: "The log lives on this device alone. A copy in another place keeps it through a lost or broken phone.",
  count: (count: number) => `${records(count)} on this device.`,
  never: "No copy was made yet.",
  last: (day: string, since: number) =>
    since === 0
      ? `Last copied ${day}, and nothing written since.`
      : `Last copied ${day}; ${records(since)} since.`,
  save: "Save a copy as a file",
  share: "Send a copy to another app",
  fileName: (day: string) => `jetwright-${day}.jsonl`,
  saved: (count: number) => `Copied: ${records(count)}.`,
  take: "Take a copy in",
  takeHint: "A .jsonl file from a copy or from another phone. Nothing here is overwritten.",
  choose: "Choose a file",
  fromLink: "A setup that came as a link",
  reading: (percent: number) => `Reading: ${percent} %`,
  keeping: (done: number, all: number) => `Keeping: ${done} of ${all}`,
  stop: "Stop",
  stopped: "Stopped. Nothing was taken in.",
  stoppedHalf: (count: number) =>
    `Stopped: ${records(count)} kept. Choose the file again to take in the rest.`,
  notOurs: (name: string) =>
    `“${name}” holds no record that can be read. A copy is a file whose every line begins with { and ends with }.`,
  unopened: (name: string) =>
    `“${name}” cannot be opened. Save it on this device first, then choose it again.`,
  found: (name: string, lines: number) => `“${name}”: ${lines === 1 ? "1 line" : `${lines} lines`}`,
  fresh: (count: number) => (count === 0 ? "Nothing new in it" : `${records(count)} to take in`),
  repeated: (count: number) => `${records(count)} here already, left as they are`,
  newerVersion: (count: number) =>
    `${records(count)} written by a newer version: kept as they are, used once this app is updated`,
  unknownKind: (count: number) => `${records(count)} of kinds this version does not know: kept, not used`,
  faulty: (count: number) => `${records(count)} with a fault: kept as written, not used`,
  leftOut: (count: number) => `${count === 1 ? "1 line" : `${count} lines`} cannot be taken in`,
  leftOutDo: "Save those lines as a file, to mend them",
  leftOutName: "jetwright-lines-to-mend.jsonl",
  problems: (count: number) => `What is wrong (${count})`,
  problemAt: (line: number) => `Line ${line}`,
  more: (count: number) => `and ${count} more`,
  takeIn: (count: number) => `Take in ${records(count)}`,
  takenIn: (count: number) => `Kept: ${records(count)}.`,
  cancel: "Leave it",
  storage: "Where it is kept",
  lasting: "The browser has promised to keep it: it is not cleared when the device runs short of room.",
  notLasting:
    "The browser has not promised to keep it: when the device runs very short of room, it may clear it. Ask it to keep it, and make copies.",
  lastingUnknown: "This browser does not say whether it keeps it for good: make copies.",
  askLasting: "Ask the browser to keep it",
  askedYes: "The browser will keep it.",
  askedNo:
    "The browser did not agree. It mostly does once the app is on the home screen or was used a few times.",
  room: (used: string, free: string) => `It takes up ${used}; about ${free} are free for it.`,
  low: "There is little room left. Free some on this device before it is full.",
  sevenDays:
    "This browser clears what a page keeps after seven days without a visit. Put the app on the home screen: there it stays.",
  privateWindow: "In a private window everything is gone once the window is closed: use a normal one.",
  notUsed: "Kept and not used",
  keptNewer: (count: number) => `${records(count)} written by a newer version. Update the app to use them.`,
  keptUnknown: (kinds: string) => `Records of kinds this version does not know: ${kinds}.`,
  keptFaulty: "Records that cannot be read. They are kept as they were written and go into every copy.",
};

export const take = {
  title: "A setup from another phone",
  back: "Bikes",
  reading: "Reading the link…",
  paste: "Paste the link here",
  pasteHint: "The whole address, as it came",
  open: "Open it",
  wouldCome: "This would come in:",
  about: (bikes: string) => `For ${bikes}`,
  here: "here already",
  other: "another record has its id: left out",
  kept: "kept, not used by this version",
  already: "All of it is on this device already.",
  known: "This bike is on this device: it is added to its story.",
  takeIn: "Take it in",
  leave: "Leave it",
  taken: "Kept.",
  toBike: "To the bike",
  unreadable: "Some of it cannot be read and would be left out.",
};
