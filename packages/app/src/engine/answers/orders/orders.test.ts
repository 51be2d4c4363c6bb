import { expect, test } from "vitest";
import { bikeView } from "../bike.ts";
import { bikeList } from "../bikes.ts";
import { shopOf } from "../test-shop.ts";
import { customerList } from "./customer-list.ts";
import { orderList } from "./order-list.ts";
import { orderView } from "./order-view.ts";

const line = (n: number, kind: string, body: object, bike: string | null = "fern") => ({
  id: `r${n}`,
  kind,
  v: 1,
  at: `2026-05-01T10:${String(n).padStart(2, "0")}:00Z`,
  ...(bike === null ? {} : { bike }),
  body,
});
const jet = (number: number, count = 1) => ({ part: "main", number, count });
const JOB = [
  line(1, "bike-described", { name: "Fern", engine: { strokes: 2 }, customer: "c1" }),
  line(2, "customer-described", { customer: "c1", name: "Jo", reach: "0555 1" }, null),
  line(3, "setup-fitted", { main: { number: 175 } }),
  line(4, "order-opened", { complaint: " it bogs " }),
  line(5, "ride-reported", { reports: [{ sign: "hangs-after-closing" }] }),
  line(6, "check-done", { check: "pressure-test", found: "sound" }),
  line(7, "check-done", { check: "idle-stop", found: "faulty" }),
  line(8, "test-done", { test: "chop-warm", outcome: "hangs" }),
  line(9, "setup-fitted", { main: { number: 170 }, drawer: { took: [jet(170)], kept: [jet(175)] } }),
  line(10, "work-noted", { minutes: 30, words: "jet", parts: [{ name: "seal", count: 2 }] }),
  line(11, "parts-used", { parts: [jet(170)] }),
  line(12, "work-noted", { minutes: 12.5, parts: [{ name: "seal ", count: 1 }] }),
  line(13, "advice-given", { words: "ride it" }),
];
const HANDED = line(14, "order-closed", { order: "r4", handedOver: "a sheet" });
const view = (lines: readonly object[]) => {
  const seen = orderView(shopOf(lines), { order: "r4", language: "en" });
  if (!seen.ok) throw new Error(seen.detail);
  return seen.value;
};

test("the order gathers what was told, tested, ruled out, found and changed, with parts and minutes", () => {
  const order = view([...JOB, HANDED, line(15, "work-noted", { minutes: 600 })]);
  expect(order).toMatchObject({ bikeName: "Fern", customer: "Jo", reach: "0555 1", complaint: "it bogs" });
  const ids = (lines: readonly { readonly id: string }[]) => lines.map(({ id }) => id).join(" ");
  expect([order.told, order.tested, order.ruledOut, order.found, order.changed, order.work].map(ids)).toEqual(
    ["r5", "r8", "r6", "r7", "r9", "r10 r12"],
  );
  expect(order.minutes).toBe(42.5);
  expect(order.parts).toEqual([
    { name: "main jet 170", count: 2 },
    { name: "seal", count: 3 },
  ]);
  expect(order.fitted).toBe("main jet 170");
  expect([order.handedOver, order.closedAt]).toEqual(["a sheet", Date.parse("2026-05-01T10:14:00Z")]);
});

test("an order nobody told anything about is a page all the same; one that is not here is refused", () => {
  const bare = view([line(4, "order-opened", {}, "moss")]);
  expect(bare).toMatchObject({
    bikeName: "moss",
    customer: null,
    reach: null,
    complaint: "",
    minutes: 0,
    parts: [],
  });
  expect(orderView(shopOf(JOB), { order: "r5", language: "en" })).toMatchObject({ reason: "no-such-order" });
});

test("open orders stand first, the newest first, and the bike says that one is open", () => {
  const lines = [
    ...JOB,
    line(15, "order-opened", { customer: "c9" }, "moss"),
    line(16, "bike-described", {}, "moss"),
  ];
  const listed = (more: readonly object[]) =>
    orderList(shopOf([...lines, ...more]), null).map(({ id }) => id);
  expect(listed([])).toEqual(["r15", "r4"]);
  expect(listed([line(17, "order-closed", { order: "r15" }, "moss")])).toEqual(["r4", "r15"]);
  // It says itself whose it is, and nobody described that customer.
  expect(orderList(shopOf(lines), null)[0]!.customer).toBeNull();
  const ordered = (more: readonly object[]) =>
    bikeList(shopOf([...JOB, ...more]), null).map(({ ordered, customer }) => [ordered, customer]);
  expect(ordered([])).toEqual([[true, "Jo"]]);
  expect(ordered([HANDED])).toEqual([[false, "Jo"]]);
  const open = (more: readonly object[]) => bikeView(shopOf([...JOB, ...more]), { bike: "fern" })?.order;
  expect(open([])).toEqual({ id: "r4", complaint: "it bogs" });
  expect(open([line(18, "order-opened", {})])).toEqual({ id: "r18", complaint: "" });
  expect(open([HANDED])).toBeNull();
});

test("customers by name with their bikes and open orders, those without a name last", () => {
  const more = [
    line(20, "customer-described", { customer: "c0" }, null),
    line(21, "customer-described", { customer: "c2", name: "Al", notes: " late " }, null),
    line(22, "order-opened", { customer: "c2" }, "moss"),
  ];
  expect(customerList(shopOf([...JOB, ...more]), null)).toEqual([
    { id: "c2", name: "Al", reach: "", notes: "late", bikes: [], openOrders: 1 },
    {
      id: "c1",
      name: "Jo",
      reach: "0555 1",
      notes: "",
      bikes: [{ id: "fern", name: "Fern" }],
      openOrders: 1,
    },
    { id: "c0", name: "", reach: "", notes: "", bikes: [], openOrders: 0 },
  ]);
});
