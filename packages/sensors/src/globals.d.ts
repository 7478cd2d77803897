/** The one platform class this package uses; the same in browsers and Node. */
declare class TextDecoder {
  constructor(label?: 'utf-8', options?: { fatal?: boolean; ignoreBOM?: boolean });
  decode(input?: Uint8Array): string;
}
