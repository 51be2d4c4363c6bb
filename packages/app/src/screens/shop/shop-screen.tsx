import { useEffect, useState } from "preact/hooks";
import { useShop } from "../../store/shop.ts";
import { PAIRED } from "../../sync/paired.ts";
import { askJson } from "../../sync/remote.ts";
import { Screen } from "../../ui/screen.tsx";
import type { Me } from "./me.ts";
import { PairForm } from "./pair-form.tsx";
import { Paired } from "./paired.tsx";
import { useShopWords } from "./shop-words.ts";
import { StillListed } from "./still-listed.tsx";

/** Pairing with a shop; for a paired device, how it stands and who else may come in. */
export function ShopScreen({ params }: { readonly params: { readonly code?: string } }) {
  const words = useShopWords();
  const { settings } = useShop().database;
  const [me, setMe] = useState<Me | null | "asking">("asking");
  /** This device, while a shop it has left has it on its list. */
  const [listed, setListed] = useState<string | null>(null);

  useEffect(() => {
    // What the device was told last holds without a network; the server's word is better.
    settings
      .get(PAIRED)
      .then(async (kept) => {
        setMe((kept?.value as Me | undefined) ?? null);
        if (kept === undefined || !navigator.onLine) return;
        const fresh = await askJson<Me>("GET", "me");
        await settings.put({ key: PAIRED, value: fresh });
        setMe(fresh);
      })
      .catch(() => undefined);
  }, [settings]);

  const left = (still: boolean) => {
    if (still && me !== null && me !== "asking") setListed(me.device);
    setMe(null);
  };

  return (
    <Screen title={words.title} back={{ to: "/more", words: words.back }}>
      {me === null && listed !== null && <StillListed device={listed} onGone={() => setListed(null)} />}
      {me === null && <PairForm code={params.code ?? ""} onPaired={setMe} />}
      {me !== null && me !== "asking" && <Paired me={me} onLeft={left} />}
    </Screen>
  );
}
