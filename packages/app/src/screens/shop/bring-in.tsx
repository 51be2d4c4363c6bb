import { useState } from "preact/hooks";
import { useAnswer } from "../../store/shop.ts";
import { askJson, Refused } from "../../sync/remote.ts";
import { Choice } from "../../ui/choice.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { QrCode } from "../sheet/qr-code.tsx";
import type { Me } from "./me.ts";
import { useShopWords } from "./shop-words.ts";

/** Makes the code for one more device, for a person with a role. */
export function BringIn({ role: own }: { readonly role: Me["role"] }) {
  const words = useShopWords();
  const bikes = useAnswer("bikes", null);
  const roles = own === "owner" ? (["technician", "rider", "owner"] as const) : (["rider"] as const);
  const [role, setRole] = useState<Me["role"]>(roles[0]);
  const [name, setName] = useState("");
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [code, setCode] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);

  async function make(): Promise<void> {
    setWrong(null);
    try {
      const who = { name, role, ...(role === "rider" ? { bikes: chosen } : {}) };
      setCode((await askJson<{ code: string }>("POST", "invitations", who)).code);
    } catch (error) {
      setWrong(error instanceof Refused ? error.message : words.away);
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
      {code !== null && (
        <>
          <p role="status">{words.codeIs(code)}</p>
          <QrCode text={`${location.origin}/#/shop/${code}`} label={words.qr} />
        </>
      )}
    </section>
  );
}
