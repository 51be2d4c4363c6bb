import { type Caller, callerOf } from "../shop/devices.ts";
import type { Ctx, Services } from "./services.ts";

const BEARER = /^Bearer ([A-Za-z0-9_-]{43})$/;
const YEAR = 31_536_000;

const cookieName = ({ serverId }: Services): string => `jetwright_${serverId}`;

/** Whether the request came over https, as far as can be known here. */
export function isSecure(context: Ctx, { behindProxy }: Services): boolean {
  if (behindProxy) return context.req.header("x-forwarded-proto") === "https";
  return new URL(context.req.url).protocol === "https:";
}

/** The cookie that signs a browser in: out of reach for scripts and for other sites. */
export function tokenCookie(context: Ctx, services: Services, token: string | null): string {
  const secure = isSecure(context, services) ? "; Secure" : "";
  const life = token === null ? 0 : YEAR;
  return `${cookieName(services)}=${token ?? ""}; Path=/; HttpOnly; SameSite=Strict; Max-Age=${life}${secure}`;
}

function cookieToken(context: Ctx, services: Services): string | null {
  const start = `${cookieName(services)}=`;
  const found = (context.req.header("cookie") ?? "")
    .split(";")
    .map((one) => one.trim())
    .find((one) => one.startsWith(start));
  const token = found?.slice(start.length) ?? "";
  return /^[A-Za-z0-9_-]{43}$/.test(token) ? token : null;
}

/**
 * Who sends this request; null for nobody we know. A browser's cookie counts for a change only with the
 * header that pages of other sites cannot send.
 */
export async function signedIn(context: Ctx, services: Services): Promise<Caller | null> {
  const [, bearer] = BEARER.exec(context.req.header("authorization") ?? "") ?? [];
  if (bearer !== undefined) return callerOf(services.database, bearer, services.now());
  const token = cookieToken(context, services);
  if (token === null) return null;
  const changes = context.req.method !== "GET" && context.req.method !== "HEAD";
  if (changes && context.req.header("x-jetwright") !== "1") return null;
  return callerOf(services.database, token, services.now());
}

/** The address that a request came from, for counting. */
export function addressOf(context: Ctx, { behindProxy }: Services): string {
  const forwarded = behindProxy
    ? context.req.header("x-forwarded-for")?.split(",").at(-1)?.trim()
    : undefined;
  const incoming = (context.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)
    ?.incoming;
  return forwarded || incoming?.socket?.remoteAddress || "unknown";
}
