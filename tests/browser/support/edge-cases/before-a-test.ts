import type { EdgeCase } from './edge-case.ts';

/** What is told, missing or wrong before anybody is tested, and what keeps from a test. */
export const BEFORE_A_TEST = {
  'both-sore': {
    happens: 'both tendons are sore',
    seen: 'no ratio and the reason; each leg beside its own start and the groups',
    metBy: [
      [
        'dashboard/result/bilateral-view',
        'both sore: no state of it holds a ratio, whatever was counted and however it ended',
      ],
      ['browser/legs', 'both sore, one stopped for pain: each against its own start, one sheet of paper'],
    ],
  },
  'no-raise-at-all': {
    happens: 'not one raise on one leg, or it was not tried',
    seen: 'the two are told apart; both legs together are offered; a new and sudden loss blocks every test',
    metBy: [
      [
        'dashboard/journey/ladder-lines',
        'a raise that was not attempted, and one that was tried in vain, are told apart',
      ],
      [
        'casebook/choice/choice-blocks',
        'a raise that is lost newly and suddenly blocks everything; one that is not does not',
      ],
      [
        'casebook/choice/choice-offer',
        'fewer than three raises last time propose no count to fatigue of one leg first; three do',
      ],
      ['dashboard/result/summary-sentence', 'every way to end has its own words'],
    ],
  },
  'mass-missing': {
    happens: 'the body mass was not measured',
    seen: 'counts, heights and beat as ever; work and multiples of body weight held back, with the mass asked for',
    metBy: [
      ['analysis/assess/judge', 'without a body mass there is no work and no power, never a usual mass'],
      ['casebook/today/due-today', 'what is missing of it is asked, and a day that cannot be read is no fresh one'],
    ],
  },
  'mass-old-or-changed': {
    happens: 'the mass is over 90 days old, or differs by more than 5 %',
    seen: 'it is asked; a closed visit keeps the mass that was known then',
    metBy: [
      ['casebook/today/due-today', 'a mass is asked again when it is over 90 days old, and not at 90'],
      [
        'casebook/today/due-today',
        'a mass that changed is asked when it changed by more than 5 percent, up or down, and not at 5',
      ],
      ['dashboard/journey/body-form', 'a change of more than 5 percent is far, 5 is not'],
      [
        'dashboard/journey/visit-book',
        'a correction is a document of its own; a closed visit keeps the body that was known at its end',
      ],
    ],
  },
  'mass-in-pounds': {
    happens: 'a mass of 165 or of 7.5 is typed',
    seen: 'outside 25 to 250 kg it is refused; stones and pounds stand beside it; one that looks like pounds is asked about',
    metBy: [
      ['dashboard/journey/person-form', '%s of "%s" is answered by %s'],
      [
        'dashboard/journey/person-form',
        'somebody new of 165 kg is asked whether it is pounds, and is kept once that is answered',
      ],
      [
        'dashboard/journey/person-form',
        '70 kg are 11 stone and no pounds, to the pound; 14 pounds never stand beside a stone',
      ],
      [
        'dashboard/journey/body-form',
        'a mass that is nearer to the one before when it is read as pounds is asked, until it is answered',
      ],
    ],
  },
  'load-carried': {
    happens: 'somebody is tested with a load in the hands or on the back',
    seen: 'a protocol with a load needs its mass; on a plate a mass that differs by more than 3 % puts its light out',
    metBy: [
      ['analysis/assess/judge', 'a load that the protocol declares must be given, and is lifted as well'],
      ['analysis/setup/five-lights', 'on a platform 3 % apart is the limit'],
    ],
  },
  'mass-unlike-plate': {
    happens: 'the plate shows another mass than was typed',
    seen: 'the light of the mass is out, with both masses; one press says which counts, and both are kept',
    metBy: [
      ['browser/mass-choice', 'a plate that shows another mass than was typed asks which counts, and both are kept'],
      ['dashboard/live/mass-choice', 'two masses that differ are asked about until it is said which counts'],
      ['analysis/setup/five-lights', 'what the platform shows has the uncertainty of its level and of its zero'],
      ['dashboard/live/light-words', 'every sentence finds its figures'],
    ],
  },
  'zero-under-load': {
    happens: 'the zero is set with somebody on the plate',
    seen: 'it is refused, with its numbers and what to do first',
    metBy: [
      ['analysis/setup/zero', 'with a person on it, whichever way the reading goes'],
      ['dashboard/live/zero-words', 'a refusal has its numbers'],
    ],
  },
  'rest-too-short': {
    happens: 'the rest between the legs is one minute',
    seen: 'it counts down and may be ended; the test goes on, and no ratio is given',
    metBy: [
      [
        'dashboard/pages/rest-time',
        'what is left, of how much; a rest of unknown length is said and never shown as a whole one',
      ],
      ['analysis/compare/ratio-blocks', 'what is known beyond the reports stands for itself, whatever was measured'],
      ['dashboard/result/side-view', '%s: no figure, its reason and what would lift it'],
    ],
  },
  'step-with-sore-heel-bone': {
    happens: 'a test over a step is looked for with a sore insertion',
    seen: 'it cannot be pressed and says why; going over it needs a reason that is kept; the level floor is the default',
    metBy: [
      [
        'browser/choice',
        'what is blocked cannot be pressed, is gone over with a reason that is kept, and can be changed',
      ],
      ['casebook/choice/choice-offer', 'a sore insertion: what starts below the toes is not proposed'],
      ['dashboard/live/protocol-choices', '%s sore: the board of the other leg is not taken over'],
    ],
  },
  'sore-in-both-places': {
    happens: 'one tendon is sore at its insertion and above it',
    seen: 'its range is that of a sore insertion',
    metBy: [['casebook/choice/choice-blocks', '%s sore: board and step are blocked, the floor is not']],
  },
  'antibiotic-ticked': {
    happens: 'a fluoroquinolone is ticked in the safety list',
    seen: 'no test may begin, whatever the reason, and the line says whom to ask',
    metBy: [
      ['casebook/safety-gate', '%s has no override: neither its reason nor any other opens it'],
      ['browser/endings', 'a line of the safety list that locks is said wherever a test could start'],
    ],
  },
  'another-rupture': {
    happens: 'the leg to compare with had a rupture, surgery or a fracture',
    seen: 'no ratio; after a year, and confirmed, a ratio with its caution',
    metBy: [
      [
        'casebook/history',
        'an injury within a year or at an unknown time stands against a ratio; an older one only until a clinician confirms it',
      ],
      ['dashboard/result/side-view', 'cautions about the person go with the ratio'],
    ],
  },
  'pregnant-or-child': {
    happens: 'somebody is pregnant, has a pacemaker or is under 18',
    seen: 'the line of the safety list; no group stands beside the result, and it says why; of a child that its heel bone grows',
    metBy: [
      [
        'shared/tables/safety-list',
        'an implant keeps from a maximal isometric effort, and says whom to ask and how far a sensor stays away',
      ],
      ['shared/sentences/compare-sentences', 'of somebody under 18 the growing heel bone is named, and no reference'],
      ['dashboard/result/group-view', 'every reason against a reference is said in words, and no row is shown'],
      [
        'casebook/pull-events',
        'no trial of a person is begun when a ticked line keeps from a maximal isometric effort',
      ],
    ],
  },
} as const satisfies Record<string, EdgeCase>;
