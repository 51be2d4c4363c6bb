import type { Preferences } from "../preferences/preferences.ts";

/** Languages that have words of their own, each by its own name. */
export const LANGUAGES: readonly { readonly language: Preferences["language"]; readonly name: string }[] = [
  { language: "en", name: "English" },
];
