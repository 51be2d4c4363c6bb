import type { Advice } from "@jetwright/core";
import { openingName } from "@jetwright/core";
import type { MixtureStretch, Standing } from "../../engine/answers/standing.ts";
import { dayText } from "../../preferences/day.ts";
import { heightText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import type { Words } from "../../words/en.ts";
import { useWords } from "../../words/use-words.ts";

interface MixtureWordsProps {
  readonly standing: Standing;
  readonly twoSided: Advice["twoSided"];
}

/** What the mixture does, in plain sentences before any number. */
export function MixtureWords({ standing, twoSided }: MixtureWordsProps) {
  const words = useWords().bike;
  const [preferences] = usePreferences();
  const { stretches, told, rightAt } = standing;
  if (told === 0) return <p>{`${words.nothingTold} ${words.usual}`}</p>;
  const air = rightAt && [
    rightAt.celsius !== null && temperatureText(rightAt.celsius, preferences),
    rightAt.heightM !== null && heightText(rightAt.heightM, preferences),
  ];
  return (
    <div class="stack">
      <p class="mixture-words">
        {isAll(stretches, "right") ? (
          words.allRight
        ) : isAll(stretches, "open") ? (
          words.nothingSettled
        ) : (
          <Sentences stretches={stretches} words={words} />
        )}
        {rightAt && air && (
          <> {words.rightAt(dayText(rightAt.at, preferences), air.filter(Boolean).join(", "))}</>
        )}
      </p>
      {twoSided.map(({ opening }) => {
        const name = openingName(opening);
        const where = words.stretch(name, name);
        return <p key={name}>{words.twoSided(where.charAt(0).toUpperCase() + where.slice(1))}</p>;
      })}
    </div>
  );
}

const isAll = (stretches: readonly MixtureStretch[], leaning: MixtureStretch["leaning"]): boolean =>
  stretches.every((stretch) => stretch.leaning === leaning);

/** What is wrong first, lean before rich, since lean breaks engines; then what is right, then what is not known. */
const ORDER = ["lean", "rich", "right", "open"] as const;

function Sentences({
  stretches,
  words,
}: {
  readonly stretches: readonly MixtureStretch[];
  readonly words: Words["bike"];
}) {
  const where = (some: readonly MixtureStretch[]) =>
    words.both(some.map(({ from, to }) => words.stretch(from, to)));
  return (
    <>
      {ORDER.flatMap((leaning) => {
        const some = stretches.filter((stretch) => stretch.leaning === leaning);
        if (some.length === 0) return [];
        if (leaning === "right" || leaning === "open") {
          const name = leaning === "right" ? words.rightIs : words.openIs;
          return [
            <span key={leaning}>
              {name} {where(some)}.{" "}
            </span>,
          ];
        }
        return [true, false].flatMap((sure) => {
          const such = some.filter((stretch) => stretch.sure === sure);
          if (such.length === 0) return [];
          return [
            <span key={`${leaning} ${sure}`}>
              <b class={leaning}>{words.leans(leaning, sure)}</b> {where(such)}.{" "}
            </span>,
          ];
        });
      })}
    </>
  );
}
