import { expect } from 'vitest';
import { inRun } from '../support/runs.ts';
import { browserTest } from './support/browser-test.ts';
import { crossedLegs } from './support/crossed-legs.ts';
import { cutOff } from './support/fits-page.ts';
import { inOtherWords } from './support/in-other-words.ts';
import { allStates } from './support/states/all-states.ts';
import { comparisonStates } from './support/states/comparison-states.ts';
import { designStates } from './support/states/design-states.ts';
import { pushStates } from './support/states/push-states.ts';
import { recountStudyStates } from './support/states/recount-study-states.ts';
import { studyResultStates } from './support/states/study-result-states.ts';
import { violations } from './support/violations.ts';
import { walked } from './support/walked.ts';

/** States that a test of their own walks through: whatever is not one of them is walked through here. */
const walkedElsewhere = new Set([
  ...pushStates,
  ...comparisonStates,
  ...designStates,
  ...recountStudyStates,
  ...studyResultStates,
]);

browserTest(
  'no page or state breaks a rule of accessibility, on light and dark paper; text of twice the size fits 360 pixels',
  async ({ page, origin }) => {
    const { found, states } = await walked(
      page,
      origin,
      allStates.filter((state) => !walkedElsewhere.has(state)),
    );
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

browserTest(
  'words are made longer and a page is turned where it stands: what they do not fit and legs that go along are told, and then it is as before',
  async ({ page, origin }) => {
    await page.goto(origin);
    await page.locator('start-page').waitFor();
    const before = await page.locator('start-page').innerText();
    const legs = '<p><b class="side" data-side="left">Left</b><b class="side" data-side="right">Right</b></p>';
    // styles are set by script: the policy of the page refuses them in markup
    const told = async (width: string, direction: string): Promise<string[]> => {
      await page.evaluate(
        ([html, wide, way]) => {
          document.querySelector('#beside')?.remove();
          const beside = document.createElement('section');
          beside.id = 'beside';
          beside.innerHTML = html;
          document.body.append(beside);
          const [pair, text] = beside.querySelectorAll('p');
          Object.assign(pair.style, { display: 'flex', direction: way });
          Object.assign(text.style, { width: wide, overflow: 'hidden', whiteSpace: 'nowrap' });
        },
        [`${legs}<p>Heel raises</p>`, width, direction] as const,
      );
      return inOtherWords(page, async () => [...(await cutOff(page)), ...(await crossedLegs(page))]);
    };
    expect(await told('20em', 'ltr')).toEqual([]);
    expect(await told('6em', 'ltr')).toEqual(['p: Héèéèl ráàíìséès']);
    expect(await told('20em', '')).toEqual(['the right leg stands left of the left one: Ríìght']);
    expect(await page.locator('#beside').innerText()).toContain('Heel raises');
    expect(await page.locator('start-page').innerText()).toBe(before);
    expect(await page.locator('html').getAttribute('dir')).toBe('ltr');
  },
);
