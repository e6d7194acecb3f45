import { createSignal, Show, untrack } from 'solid-js';
import type { Result } from '../../../shared/result';
import { Caution } from '../../parts/Caution';
import { useWords } from '../../parts/useWords';
import type { HandedFile, HandedOver, HandOver, HandOverFailure } from '../../tablet/handOver';
import '../../parts/form/sheet/sheet.css';
import { usePass } from '../pin/pinInUse';
import './handOver.css';
import { useHandOver } from './handOverInUse';

/**
 * Share, and into a folder of her choice, each only where this tablet has it. A window that was closed says nothing; what
 * failed is named. Checked in tests/src/screens/handOver.test.tsx.
 */
export function HandOverWays(props: {
  readonly files: () => readonly HandedFile[];
  /** They got there. */
  readonly onHanded?: () => void;
}) {
  const handOver = useHandOver();
  return (
    <Show when={handOver}>
      {(ways) => <Ways ways={ways()} files={props.files} onHanded={() => props.onHanded?.()} />}
    </Show>
  );
}

function Ways(props: {
  readonly ways: HandOver;
  readonly files: () => readonly HandedFile[];
  readonly onHanded: () => void;
}) {
  const words = useWords();
  const said = () => words.handOver;
  const [handed, setHanded] = createSignal<Result<HandedOver, HandOverFailure> | null>(null);
  const [folder, setFolder] = createSignal<string | null>(null);
  // By their names and kinds alone, which stay the same while the page is open.
  const mayShare = untrack(() => props.ways.listShared(props.files()).length > 0);
  const pass = usePass();
  const tell = (done: Result<HandedOver, HandOverFailure>) => {
    setHanded(done);
    if (done.ok && done.value !== null) props.onHanded();
  };
  const share = async () => tell(await props.ways.share(props.files()));
  const write = async (anew: boolean) => {
    const written = await props.ways.intoFolder(props.files(), anew);
    if (!written.ok && written.error !== 'notWritten') setFolder(null);
    if (written.ok && written.value !== null) setFolder(written.value.folder);
    tell(written);
  };
  const sayDone = () => {
    const done = handed();
    if (done === null || !done.ok || done.value === null) return '';
    const names = done.value.names.join(', ');
    return done.value.folder === null ? said().shared(names) : said().written(names, done.value.folder);
  };
  const failure = () => {
    const done = handed();
    return done === null || done.ok ? null : done.error;
  };
  return (
    <div class="hand-over">
      <Show when={mayShare}>
        <button type="button" class="sheet-way" data-act="share" onClick={() => pass(() => void share())}>
          {said().share}
        </button>
      </Show>
      <Show when={props.ways.hasFolders}>
        <button
          type="button"
          class="sheet-way"
          data-act="into-folder"
          onClick={() => pass(() => void write(false))}
        >
          {folder() === null ? said().intoFolder : said().intoThis(folder() ?? '')}
        </button>
        <Show when={folder() !== null}>
          <button
            type="button"
            class="sheet-way"
            data-act="another-folder"
            onClick={() => pass(() => void write(true))}
          >
            {said().anotherFolder}
          </button>
        </Show>
      </Show>
      <p role="status">
        <strong>{sayDone()}</strong>
      </p>
      <Show when={failure()}>
        {(why) => (
          <div data-hand-over={why()} ref={bringIntoView}>
            <Caution>
              <p>{said().failures[why()]}</p>
            </Caution>
          </div>
        )}
      </Show>
    </div>
  );
}

/** Where the page is longer than the screen it would be said below its edge. */
const bringIntoView = (said: HTMLElement): void => {
  queueMicrotask(() => said.scrollIntoView({ block: 'nearest' }));
};
