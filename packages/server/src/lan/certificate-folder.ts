import { createPrivateKey, X509Certificate } from "node:crypto";
import { closeSync, fsyncSync, mkdirSync, openSync, readFileSync, renameSync, writeSync } from "node:fs";
import { join } from "node:path";
import { accept, type Outcome, refuse } from "@jetwright/core";
import type { KeyAndCertificate } from "./certificates.ts";
import { DAY } from "./days.ts";
import type { LanNames } from "./lan-names.ts";

/** The shop's own authority and the certificate the server answers with. The authority's key stays in its file. */
export interface Certificates {
  /** The authority's certificate, DER: what phones are given. */
  readonly authority: Uint8Array<ArrayBuffer>;
  readonly authorityName: string;
  /** SHA-256 of that, as pairs of hexadecimal digits with colons. */
  readonly fingerprint: string;
  /** The server's key and certificate, PEM. */
  readonly server: KeyAndCertificate;
  /** Whether the server's was made just now. */
  readonly renewed: boolean;
}

export const AUTHORITY_FILE = "authority.pem";
export const SERVER_FILE = "server.pem";
/** A server certificate is made anew when it has less left. */
const RENEW_DAYS = 30;

/** Loaded on the days when something is to be made. */
const maker = () => import("./certificates.ts");

/**
 * Reads the certificates of a folder and makes those that are not there: the authority once, the server's again when
 * its names changed or its end is near. A file that cannot be used is never overwritten: reason "certificate-file".
 */
export async function certificatesIn(
  folder: string,
  names: LanNames,
  machine: string,
  now: number,
): Promise<Outcome<Certificates, "certificate-file">> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const authorityPath = join(folder, AUTHORITY_FILE);
  const startAnew = `put a copy of it back, or move it and ${SERVER_FILE} away; a new one is made then, which every phone must be told to trust`;
  let found = read(authorityPath);
  if (found === "damaged") {
    return refuse(
      "certificate-file",
      `${authorityPath} is damaged: it does not hold a key and its certificate. Nothing was changed. Either ${startAnew}.`,
    );
  }
  if (found === null) {
    const made = new Date(now).toISOString().slice(0, 10);
    const { makeAuthority } = await maker();
    found = await makeAuthority(`Jetwright of ${machine.slice(0, 30)} (${made})`, now);
    write(authorityPath, found);
  }
  const authority = new X509Certificate(found.certificate);
  const ends = Date.parse(authority.validTo);
  if (ends < now + DAY) {
    return refuse(
      "certificate-file",
      `The certificate in ${authorityPath} ends on ${new Date(ends).toISOString().slice(0, 10)}. If this machine's clock is right, ${startAnew}.`,
    );
  }
  const server = await serverCertificate(join(folder, SERVER_FILE), found, names, now);
  if (!server.ok) return server;
  return accept({
    authority: new Uint8Array(authority.raw),
    authorityName: authority.subject.replace(/^CN=/, ""),
    fingerprint: authority.fingerprint256,
    ...server.value,
  });
}

async function serverCertificate(
  path: string,
  authority: KeyAndCertificate,
  names: LanNames,
  now: number,
): Promise<Outcome<Pick<Certificates, "server" | "renewed">, "certificate-file">> {
  const found = read(path);
  if (found === "damaged") {
    return refuse(
      "certificate-file",
      `${path} is damaged: it does not hold a key and its certificate. Nothing was changed. Move it away: a new one is made then, and phones need nothing.`,
    );
  }
  if (found !== null && stillGood(found, authority, names, now)) {
    return accept({ server: found, renewed: false });
  }
  const { makeServerCertificate } = await maker();
  const server = await makeServerCertificate(authority, names, now);
  write(path, server);
  return accept({ server, renewed: true });
}

function stillGood(found: KeyAndCertificate, by: KeyAndCertificate, names: LanNames, now: number): boolean {
  const server = new X509Certificate(found.certificate);
  const authority = new X509Certificate(by.certificate);
  const lasts =
    Date.parse(server.validTo) > Math.min(now + RENEW_DAYS * DAY, Date.parse(authority.validTo) - DAY);
  const count = server.subjectAltName?.split(", ").length;
  return (
    lasts &&
    Date.parse(server.validFrom) <= now &&
    server.checkIssued(authority) &&
    server.verify(authority.publicKey) &&
    count === names.dns.length + names.ip.length &&
    names.dns.every((name) => server.checkHost(name) !== undefined) &&
    names.ip.every((address) => server.checkIP(address) !== undefined)
  );
}

function read(path: string): KeyAndCertificate | "damaged" | null {
  let text: string;
  try {
    text = readFileSync(path, "latin1");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
  try {
    const key = createPrivateKey(text);
    const certificate = new X509Certificate(text);
    if (!certificate.checkPrivateKey(key)) return "damaged";
    return {
      key: key.export({ type: "pkcs8", format: "pem" }).toString(),
      certificate: certificate.toString(),
    };
  } catch {
    return "damaged";
  }
}

/** Writes a file that only this user may read, as a whole or not at all. */
function write(path: string, { key, certificate }: KeyAndCertificate): void {
  const part = `${path}.part`;
  const file = openSync(part, "w", 0o600);
  try {
    writeSync(file, key + certificate);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(part, path);
}
