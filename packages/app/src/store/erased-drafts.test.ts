import "fake-indexeddb/auto";
import { writeRecord } from "@jetwright/records";
import { beforeEach, expect, test } from "vitest";
import { inThisThread } from "../engine/test-engine.ts";
import { openDatabase } from "./database.ts";
import { Shop } from "./shop.ts";

// What is half told goes with the rest of a person's data.

const record = (id: string, kind: string, body: Record<string, string>, more: object = {}) =>
  ({ id, kind, v: 1, at: "2026-05-02T10:15:00Z", by: { person: "Ada" }, ...more, body }) as const;
const stored = (one: ReturnType<typeof record>) => ({ id: one.id, line: writeRecord(one) });

const CUSTOMER = record("c1", "customer-described", { customer: "jo", name: "Jo" });
const NOTE = record("n1", "note", { text: "runs" }, { bike: "fern" });
const OTHER = record("n2", "note", { text: "Jo called" }, { bike: "moss", by: { person: "Lee" } });
const ERASED_JO = { id: "e1", kind: "person-erased", v: 1, at: "2026-06-01T10:00:00Z" };

let shop: Shop;
let shops = 0;
const again = () => Shop.open(openDatabase(`drafts-${shops}`), inThisThread());
const left = async () => (await shop.database.settings.startingWith("")).map(({ key }) => key).sort();
const draft = (key: string, words: string) => shop.database.settings.put({ key, value: { words } });

beforeEach(async () => {
  shops++;
  shop = await again();
  await shop.take([CUSTOMER, NOTE, OTHER].map(stored));
  await draft("draft:fern", "stumbles");
  await draft("draft:moss", "jolts at a quarter");
  await draft("draft:rush", "as JO said, it bogs");
  await draft("draft:new-bike", "Job's own");
  await draft("preferences", "Jo");
});

test("a customer's: about the bikes and with the name, and no other", async () => {
  await shop.erase({ customer: "jo", bikes: ["fern"] });
  expect(await left()).toEqual(["draft:moss", "draft:new-bike", "preferences"]);
});

test("a writer's: all where they work on this device, and elsewhere what names them", async () => {
  await shop.erase({ records: ["n2"] });
  expect(await left()).toHaveLength(5);
  await draft("draft:moss", "Lee heard it");
  const note = record("n3", "note", { text: "x" }, { by: { person: "Lee" } });
  await shop.take([stored(note)]);
  await shop.erase({ records: ["n3"] });
  expect(await left()).toEqual(["draft:fern", "draft:new-bike", "draft:rush", "preferences"]);
  shop.person = "ada ";
  await shop.erase({ records: ["n1"] });
  expect(await left()).toEqual(["preferences"]);
});

test("killed before it was done, the next opening does it", async () => {
  await shop.database.records.add([
    { id: "e1", line: writeRecord({ ...ERASED_JO, body: { customer: "jo", bikes: ["fern"] } }) },
  ]);
  shop = await again();
  await expect.poll(left).toEqual(["draft:moss", "draft:new-bike", "preferences"]);
});

test("told by the shop's server, which sends the records without their words", async () => {
  const { by: _, ...blank } = CUSTOMER;
  const lines = [
    writeRecord({ ...blank, erased: true, body: { customer: "jo" } }),
    writeRecord({ ...ERASED_JO, body: { customer: "jo", bikes: [] } }),
  ].map((line) => ({ id: String(JSON.parse(line).id), line }));
  const arrived = await shop.database.sync.arrive(
    lines,
    (a, b) => a === b,
    () => null,
    { key: "k", value: 1 },
  );
  expect(arrived.replaced).toHaveLength(1);
  await shop.heardFromShop(arrived);
  expect(await left()).toEqual(["draft:fern", "draft:moss", "draft:new-bike", "k", "preferences"]);
});

test("a record that another one took the place of takes no draft along", async () => {
  await shop.erase({ customer: "nobody" });
  const other = stored(record("c1", "customer-described", { customer: "jo", name: "Ann" }));
  await shop.heardFromShop(
    await shop.database.sync.arrive(
      [other],
      () => false,
      () => null,
      { key: "k", value: 1 },
    ),
  );
  expect(await left()).toHaveLength(6);
});
