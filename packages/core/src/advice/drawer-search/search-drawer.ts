import { BestList, type Found } from "./best-list.ts";
import { collapseAt } from "./collapsed.ts";
import { type DrawerSpace, shiftOfChoice, writeShift } from "./drawer-space.ts";
import { foundAt } from "./found-at.ts";
import { LeanEdge } from "./lean-edge.ts";
import { LeanTest } from "./lean-test.ts";
import { expectedLoss, SHIFT_SIZE } from "./loss-table.ts";
import { OwnPart } from "./own-part.ts";
import { type PartnerTree, partnerTree } from "./partner-tree.ts";
import { type Considered, withoutTwins } from "./twins.ts";

/** How far a search has come: give it a moment by asking for the next, drop it to stop it. */
export interface SearchProgress {
  /** From 0 to 1, never going back. */
  readonly done: number;
  /** The best met so far, best first; the final list may hold others. */
  readonly best: readonly Found[];
}

/** What a search did, for the bench and the tests. */
export interface SearchTally {
  /** Pairs of needle and main jet, and of those the ones whose partners were looked at. */
  pairs: number;
  opened: number;
  /** Floors of single combinations, and losses worked out in full. */
  floors: number;
  losses: number;
  /** Bytes of typed arrays held at the most. */
  bytes: number;
}

export const newTally = (): SearchTally => ({ pairs: 0, opened: 0, floors: 0, losses: 0, bytes: 0 });

/** Work between two steps: a few milliseconds on a phone. */
const PAIRS_A_STEP = 2000;
const WORK_A_STEP = 6000;
/** A first look at so many pairs gives the centre of the floors and a list to beat. */
const FIRST_LOOK = 2000;
const RULED_OUT = -Infinity;
/** Sums round: a branch goes only when its floor lies above the limit by more than that. */
const roundingOf = (limit: number): number => 1e-7 + 1e-10 * Math.abs(limit);

/**
 * The best setups of a drawer, in the order of `inOrder`: exactly what weighing every combination gives. A step at a
 * time: each `next` does a few milliseconds of work; the value returned at the end is the list. Of a span of needles
 * only, so that several can share the work: `mergeLists` of the spans' lists is the whole's.
 *
 * Branch and bound over pairs of needle and main jet, the pair with the lowest floor first; within a pair over the
 * tree of partners. A branch is dropped when the floor of its loss, and of its minutes where they count, lies above
 * the last place of the list (partner-tree.ts), or when the lean limit rules it out (lean-edge.ts). What is left is
 * weighed in full.
 */
export function* searchDrawer(
  space: DrawerSpace,
  wanted: number,
  span: readonly [number, number] = [0, space.places.needles.length],
  tally: SearchTally = newTally(),
): Generator<SearchProgress, readonly Found[]> {
  const considered = withoutTwins(space, span, wanted);
  const best = new BestList(wanted);
  const pairs = considered.needles.length * considered.mains.length;
  tally.pairs = pairs;
  if (pairs === 0 || considered.partners.length === 0) return best.kept;
  yield { done: 0, best: [] };
  const start = shiftOfChoice(space, considered.needles[0]!, considered.mains[0]!, considered.partners[0]!);
  const stride = Math.max(1, Math.floor(pairs / FIRST_LOOK));
  const first = new BestList(wanted);
  const look = new Sweep(space, considered, start, first, Infinity, tally);
  // A stride that shares no factor with the number of main jets meets them all.
  for (const done of look.run(coprime(stride, considered.mains.length)))
    yield { done: 0.2 * done, best: first.kept };
  const top = first.kept[0];
  if (stride === 1) return first.kept;
  const centre = top === undefined ? start : shiftOfFound(space, top);
  const sweep = new Sweep(space, considered, centre, best, first.limit, tally);
  for (const done of sweep.run(1)) yield { done: 0.2 + 0.8 * done, best: best.kept };
  return best.kept;
}

/** The same in one go. */
export function bestSetups(
  space: DrawerSpace,
  wanted: number,
  span?: readonly [number, number],
  tally?: SearchTally,
): readonly Found[] {
  const search = searchDrawer(space, wanted, span, tally);
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

export function shiftOfFound(space: DrawerSpace, found: Found): Float64Array {
  const { pilots, screws } = space.places;
  const partner = (found.slide * pilots.length + found.pilot) * screws.length + found.screw;
  return shiftOfChoice(space, found.needle, found.main, partner);
}

function coprime(stride: number, count: number): number {
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  let next = stride;
  while (next > 1 && divisor(next, count) > 1) next++;
  return next;
}

class Sweep {
  readonly #space: DrawerSpace;
  readonly #considered: Considered;
  readonly #best: BestList;
  /** A total that so many setups of the span are known not to exceed. */
  readonly #known: number;
  readonly #tally: SearchTally;
  readonly #tree: PartnerTree;
  readonly #edge: LeanEdge;
  readonly #own: OwnPart;
  readonly #shift = new Float64Array(SHIFT_SIZE);
  readonly #stack: Int32Array;
  readonly #floors: Float64Array;
  readonly #leanest: LeanTest;
  #limit = Infinity;
  #worked = 0;

  constructor(
    space: DrawerSpace,
    considered: Considered,
    centre: Float64Array,
    best: BestList,
    known: number,
    tally: SearchTally,
  ) {
    this.#space = space;
    this.#considered = considered;
    this.#best = best;
    this.#known = known;
    this.#tally = tally;
    const collapsed = collapseAt(space.loss, centre);
    this.#tree = partnerTree(space.partners, considered.partners, collapsed);
    this.#edge = new LeanEdge(space.loss, this.#tree, space.leanChance);
    this.#own = new OwnPart(space, collapsed, this.#tree);
    this.#stack = new Int32Array(this.#tree.nodes + 1);
    this.#floors = new Float64Array(this.#tree.nodes + 1);
    this.#leanest = new LeanTest(space.loss, centre, space.leanChance);
    this.#renew();
  }

  /** Every pair whose number is a multiple of the stride; gives the share that is done. */
  *run(stride: number): Generator<number> {
    const pairs = Math.ceil((this.#considered.needles.length * this.#considered.mains.length) / stride);
    const floors = new Float64Array(pairs);
    let open = 0;
    for (let i = 0; i < pairs; i++) {
      const mask = this.#take(i * stride);
      if (this.#edge.rulesOut(0, this.#own.needle, this.#own.main)) {
        floors[i] = RULED_OUT;
      } else {
        this.#own.weigh();
        floors[i] = this.#own.floorOver(0) + this.#minutes(mask, 0);
        if (this.#isOpen(floors[i]!)) open++;
      }
      if (i % PAIRS_A_STEP === PAIRS_A_STEP - 1) yield (0.4 * i) / pairs;
    }
    const order = new Uint32Array(open);
    for (let i = 0, at = 0; i < pairs && at < open; i++) if (this.#isOpen(floors[i]!)) order[at++] = i;
    order.sort((a, b) => floors[a]! - floors[b]! || a - b);
    const bytes = floors.byteLength + order.byteLength + this.#edge.bytes + bytesOf(this.#tree);
    this.#tally.bytes = Math.max(this.#tally.bytes, bytes);
    for (let at = 0; at < open; at++) {
      const i = order[at]!;
      if (!this.#isOpen(floors[i]!)) continue;
      const mask = this.#take(i * stride);
      this.#own.weigh();
      this.#tally.opened++;
      this.#open(i * stride, mask);
      if (this.#worked > WORK_A_STEP) {
        this.#worked = 0;
        yield 0.4 + (0.6 * at) / open;
      }
    }
  }

  readonly #isOpen = (floor: number): boolean => floor !== RULED_OUT && !(floor > this.#limit);

  /** Takes up a pair by its number; gives the parts it changes. */
  #take(pair: number): number {
    const { needles, mains } = this.#considered;
    const needle = needles[Math.floor(pair / mains.length)]!;
    const main = mains[pair % mains.length]!;
    this.#own.shift(needle, main);
    return this.#space.needleMask[needle]! | this.#space.mainMask[main]!;
  }

  #minutes(mask: number, node: number): number {
    return this.#space.countMinutes ? this.#space.effort.floor[mask | this.#tree.mask[node]!]! : 0;
  }

  /** Goes through the tree with the pair at hand, the lower floor first. */
  #open(pair: number, mask: number): void {
    const { child, from, to } = this.#tree;
    const own = this.#own;
    const nodes = this.#stack;
    const floors = this.#floors;
    nodes[0] = 0;
    floors[0] = -Infinity;
    for (let left = 1; left > 0; ) {
      const node = nodes[--left]!;
      if (floors[left]! > this.#limit || this.#edge.rulesOut(node, own.needle, own.main)) continue;
      const first = child[node]!;
      if (first === 0) {
        for (let place = from[node]!; place < to[node]!; place++) this.#weigh(pair, mask, place);
        this.#worked += to[node]! - from[node]!;
        continue;
      }
      const one = own.floorOver(first) + this.#minutes(mask, first);
      const other = own.floorOver(first + 1) + this.#minutes(mask, first + 1);
      const firstLater = one > other;
      nodes[left] = firstLater ? first : first + 1;
      floors[left++] = firstLater ? one : other;
      nodes[left] = firstLater ? first + 1 : first;
      floors[left++] = firstLater ? other : one;
      this.#worked += 2;
    }
  }

  #weigh(pair: number, mask: number, place: number): void {
    const { effort, countMinutes, partners, loss } = this.#space;
    const partner = this.#tree.order[place]!;
    const minutes = countMinutes ? effort.minutes[mask | partners.mask[partner]!]! : 0;
    this.#tally.floors++;
    if (this.#own.floorWith(place) + minutes > this.#limit) return;
    writeShift(this.#shift, this.#own.needle, this.#own.main, partners, partner);
    this.#worked += loss.parts;
    if (!this.#leanest.keeps(this.#shift)) return;
    this.#tally.losses++;
    const { needles, mains } = this.#considered;
    const needle = needles[Math.floor(pair / mains.length)]!;
    const trouble = expectedLoss(loss, this.#shift);
    this.#best.offer(foundAt(this.#space, needle, mains[pair % mains.length]!, partner, trouble));
    this.#renew();
  }

  #renew(): void {
    const limit = Math.min(this.#known, this.#best.limit);
    this.#limit = limit + roundingOf(limit);
  }
}

function bytesOf(tree: PartnerTree): number {
  let sum = 0;
  for (const value of Object.values(tree)) if (ArrayBuffer.isView(value)) sum += value.byteLength;
  return sum;
}
