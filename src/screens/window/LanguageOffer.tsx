import { For } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import './window.css';

/** An untouched station says in each other language, in that language, that it speaks it too. */
export function LanguageOffer(props: { readonly onSpeak: (locale: Settings['locale']) => void }) {
  const words = useWords();
  const languages = Object.entries(words.settings.questions.locale.options) as readonly [
    Settings['locale'],
    string,
  ][];
  return (
    <div class="language-offer">
      <For each={languages.filter(([locale]) => locale !== words.locale)}>
        {([locale, name]) => (
          <span lang={locale}>
            <BigButton kind="quiet" act={`speak-${locale}`} onPress={() => props.onSpeak(locale)}>
              {name}
            </BigButton>
          </span>
        )}
      </For>
    </div>
  );
}
