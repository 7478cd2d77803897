/** A small description to begin from: invented, and complete. */
export const descriptionStarter = JSON.stringify(
  {
    kind: 'surae-sensor',
    version: 1,
    name: 'New sensor',
    placement: 'inline',
    link: {
      kind: 'bluetooth',
      service: '5b4c9a10-0d3e-4a67-b1c2-6f0e8d7a9b01',
      characteristics: [
        {
          characteristic: '5b4c9a10-0d3e-4a67-b1c2-6f0e8d7a9b02',
          nominalRateHz: 80,
          packets: [
            {
              order: 'little',
              fields: [
                { kind: 'counter', form: 'u8', counts: 'packets' },
                {
                  kind: 'samples',
                  repeat: 'fill',
                  values: [{ kind: 'channel', form: 'i16', quantity: 'force', axis: null, unit: 'N', scale: 0.1 }],
                },
              ],
            },
          ],
        },
      ],
      start: [],
      stop: [],
    },
  },
  null,
  2,
);

/** What a sensor so described would send: packet 5, 12.3 N and -12.3 N. */
export const starterBytes = '05 7B 00 85 FF';
