export const right = {
  mark: "It runs right like this",
  hint: "Tap it after a good ride in the air noted now. The sheet, the chart and the next bike's starting point count from it.",
  airFirst:
    "If it runs right like this, note the air of today first: right in one air is not right in another.",
  noteAir: "Note the air",
  marked: "Written down: right in this air.",
  undo: "Undo",
  undone: "Taken back.",
};
