import { EPISODE_WORDS } from '@surae/shared';
import { html, type TemplateResult } from 'lit';
import { stonesAndPounds } from '../journey/person-form.ts';
import { poundsInKilograms } from '../journey/typed-mass.ts';
import { fill } from '../words/fill.ts';
import type { ChipChosen } from './chip-choice.ts';
import './chip-choice.ts';

/** What was answered: it is in kilograms, or the mass in kilograms as it is to be typed. */
export type MassAnswered = { readonly isKilograms: true } | { readonly mass: string };

/** Asks whether a mass is in kilograms, with what it is in other units; the other answer puts it right in one press. */
export function massQuestion(mass: number, isKilograms: boolean, answer: (said: MassAnswered) => void): TemplateResult {
  const chips = [
    { value: 'kg', text: fill(EPISODE_WORDS['mass-is-kilograms'], { mass, ...stonesAndPounds(mass) }) },
    { value: 'lb', text: fill(EPISODE_WORDS['mass-is-pounds'], { mass, kilograms: poundsInKilograms(mass) }) },
  ];
  return html`<chip-choice
    legend=${EPISODE_WORDS['mass-pounds'].text}
    .chips=${chips}
    .value=${isKilograms ? 'kg' : null}
    @chip-chosen=${({ detail }: ChipChosen) =>
      answer(detail === 'kg' ? { isKilograms: true } : { mass: String(poundsInKilograms(mass)) })}
  ></chip-choice>`;
}
