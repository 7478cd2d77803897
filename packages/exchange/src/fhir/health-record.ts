import type { Study, StudyPerson, StudyPlanItem, StudyTrial } from '../study.ts';
import { dateTimeOf, KEY_SYSTEM, ownCode, referenceTo, uuidOf } from './codes.ts';
import { provenanceResources } from './provenance-resources.ts';
import { traceObservations } from './trace-observations.ts';
import { trialObservation } from './trial-observation.ts';

/** The sex that was told, in the codes of the standard. */
const GENDERS = { women: 'female', men: 'male' } as const;

/** Gender stands where a sex was told, and is left out where none was: nothing is known then, not even that it is unknown. */
function patientOf({ key, name, birthYear, sex }: StudyPerson): fhir4.Patient {
  return {
    resourceType: 'Patient',
    id: uuidOf('person', key),
    identifier: [{ system: KEY_SYSTEM, value: key }],
    ...(name === null ? {} : { name: [{ text: name }] }),
    ...(sex === null ? {} : { gender: GENDERS[sex] }),
    ...(birthYear === null ? {} : { birthDate: String(birthYear) }),
  };
}

function deviceOf(name: string): fhir4.Device {
  return {
    resourceType: 'Device',
    id: uuidOf('device', name),
    deviceName: [{ name, type: 'user-friendly-name' }],
  };
}

/** A proposal for a clinician to take, change or leave; it is no order. */
function proposalOf(item: StudyPlanItem): fhir4.ServiceRequest {
  const { sessionsPerWeek, setCount, repetitionCount } = item;
  const authoredOn = dateTimeOf(item.at);
  const isWhole = sessionsPerWeek !== null && Number.isInteger(sessionsPerWeek) && sessionsPerWeek > 0;
  const dose = [
    setCount === null ? undefined : `${setCount} sets`,
    repetitionCount === null ? undefined : `${repetitionCount} repetitions a set`,
    sessionsPerWeek === null || isWhole ? undefined : `${sessionsPerWeek} sessions a week`,
  ].filter((one) => one !== undefined);
  return {
    resourceType: 'ServiceRequest',
    id: uuidOf('plan', item.key),
    identifier: [{ system: KEY_SYSTEM, value: item.key }],
    status: 'draft',
    intent: 'proposal',
    code: ownCode(item.code, item.text ?? item.code),
    subject: referenceTo('person', item.person),
    ...(isWhole ? { occurrenceTiming: { repeat: { frequency: sessionsPerWeek, period: 1, periodUnit: 'wk' } } } : {}),
    ...(authoredOn === undefined ? {} : { authoredOn }),
    ...(dose.length === 0 ? {} : { note: [{ text: dose.join(', ') }] }),
  };
}

async function trialEntries(
  trial: StudyTrial,
  person: string,
  dayOffset: number | null,
  withTraces: boolean,
): Promise<fhir4.Observation[]> {
  const traces = withTraces && trial.trace !== null ? traceObservations(trial, person, await trial.trace()) : [];
  const from = traces.map(({ id }) => ({ reference: `urn:uuid:${id}` }));
  return [trialObservation(trial, person, dayOffset, from), ...traces];
}

/**
 * The record of one person as a bundle of FHIR R4, as JSON: patient, devices, an observation for each trial with its figures
 * and their uncertainties as components, traces, proposals, and by which software each was made. Codes are our own, units are UCUM. The same study gives the
 * same bundle.
 *
 * @param writtenOn - ISO 8601 date of writing, or its year alone
 */
export async function healthRecord(
  study: Study,
  person: StudyPerson,
  withTraces: boolean,
  writtenOn: string,
): Promise<fhir4.Bundle> {
  const trials = study.trials.filter((trial) => trial.person === person.key);
  const offsets = new Map(study.visits.map(({ key, dayOffset }) => [key, dayOffset]));
  const devices = [...new Set(trials.flatMap(({ device }) => (device === null ? [] : [device])))].sort();
  const observations: fhir4.Observation[] = [];
  for (const trial of trials) {
    const dayOffset = trial.visit === null ? null : (offsets.get(trial.visit) ?? null);
    observations.push(...(await trialEntries(trial, person.key, dayOffset, withTraces)));
  }
  const contents: (fhir4.Patient | fhir4.Device | fhir4.Observation | fhir4.ServiceRequest)[] = [
    patientOf(person),
    ...devices.map(deviceOf),
    ...observations,
    ...study.plan.filter((item) => item.person === person.key).map(proposalOf),
  ];
  const ids = contents.map(({ id }) => id!);
  const { software } = study;
  const made = provenanceResources(person.key, trials, ids, { software, writtenOn });
  const resources = [...contents, ...made.devices, ...made.provenances];
  return {
    resourceType: 'Bundle',
    id: uuidOf('bundle', person.key),
    type: 'collection',
    entry: resources.map((resource) => ({ fullUrl: `urn:uuid:${resource.id}`, resource })),
  };
}
