const PLAIN: Readonly<Record<string, string>> = {
  "°": " deg ",
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "²": "2",
  "³": "3",
  "×": "x",
  "±": "+/-",
  "−": "-",
  "–": "-",
  "—": "-",
  "…": "...",
  "·": ".",
  "’": "'",
  "‘": "'",
  "“": '"',
  "”": '"',
  "─": "-",
  "━": "=",
  "│": "|",
  "┤": "|",
  "┼": "+",
  "╌": "-",
  "░": ":",
  "●": "#",
  "•": "*",
  "○": "o",
  λ: "lambda",
  "≤": "<=",
  "≥": ">=",
  "→": "->",
};

/** Text in plain ASCII: "1½ turns, 24 °C" becomes "1 1/2 turns, 24 C". What has no plain form becomes "?". */
export function asciiText(text: string): string {
  return text
    .replaceAll(/(\d)(?=[¼½¾])/g, "$1 ")
    .replaceAll(/ ?°(?=[CF])/g, " ")
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[^\n -~]/gu, (letter) => PLAIN[letter] ?? (letter === "\u001b" ? letter : "?"));
}
