import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const script = 'tests/reference/pulls_yardstick.py';

/** Version of SciPy that runs the script. */
export function scipyVersion() {
  return execFileSync('python3', ['-c', 'import scipy; print(scipy.__version__)'], { encoding: 'utf8' }).trim();
}

/** Efforts as the SciPy script finds them: the traces go through files of float64 in a temporary folder. */
export function byScript(traces) {
  const folder = mkdtempSync(join(tmpdir(), 'pulls-'));
  try {
    traces.forEach(({ groups: [{ timesS, channels }] }, k) => {
      const rows = new Float64Array(2 * timesS.length);
      rows.set(timesS);
      rows.set(channels[0].samples, timesS.length);
      writeFileSync(join(folder, `${k}.f64`), Buffer.from(rows.buffer));
    });
    execFileSync('python3', [script, folder, String(traces.length)], { stdio: ['ignore', 'inherit', 'inherit'] });
    return JSON.parse(readFileSync(join(folder, 'found.json'), 'utf8')).map((efforts) =>
      efforts.map(({ onset_s: onsetS, peak_s: peakS, peak, mean, rate_200: rate200 }) => ({
        onsetS: { value: onsetS },
        peakS,
        peakN: { value: peak },
        meanN: { value: mean },
        rate200: rate200 === null ? null : { value: rate200 },
        // the script knows nothing of gaps or limits of the sensor: it stands by everything it prints
        peakJudged: true,
        onsetJudged: true,
      })),
    );
  } finally {
    rmSync(folder, { recursive: true });
  }
}
