import { useEffect, useState } from "preact/hooks";
import { ask, askJson } from "../../sync/remote.ts";
import { useShopWords } from "./shop-words.ts";

interface Device {
  readonly id: string;
  readonly name: string;
  readonly personName: string;
  readonly revoked: boolean;
}

/** Who shuts a lost phone out waits beside the screen: a silent server is given up sooner than a large log. */
const SHUT_OUT_PATIENCE = 10_000;

/** The shop's devices, each with the way to shut it out. */
export function Devices({ own }: { readonly own: string }) {
  const words = useShopWords();
  const [devices, setDevices] = useState<readonly Device[]>([]);
  const [away, setAway] = useState(false);
  const [asking, setAsking] = useState(false);
  /** The name of a device that could not be shut out. It stays in sight: a toast would be gone. */
  const [notShut, setNotShut] = useState<string | null>(null);
  async function look(): Promise<void> {
    try {
      const { devices } = await askJson<{ devices: readonly Device[] }>("GET", "devices");
      setDevices(devices.map((device) => ({ ...device, name: device.name || words.nameRemoved })));
      setAway(false);
    } catch {
      setAway(true);
    }
  }
  async function shutOut({ id, name }: Device): Promise<void> {
    setAsking(true);
    setNotShut(null);
    try {
      await ask("DELETE", `devices/${id}`, undefined, SHUT_OUT_PATIENCE);
      await look();
    } catch {
      setNotShut(name);
    }
    setAsking(false);
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
      {notShut !== null && (
        <p class="warn" role="alert">
          {words.notShut(notShut)}
        </p>
      )}
      <ul class="rows">
        {devices.map((device) => (
          <li key={device.id} class="row">
            <span>
              {device.name} <span class="quiet small">{device.personName}</span>
            </span>
            {device.revoked && <span class="quiet small">{words.out}</span>}
            {!device.revoked && device.id !== own && (
              <button
                type="button"
                class="button plain short"
                disabled={asking}
                onClick={() => void shutOut(device)}
              >
                {words.shutDevice(device.name)}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
