import { blobRemoteBy } from "./blob-remote.ts";
import { askAt, remoteBy } from "./remote.ts";

// The app's own way to speak with a server, at an address of the tests' and with a device's token.

const asking = (base: string, token: string) => askAt(base, { authorization: `Bearer ${token}` });

export const remoteAt = (base: string, token: string) => remoteBy(asking(base, token));
export const blobsAt = (base: string, token: string) => blobRemoteBy(asking(base, token));
