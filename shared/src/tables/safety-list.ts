import type { Entry } from '../entry.ts';

/** One line of the list that is gone through before, or watched during, a test. The list asks; it names no diagnosis. */
export interface SafetyEntry extends Entry {
  readonly when: 'before' | 'during';
  /** what a tick does: no test now; no maximal isometric effort; go on with a note; end the effort */
  readonly effect: 'do-not-test' | 'no-maximal-isometric' | 'caution' | 'stop';
  /** whether a clinician may go on in spite of a line that keeps from testing, with a reason that is stored */
  readonly override: 'never' | 'with-reason' | 'not-needed';
  readonly ask: string;
  /** usual next step; the text of the local policy takes its place */
  readonly next: string;
}

const memory = {
  version: '1',
  unit: '1',
  source: 'guideline practice; from memory, not checked against a paper',
  mark: 'from-memory',
} as const;
const practice = { version: '1', unit: '1', source: 'common practice, no source', mark: 'common-practice' } as const;

const before: readonly SafetyEntry[] = [
  {
    ...memory,
    id: 'safety.rupture',
    source: 'calf squeeze, gap, Matles: Maffulli 1998 Am J Sports Med 26:266; union of rules from memory',
    when: 'before',
    effect: 'do-not-test',
    override: 'never',
    ask: 'Sudden pop or blow to the calf, a gap, an abnormal calf squeeze, or a new and sudden loss of the single heel raise?',
    next: 'Referral on the same day.',
  },
  {
    ...memory,
    id: 'safety.clot',
    when: 'before',
    effect: 'do-not-test',
    override: 'never',
    ask: 'Calf swelling, heat, pain at rest, recent immobility, surgery or flight, cancer, or breathlessness?',
    next: 'Medical assessment on the same day; with chest pain or breathlessness an emergency.',
  },
  {
    ...memory,
    id: 'safety.infection',
    when: 'before',
    effect: 'do-not-test',
    override: 'never',
    ask: 'Fever, a hot red tendon, or a wound?',
    next: 'Medical assessment on the same day.',
  },
  {
    ...practice,
    id: 'safety.zero-raises',
    when: 'before',
    effect: 'do-not-test',
    override: 'never',
    ask: 'Not one single-leg heel raise possible on one of the legs?',
    next: 'Write down zero for that leg, and test both legs together instead. If it is new and came suddenly, go by the first line.',
  },
  {
    ...memory,
    id: 'safety.bone',
    when: 'before',
    effect: 'do-not-test',
    override: 'with-reason',
    ask: 'Bone pain, pain on squeezing the heel bone, bone pain at night, or too little food for the training?',
    next: 'Assessment for a stress fracture before any loading.',
  },
  {
    ...memory,
    id: 'safety.fluoroquinolone',
    source: 'Alves 2019 Eur J Clin Pharmacol 75:1431; window of three months: common practice, no source',
    mark: 'read',
    when: 'before',
    effect: 'do-not-test',
    override: 'never',
    ask: 'Fluoroquinolone now or within about three months?',
    next: 'No loading test and no loading plan until the prescriber was asked.',
  },
  {
    ...practice,
    id: 'safety.steroid',
    when: 'before',
    effect: 'do-not-test',
    override: 'never',
    ask: 'Steroid tablets now, or a steroid injection near the tendon within six weeks?',
    next: 'No loading test until a doctor was asked.',
  },
  {
    ...practice,
    id: 'safety.surgery-fracture',
    when: 'before',
    effect: 'do-not-test',
    override: 'with-reason',
    ask: 'Tendon surgery without clearance, a fracture, or heel pain in a growing child?',
    next: 'The clinician decides whether and what to test.',
  },
  {
    ...memory,
    id: 'safety.nerve-vessel',
    when: 'before',
    effect: 'do-not-test',
    override: 'with-reason',
    ask: 'Progressive weakness, numbness, foot drop, saddle symptoms, or calf pain on walking that rest relieves?',
    next: 'Medical assessment first.',
  },
  {
    ...memory,
    id: 'safety.heart',
    when: 'before',
    effect: 'no-maximal-isometric',
    override: 'not-needed',
    ask: 'Unstable heart disease, uncontrolled blood pressure, late pregnancy, or dizziness?',
    next: 'No maximal isometric effort.',
  },
  {
    ...memory,
    id: 'safety.implant',
    source:
      '15 cm: FDA safety communication 2021 on magnets in telephones and watches; no maximal effort: common practice; from memory',
    when: 'before',
    effect: 'no-maximal-isometric',
    override: 'not-needed',
    ask: 'A pacemaker, a defibrillator, or another implant that works by electricity or a magnet?',
    next: 'No maximal isometric effort until whoever looks after it was asked. Telephone and sensors stay 15 cm from it at least.',
  },
  {
    ...memory,
    id: 'safety.inflammatory',
    source: 'de Vos 2021 Br J Sports Med 55:1125 (principle); list from memory',
    when: 'before',
    effect: 'caution',
    override: 'not-needed',
    ask: 'Pain at both insertions under 45 years, psoriasis, eye inflammation, bowel disease, or morning stiffness of more than 30 minutes with one of these?',
    next: 'Go on; note it for a doctor.',
  },
  {
    ...memory,
    id: 'safety.other-caution',
    when: 'before',
    effect: 'caution',
    override: 'not-needed',
    ask: 'Tendon lumps, early heart disease in the family, diabetes, gout, blood thinners, or unsteady balance?',
    next: 'Go on; note it. Where balance is unsteady, two legs and a rail.',
  },
];

function stop(id: string, ask: string): SafetyEntry {
  return {
    ...practice,
    id: `safety.during.${id}`,
    when: 'during',
    effect: 'stop',
    override: 'not-needed',
    ask,
    next: 'Stop at once.',
  };
}

const during: readonly SafetyEntry[] = [
  stop('patient', 'The person says stop.'),
  stop('pain', 'Pain above the limit, or sharp or tearing.'),
  stop('pop', 'A pop or a sudden give.'),
  stop('force-drop', 'Force falls by more than 30 % within 100 ms of an isometric effort, with pain.'),
  stop('unwell', 'Dizzy, chest pain, or breathless.'),
  stop('balance', 'Loss of balance.'),
  stop('cramp', 'Cramp.'),
  stop('tester', 'The tester is worried.'),
  stop('rig', 'Sensor or rig moves.'),
];

/** Changes whenever a line, or what stands beside it, is added, taken out or worded anew: an answer holds for the list that was asked. */
export const SAFETY_LIST_VERSION = '4';

/** Everything that is asked before a test and watched during it. */
export const SAFETY_LIST: readonly SafetyEntry[] = [...before, ...during];
