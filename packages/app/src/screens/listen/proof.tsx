import { useEffect, useRef, useState } from "preact/hooks";
import { useFigure } from "../../preferences/use-figure.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/listen.css";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { keepUndoable } from "../fitted/keep-undoable.ts";
import { joined } from "./joined.ts";
import { type Microphone, type MicrophoneTrouble, openMicrophone } from "./microphone.ts";
import { ProofResult } from "./proof-result.tsx";
import type { NotProved, Proved, ToListener } from "./sound-messages.ts";
import { useListener } from "./use-listener.ts";

const METRES = ["0.5", "1", "3"] as const;
const MOST_SECONDS = 120;

/** The first real test: a recording with the ignition on its second channel, held against what was heard. */
export function ProofScreen({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const allWords = useWords();
  const words = allWords.proof;
  const figure = useFigure();
  const shop = useShop();
  const answer = useAnswer("soundEngine", { bike });
  const [sparks, setSparks] = useState<"1" | "0.5">("1");
  const [metres, setMetres] = useState<(typeof METRES)[number] | null>(null);
  const [device, setDevice] = useState("");
  const [busy, setBusy] = useState(false);
  const [proved, setProved] = useState<Proved | null>(null);
  const [why, setWhy] = useState<NotProved | null>(null);
  const [microphone, setMicrophone] = useState<Microphone | null>(null);
  const [trouble, setTrouble] = useState<MicrophoneTrouble | null>(null);
  const [seconds, setSeconds] = useState(0);
  const blocks = useRef<(readonly Float32Array[])[]>([]);
  const { tell } = useListener((said) => {
    if (said.say !== "proved" && said.say !== "not-proved") return;
    setBusy(false);
    if (said.say === "proved") setProved(said);
    else setWhy(said.why);
  });
  useEffect(() => () => microphone?.stop(), [microphone]);
  const back = { to: bikeAddress(bike, "listen"), words: words.back };
  if (answer === null || !answer.ok) {
    return (
      <Screen title={words.title} back={back}>
        {answer !== null && <p>{answer.detail}</p>}
      </Screen>
    );
  }
  const { engine } = answer.value;

  function prove(sound: Extract<ToListener, { say: "prove" }>["sound"]) {
    setProved(null);
    setWhy(null);
    setBusy(true);
    tell({ say: "prove", sound, engine, sparksPerTurn: sparks === "1" ? 1 : 0.5 });
  }

  async function record() {
    blocks.current = [];
    setSeconds(0);
    setTrouble(null);
    const opened = await openMicrophone((channels) => {
      blocks.current.push(channels);
      const length = blocks.current.length * (channels[0]?.length ?? 0);
      setSeconds(opened.ok ? Math.min(MOST_SECONDS, length / opened.value.rate) : 0);
    }, 2);
    if (opened.ok) setMicrophone(opened.value);
    else setTrouble(opened.trouble);
  }

  function stop() {
    if (microphone === null) return;
    microphone.stop();
    setMicrophone(null);
    const channels = [0, 1].map((c) => joined(blocks.current.flatMap((block) => block[c] ?? [])));
    blocks.current = [];
    prove({
      channels: channels.map((each) => each.subarray(0, MOST_SECONDS * microphone.rate)),
      rate: microphone.rate,
    });
  }

  async function keep() {
    if (proved === null) return;
    const { proof, doubts } = proved;
    const hundredths = (x: number): number => Math.round(100 * x) / 100;
    const kept = await keepUndoable(shop, bike, words, {
      kind: "sound-proved",
      body: {
        sparksPerTurn: sparks === "1" ? 1 : 0.5,
        seconds: hundredths(proof.seconds),
        middlePercent: hundredths(proof.middlePercent),
        most95Percent: hundredths(proof.most95Percent),
        grossPercent: hundredths(proof.grossPercent),
        unansweredPercent: hundredths(proof.unansweredPercent),
        bySecond: proof.bySecond.map(({ second, rpm, errorPercent }) => ({
          second,
          rpm: Math.round(rpm),
          ...(errorPercent !== null && { errorPercent: hundredths(errorPercent) }),
        })),
        doubts: [...doubts],
        ...(metres !== null && { metresAway: Number(metres) }),
        ...(device.trim() !== "" && { device: device.trim().slice(0, 200) }),
      },
    });
    if (kept.ok) say(words.kept, kept.value);
    else say(kept.detail);
  }

  return (
    <Screen title={words.title} back={back}>
      <p class="loud-line">{words.none}</p>
      <div class="caution stack">
        {words.cautions.map((text) => (
          <p key={text}>{text}</p>
        ))}
      </div>
      <ol class="steps">
        {words.steps.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <section class="stack">
        <Choice
          label={words.sparks}
          down
          options={[
            { value: "1", words: words.everyTurn, hint: words.everyTurnHint },
            { value: "0.5", words: words.everySecond, hint: words.everySecondHint },
          ]}
          value={sparks}
          onChoose={setSparks}
        />
        <Choice
          label={words.away}
          options={METRES.map((value) => ({
            value,
            words: words.metres(figure(Number(value), value === "0.5" ? 1 : 0)),
          }))}
          value={metres}
          onChoose={setMetres}
        />
        <TextField label={words.device} value={device} onInput={setDevice} />
        {microphone === null ? (
          <>
            <label class="button main file">
              {words.load}
              <input
                type="file"
                accept=".wav,audio/wav"
                onChange={(event) => void event.currentTarget.files?.[0]?.arrayBuffer().then(prove)}
              />
            </label>
            <button type="button" class="button" disabled={busy} onClick={() => void record()}>
              {words.record}
            </button>
          </>
        ) : (
          <button type="button" class="button main" onClick={stop}>
            {words.stop(figure(seconds, 0))}
          </button>
        )}
        {trouble !== null && <p role="alert">{allWords.listen.troubles[trouble]}</p>}
        {busy && <p role="status">{words.reckoning}</p>}
        {why !== null && <p role="alert">{words.why[why]}</p>}
      </section>
      {proved !== null && (
        <section class="stack">
          <ProofResult proved={proved} />
          <button type="button" class="button main" onClick={() => void keep()}>
            {words.keep}
          </button>
        </section>
      )}
    </Screen>
  );
}
