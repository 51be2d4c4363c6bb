import { useEffect, useState } from "preact/hooks";
import { useShop } from "../store/shop.ts";
import { useWatched } from "../store/value.ts";
import { fetchFromShop, shopRounds } from "../sync/paired.ts";

/** Why a picture is not on this device: it is of no shop; on its way; not at the shop; the shop is out of reach. */
export type PhotoLack = "missing" | "coming" | "not-there" | "away";

/** A picture as it is found: its address, or why it is not here; null while it is looked up. */
export type FoundPhoto = { readonly address: string } | { readonly lack: PhotoLack } | null;

/** Finds a picture on this device, or gets it from the shop. */
export function usePhoto(hash: string): FoundPhoto {
  const shop = useShop();
  const news = useWatched(shop.version) + useWatched(shopRounds);
  const fetchPhoto = useWatched(fetchFromShop);
  const [found, setFound] = useState<FoundPhoto>(null);
  // One that is missing may come any time.
  const looked = found !== null && "lack" in found ? news : 0;
  useEffect(() => {
    let address: string | null = null;
    let current = true;
    const { photos } = shop.database;
    const look = async (): Promise<boolean> => {
      const blob = await photos.get(hash).catch(() => undefined);
      if (blob === undefined || !current) return false;
      address = URL.createObjectURL(blob);
      setFound({ address });
      return true;
    };
    const find = async (): Promise<void> => {
      if ((await look()) || !current) return;
      if (fetchPhoto === null) return setFound({ lack: "missing" });
      setFound({ lack: "coming" });
      const got = await fetchPhoto(hash);
      if (current && !(got === "here" && (await look())) && current) {
        setFound({ lack: got === "away" ? "away" : "not-there" });
      }
    };
    void find();
    return () => {
      current = false;
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [shop, hash, looked, fetchPhoto]);
  return found;
}
