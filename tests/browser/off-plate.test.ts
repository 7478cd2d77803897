import { adoptedCharacteristics, industrialMeasurementService, packetEncoder } from '@surae/sensors';
import { SENSOR_KIND_WORDS, TEST_WORDS } from '@surae/shared';
import { simulateSet } from '@surae/simulation';
import { expect } from 'vitest';
import { fill } from '../../apps/dashboard/src/words/fill.ts';
import { goToFirstSet, startSet, waitForCount, waitForEnding, words } from './support/journey.mjs';
import { radioTests } from './support/radio/radio-test.ts';
import { SteadySender } from './support/radio/steady-sender.ts';
import { backToVisit, connectBluetooth, goToSensors } from './support/sensors.ts';
import { storedBodies } from './support/stored.ts';

interface Noted {
  readonly note: { readonly what: string; readonly value: number };
}

radioTests(
  'a set on a plate',
  {
    'who steps off the plate is told at once, the set goes on when somebody steps on, and both are kept': async (
      given,
    ) => {
      const { page, origin, radio, chooser } = given;
      const { characteristic, layout, name } = adoptedCharacteristics.find((one) => one.name === 'Force')!;
      const device = radio.add({
        address: 'C0:FF:EE:00:00:08',
        name: 'Adopted plate',
        services: [
          { uuid: industrialMeasurementService, characteristics: [{ uuid: characteristic, flags: ['notify'] }] },
        ],
      });
      chooser.choose('Adopted plate');
      const { trace } = simulateSet({ placement: 'platform', level: 'typical', seed: 4, count: 20 });
      const stood = [...trace.groups[0].channels[0].samples];
      let isOff = false;
      const encode = packetEncoder(layout);
      await goToFirstSet(page, origin);
      await goToSensors(page);
      const sender = new SteadySender([...stood, ...stood], 100, (value) =>
        device.notify(characteristic, encode({ channels: [[isOff ? 2 : value]] })),
      );
      await connectBluetooth(page, fill(SENSOR_KIND_WORDS.adopted, { name }));
      await backToVisit(page);
      await startSet(page, 'left');
      await waitForCount(page, 2);
      isOff = true;
      await page.getByText(TEST_WORDS['off-plate'].text).waitFor();
      isOff = false;
      await page.getByText(words(TEST_WORDS['off-plate-kept'])).waitFor();
      expect(await page.getByText(TEST_WORDS['off-plate'].text).count()).toBe(0);
      await page.keyboard.press(' ');
      await waitForEnding(page, 'left');
      sender.stop();
      const kept = (await storedBodies<Noted>(page, 'set-note')).filter(({ note }) => note.what === 'off-plate');
      expect(kept).toHaveLength(1);
      expect(kept[0]?.note.value).toBeGreaterThanOrEqual(0.25);
    },
  },
  { of: 'dashboard' },
);
