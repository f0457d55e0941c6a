/** Says what was kept last; takes it back when asked, and makes it again. */
import { useState } from 'preact/hooks';
import { lastMade, redo, redoable, undo, undoable } from '../record/undo_history';
import { strings } from '../strings';

const words = strings.record;

export function UndoNotice() {
  const [working, setWorking] = useState(false);
  const made = lastMade.value;
  // Where another tab or person has gone on meanwhile, there is no last step of this screen.
  if (!made || (!undoable.value && !redoable.value)) return null;
  const button = (name: string, work: () => Promise<void>) => (
    <button
      type="button"
      class="button quiet"
      disabled={working}
      onClick={() => {
        setWorking(true);
        void work()
          // `recordTrouble` says why it could not be kept; nothing was changed.
          .catch(() => undefined)
          .then(() => setWorking(false));
      }}
    >
      {name}
    </button>
  );
  return (
    <div class="undo-notice">
      <p role="status">{words.keptNow(made.note)}</p>
      <div class="undo-buttons">
        {undoable.value && button(words.undo, undo)}
        {redoable.value && button(words.redo, redo)}
      </div>
    </div>
  );
}
