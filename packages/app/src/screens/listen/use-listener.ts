import { useEffect, useRef, useState } from "preact/hooks";
import { type Microphone, type MicrophoneTrouble, openMicrophone } from "./microphone.ts";
import type { FromListener, ToListener } from "./sound-messages.ts";

interface Listener {
  /** The microphone while it runs. */
  readonly microphone: Microphone | null;
  readonly trouble: MicrophoneTrouble | null;
  /** Opens the microphone and hands its sound to the worker; `begin` says how it is to be read, at the rate it comes. */
  readonly open: (begin: (rate: number) => ToListener) => Promise<void>;
  readonly close: () => void;
  readonly tell: (message: ToListener, transfer?: Transferable[]) => void;
}

/** The worker that reads sound and the microphone that feeds it, for as long as the screen is there. */
export function useListener(hear: (message: FromListener) => void): Listener {
  const [microphone, setMicrophone] = useState<Microphone | null>(null);
  const [trouble, setTrouble] = useState<MicrophoneTrouble | null>(null);
  const worker = useRef<Worker | null>(null);
  const newest = useRef(hear);
  newest.current = hear;
  useEffect(() => {
    const own = new Worker(new URL("./listener.worker.ts", import.meta.url), { type: "module" });
    worker.current = own;
    own.onmessage = ({ data }: MessageEvent<FromListener>) => newest.current(data);
    return () => own.terminate();
  }, []);
  useEffect(() => () => microphone?.stop(), [microphone]);
  const tell = (message: ToListener, transfer: Transferable[] = []) =>
    worker.current?.postMessage(message, transfer);
  return {
    microphone,
    trouble,
    tell,
    async open(begin) {
      setTrouble(null);
      const opened = await openMicrophone(([samples]) => {
        if (samples !== undefined) tell({ say: "sound", samples }, [samples.buffer]);
      });
      if (!opened.ok) {
        setTrouble(opened.trouble);
        return;
      }
      tell(begin(opened.value.rate));
      setMicrophone(opened.value);
    },
    close() {
      microphone?.stop();
      setMicrophone(null);
    },
  };
}
