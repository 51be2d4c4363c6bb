import type { LabourPart } from "@jetwright/core";
import type { Anatomies } from "../../engine/answers/anatomy.ts";
import { PhotoField } from "../../photos/photo-field.tsx";
import { ClipPicture } from "../../pictures/clip-picture.tsx";
import { ScrewPicture } from "../../pictures/screw-picture.tsx";
import { CarburetorSection } from "../../pictures/section/carburetor-section.tsx";
import { poseAt } from "../../pictures/section/pose.ts";
import { SectionDrawing } from "../../pictures/section/section-drawing.tsx";
import { useTurns } from "../../preferences/use-figure.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import "../../styles/section.css";
import { Choice } from "../../ui/choice.tsx";
import { useWords } from "../../words/use-words.ts";
import { typedFrom } from "../fitted/read-part.ts";
import { SeenChoice } from "../fitted/seen-choice.tsx";
import {
  type Came,
  type ChangeDraft,
  type DraftPhoto,
  type How,
  planned,
  screwSide,
} from "./change-draft.ts";
import { DrawerTicks } from "./drawer-ticks.tsx";
import { mayMove } from "./fitted-records.ts";
import { PartFields } from "./part-fields.tsx";

interface PartPageProps {
  readonly part: LabourPart;
  readonly draft: ChangeDraft;
  readonly anatomies: Anatomies | null;
  /** The field that could not be read, and whether it is of what came out or of what goes in. */
  readonly wrong: { readonly side: "came" | "went"; readonly field: string; readonly detail: string } | null;
  readonly onChange: (draft: ChangeDraft) => void;
  readonly onPhoto: (photo: DraftPhoto) => void;
  readonly onRemovePhoto: (photo: DraftPhoto) => void;
}

/** One part: how, where it sits, what came out and what goes in. */
export function PartPage({ part, draft, anatomies, wrong, onChange, onPhoto, onRemovePhoto }: PartPageProps) {
  const words = useWords().change;
  const edit = useWords().fitted.edit;
  const photoWords = useWords().photos;
  const [{ person }] = usePreferences();
  const { how, now, proposed } = planned(draft, part);
  const turns = useTurns();
  const written = valueText(part, now, turns);
  const first: Came = { is: written === null ? "other" : "as-written", typed: {}, how: "read by eye" };
  const came = draft.came[part];
  const is = came?.is ?? null;
  const setCame = (change: Partial<Came>) =>
    onChange({ ...draft, came: { ...draft.came, [part]: { ...first, ...came, ...change } } });
  const typed = draft.went[part] ?? typedFrom(part, proposed);
  const moved = mayMove(draft, part, edit);
  // What is turned or moved does not come out.
  const stays = part === "screw" || part === "clip";
  const photoField = (goesIn: boolean) => {
    const photos = draft.photos.filter((photo) => photo.part === part && (photo.goesIn ?? false) === goesIn);
    return (
      <PhotoField
        label={goesIn ? photoWords.labelNow : photoWords.label}
        photos={photos.map((photo) => ({ ...photo, part, of: "", by: null, at: photo.at ?? 0 }))}
        onKept={(hash) => onPhoto({ hash, part, goesIn, at: Date.now() })}
        onRemove={({ hash }) => onRemovePhoto(photos.find((photo) => photo.hash === hash)!)}
      />
    );
  };
  return (
    <>
      <p>{how ?? words.how(part)}</p>
      <PartDrawing part={part} draft={draft} anatomies={anatomies} />
      <SeenChoice
        part={part}
        screw={draft.plan.screw}
        numbering={draft.plan.numbering}
        seen={draft.seen}
        onSeen={(seen) => onChange({ ...draft, seen })}
      />
      <section class="stack">
        <Choice
          label={stays ? words.wasIn : words.cameOut}
          down
          value={is}
          options={[
            ...(written === null ? [] : [{ value: "as-written" as const, words: words.asWritten(written) }]),
            { value: "other", words: written === null ? words.goesRead : words.other },
            { value: "not-looked", words: words.notLooked },
          ]}
          onChoose={(choice) => setCame({ is: choice })}
        />
        {is === "other" && (
          <PartFields
            part={part}
            typed={came?.typed ?? {}}
            wrong={wrong?.side === "came" ? wrong : null}
            onType={(next) => setCame({ typed: next })}
          />
        )}
        {(is === "other" || is === "as-written") && (
          <>
            <Choice<How>
              label={words.known}
              value={came?.how ?? first.how}
              options={(["read by eye", "measured", "told"] as const).map((value) => ({
                value,
                words: edit.howOptions[value],
              }))}
              onChoose={(choice) => setCame({ how: choice })}
            />
            {person !== "" && <span class="small quiet">{words.by(person)}</span>}
          </>
        )}
        {photoField(false)}
      </section>
      <section class="stack">
        <h2>{stays ? words.setTo : words.goesIn}</h2>
        {proposed !== null && <p class="small quiet">{words.goesInHint}</p>}
        <PartFields
          part={part}
          typed={typed}
          wrong={wrong?.side === "went" ? wrong : null}
          onType={(next) => onChange({ ...draft, went: { ...draft.went, [part]: next } })}
        />
        {photoField(true)}
        <DrawerTicks
          took={moved.took === null ? null : draft.taken[part] !== false}
          kept={moved.kept === null ? null : draft.kept[part] !== false}
          onTook={(took) => onChange({ ...draft, taken: { ...draft.taken, [part]: took } })}
          onKept={(kept) => onChange({ ...draft, kept: { ...draft.kept, [part]: kept } })}
        />
      </section>
    </>
  );
}

/** Where the throttle stands so that the part shows at work. */
const SHOWN_AT: Readonly<Record<LabourPart, number>> = {
  pilot: 0,
  screw: 0,
  slide: 0.18,
  needle: 0.5,
  clip: 0.5,
  needleJet: 0.4,
  main: 1,
};
const SHOWS_AS = {
  pilot: "pilot",
  screw: "pilot",
  slide: "slide",
  needle: "needle",
  clip: "needle",
  needleJet: "needle",
  main: "main",
} as const satisfies Readonly<Record<LabourPart, string>>;

function PartDrawing({ part, draft, anatomies }: Pick<PartPageProps, "part" | "draft" | "anatomies">) {
  const words = useWords().change;
  const { proposed } = planned(draft, part);
  const anatomy = anatomies?.now;
  if (anatomy === undefined) return null;
  const to = typeof proposed === "object" && proposed !== null ? (proposed as Record<string, unknown>) : {};
  const known = (name: "clip" | "screw") => !anatomy.usual.includes(name);
  if (part === "screw") {
    const turns = typeof to.turnsOut === "number" ? to.turnsOut : null;
    const kind = screwSide(draft);
    return kind === null ? null : (
      <ScrewPicture kind={kind} turns={known("screw") ? anatomy.screw.turns : null} to={turns} />
    );
  }
  if (part === "clip") {
    const groove = typeof to.groove === "number" ? to.groove : null;
    return <ClipPicture grooves={anatomy.grooves} clip={known("clip") ? anatomy.clip : null} to={groove} />;
  }
  return (
    <>
      <SectionDrawing
        anatomy={anatomy}
        pose={{ ...poseAt(anatomy, SHOWN_AT[part]), leads: SHOWS_AS[part] }}
      />
      <details>
        <summary>{words.drawing}</summary>
        <CarburetorSection anatomy={anatomies?.after ?? anatomy} opening={SHOWN_AT[part]} />
      </details>
    </>
  );
}

/** What the log says is in, short; null when nobody knows. */
function valueText(part: LabourPart, now: unknown, turns: (turns: number) => string): string | null {
  if (typeof now !== "object" || now === null) return null;
  const { number, marks, maker } = typedFrom(part, now);
  const figure = (part === "screw" && number ? turns(Number(number)) : number) || marks;
  if (!figure) return null;
  return maker ? `${figure} (${maker})` : figure;
}
