import { css } from 'lit';

/** How the form of the line of time is set: one question below the other. */
export const logFormStyle = css`
  form {
    display: grid;
    gap: var(--gap-6);
    grid-template-columns: minmax(0, 1fr);
    max-inline-size: 56rem;
  }
  textarea {
    background: var(--raised);
    border: 1.5px solid var(--ink);
    border-radius: 4px;
    color: inherit;
    font: inherit;
    inline-size: 100%;
    max-inline-size: 44rem;
    min-block-size: 6rem;
    padding: var(--gap-3);
  }
  .what {
    max-inline-size: 32rem;
  }
  .numbers {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-4);
  }
  .problem {
    margin-block: var(--gap-1) 0;
  }
  .end {
    display: grid;
    gap: var(--gap-3);
    max-inline-size: 44rem;
  }
`;
