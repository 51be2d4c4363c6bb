export const describe = {
  title: "The bike itself",
  intro: "What is said here holds for the whole story of the bike.",
  keep: "Keep it",
  kept: "Kept.",
  nothing: "Nothing was changed.",
  putAway: "Put the bike away",
  putAwayHint: "It moves to the end of the list. Its story stays.",
  backAgain: "Bring it back to the list",
  away: "Put away.",
  back: "Back on the list.",
  undo: "Undo",
  undone: "Taken back.",
};
