import { figure, type Language } from "../../words/figures.ts";

/** What the browser says of the room it gives us. */
export interface StorageState {
  /** The browser promised not to clear it by itself; null where it cannot be asked. */
  readonly lasting: boolean | null;
  /** Bytes; null where it cannot be told. */
  readonly used: number | null;
  readonly free: number | null;
  /** The browser clears what a site keeps after seven days without a visit, unless it is on the home screen. */
  readonly sevenDays: boolean;
}

/** Asks the browser; each question it cannot answer is null. */
export async function storageState(): Promise<StorageState> {
  const storage: Partial<StorageManager> = navigator.storage ?? {};
  const lasting = (await storage.persisted?.().catch(() => null)) ?? null;
  const room = (await storage.estimate?.().catch(() => null)) ?? null;
  const installed = window.matchMedia("(display-mode: standalone)").matches;
  return {
    lasting,
    used: room?.usage ?? null,
    free: room?.quota === undefined ? null : room.quota - (room.usage ?? 0),
    sevenDays: clearsAfterSevenDays(navigator.userAgent) && !installed && lasting !== true,
  };
}

/** Whether the browser is of the family that clears by the week; on a phone of that maker every browser is. */
export function clearsAfterSevenDays(userAgent: string): boolean {
  if (/iPhone|iPad|iPod/.test(userAgent)) return true;
  return /Safari\//.test(userAgent) && !/Chrome|Chromium|Android|CriOS|Edg/.test(userAgent);
}

/** Asks the browser to keep it for good; whether it will. */
export const askForLasting = async (): Promise<boolean> =>
  (await navigator.storage?.persist?.().catch(() => false)) ?? false;

const MEGA = 1_000_000;

/** Bytes in words people know: "3 MB", "1.2 GB". */
export function bytesText(bytes: number, language: Language): string {
  if (bytes < MEGA) return `${Math.max(1, Math.round(bytes / 1000))} kB`;
  return bytes < 1000 * MEGA
    ? `${Math.round(bytes / MEGA)} MB`
    : `${figure(bytes / (1000 * MEGA), 1, language)} GB`;
}
