import { BY_MAX_LENGTH } from '../../../shared/records/event';
import type { Form } from '../../../shared/records/form';
import { skinTestForms } from '../../../shared/records/forms/skinTest';
import type { Settings } from '../../../shared/records/settings';
import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { BigButton } from '../../parts/BigButton';
import { Sheet } from '../../parts/form/Sheet';
import { HoldButton } from '../../parts/HoldButton';
import { PlainPage } from '../../parts/PlainPage';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import type { Submit } from '../stepProps';

const { what, code, words: ownWords } = skinTestForms.SKIN_TEST_TAKEN_BACK;

/** What was noted wrongly of a skin test, or that it came off: by whom, why and in words; held. */
export function TakeBack(props: {
  readonly test: SkinTest;
  readonly settings: Settings;
  readonly nowMs: number;
  readonly by: string;
  readonly submit: Submit;
  readonly onDone: () => void;
}) {
  const words = useWords();
  const isRead = props.test.seen !== 'notReadYet';
  const by = { kind: 'text', maxLength: BY_MAX_LENGTH } as const;
  const form: Form = { by, ...(isRead ? { what } : {}), code, words: ownWords };
  const asked = createEventForm(props, form, `${props.test.id}/takenBack`, { by: props.by });
  const takeBack = async () => {
    const name = asked.draft.raw().by;
    const given = isRead ? {} : { what: 'test' };
    if (await asked.send('CORRECTED', given, typeof name === 'string' ? name.trim() : '')) props.onDone();
  };
  return (
    <PlainPage
      step="skinTests"
      kicker={`${words.skinTests.title} · ${props.test.ticket}`}
      title={words.skinTests.takeBackTitle}
      actions={
        <BigButton act="cancel" isWay onPress={props.onDone}>
          {words.skinTest.leaveIt}
        </BigButton>
      }
    >
      <Sheet
        form={form}
        words={words.skinTests.takenBackForm}
        draft={asked.draft}
        onChange={asked.onChange}
        refusals={asked.refusals()}
        units={props.settings.units}
        hasAgeLine={false}
        nowMs={props.nowMs}
        picks={{ by: props.settings.staff }}
        summary={words.skinTests.takeBackTitle}
      >
        <p>{words.skinTests.takeBackLead}</p>
        <div class="options">
          <HoldButton
            label={words.skinTests.holdToTakeBack}
            act="taken-back"
            onHeld={() => void takeBack()}
          />
        </div>
      </Sheet>
      <Refusal refusal={asked.refusal()} />
    </PlainPage>
  );
}
