/** From level to level, and how a dose comes down and back: texts of the sentences of guidance. */
export const LEVEL_TEXTS = {
  'step-lightest':
    'Suggestion: it is the lightest level already. {least} to {most} % less of it, no full rest, and look again at what is sore and what else it could be.',
  'change-back': 'Suggestion: back to the dose from before it was made less, and nothing else.',
  'change-to-learn':
    'Suggestion: the next level, with raises on two legs, seated raises, and slow lowering on one leg.',
  'change-to-single': 'Suggestion: the next level, with raises on one leg on the floor, and seated raises.',
  'change-to-heavy': 'Suggestion: the next level, with heavy slow raises, seated and standing.',
  'change-to-heavy-late':
    'Suggestion: the next level, with heavy slow raises, after {days} days or more of the one before it. The load is found by trial sets.',
  'change-to-range':
    'Suggestion: the next level, with raises and slow lowering at the edge of a step, and seated raises.',
  'not-settled': 'Pain was more than {hold} over its usual level on the morning after: it had not settled over night.',
  'level-long':
    'At this level for {days} days or more: count raises again, ask what was done, and look for what keeps it from going on.',
  'calm-long':
    'At the lightest level for {days} days or more: test again what the leg bears, and look for something else if nothing changed.',
} as const;

export const LEVEL_CHANGED_BY_TEXTS = {
  'step-lightest': 'Fewer than {days} such days in a week, and mornings that do not rise.',
  'change-back': 'The dose is back, or a session does not go as planned.',
  'change-to-learn':
    'Fewer than {some} raise that counts, pain of more than {pain}, high irritability, or fewer than {days} days at this level.',
  'change-to-single':
    'Fewer than {ten} raises that count, pain of {below} or more, a night that does not settle it, high irritability, a flare in the last {calm} days, or fewer than {days} days at this level.',
  'change-to-heavy':
    'Fewer than {twenty} raises that count, pain of {below} or more, a night that does not settle it, high irritability, a flare in the last {calm} days, or fewer than {days} days at this level.',
  'change-to-heavy-late':
    'Fewer than {ten} raises that count, pain of {below} or more, a night that does not settle it, more than low irritability, a flare in the last {calm} days, or fewer than {days} days at this level.',
  'change-to-range':
    'Sets that are not all done, pain of {below} or more, a night that does not settle it, a heel bone that becomes sore, high irritability, a flare in the last {calm} days, or fewer than {days} days at this level.',
  'not-settled': 'A morning up to {hold} over its usual level.',
  'level-long': 'Another level, or fewer than {days} days.',
  'calm-long': 'Another level, or fewer than {days} days.',
} as const;

export const LEVEL_FACT_TEXTS = {
  'last-at-dose': 'Newest session done at the dose of now',
  'lowered-since': 'Level lowered since the newest session',
  'running-now': 'Whether running is done now or paused',
  'told-in-full': 'Last two sessions and mornings told in full',
  'planned-two-weeks': 'Planned sessions of two weeks',
  'left-out-two-weeks': 'Share of the sessions of two weeks left out or not told',
  'morning-pain-last': 'Morning pain after the last session, of 10',
  'morning-now': 'This morning beside the usual ones',
  'dose-eased': 'A dose that was made less and is not back yet',
} as const;

export const LEVEL_SETTLED_BY_TEXTS = {
  'last-at-dose': 'Note since when this dose is done.',
  'lowered-since': 'Note since when this level is being done.',
  'running-now': 'Ask whether running is done now.',
  'told-in-full': 'Ask for pain in and after the last two sessions, effort, share done, and the mornings after.',
  'planned-two-weeks': 'Compare the plan with the log.',
  'left-out-two-weeks': 'Ask whether the planned sessions of two weeks were done.',
  'morning-pain-last': 'Ask for the morning after the last session.',
  'morning-now': 'Ask for this morning, and for some mornings before it.',
  'dose-eased': 'Note whether the dose was made less.',
} as const;
