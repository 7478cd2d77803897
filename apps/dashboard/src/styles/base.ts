import { css } from 'lit';

/** What every page and part shares: type, targets, focus. Sides are told apart by shape and pattern as well as colour. */
export const base = css`
  :host {
    display: block;
  }
  * {
    box-sizing: border-box;
  }
  h1,
  h2,
  h3 {
    font-weight: 600;
    line-height: 1.15;
    margin-block: 0 var(--gap-3);
    text-wrap: balance;
  }
  h1 {
    font-size: var(--size-4);
  }
  h2 {
    font-size: var(--size-3);
  }
  h3 {
    font-size: var(--size-2);
  }
  p {
    margin-block: 0 var(--gap-3);
    max-inline-size: var(--line);
  }
  /* a long word breaks before it pushes the page wider than the screen; columns of tables keep their words */
  h1,
  h2,
  h3,
  p,
  li,
  label,
  legend,
  summary,
  small,
  button,
  .button {
    overflow-wrap: anywhere;
  }
  .quiet {
    color: var(--ink-quiet);
  }
  .voice {
    color: var(--voice);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  button,
  .button {
    align-items: center;
    background: transparent;
    border: 1.5px solid var(--ink);
    border-radius: 4px;
    color: inherit;
    cursor: pointer;
    display: inline-flex;
    font: inherit;
    font-size: var(--size-2);
    gap: var(--gap-2);
    justify-content: center;
    min-block-size: var(--target);
    min-inline-size: var(--target);
    padding: var(--gap-2) var(--gap-4);
    text-decoration: none;
  }
  button.main {
    background: var(--ink);
    color: var(--paper);
    inline-size: var(--thumb-size, 100%);
    margin-inline: var(--thumb-margin, 0);
    min-block-size: var(--target-main);
  }
  button.plain {
    border-color: transparent;
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
  button[disabled] {
    border-style: dashed;
    color: var(--ink-quiet);
    background: transparent;
    cursor: not-allowed;
  }
  button[aria-pressed='true'],
  button[aria-checked='true'] {
    background: var(--ink);
    color: var(--paper);
  }
  :focus-visible {
    outline: 3px solid var(--voice);
    outline-offset: 3px;
  }
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-3);
  }
  .column {
    display: grid;
    gap: var(--gap-4);
    max-inline-size: 44rem;
  }
  .rule {
    border: 0;
    border-block-start: 1px solid var(--hairline);
    margin-block: var(--gap-6);
  }
  /* the leg keeps together where a title is broken into lines */
  h1 > .side {
    display: inline-block;
  }
  .side::before {
    block-size: 0.7em;
    border: 0.16em solid var(--left);
    border-radius: 50%;
    content: '';
    display: inline-block;
    inline-size: 0.7em;
    margin-inline-end: 0.4em;
  }
  .side[data-side='right']::before {
    background: var(--right);
    border-color: var(--right);
    border-radius: 0;
    rotate: 45deg;
    scale: 0.8;
  }
  .side[data-side='left'] {
    color: var(--left);
  }
  .side[data-side='right'] {
    color: var(--right);
  }
  .unseen {
    block-size: 1px;
    clip-path: inset(50%);
    inline-size: 1px;
    overflow: hidden;
    position: absolute;
    white-space: nowrap;
  }
`;
