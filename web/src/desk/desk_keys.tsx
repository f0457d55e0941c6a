/** The keys of the desk, and the list of them. */
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { redo, undo } from '../record/undo_history';
import { markOpensKeys } from '../settings';
import { strings } from '../strings';

const words = strings.desk;

/** Whether the key belongs to what is being typed. */
function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLInputElement ||
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement
  );
}

export function useDeskKeys(): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      const key = event.key.toLowerCase();
      if (key === 's') {
        event.preventDefault();
        document.querySelector<HTMLFormElement>('form.desk-form')?.requestSubmit();
      } else if ((key === 'z' || key === 'y') && !isTyping(event.target)) {
        event.preventDefault();
        // `recordTrouble` says why it could not be kept; nothing was changed.
        void (key === 'y' || event.shiftKey ? redo() : undo()).catch(() => undefined);
      }
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, []);
}

/** A key alone may be pressed by speech or by chance, so that it can be switched off. */
function useMark(dialog: RefObject<HTMLDialogElement | null>): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key !== '?' || !markOpensKeys.peek() || isTyping(event.target)) return;
      if (document.querySelector('dialog[open]')) return;
      event.preventDefault();
      dialog.current?.showModal();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [dialog]);
}

export function DeskKeys() {
  const dialog = useRef<HTMLDialogElement>(null);
  useMark(dialog);
  return (
    <>
      <button type="button" class="button quiet keys" onClick={() => dialog.current?.showModal()}>
        {words.keys}
      </button>
      <dialog ref={dialog} aria-labelledby="keys-heading">
        <h2 id="keys-heading">{words.keysHeading}</h2>
        <dl class="keys-list">
          {words.keysList.map(([keys, what]) => (
            <div key={keys}>
              <dt>
                <kbd>{keys}</kbd>
              </dt>
              <dd>{what}</dd>
            </div>
          ))}
        </dl>
        <p class="compared-choice">
          <label>
            <input
              type="checkbox"
              checked={markOpensKeys.value}
              onChange={({ currentTarget }) => (markOpensKeys.value = currentTarget.checked)}
            />
            {words.keysByMark}
          </label>
        </p>
        <button type="button" class="button quiet close" onClick={() => dialog.current?.close()}>
          {words.close}
        </button>
      </dialog>
    </>
  );
}
