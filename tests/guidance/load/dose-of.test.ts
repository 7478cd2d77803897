import { type DoseAsked, doseOf } from '@surae/guidance';
import { describe, expect, test } from 'vitest';

const raises: DoseAsked = {
  code: 'one-leg-raise',
  side: 'left',
  load: null,
  sets: 3,
  repetitions: 15,
  tempo: { upS: 3, topS: 0, downS: 3 },
  holdS: null,
};
const dose = (change: Partial<DoseAsked> = {}, bodyMassKg: number | null = 80) =>
  doseOf({ ...raises, ...change }, bodyMassKg);

describe('the dose of a leg', () => {
  test('of 15 repetitions of 6 s is 90 s a set, 270 s in three', () => {
    expect(dose()).toEqual({ underTensionS: 270, asRaiseS: [270, 270], unweighed: null });
  });

  test.each([
    [{ code: 'two-leg-raise' }, [135, 135]],
    [{ load: { value: 20, unit: 'kg' } }, [337.5, 337.5]],
    [{ load: { value: 20_000, unit: 'g' } }, [337.5, 337.5]],
    [{ tempo: { upS: 3, topS: null, downS: 3 } }, [270, 270]],
    [{ tempo: { upS: 3, topS: 2, downS: 3 } }, [360, 360]],
    [{ code: 'one-leg-hold', repetitions: null, tempo: null, holdS: 45, sets: 5 }, [225, 225]],
    [{ code: 'seated-raise' }, [45, 270 * (0.5 / 2.6)]],
  ])('%o: %o s of a raise', (change, asRaiseS) => {
    expect(dose(change)).toMatchObject({ asRaiseS });
  });

  test.each([
    [{ sets: null }, 'sets'],
    [{ repetitions: null }, 'repetitions'],
    [{ tempo: null }, 'time'],
    [{ tempo: { upS: null, topS: 0, downS: 3 } }, 'time'],
    [{ tempo: { upS: 3, topS: 0, downS: null } }, 'time'],
  ] as const)('%o is withheld for %s, and no zero', (change, withheld) => {
    expect(dose(change)).toEqual({ withheld });
  });

  test.each([
    [{ code: 'step-raise' }, 80, 'relative-load'],
    [{ code: null }, 80, 'relative-load'],
    [{ load: { value: 20, unit: 'kg' } }, null, 'load'],
    [{ load: { value: 20, unit: '[lb_av]' } }, 80, 'load'],
  ])('%o at %s kg has its time alone, for want of %s', (change, mass, unweighed) => {
    expect(dose(change, mass)).toEqual({ underTensionS: 270, asRaiseS: null, unweighed });
  });

  test('without a load the mass need not be known, and a mass of none is refused', () => {
    expect(dose({}, null)).toMatchObject({ asRaiseS: [270, 270] });
    expect(() => dose({}, 0)).toThrow('not-an-answer');
  });
});
