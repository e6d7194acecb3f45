import { createMemo, createSignal } from 'solid-js';
import { tellAnotherDay } from '../../../shared/records/anotherDay';
import type { WayStep } from '../../../shared/records/steps';
import { useWords } from '../../parts/useWords';
import type { TapRefusal } from '../explainRefusal';
import { SkinTestRead } from '../skinTest/SkinTestRead';
import type { StepProps } from '../stepProps';
import { AnythingNew, listHairLines, listReactions, listSkinLines } from './AnythingNew';
import { findReactionsTold, findToldAtMs } from './anotherDayView';

/**
 * She is back on another day: is anything new since? Read aloud and answered in one tap, and she is where she was; what
 * is new is told at the step that asks for it, where the questions of the day stand open. Her skin test is read here.
 * Checked in tests/src/screens/anotherDay.test.tsx.
 */
export function AnotherDay(props: StepProps & { readonly here: WayStep }) {
  const words = useWords();
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const hasAgeLine = () => props.settings.profile.ageLine !== null;
  const reactions = () => findReactionsTold(props.consultation);
  const lines = createMemo(() => {
    const { hotTools } = props.consultation.record.answers;
    return [
      ...listSkinLines(words, hasAgeLine(), reactions(), props.settings.units),
      ...(hotTools === undefined ? [] : listHairLines(hotTools, words, props.settings.units)),
    ];
  });
  const sayWhen = () => {
    const atMs = findToldAtMs(props.consultation);
    return atMs === null ? '' : words.nothingNew.saidOn(words.moments.dayAndTime(atMs));
  };
  const tellNothing = async () => {
    const { record } = props.consultation;
    const today = {
      reactions: listReactions(reactions()),
      scalp: 'sound',
      ...(hasAgeLine() ? { ageBand: 'over' } : {}),
    };
    const told = await props.submitAll(tellAnotherDay(record, today, props.settings.units, props.here));
    setRefusal(told.ok ? null : told.error);
  };
  const tellNews = async () => {
    const taken = await props.submit({ type: 'REOPENED', answers: { step: 'client' } });
    setRefusal(taken.ok ? null : taken.error);
  };
  return (
    <AnythingNew
      page={props.page}
      title={words.nothingNew.title}
      also={sayWhen()}
      lines={lines()}
      isOpen={false}
      refusal={refusal()}
      nothingNew={words.nothingNew.nothingNewSince}
      onSomethingNew={() => void tellNews()}
      onNothingNew={() => void tellNothing()}
    >
      <SkinTestRead {...props} />
    </AnythingNew>
  );
}
