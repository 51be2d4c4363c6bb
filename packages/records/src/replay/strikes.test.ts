import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLog } from "../log-reader.ts";
import { withoutStruck } from "./strikes.ts";

const note = (id: string, hour: number): string =>
  JSON.stringify({
    id,
    kind: "note",
    at: `2026-05-02T${String(hour).padStart(2, "0")}:00:00Z`,
    body: { text: id },
  });
const strike = (id: string, hour: number, record: string): string =>
  JSON.stringify({
    id,
    kind: "record-struck",
    at: `2026-05-02T${String(hour).padStart(2, "0")}:00:00Z`,
    body: { record },
  });
const standing = (...lines: string[]): string =>
  withoutStruck(readLog(lines).entries)
    .standing.map(({ id }) => id)
    .join(" ");

describe("[R18] strikes", () => {
  test("a struck record does not count and is listed with its strike", () => {
    const got = withoutStruck(readLog([note("a", 1), note("b", 2), strike("s", 3, "a")]).entries);
    expect(got.standing.map(({ id }) => id)).toEqual(["b", "s"]);
    expect(got.struck.map(({ entry, by }) => `${entry.id} by ${by.id}`)).toEqual(["a by s"]);
    expect(got.dangling).toEqual([]);
  });

  test("a strike counts though its clock was behind", () => {
    expect(standing(note("a", 5), strike("s", 1, "a"))).toBe("s");
  });

  test("a strike struck later lets the record count again; one struck earlier does not care", () => {
    expect(standing(note("a", 1), strike("s", 2, "a"), strike("t", 3, "s"))).toBe("a t");
    expect(standing(note("a", 1), strike("t", 2, "s"), strike("s", 3, "a"))).toBe("t s");
  });

  test("chains: the last word counts", () => {
    expect(standing(note("a", 1), strike("s", 2, "a"), strike("t", 3, "s"), strike("u", 4, "t"))).toBe("s u");
  });

  test("two strikes of one another, and one of itself, take no more out than the later says", () => {
    expect(standing(strike("s", 1, "t"), strike("t", 2, "s"))).toBe("t");
    expect(standing(strike("s", 1, "s"))).toBe("s");
  });

  test("a record struck twice stays struck while one strike stands", () => {
    expect(standing(note("a", 1), strike("s", 2, "a"), strike("t", 3, "a"), strike("u", 4, "s"))).toBe("t u");
  });

  test("a strike of what is not there is told, until it arrives", () => {
    const lines = [strike("s", 2, "a")];
    expect(withoutStruck(readLog(lines).entries).dangling.map(({ id }) => id)).toEqual(["s"]);
    expect(withoutStruck(readLog([...lines, note("a", 1)]).entries).dangling).toEqual([]);
  });

  test("records kept but not used can be struck", () => {
    const unknown = '{"id":"k","kind":"tyre-changed","at":"2026-05-02T10:15:00Z"}';
    expect(standing(unknown, strike("s", 1, "k"))).toBe("s");
  });

  test("agrees with the rule said plainly, for any web of strikes", () => {
    const names = ["a", "b", "c", "d", "e"];
    const web = fc.array(fc.constantFrom(...names, "z"), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(web, (targets) => {
        const lines = [note("z", 0), ...names.map((name, i) => strike(name, i + 1, targets[i]!))];
        // In force: no strike in force that comes later names it. Asked from the last to the first.
        const inForce = (i: number): boolean =>
          !names.some((_, j) => j > i && targets[j] === names[i] && inForce(j));
        const expected = names.filter((_, i) => inForce(i));
        const noteStands = !names.some((_, i) => targets[i] === "z" && inForce(i));
        expect(standing(...lines)).toBe([...(noteStands ? ["z"] : []), ...expected].join(" "));
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});
