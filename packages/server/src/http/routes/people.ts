import * as z from "zod/mini";
import { type Caller, devicesOf, revoke } from "../../shop/devices.ts";
import { invite, openShop, type Paired, pair } from "../../shop/pairing.ts";
import { peopleOf, setBikesOf } from "../../shop/people.ts";
import { json, refusal, refused } from "../answers.ts";
import { readJson } from "../read-body.ts";
import type { Ctx, Handler, Services } from "../services.ts";
import { addressOf, tokenCookie } from "../sign-in.ts";

/** What a person reads: no letters that steer a terminal, nor the letter 0, which PostgreSQL has not. */
const name = z.string().check(z.trim(), z.minLength(1), z.maxLength(100), z.regex(/^\P{Cc}*$/u));
const ID = /^[a-z0-9]{1,64}$/;
const code = z.string().check(z.minLength(1), z.maxLength(64));
const bikes = z.array(z.string().check(z.regex(/^[A-Za-z0-9._:-]{1,64}$/))).check(z.maxLength(500));
const give = z.optional(z.literal("token"));

const SETUP = z.strictObject({ code, shop: name, person: name, device: name, give });
const PAIR = z.strictObject({ code, device: name, give });
const INVITE = z.union([
  z.strictObject({ person: z.string().check(z.regex(ID)) }),
  z.strictObject({ name, role: z.enum(["owner", "technician", "rider"]), bikes: z.optional(bikes) }),
]);
const BIKES = z.strictObject({ bikes });

/** Codes are tried slowly: by one address, and by all together. */
function tooFast(context: Ctx, services: Services): Response | null {
  const now = services.now();
  const wait =
    services.limits.take("code", addressOf(context, services), now) ??
    services.limits.take("codes", "all", now);
  if (wait === null) return null;
  return refused(429, "too-many-tries", `Too many codes were tried. Wait ${wait} seconds.`, {
    "retry-after": String(wait),
  });
}

/** A browser gets its secret as a cookie that no script can read; a program asks for the text. */
function welcome(context: Ctx, services: Services, paired: Paired, give: "token" | undefined): Response {
  const { shop, person, device, token } = paired;
  if (give === "token") return json({ shop, person, device, token });
  return json({ shop, person, device }, 200, { "set-cookie": tokenCookie(context, services, token) });
}

export async function setUp(context: Ctx, services: Services): Promise<Response> {
  const slow = tooFast(context, services);
  if (slow !== null) return slow;
  const wanted = await readJson(context.req.raw, SETUP);
  if (!wanted.ok) return refusal(wanted);
  const opened = await openShop(services.database, wanted.value, services.now());
  return opened.ok ? welcome(context, services, opened.value, wanted.value.give) : refusal(opened);
}

export async function pairDevice(context: Ctx, services: Services): Promise<Response> {
  const slow = tooFast(context, services);
  if (slow !== null) return slow;
  const wanted = await readJson(context.req.raw, PAIR);
  if (!wanted.ok) return refusal(wanted);
  const paired = await pair(services.database, wanted.value, services.now());
  return paired.ok ? welcome(context, services, paired.value, wanted.value.give) : refusal(paired);
}

export const whoAmI: Handler = (_context, caller) => {
  const { shop, shopName, person, personName, role, device, scope } = caller;
  return json({ shop, shopName, person, personName, role, device, bikes: scope.all ? null : scope.bikes });
};

/** A code for one more device. A technician may bring riders in; the rest is the owner's. */
export const inviteDevice: Handler = async (context, caller, services) => {
  const wanted = await readJson(context.req.raw, INVITE);
  if (!wanted.ok) return refusal(wanted);
  const who = wanted.value;
  if (!(await mayInvite(caller, who, services))) {
    return refused(403, "not-allowed", "The owner of the shop brings in people who work there.");
  }
  const asked = await invite(
    services.database,
    caller.shop,
    "person" in who ? who : { ...who, bikes: who.bikes ?? [] },
    services.now(),
  );
  if (!asked.ok) return refusal(asked);
  // A page at "localhost" cannot know where the device that is brought in finds this server.
  return json({ ...asked.value, openAt: services.openAt?.() ?? null });
};

async function mayInvite(
  caller: Caller,
  who: z.infer<typeof INVITE>,
  { database }: Services,
): Promise<boolean> {
  if (caller.role === "owner") return true;
  if (!("person" in who)) return who.role === "rider";
  if (who.person === caller.person) return true;
  return (await peopleOf(database, caller.shop)).some(
    ({ id, role }) => id === who.person && role === "rider",
  );
}

export const listPeople: Handler = async (_context, { shop }, { database }) =>
  json({ people: await peopleOf(database, shop) });

export const changeBikes: Handler = async (context, caller, { database }) => {
  const wanted = await readJson(context.req.raw, BIKES, 100_000);
  if (!wanted.ok) return refusal(wanted);
  const person = context.req.param("person")!;
  const done = ID.test(person) && (await setBikesOf(database, caller.shop, person, wanted.value.bikes));
  return done ? json({}) : refused(404, "no-such-person", "No rider of that name is known in this shop.");
};

export const listDevices: Handler = async (_context, { shop }, { database }) =>
  json({ devices: await devicesOf(database, shop) });

/** Shuts a device out. Anyone may do it to the own one: that is signing out. */
export const revokeDevice: Handler = async (context, caller, services) => {
  const device = context.req.param("device")!;
  const own = device === caller.device;
  if (!own && caller.role !== "owner") {
    return refused(403, "not-allowed", "The owner of the shop shuts devices out.");
  }
  if (!ID.test(device) || !(await revoke(services.database, caller.shop, device, services.now()))) {
    return refused(404, "no-such-device", "No device of that name is known in this shop.");
  }
  services.live.end((stream) => stream.device === device);
  return json({}, 200, own ? { "set-cookie": tokenCookie(context, services, null) } : {});
};
