/** The fields of what tells the scale: the length of each mark, and how far off it may be. */
import { photoWords as words } from '../strings';
import { LengthField } from './length_field';
import type { Board, PhotoScale } from './photo_draft';
import { withDiameter, withEdge } from './scale_marks';

export function Choice<Value extends string>({
  legend,
  name,
  labels,
  value,
  onValue,
}: {
  legend: string;
  name: string;
  labels: Record<Value, string>;
  value: Value;
  onValue: (value: Value) => void;
}) {
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      {(Object.keys(labels) as Value[]).map((one) => (
        <label key={one}>
          <input
            type="radio"
            name={name}
            value={one}
            checked={value === one}
            onChange={() => onValue(one)}
          />
          <span>{labels[one]}</span>
        </label>
      ))}
    </fieldset>
  );
}

export function MarkFields({
  scale,
  edges,
  onScale,
}: {
  scale: PhotoScale;
  edges: (board: Board) => string[];
  onScale: (scale: PhotoScale) => void;
}) {
  const without = <Mark,>(marks: Mark[], index: number) => marks.filter((_, at) => at !== index);
  const row = (
    label: string,
    value: string,
    remove: string,
    onValue: (text: string) => void,
    onRemove: () => void,
  ) => (
    <div class="scale-mark" key={label}>
      <LengthField label={label} value={value} onValue={onValue} />
      <button type="button" class="button quiet" onClick={onRemove}>
        {remove}
      </button>
    </div>
  );
  return (
    <>
      {scale.boards.map((board, index) => {
        const known = edges(board);
        return (
          <div key={board.number}>
            {row(
              words.board(board.number),
              board.edge,
              words.removeBoard(board.number),
              (edge) => onScale(withEdge(scale, index, edge)),
              () => onScale({ ...scale, boards: without(scale.boards, index) }),
            )}
            {board.edge === '' && (
              <p>
                {known.length > 0 ? words.knownBoard(board.number) : words.newBoard(board.number)}
              </p>
            )}
            {board.edge === '' && (
              <div class="photo-tools">
                {known.map((edge) => (
                  <button
                    key={edge}
                    type="button"
                    class="button quiet"
                    onClick={() => onScale(withEdge(scale, index, edge))}
                  >
                    {words.takeEdge(edge)}
                  </button>
                ))}
              </div>
            )}
          </div>
        );
      })}
      {scale.balls.map((ball, index) =>
        row(
          words.ball(index + 1),
          ball.diameter,
          words.removeBall(index + 1),
          (diameter) => onScale(withDiameter(scale, index, diameter)),
          () => onScale({ ...scale, balls: without(scale.balls, index) }),
        ),
      )}
      {scale.staffs.map((staff, index) =>
        row(
          words.staff(index + 1),
          staff.length,
          words.removeStaff(index + 1),
          (length) =>
            onScale({
              ...scale,
              staffs: scale.staffs.map((one, at) => (at === index ? { ...one, length } : one)),
            }),
          () => onScale({ ...scale, staffs: without(scale.staffs, index) }),
        ),
      )}
      {(scale.staffs.length > 0 || scale.boards.length > 0) && (
        <label class="field-label">
          <span>{words.scaleError}</span>
          <select
            value={scale.scale_error}
            onChange={({ currentTarget }) =>
              onScale({ ...scale, scale_error: currentTarget.value })
            }
          >
            {Object.entries(words.scaleErrors).map(([value, label]) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </label>
      )}
    </>
  );
}
