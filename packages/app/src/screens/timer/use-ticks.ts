import { useEffect, useState } from "preact/hooks";

const EVERY = 100;

/** Milliseconds since `start`, drawn ten times a second; 0 while it is null. Right after the screen slept, too. */
export function useElapsed(start: number | null): number {
  const [now, setNow] = useState(0);
  useEffect(() => {
    if (start === null) return;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), EVERY);
    return () => clearInterval(timer);
  }, [start]);
  return start === null ? 0 : Math.max(0, now - start);
}
