import { Link } from "wouter-preact";
import { useShopWords } from "../screens/shop/shop-words.ts";
import { useWatched } from "../store/value.ts";
import { syncState } from "./state.ts";
import { MOVED } from "./sync-once.ts";

/** "12 records not yet at the shop", or that all are there. */
export function StateLine() {
  const words = useShopWords();
  const { connection, waiting, pictures, picturesKept, noRoom, notTaken } = useWatched(syncState);
  const left = notTaken.filter(({ reason }) => reason !== MOVED).length;
  return (
    <p class="quiet small" role="status">
      <Link href="/shop">
        {connection === "shut-out" ? words.shutOut : waiting > 0 ? words.waiting(waiting) : words.together}
        {connection !== "shut-out" && pictures > 0 && ` ${words.pictures(pictures)}`}
        {picturesKept > 0 && ` ${words.picturesKept(picturesKept)}`}
        {noRoom && ` ${words.noRoom}`}
        {connection === "away" && ` ${words.away}`}
        {left > 0 && ` ${words.notTaken(left)}`}
      </Link>
    </p>
  );
}
