import encodeQR from "qr";
import type { Certificates } from "./certificate-folder.ts";
import { addressesFor, type LanNames } from "./lan-names.ts";
import { type Tongue, TRUST_WORDS, tongueOf } from "./trust-words.ts";

/** What the page tells of. */
export interface Trusted {
  readonly certificates: Certificates;
  readonly names: LanNames;
  /** Where the app answers with https. */
  readonly securePort: number;
}

export const CERTIFICATE_PATH = "/jetwright.crt";

const HEADERS = {
  "content-security-policy":
    "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cache-control": "no-store",
};

/** Answers a phone that does not trust the shop yet: the steps, and the authority's certificate. It takes nothing. */
export function answerTrust(request: Request, trusted: Trusted): Response {
  const { pathname, hostname, port } = new URL(request.url);
  const wishes = request.headers.get("accept-language") ?? "";
  const reads = request.method === "GET" || request.method === "HEAD";
  const answer = (type: string, body: string | Uint8Array<ArrayBuffer>, status = 200) =>
    new Response(request.method === "HEAD" ? null : body, {
      status,
      headers: { ...HEADERS, "content-type": type },
    });
  // Phones offer to install what comes with this type.
  if (reads && pathname === CERTIFICATE_PATH)
    return answer("application/x-x509-ca-cert", trusted.certificates.authority);
  if (reads && pathname === "/")
    return answer("text/html; charset=utf-8", page(trusted, tongueOf(wishes), hostname, Number(port) || 80));
  return answer("text/plain; charset=utf-8", TRUST_WORDS[tongueOf(wishes)].nothing, 404);
}

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
const items = (texts: readonly string[]): string => texts.map((one) => `<li>${escaped(one)}</li>`).join("");

function page(
  { certificates, names, securePort }: Trusted,
  tongue: Tongue,
  host: string,
  port: number,
): string {
  const words = TRUST_WORDS[tongue];
  const told = (text: keyof typeof words): string => escaped(String(words[text]));
  const secure = addressesFor(names, "https", securePort);
  // The phone goes on by the name it came by; a name that is not ours is never repeated to it.
  const same = secure.find((address) => new URL(address).hostname === host);
  const open = same ?? secure[0] ?? `https://localhost:${securePort}/`;
  const [here] = addressesFor(names, "http", port);
  const qr =
    here === undefined
      ? ""
      : `<h2>${told("another")}</h2><p class="qr">${encodeQR(here, "svg", { ecc: "low", border: 4 })}</p><p>${here}</p>`;
  return `<!doctype html>
<html lang="${tongue}">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${told("title")}</title>
<style>
:root{color-scheme:light dark}
body{font:1.125rem/1.5 system-ui,sans-serif;max-width:38rem;margin:0 auto;padding:1rem}
h1{font-size:1.5rem;line-height:1.2;border-bottom:3px solid}
h2{font-size:1.125rem;margin-top:2rem;border-top:1px solid;padding-top:.5rem}
li{margin:.5rem 0}
a{display:block;border:2px solid;padding:.75rem;color:inherit;font-weight:700;overflow-wrap:anywhere}
code{display:block;font-size:1rem;overflow-wrap:anywhere}
.qr svg{width:14rem;max-width:100%;background:#fff}
</style>
<h1>${told("title")}</h1>
<p>${told("lead")}</p>
<h2>${told("compareTitle")}</h2>
<p>${told("compare")}</p>
<p>${escaped(certificates.authorityName)}<code>${certificates.fingerprint}</code></p>
<p><a href="${CERTIFICATE_PATH}">${told("download")}</a></p>
<h2>${told("androidTitle")}</h2>
<ol>${items(words.android)}</ol>
<h2>${told("iphoneTitle")}</h2>
<ol>${items(words.iphone)}</ol>
<p>${told("ownList")}</p>
<h2>${told("openTitle")}</h2>
<p><a href="${open}">${open}</a></p>
<p>${told("openHint")}</p>
<h2>${told("withoutTitle")}</h2>
<p>${told("without")}</p>
<h2>${told("meansTitle")}</h2>
<p>${told("means")}</p>
${qr}
</html>
`;
}
