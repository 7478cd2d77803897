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

/** Fields that are typed into, each under its label and above its help. */
export const fieldStyle = css`
  label {
    display: block;
    font-weight: 600;
    margin-block-end: var(--gap-1);
  }
  input:not([type='file']),
  select {
    background: var(--raised);
    border: 1.5px solid var(--ink);
    border-radius: 4px;
    color: inherit;
    font: inherit;
    font-size: var(--size-2);
    inline-size: 100%;
    min-block-size: var(--target);
    padding-inline: var(--gap-3);
  }
  ${fileFieldStyle}
  input[inputmode] {
    inline-size: 10rem;
  }
`;
