import { Link } from "wouter-preact";
import { useWords } from "../../words/use-words.ts";

interface BikeBarProps {
  readonly bike: string;
  readonly here?: "next" | "fitted";
}

/** Address of a bike's page, or of one of its screens. */
export const bikeAddress = (bike: string, screen = ""): string =>
  `/bike/${encodeURIComponent(bike)}${screen === "" ? "" : `/${screen}`}`;

/** The three things done most with a bike, at the thumb. */
export function BikeBar({ bike, here }: BikeBarProps) {
  const words = useWords().bike.bar;
  const screens = [
    ["report", words.ridden],
    ["next", words.next],
    ["fitted", words.fitted],
  ] as const;
  return (
    <>
      {screens.map(([screen, name]) => (
        <Link
          key={screen}
          href={bikeAddress(bike, screen)}
          class={here === undefined && screen === "next" ? "main" : undefined}
          aria-current={here === screen ? "page" : undefined}
        >
          {name}
        </Link>
      ))}
    </>
  );
}
