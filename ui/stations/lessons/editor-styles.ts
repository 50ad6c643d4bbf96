import { css } from 'lit';
import { NARROW } from '../../pieces/page-sizes.ts';

export const editorStyles = css`
  :host { display: block; font-size: 16.5px; line-height: 1.35; }
  h2 { font-size: 23px; font-weight: 780; margin: 22px 0 6px; }
  fieldset { border: 2px solid var(--ink); margin: 14px 0 0; padding: 8px 14px 12px; min-width: 0; }
  legend { font-weight: 740; padding: 0 6px; }
  label { display: block; margin-top: 8px; font-size: 14.5px; color: var(--ink2); }
  input:is([type='text'], [type='number']), textarea, select { font: inherit; font-size: 16.5px; color: var(--ink); background: var(--sheet); border: 2px solid var(--ink); border-radius: 0; width: 100%; padding: 6px 10px; display: block; box-sizing: border-box; min-height: 42px; }
  textarea { min-height: 58px; resize: vertical; }
  .choice { display: grid; grid-template-columns: 26px minmax(0, 1fr); gap: 8px 10px; align-items: start; margin-top: 10px; }
  .choice > b { line-height: 42px; }
  .piece { display: grid; grid-template-columns: minmax(0, 1fr) auto auto; gap: 6px 10px; align-items: center; margin-bottom: 6px; }
  .piece label { margin: 0; white-space: nowrap; display: flex; align-items: center; gap: 6px; min-height: 42px; color: var(--ink); }
  input[type='checkbox'] { width: 22px; height: 22px; margin: 0; accent-color: var(--ink); }
  button { font: inherit; font-weight: 620; color: inherit; background: none; border: 2px solid var(--ink); border-radius: 0; min-height: 42px; padding: 0 14px; cursor: pointer; }
  button.p { background: var(--ink); color: var(--sheet); }
  button:disabled { color: var(--ink2); border-style: dashed; cursor: default; }
  :is(button, input, textarea, select, summary):focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .row { display: flex; flex-wrap: wrap; gap: 8px 10px; margin-top: 10px; }
  .small button { min-height: 38px; font-size: 15px; padding: 0 10px; border-width: 1px; }
  .done { list-style: none; margin: 4px 0 0; padding: 0; }
  .done li { display: flex; gap: 10px; align-items: center; justify-content: space-between; border-top: 1px solid var(--rule); overflow-wrap: anywhere; }
  .done button { min-height: 34px; font-size: 14.5px; padding: 0 8px; border-width: 1px; }
  .figures { list-style: none; margin: 4px 0 0; padding: 0; }
  .figures li { display: flex; flex-wrap: wrap; gap: 6px 10px; align-items: center; border-top: 1px solid var(--rule); padding: 4px 0; }
  .figures span { flex: 1 1 180px; }
  .told { display: block; font-size: 14.5px; color: var(--ink2); margin-top: 2px; }
  details { margin-top: 10px; border-top: 1px solid var(--rule); }
  summary { min-height: 40px; line-height: 40px; font-weight: 620; cursor: pointer; }
  takeup-picker { margin-top: 10px; }
  .found { border: 2px solid var(--ink); padding: 8px 14px; margin-top: 12px; font-size: 15.5px; }
  .found ul { list-style: none; margin: 4px 0 0; padding: 0; }
  .found li button { border: 0; border-top: 1px solid var(--rule); width: 100%; text-align: left; padding: 4px 0; font-weight: 520; overflow-wrap: anywhere; text-decoration: underline; text-underline-offset: 3px; }
  .untold { border-left: 6px solid var(--ink); padding: 2px 0 2px 10px; margin-top: 8px; }
  p { margin: 4px 0; }
  @media ${NARROW} {
    fieldset { padding: 8px 10px 12px; }
    .piece { grid-template-columns: minmax(0, 1fr) auto; }
    .piece input[type='text'] { grid-column: 1 / -1; }
    button, .small button { min-height: 48px; }
    textarea { min-height: 108px; }
    .row > button { flex: 1 1 auto; }
    .done button { min-height: 44px; }
    summary { min-height: 48px; line-height: 1.3; display: list-item; padding-top: 12px; box-sizing: border-box; }
  }
`;
