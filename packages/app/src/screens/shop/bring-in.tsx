import { useState } from "preact/hooks";
import { useAnswer } from "../../store/shop.ts";
import { askJson, Refused } from "../../sync/remote.ts";
import { Choice } from "../../ui/choice.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { QrCode } from "../sheet/qr-code.tsx";
import type { Me } from "./me.ts";
import { useShopWords } from "./shop-words.ts";

interface Invited {
  readonly code: string;
  /** Where other machines open the app, when the server knows. */
  readonly openAt?: string | null;
}

/** Where the other device opens the app: as this one did, unless this one is the server itself. */
function originFor({ openAt }: Invited): string {
  const here = /^(localhost|127\.0\.0\.1|\[::1\])$/.test(location.hostname);
  return here && openAt ? new URL(openAt).origin : location.origin;
}

/** Makes the code for one more device, for a person with a role. */
export function BringIn({ role: own }: { readonly role: Me["role"] }) {
  const words = useShopWords();
  const whyNot = useRefusal();
  const bikes = useAnswer("bikes", null);
  const roles = own === "owner" ? (["technician", "rider", "owner"] as const) : (["rider"] as const);
  const [role, setRole] = useState<Me["role"]>(roles[0]);
  const [name, setName] = useState("");
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [invited, setInvited] = useState<Invited | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);

  async function make(): Promise<void> {
    setWrong(null);
    try {
      const who = { name, role, ...(role === "rider" ? { bikes: chosen } : {}) };
      setInvited(await askJson<Invited>("POST", "invitations", who));
    } catch (error) {
      setWrong(
        error instanceof Refused ? whyNot({ reason: error.reason, detail: error.message }) : words.away,
      );
    }
  }

  return (
    <section class="stack">
      <h2>{words.bringIn}</h2>
      <TextField
        label={words.person}
        value={name}
        onInput={(typed) => setName(typed.slice(0, 100))}
        wrong={wrong}
      />
      <Choice
        label={words.role}
        value={role}
        down
        options={roles.map((one) => ({ value: one, words: words.roles[one], hint: words.roleHints[one] }))}
        onChoose={setRole}
      />
      {role === "rider" && (
        <fieldset class="field">
          <legend>{words.bikes}</legend>
          {bikes?.map(({ id, name: bike }) => (
            <label key={id} class="row">
              <span>{bike}</span>
              <input
                type="checkbox"
                checked={chosen.includes(id)}
                onChange={() =>
                  setChosen(chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id])
                }
              />
            </label>
          ))}
        </fieldset>
      )}
      <button type="button" class="button" disabled={name.trim() === ""} onClick={() => void make()}>
        {words.makeCode}
      </button>
      {invited !== null && (
        <>
          <p role="status">{words.codeIs(invited.code)}</p>
          <QrCode text={`${originFor(invited)}/#/shop/${invited.code}`} label={words.qr} />
        </>
      )}
    </section>
  );
}
