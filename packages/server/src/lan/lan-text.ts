import encodeQR from "qr";
import type { Certificates } from "./certificate-folder.ts";
import { addressesFor, isOnNetwork, type LanNames } from "./lan-names.ts";

/** What the person at the terminal is told: where phones find the shop, and what to compare. */
export function lanText(
  { fingerprint, authorityName }: Certificates,
  names: LanNames,
  securePort: number,
  trustPort: number,
): string {
  const [page] = addressesFor(names, "http", trustPort);
  if (page === undefined || !isOnNetwork(names)) {
    return "This machine has no address of a private network (such as 192.168.1.7), so no phone can reach it.\n";
  }
  const lines = [
    "On the shop's network:",
    ...addressesFor(names, "https", securePort).map((address) => `  ${address}`),
    "A phone must be told once to trust it. Open this on the phone, or hold its camera here:",
    `  ${page}`,
    "",
    encodeQR(page, "ascii", { ecc: "low", border: 2 }),
    `The SHA-256 fingerprint that the phone must show for "${authorityName}":`,
    ...(fingerprint.match(/.{1,48}/g) ?? []).map((part) => `  ${part}`),
  ];
  return `${lines.join("\n")}\n`;
}
