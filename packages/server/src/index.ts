// The only door of the package.

export type { Database } from "./database/database.ts";
export { LOG_FILE, openDatabase, stopWhenAsked } from "./run/open-database.ts";
export type { RunningServer, ServerOptions } from "./run/server.ts";
export { startServer } from "./run/server.ts";
