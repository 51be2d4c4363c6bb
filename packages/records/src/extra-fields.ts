import { didYouMean } from "./closest-words.ts";
import { isJsonObject } from "./json.ts";
import type { JsonSchema } from "./json-schemas.ts";
import { type Flaw, flaw, joinPath } from "./problem.ts";

const list = (value: unknown): readonly JsonSchema[] => (Array.isArray(value) ? value : []);

/** Does a branch with constant fields (a discriminator) fit this object? */
function fits(branch: JsonSchema, value: object): boolean {
  if (!isJsonObject(branch.properties)) return false;
  return Object.entries(branch.properties).every(([name, field]) => {
    if (!isJsonObject(field) || !("const" in field)) return true;
    return (value as Record<string, unknown>)[name] === field.const;
  });
}

/** The fields a schema names for this object; null when it names none, as for a record of any names. */
function knownFields(schema: JsonSchema, value: object): Record<string, JsonSchema> | null {
  const own = schema.properties as Record<string, JsonSchema> | undefined;
  if (schema.anyOf === undefined && schema.oneOf === undefined) return own ?? null;
  const branches = [...list(schema.anyOf), ...list(schema.oneOf)].filter((branch) => fits(branch, value));
  if (branches.length === 0) return own ?? null;
  return Object.assign({}, own, ...branches.map((branch) => branch.properties));
}

/**
 * Fields that a schema does not name, each with its path: kept in the record, but worth a word, as they may be
 * a slip of the pen or come from a newer version.
 */
export function extraFields(schema: JsonSchema, value: unknown, path: string): Flaw[] {
  if (Array.isArray(value)) {
    if (!isJsonObject(schema.items)) return [];
    const items = schema.items as JsonSchema;
    return value.flatMap((one, i) => extraFields(items, one, joinPath(path, [i])));
  }
  if (!isJsonObject(value)) return [];
  const known = knownFields(schema, value);
  if (known === null) return [];
  const found: Flaw[] = [];
  for (const [name, field] of Object.entries(value)) {
    const one = Object.hasOwn(known, name) ? known[name] : undefined;
    if (one === undefined) {
      const mend = didYouMean(
        name,
        Object.keys(known),
        "Nothing needs doing if it comes from a newer version.",
      );
      found.push(flaw(joinPath(path, [name]), "is not a field we know; it is kept but not used", mend));
    } else if (typeof field === "object") {
      found.push(...extraFields(one, field, joinPath(path, [name])));
    }
  }
  return found;
}
