import { css } from 'lit';

/** A test looked at closely: a fold with its line, and inside it pictures, lists and files one below the other. */
export const detailStyle = css`
  :host {
    border-block-start: 1px solid var(--hairline);
  }
  summary {
    align-items: center;
    cursor: pointer;
    display: flex;
    font-size: var(--size-2);
    gap: var(--gap-2);
    min-block-size: var(--target);
  }
  summary::before {
    content: '+' / '';
    inline-size: 1ch;
  }
  details[open] > summary::before {
    content: '–' / '';
  }
  .inside {
    display: grid;
    gap: var(--gap-6);
    grid-template-columns: minmax(0, 1fr);
    padding-block: var(--gap-3) var(--gap-6);
  }
  .inside > * {
    margin: 0;
  }
  h3 {
    font-size: var(--size-2);
  }
  button {
    font-size: var(--size-1);
  }
  .provenance {
    margin-block: var(--gap-3) 0;
    overflow-wrap: anywhere;
  }
`;
