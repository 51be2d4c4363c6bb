/** Letters to add, drop, change or swap with a neighbour to turn one word into the other. */
export function editDistance(a: string, b: string): number {
  let older: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const current = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let best = Math.min(previous[j]! + 1, current[j - 1]! + 1, previous[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, older[j - 2]! + 1);
      }
      current.push(best);
    }
    older = previous;
    previous = current;
  }
  return previous[b.length]!;
}

const startAlike = (a: string, b: string): boolean =>
  Math.min(a.length, b.length) >= 4 && (a.startsWith(b) || b.startsWith(a));

/** Parts of a hyphenated word that the other has as well, or begins with: "crisp" in "answers-crisply". */
function sharedParts(a: string, b: string): number {
  const parts = b.split("-");
  return a
    .split("-")
    .filter((part) => part.length > 2 && parts.some((other) => other === part || startAlike(part, other)))
    .length;
}

/** The known words most like a word, best first, at most three; empty when none is near. */
export function closestWords(word: string, known: Iterable<string>): string[] {
  const asked = word
    .slice(0, 64)
    .toLowerCase()
    .replaceAll(/[\s_]+/g, "-");
  const near: { word: string; score: number }[] = [];
  for (const candidate of known) {
    const distance = editDistance(asked, candidate.toLowerCase());
    const limit = Math.max(2, Math.floor(Math.max(asked.length, candidate.length) / 3));
    const shared = sharedParts(asked, candidate.toLowerCase());
    if (distance <= limit || shared > 0) near.push({ word: candidate, score: distance - 4 * shared });
  }
  near.sort((a, b) => a.score - b.score || (a.word < b.word ? -1 : 1));
  return near.slice(0, 3).map(({ word: found }) => found);
}

/** 'Did you mean "a" or "b"?', or the sentence for when nothing is near. */
export function didYouMean(word: string, known: Iterable<string>, otherwise: string): string {
  const near = closestWords(word, known);
  return near.length === 0 ? otherwise : `Did you mean ${near.map((found) => `"${found}"`).join(" or ")}?`;
}
