import { assessHops, type HopPlacement, type HopReport } from '@surae/analysis';
import type { Recording } from '@surae/records';
import { HOP_PROTOCOLS, type HopProtocol } from '@surae/shared';
import type { GivenSettings } from './given-settings.ts';
import { hopEntryCells } from './hop-entry-cells.ts';
import { type Refused, reasonOf, refused } from './refused.ts';
import { fingerprintHash, settingsHash } from './settings-hash.ts';
import { hashOf, recordingOf, type Source } from './source-of.ts';
import { toldBy } from './told.ts';
import type { GivenAbout, WorkItem } from './work-list.ts';

/** A recording of hops that was assessed. */
export interface AssessedHops {
  readonly status: 'ok';
  readonly test: 'hop-series';
  readonly item: WorkItem;
  readonly sha256: string;
  readonly settingsHash: string;
  readonly protocolHash: string;
  readonly protocol: HopProtocol;
  readonly report: HopReport;
  readonly recording: Pick<Recording, 'unusedColumns' | 'deviceNotes'>;
  /** an earlier file of the list with the very same bytes */
  readonly sameAs?: string;
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
export function assessHopFile(item: WorkItem, source: Source, given: GivenSettings): AssessedHops | Refused {
  const { about, file } = item;
  const no = (reason: string): Refused => refused(item, `${file}: ${reason}`, hashOf(source));
  const found = protocolOf(about.protocol);
  if (typeof found === 'string') return no(found);
  const protocol = given.adjust(found);
  try {
    const recording = recordingOf(source, file);
    const quantities = new Set(recording.groups.flatMap((group) => group.channels.map(({ quantity }) => quantity)));
    const choice = placementOf(about.placement, quantities);
    if ('refusal' in choice) return no(choice.refusal);
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
      given.settings.hops,
    );
    return {
      status: 'ok',
      test: 'hop-series',
      item,
      sha256: recording.source.sha256,
      settingsHash: settingsHash(given.settings, report.protocol.fingerprint),
      protocolHash: fingerprintHash(report.protocol.fingerprint),
      protocol,
      report,
      recording: { unusedColumns: recording.unusedColumns, deviceNotes: recording.deviceNotes },
    };
  } catch (error) {
    return refused(item, reasonOf(item, error), hashOf(source));
  }
}
