import type { ArmComparison, StudyFile } from '@surae/study';
import { addressOf, type DesignFields, firstFields, withTyped } from '../design/design-form.ts';

/** A spread with three digits: more were noise. */
function digits(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/**
 * How the next study is planned with the spread of this one: as the page about people needed has it in its address. The spread has the
 * people that it was found in beside it, so that it is taken with its interval. The difference is left open: planning with the one
 * that was found makes the next study too small.
 *
 * @returns null where nothing was compared, and on the scale of ratios
 */
export function planAddress({ comparison }: StudyFile, { result }: ArmComparison): string | null {
  if (result.kind === 'not-compared' || comparison.scale === 'ratio') return null;
  const { first, second, estimate, method } = result;
  const isPaired = method === 'paired';
  const freedom = isPaired ? first.n - 1 : first.n + second.n - 2;
  const squares = (first.n - 1) * first.sd ** 2 + (second.n - 1) * second.sd ** 2;
  const sd = isPaired ? estimate.standardError * Math.sqrt(first.n) : Math.sqrt(squares / freedom);
  if (!(sd > 0)) return null;
  const key = isPaired ? 'sd-change' : 'sd';
  const asked: DesignFields = { ...firstFields, id: isPaired ? 'paired' : 'groups', way: isPaired ? 'sd-change' : '' };
  return addressOf(withTyped(withTyped(asked, key, 'expected', digits(sd)), key, 'people', String(freedom + 1)));
}
