import type { Bounded, Limits } from '@surae/analysis';
import { decimalsFor } from './agree-numbers.ts';
import { biasWords } from './agree-text.ts';
import { axisTicks } from './axis-ticks.ts';
import { plain } from './readable-number.ts';

export interface PictureInput {
  readonly first: string;
  readonly second: string;
  readonly unit: string;
  /** names in the order of the points */
  readonly subjects: readonly string[];
  readonly limits: Limits;
}

const WIDTH = 820;
const HEIGHT = 560;
/** the field of the marks */
const FIELD = { left: 84, right: 600, top: 96, bottom: 484 } as const;

/** Paper and ink by day and by night; what is the tool's own voice in plum. */
const STYLE = `
    .paper { fill: #f6f3ec } .ink { stroke: #1e2a32 } .word { fill: #1e2a32 } .quiet { fill: #55606a } .hair { stroke: #55606a }
    .voice { fill: #6b3f6e } .doubt { stop-color: #1e2a32 }
    @media (prefers-color-scheme: dark) {
      .paper { fill: #14191d } .ink { stroke: #ece7dc } .word { fill: #ece7dc } .quiet { fill: #a9b0b5 } .hair { stroke: #a9b0b5 }
      .voice { fill: #d6a8d8 } .doubt { stop-color: #ece7dc }
    }
    text { font-family: Seravek, 'Gill Sans Nova', Ubuntu, Calibri, 'DejaVu Sans', sans-serif; font-variant-numeric: tabular-nums }
`;

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

function written(x: number, y: number, text: string, look: string, size = 16, anchor = 'start'): string {
  return `<text class="${look}" x="${at(x)}" y="${at(y)}" font-size="${size}" text-anchor="${anchor}">${escaped(text)}</text>`;
}

/** A coordinate with one decimal: a tenth of a pixel is nothing. */
function at(value: number): string {
  return String(Number(value.toFixed(1)));
}

function stroke(x1: number, y1: number, x2: number, y2: number, look: string, width: number): string {
  return `<line class="${look}" x1="${at(x1)}" y1="${at(y1)}" x2="${at(x2)}" y2="${at(y2)}" stroke-width="${width}"/>`;
}

function span(values: readonly number[]): readonly [number, number] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = (high - low || Math.abs(high) || 1) * 0.06;
  return [low - room, high + room];
}

/**
 * Differences against means as a page of a field book, in SVG: a pencil cross for each subject, bias and limits as lines whose
 * intervals stand beside them and fade at their ends, and names at the crosses beyond the limits.
 */
export function agreePicture({ first, second, unit, subjects, limits }: PictureInput): string {
  const isRatio = limits.scale === 'ratio';
  const { bias, lower, upper, points } = limits;
  const [xLow, xHigh] = span(points.map(({ mean }) => mean));
  const none = isRatio ? 1 : 0;
  const [yLow, yHigh] = span([...points.map(({ difference }) => difference), lower.low, upper.high, none]);
  const x = (value: number): number => FIELD.left + ((value - xLow) / (xHigh - xLow)) * (FIELD.right - FIELD.left);
  const y = (value: number): number => FIELD.bottom - ((value - yLow) / (yHigh - yLow)) * (FIELD.bottom - FIELD.top);
  const decimals = isRatio ? 3 : decimalsFor(limits.sd);
  const sign = isRatio ? 'over' : 'minus';
  const tail = isRatio ? '' : ` ${unit}`;
  const sentence = biasWords(limits, first, second);
  const heading =
    sentence === 'cannot tell which is higher' ? `Cannot tell whether ${first} or ${second} is higher` : sentence;
  const beyond = points.flatMap(({ difference, mean }, i) =>
    difference < lower.value || difference > upper.value ? [{ name: subjects[i] ?? '', mean, difference }] : [],
  );
  const xTicks = axisTicks(xLow, xHigh, 6);
  const yTicks = axisTicks(yLow, yHigh, 6);
  const line = (label: string, value: Bounded, width: number): string =>
    [
      stroke(FIELD.left, y(value.value), FIELD.right, y(value.value), 'ink', width),
      // a vertical gradient over a rectangle: a line of no width has no box that a gradient could fill
      `<rect x="${FIELD.right + 10}" y="${at(y(value.high))}" width="5" height="${at(y(value.low) - y(value.high))}" fill="url(#doubt)"/>`,
      written(FIELD.right + 26, y(value.value) - 3, `${label} ${plain(value.value, decimals)}${tail}`, 'word'),
      written(
        FIELD.right + 26,
        y(value.value) + 16,
        `${plain(value.low, decimals)} to ${plain(value.high, decimals)}`,
        'quiet',
        14,
      ),
    ].join('\n  ');
  const description =
    `${points.length} subjects. ${first} ${sign} ${second}: bias ${plain(bias.value, decimals)} (${plain(bias.low, decimals)} to ` +
    `${plain(bias.high, decimals)})${tail}; limits ${plain(lower.value, decimals)} and ${plain(upper.value, decimals)}${tail}.`;
  const parts = [
    written(FIELD.left, 40, heading, 'word', 20),
    written(
      FIELD.left,
      66,
      `${first} ${sign} ${second}${isRatio ? '' : `, ${unit}`}; ${points.length} subjects`,
      'quiet',
    ),
    ...yTicks.values.map((value) =>
      written(FIELD.left - 12, y(value) + 5, plain(value, yTicks.decimals), 'quiet', 14, 'end'),
    ),
    ...xTicks.values.flatMap((value) => [
      stroke(x(value), FIELD.bottom, x(value), FIELD.bottom + 6, 'hair', 1),
      written(x(value), FIELD.bottom + 24, plain(value, xTicks.decimals), 'quiet', 14, 'middle'),
    ]),
    stroke(FIELD.left, FIELD.bottom, FIELD.right, FIELD.bottom, 'hair', 1),
    written(FIELD.right, FIELD.bottom + 48, `mean of both, ${unit}`, 'quiet', 16, 'end'),
    stroke(FIELD.left, y(none), FIELD.right, y(none), 'hair', 0.5),
    written(FIELD.left, FIELD.bottom + 48, 'thinnest line: no difference', 'voice', 14),
    line('upper limit', upper, 1),
    line('bias', bias, 2.5),
    line('lower limit', lower, 1),
    ...points.map(({ mean, difference }) => cross(x(mean), y(difference))),
    ...beyond.map(({ name, mean, difference }) => written(x(mean) + 8, y(difference) - 6, name, 'word', 14)),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" width="${WIDTH}" height="${HEIGHT}" role="img" aria-labelledby="name what">
  <title id="name">${escaped(heading)}</title>
  <desc id="what">${escaped(description)}</desc>
  <style>${STYLE}  </style>
  <defs><linearGradient id="doubt" x1="0" y1="0" x2="0" y2="1"><stop class="doubt" offset="0" stop-opacity="0"/><stop class="doubt" offset="0.3" stop-opacity="0.9"/><stop class="doubt" offset="0.7" stop-opacity="0.9"/><stop class="doubt" offset="1" stop-opacity="0"/></linearGradient></defs>
  <rect class="paper" width="${WIDTH}" height="${HEIGHT}"/>
  ${parts.join('\n  ')}
</svg>
`;
}

/** A small cross, as with a pencil. */
function cross(x: number, y: number): string {
  return `<path class="ink" d="M${at(x - 4)} ${at(y - 4)}L${at(x + 4)} ${at(y + 4)}M${at(x - 4)} ${at(y + 4)}L${at(x + 4)} ${at(y - 4)}" stroke-width="1.2" fill="none"/>`;
}
