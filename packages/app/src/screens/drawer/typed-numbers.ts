/** Jets typed in a row: "165 170 175x2" is one 165, one 170 and two 175. Null where any of it is no jet number. */
export function typedJets(
  typed: string,
): readonly { readonly number: number; readonly count: number }[] | null {
  const words = typed
    .trim()
    .split(/[\s;]+/)
    .filter((word) => word !== "");
  const jets: { number: number; count: number }[] = [];
  for (const word of words) {
    const found = /^#?(\d{1,4}(?:[.,]\d{1,2})?)(?:[x×*](\d{1,3}))?,?$/i.exec(word);
    const number = found === null ? Number.NaN : Number(found[1]!.replace(",", "."));
    const count = Number(found?.[2] ?? 1);
    if (!(number >= 5 && number < 2000) || count < 1) return null;
    jets.push({ number, count });
  }
  return jets.length > 0 ? jets : null;
}

/** Numbers in a row, each read as the field reads one; null where one cannot be read. */
export function typedRow(typed: string, read: (word: string) => number | null): readonly number[] | null {
  const words = typed
    .trim()
    .split(/[\s;]+/)
    .filter((word) => word !== "");
  const values = words.map(read);
  return values.length > 0 && values.every((value) => value !== null) ? (values as number[]) : null;
}
