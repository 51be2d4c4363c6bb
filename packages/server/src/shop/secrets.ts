import { createHash, randomBytes } from "node:crypto";

const LETTERS = "abcdefghijkmnpqrstuvwxyz23456789";

/** A random text of small letters and digits without those that are read for one another: 5 bits a letter. */
export const randomText = (length: number): string =>
  [...randomBytes(length)].map((byte) => LETTERS[byte & 31]).join("");

/** A device's secret: 256 random bits. */
export const newToken = (): string => randomBytes(32).toString("base64url");

/** A secret as it is stored. Plain SHA-256 is enough for 256 random bits; nobody can guess them. */
export const hashOf = (secret: string): string => createHash("sha256").update(secret).digest("hex");
