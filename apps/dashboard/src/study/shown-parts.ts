import { html } from 'lit';
import type { ShownPart } from './study-parts.ts';

/** The parts that there are: a new one is a line here. */
export const shownParts: readonly ShownPart[] = [
  {
    part: 'quality',
    load: () => import('../parts/study-quality.ts'),
    show: (session) => html`<study-quality .session=${session}></study-quality>`,
  },
  {
    part: 'recount',
    load: () => import('./study-recount.ts'),
    show: (session) => html`<study-recount .session=${session}></study-recount>`,
    isIn: ({ content }) => content.declared.study.blinding !== null,
  },
  {
    part: 'groups',
    load: () => import('../parts/study-groups.ts'),
    show: (session) => html`<study-groups .session=${session}></study-groups>`,
  },
  {
    part: 'choices',
    load: () => import('../parts/study-choices.ts'),
    show: (session) => html`<study-choices .session=${session}></study-choices>`,
  },
];
