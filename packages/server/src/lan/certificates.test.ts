import { spawnSync } from "node:child_process";
import { X509Certificate } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { isIPv6 } from "node:net";
import type { NetworkInterfaceInfo } from "node:os";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { addressBytes, maskBytes } from "./address-bytes.ts";
import { AUTHORITY_FILE, certificatesIn, SERVER_FILE } from "./certificate-folder.ts";
import { makeAuthority, makeServerCertificate } from "./certificates.ts";
import { DAY } from "./days.ts";
import { addressesFor, lanNames } from "./lan-names.ts";
import { privateNetworkOf } from "./private-networks.ts";

const top = mkdtempSync(join(tmpdir(), "jetwright-certificates-"));
afterAll(() => rmSync(top, { recursive: true, force: true }));

const NOW = Date.UTC(2026, 10, 25, 12);
const NAMES = { dns: ["bench.local", "localhost"], ip: ["192.168.1.7", "fd00::7", "127.0.0.1", "::1"] };

async function good(folder: string, names = NAMES, now = NOW) {
  const found = await certificatesIn(folder, names, "bench", now);
  if (!found.ok) throw new Error(found.detail);
  return found.value;
}

const network = (address: string, internal = false): NetworkInterfaceInfo => {
  const rest = { address, internal, netmask: "", mac: "", cidr: null };
  return isIPv6(address) ? { ...rest, family: "IPv6", scopeid: 0 } : { ...rest, family: "IPv4" };
};

describe("what the machine is called", () => {
  // The edges of the blocks as RFC 1918, 6598, 3927, 4193 and 4291 give them (from memory).
  test.each([
    ["192.168.0.0", "192.168.255.255", "192.167.255.255", "192.169.0.0"],
    ["10.0.0.0", "10.255.255.255", "9.255.255.255", "11.0.0.0"],
    ["172.16.0.0", "172.31.255.255", "172.15.255.255", "172.32.0.0"],
    ["100.64.0.0", "100.127.255.255", "100.63.255.255", "100.128.0.0"],
    ["169.254.0.0", "169.254.255.255", "169.253.255.255", "169.255.0.0"],
    ["fc00::", "fdff:ffff::", "fbff::", "fe00::"],
    ["fe80::", "febf::", "fe7f::", "fec0::"],
    ["::1", "::1", "::", "::2"],
  ])("the block %s to %s is private, %s and %s are not", (first, last, before, after) => {
    expect(privateNetworkOf(first)).toBeGreaterThanOrEqual(0);
    expect(privateNetworkOf(last)).toBe(privateNetworkOf(first));
    expect([before, after].map(privateNetworkOf)).toEqual([-1, -1]);
  });

  test("private addresses are given, the likeliest of a shop first; public and link-local IPv6 ones are not", () => {
    const names = lanNames(
      {
        lo: [network("127.0.0.1", true), network("::1", true)],
        docker0: [network("172.17.0.1")],
        eth0: [network("203.0.113.9"), network("fe80::1"), network("fd00::7"), network("2001:db8::1")],
        wlan0: [network("192.168.1.7")],
        gone: undefined,
      },
      "Bench-PC.example.org",
    );
    expect(names).toEqual({
      dns: ["bench-pc.local", "localhost"],
      ip: ["192.168.1.7", "172.17.0.1", "fd00::7", "127.0.0.1", "::1"],
    });
    expect(addressesFor(names, "https", 4443)).toEqual([
      "https://192.168.1.7:4443/",
      "https://172.17.0.1:4443/",
      "https://[fd00::7]:4443/",
      "https://bench-pc.local:4443/",
    ]);
  });

  test.each(["", "localhost", "under_score", "-x", "naïve"])(
    "the host name %o gives no .local name",
    (name) => {
      expect(lanNames({}, name)).toEqual({ dns: ["localhost"], ip: ["127.0.0.1", "::1"] });
    },
  );

  // RFC 4291, 2.2 and 2.3 (from memory).
  test("addresses and masks as bytes", () => {
    const hex = (address: string) => Buffer.from(addressBytes(address)).toString("hex");
    expect(hex("192.168.1.7")).toBe("c0a80107");
    expect(hex("::")).toBe("0".repeat(32));
    expect(hex("2001:db8:0:0:8:800:200c:417a")).toBe("20010db80000000000080800200c417a");
    expect(hex("2001:db8::8:800:200c:417a")).toBe(hex("2001:db8:0:0:8:800:200c:417a"));
    expect(hex("ff01::101")).toBe("ff010000000000000000000000000101");
    expect(hex("::ffff:129.144.52.38")).toBe("00000000000000000000ffff81903426");
    expect([...maskBytes(12, 4)]).toEqual([255, 240, 0, 0]);
    expect([...maskBytes(32, 4)]).toEqual([255, 255, 255, 255]);
    expect([...maskBytes(7, 16)].slice(0, 2)).toEqual([254, 0]);
  });
});

describe("the files", () => {
  test("are made once, for this user's eyes alone, and read again", async () => {
    const folder = join(top, "once");
    const first = await good(folder);
    for (const name of [AUTHORITY_FILE, SERVER_FILE])
      expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600);
    expect(statSync(folder).mode & 0o777).toBe(0o700);
    expect(await good(folder)).toEqual({ ...first, renewed: false });
    expect(first.renewed).toBe(true);
    const server = new X509Certificate(first.server.certificate);
    const days = (Date.parse(server.validTo) - Date.parse(server.validFrom)) / DAY;
    expect(days).toBeLessThanOrEqual(397);
    expect(days).toBeGreaterThan(390);
    expect(Buffer.from(first.authority).toString("latin1")).not.toContain("PRIVATE");
    expect(first.fingerprint).toMatch(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/);
  });

  test("a changed address or name, and a near end, give a new certificate of the same authority", async () => {
    const folder = join(top, "changes");
    const { authority, server } = await good(folder);
    const elsewhere = { ...NAMES, ip: ["10.0.0.3", ...NAMES.ip.slice(1)] };
    const moved = await good(folder, elsewhere);
    expect(moved).toMatchObject({ authority, renewed: true });
    expect(new X509Certificate(moved.server.certificate).checkIP("10.0.0.3")).toBeDefined();
    expect(new X509Certificate(moved.server.certificate).checkIP("192.168.1.7")).toBeUndefined();
    // Fewer names count as a change too: the certificate promises no more than what is there.
    expect((await good(folder, { ...elsewhere, dns: ["localhost"] })).renewed).toBe(true);
    expect((await good(folder)).server.certificate).not.toBe(server.certificate);
    expect((await good(folder, NAMES, NOW + 360 * DAY)).renewed).toBe(false);
    const later = await good(folder, NAMES, NOW + 370 * DAY);
    expect(later).toMatchObject({ authority, renewed: true });
    expect(Date.parse(new X509Certificate(later.server.certificate).validTo)).toBeGreaterThan(
      NOW + 760 * DAY,
    );
    // A clock that was put back finds a certificate that does not hold yet.
    expect((await good(folder)).renewed).toBe(true);
  });

  test("near its authority's end a server certificate ends with it and is not made anew each time", async () => {
    const folder = join(top, "old");
    const { authority } = await good(folder);
    const late = NOW + 3640 * DAY;
    const { server } = await good(folder, NAMES, late);
    const ends = (pem: string | Uint8Array) => new X509Certificate(pem).validTo;
    expect(ends(server.certificate)).toBe(ends(authority));
    expect((await good(folder, NAMES, late)).renewed).toBe(false);
    const over = await certificatesIn(folder, NAMES, "bench", NOW + 3650 * DAY);
    expect(over).toMatchObject({ ok: false, reason: "certificate-file" });
  });

  test.each([
    [AUTHORITY_FILE, () => "not a key"],
    [AUTHORITY_FILE, () => ""],
    [AUTHORITY_FILE, (text: string) => text.slice(0, 300)],
    [AUTHORITY_FILE, (text: string) => text.slice(text.indexOf("-----BEGIN CERT"))],
    [SERVER_FILE, (text: string) => text.replace(/[A-Za-z0-9]{30}/, "A".repeat(30))],
    [SERVER_FILE, () => "\0".repeat(500)],
  ])("a damaged %s is refused with what to do, and left as it is", async (name, damage) => {
    const folder = mkdtempSync(join(top, "damaged-"));
    await good(folder);
    const both = () => [AUTHORITY_FILE, SERVER_FILE].map((one) => readFileSync(join(folder, one), "latin1"));
    const path = join(folder, name);
    writeFileSync(path, damage(readFileSync(path, "latin1")));
    const before = both();
    const found = await certificatesIn(folder, NAMES, "bench", NOW);
    expect(found).toMatchObject({ ok: false, reason: "certificate-file" });
    expect(found.ok ? "" : found.detail).toMatch(new RegExp(`${name} is damaged.*Nothing was changed.*away`));
    expect(both()).toEqual(before);
  });

  test("another key's certificate is a damaged file, and another authority's is replaced", async () => {
    const [a, b] = [mkdtempSync(join(top, "a-")), mkdtempSync(join(top, "b-"))];
    await good(a);
    await good(b);
    const theirs = readFileSync(join(b, SERVER_FILE), "latin1");
    writeFileSync(join(a, SERVER_FILE), theirs);
    expect((await good(a)).renewed).toBe(true);
    const ours = readFileSync(join(a, SERVER_FILE), "latin1");
    const certificateOf = (text: string) => text.slice(text.indexOf("-----BEGIN CERT"));
    writeFileSync(join(a, SERVER_FILE), ours.replace(certificateOf(ours), certificateOf(theirs)));
    expect(await certificatesIn(a, NAMES, "bench", NOW)).toMatchObject({ ok: false });
  });
});

// Outside check: OpenSSL reads what was made, by the rules of RFC 5280 (-x509_strict).
const openssl = spawnSync("openssl", ["version"]).status === 0;
if (!openssl) console.warn("There is no openssl here: the certificates are not checked by it.");

describe.skipIf(!openssl)("OpenSSL", () => {
  const folder = join(top, "openssl");
  const file = (name: string, text: string) => {
    writeFileSync(join(top, name), text);
    return join(top, name);
  };
  const verify = (authority: string, server: string, ...more: string[]) =>
    spawnSync(
      "openssl",
      ["verify", "-x509_strict", "-purpose", "sslserver", "-CAfile", authority, ...more, server],
      {
        encoding: "utf8",
      },
    );

  test("accepts every name of the certificate, and no other", async () => {
    const now = Date.now();
    const made = await good(folder, NAMES, now);
    const authority = file("ca.pem", new X509Certificate(made.authority).toString());
    const server = file("server.pem", made.server.certificate);
    for (const address of NAMES.ip)
      expect(verify(authority, server, "-verify_ip", address).stdout).toMatch(/OK/);
    for (const name of NAMES.dns)
      expect(verify(authority, server, "-verify_hostname", name).stdout).toMatch(/OK/);
    expect(verify(authority, server, "-verify_ip", "192.168.1.8").status).not.toBe(0);
    expect(verify(authority, server, "-verify_hostname", "example.org").status).not.toBe(0);
    expect(verify(server, server).status).not.toBe(0);
  });

  test.each([
    { dns: ["www.example.org"], ip: [] },
    { dns: ["localhost.example"], ip: [] },
    { dns: [], ip: ["8.8.8.8"] },
    { dns: [], ip: ["2001:db8::1"] },
  ])("refuses what the authority may not speak for: $dns $ip", async (names) => {
    const now = Date.now();
    const authority = await makeAuthority("test", now);
    const forged = await makeServerCertificate(authority, names, now);
    const answer = verify(file("forger.pem", authority.certificate), file("forged.pem", forged.certificate));
    expect(answer.stderr).toContain("permitted subtree violation");
  });
});
