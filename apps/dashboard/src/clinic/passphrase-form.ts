import { leastPassphraseLength } from '@surae/storage';

/** Why a passphrase that was typed twice is not taken. */
export type PassphraseProblem = 'too-short' | 'not-alike';

/** What is wrong with a passphrase that was typed twice; undefined where nothing is. */
export function passphraseProblem(once: string, again: string): PassphraseProblem | undefined {
  if ([...once.normalize('NFKC')].length < leastPassphraseLength) return 'too-short';
  return once === again ? undefined : 'not-alike';
}

/** Numbers of two groups of a recovery code that are asked back, from 1: so that it is on paper before one goes on. */
export function groupsAskedBack(code: string, random: (below: number) => number): readonly [number, number] {
  const count = code.split('-').length;
  const first = random(count);
  const second = (first + 1 + random(count - 1)) % count;
  const [low, high] = [Math.min(first, second), Math.max(first, second)];
  return [low + 1, high + 1];
}

/** Whether a group was typed back as it stands in the code, whatever the case. */
export function isGroup(code: string, number: number, typed: string): boolean {
  return code.split('-')[number - 1] === typed.trim().toUpperCase();
}
