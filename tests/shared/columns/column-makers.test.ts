import { expect, test } from 'vitest';
import { columnsOf } from '../../../shared/src/columns/column-makers.ts';

test('a figure has its unit and factor, a word and a flag have neither; all bear the name of their table', () => {
  const { figure, word, flag } = columnsOf('leg');
  const common = { version: '1', source: 'definition', mark: 'computed' };
  expect(figure('long_mm', 'longM', 'mm', 1000, 'how long')).toEqual({
    ...common,
    id: 'leg.long_mm',
    key: 'long_mm',
    field: 'longM',
    unit: 'mm',
    factor: 1000,
    kind: 'number',
    description: 'how long',
  });
  const plain = { ...common, unit: '1', factor: 1 };
  expect(word('side', 'side', 'which')).toEqual({
    ...plain,
    id: 'leg.side',
    key: 'side',
    field: 'side',
    kind: 'text',
    description: 'which',
  });
  expect(flag('sore', 'isSore', 'whether')).toEqual({
    ...plain,
    id: 'leg.sore',
    key: 'sore',
    field: 'isSore',
    kind: 'flag',
    description: 'whether',
  });
});
