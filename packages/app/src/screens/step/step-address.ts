import type { Opening, Step } from "@jetwright/core";
import { openingName } from "@jetwright/core";
import { bikeAddress } from "../bike/bike-bar.tsx";

/** An opening inside an address: "1/8" would be two parts of it. */
const inAddress = (opening: Opening): string => encodeURIComponent(openingName(opening));

/**
 * Where a step is carried out. `index` is its place among all ways, the best one 0; `checkOf` names the check behind
 * a record. Null where it is not carried out on a screen of its own.
 */
export function stepAddress(
  bike: string,
  step: Step,
  index: number,
  checkOf: Readonly<Record<string, string>>,
): string | null {
  switch (step.kind) {
    case "look-over":
      return bikeAddress(bike, "look-over");
    case "check":
      return bikeAddress(bike, `check/${step.id}`);
    case "test":
      return bikeAddress(
        bike,
        step.opening === null ? `test/${step.id}` : `test/${step.id}/${inAddress(step.opening)}`,
      );
    case "change":
      return bikeAddress(bike, `change/${index}`);
    case "read-parts":
      return bikeAddress(bike, "fitted");
    case "ride":
      return bikeAddress(bike, "report");
    case "mend": {
      const check = step.why.map(({ record }) => checkOf[record]).find(Boolean);
      return check === undefined ? null : bikeAddress(bike, `check/${check}`);
    }
    case "stop":
      return null;
  }
}
