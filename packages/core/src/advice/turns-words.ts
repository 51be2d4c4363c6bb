/** Turns as a technician says them: quarters as fractions. */
export function turnsText(turns: number): string {
  const whole = Math.floor(turns + 1e-9);
  const quarter = Math.round((turns - whole) * 4);
  if (Math.abs(turns - whole - quarter / 4) > 0.02) return `${Number(turns.toFixed(2))}`;
  if (quarter === 4) return `${whole + 1}`;
  const fraction = ["", "¼", "½", "¾"][quarter]!;
  return whole === 0 && fraction !== "" ? fraction : `${whole}${fraction}`;
}

/** "1½ turns out", "1 turn out", "¾ turn out". */
export const turnsOutText = (turns: number): string =>
  `${turnsText(turns)} ${turns <= 1 ? "turn" : "turns"} out`;
