import { css } from 'lit';

/** How a test ended: the questions one below the other, what a stop asks for in large print, then accepting it. */
export const endingStyle = css`
  .parts {
    display: grid;
    gap: var(--gap-8);
    margin-block: var(--gap-6);
    max-inline-size: 56rem;
  }
  .note {
    margin-block: var(--gap-3) 0;
  }
  .stop {
    border-block: 3px solid var(--ink);
    font-size: var(--size-4);
    font-weight: 600;
    line-height: 1.25;
    margin-block: var(--gap-6) 0;
    padding: var(--gap-4) 0 var(--gap-4) 1.5em;
  }
  .stop li + li {
    margin-block-start: var(--gap-3);
  }
  .go {
    display: grid;
    gap: var(--gap-3);
    max-inline-size: 44rem;
  }
`;
