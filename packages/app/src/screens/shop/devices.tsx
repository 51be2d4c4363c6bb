import { useEffect, useState } from "preact/hooks";
import { ask, askJson } from "../../sync/remote.ts";
import { say } from "../../ui/toast.tsx";
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
  const [away, setAway] = useState(false);
  async function look(): Promise<void> {
    try {
      setDevices((await askJson<{ devices: readonly Device[] }>("GET", "devices")).devices);
      setAway(false);
    } catch {
      setAway(true);
    }
  }
  async function shutOut({ id, name }: Device): Promise<void> {
    try {
      await ask("DELETE", `devices/${id}`);
    } catch {
      say(words.notShut(name));
    }
    await look();
  }
  useEffect(() => {
    // Without a network the question is not asked: a browser would count it as an error of the page.
    if (navigator.onLine) void look();
    else setAway(true);
  }, []);
  return (
    <section class="stack">
      <h2>{words.devices}</h2>
      {away && <p class="quiet">{words.away}</p>}
      <ul class="rows">
        {devices.map((device) => (
          <li key={device.id} class="row">
            <span>
              {device.name} <span class="quiet small">{device.personName}</span>
            </span>
            {device.revoked && <span class="quiet small">{words.out}</span>}
            {!device.revoked && device.id !== own && (
              <button type="button" class="button plain" onClick={() => void shutOut(device)}>
                {words.shutDevice(device.name)}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
