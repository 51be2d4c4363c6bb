import { type Refusal, refuse } from "@jetwright/core";

/** What a person should know when a file cannot be read or written; an error that is none of the file's is thrown on. */
export function fileTrouble(error: unknown, path: string, doing: "read" | "write"): Refusal {
  const code = (error as NodeJS.ErrnoException | null)?.code;
  switch (code) {
    case "ENOENT":
      return doing === "read"
        ? refuse("no-such-file", `There is no file ${path}. Check its name and the folder you are in.`)
        : refuse("no-such-folder", `The folder of ${path} is not there. Make it first.`);
    case "EISDIR":
      return refuse("folder", `${path} is a folder. Name a file in it.`);
    case "ENOTDIR":
      return refuse("no-such-file", `Part of the path ${path} is a file and not a folder.`);
    case "EEXIST":
      return refuse(
        "file-exists",
        `${path} is there already, and nothing is written over. Choose another name.`,
      );
    case "EACCES":
    case "EPERM":
    case "EROFS":
      return refuse("not-allowed", `You may not ${doing} ${path}. Check who owns it.`);
    case "ENOSPC":
      return refuse("disk-full", `The disk is full: ${path} could not be written.`);
    case "EMFILE":
    case "EIO":
    case "ENAMETOOLONG":
    case "ELOOP":
    case "ENXIO":
      return refuse("file-trouble", `${path} cannot be used (${code}).`);
    default:
      throw error;
  }
}
