import { EPISODE_WORDS } from '@surae/shared';
import { css, html, type TemplateResult } from 'lit';

/** How the drawing of the foot is set: one weight of line, the measure in the voice of the tool. */
export const leverDrawingStyle = css`
  .lever {
    direction: ltr;
    margin: 0;
    max-inline-size: 26rem;
  }
  .lever svg {
    block-size: auto;
    display: block;
    fill: none;
    inline-size: 100%;
    stroke: var(--ink);
    stroke-linecap: round;
    stroke-linejoin: round;
    stroke-width: 2;
  }
  .lever .measure {
    stroke: var(--voice);
  }
  .lever text {
    fill: var(--ink);
    font-size: 14px;
    stroke: none;
    text-anchor: middle;
  }
  .lever .measure-text {
    fill: var(--voice);
    font-weight: 600;
  }
  .lever figcaption {
    margin-block-start: var(--gap-2);
  }
`;

/** How the heel lever is measured: a foot from its inner side, and the straight line along its sole. */
export function leverDrawing(): TemplateResult {
  const words = EPISODE_WORDS;
  return html`<figure class="lever">
    <svg viewBox="0 0 340 212" role="img" aria-label=${words['lever-picture'].text}>
      <path
        d="M118 10C116 42 108 62 92 78C72 92 56 100 47 116C40 130 44 141 58 142C84 143 98 133 130 133C168 133 196 140 226 142C252 143 292 144 306 139C316 135 314 124 303 120C276 111 246 104 220 86C198 70 186 46 184 10"
      />
      <path d="M293 121c6 1 10 4 12 8M139 74a13 13 0 1 0 26 0a13 13 0 1 0-26 0" />
      <path d="M14 143H326" />
      <path class="measure" d="M58 143v36M242 143v36M58 171H242M67 165l-9 6 9 6M233 165l9 6-9 6" />
      <text class="measure-text" x="150" y="164">${words['lever-label'].text}</text>
      <text x="58" y="200">${words['lever-to'].text}</text>
      <text x="242" y="200">${words['lever-from'].text}</text>
    </svg>
    <figcaption>${words['lever-how'].text}</figcaption>
  </figure>`;
}
