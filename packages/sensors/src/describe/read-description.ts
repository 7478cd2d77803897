import { checkLayout } from '../decode/check-layout.ts';
import { checkFrame } from '../decode/frame.ts';
import type { PacketLayout } from '../decode/layout.ts';
import { checkLines } from '../decode/line-layout.ts';
import type { Problem } from '../decode/packet-error.ts';
import { schemaProblems } from './schema-problems.ts';
import { type SensorDocument, sensorDocument } from './sensor-document.ts';

/** A description that can be used, or everything that keeps it from being used. */
export type DescriptionAnswer =
  | { readonly kind: 'described'; readonly sensor: SensorDocument }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/** The description of a sensor in a JSON text. Never throws, so that an editor may ask at each key. */
export function readSensorDescription(text: string): DescriptionAnswer {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    const actual = cause instanceof Error ? cause.message : 'other text';
    return { kind: 'refused', problems: [{ path: '', expected: 'JSON', actual }] };
  }
  return parseSensorDescription(value);
}

/** The description of a sensor out of a value that came from outside: checked against the schema, then for what it means. */
export function parseSensorDescription(value: unknown): DescriptionAnswer {
  const result = sensorDocument.safeParse(value);
  if (!result.success) return { kind: 'refused', problems: schemaProblems(result.error.issues, value) };
  const problems = problemsOf(result.data);
  return problems.length > 0 ? { kind: 'refused', problems } : { kind: 'described', sensor: result.data };
}

function problemsOf({ link }: SensorDocument): Problem[] {
  if (link.kind === 'bluetooth') {
    return link.characteristics.flatMap(({ packets }, index) => {
      const path = `link.characteristics[${index}].packets`;
      const own = packets.flatMap((packet, i) => within(`${path}[${i}]`, checkLayout(packet)));
      return own.length > 0 ? own : kindProblems(packets, path);
    });
  }
  const { stream } = link;
  if (stream.kind === 'lines') return within('link.stream.lines', checkLines(stream.lines));
  return [
    ...within('link.stream.frame', checkFrame(stream.frame)),
    ...within('link.stream.packet', checkLayout(stream.packet)),
  ];
}

/** Packets of several kinds each have a constant. */
function kindProblems(packets: readonly PacketLayout[], path: string): Problem[] {
  if (packets.length < 2) return [];
  return packets.flatMap(({ fields }, index) =>
    fields.some(({ kind }) => kind === 'constant')
      ? []
      : [
          {
            path: `${path}[${index}].fields`,
            expected: 'a constant that tells it from the other kinds',
            actual: 'none',
          },
        ],
  );
}

function within(path: string, problems: readonly Problem[]): Problem[] {
  return problems.map((problem) => ({ ...problem, path: `${path}.${problem.path}` }));
}
