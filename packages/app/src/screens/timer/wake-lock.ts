import { useEffect } from "preact/hooks";

/** Keeps the screen lit while `on`; where the browser cannot or will not, nothing happens. */
export function useWakeLock(on: boolean): void {
  useEffect(() => {
    if (!on || !("wakeLock" in navigator)) return;
    let lock: WakeLockSentinel | null = null;
    let wanted = true;
    const ask = () => {
      if (document.visibilityState !== "visible") return;
      navigator.wakeLock.request("screen").then(
        (given) => {
          if (wanted) lock = given;
          else void given.release();
        },
        () => undefined,
      );
    };
    ask();
    // The lock is lost whenever the page is hidden.
    document.addEventListener("visibilitychange", ask);
    return () => {
      wanted = false;
      document.removeEventListener("visibilitychange", ask);
      void lock?.release().catch(() => undefined);
    };
  }, [on]);
}
