import { REFERENCES } from "../reference/all.ts";
import { runCheck } from "../reference/check.ts";

/** Prints every outside check: value, ours, tolerance, why, source, pass or fail. */

const digits = (x: number): string =>
  Math.abs(x) >= 1e5 || (x !== 0 && Math.abs(x) < 1e-3) ? x.toExponential(4) : x.toPrecision(7);

let passed = 0;
let failed = 0;
for (const { topic, checks } of REFERENCES) {
  console.log(`\n${topic}\n${"=".repeat(topic.length)}`);
  for (const check of checks) {
    const result = runCheck(check);
    if (result.passed) passed++;
    else failed++;
    const tolerance = check.relative
      ? `±${(check.within * 100).toPrecision(2)} %`
      : `±${check.within} ${check.unit}`;
    console.log(`${result.passed ? "pass" : "FAIL"}  ${check.name}`);
    console.log(
      `      outside ${digits(check.want)} ${check.unit}   ours ${digits(result.ours)}   ${tolerance}: ${check.because}`,
    );
    console.log(`      ${check.source} [${check.standing}]`);
  }
}
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
