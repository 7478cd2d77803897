import { createRequire } from 'node:module';
import { healthRecord, type Study, type StudyPlanItem, studyTables } from '@surae/exchange';
import { Fhir } from 'fhir';
import { beforeAll, expect, test } from 'vitest';
import { madeStudy, pushTrial, raiseTrial, studyTrial } from '../../support/made-study.ts';

/** A plan that nobody made: what later work fills. */
const PLAN: StudyPlanItem = {
  key: 'plan-1',
  person: 'person-1',
  at: '2026-03-01',
  code: 'seated-raise',
  text: 'Seated raises with a load on the knee',
  sessionsPerWeek: 3,
  setCount: 4,
  repetitionCount: 12,
};

const study: Study = madeStudy({
  trials: [
    raiseTrial(),
    pushTrial(),
    raiseTrial({ key: 'taken', setAside: true, setAsideWhy: 'interrupted' }),
    studyTrial({ key: 'refused', status: 'refused', reason: 'no such file' }),
    studyTrial({ key: 'waiting' }),
  ],
  plan: [PLAN, { ...PLAN, key: 'plan-2', sessionsPerWeek: 2.5 }],
});

type Observation = fhir4.Observation;
type ServiceRequest = fhir4.ServiceRequest;

/** The checker of units, which has no types. */
const { UcumLhcUtils } = createRequire(import.meta.url)('@lhncbc/ucum-lhc') as {
  UcumLhcUtils: { getInstance: () => { validateUnitString: (unit: string) => { status: string } } };
};

let bundle: fhir4.Bundle;

function all<Type extends 'Observation' | 'ServiceRequest'>(
  type: Type,
): Extract<Observation | ServiceRequest, { resourceType: Type }>[] {
  return (bundle.entry ?? []).flatMap(({ resource }) =>
    resource?.resourceType === type ? [resource as Extract<Observation | ServiceRequest, { resourceType: Type }>] : [],
  );
}

beforeAll(async () => {
  bundle = await healthRecord(study, study.people[0], true, '2026-11-29');
});

test('the checker of the standard finds nothing but codes of our own where the standard leaves codes open', () => {
  const { messages, valid } = new Fhir().validate(bundle, { errorOnUnexpected: true });
  expect(valid).toBe(true);
  const open = /^Code "[^"]+" \(https:\/\/surae\.example\/fhir\/codes\) not found in value set$/;
  const others = messages.filter(({ severity, message = '' }) => String(severity) !== 'info' && !open.test(message));
  expect(others).toEqual([]);
});

test('that checker sees what is wrong', () => {
  const broken = structuredClone(bundle) as unknown as { entry: { resource: Record<string, unknown> }[] };
  const at = broken.entry.findIndex(({ resource }) => resource['resourceType'] === 'Observation');
  broken.entry[at].resource['status'] = 'done';
  broken.entry[at].resource['strange'] = 1;
  expect(new Fhir().validate(broken, { errorOnUnexpected: true }).valid).toBe(false);
});

test('obs-6: a reason for no value stands only where there is none; obs-7: no component says the code of the whole', () => {
  for (const { code, component = [], ...one } of all('Observation')) {
    for (const part of [one, ...component]) {
      const values = Object.keys(part).filter((name) => name.startsWith('value'));
      expect(values.length + ('dataAbsentReason' in part ? 1 : 0)).toBeLessThanOrEqual(1);
    }
    const own = code.coding?.[0].code;
    if (Object.keys(one).some((name) => name.startsWith('value'))) {
      expect(component.map((part) => part.code.coding?.[0].code)).not.toContain(own);
    }
    for (const part of component) {
      expect(Object.keys(part).some((name) => /^(?:value|dataAbsentReason)/.test(name))).toBe(true);
    }
  }
});

test('every time has its offset, and every reference its entry', () => {
  const text = JSON.stringify(bundle);
  for (const [, time] of text.matchAll(/"(?:effectiveDateTime|authoredOn)":"([^"]+)"/g)) {
    expect(time).toMatch(/^\d{4}-\d{2}-\d{2}(?:T\d{2}:\d{2}:\d{2}(?:\.\d+)?(?:Z|[+-]\d{2}:\d{2}))?$/);
  }
  const urls = (bundle.entry ?? []).map(({ fullUrl }) => fullUrl);
  expect(new Set(urls).size).toBe(urls.length);
  const references = [...text.matchAll(/"reference":"([^"]+)"/g)].map(([, url]) => url);
  expect(references.length).toBeGreaterThan(8);
  expect(references.filter((url) => !urls.includes(url))).toEqual([]);
});

test('every unit is a UCUM code by its own checker, in the bundle and in the tables', () => {
  const ucum = UcumLhcUtils.getInstance();
  const valid = (unit: string): boolean => ucum.validateUnitString(unit).status === 'valid';
  for (const wrong of ['N*m', 'Nm', 'Newton']) expect(valid(wrong), wrong).toBe(false);
  const inBundle = [
    ...JSON.stringify(bundle).matchAll(/"system":"http:\/\/unitsofmeasure\.org","code":"([^"]+)"/g),
  ].map(([, code]) => code);
  const inTables = studyTables(study).flatMap(({ columns }) => columns.map(({ unit }) => unit));
  const units = [...new Set([...inBundle, ...inTables])];
  expect(units.length).toBeGreaterThan(10);
  expect(units.filter((unit) => !valid(unit))).toEqual([]);
});

test('codes are of our own list: none of a published one is made up', () => {
  const systems = new Set([...JSON.stringify(bundle).matchAll(/"system":"([^"]+)"/g)].map(([, system]) => system));
  expect([...systems].sort()).toEqual([
    'http://terminology.hl7.org/CodeSystem/data-absent-reason',
    'http://unitsofmeasure.org',
    'https://surae.example/fhir/codes',
    'https://surae.example/fhir/keys',
  ]);
});

const component = (observation: Observation, code: string) =>
  observation.component?.find((part) => part.code.coding?.[0].code === code);

test('figures stand with their uncertainty; what was not measured has a reason and no value, and zero is zero', () => {
  const [raises, pushes] = all('Observation').filter(
    ({ status, component: parts }) => status === 'final' && parts !== undefined,
  );
  expect(component(raises, 'count.attempted')?.valueQuantity).toMatchObject({ value: 4, code: '1' });
  expect(component(raises, 'count.low')?.valueQuantity?.value).toBe(4);
  expect(component(raises, 'count.cannot_tell')?.valueQuantity?.value).toBe(0);
  expect(component(raises, 'body_weight_n')).toMatchObject({
    dataAbsentReason: { coding: [{ code: 'not-performed' }] },
  });
  expect(component(raises, 'body_weight_n')).not.toHaveProperty('valueQuantity');
  expect(component(raises, 'reference.height_u_mm')?.valueQuantity?.value).toBeGreaterThan(0);
  expect(raises.bodySite?.coding?.[0].code).toBe('left-leg');
  expect(pushes.bodySite?.coding?.[0].code).toBe('right-leg');
});

test('the trace stands as samples in equal steps, and the trial is derived from it', () => {
  const trace = all('Observation').find(({ valueSampledData }) => valueSampledData !== undefined)!;
  expect(trace.valueSampledData).toMatchObject({ origin: { value: 0, code: 'm' }, period: 20, dimensions: 1 });
  expect(trace.valueSampledData?.data?.split(' ')).toHaveLength(50);
  const trial = all('Observation').find(({ derivedFrom }) => derivedFrom !== undefined);
  expect(trial?.derivedFrom).toEqual([{ reference: `urn:uuid:${trace.id}` }]);
});

test('what was taken back, refused or never assessed says so', () => {
  const statuses = all('Observation')
    .filter(({ identifier }) => identifier !== undefined)
    .map(({ status }) => status);
  expect(statuses).toEqual(['final', 'final', 'entered-in-error', 'cancelled', 'registered']);
});

test('a plan is a proposal and no order', () => {
  const [whole, half] = all('ServiceRequest');
  expect(whole).toMatchObject({
    status: 'draft',
    intent: 'proposal',
    occurrenceTiming: { repeat: { frequency: 3, period: 1, periodUnit: 'wk' } },
    note: [{ text: '4 sets, 12 repetitions a set' }],
  });
  expect(half).not.toHaveProperty('occurrenceTiming');
  expect(half.note?.[0].text).toContain('2.5 sessions a week');
});

test('without traces none is read', async () => {
  const shy = {
    ...study,
    trials: study.trials.map((trial) => ({ ...trial, trace: () => Promise.reject(new Error('read')) })),
  };
  const { entry = [] } = await healthRecord(shy, shy.people[0], false, '2026-11-29');
  expect(JSON.stringify(entry)).not.toContain('valueSampledData');
});

test('gender is what was told, and left out where nothing was', async () => {
  const patientOf = async (sex: 'women' | 'men' | null): Promise<fhir4.Patient> => {
    const person = { ...study.people[0], sex };
    const { entry = [] } = await healthRecord({ ...study, people: [person] }, person, false, '2026-11-29');
    return entry[0].resource as fhir4.Patient;
  };
  expect((await patientOf('women')).gender).toBe('female');
  expect((await patientOf('men')).gender).toBe('male');
  expect(await patientOf(null)).not.toHaveProperty('gender');
});

test('it is told which version of the software made what, and which wrote the bundle', async () => {
  const trials = [
    raiseTrial({ software: 'surae 0.0.9' }),
    pushTrial({ key: 'other', software: 'surae 0.1.0' }),
    studyTrial({ key: 'never', software: null }),
  ];
  const one = { ...madeStudy({ trials }), software: 'surae 0.2.0' };
  const { entry = [] } = await healthRecord(one, one.people[0], false, '2026-11-29');
  const of = <Type extends fhir4.Provenance | fhir4.Device>(type: Type['resourceType']): Type[] =>
    entry.flatMap(({ resource }) => (resource?.resourceType === type ? [resource as Type] : []));
  const [old, recent, written] = of<fhir4.Provenance>('Provenance');
  const versions = new Map(of<fhir4.Device>('Device').map(({ id, version }) => [`urn:uuid:${id}`, version?.[0].value]));
  const versionOf = ({ agent }: fhir4.Provenance): string | undefined => versions.get(agent[0].who.reference ?? '');
  expect([versionOf(old), versionOf(recent), versionOf(written)]).toEqual(['0.0.9', '0.1.0', '0.2.0']);
  const keyOf = ({ target }: fhir4.Provenance): (string | undefined)[] =>
    target.map(({ reference }) => {
      const found = entry.find(({ fullUrl }) => fullUrl === reference)?.resource as fhir4.Observation;
      return found.identifier?.[0].value;
    });
  expect([keyOf(old), keyOf(recent)]).toEqual([['trial-1'], ['other']]);
  expect(written.target).toHaveLength(entry.length - of('Provenance').length - 3);
  // the time of the day was not kept, and the words say so
  expect(written.recorded).toBe('2026-11-29T12:00:00Z');
  expect(written.activity?.text).toContain('of which the day alone is told');
  const { entry: unnamed = [] } = await healthRecord(one, one.people[0], false, '2026');
  expect((unnamed.at(-1)?.resource as fhir4.Provenance).recorded).toBe('2026-01-01T12:00:00Z');
});
