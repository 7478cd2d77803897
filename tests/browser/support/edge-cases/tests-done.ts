import type { EdgeCase } from './edge-case.ts';

/** What happens in a set or a push, and how it is counted, judged and ended. */
export const TESTS_DONE = {
  'stopped-for-pain': {
    happens: 'pain ends a set at the ninth raise',
    seen: '9 tolerated before the pain limit, first of all; no ratio and no group',
    metBy: [
      [
        'dashboard/result/comparisons',
        'two sore sides, one stopped for pain: no ratio, the reasons, and what was tolerated',
      ],
      ['dashboard/result/leg-view', 'a set that pain ended says what was tolerated, first of all'],
      ['dashboard/legs/leg-told', 'every way to end has its own words, and none is blamed on the one who ended'],
    ],
  },
  'cap-reached': {
    happens: 'the largest number of the protocol is reached',
    seen: 'at least so many, without an upper bound',
    metBy: [
      ['dashboard/result/two-legs', 'the score stands first, with its bounds; a cap makes it a lower bound'],
      ['dashboard/live/set-limit', 'a cap that a clinic sets ends a set to fatigue'],
      ['dashboard/result/leg-view', 'a set that reached the largest number says what would tell more'],
    ],
  },
  'wrong-leg-named': {
    happens: 'a set or a push was recorded under the name of the other leg',
    seen: 'one press gives it the other name, also with the result; the recording is the same, and that it was changed is kept',
    metBy: [
      [
        'browser/swapped-legs',
        'a set under the wrong leg gets the name of the other one, in the rest or with the result, and back',
      ],
      ['casebook/legs-swapped', 'what was recorded has the name of the other leg, and is the same recording'],
      ['casebook/legs-swapped', 'told once more it is as it was, and both are kept with their times'],
    ],
  },
  'same-leg-twice': {
    happens: 'one leg is tested twice, once under the name of the other one',
    seen: 'a sensor that lies as it lay is told before the set and asked about after it; else it is said that nothing can tell, and one press says it was so; which of the two counts is chosen, both are kept, and the leg that was left out is tested',
    metBy: [
      [
        'browser/same-leg',
        'one leg that was tested twice is asked about, both are kept, one counts, and the other leg comes next',
      ],
      [
        'dashboard/live/sensor-change',
        'a sensor that lies as it lay on the other leg is told before the set, and one that was moved is not',
      ],
      [
        'casebook/same-leg',
        'one leg twice: the second has the name of that leg and is kept, the first counts, and the other leg stands open with its rest',
      ],
      [
        'casebook/same-leg-signs',
        'a sensor that lies as it lay makes it likely, up to two degrees, and one that was turned proves nothing',
      ],
    ],
  },
  'lazy-first-raise': {
    happens: 'the first raises are lower than those after them',
    seen: 'a higher one takes the place of the reference, all are judged anew, and it is said',
    metBy: [
      [
        'analysis/raises/reference-height',
        'an early repetition more than 5 % above the practice raises takes their place, a late one does not',
      ],
      ['dashboard/result/reference-lines', 'a lazy practice that a first repetition beat is told as such'],
    ],
  },
  'lower-target': {
    happens: 'the reference height of one leg is much lower',
    seen: 'both heights, and that the line of one leg was lower',
    metBy: [
      [
        'dashboard/result/reference-lines',
        'a reference that is much lower on one leg is said with both heights; at the line it is not',
      ],
    ],
  },
  'bounce-at-the-top': {
    happens: 'the heel dips at the top',
    seen: 'one repetition',
    metBy: [['analysis/raises/block-machine', 'a dip of 40 % at the top belongs to the repetition']],
  },
  'pause-at-the-top': {
    happens: 'the heel is held up for three seconds',
    seen: 'one repetition, off the beat, with its time under tension',
    metBy: [
      ['analysis/raises/block-machine', 'a hold with a sinking top keeps its top in the middle of the hold'],
      ['analysis/raises/criteria/tempo-and-rest', 'one late repetition is on the beat, the second in a row is off'],
      ['analysis/assess/set-measures', 'time under tension runs from leaving the bottom to being back, rests left out'],
    ],
  },
  'rest-at-the-bottom': {
    happens: 'somebody rests at the bottom and goes on',
    seen: 'the rule of the end is applied; what came after is listed and does not count',
    metBy: [
      ['analysis/raises/criteria/tempo-and-rest', '0.6 s at the bottom is no rest, 0.7 s is'],
      ['dashboard/result/summary-sentence', 'how the number came about: all met, some met, some after the end'],
    ],
  },
  'half-raises': {
    happens: 'two quick half raises in a beat',
    seen: 'two tried, each not high enough',
    metBy: [
      ['analysis/raises/block-machine', 'a fall of 60 % and a new rise makes two'],
      ['analysis/raises/criteria/height-and-return', '75 % of the reference is high enough, 74 % is not'],
      ['dashboard/live/last-verdict', 'the first reason of a repetition that is not valid is said'],
    ],
  },
  'knee-not-seen': {
    happens: 'a sensor at the foot sees nothing of the knee',
    seen: 'the knee was not observed, and is not counted as met',
    metBy: [
      [
        'dashboard/result/verdict-words',
        'what no repetition shows is named once for the set, the rest where it is missing',
      ],
    ],
  },
  'verdict-by-hand': {
    happens: 'a clinician sees a repetition otherwise',
    seen: 'the hand wins, the measured verdict stays beside it, with how far both agree',
    metBy: [
      ['browser/acceptance', 'a verdict that is judged by hand in the rest stands beside the measured one'],
      ['casebook/accepted-set', 'counts by the person, keeps the automatic report, and says on how many they agree'],
    ],
  },
  'late-sound': {
    happens: 'the beat comes late from a loudspeaker without a cable',
    seen: 'the time between two tops is judged, not where in the beat they lie',
    metBy: [
      [
        'analysis/assess/assessed-repetition',
        'the beat error is the period minus the beat; the first has none, and without a beat nobody has',
      ],
      ['analysis/assess/assess', 'a shift of the clock moves every time and changes nothing else'],
    ],
  },
  'beat-not-heard': {
    happens: 'somebody is deaf, or the sound of the beat is off',
    seen: 'the beat is seen, and felt where a device can; that it was not heard stands with the set',
    metBy: [
      [
        'dashboard/live/beat-switch',
        'while it is silent the beat is felt, from the next beat up on, until it is heard again or over',
      ],
      [
        'dashboard/live/set-session',
        'pain, prompts and a hidden page are kept in their order, at the time of the newest sample',
      ],
    ],
  },
  'falls-or-faints': {
    happens: 'somebody falls or faints in a set',
    seen: 'the space bar stops it at once; what to do stands in large words',
    metBy: [['browser/stop', 'the space bar stops the set whatever has the focus, and does nothing else']],
  },
  'pop-in-a-test': {
    happens: 'something pops or gives way in a test',
    seen: 'its steps fill the screen in large words; the recording is kept, without a score; nothing more is tested',
    metBy: [
      ['browser/endings', 'a pop fills the screen with its steps, gives no score, and keeps from any further test'],
      [
        'casebook/popped',
        'after it nobody is tested any more today, whatever was clear before, and no reason opens it',
      ],
      [
        'dashboard/result/summary-sentence',
        'after a pop there is no score: not in the sentence, not on the axis, not on the page of who was tested',
      ],
    ],
  },
  'trials-still-rise': {
    happens: 'each push is better than the one before',
    seen: 'another trial is asked for; the best counts and is called no maximum yet',
    metBy: [
      ['analysis/assess/pull-trials', 'another one is asked for while the last is the best by over 5 %'],
      [
        'dashboard/result/leg-view',
        'efforts that agree show a maximum; others do not yet, with the reason and without judging',
      ],
    ],
  },
  'spike-in-a-push': {
    happens: 'one sample of a push is far above the others',
    seen: 'the mean over half a second counts, and the spike is in neither',
    metBy: [['analysis/efforts/find-efforts', 'a single wild sample on the plateau is not the peak']],
  },
  countermovement: {
    happens: 'the force dips before a fast push',
    seen: 'it does not count, with its reason',
    metBy: [
      ['analysis/efforts/acceptance', 'the limit of a dip is 10 N or 2 % of the peak, whichever is more'],
      ['dashboard/result/trial-verdicts', 'an effort that does not count has every reason in words'],
    ],
  },
} as const satisfies Record<string, EdgeCase>;
