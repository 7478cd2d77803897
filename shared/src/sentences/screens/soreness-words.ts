import { sentences } from '../sentence.ts';

/** Words of the page that asks which tendon is sore. */
export const SORENESS_WORDS = sentences('screen.soreness', {
  title: 'Where is it sore?',
  left: 'Left Achilles tendon',
  right: 'Right Achilles tendon',
  no: 'not sore',
  'mid-portion': 'mid-portion',
  insertion: 'at the heel bone',
  'both-places': 'both places',
  explain:
    'Mid-portion is two to six centimetres above the heel bone. Where both places are sore, the heel bone counts: level floor only.',
  'go-on': 'Go on',
  'as-visit': 'As on {date}: left {left}, right {right}',
  'as-episode': 'As the episode says: left {left}, right {right}',
  'not-told': 'not told',
  'copied-visit': 'Taken over from the visit of {date}. Change what is no longer so.',
  'copied-episode': 'Taken over from the episode. Change what is no longer so.',
  'copied-back': 'Take it back',
  missing: 'Answer for both legs to go on.',
  'missing-one': 'Answer for this leg to go on.',
  tested: 'Which legs are tested?',
  'tested-both': 'both legs',
  'tested-left': 'the left leg only',
  'tested-right': 'the right leg only',
  'tested-one': 'One leg only',
  'tested-why':
    'Where the other one is not there, or is not to be tested. Nothing is then asked or said of the other leg.',
});
