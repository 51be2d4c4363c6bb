import { isIPv6 } from "node:net";
import type { NetworkInterfaceInfo } from "node:os";
import { privateNetworkOf } from "./private-networks.ts";

/** What this machine is called on the shop's network. */
export interface LanNames {
  /** Names; the one that others may use ends in ".local". */
  readonly dns: readonly string[];
  /** Addresses of the network, the likeliest for a phone first, and of the machine to itself last. */
  readonly ip: readonly string[];
}

const LOOPBACK = ["127.0.0.1", "::1"];

/**
 * The names and addresses to answer under: those of private networks alone. Whether the network knows the ".local"
 * name hangs on the machine (RFC 6762). Link-local IPv6 is left out: a browser cannot be given its zone.
 */
export function lanNames(
  interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
  hostname: string,
): LanNames {
  const found = Object.values(interfaces)
    .flatMap((one) => one ?? [])
    .filter(({ internal, address }) => !internal && !/^fe80:/i.test(address))
    .map(({ address }) => ({ address, place: privateNetworkOf(address) }))
    .filter(({ place }) => place >= 0)
    .sort((a, b) => a.place - b.place || (a.address < b.address ? -1 : 1))
    .map(({ address }) => address);
  const [label = ""] = hostname.toLowerCase().split(".");
  const named = /^[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?$/.test(label) && label !== "localhost";
  return {
    dns: named ? [`${label}.local`, "localhost"] : ["localhost"],
    ip: [...new Set([...found, ...LOOPBACK])],
  };
}

/** Whether other machines can reach this one by an address. */
export const isOnNetwork = ({ ip }: LanNames): boolean => ip.some((address) => !LOOPBACK.includes(address));

/** Where other machines reach a port of this one, the likeliest first. */
export function addressesFor({ dns, ip }: LanNames, scheme: "http" | "https", port: number): string[] {
  const hosts = [
    ...ip.filter((address) => !LOOPBACK.includes(address)).map((one) => (isIPv6(one) ? `[${one}]` : one)),
    ...dns.filter((name) => name !== "localhost"),
  ];
  return hosts.map((host) => `${scheme}://${host}:${port}/`);
}
