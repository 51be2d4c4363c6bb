import { accept, type Outcome, refuse } from "@jetwright/core";
import { fitInside } from "./fit-inside.ts";

/** A file larger than this is not tried: decoded, it would take more memory than a phone gives a page. */
const MOST_BYTES = 100_000_000;
const QUALITY = 0.82;

/**
 * A picture as it is kept: upright, at most 1600 pixels on its longer side, JPEG on white. It is drawn anew, so nothing
 * else that stood in the file comes with it: no place, no time, no camera. Refuses what the browser cannot open.
 */
export async function shrinkPhoto(file: Blob): Promise<Outcome<Blob, "too-large" | "unreadable">> {
  if (file.size > MOST_BYTES) return refuse("too-large", `${file.size} bytes, at most ${MOST_BYTES}`);
  try {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    const { width, height } = fitInside(picture);
    const canvas = document.createElement("canvas");
    Object.assign(canvas, { width, height });
    const pen = canvas.getContext("2d")!;
    pen.fillStyle = "white";
    pen.fillRect(0, 0, width, height);
    pen.imageSmoothingQuality = "high";
    pen.drawImage(picture, 0, 0, width, height);
    picture.close();
    const shrunk = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
    if (shrunk !== null) return accept(shrunk);
  } catch {
    // No picture, a damaged one, one of a kind the browser does not know, or no memory for it: it never says which.
  }
  return refuse("unreadable", "the browser cannot open it as a picture");
}
