import { For } from 'solid-js';
import './letterPad.css';
import { useMayWrite } from './useMayWrite';
import { useWords } from './useWords';

const rows = ['1234567890', 'QWERTYUIOP', 'ASDFGHJKL', 'ZXCVBNM.'] as const;

/** Letters and figures for wet gloves: what is tapped is added to what stands there; a keyboard does the same. */
export function LetterPad(props: { readonly text: string; readonly onChange: (text: string) => void }) {
  const words = useWords();
  const mayWrite = useMayWrite();
  return (
    <fieldset class="letter-pad" aria-label={words.sheet.letters} disabled={!mayWrite()}>
      <For each={rows}>
        {(row) => (
          <div class="letter-row">
            <For each={[...row]}>
              {(letter) => (
                <button
                  type="button"
                  class="letter-key"
                  data-key={letter}
                  onClick={() => props.onChange(`${props.text}${letter}`)}
                >
                  {letter}
                </button>
              )}
            </For>
            {row.startsWith('Z') && (
              <button
                type="button"
                class="letter-key letter-back"
                data-key="back"
                aria-label={words.sheet.lastAway}
                onClick={() => props.onChange([...props.text].slice(0, -1).join(''))}
              >
                <svg class="letter-icon" viewBox="0 0 36 24" aria-hidden="true">
                  <path d="M11 2 H34 V22 H11 L2 12 Z M17 8 L26 16 M26 8 L17 16" />
                </svg>
              </button>
            )}
          </div>
        )}
      </For>
    </fieldset>
  );
}
