import encodeQR from "qr";

/** White squares round a code, as the standard asks (ISO/IEC 18004: four). */
const QUIET = 4;

/** A QR code as one path of squares a unit wide, with how many units the whole is across. */
export function qrPath(text: string): { readonly path: string; readonly size: number } {
  const rows = encodeQR(text, "raw", { ecc: "low", border: QUIET });
  let path = "";
  rows.forEach((row, y) => {
    for (let x = 0; x < row.length; x++) {
      if (!row[x]) continue;
      let end = x;
      while (row[end]) end++;
      path += `M${x} ${y}h${end - x}v1h${x - end}z`;
      x = end;
    }
  });
  return { path, size: rows.length };
}
