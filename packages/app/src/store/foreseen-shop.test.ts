import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { ANSWERS } from "../engine/answers/all.ts";
import { shopOf } from "../engine/answers/test-shop.ts";
import { inThisThread } from "../engine/test-engine.ts";
import { openDatabase } from "./database.ts";
import { Shop } from "./shop.ts";

// What the page shows at once after a record is what the log as kept gives, worked out from nothing.

const BIKE = "own";
const GIVEN = JSON.stringify({ bike: BIKE });
const QUESTIONS = ["bike", "advice", "standing", "governs", "fitted"] as const;

async function newShop(name: string, engine = inThisThread()): Promise<Shop> {
  const shop = await Shop.open(openDatabase(name), engine);
  const described = { strokes: 2, displacementCc: 249 };
  const carburetor = { bore: { shape: "round", diameterMm: 36 }, screw: "air", jetNumbering: "bore" };
  const parts = { main: { number: 175, how: "read by eye" }, pilot: { number: 42, how: "read by eye" } };
  await shop.keep({
    kind: "bike-described",
    bike: BIKE,
    body: { name: "Own", engine: described, carburetor },
  });
  await shop.keep({ kind: "setup-fitted", bike: BIKE, body: { ...parts, asFound: true } });
  return shop;
}

const ride = (shop: Shop, sign: string, opening: string) =>
  shop.prepare({ kind: "ride-reported", bike: BIKE, body: { reports: [{ sign, opening, seen: true }] } });

/** Whatever is asked first is answered first: then the foreseen answers are there. */
const foreseen = (shop: Shop) => shop.engine.ask("bikes", null);

async function expectOfTheLog(shop: Shop): Promise<void> {
  const fresh = shopOf(await shop.store.all());
  for (const question of QUESTIONS) {
    const answer = structuredClone(ANSWERS[question](fresh, { bike: BIKE }));
    expect(shop.known(question, GIVEN), question).toEqual(answer);
    expect(await shop.engine.ask(question, { bike: BIKE }), question).toEqual(answer);
  }
}

test("a ride foreseen and kept shows every answer at once, and the right ones", async () => {
  const shop = await newShop("foreseen");
  const record = ride(shop, "hangs-after-closing", "closed");
  shop.foresee(BIKE, record);
  await foreseen(shop);
  expect(shop.known("advice", GIVEN)).toBeUndefined();
  await shop.take([record]);
  await expectOfTheLog(shop);
});

test("after the next record, or with one from another tab in between, nothing foreseen is shown", async () => {
  const shop = await newShop("overtaken");
  const record = ride(shop, "hangs-after-closing", "closed");
  shop.foresee(BIKE, record);
  await foreseen(shop);
  await shop.keep({ kind: "note", bike: BIKE, body: { text: "in between" } });
  await shop.take([record]);
  expect(shop.known("advice", GIVEN)).toBeUndefined();

  const second = ride(shop, "stumbles-with-smoke", "1/8");
  shop.foresee(BIKE, second);
  await foreseen(shop);
  await shop.take([second]);
  await expectOfTheLog(shop);
  await shop.keep({ kind: "record-struck", bike: BIKE, body: { record: second.id } });
  expect(shop.known("advice", GIVEN)).toBeUndefined();
});

test("a ride kept before it was foreseen is answered by the log", async () => {
  let free = Promise.resolve();
  const shop = await newShop(
    "too-late",
    inThisThread(() => free),
  );
  const record = ride(shop, "hangs-after-closing", "closed");
  let go = () => {};
  free = new Promise((resolve) => {
    go = resolve;
  });
  shop.foresee(BIKE, record);
  await shop.take([record]);
  go();
  expect(shop.known("advice", GIVEN)).toBeUndefined();
  const fresh = shopOf(await shop.store.all());
  const answer = structuredClone(ANSWERS.advice(fresh, { bike: BIKE }));
  expect(await shop.engine.ask("advice", { bike: BIKE })).toEqual(answer);
});
