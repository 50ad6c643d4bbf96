/**
 * What the element of an embedded view is called for who hears the page. By the language that its attribute asks for:
 * it stands alone in a page of somebody else, where no language was chosen before its script runs.
 */
export const embedLabel = {
  en: 'A drum brake that computes',
  de: 'Eine Trommelbremse, die rechnet',
} as const;
