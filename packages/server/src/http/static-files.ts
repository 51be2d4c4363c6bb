import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { extname, join, relative, sep } from "node:path";
import { gzipSync } from "node:zlib";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
  ".png": "image/png",
};
const PACKED = new Set([".html", ".js", ".css", ".svg", ".json", ".webmanifest"]);

interface File {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly packed: Uint8Array<ArrayBuffer> | null;
  readonly type: string;
  readonly tag: string;
  /** Its name holds a fingerprint of it, so it never changes. */
  readonly forever: boolean;
}

/** The app's files, read once: no path of a request ever reaches the disk. */
export class StaticFiles {
  readonly #files = new Map<string, File>();

  constructor(folder: string) {
    for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
      if (!entry.isFile()) continue;
      const path = join(entry.parentPath, entry.name);
      const address = `/${relative(folder, path).split(sep).join("/")}`;
      const bytes = new Uint8Array(readFileSync(path));
      const kind = extname(entry.name);
      this.#files.set(address, {
        bytes,
        packed: PACKED.has(kind) ? new Uint8Array(gzipSync(bytes, { level: 9 })) : null,
        type: TYPES[kind] ?? "application/octet-stream",
        tag: `"${createHash("sha256").update(bytes).digest("hex").slice(0, 16)}"`,
        forever: address.startsWith("/assets/"),
      });
    }
  }

  /** The answer for a path; null when there is no such file. */
  answer(request: Request): Response | null {
    const { pathname } = new URL(request.url);
    const file = this.#files.get(pathname === "/" ? "/index.html" : pathname);
    if (file === undefined) return null;
    const packed = file.packed !== null && /\bgzip\b/.test(request.headers.get("accept-encoding") ?? "");
    const headers: Record<string, string> = {
      "content-type": file.type,
      etag: file.tag,
      vary: "accept-encoding",
      "cache-control": file.forever ? "public, max-age=31536000, immutable" : "no-cache",
      ...(packed ? { "content-encoding": "gzip" } : {}),
    };
    if (request.headers.get("if-none-match") === file.tag)
      return new Response(null, { status: 304, headers });
    return new Response(request.method === "HEAD" ? null : packed ? file.packed : file.bytes, { headers });
  }
}
