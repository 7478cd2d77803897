import { expect, test } from 'vitest';
import { receiptFile } from '../../../apps/dashboard/src/clinic/erase-receipt.ts';
import { sampleDocument } from '../../support/sample-bodies.ts';

test('a receipt holds counts, time and author, and no name of a person', () => {
  const tombstone = sampleDocument('person-erased', 'p'.repeat(32), { documents: 9, streams: 2, bytes: 500 });
  const receipt = { personId: 'p'.repeat(32), documents: 9, streams: 2, bytes: 500, tombstone };
  const { name, type, content } = receiptFile(receipt);
  expect([name, type]).toEqual([`surae-erased-${tombstone.at.slice(0, 10)}-pppppppp.json`, 'application/json']);
  expect(JSON.parse(content as string)).toMatchObject({
    what: 'person-erased',
    personId: receipt.personId,
    documents: 9,
    streams: 2,
    bytes: 500,
    at: tombstone.at,
    author: 'RN',
  });
});
