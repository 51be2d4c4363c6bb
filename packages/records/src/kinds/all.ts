import type * as z from "zod/mini";
import type { AnyKind } from "../kind.ts";
import { adviceGiven } from "./advice-given.ts";
import { airMeasured } from "./air-measured.ts";
import { bikeDescribed } from "./bike-described.ts";
import { bikePutAway } from "./bike-put-away.ts";
import { checkDone } from "./check-done.ts";
import { customerDescribed } from "./customer-described.ts";
import { partsBought, partsCounted, partsUsed } from "./drawer-parts.ts";
import { engineChanged } from "./engine-changed.ts";
import { fuelUsed } from "./fuel-used.ts";
import { knownGoodMarked } from "./known-good-marked.ts";
import { labourNoted } from "./labour-noted.ts";
import { mixtureMeasured } from "./mixture-measured.ts";
import { needleMeasured } from "./needle-measured.ts";
import { note, photo } from "./note.ts";
import { personErased } from "./person-erased.ts";
import { preferenceSet } from "./preference-set.ts";
import { recordStruck } from "./record-struck.ts";
import { rideReported } from "./ride-reported.ts";
import { setupFitted } from "./setup-fitted.ts";
import { soundHeard } from "./sound-heard.ts";
import { soundProved } from "./sound-proved.ts";
import { testDone } from "./test-done.ts";
import { orderClosed, orderOpened, workNoted } from "./work-orders.ts";

const table = [
  bikeDescribed,
  bikePutAway,
  setupFitted,
  airMeasured,
  fuelUsed,
  rideReported,
  testDone,
  checkDone,
  mixtureMeasured,
  partsCounted,
  partsBought,
  partsUsed,
  needleMeasured,
  labourNoted,
  preferenceSet,
  engineChanged,
  knownGoodMarked,
  soundHeard,
  soundProved,
  note,
  photo,
  adviceGiven,
  customerDescribed,
  orderOpened,
  workNoted,
  orderClosed,
  personErased,
  recordStruck,
] as const;

type KindTable = (typeof table)[number];

/** Every kind of record, newest version, in the order of the manual. */
export const KINDS: readonly AnyKind[] = table;
export type KindName = KindTable["kind"];
/** The body of a kind's newest version. */
export type BodyOf<Name extends KindName> = z.infer<Extract<KindTable, { kind: Name }>["body"]>;
