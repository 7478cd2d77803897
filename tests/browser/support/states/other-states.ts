import {
  AUDIT_WORDS,
  BANNER_WORDS,
  CLINIC_WORDS,
  DESCRIBE_WORDS,
  DOOR_WORDS,
  ERASE_PLACE,
  ERASE_WORDS,
  EXPORT_WORDS,
  FRAME_WORDS,
  IMPORT_WORDS,
  SENSOR_WORDS,
} from '@surae/shared';
import { addPerson, enter, keepCode, passphrase, press } from '../../../support/clinic-walk.ts';
import { fixturePath } from '../../../support/fixture.ts';
import { words } from '../journey.mjs';
import type { Stand, State } from './state.ts';

/** Sensors and what describes one. */
export const sensorStates: readonly State[] = [
  { name: 'sensors', area: 'sensors', reach: (at) => at.go('#/sensors', 'sensors-page h1'), anew: true },
  { name: 'sensors-serial', area: 'sensors', reach: chooseSerial },
  { name: 'describe', area: 'sensors', reach: describe, anew: true },
];

/** Files that come and go, and errors of measurement of one's own. */
export const fileStates: readonly State[] = [
  { name: 'import', area: 'files', reach: openImport, anew: true },
  { name: 'import-asked', area: 'files', reach: (at) => importFile(at, 'messy/two-plates.csv') },
  { name: 'import-looked', area: 'files', reach: (at) => importFile(at, 'recordings/made/heel-three-raises.csv') },
  { name: 'export', area: 'files', reach: openExport, anew: true },
  { name: 'own-errors', area: 'files', reach: (at) => at.go('#/own-errors', 'own-errors-page h1'), anew: true },
];

/** The clinic: its keys, its door, its lock. They come last, because the page changes its clinic. */
export const clinicStates: readonly State[] = [
  { name: 'clinic-demo', area: 'clinic', reach: showClinic },
  { name: 'audit', area: 'clinic', reach: openAudit, anew: true },
  { name: 'erase', area: 'clinic', reach: eraseSomebody, anew: true },
  { name: 'door', area: 'clinic', reach: leave },
  { name: 'door-making', area: 'clinic', reach: ({ page }) => press(page, DOOR_WORDS.create) },
  { name: 'door-code', area: 'clinic', reach: makeClinic },
  { name: 'start-empty', area: 'clinic', reach: keepOwnCode },
  { name: 'clinic-own', area: 'clinic', reach: showOwn },
  { name: 'door-locked', area: 'clinic', reach: lock },
  { name: 'door-refused', area: 'clinic', reach: enterWrong },
  { name: 'second-window', area: 'clinic', reach: openBeside },
  { name: 'loading', area: 'clinic', reach: waitForBook },
];

async function chooseSerial({ page }: Stand): Promise<void> {
  const file = page.getByLabel(SENSOR_WORDS.import.text);
  await file.setInputFiles(fixturePath('../shared/sensors/examples/string-at-the-heel.json'));
  await page.getByText(words(SENSOR_WORDS.imported)).waitFor();
  await page.getByRole('radio', { name: SENSOR_WORDS.serial.text }).check();
  await page.getByRole('button', { name: SENSOR_WORDS['first-port'].text }).waitFor();
}

async function describe(at: Stand): Promise<void> {
  await at.go('#/describe', 'describe-page h1');
  await at.page.getByText(DESCRIBE_WORDS.usable.text).waitFor();
}

async function openImport(at: Stand): Promise<void> {
  await at.go('#/import', 'import-page h1');
  await at.page.getByText(IMPORT_WORDS.whose.text).waitFor();
}

/** What would leave is counted once the page stands there. */
async function openExport(at: Stand): Promise<void> {
  await at.go('#/export', 'export-page h1');
  await at.page.getByText(EXPORT_WORDS.content.text).waitFor();
}

async function importFile(at: Stand, name: string): Promise<void> {
  await openImport(at);
  await at.page.getByLabel(IMPORT_WORDS.file.text).setInputFiles(fixturePath(name));
  await at.page.getByRole('button', { name: IMPORT_WORDS.read.text, exact: true }).waitFor();
}

/** Nothing was noted down yet, which is looked up. */
async function openAudit(at: Stand): Promise<void> {
  await at.go('#/audit', 'audit-page h1');
  await at.page.getByText(AUDIT_WORDS.none.text).waitFor();
}

/** The page on which somebody is erased: nothing is erased here. */
async function eraseSomebody(at: Stand): Promise<void> {
  await at.go('#/', 'start-page');
  await at.page.locator('details.amend summary').first().click();
  await at.page
    .getByRole('link', { name: words(ERASE_PLACE['link-of']) })
    .first()
    .click();
  await at.page.getByText(ERASE_WORDS['duty-read'].text).waitFor();
}

/** No backup was made of it yet, which is looked up. */
async function showClinic(at: Stand): Promise<void> {
  await at.go('#/clinic', 'clinic-page h1');
  await at.page.getByText(CLINIC_WORDS['backup-never'].text).waitFor();
}

async function leave(at: Stand): Promise<void> {
  await at.go('#/clinic', 'clinic-page h1');
  await press(at.page, CLINIC_WORDS.leave);
  await at.page.locator('clinic-door h1').waitFor();
}

async function makeClinic({ page }: Stand): Promise<void> {
  await page.getByLabel(DOOR_WORDS.author.text).fill('RN');
  await page.getByLabel(DOOR_WORDS.passphrase.text).fill(passphrase);
  await page.getByLabel(DOOR_WORDS.again.text).fill(passphrase);
  await press(page, DOOR_WORDS['make-it']);
  await page.getByRole('heading', { name: DOOR_WORDS['code-title'].text }).waitFor();
}

async function keepOwnCode(at: Stand): Promise<void> {
  await keepCode(at.page);
  await at.everybody();
}

async function showOwn(at: Stand): Promise<void> {
  await addPerson(at.page, 'Oda Brenn');
  await showClinic(at);
}

async function lock({ page }: Stand): Promise<void> {
  await press(page, CLINIC_WORDS['lock-now']);
  await page.locator('clinic-door h1').waitFor();
}

async function enterWrong({ page }: Stand): Promise<void> {
  await enter(page, 'four green ladder');
  await page.getByRole('alert').first().waitFor();
}

/** The page where another window came first and writes. */
async function openBeside(at: Stand): Promise<void> {
  const { page, origin } = at;
  const first = await page.context().newPage();
  // in the language of the page
  const { search } = new URL(page.url());
  // nobody writes while the page is away
  await page.goto('about:blank');
  await first.goto(`${origin}/${search}`);
  await press(first, DOOR_WORDS['open-demo']);
  await first.locator('start-page').waitFor();
  await page.goto(origin);
  await press(page, DOOR_WORDS['open-demo']);
  await page.getByText(BANNER_WORDS['reads-only'].text).waitFor();
  await at.everybody();
}

/** The list of people that does not come: nothing that the store is asked for is answered any more. */
async function waitForBook(at: Stand): Promise<void> {
  await at.page.evaluate(() => {
    IDBRequest.prototype.addEventListener = () => undefined;
    location.hash = '#/nowhere';
  });
  await at.page.locator('start-page').waitFor({ state: 'detached' });
  await at.page.evaluate(() => (location.hash = '#/'));
  await at.page.getByText(FRAME_WORDS.loading.text).waitFor();
}
