import { look } from '../record/view.ts';
import type { Session } from '../session.ts';
import type { ThemeName } from '../theme.ts';

/** Light or dark as the device is set, until the reader says otherwise: that is kept on the device. */
const KEY = 'takeup-view-chosen';

const DARK = '(prefers-color-scheme: dark)';

/**
 * @param linked a link was opened: one that shows the dark view keeps it
 * @param store null where there is none: a choice is then remembered until the page is left
 */
export function followDevice(
  session: Session,
  linked: boolean,
  store: Pick<Storage, 'getItem' | 'setItem'> | null,
): void {
  const dark = matchMedia(DARK);
  const wished = (): ThemeName => (dark.matches ? 'board' : 'sheet');
  let chosen = store?.getItem(KEY) === 'yes' || (linked && session.theme === 'board');
  let last = session.theme;
  const follow = (): void => {
    if (chosen || session.theme === wished()) return;
    last = wished();
    // It is no step of the reader's, and none is to bring the other view back.
    session.fromOutside((m) => look.does(m, wished()));
  };
  session.addEventListener('change', () => {
    if (session.theme === last) return;
    last = session.theme;
    chosen = true;
    try {
      store?.setItem(KEY, 'yes');
    } catch {
      // A storage that is full or shut: it lasts as long as the page.
    }
  });
  dark.addEventListener('change', follow);
  follow();
}
