/** Says what was kept last and takes it back when asked; undoing can be undone as well. */
import { useState } from 'preact/hooks';
import { engine } from '../engine';
import { change, documentBefore, lastMade, openedSite } from '../record/site_record';
import { inverseOf } from '../record/undoing';
import { strings } from '../strings';

const words = strings.record;

async function undoLast(): Promise<void> {
  const made = lastMade.peek();
  const site = openedSite.peek();
  if (!made || !site || site.kept !== made.site) return;
  const { revision } = made;
  const document = documentBefore(site, revision);
  if (!document) return;
  const answer = await engine.ask<{ state?: unknown }>({ ask: 'state', document });
  if (answer.state === undefined) return;
  await change(inverseOf(revision.changes, answer.state), words.undone(revision.note));
}

export function UndoNotice() {
  const [working, setWorking] = useState(false);
  const made = lastMade.value;
  const site = openedSite.value;
  // Where another tab or person has gone on meanwhile, there is no last step of this screen.
  const possible = made && site?.kept === made.site && documentBefore(site, made.revision);
  if (!possible) return null;
  return (
    <div class="undo-notice">
      <p role="status">{words.keptNow(made.revision.note)}</p>
      <button
        type="button"
        class="button quiet"
        disabled={working}
        onClick={() => {
          setWorking(true);
          void undoLast()
            // `recordTrouble` says why it could not be kept; nothing was changed.
            .catch(() => undefined)
            .then(() => setWorking(false));
        }}
      >
        {words.undo}
      </button>
    </div>
  );
}
