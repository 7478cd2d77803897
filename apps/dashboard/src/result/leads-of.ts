import type { Side } from '@surae/analysis';
import { SUMMARY_WORDS } from '@surae/shared';
import { capital } from './value-words.ts';

/** An answer about one leg, which is named in it. */
export interface LegLead {
  readonly side: Side;
  readonly text: string;
}

/** Answers about a leg each, with the name of the leg before those that do not begin with it. */
export function leadsOf(views: readonly { readonly side: Side; readonly lead: string }[]): readonly LegLead[] {
  return views.map(({ side, lead }) => {
    const name = capital(SUMMARY_WORDS[side].text);
    return { side, text: lead.startsWith(name) ? lead : `${name}: ${lead}` };
  });
}
