import { createMemo, createSignal, For, Show } from 'solid-js';
import { Portal } from 'solid-js/web';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { StrandCard } from './StrandCard';
import { listCardStrands } from './viewCard';

/** Has a strand said something that can be taped to a card? */
export const mayPrintCard = ({ consultation }: Pick<StepProps, 'consultation'>): boolean =>
  listCardStrands(consultation.record).length > 0;

/** The card of one strand as it will be printed, and the printing. Paper gets this card and nothing else. */
export function PrintCard(props: Pick<StepProps, 'consultation' | 'settings'>) {
  const words = useWords();
  const said = () => words.strandCard;
  const strands = createMemo(() => listCardStrands(props.consultation.record));
  const [chosen, setChosen] = createSignal<number | null>(null);
  const strand = () => strands().find(({ number }) => number === chosen()) ?? strands()[0];
  return (
    <Show when={strand()}>
      {(one) => (
        <section class="card-to-print" data-panel="strand-card">
          <Show when={strands().length > 1}>
            <div class="card-choice">
              <For each={strands()}>
                {({ number, zone }) => (
                  <BigButton
                    act={`card-of-${number}`}
                    isWay
                    isPressed={number === one().number}
                    onPress={() => setChosen(number)}
                  >
                    {words.clock.strandName(
                      formatQuantity(number, 'count', props.settings.units, words.locale),
                      zone,
                    )}
                  </BigButton>
                )}
              </For>
            </div>
          </Show>
          <StrandCard record={props.consultation.record} strand={one()} settings={props.settings} />
          <div class="dialog-actions">
            <p class="soft card-note">{said().whilePrinting}</p>
            <BigButton kind="primary" act="print-card" isWay onPress={() => window.print()}>
              {said().print}
            </BigButton>
          </div>
          {/* What paper gets, as long as this page is open: a print may be asked for by the tablet's own menu. */}
          <Portal>
            <div class="paper">
              <StrandCard record={props.consultation.record} strand={one()} settings={props.settings} />
            </div>
          </Portal>
        </section>
      )}
    </Show>
  );
}
