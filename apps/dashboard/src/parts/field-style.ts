import { css } from 'lit';

/** A field that a file is chosen in. */
export const fileFieldStyle = css`
  input[type='file'] {
    font: inherit;
    inline-size: 100%;
    min-block-size: var(--target);
  }
  input[type='file']::file-selector-button {
    background: transparent;
    border: 1.5px solid var(--ink);
    border-radius: 4px;
    color: inherit;
    font: inherit;
    min-block-size: var(--target);
    padding-inline: var(--gap-3);
  }
`;

/** The box of a field: what is set of it and the same for all kinds. */
export const fieldBox = css`
  background: var(--raised);
  border: 1.5px solid var(--ink);
  border-radius: 4px;
  color: inherit;
  font: inherit;
  font-size: var(--size-2);
  inline-size: 100%;
  min-block-size: var(--target);
  padding-inline: var(--gap-3);
`;

/** Fields that are typed into, each under its label and above its help. */
export const fieldStyle = css`
  label {
    display: block;
    font-weight: 600;
    margin-block-end: var(--gap-1);
  }
  input:not([type='file']),
  select {
    ${fieldBox}
  }
  ${fileFieldStyle}
  input[inputmode] {
    inline-size: 10rem;
  }
`;
