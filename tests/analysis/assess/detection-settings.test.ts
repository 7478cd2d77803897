import { defaultSettings } from '@surae/analysis';
import { FLOOR } from '@surae/shared';
import { expect, test } from 'vitest';
import { detectionSettings } from '../../../packages/analysis/src/assess/detection-settings.ts';
import { parametersWith } from '../../support/set-under-judgement.ts';

test('what the protocol says about a repetition takes the place of the settings', () => {
  const parameters = parametersWith({ heightLeast: 0.03, cycleLeast: 0.7, fallFraction: 0.6, gapMost: 0.2 });
  const found = detectionSettings(defaultSettings(), parameters);
  expect(found.heel).toMatchObject({ leastHeightM: 0.03, leastCycleS: 0.7, leastFall: 0.6, longGapS: 0.2 });
  expect(found.body).toMatchObject({ shortestS: 0.7, gapS: 0.2 });
  expect(found.block.movement).toMatchObject({ leastRiseM: 0.03, returnShare: 0.6 });
});

test('a parameter without a value leaves the setting', () => {
  const settings = defaultSettings();
  const none = parametersWith({ heightLeast: null, cycleLeast: null, fallFraction: null, gapMost: null });
  const found = detectionSettings(settings, none);
  expect(found.heel).toEqual(settings.heel);
  expect(found.body).toMatchObject({ shortestS: settings.body.shortestS });
});

test('the usual protocol and the usual settings agree', () => {
  const settings = defaultSettings();
  expect(detectionSettings(settings, FLOOR.parameters).heel).toEqual(settings.heel);
});
