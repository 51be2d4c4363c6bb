/** Pictures: taken, shown, removed. */
export const photos = {
  label: "Picture of it",
  labelNow: "Picture of it as it is now",
  plug: "Picture of the plug",
  take: "Take a picture",
  choose: "Choose a picture",
  working: "One moment …",
  hint: "If you like. It is made smaller, and the place where it was taken is left out.",
  kept: "The picture is kept on this phone.",
  unprotected:
    "No picture kept: this page was opened over a connection without protection, and the browser gives no fingerprint for pictures there. All else works.",
  full: "No picture kept: the phone's storage would not take it. All else is kept.",
  unreadable: (name: string) =>
    `No picture kept: this browser cannot open “${name}” as a picture. It may be damaged, too large for this phone, or of another kind. Take it anew, or save it as a JPEG first. All else is kept.`,
  tooLarge: (name: string) =>
    `No picture kept: “${name}” is larger than 100 MB. Make it smaller first. All else is kept.`,
  picture: "Picture",
  open: (what: string, day: string, count: number) =>
    count === 1 ? `Picture: ${what}, ${day}` : `${count} pictures: ${what}, the newest ${day}`,
  notHere: "not here",
  coming: "coming",
  /** Why a picture cannot be shown: of no shop; on its way from it; not there either; the shop out of reach. */
  lack: {
    missing:
      "This picture is not on this phone: it was taken on another one, or it has been cleared here. What is written about it stands.",
    coming: "This picture is on its way from the shop …",
    "not-there":
      "This picture is not on this phone, and the shop has not got it yet: it comes when the phone that took it has been in reach of the shop.",
    away: "This picture is not on this phone, and the shop cannot be reached now. Look again when it can.",
  },
  by: (person: string) => `by ${person}`,
  newer: "Newer",
  older: "Older",
  place: (at: number, all: number) => `${at} of ${all}`,
  larger: "Larger",
  whole: "The whole picture",
  save: "Save as a file",
  fileName: (day: string) => `jetwright-picture-${day}.jpg`,
  remove: "Remove this picture",
  removed: "Removed. After a day it is deleted from this phone.",
  undo: "Undo",
  undone: "The picture is back.",
  close: "Close",
  stored: (count: number, size: string) =>
    `${count === 1 ? "1 picture" : `${count} pictures`} on this phone: ${size}.`,
  notInCopy:
    "The copy names the pictures and does not hold them. Each can be saved as a file of its own, from where it is shown.",
};
