import { governingSide } from '@surae/analysis';
import type { IrritabilityGrade } from '@surae/shared';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const of = (left: IrritabilityGrade | null, right: IrritabilityGrade | null) =>
  governingSide({ left: { grade: left }, right: { grade: right } });

test('the more irritable leg governs', () => {
  expect(of('high', 'low')).toEqual({ kind: 'side', side: 'left', grade: 'high', other: 'low' });
  expect(of('low', 'moderate')).toEqual({ kind: 'side', side: 'right', grade: 'moderate', other: 'low' });
  expect(of('moderate', 'moderate')).toEqual({ kind: 'alike', grade: 'moderate' });
});

test('a leg that was not graded leaves it open, even beside one that is graded high', () => {
  expect(of('high', null)).toEqual({ kind: 'cannot-tell', notGraded: ['right'] });
  expect(of(null, null)).toEqual({ kind: 'cannot-tell', notGraded: ['left', 'right'] });
  expect(governingSide({ left: null, right: { grade: 'low' } })).toEqual({ kind: 'cannot-tell', notGraded: ['left'] });
});

test('legs that change places change the answer with them', () => {
  const grade = fc.constantFrom<IrritabilityGrade | null>('low', 'moderate', 'high', null);
  const mirrored = { left: 'right', right: 'left' } as const;
  fc.assert(
    fc.property(grade, grade, (left, right) => {
      const [one, other] = [of(left, right), of(right, left)];
      expect(other.kind).toBe(one.kind);
      if (one.kind === 'side' && other.kind === 'side') expect(other.side).toBe(mirrored[one.side]);
    }),
  );
});
