import type { StepProps } from '../stepProps';
import { AskPage } from './AskPage';
import { SkinTest } from './SkinTest';

/** What she wants, and whether anything may go on this skin at all. */
export function Client(props: StepProps) {
  return (
    <AskPage {...props} step="client">
      <SkinTest {...props} />
    </AskPage>
  );
}
