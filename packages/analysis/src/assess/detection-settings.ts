import type { ProtocolParameters } from '@surae/shared';
import type { BlockCounterSettings } from '../raises/block-settings.ts';
import type { BodySettings } from '../raises/body/settings.ts';
import type { HeelSettings } from '../raises/heel/heel-settings.ts';
import type { Settings } from './settings.ts';

/**
 * Settings of the detection with what the protocol says about a repetition in their place: least height, least cycle,
 * least fall, longest gap. A parameter without a value leaves the setting as it is.
 *
 * @param settings - every setting [-]
 * @param parameters - of the protocol [-]
 * @returns settings for heel and foot, for trunk and platform, and for the block pass [-]
 *
 * Source: definition
 */
export function detectionSettings(
  settings: Settings,
  parameters: ProtocolParameters,
): { readonly heel: HeelSettings; readonly body: BodySettings; readonly block: BlockCounterSettings } {
  const { heel, body, block } = settings;
  const leastHeightM = parameters.heightLeast.value ?? heel.leastHeightM;
  const leastCycleS = parameters.cycleLeast.value ?? heel.leastCycleS;
  const leastFall = parameters.fallFraction.value ?? heel.leastFall;
  const gapS = parameters.gapMost.value ?? heel.longGapS;
  return {
    heel: { ...heel, leastHeightM, leastCycleS, leastFall, longGapS: gapS },
    body: { ...body, shortestS: parameters.cycleLeast.value ?? body.shortestS, gapS },
    block: {
      ...block,
      movement: { ...block.movement, leastRiseM: leastHeightM, returnShare: leastFall },
    },
  };
}
