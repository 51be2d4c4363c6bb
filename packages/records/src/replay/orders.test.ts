import { describe, expect, test } from "vitest";
import { readLog } from "../log-reader.ts";
import { replay } from "./replay.ts";

const line = (minute: number, kind: string, body: object, bike: string | null = "fern", id = `r${minute}`) =>
  JSON.stringify({
    id,
    kind,
    at: `2026-05-02T10:${String(minute).padStart(2, "0")}:00Z`,
    ...(bike === null ? {} : { bike }),
    body,
  });
const shop = (...lines: string[]): ReturnType<typeof replay> => {
  const log = readLog(lines);
  expect(log.problems).toEqual([]);
  return replay(log.entries);
};
const opened = (minute: number, bike = "fern") => line(minute, "order-opened", { complaint: "bogs" }, bike);
const closed = (minute: number, order: string, id = `r${minute}`) =>
  line(minute, "order-closed", { order, handedOver: "ridden together" }, "fern", id);
const note = (minute: number, bike = "fern") => line(minute, "note", { text: "x" }, bike);
const told = (state: ReturnType<typeof replay>) =>
  state.orders.map(({ id, closed: by, entries }) => [
    id,
    by?.id ?? null,
    entries.map((one) => one.id).join(" "),
  ]);

describe("[R29] a work order", () => {
  test("holds what is written about its bike while it is open, and nothing else", () => {
    const lines = [note(1), opened(2), note(3), note(4, "moss"), closed(5, "r2"), note(6)];
    expect(told(shop(...lines))).toEqual([["r2", "r5", "r3"]]);
    expect(told(shop(...lines.reverse()))).toEqual([["r2", "r5", "r3"]]);
    expect(told(shop(opened(2), note(3)))).toEqual([["r2", null, "r3"]]);
  });

  test("of two open on one bike the later one gets what is written, and the first the rest", () => {
    const lines = [opened(1), note(2), opened(3), note(4), closed(5, "r3"), note(6), closed(7, "r1")];
    expect(told(shop(...lines))).toEqual([
      ["r1", "r7", "r2 r6"],
      ["r3", "r5", "r4"],
    ]);
  });

  test("an order and its closing struck are as if they had never been", () => {
    const lines = [opened(1), note(2), closed(3, "r1"), note(4)];
    const strike = (record: string) => line(9, "record-struck", { record }, null);
    expect(told(shop(...lines, strike("r3")))).toEqual([["r1", null, "r2 r4"]]);
    const without = shop(...lines, strike("r1"));
    expect(told(without)).toEqual([]);
    expect(without.problems).toMatchObject([{ record: "r3", path: "body.order" }]);
  });

  test("closed by a device whose clock is behind it is closed, whatever the time", () => {
    expect(told(shop(closed(1, "r2", "r1"), opened(2), note(3)))).toEqual([["r2", "r1", ""]]);
  });

  test("closed twice the earlier counts, and the other is named", () => {
    const state = shop(opened(1), closed(3, "r1"), closed(4, "r1"), note(5));
    expect(told(state)).toEqual([["r1", "r3", ""]]);
    expect(state.problems).toMatchObject([
      { record: "r4", what: 'closes the order "r1", which is closed already' },
    ]);
  });

  test("work that says nothing is left out", () => {
    const log = readLog([line(1, "work-noted", {}), line(2, "work-noted", { parts: [] })]);
    expect(log.problems.map(({ record, path }) => `${record} ${path}`)).toEqual(["r1 body", "r2 body"]);
    expect(readLog([line(1, "work-noted", { minutes: 5 })]).counts.used).toBe(1);
  });
});

describe("[R30] customers", () => {
  test("are described field by field, and a bike is one's until it is said otherwise", () => {
    const customer = (minute: number, body: object) =>
      line(minute, "customer-described", { customer: "c1", ...body }, null);
    const owned = (minute: number, of: string | null) => line(minute, "bike-described", { customer: of });
    const state = shop(
      customer(1, { name: "Jo", reach: "0555 1" }),
      customer(2, { reach: "0555 2" }),
      owned(3, "c1"),
    );
    expect(state.customers.get("c1")).toEqual({ customer: "c1", name: "Jo", reach: "0555 2" });
    expect(state.bikes.get("fern")!.description!.customer).toBe("c1");
    expect(shop(owned(3, "c1"), owned(4, null)).bikes.get("fern")!.description!.customer).toBeNull();
  });
});
