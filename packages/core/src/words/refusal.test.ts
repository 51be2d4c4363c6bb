import { expect, test } from "vitest";
import { refuse } from "../units/outcome.ts";
import { german } from "./de.ts";
import { english } from "./en.ts";
import { spanish } from "./es.ts";
import { refusalText } from "./refusal.ts";
import { warningText } from "./warning.ts";

const why = refuse("height-unit", "A height of 4000 could be metres or feet: say which unit it is.");

test("a refusal is said by its reason in the language, and as it says itself in English", () => {
  expect(refusalText(why, english)).toBe(why.detail);
  expect(refusalText(why, german)).toBe("Das können Meter oder Fuß sein: Schreib die Einheit dazu.");
  expect(refusalText(why, spanish)).toBe("Pueden ser metros o pies: escribe la unidad.");
});

test("a reason without a sentence is said as the refusal says itself", () => {
  expect(refusalText(refuse("zorn", "Zorn."), german)).toBe("Zorn.");
});

test("figures are said where the refusal gives all that a stretch names, with a decimal comma", () => {
  const table = { refusals: { r: "Kurz[: {seconds} s, mindestens {least}]. Noch[ {other}] einmal." } };
  expect(refusalText(refuse("r", "-", { seconds: "3.5", least: 5 }), table)).toBe(
    "Kurz: 3,5 s, mindestens 5. Noch einmal.",
  );
  expect(refusalText(refuse("r", "-", { seconds: 3 }), table)).toBe("Kurz. Noch einmal.");
  expect(refusalText(refuse("r", "-"), table)).toBe("Kurz. Noch einmal.");
});

test.each(["air-unusable", "fuel-unusable"] as const)(
  "%s gives the reason inside in its own language",
  (code) => {
    const given = { why, placeM: 640, ratio: 40 };
    expect(warningText({ code, given }, english)).toContain(why.detail);
    expect(warningText({ code, given }, german)).toMatch(/^Das können Meter oder Fuß sein.* Bis dahin/);
    expect(warningText({ code, given }, spanish)).toMatch(/^Pueden ser metros o pies.* Hasta entonces/);
  },
);

test("a needle that cannot be used says why in its own language", () => {
  const warning = { code: "needle-measurement-unusable", given: { why } } as const;
  expect(warningText(warning, german)).toMatch(/^Das können Meter/);
  expect(warningText(warning, spanish)).toMatch(/^Pueden ser metros/);
});
