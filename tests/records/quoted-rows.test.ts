import { describe, expect, test } from 'vitest';
import { visitQuotedRows } from '../../packages/records/src/quoted-rows.ts';

function visit(text: string): [readonly string[], number, boolean][] {
  const seen: [readonly string[], number, boolean][] = [];
  visitQuotedRows({ file: 'f', delimiter: ',', names: ['a', 'b'], text, firstLine: 10 }, (fields, line, closed) => {
    seen.push([fields, line, closed]);
  });
  return seen;
}

describe('rows with quotes', () => {
  test('come with the line they start on and whether a line end closes them', () => {
    expect(visit('1,"2"\n\n# "no"\n"3\n4",5\n6,"7"')).toEqual([
      [['1', '2'], 10, true],
      [[''], 11, true],
      [['3\n4', '5'], 13, true],
      [['6', '7'], 15, false],
    ]);
  });

  test('end with an empty one after a closing line end, as every text does', () => {
    expect(visit('1,2\n').slice(0, 1)).toEqual([[['1', '2'], 10, true]]);
    expect(visit('1,2\n').slice(1)).toEqual(visit('"1",2\n').slice(1));
  });

  test('are refused where a quote never ends, by the line it opens on', () => {
    expect(() => visit('1,2\n3,"4\n5,6\n')).toThrow('f, row 11, column "b": expected a closing quotation mark');
    expect(() => visit('1,2\n3,"4" 5\n')).toThrow('f, row 11, column "b": expected a delimiter after');
  });
});
