import { useEffect, useState } from "preact/hooks";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useShop } from "../../store/shop.ts";
import { PAIRED } from "../../sync/paired.ts";
import { askJson, Refused } from "../../sync/remote.ts";
import { beginSync } from "../../sync/runner.ts";
import { TextField } from "../../ui/text-field.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import type { Me } from "./me.ts";
import { useShopWords } from "./shop-words.ts";

interface PairFormProps {
  readonly code: string;
  readonly onPaired: (me: Me) => void;
}

/** Letters of the code that opens a shop; the one for a further device has half of them. */
const FIRST_CODE = 16;

/** The code, a name for this device, and for a first start the names of the shop and its owner. */
export function PairForm({ code: given, onPaired }: PairFormProps) {
  const words = useShopWords();
  const whyNot = useRefusal();
  const shop = useShop();
  const [{ person }, setPreferences] = usePreferences();
  const [code, setCode] = useState(given);
  const [device, setDevice] = useState("");
  const [shopName, setShopName] = useState("");
  const [name, setName] = useState(person);
  const [wrong, setWrong] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const first = code.replaceAll(/[^A-Za-z0-9]/g, "").length >= FIRST_CODE;
  const ready =
    code !== "" && device.trim() !== "" && (!first || (shopName.trim() !== "" && name.trim() !== ""));

  // A code that came by camera stands in the address: it works once, but need not stay in the history.
  useEffect(() => {
    if (given !== "") history.replaceState(history.state, "", "#/shop");
  }, [given]);

  async function pair(): Promise<void> {
    setBusy(true);
    setWrong(null);
    try {
      const body = first ? { code, device, shop: shopName, person: name } : { code, device };
      await askJson("POST", first ? "setup" : "pair", body);
      const me = await askJson<Me>("GET", "me");
      await shop.database.settings.put({ key: PAIRED, value: me });
      if (person === "") setPreferences({ person: me.personName });
      beginSync(shop);
      onPaired(me);
    } catch (error) {
      setWrong(
        error instanceof Refused && error.reason !== "no-server"
          ? whyNot({ reason: error.reason, detail: error.message })
          : words.noServer,
      );
      setBusy(false);
    }
  }

  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void pair();
      }}
    >
      <p>{words.lead}</p>
      <TextField label={words.code} value={code} onInput={setCode} hint={words.codeHint} wrong={wrong} />
      <TextField label={words.device} value={device} onInput={(typed) => setDevice(typed.slice(0, 100))} />
      {first && (
        <>
          <p>{words.firstCode}</p>
          <TextField
            label={words.shopName}
            value={shopName}
            onInput={(typed) => setShopName(typed.slice(0, 100))}
          />
          <TextField label={words.person} value={name} onInput={(typed) => setName(typed.slice(0, 100))} />
        </>
      )}
      <button type="submit" class="button main" disabled={!ready || busy}>
        {words.pair}
      </button>
    </form>
  );
}
