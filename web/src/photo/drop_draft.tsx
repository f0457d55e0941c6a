/** What is not kept can be thrown away, once somebody has said so twice. */
import { useState } from 'preact/hooks';
import type { Draft } from '../record/record_database';
import { dropDraft } from '../record/drafts';
import { photoWords as words } from '../strings';

export function DropDraft({
  draft,
  photos,
  leave,
}: {
  draft: Draft;
  photos: number;
  leave: () => void;
}) {
  const [asks, setAsks] = useState(false);
  if (!asks) {
    return (
      <button type="button" class="button quiet drop" onClick={() => setAsks(true)}>
        {words.drop}
      </button>
    );
  }
  return (
    <div class="drop-draft">
      <p>{words.dropWhat(photos)}</p>
      <button
        type="button"
        class="button quiet"
        // `recordTrouble` says why it could not be thrown away; nothing was changed.
        onClick={() => void dropDraft(draft.id).then(leave, () => undefined)}
      >
        {words.dropYes}
      </button>
      <button type="button" class="button" onClick={() => setAsks(false)}>
        {words.dropNo}
      </button>
    </div>
  );
}
