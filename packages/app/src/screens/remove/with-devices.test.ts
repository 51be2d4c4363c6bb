import { expect, test } from "vitest";
import type { Removable } from "../../engine/answers/remove/removable.ts";
import { withDevices, withListed } from "./with-devices.ts";

const writer = (name: string): Removable => ({
  ...{ is: "writer", who: name, name, bikes: [], records: 2 },
  bodies: [{ records: ["r1"] }, { records: ["r2"] }],
});
const nobody: Removable = { ...writer(""), is: "customer", who: "c1", records: 1 };

test("who has a device is removed from the shop's list with the first record, whatever letters were typed", () => {
  const people = [
    { id: "p1", name: "Kit" },
    { id: "p2", name: " kit " },
    { id: "p3", name: "Jo" },
    { id: "p4", name: "" },
  ];
  const found = withDevices([writer("KIT"), writer("Mara"), nobody], people);
  expect(found.map(({ is, who, listed, records }) => [is, who, listed, records])).toEqual([
    ["writer", "KIT", true, 2],
    ["writer", "Mara", false, 2],
    ["customer", "c1", false, 1],
    ["device", "p3", true, 0],
  ]);
  expect(found[0]!.bodies).toEqual([{ records: ["r1"], people: ["p1", "p2"] }, { records: ["r2"] }]);
  expect(found[3]!.bodies).toEqual([{ people: ["p3"] }]);
  // The list is asked for again when it comes to it: nothing is doubled.
  expect(withListed(found[0]!, people).bodies).toEqual(found[0]!.bodies);
});
