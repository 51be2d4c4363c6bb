import type { Arriving } from "../../shop/arriving.ts";
import { readArriving } from "../../shop/arriving.ts";
import type { Caller } from "../../shop/devices.ts";
import { isErasing, stands } from "../../shop/erasing.ts";
import { readPage } from "../../shop/log.ts";
import { mayWrite } from "../../shop/scope.ts";
import { json, refusal, refused } from "../answers.ts";
import { readText } from "../read-body.ts";
import type { Ctx, Handler, Services } from "../services.ts";

/** Most bytes and records of one push. */
export const PUSH_BYTES = 4_000_000;
export const PUSH_RECORDS = 2000;
export const LINES_TYPE = "application/jsonl; charset=utf-8";

/** Why a record was not taken; `known-otherwise`: another one stands under its id. */
export interface NotTaken {
  /** Of the lines sent, from 1. */
  readonly line: number;
  readonly id: string | null;
  readonly reason: "known-otherwise" | "not-a-record" | "not-allowed";
  readonly detail: string;
}

interface Sorted {
  readonly taken: { readonly line: number; readonly record: Arriving }[];
  readonly not: NotTaken[];
}

function sort(lines: readonly string[], { scope }: Caller): Sorted {
  const sorted: Sorted = { taken: [], not: [] };
  for (const [i, text] of lines.entries()) {
    if (text.trim() === "") continue;
    const read = readArriving(text);
    if (!read.ok) {
      sorted.not.push({ line: i + 1, id: null, reason: "not-a-record", detail: read.detail });
    } else if (!mayWrite(scope, read.value.kind, read.value.bike)) {
      const detail =
        "A rider reports rides, sounds, notes and pictures, of own bikes. Ask the shop to write it.";
      sorted.not.push({ line: i + 1, id: read.value.id, reason: "not-allowed", detail });
    } else {
      sorted.taken.push({ line: i + 1, record: read.value });
    }
  }
  return sorted;
}

/** Only an owner removes a person's data. Others may send an erasure back that stands here, as after a restored backup. */
async function withoutErasures(
  sorted: Sorted,
  { shop, role }: Caller,
  { database }: Services,
): Promise<Sorted> {
  if (role === "owner" || !sorted.taken.some(({ record }) => isErasing(record))) return sorted;
  const taken: Sorted["taken"] = [];
  const not = [...sorted.not];
  for (const one of sorted.taken) {
    if (!isErasing(one.record) || (await stands(database, shop, one.record))) taken.push(one);
    else {
      const detail = "The owner of the shop removes a person's data. Ask them to do it.";
      not.push({ line: one.line, id: one.record.id, reason: "not-allowed", detail });
    }
  }
  return { taken, not };
}

/** Takes records, one a line. What was taken is on the disk when the answer goes out. */
export const pushRecords: Handler = async (context, caller, services) => {
  const text = await readText(context.req.raw, PUSH_BYTES);
  if (!text.ok) return refusal(text);
  const lines = text.value.split("\n");
  if (lines.length > PUSH_RECORDS + 1) {
    return refused(
      413,
      "too-large",
      `At most ${PUSH_RECORDS} records can be sent at once. Send them in turns.`,
    );
  }
  const { taken, not } = await withoutErasures(sort(lines, caller), caller, services);
  const arrivals =
    taken.length === 0
      ? []
      : await services.queue.add(
          caller.shop,
          taken.map(({ record }) => record),
        );
  const count = (which: string) => arrivals.filter((one) => one === which).length;
  for (const [i, { line, record }] of taken.entries()) {
    if (arrivals[i] !== "conflict") continue;
    const detail =
      "Another record stands under this id, and that one is kept. Write this one again, under a new id.";
    not.push({ line, id: record.id, reason: "known-otherwise", detail });
  }
  const [added, known, conflict] = [count("added"), count("known"), count("conflict")];
  services.metrics.add("jetwright_records_added", added);
  services.metrics.add("jetwright_records_known", known);
  services.metrics.add("jetwright_records_conflict", conflict);
  services.metrics.add("jetwright_records_refused", not.length - conflict);
  if (conflict > 0)
    services.log({ what: "conflict", shop: caller.shop, device: caller.device, count: conflict });
  if (added > 0) services.live.news(caller.shop);
  return json({ added, known, refused: not });
};

/** The log behind a cursor: the first line says where it goes on, each other line is a record. */
export const pullRecords: Handler = async (context, caller, { database }) => {
  const asked = Number(context.req.query("most") ?? Number.NaN);
  const most = Number.isInteger(asked) && asked >= 1 ? Math.min(asked, 2000) : undefined;
  const page = await readPage(database, caller.shop, caller.scope, context.req.query("after") ?? "", most);
  const { lines, ...head } = page;
  return linesResponse([JSON.stringify(head), ...lines]);
};

const linesResponse = (lines: readonly string[]): Response =>
  new Response(`${lines.join("\n")}\n`, {
    headers: { "content-type": LINES_TYPE, "cache-control": "no-store" },
  });

/** Everything that the caller sees, as a file that reads without us. */
export const exportRecords: Handler = (_context, caller, { database }) => {
  let cursor = "";
  let more = true;
  const stream = new ReadableStream<Uint8Array>({
    pull: async (controller) => {
      if (!more) return controller.close();
      const page = await readPage(database, caller.shop, caller.scope, cursor);
      ({ cursor, more } = page);
      controller.enqueue(new TextEncoder().encode(page.lines.map((line) => `${line}\n`).join("")));
      if (!more) controller.close();
    },
  });
  return new Response(stream, {
    headers: {
      "content-type": LINES_TYPE,
      "cache-control": "no-store",
      "content-disposition": 'attachment; filename="log.jsonl"',
    },
  });
};

/** A stream that says when there are new records. */
export const followRecords: Handler = (_context: Ctx, caller: Caller, services: Services) => {
  const stream = services.live.open(caller.shop, caller.device);
  if (stream === null) {
    return refused(503, "too-many-streams", "Too many pages are open. This one asks now and then instead.");
  }
  return new Response(stream, {
    headers: {
      "content-type": "text/event-stream",
      "cache-control": "no-store",
      // For proxies that would gather the events.
      "x-accel-buffering": "no",
    },
  });
};
