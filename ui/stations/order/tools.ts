import { html, svg, type TemplateResult } from 'lit';
import type { Tool } from './step.ts';

/** Tools as plain outlines, so that they are known when seen. */
const line = (d: string) => svg`<path d=${d} class="tl" />`;
const body = (d: string) => svg`<path d=${d} class="tb" />`;

const pictures: Readonly<Record<Tool, TemplateResult>> = {
  puller: svg`${line('M8 66H34')}${line('M34 66l3-7l5 14l5-14l5 14l5-14l5 14l5-14l3 7H92')}${line('M92 66q6 0 6 6t-6 6')}${body('M98 84q-14-2-10-16L104 14q2-8 10-8h16v9h-14L104 62q-1 5 2 8l8-2 2 10q-6 6-18 6z')}`,
  cup: svg`${body('M58 10h12v34l14 8v10H44V52l14-8z')}${line('M64 62v20')}${svg`<ellipse cx="64" cy="84" rx="26" ry="8" class="tb" />`}${line('M54 84h20')}${line('M104 40a30 30 0 0 1 4 26m0 0l-9-4m9 4l6-8')}`,
  clamp: svg`${body('M20 40h88v14H20z')}${body('M8 34h12v26H8zM108 34h12v26h-12z')}${line('M8 30V16H120V30')}${line('M64 16V6M54 6h20')}`,
  hook: svg`${line('M10 24H84q14 0 14 12t-12 10')}${body('M6 18h22v12H6z')}${body('M10 66h70l36 6v4l-36 6H10z')}`,
  pliers: svg`${body('M12 20l52 26l44-26l8 6l-46 30l46 24l-8 8l-48-26l-50 28l-6-9l44-26l-42-22z')}`,
  hands: svg`${body('M30 84V48q-2-8 4-8t7 8V22q0-7 6-7t6 7V18q0-7 6-7t6 7v6q0-6 6-6t6 7v8q0-6 5-6t5 6v28q0 20-18 23z')}${line('M53 24v22M65 24v20M77 30v16')}`,
  wash: svg`${body('M14 74h100l-8 14H22z')}${line('M30 14h34v12')}${line('M64 30v8M56 34l-6 8M72 34l6 8M64 46v8M52 50l-6 8M76 50l6 8')}`,
  camera: svg`${body('M14 26h24l8-12h36l8 12h24v52H14z')}${svg`<circle cx="64" cy="52" r="17" class="tb" /><circle cx="64" cy="52" r="8" class="tl" />`}`,
  gauge: svg`${body('M10 40h108v12H10z')}${body('M14 52h12v30H18zM90 52h12v30h-8z')}${line('M32 40v-7M44 40v-5M56 40v-7M68 40v-5M80 40v-7M92 40v-5')}`,
  pedal: svg`${body('M70 12l14 4l-22 46l-14-6z')}${body('M30 54l38 18l-8 14l-38-18z')}${line('M96 70a30 30 0 0 0-2-34m0 0l-6 7m6-7l9 3')}`,
  stands: svg`${body('M30 84L42 34h12l12 50h-9l-2-10H41l-2 10z')}${body('M40 34v-12h16v12z')}${body('M84 84h34l-24-24z')}${line('M6 86h118')}`,
};

/** @param says in a few words, what it is */
export const toolPicture = (tool: Tool, says: string): TemplateResult =>
  html`<svg class="or-tool" viewBox="0 0 128 96" role="img" aria-label=${says}>${pictures[tool]}</svg>`;
