import type { PullReport, Side } from '@surae/analysis';
import type { StoredDocument } from '@surae/storage';
import { namedReport } from './legs-swapped.ts';
import type { PullChoice, PullEnd, PullSet, PullTrial } from './pull-set.ts';
import type { Visit } from './visit.ts';

/** What can happen in the isometric test of a visit. */
export type PullEvent =
  | { readonly kind: 'pull-begun'; readonly choice: PullChoice }
  | { readonly kind: 'pull-warm-up'; readonly setId: string; readonly how: 'done' | 'left-out' }
  | {
      readonly kind: 'trial-begun';
      readonly setId: string;
      readonly bytesId: string;
      readonly fromS: number;
      readonly restS: number | null;
    }
  | { readonly kind: 'trial-lifted'; readonly setId: string; readonly trialId: string; readonly atS: number }
  | {
      readonly kind: 'trial-stopped';
      readonly setId: string;
      readonly trialId: string;
      readonly toS: number;
      readonly cutOff: boolean;
      readonly suddenDrop: boolean;
      /** why the sensor gave no more; absent where it did not fail */
      readonly sourceLost?: string;
      /** how long the page was hidden in it; absent where it was not [s] */
      readonly hiddenForS?: number;
    }
  | { readonly kind: 'pull-stopped'; readonly setId: string }
  | { readonly kind: 'pull-end'; readonly setId: string; readonly end: PullEnd }
  | {
      readonly kind: 'pull-report';
      readonly setId: string;
      readonly report: PullReport;
      readonly settingsHash: string;
      readonly software: string;
    }
  | { readonly kind: 'pull-aside'; readonly setId: string; readonly why: string }
  | { readonly kind: 'pull-rest-over'; readonly restS: number };

/** The kinds of documents that the isometric test is made of. */
export const pullEventKinds = [
  'pull-begun',
  'pull-warm-up',
  'trial-begun',
  'trial-lifted',
  'trial-stopped',
  'pull-stopped',
  'pull-end',
  'pull-report',
  'pull-aside',
  'pull-rest-over',
] as const satisfies readonly PullEvent['kind'][];

function changed(visit: Visit, setId: string, change: (set: PullSet) => PullSet): Visit {
  return { ...visit, pulls: (visit.pulls ?? []).map((set) => (set.id === setId ? change(set) : set)) };
}

function changedTrial(
  visit: Visit,
  { setId, trialId }: { readonly setId: string; readonly trialId: string },
  change: (trial: PullTrial) => PullTrial,
): Visit {
  return changed(visit, setId, (set) => ({
    ...set,
    trials: set.trials.map((trial) => (trial.id === trialId ? change(trial) : trial)),
  }));
}

const open = { warmUp: null, trials: [], stoppedAt: null, end: null, report: null } as const;
const running = { toS: null, stoppedAt: null, cutOff: false, suddenDrop: false, liftedAtS: [] } as const;

/** The visit after one more event of its isometric test; an event about trials that are not there changes nothing. */
export function afterPull(visit: Visit, event: PullEvent, { id, at }: Pick<StoredDocument, 'id' | 'at'>): Visit {
  switch (event.kind) {
    case 'pull-begun': {
      const set = { id, choice: event.choice, begunAt: at, ...open, setAside: false, setAsideWhy: null };
      return { ...visit, pulls: [...(visit.pulls ?? []), set] };
    }
    case 'pull-warm-up':
      return changed(visit, event.setId, (set) => ({ ...set, warmUp: event.how }));
    case 'trial-begun': {
      const { bytesId, fromS, restS } = event;
      const trial = { id, bytesId, begunAt: at, fromS, restS, ...running };
      return changed(visit, event.setId, (set) => ({ ...set, trials: [...set.trials, trial] }));
    }
    case 'trial-lifted':
      return changedTrial(visit, event, (trial) => ({ ...trial, liftedAtS: [...trial.liftedAtS, event.atS] }));
    case 'trial-stopped': {
      const { toS, cutOff, suddenDrop, sourceLost, hiddenForS } = event;
      const lost = {
        ...(sourceLost === undefined ? {} : { sourceLost }),
        ...(hiddenForS === undefined ? {} : { hiddenForS }),
      };
      return changedTrial(visit, event, (trial) => ({ ...trial, toS, cutOff, suddenDrop, ...lost, stoppedAt: at }));
    }
    case 'pull-stopped':
      return changed(visit, event.setId, (set) => ({ ...set, stoppedAt: at }));
    case 'pull-end':
      return changed(visit, event.setId, (set) => ({ ...set, end: event.end }));
    case 'pull-report':
      return changed(visit, event.setId, (set) => ({ ...set, report: namedReport(event.report, set) }));
    case 'pull-aside':
      return changed(visit, event.setId, (set) => ({
        ...set,
        setAside: true,
        setAsideWhy: event.why,
        setAsideBy: id,
      }));
    case 'pull-rest-over':
      return { ...visit, pullRestS: event.restS };
    default:
      event satisfies never;
      return visit;
  }
}

/** The trials of a leg that count: the last ones that were not set aside. */
export function pullSetOf({ pulls = [] }: Pick<Visit, 'pulls'>, side: Side): PullSet | undefined {
  return pulls.filter(({ choice, setAside }) => choice.side === side && !setAside).at(-1);
}
