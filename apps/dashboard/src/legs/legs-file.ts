import { LEGS_WORDS, SCOPE_SENTENCES } from '@surae/shared';
import type { SavedFile } from '../result/set-files.ts';
import { legsShown } from '../result/two-legs.ts';
import { legsStyle, paperColours } from './legs-style.ts';
import { canAndCannot, type LegsTest, type LegsView, legsTitle } from './legs-view.ts';
import type { Picture } from './picture.ts';
import { redFlags } from './red-flags.ts';
import { twoLines } from './two-lines.ts';
import { twoMarks } from './two-marks.ts';

const marks = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' } as const;

/** A text as it stands in markup, in an element or in quotes: none of it is read as markup. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (mark) => marks[mark as keyof typeof marks]);
}

function element(name: string, text: string, of?: string): string {
  return `<${name}${of === undefined ? '' : ` class="${of}"`}>${escaped(text)}</${name}>`;
}

/** A picture as markup, told by its text alternative. */
export function drawn({ label, width, height, marks: all }: Picture): string {
  const inside = all.map(({ tag, attributes, text }) => {
    const given = Object.entries(attributes).map(([name, value]) => ` ${name}="${escaped(String(value))}"`);
    return `<${tag}${given.join('')}>${escaped(text ?? '')}</${tag}>`;
  });
  const head = `<svg class="picture" role="img" aria-label="${escaped(label)}" viewBox="0 0 ${width} ${height}">`;
  return [head, ...inside, '</svg>'].join('\n');
}

function figure(picture: Picture | null, caption: string, below?: string): string[] {
  if (picture === null) return [];
  const note = below === undefined ? [] : [element('p', below, 'quiet')];
  return ['<figure>', element('figcaption', caption), drawn(picture), ...note, '</figure>'];
}

function testMarkup({ title, sentences, figures, lines, words }: LegsTest): string[] {
  const [lead = '', ...others] = sentences;
  return [
    '<section class="test">',
    element('h2', title),
    element('p', lead, 'lead'),
    ...others.map((sentence) => element('p', sentence, 'said')),
    ...figure(twoMarks(figures), figures.title),
    ...figure(twoLines(lines, words, legsShown(figures)), LEGS_WORDS.course.text, LEGS_WORDS.band.text),
    '</section>',
  ];
}

function flagMarkup({ contact }: LegsView): string[] {
  const { title, emergency, ring, lines } = redFlags(contact);
  return [
    '<section class="flags">',
    element('h2', title),
    element('p', emergency),
    element('p', ring),
    '<ul>',
    ...lines.map((one) => element('li', one)),
    '</ul>',
    '</section>',
  ];
}

/** What the page has from its tokens and its base, for a file that stands alone; on paper black on white. */
const ground = `
:root { color-scheme: light; --size-2: 1.25rem; --size-3: 1.625rem; --gap-1: 4px; --gap-2: 8px; --gap-3: 12px; --gap-4: 16px; --gap-6: 24px; --line: 66ch;
${Object.entries(paperColours)
  .map(([name, value]) => `--${name}: ${value};`)
  .join(' ')} }
* { box-sizing: border-box; }
body { background: var(--paper); color: var(--ink); font: 100%/1.4 system-ui, sans-serif; font-variant-numeric: tabular-nums lining-nums; margin: 0; overflow-wrap: anywhere; }
main { margin-inline: auto; max-inline-size: 44rem; padding: 16px; }
h1, h2 { line-height: 1.15; margin-block: 0 12px; }
p { margin-block: 0 12px; max-inline-size: var(--line); }
.quiet { color: var(--ink-quiet); }
@media print {
  @page { margin: 14mm; }
  :root { --paper: #fff; --ink: #000; --ink-quiet: #000; --hairline: #999; --left: #000; --right: #000; }
  main { padding: 0; }
}`;

/**
 * What somebody is shown of their visit as one file that needs nothing else: no script, no address, no name. It opens from a
 * disk without a network; its own policy lets it load nothing.
 */
export function legsFile(view: LegsView): SavedFile {
  const can = canAndCannot(view).map((text) => element('li', text));
  const content = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    element('title', legsTitle(view)),
    `<style>${ground}${legsStyle.cssText}</style>`,
    '</head>',
    '<body>',
    '<main>',
    ...flagMarkup(view),
    element('h1', legsTitle(view)),
    element('p', view.day, 'quiet'),
    ...view.notes.map((note) => element('p', note)),
    ...(view.tests.length === 0 ? [element('p', LEGS_WORDS.nothing.text)] : view.tests.flatMap(testMarkup)),
    '<section class="can">',
    element('h2', LEGS_WORDS['can-title'].text),
    '<ul>',
    ...can,
    '</ul>',
    element('p', SCOPE_SENTENCES.scope.text, 'quiet'),
    '</section>',
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
  return { name: `surae-my-two-legs-${view.at.slice(0, 10).replaceAll('-', '')}.html`, type: 'text/html', content };
}
