import { PLAN_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { PlanNumber } from './plan-numbers.ts';
import { shortNumber } from './plan-words.ts';

function openWords(name: PlanNumber['name']): string {
  if (name === 'loadKg') return PLAN_WORDS['open-loadKg'].text;
  return PLAN_WORDS[name === 'weeks' ? 'open-weeks' : 'open'].text;
}

/** A number of a plan as it is read, with its unit; what is left open is said in words. */
export function numberWords({ name, value }: Pick<PlanNumber, 'name' | 'value'>): string {
  const words = PLAN_WORDS;
  if (value === null) return openWords(name);
  const told = shortNumber(value);
  switch (name) {
    case 'holdS':
    case 'upS':
    case 'topS':
    case 'downS':
    case 'restS':
      return fill(words['value-s'], { value: told });
    case 'loadKg':
      return fill(words['value-kg'], { value: told });
    case 'lowestFootDeg':
      if (value === 0) return words['value-deg-level'].text;
      return fill(words[value > 0 ? 'value-deg-above' : 'value-deg-below'], { value: Math.abs(value) });
    case 'painLimit':
      return fill(words['value-of-ten'], { value: told });
    case 'weeks':
      return value === 1 ? words['value-week'].text : fill(words['value-weeks'], { value: told });
    case 'runMin':
      return value === 0 ? words['value-no-run'].text : fill(words['value-min'], { value: told });
    case 'runM':
      return value === 0 ? words['value-no-run'].text : fill(words['value-km'], { value: shortNumber(value / 1000) });
    case 'runPartMin':
    case 'walkPartMin':
      return fill(words['value-min'], { value: told });
    default:
      return told;
  }
}
