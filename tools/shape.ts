import { existsSync, readFileSync } from "node:fs";
import ts from "typescript";
import { cruiseLayers, sourceFiles } from "./layer-check.ts";
import { ROOT } from "./run-step.ts";

/** Sizes, comment share, longest functions and import circles. Fails above the limit and on a circle. */

const LINE_LIMIT = 400;
const FOLDERS = [
  "packages/core",
  "packages/records",
  "packages/cli",
  "packages/server",
  "reference",
  "tools",
].filter((folder) => existsSync(`${ROOT}/${folder}`));
/** Tables of data, not logic: listed apart and free of the limit. */
const TABLES = [
  /^packages\/core\/src\/belief\/signs\//,
  /^packages\/core\/src\/belief\/faults[.]ts$/,
  /^packages\/core\/src\/advice\/(tests-on-engine|checks|cautions)[.]ts$/,
  /^reference\//,
];

interface Shape {
  readonly file: string;
  readonly lines: number;
  readonly commentLines: number;
  readonly functions: readonly { readonly name: string; readonly lines: number }[];
}

function shapeOf(file: string): Shape {
  const text = readFileSync(`${ROOT}/${file}`, "utf8");
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const lineOf = (position: number) => source.getLineAndCharacterOfPosition(position).line;
  const comments = new Set<number>();
  const functions: { name: string; lines: number }[] = [];
  const visit = (node: ts.Node): void => {
    for (const range of ts.getLeadingCommentRanges(text, node.getFullStart()) ?? []) {
      for (let line = lineOf(range.pos); line <= lineOf(range.end); line++) comments.add(line);
    }
    if (ts.isFunctionLike(node) && "body" in node && node.body) {
      const named = node.name ?? (ts.isVariableDeclaration(node.parent) ? node.parent.name : undefined);
      const name = named?.getText(source) ?? "(unnamed)";
      functions.push({ name, lines: lineOf(node.end) - lineOf(node.getStart(source)) + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  visit(source.endOfFileToken);
  return { file, lines: text.split("\n").length - 1, commentLines: comments.size, functions };
}

const share = (part: number, whole: number): string =>
  `${whole === 0 ? 0 : Math.round((1000 * part) / whole) / 10} %`;
const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, x) => total + x, 0);
const isTest = (file: string): boolean => file.endsWith(".test.ts");
const isTable = (file: string): boolean => !isTest(file) && TABLES.some((table) => table.test(file));
const column = (text: string | number, width: number): string => String(text).padStart(width);

function rowOf(name: string, shapes: readonly Shape[]): string {
  const lines = shapes.map((shape) => shape.lines);
  return [
    name.padEnd(24),
    column(shapes.length, 7),
    column(sum(lines), 8),
    column(median(lines), 8),
    column(Math.max(0, ...lines), 9),
    column(share(lines.filter((n) => n < 200).length, lines.length), 12),
    column(share(sum(shapes.map((shape) => shape.commentLines)), sum(lines)), 11),
  ].join("");
}

const all = FOLDERS.flatMap((folder) => sourceFiles(ROOT, folder)).map(shapeOf);
const code = all.filter(({ file }) => !isTest(file) && !isTable(file));
console.log(
  `${"".padEnd(24)}  files   lines  median  longest  below 200   comments\n${[
    ...FOLDERS.filter((folder) => code.some(({ file }) => file.startsWith(`${folder}/`))).map((folder) =>
      rowOf(
        folder,
        code.filter(({ file }) => file.startsWith(`${folder}/`)),
      ),
    ),
    rowOf("all code", code),
    rowOf(
      "tables of data",
      all.filter(({ file }) => isTable(file)),
    ),
    rowOf(
      "tests",
      all.filter(({ file }) => isTest(file)),
    ),
  ].join("\n")}`,
);

const longest = (shapes: readonly Shape[], count: number): Shape[] =>
  [...shapes].sort((a, b) => b.lines - a.lines).slice(0, count);
const list = (shapes: readonly Shape[]): string =>
  shapes.map(({ file, lines }) => `${column(lines, 6)}  ${file}`).join("\n");
console.log(`\nLongest files\n${list(longest(code, 8))}`);
console.log(
  `\nTables of data\n${list(
    longest(
      all.filter(({ file }) => isTable(file)),
      8,
    ),
  )}`,
);
const functions = code.flatMap(({ file, functions }) => functions.map((f) => ({ ...f, file })));
functions.sort((a, b) => b.lines - a.lines);
console.log(
  `\nLongest functions\n${functions
    .slice(0, 8)
    .map(({ name, lines, file }) => `${column(lines, 6)}  ${name}  ${file}`)
    .join("\n")}`,
);

const { cycles, cruised } = await cruiseLayers(ROOT, FOLDERS);
const tooLong = all.filter(({ file, lines }) => !isTable(file) && lines > LINE_LIMIT);
console.log(`\nImport circles in ${cruised} modules: ${cycles.length}`);
for (const cycle of cycles) console.log(`  ${cycle.join(" -> ")}`);
console.log(`Files above ${LINE_LIMIT} lines: ${tooLong.length}`);
if (tooLong.length > 0) console.log(list(tooLong));
process.exitCode = tooLong.length > 0 || cycles.length > 0 || all.length === 0 ? 1 : 0;
