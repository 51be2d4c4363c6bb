import {
  type EngineSound,
  keptFigures,
  listen,
  readWave,
  type SpeedFollower,
  type StillMeter,
  speedFollower,
  speedOutline,
  stillMeter,
  takeFigures,
} from "@jetwright/core";
import { joined } from "./joined.ts";
import { prove } from "./prove.ts";
import type { FromListener, ToListener } from "./sound-messages.ts";

// Engine speed is reckoned here, off the page's own thread.

/** A take is cut off at this many seconds. */
const MOST_SECONDS = 120;

interface Live {
  readonly follower: SpeedFollower;
  readonly meter: StillMeter;
  readonly engine: EngineSound;
  readonly rate: number;
  /** The sound so far; null when it is not wanted as a whole. */
  readonly blocks: Float32Array[] | null;
}

let live: Live | null = null;

const say = (message: FromListener): void => self.postMessage(message);

function conclude(samples: Float32Array, rate: number, engine: EngineSound): void {
  const heard = listen(samples, rate, engine, { pictures: true });
  if (!heard.ok) {
    say({ say: "refused", why: heard });
    return;
  }
  say({
    say: "heard",
    heard: heard.value,
    samples,
    rate,
    measured: takeFigures(heard.value),
    figures: keptFigures(heard.value),
    speed: speedOutline(heard.value),
  });
}

self.onmessage = ({ data }: MessageEvent<ToListener>) => {
  switch (data.say) {
    case "begin": {
      const { engine, rate, whole } = data;
      live = {
        follower: speedFollower(engine, rate, { penalty: null, pictures: false }),
        meter: stillMeter(),
        engine,
        rate,
        blocks: whole ? [] : null,
      };
      break;
    }
    case "sound": {
      if (live === null) return;
      const { follower, meter, blocks } = live;
      if (blocks !== null && follower.seconds() > MOST_SECONDS) return;
      blocks?.push(data.samples);
      follower.push(data.samples);
      const seconds = follower.seconds();
      const rpm = follower.newest()?.rpm ?? null;
      meter.take(seconds, rpm ?? 0);
      say({ say: "speed", rpm, smooth: meter.recent(), still: meter.reading(), seconds });
      break;
    }
    case "turned":
      live?.meter.forget();
      break;
    case "end": {
      if (live !== null && live.blocks !== null) conclude(joined(live.blocks), live.rate, live.engine);
      live = null;
      break;
    }
    case "prove": {
      const { sound, engine, sparksPerTurn } = data;
      const proved = prove(sound, engine, sparksPerTurn);
      say(typeof proved === "string" ? { say: "not-proved", why: proved } : { say: "proved", ...proved });
      break;
    }
    case "clip":
      conclude(data.samples, data.rate, data.engine);
      break;
    case "wave": {
      const clip = readWave(new Uint8Array(data.file));
      if (!clip.ok) {
        say(
          clip.reason === "not-wave" || clip.reason === "unknown-coding"
            ? { say: "not-wave" }
            : { say: "refused", why: clip },
        );
        return;
      }
      conclude(clip.value.channels[0]!, clip.value.rate, data.engine);
    }
  }
};
