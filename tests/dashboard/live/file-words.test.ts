import { READY_WORDS } from '@surae/shared';
import { expect, test } from 'vitest';
import { fileWords } from '../../../apps/dashboard/src/live/file-words.ts';

const other = { text: 'Another file.' };
const trace = { groups: [{ timesS: Float64Array.of(2, 14.2), channels: [] }] };

test('a file is refused with its reason, missing, unfit, or named with its length', () => {
  const said = (told: Partial<Parameters<typeof fileWords>[0]>) =>
    fileWords({ file: { name: 'set.csv', trace }, refusal: '', fits: true, ...told }, other);
  expect(said({ refusal: 'Row 3.', file: undefined })).toContain('Row 3.');
  expect(said({ file: undefined })).toBe(READY_WORDS['file-missing'].text);
  expect(said({ fits: false })).toBe('Another file.');
  expect(said({})).toMatch(/set\.csv.*12/);
});
