import type { Plugin } from "vite";

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}

/**
 * Leaves out of the shipped script where the core's catalogues have each figure from: no screen shows it, and whoever
 * asks has the code and `jetwright signs`. 4 kB gzip of the first load.
 */
export const withoutSources: Plugin = {
  name: "without-sources",
  enforce: "post",
  transform(code, id) {
    if (!/core\/src\/(belief|advice)\//.test(id) || !code.includes("source:")) return undefined;
    const found: Node[] = [];
    collect(this.parse(code), found);
    let left = code;
    for (const { start, end } of found.sort((a, b) => b.start - a.start)) {
      left = `${left.slice(0, start)}""${left.slice(end)}`;
    }
    return { code: left, map: null };
  },
};

/** The values of all `source: ...` that stand as text or as a call that makes text. */
function collect(node: unknown, found: Node[]): void {
  if (Array.isArray(node)) {
    for (const each of node) collect(each, found);
  } else if (typeof node === "object" && node !== null) {
    const { type, key, value } = node as { type?: string; key?: { name?: string }; value?: Node };
    if (type === "Property" && key?.name === "source" && value !== undefined && TEXT.has(value.type)) {
      found.push(value);
    } else {
      for (const each of Object.values(node)) collect(each, found);
    }
  }
}

const TEXT = new Set(["Literal", "TemplateLiteral", "CallExpression", "BinaryExpression"]);
