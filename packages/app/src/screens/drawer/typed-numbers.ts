import { readJetNumber } from "@jetwright/core";

export interface TypedJets {
  readonly jets: readonly { readonly number: number; readonly count: number }[];
  /** Why the first piece that is no jet is none; null when all was read. */
  readonly wrong: { readonly reason: string; readonly detail: string } | null;
}

/** "175 x 2" is one piece; a comma or semicolon between numbers parts them, one before one or two last digits does not. */
const pieces = (typed: string): readonly string[] =>
  typed
    .replace(/\s*[x×*]\s*(?=\d)/gi, "x")
    .replace(/[,;](?=\s|$)/g, " ")
    .replace(/[,;](?=\d{3})/g, " ")
    .split(/[\s;]+/)
    .filter((piece) => piece !== "");

/** Jets typed in a row: "165 170 175x2" is one 165, one 170 and two 175; "2x175" is two 175 as well. */
export function typedJets(typed: string): TypedJets {
  const jets: { number: number; count: number }[] = [];
  for (const piece of pieces(typed)) {
    const [first, second, ...more] = piece.split("x");
    const [a, b] = [readJetNumber(first ?? ""), readJetNumber(second ?? "")];
    const leads = /^[1-9]$/.test(first ?? "") && b.ok;
    const number = leads ? b : a;
    const times = second === undefined ? "1" : leads ? first! : second;
    const counted = /^\d{1,3}$/.test(times) && Number(times) > 0 && more.length === 0;
    if (!number.ok) return { jets, wrong: number };
    if (!counted) {
      const detail = `"${piece}" has no count I can read. Type 175x2 for two of them.`;
      return { jets, wrong: { reason: "not a count", detail } };
    }
    jets.push({ number: number.value, count: Number(times) });
  }
  return { jets, wrong: null };
}
