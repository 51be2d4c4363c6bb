import { X509Certificate } from "node:crypto";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { get } from "node:http";
import { get as getSecure, type RequestOptions } from "node:https";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TLSSocket } from "node:tls";
import { afterAll, afterEach, expect, test } from "vitest";
import { openSqlite } from "../database/sqlite.ts";
import { runServerCommand } from "../run/commands.ts";
import { type LanServer, startOnLan } from "./lan.ts";
import type { LanNames } from "./lan-names.ts";

const top = mkdtempSync(join(tmpdir(), "jetwright-lan-"));
afterAll(() => rmSync(top, { recursive: true, force: true }));
const running: LanServer[] = [];
afterEach(async () => {
  for (const server of running.splice(0)) await server.stop();
});

const HOME: LanNames = { dns: ["bench.local", "localhost"], ip: ["192.168.1.7", "127.0.0.1", "::1"] };

async function start(folder: string, names: () => LanNames = () => HOME, trustPort = 0) {
  const logged: Readonly<Record<string, unknown>>[] = [];
  const started = await startOnLan(
    {
      database: openSqlite(":memory:"),
      port: 0,
      host: "localhost",
      appFolder: null,
      log: (fields) => void logged.push(fields),
    },
    { dataFolder: folder, port: 0, trustPort, names },
  );
  if (!started.ok) throw new Error(started.detail);
  running.push(started.value);
  return { server: started.value, logged };
}

interface Answer {
  readonly status: number;
  readonly headers: NodeJS.Dict<string | string[]>;
  readonly body: Buffer;
  readonly certificate: X509Certificate | undefined;
}

const ask = (url: string, options: RequestOptions = {}): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const secure = url.startsWith("https");
    const asked = (secure ? getSecure : get)(url, { agent: false, ...options }, (incoming) => {
      const parts: Buffer[] = [];
      const certificate = secure ? (incoming.socket as TLSSocket).getPeerX509Certificate() : undefined;
      incoming.on("data", (part: Buffer) => parts.push(part));
      incoming.on("end", () =>
        resolve({
          status: incoming.statusCode ?? 0,
          headers: incoming.headers,
          body: Buffer.concat(parts),
          certificate,
        }),
      );
    });
    asked.on("error", reject);
  });

const authorityOf = async ({ trustPort }: LanServer) =>
  new X509Certificate((await ask(`http://127.0.0.1:${trustPort}/jetwright.crt`)).body).toString();

test("who trusts the certificate that the page hands out is answered, and nobody else", async () => {
  const { server } = await start(join(top, "trust"));
  const at = `https://127.0.0.1:${server.secure?.port}/healthz`;
  const ca = await authorityOf(server);
  const answer = await ask(at, { ca });
  expect(answer.status).toBe(200);
  // Kept for ever, it would lock the page for phones and what else this machine serves.
  expect(answer.headers["strict-transport-security"]).toBeUndefined();
  await expect(ask(at)).rejects.toThrow(/unable to verify|self-signed/);
  await expect(ask(at, { ca, servername: "example.org" })).rejects.toThrow(/altnames/);
  expect((await ask(`http://localhost:${server.port}/healthz`)).status).toBe(200);
});

test("the page speaks the browser's language, shows the fingerprint, and goes on under the name it was asked by", async () => {
  const { server } = await start(join(top, "page"));
  const page = async (headers: Record<string, string>, path = "/") => {
    const { body, ...rest } = await ask(`http://127.0.0.1:${server.trustPort}${path}`, { headers });
    return { ...rest, text: body.toString() };
  };
  const host = `192.168.1.7:${server.trustPort}`;
  const english = await page({ host });
  const { fingerprint256 } = new X509Certificate(await authorityOf(server));
  expect(english.text).toContain(fingerprint256);
  expect(server.told.replaceAll(/\s/g, "")).toContain(fingerprint256);
  expect(english.text).toContain('<html lang="en">');
  expect(english.text).toContain(`href="https://192.168.1.7:${server.secure?.port}/"`);
  expect(english.headers["content-security-policy"]).toContain("default-src 'none'");
  expect((await page({ host, "accept-language": "fr, de-AT;q=0.9, es" })).text).toContain('<html lang="de">');
  expect((await page({ host, "accept-language": "es-MX" })).text).toContain('<html lang="es">');
  expect((await page({ host: "bench.local:1" })).text).toContain("https://bench.local:");
  const stranger = await page({ host: "evil.example:1" });
  expect(stranger.text).not.toContain("evil");
  expect(stranger.text).toContain("https://192.168.1.7:");
  const file = await page({}, "/jetwright.crt");
  expect(file.headers["content-type"]).toBe("application/x-x509-ca-cert");
  for (const path of ["/authority.pem", "/lan/authority.pem", "/..%2flan/authority.pem", "/api/v1/me"]) {
    const refused = await page({}, path);
    expect(refused.status).toBe(404);
    expect(refused.text).not.toContain("BEGIN");
  }
});

test("a changed address is in the certificate from then on, and who trusted the authority need do nothing", async () => {
  let names = HOME;
  const { server, logged } = await start(join(top, "moves"), () => names);
  const at = `https://127.0.0.1:${server.secure?.port}/healthz`;
  const ca = await authorityOf(server);
  const before = await ask(at, { ca });
  await server.look();
  expect((await ask(at, { ca })).certificate?.fingerprint256).toBe(before.certificate?.fingerprint256);
  names = { ...HOME, ip: ["10.1.2.3", "127.0.0.1", "::1"] };
  await server.look();
  const { certificate } = await ask(at, { ca });
  expect(certificate?.checkIP("10.1.2.3")).toBe("10.1.2.3");
  expect(certificate?.checkIP("192.168.1.7")).toBeUndefined();
  expect(await authorityOf(server)).toBe(ca);
  expect(logged).toContainEqual({
    what: "certificate",
    renewed: true,
    names: ["bench.local", "localhost", "10.1.2.3", "127.0.0.1", "::1"],
  });
  const page = await ask(`http://127.0.0.1:${server.trustPort}/`);
  expect(page.body.toString()).toContain("https://10.1.2.3:");
});

test("a device that is brought in is told where the server is on the network", async () => {
  const { server } = await start(join(top, "invited"));
  const send = async (path: string, body: object, token = "") => {
    const answer = await fetch(`http://localhost:${server.port}/api/v1/${path}`, {
      method: "POST",
      headers: { authorization: `Bearer ${token}` },
      body: JSON.stringify(body),
    });
    expect(answer.status).toBe(200);
    return (await answer.json()) as { token: string; openAt: string };
  };
  const shop = { code: server.code, shop: "Tarn End", person: "Jo", device: "bench", give: "token" };
  const { token } = await send("setup", shop);
  const { openAt } = await send("invitations", { name: "Kit", role: "rider" }, token);
  expect(openAt).toBe(`https://192.168.1.7:${server.secure?.port}/`);
});

test("a file damaged while the server runs is told, and the server goes on with what it has", async () => {
  const folder = join(top, "damaged-later");
  const { server, logged } = await start(folder);
  const ca = await authorityOf(server);
  writeFileSync(join(folder, "lan/server.pem"), "gone");
  await server.look();
  expect(logged).toContainEqual(
    expect.objectContaining({ what: "certificate", trouble: "certificate-file" }),
  );
  expect((await ask(`https://127.0.0.1:${server.secure?.port}/healthz`, { ca })).status).toBe(200);
});

test("without an address of a private network the terminal says so", async () => {
  const alone = { dns: ["bench.local", "localhost"], ip: ["127.0.0.1", "::1"] };
  expect((await start(join(top, "alone"), () => alone)).server.told).toMatch(/no phone can reach it/);
});

test("a port that is taken leaves nothing open", async () => {
  const other = createServer();
  const taken = await new Promise<number>((resolve) => {
    other.listen(0, () => resolve((other.address() as { port: number }).port));
  });
  await expect(start(join(top, "taken"), () => HOME, taken)).rejects.toThrow(/EADDRINUSE/);
  expect(running).toEqual([]);
  other.close();
});

test("the command refuses a damaged key with what to do, and changes nothing", async () => {
  const data = join(top, "command");
  mkdirSync(join(data, "lan"), { recursive: true });
  const file = join(data, "lan/authority.pem");
  writeFileSync(file, "no key");
  const said: string[] = [];
  const terminal = { env: {}, out: () => undefined, error: (text: string) => void said.push(text) };
  const ports = ["--port", "0", "--lan-port", "0", "--trust-port", "0"];
  expect(await runServerCommand(["serve", "--lan", ...ports, "--data", data], terminal)).toBe(2);
  expect(said.join("")).toContain(`${file} is damaged`);
  expect(readFileSync(file, "utf8")).toBe("no key");
  expect(await runServerCommand(["serve", "--lan", "--behind-proxy", "--data", data], terminal)).toBe(2);
  for (const port of ["70000", "-1", "4443.5", "x"]) {
    const wrong = ["serve", "--lan", `--lan-port=${port}`, "--data", data];
    expect(await runServerCommand(wrong, terminal)).toBe(2);
    expect(said.at(-1)).toContain(`got "${port}"`);
  }
});
