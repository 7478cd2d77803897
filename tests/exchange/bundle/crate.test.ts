import { crateMetadata } from '@surae/exchange';
import { expect, test } from 'vitest';

interface Node {
  readonly '@id': string;
  readonly '@type': string;
  readonly [term: string]: unknown;
}

const crate = JSON.parse(
  crateMetadata({
    name: 'Tests',
    description: 'Tests of two people',
    writtenOn: '2026-11-29',
    software: 'surae 0.1.0',
    files: [{ name: 'tables/people.csv', byteLength: 12, description: 'table' }],
  }),
) as { '@context': string; '@graph': Node[] };

const node = (id: string): Node => crate['@graph'].find((one) => one['@id'] === id)!;

/** What RO-Crate 1.1 asks of descriptor and root, and terms of its context that are used here (from memory). */
const TERMS =
  '@id @type conformsTo about name description datePublished license hasPart mentions encodingFormat contentSize softwareVersion instrument result'.split(
    ' ',
  );

test('descriptor and root as RO-Crate 1.1 asks for them', () => {
  expect(crate['@context']).toBe('https://w3id.org/ro/crate/1.1/context');
  expect(node('ro-crate-metadata.json')).toMatchObject({
    '@type': 'CreativeWork',
    conformsTo: { '@id': 'https://w3id.org/ro/crate/1.1' },
    about: { '@id': './' },
  });
  const root = node('./');
  expect(root['@type']).toBe('Dataset');
  for (const term of ['name', 'description', 'datePublished', 'license']) expect(root[term], term).toBeTruthy();
  expect(root['datePublished']).toMatch(/^\d{4}(-\d{2}-\d{2})?$/);
});

test('every file is part of the root, and every reference has its node', () => {
  expect(node('./')['hasPart']).toEqual([{ '@id': 'tables/people.csv' }]);
  expect(node('tables/people.csv')).toMatchObject({ '@type': 'File', encodingFormat: 'text/csv', contentSize: '12' });
  const text = JSON.stringify(crate['@graph']);
  for (const [, id] of text.matchAll(/\{"@id":"([^"]+)"\}/g)) {
    expect(node(id) !== undefined || id === 'https://w3id.org/ro/crate/1.1', id).toBe(true);
  }
});

test('only terms of its context are used', () => {
  const used = new Set(crate['@graph'].flatMap((one) => Object.keys(one)));
  expect([...used].filter((term) => !TERMS.includes(term))).toEqual([]);
});
