import { readdirSync, readFileSync } from 'node:fs';
import {
  type BluetoothLink,
  bytesOfHex,
  type ChecksumKind,
  checksum,
  checksumBytes,
  decodeByKind,
  decodersOf,
  type Problem,
  parseSensorDescription,
  problemText,
  readSensorDescription,
} from '@surae/sensors';
import { describe, expect, test } from 'vitest';
import { sensorUnits } from '../../../packages/sensors/src/decode/units.ts';

const folder = new URL('../../../shared/sensors/examples/', import.meta.url);
const example = (name: string): string => readFileSync(new URL(name, folder), 'utf8');

test('every example can be used', () => {
  const names = readdirSync(folder);
  expect(names.length).toBeGreaterThanOrEqual(3);
  for (const name of names) expect([name, readSensorDescription(example(name)).kind]).toEqual([name, 'described']);
  expect(readSensorDescription(`\uFEFF${example('load-cell.json')}`)).toMatchObject({
    sensor: { name: 'Example load cell 4' },
  });
});

/** Stands for taking a key or an entry away. */
const gone = Symbol('gone');

/** The value with another one at a place such as `link.start[0].bytes`. */
function spoilt(value: unknown, path: string, other: unknown): unknown {
  const keys = path.match(/[^.[\]]+/g)!;
  const last = keys.pop()!;
  const holder = keys.reduce((inside, key) => inside[key] as Record<string, unknown>, value as Record<string, unknown>);
  if (other !== gone) holder[last] = other;
  else if (Array.isArray(holder)) holder.splice(Number(last), 1);
  else delete holder[last];
  return value;
}

/** The problems of an example with other values at some places. */
function problems(name: string, changes: Readonly<Record<string, unknown>>): readonly Problem[] {
  const value = Object.entries(changes).reduce<unknown>(
    (inside, [path, other]) => spoilt(inside, path, other),
    JSON.parse(example(name)),
  );
  const answer = parseSensorDescription(value);
  return answer.kind === 'refused' ? answer.problems : [];
}

const cell = 'load-cell.json';
const foot = 'foot-sensor.json';
const gauge = 'string-at-the-heel.json';
const packet = 'link.characteristics[0].packets[0]';
const columns = 'link.stream.lines.columns';
const kinds = '"constant", "counter", "time", "count", "skip", "samples"';

/** What is changed, where the fault is told, what is expected, what came. */
const faults: [string, string, unknown, string, string, string][] = [
  [cell, 'version', 2, 'version', 'one of 1', '2'],
  [cell, 'name', gone, 'name', 'a value of type string', 'nothing'],
  [cell, 'name', '', 'name', 'a length of at least 1', '""'],
  [cell, 'link.colour', 1, 'link.colour', 'only keys of the schema', '"colour"'],
  [cell, 'link.kind', 'cable', 'link.kind', 'one of "bluetooth", "serial"', '"cable"'],
  [cell, 'link.characteristics[0].nominalRateHz', 0, 'link.characteristics[0].nominalRateHz', 'more than 0', '0'],
  [cell, `${packet}.fields[1].kind`, 'number', `${packet}.fields[1].kind`, `one of ${kinds}`, '"number"'],
  [
    cell,
    `${packet}.fields[4].repeat`,
    'some',
    `${packet}.fields[4].repeat`,
    'a value of type number, or one of "count", "fill"',
    '"some"',
  ],
  [
    cell,
    `${packet}.fields[4].values[0].unit`,
    'kg',
    `${packet}.fields[4].values[0].unit`,
    'N, kN, mN, kgf, gf, [lbf_av]',
    '"kg"',
  ],
  [
    foot,
    'link.characteristics[0].packets[1].fields[0]',
    gone,
    'link.characteristics[0].packets[1].fields',
    'a constant that tells it from the other kinds',
    'none',
  ],
  [gauge, `${columns}[1].unit`, 'h', `${columns}[1].unit`, 'one of "s", "ms", "us", "ns"', '"h"'],
  [gauge, columns, 'guess', columns, 'one of "header", or a value of type array', '"guess"'],
  [gauge, `${columns}[2]`, gone, columns, 'at least one channel', 'none'],
];

test.each(faults)('%s with another %s (%s) is refused with its place', (name, at, other, path, expected, actual) => {
  expect(problems(name, { [at]: other })).toEqual([{ path, expected, actual }]);
});

test('a form, a UUID, bytes and codes say in words what they look like', () => {
  const found = problems(cell, {
    'link.service': '180F',
    'link.start[0].bytes': '1',
    [`${packet}.fields[1].form`]: 'u64',
    [`${packet}.fields[4].values[0].notKnown`]: ['7FFF'],
  });
  expect(found.map(({ path, expected, actual }) => [path, expected.split(',')[0], actual])).toEqual([
    ['link.service', '128 bits in lower case with hyphens', '"180F"'],
    [`${packet}.fields[1].form`, 'u', '"u64"'],
    [`${packet}.fields[4].values[0].notKnown[0]`, 'bits in hexadecimal after 0x', '"7FFF"'],
    ['link.start[0].bytes', 'bytes of two hexadecimal digits each', '"1"'],
  ]);
});

test('frames are checked with what is in them', () => {
  const found = problems(gauge, {
    'link.stream': {
      kind: 'frames',
      frame: { marker: 'A5', length: { kind: 'fixed', bytes: 0 }, check: null },
      packet: { order: 'big', fields: [{ kind: 'skip', bits: 8 }] },
    },
  });
  expect(found.map(({ path }) => path)).toEqual(['link.stream.frame.length.bytes', 'link.stream.packet.fields']);
});

test('what is no JSON, or no object, is refused', () => {
  expect(readSensorDescription('{"kind": ')).toMatchObject({
    kind: 'refused',
    problems: [{ path: '', expected: 'JSON' }],
  });
  for (const text of ['null', '3', '[]', '"x"']) {
    expect(readSensorDescription(text)).toMatchObject({
      kind: 'refused',
      problems: [{ path: '', expected: 'a value of type object' }],
    });
  }
});

describe('the page that tells how to describe a sensor', () => {
  const page = readFileSync(new URL('../description.md', folder), 'utf8');

  test('has a smallest example that reads the bytes beneath it', () => {
    const answer = readSensorDescription(/```json\n([^`]*)```/.exec(page)![1]);
    if (answer.kind === 'refused') throw new Error(answer.problems.map(problemText).join('; '));
    const [characteristic] = (answer.sensor.link as BluetoothLink).characteristics;
    const bytes = bytesOfHex(/The bytes `([^`]*)`/.exec(page)![1])!;
    const { decoded } = decodeByKind(decodersOf(characteristic), bytes);
    expect(decoded).toMatchObject({ counter: 5, channels: [{ values: [12.3, -12.3], missing: [] }] });
    expect(page).toContain('packet 5 with the forces 12.3 N and -12.3 N');
  });

  test('lists the units and checks that there are', () => {
    const rows = [...page.matchAll(/^\| `([a-z-]+)` \| ([^|`]*) \|$/gm)].map(([, name, units]) => [name, units]);
    for (const [name, units] of Object.entries(sensorUnits)) {
      if (name !== 'time') expect(rows).toContainEqual([name, units.map(({ ucum }) => ucum).join(', ')]);
    }
    const digits = Uint8Array.from('123456789', (digit) => digit.charCodeAt(0));
    for (const kind of Object.keys(checksumBytes) as ChecksumKind[]) {
      const told = new RegExp(`\\| \`${kind}\`[^|]*\\| ([0-9A-F]+) \\|`).exec(page)![1];
      expect([kind, told]).toEqual([kind, checksum(kind, digits).toString(16).toUpperCase()]);
    }
  });
});
