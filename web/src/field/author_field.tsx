/** Who signs what is put into the record; asked once on a device. */
import { author } from '../settings';
import { strings } from '../strings';

export function AuthorField({ needed = false }: { needed?: boolean }) {
  return (
    <label class="field-label">
      <span>{strings.field.who}</span>
      <input
        type="text"
        name="author"
        autocomplete="name"
        maxLength={80}
        required={needed}
        value={author.value}
        onInput={({ currentTarget }) => (author.value = currentTarget.value)}
      />
    </label>
  );
}
