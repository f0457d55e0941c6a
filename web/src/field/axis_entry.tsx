/** The middle axis of one stone after another, typed as it is read off. */
import { useRef, useState } from 'preact/hooks';
import { units } from '../settings';
import { strings } from '../strings';
import { quantityText, unitNames } from './quantity_input';

const words = strings.count;

/** So many of the last are shown, for whoever reads them back. */
const lastShown = 6;

export function AxisEntry({
  ready,
  last,
  onAxis,
}: {
  ready: boolean;
  last: readonly string[];
  onAxis: (axis: string) => void;
}) {
  const known = unitNames.size[units.value];
  const [number, setNumber] = useState('');
  const [unit, setUnit] = useState(known[0] ?? '');
  const input = useRef<HTMLInputElement>(null);
  return (
    <form
      class="axis-entry"
      onSubmit={(event) => {
        event.preventDefault();
        const axis = quantityText(number, unit);
        if (axis === '') return;
        onAxis(axis);
        setNumber('');
        input.current?.focus();
      }}
    >
      <label class="field-label">
        <span>{words.axis}</span>
        <span class="quantity-input">
          <input
            ref={input}
            type="text"
            inputMode="decimal"
            autocomplete="off"
            aria-label={words.axis}
            maxLength={12}
            value={number}
            onInput={({ currentTarget }) => setNumber(currentTarget.value)}
          />
          <select
            aria-label={strings.form.unitOf(words.axis)}
            value={unit}
            onChange={({ currentTarget }) => setUnit(currentTarget.value)}
          >
            {known.map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </select>
        </span>
      </label>
      <button type="submit" class="button action main" disabled={!ready || number.trim() === ''}>
        {words.addStone}
      </button>
      {last.length > 0 && <p class="line">{words.lastAxes(last.slice(-lastShown).reverse())}</p>}
    </form>
  );
}
