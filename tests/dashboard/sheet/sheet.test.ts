import { expect, test } from 'vitest';
import { figurePart, type SheetPart, sheetTexts } from '../../../apps/dashboard/src/sheet/sheet.ts';

const picture = { label: 'a line', width: 10, height: 10, marks: [] };

test('a figure stands where there is a picture, with the words below it where there are any', () => {
  expect(figurePart(null, 'caption', 'below')).toEqual([]);
  expect(figurePart(picture, 'caption')).toEqual([{ kind: 'figure', picture, caption: 'caption' }]);
  expect(figurePart(picture, 'caption', 'below')).toEqual([
    { kind: 'figure', picture, caption: 'caption', below: 'below' },
  ]);
});

test('texts are told in the order in which they are read', () => {
  const parts: readonly SheetPart[] = [
    { kind: 'title', text: '1' },
    {
      kind: 'section',
      of: 'test',
      parts: [
        { kind: 'heading', text: '2' },
        { kind: 'text', text: '3' },
        { kind: 'list', items: ['4', '5'] },
      ],
    },
    ...figurePart(picture, '6', '7'),
    { kind: 'code', text: 'not read', label: 'a code', tooLong: 'too long' },
    { kind: 'table', caption: '8', head: ['9', '10'], rows: [['11', '12']] },
  ];
  expect(sheetTexts(parts)).toEqual(Array.from({ length: 12 }, (_, i) => String(i + 1)));
});
