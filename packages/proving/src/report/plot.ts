const INK = "#14181b";
const QUIET = "#454c52";
const HAIR = "#c6cac7";
const GROUND = "#fdfdfb";

/** Told apart in black and white too: solid and heavy for ours, broken lines for the others. */
const STROKES = ["", "", "8 3", "2 3", "1 5", "12 3 2 3"] as const;
const COLOURS = [INK, "#0a3f8c", "#733a00", "#733a00", QUIET, QUIET] as const;
const WIDTHS = [3, 2.2, 2, 2, 2, 1.4] as const;

const px = (value: number): string => value.toFixed(1);
const text = (x: number, y: number, words: string, anchor = "start", weight = 400): string =>
  `<text x="${px(x)}" y="${px(y)}" text-anchor="${anchor}" font-weight="${weight}">${words}</text>`;

function frame(width: number, height: number, title: string, body: readonly string[]): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="Archivo, Arial, sans-serif" font-size="13" fill="${INK}">`,
    `<title>${title}</title>`,
    `<rect width="${width}" height="${height}" fill="${GROUND}"/>`,
    text(16, 26, title, "start", 700),
    ...body,
    "</svg>",
    "",
  ].join("\n");
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

function axes(
  box: Box,
  xs: readonly (readonly [number, string])[],
  ys: readonly (readonly [number, string])[],
  under: string,
): readonly string[] {
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  return [
    ...ys.flatMap(([share, words]) => {
      const y = bottom - share * box.height;
      return [
        `<path d="M${px(box.left)} ${px(y)}H${px(right)}" stroke="${HAIR}"/>`,
        text(box.left - 8, y + 4, words, "end"),
      ];
    }),
    `<path d="M${px(box.left)} ${px(box.top)}V${px(bottom)}H${px(right)}" stroke="${INK}" stroke-width="1.5" fill="none"/>`,
    ...xs.map(([share, words]) => text(box.left + share * box.width, bottom + 18, words, "middle")),
    text(box.left + box.width / 2, bottom + 38, under, "middle"),
  ];
}

const PERCENTS = [0, 0.25, 0.5, 0.75, 1].map((share) => [share, `${100 * share} %`] as const);

export interface Line {
  readonly name: string;
  /** y from 0 to 1 for each x in order. */
  readonly values: readonly number[];
}

/** Lines over whole numbers from 0, each named at its end. */
export function linesPlot(title: string, lines: readonly Line[], under: string): string {
  const box: Box = { left: 60, top: 44, width: 480, height: 260 };
  const most = Math.max(...lines.map(({ values }) => values.length)) - 1;
  const xs = Array.from({ length: most + 1 }, (_, i) => [i / most, String(i)] as const);
  const at = (i: number, value: number): string =>
    `${px(box.left + (box.width * i) / most)},${px(box.top + box.height * (1 - value))}`;
  const body = lines.flatMap(({ name, values }, i) => {
    const points = values.map((value, x) => at(x, value)).join("L");
    const y = 60 + i * 26;
    return [
      `<path d="M${points}" fill="none" stroke="${COLOURS[i % 6]}" stroke-width="${WIDTHS[i % 6]}" stroke-dasharray="${STROKES[i % 6]}"/>`,
      `<path d="M560 ${y}h34" stroke="${COLOURS[i % 6]}" stroke-width="${WIDTHS[i % 6]}" stroke-dasharray="${STROKES[i % 6]}"/>`,
      text(602, y + 4, name),
    ];
  });
  return frame(760, 362, title, [...axes(box, xs, PERCENTS, under), ...body]);
}

export interface Bar {
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Bars with their intervals, lying, on a scale from 0 to the largest. */
export function barsPlot(title: string, bars: readonly Bar[], words: (value: number) => string): string {
  const most = Math.max(...bars.map(({ high }) => high));
  const scale = 400 / most;
  const body = bars.flatMap(({ name, value, low, high }, i) => {
    const y = 56 + i * 34;
    return [
      text(172, y + 4, name, "end"),
      `<rect x="180" y="${y - 8}" width="${px(Math.max(1, value * scale))}" height="16" fill="${i < 2 ? INK : QUIET}"/>`,
      `<path d="M${px(180 + low * scale)} ${y + 12}H${px(180 + high * scale)}" stroke="${INK}" stroke-width="1.5"/>`,
      text(188 + Math.max(value, high) * scale, y + 4, words(value)),
    ];
  });
  return frame(760, 60 + bars.length * 34, title, body);
}

export interface Dot {
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
}

/** Said against true, with the line where both are the same. */
export function squarePlot(title: string, dots: readonly Dot[], across: string): string {
  const box: Box = { left: 60, top: 44, width: 300, height: 300 };
  const x = (value: number): number => box.left + value * box.width;
  const y = (value: number): number => box.top + (1 - value) * box.height;
  const body = [
    `<path d="M${px(x(0))} ${px(y(0))}L${px(x(1))} ${px(y(1))}" stroke="${QUIET}" stroke-dasharray="4 4"/>`,
    ...dots.flatMap((dot) => [
      `<path d="M${px(x(dot.x))} ${px(y(dot.low))}V${px(y(dot.high))}" stroke="${INK}" stroke-width="1.5"/>`,
      `<circle cx="${px(x(dot.x))}" cy="${px(y(dot.y))}" r="4.5" fill="${INK}"/>`,
    ]),
  ];
  return frame(400, 402, title, [...axes(box, PERCENTS, PERCENTS, across), ...body]);
}

export interface Cover {
  readonly name: string;
  readonly half: number;
  readonly ninety: number;
}

/** How often the 50 % and the 90 % band held the truth, by opening, with where they should be. */
export function coverPlot(title: string, covers: readonly Cover[]): string {
  const box: Box = { left: 60, top: 44, width: 420, height: 240 };
  const bottom = box.top + box.height;
  const xs = covers.map(({ name }, i) => [(i + 0.5) / covers.length, name] as const);
  const ys = [0, 0.5, 0.9, 1].map((share) => [share, `${100 * share} %`] as const);
  const body = covers.flatMap(({ half, ninety }, i) => {
    const x = box.left + (box.width * (i + 0.5)) / covers.length;
    return [
      `<rect x="${px(x - 18)}" y="${px(bottom - half * box.height)}" width="16" height="${px(half * box.height)}" fill="${QUIET}"/>`,
      `<rect x="${px(x + 2)}" y="${px(bottom - ninety * box.height)}" width="16" height="${px(ninety * box.height)}" fill="${INK}"/>`,
    ];
  });
  return frame(520, 342, title, [
    ...axes(box, xs, ys, "throttle; grey: the 50 % band, black: the 90 % band"),
    ...body,
  ]);
}
