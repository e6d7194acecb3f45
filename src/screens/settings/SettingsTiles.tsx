import { For, Show } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import type { RawForm } from '../../../shared/records/readForm';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { readRows } from '../../parts/form/sheet/places';
import { sayAnswer } from '../../parts/form/sheet/sayAnswer';
import { useWords } from '../../parts/useWords';
import type { AnyFormWords } from '../../words/formWords';
import { type SettingsSection, settingsSections } from './settingsSections';

/** So many entries of a list are named on its tile. */
const NAMED = 3;

/** The settings by topic, each with what holds now; one tap opens its page. */
export function SettingsTiles(props: {
  readonly form: Form;
  readonly asked: AnyFormWords;
  readonly raw: RawForm;
  readonly units: UnitSettings;
  /** Sound and screen, in a few words; null where this tablet has neither. */
  readonly tablet: string | null;
  /** The whole station can be saved and brought in. */
  readonly hasBackup: boolean;
  /** How this station stands with others; null where another window knows. */
  readonly others: string | null;
  /** Practice can be entered from here. */
  readonly hasPractice: boolean;
  /** This tablet can be looked at. */
  readonly hasDiagnosis: boolean;
  readonly onOpen: (
    section: SettingsSection | 'tablet' | 'backup' | 'others' | 'practice' | 'diagnosis',
  ) => void;
}) {
  const words = useWords();
  const said = () => words.settings;
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const sayOne = (name: string) => {
    const question = props.form[name];
    const value = props.raw[name];
    const asked = props.asked[name];
    if (question === undefined || asked === undefined) return '';
    if (question.kind === 'list') {
      const names = readRows(value).flatMap(({ name: of }) =>
        typeof of === 'string' && of !== '' ? [of] : [],
      );
      const more = names.length - NAMED;
      const first = names.slice(0, NAMED).join(', ');
      return names.length === 0 ? said().nobodyYet : more > 0 ? said().andMore(first, write(more)) : first;
    }
    const answer = sayAnswer(question, asked, value, { words, units: props.units });
    return asked.short === undefined ? answer : `${asked.short} ${answer}`;
  };
  const summary = (section: SettingsSection) => said().summaries[section]((name) => sayOne(name));
  const sections = () => Object.keys(settingsSections) as readonly SettingsSection[];
  return (
    <ul class="settings-tiles">
      <Show when={props.hasPractice}>
        <Tile
          of="practice"
          name={words.practice.enterTitle}
          summary={words.practice.tile}
          onOpen={props.onOpen}
        />
      </Show>
      <For each={sections()}>
        {(section) => (
          <Tile
            of={section}
            name={said().sections[section]}
            summary={summary(section)}
            onOpen={props.onOpen}
          />
        )}
      </For>
      <Show when={props.tablet}>
        {(tablet) => <Tile of="tablet" name={words.tablet.title} summary={tablet()} onOpen={props.onOpen} />}
      </Show>
      <Show when={props.hasDiagnosis}>
        <Tile
          of="diagnosis"
          name={words.diagnosis.title}
          summary={words.diagnosis.tile}
          onOpen={props.onOpen}
        />
      </Show>
      <Show when={props.hasBackup}>
        <Tile of="backup" name={said().backup.title} summary={said().backup.tile} onOpen={props.onOpen} />
      </Show>
      <Show when={props.others}>
        {(others) => <Tile of="others" name={words.others.title} summary={others()} onOpen={props.onOpen} />}
      </Show>
    </ul>
  );
}

function Tile<Page extends string>(props: {
  readonly of: Page;
  readonly name: string;
  readonly summary: string;
  readonly onOpen: (page: Page) => void;
}) {
  return (
    <li>
      <button
        type="button"
        class="settings-tile"
        data-act={`section-${props.of}`}
        onClick={() => props.onOpen(props.of)}
      >
        <strong>{props.name}</strong>
        <span>{props.summary}</span>
      </button>
    </li>
  );
}
