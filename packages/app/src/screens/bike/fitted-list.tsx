import type { FittedPart } from "@jetwright/records";
import type { ComponentChildren } from "preact";
import { Link } from "wouter-preact";
import type { Fitted, FittedRow } from "../../engine/answers/fitted.ts";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "./bike-bar.tsx";

interface FittedListProps {
  readonly bike: string;
  readonly fitted: Fitted;
  /** Also the parts that are only noted and that nobody named. */
  readonly all?: boolean;
  /** What stands beside a part, such as its picture; null for nothing. */
  readonly beside?: (part: FittedPart) => ComponentChildren;
}

/** Parts that are noted and never reckoned with: left out while nobody named them. */
const NOTED_ONLY: readonly string[] = ["pilotAirJet", "mainAirJet"];

/** Every part with what it is and how that is known; a tap edits it. */
export function FittedList({ bike, fitted, all = false, beside = () => null }: FittedListProps) {
  const words = useWords().fitted;
  const name = ({ part }: FittedRow) =>
    part === "screw" && fitted.screw !== null ? words.screw[fitted.screw] : words.part[part];
  return (
    <ul class="rows">
      {fitted.rows
        .filter(({ part, value }) => all || value !== null || !NOTED_ONLY.includes(part))
        .map((row) => (
          <li key={row.part} class="pictured">
            <Link class="row" href={bikeAddress(bike, `fitted/${row.part}`)}>
              <span>{name(row)}</span>
              {row.value === null ? (
                <span class="quiet">{words.notKnown}</span>
              ) : (
                <span class="part-value">
                  <b>{row.value}</b>
                  <span class="quiet small">{words.how[row.how]}</span>
                </span>
              )}
            </Link>
            {beside(row.part)}
          </li>
        ))}
    </ul>
  );
}
