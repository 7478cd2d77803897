import { columnValue, pullRow } from '@surae/analysis';
import { type Column, HOP_SERIES_COLUMNS, PULL_COLUMNS, SCOPE_SENTENCES, SET_COLUMNS } from '@surae/shared';
import { rounded } from '../numbers.ts';
import type { StudyResult, StudyTrial } from '../study.ts';
import { absent, dateTimeOf, KEY_SYSTEM, ownCode, quantity, referenceTo, uuidOf } from './codes.ts';

const TEST_WORDS = {
  'heel-raise': 'Heel raises on one leg',
  isometric: 'Isometric pushes of one leg',
  'hop-series': 'Repeated hops on one leg',
} as const;

const COLUMNS = {
  'heel-raise': SET_COLUMNS,
  isometric: PULL_COLUMNS,
  'hop-series': HOP_SERIES_COLUMNS,
} as const satisfies Record<StudyResult['test'], readonly Column[]>;

/** A figure of the result; one that was not measured stands as such, and never as 0. */
function figureOf(column: Column, source: object): fhir4.ObservationComponent[] {
  const { key, unit, kind, description } = column;
  const code = ownCode(key, description);
  const value = columnValue(column, source);
  if (kind === 'number') {
    return typeof value === 'number'
      ? [{ code, valueQuantity: quantity(rounded(value) as number, unit) }]
      : [{ code, dataAbsentReason: absent('not-performed') }];
  }
  if (typeof value === 'boolean') return [{ code, valueBoolean: value }];
  if (typeof value === 'string' && value !== '') return [{ code, valueCodeableConcept: ownCode(value, value) }];
  return [];
}

/** What the tester told of a trial. */
function told(key: string, text: string, value: number | null): fhir4.ObservationComponent[] {
  return value === null ? [] : [{ code: ownCode(key, text), valueQuantity: quantity(value, '1') }];
}

function componentsOf(trial: StudyTrial, dayOffset: number | null): fhir4.ObservationComponent[] {
  const { result } = trial;
  const day = {
    code: ownCode('day_offset', 'days since the first visit'),
    valueQuantity: quantity(dayOffset ?? 0, 'd'),
  };
  const end = trial.endReason === null ? [] : [ownCode(trial.endReason, trial.endReason)];
  return [
    ...(dayOffset === null ? [] : [day]),
    ...end.map((valueCodeableConcept) => ({ code: ownCode('end_reason', 'why it ended'), valueCodeableConcept })),
    ...told('exertion', 'exertion at the end, 0 to 10, as told', trial.exertion),
    ...told('pain_peak', 'greatest pain, 0 to 10, as told', trial.painPeak),
    ...(result === null
      ? []
      : COLUMNS[result.test].flatMap((column) =>
          figureOf(column, result.test === 'isometric' ? pullRow(result.report) : result.report),
        )),
  ];
}

/** Final where it counts; what was taken back, refused or never assessed says so. */
function statusOf({ status, setAside }: StudyTrial): fhir4.Observation['status'] {
  if (setAside) return 'entered-in-error';
  switch (status) {
    case 'assessed':
      return 'final';
    case 'no-result':
      return 'registered';
    case 'refused':
      return 'cancelled';
  }
}

function notesOf(trial: StudyTrial): fhir4.Annotation[] {
  const made = [
    trial.software === null ? undefined : `made by ${trial.software}`,
    trial.settingsHash === null ? undefined : `settings SHA-256 ${trial.settingsHash}`,
    trial.protocolHash === null ? undefined : `protocol SHA-256 ${trial.protocolHash}`,
    trial.sha256 === null ? undefined : `recording SHA-256 ${trial.sha256}`,
  ].filter((one) => one !== undefined);
  const texts = [SCOPE_SENTENCES.scope.text, made.join(', '), trial.reason ?? '', trial.note ?? ''];
  return texts.filter((text) => text !== '').map((text) => ({ text }));
}

/** The observation of a trial whose person is known. */
export function trialObservation(
  trial: StudyTrial,
  person: string,
  dayOffset: number | null,
  derivedFrom: readonly fhir4.Reference[],
): fhir4.Observation {
  const effectiveDateTime = dateTimeOf(trial.at);
  const component = componentsOf(trial, dayOffset);
  return {
    resourceType: 'Observation',
    id: uuidOf('trial', trial.key),
    identifier: [{ system: KEY_SYSTEM, value: trial.key }],
    status: statusOf(trial),
    code: ownCode(trial.test, TEST_WORDS[trial.test]),
    subject: referenceTo('person', person),
    ...(effectiveDateTime === undefined ? {} : { effectiveDateTime }),
    ...(trial.side === null ? {} : { bodySite: ownCode(`${trial.side}-leg`, `${trial.side} leg`) }),
    ...(trial.protocol === null ? {} : { method: ownCode(trial.protocol, trial.protocol) }),
    ...(trial.device === null ? {} : { device: referenceTo('device', trial.device) }),
    ...(trial.result === null
      ? { dataAbsentReason: absent(trial.status === 'refused' ? 'error' : 'not-performed') }
      : {}),
    ...(derivedFrom.length === 0 ? {} : { derivedFrom: [...derivedFrom] }),
    ...(component.length === 0 ? {} : { component }),
    note: notesOf(trial),
  };
}
