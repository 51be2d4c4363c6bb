import { readLog, writeRecord } from "@jetwright/records";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  comparable,
  isAnswered,
  isEmpty,
  markMore,
  markSign,
  markUnsure,
  NEW_DRAFT,
  pageAfter,
  pageBefore,
  reportBody,
  seenAt,
  troubleAt,
} from "./draft.ts";
import { readDraft } from "./read-draft.ts";
import { REPORT_OPENINGS } from "./sign-choices.ts";

const HEALTHY = ["drops-straight-to-idle", "answers-crisply", "pulls-smoothly", "pulls-clean-to-peak"];

/** One tap at each opening of a bike that gargles off the bottom. */
const RIDE = (
  [
    ["closed", "dives-below-idle"],
    ["1/8", "stumbles-with-smoke"],
    ["1/4", "pulls-smoothly"],
    ["1/2", "pulls-smoothly"],
    ["full", "pulls-clean-to-peak"],
  ] as const
).reduce((draft, [opening, sign]) => markSign(draft, opening, sign, true), NEW_DRAFT);

describe("marking", () => {
  test("the same tap again takes the mark away, the other one turns it round", () => {
    const seen = markSign(NEW_DRAFT, "1/8", "answers-crisply", true);
    expect(seenAt(seen, "1/8")).toEqual(["answers-crisply"]);
    expect(isEmpty(markSign(seen, "1/8", "answers-crisply", true))).toBe(true);
    const turned = markSign(seen, "1/8", "answers-crisply", false);
    expect(seenAt(turned, "1/8")).toEqual([]);
    expect(reportBody(turned, HEALTHY).reports).toEqual([
      { sign: "answers-crisply", opening: "1/8", seen: false },
    ]);
  });

  test("could not tell empties that opening alone, and counts as an answer", () => {
    const unsure = markUnsure(RIDE, "1/8");
    expect(seenAt(unsure, "1/8")).toEqual([]);
    expect(isAnswered(unsure, "1/8")).toBe(true);
    expect(seenAt(unsure, "closed")).toEqual(["dives-below-idle"]);
    expect(isAnswered(markUnsure(unsure, "1/8"), "1/8")).toBe(false);
    expect(markSign(unsure, "1/8", "answers-crisply", true).unsure).toEqual([]);
  });

  test("could not tell everywhere is still an empty report", () => {
    const nothing = REPORT_OPENINGS.reduce(markUnsure, NEW_DRAFT);
    expect(isEmpty(nothing)).toBe(true);
  });
});

describe("walking through", () => {
  test("passes three quarters over, forth and back", () => {
    expect(pageAfter("closed")).toBe("1/8");
    expect(pageAfter("1/2")).toBe("full");
    expect(pageAfter("3/4")).toBe("full");
    expect(pageAfter("full")).toBe("rest");
    expect(pageBefore("rest")).toBe("full");
    expect(pageBefore("full")).toBe("1/2");
    expect(pageBefore("3/4")).toBe("1/2");
    expect(pageBefore("closed")).toBeNull();
  });
});

describe("the record", () => {
  const full = markMore(
    { ...RIDE, choke: "worse", felt: { "1/8": "better", closed: "same" }, words: "  sharp up the hill " },
    "uses-more-fuel",
    false,
  );

  test("holds each sign at its opening, the choke where the trouble was, and the verdicts", () => {
    expect(reportBody(full, HEALTHY)).toEqual({
      warm: true,
      reports: [
        { sign: "dives-below-idle", opening: "closed", seen: true },
        { sign: "stumbles-with-smoke", opening: "1/8", seen: true },
        { sign: "pulls-smoothly", opening: "1/4", seen: true },
        { sign: "pulls-smoothly", opening: "1/2", seen: true },
        { sign: "pulls-clean-to-peak", opening: "full", seen: true },
        { sign: "touch-of-choke-worse", opening: "closed", seen: true },
        { sign: "uses-more-fuel", seen: false },
      ],
      against: {
        felt: [
          { opening: "closed", felt: "same" },
          { opening: "1/8", felt: "better" },
        ],
      },
      words: "sharp up the hill",
    });
  });

  test("is read by the log without a complaint", () => {
    const line = writeRecord({
      id: "r1",
      kind: "ride-reported",
      v: 1,
      at: "2026-05-01T10:00:00Z",
      bike: "bramble",
      body: reportBody(full, HEALTHY),
    });
    const log = readLog([line]);
    expect(log.problems).toEqual([]);
    expect(log.counts.used).toBe(1);
  });

  test("leaves the choke without an opening where nothing was wrong, or only above half", () => {
    const clean = markSign(NEW_DRAFT, "1/4", "pulls-smoothly", true);
    expect(troubleAt(clean, HEALTHY)).toBeNull();
    const top = markSign(clean, "full", "will-not-rev-out", true);
    expect(troubleAt(top, HEALTHY)).toBeNull();
    expect(troubleAt(markSign(top, "1/2", "revs-without-pull", true), HEALTHY)).toBe("1/2");
    expect(reportBody({ ...clean, choke: "same" }, HEALTHY).reports).toContainEqual({
      sign: "touch-of-choke-no-change",
      seen: true,
    });
  });

  test("compares only where the person could tell, and three quarters only where it was ridden", () => {
    const everywhere = Object.fromEntries(REPORT_OPENINGS.map((opening) => [opening, "better" as const]));
    const openingsOf = (draft: typeof NEW_DRAFT) =>
      (
        reportBody({ ...draft, felt: everywhere }, HEALTHY).against as { felt: { opening: string }[] }
      ).felt.map(({ opening }) => opening);
    expect(openingsOf(markUnsure(RIDE, "1/4"))).toEqual(["closed", "1/8", "1/2", "full"]);
    expect(openingsOf(markSign(RIDE, "3/4", "pulls-clean-to-peak", true))).toEqual([...REPORT_OPENINGS]);
    expect(comparable(RIDE, ["1/2", "3/4", "full"])).toEqual(["1/2", "full"]);
  });

  test("says a cold engine", () => {
    expect(reportBody({ ...NEW_DRAFT, warm: false }, HEALTHY)).toEqual({ warm: false });
  });
});

describe("a stored draft", () => {
  test("comes back as it was", () => {
    const draft = { ...RIDE, page: "1/2", choke: "better", felt: { full: "worse" }, record: "r9" } as const;
    expect(readDraft(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
  });

  test("of another version keeps what is understood", () => {
    expect(
      readDraft({
        page: "7/16",
        noticed: { closed: { "idle-hunts": true, odd: "maybe" }, "9/8": { x: true } },
        unsure: ["full", "elsewhere"],
        choke: "hasOwnProperty",
        felt: { "1/4": "better", "1/2": "fantastic" },
        later: { more: 1 },
      }),
    ).toEqual({
      ...NEW_DRAFT,
      noticed: { closed: { "idle-hunts": true } },
      unsure: ["full"],
      felt: { "1/4": "better" },
    });
  });

  test("that is no draft at all starts a new one", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.constant(null), fc.string(), fc.array(fc.anything()), fc.integer()),
        (stored) => {
          expect(readDraft(stored)).toEqual(NEW_DRAFT);
        },
      ),
      { seed: 20261125, numRuns: 50 },
    );
  });

  test("never breaks, whatever it holds", () => {
    fc.assert(
      fc.property(
        fc.record({
          noticed: fc.anything(),
          felt: fc.anything(),
          more: fc.anything(),
          unsure: fc.anything(),
          page: fc.anything(),
        }),
        (stored) => {
          expect(typeof reportBody(readDraft(stored), HEALTHY).warm).toBe("boolean");
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });
});
