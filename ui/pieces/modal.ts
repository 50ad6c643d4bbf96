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
