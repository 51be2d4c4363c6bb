import { accept, type Outcome, refuse } from "@jetwright/core";
import { lengthened, shortened } from "./short-words.ts";

/** More than this the code on the page becomes too fine for a phone to read: hand the file over instead. */
export const LINK_LIMIT = 1200;
/** Text a link may unfold to; more was not made by us. */
const TEXT_LIMIT = 200_000;

/** First letter of the data: how the rest is written. Another table of short words needs another letter. */
const DEFLATED = "1";
const PLAIN = "0";

/** Lines of records as text that an address can hold: deflated where the browser can, base64url. */
export async function packLines(lines: readonly string[], deflate = canDeflate()): Promise<string> {
  const plain = new TextEncoder().encode(shortened(lines.join("\n")));
  if (!deflate) return PLAIN + toBase64Url(plain);
  const packed = await through(plain, new CompressionStream("deflate-raw"), Number.POSITIVE_INFINITY);
  return DEFLATED + toBase64Url(packed!);
}

/** The lines again; refuses what was cut short, mistyped, made by a newer version, or cannot be unfolded here. */
export async function unpackLines(
  data: string,
): Promise<Outcome<readonly string[], "cut-short" | "newer-link" | "browser-too-old">> {
  const cut = refuse(
    "cut-short",
    "This link cannot be read: part of it is missing or changed. Scan the code again, or ask for the file.",
  );
  const way = data.slice(0, 1);
  if (way !== DEFLATED && way !== PLAIN) {
    return /^[2-9a-z]/.test(way) && data.length > 40
      ? refuse("newer-link", "This link was made by a newer version: update this app, then open it again.")
      : cut;
  }
  const bytes = fromBase64Url(data.slice(1));
  if (bytes === null) return cut;
  if (way === DEFLATED && !canDeflate()) {
    return refuse("browser-too-old", "This browser cannot unfold the link: ask for the file instead.");
  }
  let plain: Uint8Array | null;
  try {
    plain = way === PLAIN ? bytes : await through(bytes, new DecompressionStream("deflate-raw"), TEXT_LIMIT);
  } catch {
    return cut;
  }
  if (plain === null || plain.length > TEXT_LIMIT) return cut;
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true }).decode(plain);
  } catch {
    return cut;
  }
  const lines = lengthened(text)
    .split("\n")
    .filter((line) => line.trim() !== "");
  return lines.length === 0 ? cut : accept(lines);
}

/** The address that opens a setup on another phone. */
export const takeAddress = (base: string, data: string): string =>
  `${base.replace(/#.*$/, "")}#/take/${data}`;

/** The data of a link however it was handed over: the whole address, or the data alone. */
export const dataOfLink = (typed: string): string => {
  const text = typed.trim().replace(/\s+/g, "");
  const at = text.lastIndexOf("/take/");
  return at < 0 ? text : text.slice(at + "/take/".length);
};

function canDeflate(): boolean {
  if (typeof CompressionStream === "undefined" || typeof DecompressionStream === "undefined") return false;
  try {
    return new CompressionStream("deflate-raw") !== null;
  } catch {
    return false;
  }
}

/** Bytes sent through a stream; null when more than `most` come out. */
async function through(
  bytes: Uint8Array,
  stream: { readonly readable: ReadableStream; readonly writable: WritableStream },
  most: number,
): Promise<Uint8Array | null> {
  const writer = stream.writable.getWriter();
  const written = writer.write(bytes).then(() => writer.close());
  written.catch(() => undefined);
  const reader = stream.readable.getReader() as ReadableStreamDefaultReader<Uint8Array>;
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    parts.push(value);
    length += value.length;
    if (length > most) {
      await reader.cancel();
      return null;
    }
  }
  await written;
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const toBase64Url = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replace(/=+$/, "");

function fromBase64Url(text: string): Uint8Array | null {
  if (!/^[A-Za-z0-9_-]+$/.test(text)) return null;
  try {
    return Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (c) => c.charCodeAt(0));
  } catch {
    return null;
  }
}
