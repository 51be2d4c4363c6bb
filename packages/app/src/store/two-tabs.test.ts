import "fake-indexeddb/auto";
import { writeRecord } from "@jetwright/records";
import { expect, test, vi } from "vitest";
import { inThisThread } from "../engine/test-engine.ts";
import { openDatabase } from "./database.ts";
import { Shop } from "./shop.ts";

const SECRET = "Jo Ferrant";
const open = (name: string) => Shop.open(openDatabase(name), inThisThread());
const stored = (id: string, kind: string, body: Record<string, string>) => ({
  id,
  line: writeRecord({ id, kind, v: 1, at: "2026-05-02T10:15:00Z", body }),
});
const described = stored("c1", "customer-described", { customer: "jo", name: SECRET });
const names = async (shop: Shop) => {
  const all = await shop.engine.ask("removable", null);
  return all.flatMap(({ name }) => (name === "" ? [] : [name]));
};

test("[R31] a person erased in one tab is erased from what another tab takes in later", async () => {
  const [one, other] = [await open("tabs"), await open("tabs")];
  const heard = vi.fn();
  other.version.watch(heard);
  expect((await one.erase({ customer: "jo" })).ok).toBe(true);
  await vi.waitFor(() => expect(heard).toHaveBeenCalled());
  await other.take([described]);
  expect((await one.store.all()).join()).not.toContain(SECRET);
});

test("another tab shows what the shop put in place of a record", async () => {
  const [one, other] = [await open("replaced"), await open("replaced")];
  await one.take([described]);
  await vi.waitFor(async () => expect(await names(other)).toEqual([SECRET]));
  const theirs = stored("c1", "customer-described", { customer: "jo", name: "Ann Ferrant" });
  const progress = { key: "k", value: 1 };
  await one.heardFromShop(
    await one.database.sync.arrive(
      [theirs],
      (a, b) => a === b,
      () => null,
      progress,
    ),
  );
  await vi.waitFor(async () => expect(await names(other)).toEqual(["Ann Ferrant"]));
});
