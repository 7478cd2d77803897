import { adoptedCharacteristics, industrialMeasurementService, packetEncoder } from '@surae/sensors';
import { MASS_CHOICE_WORDS, READY_WORDS, SENSOR_KIND_WORDS } from '@surae/shared';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { openFirstSet } from './support/first-set.ts';
import { words } from './support/journey.mjs';
import { radioTests } from './support/radio/radio-test.ts';
import { SteadySender } from './support/radio/steady-sender.ts';
import { backToVisit, connectBluetooth, goToSensors } from './support/sensors.ts';
import { storedBodies } from './support/stored.ts';

interface Answered {
  readonly subject: string;
  readonly answer: string;
  readonly seen: { readonly figures: Readonly<Record<string, number>> };
}

radioTests(
  'a plate under somebody of known mass',
  {
    'a plate that shows another mass than was typed asks which counts, and both are kept': async (given) => {
      const { page, origin, radio, chooser } = given;
      const { characteristic, layout, name } = adoptedCharacteristics.find((one) => one.name === 'Force')!;
      const device = radio.add({
        address: 'C0:FF:EE:00:00:09',
        name: 'Adopted plate',
        services: [
          { uuid: industrialMeasurementService, characteristics: [{ uuid: characteristic, flags: ['notify'] }] },
        ],
      });
      chooser.choose('Adopted plate');
      // 74 kg, and typed were 68
      const force = Array.from({ length: 12_000 }, (_, i) => Math.round(100 * (74 * 9.80665 + Math.sin(i))) / 100);
      const encode = packetEncoder(layout);
      await openFirstSet(page, origin);
      await goToSensors(page);
      const sender = new SteadySender(force, 100, (value) =>
        device.notify(characteristic, encode({ channels: [[value]] })),
      );
      await connectBluetooth(page, fill(SENSOR_KIND_WORDS.adopted, { name }));
      await backToVisit(page);
      await page.getByRole('radio', { name: READY_WORDS.platform.text }).check();
      const plate = page.getByRole('button', { name: words(MASS_CHOICE_WORDS.plate) });
      await plate.click();
      await page.getByText(words(MASS_CHOICE_WORDS['counts-plate'])).waitFor();
      const masses = async (): Promise<(number | null | undefined)[]> =>
        (await storedBodies<{ change: { bodyMassKg?: number } }>(page, 'person-amended')).map(
          ({ change }) => change.bodyMassKg,
        );
      expect((await masses()).map((kg) => Math.round(kg ?? 0))).toEqual([74]);
      await page.getByRole('button', { name: words(MASS_CHOICE_WORDS.typed) }).click();
      await page.getByText(words(MASS_CHOICE_WORDS['counts-typed'])).waitFor();
      expect((await masses()).map((kg) => Math.round(kg ?? 0))).toEqual([74, 68]);
      sender.stop();
      const answers = await storedBodies<Answered>(page, 'sensor-answer');
      const told = answers.filter(({ subject }) => subject === 'mass');
      expect(told.map(({ answer }) => answer)).toEqual(['plate', 'typed']);
      expect(told[0]?.seen.figures['told']).toBe(68);
      expect(told[0]?.seen.figures['shown']).toBeCloseTo(74, 0);
    },
  },
  { of: 'dashboard' },
);
