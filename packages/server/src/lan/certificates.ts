import { createPrivateKey, KeyObject, randomBytes, webcrypto, X509Certificate } from "node:crypto";
import { BitString, Integer, OctetString, Utf8String } from "asn1js";
import {
  AltName,
  AttributeTypeAndValue,
  AuthorityKeyIdentifier,
  BasicConstraints,
  Certificate,
  CryptoEngine,
  Extension,
  ExtKeyUsage,
  GeneralName,
  GeneralSubtree,
  NameConstraints,
  type RelativeDistinguishedNames,
  Time,
} from "pkijs";
import { addressBytes, maskBytes } from "./address-bytes.ts";
import { DAY } from "./days.ts";
import type { LanNames } from "./lan-names.ts";
import { PRIVATE_NETWORKS } from "./private-networks.ts";

/** A secret key (PKCS 8) and the certificate of its public half, both in PEM. */
export interface KeyAndCertificate {
  readonly key: string;
  readonly certificate: string;
}

const AUTHORITY_DAYS = 3650;
/** Phones refuse more: 825 days for an authority added by hand (Apple Support 103769), 398 for a public one. */
const SERVER_DAYS = 397;

const CURVE = { name: "ECDSA", namedCurve: "P-256" };
const engine = new CryptoEngine({ name: "node", crypto: webcrypto });
type KeyPair = webcrypto.CryptoKeyPair;

// RFC 5280, 4.2.1.6: kinds of names.
const DNS_NAME = 2;
const IP_ADDRESS = 7;

/**
 * A new authority, for ten years. It can speak only for private networks, "localhost" and names under ".local"
 * (name constraints, critical: who does not understand them refuses it).
 */
export async function makeAuthority(name: string, now: number): Promise<KeyAndCertificate> {
  const keys = await newKeys();
  const made = await begin(keys, now, AUTHORITY_DAYS);
  entitle(made.subject, name);
  entitle(made.issuer, name);
  const mayName = [
    ...["localhost", "local"].map((value) => new GeneralName({ type: DNS_NAME, value })),
    ...PRIVATE_NETWORKS.map(({ address, bits }) => {
      const first = addressBytes(address);
      return ipName(Uint8Array.from([...first, ...maskBytes(bits, first.length)]));
    }),
  ];
  made.extensions = [
    extension("2.5.29.19", true, new BasicConstraints({ cA: true, pathLenConstraint: 0 }).toSchema()),
    extension("2.5.29.15", true, keyUsage(KEY_CERT_SIGN | CRL_SIGN)),
    extension("2.5.29.14", false, new OctetString({ valueHex: await made.getKeyHash("SHA-1", engine) })),
    extension(
      "2.5.29.30",
      true,
      new NameConstraints({
        permittedSubtrees: mayName.map((base) => new GeneralSubtree({ base })),
      }).toSchema(),
    ),
  ];
  return sign(made, keys, keys.privateKey);
}

/** A new server certificate under these names, signed by the authority; it never outlives the authority. */
export async function makeServerCertificate(
  authority: KeyAndCertificate,
  names: LanNames,
  now: number,
): Promise<KeyAndCertificate> {
  const issuer = Certificate.fromBER(new X509Certificate(authority.certificate).raw);
  const keys = await newKeys();
  const made = await begin(keys, now, SERVER_DAYS);
  if (issuer.notAfter.value < made.notAfter.value) made.notAfter = issuer.notAfter;
  made.issuer = issuer.subject;
  entitle(made.subject, "Jetwright");
  const altNames = [
    ...names.dns.map((value) => new GeneralName({ type: DNS_NAME, value })),
    ...names.ip.map((address) => ipName(addressBytes(address))),
  ];
  made.extensions = [
    extension("2.5.29.19", true, new BasicConstraints({ cA: false }).toSchema()),
    extension("2.5.29.15", true, keyUsage(DIGITAL_SIGNATURE)),
    extension("2.5.29.37", false, new ExtKeyUsage({ keyPurposes: [SERVER_AUTH] }).toSchema()),
    extension("2.5.29.17", false, new AltName({ altNames }).toSchema()),
    extension(
      "2.5.29.35",
      false,
      new AuthorityKeyIdentifier({
        keyIdentifier: new OctetString({ valueHex: await issuer.getKeyHash("SHA-1", engine) }),
      }).toSchema(),
    ),
  ];
  return sign(made, keys, await signingKey(authority.key));
}

// RFC 5280, 4.2.1.3, counted from the first bit, and 4.2.1.12.
const DIGITAL_SIGNATURE = 0x80;
const KEY_CERT_SIGN = 0x04;
const CRL_SIGN = 0x02;
const SERVER_AUTH = "1.3.6.1.5.5.7.3.1";

/** Key usage with no more bits than it needs, as DER asks of named bits. */
const keyUsage = (bits: number): BitString =>
  new BitString({ valueHex: Uint8Array.of(bits).buffer, unusedBits: Math.log2(bits & -bits) });

const ipName = (bytes: Uint8Array<ArrayBuffer>): GeneralName =>
  new GeneralName({ type: IP_ADDRESS, value: new OctetString({ valueHex: bytes.buffer }) });

const extension = (extnID: string, critical: boolean, value: { toBER(): ArrayBuffer }): Extension =>
  new Extension({ extnID, critical, extnValue: value.toBER() });

function entitle(to: RelativeDistinguishedNames, name: string): void {
  const commonName = "2.5.4.3";
  to.typesAndValues.push(
    new AttributeTypeAndValue({ type: commonName, value: new Utf8String({ value: name }) }),
  );
}

async function begin(keys: KeyPair, now: number, days: number): Promise<Certificate> {
  const made = new Certificate();
  made.version = 2;
  const serial = randomBytes(16);
  // A positive number that begins with no superfluous zero.
  serial[0] = ((serial[0] ?? 0) & 0x3f) | 0x40;
  made.serialNumber = new Integer({ valueHex: Uint8Array.from(serial).buffer });
  // Clocks of phones differ: it holds from a day ago.
  const from = Math.floor(now / 1000) * 1000 - DAY;
  made.notBefore = time(from);
  made.notAfter = time(from + days * DAY - 1000);
  await made.subjectPublicKeyInfo.importKey(keys.publicKey, engine);
  return made;
}

/** Two-digit years until 2049, four-digit ones from then on (RFC 5280, 4.1.2.5). */
function time(at: number): Time {
  const value = new Date(at);
  return new Time({ type: value.getUTCFullYear() < 2050 ? 0 : 1, value });
}

const newKeys = (): Promise<KeyPair> => webcrypto.subtle.generateKey(CURVE, true, ["sign", "verify"]);

const signingKey = (pem: string): Promise<webcrypto.CryptoKey> =>
  webcrypto.subtle.importKey(
    "pkcs8",
    createPrivateKey(pem).export({ type: "pkcs8", format: "der" }),
    CURVE,
    false,
    ["sign"],
  );

async function sign(made: Certificate, keys: KeyPair, by: webcrypto.CryptoKey): Promise<KeyAndCertificate> {
  await made.sign(by, "SHA-256", engine);
  return {
    key: KeyObject.from(keys.privateKey).export({ type: "pkcs8", format: "pem" }).toString(),
    certificate: new X509Certificate(Buffer.from(made.toSchema().toBER())).toString(),
  };
}
