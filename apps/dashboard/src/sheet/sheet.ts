import type { Picture } from '../legs/picture.ts';

/** One part of a sheet that is shown on a page, printed, and saved as a file: what it says, and never how it is made. */
export type SheetPart =
  | { readonly kind: 'title'; readonly text: string; readonly describedBy?: string }
  | { readonly kind: 'heading' | 'subheading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly of?: 'lead' | 'said' | 'quiet' | 'voice' }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'figure'; readonly picture: Picture; readonly caption: string; readonly below?: string }
  | {
      readonly kind: 'table';
      readonly caption: string;
      readonly head: readonly string[];
      /** the first cell of a row names it */
      readonly rows: readonly (readonly string[])[];
    }
  /** a text for a camera; the words beside it where it is too much for one */
  | { readonly kind: 'code'; readonly text: string; readonly label: string; readonly tooLong: string }
  | {
      readonly kind: 'section';
      readonly of: string;
      readonly id?: string;
      readonly parts: readonly SheetPart[];
    };

/** A figure, or nothing where there is nothing to draw. */
export function figurePart(picture: Picture | null, caption: string, below?: string): readonly SheetPart[] {
  if (picture === null) return [];
  return [{ kind: 'figure', picture, caption, ...(below === undefined ? {} : { below }) }];
}

/** Every text of a sheet in the order in which it is read, but those inside pictures and codes. */
export function sheetTexts(parts: readonly SheetPart[]): readonly string[] {
  return parts.flatMap((part): readonly string[] => {
    switch (part.kind) {
      case 'title':
      case 'heading':
      case 'subheading':
      case 'text':
        return [part.text];
      case 'list':
        return part.items;
      case 'figure':
        return [part.caption, ...(part.below === undefined ? [] : [part.below])];
      case 'table':
        return [part.caption, ...part.head, ...part.rows.flat()];
      case 'code':
        return [];
      case 'section':
        return sheetTexts(part.parts);
    }
  });
}
