import { qrPath } from "../../carry/qr-path.ts";

/** A QR code, black on white in either theme: scanners want it so. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const { path, size } = qrPath(text);
  return (
    <svg
      class="qr"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shape-rendering="crispEdges"
    >
      <path class="qr-ground" d={`M0 0h${size}v${size}H0z`} />
      <path class="qr-ink" d={path} />
    </svg>
  );
}
