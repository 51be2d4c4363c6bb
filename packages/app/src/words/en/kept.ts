export const records = (count: number): string => (count === 1 ? "1 record" : `${count} records`);

/** What any screen may have to say of copies: that one is due, and that something was not kept. */
export const kept = {
  due: "The last copy is old",
  dueNever: "No copy yet",
  dueWords: (since: number) => `${records(since)} stand on this device alone.`,
  dueDo: "Make a copy",
  notKept: {
    "storage-full":
      "Not kept: this phone's storage is full. Free some space and keep it again; nothing is lost.",
    "storage-closed":
      "Not kept: the browser would not open its storage. A private window or a blocked site can do that. Copy the log to a file, then open the page in a normal window.",
    "storage-lost":
      "Not kept: this page has lost its storage, as happens when a newer version is open in another tab. Load the page again, then write it down; what was kept before is there.",
  },
};

export const update = {
  there: "A new version is there.",
  hint: "Nothing written is touched.",
  load: "Load it",
  later: "Later",
};
