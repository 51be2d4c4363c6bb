import { useShop } from "../../store/shop.ts";
import { useWatched } from "../../store/value.ts";
import { PAIRED } from "../../sync/paired.ts";
import { endSync, syncSoon } from "../../sync/runner.ts";
import { syncState } from "../../sync/state.ts";
import { StateLine } from "../../sync/state-line.tsx";
import { DAMAGED, MOVED } from "../../sync/sync-once.ts";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { BringIn } from "./bring-in.tsx";
import { Devices } from "./devices.tsx";
import type { Me } from "./me.ts";
import { offTheList } from "./off-the-list.ts";
import { useShopWords } from "./shop-words.ts";

/** How this device stands with its shop, and the way out. */
export function Paired({ me, onLeft }: { readonly me: Me; readonly onLeft: (listed: boolean) => void }) {
  const words = useShopWords();
  const { settings } = useShop().database;
  const { notTaken } = useWatched(syncState);
  const whyNot = useRefusal();

  function whatOf(reason: string, detail: string): string {
    if (reason === MOVED) return words.moved(detail);
    return reason === DAMAGED ? words.damaged : whyNot({ reason, detail });
  }

  async function leave(): Promise<void> {
    endSync();
    await settings.delete(PAIRED);
    const gone = await offTheList(me.device);
    say(words.left);
    onLeft(!gone);
  }

  return (
    <div class="stack">
      <p>
        <b>{words.here(me.shopName, me.personName || words.nameRemoved, words.roles[me.role])}</b>
      </p>
      <StateLine />
      {notTaken.length > 0 && (
        <ul class="rows">
          {notTaken.slice(-20).map(({ id, reason, detail }) => (
            <li key={id} class="problem">
              {id}: {whatOf(reason, detail)}
            </li>
          ))}
        </ul>
      )}
      <button type="button" class="button" onClick={syncSoon}>
        {words.now}
      </button>
      {me.role !== "rider" && <BringIn role={me.role} />}
      {me.role === "owner" && <Devices own={me.device} />}
      <button type="button" class="button plain" onClick={() => void leave()}>
        {words.leave}
      </button>
      <p class="quiet small">{words.leaveHint}</p>
    </div>
  );
}
