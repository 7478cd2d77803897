import { CRITERIA, CRITERION_IDS, FAULT_KINDS, INCLINE_10, OBSERVABILITY, type ParameterName } from '@surae/shared';
import { expect, test } from 'vitest';

test('height is the first reason that is shown, missing samples are the last', () => {
  expect(CRITERION_IDS[0]).toBe('height');
  expect(CRITERION_IDS.at(-1)).toBe('gap');
});

test('faults of support, posture and tempo are told apart; a poor return, a bounce and a gap end no test', () => {
  const kindOf = (kind: string | null) => CRITERION_IDS.filter((id) => CRITERIA[id].faultKind === kind);
  expect(kindOf('height')).toEqual(['height']);
  expect(kindOf('tempo')).toEqual(expect.arrayContaining(['tempo', 'rest']));
  expect(kindOf('posture')).toEqual(expect.arrayContaining(['knee', 'lean']));
  expect(kindOf('support')).toEqual(expect.arrayContaining(['hands', 'other-foot']));
  expect(kindOf(null)).toEqual(expect.arrayContaining(['return', 'bounce', 'gap']));
  for (const id of CRITERION_IDS) expect([...FAULT_KINDS, null], id).toContain(CRITERIA[id].faultKind);
});

test('no threshold belongs to two criteria, and the base protocol holds each as its criterion states it', () => {
  const owned = CRITERION_IDS.flatMap((id) => Object.entries(CRITERIA[id].parameters));
  expect(new Set(owned.map(([name]) => name)).size).toBe(owned.length);
  for (const [name, parameter] of owned) {
    expect(INCLINE_10.parameters[name as ParameterName], name).toEqual(parameter);
    expect(parameter.id).toBe(`parameter.${name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}`);
  }
});

test('what a placement sees of a criterion, and why, is said in its row', () => {
  for (const id of CRITERION_IDS) {
    const { by, note } = CRITERIA[id];
    expect(OBSERVABILITY.find(({ subject }) => subject === id)).toMatchObject({ by, note });
    expect(note, id).toMatch(/^[A-Z].*\.$/);
  }
});
