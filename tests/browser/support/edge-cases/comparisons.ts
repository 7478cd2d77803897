import type { EdgeCase } from './edge-case.ts';

/** What a result is held beside, and what may not be held beside it. */
export const COMPARISONS = {
  'different-days': {
    happens: 'the legs were tested on two days',
    seen: 'two results and no ratio',
    metBy: [
      ['casebook/compare/pair-circumstances', 'order, day, source and rest come from the sets themselves'],
      ['dashboard/result/side-view', '%s: no figure, its reason and what would lift it'],
    ],
  },
  'otherwise-than-last-time': {
    happens: 'another shoe, board or sensor place than last time',
    seen: 'no change; side by side with what differs; the test of last time stands first in the choice',
    metBy: [
      [
        'casebook/compare/visit-legs',
        'visits done alike make a course; another surface, or a set ended for pain, stands apart',
      ],
      [
        'dashboard/result/past-view',
        'every setting of a protocol of raises has a name, codes have words, and what is unknown is counted',
      ],
      ['casebook/choice/choice-offer', 'the test of the last visit comes first and says how it was done'],
    ],
  },
  'newer-protocol': {
    happens: 'a protocol has a newer version',
    seen: 'an old result keeps its own; counted again it is a second result beside the first',
    metBy: [
      [
        'casebook/compare/judged-protocol',
        'the parameters are those that the report was judged by, not those of today',
      ],
      ['browser/recount', 'a stored set is counted again, and after a reload both results are there'],
    ],
  },
  'few-on-the-other-leg': {
    happens: 'the leg to compare with has none, or under five',
    seen: 'numbers and no ratio',
    metBy: [
      ['analysis/compare/ratio-blocks', 'under five it is also plainly too small'],
      ['dashboard/result/side-view', '%s: no figure, its reason and what would lift it'],
    ],
  },
  'change-within-the-wobble': {
    happens: 'four more than last time, where six can be told',
    seen: 'it cannot be told, in words and in the picture',
    metBy: [
      [
        'dashboard/legs/leg-change',
        'what lies in the band is never called a real change, and what lies outside always',
      ],
      [
        'dashboard/result/comparisons',
        '75 N more against 118 N cannot be told, by any published error, and one leg alone has no ratio',
      ],
    ],
  },
  'start-in-a-flare': {
    happens: 'the first test was in a flare',
    seen: 'it is named with the change: some of it may be that day passing; later tests can be held against a calmer one, and back',
    metBy: [
      ['analysis/compare/visit-change', 'the cautions: practice, a flare at the beginning, and what was not told'],
      ['dashboard/result/bilateral-view', 'a start that was taken in a flare is named as such'],
      [
        'dashboard/journey/new-start-view',
        'after a new start a test is held against it and none before it, which stays in the course apart from the line',
      ],
      ['browser/new-start', 'later tests can be held against a calmer one where the first was in a flare, and back'],
    ],
  },
  'one-leg-only': {
    happens: 'somebody has one leg, or one that alone is to be tested',
    seen: 'one leg is asked, tested and told; no ratio, and nothing of another leg',
    metBy: [
      [
        'browser/one-leg',
        'somebody with one leg to test comes to a result, with no ratio and nothing of another leg anywhere',
      ],
      [
        'dashboard/legs/legs-view',
        'of one leg alone nothing is said of another: no sentence, no mark, no line, no ratio, for either reader',
      ],
      ['dashboard/journey/steps', 'of one leg alone there is neither a rest nor another leg, and nothing waits for it'],
    ],
  },
  'few-own-pairs': {
    happens: 'the own error of a clinic rests on six pairs',
    seen: 'it is shown and not used; the one used is named',
    metBy: [
      [
        'dashboard/result/comparisons',
        'from 15 to 29 pairs its upper bound is used; under 15, and in another unit, it is shown and the published one stands',
      ],
    ],
  },
  'copied-pairs': {
    happens: 'the pairs of an own error are copies of each other',
    seen: 'an error of zero is refused',
    metBy: [
      [
        'analysis/agreement/measurement-error',
        'no residual is no proof of no error, and impossible arguments are refused',
      ],
      ['analysis/compare/own-ratio-error', 'copied ratios are no error of zero, and impossible arguments are refused'],
    ],
  },
  'agreement-below-zero': {
    happens: 'people scatter less than the method',
    seen: 'the coefficient as computed, below zero, with its interval and a note',
    noScreen: 'agreement is worked out by the command agree; the page takes its result',
    metBy: [
      ['analysis/agreement/variance-components', 'a component below zero is told and not cut off'],
      [
        'analysis/agreement/intraclass',
        'what cannot be said is left open: all values alike, or subjects without any spread',
      ],
    ],
  },
  'rater-looks-early': {
    happens: 'somebody who counts blindly looks at the labels',
    seen: 'no label is on the page before the lock; an early opening, on the command line, is kept and told before the count goes on, and what that person counts afterwards is marked and left out',
    metBy: [
      [
        'browser/recount-study',
        'verdicts are locked once, names open only after the lock of all, and agreement stands with intervals and every mark',
      ],
      ['dashboard/study/recount-desk', 'an early opening is told with the rater, who may still count'],
      ['study/blind/verdict-book', 'what is said after an early opening is marked'],
      ['study/blind/blind-agreement', 'what was said after an early opening is left out'],
    ],
  },
} as const satisfies Record<string, EdgeCase>;
