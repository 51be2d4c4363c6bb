// The only door of the package: every public name, by topic. No `export *`.

// reading and writing
export { readBareRecord } from "./bare-record.ts";
// erasing
export { blankRecord, isErased } from "./blank-record.ts";
// words
export { digest } from "./canonical-json.ts";
export { closestWords, didYouMean } from "./closest-words.ts";
export { CORE_VOCABULARY } from "./core-vocabulary.ts";
export type { Entry, Envelope, KeptEntry, UsedEntry, UsedEntryOf } from "./entry.ts";
export { Erasures, isErasure } from "./erasures.ts";
// time and ids
export type { InstantReason } from "./instant.ts";
export { formatInstant, parseInstant } from "./instant.ts";
export type { Json, JsonObject } from "./json.ts";
export { isJsonObject } from "./json.ts";
export type { JsonSchema } from "./json-schemas.ts";
export { recordJsonSchemas } from "./json-schemas.ts";
// kinds
export type { AnyKind } from "./kind.ts";
export type { BodyOf, KindName } from "./kinds/all.ts";
export { KINDS } from "./kinds/all.ts";
export type { DrawerPart } from "./kinds/drawer-parts.ts";
export type { FittedPart } from "./kinds/setup-fitted.ts";
export { FITTED_PARTS } from "./kinds/setup-fitted.ts";
export type { Log, LogCounts, LogReaderOptions } from "./log-reader.ts";
export { LogReader, readLog, readLogText } from "./log-reader.ts";
export { mergeEntries } from "./merge.ts";
export type { Problem, RecordProblem } from "./problem.ts";
export { flaw } from "./problem.ts";
export { LINE_LIMIT } from "./read-line.ts";
export { compareIds, makeRecordId } from "./record-id.ts";
// replay
export type { CaseOptions, CaseRefusal, ReplayedCase } from "./replay/bike-case.ts";
export { bikeCase } from "./replay/bike-case.ts";
export type { CaseWarning } from "./replay/case-warning.ts";
export type { CountedPart, DrawerEntry, Shortage } from "./replay/counted-drawer.ts";
export type { Description } from "./replay/description.ts";
export type { KnownGood } from "./replay/known-good.ts";
export { knownGoodSetups } from "./replay/known-good.ts";
export type { Order } from "./replay/orders.ts";
export { replay } from "./replay/replay.ts";
export { reportAgeMinutes } from "./replay/report-age.ts";
export type { FittedParts, FittedSetup } from "./replay/setup-timeline.ts";
export type { BikeStory, Customer, Moment, Placed, ShopState } from "./replay/shop-state.ts";
export { airOf } from "./replay/si-air.ts";
export { shopDrawer } from "./replay/si-drawer.ts";
export type { SituationRefusal } from "./replay/situation-of-record.ts";
export { AS_FOUND, situationOfRecord } from "./replay/situation-of-record.ts";
export type { Struck } from "./replay/strikes.ts";
export { OPENING_WORDS, openingOf } from "./spoken-opening.ts";
export type { Vocabulary } from "./vocabulary.ts";
export type { FlawTold, FlawWords } from "./words/flaw-told.ts";
export { flawText } from "./words/flaw-told.ts";
export { writeLog, writeRecord } from "./write-record.ts";
