import { describe, expect, test } from 'vitest';
import { type FaultName, faultRange, faultTable, formatFaultTable } from '../../packages/simulation/src/fault-table.ts';

const faultNames = Object.keys(faultTable) as FaultName[];
const levels = ['clean', 'typical', 'hard', 'field', 'free'] as const;

describe('the table of faults', () => {
  test('prints one row for each fault with the amounts of five levels', () => {
    const lines = formatFaultTable().split('\n');
    expect(lines).toHaveLength(faultNames.length + 2);
    for (const line of lines) expect(line.split('|')).toHaveLength(10);
    expect(lines.find((line) => line.startsWith('| swayHeelM '))).toBe(
      '| swayHeelM | m | sway at the heel, rms | 0 | 0.0002 to 0.0006 | 0.0023 to 0.0025 | 0.0023 to 0.0025 | 0.0023 to 0.0025 |',
    );
  });

  test('ranges are not upside down, and a field recording is no better than a hard one', () => {
    for (const name of faultNames) {
      for (const level of levels) {
        const [low, high] = faultRange(faultTable[name], level);
        expect(low, `${name} ${level}`).toBeLessThanOrEqual(high);
      }
    }
    for (const name of ['swayHeelM', 'trunkWobble', 'lossShare', 'stampJitter', 'incompleteShare'] as const) {
      expect(faultRange(faultTable[name], 'field')).toEqual(faultRange(faultTable[name], 'hard'));
      expect(faultRange(faultTable[name], 'hard')[0]).toBeGreaterThanOrEqual(
        faultRange(faultTable[name], 'typical')[1],
      );
    }
  });

  test('people who keep no beat differ more in tempo, hold and wobble, and in nothing else', () => {
    const apart = faultNames.filter((name) => {
      const [field, free] = [faultRange(faultTable[name], 'field'), faultRange(faultTable[name], 'free')];
      expect(free[1], name).toBeGreaterThanOrEqual(field[1]);
      return free[0] !== field[0] || free[1] !== field[1];
    });
    expect(apart.sort()).toEqual([
      'beatSpread',
      'longHoldChance',
      'ownTempoChance',
      'partSpread',
      'platformWobble',
      'swayCornerHz',
      'trunkWobble',
    ]);
  });

  test('what a field recording adds is absent from the other levels', () => {
    for (const name of [
      'stridesChance',
      'hookingChance',
      'dipShare',
      'pauseBounceShare',
      'slipChance',
      'emptyChance',
    ] as const) {
      for (const level of ['clean', 'typical', 'hard'] as const)
        expect(faultRange(faultTable[name], level)).toEqual([0, 0]);
      expect(faultRange(faultTable[name], 'field')[1]).toBeGreaterThan(0);
    }
  });
});
