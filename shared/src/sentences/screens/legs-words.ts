import { sentences } from '../sentence.ts';

/** Words of the page that shows somebody their own two legs. They are read by who was tested: short, plain, without a judgement. */
export const LEGS_WORDS = sentences('screen.legs', {
  'title-one': 'My leg',
  show: 'Show this to the person tested',
  back: 'Back to the visit',
  print: 'Print this page',
  save: 'Save this page as a file',
  'no-name': 'No name is on this page.',
  open: 'This visit is not closed yet. The page is there when it is.',
  nothing: 'Nothing was measured in this visit.',
  day: 'Tested on {day}',
  'day-untested': 'Visit of {day}',
  'by-hand':
    'Somebody counted your heel raises by hand. Such a count can be off by one or two. How high your heel went was not measured.',
  'not-live': 'These numbers are from a made-up or replayed test. Nobody did them on that day.',

  'heel-raise': 'Heel raises',
  isometric: 'Pushes',
  newton: 'N is short for newton. It takes about 10 N to hold up one kilogram.',
  count: 'How many heel raises count',
  force: 'How hard each leg pushed, in {unit}',

  left: 'your left leg',
  right: 'your right leg',
  joined: '{first}, {second}.',
  alone: '{what}.',
  between: '{what} (between {low} and {high})',
  did: '{leg} did {count}',
  reached: '{leg} reached {count}',
  'at-least': '{leg} did {count} or more',
  pain: '{leg} stopped for pain at {count}',
  'ended-early': '{leg} did {count}, then the test was ended early',
  popped: '{leg} stopped for a pop or a sudden give, so it has no number',
  probe: '{leg} did {count} of a number that was set before',
  'reason-unknown': '{leg} did {count}, and why it ended was not written down',
  none: 'nothing that counts was found for {leg}',
  waiting: 'there is no result yet for {leg}',
  untested: '{leg} was not tested',

  'zone-likely-real': 'A difference of this size is more than the usual ups and downs of this test.',
  'zone-possible': 'A difference of this size may be real. It can also come from the usual ups and downs of this test.',
  'zone-cannot-tell': 'A difference of this size can come from the usual ups and downs of this test.',
  alike: 'The test cannot tell the two legs apart.',
  hangs: 'Studies of this test do not agree: by another one the answer would be different.',
  'stopped-for-pain': 'We did not compare because you stopped for pain: that is useful to know too.',
  'both-sore': 'Both legs are sore, so we did not compare one with the other. Each leg is compared with its own start.',
  'one-leg': 'One leg has no number, so there is nothing to compare it with.',
  'not-compared':
    'We did not compare the two legs: something that a fair comparison needs was missing. Ask us what it was.',

  'change-likely-real': '{leg}: {difference} than on {day}. This is more than the usual ups and downs of this test.',
  'change-possible': '{leg}: {difference} than on {day}. This may be a real change. It can also be chance.',
  'change-cannot-tell': '{leg}: {difference} than on {day}. A change of this size can be chance: the test cannot tell.',
  'change-equal': '{leg}: the same as on {day}. A small change can hide in the usual ups and downs.',
  'change-open': '{leg}: whether it changed since {day} cannot be told.',
  'not-now': '{leg}: this test is not compared with earlier ones, because of how it was done or how it ended.',
  'first-time': '{leg}: this is the first test, so there is no start to compare it with yet.',
  'first-retest': 'A test often goes a little better the second time, just by knowing it.',
  'baseline-in-flare': 'The earlier test was on a sorer day than usual. Some of the change may be that day passing.',
  unlike: 'An earlier test was done in another way or ended early. It is not put on one line with this test.',

  course: 'The same test over the last twelve weeks',
  band: 'The shaded band shows what could be chance since the first day of the band.',
  'left-name': 'Left',
  'right-name': 'Right',
  gap: 'not measured',
  'no-line': 'no line yet',
  'no-line-told': '{name}: no line yet.',
  'marks-told': 'Picture. {left} {right} The line goes from 0 to {most}.',
  'mark-told': '{name}: {value}.',
  'mark-told-between': '{name}: {value}, between {low} and {high}.',
  'line-told': '{name}: {points}. From {low} to {high} could be chance.',
  'point-told': '{value} on {day}',
  'lines-told': 'Picture. {left} {right}',

  'can-title': 'What these numbers can and cannot say',
  'can-day': 'They say what your legs did in one test on one day, and that goes up and down by itself.',
  'can-other': 'The other leg is only a neighbour: it may do less than it could, too.',
  'can-not': 'They cannot say why it hurts, how it will be later, or what is right for you today.',
});

/**
 * When to ask for help before anything else, in the words of who was tested; each line is one of the safety list, by its id. That no
 * feeling between the legs is for the emergency number, and not for the clinic, is common practice, no source.
 */
export const LEGS_FLAG_WORDS = sentences('screen.legs-flag', {
  title: 'First: when to ring',
  ring: 'Stop the exercises and ring the number your clinic gave you, today, if one of these is new:',
  'ring-whom': 'Stop the exercises and ring {name}, {telephone}, today, if one of these is new:',
  'safety.rupture': 'A sudden pop or blow in your calf, or you suddenly cannot rise onto your toes.',
  'safety.clot': 'Your calf is swollen or hot, or it hurts when you rest.',
  'safety.infection': 'You have a fever, a hot red tendon, or a wound.',
  'safety.bone': 'Your heel bone hurts when it is squeezed, or a bone hurts at night.',
  'safety.fluoroquinolone':
    'You take a drug of the kind called fluoroquinolone, an antibiotic, or you took it in the last three months.',
  'safety.steroid': 'You take steroid tablets, or had a steroid injection near the tendon in the last six weeks.',
  'safety.nerve-vessel': 'Your leg or foot goes numb, your foot drops, or walking hurts your calf until you rest.',
  'safety.during.unwell':
    'Pain in your chest, hard to breathe, or no feeling between your legs? Ring the emergency number of your country now.',
});
