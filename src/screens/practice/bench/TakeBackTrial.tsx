import type { BenchTrial } from '../../../../shared/records/bench/benchTrial';
import type { RawBenchEvent } from '../../../../shared/records/bench/classify';
import { BY_MAX_LENGTH } from '../../../../shared/records/event';
import type { Form } from '../../../../shared/records/form';
import { benchTakenBackForm } from '../../../../shared/records/forms/bench';
import type { Settings } from '../../../../shared/records/settings';
import type { Result } from '../../../../shared/result';
import { BigButton } from '../../../parts/BigButton';
import { Sheet } from '../../../parts/form/Sheet';
import { HoldButton } from '../../../parts/HoldButton';
import { PlainPage } from '../../../parts/PlainPage';
import { Refusal } from '../../../parts/Refusal';
import { useWords } from '../../../parts/useWords';
import type { SubmitRefusal } from '../../../station/submitRefusal';
import { createEventForm } from '../../eventForm';

const { what, code, words: ownWords } = benchTakenBackForm;

/** What was noted wrongly of a trial: by whom, why and in words; held. */
export function TakeBackTrial(props: {
  readonly trial: BenchTrial;
  readonly settings: Settings;
  readonly nowMs: number;
  readonly by: string;
  readonly change: (id: string, raw: RawBenchEvent, by?: string) => Promise<Result<void, SubmitRefusal>>;
  readonly onDone: () => void;
}) {
  const words = useWords();
  const said = () => words.bench;
  const by = { kind: 'text', maxLength: BY_MAX_LENGTH } as const;
  const form: Form = { by, ...(props.trial.isRead ? { what } : {}), code, words: ownWords };
  const asked = createEventForm(
    {
      get settings() {
        return props.settings;
      },
      get nowMs() {
        return props.nowMs;
      },
      submit: (raw, name) =>
        props.change(props.trial.id, { type: 'BENCH_TAKEN_BACK', answers: raw.answers ?? {} }, name),
    },
    form,
    `${props.trial.id}/takenBack`,
    { by: props.by },
  );
  const takeBack = async () => {
    const name = asked.draft.raw().by;
    const given = props.trial.isRead ? {} : { what: 'trial' };
    if (await asked.send('CORRECTED', given, typeof name === 'string' ? name.trim() : '')) props.onDone();
  };
  return (
    <PlainPage
      step="bench"
      kicker={said().kinds[props.trial.kind]}
      title={said().takeBackTitle}
      actions={
        <BigButton act="cancel" isWay onPress={props.onDone}>
          {said().leaveIt}
        </BigButton>
      }
    >
      <Sheet
        form={form}
        words={said().takenBackForm}
        draft={asked.draft}
        onChange={asked.onChange}
        refusals={asked.refusals()}
        units={props.settings.units}
        hasAgeLine={false}
        nowMs={props.nowMs}
        picks={{ by: props.settings.staff }}
        summary={said().takeBackTitle}
      >
        <p>{said().takeBackLead}</p>
        <div class="options">
          <HoldButton label={said().holdToTakeBack} act="taken-back" onHeld={() => void takeBack()} />
        </div>
      </Sheet>
      <Refusal refusal={asked.refusal()} />
    </PlainPage>
  );
}
