import { expect, test } from 'vitest';
import { main } from '../../../apps/cli/src/main.ts';
import {
  type OwnErrorFields,
  ownErrorFrom,
  ownErrorFromFile,
} from '../../../apps/dashboard/src/journey/own-errors-form.ts';
import '../../support/close.ts';
import { MemoryIo } from '../../support/memory-io.ts';

const SEATED = 'isometric.seated';
const fields: OwnErrorFields = {
  protocolId: SEATED,
  unit: 'N',
  isShare: true,
  standardError: '5',
  people: '16',
  days: '2',
  source: '',
};

test('5 % of a force from 16 people on 2 days is an error of the logarithm with its pairs and its bound', () => {
  const form = ownErrorFrom(fields);
  if (!form.ok) throw new Error('expected an error that is taken');
  const { errors, given } = form.kept;
  expect(errors).toMatchObject({
    protocolId: SEATED,
    test: { standardError: 0.05, scale: 'log', unit: 'N', pairs: 16 },
    ratios: null,
  });
  // chi-square 0.2 quantile with 15 degrees of freedom 10.30696 (SciPy 1.17.1, chi2.ppf(0.2, 15))
  expect([errors.test!.standardErrorUpper80]).toBeCloseToEach([0.05 * Math.sqrt(15 / 10.30696)], {
    rtol: 1e-6,
    atol: 0,
  });
  expect(errors.test!.source.citation).toBe('own repeated tests of 16 people on 2 days');
  expect(given).toEqual({
    kind: 'typed',
    standardError: 5,
    unit: 'N',
    isShare: true,
    people: 16,
    days: 2,
    source: null,
  });
});

test('who measured it stands before what it was found from; a decimal comma is taken', () => {
  const form = ownErrorFrom({ ...fields, isShare: false, standardError: '42,5', source: ' the clinic, runners ' });
  expect(form).toMatchObject({
    ok: true,
    kept: {
      errors: {
        test: {
          standardError: 42.5,
          scale: 'natural',
          source: { citation: 'the clinic, runners; own repeated tests of 16 people on 2 days' },
        },
      },
    },
  });
});

test.each([
  [{ protocolId: null }, { protocolId: 'protocol-missing' }],
  [{ unit: null }, { unit: 'unit-missing' }],
  [{ standardError: '0' }, { standardError: 'error-range' }],
  [{ standardError: 'five' }, { standardError: 'error-range' }],
  [{ standardError: '100' }, { standardError: 'error-range' }],
  [
    { people: '1', days: '' },
    { people: 'people-range', days: 'days-range' },
  ],
  [{ days: '1.5' }, { days: 'days-range' }],
] as const)('%o is not taken', (changes, problems) => {
  expect(ownErrorFrom({ ...fields, ...changes })).toEqual({ ok: false, problems });
});

test('what the command agree prints is taken as it is, with the protocol chosen beside it', async () => {
  const rows = Array.from(
    { length: 16 },
    (_, i) => `P${i},1,${1000 + i}\nP${i},2,${1000 + i + (i % 2 === 0 ? 80 : -80)}`,
  );
  const memory = new MemoryIo();
  memory.files.set('t.csv', `subject,day,value [N]\n${rows.join('\n')}\n`);
  expect(await main(['agree', 't.csv', '--json'], memory.io)).toBe(0);
  const { errors, given } = ownErrorFromFile('agree.json', memory.out, SEATED);
  // differences of +-80 about their mean of 0: the residual mean square is 16 x 80^2 / 2 / 15
  expect(errors.test!.standardError).toBeCloseTo(Math.sqrt((16 * 80 ** 2) / 2 / 15), 6);
  expect(errors.test).toMatchObject({
    unit: 'N',
    pairs: 16,
    source: { citation: 'own repeated tests in agree.json, across day' },
  });
  expect(given).toMatchObject({ kind: 'file', name: 'agree.json', json: { unit: 'N' } });
});

test('a file that is none says what was expected', () => {
  const small = { protocol: SEATED, unit: 'N', pairs: 20, standard_error: 40, standard_error_upper_80: 45 };
  const text = JSON.stringify(small);
  expect(ownErrorFromFile('own.json', text, null).errors.protocolId).toBe(SEATED);
  expect(() => ownErrorFromFile('own.json', '{', SEATED)).toThrow(/^It is no JSON/);
  expect(() => ownErrorFromFile('own.json', JSON.stringify({ ...small, protocol: undefined }), null)).toThrow(
    /^It does not say by which protocol/,
  );
  expect(() => ownErrorFromFile('own.json', text, 'isometric.standing')).toThrow(
    'It names the protocol "isometric.seated", and isometric.standing is chosen',
  );
  expect(() => ownErrorFromFile('own.json', JSON.stringify({ ...small, pairs: 0 }), null)).toThrow(
    'own.json, pairs: expected a number above 0, got 0',
  );
});
