import { css } from 'lit';

/** Sections one below the other, each under a hairline. */
export const ruledSectionStyle = css`
  section {
    border-block-start: 1px solid var(--hairline);
    margin-block-start: var(--gap-6);
    padding-block-start: var(--gap-4);
  }
`;
