import { expect, test } from "vitest";
import { lineOf } from "../test-records.ts";
import { testServer } from "./test-server.ts";

const ERASURE = JSON.stringify({
  id: "e1",
  kind: "person-erased",
  v: 1,
  at: "2026-07-01T10:00:00Z",
  body: { records: ["n1"] },
});

test("only an owner removes a person's data; others may send back what stands", async () => {
  const { newShop, join, call } = await testServer();
  const owner = await newShop();
  const technician = await join(owner, "technician");
  const rider = await join(owner, "rider", ["fern"]);
  const push = async (token: string, ...lines: string[]) =>
    (await (await call("POST", "/api/v1/records", token, lines.join("\n"))).json()) as object;
  const log = async () => (await call("GET", "/api/v1/export", owner.token)).text();
  await push(owner.token, lineOf("n1", { bike: "fern", text: "Jo Ferrant" }));

  for (const { token } of [technician, rider]) {
    expect(await push(token, ERASURE, lineOf(`x-${token.slice(0, 4)}`, { bike: "fern" }))).toMatchObject({
      added: 1,
      refused: [{ line: 1, id: "e1", reason: "not-allowed" }],
    });
  }
  expect(await log()).toContain("Jo Ferrant");
  expect(await push(owner.token, ERASURE)).toMatchObject({ added: 1, refused: [] });
  expect(await log()).not.toContain("Jo Ferrant");
  expect(await push(technician.token, ERASURE)).toMatchObject({ known: 1, refused: [] });
  // Emptied by hand it is not taken in place of a whole one either: that is the owner's to say.
  await push(owner.token, lineOf("n2", { text: "kept" }));
  const blank = JSON.stringify({ ...JSON.parse(lineOf("n2", { text: "" })), erased: true });
  expect(await push(technician.token, blank)).toMatchObject({ refused: [{ reason: "known-otherwise" }] });
  expect(await log()).toContain("kept");
});
