import { describe, expect, test } from "vitest";
import { sizeAbove, sizeNearest, sizesSold } from "./sizes-sold.ts";

describe("sizes as sold (common practice, no source)", () => {
  test("pilot jets by bore: 35 38 40 42 45 48 50 52 55 58 60", () => {
    const pilots = sizesSold("pilot", "bore").filter((size) => size >= 35 && size <= 60);
    expect(pilots).toEqual([35, 38, 40, 42, 45, 48, 50, 52, 55, 58, 60]);
  });
  test("pilot jets by flow: halves below 30, fives above", () => {
    const pilots = sizesSold("pilot", "flow").filter((size) => size >= 12.5 && size <= 45);
    expect(pilots).toEqual([12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30, 35, 40, 45]);
  });
  test("main jets by bore: 98 100 102 ... 110 112.5 ... 195 200", () => {
    const mains = sizesSold("main", "bore");
    expect(mains.filter((size) => size >= 98 && size <= 118)).toEqual([
      98, 100, 102, 105, 108, 110, 112.5, 115, 117.5,
    ]);
    expect(mains.filter((size) => size >= 187.5 && size <= 210)).toEqual([
      187.5, 190, 192.5, 195, 200, 205, 210,
    ]);
  });
  test("main jets by flow: 170 172.5 175 180 ... 250 260", () => {
    const mains = sizesSold("main", "flow");
    expect(mains.filter((size) => size >= 170 && size <= 190)).toEqual([170, 172.5, 175, 180, 185, 190]);
    expect(mains.filter((size) => size >= 240 && size <= 280)).toEqual([240, 245, 250, 260, 270, 280]);
  });
  test("the rich side is the size above; a size itself stays; past the list its last", () => {
    expect(sizeAbove(160.1, "main", "bore")).toBe(162.5);
    expect(sizeAbove(162.5, "main", "bore")).toBe(162.5);
    expect(sizeAbove(9999, "main", "bore")).toBe(600);
  });
  test("the nearest, the larger of two", () => {
    expect(sizeNearest(43.4, "pilot", "bore")).toBe(42);
    expect(sizeNearest(43.5, "pilot", "bore")).toBe(45);
    expect(sizeNearest(1, "pilot", "flow")).toBe(10);
  });
});
