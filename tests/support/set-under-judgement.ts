import { type Detection, defaultSettings } from '@surae/analysis';
import { FLOOR, type Observability, type ProtocolParameters } from '@surae/shared';
import type { SetUnderJudgement } from '../../packages/analysis/src/raises/criteria/subject.ts';
import { movementRate } from '../../packages/analysis/src/raises/movement-rate.ts';
import { tempoParts } from '../../packages/analysis/src/raises/tempo.ts';

/** A set that is ready to be judged: reference 10 cm without uncertainty, everything seen. */
export function setUnderJudgement(
  detection: Detection,
  changes: Partial<SetUnderJudgement> & { readonly seen?: Observability } = {},
): SetUnderJudgement {
  const { seen = 'measured', ...rest } = changes;
  return {
    detection,
    parameters: FLOOR.parameters,
    settings: defaultSettings().judging,
    reference: { heightM: 0.1, heightUM: 0, fromRepetitions: [1, 2], raised: false },
    commonRelativeU: 0,
    heightsKnown: true,
    tempo: tempoParts(detection.raises),
    rate: movementRate(detection.motion, 6),
    seenBy: () => seen,
    ...rest,
  };
}

/** The parameters of the level floor with other values. */
export function parametersWith(
  values: Partial<Record<keyof ProtocolParameters, number | string | null>>,
): ProtocolParameters {
  const changed = Object.entries(values).map(([name, value]) => {
    const parameter = FLOOR.parameters[name as keyof ProtocolParameters];
    return [name, { ...parameter, value }];
  });
  return { ...FLOOR.parameters, ...(Object.fromEntries(changed) as Partial<ProtocolParameters>) };
}
