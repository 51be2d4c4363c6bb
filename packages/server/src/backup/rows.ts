import * as z from "zod/mini";

// What a backup keeps of people, devices and pictures: one JSON object a line.

const id = z.string().check(z.minLength(1), z.maxLength(64));
const when = z.number();
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));

export const SHOP_ROW = z.strictObject({ name: z.string(), createdAt: when });
export const PERSON_ROW = z.strictObject({
  id,
  name: z.string(),
  role: z.enum(["owner", "technician", "rider"]),
  createdAt: when,
  bikes: z.array(id),
});
/** Of a device's secret its SHA-256 alone: it goes on without being paired again, and nobody else can use it. */
export const DEVICE_ROW = z.strictObject({
  id,
  person: id,
  name: z.string(),
  tokenHash: hash,
  createdAt: when,
  seenAt: when,
  revokedAt: z.nullable(when),
});
export const BLOB_ROW = z.strictObject({ hash, size: z.number(), type: z.string(), createdAt: when });

export type PersonRow = z.infer<typeof PERSON_ROW>;
export type DeviceRow = z.infer<typeof DEVICE_ROW>;
export type BlobRow = z.infer<typeof BLOB_ROW>;
