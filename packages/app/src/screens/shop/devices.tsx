import { useEffect, useState } from "preact/hooks";
import { ask, askJson } from "../../sync/remote.ts";
import { useShopWords } from "./shop-words.ts";

interface Device {
  readonly id: string;
  readonly name: string;
  readonly personName: string;
  readonly revoked: boolean;
}

/** The shop's devices, each with the way to shut it out. */
export function Devices({ own }: { readonly own: string }) {
  const words = useShopWords();
  const [devices, setDevices] = useState<readonly Device[]>([]);
  const look = async (): Promise<void> => {
    if (!navigator.onLine) return;
    setDevices((await askJson<{ devices: readonly Device[] }>("GET", "devices")).devices);
  };
  useEffect(() => void look().catch(() => undefined), []);
  return (
    <section class="stack">
      <h2>{words.devices}</h2>
      <ul class="rows">
        {devices.map(({ id, name, personName, revoked }) => (
          <li key={id} class="row">
            <span>
              {name} <span class="quiet small">{personName}</span>
            </span>
            {revoked && <span class="quiet small">{words.out}</span>}
            {!revoked && id !== own && (
              <button
                type="button"
                class="button plain"
                onClick={() =>
                  void ask("DELETE", `devices/${id}`)
                    .then(look)
                    .catch(() => undefined)
                }
              >
                {words.shutDevice(name)}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
