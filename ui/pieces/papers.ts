/** Sizes of paper, mm: ISO 216, and ANSI/ASME Y14.1 (8.5 × 11 in). */
export const PAPERS = {
  A4: { width: 210, height: 297 },
  Letter: { width: 215.9, height: 279.4 },
} as const;

export type PaperSize = keyof typeof PAPERS;
export const paperSizes = Object.keys(PAPERS) as readonly PaperSize[];
