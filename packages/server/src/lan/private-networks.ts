import { BlockList, isIPv6 } from "node:net";

/** A block of addresses, as its first one and how many leading bits all of them share. */
export interface Network {
  readonly address: string;
  readonly bits: number;
}

/**
 * Addresses that never lead out of a building or a machine, the likeliest of a shop first. Sources (numbers from
 * memory): RFC 1918; RFC 6598 (100.64/10); RFC 3927 (169.254/16); RFC 4193 (fc00::/7); RFC 4291 (fe80::/10, ::1);
 * RFC 1122 (127/8).
 */
export const PRIVATE_NETWORKS: readonly Network[] = [
  { address: "192.168.0.0", bits: 16 },
  { address: "10.0.0.0", bits: 8 },
  { address: "172.16.0.0", bits: 12 },
  { address: "100.64.0.0", bits: 10 },
  { address: "169.254.0.0", bits: 16 },
  { address: "fc00::", bits: 7 },
  { address: "fe80::", bits: 10 },
  { address: "127.0.0.0", bits: 8 },
  { address: "::1", bits: 128 },
];

const BLOCKS = PRIVATE_NETWORKS.map(({ address, bits }) => {
  const block = new BlockList();
  block.addSubnet(address, bits, isIPv6(address) ? "ipv6" : "ipv4");
  return block;
});

/** Place of an address in PRIVATE_NETWORKS; -1 for one that may lead out. */
export const privateNetworkOf = (address: string): number =>
  BLOCKS.findIndex((block) => block.check(address, isIPv6(address) ? "ipv6" : "ipv4"));
