/**
 * Texts of the lessons that come with the page, in the language that it speaks: as files, put here before the library of
 * lessons is loaded. English stands in the lessons themselves.
 */

let files: readonly unknown[] = [];

/** From now on the library tells its lessons by these texts. */
export function tellLessonsBy(texts: readonly unknown[]): void {
  files = texts;
}

/** What was put here. */
export const lessonTexts = (): readonly unknown[] => files;
