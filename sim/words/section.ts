/** All sections of one language: by the name each is exported under, or in what is built by its place in the file. */
export type Sections = Readonly<Record<string | number, unknown>>;

let spoken: Sections | null = null;

/**
 * From now on every section that is loaded has these texts. Before the first of them is: a text is
 * taken where a module is loaded, and does not change under a page that stands.
 */
export function speak(sections: Sections | null): void {
  spoken = sections;
}

/**
 * The texts of one part of the page: English as it is written here, or those of the language that is spoken.
 *
 * @param name as it is exported
 */
export const section = <Texts extends object>(name: string | number, english: Texts): Texts =>
  (spoken?.[name] as Texts | undefined) ?? english;
