import { useEffect, useState } from "preact/hooks";
import { Link } from "wouter-preact";
import { usePreferences } from "../preferences/use-preferences.ts";
import { exampleShopHere, type Leaving, leaveExampleShop, takeExampleShop } from "../store/example-shop.ts";
import { useShop } from "../store/shop.ts";
import { Choice } from "../ui/choice.tsx";
import { LanguageChoice } from "../ui/language-choice.tsx";
import { Screen } from "../ui/screen.tsx";
import { TextField } from "../ui/text-field.tsx";
import { say } from "../ui/toast.tsx";
import { useWords } from "../words/use-words.ts";
import { HomeBar } from "./home-bar.tsx";
import { InsecureNotice } from "./insecure/insecure-notice.tsx";

/** What is chosen once on this device, and the way to copies and cautions. */
export function Settings() {
  const words = useWords().settings;
  const [chosen, set] = usePreferences();
  return (
    <Screen title={words.title} back={{ to: "/", words: words.bikes }} bar={<HomeBar here="more" />}>
      <InsecureNotice />
      <ul class="rows">
        <li>
          <Link class="row" href="/shop">
            <span>{words.shop}</span>
            <span aria-hidden="true">→</span>
          </Link>
        </li>
        <li>
          <Link class="row" href="/backup">
            <span>{words.backup}</span>
            <span aria-hidden="true">→</span>
          </Link>
        </li>
        <li>
          <Link class="row" href="/remove">
            <span>{words.remove}</span>
            <span aria-hidden="true">→</span>
          </Link>
        </li>
        <li>
          <Link class="row" href="/cautions">
            <span>{words.cautions}</span>
            <span aria-hidden="true">→</span>
          </Link>
        </li>
      </ul>
      <TextField
        label={words.person}
        hint={words.personHint}
        value={chosen.person}
        onInput={(person) => set({ person: person.slice(0, 100) })}
      />
      <Choice
        label={words.temperature}
        value={chosen.temperature}
        options={[
          { value: "C", words: "°C" },
          { value: "F", words: "°F" },
        ]}
        onChoose={(temperature) => set({ temperature })}
      />
      <Choice
        label={words.height}
        value={chosen.height}
        options={[
          { value: "m", words: "m" },
          { value: "ft", words: "ft" },
        ]}
        onChoose={(height) => set({ height })}
      />
      <Choice
        label={words.pressure}
        value={chosen.pressure}
        options={[
          { value: "hPa", words: "hPa" },
          { value: "inHg", words: "inHg" },
        ]}
        onChoose={(pressure) => set({ pressure })}
      />
      <p class="quiet small">{words.otherUnit}</p>
      <Choice
        label={words.theme}
        value={chosen.theme}
        options={[
          { value: "auto", words: words.themes.auto },
          { value: "paper", words: words.themes.paper },
          { value: "night", words: words.themes.night },
        ]}
        onChoose={(theme) => set({ theme })}
      />
      <Choice
        label={words.gloves}
        value={chosen.gloves ? "yes" : "no"}
        options={[
          { value: "no", words: words.glovesOff },
          { value: "yes", words: words.glovesOn },
        ]}
        onChoose={(gloves) => set({ gloves: gloves === "yes" })}
      />
      <Choice
        label={words.hand}
        value={chosen.hand}
        options={[
          { value: "left", words: words.left },
          { value: "right", words: words.right },
        ]}
        onChoose={(hand) => set({ hand })}
      />
      <LanguageChoice />
      <ExampleShop />
    </Screen>
  );
}

/** The way to be rid of the invented bikes in one go; nothing where none are here. */
function ExampleShop() {
  const words = useWords().settings;
  const shop = useShop();
  const [here, setHere] = useState<Leaving>("nothing-here");
  useEffect(() => {
    // Without a network on a first visit the example is not on the device, and then none of it is in the log.
    exampleShopHere(shop).then(setHere, () => undefined);
  }, [shop]);
  if (here === "nothing-here") return null;
  async function leave() {
    const left = await leaveExampleShop(shop);
    setHere(await exampleShopHere(shop));
    if (left === "at-the-shop") say(words.exampleAtShop);
    else
      say(left === "all" ? words.exampleGone : words.exampleGoneInPart, {
        words: words.exampleUndo,
        act: () => void takeExampleShop(shop).then(() => setHere("all")),
      });
  }
  return (
    <button type="button" class="button" onClick={() => void leave()}>
      {words.exampleLeave}
    </button>
  );
}
