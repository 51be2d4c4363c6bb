import { useEffect, useState } from "preact/hooks";
import { useShop } from "../store/shop.ts";
import { useWatched } from "../store/value.ts";

/** The address of a picture; "missing" when it is not on this device, null while it is looked up. */
export function usePhoto(hash: string): string | "missing" | null {
  const shop = useShop();
  const version = useWatched(shop.version);
  const [found, setFound] = useState<string | null>(null);
  // One that is missing may come from the shop any time.
  const looked = found === "missing" ? version : 0;
  useEffect(() => {
    let address: string | null = null;
    let current = true;
    shop.database.photos
      .get(hash)
      .catch(() => undefined)
      .then((blob) => {
        if (!current) return;
        if (blob !== undefined) address = URL.createObjectURL(blob);
        setFound(address ?? "missing");
      });
    return () => {
      current = false;
      if (address !== null) URL.revokeObjectURL(address);
    };
  }, [shop, hash, looked]);
  return found;
}
