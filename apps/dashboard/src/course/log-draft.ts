import { type PlanItem, type StiffnessTold, stiffnessMinutes, stiffnessTold, type TestKind } from '@surae/casebook';
import { typedNumber } from '../journey/person-form.ts';
import type { RunRead } from '../runs/run-file.ts';
import { hoursIn } from './hours-in.ts';
import type { LogEntry, LogKind } from './log-entry.ts';
import {
  emptyReach,
  type ReachDraft,
  type ReachProblems,
  reachDraftOf,
  reachOf,
  reachProblems,
} from './reach-draft.ts';
import {
  emptyTotal,
  type TotalDraft,
  type TotalProblems,
  totalDraftOf,
  totalOf,
  totalProblems,
} from './total-draft.ts';

/** What was chosen and typed so far, of any kind; null and empty are not told. */
export interface LogDraft {
  readonly kind: LogKind;
  readonly on: string;
  readonly left: number | null;
  readonly right: number | null;
  readonly stiffness: StiffnessTold | null;
  /** as it was kept: one that was given in minutes stays as it was while its answer does */
  readonly stiffnessMin: number | null;
  readonly minutes: string;
  readonly kilometres: string;
  /** steps of both feet in a minute */
  readonly cadence: string;
  /** one was kept: what is taken out of the field is taken out of what is kept */
  readonly hadCadence: boolean;
  readonly hours: string;
  /** hash of the file that a run was read from; null where none was */
  readonly fileSha256: string | null;
  readonly planItemId: string | null;
  readonly what: string;
  readonly side: 'left' | 'right' | 'both';
  readonly sets: string;
  readonly repetitions: string;
  readonly load: string;
  /** unit of the load: what was planned or kept in another one stays in it */
  readonly loadUnit: string;
  readonly painDuring: number | null;
  readonly painAfter: number | null;
  /** one was kept: what is taken back of it is taken out of what is kept */
  readonly hadPainAfter: boolean;
  readonly exertion: number | null;
  readonly text: string;
  readonly test: TestKind;
  readonly target: string;
  readonly total: TotalDraft;
  readonly reach: ReachDraft;
}

/** Why a field is not kept as it is, in a code that has words. */
export type DraftProblem =
  | 'day-missing'
  | 'nothing-told'
  | 'number-wrong'
  | 'whole-wrong'
  | 'time-or-way'
  | 'hours-wrong'
  | 'what-missing'
  | 'text-missing'
  | 'target-missing';

export type DraftField =
  | 'on'
  | 'left'
  | 'minutes'
  | 'kilometres'
  | 'cadence'
  | 'hours'
  | 'what'
  | 'sets'
  | 'repetitions'
  | 'load'
  | 'text'
  | 'target';

export type DraftProblems = Readonly<Partial<Record<DraftField, DraftProblem>>> & TotalProblems & ReachProblems;

/** A draft of a kind in which nothing is told but the day. */
export function emptyDraft(kind: LogKind, on: string): LogDraft {
  return {
    kind,
    on,
    left: null,
    right: null,
    stiffness: null,
    stiffnessMin: null,
    minutes: '',
    kilometres: '',
    cadence: '',
    hadCadence: false,
    hours: '',
    fileSha256: null,
    planItemId: null,
    what: '',
    side: 'both',
    sets: '',
    repetitions: '',
    load: '',
    loadUnit: 'kg',
    painDuring: null,
    painAfter: null,
    hadPainAfter: false,
    exertion: null,
    text: '',
    test: 'heel-raise',
    target: '',
    total: emptyTotal,
    reach: emptyReach,
  };
}

function typed(value: number | null): string {
  return value === null ? '' : String(value);
}

/** The draft that an entry would come from, for whoever corrects it. */
export function draftOf(entry: LogEntry): LogDraft {
  const empty = emptyDraft(entry.kind, entry.body.on);
  switch (entry.kind) {
    case 'morning-check': {
      const { pain, stiffnessMin } = entry.body;
      return { ...empty, left: pain.left, right: pain.right, stiffness: stiffnessTold(stiffnessMin), stiffnessMin };
    }
    case 'run': {
      const { durationS, distanceM, pain, cadencePerMin = null, fileSha256 = null } = entry.body;
      const minutes = typed(durationS === null ? null : durationS / 60);
      const kilometres = typed(distanceM === null ? null : distanceM / 1000);
      const steps = { cadence: typed(cadencePerMin), hadCadence: cadencePerMin !== null };
      return { ...empty, minutes, kilometres, ...steps, fileSha256, left: pain.left, right: pain.right };
    }
    case 'on-feet':
      return { ...empty, hours: String(entry.body.hours) };
    case 'done-item': {
      const { planItemId, what, side, load, sets, repetitions, painDuring, painAfter = null, exertion } = entry.body;
      const numbers = { sets: typed(sets), repetitions: typed(repetitions), load: typed(load?.value ?? null) };
      const after = { painAfter, hadPainAfter: painAfter !== null };
      return {
        ...empty,
        planItemId,
        what,
        side,
        ...numbers,
        loadUnit: load?.unit ?? 'kg',
        painDuring,
        ...after,
        exertion,
      };
    }
    case 'note':
      return { ...empty, text: entry.body.text };
    case 'questionnaire-total':
      return { ...empty, total: totalDraftOf(entry.body) };
    case 'knee-to-wall':
      return { ...empty, reach: reachDraftOf(entry.body) };
    case 'target': {
      const { test, side, value } = entry.body;
      return { ...empty, test, side, target: typed(value) };
    }
  }
}

/** A draft of a run as a file tells it: minutes on the move to a tenth, kilometres to a hundredth. */
export function draftOfRun(
  draft: LogDraft,
  {
    day,
    movingS,
    distanceM,
    cadence,
    fileSha256,
  }: Pick<RunRead, 'day' | 'movingS' | 'distanceM' | 'cadence' | 'fileSha256'>,
): LogDraft {
  const minutes = String(Math.max(1, Math.round(movingS / 6)) / 10);
  const kilometres = String(Math.max(1, Math.round(distanceM / 10)) / 100);
  const steps = cadence?.perMin == null ? draft.cadence : String(cadence.perMin);
  return { ...draft, on: day, minutes, kilometres, cadence: steps, fileSha256 };
}

/** A draft of what was done, as far as it was planned. */
export function draftOfPlanned(
  draft: LogDraft,
  id: string,
  { what, side, load, sets, repetitions }: PlanItem,
): LogDraft {
  return {
    ...draft,
    planItemId: id,
    what,
    side,
    sets: typed(sets),
    repetitions: typed(repetitions),
    load: typed(load?.value ?? null),
    loadUnit: load?.unit ?? 'kg',
  };
}

function aboveZero(text: string): DraftProblem | undefined {
  const value = typedNumber(text);
  return value === undefined || value === 0 ? 'number-wrong' : undefined;
}

function wholeFromOne(text: string): DraftProblem | undefined {
  const value = typedNumber(text);
  return value === undefined || (value !== null && (value < 1 || !Number.isInteger(value))) ? 'whole-wrong' : undefined;
}

function isDay(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && Number.isFinite(Date.parse(`${text}T00:00:00Z`));
}

function problemsOf(draft: LogDraft): DraftProblems {
  const { kind, on, left, right, stiffness, minutes, kilometres, what, text } = draft;
  const found: [DraftField, DraftProblem | undefined][] = [['on', isDay(on) ? undefined : 'day-missing']];
  if (kind === 'morning-check' && left === null && right === null && stiffness === null) {
    found.push(['left', 'nothing-told']);
  }
  if (kind === 'run') {
    const isNeither = minutes.trim() === '' && kilometres.trim() === '';
    found.push(
      ['minutes', isNeither ? 'time-or-way' : aboveZero(minutes)],
      ['kilometres', isNeither ? undefined : aboveZero(kilometres)],
      ['cadence', aboveZero(draft.cadence)],
    );
  }
  if (kind === 'done-item') {
    found.push(
      ['what', what.trim() === '' ? 'what-missing' : undefined],
      ['sets', wholeFromOne(draft.sets)],
      ['repetitions', wholeFromOne(draft.repetitions)],
      ['load', aboveZero(draft.load)],
    );
  }
  if (kind === 'on-feet') found.push(['hours', hoursIn(draft.hours) === undefined ? 'hours-wrong' : undefined]);
  if (kind === 'note' && text.trim() === '') found.push(['text', 'text-missing']);
  // there is no target that one could mean by leaving it out
  if (kind === 'target')
    found.push(['target', draft.target.trim() === '' ? 'target-missing' : aboveZero(draft.target)]);
  const ofTotal = kind === 'questionnaire-total' ? totalProblems(draft.total) : {};
  const ofReach = kind === 'knee-to-wall' ? reachProblems(draft.reach) : {};
  return { ...Object.fromEntries(found.filter(([, problem]) => problem !== undefined)), ...ofTotal, ...ofReach };
}

function stiffMin({ stiffness, stiffnessMin }: LogDraft): number | null {
  if (stiffness === null) return null;
  return stiffnessTold(stiffnessMin) === stiffness ? stiffnessMin : stiffnessMinutes[stiffness];
}

/** A number that was typed in another unit than it is kept in; a product gathers no digits that were not typed. */
function scaled(text: string, factor: number): number | null {
  const value = typedNumber(text) ?? null;
  return value === null ? null : Number((value * factor).toPrecision(12));
}

function entryIn(draft: LogDraft): LogEntry {
  const { kind, on, left, right } = draft;
  const pain = { left, right };
  switch (kind) {
    case 'morning-check':
      return { kind, body: { on, pain, stiffnessMin: stiffMin(draft) } };
    case 'run':
      return {
        kind,
        body: {
          on,
          durationS: scaled(draft.minutes, 60),
          distanceM: scaled(draft.kilometres, 1000),
          pain,
          ...(draft.cadence.trim() === '' && !draft.hadCadence ? {} : { cadencePerMin: scaled(draft.cadence, 1) }),
          ...(draft.fileSha256 === null ? {} : { fileSha256: draft.fileSha256 }),
        },
      };
    case 'on-feet':
      return { kind, body: { on, hours: hoursIn(draft.hours) ?? 0 } };
    case 'done-item': {
      const { planItemId, side, painDuring, painAfter, exertion } = draft;
      const value = typedNumber(draft.load) ?? null;
      const load = value === null ? null : { value, unit: draft.loadUnit };
      const [sets, repetitions] = [typedNumber(draft.sets) ?? null, typedNumber(draft.repetitions) ?? null];
      const what = draft.what.trim();
      const after = painAfter === null && !draft.hadPainAfter ? {} : { painAfter };
      return { kind, body: { planItemId, on, what, side, load, sets, repetitions, painDuring, ...after, exertion } };
    }
    case 'note':
      return { kind, body: { on, text: draft.text.trim() } };
    case 'questionnaire-total':
      return { kind, body: totalOf(draft.total, on) };
    case 'knee-to-wall':
      return { kind, body: reachOf(draft.reach, on) };
    case 'target': {
      const { test, side } = draft;
      const unit = test === 'heel-raise' ? 'repetitions' : 'times-body-weight';
      return { kind, body: { on, test, side, value: typedNumber(draft.target) ?? 0, unit } };
    }
  }
}

/** The entry that a draft is, or what is wrong with it. */
export function entryFrom(
  draft: LogDraft,
): { readonly ok: true; readonly entry: LogEntry } | { readonly ok: false; readonly problems: DraftProblems } {
  const problems = problemsOf(draft);
  return Object.keys(problems).length === 0 ? { ok: true, entry: entryIn(draft) } : { ok: false, problems };
}

/** What differs between an entry as it is kept and as it should be, member by member; undefined where nothing does. */
export function changeBetween(before: LogEntry, after: LogEntry): Readonly<Record<string, unknown>> | undefined {
  const [old, now] = [before.body, after.body] as unknown as Readonly<Record<string, unknown>>[];
  const changed = Object.entries(now ?? {}).filter(
    ([member, value]) => JSON.stringify(value) !== JSON.stringify(old?.[member]),
  );
  return changed.length === 0 ? undefined : Object.fromEntries(changed);
}
