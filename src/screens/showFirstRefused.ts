/** Brings the first marked question into sight, and the fingers or keys to it. */
export function showFirstRefused(): void {
  queueMicrotask(() => {
    const field = document.querySelector('[data-refused]');
    field?.scrollIntoView({ block: 'center' });
    field?.querySelector<HTMLElement>(':is(input,button)')?.focus({ preventScroll: true });
  });
}
