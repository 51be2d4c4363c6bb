import type { SetupPart } from "@jetwright/core";
import type { Words } from "../words/en.ts";

/** What a part is called at the start of a line: "Main jet". */
export const partName = (part: SetupPart, { fitted, sheet }: Words): string =>
  part === "screw" ? fitted.part.screw : sheet.parts[part];
