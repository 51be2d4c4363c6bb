import type { FittedPart, JsonObject } from "@jetwright/records";
import { useState } from "preact/hooks";
import { Link, Redirect, useLocation } from "wouter-preact";
import type { DrawerLine } from "../../engine/answers/drawer/drawer-view.ts";
import type { Fitted } from "../../engine/answers/fitted.ts";
import { PhotoField } from "../../photos/photo-field.tsx";
import { removePhoto } from "../../photos/remove-photo.ts";
import { fittedPhotos } from "../../photos/shown-photo.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { DrawerTicks } from "../change/drawer-ticks.tsx";
import { fromDrawer, intoDrawer, isBackIn, movedParts } from "../change/from-drawer.ts";
import { keepUndoable } from "./keep-undoable.ts";
import { FIELDS, type PartField, readPart, typedFrom } from "./read-part.ts";
import { type Seen, seenDrafts } from "./seen.ts";
import { SeenChoice } from "./seen-choice.tsx";

type How = "measured" | "read by eye" | "told";

/** One part corrected, filled in, or written down as changed. */
export function EditPart({ params }: { readonly params: { readonly bike: string; readonly part: string } }) {
  const { bike, part } = params;
  const words = useWords().fitted;
  const fitted = useAnswer("fitted", { bike });
  const drawer = useAnswer("drawer", null);
  const back = { to: bikeAddress(bike, "fitted"), words: words.title };
  if (fitted === null)
    return (
      <Screen title={words.title} back={back}>
        {null}
      </Screen>
    );
  if (!fitted.ok) {
    return (
      <Screen title={words.title} back={back}>
        <p>{fitted.detail}</p>
      </Screen>
    );
  }
  if (!Object.hasOwn(FIELDS, part)) return <Redirect to={back.to} replace />;
  const stock = drawer?.groups.flatMap(({ lines }) => lines) ?? [];
  return <PartForm bike={bike} part={part as FittedPart} fitted={fitted.value} drawer={stock} back={back} />;
}

interface PartFormProps {
  readonly bike: string;
  readonly part: FittedPart;
  readonly fitted: Fitted;
  readonly drawer: readonly DrawerLine[];
  readonly back: { readonly to: string; readonly words: string };
}

function PartForm({ bike, part, fitted, drawer, back }: PartFormProps) {
  const whyNot = useRefusal();
  const { fitted: words, photos: photoWords, pictures } = useWords();
  const shop = useShop();
  const photos = fittedPhotos(useAnswer("photos", { bike }) ?? []);
  const [, go] = useLocation();
  const row = fitted.rows.find((one) => one.part === part)!;
  const known = row.value !== null;
  const [typed, setTyped] = useState(() => typedFrom(part, row.told));
  const [how, setHow] = useState<How>(row.how === "unknown" ? "read by eye" : row.how);
  const [happened, setHappened] = useState<"found" | "changed">(known ? "changed" : "found");
  // What the carburetor is, where nobody looked yet: the same look tells it.
  const [seen, setSeen] = useState<Seen>({});
  // When the first picture was taken on this page, milliseconds since 1970: it shows the part as it is here.
  const [pictured, setPictured] = useState<number | null>(null);
  const [wrong, setWrong] = useState<{ readonly field: PartField; readonly detail: string } | null>(null);
  const [took, setTook] = useState(true);
  const [kept, setKept] = useState(true);
  const reading = readPart(
    part,
    typed,
    how,
    { ...words.edit, whyNot },
    { before: row.told, grooves: fitted.grooves },
  );
  const told = typeof row.told === "object" ? (row.told as JsonObject) : null;
  const moves =
    known && happened === "changed" && told !== null && reading.ok && !isBackIn(told, reading.value);
  const goesIn = moves ? fromDrawer(part, reading.value, drawer, fitted.numbering) : null;
  const cameOff = moves ? intoDrawer(part, told, drawer, fitted.numbering) : null;
  const name = part === "screw" && fitted.screw !== null ? words.screw[fitted.screw] : words.part[part];

  async function keep(unknown: boolean) {
    const read = unknown ? null : reading;
    if (read !== null && !read.ok) {
      setWrong({ field: read.reason, detail: read.detail });
      return;
    }
    const found = happened === "found" && !unknown;
    const moved = unknown
      ? {}
      : movedParts(
          took && goesIn !== null ? [{ ...(goesIn as unknown as JsonObject), count: 1 }] : [],
          kept && cameOff !== null ? [cameOff] : [],
        );
    const written = await keepUndoable(
      shop,
      bike,
      words,
      {
        kind: "setup-fitted",
        ...(found || unknown || pictured === null ? {} : { at: pictured }),
        body: {
          [part]: read === null ? "unknown" : read.value,
          ...moved,
          ...(found ? { asFound: true } : fitted.record === null ? {} : { replaces: fitted.record }),
        },
      },
      ...seenDrafts(seen),
    );
    if (!written.ok) {
      say(written.detail);
      return;
    }
    go(back.to);
    say(unknown ? words.edit.unknownKept : words.kept, written.value);
  }

  async function keepPhoto(hash: string) {
    const at = Date.now();
    const written = await keepUndoable(shop, bike, photoWords, { kind: "photo", at, body: { hash, part } });
    if (!written.ok) return say(written.detail);
    setPictured((first) => first ?? at);
    say(photoWords.kept, written.value);
  }

  const field = (key: PartField, label: string, hint?: string, unit?: string) => {
    const common = {
      label,
      hint,
      value: typed[key] ?? "",
      wrong: wrong?.field === key ? wrong.detail : null,
      onInput: (text: string) => {
        setTyped((before) => ({ ...before, [key]: text }));
        setWrong(null);
      },
    };
    // Fractions, groove words and marks need the whole keyboard.
    const plain = key === "maker" || key === "marks" || part === "clip" || part === "screw";
    return plain ? <TextField {...common} /> : <NumberField {...common} unit={unit} />;
  };

  return (
    <Screen
      title={name}
      back={back}
      bar={
        <>
          <button type="button" onClick={() => void keep(true)} disabled={!known}>
            {words.edit.unknown}
          </button>
          <button type="button" class="main" onClick={() => void keep(false)}>
            {words.edit.keep}
          </button>
        </>
      }
    >
      {part === "screw" && fitted.screw !== null && <p>{pictures.screw.rule[fitted.screw]}</p>}
      {part === "clip" && <p>{pictures.clip.rule}</p>}
      {part === "needle" && field("marks", words.edit.marks, words.edit.marksHint)}
      {part === "needle" && field("grooves", words.edit.grooves)}
      {part === "needle" && field("pitch", words.edit.pitch, undefined, "mm")}
      {part === "screw" && field("number", words.edit.turns, words.edit.turnsHint)}
      {part === "clip" && field("number", words.edit.groove)}
      {part === "slide" && field("number", words.edit.cutaway, undefined, "mm")}
      {part === "needleJet" && field("number", words.edit.bore, words.edit.boreHint, "mm")}
      {part === "fuelLevel" && field("number", words.edit.lift, undefined, "mm")}
      {FIELDS[part].includes("maker") && field("number", words.edit.jet, words.edit.jetHint)}
      {FIELDS[part].includes("maker") && field("maker", words.edit.maker, words.edit.makerHint)}
      <SeenChoice
        part={part}
        screw={fitted.screw}
        numbering={fitted.numbering}
        seen={seen}
        onSeen={setSeen}
      />
      {known && (
        <Choice
          label={words.edit.happened}
          down
          value={happened}
          options={[
            { value: "changed", words: words.edit.changed, hint: words.edit.changedHint },
            { value: "found", words: words.edit.found, hint: words.edit.foundHint },
          ]}
          onChoose={setHappened}
        />
      )}
      <DrawerTicks
        took={goesIn === null ? null : took}
        kept={cameOff === null ? null : kept}
        onTook={setTook}
        onKept={setKept}
      />
      <Choice
        label={words.edit.known}
        value={how}
        options={(["read by eye", "measured", "told"] as const).map((value) => ({
          value,
          words: words.edit.howOptions[value],
        }))}
        onChoose={setHow}
      />
      <PhotoField
        label={photoWords.label}
        photos={photos.get(part) ?? []}
        onKept={(hash) => void keepPhoto(hash)}
        onRemove={({ record }) => void removePhoto(shop, bike, record, photoWords)}
      />
      {part === "needle" && (
        <Link class="button plain" href="/drawer/needle">
          {words.measure}
        </Link>
      )}
    </Screen>
  );
}
