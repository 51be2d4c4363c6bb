type Labels = Readonly<Record<string, string>>;

const HELP = {
  jetwright_requests: "Requests answered, by route and status",
  jetwright_records_added: "Records added to a log",
  jetwright_records_known: "Records sent that were known",
  jetwright_records_conflict: "Records refused because another stands under their id",
  jetwright_records_refused: "Records refused for another reason",
  jetwright_blob_bytes: "Bytes of pictures and sound taken",
  jetwright_request_seconds: "Time spent on requests",
} as const;
export type Counter = keyof typeof HELP;

/** Counts for whoever watches the server, in the OpenMetrics text format (version 1.0.0). */
export class Metrics {
  readonly #counts = new Map<Counter, Map<string, number>>();
  readonly #gauges = new Map<string, { help: string; read: () => number }>();

  add(counter: Counter, amount: number, labels: Labels = {}): void {
    const by = this.#counts.get(counter) ?? new Map<string, number>();
    const key = Object.entries(labels)
      .map(([name, value]) => `${name}="${value.replaceAll(/[\\"\n]/g, "_")}"`)
      .join(",");
    by.set(key, (by.get(key) ?? 0) + amount);
    this.#counts.set(counter, by);
  }

  gauge(name: string, help: string, read: () => number): void {
    this.#gauges.set(name, { help, read });
  }

  text(): string {
    const lines: string[] = [];
    for (const counter of Object.keys(HELP) as Counter[]) {
      lines.push(`# TYPE ${counter} counter`, `# HELP ${counter} ${HELP[counter]}`);
      for (const [labels, value] of this.#counts.get(counter) ?? [["", 0]]) {
        lines.push(`${counter}_total${labels === "" ? "" : `{${labels}}`} ${value}`);
      }
    }
    for (const [name, { help, read }] of this.#gauges) {
      lines.push(`# TYPE ${name} gauge`, `# HELP ${name} ${help}`, `${name} ${read()}`);
    }
    return `${lines.join("\n")}\n# EOF\n`;
  }
}
