import type { Entry } from '../../entry.ts';
import type { Touch } from './rule-entry.ts';

/** One rung of the tolerance ladder, the lightest first. */
export interface ToleranceRung extends Entry {
  readonly code: string;
  readonly touches: readonly Touch[];
  /** estimated peak load on the tendon, in body weights, where a figure was read; rough, and of few people */
  readonly bodyWeights: number | null;
}

const order = {
  version: '1',
  unit: '1',
  source:
    'order: Baxter 2021 Med Sci Sports Exerc 53:124 (n = 8, a model), its ends read; the rest common practice, no source',
  mark: 'common-practice',
} as const;

function rung(code: string, touches: readonly Touch[] = [], bodyWeights: number | null = null): ToleranceRung {
  return { ...order, id: `rung.${code}`, code, touches: ['loading', ...touches], bodyWeights };
}

/** What a tendon can bear, rung by rung: each side stands on its own. */
export const TOLERANCE_RUNGS: readonly ToleranceRung[] = [
  rung('seated-limb', [], 0.5),
  rung('two-leg-floor'),
  rung('seated-loaded'),
  rung('walking'),
  rung('single-floor'),
  rung('single-step', ['step', 'below-level']),
  rung('single-loaded'),
  rung('quick-rebounds', ['impact']),
  rung('easy-run', ['impact']),
  rung('hops-on-spot', ['impact']),
  rung('hops-forward', ['impact'], 7.3),
];
