import fc from "fast-check";
import decodeQR from "qr/decode.js";
import { describe, expect, test } from "vitest";
import { carried } from "../engine/answers/carried/carried.ts";
import { readPiece } from "../engine/answers/copy/read-piece.ts";
import { sheetOf } from "../engine/answers/sheet/sheet.ts";
import { DEMO, shopOf } from "../engine/answers/test-shop.ts";
import type { EngineState } from "../engine/state.ts";
import { qrPath } from "./qr-path.ts";
import { dataOfLink, LINK_LIMIT, packLines, takeAddress, unpackLines } from "./setup-link.ts";

const here = shopOf(DEMO);
const units = { height: "m", temperature: "C" } as const;
const linesOf = (state: EngineState, bike: string): readonly string[] => {
  const sheet = sheetOf(state, { bike, units, language: "en" });
  if (!sheet.ok) throw new Error(sheet.detail);
  return sheet.value.carried;
};

/** The path drawn as pixels, several to a square, the way a camera would see it. */
function drawn(text: string, pixels = 4): { width: number; height: number; data: Uint8ClampedArray } {
  const { path, size } = qrPath(text);
  const side = size * pixels;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let dy = 0; dy < pixels; dy++) {
      for (let dx = 0; dx < Number(run) * pixels; dx++) {
        const at = ((Number(y) * pixels + dy) * side + Number(x) * pixels + dx) * 4;
        data.fill(0, at, at + 3);
      }
    }
  }
  return { width: side, height: side, data };
}

describe("a setup on its way to another phone", () => {
  test("the code read back by a decoder is the address, and the other phone has the same setup", async () => {
    for (const bike of ["sorrel", "kestrel", "old-iron"]) {
      const address = takeAddress("https://jets.example/app/#/bike/x", await packLines(linesOf(here, bike)));
      expect(address.length).toBeLessThan(LINK_LIMIT);
      const read = decodeQR(drawn(address), { timeLimit: 10_000 });
      expect(read).toBe(address);
      const lines = await unpackLines(dataOfLink(read));
      if (!lines.ok) throw new Error(lines.detail);
      const there = shopOf(lines.value);
      const [mine, theirs] = [here, there].map((state) => sheetOf(state, { bike, units, language: "en" }));
      if (!mine?.ok || !theirs?.ok) throw new Error("no sheet");
      expect(theirs.value.name).toBe(mine.value.name);
      expect(theirs.value.parts.map(({ value, how }) => [value, how])).toEqual(
        mine.value.parts.map(({ value, how }) => [value, how]),
      );
      expect(theirs.value.fuel).toBe(mine.value.fuel);
    }
  }, 30_000);

  test("the setup of a bike stays under 600 letters, so that the code is coarse enough for any phone", async () => {
    for (const bike of ["sorrel", "wren", "thistle", "old-iron", "juniper"]) {
      expect((await packLines(linesOf(here, bike))).length).toBeLessThan(600);
    }
  });

  test("what it takes in has no fault, and taking it twice adds nothing", () => {
    const lines = linesOf(here, "bramble");
    const first = readPiece(here, { lines, firstLine: 1, language: "en" });
    expect(first.problems).toEqual([]);
    expect(first.records.map(({ reading }) => reading)).toEqual(lines.map(() => "used"));
    const there = shopOf(lines);
    const again = readPiece(there, { lines, firstLine: 1, language: null });
    expect(again.records.map(({ against }) => against)).toEqual(lines.map(() => "here"));
    expect(linesOf(here, "bramble")).toEqual(lines);
  });

  test("fuel noted for the whole shop comes as the bike's own, and leaves the other shop's bikes alone", () => {
    const ofShop = here.shop.bikes.get("sorrel")!.now.fuel!;
    expect(ofShop.bike).toBeNull();
    const fuel = linesOf(here, "sorrel")
      .map((line) => JSON.parse(line))
      .find(({ kind }) => kind === "fuel-used");
    expect(fuel.bike).toBe("sorrel");
    expect(fuel.id).not.toBe(ofShop.id);
    expect(fuel.body).toEqual(ofShop.source.body);
  });

  test("a needle under the micrometer takes its shape along, since the measurement stays behind", () => {
    const measured = [...here.shop.needles.values()][0]!;
    const fitted = linesOf(here, measured.bike ?? "kestrel").find((line) => line.includes("setup-fitted"))!;
    const { needle } = JSON.parse(fitted).body;
    expect(needle.marks).toBe(measured.body.marks);
    const thickest = Math.max(...measured.body.points.map(({ diameterMm }) => diameterMm));
    expect(Math.abs(needle.straightDiameterMm - thickest)).toBeLessThan(0.02);
    expect(needle.tapers.length).toBeGreaterThan(0);
  });

  test("nothing to carry for a bike nobody described", () => {
    expect(carried(here.shop, "no-such-bike", {} as never)).toEqual([]);
  });
});

describe("packing", () => {
  test("any lines come back as they were, deflated or plain", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.json().filter((text) => text.trim() !== ""),
          { minLength: 1, maxLength: 8 },
        ),
        fc.boolean(),
        async (lines, deflate) => {
          const data = await packLines(lines, deflate);
          expect(data).toMatch(/^[A-Za-z0-9_-]+$/);
          expect(await unpackLines(data)).toEqual({ ok: true, value: lines });
        },
      ),
      { seed: 20261125, numRuns: 60 },
    );
  });

  test("a link cut anywhere is refused in words and never half taken", async () => {
    const lines = linesOf(here, "sorrel");
    const data = await packLines(lines);
    for (let length = 0; length < data.length - 3; length += 7) {
      const read = await unpackLines(data.slice(0, length));
      if (read.ok) throw new Error(`taken at ${length}`);
      expect(read.detail).toMatch(/Scan the code again/);
    }
  });

  test("refuses a newer link, letters that do not belong and text that unfolds without end", async () => {
    expect(await unpackLines(`2${"A".repeat(60)}`)).toMatchObject({ reason: "newer-link" });
    expect(await unpackLines("1not base 64!")).toMatchObject({ reason: "cut-short" });
    const bomb = await packLines(["a".repeat(5_000_000)]);
    expect(await unpackLines(bomb)).toMatchObject({ reason: "cut-short" });
  });

  test("finds the data in an address broken over lines by a messenger", () => {
    expect(dataOfLink(" https://a.example/#/take/1ab\n c ")).toBe("1abc");
    expect(dataOfLink("1abc")).toBe("1abc");
  });
});
