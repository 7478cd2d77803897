import type { Mark, Picture } from '../legs/picture.ts';

/** What figures of a study are drawn with; nothing else is taken over into the page. */
const TAGS = ['circle', 'line', 'path', 'rect', 'text'] as const;
const NAMES: readonly string[] = [
  'class',
  'x',
  'y',
  'x1',
  'y1',
  'x2',
  'y2',
  'cx',
  'cy',
  'r',
  'd',
  'width',
  'height',
  'fill',
  'font-size',
  'text-anchor',
  'stroke-width',
  'stroke-dasharray',
];

function plain(text: string): string {
  return text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');
}

function attributesIn(text: string): Mark['attributes'] {
  const found = [...text.matchAll(/ ([a-z0-9-]+)="([^"]*)"/g)].map(
    ([, name, value]) => [name!, plain(value!)] as const,
  );
  const unknown = found.find(([name]) => !NAMES.includes(name));
  if (unknown !== undefined) throw new RangeError(`A figure has no attribute ${unknown[0]}.`);
  return Object.fromEntries(found);
}

function markIn(line: string): Mark {
  const found = /^<([a-z]+)((?: [a-z0-9-]+="[^"]*")*)(?:\/>|>([^<]*)<\/\1>)$/.exec(line.trim());
  const tag = TAGS.find((one) => one === found?.[1]);
  if (found === null || tag === undefined) throw new RangeError(`A figure has no line such as ${line.slice(0, 60)}.`);
  const attributes = attributesIn(found[2]!);
  return found[3] === undefined ? { tag, attributes } : { tag, attributes, text: plain(found[3]) };
}

/**
 * A figure of a study as marks of the page, so that it is seen as its file has it and none of its text becomes markup. Its own colours
 * are left out: the page has those of day and night.
 *
 * @param svg - as the figures of `@surae/study` are written: one mark a line
 * @throws RangeError for a line that they do not write
 */
export function figurePicture(svg: string): Picture {
  const [width, height] = [...(/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)?.slice(1) ?? [])].map(Number);
  const [name, what] = ['title', 'desc'].map((tag) => plain(new RegExp(`<${tag} [^>]*>([^<]*)<`).exec(svg)?.[1] ?? ''));
  if (width === undefined || height === undefined) throw new RangeError('A figure has a size.');
  const body = svg.slice(svg.indexOf('</style>') + '</style>'.length, svg.lastIndexOf('</svg>'));
  const marks = body
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map(markIn);
  return { label: `${name}. ${what}`, width, height, marks };
}
