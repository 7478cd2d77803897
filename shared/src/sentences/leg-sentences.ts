import { sentences } from './sentence.ts';

/** Short names of what a judgement of effort, pain or irritability looks at. */
export const FINDING_INPUT_NAMES = sentences('finding-input', {
  'end-reason': 'why the set ended',
  exertion: 'exertion at the end',
  'height-drop': 'drop of height',
  'tempo-drift': 'drift of tempo',
  trials: 'the efforts that count',
  plateau: 'how long the best effort was held',
  'peak-pain': 'greatest pain',
  'resting-pain': 'pain before the set',
  'sharp-pain': 'whether the pain was sharp',
  'high-irritability': 'how irritable the tendon is',
  provokedBy: 'what brings the pain on',
  peakPain: 'greatest pain',
  settlesAfter: 'time until the pain settles',
  morningStiffness: 'morning stiffness',
  restPain: 'pain at rest or at night',
  trend: 'the last two weeks',
});

/** What a comparison of the legs says beside its figures. */
export const LEG_COMPARISON_SENTENCES = sentences('leg-comparison', {
  'lower-yes': 'Lower is likely.',
  'lower-no': 'Lower is not likely.',
  'lower-cannot_tell': 'Cannot tell whether it is lower.',
  'difference-likely-real':
    "A difference this size is larger than this test's usual wobble: a real difference is likely.",
  'difference-possible': 'A difference this size is possible, and can come from normal variation.',
  'difference-cannot-tell': 'A difference this size can come from normal variation.',
  'hangs-on-reliability': 'The verdict hangs on which reliability is used.',
  'same-by-every-reliability': 'The verdict is the same by every published reliability.',
  'references-disagree': 'The groups disagree: each is context, and none is an expected number.',
  'sex-not-known': 'Groups of women and of men are left out, because the sex is not known.',
  'course-moves': 'The course has a direction.',
  'course-cannot-tell': 'Whether the course has a direction cannot be told.',
  'not-graded': 'Not graded, and treated as moderate.',
  'robust-yes': 'The conclusion is the same under every one of these criteria.',
  'robust-no': 'The conclusion turns with the criterion.',
  'robust-cannot_tell': 'Whether the conclusion holds under all of these criteria cannot be told.',
});

/** What about a person may not fit a published group. */
export const REFERENCE_CAUTION_SENTENCES = sentences('reference-caution', {
  'body-mass-index-not-known': 'The body mass index is not known.',
  'body-mass-index-above-group': 'The body mass index is above that of the group.',
});
