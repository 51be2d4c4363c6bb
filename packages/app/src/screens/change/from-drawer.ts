import type { DrawerPart, JsonObject } from "@jetwright/records";

type Numbering = "bore" | "flow" | null;

const plain = (text: unknown): string => (typeof text === "string" ? text.trim().toLowerCase() : "");

/**
 * The part of the drawer that a part as written is: same kind and size, and for jets the same numbering and maker. Null
 * when none lies there. A jet whose numbering nobody wrote has that of the carburetor, else it is a bore.
 */
export function fromDrawer(
  name: string,
  fitted: JsonObject,
  drawer: readonly { readonly part: DrawerPart; readonly count: number }[],
  usual: Numbering,
): DrawerPart | null {
  const found = drawer.find(
    ({ part, count }) => count > 0 && part.part === name && isThat(part, fitted, usual),
  );
  return found?.part ?? null;
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
