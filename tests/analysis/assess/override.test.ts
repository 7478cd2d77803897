import { defaultSettings, overrideSettings, withParameters } from '@surae/analysis';
import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';

test('an override reaches any depth and leaves the rest, and the original, alone', () => {
  const usual = defaultSettings();
  const result = overrideSettings(usual, { heel: { pitch: { movementCutoffHz: 7 } }, judging: { draws: 500 } });
  expect(result).toMatchObject({
    ok: true,
    value: { heel: { pitch: { movementCutoffHz: 7 } }, judging: { draws: 500 } },
  });
  if (result.ok) expect(result.value.body).toEqual(usual.body);
  expect(usual).toEqual(defaultSettings());
});

test('a list is replaced as a whole', () => {
  const result = overrideSettings(defaultSettings(), { body: { bumpSizesM: [0.02] } });
  expect(result).toMatchObject({ ok: true, value: { body: { bumpSizesM: [0.02] } } });
});

test('an unknown name is refused with its place', () => {
  const result = overrideSettings(defaultSettings(), { judging: { drawz: 500 } });
  expect(result).toMatchObject({ ok: false, problems: [{ path: 'judging.drawz', actual: 'drawz' }] });
});

test('every problem is listed: another kind, NaN, a list of words, no object at all', () => {
  const bad = { judging: { draws: '500', seed: Number.NaN }, body: { bumpSizesM: ['a'] }, heel: 3 };
  const result = overrideSettings(defaultSettings(), bad);
  expect(result.ok).toBe(false);
  if (!result.ok) {
    const paths = result.problems.map((problem) => problem.path);
    expect(paths).toEqual(['judging.draws', 'judging.seed', 'body.bumpSizesM', 'heel']);
  }
  expect(overrideSettings(defaultSettings(), null)).toMatchObject({ ok: false, problems: [{ path: 'settings' }] });
});

test('names that every object has are no settings', () => {
  expect(overrideSettings(defaultSettings(), JSON.parse('{"__proto__": {"draws": 1}, "toString": 1}')).ok).toBe(false);
});

test('a parameter within its range makes another protocol and says who chose it', () => {
  const result = withParameters(FLOOR, { heightFraction: 0.6, surface: 'step', repetitionCap: 50, duration: null });
  expect(result.ok).toBe(true);
  if (result.ok) {
    expect(result.value.parameters.heightFraction).toMatchObject({ value: 0.6, source: 'chosen by the tester' });
    expect(result.value.parameters.surface.value).toBe('step');
    expect(FLOOR.parameters.heightFraction.value).toBe(0.75);
  }
});

test('a parameter out of range, an unknown choice and an unknown name are refused', () => {
  const result = withParameters(FLOOR, { heightFraction: 1.2, surface: 'sand', hieght: 1 });
  expect(result).toMatchObject({
    ok: false,
    problems: [
      { path: 'heightFraction', actual: '1.2' },
      { path: 'surface', expected: 'one of floor, incline10, step' },
      { path: 'hieght', actual: 'hieght' },
    ],
  });
  expect(withParameters(FLOOR, [1]).ok).toBe(false);
});
