import type { PastName } from './seeded-past.ts';
import type { Stand, State } from './state.ts';

const shown = [
  'first',
  'change',
  'course',
  'both-sore-pain',
  'both-sore',
  'unlike',
] as const satisfies readonly PastName[];

/** Results beside earlier ones, each folded and with everything open. */
export const comparisonStates: readonly State[] = shown.flatMap((name): State[] => [
  { name: `result-${name}`, area: 'comparisons', reach: (at) => showPast(at, name), anew: true },
  { name: `result-${name}-open`, area: 'comparisons', reach: openAll },
]);

async function showPast(at: Stand, name: PastName): Promise<void> {
  await at.visit(name, 'result-step');
  await at.page.locator('comparison-fold').first().waitFor();
}

/** What is on demand inside a fold has a summary of its own. */
function openAll({ page }: Stand): Promise<void> {
  return page.locator('comparison-fold').evaluateAll((all) => {
    for (const fold of all) for (const part of fold.shadowRoot?.querySelectorAll('details') ?? []) part.open = true;
  });
}
