/** The part of papaparse that is used here; its published types would bring those of Node into a pure package. */
interface PapaError {
  readonly type: string;
  readonly code: string;
  readonly message: string;
  readonly row?: number;
  readonly index?: number;
}

interface PapaStep {
  readonly data: string[];
  readonly errors: readonly PapaError[];
  readonly meta: { readonly cursor: number };
}

interface PapaParser {
  abort(): void;
}

interface PapaConfig {
  readonly delimiter: string;
  readonly newline: '\n';
  readonly comments: '#';
  readonly header: false;
  readonly dynamicTyping: false;
  readonly step: (result: PapaStep, parser: PapaParser) => void;
}

declare const Papa: { parse(text: string, config: PapaConfig): void };

export { Papa as default };
