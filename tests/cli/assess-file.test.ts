import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { PROTOCOLS } from '@surae/shared';
import { expect, test } from 'vitest';
import { assessFile } from '../../apps/cli/src/assess-file.ts';
import { readSettings, usualSettings } from '../../apps/cli/src/settings-file.ts';
import type { WorkItem } from '../../packages/study/src/listed/work-list.ts';
import { handMadeRefusal } from '../support/hand-made-outcome.ts';
import { MemoryIo } from '../support/memory-io.ts';

const GOOD = 'fixtures/recordings/made/heel-three-raises.csv';
const NOTHING = handMadeRefusal().item.about;

function item(changes: Partial<WorkItem> = {}): WorkItem {
  return { file: 'a.csv', path: GOOD, about: NOTHING, carried: {}, refusal: undefined, ...changes };
}

const assessed = async (changes: Partial<WorkItem> = {}, settings = usualSettings()) => {
  const outcome = await assessFile(item(changes), settings, new MemoryIo().io);
  if (outcome.status === 'refused') throw new Error(outcome.reason);
  if (outcome.test !== 'heel-raise') throw new Error('heel raises were asked for');
  return outcome;
};

test('the bytes become a report, with their own hash and the first protocol', async () => {
  const outcome = await assessed();
  expect(outcome.report.count.attempted).toBe(3);
  expect(outcome.protocol).toBe(PROTOCOLS[0]);
  expect(outcome.sha256).toBe(createHash('sha256').update(readFileSync(GOOD)).digest('hex'));
});

test('body mass, levers and angles reach the analysis in SI', async () => {
  const given = {
    ...NOTHING,
    bodyMassKg: 70,
    externalMassKg: 5,
    heelLeverMm: 180,
    ankleLeverMm: 130,
    ankleAngleDeg: 30,
  };
  const { report } = await assessed({ about: given });
  const [first] = report.repetitions;
  // (70 + 5) kg x 9.80665 m/s2 x height, with nothing but the mass and the height
  expect(first.work.heelJ).toBeCloseTo(75 * 9.80665 * first.heightM!, 6);
  // the ankle lies 130 mm from the ball at 30 degrees: it rises by 130 (sin(30 + pitch) - sin 30) mm
  const pitchRad = Math.asin(first.heightM! / 0.18);
  const riseM = 0.13 * (Math.sin(Math.PI / 6 + pitchRad) - 0.5);
  expect(first.work.ankleJ).toBeCloseTo(75 * 9.80665 * riseM, 6);
});

test('what the manifest says about the trial reaches the report', async () => {
  const { report } = await assessed({ about: { ...NOTHING, side: 'left' }, carried: { end_reason: 'pain' } });
  expect([report.side, report.end.reasonGiven]).toEqual(['left', 'pain']);
});

test('other settings give another settings hash and the same protocol hash, another threshold changes both', async () => {
  const withFile = (text: string) => assessed({}, readSettings('s.json', new TextEncoder().encode(text)));
  const usual = await assessed();
  const slower = await withFile('{"heel": {"workingRateHz": 50}}');
  const lower = await withFile('{"protocol": {"heightFraction": 0.5}}');
  expect(slower.protocolHash).toBe(usual.protocolHash);
  expect(new Set([usual.settingsHash, slower.settingsHash, lower.settingsHash]).size).toBe(3);
  expect(lower.protocolHash).not.toBe(usual.protocolHash);
});

test('a refusal known before is handed on and no byte is read', async () => {
  const io = { readFile: () => Promise.reject(new Error('read')) };
  const outcome = await assessFile(item({ refusal: 'row 3: no' }), usualSettings(), io);
  expect(outcome).toMatchObject({ status: 'refused', reason: 'row 3: no', sha256: null });
});

test.each([
  [{ code: 'ENOENT' }, 'a.csv: there is no such file'],
  [{ code: 'EISDIR' }, 'a.csv: this is a folder; name the files in it'],
  [{ code: 'EACCES' }, 'a.csv: this file may not be read'],
  [{ code: 'EIO' }, 'a.csv: the disk'],
])('a file that cannot be read: %j', async (code, reason) => {
  const io = { readFile: () => Promise.reject(Object.assign(new Error('the disk'), code)) };
  expect(await assessFile(item(), usualSettings(), io)).toMatchObject({ status: 'refused', reason, sha256: null });
});

test('the wrong placement, protocol or content is refused by name, with the hash of what was read', async () => {
  const refused = async (changes: Partial<WorkItem>) => {
    const outcome = await assessFile(item(changes), usualSettings(), new MemoryIo().io);
    return outcome.status === 'refused' ? [outcome.reason, outcome.sha256 !== null] : ['assessed'];
  };
  expect(await refused({ about: { ...NOTHING, placement: 'platform' } })).toEqual([
    expect.stringMatching(/^a\.csv: .*force/),
    true,
  ]);
  expect(await refused({ about: { ...NOTHING, protocol: 'none' } })).toEqual([
    expect.stringMatching(/^a\.csv: there is no protocol "none"/),
    true,
  ]);
  expect(await refused({ path: 'fixtures/broken/nan-text.csv' })).toEqual([expect.stringMatching(/row 122/), true]);
});
