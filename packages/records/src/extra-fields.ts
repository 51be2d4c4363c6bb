import type * as z from "zod/mini";
import { closestWords } from "./closest-words.ts";
import { isJsonObject } from "./json.ts";
import { type Flaw, flaw, joinPath } from "./problem.ts";

type Schema = z.core.$ZodTypes;
type Fields = Readonly<Record<string, unknown>>;

/** A schema without what is wrapped around it: that it may be left out. */
function bare(schema: unknown): Schema {
  const { def } = (schema as Schema)._zod;
  return def.type === "optional" ? bare(def.innerType) : (schema as Schema);
}

/** Does an object with constant fields (a discriminator) fit this value? */
const fits = (shape: Fields, value: Fields): boolean =>
  Object.entries(shape).every(([name, field]) => {
    const { def } = bare(field)._zod;
    return def.type !== "literal" || (def.values as readonly unknown[]).includes(value[name]);
  });

/** The fields a schema names for this object; null when it names none, as for a record of any names. */
function knownFields(schema: Schema, value: Fields): Fields | null {
  const { def } = schema._zod;
  if (def.type === "object") return def.shape;
  if (def.type !== "union") return null;
  const branches = def.options.flatMap((option) => {
    const { def: branch } = bare(option)._zod;
    return branch.type === "object" && fits(branch.shape, value) ? [branch.shape] : [];
  });
  return branches.length === 0 ? null : Object.assign({}, ...branches);
}

/**
 * Fields that a schema does not name, each with its path: kept in the record, but worth a word, as they may be
 * a slip of the pen or come from a newer version.
 */
export function extraFields(schema: unknown, value: unknown, path: string): Flaw[] {
  const inner = bare(schema);
  if (Array.isArray(value)) {
    const { def } = inner._zod;
    if (def.type !== "array") return [];
    return value.flatMap((one, i) => extraFields(def.element, one, joinPath(path, [i])));
  }
  if (!isJsonObject(value)) return [];
  const known = knownFields(inner, value);
  if (known === null) return [];
  const found: Flaw[] = [];
  for (const [name, field] of Object.entries(value)) {
    const one = Object.hasOwn(known, name) ? known[name] : undefined;
    if (one === undefined) {
      const near = closestWords(name, Object.keys(known));
      found.push(flaw(joinPath(path, [name]), "extra-field", { near, outside: false }));
    } else if (typeof field === "object") {
      found.push(...extraFields(one, field, joinPath(path, [name])));
    }
  }
  return found;
}

/** The value with only the fields that its schema names, at every depth. */
export function onlyKnown(schema: unknown, value: unknown): unknown {
  const inner = bare(schema);
  if (Array.isArray(value)) {
    const { def } = inner._zod;
    return def.type === "array" ? value.map((one) => onlyKnown(def.element, one)) : value;
  }
  if (!isJsonObject(value)) return value;
  const known = knownFields(inner, value);
  if (known === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, field]) =>
      Object.hasOwn(known, name) ? [[name, onlyKnown(known[name], field)]] : [],
    ),
  );
}
