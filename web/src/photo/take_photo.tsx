/** Takes a photo in: it is on the device before anything is looked for on it. */
import { problemWords } from '../engine_problem';
import { useRef, useState } from 'preact/hooks';
import { failureFrom } from '../engine';
import { readPhoto } from '../record/photo';
import { exifNotes } from '../record/picture_file';
import { keepPhoto } from '../record/drafts';
import { RecordFailure } from '../record/record_access';
import { keepsLocation } from '../settings';
import { strings } from '../strings';
import type { PhotoDraft, TakenPhoto } from './photo_draft';
import { photoWords as words } from '../strings';
import { vision } from './vision';
import { Cancelled } from './vision_client';

/** Why a photo was not taken in, as a sentence. */
class NotTaken extends Error {}

interface Taking {
  by: PhotoDraft['by'];
  /** Photos that are measured already. */
  known: readonly string[];
  hear: (share: number) => void;
  cancel: AbortSignal;
}

/** The photo in a file and what was found on it. Rejects with NotTaken where it is of no use. */
async function takenFrom(file: File, { by, known, hear, cancel }: Taking): Promise<TakenPhoto> {
  const refuse = (why: string): never => {
    throw new NotTaken(words.refused(file.name, why));
  };
  const photo = await readPhoto(file, { keepsLocation: keepsLocation.peek() });
  if (typeof photo === 'string') return refuse(strings.photos.refusals[photo]);
  if (known.includes(photo.hash)) return refuse(words.twice);
  const exif = exifNotes(new Uint8Array(await file.arrayBuffer()));
  const focal_length = exif ? await vision.focalLength(exif) : 0;
  const blob = new Blob([photo.bytes], { type: photo.type });
  if (by === 'taps') {
    const marks = await vision.marks({ photo: blob, name: file.name }, cancel);
    if (marks === 'not readable') return refuse(strings.photos.refusals[marks]);
    if ('problems' in marks) return refuse(marks.problems.map(problemWords).join(' '));
    await keepPhoto(photo);
    const { width, height, ...rest } = marks;
    return { file: photo.hash, width, height, focal_length, marks: rest };
  }
  const found = await vision.outline({ photo: blob, name: file.name }, hear, cancel);
  if (found === 'not readable') return refuse(strings.photos.refusals[found]);
  if ('problems' in found) return refuse(found.problems.map(problemWords).join(' '));
  await keepPhoto(photo);
  const { width, height, ...rest } = found;
  return { file: photo.hash, width, height, focal_length, found: rest };
}

function troubleOf(error: unknown): string {
  if (error instanceof NotTaken) return error.message;
  if (error instanceof Cancelled) return words.cancelled;
  if (error instanceof RecordFailure) return strings.record.troubles[error.trouble];
  return strings.failures.sentences[failureFrom(error).kind];
}

export function TakePhoto({
  by,
  known,
  first,
  onTaken,
}: {
  by: PhotoDraft['by'];
  known: readonly string[];
  first: boolean;
  onTaken: (photo: TakenPhoto) => Promise<unknown>;
}) {
  const picker = useRef<HTMLInputElement>(null);
  const cancel = useRef<AbortController | undefined>(undefined);
  const [share, setShare] = useState<number | undefined>(undefined);
  const [trouble, setTrouble] = useState('');
  const working = share !== undefined;

  const take = async (file: File) => {
    cancel.current = new AbortController();
    setShare(0);
    setTrouble('');
    try {
      const { signal } = cancel.current;
      await onTaken(await takenFrom(file, { by, known, hear: setShare, cancel: signal }));
    } catch (error) {
      setTrouble(troubleOf(error));
    } finally {
      setShare(undefined);
    }
  };
  return (
    <div class="take-photo">
      {!working && (
        <button
          type="button"
          class={first ? 'button action main' : 'button quiet action'}
          onClick={() => picker.current?.click()}
        >
          {first ? words.take : words.another}
        </button>
      )}
      <input
        ref={picker}
        type="file"
        accept="image/*"
        hidden
        data-picks="measured-photo"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          currentTarget.value = '';
          if (file) void take(file);
        }}
      />
      {working && (
        <div class="photo-working">
          <p role="status">{share > 0 ? words.working(share) : words.readingPhoto}</p>
          <progress max={1} value={share} aria-label={words.working(share)} />
          <button type="button" class="button quiet" onClick={() => cancel.current?.abort()}>
            {words.cancel}
          </button>
        </div>
      )}
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
      {first && (
        <label class="photo-location">
          <input
            type="checkbox"
            checked={!keepsLocation.value}
            onChange={({ currentTarget }) => (keepsLocation.value = !currentTarget.checked)}
          />
          <span>
            {strings.photos.leaveOut}
            <span class="line">{strings.photos.leaveOutWhat}</span>
          </span>
        </label>
      )}
    </div>
  );
}
