import { expect, test } from "vitest";
import { customerDrafts, customerMeant } from "./customer-typed.ts";

const jo = {
  id: "c1",
  name: "Jo Ferrant",
  reach: "0555 1",
  notes: "",
  bikes: [{ id: "fern", name: "Fern" }],
  openOrders: 0,
};
const other = { ...jo, id: "c2", reach: "0555 2", bikes: [] };
const drafts = (name: string, reach: string, customers = [jo], bike = "moss") =>
  customerDrafts({ name, reach }, customers, bike, () => "new");

test("a name known once is that customer; a known name reached otherwise is somebody else", () => {
  expect(drafts(" jo ferrant ", "")).toEqual([
    { kind: "bike-described", bike: "moss", body: { customer: "c1" } },
  ]);
  expect(drafts("Jo Ferrant", "0555 9").map(({ body }) => body)).toEqual([
    { customer: "new", name: "Jo Ferrant", reach: "0555 9" },
    { customer: "new" },
  ]);
});

test("of two of one name the one reached that way is meant, and neither where nothing tells", () => {
  expect(customerMeant({ name: "Jo Ferrant", reach: "0555 2" }, [jo, other])?.id).toBe("c2");
  expect(customerMeant({ name: "Jo Ferrant", reach: "" }, [jo, other])).toBeNull();
});

test("the bike's own customer needs nothing written, and so does nobody", () => {
  expect(drafts("Jo Ferrant", "0555 1", [jo], "fern")).toEqual([]);
  expect(drafts(" ", "")).toEqual([]);
});
