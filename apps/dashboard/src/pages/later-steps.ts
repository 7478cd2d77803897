/** Loads the steps that are too heavy for the first page. */
export function loadLaterSteps(): Promise<unknown> {
  return Promise.all([
    import('../parts/set-verdicts.ts'),
    import('./choice-step.ts'),
    import('./ladder-step.ts'),
    import('./result-step.ts'),
    import('./test-step.ts'),
    import('./pull-step.ts'),
    import('./plan-step.ts'),
    import('./hand-over-step.ts'),
  ]);
}

/** The same as soon as there is nothing else to do: whoever looks at the list of people opens a visit next. */
export function loadLaterStepsWhenIdle(): void {
  // one that did not come is asked for again by the page of the visit
  const load = (): void => void loadLaterSteps().catch(() => undefined);
  if ('requestIdleCallback' in globalThis) requestIdleCallback(load);
  else setTimeout(load);
}
