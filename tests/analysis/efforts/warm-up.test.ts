import { findEfforts, type IsometricEffort } from '@surae/analysis';
import { simulatePulls } from '@surae/simulation';
import { describe, expect, test } from 'vitest';
import { judgeWarmUps } from '../../../packages/analysis/src/efforts/warm-up.ts';
import { fastSettings, strengthSettings } from '../../support/effort-settings.ts';
import { madeTrace, rampEffort } from '../../support/made-pull.ts';
import { isLong } from '../../support/runs.ts';

const [made] = findEfforts(
  madeTrace({ efforts: [rampEffort(4, 900, 2, 4)], lengthS: 14, sampleRateHz: 200, noise: 0.5 }),
  { polarity: 'find' },
  strengthSettings,
).efforts;

/** An effort of a peak that begins at a time. */
function push(peakN: number, accepted: 'yes' | 'no' | 'cannot_tell' = 'yes', u = 1, onsetS = 0): IsometricEffort {
  const figure = { value: peakN, u };
  return {
    ...made,
    onsetS: { value: onsetS, u: 0.01 },
    peak: { net: figure, gross: figure },
    acceptance: { accepted, findings: [] },
  };
}

const verdicts = (efforts: readonly IsometricEffort[], told: number | null = null, share = 0.8): string[] =>
  judgeWarmUps(efforts, [], { told, share }).map(({ acceptance }) => acceptance.accepted);

describe('nobody said which pushes were warm-ups', () => {
  test('50 and 75 % before full ones are; one at 90 % is taken for a trial', () => {
    expect(verdicts([500, 750, 900, 1000, 980].map((n) => push(n)))).toEqual(['no', 'no', 'yes', 'yes', 'yes']);
  });

  test('a person who still improves, 900, 980 and 1060 N, made trials only', () => {
    expect(verdicts([900, 980, 1060].map((n) => push(n)))).toEqual(['yes', 'yes', 'yes']);
  });

  test('after a full push nobody can tell what one far below was', () => {
    expect(verdicts([1000, 500, 990].map((n) => push(n)))).toEqual(['yes', 'cannot_tell', 'yes']);
  });

  test('at the limit, as far as the uncertainties of both go: cannot tell', () => {
    // 0.8 of 1000 N with 10 N each is known to hypot(10, 8) = 12.8 N: 1.96 of them are 25 N
    const at = (peakN: number): string => verdicts([push(peakN, 'yes', 10), push(1000, 'yes', 10)])[0];
    expect([at(774), at(776), at(800), at(824), at(826)]).toEqual([
      'no',
      'cannot_tell',
      'cannot_tell',
      'cannot_tell',
      'yes',
    ]);
  });

  test('what is refused for another reason is no best: a step onto the plate makes no warm-ups of trials', () => {
    expect(verdicts([push(2000, 'no'), push(700), push(720)])).toEqual(['no', 'yes', 'yes']);
    expect(verdicts([push(700, 'no'), push(720, 'no')])).toEqual(['no', 'no']);
  });

  test('a verdict never becomes better, and the finding says the share and its limit', () => {
    const efforts = [push(500, 'cannot_tell'), push(980, 'cannot_tell'), push(1000)];
    expect(verdicts(efforts)).toEqual(['no', 'cannot_tell', 'yes']);
    expect(judgeWarmUps(efforts, [], { told: null, share: 0.8 })[0].acceptance.findings).toEqual([
      { code: 'warm-up', met: 'no', value: 0.5, limit: 0.8 },
    ]);
  });

  test('a protocol that asks for no share leaves all as they came; so does a recording without efforts', () => {
    const efforts = [push(100), push(1000)];
    expect(judgeWarmUps(efforts, [], { told: null, share: 0 })).toEqual(efforts);
    expect(verdicts([])).toEqual([]);
  });
});

describe('told beats guessed', () => {
  test('the first so many are warm-ups, whatever their size, and the others trials', () => {
    const efforts = [500, 750, 900, 1000, 980, 400].map((n) => push(n));
    expect(verdicts(efforts, 3)).toEqual(['no', 'no', 'no', 'yes', 'yes', 'yes']);
    expect(verdicts(efforts, 0)).toEqual(Array(6).fill('yes'));
    expect(verdicts(efforts, 20)).toEqual(Array(6).fill('no'));
    expect(judgeWarmUps(efforts, [], { told: 3, share: 0.8 })[3].acceptance.findings[0].limit).toBeNull();
  });

  test('a push that could not be measured is one of them', () => {
    const efforts = [push(500, 'yes', 1, 10), push(750, 'yes', 1, 20), push(1000, 'yes', 1, 30)];
    const of = judgeWarmUps(efforts, [5, 40], { told: 2, share: 0.8 });
    expect(of.map(({ acceptance }) => acceptance.accepted)).toEqual(['no', 'yes', 'yes']);
  });

  test.each([-1, 1.5, Number.NaN])('%d is no number of pushes', (told) => {
    expect(() => verdicts([push(900)], told)).toThrow('warmUpPushes');
  });
});

describe('in a recording', () => {
  const warm = [450, 675, 880, 900, 890].map((n, k) => rampEffort(4 + 12 * k, n, 2, 4));
  const knock = { onsetS: 1, force: (t: number) => (t > 0 && t < 0.25 ? 400 : 0) };
  const trace = madeTrace({ efforts: [knock, ...warm], lengthS: 66, sampleRateHz: 200, noise: 0.5 });
  const accepted = (request: object): string[] =>
    findEfforts(trace, { polarity: 'find', ...request }, strengthSettings).efforts.map(
      ({ acceptance }) => acceptance.accepted,
    );

  test('they stay in the list with their reason; a knock before them is no push', () => {
    expect(accepted({})).toEqual(['no', 'no', 'yes', 'yes', 'yes']);
    expect(accepted({ warmUpPushes: 3 })).toEqual(['no', 'no', 'no', 'yes', 'yes']);
    expect(accepted({ warmUpPushes: 0 })).toEqual(Array(5).fill('yes'));
  });

  test('simulated trials at 85 to 100 % of what the person can reach are no warm-ups', () => {
    for (const kind of ['ramp', 'fast'] as const) {
      for (let seed = 3001; seed <= (isLong ? 3010 : 3003); seed++) {
        const pulls = simulatePulls({ kind, level: 'hard', seed, sampleRateHz: 200 });
        const settings = kind === 'fast' ? fastSettings : strengthSettings;
        for (const { acceptance } of findEfforts(pulls.trace, { polarity: 'find' }, settings).efforts) {
          expect(acceptance.findings.find(({ code }) => code === 'warm-up')?.met ?? 'yes').toBe('yes');
        }
      }
    }
  });
});
