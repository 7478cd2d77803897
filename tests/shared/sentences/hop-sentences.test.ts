import { HOP_ENTRY_CODES } from '@surae/analysis';
import { HOP_CAUTION_SENTENCES, HOP_ENTRY_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';

test('every condition has its sentence, and the caution against clearance names its source', () => {
  expect(Object.keys(HOP_ENTRY_SENTENCES).sort()).toEqual([...HOP_ENTRY_CODES].sort());
  expect(HOP_CAUTION_SENTENCES['ratio-is-no-clearance'].text).toContain('Kurtz');
});
