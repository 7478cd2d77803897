import { describe, expect, test } from 'vitest';
import { readManifestRow } from '../../packages/records/src/manifest-row.ts';

const names = ['File', 'Heel lever mm', 'Body_Mass_kg', 'Surface', ''];
const plain = ['file', 'heel_lever_mm', 'body_mass_kg', 'surface', ''];
const layout: Parameters<typeof readManifestRow>[2] = {
  file: undefined,
  names,
  plain,
  placements: ['heel', 'platform', 'inline'],
  tests: ['heel-raise'],
};
const row = (...fields: string[]) => readManifestRow(fields, 4, layout);

describe('the fields of a manifest row', () => {
  test('are known by the plain spelling of their column; others keep their own', () => {
    expect(row(' a.csv ', '186', '70', 'incline', 'left over')).toEqual({
      kind: 'row',
      line: 4,
      file: 'a.csv',
      heelLeverM: 0.186,
      bodyMassKg: 70,
      carried: { Surface: 'incline' },
    });
  });

  test.each([
    ['49.9', false],
    ['50', true],
    ['400', true],
    ['400.1', false],
    ['-186', false],
    ['0', false],
  ])('hold a heel lever of %s mm: %s', (lever, usable) => {
    expect(row('a.csv', lever, '', '', '').kind).toBe(usable ? 'row' : 'refusal');
  });

  test.each([
    ['24.9', false],
    ['25', true],
    ['250', true],
    ['250.1', false],
    ['1e999', false],
  ])('hold a body mass of %s kg: %s', (mass, usable) => {
    expect(row('a.csv', '', mass, '', '').kind).toBe(usable ? 'row' : 'refusal');
  });

  test('are refused with a sentence, without the name of a manifest that has none', () => {
    expect(row('a.csv', 'x', '', '', '')).toEqual({
      kind: 'refusal',
      code: 'not-a-number',
      line: 4,
      file: 'a.csv',
      column: 'heel_lever_mm',
      expected: 'a number of 50 to 400 mm, or nothing',
      actual: '"x"',
      message: 'row 4, column "heel_lever_mm": expected a number of 50 to 400 mm, or nothing, got "x"',
    });
  });

  test('of a ragged row still say which file it names', () => {
    expect(row('a.csv', '186')).toMatchObject({ kind: 'refusal', code: 'ragged-row', file: 'a.csv', actual: '2' });
  });
});
