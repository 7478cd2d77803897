import { sentences } from './sentence.ts';

/** What a rule proposes, to a clinician; a blank is a number of the rule by its name, and `next` the next step of a line. */
export const GUIDANCE_SENTENCES = sentences('guidance', {
  'lock-line': 'No loading is proposed: a line of the safety list is ticked, or was not asked. Usual next step: {next}',
  'lock-sudden-loss':
    'No loading is proposed: a raise is lost, said to be new and sudden. The first line of the safety list comes first: {next}',
  'lock-no-raise':
    'No loading is proposed yet: not one raise on this leg. Look for the signs of a rupture first. If there is one: {next}',
  'lock-rupture-looked': 'No loading is proposed: signs of a rupture were found. Usual next step: {next}',
  'no-hard-hold': 'No hard hold without movement is proposed. {next}',
  'note-line': 'A line of the safety list asks for a note to a doctor. {next}',
  'heel-bone-level':
    'Sore at the heel bone, or not known where: no step, no calf stretch, and no heel below level is proposed.',
  'range-level': 'Suggestion: the heel goes no lower than level, since the tendon is sore at the heel bone.',
  'range-step': 'Suggestion: at the edge of a step the heel may go {lowest}° from level.',
  'start-calm': 'Suggestion: begin calm, with holds slightly up on the toes and raises on two legs as tolerated.',
  'start-learn': 'Suggestion: begin with raises on two legs, seated raises, and slow lowering on one leg.',
  'start-single': 'Suggestion: begin with raises on one leg on the floor, and seated raises.',
  'start-heavy': 'Suggestion: begin with heavy slow raises, seated and standing.',
});

/** What would change a proposal. */
export const GUIDANCE_CHANGED_BY = sentences('guidance-changed-by', {
  'lock-line': 'The line is gone through again and is clear.',
  'lock-line-reason': 'The line is clear, or a clinician goes over it with a reason that is kept.',
  'lock-sudden-loss': 'The first line of the safety list was gone through and the loss is not new and sudden.',
  'lock-no-raise': 'The signs of a rupture were looked for and there is none.',
  'lock-rupture-looked': 'A medical assessment says that it is none.',
  'heel-bone-level': 'The tendon is no longer sore at the heel bone, or a clinician gives a reason for more.',
  'range-level': 'The tendon is no longer sore at the heel bone, or a clinician gives a reason for more.',
  'range-step': 'The heel bone becomes sore, or the level goes below {level}.',
  'start-calm':
    'At least {some} raise that counts, pain of at most {pain} on two legs, and less than high irritability.',
  'start-learn': 'At least {ten} raises that count, with pain below {pain}.',
  'start-single': 'At least {twenty} raises that count, or a morning after that is worse.',
  'start-heavy': 'Fewer than {twenty} raises that count, or high irritability.',
});

/** What a fact is, in words. A line of the safety list has its own question. */
export const GUIDANCE_FACT_WORDS = sentences('guidance-fact', {
  'sudden-loss': 'A raise that is lost newly and suddenly',
  'rupture-looked': 'Signs of a rupture, looked for on this leg',
  place: 'Where the tendon is sore',
  irritability: 'Irritability of the tendon',
  'valid-raises': 'Single-leg raises that counted, at body weight',
  'pain-double-raise': 'Pain at a raise on two legs, of 10',
  'pain-single-raise': 'Worst pain at single-leg raises, of 10',
  'settles-overnight': 'Pain and stiffness back to usual by the next morning',
  'level-now': 'Level of the programme now',
  'days-at-level': 'Days at this level',
  'worst-pain-lately': 'Worst pain of the last two weeks, of 10',
  'days-since-flare': 'Days since the last flare',
  'sore-legs': 'Legs that are sore',
  'rig-at-hand': 'A rig that measures force without movement',
});

/** What would settle a fact that is missing. */
export const GUIDANCE_SETTLED_BY = sentences('guidance-settled-by', {
  line: 'Go through this line of the safety list.',
  'sudden-loss': 'Ask whether the raise was lost newly and suddenly.',
  'rupture-looked': 'Squeeze the calf, feel for a gap, and compare how far the foot hangs.',
  place: 'Press along the tendon and note where it is sore.',
  irritability: 'Answer all six questions of the history for this leg.',
  'valid-raises': 'Count single-leg raises, or note zero.',
  'pain-double-raise': 'Try a raise on two legs and ask for the pain.',
  'pain-single-raise': 'Try single-leg raises and ask for the worst pain.',
  'settles-overnight': 'Ask how the next morning is.',
  'level-now': 'Note which level is being done.',
  'days-at-level': 'Note since when this level is being done.',
  'worst-pain-lately': 'Keep a log of sessions for two weeks.',
  'days-since-flare': 'Ask when the last flare was.',
  'sore-legs': 'Note for each leg whether it is sore.',
  'rig-at-hand': 'Note whether a rig is at hand.',
});
