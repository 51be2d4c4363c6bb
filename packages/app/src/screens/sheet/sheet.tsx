import { useEffect, useState } from "preact/hooks";
import "../../styles/sheet.css";
import { copyToClipboard, saveFile } from "../../carry/hand-over.ts";
import { LINK_LIMIT, packLines, takeAddress } from "../../carry/setup-link.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { MarkRight } from "../right/mark-right.tsx";
import { SheetPage } from "./sheet-page.tsx";

/** One page for the rider, to print or save, with the code that carries the setup to another phone. */
export function SheetScreen({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const whyNot = useRefusal();
  const words = useWords().sheet;
  const [{ height, temperature, language }] = usePreferences();
  const sheet = useAnswer("sheet", { bike, units: { height, temperature }, language });
  const carried = sheet?.ok ? sheet.value.carried : null;
  const [address, setAddress] = useState<string | null>(null);
  const lines = carried?.join("\n") ?? null;
  useEffect(() => {
    let current = true;
    if (lines === null) return;
    void packLines(lines.split("\n")).then((data) => current && setAddress(takeAddress(location.href, data)));
    return () => {
      current = false;
    };
  }, [lines]);
  const tooLong = address !== null && address.length > LINK_LIMIT;
  return (
    <Screen
      title={words.title}
      back={{ to: `/bike/${encodeURIComponent(bike)}`, words: words.back }}
      bar={
        sheet?.ok && (
          <button type="button" class="main" onClick={() => window.print()}>
            {words.print}
          </button>
        )
      }
    >
      {sheet !== null && !sheet.ok && <p>{whyNot(sheet)}</p>}
      {sheet?.ok && (
        <>
          <SheetPage sheet={sheet.value} address={tooLong ? "" : address} />
          {sheet.value.markedAt === null && (
            <MarkRight bike={bike} airNoted={sheet.value.air.notedAt !== null} />
          )}
          <section class="stack no-print">
            <h2>{words.handOver}</h2>
            <p class="quiet">{words.handOverHint}</p>
            {!tooLong && address !== null && (
              <button
                type="button"
                class="button"
                onClick={async () => say((await copyToClipboard(address)) ? words.copied : words.notCopied)}
              >
                {words.copyLink}
              </button>
            )}
            <button
              type="button"
              class="button plain"
              onClick={() => saveFile(words.file(sheet.value.name), `${lines}\n`)}
            >
              {words.saveFile}
            </button>
          </section>
        </>
      )}
    </Screen>
  );
}
