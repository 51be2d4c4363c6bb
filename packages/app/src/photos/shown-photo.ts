import type { FittedPart } from "@jetwright/records";
import type { BikePhoto } from "../engine/answers/photos/photos-of.ts";
import type { Words } from "../words/en.ts";

/** A picture as it is shown, with what is known of it. */
export type ShownPhoto = Pick<BikePhoto, "hash" | "part" | "of" | "by" | "at">;

/** What is in a picture, for its title. */
export const photoTitle = ({ part, of }: Pick<ShownPhoto, "part" | "of">, words: Words): string =>
  part !== null ? words.fitted.part[part] : of === "" ? words.photos.picture : of;

/** The pictures of the parts as they are fitted now, by part, newest first. */
export function fittedPhotos(photos: readonly BikePhoto[]): ReadonlyMap<FittedPart, readonly BikePhoto[]> {
  const byPart = new Map<FittedPart, BikePhoto[]>();
  for (const photo of photos) {
    if (photo.part === null || !photo.fitted) continue;
    byPart.set(photo.part, [...(byPart.get(photo.part) ?? []), photo]);
  }
  return byPart;
}
