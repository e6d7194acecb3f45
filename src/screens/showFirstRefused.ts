/** Brings the first marked question into sight, and the fingers or keys to it; on a sheet, by its line. */
export function showFirstRefused(): void {
  queueMicrotask(() => {
    const field = document.querySelector<HTMLElement>('[data-refused]');
    if (field?.dataset.ledger !== undefined) field.click();
    field?.scrollIntoView({ block: 'center' });
    field?.querySelector<HTMLElement>(':is(input,button)')?.focus({ preventScroll: true });
  });
}
