// The only door of the package.

export type { Database } from "./database/database.ts";
export type { LanServer } from "./lan/lan.ts";
export { startOnLan } from "./lan/lan.ts";
export { runServerCommand } from "./run/commands.ts";
export { LOG_FILE, openDatabase, stopWhenAsked } from "./run/open-database.ts";
export type { RunningServer, ServerOptions } from "./run/server.ts";
export { startServer } from "./run/server.ts";
export type { Terminal } from "./run/terminal.ts";
