import { useRef, useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import { useFigure } from "../../preferences/use-figure.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { InsecureNotice } from "../insecure/insecure-notice.tsx";
import "../../styles/cards.css";
import "../../styles/listen.css";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { HeardList } from "./heard-list.tsx";
import type { Take } from "./sound-messages.ts";
import { SoundPicture } from "./sound-picture.tsx";
import { TakesList } from "./takes-list.tsx";
import { useListener } from "./use-listener.ts";
import { waveBytes } from "./wave-bytes.ts";

/** Engine speed and what it did, from the phone's microphone or from a file. */
export function Listen({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const whyNot = useRefusal();
  const allWords = useWords();
  const words = allWords.listen;
  const figure = useFigure();
  const shop = useShop();
  const [, go] = useLocation();
  const [rpm, setRpm] = useState<number | null>(null);
  const [strip, setStrip] = useState<readonly (number | null)[]>([]);
  const [seconds, setSeconds] = useState(0);
  const [taken, setTaken] = useState<Take | null>(null);
  const answer = useAnswer("soundEngine", taken === null ? { bike } : { bike, figures: taken.figures });
  const [refused, setRefused] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const [withSound, setWithSound] = useState(false);
  const file = useRef<File | null>(null);
  const back = { to: bikeAddress(bike), words: words.back };

  const { microphone, trouble, open, close, tell } = useListener((said) => {
    if (said.say === "speed") {
      setRpm(said.rpm);
      setSeconds(said.seconds);
      setStrip((old) => [...old.slice(-119), said.rpm]);
    } else if (said.say === "not-wave") void decode();
    else {
      setBusy(false);
      if (said.say === "heard") setTaken(said);
      if (said.say === "refused") setRefused(whyNot(said.why));
    }
  });

  if (answer === null || !answer.ok) {
    return (
      <Screen title={words.title} back={back}>
        <p>{answer === null ? "…" : whyNot(answer)}</p>
      </Screen>
    );
  }
  const { engine } = answer.value;

  async function start() {
    setTaken(null);
    setRefused(null);
    setStrip([]);
    await open((rate) => ({ say: "begin", engine, rate, whole: true }));
  }

  function stop() {
    close();
    setBusy(true);
    tell({ say: "end" });
  }

  async function load(chosen: File | undefined) {
    if (chosen === undefined) return;
    file.current = chosen;
    setTaken(null);
    setRefused(null);
    setBusy(true);
    const bytes = await chosen.arrayBuffer();
    tell({ say: "wave", file: bytes, engine }, [bytes]);
  }

  /** Whatever the browser can decode. */
  async function decode() {
    try {
      const context = new OfflineAudioContext(1, 1, 48000);
      const sound = await context.decodeAudioData(await file.current!.arrayBuffer());
      const samples = sound.getChannelData(0).slice();
      tell({ say: "clip", samples, rate: sound.sampleRate, engine }, [samples.buffer]);
    } catch {
      setBusy(false);
      setRefused(words.cannotDecode);
    }
  }

  async function keep(good: boolean) {
    if (taken === null) return;
    const { heard, figures, speed } = taken;
    const events = heard.events.map(({ kind, at }) => ({ kind, atSeconds: Math.round(at * 100) / 100 }));
    let clip: string | null = null;
    if (withSound) {
      clip = await shop.database.photos.put(wave(taken.samples, taken.rate)).catch(() => null);
      if (clip === null) {
        say(words.soundLost);
        return;
      }
    }
    const body = {
      figures,
      speed: { ...speed },
      events,
      ...(good && { good }),
      ...(clip !== null && { clip }),
    };
    const kept = await shop.keep({ kind: "sound-heard", bike, body });
    say(kept.ok ? words.kept : kept.detail);
    if (kept.ok) go(bikeAddress(bike, "next"));
  }

  function play(second: number) {
    if (taken === null) return;
    const from = Math.floor(second * taken.rate);
    const piece = taken.samples.slice(from, from + taken.rate);
    const url = URL.createObjectURL(wave(piece, taken.rate));
    const sound = new Audio(url);
    sound.onended = () => URL.revokeObjectURL(url);
    void sound.play().catch(() => URL.revokeObjectURL(url));
  }

  function save() {
    if (taken === null) return;
    const link = document.createElement("a");
    link.href = URL.createObjectURL(wave(taken.samples, taken.rate));
    link.download = `${bike}.wav`;
    link.click();
    URL.revokeObjectURL(link.href);
  }

  return (
    <Screen title={words.title} back={back}>
      <div class="caution stack">
        <p>{words.caution}</p>
        <p>{words.made}</p>
      </div>
      <section class="stack">
        <InsecureNotice />
        <p>{words.guide}</p>
        {microphone === null ? (
          <button type="button" class="button main" disabled={busy} onClick={() => void start()}>
            {words.start}
          </button>
        ) : (
          <>
            <p class="needle" aria-live="off">
              <span class="needle-figure">{rpm === null ? "–" : figure(Math.round(rpm / 10) * 10, 0)}</span>
              <span class="quiet"> {words.rpm}</span>
            </p>
            <Strip values={strip} />
            {microphone.stillOn.length > 0 && (
              <p role="alert">{words.stillOn(microphone.stillOn.join(", "))}</p>
            )}
            <button type="button" class="button main" onClick={stop}>
              {words.stop(figure(seconds, 0))}
            </button>
          </>
        )}
        {trouble !== null && <p role="alert">{words.troubles[trouble]}</p>}
        {microphone === null && (
          <label class="button file">
            {words.load}
            <input
              type="file"
              accept="audio/*,.wav"
              onChange={(event) => void load(event.currentTarget.files?.[0])}
            />
          </label>
        )}
        {microphone === null && (
          <Link class="button" href={bikeAddress(bike, "sweep")}>
            {allWords.sweep.open}
          </Link>
        )}
        {busy && <p role="status">{words.reckoning}</p>}
        {refused !== null && <p role="alert">{refused}</p>}
      </section>
      {taken !== null && (
        <>
          <HeardList take={taken} sound={answer.value} />
          <SoundPicture heard={taken.heard} onSecond={play} />
          <div class="stack">
            {taken.heard.doubts.length === 0 && (
              <>
                <ul class="ticked">
                  <li>
                    <label>
                      <input
                        type="checkbox"
                        checked={withSound}
                        onChange={(event) => setWithSound(event.currentTarget.checked)}
                      />
                      <span>{words.keepSound(figure((2 * taken.samples.length) / 1e6, 1))}</span>
                    </label>
                  </li>
                </ul>
                <button type="button" class="button main" onClick={() => void keep(false)}>
                  {words.keep}
                </button>
                <button type="button" class="button" onClick={() => void keep(true)}>
                  {words.keepGood}
                </button>
              </>
            )}
            <button type="button" class="button plain" onClick={save}>
              {words.save}
            </button>
            <p class="small quiet">{words.notKept}</p>
          </div>
        </>
      )}
      {taken === null && microphone === null && (
        <>
          <TakesList bike={bike} takes={answer.value.takes} />
          <Link class="button plain" href={bikeAddress(bike, "proof")}>
            {allWords.proof.open}
          </Link>
        </>
      )}
    </Screen>
  );
}

const wave = (samples: Float32Array, rate: number): Blob =>
  new Blob([waveBytes(samples, rate)], { type: "audio/wav" });

/** The last seconds of speed, as a line. */
function Strip({ values }: { readonly values: readonly (number | null)[] }) {
  const y = (rpm: number): number => 60 * (1 - Math.log2(rpm / 700) / Math.log2(16000 / 700));
  const path = values
    .map((rpm, i) => (rpm === null ? "" : `${values[i - 1] ? "L" : "M"}${i * 3} ${y(rpm).toFixed(1)}`))
    .join("");
  return (
    <svg class="strip" viewBox="0 0 360 60" preserveAspectRatio="none" aria-hidden="true">
      <path d={path} class="track" />
    </svg>
  );
}
