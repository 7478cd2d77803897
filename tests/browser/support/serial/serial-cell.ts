/** An invented cell at a serial port: number of the sample, milliseconds, newtons. */
export const serialCell = {
  kind: 'surae-sensor',
  version: 1,
  name: 'Invented serial cell',
  placement: 'inline',
  link: {
    kind: 'serial',
    port: { baudRate: 921_600, dataBits: 8, stopBits: 1, parity: 'none' },
    nominalRateHz: 200,
    stream: {
      kind: 'lines',
      lines: {
        delimiter: ';',
        decimal: '.',
        columns: [
          { kind: 'counter', modulus: 4096 },
          { kind: 'time', unit: 'ms' },
          { kind: 'channel', quantity: 'force', axis: null, unit: 'N' },
        ],
      },
    },
    start: ['53 0A'],
    stop: ['50 0A'],
  },
};
