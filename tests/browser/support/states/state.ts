import type { Page } from 'playwright-core';
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
    await this.page.locator('start-page').waitFor();
  }

  /** Goes to a place of the dashboard; what stood there before is made anew. */
  async go(hash: string, element: string): Promise<void> {
    const first = this.page.locator(element).first();
    const isThere = await first.isVisible();
    // what stands there may be that of another visit, which waits as this one will: what is pressed then would be pressed there
    if (isThere && !element.startsWith('app-shell')) {
      await this.page.evaluate(() => (location.hash = '#/nowhere'));
      await first.waitFor({ state: 'detached' });
    }
    await this.page.evaluate((place) => (location.hash = place), hash);
    await first.waitFor();
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
 * Goes through states and calls `look` at each; what `look` changes of the window it changes back. Of states that are not wanted only
 * those are come to that a wanted one rests on.
 */
export async function walkList(
  page: Page,
  origin: string,
  states: readonly State[],
  look: (state: State) => Promise<void>,
  isWanted: (place: number) => boolean = () => true,
): Promise<void> {
  const stand = new Stand(page, origin);
  await stand.open();
  for (const state of neededFor(states, isWanted)) {
    await state.reach(stand);
    if (isWanted(states.indexOf(state))) await look(state);
  }
}
