import { createSignal, type JSX, Show } from 'solid-js';
import type { Result } from '../../../shared/result';
import { BigButton } from '../../parts/BigButton';
import { Refusal } from '../../parts/Refusal';
import type { SubmitRefusal } from '../../station/submitRefusal';

/**
 * One button that asks for a file and brings it in: what came, or why nothing did. Checked in
 * tests/src/screens/settings/backup.test.tsx.
 */
export function BringFile<T extends object>(props: {
  readonly act: string;
  readonly label: string;
  /** Which files the tablet offers, by ending and type. */
  readonly accept: string;
  /** What is said of a file that is gone, or may not be read. */
  readonly notRead: SubmitRefusal;
  readonly bring: (file: string) => Promise<Result<T, SubmitRefusal>>;
  readonly children: (brought: T) => JSX.Element;
}) {
  const [brought, setBrought] = createSignal<T | null>(null);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const [isReading, setIsReading] = createSignal(false);
  let picker!: HTMLInputElement;
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    setIsReading(true);
    setBrought(null);
    try {
      const taken = await props.bring(await file.text());
      setRefusal(taken.ok ? null : taken.error);
      setBrought(() => (taken.ok ? taken.value : null));
    } catch {
      setRefusal(props.notRead);
    } finally {
      setIsReading(false);
      picker.value = '';
    }
  };
  return (
    <>
      <input
        ref={picker}
        type="file"
        accept={props.accept}
        data-file={props.act}
        hidden
        onChange={(event) => void take(event.currentTarget.files?.[0])}
      />
      <BigButton act={props.act} isDisabled={isReading()} onPress={() => picker.click()}>
        {props.label}
      </BigButton>
      <p role="status" aria-busy={isReading()}>
        <Show when={brought()}>
          {(what) => <strong data-brought={props.act}>{props.children(what())}</strong>}
        </Show>
      </p>
      <Refusal refusal={refusal()} />
    </>
  );
}
