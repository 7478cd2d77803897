import { expect, test } from 'vitest';
import { type SheetPart, sheetTexts } from '../../../apps/dashboard/src/sheet/sheet.ts';
import { element, escaped, sheetMarkup } from '../../../apps/dashboard/src/sheet/sheet-markup.ts';

const evil = `"><script>alert('&')</script>`;
const every: readonly SheetPart[] = [
  {
    kind: 'section',
    of: evil,
    id: evil,
    parts: [
      { kind: 'title', text: evil, describedBy: evil },
      { kind: 'heading', text: evil },
      { kind: 'text', of: 'lead', text: evil },
      { kind: 'list', items: [evil] },
      {
        kind: 'figure',
        caption: evil,
        below: evil,
        picture: {
          label: evil,
          width: 1,
          height: 1,
          marks: [{ tag: 'text', attributes: { class: evil }, text: evil }],
        },
      },
      { kind: 'table', caption: evil, head: [evil], rows: [[evil, evil]] },
      { kind: 'code', text: 'abc', label: evil, tooLong: evil },
      { kind: 'code', text: 'x'.repeat(5000), label: evil, tooLong: evil },
    ],
  },
];

test('whatever a sheet holds, none of it becomes markup', () => {
  const html = sheetMarkup(every).join('\n');
  expect(html).not.toContain('<script');
  // class, id, describedBy and text of the title; heading, text, item, caption, below; label, class and text of the picture;
  // caption, head and two cells of the table; label of the code, words of the one that is too long
  expect(html.split(escaped(evil))).toHaveLength(19);
  expect(element('p', evil)).toBe('<p>&quot;&gt;&lt;script&gt;alert(&#39;&amp;&#39;)&lt;/script&gt;</p>');
});

test('every text of a sheet stands in its markup, in the same order', () => {
  const numbered: readonly SheetPart[] = [
    { kind: 'title', text: 'one' },
    { kind: 'section', of: 'test', parts: [{ kind: 'list', items: ['two', 'three'] }] },
    { kind: 'table', caption: 'four', head: ['five', 'six'], rows: [['seven', 'eight']] },
    { kind: 'subheading', text: 'nine' },
  ];
  const read = sheetMarkup(numbered)
    .join('\n')
    .replaceAll(/<[^>]*>/g, '\n')
    .split(/\n+/)
    .filter((text) => text !== '');
  expect(read).toEqual(sheetTexts(numbered));
});

test('rows are named by their first cell, and a code is drawn where a camera can read it', () => {
  const html = sheetMarkup(every).join('\n');
  expect(html).toContain('<th scope="row">');
  expect(html.match(/class="code-drawn"/g)).toHaveLength(1);
});
