import { DESIGN_WORDS } from '@surae/shared';
import type { Stand, State } from './state.ts';

/** How many people a study needs: asked, refused, answered with and without a range. */
export const designStates: readonly State[] = [
  { name: 'design', area: 'study', reach: (at) => at.go('#/design', 'design-page h1'), anew: true },
  { name: 'design-refused', area: 'study', reach: refuse },
  { name: 'design-groups', area: 'study', reach: (at) => answered(at, GROUPS), anew: true },
  { name: 'design-paired', area: 'study', reach: (at) => answered(at, PAIRED), anew: true },
  {
    name: 'design-change',
    area: 'study',
    reach: (at) => answered(at, 'change.;change.expected=4;sem.expected=2.25'),
    anew: true,
  },
];

const GROUPS =
  'groups.;difference.low=2;difference.expected=3;difference.high=4;sd.low=4;sd.expected=5;sd.high=7;drop-out.expected=0.1';
const PAIRED = 'paired.sem;difference.expected=3;sem.expected=2.25;sem.people=32';

async function refuse({ page }: Stand): Promise<void> {
  await page.locator('#difference #expected').fill('0');
  await page.getByRole('button', { name: DESIGN_WORDS.work.text }).click();
  await page.getByText(DESIGN_WORDS['fault-no-difference'].text).waitFor();
}

async function answered(at: Stand, typed: string): Promise<void> {
  await at.go(`#/design/${encodeURIComponent(typed)}`, 'design-page svg-figure svg');
}
