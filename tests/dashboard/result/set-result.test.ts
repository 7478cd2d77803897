import { defaultSettings } from '@surae/analysis';
import { expect, test } from 'vitest';
import { keptProvenance, setResult } from '../../../apps/dashboard/src/result/set-result.ts';
import { settingsHash } from '../../../apps/dashboard/src/result/settings-hash.ts';
import { softwareName } from '../../../apps/dashboard/src/result/software.ts';
import { madeReport, sureCount } from '../../support/made-visit.ts';

const report = madeReport('left', sureCount(3));

test('a result is kept with the settings and the version that made it', () => {
  expect(setResult('s', report)).toEqual({
    kind: 'set-result',
    setId: 's',
    report,
    settingsHash: settingsHash(defaultSettings(), report),
    software: softwareName(),
  });
});

test('the newest result of the set tells how it came about, and not that of another set', () => {
  const bodies = [
    { setId: 's', settingsHash: 'h1', software: 'surae 0.1.0' },
    { setId: 's', settingsHash: 'h2', software: 'surae 0.2.0' },
    { setId: 'other', settingsHash: 'h3', software: 'surae 0.3.0' },
  ];
  expect(keptProvenance(bodies, 's')).toEqual({ settingsHash: 'h2', software: 'surae 0.2.0' });
});

test('what an older document does not hold is not kept, and never guessed from this version', () => {
  expect(keptProvenance([{ setId: 's', settingsHash: 'h' }], 's')).toEqual({ settingsHash: 'h', software: null });
  expect(keptProvenance([], 's')).toEqual({ settingsHash: null, software: null });
});
