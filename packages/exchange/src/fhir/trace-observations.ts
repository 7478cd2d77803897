import type { StudyTrace, StudyTrial } from '../study.ts';
import { absent, dateTimeOf, ownCode, quantity, referenceTo, uuidOf } from './codes.ts';
import { sampledOf } from './sampled.ts';

/** UCUM code of the SI unit that samples of a quantity are in. */
const UNITS: Readonly<Record<string, string>> = {
  force: 'N',
  torque: 'N.m',
  'heel-height': 'm',
  angle: 'rad',
  acceleration: 'm/s2',
  'angular-velocity': 'rad/s',
  tap: '1',
};

/** One observation for each channel of a trace; a channel that is not in equal steps says that it is not told here. */
export function traceObservations(trial: StudyTrial, person: string, trace: StudyTrace): fhir4.Observation[] {
  const effectiveDateTime = dateTimeOf(trial.at);
  return trace.groups.flatMap(({ timesS, channels }, clock) =>
    channels.map(({ quantity: name, axis, samples }): fhir4.Observation => {
      const channel = axis === null ? name : `${name}-${axis}`;
      const sampled = sampledOf(timesS, samples);
      const origin = quantity(0, UNITS[name] ?? '1');
      return {
        resourceType: 'Observation',
        id: uuidOf('trace', `${trial.key} ${clock} ${channel}`),
        status: trial.setAside ? 'entered-in-error' : 'final',
        code: ownCode(`trace-${channel}`, `recorded ${name}${axis === null ? '' : ` along ${axis}`}`),
        subject: referenceTo('person', person),
        ...(effectiveDateTime === undefined ? {} : { effectiveDateTime }),
        ...(trial.side === null ? {} : { bodySite: ownCode(`${trial.side}-leg`, `${trial.side} leg`) }),
        ...(sampled === null
          ? {
              dataAbsentReason: absent('unsupported'),
              note: [{ text: 'The samples do not lie in equal steps of time; they are in the tables of samples.' }],
            }
          : { valueSampledData: { origin, period: sampled.periodMs, dimensions: 1, data: sampled.data } }),
      };
    }),
  );
}
