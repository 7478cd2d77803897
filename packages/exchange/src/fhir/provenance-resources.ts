import type { StudyTrial } from '../study.ts';
import { ownCode, referenceTo, uuidOf } from './codes.ts';

/** Software as a thing that others refer to: `surae 0.1.0` is its name and its version. */
export function softwareDevice(software: string): fhir4.Device {
  const [name = software, version] = software.split(' ');
  return {
    resourceType: 'Device',
    id: uuidOf('software', software),
    deviceName: [{ name, type: 'model-name' }],
    ...(version === undefined ? {} : { version: [{ value: version }] }),
  };
}

interface Made {
  readonly person: string;
  readonly software: string;
  readonly activity: fhir4.CodeableConcept;
  readonly targets: readonly fhir4.Reference[];
  readonly writtenOn: string;
}

/** The standard asks for an instant, and only a day or a year is told: noon stands for it, and the words say so. */
function instantOf(writtenOn: string): string {
  const day = writtenOn.length === 4 ? `${writtenOn}-01-01` : writtenOn;
  return `${day}T12:00:00Z`;
}

function provenanceOf({ person, software, activity, targets, writtenOn }: Made): fhir4.Provenance {
  return {
    resourceType: 'Provenance',
    id: uuidOf('provenance', JSON.stringify([person, activity.coding?.[0]?.code, software])),
    target: [...targets],
    recorded: instantOf(writtenOn),
    activity,
    agent: [{ type: ownCode('software', 'software that did it'), who: referenceTo('software', software) }],
  };
}

/**
 * What made what: for each version of the software the trials whose results it made, and for the one that writes everything that
 * stands in the bundle.
 *
 * @param resources - ids of everything else in the bundle
 * @param writtenOn - ISO 8601 date or year of writing
 */
export function provenanceResources(
  person: string,
  trials: readonly StudyTrial[],
  resources: readonly string[],
  { software, writtenOn }: { readonly software: string; readonly writtenOn: string },
): { readonly devices: fhir4.Device[]; readonly provenances: fhir4.Provenance[] } {
  const makers = new Map<string, fhir4.Reference[]>();
  for (const trial of trials) {
    if (trial.result === null || trial.software === null) continue;
    const made = makers.get(trial.software) ?? [];
    makers.set(trial.software, [...made, referenceTo('trial', trial.key)]);
  }
  const told = writtenOn.length === 4 ? 'year' : 'day';
  const when = `; recorded here at writing, of which the ${told} alone is told`;
  const assessed = ownCode('assessed', `assessed from a recording${when}`);
  const written = ownCode('written', `written into this bundle from the record${when}`);
  return {
    devices: [...new Set([software, ...makers.keys()])].sort().map(softwareDevice),
    provenances: [
      ...[...makers].map(([maker, targets]) =>
        provenanceOf({ person, software: maker, activity: assessed, targets, writtenOn }),
      ),
      provenanceOf({
        person,
        software,
        activity: written,
        targets: resources.map((id) => ({ reference: `urn:uuid:${id}` })),
        writtenOn,
      }),
    ],
  };
}
