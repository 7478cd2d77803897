import type { Light, LightName, LightReason } from '@surae/analysis';
import { LIGHT_FIXES, LIGHT_SENTENCES, SET_UP_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import { uncertainty } from '../words/uncertainty.ts';
import type { SetUpLight } from './set-up-light.ts';

/** Fixes that a press carries out; all others are for hands, and are said. */
const PRESSED = ['no-zero', 'zero-old', 'side-missing'] as const satisfies readonly LightReason[];

const answers = { lit: 'yes', failing: 'no', 'cannot-tell': 'cannot-tell' } as const;

const names: Readonly<Record<LightName, string>> = {
  connected: SET_UP_WORDS.connected.text,
  'right-way-up': SET_UP_WORDS['right-way-up'].text,
  zero: SET_UP_WORDS.zero.text,
  side: SET_UP_WORDS.side.text,
  mass: SET_UP_WORDS.mass.text,
};

function isFixed(reason: LightReason): reason is LightReason & keyof typeof LIGHT_FIXES {
  return Object.hasOwn(LIGHT_FIXES, reason);
}

/** The name of a light, as it stands in the list. */
export function lightName(name: LightName): string {
  return names[name];
}

/** What was seen, without what to do about it. */
export function seenWords({ reason, figures }: Pick<Light, 'reason' | 'figures'>): string {
  const rounded = Object.fromEntries(Object.entries(figures).map(([key, value]) => [key, roundedWords(key, value)]));
  return fill(LIGHT_SENTENCES[reason], rounded);
}

/** What a light says and what is done about it, as the list shows it. */
export function lightInWords({ name, state, reason, figures }: Light): SetUpLight {
  const seen = seenWords({ reason, figures });
  const fix = isFixed(reason) ? LIGHT_FIXES[reason].text : null;
  const isPressed = (PRESSED as readonly LightReason[]).includes(reason);
  return {
    id: name,
    name: names[name],
    answer: answers[state],
    sentence: fix === null || isPressed ? seen : `${seen} ${fix}`,
    fix: fix !== null && isPressed ? { code: reason, text: fix.replace(/\.$/, '') } : null,
  };
}

/** A tenth where tenths are told, else whole numbers. */
function roundedWords(key: string, value: number): string {
  if (key === 'u') return uncertainty(value);
  const tenths = ['seconds', 'size', 'level', 'told', 'shown'].includes(key);
  return tenths ? String(Math.round(10 * value) / 10) : String(Math.round(value));
}
