import { timingSafeEqual } from "node:crypto";
import { Hono } from "hono";
import { DatabaseTrouble } from "../database/database.ts";
import type { Role } from "../shop/scope.ts";
import { ROLES } from "../shop/scope.ts";
import { hashOf } from "../shop/secrets.ts";
import { json, refused } from "./answers.ts";
import { harden } from "./headers.ts";
import { askUpload, askWanted, giveBlob, takePiece } from "./routes/blobs.ts";
import {
  changeBikes,
  inviteDevice,
  listDevices,
  listPeople,
  pairDevice,
  revokeDevice,
  setUp,
  whoAmI,
} from "./routes/people.ts";
import { exportRecords, followRecords, pullRecords, pushRecords } from "./routes/records.ts";
import type { Ctx, Handler, Services } from "./services.ts";
import { addressOf, isSecure, signedIn } from "./sign-in.ts";

export interface Route {
  readonly method: "GET" | "POST" | "PUT" | "DELETE";
  readonly path: string;
  readonly roles: readonly Role[];
  readonly handler: Handler;
}

const WORKERS: readonly Role[] = ["owner", "technician"];

/** Every route that needs a device of the shop, with who may use it. One table: there is no other door. */
export const ROUTES: readonly Route[] = [
  { method: "GET", path: "/api/v1/me", roles: ROLES, handler: whoAmI },
  { method: "POST", path: "/api/v1/records", roles: ROLES, handler: pushRecords },
  { method: "GET", path: "/api/v1/records", roles: ROLES, handler: pullRecords },
  { method: "GET", path: "/api/v1/export", roles: ROLES, handler: exportRecords },
  { method: "GET", path: "/api/v1/live", roles: ROLES, handler: followRecords },
  { method: "POST", path: "/api/v1/invitations", roles: WORKERS, handler: inviteDevice },
  { method: "GET", path: "/api/v1/people", roles: WORKERS, handler: listPeople },
  { method: "PUT", path: "/api/v1/people/:person/bikes", roles: WORKERS, handler: changeBikes },
  { method: "GET", path: "/api/v1/devices", roles: ["owner"], handler: listDevices },
  { method: "GET", path: "/api/v1/blobs", roles: ROLES, handler: askWanted },
  { method: "GET", path: "/api/v1/blobs/:hash", roles: ROLES, handler: giveBlob },
  { method: "GET", path: "/api/v1/blobs/:hash/upload", roles: ROLES, handler: askUpload },
  { method: "PUT", path: "/api/v1/blobs/:hash/upload", roles: ROLES, handler: takePiece },
  { method: "DELETE", path: "/api/v1/devices/:device", roles: ROLES, handler: revokeDevice },
];

const TROUBLE = {
  full: [
    507,
    "storage-full",
    "The server's disk is full. Nothing was changed: make room there, then send it again.",
  ],
  away: [
    503,
    "database-away",
    "The server cannot reach its database now. Nothing was changed: send it again.",
  ],
  busy: [503, "database-busy", "The server is busy. Nothing was changed: send it again in a moment."],
} as const;

/** The server as a function from request to answer. */
export function createApp(services: Services): Hono {
  const app = new Hono();
  app.use(async (context, next) => {
    const started = performance.now();
    await next();
    // Only a public name is to be https for ever: on the shop's own network the page that helps a phone is not.
    harden(context.res.headers, services.behindProxy && isSecure(context, services));
    record(context, services, performance.now() - started);
  });
  app.onError((error, context) => failed(error, context, services));
  app.notFound((context) => {
    const api = context.req.path.startsWith("/api/");
    const file =
      api || !/^(GET|HEAD)$/.test(context.req.method) ? null : services.files?.answer(context.req.raw);
    return file ?? refused(404, "no-such-address", "There is nothing at this address.");
  });

  app.get("/healthz", () => json({ ok: true }));
  app.get("/readyz", async () => {
    if (!services.accepting()) return refused(503, "stopping", "This process is stopping.");
    await services.database.all("SELECT 1 AS one");
    return json({ ok: true });
  });
  app.get("/metrics", (context) => metrics(context, services));
  app.post("/api/v1/setup", (context) => setUp(context, services));
  app.post("/api/v1/pair", (context) => pairDevice(context, services));
  for (const { method, path, roles, handler } of ROUTES) {
    app.on(method, path, (context) => behindTheDoor(context, services, roles, handler));
  }
  return app;
}

async function behindTheDoor(
  context: Ctx,
  services: Services,
  roles: readonly Role[],
  handler: Handler,
): Promise<Response> {
  const slow = (kind: "request" | "stranger", who: string): Response | null => {
    const wait = services.limits.take(kind, who, services.now());
    if (wait === null) return null;
    return refused(429, "too-many-requests", `Too many requests. Wait ${wait} seconds.`, {
      "retry-after": String(wait),
    });
  };
  const caller = await signedIn(context, services);
  if (caller === null) {
    return (
      slow("stranger", addressOf(context, services)) ??
      refused(401, "not-paired", "This device is not paired with the shop, or was shut out. Pair it again.")
    );
  }
  const wait = slow("request", caller.device);
  if (wait !== null) return wait;
  if (!roles.includes(caller.role)) {
    return refused(403, "not-allowed", "That is for the people who run this shop.");
  }
  return handler(context, caller, services);
}

function metrics(context: Ctx, { metricsToken, metrics }: Services): Response {
  const given = hashOf(context.req.header("authorization") ?? "");
  const wanted = hashOf(`Bearer ${metricsToken}`);
  const may = metricsToken !== null && timingSafeEqual(Buffer.from(given), Buffer.from(wanted));
  if (!may) return refused(404, "no-such-address", "There is nothing at this address.");
  return new Response(metrics.text(), {
    headers: { "content-type": "application/openmetrics-text; version=1.0.0; charset=utf-8" },
  });
}

function failed(error: Error, context: Ctx, { log }: Services): Response {
  if (error instanceof DatabaseTrouble) {
    const [status, reason, detail] = TROUBLE[error.trouble];
    log({ what: "database", trouble: error.trouble, why: error.message });
    return refused(status, reason, detail, { "retry-after": "2" });
  }
  log({ what: "bug", route: context.req.routePath, why: error.stack ?? error.message });
  return refused(500, "bug", "This is a bug in the server; its log says more. Nothing was changed.");
}

/** Counts and logs the request by its route, never by its address: that could hold what others should not read. */
function record(context: Ctx, { metrics, log }: Services, milliseconds: number): void {
  const { status } = context.res;
  const route = routeOf(context);
  metrics.add("jetwright_requests", 1, { route, status: String(status) });
  metrics.add("jetwright_request_seconds", milliseconds / 1000, { route });
  if (route !== "file")
    log({ what: "request", method: context.req.method, route, status, ms: Math.round(milliseconds) });
}

const FIXED = new Set(["/healthz", "/readyz", "/metrics", "/api/v1/setup", "/api/v1/pair"]);

function routeOf(context: Ctx): string {
  const { path } = context.req;
  if (FIXED.has(path)) return path;
  if (!path.startsWith("/api/")) return "file";
  const segments = path.split("/").length;
  const found = ROUTES.find(
    (route) =>
      route.path.split("/").length === segments &&
      new RegExp(`^${route.path.replaceAll(/:[a-z]+/g, "[^/]+")}$`).test(path),
  );
  return found?.path ?? "unknown";
}
