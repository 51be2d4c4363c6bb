/** Puts text on the clipboard; false where the browser would not. */
export async function copyToClipboard(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Whether this device can hand text to another app. */
export const canShareText = (): boolean => typeof navigator !== "undefined" && "share" in navigator;

/** Hands text to another app; false where the person changed their mind or it cannot be done. */
export async function shareText(title: string, text: string): Promise<boolean> {
  try {
    await navigator.share({ title, text });
    return true;
  } catch {
    return false;
  }
}

/** Saves text as a file in the place for downloads. */
export function saveFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "application/x-ndjson" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A file for other apps; text/plain, since phones will not share what they do not know. */
const shareable = (name: string, text: string): File => new File([text], name, { type: "text/plain" });

/** Whether this device can hand a file to another app, such as a cloud folder or a message. */
export function canShareFile(): boolean {
  try {
    return navigator.canShare?.({ files: [shareable("a.txt", "a")] }) ?? false;
  } catch {
    return false;
  }
}

/** Hands a file to another app; false where the person changed their mind or it cannot be done. */
export async function shareFile(name: string, text: string): Promise<boolean> {
  try {
    await navigator.share({ files: [shareable(`${name}.txt`, text)], title: name });
    return true;
  } catch {
    return false;
  }
}
