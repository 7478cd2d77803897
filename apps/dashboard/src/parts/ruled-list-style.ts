import { css } from 'lit';

/** A list without bullets; a hairline parts each entry from the one before. */
export const ruledListStyle = css`
  ul {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  li {
    border-block-start: 1px solid var(--hairline);
  }
`;
