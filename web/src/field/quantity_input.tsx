/** A quantity: a number and one of the units that are usual for it. */
import { useState } from 'preact/hooks';
import type { UnitSystem } from '../findings';
import { units } from '../settings';
import { strings } from '../strings';

/** Units that are usual for a size and for a mass. */
export const unitNames: Record<'size' | 'mass', Record<UnitSystem, string[]>> = {
  size: { us: ['in', 'ft'], si: ['mm', 'm'] },
  mass: { us: ['ton', 'lb'], si: ['t', 'kg'] },
};

/** A number as people type it, with a comma or a point. */
export function plainNumber(number: string): string {
  return number.trim().replace(',', '.').replace('−', '-');
}

/** The same together with its unit; nothing where no number was typed. */
export function quantityText(number: string, unit: string): string {
  const plain = plainNumber(number);
  return plain === '' ? '' : `${plain} ${unit}`;
}

export function QuantityInput({
  name,
  label,
  kind,
  needed,
  onAnswer,
}: {
  name: string;
  label: string;
  kind: 'size' | 'mass';
  needed: boolean;
  onAnswer: (text: string) => void;
}) {
  const known = unitNames[kind][units.value];
  const [number, setNumber] = useState('');
  const [unit, setUnit] = useState(known[0] ?? '');
  const say = (nextNumber: string, nextUnit: string) => {
    setNumber(nextNumber);
    setUnit(nextUnit);
    onAnswer(quantityText(nextNumber, nextUnit));
  };
  return (
    <span class="quantity-input">
      <input
        type="text"
        inputMode="decimal"
        name={name}
        required={needed}
        maxLength={20}
        aria-label={label}
        value={number}
        onInput={({ currentTarget }) => say(currentTarget.value, unit)}
      />
      <select
        aria-label={strings.form.unitOf(label)}
        value={unit}
        onChange={({ currentTarget }) => say(number, currentTarget.value)}
      >
        {known.map((one) => (
          <option key={one} value={one}>
            {one}
          </option>
        ))}
      </select>
    </span>
  );
}
