/** Photos taken or chosen as evidence; each is on the device before it is shown. */
import { useRef, useState } from 'preact/hooks';
import { PhotoStrip } from '../photo_strip';
import { readPhoto } from '../record/photo';
import { measureRoom } from '../record/device_room';
import { keepPhoto } from '../record/drafts';
import { RecordFailure } from '../record/record_access';
import { RoomNotice } from '../room_notice';
import { keepsLocation } from '../settings';
import { strings } from '../strings';

const words = strings.photos;

/** Several hashes as one answer, and back. */
export function hashesIn(answer: string): string[] {
  return answer === '' ? [] : answer.split(' ');
}

/** The field `photos` of what was seen; nothing where there are none. */
export function photosFrom(answers: Record<string, string>): { photos?: string[] } {
  const photos = hashesIn(answers.photos ?? '');
  return photos.length > 0 ? { photos } : {};
}

export function PhotoInput({
  answer,
  onAnswer,
}: {
  answer: string;
  onAnswer: (text: string) => void;
}) {
  const picker = useRef<HTMLInputElement>(null);
  const [reading, setReading] = useState(false);
  const [trouble, setTrouble] = useState('');
  const hashes = hashesIn(answer);

  const take = async (files: File[]) => {
    setReading(true);
    setTrouble('');
    let kept = hashes;
    try {
      for (const file of files) {
        const photo = await readPhoto(file, { keepsLocation: keepsLocation.peek() });
        if (typeof photo === 'string') {
          setTrouble(words.refused(file.name, words.refusals[photo]));
          continue;
        }
        await keepPhoto(photo);
        if (!kept.includes(photo.hash)) kept = [...kept, photo.hash];
        onAnswer(kept.join(' '));
      }
    } catch (error) {
      const why = error instanceof RecordFailure ? error.trouble : 'not written';
      setTrouble(strings.record.troubles[why]);
    } finally {
      setReading(false);
      void measureRoom();
    }
  };

  return (
    <fieldset class="photo-input">
      <legend>{words.legend}</legend>
      <button
        type="button"
        class="button quiet action"
        disabled={reading}
        onClick={() => picker.current?.click()}
      >
        {words.take}
      </button>
      <input
        ref={picker}
        type="file"
        accept="image/*"
        multiple
        hidden
        data-picks="photos"
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          currentTarget.value = '';
          if (files.length > 0) void take(files);
        }}
      />
      <label class="location">
        <input
          type="checkbox"
          checked={!keepsLocation.value}
          onChange={({ currentTarget }) => (keepsLocation.value = !currentTarget.checked)}
        />
        <span>
          {words.leaveOut}
          <span class="line">{words.leaveOutWhat}</span>
        </span>
      </label>
      <RoomNotice />
      <p role="status">{reading ? words.reading : words.kept(hashes.length)}</p>
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
      <PhotoStrip
        hashes={hashes}
        onRemove={(hash) => onAnswer(hashes.filter((one) => one !== hash).join(' '))}
      />
    </fieldset>
  );
}
