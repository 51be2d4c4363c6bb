import { type EngineSound, listen, readWave, type SpeedFollower, speedFollower } from "@jetwright/core";
import type { FromListener, ToListener } from "./sound-messages.ts";

// Engine speed is reckoned here, off the page's own thread.

/** A take is cut off at this many seconds. */
const MOST_SECONDS = 120;

let live: { follower: SpeedFollower; engine: EngineSound; rate: number; blocks: Float32Array[] } | null =
  null;

const say = (message: FromListener): void => self.postMessage(message);

function conclude(samples: Float32Array, rate: number, engine: EngineSound): void {
  const heard = listen(samples, rate, engine, { pictures: true });
  if (heard.ok) say({ say: "heard", heard: heard.value, samples, rate });
  else say({ say: "refused", detail: heard.detail });
}

function joined(blocks: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(blocks.reduce((sum, block) => sum + block.length, 0));
  let at = 0;
  for (const block of blocks) {
    whole.set(block, at);
    at += block.length;
  }
  return whole;
}

self.onmessage = ({ data }: MessageEvent<ToListener>) => {
  switch (data.say) {
    case "begin": {
      const { engine, rate } = data;
      live = {
        follower: speedFollower(engine, rate, { penalty: null, pictures: false }),
        engine,
        rate,
        blocks: [],
      };
      break;
    }
    case "sound": {
      if (live === null || live.follower.seconds() > MOST_SECONDS) return;
      live.blocks.push(data.samples);
      live.follower.push(data.samples);
      say({ say: "speed", rpm: live.follower.newest()?.rpm ?? null, seconds: live.follower.seconds() });
      break;
    }
    case "end": {
      if (live !== null) conclude(joined(live.blocks), live.rate, live.engine);
      live = null;
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
            : { say: "refused", detail: clip.detail },
        );
        return;
      }
      conclude(clip.value.channels[0]!, clip.value.rate, data.engine);
    }
  }
};
