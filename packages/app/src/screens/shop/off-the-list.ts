import { ask, Refused } from "../../sync/remote.ts";

/** Who waits for it stands beside the screen: a silent server is given up soon. */
const PATIENCE = 10_000;

/** Takes this device off its shop's list; false where the server did not answer, and has it there still. */
export async function offTheList(device: string): Promise<boolean> {
  // Without a network the question is not asked: a browser would count it as an error of the page.
  if (!navigator.onLine) return false;
  try {
    await ask("DELETE", `devices/${device}`, undefined, PATIENCE);
    return true;
  } catch (error) {
    // A server that does not know this device any more has it on no list.
    return error instanceof Refused && error.status === 401;
  }
}
