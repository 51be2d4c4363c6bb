import type { CountedPart, JsonObject } from "@jetwright/records";
import { Link } from "wouter-preact";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { AddJets } from "./add-jets.tsx";

const ORDER = ["main", "pilot", "needle", "needleJet", "slide"] as const;

/** What the shop owns: each part with its count, one more or one less at a tap. */
export function Drawer() {
  const words = useWords().drawer;
  const shop = useShop();
  const view = useAnswer("drawer", null);
  const count = async (part: CountedPart["part"], to: number, from: number) => {
    const at = (count: number): JsonObject => ({ parts: [{ ...part, count } as JsonObject] });
    const kept = await shop.keep({ kind: "parts-counted", body: at(to) });
    if (!kept.ok) say(kept.detail);
    else {
      say(words.changed, {
        words: words.undo,
        act: () => void shop.keep({ kind: "parts-counted", body: at(from) }),
      });
    }
  };
  return (
    <Screen title={words.title} back={{ to: "/", words: words.bikes }}>
      {view !== null && view.parts.length === 0 && <p>{words.empty}</p>}
      {groupsOf(view?.parts ?? []).map(({ kind, of, parts }) => (
        <section key={`${kind} ${of === null ? "" : words.kind(of.numbering, of.maker)}`}>
          <h3>{words[kind]}</h3>
          {of !== null && <p class="quiet small">{words.kind(of.numbering, of.maker)}</p>}
          <ul class="rows">
            {parts.map(({ part, count: owned }) => (
              <li key={nameOf(part)} class="row">
                <strong>{nameOf(part)}</strong>
                <span class="choices" style="flex:none">
                  <button
                    type="button"
                    class="choice"
                    aria-label={words.less(nameOf(part))}
                    disabled={owned === 0}
                    onClick={() => void count(part, owned - 1, owned)}
                  >
                    −
                  </button>
                  <span class="number" style="align-self:center;min-width:2ch">
                    {words.count(owned)}
                  </span>
                  <button
                    type="button"
                    class="choice"
                    aria-label={words.one(nameOf(part))}
                    onClick={() => void count(part, owned + 1, owned)}
                  >
                    +
                  </button>
                </span>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <AddJets kinds={view?.kinds ?? []} />
      <Link class="button" href="/drawer/needle">
        {words.measure}
      </Link>
      <Link class="button" href="/drawer/buy">
        {words.buy}
      </Link>
    </Screen>
  );
}

interface Group {
  readonly kind: (typeof ORDER)[number];
  /** Numbering and maker of the jets in it; null for other parts. */
  readonly of: { readonly numbering: "bore" | "flow"; readonly maker: string } | null;
  readonly parts: readonly CountedPart[];
}

/** Parts by kind, and jets by numbering and maker as well: their numbers mean nothing across those. */
function groupsOf(parts: readonly CountedPart[]): readonly Group[] {
  const groups = new Map<string, { kind: Group["kind"]; of: Group["of"]; parts: CountedPart[] }>();
  for (const kind of ORDER) {
    for (const counted of parts.filter(({ part }) => part.part === kind)) {
      const { part } = counted;
      const of =
        part.part === "main" || part.part === "pilot"
          ? { numbering: part.numbering ?? ("bore" as const), maker: part.maker ?? "" }
          : null;
      const key = `${kind} ${of?.numbering} ${of?.maker}`;
      const group = groups.get(key) ?? { kind, of, parts: [] };
      groups.set(key, group);
      group.parts.push(counted);
    }
  }
  return [...groups.values()];
}

function nameOf(part: CountedPart["part"]): string {
  switch (part.part) {
    case "main":
    case "pilot":
      return `${part.number}`;
    case "needle":
      return part.marks ?? "?";
    case "needleJet":
      return `${part.boreMm} mm`;
    case "slide":
      return `${part.cutawayMm} mm`;
  }
}
