import { isCallSign } from '../../../shared/records/callOwed';
import { useWords } from '../../parts/useWords';
import './reaction.css';

/** Whom to call, on every page of a reaction: asked until it was told, then as what is to be done. */
export function Emergency(props: { readonly signs: readonly string[] }) {
  const words = useWords();
  const said = () => words.reaction;
  const isTold = () => props.signs.some(isCallSign);
  return (
    <p class="emergency" data-told={isTold()}>
      <strong>{isTold() ? said().emergencyTold : said().emergencyAsk}</strong>{' '}
      {isTold() ? said().emergencyNow : said().emergency}
    </p>
  );
}
