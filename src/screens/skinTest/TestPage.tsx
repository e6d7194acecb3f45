import type { ComponentProps } from 'solid-js';
import { PlainPage } from '../../parts/PlainPage';

/** A page about skin tests: what, whose, its content, and its actions with the primary one last. */
export function TestPage(props: Omit<ComponentProps<typeof PlainPage>, 'step'>) {
  return <PlainPage step="skinTests" {...props} />;
}
