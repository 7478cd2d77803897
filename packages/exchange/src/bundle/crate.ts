import { mediaType } from './export-file.ts';
import { jsonText } from './json-text.ts';

/** What the metadata of the whole are made from. */
export interface CrateRequest {
  readonly name: string;
  readonly description: string;
  /** ISO 8601 date of writing; a year alone where a day would tell too much */
  readonly writtenOn: string;
  readonly software: string;
  readonly files: readonly { readonly name: string; readonly byteLength: number; readonly description: string }[];
}

/**
 * Metadata of a bundle by RO-Crate 1.1, as JSON-LD. Its terms (context, descriptor, root with name, description,
 * datePublished and license, files with encodingFormat and contentSize, action with instrument and result) are from memory.
 */
export function crateMetadata({ name, description, writtenOn, software, files }: CrateRequest): string {
  const [program = software, version = ''] = software.split(' ');
  const root = { '@id': './' };
  return jsonText({
    '@context': 'https://w3id.org/ro/crate/1.1/context',
    '@graph': [
      {
        '@id': 'ro-crate-metadata.json',
        '@type': 'CreativeWork',
        conformsTo: { '@id': 'https://w3id.org/ro/crate/1.1' },
        about: root,
      },
      {
        ...root,
        '@type': 'Dataset',
        name,
        description,
        datePublished: writtenOn,
        license: { '@id': '#no-licence-stated' },
        hasPart: files.map((file) => ({ '@id': file.name })),
        mentions: { '@id': '#export' },
      },
      ...files.map((file) => ({
        '@id': file.name,
        '@type': 'File',
        name: file.name,
        description: file.description,
        encodingFormat: mediaType(file.name),
        contentSize: String(file.byteLength),
      })),
      {
        '@id': '#no-licence-stated',
        '@type': 'CreativeWork',
        name: 'No licence is stated',
        description: 'Whoever hands the data on says under which terms, within the consent of the people in them.',
      },
      { '@id': '#software', '@type': 'SoftwareApplication', name: program, softwareVersion: version },
      {
        '@id': '#export',
        '@type': 'CreateAction',
        name: 'Export from the record',
        instrument: { '@id': '#software' },
        result: root,
      },
    ],
  });
}
