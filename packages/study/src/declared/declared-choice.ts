import type { StudyFile } from './study-document.ts';
import { protocolWith, settingsWith } from './study-protocol.ts';

export type ChoiceValue = StudyFile['choices'][number]['values'][number];

/** What a choice can be about: a parameter of the protocol, a setting, or how values are compared. */
export type ChoiceOf =
  | { readonly kind: 'protocol' | 'settings' | 'exclusion'; readonly name: string }
  | { readonly kind: 'perPerson' | 'scale' };

/** The words that a choice of an exclusion takes. */
export const EXCLUSION_WORDS = ['applied', 'not-applied'] as const;

/** What the name of a choice says; undefined where it says nothing that can be chosen. */
export function choiceOf(parameter: string): ChoiceOf | undefined {
  if (parameter === 'perPerson' || parameter === 'scale') return { kind: parameter };
  const found = /^(protocol|settings|exclusion)\.(.+)$/.exec(parameter);
  return found === null ? undefined : { kind: found[1] as 'protocol', name: found[2]! };
}

function settingAt(path: string, settings: unknown): unknown {
  return path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], settings);
}

/** The value that the study declared for what a choice is about; undefined where it has none. */
export function declaredValue(study: StudyFile, of: ChoiceOf): ChoiceValue | undefined {
  switch (of.kind) {
    case 'perPerson':
      return study.comparison.perPerson;
    case 'scale':
      return study.comparison.scale;
    case 'exclusion':
      return EXCLUSION_WORDS[0];
    case 'protocol': {
      const found = Object.entries(protocolWith(study).parameters).find(([name]) => name === of.name);
      return (found?.[1] as { readonly value: ChoiceValue } | undefined)?.value;
    }
    case 'settings': {
      const value = settingAt(of.name, settingsWith(study));
      return typeof value === 'number' || typeof value === 'string' || value === null ? value : undefined;
    }
  }
}
