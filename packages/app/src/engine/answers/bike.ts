import { type Situation, warningText } from "@jetwright/core";
import { bikeCase, type Description } from "@jetwright/records";
import type { ShopInWords } from "../state.ts";

export interface BikeView {
  readonly id: string;
  readonly name: string;
  readonly description: Description | null;
  /** What is fitted now, in the air and on the fuel last noted; null when nobody described the engine. */
  readonly now: Situation | null;
  /** The setup before the last change, to take it back. */
  readonly before: Situation | null;
  /** What was assumed, or should be settled. */
  readonly warnings: readonly { readonly code: string; readonly text: string }[];
  readonly rides: number;
  readonly oneChangeAtATime: boolean;
  /** The work order that is open for it, the last where there are several; null where none is. */
  readonly order: { readonly id: string; readonly complaint: string } | null;
}

/** One bike as it stands; null when no record is about it. */
export function bikeView({ shop, words }: ShopInWords, { bike }: { readonly bike: string }): BikeView | null {
  const story = shop.bikes.get(bike);
  if (story === undefined) return null;
  const made = bikeCase(shop, bike);
  const ridden = made.ok ? made.value.rides : [];
  const before = made.ok
    ? (ridden.findLast(({ situation }) => situation.setup !== made.value.now.setup) ?? null)
    : null;
  const order = shop.orders.findLast((one) => one.bike === bike && one.closed === null);
  return {
    id: bike,
    name: story.description?.name ?? bike,
    description: story.description,
    now: made.ok ? made.value.now : null,
    before: before?.situation ?? null,
    warnings: made.ok
      ? made.value.warnings.map((warning) => ({ code: warning.code, text: warningText(warning, words) }))
      : [],
    rides: ridden.length,
    oneChangeAtATime: made.ok ? made.value.oneChangeAtATime : false,
    order:
      order === undefined ? null : { id: order.id, complaint: order.opened.body.complaint?.trim() ?? "" },
  };
}
