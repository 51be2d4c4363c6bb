import { createRequire } from "node:module";

/** Version of the tool, from its package. */
export const VERSION: string = createRequire(import.meta.url)("../package.json").version;
