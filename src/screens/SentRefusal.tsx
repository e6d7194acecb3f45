import { Refusal } from '../parts/Refusal';
import type { TapRefusal } from './explainRefusal';

/** Why it was not taken, on a sheet: what is missing or wrong is said at its question, everything else here. */
export function SentRefusal(props: { readonly refusal: TapRefusal | null }) {
  return <Refusal refusal={props.refusal?.kind === 'fields' ? null : props.refusal} />;
}
