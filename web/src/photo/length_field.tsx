/** A length as it was typed and kept, to be typed anew: a number and a unit. */
import { useState } from 'preact/hooks';
import { quantityText, unitNames } from '../field/quantity_input';
import { units } from '../settings';
import { photoWords as words } from '../strings';

/** The parts of "12 in". */
function partsOf(text: string, usual: string): [number: string, unit: string] {
  const at = text.lastIndexOf(' ');
  return at < 0 ? [text, usual] : [text.slice(0, at), text.slice(at + 1)];
}

export function LengthField({
  label,
  value,
  onValue,
}: {
  label: string;
  value: string;
  onValue: (text: string) => void;
}) {
  const usual = unitNames.size[units.value];
  const [number, unit] = partsOf(value, usual[0] ?? '');
  const [chosen, setChosen] = useState(unit);
  /** What is being typed: an answer that comes meanwhile draws the field anew, and would empty it. */
  const [typed, setTyped] = useState<string | undefined>(undefined);
  // A number that is away for a moment does not take its unit along.
  const shown = number === '' ? chosen : unit;
  const known = usual.includes(shown) ? usual : [...usual, shown];
  return (
    <label class="field-label">
      <span>{label}</span>
      <span class="quantity-input">
        <input
          type="text"
          inputMode="decimal"
          autocomplete="off"
          maxLength={12}
          aria-label={label}
          value={typed ?? number}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          onChange={({ currentTarget }) => onValue(quantityText(currentTarget.value, shown))}
          onBlur={() => setTyped(undefined)}
        />
        <select
          aria-label={words.unitOf(label)}
          value={shown}
          onChange={({ currentTarget }) => {
            setChosen(currentTarget.value);
            if (number !== '') onValue(quantityText(number, currentTarget.value));
          }}
        >
          {known.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </select>
      </span>
    </label>
  );
}
