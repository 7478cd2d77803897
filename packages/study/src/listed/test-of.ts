import { HOP_PROTOCOLS, PULL_PROTOCOLS } from '@surae/shared';
import { TESTS, type TestName } from './known-words.ts';
import type { GivenAbout } from './work-list.ts';

/** The test of a recording: the one that was said, else that of its protocol, else heel raises. */
export function testOf({ test, protocol }: Pick<GivenAbout, 'test' | 'protocol'>): TestName {
  const said = TESTS.find((known) => known === test);
  if (said !== undefined) return said;
  if (HOP_PROTOCOLS.some(({ id }) => id === protocol)) return 'hop-series';
  return PULL_PROTOCOLS.some(({ id }) => id === protocol) ? 'isometric' : 'heel-raise';
}
