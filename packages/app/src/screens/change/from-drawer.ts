import type { DrawerPart, JsonObject } from "@jetwright/records";

type Numbering = "bore" | "flow" | null;

const plain = (text: unknown): string => (typeof text === "string" ? text.trim().toLowerCase() : "");

type Stock = readonly { readonly part: DrawerPart; readonly count: number }[];

/**
 * The part of the drawer that a part as written is: same kind and size, and for jets the same numbering and maker. Null
 * when none lies there. A jet whose numbering nobody wrote has that of the carburetor, else it is a bore.
 */
export function fromDrawer(
  name: string,
  fitted: JsonObject,
  drawer: Stock,
  usual: Numbering,
): DrawerPart | null {
  const found = drawer.find(
    ({ part, count }) => count > 0 && part.part === name && isThat(part, fitted, usual),
  );
  return found?.part ?? null;
}

/** One of a part that came off, as the drawer tells it; null for what lies in no drawer, as a screw or a clip. */
export function intoDrawer(
  name: string,
  out: JsonObject,
  drawer: Stock,
  usual: Numbering,
): JsonObject | null {
  const known = drawer.find(({ part }) => part.part === name && isThat(part, out, usual));
  if (known !== undefined) return { ...(known.part as unknown as JsonObject), count: 1 };
  const { how: _how, ...told } = out;
  if (name === "main" || name === "pilot") {
    return { part: name, ...(usual === null ? {} : { numbering: usual }), ...told, count: 1 };
  }
  return name === "needle" || name === "needleJet" || name === "slide"
    ? { part: name, ...told, count: 1 }
    : null;
}

const sizeOf = ({ number, marks, boreMm, cutawayMm }: JsonObject) =>
  number ?? boreMm ?? cutawayMm ?? plain(marks);

/** Whether what went in is what came off, taken out to be cleaned or looked at: the drawer has no part in that. */
export const isBackIn = (off: JsonObject, went: JsonObject): boolean =>
  sizeOf(off) === sizeOf(went) &&
  (plain(off.maker) === plain(went.maker) || plain(off.maker) === "" || plain(went.maker) === "");

/** What a record of fitted parts says of the drawer; nothing where it took no part. */
export function movedParts(took: readonly JsonObject[], kept: readonly JsonObject[]): JsonObject {
  if (took.length + kept.length === 0) return {};
  return { drawer: { ...(took.length > 0 && { took }), ...(kept.length > 0 && { kept }) } };
}

function isThat(part: DrawerPart, fitted: JsonObject, usual: Numbering): boolean {
  switch (part.part) {
    case "main":
    case "pilot":
      return (
        part.number === fitted.number &&
        (part.numbering ?? "bore") === (fitted.numbering ?? usual ?? "bore") &&
        (plain(fitted.maker) === "" || plain(part.maker) === plain(fitted.maker))
      );
    case "needle":
      return plain(part.marks) === plain(fitted.marks);
    case "needleJet":
      return part.boreMm === fitted.boreMm;
    case "slide":
      return part.cutawayMm === fitted.cutawayMm;
  }
}
