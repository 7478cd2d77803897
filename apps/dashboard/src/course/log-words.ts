import { type DoneItem, type Episode, type PlanItem, type ProposalDeclined, stiffnessTold } from '@surae/casebook';
import { ADVICE_WORDS, BILATERAL_WORDS, COURSE_WORDS, DECLINE_CHOICES, TEST_CHOICE_WORDS } from '@surae/shared';
import { proposedByOf } from '../advice/proposed-by.ts';
import { capital } from '../result/value-words.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import type { LogEntry } from './log-entry.ts';
import { reachWords } from './reach-words.ts';
import { totalWords } from './total-words.ts';

const words = COURSE_WORDS;

function told(value: number | null): string {
  return value === null ? words['not-told'].text : String(value);
}

/** A number with as many digits as it was given, and no more than a tenth needs. */
function shown(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function painWords(pain: { readonly left: number | null; readonly right: number | null }): string {
  return fill(words['pain-legs'], { left: told(pain.left), right: told(pain.right) });
}

type Dose = Pick<DoneItem, 'what' | 'side' | 'load' | 'sets' | 'repetitions'>;

/** What, with which leg, how often and how heavy; what was not told is left out. */
function doseWords({ what, side, load, sets, repetitions }: Dose): string {
  const parts = [
    what,
    words[side].text,
    ...(sets !== null && repetitions !== null ? [fill(words['sets-of'], { sets, repetitions })] : []),
    ...(sets !== null && repetitions === null ? [fill(words['sets-only'], { sets })] : []),
    ...(sets === null && repetitions !== null ? [fill(words['repetitions-only'], { repetitions })] : []),
    ...(load === null ? [] : [fill(words['with-load'], load)]),
  ];
  return parts.join(', ');
}

/** What an entry tells, in a few short sentences. */
export function logWords(entry: LogEntry): string {
  switch (entry.kind) {
    case 'morning-check': {
      const { pain, stiffnessMin } = entry.body;
      const stiff = words[`stiffness-${stiffnessTold(stiffnessMin) ?? 'open'}`].text;
      return `${painWords(pain)} ${fill(words.stiffness, { told: stiff })}`;
    }
    case 'run': {
      const { durationS, distanceM, pain, cadencePerMin = null } = entry.body;
      const size = [
        ...(durationS === null ? [] : [fill(words.minutes, { value: shown(durationS / 60) })]),
        ...(distanceM === null ? [] : [fill(words.kilometres, { value: shown(distanceM / 1000) })]),
      ];
      const steps = cadencePerMin === null ? [] : [fill(words.cadence, { value: shown(cadencePerMin) })];
      return `${[...size, ...steps].join(', ')}. ${painWords(pain)}`;
    }
    case 'on-feet':
      return fill(words['hours-on-feet'], { value: shown(entry.body.hours) });
    case 'done-item': {
      const { painDuring, painAfter = null, exertion } = entry.body;
      return [
        `${capital(doseWords(entry.body))}.`,
        ...(painDuring === null ? [] : [fill(words['pain-during'], { value: painDuring })]),
        ...(painAfter === null ? [] : [fill(words['pain-after'], { value: painAfter })]),
        ...(exertion === null ? [] : [fill(words.exertion, { value: exertion })]),
      ].join(' ');
    }
    case 'note':
      return entry.body.text;
    case 'questionnaire-total':
      return totalWords(entry.body);
    case 'knee-to-wall':
      return reachWords(entry.body);
    case 'target': {
      const { test, side, value, unit } = entry.body;
      const what = { side: words[side].text, value, unit: BILATERAL_WORDS[unit].text };
      return capital(fill(words['target-of'], { ...what, test: TEST_CHOICE_WORDS[test].text }));
    }
  }
}

/** What was planned, and what became of the proposal. */
export function planWords(item: PlanItem): string {
  const { perWeek, from, until, decision, proposedBy } = item;
  const by = proposedByOf(proposedBy);
  const parts = [
    doseWords(item),
    ...(perWeek === null
      ? []
      : [perWeek === 1 ? words['per-week-once'].text : fill(words['per-week'], { value: shown(perWeek) })]),
    ...(until === null ? [] : [fill(words['from-until'], { from: dayOf(from), until: dayOf(until) })]),
    ...(by === null ? [] : [fill(ADVICE_WORDS['proposed-by'], { rule: by.rule, version: by.version })]),
    ...(decision === 'accepted' ? [] : [words[decision].text]),
  ];
  return `${capital(parts.join(', '))}.`;
}

/** A proposal that was declined in a visit, and why. */
export function declinedWords({ proposedBy, reason }: ProposalDeclined): string {
  const { rule = proposedBy, version = '', leg = null } = proposedByOf(proposedBy) ?? {};
  const why = Object.hasOwn(DECLINE_CHOICES, reason) ? DECLINE_CHOICES[reason].text : reason;
  const told = { rule, version, leg: leg === null ? '' : words[leg].text, reason: why };
  return fill(ADVICE_WORDS['course-declined'], told);
}

/** A complaint as it was told. */
export function episodeWords({ sore, began, over, story }: Episode): readonly string[] {
  const legs = (['left', 'right'] as const).map((side) =>
    fill(words['episode-leg'], { leg: words[side].text, place: words[`place-${sore[side] ?? 'open'}`].text }),
  );
  return [
    fill(words['episode-of'], { legs: capital(legs.join(', ')) }),
    ...(began === null ? [] : [fill(words['episode-began'], { began })]),
    ...(over === null ? [] : [fill(words['episode-over'], { over })]),
    ...(story === null ? [] : [story]),
  ];
}
