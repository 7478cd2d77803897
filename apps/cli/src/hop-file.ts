import { createHash } from 'node:crypto';
import { assessHops, canonicalJson, type HopPlacement, type HopReport, hopDefaults, InputError } from '@surae/analysis';
import { RecordError, readRecording } from '@surae/records';
import { HOP_PROTOCOLS, type HopProtocol } from '@surae/shared';
import { hopEntryCells } from './hop-entry-cells.ts';
import type { Io } from './io.ts';
import { readFault } from './read-fault.ts';
import { toldBy } from './told.ts';
import type { GivenAbout, WorkItem } from './work-list.ts';

/** A recording of hops that was assessed. */
export interface AssessedHops {
  readonly status: 'ok';
  readonly item: WorkItem;
  readonly sha256: string;
  readonly settingsHash: string;
  readonly protocolHash: string;
  readonly protocol: HopProtocol;
  readonly report: HopReport;
}

/** A recording of hops, or a row of a manifest, that could not be assessed, and why. */
export interface RefusedHops {
  readonly status: 'refused';
  readonly item: WorkItem;
  /** null when the bytes could not be read */
  readonly sha256: string | null;
  readonly reason: string;
}

/** Whether the row asks for hops: by its test, or by its protocol. */
export function asksForHops({ test, protocol }: Pick<GivenAbout, 'test' | 'protocol'>): boolean {
  return test === 'hop-series' || (test === undefined && HOP_PROTOCOLS.some(({ id }) => id === protocol));
}

function sha256(text: string | Uint8Array): string {
  return createHash('sha256').update(text).digest('hex');
}

function settingsHash(fingerprint: string): string {
  // the settings are plain JSON; the round trip says so to the compiler
  const plain = JSON.parse(JSON.stringify(hopDefaults)) as Parameters<typeof canonicalJson>[0];
  return sha256(canonicalJson({ settings: plain, protocol: fingerprint }));
}

function protocolOf(id: string | undefined): HopProtocol | string {
  if (id === undefined) return HOP_PROTOCOLS[0]!;
  const known = HOP_PROTOCOLS.map((protocol) => protocol.id).join(', ');
  return (
    HOP_PROTOCOLS.find((protocol) => protocol.id === id) ??
    `there is no protocol "${id}" of the test hop-series: expected ${known}`
  );
}

type HopChoice = { readonly placement: HopPlacement } | { readonly refusal: string };

function placementOf(declared: GivenAbout['placement'], quantities: ReadonlySet<string>): HopChoice {
  if (declared === 'platform' || declared === 'foot') return { placement: declared };
  if (declared !== undefined) {
    return {
      refusal: `hops are measured on a platform or by a sensor on the foot, not at the placement ${declared}: contact and flight are not seen there`,
    };
  }
  if (quantities.has('force')) return { placement: 'platform' };
  return {
    refusal: 'say where the sensor was with --placement, or in the column placement of the manifest (platform or foot)',
  };
}

/** One recording of hops from its bytes to its report. Whatever goes wrong becomes a refusal of this file alone. */
export async function assessHopFile(item: WorkItem, io: Pick<Io, 'readFile'>): Promise<AssessedHops | RefusedHops> {
  const refused = (reason: string, hash: string | null): RefusedHops => ({
    status: 'refused',
    item,
    sha256: hash,
    reason,
  });
  if (item.refusal !== undefined) return refused(item.refusal, null);
  const { about, file } = item;
  const protocol = protocolOf(about.protocol);
  if (typeof protocol === 'string') return refused(`${file}: ${protocol}`, null);
  let bytes: Uint8Array;
  try {
    bytes = await io.readFile(item.path);
  } catch (error) {
    return refused(`${file}: ${readFault(error)}`, null);
  }
  try {
    const recording = readRecording(bytes, { file });
    const hash = recording.source.sha256;
    const quantities = new Set(recording.groups.flatMap((group) => group.channels.map(({ quantity }) => quantity)));
    const choice = placementOf(about.placement, quantities);
    if ('refusal' in choice) return refused(`${file}: ${choice.refusal}`, hash);
    const { placement } = choice;
    const endReason = toldBy(item.carried).end_reason;
    const report = assessHops(
      recording,
      {
        placement,
        protocol,
        ...(about.side === undefined ? {} : { side: about.side }),
        ...(about.bodyMassKg === undefined ? {} : { bodyMassKg: about.bodyMassKg }),
        ...(endReason === null ? {} : { endReason }),
        entry: hopEntryCells(item.carried),
      },
      hopDefaults,
    );
    return {
      status: 'ok',
      item,
      sha256: hash,
      settingsHash: settingsHash(report.protocol.fingerprint),
      protocolHash: sha256(report.protocol.fingerprint),
      protocol,
      report,
    };
  } catch (error) {
    if (error instanceof RecordError) return refused(error.message, sha256(bytes));
    if (error instanceof InputError) return refused(`${file}: ${error.message}`, sha256(bytes));
    const message = error instanceof Error ? error.message : String(error);
    return refused(`${file}: internal fault, please report it: ${message}`, sha256(bytes));
  }
}
