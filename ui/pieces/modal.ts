/**
 * Opens a dialog over the page, unless it is open, and tells it to whoever keeps the browser's history
 * (ui/record/way.ts), so that Back closes it first.
 */
export function openModal(dialog: HTMLDialogElement | null | undefined): void {
  if (!dialog || dialog.open) return;
  dialog.showModal();
  dialog.dispatchEvent(
    new CustomEvent('takeup-modal', {
      bubbles: true,
      composed: true,
      detail: dialog,
    }),
  );
}

/**
 * A dialog that has just been closed has the focus until the next picture: a key that comes before is the page's, and
 * whoever listens on the dialog lets it go on.
 */
export const stillOpen = (e: Event): boolean => (e.currentTarget as HTMLDialogElement).open;
