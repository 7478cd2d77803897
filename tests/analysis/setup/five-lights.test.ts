import { describe, expect, test } from 'vitest';
import { setupDefaults } from '../../../packages/analysis/src/assess/defaults/setup.ts';
import {
  fiveLights,
  LIGHT_NAMES,
  type LightFacts,
  type LightName,
} from '../../../packages/analysis/src/setup/five-lights.ts';
import type { Quantity, Trace } from '../../../packages/analysis/src/trace.ts';
import { stillRun } from '../../support/still-run.ts';

const rule = setupDefaults.lights;
const g = setupDefaults.gravityMps2;

const facts: LightFacts = {
  placement: 'platform',
  silentS: 0.1,
  upAxis: null,
  sign: null,
  zero: { level: 0, u: 0.2, ageS: 60 },
  side: { wanted: 'left', told: 'left', ofSensor: null },
  mass: { kg: 70, ageDays: 0, needed: true },
  gravityMps2: g,
};

function traceOf(quantity: Quantity, levels: readonly number[], noise = 0.5, seconds = 3): Trace {
  const runs = levels.map((level, k) => stillRun({ seconds, level, noise, seed: k + 1 }));
  const axis = (k: number) => (levels.length === 1 ? null : (['x', 'y', 'z'] as const)[k]);
  const channels = runs.map(({ samples }, k) => ({ quantity, axis: axis(k), samples }));
  return { groups: [{ timesS: runs[0].timesS, channels }] };
}

const standing = traceOf('force', [70 * g]);

/** What one light says, as `state reason`. */
function light(name: LightName, trace: Trace, told: Partial<LightFacts> = {}): string {
  const found = fiveLights(trace, { ...facts, ...told }, rule).find((one) => one.name === name)!;
  return `${found.state} ${found.reason}`;
}

test('five lights in their order, all lit for somebody who stands there and is known', () => {
  const lights = fiveLights(standing, facts, rule);
  expect(lights.map(({ name }) => name)).toEqual(LIGHT_NAMES);
  expect(lights.map(({ state }) => state)).toEqual(['lit', 'lit', 'lit', 'lit', 'lit']);
});

describe('connected', () => {
  test('lit with the rate that arrives', () => {
    const [first] = fiveLights(standing, facts, rule);
    expect(first.figures['rate']).toBeCloseTo(100, 6);
  });

  test('nothing, silence, other channels, one value for ever, too early', () => {
    expect(light('connected', { groups: [] }, { silentS: null })).toBe('failing nothing-arrives');
    expect(light('connected', standing, { silentS: 1.6 })).toBe('failing silent');
    expect(light('connected', traceOf('acceleration', [0, 0, g]))).toBe('failing wrong-channels');
    expect(light('connected', traceOf('acceleration', [0, 0, g], 0), { placement: 'foot' })).toBe('failing flat');
    expect(light('connected', traceOf('force', [700], 0.5, 0.5))).toBe('cannot-tell too-early');
  });

  test('what does not arrive lights nothing else that samples would tell', () => {
    const lights = fiveLights(standing, { ...facts, silentS: 5 }, rule);
    expect(lights.slice(1, 3).map(({ state }) => state)).toEqual(['cannot-tell', 'cannot-tell']);
  });
});

describe('right way up', () => {
  const foot = (levels: readonly number[], upAxis: LightFacts['upAxis']): string =>
    light('right-way-up', traceOf('acceleration', levels, 0.05), { placement: 'foot', upAxis });

  test('an accelerometer against the axis that was told', () => {
    expect(foot([0, 0, g], [0, 0, 1])).toBe('lit stands-right');
    expect(foot([0, 0, -g], [0, 0, 1])).toBe('failing upside-down');
    expect(foot([g, 0, 0], [0, 0, 1])).toBe('failing tilted');
    expect(foot([g, 0, 0], null)).toBe('lit any-way');
  });

  test('gravity of another size is another unit', () => {
    expect(foot([0, 0, 1], [0, 0, 1])).toBe('failing gravity-size');
  });

  test('gravity without a direction cannot tell', () => {
    const trace = traceOf('acceleration', [0, 0, 0], 0.05);
    const [{ timesS, channels }] = trace.groups;
    const turning = channels.map((channel, k) => ({
      ...channel,
      samples: timesS.map((timeS) => (k === 0 ? g * Math.cos(2 * timeS) : k === 1 ? g * Math.sin(2 * timeS) : 0)),
    }));
    expect(light('right-way-up', { groups: [{ timesS, channels: turning }] }, { placement: 'foot' })).toBe(
      'cannot-tell no-steady-gravity',
    );
  });

  test('a string by its first raise', () => {
    const string = (sign: LightFacts['sign']): string =>
      light('right-way-up', traceOf('heel-height', [0.01], 0.0002), { placement: 'heel', sign });
    expect([string(1), string(-1), string(null)]).toEqual([
      'lit stands-right',
      'failing heel-negative',
      'cannot-tell heel-unknown',
    ]);
  });

  test('a platform and a cell by their sign', () => {
    expect(light('right-way-up', traceOf('force', [-70 * g]))).toBe('failing stands-negative');
    expect(light('right-way-up', traceOf('force', [1]))).toBe('cannot-tell polarity-unknown');
    const cell = (sign: LightFacts['sign']): string =>
      light('right-way-up', traceOf('force', [1]), { placement: 'inline', sign });
    expect([cell(1), cell(-1), cell(null)]).toEqual([
      'lit stands-right',
      'failing pulls-negative',
      'cannot-tell polarity-unknown',
    ]);
  });
});

describe('zero', () => {
  test('of a force: there, missing, old', () => {
    expect(light('zero', standing)).toBe('lit zero-holds');
    expect(light('zero', standing, { zero: null })).toBe('failing no-zero');
    expect(light('zero', standing, { zero: { level: 0, u: 0, ageS: 3601 } })).toBe('failing zero-old');
  });

  test('of a sensor on the body: it rests', () => {
    const foot = { placement: 'foot' } as const;
    expect(light('zero', traceOf('acceleration', [0, 0, g], 0.05), foot)).toBe('lit rests-still');
    expect(light('zero', traceOf('acceleration', [0, 0, g], 6), foot)).toBe('failing not-still');
    const turning: Trace = {
      groups: [
        ...traceOf('acceleration', [0, 0, g], 0.05).groups,
        ...traceOf('angular-velocity', [0.2, 0, 0], 0.001).groups,
      ],
    };
    expect(light('zero', turning, foot)).toBe('failing not-still');
    expect(light('zero', traceOf('heel-height', [0.01], 0.0002), { placement: 'heel' })).toBe('lit rests-still');
    expect(light('zero', traceOf('heel-height', [0.01], 0.02), { placement: 'heel' })).toBe('failing not-still');
  });
});

describe('side', () => {
  const side = (told: 'left' | 'right' | null, ofSensor: 'left' | 'right' | null): string =>
    light('side', standing, { side: { wanted: 'left', told, ofSensor } });

  test('the side of the sensor counts before what was told', () => {
    expect([side('left', null), side('left', 'right'), side(null, 'left')]).toEqual([
      'lit side-agrees',
      'failing side-differs',
      'lit side-agrees',
    ]);
    expect([side('right', null), side(null, null)]).toEqual(['failing side-differs', 'failing side-missing']);
  });
});

describe('mass', () => {
  const mass = (kg: number | null, told: Partial<LightFacts['mass']> = {}, trace = standing): string =>
    light('mass', trace, { mass: { kg, ageDays: 0, needed: true, ...told } });

  test('missing, not asked for, out of range, old', () => {
    expect([mass(null), mass(null, { needed: false })]).toEqual(['failing mass-missing', 'lit mass-not-needed']);
    expect([mass(7.5), mass(24.9), mass(250.1)]).toEqual(Array(3).fill('failing mass-range'));
    expect([mass(70, { ageDays: 91 }), mass(70, { ageDays: 90 })]).toEqual(['failing mass-old', 'lit mass-agrees']);
  });

  test('on a platform 3 % apart is the limit', () => {
    // 70 kg stand there
    expect([mass(68), mass(67.9)]).toEqual(['lit mass-agrees', 'failing mass-differs']);
    expect([mass(72.1), mass(72.3)]).toEqual(['lit mass-agrees', 'failing mass-differs']);
  });

  test('what the platform shows has the uncertainty of its level and of its zero', () => {
    const at = (u: number): number => {
      const zero = { level: 0, u, ageS: 60 };
      const lights = fiveLights(standing, { ...facts, zero, mass: { kg: 60, ageDays: 0, needed: true } }, rule);
      return lights[4].figures['u'];
    };
    expect(at(0)).toBeGreaterThan(0);
    expect(Math.abs(at(3) - Math.hypot(at(0), 3 / g))).toBeLessThan(1e-12);
  });

  test('nobody on it, or somebody who moves, is not weighed', () => {
    expect(mass(70, {}, traceOf('force', [1]))).toBe('cannot-tell nobody-stands');
    expect(mass(70, {}, traceOf('force', [700], 200))).toBe('cannot-tell not-still');
  });

  test('without a platform the mass is what was told', () => {
    const foot = traceOf('acceleration', [0, 0, g], 0.05);
    expect(light('mass', foot, { placement: 'foot' })).toBe('lit mass-told');
  });
});
