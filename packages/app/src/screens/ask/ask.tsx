import { useState } from "preact/hooks";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { SendText } from "../../ui/send-text.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { useWords } from "../../words/use-words.ts";

/** One block of text with every fact that helpers ask back. */
export function AskScreen({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().ask;
  const [{ language }] = usePreferences();
  const view = useAnswer("ask", { bike, language });
  const [question, setQuestion] = useState("");
  const own = question.trim();
  return (
    <Screen
      title={words.title}
      aside={view?.name}
      back={{ to: `/bike/${encodeURIComponent(bike)}`, words: words.back }}
    >
      <p>{words.lead}</p>
      <TextField
        label={words.extra}
        hint={words.extraHint}
        value={question}
        onInput={setQuestion}
        lines={2}
      />
      {view !== null && (
        <SendText
          label={words.text}
          title={words.title}
          text={own === "" ? view.text : `${own}\n\n${view.text}`}
        />
      )}
    </Screen>
  );
}
