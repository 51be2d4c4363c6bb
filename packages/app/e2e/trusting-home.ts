import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium } from "@playwright/test";

// For the scripts that need a browser with a list of authorities of its own: Debian's Chromium reads ~/.pki/nssdb, and
// libnss3-tools writes it (certutil).

const CHROMIUM = process.env.CHROMIUM ?? "/usr/bin/chromium";

/** Makes a home in the folder whose list of authorities has the certificate. */
export function trustingHome(folder: string, certificate: Buffer): string {
  const home = join(folder, "trusting");
  const store = join(home, ".pki/nssdb");
  mkdirSync(store, { recursive: true });
  const file = join(folder, "authority.crt");
  writeFileSync(file, certificate);
  const certutil = (...args: string[]) => execFileSync("certutil", ["-d", `sql:${store}`, ...args]);
  certutil("-N", "--empty-password");
  certutil("-A", "-t", "C,,", "-n", "the shop", "-i", file);
  return home;
}

/** A browser whose person has this home. Names of the network lead to this machine. */
export const browserOf = (home: string): Promise<Browser> =>
  chromium.launch({
    executablePath: CHROMIUM,
    env: { ...process.env, HOME: home },
    args: [
      ...["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"],
      "--disable-background-networking",
      // A machine here has no microphone; what is asked is whether a page of this address may have one.
      ...["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"],
      "--host-resolver-rules=MAP *.local 127.0.0.1",
    ],
  });

/** Counts the steps of a script that were not as they should be. */
export function steps() {
  let failures = 0;
  return {
    step: (what: string, found: unknown, wanted: unknown): void => {
      const right = JSON.stringify(found) === JSON.stringify(wanted);
      if (!right) failures++;
      console.log(`${right ? "as it should" : "OTHERWISE   "}  ${what}: ${JSON.stringify(found)}`);
    },
    failures: () => failures,
  };
}
