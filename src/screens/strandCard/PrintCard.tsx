import { type Accessor, createMemo, createSignal, For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Paper } from '../../parts/Paper';
import { useWords } from '../../parts/useWords';
import { useEverybody } from '../everybody';
import type { StepProps } from '../stepProps';
import { StrandCard } from './StrandCard';
import { type CardStrand, findFirstCard, findStamp, listCardStrands } from './viewCard';
import { whyNotPrint } from './whyNotPrint';

/** Is a strand out of its mix, so that it can be taped to a card? */
export const mayPrintCard = ({ consultation }: Pick<StepProps, 'consultation'>): boolean =>
  listCardStrands(consultation.record).length > 0;

/** The card of one strand as it will be printed, and the printing. Paper gets this card and nothing else. */
export function PrintCard(props: Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>) {
  const words = useWords();
  const said = () => words.strandCard;
  const strands = createMemo(() => listCardStrands(props.consultation.record));
  const [chosen, setChosen] = createSignal<number | null>(null);
  const strand = () => strands().find(({ number }) => number === chosen()) ?? findFirstCard(strands());
  const everybody = useEverybody(() => props.consultation);
  const whyNot = createMemo(() => whyNotPrint(everybody(), props.nowMs, words, props.settings.units));
  const sayStrand = (one: CardStrand) => {
    const number = formatQuantity(one.number, 'count', props.settings.units, words.locale);
    const stamp = findStamp(one);
    const name = words.clock.strandName(number, one.zone);
    return stamp === null ? name : `${name} · ${said().briefly[stamp]}`;
  };
  const renderCard = (one: Accessor<CardStrand>) => (
    <StrandCard
      record={props.consultation.record}
      strand={one()}
      settings={props.settings}
      nowMs={props.nowMs}
    />
  );
  return (
    <Show when={strand()}>
      {(one) => (
        <section class="card-to-print" data-panel="strand-card">
          <Show when={strands().length > 1}>
            <div class="card-choice">
              <For each={strands()}>
                {(each) => (
                  <BigButton
                    act={`card-of-${each.number}`}
                    isWay
                    isPressed={each.number === one().number}
                    onPress={() => setChosen(each.number)}
                  >
                    {sayStrand(each)}
                  </BigButton>
                )}
              </For>
            </div>
          </Show>
          {renderCard(one)}
          <div class="dialog-actions">
            <p class="card-note" role="status" data-held={whyNot() !== null}>
              {whyNot() ?? said().whilePrinting}
            </p>
            <BigButton
              kind="primary"
              act="print-card"
              isWay
              isDisabled={whyNot() !== null}
              onPress={() => window.print()}
            >
              {said().print}
            </BigButton>
          </div>
          <Paper page="strand-card">{renderCard(one)}</Paper>
        </section>
      )}
    </Show>
  );
}
