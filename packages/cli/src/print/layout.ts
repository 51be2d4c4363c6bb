/** Words broken into lines of at most `width`; a longer word keeps its line. Line breaks in the text hold. */
export function wrap(text: string, width: number): string[] {
  return text.split("\n").flatMap((paragraph) => {
    const lines: string[] = [];
    let line = "";
    for (const word of paragraph.split(" ")) {
      if (line !== "" && line.length + 1 + word.length > width) {
        lines.push(line);
        line = word;
      } else {
        line = line === "" ? word : `${line} ${word}`;
      }
    }
    return [...lines, line];
  });
}

/** A paragraph whose lines after the first are indented. */
export const hanging = (first: string, text: string, width: number): string[] =>
  wrap(text, width - first.length).map((line, i) => (i === 0 ? first : " ".repeat(first.length)) + line);

/** "Expect    It drops straight to idle": a word in the margin, the text beside it. */
export const labelled = (label: string, text: string, width: number, margin = 10): string[] =>
  hanging(label.padEnd(margin), text, width);

/** Several texts under one word in the margin. */
export const labelledList = (
  label: string,
  texts: readonly string[],
  width: number,
  marks: (i: number) => string = () => "",
  margin = 10,
): string[] =>
  texts.flatMap((text, i) => hanging((i === 0 ? label : "").padEnd(margin) + marks(i), text, width));

/** Columns set beside one another: the first flush left, the others flush right. */
export function table(rows: readonly (readonly string[])[], gap = 2): string[] {
  const widths: number[] = [];
  for (const row of rows) {
    for (const [i, cell] of row.entries()) widths[i] = Math.max(widths[i] ?? 0, cell.length);
  }
  return rows.map((row) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!)))
      .join(" ".repeat(gap))
      .trimEnd(),
  );
}
