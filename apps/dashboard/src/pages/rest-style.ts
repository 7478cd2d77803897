import { css } from 'lit';

/** The rest between two legs: the time left in large print, the first result between two lines, then going on. */
export const restStyle = css`
  .left {
    font-size: var(--size-5);
    font-weight: 600;
    line-height: 1;
    margin-block: var(--gap-6) var(--gap-2);
  }
  .first {
    border-block: 1px solid var(--hairline);
    margin-block: var(--gap-8);
    max-inline-size: 44rem;
    padding-block: var(--gap-4);
  }
  .first p {
    margin: 0;
  }
  .number {
    font-size: var(--size-4);
    font-weight: 600;
  }
  .go {
    display: grid;
    gap: var(--gap-3);
    max-inline-size: 44rem;
  }
`;
