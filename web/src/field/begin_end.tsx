/** How a form ends that begins a look: where on the rock, who takes it down, what to mind. */
import { AuthorField } from './author_field';

export interface BeginEndWords {
  place: string;
  caution: string;
  begin: string;
}

export function BeginEnd({
  words,
  place,
  onPlace,
  trouble,
}: {
  words: BeginEndWords;
  place: string;
  onPlace: (place: string) => void;
  /** Why it could not be begun. */
  trouble: string;
}) {
  return (
    <>
      <label class="field-label">
        <span>{words.place}</span>
        <input
          type="text"
          name="place"
          maxLength={200}
          value={place}
          onInput={({ currentTarget }) => onPlace(currentTarget.value)}
        />
      </label>
      <AuthorField />
      <p class="caution">{words.caution}</p>
      {trouble && (
        <p class="trouble" role="alert">
          {trouble}
        </p>
      )}
      <button type="submit" class="button action main">
        {words.begin}
      </button>
    </>
  );
}
