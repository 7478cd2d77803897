import type { Report, Side } from '@surae/analysis';
import type { StoredDocument } from '@surae/storage';
import type { VisitLadder } from './choice/ladder.ts';
import { afterChosen, type TestChosen } from './choice/test-chosen.ts';
import { entryOf } from './entry.ts';
import { afterFactTold } from './facts-told.ts';
import type { VerdictByHand } from './kinds/person-kinds.ts';
import { afterSwap, type LegsSwapped, namedReport } from './legs-swapped.ts';
import { afterNewStart, type NewStartTold } from './new-start.ts';
import { afterDecline, type ProposalDeclinedEvent } from './plan/proposal-declined.ts';
import { afterPractice, type PracticeEvent, practiceEventKinds } from './practice.ts';
import { afterPull, type PullEvent, pullEventKinds } from './pull-events.ts';
import { afterSameLeg, type SameLegTold } from './same-leg.ts';
import { afterAnswer, type SensorAnswerEvent } from './sensor-answers.ts';
import type { SetChoice } from './set-choice.ts';
import type { TestKind } from './test-kind.ts';
import { afterChoice, isBegun, isUntested } from './tests-of-visit.ts';
import type { FactToldEvent } from './told-fact.ts';
import type {
  FaultMark,
  HandedAs,
  SafetyAnswer,
  SetEnd,
  SetNote,
  SoreSides,
  Visit,
  VisitHistory,
  VisitSet,
} from './visit.ts';

/** What can happen in a visit. Each is stored as a document about the visit; nothing stored is ever changed. */
export type VisitEvent =
  | { readonly kind: 'visit-sore'; readonly sore: SoreSides; readonly only?: Side }
  | { readonly kind: 'visit-history'; readonly history: VisitHistory }
  | { readonly kind: 'visit-safety'; readonly safety: Omit<SafetyAnswer, 'at'> }
  | { readonly kind: 'visit-first'; readonly first: Side }
  | { readonly kind: 'visit-test'; readonly test: TestKind }
  | { readonly kind: 'visit-ladder'; readonly ladder: VisitLadder }
  | { readonly kind: 'visit-choice'; readonly choice: TestChosen }
  | { readonly kind: 'set-begun'; readonly choice: SetChoice; readonly bytesId: string }
  | { readonly kind: 'set-mark'; readonly setId: string; readonly mark: FaultMark }
  | { readonly kind: 'set-note'; readonly setId: string; readonly note: SetNote }
  | {
      readonly kind: 'set-stopped';
      readonly setId: string;
      readonly liveCount: number;
      /** why the sensor gave no more; absent where it did not fail */
      readonly sourceLost?: string;
    }
  | { readonly kind: 'set-end'; readonly setId: string; readonly end: SetEnd }
  | {
      readonly kind: 'set-result';
      readonly setId: string;
      readonly report: Report;
      readonly settingsHash: string;
      /** name and version of what made the report; older documents hold none */
      readonly software?: string;
    }
  | { readonly kind: 'set-aside'; readonly setId: string; readonly why: string }
  | ({ readonly kind: 'verdict-by-hand' } & VerdictByHand)
  | LegsSwapped
  | SameLegTold
  | NewStartTold
  | { readonly kind: 'rest-over'; readonly restS: number }
  | { readonly kind: 'result-seen' }
  /** without ids the plan before stays as it is, unless it is said to be over */
  | { readonly kind: 'visit-plan'; readonly planItemIds: readonly string[]; readonly ended?: boolean }
  | ProposalDeclinedEvent
  | FactToldEvent
  /** documents before the hand-over hold neither */
  | { readonly kind: 'visit-closed'; readonly how?: HandedAs; readonly lines?: readonly string[] }
  | SensorAnswerEvent
  | PracticeEvent
  | PullEvent;

export type VisitEventKind = VisitEvent['kind'];

/** The kinds of documents that a visit is made of. */
export const visitEventKinds = [
  'visit-sore',
  'visit-history',
  'visit-safety',
  'visit-first',
  'visit-test',
  'visit-ladder',
  'visit-choice',
  'set-begun',
  'set-mark',
  'set-note',
  'set-stopped',
  'set-end',
  'set-result',
  'set-aside',
  'verdict-by-hand',
  'legs-swapped',
  'same-leg',
  'new-start',
  'rest-over',
  'result-seen',
  'visit-plan',
  'proposal-declined',
  'fact-told',
  'visit-closed',
  'sensor-answer',
  ...practiceEventKinds,
  ...pullEventKinds,
] as const satisfies readonly VisitEventKind[];

/** Version of the bodies of these documents. */
export const visitSchema = 1;

function changed(visit: Visit, setId: string, change: (set: VisitSet) => VisitSet): Visit {
  return { ...visit, sets: visit.sets.map((set) => (set.id === setId ? change(set) : set)) };
}

/** What an answer to the safety list holds where an older document says nothing: the cautious reading. */
const noAnswer = { seenWhole: false, ticked: [], overridden: [] } as const;

/** The visit before a newer answer to the safety list: an answer that a set stands on goes on to be told with its result. */
function keptSafety(visit: Visit): Visit {
  const { safety, earlierSafety = [] } = visit;
  const isStoodOn = safety !== null && (isBegun(visit, 'heel-raise') || isBegun(visit, 'isometric'));
  return isStoodOn ? { ...visit, earlierSafety: [...earlierSafety, safety] } : visit;
}

/** The visit before an answer that a choice of the test stands on: until something was begun, the test is chosen anew. */
function unchosen(visit: Visit): Visit {
  if (visit.chosen === undefined || isBegun(visit, 'heel-raise') || isBegun(visit, 'isometric')) return visit;
  return { ...visit, chosen: [] };
}

/** The visit after one more event; an event about a set that is not there changes nothing. */
/** A visit that went on without a test, once it is asked again whether there is one; as it was where something was begun. */
function reopened(visit: Visit): Visit {
  return isUntested(visit) ? { ...visit, resultSeen: false } : visit;
}

function after(visit: Visit, event: VisitEvent, document: StoredDocument): Visit {
  switch (event.kind) {
    case 'visit-sore': {
      const told: Visit = { ...unchosen(visit), sore: event.sore };
      if (event.only !== undefined) return { ...told, only: event.only };
      Reflect.deleteProperty(told, 'only');
      return told;
    }
    case 'visit-history':
      return { ...unchosen(visit), history: event.history };
    case 'visit-safety':
      return { ...reopened(keptSafety(visit)), safety: { ...noAnswer, ...event.safety, at: document.at } };
    case 'visit-first':
      return { ...visit, first: event.first };
    case 'visit-test':
      // the result is looked at again once there is more of it
      return { ...visit, tests: afterChoice(visit, event.test), ...(visit.resultSeen ? { resultSeen: false } : {}) };
    case 'visit-ladder':
      return { ...unchosen(visit), ladder: event.ladder };
    case 'visit-choice': {
      const { choice } = event;
      const tests = afterChoice(visit, choice.test);
      return { ...reopened(visit), tests, chosen: afterChosen(visit.chosen, choice) };
    }
    case 'set-begun': {
      const { choice, bytesId } = event;
      const begun = { id: document.id, choice, bytesId, begunAt: document.at };
      const open = { stoppedAt: null, liveCount: null, marks: [], end: null, report: null };
      const kept = { setAside: false, setAsideWhy: null };
      return { ...visit, sets: [...visit.sets, { ...begun, ...open, ...kept }] };
    }
    case 'set-mark':
      return changed(visit, event.setId, (set) => ({ ...set, marks: [...set.marks, event.mark] }));
    case 'set-note':
      return changed(visit, event.setId, (set) => ({ ...set, notes: [...(set.notes ?? []), event.note] }));
    case 'set-stopped':
      return changed(visit, event.setId, (set) => ({
        ...set,
        stoppedAt: document.at,
        liveCount: event.liveCount,
        ...(event.sourceLost === undefined ? {} : { sourceLost: event.sourceLost }),
      }));
    case 'set-end':
      return changed(visit, event.setId, (set) => ({ ...set, end: event.end }));
    case 'set-result':
      return changed(visit, event.setId, (set) => ({ ...set, report: namedReport(event.report, set) }));
    case 'set-aside':
      return changed(visit, event.setId, (set) => ({
        ...set,
        setAside: true,
        setAsideWhy: event.why,
        setAsideBy: document.id,
      }));
    case 'verdict-by-hand':
      return changed(visit, event.setId, (set) => ({
        ...set,
        byHand: [...(set.byHand ?? []), entryOf<VerdictByHand>(document)],
      }));
    case 'legs-swapped':
      return afterSwap(visit, event, document.at);
    case 'same-leg':
      return afterSameLeg(visit, event, document.id);
    case 'new-start':
      return afterNewStart(visit, event);
    case 'rest-over':
      return { ...visit, restS: event.restS };
    case 'result-seen':
      return { ...visit, resultSeen: true };
    case 'visit-plan':
      return { ...visit, plan: event.planItemIds, planEnded: event.ended === true };
    case 'proposal-declined':
      return { ...visit, declined: afterDecline(visit.declined, event) };
    case 'fact-told':
      return afterFactTold(visit, event, document.at);
    case 'visit-closed': {
      const { how, lines = [] } = event;
      return { ...visit, closed: true, ...(how === undefined ? {} : { handOver: { how, lines } }) };
    }
    case 'sensor-answer':
      return { ...visit, sensorAnswers: afterAnswer(visit.sensorAnswers, event, document) };
    case 'practice-begun':
    case 'practice-stopped':
      return { ...visit, practice: afterPractice(visit.practice, event, document) };
    case 'pull-begun':
    case 'pull-warm-up':
    case 'trial-begun':
    case 'trial-lifted':
    case 'trial-stopped':
    case 'pull-stopped':
    case 'pull-end':
    case 'pull-report':
    case 'pull-aside':
    case 'pull-rest-over':
      return afterPull(visit, event, document);
    default:
      // a newer version may know kinds that this one does not: they are kept in the store and passed over here
      event satisfies never;
      return visit;
  }
}

/** The visit that a list of stored documents tells of, in the order in which they were added; see also `acceptedVisit`. */
export function foldVisit(begun: StoredDocument, documents: readonly StoredDocument[]): Visit {
  const { personId } = begun.body as { personId: string };
  const start: Visit = {
    id: begun.id,
    personId,
    begunAt: begun.at,
    sore: { left: null, right: null },
    safety: null,
    first: null,
    sets: [],
    restS: null,
    closed: false,
  };
  return documents.reduce(
    (visit, document) => after(visit, { kind: document.kind, ...(document.body as object) } as VisitEvent, document),
    start,
  );
}

/** Sets that count, the last one of each side. */
export function setOf(visit: Pick<Visit, 'sets'>, side: Side): VisitSet | undefined {
  return visit.sets.filter((set) => set.choice.side === side && !set.setAside).at(-1);
}
