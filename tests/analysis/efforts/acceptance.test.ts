import { ACCEPT_CODES } from '@surae/analysis';
import { describe, expect, test } from 'vitest';
import { type AcceptSubject, judgeEffort } from '../../../packages/analysis/src/efforts/acceptance.ts';
import { strengthSettings } from '../../support/effort-settings.ts';

const rule = strengthSettings.accept;
const good: AcceptSubject = {
  unit: 'N',
  kind: 'ramp',
  made: 'ramp',
  peak: 1000,
  restSd: 1,
  restChange: { value: 1, u: 0.2 },
  dip: { value: 2, u: 0.5 },
  creep: { value: 2, u: 0.5 },
  gapS: 0,
  clipped: false,
  plateauS: { value: 2.5, u: 0.02 },
  lifted: null,
};
const accepted = (change: Partial<AcceptSubject>): string => judgeEffort({ ...good, ...change }, rule).accepted;
const failing = (change: Partial<AcceptSubject>): string[] =>
  judgeEffort({ ...good, ...change }, rule)
    .findings.filter(({ met }) => met === 'no')
    .map(({ code }) => code);

describe('an effort counts', () => {
  test('when nothing speaks against it', () => {
    expect(accepted({})).toBe('yes');
    expect(accepted({ lifted: false })).toBe('yes');
  });

  test.each([
    ['restless-baseline', { restSd: 12 }],
    ['tare-error', { restChange: { value: 9, u: 0.5 } }],
    ['countermovement', { dip: { value: 25, u: 0.5 } }],
    ['gap-near-peak', { gapS: 0.06 }],
    ['clipped', { clipped: true }],
    ['short-plateau', { plateauS: { value: 0.8, u: 0.02 } }],
    ['lifted', { lifted: true }],
  ] as const)('not with %s', (code, change) => {
    expect([accepted(change), failing(change)]).toEqual(['no', [code]]);
  });

  test('pre-tension speaks against a fast effort only, a short plateau against a ramp only', () => {
    const creep = { value: 30, u: 1 };
    expect([failing({ creep }), failing({ creep, kind: 'fast', made: 'fast' })]).toEqual([[], ['pre-tension']]);
    expect(failing({ kind: 'fast', made: 'fast', plateauS: { value: 0.3, u: 0.02 } })).toEqual([]);
  });

  test('a ramp where a fast effort was asked for, not a fast rise where a hold was asked for', () => {
    expect(failing({ kind: 'fast', made: 'ramp' })).toEqual(['not-fast']);
    expect(failing({ kind: 'ramp', made: 'fast' })).toEqual([]);
    expect(failing({ kind: 'ramp', made: 'fast', plateauS: { value: 0.3, u: 0.02 } })).toEqual(['short-plateau']);
  });

  test('what a protocol does not limit is met, whatever was measured', () => {
    const open = { ...rule, tareN: Number.POSITIVE_INFINITY, plateauS: 0 };
    const { accepted: is, findings } = judgeEffort(
      { ...good, restChange: { value: 200, u: 1 }, plateauS: { value: 0.1, u: 0.02 } },
      open,
    );
    expect(is).toBe('yes');
    expect(findings.find(({ code }) => code === 'tare-error')).toEqual({
      code: 'tare-error',
      met: 'yes',
      value: 200,
      limit: null,
    });
    expect(findings.map(({ code }) => code)).not.toContain('short-plateau');
  });

  test('the limit of a dip is 10 N or 2 % of the peak, whichever is more', () => {
    expect(failing({ dip: { value: 15, u: 0.1 } })).toEqual([]);
    expect(failing({ dip: { value: 15, u: 0.1 }, peak: 400 })).toEqual(['countermovement']);
  });

  test('cannot be told near a limit, or where nothing was recorded', () => {
    expect(accepted({ plateauS: { value: 1.01, u: 0.02 } })).toBe('cannot_tell');
    expect(accepted({ restChange: null })).toBe('cannot_tell');
    expect(accepted({ dip: null })).toBe('cannot_tell');
    expect(accepted({ dip: null, clipped: true })).toBe('no');
  });

  test('torques have limits of their own', () => {
    expect(failing({ unit: 'N.m', peak: 100, restChange: { value: 1, u: 0.01 } })).toEqual(['tare-error']);
  });

  test('findings come in the order of the list', () => {
    const codes = judgeEffort({ ...good, kind: 'fast', lifted: true }, rule).findings.map(({ code }) => code);
    expect(codes).toEqual(ACCEPT_CODES.filter((code) => codes.includes(code)));
  });
});
