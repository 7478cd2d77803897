import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { courseStates } from './support/states/course-states.ts';
import { homeStates } from './support/states/home-states.ts';
import { clinicStates, fileStates, sensorStates } from './support/states/other-states.ts';
import { rulesStates } from './support/states/rules-states.ts';
import { studyStates } from './support/states/study-states.ts';
import { startStates, visitStates } from './support/states/visit-states.ts';
import { violations } from './support/violations.ts';
import { walked } from './support/walked.ts';

browserTest(
  'no page or state breaks a rule of accessibility, on light and dark paper; text of twice the size fits 360 pixels',
  async ({ page, origin }) => {
    const { found, states } = await walked(page, origin, [
      ...startStates,
      ...visitStates,
      ...courseStates,
      ...sensorStates,
      ...fileStates,
      ...studyStates,
      ...homeStates,
      ...rulesStates,
      ...clinicStates,
    ]);
    expect(found).toEqual([]);
    expect(states.length).toBeGreaterThan(inRun(40, 90));
  },
  600_000,
);

browserTest(
  'what was met before on a page without a fault is not asked again, and whatever is written or coloured otherwise is',
  async ({ page, origin }) => {
    await page.goto(origin);
    await page.locator('start-page').waitFor();
    // beside what the page shows, in its last place
    const asked = async (html: string, colour = ''): Promise<string[]> => {
      await page.evaluate(
        ([text, ink]) => {
          document.querySelector('#beside')?.remove();
          const beside = document.createElement('section');
          beside.id = 'beside';
          beside.setAttribute('aria-label', 'Beside');
          beside.innerHTML = text;
          document.body.append(beside);
          beside.querySelector<HTMLElement>('h2')!.style.color = ink;
        },
        [html, colour] as const,
      );
      return (await violations(page)).map((one) => one.split(':')[0]);
    };
    const clean = '<h2>Beside</h2><button>One</button><input type="checkbox" aria-label="Two">';
    expect(await asked(clean)).toEqual([]);
    expect(await asked(clean.replace('One', 'Another'))).toEqual([]);
    expect(await asked(clean.replace('One', ''))).toEqual(['button-name']);
    expect(await asked(clean.replace(' aria-label="Two"', ''))).toEqual(['label']);
    expect(await asked(clean.replace('"Two"', '""'))).toEqual(['label']);
    // written as before and coloured otherwise
    expect(await asked(clean, 'rgb(0, 0, 1)')).toEqual([]);
    expect(await asked(clean, 'rgb(225, 225, 225)')).toEqual(['color-contrast']);
    expect(await asked(clean, 'rgb(225, 225, 225)')).toEqual(['color-contrast']);
    expect(await asked(clean, 'rgb(0, 0, 1)')).toEqual([]);
    expect(await asked(`${clean}<div role="checkbox" tabindex="0">Three</div>`)).toEqual(['aria-required-attr']);
    expect(await asked(clean)).toEqual([]);
  },
);
