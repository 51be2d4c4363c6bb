import { useWatched } from "../store/value.ts";
import { syncLine } from "../sync/paired.ts";

/** Where this device stands with its shop; nothing without one. */
export function SyncLine() {
  const Line = useWatched(syncLine);
  return Line === null ? null : <Line />;
}
