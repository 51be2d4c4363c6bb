import { useRef, useState } from "preact/hooks";
import { Link } from "wouter-preact";
import { saveFile } from "../../carry/hand-over.ts";
import { useShop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { keyOf, ProblemLine } from "./problem-line.tsx";
import { type FileRead, readFile } from "./read-file.ts";

type Phase =
  | { readonly is: "waiting"; readonly trouble?: string }
  | { readonly is: "reading"; readonly percent: number }
  | { readonly is: "read"; readonly name: string; readonly read: FileRead }
  | { readonly is: "keeping"; readonly done: number; readonly all: number };

/** Records kept at a time: each batch is kept whole or not at all. */
const BATCH = 500;

/** Takes a copy in: reads it, says what is in it, and keeps it only when told to. */
export function TakeIn() {
  const words = useWords().backup;
  const shop = useShop();
  const [phase, setPhase] = useState<Phase>({ is: "waiting" });
  const stop = useRef(new AbortController());

  const read = async (file: File) => {
    stop.current = new AbortController();
    setPhase({ is: "reading", percent: 0 });
    let found: FileRead;
    try {
      found = await readFile(file, {
        ask: (piece) => shop.engine.ask("readPiece", piece),
        onProgress: (done, all) =>
          setPhase({ is: "reading", percent: all === 0 ? 100 : Math.floor((100 * done) / all) }),
        signal: stop.current.signal,
      });
    } catch {
      setPhase({ is: "waiting", trouble: words.unopened(file.name) });
      return;
    }
    if (found.stopped) setPhase({ is: "waiting", trouble: words.stopped });
    else if (found.records === 0) setPhase({ is: "waiting", trouble: words.notOurs(file.name) });
    else setPhase({ is: "read", name: file.name, read: found });
  };

  const keep = async ({ fresh }: FileRead) => {
    stop.current = new AbortController();
    let done = 0;
    for (; done < fresh.length && !stop.current.signal.aborted; done += BATCH) {
      setPhase({ is: "keeping", done, all: fresh.length });
      const kept = await shop.take(fresh.slice(done, done + BATCH));
      if (!kept.ok) {
        setPhase({ is: "waiting", trouble: `${kept.detail} ${words.stoppedHalf(done)}` });
        return;
      }
    }
    const count = Math.min(done, fresh.length);
    setPhase(count < fresh.length ? { is: "waiting", trouble: words.stoppedHalf(count) } : { is: "waiting" });
    if (count === fresh.length) say(words.takenIn(count));
  };

  return (
    <section class="stack">
      <h2>{words.take}</h2>
      {phase.is === "waiting" && (
        <>
          <p class="quiet">{words.takeHint}</p>
          {phase.trouble !== undefined && (
            <p class="warn" role="alert">
              {phase.trouble}
            </p>
          )}
          <label class="button file">
            {words.choose}
            <input
              type="file"
              class="unseen"
              accept=".jsonl,.txt,.json,application/x-ndjson,text/plain"
              onChange={(event) => {
                const [file] = event.currentTarget.files ?? [];
                if (file !== undefined) void read(file);
              }}
            />
          </label>
          <Link class="row" href="/take">
            {words.fromLink} →
          </Link>
        </>
      )}
      {phase.is === "reading" && (
        <Progress
          words={words.reading(phase.percent)}
          value={phase.percent}
          most={100}
          stop={() => stop.current.abort()}
        />
      )}
      {phase.is === "keeping" && (
        <Progress
          words={words.keeping(phase.done, phase.all)}
          value={phase.done}
          most={phase.all}
          stop={() => stop.current.abort()}
        />
      )}
      {phase.is === "read" && (
        <FoundInFile
          name={phase.name}
          read={phase.read}
          keep={() => void keep(phase.read)}
          leave={() => setPhase({ is: "waiting" })}
        />
      )}
    </section>
  );
}

interface ProgressProps {
  readonly words: string;
  readonly value: number;
  readonly most: number;
  readonly stop: () => void;
}

function Progress({ words: said, value, most, stop }: ProgressProps) {
  const words = useWords().backup;
  return (
    <>
      <p role="status">{said}</p>
      <progress value={value} max={most} aria-label={said} />
      <button type="button" class="button" onClick={stop}>
        {words.stop}
      </button>
    </>
  );
}

interface FoundInFileProps {
  readonly name: string;
  readonly read: FileRead;
  readonly keep: () => void;
  readonly leave: () => void;
}

function FoundInFile({ name, read, keep, leave }: FoundInFileProps) {
  const words = useWords().backup;
  const { fresh, repeated, newerVersion, unknownKind, faulty, problems, problemCount, leftOut } = read;
  return (
    <>
      <p>
        <b>{words.found(name, read.lines)}</b>
      </p>
      <ul class="rows" role="status">
        {[
          words.fresh(fresh.length),
          repeated > 0 && words.repeated(repeated),
          newerVersion > 0 && words.newerVersion(newerVersion),
          unknownKind > 0 && words.unknownKind(unknownKind),
          faulty > 0 && words.faulty(faulty),
          leftOut.length > 0 && words.leftOut(leftOut.length),
        ]
          .filter((line) => line !== false)
          .map((line) => (
            <li key={line} class="problem">
              {line}
            </li>
          ))}
      </ul>
      {problemCount > 0 && (
        <details>
          <summary>{words.problems(problemCount)}</summary>
          <ul class="rows">
            {problems.map((problem) => (
              <ProblemLine key={keyOf(problem)} problem={problem} />
            ))}
            {problemCount > problems.length && (
              <li class="problem">{words.more(problemCount - problems.length)}</li>
            )}
          </ul>
        </details>
      )}
      {fresh.length > 0 && (
        <button type="button" class="button main" onClick={keep}>
          {words.takeIn(fresh.length)}
        </button>
      )}
      {leftOut.length > 0 && (
        <button
          type="button"
          class="button"
          onClick={() => saveFile(words.leftOutName, leftOut.map((line) => `${line}\n`).join(""))}
        >
          {words.leftOutDo}
        </button>
      )}
      <button type="button" class="button plain" onClick={leave}>
        {words.cancel}
      </button>
    </>
  );
}
