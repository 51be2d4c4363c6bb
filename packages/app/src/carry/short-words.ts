/**
 * What records say again and again, each told by one letter that JSON text never holds by itself (it writes control
 * characters as escapes). Links live on paper: never change or reorder these; another table is another first letter
 * of the link.
 */
const TABLE_1: readonly string[] = [
  '","kind":"bike-described","v":1,"at":"',
  '","kind":"setup-fitted","v":1,"at":"',
  '","kind":"air-measured","v":1,"at":"',
  '","kind":"fuel-used","v":1,"at":"',
  '{"id":"',
  '","bike":"',
  '","body":{"',
  'asFound":true,"clip":{"groove":',
  '"how":"read by eye"',
  '"how":"measured"',
  '"how":"told"',
  'carburetor":{"bore":{"diameterMm":',
  ',"shape":"round"},"jetNumbering":"bore","nozzle":"primary","screw":"air"',
  '"jetNumbering":"',
  '"seatToJetMm":',
  '"engine":{"',
  '"displacementCc":',
  '"strokes":2},"name":"',
  '"strokes":4},"name":"',
  ',"main":{',
  ',"pilot":{',
  ',"number":',
  ',"needle":{"groovePitchMm":',
  ',"grooves":5,',
  ',"marks":"',
  ',"screw":{',
  ',"slide":{"cutawayMm":',
  '"heightM":',
  '"straightDiameterMm":',
  '"tapers":[{"includedAngleDeg":',
];

/** Control characters but the line feed, which parts the records. */
const LETTERS = Array.from({ length: 31 }, (_, i) => String.fromCharCode(i + 1)).filter((c) => c !== "\n");

/** The text with each of the table's words as its letter. Text that holds control characters stays as it is. */
export function shortened(text: string): string {
  if (LETTERS.some((letter) => text.includes(letter))) return text;
  return TABLE_1.reduce((short, word, i) => short.replaceAll(word, LETTERS[i]!), text);
}

/** The text with the letters written out again. */
export const lengthened = (text: string): string =>
  TABLE_1.reduceRight((long, word, i) => long.replaceAll(LETTERS[i]!, () => word), text);
