import {
  CHOICE_BLOCK_SENTENCES,
  CHOICE_PROPOSALS,
  CHOICE_RULES,
  FEW_RAISES,
  PROTOCOLS,
  PULL_PROTOCOLS,
} from '@surae/shared';
import { expect, test } from 'vitest';

test('every rule has a source, a mark and a sentence; only a surface may be gone over', () => {
  expect(Object.keys(CHOICE_BLOCK_SENTENCES).sort()).toEqual(Object.keys(CHOICE_RULES).sort());
  for (const [code, { id, source, mark }] of Object.entries(CHOICE_RULES)) {
    expect(id).toBe(`choice.${code}`);
    expect([source, mark].every((text) => text.length > 3)).toBe(true);
  }
  const open = Object.entries(CHOICE_RULES).filter(({ 1: { override } }) => override === 'with-reason');
  expect(open.map(([code]) => code)).toEqual(['insertion-not-floor', 'step-not-low']);
});

test('what is proposed are protocols that exist, no more than three, each once', () => {
  const known = [...PROTOCOLS, ...PULL_PROTOCOLS].map(({ id }) => id);
  for (const { protocolIds } of Object.values(CHOICE_PROPOSALS)) {
    expect(protocolIds.length).toBeLessThanOrEqual(3);
    expect(new Set(protocolIds).size).toBe(protocolIds.length);
    for (const id of protocolIds) expect(known).toContain(id);
  }
  expect(FEW_RAISES.value).toBe(3);
});
