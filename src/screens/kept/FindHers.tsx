import { createMemo, createSignal } from 'solid-js';
import { formTicketKey } from '../../../shared/records/ticket';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { PlainPage } from '../../parts/PlainPage';
import { useWords } from '../../parts/useWords';
import { isTicketOpen, listOfTicket } from '../../station/keeping';
import type { StationState } from '../../station/stationState';
import { TicketField } from '../start/TicketField';
import { type KeptThing, listThings, sayThings } from './viewKept';

/** Whose records are to go? By her ticket, however it is typed. */
export function FindHers(props: {
  readonly state: StationState;
  readonly onFound: (ticket: string, things: readonly KeptThing[]) => void;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const said = () => words.kept;
  const [ticket, setTicket] = createSignal('');
  const units = () => props.state.settings.settings.units;
  const write = (count: number) => formatQuantity(count, 'count', units(), words.locale);
  const things = createMemo(() => listThings(listOfTicket(props.state, ticket())));
  const key = () => formTicketKey(ticket());
  const isOpen = () => key() !== '' && isTicketOpen(props.state, key());
  const mayLook = () => things().length > 0 && !isOpen();
  const sayFound = () => {
    if (key() === '') return '';
    if (isOpen()) return said().isOpen;
    return things().length === 0 ? said().nothingUnder : said().under(sayThings(things(), words, write));
  };
  const look = () => mayLook() && props.onFound(ticket().trim(), things());
  return (
    <PlainPage
      step="kept"
      kicker={said().title}
      title={said().findTitle}
      actions={
        <>
          <p class="kept-found" role="status" data-found={things().length}>
            {sayFound()}
          </p>
          <BigButton act="kept-back" isWay onPress={props.onBack}>
            {said().title}
          </BigButton>
          <BigButton kind="primary" act="look-at-hers" isDisabled={!mayLook()} onPress={look}>
            {said().look}
          </BigButton>
        </>
      }
    >
      <TicketField value={ticket()} refusal={undefined} units={units()} onChange={setTicket} onEnter={look} />
    </PlainPage>
  );
}
