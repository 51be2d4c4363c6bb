/** Nothing but this server's own files and answers; pictures and sound also from the page's own memory. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' blob: data:",
  "media-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

const HEADERS: Readonly<Record<string, string>> = {
  "content-security-policy": POLICY,
  "x-content-type-options": "nosniff",
  "x-frame-options": "DENY",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy":
    "microphone=(self), camera=(self), screen-wake-lock=(self), geolocation=(), payment=()",
};

/** Puts the strict headers on every answer. */
export function harden(headers: Headers, secure: boolean): void {
  for (const [name, value] of Object.entries(HEADERS)) headers.set(name, value);
  if (secure) headers.set("strict-transport-security", "max-age=31536000");
}
