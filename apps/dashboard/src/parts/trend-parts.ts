import { html, nothing, type TemplateResult } from 'lit';
import type { Picture } from '../legs/picture.ts';
import { drawnPicture } from './drawn-picture.ts';

/** The picture of a course with what its band means; nothing where there is nothing to draw. */
export function trendFigure(picture: Picture | null, note: string): TemplateResult | typeof nothing {
  if (picture === null) return nothing;
  return html`<figure>
    ${drawnPicture(picture)}
    <p class="quiet">${note}</p>
  </figure>`;
}

/** The same as a table behind a fold: what a row is of, then its cells, the last of them in quiet ink. */
export function trendTable(
  title: string,
  heads: readonly string[],
  rows: readonly (readonly [string, ...string[]])[],
): TemplateResult {
  return html`<details>
    <summary>${title}</summary>
    <table>
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col" class="quiet">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([of, ...cells]) =>
            html`<tr>
              <th scope="row">${of}</th>
              ${cells.map((cell, at) => html`<td class=${at === cells.length - 1 ? 'quiet' : ''}>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </details>`;
}

/** What else is to be known, behind a fold. */
export function trendRest(title: string, lines: readonly string[]): TemplateResult {
  return html`<details>
    <summary>${title}</summary>
    <ul>
      ${lines.map((line) => html`<li>${line}</li>`)}
    </ul>
  </details>`;
}
