import { Cautions } from "../ui/cautions.tsx";
import { Screen } from "../ui/screen.tsx";
import { useWords } from "../words/use-words.ts";

/** Every caution in one place. */
export function AllCautions() {
  const words = useWords().settings;
  return (
    <Screen title={words.cautionsTitle} back={{ to: "/more", words: words.title }}>
      <p>{words.cautionsIntro}</p>
      <Cautions ids="all" />
    </Screen>
  );
}
