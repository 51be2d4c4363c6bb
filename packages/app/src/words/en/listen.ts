import { soundFigures } from "./sound-figures.ts";

/** A figure of a take: its name, and the figure with its unit. */
export const listen = {
  title: "Listen to the engine",
  back: "Bike",
  caution:
    "Outdoors only: exhaust gas kills. Bike on a stand, in neutral, nobody in front or behind. Wear ear protection, keep a hand on the kill switch, and never hold the throttle wide open without load.",
  made: "The figures come from tests on made sounds. No real engine has been measured with this yet: trust the picture and your ears first.",
  guide:
    "Engine warm, phone an arm's length beside the silencer, out of the wind. Three seconds idle, snap it open, let it fall; three times.",
  start: "Start listening",
  stop: (seconds: string) => `Stop (${seconds} s)`,
  load: "Load a recording",
  rpm: "rpm",
  reckoning: "Reading the sound …",
  stillOn: (names: string) =>
    `This browser keeps its own sound processing on (${names}). It may take the idle away as noise; a recorder app and "Load a recording" is safer.`,
  troubles: {
    insecure:
      "This page was not opened over a secure address, so the browser gives no microphone. Loading a recording works.",
    denied:
      "The microphone is not allowed. Allow it in the browser's settings for this page, or load a recording.",
    none: "No microphone was found. Load a recording instead.",
    busy: "The microphone did not start; another program may hold it. Close that, or load a recording.",
  },
  cannotDecode: "The browser cannot read this file. Save it as WAV, MP3 or M4A and load it again.",
  notUsed: "Not good enough to count",
  doubts: {
    "no-engine":
      "No engine can be heard clearly in the first two seconds. Go nearer, shield the microphone from wind, and start with three seconds of idle.",
    clipped: "The recording is overdriven: its peaks are cut off. Hold the phone farther away.",
    hum: "The tone never changes at all, as mains hum does and no engine can. Move away from what hums.",
    knocking: "What is heard beats as hammering or claps do, not as an engine fires.",
    "two-sounds":
      "Something else nearly as loud beats along: another engine, a whine or the wind. Record this engine alone.",
    "not-an-engine": "The speed leaps about as talk or music does and no crankshaft can.",
    "no-idle": "There is no idle in it to measure from. Start with three seconds of idle.",
    moving: "It rides past: only a bike standing still gives its true speed.",
    "hint-disagrees":
      "The idle sounds like half of the idle heard last time. Read the idle with a counter, and record again.",
  },
  heard: "What was heard",
  what: "Measured",
  now: "Now",
  before: "Last time",
  good: "Good take",
  figures: soundFigures,
  hung: "The revs hung before they fell: lean down low, or a leak. Look for the leak before touching a jet.",
  stalled: "It died after the throttle closed.",
  dived: "The revs dived below idle: rich down low, or the idle set too low.",
  sure: (tenths: string) => `The weakest of these is right about ${tenths} times in ten, on made sounds.`,
  againstGood: (day: string) => `Against the good take of ${day}`,
  againstLast: (day: string) => `Against the last take, ${day}`,
  noDifference: "Nothing differs beyond what one try does from the next.",
  differs: {
    idleRpm: {
      more: (by: string) => `Idles ${by} higher.`,
      less: (by: string) => `Idles ${by} lower.`,
    },
    hangSeconds: {
      more: (by: string) => `Hangs ${by} longer after closing.`,
      less: (by: string) => `Hangs ${by} shorter after closing.`,
    },
    undershootPercent: {
      more: (by: string) => `Dives ${by} deeper below idle.`,
      less: (by: string) => `Dives ${by} less below idle.`,
    },
    settleSeconds: {
      more: (by: string) => `Takes ${by} longer to settle at idle.`,
      less: (by: string) => `Settles at idle ${by} sooner.`,
    },
    halvingSeconds: {
      more: (by: string) => `Falls more slowly: ${by} longer to lose half its speed.`,
      less: (by: string) => `Falls faster: ${by} less to lose half its speed.`,
    },
    delaySeconds: {
      more: (by: string) => `Answers about ${by} later to a snap.`,
      less: (by: string) => `Answers about ${by} sooner to a snap.`,
    },
    riseSeconds: {
      more: (by: string) => `Takes ${by} longer to rise.`,
      less: (by: string) => `Rises ${by} faster.`,
    },
    bogPercent: {
      more: (by: string) => `Sags ${by} deeper before it rises.`,
      less: (by: string) => `Sags ${by} less before it rises.`,
    },
    huntingPercent: {
      more: (by: string) => `The idle swings more by itself, by ${by}.`,
      less: (by: string) => `The idle swings less by itself, by ${by}.`,
    },
  },
  keepGood: "Keep; it runs right: hold later takes against this",
  keepSound: (megabytes: string) => `Keep the sound too (${megabytes} MB, on this device)`,
  soundLost:
    "Not kept: this device has no room for the sound, or the page is not on a secure address. The figures can be kept without it.",
  takes: "Takes on record",
  goodMark: "good",
  see: "Its speed against time",
  play: "Play the sound",
  stopSound: "Stop the sound",
  notHere: "Its sound is not on this device.",
  drop: "Delete the sound",
  dropped: "Sound deleted. The figures stay.",
  undo: "Undo",
  undone: "Taken back.",
  noTake: "What was heard",
  noSpeed: "Its speed was not written down.",
  heardOn: (day: string) => `Heard on ${day}`,
  lineOf: "Engine speed against time",
  idleLine: "idle",
  hangWords: (seconds: string, percent: string) =>
    `Between the closings it hung ${seconds} s above idle; shaded where it stays more than ${percent} % above.`,
  hear: (second: string) => `Hear second ${second}`,
  pictureOf: "Engine speed against time, drawn over the sound it was read from",
  pictureHelp:
    "The bands are where the sound stands out: multiples of the firing. The line is the speed read from them. Believe it where it moves as the bands move. Tap to hear that second.",
  kinds: {
    idle: "idle",
    hunting: "hunting",
    snap: "opened",
    chop: "closed",
    stall: "died",
    skipping: "skipping",
  },
  keep: "Keep these figures",
  kept: "Kept",
  save: "Save the recording as a file",
  notKept: "The recording itself is gone when you leave this page, unless you keep or save it.",
};
