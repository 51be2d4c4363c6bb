import type { Flags } from "../flag.ts";

export const BIKE_FLAG: Flags = {
  bike: { type: "text", value: "ID", help: "Which bike of the log; not needed where it has only one" },
};
