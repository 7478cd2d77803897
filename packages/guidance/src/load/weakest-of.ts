import type { EvidenceMark } from '@surae/shared';
import { weakestMark } from '../weakest-mark.ts';

/** The least supported of several marks; computed where there are none. Source: ours. */
export function weakestOf(marks: readonly EvidenceMark[]): EvidenceMark {
  const numbers = Object.fromEntries(
    marks.map((mark, i) => [String(i), { id: '', version: '1', unit: '1', value: 0, source: '', mark }]),
  );
  return weakestMark({ mark: marks[0] ?? 'computed', numbers });
}
