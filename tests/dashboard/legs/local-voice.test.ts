import { expect, test } from 'vitest';
import { localVoice } from '../../../apps/dashboard/src/legs/local-voice.ts';

const voice = (name: string, lang: string, localService: boolean, isDefault = false) => ({
  name,
  lang,
  localService,
  default: isDefault,
});

test('a voice that would send the page away is never taken, whatever else there is', () => {
  const network = voice('far', 'en-GB', false, true);
  expect(localVoice([network], 'en')).toBeUndefined();
  expect(localVoice([], 'en')).toBeUndefined();
  expect(localVoice([network, voice('near', 'en-US', true)], 'en')?.name).toBe('near');
});

test('the language of the page is spoken, in any of its lands, the own choice of the device first', () => {
  const voices = [voice('a', 'de-DE', true), voice('b', 'en_US', true), voice('c', 'en-GB', true, true)];
  expect(localVoice(voices, 'en')?.name).toBe('c');
  expect(localVoice(voices, 'de-AT')?.name).toBe('a');
  expect(localVoice(voices, 'fr')).toBeUndefined();
});
