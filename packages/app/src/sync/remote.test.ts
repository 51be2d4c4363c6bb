import { expect, test } from "vitest";
import { lineOf } from "../../../server/src/test-records.ts";
import { testShop } from "../../../server/src/test-shop.ts";
import { Refused } from "./remote.ts";
import { remoteAt } from "./test-remote.ts";

test("a device that asks too fast waits for the second it is told, and gets its answers", async () => {
  const { server, base, token } = await testShop({ allowances: { request: { burst: 4, perSecond: 1000 } } });
  const remote = remoteAt(base, token);
  const asked = Array.from({ length: 12 }, (_, i) => remote.push([lineOf(`r${i}`)]));
  expect(await Promise.all(asked)).toEqual(Array.from({ length: 12 }, () => []));
  await server.stop();
});

test("told to wait longer, it gives up at once and says so", async () => {
  const { server, base, token } = await testShop({ allowances: { request: { burst: 1, perSecond: 0.1 } } });
  const remote = remoteAt(base, token);
  await remote.push([lineOf("r1")]);
  const refusal = await remote.push([lineOf("r2")]).catch((error: unknown) => error);
  expect(refusal).toBeInstanceOf(Refused);
  expect(refusal).toMatchObject({ status: 429, reason: "too-many-requests" });
  await server.stop();
});
