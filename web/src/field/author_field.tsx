/** Who signs what is put into the record, asked once on a device; and whether it says where they are. */
import { author, takesPosition } from '../settings';
import { strings } from '../strings';
import { positionState, usePosition } from './device_position';

function PositionChoice() {
  usePosition();
  return (
    <label class="location">
      <input
        type="checkbox"
        name="position"
        checked={takesPosition.value}
        onChange={({ currentTarget }) => (takesPosition.value = currentTarget.checked)}
      />
      <span>
        {strings.position.take}
        <span class="line" role="status">
          {strings.position.states[positionState.value]}
        </span>
      </span>
    </label>
  );
}

export function AuthorField({ needed = false }: { needed?: boolean }) {
  return (
    <>
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
      <PositionChoice />
    </>
  );
}
