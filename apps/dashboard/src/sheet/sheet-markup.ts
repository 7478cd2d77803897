import { codePath } from '../home/code-path.ts';
import type { Picture } from '../legs/picture.ts';
import type { SheetPart } from './sheet.ts';

const marks = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' } as const;

/** A text as it stands in markup, in an element or in quotes: none of it is read as markup. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (mark) => marks[mark as keyof typeof marks]);
}

type Attributes = Readonly<Record<string, string | undefined>>;

function opening(name: string, attributes: Attributes = {}): string {
  const given = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : [` ${key}="${escaped(value)}"`],
  );
  return `<${name}${given.join('')}>`;
}

/** An element that holds a text and nothing else. */
export function element(name: string, text: string, attributes: Attributes = {}): string {
  return `${opening(name, attributes)}${escaped(text)}</${name}>`;
}

/** A picture as markup, told by its text alternative. */
export function drawn({ label, width, height, marks: all }: Picture): string {
  const inside = all.map(({ tag, attributes, text }) =>
    element(
      tag,
      text ?? '',
      Object.fromEntries(Object.entries(attributes).map(([name, value]) => [name, String(value)])),
    ),
  );
  const head = opening('svg', {
    class: 'picture',
    role: 'img',
    'aria-label': label,
    viewBox: `0 0 ${width} ${height}`,
  });
  return [head, ...inside, '</svg>'].join('\n');
}

function codeMarkup({ text, label, tooLong }: Extract<SheetPart, { readonly kind: 'code' }>): string[] {
  const code = codePath(text);
  if (code === undefined) return [element('p', tooLong)];
  const { size, path } = code;
  const head = { class: 'code-drawn', role: 'img', 'aria-label': label, viewBox: `0 0 ${size} ${size}` };
  return [opening('svg', { ...head, 'shape-rendering': 'crispEdges' }), element('path', '', { d: path }), '</svg>'];
}

function tableMarkup({ caption, head, rows }: Extract<SheetPart, { readonly kind: 'table' }>): string[] {
  const row = ([name = '', ...cells]: readonly string[]): string =>
    `<tr>${element('th', name, { scope: 'row' })}${cells.map((cell) => element('td', cell)).join('')}</tr>`;
  return [
    '<table>',
    element('caption', caption),
    `<thead><tr>${head.map((cell) => element('th', cell, { scope: 'col' })).join('')}</tr></thead>`,
    '<tbody>',
    ...rows.map(row),
    '</tbody>',
    '</table>',
  ];
}

function partMarkup(part: SheetPart): string[] {
  switch (part.kind) {
    case 'title':
      return [element('h1', part.text, { 'aria-describedby': part.describedBy })];
    case 'heading':
      return [element('h2', part.text)];
    case 'subheading':
      return [element('h3', part.text)];
    case 'text':
      return [element('p', part.text, { class: part.of })];
    case 'list':
      return ['<ul>', ...part.items.map((item) => element('li', item)), '</ul>'];
    case 'figure': {
      const below = part.below === undefined ? [] : [element('p', part.below, { class: 'quiet' })];
      return ['<figure>', element('figcaption', part.caption), drawn(part.picture), ...below, '</figure>'];
    }
    case 'table':
      return tableMarkup(part);
    case 'code':
      return codeMarkup(part);
    case 'section':
      return [opening('section', { class: part.of, id: part.id }), ...sheetMarkup(part.parts), '</section>'];
  }
}

/** The parts of a sheet as lines of markup, for a file that stands alone. */
export function sheetMarkup(parts: readonly SheetPart[]): string[] {
  return parts.flatMap(partMarkup);
}
