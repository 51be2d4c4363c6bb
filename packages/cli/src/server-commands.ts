/** The commands of the shop's server, with one line of the list each. */
export const SERVER_COMMANDS = {
  serve: "keeps a shop's log and serves the app",
  backup: "writes a backup of the shop's server while it runs",
  restore: "puts a backup back",
} as const;

export const isServerCommand = (name: string | undefined): name is keyof typeof SERVER_COMMANDS =>
  name !== undefined && Object.hasOwn(SERVER_COMMANDS, name);
