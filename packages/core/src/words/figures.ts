/** A figure as it stands in a text, from a number or from one written with a point, such as `x.toFixed(1)`. */
export type Figure = (plain: number | string) => string;

/** With a decimal point: 3.5. */
export const withPoint: Figure = (plain) => `${plain}`;

/** With a decimal comma: 3,5. */
export const withComma: Figure = (plain) => `${plain}`.replace(".", ",");

/** Turns as a technician says them: quarters as fractions, anything else with two decimals at most. */
export function turnsText(turns: number, figure: Figure = withPoint): string {
  const whole = Math.floor(turns + 1e-9);
  const quarter = Math.round((turns - whole) * 4);
  if (Math.abs(turns - whole - quarter / 4) > 0.02) return figure(Number(turns.toFixed(2)));
  if (quarter === 4) return `${whole + 1}`;
  const fraction = ["", "¼", "½", "¾"][quarter]!;
  return whole === 0 && fraction !== "" ? fraction : `${whole}${fraction}`;
}
