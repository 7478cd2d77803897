import { FRAME_WORDS } from '@surae/shared';
import type { Page } from 'playwright-core';
import { untilListed } from './listed-elements.ts';
import { type SeededName, type SeededVisits, seedClinic, seededPerson } from './seeded-clinic.ts';

/** A part of the dashboard that is looked at as a whole. */
export type Area =
  | 'start'
  | 'visit'
  | 'test'
  | 'result'
  | 'course'
  | 'pushes'
  | 'comparisons'
  | 'sensors'
  | 'files'
  | 'home'
  | 'study'
  | 'clinic';

/** A page in a state of its own. */
export interface State {
  readonly name: string;
  readonly area: Area;
  /** how one comes there from the state before it in the list, whichever that is */
  readonly reach: (at: Stand) => Promise<unknown>;
  /** one comes there from any state of the dashboard, and what the states before it left behind is not needed */
  readonly anew?: true;
}

/** How fast the simulated person of the states is [times life]: slow enough to be looked at. */
const pace = 3;

/** The heading of the page of an address that leads nowhere; those of other pages stand in elements of their own. */
export const nowhere = 'app-shell main > h1';

/** The page that states are looked at in. */
export class Stand {
  readonly page: Page;
  readonly origin: string;
  private visits: SeededVisits | undefined;

  constructor(page: Page, origin: string) {
    this.page = page;
    this.origin = origin;
  }

  /** Opens the dashboard as it is when it is new. */
  async open(): Promise<void> {
    await this.page.goto(`${this.origin}/?seed=4&pace=${pace}`);
    await this.everybody();
  }

  /** Waits for the first page with all people of the clinic, whom it reads once it stands there. */
  async everybody(): Promise<void> {
    await this.page.locator('start-page').waitFor();
    await this.page.getByText(FRAME_WORDS.loading.text).waitFor({ state: 'detached' });
  }

  /**
   * Goes to a place of the dashboard by way of nowhere, so that its page is made anew: what stands there may be that of another visit,
   * and what is waited for and pressed then would be found there.
   */
  async go(hash: string, element: string): Promise<void> {
    await this.page.evaluate(() => (location.hash = '#/nowhere'));
    await this.page.locator(nowhere).waitFor();
    await this.page.evaluate((place) => (location.hash = place), hash);
    await this.page.locator(element).first().waitFor();
  }

  /** Goes to a visit of the seeded clinic, which stands at the step that it is named after. */
  async visit(name: SeededName, element: string, page: 'visit' | 'legs' | 'report' = 'visit'): Promise<void> {
    await this.go(`#/${page}/${(await this.seeded())[name]}`, element);
  }

  /** Goes by a link of the first page to what is told of somebody: the one who has the visits of today, unless another one is named. */
  async ofPerson(link: { readonly text: string }, element: string, name: string = seededPerson): Promise<void> {
    await this.seeded();
    await this.go('#/', 'start-page');
    await this.page.getByRole('link', { name: link.text.replace('{name}', name) }).click();
    await this.page.locator(element).waitFor();
  }

  /** Ids of the visits of the seeded clinic, which comes in the place of the demo clinic when it is first asked for. */
  async seeded(): Promise<SeededVisits> {
    if (this.visits === undefined) {
      this.visits = await seedClinic(this.page);
      await this.page.locator('app-shell').waitFor();
    }
    return this.visits;
  }
}

/** States that have to be come to so that those that are wanted are: what no wanted one rests on is left out. */
export function neededFor(states: readonly State[], isWanted: (place: number) => boolean): State[] {
  const needed = states.map((_, place) => isWanted(place));
  for (let place = states.length - 2; place >= 0; place -= 1) {
    if (needed[place + 1] && states[place + 1].anew !== true) needed[place] = true;
  }
  return states.filter((_, place) => needed[place]);
}

/**
 * Goes through states and calls `look` at each, once all that it shows is there; what `look` changes of the window it changes back. Of
 * states that are not wanted only those are come to that a wanted one rests on.
 *
 * @param arrived - waits until a state is there as a whole
 */
export async function walkList(
  page: Page,
  origin: string,
  states: readonly State[],
  look: (state: State) => Promise<void>,
  isWanted: (place: number) => boolean = () => true,
  arrived: (page: Page, name: string) => Promise<void> = untilListed,
): Promise<void> {
  const stand = new Stand(page, origin);
  await stand.open();
  for (const state of neededFor(states, isWanted)) {
    await state.reach(stand);
    if (!isWanted(states.indexOf(state))) continue;
    await arrived(page, state.name);
    await look(state);
  }
}
