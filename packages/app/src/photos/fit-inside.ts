/** Longer side of a kept picture, pixels: the digits on a jet can be read, and a picture takes up about half a megabyte. */
export const MOST_PIXELS = 1600;

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A size with the same shape whose longer side is at most `most`, in whole pixels of 1 at least; never larger than it was. */
export function fitInside({ width, height }: Size, most = MOST_PIXELS): Size {
  const scale = Math.min(1, most / Math.max(width, height));
  const whole = (side: number): number => Math.max(1, Math.round(side * scale));
  return { width: whole(width), height: whole(height) };
}
