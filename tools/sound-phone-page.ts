// What tools/sound-phone.ts puts into a page and into a worker.
export { listen } from "../packages/core/src/sound/listen.ts";
