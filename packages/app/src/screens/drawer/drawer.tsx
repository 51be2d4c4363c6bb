import type { DrawerPart, JsonObject } from "@jetwright/records";
import { useRef } from "preact/hooks";
import { Link } from "wouter-preact";
import type { DrawerLine, Taker } from "../../engine/answers/drawer/drawer-view.ts";
import { dayText } from "../../preferences/day.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { AddParts } from "./add-parts.tsx";
import { partName } from "./part-name.ts";
import "../../styles/drawer.css";

/** What the shop owns: each part with its count, one more or one less at a tap. */
export function Drawer() {
  const words = useWords().drawer;
  const shop = useShop();
  const view = useAnswer("drawer", null);
  const [preferences] = usePreferences();
  const adding = useRef<HTMLDetailsElement>(null);
  const taker = ({ bike, by, at }: Taker) => words.taker(dayText(at, preferences), bike, by);
  /** One in or one out, so that two taps, or two phones, add up. */
  const step = async (part: DrawerPart, kind: "parts-bought" | "parts-used") => {
    const kept = await shop.keep({ kind, body: { parts: [{ ...part, count: 1 } as JsonObject] } });
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    const record = kept.value[0]!;
    const name = partName(part, words);
    say(kind === "parts-bought" ? words.more(name) : words.fewer(name), {
      words: words.undo,
      act: () => void shop.keep({ kind: "record-struck", body: { record, why: words.mistaken } }),
    });
  };
  const add = () => {
    if (adding.current === null) return;
    adding.current.open = true;
    adding.current.scrollIntoView();
    adding.current.querySelector("input")?.focus({ preventScroll: true });
  };
  const bar = (
    <>
      <button type="button" class="main" onClick={add}>
        {words.add}
      </button>
      <Link href="/drawer/needle">{words.measure}</Link>
      <Link href="/drawer/buy">{words.buy}</Link>
    </>
  );
  return (
    <Screen title={words.title} back={{ to: "/", words: words.bikes }} bar={bar} wide>
      {view !== null && view.short.length > 0 && (
        <section>
          <h2>{words.short}</h2>
          <ul class="stack">
            {view.short.map(({ part, taken, lastTaken }) => (
              <li key={`${taken.at} ${partName(part, words)}`} class="caution">
                {words.shortOne(
                  words[part.part],
                  partName(part, words),
                  taker(taken),
                  lastTaken && taker(lastTaken),
                )}
              </li>
            ))}
          </ul>
          <p class="quiet small">{words.shortMend}</p>
        </section>
      )}
      {view?.groups.length === 0 && <p>{words.empty}</p>}
      <div class="drawer-groups">
        {view?.groups.map(({ part, kind, lines }) => (
          <section key={`${part} ${kind?.numbering} ${kind?.maker}`}>
            <h2>{words[part]}</h2>
            {kind !== null && <p class="quiet small">{words.kind(kind.numbering, kind.maker)}</p>}
            <ul class="rows">
              {lines.map((line, i) => (
                <Line
                  key={line.key}
                  line={line}
                  first={i === 0}
                  onStep={(way) => void step(line.part, way)}
                />
              ))}
            </ul>
          </section>
        ))}
      </div>
      <AddParts kinds={view?.kinds ?? []} form={adding} />
    </Screen>
  );
}

function Line({
  line: { part, count, up, down },
  first,
  onStep,
}: {
  readonly line: DrawerLine;
  /** The step down is told once; between two lines it is the upper one's step up. */
  readonly first: boolean;
  readonly onStep: (kind: "parts-bought" | "parts-used") => void;
}) {
  const words = useWords().drawer;
  const name = partName(part, words);
  const next = [first ? down : null, up].filter((size) => size !== null);
  return (
    <li class="drawer-line">
      <span class="drawer-part">
        <strong class="number">{name}</strong>
        {next.map(({ number, percent, owned }) => (
          <span key={number} class="quiet small">
            {words.next(number, percent, owned)}
          </span>
        ))}
      </span>
      <button
        type="button"
        class="choice"
        aria-label={words.less(name)}
        disabled={count === 0}
        onClick={() => onStep("parts-used")}
      >
        −
      </button>
      <output class="number drawer-count">{words.count(count)}</output>
      <button
        type="button"
        class="choice"
        aria-label={words.one(name)}
        onClick={() => onStep("parts-bought")}
      >
        +
      </button>
    </li>
  );
}
