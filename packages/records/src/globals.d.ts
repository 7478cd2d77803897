/** The platform classes this package uses; the same in browsers and Node. */
declare class TextDecoder {
  constructor(
    label?: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252',
    options?: { fatal?: boolean; ignoreBOM?: boolean },
  );
  decode(input?: Uint8Array, options?: { stream?: boolean }): string;
}

declare class TextEncoder {
  encode(text: string): Uint8Array<ArrayBuffer>;
}
