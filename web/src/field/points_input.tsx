/** Lengths measured one after another: typed, added, the last taken back. */
import { useState } from 'preact/hooks';
import { strings } from '../strings';
import { plainNumber } from './quantity_input';

const words = strings.points;

/** Several quantities as one answer, and back. */
export function pointsIn(answer: string): string[] {
  return answer === '' ? [] : answer.split('; ');
}

export function PointsInput({
  label,
  unit,
  fewest,
  answer,
  onAnswer,
}: {
  label: string;
  unit: string;
  /** So many are asked for. */
  fewest: number;
  answer: string;
  onAnswer: (text: string) => void;
}) {
  const [number, setNumber] = useState('');
  const points = pointsIn(answer);
  const add = () => {
    const plain = plainNumber(number);
    if (plain === '') return;
    onAnswer([...points, `${plain} ${unit}`].join('; '));
    setNumber('');
  };
  return (
    <div class="points">
      <label class="field-label">
        <span>{words.next(label, unit)}</span>
        <span class="quantity-input">
          <input
            type="text"
            inputMode="text"
            maxLength={20}
            value={number}
            onInput={({ currentTarget }) => setNumber(currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key !== 'Enter') return;
              event.preventDefault();
              add();
            }}
          />
          <button type="button" class="button quiet" onClick={add}>
            {words.add}
          </button>
        </span>
      </label>
      <p aria-live="polite">
        {words.soFar(points.length, fewest)} {points.join(' · ')}
      </p>
      {points.length > 0 && (
        <button
          type="button"
          class="button quiet"
          onClick={() => onAnswer(points.slice(0, -1).join('; '))}
        >
          {words.takeBack}
        </button>
      )}
    </div>
  );
}
