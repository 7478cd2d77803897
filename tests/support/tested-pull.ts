import {
  assessPulls,
  defaultSettings,
  type LegFacts,
  type PullTestRequest,
  type Side,
  type TestedPull,
  type Trace,
} from '@surae/analysis';
import { SEATED_PULL } from '@surae/shared';
import { madeTrace, rampEffort } from './made-pull.ts';
import { TOLD } from './tested-leg.ts';

/** Three seated ramps over a resting leg, each held for four seconds; the second one is the best. */
export function seatedTrace(netN: number, restN = 85): Trace {
  const efforts = [netN - 30, netN, netN - 20].map((height, k) => rampEffort(4 + 12 * k, height, 2, 4));
  return madeTrace({ efforts, lengthS: 42, sampleRateHz: 200, noise: 0.5, rest: () => restN });
}

/** A recording of three seated efforts of which everything was told. */
export function testedPull(
  side: Side,
  netN: number,
  facts: Partial<LegFacts> = {},
  request: Partial<PullTestRequest> = {},
): TestedPull {
  const asked: PullTestRequest = {
    placement: 'platform',
    side,
    protocol: SEATED_PULL,
    subject: { bodyMassKg: 82, forefootLeverM: 0.13 },
    context: { endReason: 'trials-done' },
    ...request,
  };
  return {
    side,
    report: assessPulls(seatedTrace(netN, asked.placement === 'platform' ? 85 : 0), asked, defaultSettings()),
    protocol: asked.protocol,
    features: { footwearWorn: 'shoe' },
    facts: { ...TOLD, ...facts },
  };
}
