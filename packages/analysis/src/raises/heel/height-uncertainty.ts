import { heelHeightU, tiltOfHeight } from '../../movement/foot-lever.ts';
import type { HeelSettings } from './heel-settings.ts';

export interface HeightErrors {
  readonly placement: 'heel' | 'foot';
  readonly accelerometerOnly: boolean;
  readonly heightM: number;
  readonly heelLeverM: number;
  readonly leverAssumed: boolean;
  /** spread of the height while standing still [m] */
  readonly stillSdM: number;
  /** what the fit of this repetition leaves over [m] */
  readonly residualSdM: number;
  /** uncertainty of the top level by the fit [m] */
  readonly topUM: number;
  /** uncertainty of the level at rest [m] */
  readonly floorUM: number;
  readonly settings: HeelSettings;
}

/**
 * Standard uncertainty of the height of one repetition. Sway while standing still goes on at the top, so it bounds what
 * the top can tell; a bad fit adds to it. A foot sensor adds tilt, lever and the migration of the pivot.
 *
 * @param errors - see {@link HeightErrors} [m]
 * @returns standard uncertainty [m]
 *
 * Source: JCGM 100:2008 (GUM) clause 5.1.2; which terms: ours
 */
export function heightUncertainty(errors: HeightErrors): number {
  const { placement, accelerometerOnly, heightM, heelLeverM, stillSdM, residualSdM, topUM, floorUM, settings } = errors;
  const sway = Math.hypot(Math.max(stillSdM, 1.2 * residualSdM, topUM), floorUM, 0.0003);
  if (placement === 'heel') return sway;
  const tilt = tiltOfHeight(heightM, 0, heelLeverM);
  const tiltU = accelerometerOnly ? settings.tiltAccelerometerOnlyURad : settings.tiltURad;
  const leverU = errors.leverAssumed ? 0.1 * heelLeverM : settings.heelLeverUM;
  return Math.hypot(
    sway,
    heelHeightU(tilt, 0, heelLeverM, tiltU, leverU),
    settings.pivotMigrationU * Math.abs(heightM),
  );
}
