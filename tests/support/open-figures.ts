import { countedIn, massesKg, NO_RAISES } from './open-counts.ts';
import { rotationTiltErrorDeg, translationTilt, verticalWayMm } from './open-orientation.ts';
import { type Agreement, peaksPerStride, walkingAgainstOptics } from './open-recordings.ts';

type Row = readonly [what: string, figure: string, recorded: string];

function agreed({ rmse, r, count }: Agreement, unit: string): string {
  return `RMSE ${rmse.toFixed(1)} ${unit}, r ${r.toFixed(3)} (n = ${count})`;
}

/** The figures that the open recordings support, each with where it was recorded, as a table in Markdown. */
export function openFigures(): string {
  const rows: Row[] = [];
  for (const side of ['left', 'right'] as const) {
    const { pitchDeg, heightMm } = walkingAgainstOptics(side, true);
    rows.push([`foot pitch, ${side}, gyroscope`, agreed(pitchDeg, 'deg'), 'walking, optical markers']);
    rows.push([
      `heel height, ${side}, gyroscope, forefoot on the floor`,
      agreed(heightMm, 'mm'),
      'walking, optical markers',
    ]);
    const alone = walkingAgainstOptics(side, false).pitchDeg;
    rows.push([`foot pitch, ${side}, accelerometer alone`, agreed(alone, 'deg'), 'walking, optical markers']);
    const peaks = peaksPerStride(side);
    const single = peaks.filter((count) => count === 1).length;
    rows.push([`one height peak a stride, ${side}`, `${single} of ${peaks.length}`, 'walking, labelled by hand']);
  }
  rows.push([
    'direction of gravity, slow rotation, accelerometer',
    `RMS ${rotationTiltErrorDeg().toFixed(1)} deg`,
    'optical',
  ]);
  for (const axis of [0, 1] as const) {
    const { alone, fused } = translationTilt(axis);
    rows.push([`tilt about ${'xy'[axis]} while shaken, gyroscope`, agreed(fused, 'deg'), 'optical']);
    rows.push([`tilt about ${'xy'[axis]} while shaken, accelerometer alone`, agreed(alone, 'deg'), 'optical']);
  }
  const way = verticalWayMm();
  rows.push(['vertical way between turning points', `${agreed(way, 'mm')}, ${way.segments} movements`, 'optical']);
  for (const { name, platform, scale } of massesKg()) {
    const percent = (100 * (platform - scale)) / scale;
    rows.push([
      `mass by the platform, ${name.replace('.csv', '')}`,
      `${platform.toFixed(2)} kg, scale ${scale} kg (${percent.toFixed(1)} %)`,
      'standing',
    ]);
  }
  for (const [movement, recordings] of Object.entries(NO_RAISES)) {
    const counted = recordings.map((recording) => countedIn(recording).attempted);
    const recorded = recordings.length === 1 ? '1 recording' : `${recordings.length} recordings`;
    rows.push([`heel raises counted: ${movement}`, counted.join(', '), recorded]);
  }
  const lines = rows.map((cells) => `| ${cells.join(' | ')} |`);
  return ['| what | figure | recorded |', '| --- | --- | --- |', ...lines].join('\n');
}
