import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "@playwright/test";
import { openShop } from "./example-shop.ts";
import { browserOf, steps, trustingHome } from "./trusting-home.ts";

// The server behind Caddy with the site of docs/server.md, but for a name of this machine and a certificate of Caddy's
// own, which the browser is given to trust (certutil of libnss3-tools). Two devices share a log through it. Build the app
// first; prints what came of each step, and ends with 1 where one was otherwise.

const ROOT = join(import.meta.dirname, "../../..");
const [PORT, PROXY] = [4391, 4392];
const NAME = "shop-of-the-test.local";
const ADDRESS = `https://${NAME}:${PROXY}`;

const folder = mkdtempSync(join(tmpdir(), "jetwright-caddy-"));
const { step, failures } = steps();

const server = spawn(
  process.execPath,
  [
    ...["--import", "tsx", join(ROOT, "packages/server/src/run/main.ts"), "--behind-proxy"],
    ...["--port", String(PORT), "--data", join(folder, "data"), "--app", join(ROOT, "dist/app")],
  ],
  { cwd: ROOT, stdio: ["ignore", "ignore", "pipe"], env: { ...process.env, DATABASE_URL: "" } },
);
const code = new Promise<string>((resolve, reject) => {
  let told = "";
  server.stderr.on("data", (chunk: Buffer) => {
    told += chunk;
    const found = /once: (\S+)\s/.exec(told)?.[1];
    if (found !== undefined) resolve(found);
  });
  server.once("exit", () => reject(new Error(`The server ended by itself: ${told}`)));
});

writeFileSync(
  join(folder, "Caddyfile"),
  `{
  admin off
  skip_install_trust
  auto_https disable_redirects
}
${NAME}:${PROXY} {
  tls internal
  reverse_proxy localhost:${PORT}
}
`,
);
const caddy = spawn("caddy", ["run", "--config", join(folder, "Caddyfile"), "--adapter", "caddyfile"], {
  stdio: ["ignore", "ignore", "pipe"],
  env: { ...process.env, HOME: folder, XDG_DATA_HOME: folder, XDG_CONFIG_HOME: folder },
});
let said = "";
caddy.stderr.on("data", (chunk: Buffer) => {
  said += chunk;
});

/** Waits for what a process writes, as long as it takes. */
async function until<T>(look: () => T | undefined): Promise<T> {
  for (;;) {
    const found = look();
    if (found !== undefined) return found;
    if (caddy.exitCode !== null) throw new Error(`Caddy ended by itself: ${said}`);
    await new Promise((done) => setTimeout(done, 100));
  }
}

async function device(browser: Browser): Promise<Page> {
  const context = await browser.newContext({ baseURL: ADDRESS, locale: "en" });
  return context.newPage();
}

let browser: Browser | undefined;
try {
  const first = await code;
  const root = join(folder, "caddy/pki/authorities/local/root.crt");
  await until(() =>
    existsSync(root) && said.includes("certificate obtained successfully") ? true : undefined,
  );
  browser = await browserOf(trustingHome(folder, readFileSync(root)));

  const bench = await device(browser);
  await openShop(bench);
  await bench.goto("/#/shop");
  await bench.getByLabel("Code").fill(first);
  await bench.getByLabel("Name of this device").fill("bench PC");
  await bench.getByLabel("Name of the shop").fill("Tarn End");
  await bench.getByLabel("Your name").fill("Mara");
  await bench.getByRole("button", { name: "Pair this device" }).click();
  await bench.getByText("Everything is at the shop.").waitFor();
  step("paired, and all is at the shop", await bench.getByText("Tarn End: Mara, owner.").isVisible(), true);
  const [cookie] = await bench.context().cookies();
  step("the cookie", [cookie?.secure, cookie?.httpOnly, cookie?.sameSite], [true, true, "Strict"]);
  const forEver = await bench.evaluate(async () =>
    (await fetch("/healthz")).headers.get("strict-transport-security"),
  );
  step("https for ever", forEver, "max-age=31536000");

  await bench.getByLabel("Your name").fill("Kit");
  await bench.getByRole("radio", { name: /technician/ }).check();
  await bench.getByRole("button", { name: "Make a code" }).click();
  const words = (await bench.getByText(/^Type \S+ on the other device/).textContent())!;
  const phone = await device(browser);
  await phone.goto(`/#/shop/${/^Type (\S+) on/.exec(words)![1]}`);
  await phone.getByLabel("Name of this device").fill("Kit's phone");
  await phone.getByRole("button", { name: "Pair this device" }).click();
  await phone.getByText("Everything is at the shop.").waitFor();

  // Told by the stream: without it the phone would ask again after a minute.
  const events = phone.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const source = new EventSource("/api/v1/live");
        let opened = 0;
        source.addEventListener("open", () => {
          opened = performance.now();
        });
        source.addEventListener("records", () => {
          // What stood before the page opened is told at once; this is of the note.
          if (performance.now() - opened < 3000) return;
          source.close();
          resolve("told");
        });
      }),
  );
  await new Promise((done) => setTimeout(done, 4000));
  await bench.evaluate(async () => {
    const { jetwright } = window as unknown as { jetwright: { keep: (draft: object) => Promise<unknown> } };
    await jetwright.keep({ kind: "note", bike: "bramble", body: { text: "through the proxy" } });
  });
  const late = new Promise<string>((resolve) => setTimeout(() => resolve("not told in 20 s"), 20_000));
  step("the stream of events", await Promise.race([events, late]), "told");
  await phone.waitForFunction(async () => {
    const { jetwright } = window as unknown as {
      jetwright: { store: { all: () => Promise<readonly string[]> } };
    };
    return (await jetwright.store.all()).some((line) => line.includes("through the proxy"));
  });
  step("the note is on the phone", true, true);

  // The address that counts is the one Caddy saw, whatever the caller says of itself.
  const tries = await phone.evaluate(async () => {
    const statuses: number[] = [];
    for (let i = 0; i < 12; i++) {
      const headers = { "x-forwarded-for": `10.0.0.${i}` };
      const body = JSON.stringify({ code: "aaaa-bbbb", device: "x" });
      statuses.push((await fetch("/api/v1/pair", { method: "POST", headers, body })).status);
    }
    return [...new Set(statuses)];
  });
  step("codes tried under made-up addresses", tries, [403, 429]);
} finally {
  await browser?.close();
  server.removeAllListeners("exit");
  server.kill("SIGTERM");
  caddy.kill("SIGTERM");
  rmSync(folder, { recursive: true, force: true });
}
process.exitCode = failures() === 0 ? 0 : 1;
