import { css } from 'lit';

/** What opens and closes what is folded away: a line of text with a target of its own height. */
export const foldStyle = css`
  summary {
    align-content: center;
    cursor: pointer;
    min-block-size: var(--target);
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
`;
