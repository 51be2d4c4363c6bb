import { isJsonObject } from "./json.ts";

/**
 * Whether a schema only grew since it was shipped: every field it had is as it was, and fields that came are
 * optional. Then old records still mean the same, and a new version is not needed.
 */
export function onlyAdds(before: unknown, now: unknown): boolean {
  if (Array.isArray(before)) {
    return (
      Array.isArray(now) && before.length === now.length && before.every((one, i) => onlyAdds(one, now[i]))
    );
  }
  if (!isJsonObject(before)) return Object.is(before, now);
  if (!isJsonObject(now)) return false;
  return [...new Set([...Object.keys(before), ...Object.keys(now)])].every((key) => {
    if (key === "properties") return fieldsOnlyAdd(before.properties, now.properties);
    return Object.hasOwn(before, key) && Object.hasOwn(now, key) && onlyAdds(before[key], now[key]);
  });
}

function fieldsOnlyAdd(before: unknown, now: unknown): boolean {
  if (!isJsonObject(before) || !isJsonObject(now)) return false;
  return Object.keys(before).every((name) => Object.hasOwn(now, name) && onlyAdds(before[name], now[name]));
}
