import type { Found } from "./best-list.ts";
import type { DrawerSpace } from "./drawer-space.ts";
import { changesIn } from "./effort.ts";

/** A combination, by the numbers of needle, main jet and partner, with its trouble, as an entry of the list. */
export function foundAt(
  space: DrawerSpace,
  needle: number,
  main: number,
  partner: number,
  trouble: number,
): Found {
  const mask = space.needleMask[needle]! | space.mainMask[main]! | space.partners.mask[partner]!;
  const minutes = space.effort.minutes[mask]!;
  const screws = space.places.screws.length;
  const pairs = space.places.pilots.length * screws;
  const pair = partner % pairs;
  return {
    needle,
    main,
    slide: Math.floor(partner / pairs),
    pilot: Math.floor(pair / screws),
    screw: pair % screws,
    trouble,
    minutes,
    total: space.countMinutes ? trouble + minutes : trouble,
    changes: changesIn(mask),
  };
}
