import { html, nothing, type TemplateResult } from 'lit';
import type { SheetPart } from '../sheet/sheet.ts';
import './data-code.ts';
import { drawnPicture } from './drawn-picture.ts';

function table({ caption, head, rows }: Extract<SheetPart, { readonly kind: 'table' }>): TemplateResult {
  return html`<table>
    <caption>
      ${caption}
    </caption>
    <thead>
      <tr>
        ${head.map((cell) => html`<th scope="col">${cell}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        ([name, ...cells]) =>
          html`<tr>
            <th scope="row">${name}</th>
            ${cells.map((cell) => html`<td>${cell}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`;
}

function partElements(part: SheetPart): TemplateResult {
  switch (part.kind) {
    case 'title':
      return html`<h1 tabindex="-1" aria-describedby=${part.describedBy ?? nothing}>${part.text}</h1>`;
    case 'heading':
      return html`<h2>${part.text}</h2>`;
    case 'subheading':
      return html`<h3>${part.text}</h3>`;
    case 'text':
      return html`<p class=${part.of ?? nothing}>${part.text}</p>`;
    case 'list':
      return html`<ul>
        ${part.items.map((item) => html`<li>${item}</li>`)}
      </ul>`;
    case 'figure':
      return html`<figure>
        <figcaption>${part.caption}</figcaption>
        ${drawnPicture(part.picture)} ${part.below === undefined ? nothing : html`<p class="quiet">${part.below}</p>`}
      </figure>`;
    case 'table':
      return table(part);
    case 'code':
      return html`<data-code .text=${part.text} label=${part.label} too-long=${part.tooLong}></data-code>`;
    case 'section':
      return html`<section class=${part.of} id=${part.id ?? nothing}>${sheetElements(part.parts)}</section>`;
  }
}

/** The parts of a sheet as elements of a page. */
export function sheetElements(parts: readonly SheetPart[]): readonly TemplateResult[] {
  return parts.map(partElements);
}
