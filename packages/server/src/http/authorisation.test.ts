import { expect, test } from "vitest";
import { blob } from "../test-blobs.ts";
import { lineOf } from "../test-records.ts";
import { ROUTES } from "./app.ts";
import { type Sent, testServer } from "./test-server.ts";

// Who may what, written down once more and by hand: every route with every kind of caller.

type Who = "owner" | "technician" | "rider" | "other shop" | "revoked" | "none";
type Matrix = Readonly<Record<string, Readonly<Record<Who, number>>>>;

const open = { owner: 200, technician: 200, rider: 200, "other shop": 200, revoked: 401, none: 401 };
const workers = { ...open, rider: 403 };
// What names a person or device of the first shop does not exist for the owner of the other.
const MATRIX: Matrix = {
  "GET /api/v1/me": open,
  "POST /api/v1/records": open,
  "GET /api/v1/records": open,
  "GET /api/v1/export": open,
  "GET /api/v1/live": open,
  "POST /api/v1/invitations": { ...workers, technician: 403, "other shop": 404 },
  "GET /api/v1/people": workers,
  "PUT /api/v1/people/:person/bikes": { ...workers, "other shop": 404 },
  "GET /api/v1/devices": { ...workers, technician: 403 },
  "GET /api/v1/blobs": open,
  "GET /api/v1/blobs/:hash": { ...open, "other shop": 404 },
  "GET /api/v1/blobs/:hash/upload": { ...open, "other shop": 404 },
  "PUT /api/v1/blobs/:hash/upload": { ...open, "other shop": 404 },
  "DELETE /api/v1/devices/:device": { ...open, technician: 403, rider: 403, "other shop": 404 },
};

const PICTURE = blob(10);
const UPLOAD = { "upload-offset": "0", "upload-length": "10", "content-type": "image/jpeg" };

async function people() {
  const server = await testServer();
  const owner = await server.newShop("Tarn End");
  const tokens: Record<Who, string | null> = {
    owner: owner.token,
    technician: (await server.join(owner, "technician")).token,
    rider: (await server.join(owner, "rider", ["bramble"])).token,
    "other shop": (await server.newShop("Elsewhere")).token,
    revoked: null,
    none: null,
  };
  const out = await server.join(owner, "owner");
  await server.send("DELETE", `/api/v1/devices/${out.device}`, owner.token);
  tokens.revoked = out.token;
  return { ...server, owner, tokens };
}

/** A picture of a bike of the rider, for the routes that take and give one. */
async function bringPicture({ call, owner }: Awaited<ReturnType<typeof people>>): Promise<void> {
  const line = lineOf("p", { bike: "bramble", text: PICTURE.hash });
  await call("POST", "/api/v1/records", owner.token, line);
  await call("PUT", `/api/v1/blobs/${PICTURE.hash}/upload`, owner.token, PICTURE.bytes, UPLOAD);
}

/** What a route is asked with, so that only the caller can be the reason to refuse. */
const bodyOf = (route: string, victim: { person: string }): Sent | undefined => {
  if (route === "PUT /api/v1/blobs/:hash/upload") return PICTURE.bytes;
  if (route === "POST /api/v1/records") return lineOf("n1", { bike: "bramble" });
  if (route === "POST /api/v1/invitations") return JSON.stringify({ person: victim.person });
  if (route === "PUT /api/v1/people/:person/bikes") return JSON.stringify({ bikes: ["heron"] });
  return undefined;
};

test("every route is in the matrix", () => {
  expect(ROUTES.map(({ method, path }) => `${method} ${path}`).sort()).toEqual(Object.keys(MATRIX).sort());
});

test.each(Object.keys(MATRIX))("%s answers each caller as the matrix says", async (route) => {
  const server = await people();
  const { call, join, owner, tokens } = server;
  if (route.includes("/blobs/")) await bringPicture(server);
  const [method, path] = route.split(" ") as [string, string];
  const found: Record<string, number> = {};
  for (const who of Object.keys(tokens) as Who[]) {
    // A rider to give bikes to; someone of the owner's rank to invite or shut out.
    const victim = await join(owner, route.startsWith("PUT /api/v1/people") ? "rider" : "owner");
    const address = path
      .replace(":person", victim.person)
      .replace(":device", victim.device)
      .replace(":hash", PICTURE.hash);
    const headers = route.includes("/blobs/") ? UPLOAD : {};
    const answer = await call(method, address, tokens[who], bodyOf(route, victim), headers);
    found[who] = answer.status;
    await answer.body?.cancel();
  }
  expect(found).toEqual(MATRIX[route]);
});

test("setting up and pairing need a code, whoever asks", async () => {
  const { call, tokens } = await people();
  for (const token of Object.values(tokens)) {
    const setup = JSON.stringify({ code: "abcd-efgh", shop: "x", person: "x", device: "x" });
    expect((await call("POST", "/api/v1/setup", token, setup)).status).toBe(403);
    const pair = JSON.stringify({ code: "abcd-efgh", device: "x" });
    expect((await call("POST", "/api/v1/pair", token, pair)).status).toBe(403);
  }
});

test("a technician brings riders in, and nobody else but another device of the own", async () => {
  const { call, send, tokens } = await people();
  const ask = async (body: object) =>
    (await call("POST", "/api/v1/invitations", tokens.technician, JSON.stringify(body))).status;
  expect(await ask({ name: "Jo", role: "rider", bikes: ["bramble"] })).toBe(200);
  expect(await ask({ name: "Jo", role: "technician" })).toBe(403);
  expect(await ask({ name: "Jo", role: "owner" })).toBe(403);
  const me = await send<{ person: string }>("GET", "/api/v1/me", tokens.technician);
  expect(await ask({ person: me.person })).toBe(200);
});

test("a rider writes about own bikes only, and reads no other's", async () => {
  const { call, send, tokens } = await people();
  await call(
    "POST",
    "/api/v1/records",
    tokens.technician,
    [lineOf("mine", { bike: "bramble" }), lineOf("theirs", { bike: "heron" }), lineOf("loose")].join("\n"),
  );
  const lines = [
    lineOf("r1", { kind: "ride-reported", bike: "bramble" }),
    lineOf("r2", { kind: "ride-reported", bike: "heron" }),
    lineOf("r3", { kind: "setup-fitted", bike: "bramble" }),
    lineOf("r4", { kind: "note" }),
    lineOf("mine", { kind: "note", bike: "heron", text: "over another's" }),
  ];
  const answer = await call("POST", "/api/v1/records", tokens.rider, lines.join("\n"));
  const { added, refused } = (await answer.json()) as {
    added: number;
    refused: { id: string; reason: string }[];
  };
  expect(added).toBe(1);
  expect(refused.map(({ id, reason }) => [id, reason])).toEqual([
    ["r2", "not-allowed"],
    ["r3", "not-allowed"],
    ["r4", "not-allowed"],
    ["mine", "not-allowed"],
  ]);
  const [, ...seen] = (await (await call("GET", "/api/v1/records", tokens.rider)).text()).trim().split("\n");
  expect(seen).toEqual([lineOf("mine", { bike: "bramble" }), lines[0]]);
  expect(await (await call("GET", "/api/v1/export", tokens.rider)).text()).toBe(`${seen.join("\n")}\n`);
  const me = await send<{ bikes: string[] }>("GET", "/api/v1/me", tokens.rider);
  expect(me.bikes).toEqual(["bramble"]);
});

test("the other shop sees nothing of ours in any list", async () => {
  const { call, tokens, owner } = await people();
  await call("POST", "/api/v1/records", tokens.owner, lineOf("ours", { text: "of Tarn End" }));
  for (const path of ["records", "export", "people", "devices", "me"]) {
    const text = await (await call("GET", `/api/v1/${path}`, tokens["other shop"])).text();
    expect(text).not.toContain("Tarn End");
    expect(text).not.toContain(owner.person);
  }
});
